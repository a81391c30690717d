"""Garnishes by the command line: how they stand, what is made ready, what is bought; and fruit."""

from __future__ import annotations

import pytest

from tests import small_bar

DAY = "2099-01-05"


@pytest.fixture(scope="module")
def built(tmp_path_factory):
    """The small bar as a file."""
    return small_bar.build(tmp_path_factory.mktemp("small"))


@pytest.fixture
def bar(built, tmp_path):
    """A copy to change."""
    copy = tmp_path / "copy.barkeep"
    copy.write_bytes(built.read_bytes())
    return copy


@pytest.fixture
def planned(barkeep, bar):
    """Plans a shoot for today, and gives what is to be made ready and what is bought for it."""

    def plan(*drinks):
        words = [word for each in drinks for word in ("--drink", each)]
        assert barkeep("--bar", bar, "shoot", "plan", "Evening", "--on", DAY, *words).status == 0
        shown = barkeep("--bar", bar, "shoot", "show", "Evening").out
        return shown, barkeep("--bar", bar, "buy", "--shoot", "Evening").out

    return plan


@pytest.mark.parametrize(
    ("spec", "garnish"),
    [
        ("Harrow Sour", ("lemon peel", "cut", ["Lemon"], False)),
        ("Long Porch", ("lime wedge", "cut", ["Lime"], False)),
        ("Cherry Sour", ("cocktail cherry", "there", [], False)),
        ("Salt Margin", ("salt rim", "there", [], True)),
        ("Gibson", ("cocktail onion", "missing", [], True)),
        ("Dry Martini", ("green olive", "there", [], True)),
        ("Cream Step", ("grated nutmeg", "missing", [], False)),
        ("Paper Boat", ("a paper lantern", "unknown", [], False)),
    ],
)
def test_a_garnish_is_there_to_cut_or_missing(barkeep, built, spec, garnish):
    drinks = barkeep("--bar", built, "tonight", "--json").answer["drinks"]
    (found,) = next(each["garnishes"] for each in drinks if each["spec"] == spec)
    said = (found["garnish"], found["standing"], found["from"], found["makes_the_drink"])
    assert said == garnish


def test_a_drink_that_is_its_garnish_is_short_without_it_and_says_what_it_is_then(barkeep, built):
    drinks = {
        each["spec"]: each for each in barkeep("--bar", built, "tonight", "--json").answer["drinks"]
    }
    assert (drinks["Gibson"]["verdict"], drinks["Gibson"]["missing"]) == (
        "one_short",
        ["Cocktail onion"],
    )
    assert drinks["Cream Step"]["verdict"] == "ready"  # an ornament blocks nothing
    shown = barkeep("--bar", built, "tonight", "--within", "loose", "--all", "--full").out
    assert "  Gibson: no cocktail onion\n" in shown  # an olive is no stand-in for its name
    assert "      Without its cocktail onion it is a Dry Martini.\n" in shown
    assert "; garnish: lemon peel to cut from lemon\n" in shown
    assert "      Grated nutmeg (garnish): missing.\n" in shown


def test_without_an_olive_a_martini_is_ready_and_says_so(barkeep, bar):
    assert barkeep("--bar", bar, "count", "Green olives", "0").status == 0
    brief = barkeep("--bar", bar, "tonight").out.splitlines()
    (martini,) = [each for each in brief if each.startswith("  Dry Martini: ")]
    assert " · no green olive · " in martini
    ready = barkeep("--bar", bar, "tonight", "--full").out
    assert "  Dry Martini: " in ready
    assert "The drink is its garnish, green olive (missing): its brine and fat are tasted" in ready


def test_garnishes_are_made_ready_and_those_that_are_missing_bought(planned):
    ready, bought = planned("Gibson=0+2+0", "Cream Step=0+2+0", "Cherry Sour=0+2+0")
    assert "Get 2 × cocktail onion: none is there." in ready
    assert "Get 2 × grated nutmeg: none is there." in ready
    assert "Have 2 × cocktail cherry ready." in ready
    assert "2 short for Evening’s Gibson" in bought
    assert "Nutmeg: 4 g short to garnish Evening’s Cream Step." in bought
    assert "cherry" not in bought.casefold()


def test_a_rim_is_laid_out_and_what_nobody_knows_is_seen_to(planned):
    ready, bought = planned("Salt Margin=0+3+0", "Paper Boat=0+2+0")
    assert "Set out a saucer of salt to rim 3 glasses." in ready
    assert "See to “a paper lantern” yourself, for 2 drinks: no ingredient is called so." in ready
    assert "nothing to buy" in bought


def test_a_peeled_lemon_is_still_squeezed(planned):
    ready, bought = planned("Harrow Sour=0+8+0")
    assert "Cut 8 × lemon peel from 2 × lemon, before it is squeezed." in ready
    assert "of lemon juice from 5 × lemon" in ready
    assert "emon" not in bought.replace("There", "")  # six are there


def test_what_is_cut_in_wedges_is_not_squeezed_too(planned):
    ready, bought = planned("Salt Margin=0+5+0", "Snow Rum=0+2+0", "Long Porch=0+2+0")
    # 170 ml of juice are seven limes, and all seven are there; the wedges take another.
    assert "of lime juice from 7 × lime" in ready
    assert "Cut 2 × lime wedge from 1 × lime." in ready
    assert "Lime: 1 short to cut 2 × lime wedge for Evening’s Long Porch." in bought


def test_four_whites_are_four_eggs(planned):
    ready, bought = planned("Moth=0+4+0")
    assert "Separate 128 ml of egg white from 4 × whole egg." in ready
    assert "of lemon juice from 3 × lemon" in ready
    assert "egg" not in bought


@pytest.mark.parametrize(
    ("spec", "least_g", "most_g"),
    [("Sexton's Smash", 0.72, 1.01), ("Half Lime", 0.5, 0.8)],  # 15 to 21 ml, 11 to 15 ml of juice
)
def test_what_is_muddled_gives_its_juice(barkeep, built, spec, least_g, most_g):
    answer = barkeep("--bar", built, "spec", "analyse", spec, "--json").answer
    acid_g = answer["acid_g_per_l"] * answer["served_volume_ml"] / 1000.0
    assert least_g <= acid_g <= most_g


def test_a_wedge_that_nobody_presses_gives_nothing(barkeep, bar, tmp_path):
    asked = (
        "Still Slice\n2 oz white rum\n3 lemon slices\nGlass: rocks\n\nBuild over ice and stir.\n"
    )
    (tmp_path / "still.txt").write_text(asked, "utf-8")
    assert barkeep("--bar", bar, "spec", "add", tmp_path / "still.txt").status == 0
    shown = " ".join(barkeep("--bar", bar, "spec", "analyse", "Still Slice").out.split())
    assert "Not counted, for how much it gives is not known: lemon slices." in shown


def test_six_wedges_are_a_lemon(planned):
    ready, bought = planned("Sexton's Smash=0+2+0")
    assert "from 1 × lemon" in ready
    assert "emon" not in bought
