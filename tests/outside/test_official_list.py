"""The International Bartenders Association's official cocktail list, as published 2023.

Source of every printed line: `iba_official_sample.csv` beside this file, whose
third column names it. The list prints some proprietary names; here they are
search words only.
"""

from __future__ import annotations

import csv
from dataclasses import replace
from datetime import date
from pathlib import Path

import pytest

from barkeep.application.knowledge import COMMON_PRACTICE
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.phrases import folded
from barkeep.domain.pouring.supply import purchase
from barkeep.domain.pouring.verdicts import tonight
from barkeep.domain.spec_text.text import read_specs
from tests.outside.official_list_expected import expected
from tests.worlds import bottle

TABLE = Path(__file__).with_name("iba_official_sample.csv")
OFFICIAL_LIST = "International Bartenders Association, official list"


def printed() -> dict[str, list[str]]:
    """Drink -> its lines as printed."""
    lines: dict[str, list[str]] = {}
    with TABLE.open(encoding="utf-8", newline="") as file:
        for row in csv.DictReader(file):
            lines.setdefault(row["drink"], []).append(row["printed_line"])
    return lines


@pytest.fixture(scope="module")
def specs(tree):
    text = "\n---\n".join(
        "\n".join((name, *lines, "", "Mix as the list says.")) for name, lines in printed().items()
    )
    read = read_specs(text, tree)
    assert [(each.name, each.problems) for each in read if each.problems] == []
    return {each.spec.name: each.spec for each in read}


def stocked(knowledge, specs, keys) -> Snapshot:
    """A bar with one ordinary bottle of each of these and nothing else."""
    tree = knowledge.tree
    sizes = {key: max(purchase(key, tree).amount, 1000.0) for key in sorted(keys)}
    bottles = tuple(
        bottle(number, key, size, size) for number, (key, size) in enumerate(sizes.items(), 1)
    )
    known = replace(knowledge, classics=())
    return Snapshot(known, date(2026, 11, 21), (), bottles, tuple(specs.values()))


def reachable(knowledge, keys) -> set[str]:
    """Everything those keys amount to by descent and by recipes that cost no closeness.

    A plain fixed point, written apart from barkeep's own search.
    """
    tree = knowledge.tree
    there = {key for key in tree if tree[key].always_there} | set(keys)
    while True:
        more = {parent for key in there for parent in tree.ancestors(key)}
        more |= {
            recipe.made
            for recipe in knowledge.made_from
            if recipe.closeness == 1.0 and {each.ingredient for each in recipe.inputs} <= there
        }
        if more <= there:
            return there
        there |= more


def wanted(spec) -> set[str]:
    return {line.ingredient for line in spec.required_lines}


def makeable(bar) -> set[str]:
    return {drink.spec.name for drink in tonight(bar, "exact") if drink.makeable}


def test_every_printed_line_maps_to_an_ingredient(specs):
    lines = printed()
    assert len(lines) == 30
    assert specs.keys() == lines.keys()
    assert {name: len(spec.lines) for name, spec in specs.items()} == {
        name: len(each) for name, each in lines.items()
    }


def test_every_printed_line_is_read_to_the_amount_unit_and_ingredient_it_says(specs):
    said = expected()
    assert specs.keys() == said.keys()
    for name, spec in specs.items():
        assert [as_said(line) for line in spec.lines] == said[name], name


def as_said(line) -> tuple[str, str, str]:
    assert line.amount_high is None and not (line.optional or line.garnish or line.alternatives)
    amount = "-" if line.amount is None else f"{line.amount:g}"
    return (amount, line.unit or "-", line.ingredient)


OUNCE_ML = 30.0
"""What the list gives where others pour an ounce (*common practice*: 45 ml is 1 1/2 oz)."""


def in_millilitres(spec):
    """What goes in: each ingredient with its amount, an ounce as the list's 30 ml."""
    poured = {"ml": 1.0, "cl": 10.0, "oz": OUNCE_ML}
    return sorted(
        (line.ingredient, (line.amount or 0.0) * poured.get(line.unit, 0.0) or line.text)
        for line in spec.lines
        if not line.garnish
    )


def test_a_classic_names_the_list_as_its_source_only_where_it_agrees_with_it(knowledge, specs):
    by_name = {folded(name): spec for name, spec in specs.items()}
    remembered = [each for each in knowledge.classics if each.source.endswith("from memory")]
    named = [
        each
        for each in knowledge.classics
        if each.source != COMMON_PRACTICE and each not in remembered
    ]
    assert len(named) >= 4
    for classic in named:
        assert classic.source == OFFICIAL_LIST
        assert in_millilitres(classic) == in_millilitres(by_name[folded(classic.name)])
    for classic in remembered:
        assert classic.source in ("from memory", f"{OFFICIAL_LIST}, from memory")
        assert folded(classic.name) not in by_name, "what was copied need not be remembered"


def test_every_classic_that_agrees_with_the_list_names_it(knowledge, specs):
    classics = {folded(each.name): each for each in knowledge.classics}
    for name, spec in specs.items():
        classic = classics.get(folded(name))
        if classic is not None and in_millilitres(classic) == in_millilitres(spec):
            assert classic.source != COMMON_PRACTICE, name


def test_a_bar_with_all_those_ingredients_makes_all_those_drinks(knowledge, specs):
    everything = {key for spec in specs.values() for key in wanted(spec)}
    assert makeable(stocked(knowledge, specs, everything)) == specs.keys()


def test_a_bar_with_one_drinks_ingredients_makes_it_and_only_what_is_a_subset(knowledge, specs):
    for spec in specs.values():
        bar = stocked(knowledge, specs, wanted(spec))
        there = reachable(knowledge, wanted(spec))
        expected = {other.name for other in specs.values() if wanted(other) <= there}
        assert spec.name in expected
        assert makeable(bar) == expected


def test_a_bar_with_one_ingredient_less_cannot_make_the_drink(knowledge, specs):
    for spec in specs.values():
        for key in wanted(spec):
            rest = wanted(spec) - {key}
            if key not in reachable(knowledge, rest):
                bar = stocked(knowledge, {spec.name: spec}, rest)
                assert makeable(bar) == set(), (spec.name, key)


ORDINARY = {
    "gin": "london-dry-gin",
    "tequila": "blanco-tequila",
    "cream": "double-cream",
    "jamaican-rum": "aged-jamaican-rum",
}
"""What an ordinary bar has where the list names a general kind: one label of it."""
BESIDE_THEM = ("old-tom-gin", "anejo-tequila", "reposado-tequila", "aged-rum", "gold-rum")
"""What an ordinary bar has as well, and the list does not name where it says less."""


def test_a_bar_of_ordinary_bottles_pours_what_the_list_names_line_by_line(knowledge, specs):
    """All that is poured only when asked for stands beside it, and no line takes any."""
    tree = knowledge.tree
    named = {ORDINARY.get(key, key) for spec in specs.values() for key in wanted(spec)}
    special = {key for key in tree.ordinary.only_when_asked if key not in named}
    assert len(special) > 8
    lines = 0
    bar = stocked(knowledge, specs, named | special | set(BESIDE_THEM))
    for drink in tonight(bar, "close"):
        assert drink.verdict == "ready"
        for answer in drink.lines:
            expected = ORDINARY.get(answer.line.ingredient, answer.line.ingredient)
            assert (drink.spec.name, answer.ingredient) == (drink.spec.name, expected)
            lines += 1
    assert lines == sum(map(len, printed().values()))
