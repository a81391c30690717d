"""The usual ranges of each family, drawn from the classics by barkeep's own figures."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator, Mapping, Sequence
from math import ceil, floor
from statistics import median
from typing import NamedTuple

from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.drink.analysis import Analysis, analyse
from barkeep.domain.drink.balance import (
    LEFT_OUT,
    QUALITIES,
    DrinkStyle,
    Place,
    Quality,
    Range,
    family_of,
)
from barkeep.domain.drink.words import measured

FEWEST = 5
"""Of fewer classics no usual range is drawn."""
STEPS: Mapping[Quality, float] = {"strength": 0.5, "sugar": 5.0, "acid": 0.5}
"""Ranges end on these, outwards: less is hardly tasted (a choice)."""
DIGITS: Mapping[Quality, int] = {"strength": 1, "sugar": 0, "acid": 1}


class Drawn(NamedTuple):
    """A range and its middle."""

    usual: Range
    middle: float


def families(bare: Snapshot) -> Mapping[str, Sequence[Analysis]]:
    """Family -> the analyses of its classics; the bar must have no bottles."""
    found: dict[str, list[Analysis]] = defaultdict(list)
    tree = bare.knowledge.tree
    for spec in bare.knowledge.classics:
        made = analyse(spec, bare)
        key = family_of(made.spec, made.technique, made.contents, tree)
        if key is not None:
            found[key].append(made)
    return {key: each for key, each in found.items() if len(each) >= FEWEST}


def drawn(analyses: Sequence[Analysis]) -> Mapping[Quality, Drawn]:
    """The range of each quality, one classic in `LEFT_OUT` left out at either end."""
    return {
        quality: _drawn(quality, [dict(measured(each))[quality] for each in analyses])
        for quality in QUALITIES
    }


def _drawn(quality: Quality, values: Sequence[float]) -> Drawn:
    ordered, out, step = sorted(values), len(values) // LEFT_OUT, STEPS[quality]
    low = step * floor(round(ordered[out] / step, 6))
    high = step * ceil(round(ordered[-1 - out] / step, 6))
    return Drawn(Range(low, max(high, low + step)), round(median(values), DIGITS[quality]))


def places(style: DrinkStyle, analyses: Sequence[Analysis]) -> Mapping[Quality, Sequence[Place]]:
    """Where each of these drinks lies in the ranges of a family, quality by quality."""
    return {
        quality: [
            style.range_of(quality).place_of(dict(measured(each))[quality]) for each in analyses
        ]
        for quality in QUALITIES
    }


def as_table(name: str, analyses: Sequence[Analysis]) -> str:
    """A family as `resources/balance_ranges.toml` should have it."""
    found = drawn(analyses)
    rows = [f'name = "{name}"', f"classics = {len(analyses)}"]
    rows += [f"{each} = {list(map(float, found[each].usual))}" for each in QUALITIES]
    return "\n".join([*rows, f"middle = {[float(found[each].middle) for each in QUALITIES]}"])


def counted(style: DrinkStyle, analyses: Sequence[Analysis]) -> Iterator[str]:
    """A family in rows: its ranges, its middle, and how many of its classics lie where."""
    yield f"{style.name}, {len(analyses)} classics"
    for (quality, found), middle in zip(places(style, analyses).items(), style.middle, strict=True):
        low, high = style.range_of(quality)
        counts = ", ".join(f"{found.count(each)} {each}" for each in ("below", "within", "above"))
        yield f"  {quality:8} {low:5g} to {high:5g}, middle {middle:5g}: {counts}"
