"""What arrays say of a book's lines is what each line says by itself."""

from __future__ import annotations

from dataclasses import replace
from random import Random

import pytest

from barkeep.domain.bar.of_kinds import HousePour
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.pouring.book_lines import Numbering
from barkeep.domain.pouring.sourcing import need, sourcing_for
from barkeep.domain.specs.spec import Line, Spec, UnsettledLine
from barkeep.errors import UnknownName
from tests.domain.pouring.test_alternatives import with_choices
from tests.worlds import TODAY, random_bar


def by_arrays(numbering, specs, sourcing):
    """Of each spec what its required lines ask for, how much, and of what."""
    lines, keys = numbering.book_lines(specs, sourcing), tuple(sourcing.tree)
    found: list[list[object]] = [[] for _spec in specs]
    rows = lines.rows
    for spec, ask, amount, kind in zip(
        rows.spec.tolist(), rows.ask.tolist(), rows.amount.tolist(), rows.ingredient.tolist(),
        strict=True,
    ):  # fmt: skip
        found[spec].append((lines.asks[ask], amount, keys[kind]))
    strong, unsettled = rows.is_strong.tolist(), rows.unsettled.tolist()
    return list(zip(found, strong, unsettled, strict=True))


def by_itself(spec, sourcing):
    lines = [
        (sourcing.wants(line, spec), need(line, sourcing.tree), line.ingredient)
        for line in spec.required_lines
    ]
    strong = any(line.min_abv_percent is not None for line in spec.lines)
    return lines, strong, len(spec.unsettled)


def strange(knowledge) -> tuple[Spec, ...]:
    """Specs whose lines say little, or more than an ingredient and an amount."""
    gin = Line("60 ml gin", "gin", 60.0, None, "ml", 60.0)
    soda = Line("top with soda water", "soda-water")
    dash = Line("2 dashes gin", "gin", 2.0, None, "dash", 1.6)
    rum = Line("45 ml navy-strength rum", "rum", 45.0, None, "ml", 45.0)
    unsettled = (UnsettledLine("15 ml fog cordial", 0, "nobody knows it"),)
    return (
        Spec("Nothing", ()),
        Spec("Not understood", (), unsettled=unsettled),
        Spec("Soda", (soda,)),
        Spec("Drops", (dash, replace(soda, optional=True)), technique="stirred"),
        Spec("Even", (gin, replace(gin, ingredient="genever")), technique="shaken"),
        Spec("Strong", (replace(gin, min_abv_percent=50.0), soda)),
        Spec("Either", (replace(rum, alternatives=("cognac",)), soda), technique="built"),
        Spec("Asked", (rum,), method="Float the overproof rum.", technique="blended"),
        Spec("None of it", (replace(gin, quantity=0.0), rum)),
        Spec("Twice", (gin, gin)),
    )


@pytest.mark.parametrize("within", ["exact", "loose"])
def test_of_the_classics_and_of_strange_lines(knowledge, within):
    bar = Snapshot(knowledge, TODAY, specs=strange(knowledge))
    sourcing = sourcing_for(bar, within)
    found = by_arrays(Numbering(), bar.all_specs, sourcing)
    for spec, one in zip(bar.all_specs, found, strict=True):
        assert one == by_itself(spec, sourcing), spec.name
    assert len(bar.all_specs) > 200


def test_of_random_books_as_they_change():
    for seed in range(30):
        chance = Random(seed)
        bar = with_choices(chance, random_bar(chance))
        sourcing, numbering, specs = sourcing_for(bar, "close"), Numbering(), bar.all_specs
        for _ in range(3):
            expected = [by_itself(spec, sourcing) for spec in specs]
            assert by_arrays(numbering, specs, sourcing) == expected, seed
            some = [replace(each) if chance.random() < 0.3 else each for each in specs]
            specs = tuple(chance.sample(some, chance.randint(0, len(some))))


def test_a_house_pour_is_asked_for(sample_snapshot_with_house):
    sourcing = sourcing_for(sample_snapshot_with_house, "close")
    specs = sample_snapshot_with_house.all_specs
    expected = [by_itself(spec, sourcing) for spec in specs]
    assert by_arrays(Numbering(), specs, sourcing) == expected
    assert any(want.asked for one in expected for wants, *_rest in one[0] for want in wants)


@pytest.fixture
def sample_snapshot_with_house(sample_bar, clock):
    from barkeep.application.bar import Bar

    with Bar.open(sample_bar, clock=clock) as opened:
        bar = opened.snapshot
    tree = bar.knowledge.tree
    special = [
        (above, each.product.id)
        for each in bar.bottles
        for above in tree.upwards(each.ingredient)
        if tree.only_when_asked(each.ingredient, above)
    ]
    return bar.changed(
        settings=replace(bar.settings, house=tuple(HousePour(*each) for each in special[:1]))
    )


def test_a_stranger_is_named(knowledge):
    bar = Snapshot(knowledge, TODAY)
    odd = Spec("Odd", (Line("30 ml fog", "fog", 30.0, None, "ml", 30.0),))
    with pytest.raises(UnknownName, match="fog"):
        Numbering().book_lines((odd,), sourcing_for(bar, "close"))
