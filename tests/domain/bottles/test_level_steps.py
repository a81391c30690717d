"""A level step by step, with its doubt: worked out by hand."""

from __future__ import annotations

from datetime import datetime, timedelta
from math import hypot, sqrt

import pytest

from barkeep.domain.bottles.bottle import Entry
from barkeep.domain.bottles.level_steps import level_steps

START = datetime(2026, 3, 1, 18)


def entry(number: int, kind, amount: float = 0.0, **more) -> Entry:
    return Entry(number, 1, kind, START + timedelta(days=number), amount, **more)


LEDGER = (
    entry(1, "receive", 700.0),
    entry(2, "open"),
    entry(3, "pour", 60.0),
    entry(4, "pour", 40.0),
    entry(5, "reverse", reverses=4),
    entry(6, "count", 500.0, method="volume", sigma=5.0),
    entry(7, "correct", 50.0),
    entry(8, "empty"),
)


def test_each_step_with_its_doubt():
    steps = level_steps(LEDGER, "ml")
    assert [(each.entry.kind, each.before, each.after) for each in steps] == [
        ("receive", 0.0, 700.0),
        ("open", 700.0, 700.0),
        ("pour", 700.0, 640.0),
        ("count", 640.0, 500.0),
        ("correct", 500.0, 550.0),
        ("empty", 550.0, 0.0),
    ]
    first = 700.0 * 0.02 / sqrt(3.0)  # any fill within 2 % of a 700 ml bottle, equally likely
    assert steps[0].after_sigma == pytest.approx(first)
    assert steps[2].after_sigma == pytest.approx(hypot(first, 0.02 * 60.0, 1.0))
    assert (steps[3].before_sigma, steps[3].after_sigma) == (steps[2].after_sigma, 5.0)
    assert steps[-1].after_sigma == 0.0
    assert [each.is_refill for each in steps] == [True, False, False, False, True, False]


def test_what_a_step_leaves_in_words():
    said = [each.leaves("ml") for each in level_steps(LEDGER, "ml")]
    assert said[2].startswith("640 ml ± ") and said[2].endswith(" left")
    assert said[3] == "± 10 ml, 140 ml less than expected"
    assert said[-1] == "0 ml left"
    pieces = level_steps((entry(1, "receive", 6.0), entry(2, "pour", 2.0)), "each")
    assert [each.leaves("each") for each in pieces] == ["6 left", "4 left"]
