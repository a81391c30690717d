"""Taking in what was bought, and pars: all or nothing, one undo, exact levels after each."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta
from math import inf, nan

import pytest

from barkeep.application.shopping import Bought
from barkeep.domain.bar.pars import Par
from barkeep.errors import DuplicateName, InvalidField, UnknownName
from tests.application.conftest import NOON, gin_draft

TODAY = NOON.date()


def limes(**changes):
    values = {"name": "Limes", "maker": "", "ingredient": "lime", "size": 6.0, "unit": "each"}
    return gin_draft(**{**values, "abv_percent": None, "price": None, **changes})


def state(bar):
    """All levels by bottle, the prices and the settings."""
    levels = {each.id: each.level.amount for each in bar.snapshot.bottles}
    return levels, {each.title: each.price for each in bar.snapshot.products}


def test_everything_comes_in_as_one_step_and_goes_in_one(bar, gin, reopen):
    bar.inventory.pour(gin.id, 100.0)
    before = state(bar)
    done = bar.shopping.receive(
        [Bought(gin.product.id, 3, 24.5), Bought(gin_draft(name="other gin", size=500.0))]
    )
    assert done.label == "Receive 4 bottles"
    assert [each.level.amount for each in done.value] == [700.0, 700.0, 700.0, 500.0]
    assert [each.level.state for each in done.value] == ["sealed"] * 4
    assert {each.received for each in done.value} == {TODAY}
    assert state(bar)[0][gin.id] == 600.0
    assert state(bar)[1] == {gin.product.title: 24.5, "Tansy Lock other gin": 38.5}
    again = reopen()
    again.undo()
    assert state(again) == before
    again.redo()
    assert state(again)[0] == {gin.id: 600.0, **{each.id: each.level.amount for each in done.value}}


def test_what_was_paid_is_noted_with_the_day_it_came(bar, gin):
    day, use_by = TODAY - timedelta(days=3), TODAY + timedelta(days=9)
    done = bar.shopping.receive([Bought(gin.product.id, 1, 24.5, day, use_by)])
    (bottle,) = done.value
    assert (bottle.received, bottle.use_by, done.label) == (
        day,
        use_by,
        "Receive Tansy Lock navy-strength gin",
    )
    ((entry, level),) = bar.inventory.history(bottle.id)
    assert (entry.note, entry.at.date(), level) == ("paid 24.50 EUR", day, 700.0)


def test_without_a_price_the_known_one_stays(bar, gin):
    bar.shopping.receive([Bought(gin.product.id)])
    assert bar.snapshot.products[0].price == 38.5
    assert bar.inventory.history(bar.snapshot.bottles[-1].id)[0][0].note == ""
    bar.shopping.receive([Bought(gin.product.id, price=0.0)])
    assert bar.snapshot.products[0].price == 0.0


def test_fruit_comes_in_by_the_net(bar):
    done = bar.shopping.receive([Bought(limes(), 2, 2.4)])
    assert done.label == "Receive 2 packages"
    assert [(each.level.amount, each.product.unit) for each in done.value] == [(6.0, "each")] * 2
    assert bar.snapshot.products[0].price == 2.4


@pytest.mark.parametrize(
    ("changes", "field"),
    [
        ({"count": 0}, "count"),
        ({"count": 100}, "count"),
        ({"count": -1}, "count"),
        ({"price": -0.01}, "price"),
        ({"price": nan}, "price"),
        ({"price": inf}, "price"),
        ({"received": TODAY + timedelta(days=1)}, "received"),
        ({"use_by": TODAY - timedelta(days=1)}, "use by"),
    ],
)
def test_one_thing_that_cannot_be_keeps_everything_out(bar, gin, changes, field):
    before = state(bar)
    good = Bought(gin.product.id, 2, 20.0)
    with pytest.raises(InvalidField) as refused:
        bar.shopping.receive([good, replace(good, **changes)])
    assert refused.value.field == field
    assert state(bar) == before
    assert bar.undo_label == "Receive Tansy Lock navy-strength gin"


def test_a_fault_after_the_first_bottle_takes_it_back(bar, gin):
    before = state(bar)
    good = Bought(gin.product.id, 2, 20.0)
    with pytest.raises(UnknownName):
        bar.shopping.receive([good, Bought(999)])
    with pytest.raises(DuplicateName):
        bar.shopping.receive([good, Bought(gin_draft())])
    with pytest.raises(InvalidField):
        bar.shopping.receive([good, Bought(gin_draft(name="own", house_made=True))])
    with pytest.raises(InvalidField):
        bar.shopping.receive([])
    assert state(bar) == before


# Pars


def test_a_par_is_set_changed_and_taken_away_and_each_is_undone(bar, reopen):
    done = bar.settings.set_par("dry gin", 1400.0)
    assert done.label == "Set the par of london dry gin"
    assert done.value.pars == (Par("london-dry-gin", 1400.0),)
    bar.settings.set_par("lime", 6.0)
    bar.settings.set_par("London dry gin", 700.0)
    assert bar.snapshot.settings.pars == (Par("lime", 6.0), Par("london-dry-gin", 700.0))
    assert reopen().snapshot.settings == bar.snapshot.settings
    bar.undo()
    assert Par("london-dry-gin", 1400.0) in bar.snapshot.settings.pars
    assert bar.settings.set_par("lime", None).label == "Remove the par of lime"
    assert bar.snapshot.settings.pars == (Par("london-dry-gin", 1400.0),)
    bar.undo()
    assert Par("lime", 6.0) in bar.snapshot.settings.pars


def test_the_other_settings_and_the_pars_leave_each_other_alone(bar):
    bar.settings.set_par("gin", 700.0)
    bar.settings.change(replace(bar.snapshot.settings, name="Signal box"))
    assert bar.snapshot.settings.pars == (Par("gin", 700.0),)
    bar.settings.set_par("lime", 3.0)
    assert bar.snapshot.settings.name == "Signal box"


@pytest.mark.parametrize("amount", [-1.0, nan, inf, 1e9])
def test_a_par_that_cannot_be_is_refused(bar, amount):
    with pytest.raises(InvalidField, match="par"):
        bar.settings.set_par("gin", amount)
    assert bar.undo_label is None


def test_what_is_always_there_has_no_par_and_the_unknown_neither(bar):
    with pytest.raises(InvalidField, match="always there"):
        bar.settings.set_par("water", 100.0)
    with pytest.raises(UnknownName):
        bar.settings.set_par("unicorn", 100.0)
    assert bar.settings.set_par("gin", 0.0).changes == frozenset()


def test_a_day_long_ago_is_no_trouble(bar, gin):
    (bottle,) = bar.shopping.receive([Bought(gin.product.id, received=date(2020, 2, 29))]).value
    assert bottle.received == date(2020, 2, 29)
