"""Drinks made ready to be printed and published."""

from __future__ import annotations

from dataclasses import replace

import pytest

from barkeep.application.bar import Bar
from barkeep.application.publishing import (
    NothingToExport,
    PrintChoice,
    cards_of,
    drink_facts,
    general_cautions,
    house_made,
    job_for,
    labels_of,
    menu_of,
    specs_to_export,
    text_for,
    text_forms,
)
from barkeep.documents.printed.cards import FIRST_OF_ALL
from barkeep.documents.printed.templates import KINDS as ALL_KINDS
from barkeep.documents.printed.templates import shipped_templates
from barkeep.domain.drink.analysis import analyse
from barkeep.domain.spec_text.text import read_specs
from barkeep.errors import UnknownName
from tests.documents.printed.sizes import size_named

KINDS = [kind for kind in ALL_KINDS if kind != "run_sheet"]
"""Those of specs and bottles: a run sheet is of a shoot."""


@pytest.fixture
def snapshot(sample_bar, clock):
    with Bar.open(sample_bar, clock=clock) as bar:
        return bar.snapshot


def spec_of(text, tree):
    (read,) = read_specs(text, tree)
    assert read.spec is not None
    return read.spec


def named(snapshot, name):
    return next(spec for spec in snapshot.all_specs if spec.name == name)


def test_facts_are_those_of_the_analysis(snapshot):
    spec = named(snapshot, "Request Stop")
    facts, found = drink_facts(spec, snapshot), analyse(spec, snapshot)
    assert facts.abv_percent == found.abv_percent > 10.0
    assert facts.standard_drinks == found.standard_drinks > 1.0
    assert facts.country == snapshot.settings.country


def test_a_drink_with_raw_egg_says_so_with_its_allergen(snapshot):
    text = "A\n2 oz gin\n1 oz lemon juice\n1 egg white\n\nShake.\n"
    facts = drink_facts(spec_of(text, snapshot.knowledge.tree), snapshot)
    assert "egg" in facts.allergens
    assert any("raw egg" in each.casefold() for each in facts.cautions)


def test_general_cautions_are_printed_after_local_rules(snapshot):
    (card,) = cards_of([named(snapshot, "Request Stop")], snapshot)
    assert card.cautions[0] == FIRST_OF_ALL
    said = " ".join(card.cautions).casefold()
    for about in ("drive", "pregnant", "legal drinking age"):
        assert about in said


def test_a_garnish_that_carries_an_allergen_counts(snapshot):
    tree = snapshot.knowledge.tree
    text = "A\n2 oz gin\nGarnish: grated nutmeg\nGarnish: almonds\n\nStir.\n"
    assert "tree nuts" in drink_facts(spec_of(text, tree), snapshot).allergens


def test_a_drink_without_alcohol_warns_of_none(snapshot):
    text = "A\n3 oz orange juice\n1 oz lemon juice\n\nShake.\n"
    spec = spec_of(text, snapshot.knowledge.tree)
    (card,) = cards_of([spec], snapshot)
    assert card.strength == "no alcohol"
    assert "drive" not in " ".join(card.cautions).casefold()
    assert not any("drive" in each for each in menu_of("", [spec], snapshot).small_print)


def test_a_menu_of_strong_drinks_says_what_every_guest_should_know(snapshot):
    menu = menu_of("Platform One", [named(snapshot, "Request Stop")], snapshot)
    assert menu.small_print[1:] == general_cautions()
    assert general_cautions()
    assert not any("{" in each for each in general_cautions())


def test_labels_of_what_is_made_here_carry_what_goes_into_it(snapshot):
    made = house_made(snapshot)
    assert {bottle.product.house_made for bottle in made} == {True}
    labels = {label.name: label for label in labels_of(made, snapshot)}
    assert labels["Orgeat"].allergens == "Contains tree nuts"
    bottle = next(each for each in made if each.product.name == "Orgeat")
    assert labels["Orgeat"].use_by == bottle.use_by.isoformat()


# Export


def test_without_a_name_all_own_specs_go(snapshot):
    own = specs_to_export(snapshot)
    assert {spec.name for spec in own} == {spec.name for spec in snapshot.specs}
    everything = specs_to_export(snapshot, classics=True)
    assert set(everything) == set(snapshot.all_specs)


def test_a_name_goes_once_and_may_be_a_classics(snapshot):
    classic = next(spec for spec in snapshot.all_specs if spec.classic)
    names = [classic.name, classic.name.upper(), "Request Stop"]
    assert [spec.name for spec in specs_to_export(snapshot, names)] == [
        classic.name,
        "Request Stop",
    ]
    with pytest.raises(UnknownName):
        specs_to_export(snapshot, ["Nothing of the kind"])


def test_an_empty_book_has_nothing_to_export(snapshot):
    with pytest.raises(NothingToExport, match="no spec of your own"):
        specs_to_export(replace(snapshot, specs=()))


# What is chosen


@pytest.mark.parametrize("kind", KINDS)
def test_each_kind_has_pages_and_a_text(snapshot, kind):
    choice = PrintChoice(
        shipped_templates(kind)[0],
        size_named("paper", "a4"),
        size_named("label" if kind == "label" else "card", "medium" if kind == "label" else "a6"),
        (named(snapshot, "Request Stop"),),
        house_made(snapshot),
        "Platform One",
    )
    assert not choice.empty
    assert job_for(choice, snapshot).groups
    name = "Orgeat" if kind in ("label", "prep") else "Request Stop"
    assert name in text_for(choice, snapshot)
    for form in text_forms(kind):
        assert name in form.write(choice, snapshot), form.title


def test_nothing_chosen_is_empty(snapshot):
    for kind in KINDS:
        assert PrintChoice(shipped_templates(kind)[0], size_named("paper", "a4")).empty


@pytest.mark.parametrize("line", ["gin", "1 oz gin (optional)"])
def test_a_card_promises_no_strength_that_is_not_known(snapshot, line):
    spec = spec_of(f"A\n{line}\n4 oz tonic water\n\nBuild over ice.\n", snapshot.knowledge.tree)
    facts = drink_facts(spec, snapshot)
    assert (facts.abv_percent, facts.standard_drinks) == (None, None)
    assert any("drive" in each for each in facts.cautions)
