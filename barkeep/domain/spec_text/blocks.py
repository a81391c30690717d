"""The rows of a text parted into specs: by rules, by empty lines, or with a drink on each line."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, replace

from barkeep.domain.amounts.spoken import any_amount_at_start
from barkeep.domain.amounts.units import BarUnits
from barkeep.domain.spec_text.headers import RULE, header_in
from barkeep.domain.specs.glasses import glass_named
from barkeep.domain.specs.technique import begins_a_method, technique_of
from barkeep.errors import UserError

_NEWLINE = re.compile(r"\r\n|\r|\n")
_LONGEST_NAME = 80
_NO_NAME = frozenset(
    {"add", "and", "as", "at", "for", "from", "garnish", "if", "in", "method", "on", "or"}
    | {"over", "plus", "serve", "the", "then", "to", "when", "with"}
)
"""Words that begin a sentence or a part of a spec rather than the name of a drink."""
_BULLET = re.compile(r"\s*(?:[-*+•·]|[0-9]{1,3}[.)])\s+")
_ON_ONE_LINE = re.compile(
    r"\s*(?:[-*+•·]\s+|[0-9]{1,3}[.)]\s+)?(?P<name>[^:;,]{1,80}?)\s*:\s*(?P<rest>\S.*)"
)
_BETWEEN = re.compile(r";|(?<!\d),|,(?!\d)")
_GARNISH = re.compile(r"garnish(?:ed)?(?:\s+with|\s*:)?\s+(?P<what>\S.*)", re.IGNORECASE)


@dataclass(frozen=True, slots=True)
class Row:
    """One line of a text, or a piece of one that stands as far right as it does there.

    Numbers count from 1. An `odd` one stands among drinks of a line each and is none.
    """

    number: int
    text: str
    odd: bool = False

    @property
    def empty(self) -> bool:
        """Whether nothing is on it."""
        return not self.text.strip()

    @property
    def column(self) -> int:
        """Where its words begin, from 1."""
        return len(self.text) - len(self.text.lstrip()) + 1


IsLine = Callable[[str], bool]
"""Whether a text is plainly an ingredient with its amount."""


def blocks(text: str, units: BarUnits, is_line: IsLine) -> Iterator[Sequence[Row]]:
    """The rows of each spec, without the empty ones around them."""
    for rows in _parted_plainly(text):
        drinks = [_on_one_line(row, units, is_line) for row in rows if not row.empty]
        if drinks and drinks[0]:
            yield from _one_a_line([row for row in rows if not row.empty], drinks)
        else:
            yield from _parted_by_names(rows, is_line)


def _one_a_line(rows: Sequence[Row], drinks: Sequence[list[Row] | None]) -> Iterator[Sequence[Row]]:
    """Drinks of a line each; what stands among them and is none is a block of its own.

    Behind a single drink, or where it tells what to do, it belongs to the drink before it.
    """
    alone = sum(1 for drink in drinks if drink) == 1
    last: list[Row] = []
    for row, drink in zip(rows, drinks, strict=True):
        if drink:
            if last:
                yield last
            last = drink
        elif alone or begins_a_method(row.text.strip()):
            last.append(replace(row, odd=not alone))
        else:
            yield last
            last = [replace(row, odd=True)]
    yield last


def _parted_plainly(text: str) -> Iterator[list[Row]]:
    """What stands between rules and two empty lines."""
    rows: list[Row] = []
    for number, line in enumerate(_NEWLINE.split(text.removeprefix("\ufeff")), 1):
        row = Row(number, line)
        parted = RULE.fullmatch(line.strip()) or (row.empty and rows and rows[-1].empty)
        if parted:
            yield from _trimmed(rows)
            rows = []
        elif rows or not row.empty:
            rows.append(row)
    yield from _trimmed(rows)


def _trimmed(rows: list[Row]) -> Iterator[list[Row]]:
    while rows and rows[-1].empty:
        rows = rows[:-1]
    if rows:
        yield rows


def _parted_by_names(rows: list[Row], is_line: IsLine) -> Iterator[Sequence[Row]]:
    """Specs that only one empty line parts, where each is a name with its ingredients under it.

    A paragraph of another kind may be a method: then nothing is parted.
    """
    paragraphs = _paragraphs(rows)
    if all(_begins_spec(each, is_line) for each in paragraphs):
        yield from paragraphs
    else:
        yield rows


def _paragraphs(rows: Sequence[Row]) -> list[list[Row]]:
    found: list[list[Row]] = [[]]
    for row in rows:
        if not row.empty:
            found[-1].append(row)
        elif found[-1]:
            found.append([])
    return found


def _begins_spec(rows: Sequence[Row], is_line: IsLine) -> bool:
    if len(rows) < 2:
        return False
    first = rows[0].text.strip()
    words = first.casefold().split()
    if len(first) > _LONGEST_NAME or first.endswith((".", "!", ":", ",", ";")):
        return False
    if words[0] in _NO_NAME or header_in(first) or begins_a_method(first) or _BULLET.match(first):
        return False
    return not is_line(first) and is_line(rows[1].text)


def _on_one_line(row: Row, units: BarUnits, is_line: IsLine) -> list[Row] | None:
    """The rows that a drink on one line would have if it had them, None where it is none.

    *Night Mail: 2 oz gin, 1 oz lemon juice; shake, coupe*
    """
    found = _ON_ONE_LINE.fullmatch(row.text)
    if found is None or header_in(row.text) or technique_of(found["name"]) != "unknown":
        return None
    pieces = list(_pieces(row, found.start("rest")))
    measured = sum(_is_measured(piece.text, units) for piece in pieces)
    if (
        not pieces
        or not _is_measured(pieces[0].text, units)
        or measured + (";" in found["rest"]) < 2
    ):
        return None
    rows = [Row(row.number, found["name"])]
    return [*rows, *_sorted_out(row, pieces, units, is_line)]


def _pieces(row: Row, start: int) -> Iterator[Row]:
    """What commas and semicolons part, each where it stands in its row."""
    at = start
    for mark in (*_BETWEEN.finditer(row.text, start), None):
        end = mark.start() if mark else len(row.text)
        if row.text[at:end].strip():
            yield Row(row.number, " " * at + row.text[at:end].rstrip())
        at = mark.end() if mark else end


def _sorted_out(row: Row, pieces: Sequence[Row], units: BarUnits, is_line: IsLine) -> Iterator[Row]:
    """First the lines, then what says how it is served, then the method."""
    lines: list[Row] = []
    service: list[Row] = []
    method: list[str] = []
    for piece in pieces:
        words = piece.text.strip()
        after_semicolon = ";" in row.text[: piece.column - 1].rstrip()[-1:]
        ended = bool(service or method) or (after_semicolon and not _is_measured(words, units))
        garnish = _GARNISH.fullmatch(words)
        if garnish:
            service.append(Row(row.number, f"Garnish: {garnish['what']}"))
        elif header_in(words):
            service.append(piece)
        elif _is_measured(words, units) and not (method and not is_line(words)):
            lines.append(piece)
        elif technique_of(words) != "unknown" and lines:
            method.append(words)
        elif ended or _is_glass(words):
            glassy = _is_glass(words) and not any("Glass:" in each.text for each in service)
            if glassy:
                service.append(Row(row.number, f"Glass: {words}"))
            else:
                method.append(words)
        elif lines:
            lines.append(_with_piece(lines.pop(), piece))
    yield from lines
    yield from service
    if method:
        yield Row(row.number, f"Method: {', '.join(method)}")


def _with_piece(line: Row, piece: Row) -> Row:
    """A line with what follows it after a comma: *2 oz gin, Old Tom*."""
    return Row(line.number, f"{line.text},{piece.text[len(line.text) + 1 :]}")


def _is_glass(words: str) -> bool:
    return len(words.split()) <= 3 and glass_named(words) is not None


def _is_measured(text: str, units: BarUnits) -> bool:
    """Whether a text begins with an amount that has a number and a unit."""
    plain = text.strip()
    if not any(mark.isnumeric() for mark in plain[:12]):
        return False
    try:
        found = any_amount_at_start(plain, units)
    except UserError:
        return False
    return found is not None and found.unit not in (None, "each")
