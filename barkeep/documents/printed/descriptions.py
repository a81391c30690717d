"""A drink, or an episode of them, described for others: plain text, Markdown and HTML."""

from __future__ import annotations

import html
from collections.abc import Callable, Iterator, Sequence
from dataclasses import replace

from barkeep.documents.printed.cards import CardContent
from barkeep.documents.printed.run_sheet import all_cautions, removed_in_words
from barkeep.documents.specs.markdown import escaped
from barkeep.domain.drink.picture import DrinkPicture
from barkeep.domain.phrases import capitalised
from barkeep.translation import tr, tr_about, tr_noop

CAUTIONS = tr_noop("Please mind")
Draw = Callable[[DrinkPicture], str]
"""Draws a drink as an SVG element that stands in a page."""


def description_text(cards: Sequence[CardContent]) -> str:
    """Plain text; drinks are parted by a line of dashes."""
    return "\n---\n\n".join("\n".join(_text(card)) + "\n" for card in cards)


def description_markdown(cards: Sequence[CardContent]) -> str:
    """Markdown; each drink under a heading of its own."""
    return "\n".join("\n".join(_markdown(card)) + "\n" for card in cards)


def description_html(
    cards: Sequence[CardContent], title: str = "", draw: Draw | None = None
) -> str:
    """A whole HTML page. Texts of any direction stand as they read (`dir="auto"`).

    Who can `draw` has each drink in its glass stand in it, with the same in words.
    """
    named = title or ", ".join(card.name for card in cards)
    language = tr_about("the code of the language that is spoken", "en")
    articles = "\n".join(line for card in cards for line in _html(card, draw))
    return (
        f'<!DOCTYPE html>\n<html lang="{language}">\n<head>\n<meta charset="utf-8">\n'
        f"<title>{html.escape(named)}</title>\n</head>\n<body>\n{articles}\n</body>\n</html>\n"
    )


def _facts(card: CardContent) -> str:
    """Strength and the like in one sentence."""
    said = [card.serves, card.strength, card.standard_drinks]
    words = ", ".join(each for each in said if each)
    return capitalised(words) + "." if words else ""


def _endings(card: CardContent) -> Iterator[str]:
    """What is said after the method, each a sentence."""
    if card.credit:
        yield tr("Credit: {credit}.", credit=card.credit)
    if facts := _facts(card):
        yield facts
    if card.allergens:
        yield f"{card.allergens}."


def _text(card: CardContent) -> Iterator[str]:
    yield card.name
    if card.riff:
        yield card.riff
    yield ""
    yield from (f"{line.both} {line.name}".strip() for line in card.lines)
    yield from (f"{word}: {text}" for word, text in card.service)
    for paragraph in card.method:
        yield ""
        yield paragraph
    endings = list(_endings(card))
    if endings:
        yield ""
        yield from endings
    if card.cautions:
        yield f"\n{tr(CAUTIONS)}"
        yield from (f"- {caution}" for caution in card.cautions)


def _markdown(card: CardContent) -> Iterator[str]:
    yield f"# {escaped(card.name)}\n"
    if card.riff:
        yield f"*{escaped(card.riff)}*\n"
    for line in card.lines:
        amount = f"**{escaped(line.both)}** " if line.both else ""
        yield f"- {amount}{escaped(line.name)}"
    if card.service:
        yield ""
        yield from (f"- {word}: {escaped(text)}" for word, text in card.service)
    yield from (f"\n{escaped(paragraph)}" for paragraph in card.method)
    yield from (f"\n{escaped(ending)}" for ending in _endings(card))
    if card.cautions:
        yield f"\n## {tr(CAUTIONS)}\n"
        yield from (f"- {escaped(caution)}" for caution in card.cautions)


def _html(card: CardContent, draw: Draw | None) -> Iterator[str]:
    yield "<article>"
    yield _element("h1", card.name)
    if card.riff:
        yield _element("p", card.riff)
    if draw is not None and card.picture is not None:
        words = html.escape(card.picture.in_words, quote=True)
        yield f'<figure role="img" aria-label="{words}">{draw(card.picture)}</figure>'
    yield from _list(card.lines, lambda line: (line.both, line.name))
    yield from _list(card.service, lambda each: (f"{each[0]}:", each[1]))
    yield from (_element("p", paragraph) for paragraph in card.method)
    yield from (_element("p", ending) for ending in _endings(card))
    if card.cautions:
        yield _element("h2", tr(CAUTIONS))
        yield from _list(card.cautions, lambda caution: ("", caution))
    yield "</article>"


def _list(things: Sequence[object], parts: Callable[..., tuple[str, str]]) -> Iterator[str]:
    if not things:
        return
    yield "<ul>"
    for thing in things:
        strong, text = parts(thing)
        front = f"<strong>{html.escape(strong)}</strong> " if strong else ""
        yield f'<li dir="auto">{front}{html.escape(text)}</li>'
    yield "</ul>"


def _element(name: str, text: str) -> str:
    return f'<{name} dir="auto">{html.escape(text)}</{name}>'


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
        parts.append("\n".join((tr(CAUTIONS), *(f"- {each}" for each in cautions))))
    return "\n\n---\n\n".join(parts) + "\n"


def episode_markdown(
    title: str,
    cards: Sequence[CardContent],
    removed: Sequence[str] = (),
    general_cautions: Sequence[str] = (),
) -> str:
    """Markdown; the episode's title stands above the drinks' own headings."""
    parts = [f"# {escaped(title)}"]
    # A drink's own heading is its first line, one rank below the episode's.
    parts += [f"#{description_markdown([_bare(card)]).strip()}" for card in cards]
    if removed:
        parts.append(f"*{escaped(removed_in_words(removed))}*")
    if cautions := all_cautions(cards, general_cautions):
        told = "\n".join(f"- {escaped(each)}" for each in cautions)
        parts.append(f"## {tr(CAUTIONS)}\n\n{told}")
    return "\n\n".join(parts) + "\n"


def _bare(card: CardContent) -> CardContent:
    """The card without its cautions, which are said once for all drinks."""
    return replace(card, own_cautions=())
