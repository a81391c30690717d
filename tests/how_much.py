"""How much of what is tried over and over the ordinary run tries; `ENDURANCE=full` tries it all."""

from __future__ import annotations

import os
from collections.abc import Sequence
from typing import TypeVar

T = TypeVar("T")

EVERYTHING = os.environ.get("ENDURANCE") == "full"


def some_of(things: Sequence[T], one_in: int) -> list[T]:
    """The first and then one in so many, the same ones at each run; all where all are wanted."""
    return list(things if EVERYTHING else things[::one_in])
