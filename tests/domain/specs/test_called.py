"""What a line calls its ingredient, and the kind beside it."""

from __future__ import annotations

from barkeep.domain.specs.called import kind_beside, kinds_named_by, named_by
from barkeep.domain.specs.shown_lines import names_and_kind, names_in_sentence, names_of
from barkeep.domain.specs.spec import Line
from tests.walked import walked

CIDER = Line("60 ml apple cider", "cloudy-apple-juice", called="apple cider")
GIN = Line("2 oz Hollow Lamp dry gin", "london-dry-gin", called="Hollow Lamp dry gin")


@walked(
    ("line", "row", "sentence", "kind"),
    [
        (CIDER, "apple cider", "apple cider", "cloudy apple juice"),
        (GIN, "Hollow Lamp dry gin", "Hollow Lamp dry gin", "London dry gin"),
        (Line("lime juice", "lime-juice"), "Lime juice", "lime juice", ""),
        (Line("", "lime-juice"), "Lime juice", "lime juice", ""),
        (Line("", "london-dry-gin"), "London dry gin", "London dry gin", ""),
        # Kept before its words were: the text says them.
        (Line("60 ml apple cider", "cloudy-apple-juice"), *("apple cider",) * 2, CIDER.ingredient),
        (Line("x", "lime-juice", called="fresh lime juice"), *("fresh lime juice",) * 2, ""),
        (Line("x", "strawberry", called="strawberries"), *("strawberries",) * 2, ""),
        (
            Line("x", "rye-whiskey", alternatives=("bourbon",), called="rye or bourbon"),
            *("rye or bourbon", "rye or bourbon", "rye whiskey or bourbon"),
        ),
        (
            Line("", "rye-whiskey", alternatives=("bourbon",)),
            *("Rye whiskey or bourbon", "rye whiskey or bourbon", ""),
        ),
        (
            Line("x", "aged-rum", called="rum", stated=("8 year",)),
            *("rum (8 year)", "rum (8 year)", "aged rum"),
        ),
        (
            Line("x", "aged-rum", called="8 year aged rum", stated=("8 year",)),
            *("8 year aged rum", "8 year aged rum", ""),
        ),
        (Line("", "aged-rum", stated=("smoked",)), "Aged rum (smoked)", "aged rum (smoked)", ""),
    ],
)
def test_the_writers_words_come_first(line, row, sentence, kind, tree):
    kind = tree.in_sentence(kind) if kind in tree else kind
    assert (names_of(line, tree), names_in_sentence(line, tree)) == (row, sentence)
    assert kind_beside(line, tree) == kind
    assert names_and_kind(line, tree) == (f"{row} ({kind})" if kind else row)


def test_a_tree_is_named_by_lines_and_stays_the_same_tree(tree):
    named = named_by([CIDER, GIN], tree)
    assert named.name("cloudy-apple-juice") == "Apple cider"
    assert named.in_sentence("london-dry-gin") == "Hollow Lamp dry gin"
    assert named.name("lime-juice") == "Lime juice"
    assert tree.name("cloudy-apple-juice") == "Cloudy apple juice"
    assert named.is_a("london-dry-gin", "gin") and named.by_name is tree.by_name


def test_where_lines_differ_or_let_one_choose_the_kind_keeps_its_name(tree):
    other = Line("1 oz sweet cider", "cloudy-apple-juice", called="sweet cider")
    choice = Line("x", "rye-whiskey", alternatives=("bourbon",), called="rye or bourbon")
    named = named_by([CIDER, other, choice], tree)
    assert named is tree


def test_of_a_kind_it_is_said_without_its_maker(tree):
    assert kinds_named_by([GIN], tree).in_sentence("london-dry-gin") == "dry gin"


def test_the_words_of_a_spec_win_over_those_of_a_region(tree):
    regional = tree.showing({"soda-water": "club soda"})
    written = Line("2 oz soda water", "soda-water")
    assert names_of(written, regional) == "soda water"
    assert names_of(Line("", "soda-water"), regional) == "Club soda"
    assert named_by([written], regional).name("soda-water") == "Soda water"
