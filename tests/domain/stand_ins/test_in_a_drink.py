"""Stand-ins within a drink: what one who knows the sample bar expects of each."""

from __future__ import annotations

import tomllib
from pathlib import Path

import pytest

from barkeep.application.bar import Bar
from barkeep.domain.drink.comparison import compare
from barkeep.domain.pouring.sourcing import sourcing_for
from barkeep.domain.pouring.verdicts import drink_for
from barkeep.domain.stand_ins.in_a_drink import chosen_offer, line_offers, with_pours
from tests.walked import walked

SWAPS = tomllib.loads(Path(__file__).with_name("swaps.toml").read_text(encoding="utf-8"))["swap"]
LEAST = {"strength": ("abv_percent", 0.25), "sweet": ("sugar_g_per_l", 2.0)}
LEAST["sour"] = ("acid_g_per_l", 0.2)
"""The figure of each, and from which change on it goes up or down."""


def answer_to(swap, snapshot):
    """What is found of one swap, in the words of the file."""
    tree = snapshot.knowledge.tree
    spec = next(each for each in snapshot.all_specs if each.name == swap["drink"])
    offers = line_offers(drink_for(spec, snapshot, sourcing_for(snapshot, "close")), snapshot)
    line, key = tree.called(swap["line"]), tree.called(swap["stand_in"])
    found = next(each for each in offers if line in each.line.wanted)
    friend = next((each for each in found.stand_ins.confusables if each.ingredient == key), None)
    here, elsewhere = (
        next((each for each in some if each.ingredient == key), None)
        for some in (found.owned, found.beyond)
    )
    if here is None:
        offered = "elsewhere" if elsewhere else "never" if friend else "no"
        return {"offered": offered, "why": friend.why if friend and not elsewhere else ""}
    poured = with_pours(spec, [chosen_offer(spec, found.place, here, snapshot)], tree)
    change = compare(spec, poured, snapshot).change
    said = {"offered": "here", "ratio": here.ratio, "closeness": here.closeness}
    for word, (figure, least) in LEAST.items():
        by = getattr(change, figure)
        said[word] = "same" if abs(by) < least else "up" if by > 0.0 else "down"
        said[f"{word}_by"] = by
    return said


@pytest.fixture
def snapshot(sample_bar, clock):
    with Bar.open(sample_bar, clock=clock) as opened:
        return opened.snapshot


@walked("swap", SWAPS)
def test_a_stand_in_within_a_drink(swap, snapshot):
    found = answer_to(swap, snapshot)
    for key in ("offered", "strength", "sweet", "sour"):
        assert found.get(key) == swap.get(key, found.get(key)), (key, found)
    assert swap.get("why", "") in found.get("why", "")
