"""The text that goes with an episode: all its drinks, then what to mind, once."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from barkeep.documents.cards import CardContent
from barkeep.documents.descriptions import (
    CAUTIONS,
    description_markdown,
    description_text,
    marked,
)
from barkeep.documents.run_sheet import all_cautions, removed_in_words


def episode_text(
    title: str,
    cards: Sequence[CardContent],
    removed: Sequence[str] = (),
    general_cautions: Sequence[str] = (),
) -> str:
    """Plain text; `removed` names drinks whose spec is no longer there."""
    parts = [title]
    parts += [description_text([_bare(card)]).strip() for card in cards]
    if removed:
        parts.append(removed_in_words(removed))
    if cautions := all_cautions(cards, general_cautions):
        parts.append("\n".join((CAUTIONS, *(f"- {each}" for each in cautions))))
    return "\n\n---\n\n".join(parts) + "\n"


def episode_markdown(
    title: str,
    cards: Sequence[CardContent],
    removed: Sequence[str] = (),
    general_cautions: Sequence[str] = (),
) -> str:
    """Markdown; the episode's title stands above the drinks' own headings."""
    parts = [f"# {marked(title)}"]
    # A drink's own heading is its first line, one rank below the episode's.
    parts += [f"#{description_markdown([_bare(card)]).strip()}" for card in cards]
    if removed:
        parts.append(f"*{marked(removed_in_words(removed))}*")
    if cautions := all_cautions(cards, general_cautions):
        told = "\n".join(f"- {marked(each)}" for each in cautions)
        parts.append(f"## {CAUTIONS}\n\n{told}")
    return "\n\n".join(parts) + "\n"


def _bare(card: CardContent) -> CardContent:
    """The card without its cautions, which are said once for all drinks."""
    return replace(card, cautions=())
