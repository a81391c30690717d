"""What a bartender looks for in the book of classics, and finds as the trade makes it."""

from __future__ import annotations

import pytest

from barkeep.domain.drink.analysis import analyse
from tests.domain.drink.test_analysis import BARE, classic

LOOKED_FOR = (
    *("Penicillin", "Tommy's Margarita", "Hemingway Special", "Trinidad Sour", "Hurricane"),
    *("Cardinale", "Old Cuban", "Gold Rush", "Suffering Bastard", "Yellow Bird"),
    *("Three Dots and a Dash", "Gin Basil Smash", "Illegal", "Casino", "Hotel Nacional"),
    *("White Negroni", "Chilcano", "Batida", "Cuba Libre", "Hugo", "Snowball", "Shirley Temple"),
)


def test_what_is_asked_for_over_the_bar_is_there():
    names = [each.name for each in BARE.knowledge.classics]
    assert len(set(names)) == len(names)
    assert set(LOOKED_FOR) <= set(names)


def test_what_a_riff_comes_from_is_in_the_book():
    names = {each.name for each in BARE.knowledge.classics}
    assert {each.riff_of for each in BARE.knowledge.classics if each.riff_of} <= names


@pytest.mark.parametrize(
    ("name", "technique"),
    [("Papa Doble", "blended"), ("Hemingway Special", "shaken"), ("Vesper", "shaken")],
)
def test_how_it_is_made(name, technique):
    assert analyse(classic(name), BARE).technique == technique


@pytest.mark.parametrize(
    ("name", "kind"),
    [("Margarita", "salt"), ("Salty Dog", "salt"), ("Michelada", "chilli-salt")],
)
def test_it_is_salted_once_at_the_rim(name, kind):
    spec = classic(name)
    assert [(each.ingredient, each.garnish) for each in spec.lines if each.ingredient == kind] == [
        (kind, True)
    ]
    assert "salt" not in spec.method.lower()


def test_either_school_of_gin_makes_a_john_collins():
    assert classic("John Collins").lines[0].wanted == ("london-dry-gin", "genever")


def test_a_swizzle_with_a_rich_syrup_is_no_sweeter_than_its_kind():
    made = analyse(classic("Queen's Park Swizzle"), BARE)
    assert made.style.range_of("sugar").place_of(made.sugar_g_per_l) == "within"
