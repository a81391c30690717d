"""Trials: dated tastings of one version of a spec, and which version won."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date


@dataclass(frozen=True, slots=True)
class Scale:
    """One of the owner's own scales; a higher score is better unless `high` is the lower number."""

    name: str
    low: float = 1.0
    high: float = 5.0

    def holds(self, score: float) -> bool:
        """Whether a score lies on it."""
        return min(self.low, self.high) <= score <= max(self.low, self.high)


DEFAULT_SCALES = (Scale("Balance"), Scale("Flavour"), Scale("On theme"))
"""What a new bar starts with."""


@dataclass(frozen=True, slots=True)
class Score:
    """What one taster gave on one scale."""

    taster: str
    scale: str
    value: float


@dataclass(frozen=True, slots=True)
class Trial:
    """One tasting of the spec of this id, on a day.

    `changed` says what was changed since the last one; `won` marks the tasting
    that settled on this version.
    """

    id: int | None
    spec_id: int
    on: date
    scores: tuple[Score, ...] = ()
    notes: str = ""
    changed: str = ""
    won: bool = False

    @property
    def tasters(self) -> tuple[str, ...]:
        """Who tasted, in the order they were written down."""
        return tuple(dict.fromkeys(score.taster for score in self.scores))


def mean_scores(trials: Iterable[Trial]) -> Mapping[str, float]:
    """Scale -> the mean of every score on it, over all trials and tasters."""
    on_scale: dict[str, list[float]] = {}
    for trial in trials:
        for score in trial.scores:
            on_scale.setdefault(score.scale, []).append(score.value)
    return {scale: sum(values) / len(values) for scale, values in on_scale.items()}


def winner(trials: Sequence[Trial], spec_ids: Iterable[int]) -> int | None:
    """The id of the version that won last among these specs; None where none has yet."""
    among = set(spec_ids)
    won = [trial for trial in trials if trial.won and trial.spec_id in among]
    newest = max(won, key=lambda trial: (trial.on, trial.id or 0), default=None)
    return None if newest is None else newest.spec_id
