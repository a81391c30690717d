"""What is worked out a little at a time in the background: first of what is looked at."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass, field
from functools import partial
from time import perf_counter
from typing import Generic, TypeVar

from PySide6.QtCore import QObject

from barkeep.desktop.screens.background import SLICE_S, Background

Thing = TypeVar("Thing")


def _nothing(_things: object) -> None:
    pass


@dataclass(eq=False, slots=True)
class _Pile(Generic[Thing]):
    """What one thread puts on and another takes off, what was looked at last first."""

    work: Callable[[Thing], object]
    looked_at: dict[Thing, None] = field(default_factory=dict)
    needed: list[Thing] = field(default_factory=list)

    def take_some(self) -> list[Thing]:
        """Work for a slice, on the background's thread; what has been worked out."""
        done: list[Thing] = []
        until = perf_counter() + SLICE_S
        while (self.looked_at or self.needed) and (not done or perf_counter() < until):
            thing = self.looked_at.popitem()[0] if self.looked_at else self.needed.pop()
            self.work(thing)
            done.append(thing)
        return done


class WorkedOut(Generic[Thing]):
    """Works on what is looked at and then on what is needed, until other things are begun.

    It starts a slice only from the GUI thread, so what the user does comes between two. `whose`
    shows it: with that gone, nothing more is worked out.
    """

    def __init__(self, background: Background, key: str, whose: QObject) -> None:
        self._background, self._key = background, key
        whose.destroyed.connect(partial(background.forget, key))
        self._pile: _Pile[Thing] = _Pile(_nothing)
        self._on_some: Callable[[Sequence[Thing]], object] = _nothing
        self._on_done: Callable[[], object] | None = None
        self._is_asked = False

    def begin(
        self, work: Callable[[Thing], object], on_some: Callable[[Sequence[Thing]], object]
    ) -> None:
        """Work on other things from now on; `on_some` is told those that are done."""
        self._background.forget(self._key)
        self._pile, self._on_some, self._on_done = _Pile(work), on_some, None
        self._is_asked = False

    def look_at(self, thing: Thing) -> None:
        """Someone looks at this."""
        self._pile.looked_at[thing] = None
        self._ask()

    def need(self, things: Iterable[Thing], on_done: Callable[[], object]) -> None:
        """All of these are needed, the first ones first, and nothing that was needed before."""
        self._pile.needed = list(reversed(tuple(things)))
        self._on_done = on_done
        self._ask()

    def need_nothing(self) -> None:
        """Nothing is needed any more but what is looked at."""
        self._pile.needed, self._on_done = [], None

    def _ask(self) -> None:
        if not self._is_asked:
            self._is_asked = True
            self._background.ask(self._key, self._pile.take_some, self._came)

    def _came(self, done: Sequence[Thing]) -> None:
        self._is_asked = False
        self._on_some(done)
        if self._pile.looked_at or self._pile.needed:
            self._ask()
        if not self._pile.needed and self._on_done is not None:
            on_done, self._on_done = self._on_done, None
            on_done()
