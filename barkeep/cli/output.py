"""Print an answer: one JSON object, or text for a person."""

from __future__ import annotations

import json
import sys
from collections.abc import Mapping
from datetime import date

from barkeep.domain.bottles.bottle import Bottle


def print_json(answer: Mapping[str, object]) -> None:
    """Print one JSON object. Letters a terminal cannot show are escaped."""
    plain = (sys.stdout.encoding or "ascii").lower().replace("-", "") != "utf8"
    print(json.dumps(answer, ensure_ascii=plain, indent=2))


def rounded(number: float | None, digits: int = 1) -> float | None:
    """A number as it is given out: the noise of arithmetic is no information, nor is -0.0."""
    return None if number is None else round(number, digits) + 0.0


def iso(day: date | None) -> str | None:
    """A day as JSON gives it."""
    return None if day is None else day.isoformat()


def title_of(bottle: Bottle | None) -> str | None:
    """A bottle's title, None for no bottle."""
    return None if bottle is None else bottle.product.title


def counted(number: int, word: str, words: str | None = None) -> str:
    """A number with its noun.

    >>> counted(2, "serve")
    '2 serves'
    """
    return f"{number} {word if number == 1 else words or word + 's'}"
