"""What is poured out of bottles costs what they cost; a missing price is never nothing."""

from __future__ import annotations

from dataclasses import replace

import pytest

from barkeep.domain.drink.costs import cost_in_words, cost_of_draws
from barkeep.domain.pouring.supply import Draw
from tests.domain.pouring.test_verdicts import KNOWLEDGE
from tests.worlds import bottle, snapshot


def priced(number: int, key: str, price: float | None):
    found = bottle(number, key, 500.0)
    return replace(found, product=replace(found.product, price=price))


def test_each_draw_costs_its_share_of_its_bottle():
    gin, kummel = priced(1, "gin", 28.0), priced(2, "kummel", 35.0)
    bar = snapshot(KNOWLEDGE, [gin, kummel])
    cost = cost_of_draws([Draw(gin, 100.0), Draw(kummel, 50.0)], bar)
    assert cost.amount == pytest.approx(4.0 + 2.5)
    assert cost_in_words(cost, KNOWLEDGE.tree) == "What is poured costs 6.50 EUR."


def test_a_missing_price_is_named_unless_another_bottle_of_the_kind_has_one():
    gin, unpriced = priced(1, "gin", 28.0), priced(2, "gin", None)
    kummel = priced(3, "kummel", None)
    bar = snapshot(KNOWLEDGE, [gin, unpriced, kummel])
    assert cost_of_draws([Draw(unpriced, 100.0)], bar).amount == pytest.approx(4.0)
    cost = cost_of_draws([Draw(gin, 100.0), Draw(kummel, 50.0)], bar)
    assert (cost.amount, cost.priced, cost.unpriced) == (None, pytest.approx(4.0), ("kummel",))
    said = cost_in_words(cost, KNOWLEDGE.tree)
    assert said == "What is poured costs 4.00 EUR, and nobody knows what kümmel costs."
