"""What the owner says of stand-ins: adding one of their own, and taking it back."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import QMenu, QPushButton

from barkeep.desktop.dialogs.own_stand_in import OwnStandInDialog
from barkeep.desktop.icons import wear
from barkeep.desktop.models.ingredient_rows import IngredientRow
from barkeep.desktop.models.stand_in_words import own_for
from barkeep.desktop.operations import run_operation
from barkeep.desktop.screens.table_screen import TableScreen
from barkeep.desktop.widgets.buttons import button, primary_button
from barkeep.domain.ingredients import FamilyTree
from barkeep.domain.knowledge import StandIn

ADD, REMOVE = "Add a stand-in", "Remove my stand-in"
REMOVE_BUTTON = "remove-own"


class StandInWork:
    """Works on the stand-ins of the ingredient that is chosen on `screen`."""

    def __init__(self, screen: TableScreen[IngredientRow]) -> None:
        self._screen = screen
        self._bar = screen.context.bar
        self.dialog: OwnStandInDialog | None = None
        self.choice: QMenu | None = None
        """Which of several to remove, while that is asked."""
        self.add_button = primary_button(f"{ADD}…", self.add, "add")
        keys = QKeySequence.StandardKey
        self.add_action = self._action(f"&{ADD}…", keys.New, "add", self.add)
        remove = f"Remo&{REMOVE[4:]}"
        self.remove_action = self._action(remove, keys.Delete, "remove", self.remove)
        screen.add_header_button(self.add_button)

    def allow(self) -> None:
        """Offer what can be done with the chosen ingredient."""
        is_chosen = self._screen.current is not None
        self.add_action.setEnabled(is_chosen)
        self.add_button.setEnabled(is_chosen)
        self.remove_action.setEnabled(bool(self.own))

    @property
    def own(self) -> tuple[StandIn, ...]:
        """The owner's stand-ins for the chosen ingredient."""
        row = self._screen.current
        return () if row is None else own_for(self._bar.snapshot.knowledge, row.key)

    def buttons(self) -> tuple[QPushButton, ...]:
        """What the details offer."""
        own = self.own
        if not own:
            return ()
        made = button(REMOVE if len(own) == 1 else f"{REMOVE}…", self.remove)
        made.setObjectName(REMOVE_BUTTON)
        return (made,)

    def add(self) -> None:
        """Ask what may be poured instead of the chosen ingredient."""
        row = self._screen.current
        if row is None:
            return
        self._screen.clear_refusal()
        self.dialog = dialog = OwnStandInDialog(self._bar, row.key, self._screen)
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        dialog.added.connect(self._on_added)
        dialog.finished.connect(self._on_closed)
        dialog.open()

    def remove(self) -> None:
        """Take the owner's stand-in back; of several, ask which."""
        own = self.own
        if len(own) == 1:
            self._remove(own[0])
        elif own:
            self._ask_which(own)

    def _ask_which(self, own: tuple[StandIn, ...]) -> None:
        self.choice = menu = QMenu(self._screen)
        menu.setAccessibleName(REMOVE)
        menu.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        for entry in own:
            action = menu.addAction(self._tree.name(entry.offered).replace("&", "&&"))
            action.triggered.connect(partial(self._remove, entry))
        menu.setActiveAction(menu.actions()[0])
        menu.popup(self._below_button())

    def _below_button(self) -> QPoint:
        screen = self._screen
        near = screen.detail.findChild(QPushButton, REMOVE_BUTTON) or screen.view
        corner = near.rect().bottomLeft() if near is not screen.view else near.rect().center()
        return near.mapToGlobal(corner)

    def _remove(self, entry: StandIn, _checked: bool = False) -> None:
        remove = partial(self._bar.knowledge.remove_stand_in, entry.wanted, entry.offered)
        self._screen.do(remove, say=f"Removed your stand-in {self._name(entry.offered)}")
        # The details, and with them the button that was pressed, are built anew.
        self._screen.focus_list()

    def _on_added(self, entry: StandIn) -> None:
        offered = self._tree.name(entry.offered)
        said = f"{offered} stands in for {self._name(entry.wanted)}"
        undo = partial(run_operation, self._screen, self._bar.undo)
        self._screen.context.toast.say(said, "Undo", undo)

    def _on_closed(self, _result: int) -> None:
        self.dialog = None
        self._screen.focus_list()

    @property
    def _tree(self) -> FamilyTree:
        return self._bar.snapshot.knowledge.tree

    def _name(self, key: str) -> str:
        return self._tree.in_sentence(key)

    def _action(
        self,
        words: str,
        keys: QKeySequence.StandardKey,
        picture: str,
        act: Callable[[], object],
    ) -> QAction:
        action = QAction(words, self._screen)
        action.setShortcut(QKeySequence(keys))
        wear(action, picture)
        action.triggered.connect(lambda: act())
        self._screen.add_bar_action(action)
        return action
