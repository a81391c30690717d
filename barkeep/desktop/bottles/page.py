"""Bottles: what stands on the shelf, how much is left, and everything done with it."""

from __future__ import annotations

from collections.abc import Callable, Hashable, Iterator, Sequence
from dataclasses import dataclass
from functools import partial
from typing import Any

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from barkeep.application.bar import Bar
from barkeep.application.done import Done
from barkeep.desktop.bottles.details import EVERY_ENTRY, BottleOverview, sections_of
from barkeep.desktop.bottles.facts import (
    FactDialog,
    FactTask,
    dasher_task,
    house_task,
    use_by_task,
    weigh_empty_task,
    weigh_full_task,
)
from barkeep.desktop.bottles.labels import AddBottleDialog, ChangeLabelDialog
from barkeep.desktop.bottles.level_dialog import (
    LevelDialog,
    LevelTask,
    correct_task,
    count_task,
    pour_task,
    waste_task,
)
from barkeep.desktop.bottles.rows import (
    KINDS,
    LEVEL,
    SHELF,
    STATES,
    BottleRow,
    bottle_columns,
    bottle_rows,
)
from barkeep.desktop.counting.page import CountingPage
from barkeep.desktop.counting.rows import bottles_in_words
from barkeep.desktop.look.metrics import PAD, scaled
from barkeep.desktop.screens.kept import COUNT
from barkeep.desktop.screens.list_stack import set_widths
from barkeep.desktop.screens.screen import ScreenContext
from barkeep.desktop.screens.table_screen import TableScreen, on_activated, sort_by
from barkeep.desktop.widgets.buttons import button, offer, primary_button
from barkeep.desktop.widgets.chips import FilterChips
from barkeep.desktop.widgets.delegates import LevelDelegate
from barkeep.desktop.widgets.detail_bar import DetailActs
from barkeep.desktop.widgets.empty_state import EmptyState
from barkeep.domain.bar.changes import Changes, Part
from barkeep.domain.bottles.bottle import Bottle
from barkeep.domain.bottles.containers import container_of
from barkeep.domain.bottles.counting import ShelfCount


@dataclass(frozen=True, slots=True)
class Doing:
    """An action's name, its words in menus and on a button, its shortcut and its picture."""

    key: str
    words: str
    shortcut: str
    act: Callable[[BottlesScreen], object]
    picture: str = ""
    brief: str = ""


GROUPS = (
    ("shelf", "write", "leave"),
    ("count", "open", "pour", "waste", "empty", "correct"),
    ("tare", "full", "dasher", "house", "use_by", "label"),
    ("add", "again", "remove"),
    ("up", "down"),
    ("use_up",),
)
OF_ONE_BOTTLE = (
    *("count", "open", "pour", "waste", "empty", "correct"),
    *("tare", "full", "dasher", "house", "use_by", "label"),
    *("again", "remove"),
)
FACTS = ("tare", "full", "dasher", "house", "use_by", "label")
OFTEN = 2
"""So many of what fits a bottle are offered at once."""
OF_THE_COUNT = ("write", "leave")
IN_THE_LIST = (*OF_ONE_BOTTLE, "up", "down")
USE_UP = "&Use up what goes off"


def _why_not(key: str, *, counting: bool, chosen: bool) -> str:
    if key in OF_THE_COUNT:
        return "" if counting else "Count the shelf first"
    if counting:
        return "Leave the count first"
    return "" if chosen or key not in IN_THE_LIST else "Choose a bottle first"


def _keys(shortcut: str) -> tuple[str, ...]:
    if shortcut == "Ctrl+Return":
        return (shortcut, "Ctrl+Enter")  # the one of the number pad
    return (shortcut,) if shortcut else ()


UPWARDS = Qt.SortOrder.AscendingOrder


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
    only_looks = frozenset({USE_UP})
    search_hint = "Search bottles, makers, kinds and barcodes…"
    cares_about = frozenset({Part.BOTTLES, Part.PRODUCTS, Part.SETTINGS, Part.KNOWLEDGE})
    import_wanted = Signal()

    def __init__(self, context: ScreenContext, parent: QWidget | None = None) -> None:
        empty = EmptyState(
            picture="picture-empty-shelf",
            title="No bottles yet",
            line="Put the first one on the shelf, or bring in a list of them",
            action="Add bottle…",
            second_action="Import…",
        )
        super().__init__(context, bottle_columns(), empty, parent)
        empty.acted.connect(self.add_bottle)
        empty.acted_second.connect(self.import_wanted)
        self._import_button = empty.buttons[1]
        self.kinds = FilterChips("Kind", KIND_CHIPS, "all")
        self.states = FilterChips("State", STATE_CHIPS, "any")
        self._all_entries_of: int | None = None
        self.counting = CountingPage(context)
        self.actions_by_key = {
            each.key: self.new_action(
                each.words, partial(each.act, self), *_keys(each.shortcut), picture=each.picture
            )
            for each in DOINGS
        }
        self._prepare_header()
        self._prepare_filters()
        self._prepare_view()
        self._prepare_counting()

    # What a table screen asks

    def refresh(self, changes: Changes) -> None:
        snapshot = self.context.bar.snapshot
        before = self.count
        self.counting.count = before.kept_for(snapshot.bottles)
        self.show_rows(bottle_rows(snapshot))
        self._sum_up()
        if self.is_counting:
            self.counting.refresh()
        else:
            self._remind_of_count()
        if lost := len(before) - len(self.count):
            are = "is left out, as it is" if lost == 1 else "are left out, as they are"
            words = f"The counts of {bottles_in_words(lost)} {are} gone or smaller by now"
            self.counting.say(words)
            self.banner.say(f"{words}.", "warning")

    def identity(self, row: BottleRow) -> Hashable:
        return row.bottle.id

    def words(self, row: BottleRow) -> str:
        return row.words

    def accepts(self, row: BottleRow) -> bool:
        return KINDS[self.kinds.choice](row) and STATES[self.states.choice](row)

    def offer_actions(self) -> None:
        """While the shelf is counted only the count's own actions can be taken, else all others.

        What is done with one bottle needs one that is chosen.
        """
        chosen = self.current is not None
        for key, action in self.actions_by_key.items():
            offer(action, _why_not(key, counting=self.is_counting, chosen=chosen))

    def clear_filters(self) -> None:
        self.kinds.choose("all")
        self.states.choose("any")
        super().clear_filters()

    def offer_import(self, import_bottles: Callable[[], object] | None) -> None:
        self._import_button.setVisible(import_bottles is not None)
        if import_bottles is not None:
            self.import_wanted.connect(lambda: import_bottles())

    def likely_on_paper(self) -> tuple[str, str]:
        return "", "" if self.current is None else f"#{self.current.bottle.id}"

    def show_thing(self, thing: object) -> None:
        """Choose a bottle by its id, or search for the words that were given."""
        self.leave_count()
        if self.is_counting:
            return
        super().show_thing(thing)
        if isinstance(thing, str):
            self.search.set_text(thing)

    def follow(self, to: str) -> None:
        if to == EVERY_ENTRY:
            self._show_all_entries()

    def unsaved(self) -> str:
        many = len(self.count)
        if not many:
            return ""
        bottles = "1 counted bottle is" if many == 1 else f"{many} counted bottles are"
        return f"{bottles} not confirmed yet."

    def forget_unsaved(self) -> None:
        self.counting.count = ShelfCount()

    def go_on_with(self, name: str) -> None:
        if name == COUNT:
            self.count_shelf()

    def show_row(self, row: BottleRow | None) -> None:
        if row is None:
            self.detail.clear()
            return
        snapshot = self.context.bar.snapshot
        steps = self.context.bar.inventory.history(row.bottle.id)
        everything = self._all_entries_of == row.bottle.id
        sections = sections_of(
            row,
            ingredient=snapshot.knowledge.tree[row.bottle.ingredient],
            container=container_of(row.bottle, snapshot.knowledge.tree, snapshot.bottles),
            currency=snapshot.settings.currency,
            steps=steps,
            all_entries=everything,
            payments=self.context.bar.paying.of(row.bottle.product.id),
        )
        self.detail.show_details(
            row.bottle.product.name,
            row.bottle.product.maker or row.ingredient,
            sections,
            top=BottleOverview(row, steps),
            acts=self._acts_on(row.bottle),
        )

    def _acts_on(self, bottle: Bottle) -> DetailActs:
        """What fits its state first; then all else that is done with one bottle."""
        actions, brief = self.actions_by_key, {each.key: each.brief for each in DOINGS}
        fitting = _fitting(bottle)
        often = [self.offered(actions[key], brief[key]) for key in fitting[:OFTEN]]
        rest = (*fitting[OFTEN:], *_facts_of(bottle), *OF_ONE_BOTTLE, "up", "down", "use_up")
        left = [key for key in dict.fromkeys(rest) if key not in fitting[:OFTEN]]
        known = [key for key in left if key not in FACTS or key in _facts_of(bottle)]
        return DetailActs(tuple(often), tuple(self.offered(actions[key]) for key in known))

    # What the user does

    @property
    def count(self) -> ShelfCount:
        """What was counted of the shelf and is not written yet."""
        return self.counting.count

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
        """Back to the list; the counts stay as they are, and nothing is written.

        An amount that is being typed is taken over first; one that cannot be read keeps the count.
        """
        if self.is_counting and self.counting.settle():
            self._show_counting(False)
            self._remind_of_count()
            self.focus_list()

    def focus_list(self) -> None:
        """While the shelf is counted, the list of the count."""
        if self.is_counting:
            self.counting.take_focus()
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

    # What is done with the bottle that is chosen

    def count_current(self) -> None:
        """Ask for one bottle's exact level."""
        self._ask(lambda row: count_task(self.context.bar, row.bottle, row.ingredient))

    def pour_current(self) -> None:
        """Ask how much is taken for use."""
        self._ask(lambda row: pour_task(self.context.bar, row.bottle))

    def waste_current(self) -> None:
        """Ask how much is written off."""
        self._ask(lambda row: waste_task(self.context.bar, row.bottle))

    def correct_current(self) -> None:
        """Ask by how much the ledger is wrong."""
        self._ask(lambda row: correct_task(self.context.bar, row.bottle))

    def weigh_empty(self) -> None:
        """Ask what the empty bottle weighs."""
        self._ask_fact(weigh_empty_task)

    def weigh_full(self) -> None:
        """Ask what the full bottle weighs."""
        self._ask_fact(weigh_full_task)

    def set_dasher(self) -> None:
        """Ask what one dash from it comes to."""
        self._ask_fact(dasher_task)

    def set_use_by(self) -> None:
        """Ask until when it is good."""
        row = self._chosen()
        if row is not None:
            self._open(FactDialog(use_by_task(self.context.bar, row.bottle), self))

    def make_house_pour(self) -> None:
        """Ask for which kind it is poured where a spec says no more."""
        row = self._chosen()
        if row is not None:
            self._open(FactDialog(house_task(self.context.bar, row.bottle), self))

    def change_label(self) -> None:
        """Ask what its label really says."""
        row = self._chosen()
        if row is not None:
            self._open(ChangeLabelDialog(self.context.bar, row.bottle.product, self))

    def open_current(self) -> None:
        """Break the seal."""
        self._act(self.context.bar.inventory.open, "Opened")

    def empty_current(self) -> None:
        """Say that nothing is left."""
        self._act(self.context.bar.inventory.empty, "Emptied")

    def remove_current(self) -> None:
        """Take it off the shelf."""
        self._act(self.context.bar.inventory.remove, "Removed")

    def receive_another(self) -> None:
        """Put another bottle of the same product at the end of the shelf."""
        row = self._chosen()
        if row is not None:
            product = row.bottle.product
            receive = partial(self.context.bar.inventory.receive, product.id)
            is_unknown = product.price is None and not product.house_made
            cost = "; nobody knows what it cost" if is_unknown else ""
            self.do(receive, self._choose, f"Received {product.title}{cost}")
            self.focus_list()

    def add_bottle(self) -> None:
        """Ask what came in."""
        dialog = AddBottleDialog(self.context.bar, self)
        dialog.added.connect(self._on_added)
        self.open_dialog(dialog)

    def move_current(self, step: int) -> None:
        """Move it past its neighbour in the list: -1 up, 1 down the shelf."""
        row = self._chosen()
        if row is None or not self._is_shelf_order():
            return
        shown: Sequence[BottleRow] = self.shown.shown_rows()
        place = shown.index(row) + step
        if not 0 <= place < len(shown):
            end = "first" if step < 0 else "last"
            words = f"{row.bottle.product.name} is the {end} of the list already."
            self.banner.say(words, "info")
            return
        along = [each.bottle.id for each in self.table.rows if each is not row]
        along.insert(along.index(shown[place].bottle.id) + (step > 0), row.bottle.id)
        reorder = partial(self.context.bar.inventory.reorder, along)
        way = "up" if step < 0 else "down"
        self.do(reorder, say=f"Moved {row.bottle.product.name} {way} the shelf")

    def _chosen(self) -> BottleRow | None:
        self.clear_refusal()
        return self.current

    def _act(self, use_case: Callable[[int], Done[Bottle]], said: str) -> None:
        row = self._chosen()
        if row is not None:
            act = partial(use_case, row.bottle.id)
            self.do(act, say=f"{said} {row.bottle.product.title}")
            # The details, and with them the button that was pressed, are built anew.
            self.focus_list()

    def _ask(self, task_for: Callable[[BottleRow], LevelTask]) -> None:
        row = self._chosen()
        if row is not None:
            self._open(LevelDialog(task_for(row), self))

    def _ask_fact(self, task_for: Callable[[Bar, Bottle], FactTask]) -> None:
        row = self._chosen()
        if row is None:
            return
        product = row.bottle.product
        if product.unit != "ml":
            words = f"{product.title} is not poured, so there is nothing to weigh or to dash."
            self.banner.say(words, "info")
            return
        self._open(FactDialog(task_for(self.context.bar, row.bottle), self))

    def _open(self, dialog: LevelDialog | FactDialog | ChangeLabelDialog) -> None:
        dialog.done_with.connect(self.say_done)
        self.open_dialog(dialog)

    def _on_added(self, bottle: Bottle) -> None:
        self.say_done(f"Added {bottle.product.title}")
        self._choose(bottle)

    def _choose(self, bottle: Bottle) -> None:
        if not self.choose(bottle.id):
            self.show_thing(bottle.id)

    def _is_shelf_order(self) -> bool:
        shown = self.shown
        if shown.sortColumn() == SHELF and shown.sortOrder() == UPWARDS:
            return True
        words = "Bottles can be moved while the list is in the order of the shelf."
        self.banner.say(words, "info", "Sort by shelf", self._sort_by_shelf)
        return False

    def _sort_by_shelf(self) -> None:
        self.banner.clear()
        sort_by(self.view, SHELF)
        self.focus_list()

    # The rest

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
        count = partial(self.context.bar.counting.count, self.count.levels)
        self.do(count, self._on_counted, f"Counted {bottles_in_words(many)}")

    def _on_counted(self, _counted: Any) -> None:
        self.counting.count = ShelfCount()
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
        self.offer_actions()

    # How it is put together

    def _prepare_header(self) -> None:
        self.add_button = button("Add bottle…", self.add_bottle, "add")
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
        self.view.verticalHeader().setDefaultSectionSize(scaled(ROW_HEIGHT))
        set_widths(self.view, COLUMN_WIDTHS)
        self.splitter.setSizes([700, 320])
        sort_by(self.view, SHELF)
        self.view.selectionModel().currentRowChanged.connect(lambda *_rows: self.clear_refusal())
        on_activated(self.view, self.count_current)
        for action in self._in_menu_order():
            self.add_bar_action(action)
        self.view.setContextMenuPolicy(Qt.ContextMenuPolicy.ActionsContextMenu)
        self.view.addActions([self.actions_by_key[key] for key in (*IN_THE_LIST, "use_up")])

    def _in_menu_order(self) -> Iterator[QAction]:
        """The actions as the Bar menu lists them, in groups."""
        for group in GROUPS:
            yield from (self.actions_by_key[key] for key in group)
            if group is not GROUPS[-1]:
                line = QAction(self)
                line.setSeparator(True)
                yield line

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
        self.offer_actions()


def _facts_of(bottle: Bottle) -> tuple[str, ...]:
    """The facts of a bottle that can be written down: of what is poured more than of a lime."""
    poured = ("tare", "full", "dasher", "house") if bottle.product.unit == "ml" else ()
    return (*poured, "use_by", "label")


def _fitting(bottle: Bottle) -> tuple[str, ...]:
    """The actions a bottle in this state is offered first."""
    match bottle.level.state:
        case "sealed":
            return ("open", "count", "again", "remove")
        case "empty":
            return ("again", "count", "remove")
    return ("count", "pour", "waste", "empty", "correct", "again")


_Page = BottlesScreen  # each action names what of the page it does
DOINGS = (
    Doing("shelf", "Count the &shelf", "Ctrl+Shift+C", _Page.count_shelf, picture="count"),
    Doing(
        key="count",
        words="&Count bottle…",
        shortcut="Ctrl+Shift+B",
        act=_Page.count_current,
        picture="count",
        brief="Count…",
    ),
    Doing("open", "&Open", "Ctrl+Shift+O", _Page.open_current, picture="open-bottle"),
    Doing("pour", "&Pour…", "Ctrl+Shift+P", _Page.pour_current, picture="pour"),
    Doing("waste", "&Waste…", "Ctrl+Shift+W", _Page.waste_current),
    Doing("empty", "&Empty", "Ctrl+Shift+E", _Page.empty_current),
    Doing("correct", "Co&rrect…", "Ctrl+Shift+K", _Page.correct_current),
    Doing("tare", "Weigh it e&mpty…", "", _Page.weigh_empty, picture="scale"),
    Doing("full", "Weigh it &full…", "", _Page.weigh_full, picture="scale"),
    Doing("dasher", "Set its das&her…", "", _Page.set_dasher),
    Doing("house", "Make it a house pou&r…", "", _Page.make_house_pour),
    Doing("use_by", "Set its use-b&y day…", "", _Page.set_use_by),
    Doing("label", "Change its &label…", "", _Page.change_label),
    Doing(
        key="again",
        words="Receive a&nother",
        shortcut="Ctrl+Shift+R",
        act=_Page.receive_another,
        picture="bottles",
        brief="Receive",
    ),
    Doing("add", "&Add bottle…", "Ctrl+N", _Page.add_bottle, picture="add"),
    Doing("remove", "Remo&ve", "Del", _Page.remove_current, picture="remove"),
    Doing(
        "up",
        "Move &up the shelf",
        "Alt+Up",
        lambda page: page.move_current(-1),
        picture="chevron-up",
    ),
    Doing(
        "down",
        "Move &down the shelf",
        "Alt+Down",
        lambda page: page.move_current(1),
        picture="chevron-down",
    ),
    Doing("use_up", USE_UP, "", lambda page: page.context.go("use-up", None), picture="calendar"),
    Doing("write", "Confirm the coun&ts…", "Ctrl+Return", _Page.write_counts, picture="check"),
    Doing("leave", "&Leave the count\tEsc", "", _Page.leave_count, picture="clear"),
)
