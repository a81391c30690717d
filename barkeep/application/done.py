"""What a use case gives back."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Generic, TypeAlias, TypeVar

from barkeep.domain.bar.changes import Changes
from barkeep.store.refusals import BarIsBusy, OutOfReach, WrittenNotRead
from barkeep.store.steps import Action

T = TypeVar("T")

BUSY = (BarIsBusy, OutOfReach, WrittenNotRead)
"""What is raised while another program holds the bar, or no server answers: it is tried again."""

Step: TypeAlias = Action
"""One change that undo takes back or redo does again, as a menu names it."""


@dataclass(frozen=True, slots=True)
class Done(Generic[T]):
    """A change that is written: its value, what of the snapshot it renewed, and its name.

    `changes` is empty where there was nothing to write. `label` reads well after “Undo: ”.
    `step` is what undo takes just this back by; None where it wrote no step of its own.
    """

    value: T
    changes: Changes
    label: str
    step: Step | None = None
