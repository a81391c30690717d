"""The other drinks of the book that are of a drink's family, with what each comes to.

Each is taken as its kinds usually are, whatever bottles stand here, as the usual ranges are
(`balance`); a drink of one's own is one of its family as well as a classic.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from math import ceil, floor
from typing import Literal

from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.drink.analysis import Analysis, analyse
from barkeep.domain.drink.balance import LEFT_OUT, Quality, Range
from barkeep.domain.drink.words import measured
from barkeep.domain.specs.by_spec import BySpec
from barkeep.domain.specs.spec import Spec

Figure = Quality | Literal["water"]
"""Strength in % vol, sugar and acid in g per litre, water of the ice in % of what was poured."""
FEWEST = 5
"""Of fewer drinks no usual water is drawn."""


@dataclass(frozen=True, slots=True)
class Kin:
    """One drink of a family and its figures."""

    name: str
    own: bool
    figures: Mapping[Figure, float]


def figures_of(analysis: Analysis) -> Mapping[Figure, float]:
    """What a drink is set among its family by, as far as it is known."""
    found: dict[Figure, float] = dict(measured(analysis))
    if analysis.dilution.share:
        found["water"] = 100.0 * analysis.dilution.share
    return found


def kin_of(analysis: Analysis, snapshot: Snapshot) -> tuple[Kin, ...]:
    """The others of a drink's family, by name; none where it has no family with known ranges.

    The whole book is analysed where it was not yet, about a millisecond a drink.
    """
    if analysis.style is None:
        return ()
    bare = snapshot.changed(bottles=())
    known: BySpec[tuple[str, Kin] | None] = snapshot.by_spec("kin")

    def placed(spec: Spec) -> tuple[str, Kin] | None:
        made = analyse(spec, bare)
        if made.style is None:
            return None
        return made.style.key, Kin(spec.name, not spec.classic, figures_of(made))

    settled = filter(None, known.each(snapshot.all_specs, placed))
    wanted = analysis.style.key, analysis.spec.name
    found = (each for key, each in settled if key == wanted[0] and each.name != wanted[1])
    return tuple(sorted(found, key=lambda each: each.name.casefold()))


def usual_water(kin: Sequence[Kin]) -> Range | None:
    """Where the water of a family lies, the farthest out left out as for the other ranges."""
    values = sorted(each.figures["water"] for each in kin if "water" in each.figures)
    if len(values) < FEWEST:
        return None
    out = len(values) // LEFT_OUT
    return Range(float(floor(values[out])), float(ceil(values[-1 - out])))
