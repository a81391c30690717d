"""What is chosen to be printed, and what becomes of it: pages to lay out, or a text."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass

from barkeep.application.publishing import cards_of, labels_of, menu_of
from barkeep.documents.cards import CardContent
from barkeep.documents.descriptions import (
    description_html,
    description_markdown,
    description_text,
)
from barkeep.documents.labels import PrepContent, prep_content
from barkeep.documents.menus import MenuContent
from barkeep.documents.paper import Size
from barkeep.documents.print_blocks import job_text
from barkeep.documents.print_jobs import (
    Job,
    cards_job,
    descriptions_job,
    labels_job,
    menu_job,
    prep_job,
)
from barkeep.documents.print_templates import Kind, Template
from barkeep.documents.spec_exports import EXPORT_FORMATS, exported
from barkeep.domain.inventory import Bottle
from barkeep.domain.snapshot import Snapshot
from barkeep.domain.specs import Spec

OF_SPECS: tuple[Kind, ...] = ("card", "menu", "description")
"""Kinds that are made of specs; the others are made of house-made bottles."""


@dataclass(frozen=True)
class PrintChoice:
    """What is printed how. `paper` None is the card itself; `card` counts for cards and labels.

    `strength` and `allergens` say whether a menu marks them.
    """

    template: Template
    paper: Size | None
    card: Size | None = None
    specs: tuple[Spec, ...] = ()
    bottles: tuple[Bottle, ...] = ()
    title: str = ""
    strength: bool = True
    allergens: bool = True

    @property
    def kind(self) -> Kind:
        """What kind of document it is."""
        return self.template.kind

    @property
    def empty(self) -> bool:
        """Whether nothing is chosen to be printed."""
        return not (self.specs if self.kind in OF_SPECS else self.bottles)


@dataclass(frozen=True, slots=True)
class TextForm:
    """One form of text: what it is called, the suffix of its file, and how it is written."""

    title: str
    suffix: str
    write: Callable[[PrintChoice, Snapshot], str]


def job_for(choice: PrintChoice, snapshot: Snapshot) -> Job:
    """The pages to be laid out. Pure, so that it may be asked for off the GUI thread."""
    template, paper, card = choice.template, choice.paper, choice.card
    if choice.kind == "card" and card is not None:
        return cards_job(cards_of(choice.specs, snapshot), template, paper, card)
    if choice.kind == "label" and card is not None:
        return labels_job(labels_of(choice.bottles, snapshot), template, paper, card)
    if paper is None:
        raise ValueError(f"a {choice.kind} needs a paper, and cards and labels their own size")
    if choice.kind == "menu":
        return menu_job(_menu(choice, snapshot), template, paper)
    if choice.kind == "prep":
        return prep_job(_prep(choice, snapshot), template, paper)
    return descriptions_job(cards_of(choice.specs, snapshot), template, paper)


def text_for(choice: PrintChoice, snapshot: Snapshot) -> str:
    """The same as plain text, such as for the clipboard."""
    if choice.kind in ("card", "description"):
        return description_text(cards_of(choice.specs, snapshot))
    return job_text(job_for(choice, snapshot).groups)


def text_forms(kind: Kind) -> Sequence[TextForm]:
    """The forms of text that a kind of document can be saved in, the usual one first."""
    return _FORMS[kind]


def _menu(choice: PrintChoice, snapshot: Snapshot) -> MenuContent:
    return menu_of(
        choice.title,
        choice.specs,
        snapshot,
        strength=choice.strength,
        allergens=choice.allergens,
    )


def _prep(choice: PrintChoice, snapshot: Snapshot) -> PrepContent:
    title = choice.title or f"Prep list, {snapshot.on.isoformat()}"
    return prep_content(title, choice.bottles, snapshot.knowledge, snapshot.on)


def _described(
    write: Callable[[Sequence[CardContent]], str],
) -> Callable[[PrintChoice, Snapshot], str]:
    return lambda choice, snapshot: write(cards_of(choice.specs, snapshot))


def _as_specs(suffix: str) -> Callable[[PrintChoice, Snapshot], str]:
    return lambda choice, snapshot: exported(
        choice.specs, f"specs{suffix}", snapshot.knowledge.tree, snapshot.settings.units
    )


_DESCRIPTIONS = (
    TextForm("Description as text", ".txt", _described(description_text)),
    TextForm("Description as Markdown", ".md", _described(description_markdown)),
    TextForm("Description as a web page", ".html", _described(description_html)),
)
_SPECS = tuple(
    TextForm(f"Specs as {each.title}", each.suffix, _as_specs(each.suffix))
    for each in EXPORT_FORMATS.values()
)
_WORDS = (TextForm("Text", ".txt", text_for),)
_FORMS: Mapping[Kind, Sequence[TextForm]] = {
    "card": (*_SPECS, *_DESCRIPTIONS),
    "menu": (TextForm("Menu as text", ".txt", text_for), *_SPECS),
    "description": (*_DESCRIPTIONS, *_SPECS),
    "label": _WORDS,
    "prep": _WORDS,
}
