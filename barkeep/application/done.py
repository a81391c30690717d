"""What a use case gives back."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Generic, TypeVar

T = TypeVar("T")


@dataclass(frozen=True, slots=True)
class Done(Generic[T]):
    """A change that is written: its value, what of the snapshot it renewed, and its name.

    `changes` holds some of *bottles*, *products*, *specs*, *trials*, *shoots*,
    *settings* and *knowledge*; it is empty where there was nothing to write. `label` reads
    well after “Undo: ”.
    """

    value: T
    changes: frozenset[str]
    label: str
