"""The owner's usual pours: which product is meant where a spec names only a general kind."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class HousePour:
    """*My house rum is …*: of a kind, the id of the product that is poured for it."""

    kind: str
    product: int


def with_house_pour(pours: Iterable[HousePour], pour: HousePour) -> tuple[HousePour, ...]:
    """The pours with this one in place of any other of its kind."""
    return _by_kind((*without_house_pour(pours, pour.kind), pour))


def without_house_pour(pours: Iterable[HousePour], kind: str) -> tuple[HousePour, ...]:
    """The pours without the one of this kind."""
    return _by_kind(each for each in pours if each.kind != kind)


def _by_kind(pours: Iterable[HousePour]) -> tuple[HousePour, ...]:
    return tuple(sorted(pours, key=lambda each: each.kind))
