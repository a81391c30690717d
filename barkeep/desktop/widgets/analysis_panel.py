"""What a drink comes to: its balance as a picture, its figures in a grid, and how sure they are."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QGridLayout, QLabel, QVBoxLayout, QWidget

from barkeep.desktop.metrics import HALF, UNIT, TypeSize
from barkeep.desktop.models.analysis_view import INFORMATION, AnalysisView
from barkeep.desktop.widgets.balance_picture import BalancePicture
from barkeep.desktop.widgets.labels import text_label
from barkeep.domain.answers.analysis_words import Fact


class AnalysisPanel(QWidget):
    """Shows one view after another; its labels are kept, for it may follow every keystroke."""

    def __init__(self, view: AnalysisView | None = None, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.picture = BalancePicture()
        self._place = _selectable(text_label("", wrap=True))
        self._ranges, self._doubts = _caption(), _caption()
        self._general_head = text_label("Before anyone drinks", TypeSize.STRONG)
        self._general = _caption()
        self._grid = _FactGrid()
        column = QVBoxLayout(self)
        column.setContentsMargins(0, HALF, 0, 0)
        column.setSpacing(HALF)
        for each in (self.picture, self._place, self._ranges):
            column.addWidget(each)
        column.addSpacing(UNIT)
        column.addLayout(self._grid.layout)
        column.addSpacing(UNIT)
        column.addWidget(text_label("How sure this is", TypeSize.STRONG))
        column.addWidget(self._doubts)
        for each in (self._general_head, self._general):
            column.addWidget(each)
        column.addWidget(_caption(INFORMATION))
        if view is not None:
            self.show_view(view)

    def show_view(self, view: AnalysisView) -> None:
        """Show another drink."""
        self.picture.show_bars(view.bars)
        self._place.setText(view.place)
        self._ranges.setText(view.ranges)
        self._ranges.setVisible(bool(view.ranges))
        self._grid.show_facts(view.facts)
        for each in (self._general_head, self._general):
            each.setVisible(bool(view.before_anyone_drinks))
        self._general.setText(view.before_anyone_drinks)
        self._doubts.setText("\n".join(f"• {sentence}" for sentence in view.uncertain))


@dataclass(frozen=True, slots=True)
class _Row:
    label: QLabel
    value: QLabel
    note: QLabel

    def show_fact(self, fact: Fact | None) -> None:
        """Show a fact, or nothing at all."""
        said = ("", "", "") if fact is None else (fact.label, fact.value, fact.note)
        for label, words in zip((self.label, self.value, self.note), said, strict=True):
            label.setText(words)
            label.setVisible(bool(words))


class _FactGrid:
    """Labels at the left, what they say at the right, with a smaller note below it."""

    def __init__(self) -> None:
        self.layout = QGridLayout()
        self.layout.setContentsMargins(0, 0, 0, 0)
        self.layout.setHorizontalSpacing(UNIT + HALF)
        self.layout.setVerticalSpacing(HALF)
        self.layout.setColumnStretch(1, 1)
        self._rows: list[_Row] = []

    def show_facts(self, facts: Sequence[Fact]) -> None:
        """Show these in the order given."""
        while len(self._rows) < len(facts):
            self._rows.append(self._new_row(len(self._rows)))
        for number, row in enumerate(self._rows):
            row.show_fact(facts[number] if number < len(facts) else None)

    def _new_row(self, number: int) -> _Row:
        label = text_label("", quiet=True)
        row = _Row(label, _selectable(text_label("", wrap=True)), _caption())
        words = QVBoxLayout()
        words.setSpacing(0)
        words.addWidget(row.value)
        words.addWidget(row.note)
        self.layout.addWidget(label, number, 0, Qt.AlignmentFlag.AlignTop)
        self.layout.addLayout(words, number, 1)
        return row


def _caption(words: str = "") -> QLabel:
    return _selectable(text_label(words, TypeSize.CAPTION, quiet=True, wrap=True))


def _selectable(label: QLabel) -> QLabel:
    label.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
    return label
