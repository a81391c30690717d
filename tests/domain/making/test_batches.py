"""One serve made many."""

from __future__ import annotations

import re

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from barkeep.application.bar import Bar
from barkeep.desktop.making.batch import batch_view
from barkeep.domain.amounts.amount import parse_amount
from barkeep.domain.amounts.measures import show_quantity, to_quantity
from barkeep.domain.amounts.rounding import rounded_down
from barkeep.domain.drink.analysis import analyse
from barkeep.domain.making.available import available_in
from barkeep.domain.making.batch_measures import (
    ForServes,
    ForVessel,
    ForVolume,
    FromIngredient,
    measured,
    measured_down,
)
from barkeep.domain.making.batches import batch, rounds_of
from barkeep.domain.pouring.supply import supply_of
from barkeep.domain.spec_text.text import read_specs
from barkeep.errors import CannotBatch


@pytest.fixture(scope="module")
def snapshot(tmp_path_factory):
    """The sample bar as a frozen picture."""
    from datetime import datetime

    from barkeep.application.sample import build

    path = tmp_path_factory.mktemp("batch") / "sample.bar"
    now = lambda: datetime(2026, 11, 21, 12, 0)  # noqa: E731
    build(path, clock=now)
    with Bar.open(path, clock=now) as bar:
        return bar.snapshot


@pytest.fixture(scope="module")
def sour(snapshot):
    return next(spec for spec in snapshot.all_specs if spec.name == "Request Stop")


def amount_of(made, key):
    return next(line.exact for line in made.lines if line.ingredient == key)


def test_ten_serves_are_ten_times_one(snapshot, sour):
    one, ten = batch(sour, snapshot, ForServes(1)), batch(sour, snapshot, ForServes(10))
    assert [line.exact for line in ten.lines] == pytest.approx(
        [10 * line.exact for line in one.lines]
    )
    assert ten.abv_percent == pytest.approx(one.abv_percent)
    assert ten.ethanol_ml == pytest.approx(10 * one.ethanol_ml)


def test_cold_water_brings_it_to_what_the_shaken_drink_is(snapshot, sour):
    served = analyse(sour, snapshot)
    made = batch(sour, snapshot, ForServes(1), "cold")
    assert made.total_ml == pytest.approx(served.served_volume_ml)
    assert made.abv_percent == pytest.approx(served.abv_percent)
    assert made.sugar_g_per_l == pytest.approx(served.sugar_g_per_l)


def test_hot_takes_no_water_and_over_ice_and_the_freezer_take_less(snapshot, sour):
    water = {
        served: batch(sour, snapshot, ForServes(20), served).water_ml
        for served in ("cold", "over_ice", "hot", "frozen")
    }
    assert water["hot"] == 0.0 < water["over_ice"] < water["cold"]
    assert water["frozen"] == 0.0  # 26 % vol as poured turns to slush even without any


@given(serves=st.floats(0.5, 400))
def test_every_way_to_say_how_much_gives_the_same_batch(snapshot, sour, serves):
    by_serves = batch(sour, snapshot, ForServes(serves))
    gin = amount_of(by_serves, "london-dry-gin")
    for target in (
        ForVolume(by_serves.total_ml),
        ForVessel(by_serves.total_ml / 0.8, 0.2),
        FromIngredient("london-dry-gin", gin),
        FromIngredient("gin", gin),
    ):
        try:
            other = batch(sour, snapshot, target)
        except CannotBatch:
            assert serves < 1.0  # a vessel below one serve
            continue
        assert other.serves == pytest.approx(serves)
        assert [line.exact for line in other.lines] == pytest.approx(
            [line.exact for line in by_serves.lines]
        )


@settings(max_examples=30)  # each tries every spec
@given(serves=st.floats(0.1, 1000))
def test_what_is_in_it_is_conserved(snapshot, serves):
    for spec in snapshot.specs:
        one = analyse(spec, snapshot)
        made = batch(spec, snapshot, ForServes(serves))
        ethanol = sum(content.ethanol_ml for content in one.contents) * serves
        assert made.ethanol_ml == pytest.approx(ethanol)
        assert made.total_ml * made.abv_percent / 100 == pytest.approx(ethanol)
        sugar = sum(content.sugar_g for content in one.contents) * serves
        assert made.total_ml * made.sugar_g_per_l / 1000 == pytest.approx(sugar)


@given(amount=st.floats(0.01, 100_000), unit=st.sampled_from(["ml", "g"]))
def test_a_measured_amount_is_near_the_exact_one(amount, unit):
    assert measured(amount, unit) == pytest.approx(amount, rel=0.13, abs=0.5)


@given(amount=st.floats(0.01, 100_000))
def test_measuring_twice_changes_nothing(amount):
    once = measured(amount, "ml")
    assert measured(once, "ml") == once


@given(amount=st.floats(0.0001, 100_000), unit=st.sampled_from(["ml", "g", "each"]))
def test_rounding_down_never_goes_up_and_takes_little_away(amount, unit):
    for down in (rounded_down(amount, unit), measured_down(amount, unit)):
        assert 0.0 < down <= amount * (1 + 1e-11)
        shown = show_quantity(down, unit)
        assert to_quantity(parse_amount(shown), unit) == pytest.approx(down, rel=1e-9, abs=1e-6)
        assert amount - down < max(1.0, 0.1 * amount)


numbers = st.integers(0, 9_999)
"""Which of the specs, or of the ways to make them; a fixture can be no strategy."""


@pytest.fixture(scope="module")
def pivots(snapshot):
    """Each spec with each ingredient that it could be made from all there is of."""
    return [
        (spec, each.pour.ingredient)
        for spec in snapshot.all_specs
        for each in analyse(spec, snapshot).contents
        if each.quantity
    ]


def said_serves(headline):
    """The serves a headline promises: *nearly 9* promises more than 8."""
    words = re.search(r"(nearly |about )?([\d.]+) serves?\b", headline)
    return float(words[2]) - (1.0 if words[1] == "nearly " else 0.0)


@given(number=numbers, amount=st.floats(0.5, 3000.0).map(lambda each: float(f"{each:.12g}")))
def test_no_more_is_measured_than_there_is_of_what_it_is_made_from(
    snapshot, pivots, number, amount
):
    spec, key = pivots[number % len(pivots)]
    try:
        made = batch(spec, snapshot, FromIngredient(key, amount))
    except CannotBatch as error:
        assert "2000 is the most" in str(error)
        return
    tree, supply = snapshot.knowledge.tree, supply_of(snapshot)
    unit = tree[key].unit
    view = batch_view(made, snapshot, None)
    taken = [
        (line, row)
        for line, row in zip(made.lines, view.rows, strict=False)
        if line.most is not None and tree.is_a(line.ingredient, key)
    ]
    assert taken
    for column in (1, 2):  # what is exact, and what is measured
        shown = [to_quantity(parse_amount(row[column]), unit) for _line, row in taken]
        assert 0.0 < sum(shown) <= amount * (1 + 1e-9)
    sharing = [line for line in spec.required_lines if tree.is_a(key, line.ingredient)]
    if len(sharing) < 2:  # else another line has its share, which it may pour of another kind
        assert sum(line.amount for line, _row in taken) > 0.8 * amount
    said = any(note.startswith("Rounded down, so that no more") for note in made.notes)
    assert said == any(line.amount < line.most for line in made.lines if line.most is not None)
    serves = said_serves(view.headline)
    total = float(view.sentences[0].split(" ml in all")[0])
    assert serves <= made.serves * (1 + 1e-9) and total <= made.total_ml * (1 + 1e-9)
    stock = available_in(snapshot)
    for line, row in zip(made.lines, view.rows, strict=False):
        have = supply.total_of_kind(line.ingredient, tree)
        if line.ingredient not in supply.always and line.exact <= have:
            assert to_quantity(parse_amount(row[2]), line.unit) <= have
        if line.taken is not None and line not in [each.line for each in made.short]:
            most = stock.most(line.ingredient, 1e9).amount
            assert to_quantity(parse_amount(row[2]), line.unit) <= most * (1 + 1e-9)


@given(number=numbers, most_ml=st.floats(300.0, 6000.0), room=st.floats(0.0, 0.5))
def test_no_more_is_poured_than_the_vessel_takes(snapshot, number, most_ml, room):
    spec = snapshot.all_specs[number % len(snapshot.all_specs)]
    capacity_ml = most_ml / (1.0 - room)
    for target in (ForVolume(most_ml), ForVessel(capacity_ml, room)):
        try:
            made = batch(spec, snapshot, target)
        except CannotBatch as error:
            assert "and one serve is" in str(error)
            continue
        volumes = {}
        for each in analyse(spec, snapshot).contents:
            key = each.pour.ingredient
            volumes[key] = volumes.get(key, 0.0) + each.volume_ml * made.serves
        poured = sum(volumes[each.ingredient] * (1.0 + each.error) for each in made.lines)
        assert poured + made.water_ml <= most_ml * (1 + 1e-6)
        assert poured + made.water_ml == pytest.approx(most_ml, rel=0.15)


def test_pieces_are_whole():
    assert (measured(0.3, "each"), measured(7.6, "each"), measured(0.0, "each")) == (1.0, 8.0, 0.0)


def test_bubbles_wait(snapshot):
    spec = next(each for each in snapshot.all_specs if each.name == "Two-Coach Local")
    lines = {line.ingredient: line for line in batch(spec, snapshot, ForServes(8)).lines}
    assert lines["soda-water"].held == "it has bubbles: add it as it is served"
    assert lines["ginger-syrup"].held == ""


def test_bitters_begin_low(snapshot, sour):
    made = batch(sour, snapshot, ForServes(20))
    bitters = next(line for line in made.lines if line.ingredient == "orange-bitters")
    assert bitters.start_with == pytest.approx(bitters.exact / 2, rel=0.1)
    assert any("common practice" in note for note in made.notes)
    alone = batch(sour, snapshot, ForServes(2))
    assert all(line.start_with is None for line in alone.lines)


def test_what_the_bar_lacks_is_said(snapshot, sour):
    made = batch(sour, snapshot, ForServes(100))
    short = {each.ingredient: each for each in made.short}
    assert short["london-dry-gin"].need == pytest.approx(amount_of(made, "london-dry-gin"))
    assert 0 < short["london-dry-gin"].have < short["london-dry-gin"].need
    assert batch(sour, snapshot, ForServes(1)).short == ()


def test_a_freezer_batch_tells_where_it_freezes(snapshot, sour):
    made = batch(sour, snapshot, ForServes(4), "frozen")
    assert any("ice begins near" in note and "-18 °C" in note for note in made.notes)


@pytest.mark.parametrize(
    ("target", "sentence"),
    [
        (ForServes(0), "a number of serves is more than nothing"),
        (ForServes(float("nan")), "a number of serves is more than nothing"),
        (ForServes(1e6), "that would be 1e+06 serves; 2000 is the most"),
        (ForVolume(-5), "a volume is more than nothing"),
        (ForVessel(60), "the vessel takes 54 ml and one serve is"),
        (ForVessel(1000, 1.0), "the room left in the vessel is a share below 1"),
        (FromIngredient("mezcal", 700), "there is no mezcal in it"),
    ],
)
def test_a_batch_that_makes_no_sense_is_refused(snapshot, sour, target, sentence):
    with pytest.raises(CannotBatch) as caught:
        batch(sour, snapshot, target)
    assert sentence in str(caught.value)


def test_a_large_batch_goes_through_a_small_tin_in_even_rounds():
    assert rounds_of(1000, 400) == pytest.approx((333.333,) * 3, rel=1e-4)
    assert rounds_of(400, 400) == (400,)
    with pytest.raises(CannotBatch):
        rounds_of(400, 0)


def test_a_batch_of_gin_without_an_amount_tells_no_strength(snapshot):
    (read,) = read_specs(
        "Long\ngin\n100 ml tonic water\n\nBuild over ice.", snapshot.knowledge.tree
    )
    made = batch(read.spec, snapshot, ForServes(4), "frozen")
    assert (made.abv_percent, made.ethanol_ml, made.standard_drinks_per_serve) == (None,) * 3
    assert any(note.startswith("Strength not known: ") for note in made.notes)
    assert not any("ice begins" in note for note in made.notes)


def test_the_ice_point_of_a_strong_batch_is_a_bound(snapshot):
    (read,) = read_specs("Strong\n60 ml overproof rum\n\nPour.", snapshot.knowledge.tree)
    notes = batch(read.spec, snapshot, ForServes(4), "frozen").notes
    assert any("ice begins below -28 °C" in note for note in notes)
