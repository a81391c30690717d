"""Beside the form of what is made here: what it takes, what it gives, what to mind."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QPalette
from PySide6.QtWidgets import QFrame, QLabel, QScrollArea, QVBoxLayout, QWidget

from barkeep.desktop.metrics import UNIT, TypeSize
from barkeep.desktop.models.making_view import MakingView
from barkeep.desktop.tones import current_tones
from barkeep.desktop.widgets.labels import text_label
from barkeep.desktop.widgets.sections import add_heading, grid_of_rows, selectable

LEAST_WIDTH = 360


class MakingPanel(QScrollArea):
    """Built anew for each batch."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAccessibleName("What it takes and gives")
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.viewport().setAutoFillBackground(False)
        self.setMinimumWidth(LEAST_WIDTH)

    def say(self, sentence: str) -> None:
        """Show nothing but a sentence: what is still to be filled in."""
        column = self._begin()
        column.addWidget(text_label(sentence, quiet=True, wrap=True))
        column.addStretch(1)

    def show_view(self, view: MakingView) -> None:
        """Show a batch."""
        column = self._begin()
        column.addWidget(text_label("It takes", TypeSize.STRONG))
        self._add_inputs(column, view)
        for sentence in view.short:
            column.addWidget(_warning(sentence))
        for sentence in view.past:
            column.addWidget(text_label(sentence, quiet=True, wrap=True))
        add_heading(column, "It gives")
        for sentence in view.gives:
            column.addWidget(selectable(text_label(sentence, wrap=True)))
        if view.how:
            add_heading(column, "How")
            column.addWidget(selectable(text_label(view.how, wrap=True)))
        if view.cautions:
            add_heading(column, "To mind")
            for sentence in view.cautions:
                column.addWidget(selectable(text_label(sentence, wrap=True)))
        column.addStretch(1)

    def _add_inputs(self, column: QVBoxLayout, view: MakingView) -> None:
        grid = grid_of_rows()
        grid.setColumnStretch(1, 0)
        grid.setColumnStretch(2, 1)
        top = Qt.AlignmentFlag.AlignTop
        for number, row in enumerate(view.inputs):
            amount = text_label(row.amount)
            amount.setAlignment(Qt.AlignmentFlag.AlignRight | top)
            grid.addWidget(amount, number, 0, top)
            grid.addWidget(text_label(row.name), number, 1, top)
            source = text_label(row.source, quiet=not row.short, wrap=True)
            grid.addWidget(_warn(source) if row.short else source, number, 2, top)
        column.addLayout(grid)

    def _begin(self) -> QVBoxLayout:
        page = QWidget()
        column = QVBoxLayout(page)
        column.setContentsMargins(0, 0, UNIT, 0)
        column.setSpacing(UNIT)
        self.setWidget(page)
        page.setAutoFillBackground(False)  # a scroll area fills what it is given
        return column


def _warning(sentence: str) -> QLabel:
    return _warn(text_label(sentence, wrap=True))


def _warn(label: QLabel) -> QLabel:
    colours = label.palette()
    colours.setColor(QPalette.ColorRole.WindowText, current_tones().danger)
    label.setPalette(colours)
    return label
