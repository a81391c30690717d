"""One thing to be printed: what, on which sheets, and how it looks. Nothing of Qt."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from barkeep.documents.printed.blocks import (
    Group,
    card_blocks,
    description_groups,
    label_blocks,
    menu_groups,
    prep_groups,
)
from barkeep.documents.printed.cards import CardContent
from barkeep.documents.printed.labels import LabelContent, PrepContent
from barkeep.documents.printed.menus import MenuContent
from barkeep.documents.printed.paper import Grid, Size, grid_for
from barkeep.documents.printed.run_sheet import RunSheetContent, run_sheet_groups
from barkeep.documents.printed.templates import Template
from barkeep.translation import tr


@dataclass(frozen=True)
class CardJob:
    """Cards or labels, one group of blocks each, edge to edge on `grid`'s sheets."""

    template: Template
    grid: Grid
    groups: tuple[Group, ...]
    title: str

    @property
    def sheet(self) -> Size:
        """The sheet it is printed on."""
        return self.grid.sheet


@dataclass(frozen=True)
class FlowJob:
    """Groups of blocks that run down the columns of as many sheets as they need."""

    template: Template
    sheet: Size
    groups: tuple[Group, ...]
    title: str


Job = CardJob | FlowJob


def cards_job(
    cards: Sequence[CardContent], template: Template, paper: Size | None, card: Size
) -> CardJob:
    """Spec cards; without `paper` each is a sheet of its own."""
    groups = tuple(card_blocks(each, template.parts) for each in cards)
    return CardJob(template, _grid(paper, card), groups, _title(tr("Spec cards"), cards))


def labels_job(
    labels: Sequence[LabelContent], template: Template, paper: Size | None, label: Size
) -> CardJob:
    """Labels; without `paper` each is a sheet of its own."""
    groups = tuple(label_blocks(each, template.parts) for each in labels)
    return CardJob(template, _grid(paper, label), groups, tr("Labels"))


def menu_job(menu: MenuContent, template: Template, paper: Size) -> FlowJob:
    """A menu."""
    return FlowJob(template, paper, menu_groups(menu, template.parts), menu.title or tr("Menu"))


def prep_job(prep: PrepContent, template: Template, paper: Size) -> FlowJob:
    """A prep list."""
    return FlowJob(template, paper, prep_groups(prep, template.parts), prep.title)


def descriptions_job(cards: Sequence[CardContent], template: Template, paper: Size) -> FlowJob:
    """Drinks described."""
    groups = description_groups(cards, template.parts)
    return FlowJob(template, paper, groups, _title(tr("Descriptions"), cards))


def run_sheet_job(sheet: RunSheetContent, template: Template, paper: Size) -> FlowJob:
    """A run sheet."""
    groups = run_sheet_groups(sheet, template.parts)
    return FlowJob(template, paper, groups, tr("Run sheet, {theme}", theme=sheet.theme))


def _grid(paper: Size | None, card: Size) -> Grid:
    return Grid(card, card, 1, 1) if paper is None else grid_for(paper, card)


def _title(plural: str, cards: Sequence[CardContent]) -> str:
    return cards[0].name if len(cards) == 1 else plural
