"""The bar's settings: what it is called, what prices are in, and what is always there."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QLineEdit, QWidget

from barkeep.desktop.dialogs.form_dialog import FormDialog
from barkeep.desktop.operations import run_operation
from barkeep.desktop.widgets.check_group import CheckGroup
from barkeep.domain.snapshot import Settings

if TYPE_CHECKING:
    from barkeep.application.bar import Bar
    from barkeep.application.done import Done
    from barkeep.desktop.main_window import MainWindow

WIDTH = 460
NAME, CURRENCY, NOT_THERE = "name", "currency", "not there"
THERE_HINT = (
    "These count as there without a bottle. Untick one that is not: what needs it, "
    "and what is made from it, is then no longer ready."
)


def edit_settings(window: MainWindow) -> None:
    """Ask for the settings of the window's bar."""
    dialog = SettingsDialog(window.bar, window)
    dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    dialog.changed.connect(partial(window.toast.say, "Settings changed", "Undo", window.undo))
    dialog.open()


class SettingsDialog(FormDialog):
    """`changed` comes once something else than before is written."""

    changed = Signal()

    def __init__(self, bar: Bar, parent: QWidget | None = None) -> None:
        super().__init__("Settings", "Save", parent)
        self._bar = bar
        settings, tree = bar.snapshot.settings, bar.snapshot.knowledge.tree
        self.name = QLineEdit(settings.name)
        self.currency = QLineEdit(settings.currency)
        there = sorted((key for key in tree if tree[key].always_there), key=tree.name)
        self.there = CheckGroup({key: tree.name(key) for key in there}, THERE_HINT)
        self.there.choose(frozenset(there) - settings.not_there)
        self._add_fields()
        self.setMinimumWidth(WIDTH)
        self.name.setFocus()
        self.name.selectAll()

    def submit(self) -> None:
        self.clear_refusal()
        wanted = self._wanted()
        if wanted == self._bar.snapshot.settings:
            self.accept()
            return
        run_operation(self, lambda: self._bar.settings.change(wanted), self._finish)

    def _wanted(self) -> Settings:
        """What the fields say, checked by nobody yet."""
        not_there = frozenset(self.there.boxes) - set(self.there.chosen)
        return Settings(self.name.text(), self.currency.text().strip().upper(), not_there)

    def _finish(self, done: Done[Settings]) -> None:
        self.accept()
        if done.changes:
            self.changed.emit()

    def _add_fields(self) -> None:
        self.add_field(NAME, "&Name of the bar", self.name)
        self.currency.setPlaceholderText("Three letters, such as EUR")
        self.add_field(CURRENCY, "&Currency", self.currency)
        self.add_field(NOT_THERE, "&Always there", self.there)
        self.fields[NOT_THERE].label.setMinimumHeight(self.name.sizeHint().height())
        self.there.ticked.connect(lambda: self.forgive(NOT_THERE))
