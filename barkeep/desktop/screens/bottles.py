"""Bottles: what stands on the shelf, how much is left, and everything done with it."""

from __future__ import annotations

from collections.abc import Callable, Hashable
from functools import partial
from typing import Any

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from barkeep.desktop.metrics import PAD
from barkeep.desktop.models.bottle_rows import (
    KINDS,
    LEVEL,
    SHELF,
    STATES,
    BottleRow,
    bottle_columns,
    bottle_rows,
)
from barkeep.desktop.models.count_rows import ShelfCount, bottles_in_words
from barkeep.desktop.screens.bottle_actions import IN_THE_LIST, BottleActions
from barkeep.desktop.screens.bottle_details import NEWEST, BottleOverview, sections_of
from barkeep.desktop.screens.bottle_work import BottleWork
from barkeep.desktop.screens.context import ScreenContext
from barkeep.desktop.screens.counting import CountingPage
from barkeep.desktop.screens.table_screen import TableScreen, on_activated, sort_by
from barkeep.desktop.widgets.buttons import button, primary_button
from barkeep.desktop.widgets.delegates import LevelDelegate
from barkeep.desktop.widgets.empty_state import EmptyState
from barkeep.desktop.widgets.filter_chips import FilterChips
from barkeep.domain.containers import container_of
from barkeep.domain.inventory import Bottle

COLUMN_WIDTHS = (64, 184, 108, 104, 116, 130, 84)
"""Shelf to opened; the price takes the rest."""
ROW_HEIGHT = 48
KIND_CHIPS = (
    ("all", "All", "Everything on the shelf"),
    ("bottles", "Bottles", "What is poured"),
    ("pantry", "Pantry", "What is counted in pieces or weighed"),
)
STATE_CHIPS = (
    ("any", "All", "Sealed, open and empty ones"),
    ("open", "Open", "Only open ones"),
    ("sealed", "Sealed", "Only sealed ones"),
    ("empty", "Empty", "Only empty ones"),
    ("low", "Low or due", "Open ones that are nearly used up, and what is due or past its date"),
)


class BottlesScreen(TableScreen[BottleRow]):
    """One row a bottle, in the owner's order along the shelf; `import_wanted` asks for a file."""

    key = "bottles"
    title = "Bottles"
    noun = "bottles"
    search_hint = "Search bottles, makers, kinds and barcodes…"
    cares_about = frozenset({"bottles", "products", "settings", "knowledge"})
    import_wanted = Signal()

    def __init__(self, context: ScreenContext, parent: QWidget | None = None) -> None:
        empty = EmptyState(
            "picture-empty-shelf",
            "No bottles yet",
            "Put the first one on the shelf, or bring in a list of them",
            "Add bottle…",
            "Import",
        )
        super().__init__(context, bottle_columns(), empty, parent)
        self.work = BottleWork(self)
        empty.acted.connect(self.work.add)
        empty.acted_second.connect(self.import_wanted)
        self.kinds = FilterChips("Kind", KIND_CHIPS, "all")
        self.states = FilterChips("State", STATE_CHIPS, "any")
        self.count = ShelfCount()
        self._all_entries_of: int | None = None
        self.counting = CountingPage(context, self.count)
        self.actions_by_key = BottleActions(self, self._doings())
        self._prepare_header()
        self._prepare_filters()
        self._prepare_view()
        self._prepare_counting()

    # What a table screen asks

    def refresh(self, changes: frozenset[str]) -> None:
        snapshot = self.context.bar.snapshot
        self.count.keep_only(snapshot.bottles)
        self.show_rows(bottle_rows(snapshot))
        self._sum_up()
        if self.is_counting:
            self.counting.refresh()
        else:
            self._remind_of_count()

    def identity(self, row: BottleRow) -> Hashable:
        return row.bottle.id

    def words(self, row: BottleRow) -> str:
        return row.words

    def accepts(self, row: BottleRow) -> bool:
        return KINDS[self.kinds.choice](row) and STATES[self.states.choice](row)

    def clear_filters(self) -> None:
        self.kinds.choose("all")
        self.states.choose("any")
        super().clear_filters()

    def show_thing(self, thing: object) -> None:
        """Choose a bottle by its id, or search for the words that were given."""
        self.leave_count()
        super().show_thing(thing)
        if isinstance(thing, str):
            self.search.set_text(thing)

    def unsaved(self) -> str:
        many = len(self.count)
        if not many:
            return ""
        bottles = "1 counted bottle is" if many == 1 else f"{many} counted bottles are"
        return f"{bottles} not confirmed yet."

    def show_row(self, row: BottleRow | None) -> None:
        if row is None:
            self.detail.clear()
            return
        snapshot = self.context.bar.snapshot
        steps = self.context.bar.inventory.history(row.bottle.id)
        everything = self._all_entries_of == row.bottle.id
        sections = sections_of(
            row,
            snapshot.knowledge.tree[row.bottle.ingredient],
            container_of(row.bottle, snapshot.knowledge.tree, snapshot.bottles),
            snapshot.settings.currency,
            steps,
            all_entries=everything,
        )
        acts = [self.actions_by_key.push_button(key) for key in _fitting(row.bottle)]
        acts.append(self.actions_by_key.menu_button(_facts_of(row.bottle)))
        more = []
        if len(steps) > NEWEST and not everything:
            more.append(button(f"Show all {len(steps)} entries", self._show_all_entries))
        self.detail.show_details(
            row.bottle.product.name,
            row.bottle.product.maker or row.ingredient,
            sections,
            top=BottleOverview(row, steps, acts),
            buttons=more,
        )

    # What the user does

    @property
    def is_counting(self) -> bool:
        """Whether the page shows the count of the shelf."""
        return not self.counting.isHidden()

    def count_shelf(self) -> None:
        """Go from bottle to bottle; what was counted before is still there."""
        self.banner.clear()
        self._show_counting(True)
        self.counting.begin()

    def leave_count(self) -> None:
        """Back to the list; the counts stay as they are, and nothing is written."""
        if self.is_counting:
            self._show_counting(False)
            self._remind_of_count()
            self.focus_list()

    def focus_list(self) -> None:
        """While the shelf is counted, the list of the count."""
        if self.is_counting:
            self.counting.view.setFocus(Qt.FocusReason.ShortcutFocusReason)
        else:
            super().focus_list()

    def focus_search(self) -> None:
        """The count has no search: it follows the shelf."""
        if self.is_counting:
            self.counting.say("Leave the count with Esc to search; what is counted stays")
        else:
            super().focus_search()

    def write_counts(self) -> None:
        """Show what would be written; only the sheet's own button writes it."""
        self.counting.confirm(self._write_counts)

    # The rest

    def _doings(self) -> dict[str, Callable[[], object]]:
        work = self.work
        return {
            "shelf": self.count_shelf,
            "count": work.count,
            "open": work.open,
            "pour": work.pour,
            "waste": work.waste,
            "empty": work.empty,
            "correct": work.correct,
            "tare": work.weigh_empty,
            "full": work.weigh_full,
            "dasher": work.set_dasher,
            "label": work.change_label,
            "again": work.receive_another,
            "add": work.add,
            "remove": work.remove,
            "up": lambda: work.shift(-1),
            "down": lambda: work.shift(1),
            "write": self.write_counts,
            "leave": self.leave_count,
        }

    def _show_all_entries(self) -> None:
        row = self.current
        if row is not None:
            self._all_entries_of = row.bottle.id
            self.show_row(row)
            self.focus_list()

    def _sum_up(self) -> None:
        rows = self.table.rows
        states = [row.bottle.level.state for row in rows]
        parts = [f"{states.count('open')} open, {states.count('sealed')} sealed"]
        low, due = sum(row.low for row in rows), sum(row.due for row in rows)
        parts += [f"{low} low"] if low else []
        parts += [f"{due} due or past use by"] if due else []
        self.summary.setText(" · ".join(parts) if rows else "")

    # Counting

    def _write_counts(self) -> None:
        many = len(self.count)
        count = partial(self.context.bar.inventory.count, self.count.levels)
        self.do(count, self._on_counted, f"Counted {bottles_in_words(many)}")

    def _on_counted(self, _counted: Any) -> None:
        self.count.clear()
        self.leave_count()

    def _remind_of_count(self) -> None:
        """Counts that nobody has confirmed are not forgotten, and say so."""
        many = len(self.count)
        if many:
            words = f"{bottles_in_words(many)} counted and not written down yet."
            self.banner.say(words, "info", "Go on counting", self.count_shelf)
        elif self.banner.kind == "info":
            self.banner.clear()

    def _show_counting(self, is_counting: bool) -> None:
        # What goes, goes first: room for both at once would make the window grow.
        counting: tuple[QWidget, ...] = (self.counting,)
        going, coming = self._of_the_list, counting
        if not is_counting:
            going, coming = coming, going
        for each in going:
            each.hide()
        for each in coming:
            each.show()
        self.actions_by_key.allow(counting=is_counting)

    # How it is put together

    def _prepare_header(self) -> None:
        self.add_button = button("Add bottle…", self.work.add, "add")
        self.count_button = primary_button("Count the shelf", self.count_shelf, "count")
        keys = self.actions_by_key["shelf"].shortcut().toString()
        self.count_button.setToolTip(f"Count the shelf ({keys})")
        self.add_header_button(self.add_button)
        self.add_header_button(self.count_button)

    def _prepare_filters(self) -> None:
        """Below the search: both rows of chips are wide."""
        chips = QHBoxLayout()
        chips.setSpacing(PAD)
        for each in (self.kinds, self.states):
            each.chosen.connect(lambda _choice: self.filter_again())
            chips.addWidget(each)
        chips.addStretch(1)
        column = self.layout()
        assert isinstance(column, QVBoxLayout)
        column.insertLayout(2, chips)

    def _prepare_view(self) -> None:
        self.view.setItemDelegateForColumn(LEVEL, LevelDelegate(self.view))
        self.view.verticalHeader().setDefaultSectionSize(ROW_HEIGHT)
        for column, width in enumerate(COLUMN_WIDTHS):
            self.view.setColumnWidth(column, width)
        self.splitter.setSizes([700, 320])
        sort_by(self.view, SHELF)
        self.view.selectionModel().currentRowChanged.connect(lambda *_rows: self.clear_refusal())
        on_activated(self.view, self.work.count)
        for action in self.actions_by_key.in_menu_order():
            self.add_bar_action(action)
        self.view.setContextMenuPolicy(Qt.ContextMenuPolicy.ActionsContextMenu)
        self.view.addActions([self.actions_by_key[key] for key in IN_THE_LIST])

    def _prepare_counting(self) -> None:
        self.counting.hide()
        self.counting.left.connect(self.leave_count)
        self.counting.confirmed.connect(self.write_counts)
        column = self.layout()
        assert isinstance(column, QVBoxLayout)
        column.addWidget(self.counting, 1)
        self._of_the_list: tuple[QWidget, ...] = (
            self.heading,
            self.summary,
            self.search,
            self.kinds,
            self.states,
            self.splitter,
            self.add_button,
            self.count_button,
        )
        self.actions_by_key.allow(counting=False)


def _facts_of(bottle: Bottle) -> tuple[str, ...]:
    """The facts of a bottle that can be written down: of what is poured more than of a lime."""
    return ("tare", "full", "dasher", "label") if bottle.product.unit == "ml" else ("label",)


def _fitting(bottle: Bottle) -> tuple[str, ...]:
    """The actions a bottle in this state is offered first."""
    match bottle.level.state:
        case "sealed":
            return ("open", "count", "again", "remove")
        case "empty":
            return ("again", "count", "remove")
    return ("count", "pour", "waste", "empty", "correct", "again")
