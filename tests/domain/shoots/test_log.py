"""What bottles should hold after a shoot, and what the logs say over time."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime

import pytest

from barkeep.domain.bar.knowledge import Knowledge
from barkeep.domain.bar.shoots import LoggedBottle, ServeCounts, Shoot, ShootDrink, ShootLog
from barkeep.domain.bottles.bottle import POUR_SIGMA, POUR_SIGMA_SHARE, Level
from barkeep.domain.bottles.levels import MeasuredLevel
from barkeep.domain.ingredients.tree import FamilyTree, Ingredient
from barkeep.domain.shoots.log import (
    NO_TELLING,
    ExpectedBottle,
    LogSheet,
    as_planned,
    expected_after,
    variances,
    would_be_logged,
)
from barkeep.domain.specs.spec import Line, Spec
from tests import worlds
from tests.walked import walked

TREE = FamilyTree(
    {
        each.key: each
        for each in (
            Ingredient("gin", "gin"),
            Ingredient("bitters", "bitters", family=True),
            Ingredient("orange-bitters", "orange bitters", ("bitters",)),
        )
    }
)
SPEC = Spec("One", (Line("60 ml gin", "gin", 60.0, None, "ml", 60.0),), id=1)
GIN, BITTERS = worlds.bottle(1, "gin", 500.0), worlds.bottle(2, "orange-bitters", 80.0, 100.0)
BAR = worlds.snapshot(Knowledge(TREE), (GIN, BITTERS), (SPEC,))
SHOOT = Shoot(1, "Night train", worlds.TODAY, (ShootDrink(1, "One", ServeCounts(1, 1, 1)),))


def logged(variance, *, poured=100.0, sigma=3.0, bottle=GIN, expected=400.0):
    """A shoot whose log found this much missing from a bottle."""
    counted = None if variance is None else expected - variance
    title = bottle.product.title
    found = LoggedBottle(bottle.id, title, "ml", poured, 0.0, expected, counted, sigma)
    log = ShootLog(datetime(2026, 11, 21, 18), (3,), (found,))
    return replace(SHOOT, state="logged", log=log)


def test_the_sheet_begins_with_the_serves_planned():
    assert as_planned(SHOOT) == LogSheet((3,))


def test_every_bottle_drawn_from_spilled_or_counted_is_expected_in_shelf_order():
    sheet = LogSheet((2,), {2: 5.0}, {})
    gin, bitters = expected_after(SHOOT, BAR, sheet)
    assert (gin.bottle, gin.poured, gin.spilled, gin.expected) == (GIN, 120.0, 0.0, 380.0)
    assert (bitters.bottle, bitters.poured, bitters.spilled, bitters.expected) == (
        BITTERS,
        0.0,
        5.0,
        75.0,
    )
    counted = LogSheet((0,), {}, {2: MeasuredLevel(60.0, "volume", 5.0)})
    assert [each.bottle for each in expected_after(SHOOT, BAR, counted)] == [BITTERS]
    assert expected_after(SHOOT, BAR, LogSheet((0,))) == ()


def test_each_pour_adds_its_doubt():
    still = ExpectedBottle(replace(GIN, level=Level(500.0, "open", expected_sigma=4.0)), 0.0, 0.0)
    assert still.expected_sigma == 4.0
    both = replace(still, poured=100.0, spilled=50.0)
    parts = (4.0, POUR_SIGMA, POUR_SIGMA, POUR_SIGMA_SHARE * 100, POUR_SIGMA_SHARE * 50)
    assert both.expected_sigma == pytest.approx(sum(each**2 for each in parts) ** 0.5)
    pieces = replace(both, bottle=replace(GIN, product=replace(GIN.product, unit="each")))
    assert pieces.expected_sigma == 0.0
    assert replace(still, poured=600.0).expected == 0.0


def test_what_would_be_logged_joins_the_doubts_of_expected_and_counted():
    sheet = LogSheet((1,), {}, {1: MeasuredLevel(400.0, "weight", 3.0)})
    (gin,) = would_be_logged(SHOOT, BAR, sheet)
    (expected,) = expected_after(SHOOT, BAR, sheet)
    assert (gin.poured, gin.expected, gin.counted, gin.variance) == (60.0, 440.0, 400.0, 40.0)
    assert gin.sigma == pytest.approx((expected.expected_sigma**2 + 9.0) ** 0.5)
    (plain,) = would_be_logged(SHOOT, BAR, LogSheet((1,)))
    assert (plain.counted, plain.variance) == (None, None)
    assert plain.sigma == expected.expected_sigma


def test_variances_are_summed_and_what_nobody_counted_is_left_out():
    shoots = (logged(10.0), logged(30.0, poured=50.0), logged(None), SHOOT)
    (found,) = variances(shoots, BAR)
    assert (found.title, found.shoots, found.poured, found.variance) == (
        "Hollow Lamp gin 1",
        2,
        150.0,
        40.0,
    )
    assert found.sigma == pytest.approx(18.0**0.5)
    assert variances((logged(None), SHOOT), BAR) == ()


def test_what_is_told_apart_comes_first_then_the_largest():
    dashes = logged(3.0, sigma=0.5, bottle=BITTERS)
    unsure = logged(90.0, sigma=80.0, bottle=replace(GIN, id=7))
    found = variances((unsure, logged(20.0), dashes), BAR)
    assert [each.bottle_id for each in found] == [1, 2, 7]
    assert [each.told_apart for each in found] == [True, True, False]


@walked(
    ("shoot", "said"),
    [
        (logged(5.0), NO_TELLING),
        (logged(40.0, sigma=20.0), NO_TELLING),
        (logged(6.5), "As little as an open bottle loses in a month"),
        (logged(20.0), "20 % more than was poured by the specs: over-pouring"),
        (logged(20.0, poured=0.0), "a spill or a drink nobody wrote down"),
        (logged(20.0, poured=1000.0), "a spill or a drink nobody wrote down"),
        (logged(-20.0), "Less went out than the pours say"),
        (logged(3.0, sigma=0.5, bottle=BITTERS), "Its dasher gives more than a dash"),
        (logged(-3.0, sigma=0.5, bottle=BITTERS), "Its dasher gives less than a dash"),
    ],
)
def test_a_variance_has_its_likely_reason(shoot, said):
    (found,) = variances((shoot,), BAR)
    assert said in found.reason


def test_a_bottle_that_is_gone_still_has_its_variance():
    (found,) = variances((logged(20.0),), replace(BAR, bottles=()))
    assert found.title == "Hollow Lamp gin 1" and found.reason.startswith("20 % more")
