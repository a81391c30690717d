"""Bottles: what stands on the shelf, how much is left, and everything done with it."""

from __future__ import annotations

from collections.abc import Callable, Hashable, Iterator, Sequence
from dataclasses import dataclass
from functools import partial
from typing import Any

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtGui import QAction, QKeyEvent
from PySide6.QtWidgets import QVBoxLayout, QWidget

from barkeep.application.bar import Bar
from barkeep.application.done import Done
from barkeep.application.finding import OfCode, find_by_code, is_code
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
from barkeep.desktop.bottles.payments import PaymentsDialog
from barkeep.desktop.bottles.rows import (
    KINDS,
    LEFT,
    LEVEL,
    SHELF,
    STATES,
    BottleRow,
    bottle_columns,
    bottle_rows,
)
from barkeep.desktop.bottles.shelf import Shelf, ShelfPicture
from barkeep.desktop.counting.kept import KeptCount
from barkeep.desktop.counting.page import CountingPage
from barkeep.desktop.counting.rows import bottles_in_words
from barkeep.desktop.look.metrics import PAD, scaled
from barkeep.desktop.screens.kept import COUNT
from barkeep.desktop.screens.list_stack import set_widths
from barkeep.desktop.screens.screen import ScreenContext, order_tabs
from barkeep.desktop.screens.table_screen import TableScreen, on_activated, one_or_many, sort_by
from barkeep.desktop.widgets.buttons import button, held_for, offer, primary_button
from barkeep.desktop.widgets.chips import FilterChips, FlowLayout
from barkeep.desktop.widgets.delegates import LevelDelegate
from barkeep.desktop.widgets.detail_bar import DetailActs
from barkeep.desktop.widgets.empty_state import TO_BOTTLES, EmptyState
from barkeep.desktop.widgets.layouts import laid_out_once
from barkeep.domain.bar.changes import Changes, Part
from barkeep.domain.bottles.bottle import Bottle, Product
from barkeep.domain.bottles.containers import container_of
from barkeep.domain.bottles.counting import ShelfCount
from barkeep.domain.phrases import price_in_words
from barkeep.errors import UserError, spoken_list
from barkeep.translation import tr, tr_noop


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
    ("look",),
    ("count", "open", "pour", "waste", "empty", "correct"),
    ("tare", "full", "dasher", "house", "use_by", "label", "paid"),
    ("add", "again", "remove"),
    ("up", "down"),
    ("use_up",),
)
OF_ONE_BOTTLE = (
    *("count", "open", "pour", "waste", "empty", "correct"),
    *("tare", "full", "dasher", "house", "use_by", "label", "paid"),
    *("again", "remove"),
)
FACTS = ("tare", "full", "dasher", "house", "use_by", "label", "paid")
OFTEN = 2
"""So many of what fits a bottle are offered at once."""
OF_THE_COUNT = ("write", "leave")
IN_THE_LIST = (*OF_ONE_BOTTLE, "up", "down")
USE_UP = tr_noop("&Use up what goes off")
AS_PICTURE, AS_LIST = tr_noop("Show the shelf as a p&icture"), tr_noop("Show the shelf as a l&ist")
LOOK = "bottles/look"
"""Where the window remembers whether the shelf is shown as a picture."""


def _why_not(key: str, *, counting: bool, chosen: bool) -> str:
    if key in OF_THE_COUNT:
        return "" if counting else tr("Count the shelf first")
    if counting:
        return tr("Leave the count first")
    return "" if chosen or key not in IN_THE_LIST else tr("Choose a bottle first")


def _keys(shortcut: str) -> tuple[str, ...]:
    if shortcut == "Ctrl+Return":
        return (shortcut, "Ctrl+Enter")  # the one of the number pad
    return (shortcut,) if shortcut else ()


UPWARDS = Qt.SortOrder.AscendingOrder


COLUMN_WIDTHS = (56, 164, 80, 108, 96, 116, 74)
"""Shelf to opened; the price takes the rest."""
ROW_HEIGHT = 48
KIND_CHIPS = (
    ("all", tr_noop("All"), tr_noop("Everything on the shelf")),
    ("bottles", tr_noop("Bottles"), tr_noop("What is poured")),
    ("pantry", tr_noop("Pantry"), tr_noop("What is counted in pieces or weighed")),
)
STATE_CHIPS = (
    ("any", tr_noop("All"), tr_noop("Sealed, open and empty ones")),
    ("open", tr_noop("Open"), tr_noop("Only open ones")),
    ("sealed", tr_noop("Sealed"), tr_noop("Only sealed ones")),
    ("empty", tr_noop("Empty"), tr_noop("Only empty ones")),
    (
        "low",
        tr_noop("Low or due"),
        tr_noop("Open ones that are nearly used up, and what is due or past its date"),
    ),
)


class BottlesScreen(TableScreen[BottleRow]):
    """One row a bottle, in the owner's order along the shelf; `import_wanted` asks for a file."""

    key = "bottles"
    title = tr_noop("Bottles")
    noun = "bottles"
    only_looks = frozenset({USE_UP, AS_PICTURE, AS_LIST})
    search_hint = tr_noop("Search bottles, makers, kinds and barcodes…")
    cares_about = frozenset({Part.BOTTLES, Part.PRODUCTS, Part.SETTINGS, Part.KNOWLEDGE})
    import_wanted = Signal()

    def __init__(self, context: ScreenContext, parent: QWidget | None = None) -> None:
        empty = EmptyState(
            picture="picture-empty-shelf",
            title=tr("No bottles yet"),
            line=tr("What stands on your shelf is listed here, with what is left of each"),
            action=tr("Add bottle…"),
            second_action=tr("Import…"),
            leads=TO_BOTTLES,
        )
        super().__init__(context, bottle_columns(), empty, parent)
        empty.acted.connect(self.add_bottle)
        empty.acted_second.connect(self.import_wanted)
        self._import_button = empty.buttons[1]
        self.kinds = FilterChips(tr("Kind"), KIND_CHIPS, "all")
        self.states = FilterChips(tr("State"), STATE_CHIPS, "any")
        self._all_entries_of: int | None = None
        self._overview = BottleOverview()
        self._kept_count = KeptCount(context.state.folder, context.bar)
        self._counting: CountingPage | None = None
        self.shelf: Shelf | None = None
        """The picture of the shelf, once it was asked for."""
        self.is_picture = False
        self.actions_by_key = {
            each.key: self.new_action(
                each.words, partial(each.act, self), *_keys(each.shortcut), picture=each.picture
            )
            for each in DOINGS
        }
        self._prepare_header()
        self._prepare_filters()
        self._prepare_view()
        self._of_the_list: tuple[QWidget, ...] = (
            self.heading,
            self.summary,
            self.search,
            self.kinds,
            self.states,
            self.splitter,
            self.look_button,
            self.add_button,
            self.count_button,
        )
        self.offer_actions()
        if context.state.text(LOOK) == "picture":
            self.turn_look()

    # What a table screen asks

    def make_ready(self, size: QSize) -> None:
        super().make_ready(size)
        self.context.background.soon("counting", lambda: self.counting)

    def refresh(self, changes: Changes) -> None:
        snapshot = self.context.bar.snapshot
        before = self.count
        self._keep_count(before.kept_for(snapshot.bottles))
        rows = bottle_rows(snapshot)
        self._stand_on_shelf(rows)
        self.show_rows(rows)
        self._sum_up()
        if self.is_counting:
            self.counting.refresh()
        else:
            self._remind_of_count()
        if lost := len(before) - len(self.count):
            told = tr_noop(
                "The counts of {bottles} are left out, as they are gone or smaller by now"
            )
            if lost == 1:
                told = tr_noop(
                    "The counts of {bottles} is left out, as it is gone or smaller by now"
                )
            words = tr(told, bottles=bottles_in_words(lost))
            if self.is_counting:
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

    def show_counts(self, shown: int, total: int) -> None:
        """The shelf stays in view whatever is searched for: what is left out is dimmed."""
        super().show_counts(shown, total)
        if self.shelf is not None and self.is_picture and self.list_stack is not None and total:
            found: Sequence[BottleRow] = self.shown.shown_rows()
            self.shelf.picture.light(frozenset(row.bottle.id for row in found))
            self.list_stack.setCurrentWidget(self.shelf)

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
        many, said = len(self.count), []
        if many == 1:
            said.append(tr("1 counted bottle is not confirmed yet."))
        elif many:
            said.append(tr("{n} counted bottles are not confirmed yet.", n=many))
        if self.is_counting and (typing := self.counting.typing):
            said.append(tr("“{typing}” is being typed and not counted yet.", typing=typing))
        return " ".join(said)

    def forget_unsaved(self) -> None:
        self.counting.forget()

    def go_on_with(self, name: str) -> None:
        if name == COUNT:
            self.count_shelf()

    def show_row(self, row: BottleRow | None) -> None:
        if self.shelf is not None:
            self.shelf.picture.choose(None if row is None else row.bottle.id)
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
        self._overview.fill(row, steps)
        self.detail.show_details(
            row.bottle.product.name,
            row.bottle.product.maker or row.ingredient,
            sections,
            top=self._overview,
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
        return self._kept_count.count

    @property
    def is_counting(self) -> bool:
        """Whether the page shows the count of the shelf."""
        return self._counting is not None and not self._counting.isHidden()

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
        elif self.is_picture and self.shelf is not None and self.shelf.isVisible():
            self.shelf.picture.setFocus(Qt.FocusReason.ShortcutFocusReason)
        else:
            super().focus_list()

    def focus_search(self) -> None:
        """The count has no search: it follows the shelf."""
        if self.is_counting:
            self.counting.say(tr("Leave the count with Esc to search; what is counted stays"))
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

    def show_paid(self) -> None:
        """Show what was paid for it, to note more or to forget some of it."""
        row = self._chosen()
        if row is not None:
            product = row.bottle.product
            if product.house_made:
                self.banner.say(
                    tr("{title} is made here, not bought.", title=product.title), "info"
                )
            else:
                self._show_paid_for(product)

    def _show_paid_for(self, product: Product) -> None:
        self.banner.clear()
        self.open_dialog(PaymentsDialog(self.context.bar, product, self))

    def open_current(self) -> None:
        """Break the seal."""
        self._act(self.context.bar.inventory.open, tr_noop("Opened {title}"))

    def empty_current(self) -> None:
        """Say that nothing is left."""
        self._act(self.context.bar.inventory.empty, tr_noop("Emptied {title}"))

    def remove_current(self) -> None:
        """Take every chosen one off the shelf."""
        self.clear_refusal()
        bottles = {row.bottle.id: row.bottle.product.title for row in self.chosen}
        if bottles:
            remove = partial(self.context.bar.inventory.remove, *bottles)
            what = one_or_many(list(bottles.values()), "bottles")
            self.do(remove, say=tr("Removed {what}", what=what))
            self.focus_list()

    def receive_another(self) -> None:
        """Put another bottle of the same product at the end of the shelf."""
        row = self._chosen()
        if row is not None:
            product = row.bottle.product
            receive = partial(self.context.bar.inventory.receive, product.id)
            self.do(receive, self._on_received, tr("Received {title}", title=product.title))
            self.focus_list()

    def _on_received(self, bottle: Bottle) -> None:
        product = bottle.product
        if not product.house_made:
            price = price_in_words(product.price, self.context.bar.snapshot.settings.currency)
            asked = tr_noop(
                "What did this {title} cost? Nobody knows its price; nothing is noted yet."
            )
            if price:
                asked = tr_noop(
                    "What did this {title} cost? The last price is {price}; nothing is noted yet."
                )
            asked = tr(asked, title=product.title, price=price)
            self.banner.say(asked, "info", tr("Note it…"), partial(self._show_paid_for, product))
        self._choose(bottle)

    def add_bottle(self) -> None:
        """Ask what came in."""
        self._add(AddBottleDialog(self.context.bar, self))

    def take_code(self, text: str) -> bool:
        """Whether a text is a barcode: then go to what has it, or begin to add what nobody has."""
        snapshot = self.context.bar.snapshot
        if not is_code(snapshot, text):
            return False
        self.banner.clear()
        try:
            found = find_by_code(snapshot, text)
        except UserError as error:  # what was typed stays, to be put right
            self.show_refusal(error)
            return True
        self.clear_filters()
        if found.bottles:
            self._choose(found.bottles[0])
            self.focus_list()
            self.context.toast.say(_found_in_words(found))
        else:
            self._add_by_code(found)
        return True

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """What nobody else on the page wants is the list's: a barcode is read from anywhere."""
        ours = not self.is_counting and self.list_keys is not None
        if not (ours and self.list_keys is not None and self.list_keys.take_key(event)):
            super().keyPressEvent(event)

    def _add_by_code(self, found: OfCode) -> None:
        if (why := held_for(self.actions_by_key["add"])) != "":
            self.banner.say(
                tr("No bottle has the barcode {code}. {why}", code=found.code, why=why), "info"
            )
            return
        dialog = AddBottleDialog(self.context.bar, self)
        if found.products:
            dialog.choose_product(found.products[0])
        else:
            dialog.begin_with_code(found.code)
        self._add(dialog)

    def _add(self, dialog: AddBottleDialog) -> None:
        dialog.added.connect(self._on_added)
        self.open_dialog(dialog)

    def move_current(self, step: int) -> None:
        """Move it past its neighbour in view: -1 up, 1 down the shelf."""
        row = self._chosen()
        if row is None or not (self.is_picture or self._is_shelf_order()):
            return
        shown: Sequence[BottleRow] = self.shown.shown_rows()
        if self.is_picture:
            shown = sorted(shown, key=lambda each: each.place)
        place = shown.index(row) + step
        if not 0 <= place < len(shown):
            told = tr_noop("{name} is the last of the list already.")
            if step < 0:
                told = tr_noop("{name} is the first of the list already.")
            self.banner.say(tr(told, name=row.bottle.product.name), "info")
            return
        along = [each.bottle.id for each in self.table.rows if each is not row]
        along.insert(along.index(shown[place].bottle.id) + (step > 0), row.bottle.id)
        reorder = partial(self.context.bar.inventory.reorder, along)
        told = tr_noop("Moved {name} up the shelf")
        if step > 0:
            told = tr_noop("Moved {name} down the shelf")
        self.do(reorder, say=tr(told, name=row.bottle.product.name))

    def put_before(self, bottle_id: int, before: int | None) -> None:
        """Put a bottle right before another along the shelf; None is behind all others."""
        self.clear_refusal()
        bottles = self.context.bar.snapshot.bottle_by_id
        move = partial(self.context.bar.inventory.move, bottle_id, before)
        name = bottles[bottle_id].product.name
        if before is None:
            said = tr("Moved {name}: it stands last", name=name)
        else:
            other = bottles[before].product.name
            said = tr("Moved {name}: it stands before {other}", name=name, other=other)
        self.do(move, say=said)

    # The list or the picture

    def turn_look(self) -> None:
        """From the list to the picture of the shelf, or back."""
        self.is_picture = not self.is_picture
        words = tr(AS_LIST if self.is_picture else AS_PICTURE)
        self.actions_by_key["look"].setText(words)
        self.look_button.setText(tr("As a list") if self.is_picture else tr("As a picture"))
        self.look_button.setAccessibleName(words.replace("&", ""))
        self.context.state.keep_text(LOOK, "picture" if self.is_picture else "list")
        if self.shelf is None:
            self._make_shelf()
        row = self.current
        self.show_counts(self.shown.rowCount(), len(self.table.rows))
        if row is not None and self.shelf is not None:
            self.shelf.picture.choose(row.bottle.id)
        if self.isVisible():
            self.focus_list()

    def _make_shelf(self) -> None:
        self.shelf = Shelf()
        picture: ShelfPicture = self.shelf.picture
        picture.chosen.connect(self._choose_on_shelf)
        picture.opened.connect(lambda _bottle_id: self.count_current())
        picture.moved.connect(self.put_before)
        picture.take_code = self.take_code
        picture.setContextMenuPolicy(Qt.ContextMenuPolicy.ActionsContextMenu)
        picture.addActions(self._of_the_chosen())
        assert self.list_stack is not None
        self.list_stack.addWidget(self.shelf)
        self._stand_on_shelf(self.table.rows)

    def _stand_on_shelf(self, rows: Sequence[BottleRow]) -> None:
        if self.shelf is not None:
            picture, bar = self.shelf.picture, self.context.bar
            picture.show_rows(rows, bar.snapshot.knowledge.tree)
            picture.may_move = bar.on_paper is None

    def _choose_on_shelf(self, bottle_id: int) -> None:
        """One that the search leaves out is shown with the search cleared."""
        if not self.choose(bottle_id):
            self.show_thing(bottle_id)

    def _chosen(self) -> BottleRow | None:
        self.clear_refusal()
        return self.current

    def _act(self, use_case: Callable[[int], Done[Bottle]], said: str) -> None:
        row = self._chosen()
        if row is not None:
            act = partial(use_case, row.bottle.id)
            self.do(act, say=tr(said, title=row.bottle.product.title))
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
            words = tr(
                "{title} is not poured, so there is nothing to weigh or to dash.",
                title=product.title,
            )
            self.banner.say(words, "info")
            return
        self._open(FactDialog(task_for(self.context.bar, row.bottle), self))

    def _open(self, dialog: LevelDialog | FactDialog | ChangeLabelDialog) -> None:
        dialog.done_with.connect(self.say_done)
        self.open_dialog(dialog)

    def _on_added(self, bottle: Bottle) -> None:
        self.say_done(tr("Added {title}", title=bottle.product.title))
        self._choose(bottle)

    def _choose(self, bottle: Bottle) -> None:
        if not self.choose(bottle.id):
            self.show_thing(bottle.id)

    def _is_shelf_order(self) -> bool:
        shown = self.shown
        if shown.sortColumn() == SHELF and shown.sortOrder() == UPWARDS:
            return True
        words = tr("Bottles can be moved while the list is in the order of the shelf.")
        self.banner.say(words, "info", tr("Sort by shelf"), self._sort_by_shelf)
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
        open_, sealed = states.count("open"), states.count("sealed")
        parts = [tr("{open} open, {sealed} sealed", open=open_, sealed=sealed)]
        low, due = sum(row.low for row in rows), sum(row.due for row in rows)
        parts += [tr("{n} low", n=low)] if low else []
        parts += [tr("{n} due or past use by", n=due)] if due else []
        self.summary.setText(" · ".join(parts) if rows else "")

    # Counting

    @property
    def counting(self) -> CountingPage:
        """Where the shelf is counted, made once that is asked for."""
        if self._counting is None:
            self._counting = self._make_counting()
        return self._counting

    def _make_counting(self) -> CountingPage:
        made = CountingPage(self.context, self._kept_count)
        made.hide()
        made.left.connect(self.leave_count)
        made.confirmed.connect(self.write_counts)
        column = self.layout()
        assert isinstance(column, QVBoxLayout)
        column.addWidget(made, 1)
        order_tabs(made)
        return made

    def _keep_count(self, count: ShelfCount) -> None:
        """Have this counted so far; what is being typed goes on."""
        if self._counting is not None:
            self._counting.count = count
        elif count != self.count:
            self._kept_count.keep(count)

    def _write_counts(self) -> None:
        bottles = bottles_in_words(len(self.count))
        count = partial(self.context.bar.counting.count, self.count.levels)
        self.do(count, self._on_counted, tr("Counted {bottles}", bottles=bottles))

    def _on_counted(self, _counted: Any) -> None:
        self.counting.count = ShelfCount()
        self.leave_count()

    def _remind_of_count(self) -> None:
        """Counts that nobody has confirmed are not forgotten, and say so."""
        many = len(self.count)
        if many:
            bottles = bottles_in_words(many)
            words = tr("{bottles} counted and not written down yet.", bottles=bottles)
            self.banner.say(words, "info", tr("Go on counting"), self.count_shelf)
        elif self.banner.kind == "info":
            self.banner.clear()

    def _show_counting(self, is_counting: bool) -> None:
        # What goes, goes first: room for both at once would make the window grow.
        counting: tuple[QWidget, ...] = (self.counting,)
        going, coming = self._of_the_list, counting
        if not is_counting:
            going, coming = coming, going
        with laid_out_once(self):
            for each in going:
                each.hide()
            for each in coming:
                each.show()
        self.offer_actions()

    # How it is put together

    def _prepare_header(self) -> None:
        self.add_button = button(tr("Add bottle…"), self.add_bottle, "add")
        self.count_button = primary_button(tr("Count the shelf"), self.count_shelf, "count")
        keys = self.actions_by_key["shelf"].shortcut().toString()
        self.count_button.setToolTip(tr("Count the shelf ({keys})", keys=keys))
        self.look_button = button(tr("As a picture"), self.turn_look)
        keys = self.actions_by_key["look"].shortcut().toString()
        self.look_button.setToolTip(tr("Turn between the list and the picture ({keys})", keys=keys))
        self.add_filter(self.look_button)
        self.add_header_button(self.add_button)
        self.add_header_button(self.count_button)

    def _prepare_filters(self) -> None:
        """Below the search: both rows of chips are wide."""
        chips = FlowLayout(gap=PAD)
        for each in (self.kinds, self.states):
            each.chosen.connect(lambda _choice: self.filter_again())
            chips.addWidget(each)
        column = self.layout()
        assert isinstance(column, QVBoxLayout)
        column.insertLayout(2, chips)

    def _prepare_view(self) -> None:
        self.view.setItemDelegateForColumn(LEVEL, LevelDelegate(self.view))
        self.view.verticalHeader().setDefaultSectionSize(scaled(ROW_HEIGHT))
        set_widths(self.view, COLUMN_WIDTHS, whole=(LEFT,))
        self.splitter.setSizes([700, 320])
        sort_by(self.view, SHELF)
        self.view.selectionModel().currentRowChanged.connect(lambda *_rows: self.clear_refusal())
        on_activated(self.view, self.count_current)
        self.search.take_entered = self.take_code
        if self.list_keys is not None:
            self.list_keys.take_code = self.take_code
        for action in self._in_menu_order():
            self.add_bar_action(action)
        self.view.addActions(self._of_the_chosen())

    def _of_the_chosen(self) -> list[QAction]:
        """What the menu over a bottle offers."""
        return [self.actions_by_key[key] for key in (*IN_THE_LIST, "use_up")]

    def _in_menu_order(self) -> Iterator[QAction]:
        """The actions as the Bar menu lists them, in groups."""
        for group in GROUPS:
            yield from (self.actions_by_key[key] for key in group)
            if group is not GROUPS[-1]:
                line = QAction(self)
                line.setSeparator(True)
                yield line


def _found_in_words(found: OfCode) -> str:
    """What has a code, and how many bottles of it there are."""
    names = spoken_list([each.title for each in found.products], "and")
    return f"{names}: {bottles_in_words(len(found.bottles))}"


def _facts_of(bottle: Bottle) -> tuple[str, ...]:
    """The facts of a bottle that can be written down: of what is poured more than of a lime."""
    poured = ("tare", "full", "dasher", "house") if bottle.product.unit == "ml" else ()
    bought = () if bottle.product.house_made else ("paid",)
    return (*poured, "use_by", "label", *bought)


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
    Doing("shelf", tr_noop("Count the &shelf"), "Ctrl+Shift+C", _Page.count_shelf, picture="count"),
    Doing(
        key="count",
        words=tr_noop("&Count bottle…"),
        shortcut="Ctrl+Shift+B",
        act=_Page.count_current,
        picture="count",
        brief=tr_noop("Count…"),
    ),
    Doing("open", tr_noop("&Open"), "Ctrl+Shift+O", _Page.open_current, picture="open-bottle"),
    Doing("pour", tr_noop("&Pour…"), "Ctrl+Shift+P", _Page.pour_current, picture="pour"),
    Doing("waste", tr_noop("&Waste…"), "Ctrl+Shift+W", _Page.waste_current),
    Doing("empty", tr_noop("&Empty"), "Ctrl+Shift+E", _Page.empty_current),
    Doing("correct", tr_noop("Co&rrect…"), "Ctrl+Shift+K", _Page.correct_current),
    Doing("tare", tr_noop("Weigh it e&mpty…"), "", _Page.weigh_empty, picture="scale"),
    Doing("full", tr_noop("Weigh it &full…"), "", _Page.weigh_full, picture="scale"),
    Doing("dasher", tr_noop("Set its das&her…"), "", _Page.set_dasher),
    Doing("house", tr_noop("Make it a house pou&r…"), "", _Page.make_house_pour),
    Doing("use_by", tr_noop("Set its use-b&y day…"), "", _Page.set_use_by),
    Doing("label", tr_noop("Change its &label…"), "F2", _Page.change_label),
    Doing("paid", tr_noop("What was pa&id…"), "Ctrl+Shift+Y", _Page.show_paid, picture="price"),
    Doing(
        key="again",
        words=tr_noop("Receive a&nother"),
        shortcut="Ctrl+Shift+R",
        act=_Page.receive_another,
        picture="bottles",
        brief=tr_noop("Receive"),
    ),
    Doing("add", tr_noop("&Add bottle…"), "Ctrl+N", _Page.add_bottle, picture="add"),
    Doing("remove", tr_noop("Remo&ve"), "Del", _Page.remove_current, picture="remove"),
    Doing(
        "up",
        tr_noop("Move &up the shelf"),
        "Alt+Up",
        lambda page: page.move_current(-1),
        picture="chevron-up",
    ),
    Doing(
        "down",
        tr_noop("Move &down the shelf"),
        "Alt+Down",
        lambda page: page.move_current(1),
        picture="chevron-down",
    ),
    Doing("use_up", USE_UP, "", lambda page: page.context.go("use-up", None), picture="calendar"),
    Doing("look", AS_PICTURE, "Ctrl+Shift+S", lambda page: page.turn_look(), picture="bottles"),
    Doing(
        "write", tr_noop("Confirm the coun&ts…"), "Ctrl+Return", _Page.write_counts, picture="check"
    ),
    Doing("leave", tr_noop("&Leave the count\tEsc"), "", _Page.leave_count, picture="clear"),
)
