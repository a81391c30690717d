"""What undo and redo are asked by, for those who name a step without taking it.

SQLAlchemy is not here: every answer of a use case holds one of these.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from typing import Literal

Way = Literal["undo", "redo"]

Beneath = Literal["same", "replaced", "gone"]
"""Whether the file that was opened is still in its place, or another, or none."""


@dataclass(frozen=True, slots=True)
class Action:
    """One action as menus name it."""

    id: int
    label: str


@dataclass(frozen=True, slots=True)
class Stamp:
    """An action that was written, and when: numbers only ever rise in one file."""

    id: int
    at: datetime
    label: str
