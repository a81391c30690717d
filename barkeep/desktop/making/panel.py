"""Beside the form of what is made here: what it takes, what it gives, what to mind."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import Qt
from PySide6.QtGui import QPalette
from PySide6.QtWidgets import QFrame, QLabel, QScrollArea, QVBoxLayout, QWidget

from barkeep.desktop.look.metrics import UNIT, TypeSize
from barkeep.desktop.look.tones import current_tones
from barkeep.desktop.widgets.details import add_heading, grid_of_rows, selectable
from barkeep.desktop.widgets.labels import text_label
from barkeep.domain.bottles.bottle import Bottle
from barkeep.domain.bottles.level_words import quantity
from barkeep.domain.ingredients.relations import MadeFrom
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.making.house_made import (
    Making,
    drawn_in_words,
    figures_in_words,
    short_in_words,
)
from barkeep.errors import spoken_list


@dataclass(frozen=True, slots=True)
class InputRow:
    """One input: how much, of what, and where it comes from; `short` where it does not do."""

    amount: str
    name: str
    source: str
    short: bool


@dataclass(frozen=True, slots=True)
class MakingView:
    """A batch in words, part by part."""

    inputs: tuple[InputRow, ...]
    short: tuple[str, ...]
    past: tuple[str, ...]
    gives: tuple[str, ...]
    how: str
    cautions: tuple[str, ...]


def making_view(plan: Making, tree: FamilyTree) -> MakingView:
    """The words of a batch."""
    rows = tuple(
        InputRow(
            quantity(each.need, each.unit),
            tree.name(each.ingredient),
            drawn_in_words(each),
            each.short,
        )
        for each in plan.inputs
    )
    comes_to = figures_in_words(plan.figures)
    keeps = f"Made on {plan.made}, use by {plan.use_by}." if plan.use_by else ""
    gives = (comes_to, *plan.figures.unknown, keeps, *plan.notes)
    return MakingView(
        inputs=rows,
        short=tuple(short_in_words(each, tree) for each in plan.short),
        past=plan.past,
        gives=tuple(each for each in gives if each),
        how=plan.recipe.how,
        cautions=plan.cautions,
    )


def recipe_words(recipe: MadeFrom, tree: FamilyTree) -> str:
    """A recipe by what it takes, to choose it by."""
    inputs = spoken_list([tree.in_sentence(each.ingredient) for each in recipe.inputs], "and")
    return f"Your own: {inputs}" if recipe.own else f"From {inputs}"


def made_words(bottle: Bottle) -> str:
    """What has come on the shelf, and how long it keeps."""
    said = quantity(bottle.level.amount, bottle.product.unit)
    keeps = f", use by {bottle.use_by}" if bottle.use_by else ""
    return f"{bottle.product.name} is on the shelf: {said}{keeps}."


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
