"""The family tree: names, descent, false friends, and what it refuses."""

from __future__ import annotations

import networkx as nx
import pytest

from barkeep.domain.ingredients.tree import Confusable, FamilyTree, Ingredient, with_own
from barkeep.errors import CyclicFamily, KnowledgeError, UnknownName


def tree_of(*ingredients: Ingredient, confusables: tuple[Confusable, ...] = ()) -> FamilyTree:
    return FamilyTree({each.key: each for each in ingredients}, confusables, "tree.toml")


SPIRIT = Ingredient("spirit", "Spirit", family=True)
GIN = Ingredient("gin", "Gin", ("spirit",))
LIQUEUR = Ingredient("liqueur", "Liqueur", family=True)
SLOE_GIN = Ingredient("sloe-gin", "Sloe gin", ("liqueur", "spirit"), ("sloe liqueur",))


def test_a_node_may_have_several_parents():
    tree = tree_of(SPIRIT, LIQUEUR, GIN, SLOE_GIN)
    assert tree.ancestors("sloe-gin") == {"liqueur", "spirit"}
    assert tree.descendants("spirit") == {"gin", "sloe-gin"}
    assert tree.is_a("sloe-gin", "liqueur")
    assert not tree.is_a("spirit", "gin")


def test_names_are_found_without_case_accents_or_hyphens():
    tree = tree_of(Ingredient("cassis", "Crème de cassis", aliases=("Black-currant liqueur",)))
    assert tree.by_name["creme de cassis"] == "cassis"
    assert tree.by_name["black currant liqueur"] == "cassis"


def test_a_regional_name_gives_way_to_an_own_name():
    cloudy = Ingredient("cloudy", "Cloudy apple juice", regional={"US": ("Cider",)})
    assert tree_of(cloudy, Ingredient("cider", "Cider")).by_name["cider"] == "cider"
    assert tree_of(cloudy).by_name["cider"] == "cloudy"


def test_a_circle_is_refused_and_named():
    with pytest.raises(CyclicFamily) as caught:
        tree_of(
            Ingredient("a", "A", ("b",)), Ingredient("b", "B", ("c",)), Ingredient("c", "C", ("a",))
        )
    assert str(caught.value) == "tree.toml: the family tree runs in a circle: a → b → c → a"


def test_an_unknown_parent_is_refused_with_file_key_and_reason():
    with pytest.raises(KnowledgeError) as caught:
        tree_of(Ingredient("gin", "Gin", ("spirits",)))
    assert str(caught.value) == "tree.toml, gin: its parent “spirits” is not an ingredient"


def test_a_name_used_twice_is_refused():
    with pytest.raises(KnowledgeError, match="the name “GIN” belongs to gin already"):
        tree_of(Ingredient("gin", "Gin"), Ingredient("jin", "Jin", aliases=("GIN",)))


def test_an_unknown_key_says_so():
    with pytest.raises(UnknownName, match="There is no ingredient called “rum”"):
        tree_of(SPIRIT)["rum"]


def test_what_is_confused_with_a_kind_is_confused_with_everything_below_it():
    tree = tree_of(
        Ingredient("dry", "Dry vermouth"),
        Ingredient("extra-dry", "Extra dry vermouth", ("dry",)),
        Ingredient("sweet", "Sweet vermouth"),
        Ingredient("vintage-sweet", "Vintage sweet vermouth", ("sweet",)),
        confusables=(Confusable("dry", "sweet", "one is dry and one is not"),),
    )
    assert tree.mistaken("extra-dry", "vintage-sweet") == "one is dry and one is not"
    assert tree.mistaken("sweet", "dry") == "one is dry and one is not"
    assert tree.mistaken("dry", "extra-dry") is None


def test_the_owners_ingredient_wins():
    tree = with_own(tree_of(SPIRIT, GIN), [Ingredient("gin", "House gin", ("spirit",))])
    assert tree.name("gin") == "House gin"


def test_a_name_in_a_sentence_keeps_a_proper_first_word():
    tree = tree_of(Ingredient("l", "London dry gin", proper=True), Ingredient("j", "Lime juice"))
    assert tree.in_sentence("l") == "London dry gin"
    assert tree.in_sentence("j") == "lime juice"


def test_kin_above_and_below_are_what_networkx_finds(knowledge):
    tree = knowledge.tree
    family = nx.DiGraph((parent, key) for key in tree for parent in tree[key].parents)
    family.add_nodes_from(tree)
    for key in tree:
        assert tree.ancestors(key) == nx.ancestors(family, key)
        assert tree.descendants(key) == nx.descendants(family, key)
        assert set(tree.children(key)) == set(family.successors(key))
    assert tree.descendants("no such thing") == frozenset()
    assert tree.children("no such thing") == ()


def test_alcoholic_is_what_is_strong_or_has_strong_kin(knowledge):
    tree = knowledge.tree
    strong = {key for key in tree if (tree[key].abv_percent or 0.0) >= 1.0}
    for key in tree:
        kin = {key} | tree.ancestors(key) | tree.descendants(key)
        assert (key in tree.alcoholic) == bool(kin & strong), key


def test_a_circle_beside_sound_kinds_is_found():
    with pytest.raises(CyclicFamily, match="b → c → b"):
        tree_of(
            SPIRIT,
            Ingredient("a", "A", ("b", "spirit")),
            Ingredient("b", "B", ("c",)),
            Ingredient("c", "C", ("b",)),
        )


def test_a_name_that_a_list_prints_is_searched_and_never_offered():
    bitter = Ingredient(
        "bitter",
        "Red bitter",
        aliases=("bitter aperitif",),
        regional={"IT": ("bitter",)},
        printed=("Lamp Bitter",),
    )
    assert bitter.offered_names == ("Red bitter", "bitter aperitif", "bitter")
    assert bitter.all_names == (*bitter.offered_names, "Lamp Bitter")
    tree = tree_of(bitter)
    assert tree.by_name["lamp bitter"] == "bitter"
    assert "lamp bitter" in tree.folded_names["bitter"]
