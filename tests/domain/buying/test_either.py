"""Of what a line lets one choose from, what makes the list least is bought."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from itertools import product as every
from random import Random

import pulp
import pytest
from scipy.optimize import linprog

from barkeep.domain.bottles.bottle import Product
from barkeep.domain.buying.either import Kind, Wanted, least_list
from barkeep.domain.buying.packages import Package, package_for
from barkeep.domain.buying.shopping import _Shop, shopping
from tests import worlds
from tests.domain.buying.test_shopping import bar, bought, line, order, product
from tests.how_much import some_of

A, B, C, D = (Kind(each) for each in "abcd")
BELOW = {"a": "a", "b": "ab", "c": "c", "d": "cd"}
"""Of each letter those that a package of it does for: b is an a, and d a c."""


def fits(package: Package, kind: Kind) -> bool:
    return kind.ingredient in BELOW[package.ingredient]


def can_be_met(demands, kept, counts, packages) -> bool:
    """Whether these packages hold all that is wanted, by a linear programme of its own."""
    parts = [
        (place, kind)
        for place, (wanted, _much) in enumerate(demands)
        for kind in packages
        if fits(packages[kind], wanted)
    ]
    keeping = list(packages)
    size = len(parts) + len(keeping)
    above, limits = [], []
    for number, kind in enumerate(packages):
        row = [1.0 if part[1] == kind else 0.0 for part in parts] + [0.0] * len(keeping)
        row[len(parts) + number] = 1.0
        above.append(row)
        limits.append(counts[kind] * packages[kind].size)
    for place, (_wanted, much) in enumerate(demands):
        above.append([-1.0 if part[0] == place else 0.0 for part in parts] + [0.0] * len(keeping))
        limits.append(-much)
    for wanted, much in kept.items():
        row = [0.0] * len(parts)
        above.append(row + [-1.0 if fits(packages[kind], wanted) else 0.0 for kind in keeping])
        limits.append(-much)
    return bool(linprog([0.0] * size, above, limits).success)


def by_trying_all(wanted, kept, packages) -> tuple[int, float]:
    best = (99, 0.0)
    unknown = 1.0 + sum(each.price or 0.0 for each in packages.values())
    for numbers in every(range(4), repeat=len(packages)):
        counts = dict(zip(packages, numbers, strict=True))
        prices = (packages[kind].price for kind in packages)
        costs = [unknown if each is None else each for each in prices]
        cost = sum(many * each for many, each in zip(numbers, costs, strict=True))
        if (sum(numbers), cost) >= best:
            continue
        for chosen in every(*(each.kinds for each in wanted)):
            demands = list(zip(chosen, (each.amount for each in wanted), strict=True))
            if can_be_met(demands, kept, counts, packages):
                best = (sum(numbers), cost)
                break
    return best


def small(chance: Random) -> tuple[list[Wanted], Mapping[Kind, float], Mapping[Kind, Package]]:
    kinds = [A, B, C, D][: chance.randint(2, 4)]
    packages = {
        kind: Package(
            kind.ingredient,
            chance.choice([100.0, 150.0]),
            40.0,
            None
            if chance.random() < 0.2
            else Product("x", "", kind.ingredient, 100.0, price=float(chance.randint(5, 9)), id=1),
        )
        for kind in kinds
    }
    wanted = [
        Wanted(
            tuple(chance.sample(kinds, chance.randint(1, 2))), float(chance.choice([20, 60, 90]))
        )
        for _ in range(chance.randint(1, 3))
    ]
    kept = {chance.choice(kinds): 50.0} if chance.random() < 0.4 else {}
    return wanted, kept, packages


@pytest.mark.parametrize("first", some_of(range(0, 300, 10), 15))
def test_it_is_the_least_list_that_trying_all_finds(first):
    for seed in range(first, first + 10):
        wanted, kept, packages = small(Random(seed))
        found = least_list(wanted, kept, packages, fits)
        unknown = 1.0 + sum(each.price or 0.0 for each in packages.values())
        cost = sum(
            many * (unknown if packages[kind].price is None else packages[kind].price)
            for kind, many in found.packages.items()
        )
        most, least = by_trying_all(wanted, kept, packages)
        assert (sum(found.packages.values()), cost) == (most, pytest.approx(least)), seed
        demands = [(kind, each.amount) for kind, each in zip(found.chosen, wanted, strict=True)]
        assert can_be_met(demands, kept, found.packages, packages)


def by_cbc(wanted, kept, packages, letters) -> tuple[int, float]:
    """The fewest packages and the least money that CBC finds, put to it in the plainest way."""
    best: list[float] = []
    for _goal in ("packages", "money"):
        asked = pulp.LpProblem("list", pulp.LpMinimize)
        many = {kind: pulp.LpVariable(f"n{kind.ingredient}", 0, cat="Integer") for kind in packages}
        left = {kind: pulp.LpVariable(f"k{kind.ingredient}", 0) for kind in packages}
        drawn = {kind: [left[kind]] for kind in packages}
        for number, each in enumerate(wanted):
            as_kinds = []
            for kind in each.kinds:
                taken = pulp.LpVariable(f"c{number}{kind.ingredient}", cat="Binary")
                as_kinds.append(taken)
                parts = []
                for other in packages:
                    if packages[other].ingredient in letters[kind.ingredient]:
                        part = pulp.LpVariable(f"x{number}{kind.ingredient}{other.ingredient}", 0)
                        parts.append(part)
                        drawn[other].append(part)
                asked += pulp.lpSum(parts) >= each.amount * taken
            asked += pulp.lpSum(as_kinds) == 1
        for kind in packages:
            asked += pulp.lpSum(drawn[kind]) <= packages[kind].size * many[kind]
        for kind, amount in kept.items():
            fitting = (
                left[each]
                for each in packages
                if packages[each].ingredient in letters[kind.ingredient]
            )
            asked += pulp.lpSum(fitting) >= amount
        if best:
            asked += pulp.lpSum(many.values()) <= best[0]
            asked += pulp.lpSum(packages[kind].price * many[kind] for kind in packages)
        else:
            asked += pulp.lpSum(many.values())
        asked.solve(pulp.PULP_CBC_CMD(msg=False))
        best.append(float(pulp.value(asked.objective) or 0.0))
    return round(best[0]), best[1]


@pytest.mark.parametrize("seed", some_of(range(20), 10))
def test_it_is_what_another_solver_finds_of_more(seed):
    chance = Random(seed)
    keys = "abcdefgh"
    letters = {key: key + "".join(chance.sample(keys, 2)) for key in keys}
    kinds = [Kind(key) for key in keys]
    packages = {
        kind: Package(
            kind.ingredient,
            chance.choice([200.0, 350.0, 700.0]),
            40.0,
            Product("x", "", kind.ingredient, 100.0, price=float(chance.randint(5, 30)), id=1),
        )
        for kind in kinds
    }
    wanted = [
        Wanted(tuple(chance.sample(kinds, chance.randint(1, 3))), float(chance.randint(20, 600)))
        for _ in range(12)
    ]
    kept = {kind: float(chance.randint(50, 400)) for kind in chance.sample(kinds, 2)}
    found = least_list(
        wanted, kept, packages, lambda package, kind: package.ingredient in letters[kind.ingredient]
    )
    cost = sum(many * (packages[kind].price or 0.0) for kind, many in found.packages.items())
    many, least = by_cbc(wanted, kept, packages, letters)
    assert (sum(found.packages.values()), cost) == (many, pytest.approx(least, abs=1e-3))


def either(first: str, other: str, amount: float):
    return replace(line(first, amount), alternatives=(other,))


def test_one_bottle_covers_both_where_a_line_lets_one_choose():
    kept = bar(products=[product(8, "gin", 700.0, 9.0), product(9, "rum", 700.0, 30.0)])
    drinks = [order(2, either("gin", "rum", 50.0), name="Either"), order(2, line("rum", 40.0))]
    assert bought(shopping([drinks], kept)) == {"rum": (180.0, 1)}
    assert bought(shopping([drinks[:1]], kept)) == {"gin": (100.0, 1)}
    with_par = bar(products=kept.products, pars=[("rum", 300.0)])
    assert bought(shopping([drinks[:1]], with_par)) == {"rum": (400.0, 1)}


def test_of_two_the_cheaper_and_known_one_is_bought():
    drinks = [order(2, either("rum", "gin", 50.0))]
    gin, rum = product(8, "gin", 700.0, 9.0), product(9, "rum", 700.0, 30.0)
    assert bought(shopping([drinks], bar(products=[gin, rum]))) == {"gin": (100.0, 1)}
    unknown = replace(gin, price=None)
    assert bought(shopping([drinks], bar(products=[unknown, rum]))) == {"rum": (100.0, 1)}
    assert bought(shopping([drinks], bar())) == {"rum": (100.0, 1)}


def test_a_least_strength_is_bought_as_a_bottle_and_not_as_what_cannot_meet_it():
    (item,) = shopping([[order(1, line("cordial", 30.0, 20.0))]], bar()).items
    assert (item.ingredient, item.min_abv_percent, item.packages) == ("cordial", 20.0, 1)
    weak = shopping([[order(1, line("cordial", 30.0))]], bar()).items
    assert {each.ingredient for each in weak} == {"lime"}


def test_what_is_there_is_poured_before_anything_is_chosen():
    there = worlds.bottle(1, "gin", 100.0)
    drinks = [order(3, either("rum", "gin", 50.0))]
    (item,) = shopping([drinks], bar(there)).items
    assert item.need == pytest.approx(50.0)


@pytest.mark.parametrize("first", some_of(range(0, 300, 30), 5))
def test_the_whole_list_is_the_least_there_is(first):
    """Of bottles with kinds below kinds, strengths, pars and prices; an empty bar."""
    for seed in range(first, first + 30):
        chance = Random(seed)
        keys = ["gin", "dry-gin", "rum", "soda"]
        products = [
            product(
                number,
                key,
                chance.choice([200.0, 350.0, 700.0]),
                chance.choice([None, 9.0, 12.0, 20.0]),
                abv_percent=chance.choice([None, 38.0, 47.0]),
            )
            for number, key in enumerate(keys, 1)
            if chance.random() < 0.8
        ]
        pars = {chance.choice(keys): chance.choice([100.0, 900.0]) for _ in range(2)}
        lines = []
        for _ in range(chance.randint(1, 5)):
            key, other = chance.sample(keys, 2)
            least = chance.choice([None, None, 45.0]) if key != "soda" else None
            one = line(key, chance.choice([20.0, 60.0, 150.0]), least)
            lines.append(replace(one, alternatives=(other,)) if chance.random() < 0.4 else one)
        serves = chance.randint(1, 6)
        kept = bar(products=products, pars=list(pars.items()))
        wanted = [
            Wanted(
                tuple(Kind(each, one.min_abv_percent) for each in one.wanted),
                serves * one.quantity,
            )
            for one in lines
        ]
        parted = {Kind(key): amount for key, amount in pars.items()}
        kinds = dict.fromkeys((*(kind for each in wanted for kind in each.kinds), *parted))
        packages = {kind: package_for(kind.ingredient, kind.least_abv, kept) for kind in kinds}
        least = least_list(wanted, parted, packages, _Shop(kept)._fits)
        found = shopping([[order(serves, *lines)]], kept)
        assert sum(each.packages for each in found.items) == sum(least.packages.values()), seed
        for each in found.items:
            assert each.packages * each.size >= each.need - 1e-6
