"""Small programmes solved exactly, against scipy's HiGHS and by hand."""

from __future__ import annotations

from fractions import Fraction
from random import Random

import pytest
from scipy.optimize import linprog

from barkeep.domain.pouring import programme
from barkeep.domain.pouring.programme import largest
from barkeep.domain.pouring.serves import Way, most_serves
from tests.walked import walked


def test_a_textbook_programme():
    """3x + 5y with x <= 4, 2y <= 12, 3x + 2y <= 18: x = 2, y = 6, the limits worth 0, 3/2 and 1."""
    found = largest([3.0, 5.0], [[1.0, 0.0], [0.0, 2.0], [3.0, 2.0]], [4.0, 12.0, 18.0])
    assert found.sum == 36.0
    assert found.worth == (0.0, 18.0, 18.0)


def test_nothing_is_rounded():
    """Tenths are no exact doubles; the answer is that of the doubles, to the last bit."""
    found = largest([0.1], [[0.3]], [0.7])
    assert found.sum == float(Fraction(0.1) * Fraction(0.7) / Fraction(0.3))


def test_beales_programme_ends():
    """Beale's example (1955), in which the plain simplex method turns in a circle."""
    goal = [0.75, -20.0, 0.5, -6.0]
    rows = [[0.25, -8.0, -1.0, 9.0], [0.5, -12.0, -0.5, 3.0], [0.0, 0.0, 1.0, 0.0]]
    assert largest(goal, rows, [0.0, 0.0, 1.0]).sum == 1.25


def test_a_sum_without_a_limit_is_refused():
    with pytest.raises(ArithmeticError):
        largest([1.0, 1.0], [[1.0, 0.0]], [3.0])


def random_programme(chance: Random) -> tuple[list[float], list[list[float]], list[float]]:
    """A few parts, each of which some row limits; numbers as bottles and lines have them."""
    columns, count = chance.randint(1, 9), chance.randint(1, 8)
    needs = [0.0, 0.0, 5.0, 15.0, 22.5, 29.5735, 0.85 * 44.36, 60.0]
    rows = [[chance.choice(needs) for _ in range(columns)] for _ in range(count)]
    rows.append([1.0] * columns)
    limits = [chance.choice([0.0, 35.0, 700 * chance.random(), 750.0]) for _ in rows]
    goal = [float(chance.randint(-2, 5)) for _ in range(columns)]
    return goal, rows, limits


@walked("seed", range(200))
def test_random_programmes_are_those_of_highs(seed):
    goal, rows, limits = random_programme(Random(seed))
    found = largest(goal, rows, limits)
    outside = linprog([-each for each in goal], rows, limits, method="highs")
    assert found.sum == pytest.approx(-outside.fun, rel=1e-9, abs=1e-9)
    # What the limits are worth adds up to the sum: so none other could be larger.
    assert sum(found.worth) == pytest.approx(found.sum, rel=1e-12, abs=1e-12)
    assert all(each >= 0.0 for each in found.worth)


@walked("seed", range(60))
def test_serves_are_the_same_by_either(monkeypatch, seed):
    chance = Random(seed)
    pools = [(f"p{number}", 0) for number in range(4)]
    supply = {pool: float(chance.randint(5, 300)) for pool in pools}

    def way() -> Way:
        drawn = chance.sample(pools, chance.randint(1, 2))
        return Way({pool: float(chance.choice([5, 15, 30])) for pool in drawn})

    lines = [[way() for _ in range(chance.randint(1, 3))] for _ in range(chance.randint(1, 4))]
    exactly = most_serves(lines, supply)
    with monkeypatch.context() as patch:
        patch.setattr(programme, "SMALL", 0)
        assert most_serves(lines, supply).most == pytest.approx(exactly.most, rel=1e-9, abs=1e-9)
