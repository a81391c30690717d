"""Which lines the ice thins, and which come after it."""

from __future__ import annotations

import pytest

from barkeep.domain.drink.ice import added_after_ice, meets_ice
from barkeep.domain.spec_text.text import read_specs
from barkeep.domain.specs.spec import Spec
from tests.walked import walked


def after(spec: Spec, tree) -> set[str]:
    numbers = added_after_ice(spec, spec.technique, tree)
    return {spec.lines[each].ingredient for each in numbers if not spec.lines[each].garnish}


@walked(
    ("name", "last"),
    [
        ("Daiquiri", set()),
        ("Gin Fizz", {"soda-water"}),
        ("Ramos Fizz", {"soda-water"}),
        ("French 75", {"champagne"}),
        ("Fog Cutter", {"amontillado-sherry"}),
        ("White Russian", {"double-cream"}),
        ("Amer Punch", {"soda-water", "brandy"}),
        ("Dark Rum and Ginger", {"ginger-beer", "dark-rum"}),
        ("Queen's Park Swizzle", {"aromatic-bitters"}),
        ("Long Island Iced Tea", {"cola"}),
        ("Sazerac", {"absinthe"}),
        ("Tom Collins", {"soda-water"}),
        ("Negroni", set()),
        ("Aperitivo Spritz", {"prosecco", "soda-water"}),
        ("Frozen Daiquiri", set()),
        ("Airmail", {"sparkling-wine"}),
    ],
)
def test_what_comes_last_in_the_classics(name, last, knowledge):
    spec = next(each for each in knowledge.classics if each.name == name)
    assert after(spec, knowledge.tree) == last


def test_of_two_lines_that_share_a_word_the_one_that_is_named_comes_last(tree):
    text = "Lamp\n45 ml blended Scotch\n7.5 ml smoky Scotch\n\nStir the first with ice. {}"
    (read,) = read_specs(text.format("Float the smoky Scotch on top."), tree)
    assert after(read.spec, tree) == {read.spec.lines[1].ingredient}
    (read,) = read_specs(text.format("Float the blended Scotch on top."), tree)
    assert after(read.spec, tree) == {read.spec.lines[0].ingredient}


def test_what_floats_by_its_unit_comes_last(tree):
    (read,) = read_specs("Lamp\n60 ml aged rum\n1 float dark rum\n\nShake with ice.", tree)
    assert after(read.spec, tree) == {"dark-rum"}


@pytest.mark.parametrize(
    ("ice", "method", "thinned"),
    [
        ("cubes", "Build in the glass.", True),
        ("", "Build over ice.", True),
        ("none", "Build over ice.", False),
        ("", "Pour into the glass.", False),
        ("", "", True),
    ],
)
def test_a_built_drink_is_thinned_only_where_ice_is_named(ice, method, thinned, tree):
    from barkeep.domain.specs.technique import technique_of

    technique = technique_of(method)
    spec = Spec("Drink", (), method, technique, ice=ice)
    assert meets_ice(spec, technique) is thinned


def test_a_hot_drink_meets_no_ice_whatever_is_written(tree):
    assert not meets_ice(Spec("Drink", (), "Build on ice.", ice="cubes"), "hot")
