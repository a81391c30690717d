"""A shoot over the sample bar with everything that a run sheet can trip over."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, time

from barkeep.domain.bar.shoots import ChosenPour, ServeCounts, Shoot, ShootDrink
from barkeep.domain.bar.snapshot import Snapshot

STARTS = time(15)
ON = date(2026, 11, 27)


def branch_line(snapshot: Snapshot) -> Shoot:
    """Three of the sample's drinks, the first with a stand-in, one whose spec is gone,
    and a classic of which the bar has too little."""
    by_name = {spec.name: spec for spec in snapshot.specs}
    names = ("Request Stop", "Two-Coach Local", "Upper Berth")
    drinks = [ShootDrink(by_name[name].id, name, ServeCounts(1, 2, 1)) for name in names]
    gin = next(n for n, line in enumerate(by_name[names[0]].lines) if "gin" in line.ingredient)
    drinks[0] = replace(drinks[0], chosen=(ChosenPour(gin, "bourbon", 1.25),))
    drinks.append(ShootDrink(9999, "Gone Away", ServeCounts()))
    drinks.append(ShootDrink(None, "Jack Rose", ServeCounts(1, 1, 0)))
    return Shoot(
        7,
        "Drinks of the branch line",
        ON,
        tuple(drinks),
        "planned",
        STARTS,
        "Bring the lamp.\n\nTwo takes of the pour.",
        frozenset({"chill:soda-water"}),
    )
