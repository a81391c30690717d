"""What a use case gives back."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Generic, TypeVar

from barkeep.domain.bar.changes import Changes

T = TypeVar("T")


@dataclass(frozen=True, slots=True)
class Done(Generic[T]):
    """A change that is written: its value, what of the snapshot it renewed, and its name.

    `changes` is empty where there was nothing to write. `label` reads well after “Undo: ”.
    """

    value: T
    changes: Changes
    label: str
