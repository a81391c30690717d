"""The shipped kinds: found by the names the trade has for them, and what is said of each holds."""

from __future__ import annotations

import pytest

from barkeep.domain.ingredients.names import find_name
from barkeep.domain.phrases import folded
from tests.domain.ingredients.names_of_the_trade import kinds_by_name
from tests.walked import walked

BY_NAME = kinds_by_name()


@walked("name", BY_NAME)
def test_a_name_of_the_trade_is_its_kind(tree, name):
    """The whole name is understood: nothing of it is left as a maker or a note."""
    found, notes = find_name(name, tree)
    assert found is not None
    assert (found.key, found.maker, notes) == (BY_NAME[name], "", ())


RUMS = {
    "Puerto Rican": {
        "": "column-still-rum",
        "white": "white-rum",
        "light": "white-rum",
        "gold": "gold-rum",
        "aged": "aged-rum",
        "dark": "dark-rum",
        "overproof": "overproof-rum",
    },
    "Cuban": {
        "": "column-still-rum",
        "white": "white-rum",
        "light": "white-rum",
        "gold": "gold-rum",
        "aged": "aged-rum",
        "dark": "dark-rum",
        "overproof": "overproof-rum",
    },
    "Barbadian": {
        "": "barbadian-rum",
        "white": "white-barbadian-rum",
        "gold": "aged-barbadian-rum",
        "aged": "aged-barbadian-rum",
        "dark": "aged-barbadian-rum",
        "overproof": "overproof-rum",
    },
    "Barbados": {
        "": "barbadian-rum",
        "white": "white-barbadian-rum",
        "gold": "aged-barbadian-rum",
        "aged": "aged-barbadian-rum",
        "dark": "aged-barbadian-rum",
        "overproof": "overproof-rum",
    },
    "Jamaican": {
        "": "jamaican-rum",
        "white": "white-jamaican-rum",
        "gold": "aged-jamaican-rum",
        "aged": "aged-jamaican-rum",
        "dark": "dark-jamaican-rum",
        "pot-still": "jamaican-pot-still-rum",
        "overproof": "white-overproof-rum",
    },
    "Demerara": {
        "": "demerara-rum",
        "gold": "demerara-rum",
        "aged": "demerara-rum",
        "dark": "demerara-rum",
        "overproof": "151-rum",
        "151": "151-rum",
    },
    "Martinique": {
        "": "rhum-agricole",
        "white": "rhum-agricole-blanc",
        "aged": "rhum-agricole-vieux",
    },
}
"""Where a rum is from, what it is, and the kind the two together mean."""


@pytest.mark.parametrize("origin", RUMS)
def test_a_rum_is_found_by_origin_and_style_in_either_order(tree, origin):
    for style, key in RUMS[origin].items():
        for name in (f"{origin} {style} rum", f"{style} {origin} rum"):
            found, notes = find_name(" ".join(name.split()), tree)
            assert found is not None, name
            assert (found.key, found.maker, notes) == (key, "", ()), name


FRUITS = ("cherry", "blackberry", "peach", "coffee")


@pytest.mark.parametrize("fruit", FRUITS)
def test_both_spellings_of_flavoured_are_one(tree, fruit):
    for kind in ("vodka", "brandy"):
        british, american = (f"{fruit}-{each} {kind}" for each in ("flavoured", "flavored"))
        (one, _), (other, _) = find_name(british, tree), find_name(american, tree)
        assert one is not None and other is not None
        assert one.key == other.key and not one.maker and not other.maker
        assert tree.is_a(one.key, "flavoured-vodka" if kind == "vodka" else "liqueur")


class TestWhatIsSaidOfStandIns:
    def test_what_has_no_alcohol_is_never_replaced_by_what_has(self, knowledge):
        tree = knowledge.tree

        def least(key):
            """The strength of a kind; of a family that of its weakest."""
            said = tree[key].abv_percent
            known = (tree[each].abv_percent for each in tree.descendants(key))
            below = [each for each in known if each is not None]
            return min(below, default=0.0) if said is None else said

        for each in knowledge.stand_ins:
            if least(each.wanted) < 1.0:
                assert least(each.offered) < 1.0, (each.wanted, each.offered)

    def test_milk_and_egg_come_only_where_they_were(self, knowledge):
        tree = knowledge.tree
        for each in knowledge.stand_ins:
            brought = set(tree[each.offered].allergens) - set(tree[each.wanted].allergens)
            assert not brought & {"milk", "egg"}, (each.wanted, each.offered)

    def test_an_allergen_that_comes_along_is_named(self, knowledge):
        tree = knowledge.tree
        for each in knowledge.stand_ins:
            brought = set(tree[each.offered].allergens) - set(tree[each.wanted].allergens)
            if brought - {"sulphites"}:
                named = any(word in each.why for word in ("mind", *brought))
                assert named, (each.wanted, each.offered, each.why)

    def test_a_kind_brings_those_below_it_along_at_most_a_tenth_closer(self, knowledge):
        tree = knowledge.tree
        said = {(each.wanted, each.offered): each.closeness for each in knowledge.stand_ins}
        for (wanted, offered), closeness in said.items():
            if tree.is_a(wanted, offered):
                continue  # a label that says no more than the general kind
            for below in tree.descendants(offered):
                own = said.get((wanted, below), closeness)
                assert closeness - own <= 0.1 + 1e-9, (wanted, offered, below)

    @pytest.mark.parametrize(
        ("wanted", "offered", "least"),
        [
            ("canadian-whisky", "rye-whiskey", 0.8),
            ("rye-whiskey", "bourbon", 0.8),
            ("bourbon", "rye-whiskey", 0.8),
            ("gold-rum", "white-rum", 0.8),
            ("aged-jamaican-rum", "jamaican-pot-still-rum", 0.8),
            ("egg-white", "pasteurised-egg-white", 0.9),
        ],
    )
    def test_what_a_bar_pours_without_thinking_is_close(self, knowledge, wanted, offered, least):
        said = {(each.wanted, each.offered): each for each in knowledge.stand_ins}
        assert said[wanted, offered].closeness >= least

    def test_less_of_the_louder_jamaican_is_poured(self, knowledge):
        said = {(each.wanted, each.offered): each for each in knowledge.stand_ins}
        assert said["aged-jamaican-rum", "jamaican-pot-still-rum"].ratio < 0.9


def test_every_name_that_the_official_list_prints_is_understood_and_none_is_offered(tree):
    """Search words for their kind, all of them alike; no other name of any kind is one."""
    printed = {name: key for key in tree for name in tree[key].printed}
    assert len(printed) > 20
    for name, key in printed.items():
        found, notes = find_name(name, tree)
        assert found is not None and (found.key, notes) == (key, ()), name
    offered = {folded(name) for key in tree for name in tree[key].offered_names}
    assert not offered & {folded(name) for name in printed}
