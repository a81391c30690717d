"""An answer as it is printed: one JSON object, or text and tables for a person."""

from __future__ import annotations

import json
import re
import sys
import textwrap
import unicodedata
from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from typing import TYPE_CHECKING

from barkeep.domain.phrases import begun_small
from barkeep.errors import NotPrinted

if TYPE_CHECKING:  # every start waits for what is imported here
    from barkeep.domain.bottles.bottle import Bottle
    from barkeep.domain.pouring.assumed import Assumed


IN_FULL = "--full says every caution in full, with its source."


@dataclass(frozen=True, slots=True)
class Answer:
    """What a command has found or done: an object for programs, a text or its rows for a person.

    The object is worked out only where it is asked for, and so are rows that a generator gives.
    """

    as_json: Callable[[], Mapping[str, object]]
    shown: str | Iterable[str]


def print_answer(answer: Answer, *, as_json: bool) -> None:
    """Print an answer in one of its forms. Of JSON, letters a terminal cannot show are escaped."""
    if as_json:
        plain = (sys.stdout.encoding or "ascii").lower().replace("-", "") != "utf8"
        text = json.dumps(answer.as_json(), ensure_ascii=plain, indent=2)
        text = _STEERING.sub(lambda found: f"\\u{ord(found[0]):04x}", text)
    else:
        text = answer.shown if isinstance(answer.shown, str) else "\n".join(answer.shown)
        text = only_shown(text)
    _put_out(text)


_STEERING = re.compile("[\x00-\x08\x0b-\x1f\x7f-\x9f\u202a-\u202e\u2066-\u2069]")
"""Letters that steer a terminal or turn a line around; none of them is ever seen."""
_PICTURES, _DELETE, _LOST = 0x2400, 0x7F, "\ufffd"


def only_shown(text: str) -> str:
    """A text that a terminal shows and never obeys; what would steer it is seen as a sign.

    >>> only_shown("Fog\\x1b[31m Lamp")
    'Fog␛[31m Lamp'
    """
    return _STEERING.sub(lambda found: _sign(ord(found[0])), text)


def _sign(code: int) -> str:
    if code == _DELETE:
        return "␡"
    return chr(_PICTURES + code) if code < ord(" ") else _LOST


def _put_out(text: str) -> None:
    """Print what was worked out. Raises `NotPrinted`, and `BrokenPipeError` as it comes."""
    try:
        print(text, flush=True)
    except BrokenPipeError:
        raise
    except OSError as error:
        raise NotPrinted(begun_small(error.strerror or str(error))) from error


def rounded(number: float | None, digits: int = 1) -> float | None:
    """A number as it is given out: the noise of arithmetic is no information, nor is -0.0."""
    return None if number is None else round(number, digits) + 0.0


def iso(day: date | None) -> str | None:
    """A day as JSON gives it."""
    return None if day is None else day.isoformat()


def title_of(bottle: Bottle | None) -> str | None:
    """A bottle's title, None for no bottle."""
    return None if bottle is None else bottle.product.title


def assumed_json(found: Iterable[Assumed]) -> list[dict[str, str]]:
    """What was taken for what lines leave open, each with its drink and its line."""
    return [{"drink": each.drink, "line": each.line, "taken": each.taken} for each in found]


def wrapped(sentence: str, mark: str, columns: int = 92) -> list[str]:
    """A sentence in rows no longer than so many columns, after its mark and below itself."""
    return textwrap.wrap(
        sentence,
        columns,
        initial_indent=mark,
        subsequent_indent=" " * len(mark),
        break_on_hyphens=False,  # the number of a law is read in one piece
    )


def left_aside_shown(aside: Sequence[tuple[str, str]]) -> Iterator[str]:
    """What was left aside, a row for each spec it is of and one for what is of none."""
    of: dict[str, list[str]] = {}
    for spec, what in aside:
        of.setdefault(spec, []).append(what)
    for spec, things in of.items():
        front = f"{spec}: left aside" if spec else "Left aside"
        yield f"{front}: {'; '.join(things)}."


BAR_CELLS = 10


def table(head: Sequence[str], rows: Iterable[Sequence[str]], right: str = "") -> str:
    """Rows under a head, columns aligned by what they take on screen.

    `right` holds a letter for each column: *r* is set to the right, anything
    else to the left; letters may be left out at the end.
    """
    body = [tuple(row) for row in rows]
    widths = [max(map(width, column)) for column in zip(head, *body, strict=True)]
    rule = tuple("─" * each for each in widths)
    return "\n".join(_row(row, widths, right) for row in (tuple(head), rule, *body))


def width(text: str) -> int:
    """How many cells a text takes on screen.

    >>> width("½ oz"), width("梅酒")
    (4, 4)
    """
    return len(text) if text.isascii() else sum(map(_cells, text))


def level_bar(share: float) -> str:
    """A level drawn in ten cells; only an empty bottle has none filled.

    >>> level_bar(0.42)
    '████░░░░░░'
    """
    cells = min(BAR_CELLS, round(share * BAR_CELLS))
    if share > 0.0:
        cells = max(1, cells)
    return "█" * cells + "░" * (BAR_CELLS - cells)


def _row(cells: Sequence[str], widths: Sequence[int], right: str) -> str:
    shown = []
    for place, (cell, wide) in enumerate(zip(cells, widths, strict=True)):
        gap = " " * (wide - width(cell))
        shown.append(gap + cell if right[place : place + 1] == "r" else cell + gap)
    return "  ".join(shown).rstrip()


def _cells(mark: str) -> int:
    if unicodedata.combining(mark):
        return 0
    return 2 if unicodedata.east_asian_width(mark) in "WF" else 1
