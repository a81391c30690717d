"""What is to be minded is said in the language that is spoken, and translators are given it all."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date

import pytest

from barkeep.application.knowledge import shipped
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.cautions.allergens import (
    brought_in_sentence,
    contains_sentence,
    shipped_allergens,
)
from barkeep.domain.cautions.caution_words import cautions_in_brief
from barkeep.domain.cautions.cautions import of_allergens, shipped_cautions
from barkeep.domain.drink.analysis import analyse
from barkeep.domain.drink.words import facts, in_brief, place_in_words
from barkeep.domain.stand_ins.neighbourhood import neighbourhood
from barkeep.domain.stand_ins.offers import stand_in
from barkeep.translation import speak_through
from tests.write_words import Message, said_in_sources


@pytest.fixture
def asked() -> Iterator[set[Message]]:
    """Each message is said in brackets, and remembered."""
    found: set[Message] = set()

    def bracketed(words: str, about: str) -> str:
        found.add(Message(words, about))
        return f"⟦{words}⟧"

    speak_through(bracketed)
    yield found
    speak_through(None)


def test_a_caution_is_said_in_another_language_with_the_figures_of_the_drink(asked):
    bar = Snapshot(shipped(), date(2026, 11, 21))
    strong = next(each for each in bar.all_specs if each.name == "Sazerac")
    told = [each.text for each in analyse(strong, bar).general_cautions]
    assert any(each.startswith("⟦One serve holds about ") for each in told)
    assert all(each.startswith("⟦") and "{" not in each for each in told)


def test_a_source_is_said_part_by_part(asked):
    eggs = next(rule.caution for rule in shipped_cautions() if rule.caution.key == "raw-egg")
    assert eggs.source == (
        "⟦Source: ⟦US FDA Food Code 3-302.13 and 3-801.11⟧; "
        "⟦Colorado State University Extension on eggnog⟧.⟧"
    )


def test_allergens_are_named_in_another_language(asked):
    milk, egg = map(shipped_allergens().called, ("milk", "egg"))
    assert contains_sentence([milk, egg]).startswith("⟦Contains ⟦milk⟧ ⟦and⟧ ⟦egg⟧, which")
    assert "⟦milk⟧" in brought_in_sentence([milk])
    assert all(each.text.startswith("⟦") for each in of_allergens(shipped_allergens().all))


def test_an_owners_word_for_an_allergen_stays_as_it_is_without_a_translation():
    speak_through(lambda words, _about: {"milk": "Milch"}.get(words, words))
    known = shipped_allergens()
    try:
        assert contains_sentence(map(known.called, ("milk", "moss"))).startswith(
            "Contains Milch and moss,"
        )
    finally:
        speak_through(None)


def test_every_word_that_is_said_of_the_classics_is_among_those_of_translators(asked):
    bar = Snapshot(shipped(), date(2026, 11, 21))
    tree = bar.knowledge.tree
    for spec in bar.all_specs:
        analysis = analyse(spec, bar)
        for said in (facts(analysis, tree), in_brief(analysis, tree), place_in_words(analysis)):
            assert said
        tuple(cautions_in_brief((*analysis.cautions, *analysis.general_cautions)))
        _ = analysis.minded.in_brief, analysis.uncertain
    for key in ("lime-juice", "maraschino-liqueur", "cognac", "egg-white", "mead"):
        stand_in(bar, key)
        assert neighbourhood(bar.knowledge, bar.owned, key).in_words
    given = set(said_in_sources())
    assert sorted(each.words for each in asked - given) == []
