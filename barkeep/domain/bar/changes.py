"""The parts of a bar that can change: what a use case tells of, and a screen cares about."""

from __future__ import annotations

from enum import StrEnum
from typing import TypeAlias


class Part(StrEnum):
    """One part of a bar."""

    BOTTLES = "bottles"
    PRODUCTS = "products"
    SPECS = "specs"
    TRIALS = "trials"
    SETTINGS = "settings"
    KNOWLEDGE = "knowledge"
    SHOOTS = "shoots"


Changes: TypeAlias = frozenset[Part]

NOTHING: Changes = frozenset()

EVERYTHING: Changes = frozenset(Part)
