"""What the owner says of kinds of things: the house pour of each, and how long it keeps."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from typing import TypeVar

LONGEST_LIFE_DAYS = 36_500
"""Nothing in a bar keeps longer than a century."""


@dataclass(frozen=True, slots=True)
class HousePour:
    """*My house rum is …*: of a kind, the id of the product that is poured for it."""

    kind: str
    product: int


@dataclass(frozen=True, slots=True)
class ShelfLife:
    """A kind, and all below it, keeps so many days once it is open or made."""

    kind: str
    days: int


Said = TypeVar("Said", bound=HousePour | ShelfLife)


def unsaid_of(said: Iterable[Said], kind: str) -> tuple[Said, ...]:
    """All that is said, but for what is said of this kind."""
    return _by_kind(each for each in said if each.kind != kind)


def said_of(said: Iterable[Said], one: Said) -> tuple[Said, ...]:
    """All that is said, with this in place of what was said of its kind."""
    return _by_kind((*unsaid_of(said, one.kind), one))


def _by_kind(said: Iterable[Said]) -> tuple[Said, ...]:
    return tuple(sorted(said, key=lambda each: each.kind))
