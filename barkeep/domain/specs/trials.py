"""Trials: dated tastings of one version of a spec, which version won, and scores as written."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date

from barkeep.domain.amounts.amount import decimal_mark
from barkeep.domain.phrases import folded
from barkeep.errors import InvalidField, UnknownName
from barkeep.translation import tr, tr_noop


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
    """What one taster gave on one scale; `taster` is empty where one tasted alone."""

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
        """Who is named as having tasted, in the order they were written down."""
        return tuple(dict.fromkeys(score.taster for score in self.scores if score.taster))


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


_NUMBER = r"[-−]?[0-9]{1,4}(?:[.,][0-9]{1,3})?"
_PLAIN = re.compile(_NUMBER)
_RANGE = re.compile(
    rf"(?P<name>.*\S)\s+(?P<low>{_NUMBER})\s*(?:\bto\b|[-–—])\s*(?P<high>{_NUMBER})"
)
_BETWEEN_SCALES = re.compile(r"\s*(?:[;\n]|,(?![0-9]))\s*")
HOW_SCALES = tr_noop("write them as “Balance 1 to 5, On theme 1 to 10”")
HOW_SCORES = tr_noop(
    "write the scale and a number, who tasted before them if several did: “Ada Balance 4”"
)


def show_scale(scale: Scale) -> str:
    """A scale with its ends: *Balance 1 to 5*."""
    return f"{scale.name} {show_score(scale.low)} to {show_score(scale.high)}"


def ends(scale: Scale) -> str:
    """What scores on it may be: *1 to 5*."""
    return tr("{low} to {high}", low=show_score(scale.low), high=show_score(scale.high))


def show_scales(scales: Iterable[Scale]) -> str:
    """Scales as `read_scales` reads them."""
    return ", ".join(map(show_scale, scales))


def show_score(value: float) -> str:
    """A score as it was given."""
    return f"{value:g}".replace("-", "−").replace(".", decimal_mark())


def show_scores(means: Mapping[str, float]) -> str:
    """Mean scores by their scale, to a tenth: *Balance 4.5, On theme 3*."""
    return ", ".join(f"{scale} {show_score(round(value, 1))}" for scale, value in means.items())


def read_scales(text: str) -> tuple[Scale, ...]:
    """The scales of a text, parted by commas; one without ends runs from 1 to 5.

    Raises `InvalidField` for a text that names none.
    """
    parts = [each for each in _BETWEEN_SCALES.split(text.strip()) if each]
    if not parts:
        raise InvalidField("scales", text.strip(), HOW_SCALES)
    return tuple(map(_scale, parts))


def read_score(text: str, scales: Sequence[Scale]) -> Score:
    """A score as *taster scale value*, both of which may be several words.

    The taster may be left out. Raises `InvalidField` where another part is
    missing, `UnknownName` for the scale.
    """
    *words, number = text.split() or [""]
    before = folded(" ".join(words))
    alone = next((each for each in scales if folded(each.name) == before), None)
    if len(words) < 2 and alone is None:
        raise InvalidField("score", text.strip(), HOW_SCORES)
    value = read_score_value(number)
    if alone is not None:
        return Score("", alone.name, value)
    found = [each for each in scales if before.endswith(f" {folded(each.name)}")]
    if not found:
        raise UnknownName("scale", " ".join(words[1:]), tuple(each.name for each in scales))
    scale = max(found, key=lambda each: len(each.name))
    taster = words[: len(words) - len(scale.name.split())]
    return Score(" ".join(taster), scale.name, value)


def read_score_value(text: str) -> float:
    """A number as it is scored, such as *4* or *3.5*. Raises `InvalidField`."""
    if not _PLAIN.fullmatch(text.strip()):
        raise InvalidField("score", text.strip(), tr_noop("it is a number such as 4 or 3.5"))
    return _number(text)


def _scale(text: str) -> Scale:
    found = _RANGE.fullmatch(text)
    if found is None:
        return Scale(" ".join(text.split()))
    return Scale(
        " ".join(found["name"].split()),
        _number(found["low"]),
        _number(found["high"]),
    )


def _number(text: str) -> float:
    return float(text.strip().replace(",", ".").replace("−", "-"))
