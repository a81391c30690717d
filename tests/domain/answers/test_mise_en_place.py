"""What to have ready before a shoot."""

from __future__ import annotations

import math

import pytest

from barkeep.application.bar import Bar
from barkeep.domain.answers.menu import Order
from barkeep.domain.answers.mise_en_place import MARGIN, mise_en_place
from barkeep.domain.snapshot import Snapshot
from barkeep.domain.specs import Line, Spec
from tests.worlds import TODAY

MOST_LIME_ML, LEAST_LIME_ML = 43.0, 22.0
"""44 g, about 43 ml, to the lime (USDA SR28 09160, *yields*); the trade counts on 22 to 30."""


@pytest.fixture
def snapshot(sample_bar, clock):
    """The sample bar as a frozen picture."""
    with Bar.open(sample_bar, clock=clock) as bar:
        return bar.snapshot


def lime_drink(quantity=30.0, serves=10):
    line = Line(f"{quantity} ml lime juice", "lime-juice", quantity, None, "ml", quantity)
    return Order(Spec("Sour", (line,), "Shake and double strain.", "shaken", "coupe"), serves)


def test_fruit_is_counted_from_yields_with_a_margin(knowledge):
    (limes,) = mise_en_place([lime_drink()], Snapshot(knowledge, TODAY)).squeeze
    assert limes.amount == pytest.approx(300.0 * (1 + MARGIN))
    ((fruit, count, unit),) = limes.inputs
    assert (fruit, unit, count) == ("lime", "each", math.ceil(count))
    assert limes.amount / MOST_LIME_ML <= count <= math.ceil(limes.amount / LEAST_LIME_ML)


def test_what_is_there_is_not_squeezed_again(snapshot):
    there = sum(b.level.amount for b in snapshot.usable["lime-juice"])
    orders = [lime_drink(there / 10, 9)]
    assert mise_en_place(orders, snapshot).squeeze == ()
    (more,) = mise_en_place([lime_drink(there / 10, 11)], snapshot).squeeze
    assert more.amount == pytest.approx(there / 10 * (1 + MARGIN))


def test_syrups_are_made_from_their_recipe(knowledge):
    line = Line("", "simple-syrup", 20.0, None, "ml", 20.0)
    ready = mise_en_place(
        [Order(Spec("S", (line,), "Stir.", "stirred"), 10)], Snapshot(knowledge, TODAY)
    )
    (syrup,) = ready.make
    # 1 kg and 1 kg give 1626.5 ml (ICUMSA), so 230 ml takes 141.4 g of each.
    assert syrup.inputs[0] == ("sugar", pytest.approx(230 / 1626.5 * 1000), "g")
    assert ready.squeeze == ()


def test_everything_set_out_is_counted_over_all_specs(snapshot):
    by_name = {spec.name: spec for spec in snapshot.all_specs}
    ready = mise_en_place(
        [Order(by_name["Request Stop"], 3), Order(by_name["Two-Coach Local"], 2)], snapshot
    )
    assert {each.name: each.count for each in ready.glassware} == {
        "coupe": 3,
        "highball glass": 2,
    }
    assert {each.name: each.count for each in ready.garnishes} == {
        "lime wedge": 3,
        "orange slice": 2,
    }
    assert "fine strainer" in ready.tools and "bar spoon" in ready.tools
    assert "soda water" in ready.chill
    working = next(each for each in ready.ice if each.kind.startswith("cubes to shake"))
    assert working.grams == 3 * 120.0


def test_the_steps_end_ready(snapshot):
    by_name = {spec.name: spec for spec in snapshot.all_specs}
    ready = mise_en_place([Order(by_name["Ices on Platform Three"], 30)], snapshot)
    order = ["the day before", "two hours before", "an hour before", "half an hour before"]
    places = [order.index(step.when) for step in ready.steps]
    assert places == sorted(places)


def test_no_serves_need_nothing(snapshot):
    by_name = {spec.name: spec for spec in snapshot.all_specs}
    ready = mise_en_place([Order(by_name["Request Stop"], 0)], snapshot)
    assert (ready.make, ready.squeeze, ready.glassware, ready.tools) == ((), (), (), ())


def test_every_classic_can_be_prepared(knowledge):
    bar = Snapshot(knowledge, TODAY)
    for spec in knowledge.classics:
        ready = mise_en_place([Order(spec, 4)], bar)
        assert all(each.amount > 0 for each in (*ready.make, *ready.squeeze))
        assert ready.tools
