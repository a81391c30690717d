"""How long things keep in this bar, where the owner knows better than what is shipped."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class ShelfLife:
    """A kind, and all below it, keeps so many days once it is open or made."""

    kind: str
    days: int


def with_shelf_life(lives: Iterable[ShelfLife], life: ShelfLife) -> tuple[ShelfLife, ...]:
    """The shelf lives with this one in place of any other of its kind."""
    return _by_kind((*without_shelf_life(lives, life.kind), life))


def without_shelf_life(lives: Iterable[ShelfLife], kind: str) -> tuple[ShelfLife, ...]:
    """The shelf lives without the one of this kind."""
    return _by_kind(each for each in lives if each.kind != kind)


def _by_kind(lives: Iterable[ShelfLife]) -> tuple[ShelfLife, ...]:
    return tuple(sorted(lives, key=lambda each: each.kind))
