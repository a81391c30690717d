"""A batch in whole bottles, in a vessel of some kind, and in rounds through a tin."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from barkeep.application.knowledge import shipped
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.bottle import Bottle, Level, Product
from barkeep.domain.making.batch_measures import ForServes, FromIngredient
from barkeep.domain.making.batches import batch
from barkeep.domain.making.portions import (
    NoRounds,
    in_bottles,
    past_inputs,
    read_vessel_kinds,
    shipped_vessel_kinds,
    tin_rounds,
    whole_bottles,
)
from barkeep.domain.spec_text.text import read_specs
from barkeep.domain.specs.glasses import glass_named
from barkeep.errors import CannotBatch, KnowledgeError

TODAY = date(2026, 11, 21)
SOUR = "Sour\n2 oz white rum\n3/4 oz lime juice\n3/4 oz simple syrup\n\nShake with ice."

RUM = Product("Tarpaulin", "Marrow Hill", "white-rum", 700.0, abv_percent=40.0, id=1)

JUICE = Product("Lime juice", "", "lime-juice", 250.0, house_made=True, id=2)


@pytest.fixture(scope="module")
def snapshot():
    bottles = (
        Bottle(1, RUM, Level(700.0, "sealed")),
        Bottle(2, JUICE, Level(250.0, "open"), use_by=TODAY - timedelta(days=2)),
    )
    return Snapshot(shipped(), TODAY, (RUM, JUICE), bottles)


@pytest.fixture(scope="module")
def sour(snapshot):
    return read_specs(SOUR, snapshot.knowledge.tree)[0].spec


def test_two_bottles_where_that_is_near_enough(snapshot, sour):
    made = batch(sour, snapshot, ForServes(23))
    whole = whole_bottles(made, snapshot)["white-rum"]
    assert (whole.count, whole.size) == (2, 700.0)
    assert whole.error == pytest.approx((1400 - 23 * 59.1470591) / (23 * 59.1470591))
    assert in_bottles(whole, snapshot) == "2 × 700 ml, 3 % more"


def test_none_where_it_is_not(snapshot, sour):
    assert "white-rum" not in whole_bottles(batch(sour, snapshot, ForServes(18)), snapshot)


def test_what_is_made_here_comes_in_no_bottle(snapshot, sour):
    made = batch(sour, snapshot, FromIngredient("lime-juice", 250.0))
    assert "lime-juice" not in whole_bottles(made, snapshot)


@given(count=st.integers(1, 12))
def test_a_pivot_of_whole_bottles_is_whole_bottles(snapshot, sour, count):
    made = batch(sour, snapshot, FromIngredient("white-rum", 700.0 * count))
    whole = whole_bottles(made, snapshot)["white-rum"]
    assert whole.count == count and whole.error == pytest.approx(0.0, abs=1e-9)


def test_a_juice_past_its_date_is_named(snapshot, sour):
    made = batch(sour, snapshot, ForServes(4))
    assert past_inputs(made, snapshot) == (
        "Lime juice is past its date of 19 Nov 2026 and is not counted: make it anew.",
    )
    assert any(each.ingredient == "lime-juice" and each.have == 0.0 for each in made.short)


@given(serves=st.floats(1.0, 300.0))
def test_rounds_work_all_of_it_and_no_round_too_much(snapshot, sour, serves):
    tin = glass_named("large tin")
    made = batch(sour, snapshot, ForServes(serves))
    rounds = tin_rounds(made, tin)
    liquid_ml = serves * 3.5 * 29.5735295625
    assert rounds.each_ml <= tin.wash_line_ml * (1 + 1e-9)
    assert rounds.count * rounds.each_ml == pytest.approx(liquid_ml)
    assert f"{rounds.count} round" in rounds.sentence


def made_of(text, snapshot, served="cold"):
    return batch(read_specs(text, snapshot.knowledge.tree)[0].spec, snapshot, ForServes(10), served)


def test_egg_is_shaken_with_the_rest(snapshot):
    """By hand: 60 + 30 + 20 ml and a white of 32 ml (USDA SR28 01124), ten times: 1420 ml."""
    fizz = "Fizz\n60 ml gin\n30 ml lemon juice\n20 ml simple syrup\n1 egg white\n\nShake with ice."
    rounds = tin_rounds(made_of(fizz, snapshot), glass_named("large tin"))
    assert (rounds.count, rounds.each_ml) == (5, pytest.approx(284.0))


def test_bubbles_stay_out_of_the_tin(snapshot):
    long = "Long\n45 ml gin\n15 ml lime juice\n90 ml soda water\n\nShake all but the soda with ice."
    rounds = tin_rounds(made_of(long, snapshot), glass_named("large tin"))
    assert rounds.count * rounds.each_ml == pytest.approx(600.0)


@pytest.mark.parametrize(
    ("text", "served", "reason"),
    [
        (SOUR, "hot", "it is served hot"),
        ("Long\n45 ml gin\n120 ml soda water\n\nBuild over ice.", "cold", "does not shake"),
        ("Glass\n150 ml sparkling wine\n\nPour.", "cold", "does not shake"),
        ("Glass\n150 ml sparkling wine\n\nStir with ice.", "cold", "all of it has bubbles"),
    ],
)
def test_no_rounds_for_what_is_not_worked_on_ice(snapshot, text, served, reason):
    with pytest.raises(NoRounds, match=reason):
        tin_rounds(made_of(text, snapshot, served), glass_named("large tin"))


def test_a_tin_that_holds_nothing(snapshot, sour):
    tin = replace(glass_named("large tin"), wash_line_ml=0.0)
    with pytest.raises(CannotBatch, match="it holds nothing"):
        tin_rounds(batch(sour, snapshot, ForServes(4)), tin)


def test_every_kind_of_vessel_leaves_room(snapshot, sour):
    kinds = shipped_vessel_kinds()
    assert set(kinds) == {"bowl", "dispenser", "bottle", "slow-cooker"}
    for kind in kinds.values():
        made = batch(sour, snapshot, kind.target(kind.size_ml))
        assert made.total_ml == pytest.approx(kind.size_ml * (1 - kind.room))


@pytest.mark.parametrize(
    ("text", "reason"),
    [
        ('[vessel.tub]\nname = "tub"\nsize_ml = 0\nroom = 0.1\nwhy = "x"', "more than 0"),
        ('[vessel.tub]\nname = "tub"\nsize_ml = 5\nroom = 1.5\nwhy = "x"', "at most 0.9"),
        ('[vessel.tub]\nname = "tub"\nsize_ml = 5\nroom = 0.1\nwhy = "x"\nod = 1', "od"),
    ],
)
def test_a_broken_resource_names_its_fault(text, reason):
    with pytest.raises(KnowledgeError, match=reason):
        read_vessel_kinds(text)
