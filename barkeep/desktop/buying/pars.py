"""The pars: the least to have of each thing, set and taken away one by one."""

from __future__ import annotations

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtWidgets import QLineEdit, QListWidget, QListWidgetItem, QWidget

from barkeep.application.bar import Bar
from barkeep.application.finding import find_ingredient
from barkeep.desktop.look.metrics import HALF, dialog_width, scaled
from barkeep.desktop.screens.form_dialog import FormDialog
from barkeep.desktop.screens.name_completion import NameCompleter, ingredient_names
from barkeep.desktop.screens.operations import run_operation
from barkeep.desktop.widgets.buttons import button
from barkeep.desktop.widgets.layouts import Card, at_left, column_of
from barkeep.desktop.widgets.list_keys import ListKeys
from barkeep.domain.bar.pars import Par, read_par
from barkeep.domain.bar.snapshot import Settings
from barkeep.domain.pouring.words import plain_amount
from barkeep.errors import InvalidField, UnknownName, UserError
from barkeep.translation import tr, tr_noop

WHAT, AMOUNT, KNOWN = "ingredient", "par", "pars"
WIDTH = 480
LIST_HEIGHT, ROW_HEIGHT = 170, 28
INTRO = tr_noop(
    "A par is the least you want to have of something. What is below it comes on the list."
)
AMOUNT_HINT = tr_noop("An amount, or so many bottles: 1.4 l, 12, 2 bottles.")
NONE_YET = tr_noop("No par is set yet")


class ParsDialog(FormDialog):
    """`changed` comes after each par that is set or taken away; each can be undone."""

    changed = Signal()

    def __init__(self, bar: Bar, parent: QWidget | None = None) -> None:
        super().__init__(tr("Pars"), tr("Set par"), parent)
        self._bar = bar
        self.list = QListWidget()
        ListKeys(self.list)
        self.what, self.amount = QLineEdit(), QLineEdit()
        self.remove_button = button(tr("&Remove par"), self.remove)
        self.remove_button.setAutoDefault(False)
        self.cancel_button.setText(tr("C&lose"))
        self.cancel_button.setAccessibleName(tr("Close"))
        self._add_fields()
        self.say_intro(tr(INTRO))
        self.setMinimumWidth(dialog_width(WIDTH))
        self.show_pars()
        self.what.setFocus()

    def submit(self) -> None:
        self.clear_refusal()
        tree, units = self._bar.snapshot.knowledge.tree, self._bar.snapshot.settings.units
        key = self.read(WHAT, lambda: find_ingredient(tree, self.what.text().strip()))
        if key is None:
            self.has_problems()
            return
        amount = self.read(AMOUNT, lambda: read_par(self.amount.text(), tree[key], units))
        if amount is None or self.has_problems():
            return
        self._set(key, amount)

    def remove(self) -> None:
        """Take the chosen par away."""
        par = self._chosen()
        if par is not None:
            self._set(par.ingredient, 0.0)

    def field_of(self, error: UserError) -> str | None:
        if isinstance(error, UnknownName):
            return WHAT
        if isinstance(error, InvalidField) and error.field == AMOUNT:
            return AMOUNT
        return super().field_of(error)

    def show_pars(self) -> None:
        """List the pars as they are."""
        snapshot = self._bar.snapshot
        tree = snapshot.knowledge.tree
        self._seen = snapshot.settings
        self.list.clear()
        for par in snapshot.settings.pars:
            name = tree.name(par.ingredient)
            entry = QListWidgetItem(
                f"{name}: {plain_amount(par.amount, tree[par.ingredient].unit)}"
            )
            entry.setData(Qt.ItemDataRole.UserRole, par)
            entry.setSizeHint(QSize(0, scaled(ROW_HEIGHT)))
            self.list.addItem(entry)
        if not self.list.count():
            entry = QListWidgetItem(tr(NONE_YET))
            entry.setFlags(Qt.ItemFlag.NoItemFlags)
            self.list.addItem(entry)
        self.remove_button.setEnabled(False)

    def see(self, theirs: Settings) -> None:
        self._bar.refresh()
        self._seen = theirs

    def show_theirs(self) -> None:
        self.what.clear()
        self.amount.clear()
        self.show_pars()
        self.what.setFocus()

    def _set(self, key: str, amount: float) -> None:
        def done(_done: object) -> None:
            self.show_theirs()
            self.changed.emit()

        set_par, seen = self._bar.settings.set_par, self._seen
        run_operation(self, lambda: set_par(key, amount, seen), done)

    def _chosen(self) -> Par | None:
        entry = self.list.currentItem()
        par = None if entry is None else entry.data(Qt.ItemDataRole.UserRole)
        return par if isinstance(par, Par) else None

    def _show_chosen(self) -> None:
        par = self._chosen()
        self.remove_button.setEnabled(par is not None)
        if par is None:
            return
        tree = self._bar.snapshot.knowledge.tree
        self.what.setText(tree.name(par.ingredient))
        self.amount.setText(plain_amount(par.amount, tree[par.ingredient].unit))

    def _add_fields(self) -> None:
        self.list.setFixedHeight(scaled(LIST_HEIGHT))
        self.list.setAccessibleName(tr("Pars"))
        self.list.currentItemChanged.connect(lambda *_items: self._show_chosen())
        known = QWidget()
        column_of(Card(self.list), at_left(self.remove_button), on=known, margins=(0, 0, 0, HALF))
        self.add_field(KNOWN, tr("P&ars"), known, tall=True)
        self.fields[KNOWN].label.setBuddy(self.list)
        self.what.setPlaceholderText(tr("Begin to type any of its names"))
        snapshot = self._bar.snapshot
        names = ingredient_names(snapshot.knowledge.tree, snapshot.owned)
        self.what.setCompleter(NameCompleter(names, self))
        self.add_field(WHAT, tr("&What"), self.what)
        self.amount.setPlaceholderText(tr("Such as 2 bottles"))
        self.add_field(AMOUNT, tr("Leas&t"), self.amount, hint=tr(AMOUNT_HINT))
        self.explain(AMOUNT, "par")
