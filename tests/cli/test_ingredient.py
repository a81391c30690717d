"""`barkeep ingredient`: what there is, and what the owner adds to it."""

from __future__ import annotations

import pytest


@pytest.fixture
def ingredient(barkeep, bar):
    """Run one of its actions."""
    return lambda *argv: barkeep("--bar", bar, "ingredient", *argv)


def test_one_is_added_used_and_taken_away(barkeep, bar, ingredient, tmp_path):
    added = ingredient(
        *("add", "Signal bitters", "--kind", "cocktail bitters", "--alias", "Box bitters"),
        *("--abv", "90 proof", "--sugar", "12", "--keeps", "400"),
    )
    assert added.out == (
        "Added Signal bitters, a kind of cocktail bitters; 45 % vol and 12 g/l of sugar.\n"
    )
    (found,) = ingredient("show", "box bitters", "--json").answer["ingredients"]
    assert found == {
        "key": "signal-bitters",
        "name": "Signal bitters",
        "kinds": ["Cocktail bitters"],
        "own": True,
        "aliases": ["Box bitters"],
        "unit": "ml",
        "abv_percent": 45.0,
        "sugar_g_per_l": 12.0,
        "acid_g_per_l": None,
        "keeps_days": 400,
        "allergens": [],
        "stand_ins": [],
        "stands_in_for": [],
    }
    file = tmp_path / "milepost.txt"
    file.write_text("Milepost\n2 oz gin\n2 dashes box bitters\n\nStir.\n", encoding="utf-8")
    assert barkeep("--bar", bar, "spec", "add", file).status == 0
    assert "Milepost still refer" in ingredient("remove", "Signal bitters").refusal.replace(
        "refers", "refer"
    )
    barkeep("--bar", bar, "undo")
    assert ingredient("remove", "Signal bitters").out == "Took Signal bitters away.\n"
    assert "There is no ingredient called" in ingredient("show", "Signal bitters").refusal
    barkeep("--bar", bar, "undo")
    assert ingredient("show", "Signal bitters").out.endswith("your own\n")


def test_they_are_listed_below_a_kind_and_the_own_alone(ingredient):
    ingredient("add", "Signal bitters", "--kind", "bitters")
    listed = ingredient("list", "bitters").out
    assert row_of("Signal bitters", "cocktail bitters", "yes") in squeezed(listed)
    assert row_of("Orange bitters", "cocktail bitters") in squeezed(listed)
    own = ingredient("list", "--own", "--json").answer["ingredients"]
    assert [each["name"] for each in own] == ["Signal bitters"]
    assert len(ingredient("list", "--json").answer["ingredients"]) > 250


def test_another_name_is_given_and_taken_back(ingredient):
    assert ingredient("alias", "gin", "Lamp spirit").out == "Gin answers to Lamp spirit now.\n"
    assert "also called Lamp spirit" in ingredient("show", "lamp spirit").out
    said = ingredient("remove", "gin").out
    assert said == "What barkeep itself knows of Gin counts again.\n"
    assert "There is no ingredient called" in ingredient("show", "lamp spirit").refusal
    again = ingredient("remove", "gin").refusal
    assert "There is no ingredient of yours called" in again


def test_a_name_that_a_list_prints_finds_its_kind_and_is_not_shown(ingredient):
    shown = ingredient("show", "Campari").out
    assert shown.startswith("Red bitter aperitivo, a kind of")
    assert "also called red bitter" in shown and "Campari" not in shown
    known = ingredient("show", "Campari", "--json").answer["ingredients"][0]
    assert known["key"] == "red-bitter" and "Campari" not in known["aliases"]


@pytest.mark.parametrize(
    ("argv", "said"),
    [
        (("add", "Gin", "--kind", "spirit"), "There is already an ingredient called “Gin”"),
        (("add", "X", "--kind", "nothing known"), "There is no ingredient called"),
        (("add", "Signal", "--kind", "bitters", "--alias", "gin"), "already an ingredient called"),
        (("add", "Signal", "--kind", "bitters", "--abv", "strong"), "--abv cannot be “strong”"),
        (("add", "Signal", "--kind", "bitters", "--abv", "100° proof"), "US proof or 100 UK proof"),
        (("add", "Signal", "--kind", "bitters", "--sugar", "-1"), "it is 0 g/l or more"),
        (("add", "optional", "--kind", "bitters"), "such words say how much or how"),
        (("add", "dash", "--kind", "bitters"), "such words say how much or how"),
        (("add", "to taste", "--kind", "bitters"), "such words say how much or how"),
        (("add", "2 oz foo", "--kind", "bitters"), "a line would read an amount in it"),
        (("add", "Foo, bar", "--kind", "bitters"), "after a comma is a note"),
        (("add", "Foo (bar)", "--kind", "bitters"), "in brackets or after a comma is a note"),
        (("add", "42", "--kind", "bitters"), "a name has letters"),
        (("add", "S" * 81, "--kind", "bitters"), "a name has at most 80 characters"),
        (("add", "a few", "--kind", "bitters"), "such words say how much or how"),
        (("add", "each of foo and bar", "--kind", "gin"), "would read something else in it"),
        (("add", "Signal", "--kind", "bitters", "--alias", "dash"), "alias cannot be “dash”"),
        (("add", "Signal", "--kind", "bitters", "--acid", "99999"), "it is 0 to 1,700 g/l"),
        (("add", "Signal", "--kind", "bitters", "--sugar", "much"), "such as 240"),
        (("add", "Signal", "--kind", "bitters", "--keeps", "a while"), "a whole number of days"),
        (("add", "Signal", "--kind", "bitters", "--keeps", "99999"), "it is 0 to 36,500 days"),
        (("add", "Signal", "--kind", "bitters", "--abv", "0.43"), "write 43 % or 0.43 %"),
        (("add", "Signal", "--kind", "bitters", "--allergen", "nutts"), "it is milk, egg, fish"),
        (("add", "Signal", "--kind", "bitters", "--stand-in", "rum=x"), "is written as “honey"),
        (("add", "Signal", "--kind", "bitters", "--stand-in", "=0.5"), "is written as “honey"),
        (("add", "Signal", "--kind", "bitters", "--stand-in", "rum=5"), "it is more than 0 and at"),
        (("change", "gin", "--abv", "43"), "There is no ingredient of yours called “Gin”"),
        (("alias", "gin", "optional"), "alias cannot be “optional”"),
        (("alias", "gin", "  "), "a name has letters"),
        (("alias", "gin", "vodka"), "already an ingredient called “vodka”"),
        (("alias", "gin", "gin"), "already an ingredient called “gin”"),
        (("remove", "gin"), "There is no ingredient of yours called"),
    ],
)
def test_what_cannot_be_is_refused_and_nothing_written(barkeep, bar, ingredient, argv, said):
    assert said in ingredient(*argv).refusal
    assert ingredient("list", "--own", "--json").answer["ingredients"] == []


def test_all_of_it_is_said_and_shown(ingredient):
    ingredient(
        *("add", "Smoked maple syrup", "--kind", "maple syrup", "--allergen", "nuts"),
        *("--stand-in", "honey syrup=0.7,0.9,near in body", "--stand-in", "orgeat"),
        *("--stands-in-for", "demerara syrup=0.85", "--keeps", "60 days", "--acid", "1,5 g/l"),
    )
    (found,) = ingredient("show", "smoked maple syrup", "--json").answer["ingredients"]
    assert found["allergens"] == ["tree nuts"]
    assert found["keeps_days"] == 60 and found["acid_g_per_l"] == 1.5
    assert [(each["ingredient"], each["closeness"]) for each in found["stand_ins"]] == [
        ("Honey syrup", 0.7),
        ("Orgeat", 0.8),
    ]
    assert [each["ingredient"] for each in found["stands_in_for"]] == ["Demerara syrup"]
    shown = ingredient("show", "smoked maple syrup").out
    assert "instead of it honey syrup, closeness 0.7, 0.9 times as much: near in body" in shown
    assert "stands in for Demerara syrup, closeness 0.85: the owner says so" in shown
    assert "carries tree nuts (allergen)" in shown


def test_figures_that_are_left_out_are_as_its_kind_has_them_and_are_said(ingredient):
    added = ingredient("add", "Hearth gin", "--kind", "gin", "--sugar", "20")
    assert added.out == (
        "Added Hearth gin, a kind of gin; 20 g/l of sugar; as its kind 40 % vol.\n"
    )
    added = ingredient("add", "Foggy gin", "--kind", "hearth gin")
    assert added.out == (
        "Added Foggy gin, a kind of hearth gin; as its kind 40 % vol and 20 g/l of sugar.\n"
    )
    (said,) = ingredient("show", "foggy gin", "--json").answer["ingredients"]
    assert (said["abv_percent"], said["sugar_g_per_l"]) == (None, None)


def test_what_is_left_out_counts_in_every_answer(barkeep, bar, ingredient, tmp_path):
    ingredient("add", "Hearth gin", "--kind", "gin", "--sugar", "20")
    file = tmp_path / "lantern.txt"
    file.write_text("Lantern\n60 ml hearth gin\n\nStir.\n", encoding="utf-8")
    barkeep("--bar", bar, "spec", "add", file)
    drink = barkeep(
        "--bar", bar, "spec", "analyse", "Lantern", "--method", "built", "--json"
    ).answer
    assert drink["ethanol_g"] == pytest.approx(60 * 0.40 * 0.789, rel=0.01)


def test_one_is_changed_in_what_is_given_alone(barkeep, bar, ingredient):
    ingredient(
        *(
            "add",
            "Signal syrup",
            "--kind",
            "simple syrup",
            "--alias",
            "Box syrup",
            "--sugar",
            "600",
        ),
        *("--stand-in", "honey syrup", "--stands-in-for", "agave syrup", "--allergen", "egg"),
    )
    before = ingredient("show", "signal syrup", "--json").answer["ingredients"][0]
    said = ingredient("change", "box syrup", "--sugar", "700", "--stand-in", "none").out
    assert (
        said
        == "Changed Signal syrup, a kind of simple syrup; 700 g/l of sugar; as its kind 0 % vol.\n"
    )
    after = ingredient("show", "signal syrup", "--json").answer["ingredients"][0]
    assert after == before | {"sugar_g_per_l": 700.0, "stand_ins": []}
    again = ingredient("change", "signal syrup", "--sugar", "700").out
    assert again.startswith("Nothing to change in Signal syrup")
    ingredient("change", "signal syrup", "--name", "Lamp syrup", "--kind", "honey syrup")
    (renamed,) = ingredient("show", "lamp syrup", "--json").answer["ingredients"]
    assert (renamed["key"], renamed["kinds"]) == ("signal-syrup", ["Honey syrup"])
    ingredient("change", "lamp syrup", "--alias", "none", "--allergen", "none", "--keeps", "none")
    assert "There is no ingredient called" in ingredient("show", "box syrup").refusal
    for _ in range(3):
        barkeep("--bar", bar, "undo")
    (back,) = ingredient("show", "signal syrup", "--json").answer["ingredients"]
    assert back == before


def test_all_that_is_said_of_ones_own_is_listed_as_data(ingredient):
    ingredient("add", "Hearth gin", "--kind", "gin", "--stands-in-for", "genever=0.9")
    (only,) = ingredient("list", "--own", "--json").answer["ingredients"]
    assert only == ingredient("show", "hearth gin", "--json").answer["ingredients"][0]
    assert only["abv_percent"] is None and only["stands_in_for"][0]["closeness"] == 0.9


def test_adding_it_again_says_how_to_change_it(ingredient):
    ingredient("add", "Signal bitters", "--kind", "bitters")
    said = ingredient("add", "signal bitters", "--kind", "bitters").refusal
    assert "“barkeep ingredient change” changes Signal bitters" in said


def test_one_step_takes_it_and_its_stand_ins_back(barkeep, bar, ingredient):
    ingredient("add", "Signal syrup", "--kind", "syrup", "--stands-in-for", "honey syrup=0.95")
    offered = barkeep("--bar", bar, "stand-in", "honey syrup", "--json").answer["stand_ins"]
    assert "Signal syrup" in [each["ingredient"] for each in offered]
    assert barkeep("--bar", bar, "undo").out == "Undone: Add ingredient Signal syrup.\n"
    offered = barkeep("--bar", bar, "stand-in", "honey syrup", "--json").answer["stand_ins"]
    assert "Signal syrup" not in [each["ingredient"] for each in offered]
    # Removed rather than undone, its stand-ins go as well, and come back with it.
    ingredient("add", "Signal syrup", "--kind", "syrup", "--stands-in-for", "honey syrup=0.95")
    ingredient("remove", "signal syrup")
    ingredient("add", "Signal syrup", "--kind", "syrup")
    (found,) = ingredient("show", "signal syrup", "--json").answer["ingredients"]
    assert found["stands_in_for"] == []
    barkeep("--bar", bar, "undo")
    barkeep("--bar", bar, "undo")
    (found,) = ingredient("show", "signal syrup", "--json").answer["ingredients"]
    assert [each["closeness"] for each in found["stands_in_for"]] == [0.95]


def test_what_still_refers_to_it_is_named_and_counted(barkeep, bar, ingredient, tmp_path):
    ingredient("add", "Signal syrup", "--kind", "syrup")
    for number in range(7):
        barkeep(
            *("--bar", bar, "product", "add", f"Batch {number}"),
            *("--ingredient", "signal syrup", "--size", "500 ml"),
        )
    file = tmp_path / "milepost.txt"
    file.write_text("Milepost\n2 oz gin\n1 oz signal syrup\n\nShake.\n", encoding="utf-8")
    barkeep("--bar", bar, "spec", "add", file)
    said = ingredient("remove", "signal syrup").refusal
    assert said == (
        "Signal syrup cannot be removed: 7 products (Batch 0, Batch 1, Batch 2, Batch 3, Batch 4 "
        "and 2 more) and the spec Milepost still refer to it."
    )
    said = ingredient("change", "signal syrup", "--unit", "g").refusal
    assert said.startswith("unit cannot be “g”: it is counted in ml by 7 products")


class TestAnUnknownNameSaysHowToTeachIt:
    def test_where_specs_are_added_and_read(self, barkeep, bar, tmp_path):
        file = tmp_path / "lantern.txt"
        text = "Lantern\n2 oz bourbon\n1 oz smoked maple syrup\n1 oz smoked maple syrup\n\nStir.\n"
        file.write_text(text, encoding="utf-8")
        refused = barkeep("--bar", bar, "spec", "add", file).refusal
        command = (
            f'To teach it: barkeep --bar "{bar}" ingredient add "smoked maple syrup" '
            '--kind "Maple syrup", or, where it is another name: '
            f'barkeep --bar "{bar}" ingredient alias "Maple syrup" "smoked maple syrup"'
        )
        assert refused.count(command) == 1
        assert refused.count("no ingredient is called “smoked maple syrup”") == 2
        assert command in barkeep("--bar", bar, "spec", "read", file).out
        assert command in barkeep("--bar", bar, "import", file).refusal

    def test_where_bottles_are(self, barkeep, bar, tmp_path):
        file = tmp_path / "bottles.csv"
        file.write_text("product,ingredient,size\nBox,quince gum,500 ml\n", encoding="utf-8")
        said = barkeep("--bar", bar, "import", file).refusal
        assert 'ingredient add "quince gum" --kind "KIND"' in said
        added = ("product", "add", "Box", "--ingredient", 'the "odd" thing')
        assert 'ingredient add "the \\"odd\\" thing"' in barkeep("--bar", bar, *added).refusal
        assert "ingredient add" in barkeep("--bar", bar, "stand-in", "quince gum").refusal

    def test_other_unknown_things_do_not(self, barkeep, bar):
        assert "ingredient add" not in barkeep("--bar", bar, "spec", "show", "Nowhere").refusal


def test_from_nothing_to_ready_and_back(barkeep, bar, ingredient, tmp_path):
    def verdict() -> str:
        drinks = barkeep("--bar", bar, "tonight", "--json").answer["drinks"]
        return next(each["verdict"] for each in drinks if each["spec"] == "Lantern")

    file = tmp_path / "lantern.txt"
    text = "Lantern\n60 ml gin\n15 ml smoked maple syrup\n\nStir.\n"
    file.write_text(text, encoding="utf-8")
    assert barkeep("--bar", bar, "spec", "add", file).status == 1
    ingredient("add", "smoked maple syrup", "--kind", "maple syrup")
    assert barkeep("--bar", bar, "spec", "add", file).status == 0
    assert verdict() != "ready"
    added = ("product", "add", "Hearth", "--ingredient", "smoked maple syrup", "--abv", "0")
    assert "Its strength is 0 % vol." in barkeep("--bar", bar, *added).out
    barkeep("--bar", bar, "receive", "Hearth")
    assert verdict() == "ready"
    for _ in range(4):
        barkeep("--bar", bar, "undo")
    assert barkeep("--bar", bar, "spec", "add", file).status == 1


def squeezed(text: str) -> list[str]:
    return [" ".join(row.split()) for row in text.splitlines()]


def row_of(*cells: str) -> str:
    return " ".join(cells)


def test_its_neighbours_are_told(ingredient):
    answer = ingredient("show", "gold rum", "--neighbours", "--json").answer
    assert list(answer) == ["ingredients", "neighbours", "none_because"]
    by = {(each["relation"], each["ingredient"]): each for each in answer["neighbours"]}
    assert by["above", "Rum"]["why"] == "Gold rum is a kind of rum."
    aged = by["stands_in", "Aged rum"]
    assert aged["closeness"] == 0.8 and aged["there"] is True
    told = ingredient("show", "gold rum", "--neighbours").out
    assert "Pour instead\n" in told and f"Aged rum: {aged['why']} In the bar." in told
    made = ingredient("show", "simple syrup", "--neighbours").out
    assert "Made from\n" in made and "Made of it" not in ingredient("show", "simple syrup").out
