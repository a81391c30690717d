"""A row of a list of bottles as fields: what is wrong below each, its likely answer in it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QGridLayout, QLabel, QLineEdit, QWidget

from barkeep.desktop.ingredients.own_ingredient import Way
from barkeep.desktop.ingredients.teaching import teach_buttons
from barkeep.desktop.look.metrics import HALF, PAD, UNIT, TypeSize, set_style
from barkeep.desktop.screens.name_completion import NameCompleter, complete_with, ingredient_names
from barkeep.desktop.widgets.buttons import button
from barkeep.desktop.widgets.chips import FlowLayout
from barkeep.desktop.widgets.labels import in_danger, text_label
from barkeep.desktop.widgets.layouts import SPRING, column_of
from barkeep.documents.bottles_csv import ListedRow
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import capitalised
from barkeep.translation import tr, tr_noop

LABELS: Mapping[str, str] = {
    "product": tr_noop("&Product"),
    "maker": tr_noop("&Maker"),
    "ingredient": tr_noop("I&ngredient"),
    "abv": tr_noop("S&trength"),
    "size": tr_noop("Si&ze"),
    "level": tr_noop("&Level"),
    "price": tr_noop("Pri&ce"),
    "opened": tr_noop("&Opened"),
    "sugar": tr_noop("Su&gar"),
    "shape": tr_noop("S&hape"),
    "tare": tr_noop("T&are"),
    "use_by": tr_noop("Use &by"),
    "house_made": tr_noop("Made &here"),
    "made": tr_noop("Ma&de on"),
    "received": tr_noop("Recei&ved"),
    "barcode": tr_noop("Barcod&e"),
    "acid": tr_noop("Acid"),
    "density": tr_noop("Densit&y"),
    "full": tr_noop("&Full weight"),
    "dash": tr_noop("Dash"),
}
SELDOM = frozenset(LABELS) - {
    *("product", "maker", "ingredient", "abv", "size", "level", "price", "opened")
}
"""Columns that few lists have: their fields are shown where a row has something there."""


@dataclass(frozen=True, slots=True)
class _Field:
    label: QLabel
    edit: QLineEdit
    problem: QLabel

    def show(self, shown: bool) -> None:
        """Show or hide all of it but the problem, which shows itself."""
        self.label.setVisible(shown)
        self.edit.setVisible(shown)


class RepairForm(QWidget):
    """`used` says that the row is to be read as the fields say, `typed` that one was written in.

    `teach_chosen` carries the words of the row's ingredient, which name nothing that is
    known, and as what they are to be taught, where `teachable`.
    """

    used = Signal()
    typed = Signal()
    teach_chosen = Signal(str, str)

    def __init__(self, tree: FamilyTree, *, teachable: bool, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._teachable = teachable
        self.heading = text_label("", TypeSize.SUBTITLE, wrap=True)
        self.whole = in_danger(text_label("", wrap=True))
        self.fields = {name: _field(label) for name, label in LABELS.items()}
        self.use_button = button(tr("&Use this row"), self.used.emit)
        self.teach_buttons = tuple(teach_buttons("", self._teach))
        self.use_button.setAutoDefault(False)
        self._lay_out()
        self.offer_names(tree)
        for field in self.fields.values():
            field.edit.textEdited.connect(lambda _text: self.typed.emit())
            field.edit.returnPressed.connect(self.used.emit)

    @property
    def cells(self) -> dict[str, str]:
        """What the fields say."""
        return {name: each.edit.text().strip() for name, each in self.fields.items()}

    def offer_names(self, tree: FamilyTree) -> None:
        """Offer the names of these ingredients while one is typed."""
        completer = NameCompleter(ingredient_names(tree), self)
        complete_with(self.fields["ingredient"].edit, completer, lambda _index: self.typed.emit())
        completer.picked.connect(self.used.emit)

    def _teach(self, _words: str, way: Way) -> None:
        self.teach_chosen.emit(self.cells["ingredient"], way)

    def show_row(self, row: ListedRow, typed: Mapping[str, str] | None) -> None:
        """Show a row; what was typed before stands as it was typed, else likely answers do."""
        problems = {each.column: each for each in row.problems}
        self.heading.setText(tr("Row {row}", row=row.row))
        whole = problems.get("")
        self.whole.setText("" if whole is None else f"{capitalised(whole.message)}.")
        self.whole.setVisible(whole is not None)
        for name, field in self.fields.items():
            problem = problems.get(name)
            likely = "" if problem is None else problem.likely
            text = likely or row.cells.get(name, "") if typed is None else typed.get(name, "")
            field.edit.setText(text)
            field.edit.setCursorPosition(0)
            field.show(name not in SELDOM or bool(text) or problem is not None)
            _say(field, "" if problem is None else f"{capitalised(problem.message)}")
        unknown = any(each.unknown for each in row.problems)
        for button_of in self.teach_buttons:
            button_of.setVisible(self._teachable and unknown)

    def focus_first(self) -> QLabel:
        """Go to the first field that something is wrong with, its text marked; what is wrong."""
        wrong = [each for each in self.fields.values() if each.problem.text()]
        first = (wrong or list(self.fields.values()))[0]
        first.edit.setFocus(Qt.FocusReason.OtherFocusReason)
        first.edit.selectAll()
        return first.problem

    def _lay_out(self) -> None:
        grid = QGridLayout()
        grid.setHorizontalSpacing(UNIT + HALF)
        grid.setVerticalSpacing(HALF)
        grid.setColumnStretch(1, 1)
        for number, field in enumerate(self.fields.values()):
            top = Qt.AlignmentFlag.AlignTop
            field.label.setMinimumHeight(field.edit.sizeHint().height())
            grid.addWidget(field.label, 2 * number, 0, top)
            grid.addWidget(field.edit, 2 * number, 1)
            grid.addWidget(field.problem, 2 * number + 1, 1)
        buttons = FlowLayout((self.use_button, *self.teach_buttons), HALF)
        column_of(self.heading, self.whole, HALF, grid, UNIT, buttons, SPRING, on=self, margins=PAD)


def _field(label: str) -> _Field:
    words, edit = text_label(tr(label)), QLineEdit()
    words.setBuddy(edit)
    words.setTextFormat(Qt.TextFormat.AutoText)  # a buddy's mnemonic is drawn, not printed
    edit.setAccessibleName(tr(label).replace("&", ""))
    problem = text_label("", TypeSize.CAPTION, wrap=True)
    problem.hide()
    return _Field(words, edit, problem)


def _say(field: _Field, sentence: str) -> None:
    """Say below a field what is wrong, or nothing."""
    in_danger(field.problem).setText(sentence)
    field.problem.setVisible(bool(sentence))
    field.edit.setAccessibleDescription(sentence)
    if bool(field.edit.property("invalid")) != bool(sentence):
        set_style(field.edit, "invalid", bool(sentence))
