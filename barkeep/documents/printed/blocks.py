"""What is printed, as a list of blocks that each name a style of the template."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from typing import TypeVar

from barkeep.documents.printed.cards import CardContent, PrintedLine
from barkeep.documents.printed.labels import LabelContent, PrepContent, PrepRow
from barkeep.documents.printed.menus import MenuContent, MenuDrink
from barkeep.domain.drink.picture import DrinkPicture
from barkeep.domain.phrases import capitalised
from barkeep.translation import tr

T = TypeVar("T")


@dataclass(frozen=True, slots=True)
class Text:
    """One paragraph."""

    style: str
    text: str


@dataclass(frozen=True, slots=True)
class Rows:
    """A table without lines: all rows have as many cells; the last one takes the room."""

    style: str
    rows: tuple[tuple[str, ...], ...]


@dataclass(frozen=True, slots=True)
class Tick:
    """One paragraph after a box to be ticked by hand, or that is ticked already."""

    style: str
    text: str
    done: bool = False


@dataclass(frozen=True, slots=True)
class Drawing:
    """A drink in its glass, drawn where the words leave room for it."""

    picture: DrinkPicture


Words = Text | Rows | Tick
Block = Words | Drawing
Group = tuple[Block, ...]
"""Blocks that stay together where they can."""
Parts = Mapping[str, Callable[[T], Sequence[Block]]]


NO_BREAK = "\N{NO-BREAK SPACE}"
OPEN = "_" * 10
"""Room for a day written by hand."""


def card_blocks(card: CardContent, parts: Sequence[str]) -> Group:
    """A card's or description's parts in the template's order."""
    return _blocks(card, parts, CARD_PARTS)


def label_blocks(label: LabelContent, parts: Sequence[str]) -> Group:
    """A label's parts in the template's order."""
    return _blocks(label, parts, LABEL_PARTS)


def menu_groups(menu: MenuContent, parts: Sequence[str]) -> tuple[Group, ...]:
    """The title, each drink, and the small print of a menu."""
    drinks = (_blocks(drink, parts, MENU_PARTS) for drink in menu.drinks)
    return _with_ends(menu.title, tuple(drinks), menu.small_print)


def prep_groups(prep: PrepContent, parts: Sequence[str]) -> tuple[Group, ...]:
    """The title, each thing to be done, and the small print of a prep list."""
    rows = (_blocks(row, parts, PREP_PARTS) for row in prep.rows)
    return _with_ends(prep.title, tuple(rows), prep.small_print)


def description_groups(cards: Sequence[CardContent], parts: Sequence[str]) -> tuple[Group, ...]:
    """Each drink's description."""
    return tuple(card_blocks(card, parts) for card in cards)


def without_drawings(group: Group) -> tuple[Words, ...]:
    """The words of a group."""
    return tuple(each for each in group if not isinstance(each, Drawing))


def job_text(groups: Sequence[Group]) -> str:
    """What stands in groups of blocks as plain text, the groups parted by an empty line."""
    return "\n\n".join("\n".join(_rows_of(group)) for group in groups) + "\n"


def _rows_of(group: Group) -> list[str]:
    rows = []
    for block in without_drawings(group):
        cells = block.rows if isinstance(block, Rows) else (_cells(block),)
        rows += [" ".join(cell for cell in row if cell) for row in cells]
    return [row.replace(NO_BREAK, " ") for row in rows]


def _cells(block: Text | Tick) -> tuple[str, ...]:
    box = ("[x]" if block.done else "[ ]",) if isinstance(block, Tick) else ()
    return (*box, block.text)


def _with_ends(title: str, groups: tuple[Group, ...], small: Sequence[str]) -> tuple[Group, ...]:
    first: Group = (Text("title", title),) if title else ()
    last = tuple(Text("small", each) for each in small)
    return tuple(group for group in (first, *groups, last) if group)


def _blocks(content: T, parts: Sequence[str], known: Parts[T]) -> Group:
    return tuple(block for part in parts for block in known[part](content))


def _text(style: str, text_of: Callable[[T], str]) -> Callable[[T], Sequence[Block]]:
    return lambda content: [Text(style, text)] if (text := text_of(content)) else []


def _sentence(*words: str) -> str:
    joined = " · ".join(each for each in words if each)
    return capitalised(joined)


def _kept(amount: str) -> str:
    """An amount that is never broken across two lines."""
    return amount.replace(" ", NO_BREAK)


def _lines(
    amounts_of: Callable[[PrintedLine], tuple[str, ...]],
) -> Callable[[CardContent], Sequence[Block]]:
    """The lines of a card with these amounts, without a column that is empty in all of them."""

    def lines(card: CardContent) -> Sequence[Block]:
        rows = [(*map(_kept, amounts_of(each)), each.name) for each in card.lines]
        if not rows:
            return []
        *amounts, names = zip(*rows, strict=True)
        columns = (*filter(any, amounts), names)
        return [Rows("lines", tuple(zip(*columns, strict=True)))]

    return lines


def _dates(label: LabelContent) -> Sequence[Block]:
    """What is not known is left open, to be filled in by hand."""
    made, use_by = label.made or OPEN, label.use_by or OPEN
    return [Rows("dates", ((tr("Made"), made), (tr("Use by"), use_by)))]


def _prep_facts(row: PrepRow) -> str:
    made = tr("made {day}", day=row.made) if row.made else ""
    use_by = tr("use by {day}", day=row.use_by) if row.use_by else ""
    return _sentence(tr("{left} left", left=row.left), made, use_by)


CARD_PARTS: Parts[CardContent] = {
    "name": _text("name", lambda card: card.name),
    "riff": _text("quiet", lambda card: card.riff),
    "both": _lines(lambda line: (line.first, line.second)),
    "lines": _lines(lambda line: (line.amount,)),
    "service": lambda card: [Rows("service", card.service)] if card.service else [],
    "method": lambda card: [Text("method", each) for each in card.method],
    "strength": _text("quiet", lambda card: _sentence(card.serves, card.strength)),
    "facts": _text(
        "quiet", lambda card: _sentence(card.serves, card.strength, card.standard_drinks)
    ),
    "allergens": _text("allergens", lambda card: card.allergens),
    "credit": _text("quiet", lambda card: card.credit),
    "cautions": lambda card: [Text("caution", each) for each in card.cautions],
    "picture": lambda card: [] if card.picture is None else [Drawing(card.picture)],
}
LABEL_PARTS: Parts[LabelContent] = {
    "name": _text("name", lambda label: label.name),
    "dates": _dates,
    "facts": _text("quiet", lambda label: _sentence(label.volume, label.strength)),
    "allergens": _text("allergens", lambda label: label.allergens),
}
MENU_PARTS: Parts[MenuDrink] = {
    "name": _text("name", lambda drink: drink.name),
    "description": _text("description", lambda drink: drink.description),
    "marks": _text("marks", lambda drink: _sentence(*drink.marks)),
}
PREP_PARTS: Parts[PrepRow] = {
    "name": _text("name", lambda row: f"☐ {row.name}"),
    "facts": _text("quiet", _prep_facts),
    "to_do": _text("to_do", lambda row: row.to_do),
    "recipe": _text("method", lambda row: row.recipe),
}
PARTS_OF_KIND: Mapping[str, frozenset[str]] = {
    "card": frozenset(CARD_PARTS),
    "label": frozenset(LABEL_PARTS),
    "menu": frozenset(MENU_PARTS),
    "prep": frozenset(PREP_PARTS),
    "description": frozenset(CARD_PARTS),
}
