"""What the owner does with one bottle: asked for in a dialog or done at once, always undoable."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import partial
from typing import TYPE_CHECKING, TypeAlias

from PySide6.QtCore import Qt

from barkeep.application.done import Done
from barkeep.desktop.dialogs.add_bottle import AddBottleDialog
from barkeep.desktop.dialogs.bottle_facts import (
    FactDialog,
    FactTask,
    dasher_task,
    weigh_empty_task,
    weigh_full_task,
)
from barkeep.desktop.dialogs.change_label import ChangeLabelDialog
from barkeep.desktop.dialogs.level_dialog import LevelDialog
from barkeep.desktop.dialogs.level_task import (
    LevelTask,
    correct_task,
    count_task,
    pour_task,
    waste_task,
)
from barkeep.desktop.models.bottle_rows import SHELF, BottleRow
from barkeep.desktop.operations import run_operation
from barkeep.desktop.screens.table_screen import TableScreen, sort_by
from barkeep.domain.inventory import Bottle

if TYPE_CHECKING:
    from barkeep.application.bar import Bar

BottleDialog: TypeAlias = LevelDialog | FactDialog | ChangeLabelDialog | AddBottleDialog
UPWARDS = Qt.SortOrder.AscendingOrder


class BottleWork:
    """Works on the bottle that is chosen on `screen`."""

    def __init__(self, screen: TableScreen[BottleRow]) -> None:
        self._screen = screen
        self._bar = screen.context.bar
        self.dialog: BottleDialog | None = None

    def count(self) -> None:
        """Ask for one bottle's exact level."""
        self._ask(lambda row: count_task(self._bar, row.bottle, row.ingredient))

    def pour(self) -> None:
        """Ask how much is taken for use."""
        self._ask(lambda row: pour_task(self._bar, row.bottle))

    def waste(self) -> None:
        """Ask how much is written off."""
        self._ask(lambda row: waste_task(self._bar, row.bottle))

    def correct(self) -> None:
        """Ask by how much the ledger is wrong."""
        self._ask(lambda row: correct_task(self._bar, row.bottle))

    def weigh_empty(self) -> None:
        """Ask what the empty bottle weighs."""
        self._ask_fact(weigh_empty_task)

    def weigh_full(self) -> None:
        """Ask what the full bottle weighs."""
        self._ask_fact(weigh_full_task)

    def set_dasher(self) -> None:
        """Ask what one dash from it comes to."""
        self._ask_fact(dasher_task)

    def change_label(self) -> None:
        """Ask what its label really says."""
        row = self._chosen()
        if row is not None:
            dialog = ChangeLabelDialog(self._bar, row.bottle.product, self._screen)
            dialog.done_with.connect(self._say)
            self._show(dialog)

    def open(self) -> None:
        """Break the seal."""
        self._act(self._bar.inventory.open, "Opened")

    def empty(self) -> None:
        """Say that nothing is left."""
        self._act(self._bar.inventory.empty, "Emptied")

    def remove(self) -> None:
        """Take it off the shelf."""
        self._act(self._bar.inventory.remove, "Removed")

    def receive_another(self) -> None:
        """Put another bottle of the same product at the end of the shelf."""
        row = self._chosen()
        if row is not None:
            product = row.bottle.product
            receive = partial(self._bar.inventory.receive, product.id)
            self._screen.do(receive, self._choose, f"Received {product.title}")
            self._screen.focus_list()

    def add(self) -> None:
        """Ask what came in."""
        dialog = AddBottleDialog(self._bar, self._screen)
        dialog.added.connect(self._on_added)
        self._show(dialog)

    def shift(self, step: int) -> None:
        """Move it past its neighbour in the list: -1 up, 1 down the shelf."""
        row = self._chosen()
        if row is None or not self._is_shelf_order():
            return
        shown: Sequence[BottleRow] = self._screen.shown.shown_rows()
        place = shown.index(row) + step
        if not 0 <= place < len(shown):
            return
        along = [each.bottle.id for each in self._screen.table.rows if each is not row]
        along.insert(along.index(shown[place].bottle.id) + (step > 0), row.bottle.id)
        reorder = partial(self._bar.inventory.reorder, along)
        way = "up" if step < 0 else "down"
        self._screen.do(reorder, say=f"Moved {row.bottle.product.name} {way} the shelf")

    def _chosen(self) -> BottleRow | None:
        self._screen.clear_refusal()
        return self._screen.current

    def _act(self, use_case: Callable[[int], Done[Bottle]], said: str) -> None:
        row = self._chosen()
        if row is not None:
            act = partial(use_case, row.bottle.id)
            self._screen.do(act, say=f"{said} {row.bottle.product.title}")
            # The details, and with them the button that was pressed, are built anew.
            self._screen.focus_list()

    def _ask(self, task_for: Callable[[BottleRow], LevelTask]) -> None:
        row = self._chosen()
        if row is not None:
            dialog = LevelDialog(task_for(row), self._screen)
            dialog.done_with.connect(self._say)
            self._show(dialog)

    def _ask_fact(self, task_for: Callable[[Bar, Bottle], FactTask]) -> None:
        row = self._chosen()
        if row is None:
            return
        product = row.bottle.product
        if product.unit != "ml":
            words = f"{product.title} is not poured, so there is nothing to weigh or to dash."
            self._screen.banner.say(words, "info")
            return
        dialog = FactDialog(task_for(self._bar, row.bottle), self._screen)
        dialog.done_with.connect(self._say)
        self._show(dialog)

    def _show(self, dialog: BottleDialog) -> None:
        self.dialog = dialog
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        dialog.finished.connect(self._on_closed)
        dialog.open()

    def _on_closed(self, _result: int) -> None:
        self.dialog = None
        self._screen.focus_list()

    def _on_added(self, bottle: Bottle) -> None:
        self._say(f"Added {bottle.product.title}")
        self._choose(bottle)

    def _say(self, said: str) -> None:
        undo = partial(run_operation, self._screen, self._bar.undo)
        self._screen.context.toast.say(said, "Undo", undo)

    def _choose(self, bottle: Bottle) -> None:
        if not self._screen.choose(bottle.id):
            self._screen.show_thing(bottle.id)

    def _is_shelf_order(self) -> bool:
        shown = self._screen.shown
        if shown.sortColumn() == SHELF and shown.sortOrder() == UPWARDS:
            return True
        words = "Bottles can be moved while the list is in the order of the shelf."
        self._screen.banner.say(words, "info", "Sort by shelf", self._sort_by_shelf)
        return False

    def _sort_by_shelf(self) -> None:
        self._screen.banner.clear()
        sort_by(self._screen.view, SHELF)
        self._screen.focus_list()
