"""`barkeep make`: a plan, a batch, an own recipe, and every refusal."""

from __future__ import annotations

from datetime import date, timedelta

import pytest

KEYS = ["ingredient", "unit", "amount", "bottle", "made", "use_by", "inputs"]
FIGURES = ["abv_percent", "sugar_g_per_l", "acid_g_per_l", "unknown"]


def make(barkeep, bar, *words):
    return barkeep("--bar", bar, "make", *words, "--json").answer


def test_keys_are_stable(barkeep, bar):
    answer = make(barkeep, bar, "Simple syrup", "500 ml", "--plan")
    assert list(answer) == [*KEYS, *FIGURES, "past", "how", "notes", "cautions"]
    assert answer["inputs"][0] == {
        "ingredient": "White sugar",
        "unit": "g",
        "need": 307.41,
        "have": 307.41,
        "always_there": True,
        "draws": [],
    }
    assert (answer["bottle"], answer["sugar_g_per_l"]) == (None, 614.8)
    assert date.fromisoformat(answer["use_by"]) > date.today()


def test_a_plan_writes_nothing_and_a_batch_is_on_the_shelf(barkeep, bar):
    before = barkeep("--bar", bar, "bottles", "--json").answer
    make(barkeep, bar, "lime juice", "50 ml", "--plan")
    assert barkeep("--bar", bar, "bottles", "--json").answer == before
    answer = make(barkeep, bar, "lime juice", "50 ml")
    history = barkeep("--bar", bar, "history", str(answer["inputs"][0]["draws"][0]["bottle"])).out
    assert "for 50 ml lime juice" in history
    assert barkeep("--bar", bar, "undo").status == 0
    assert barkeep("--bar", bar, "bottles", "--json").answer == before


def test_the_text_says_what_is_drawn_and_what_to_mind(barkeep, bar):
    shown = barkeep("--bar", bar, "make", "orgeat", "2 oz", "--plan").out
    assert shown.startswith("Orgeat, 59 ml\n")
    assert "always there" in shown and "Nothing was written." in shown
    assert "comes from almonds is not known" in shown
    assert "! Contains" in shown
    made = barkeep("--bar", bar, "make", "Simple syrup", "200 ml").out
    assert "It is on the shelf as #" in made


def test_an_own_recipe_is_used_and_kept(barkeep, bar):
    own = ["--input", "sugar=300 g", "--input", "water = 200 ml"]
    once = make(barkeep, bar, "gum syrup", "100 ml", *own, "--plan")
    assert once["sugar_g_per_l"] == pytest.approx(772.0, abs=1.0)  # 60 °Bx: 1286.5 g/l by ICUMSA
    make(barkeep, bar, "gum syrup", "100 ml", *own, "--how", "Stir.", "--keep-recipe")
    again = make(barkeep, bar, "gum syrup", "100 ml", "--plan")
    assert [each["ingredient"] for each in again["inputs"]] == ["White sugar", "Water"]
    assert again["how"] == "Stir."


def test_the_yield_of_an_own_recipe_is_believed(barkeep, bar):
    own = ["--input", "sugar=100 g", "--input", "water=100 ml", "--yields", "200 ml"]
    answer = make(barkeep, bar, "gum syrup", "100 ml", *own, "--plan")
    assert answer["sugar_g_per_l"] == 500.0


def test_days_may_be_given(barkeep, bar):
    made, use_by = date.today() - timedelta(days=1), date.today() + timedelta(days=9)
    days = ("--made", str(made), "--use-by", str(use_by))
    answer = make(barkeep, bar, "Simple syrup", "100 ml", *days)
    assert (answer["made"], answer["use_by"]) == (str(made), str(use_by))


def test_less_is_made_where_it_is_asked_for(barkeep, bar):
    refusal = barkeep("--bar", bar, "make", "lime juice", "5 l").refusal
    assert refusal.startswith("Lime juice cannot be made: 193 of lime is needed and ")
    answer = make(barkeep, bar, "lime juice", "5 l", "--or-less")
    assert 0 < answer["amount"] < 5000
    assert answer["inputs"][0]["need"] == answer["inputs"][0]["have"]


@pytest.mark.parametrize(
    ("words", "said"),
    [
        (("moonglow", "1 l"), "moonglow"),
        (("gin", "1 l"), "There is no recipe for gin"),
        (("simple syrup", "500 g"), "500 g"),
        (("simple syrup", "0 ml"), "amount cannot be"),
        (("simple syrup", "1 l", "--input", "moonglow=3 g"), "moonglow"),
        (("simple syrup", "1 l", "--keep-recipe"), "--input"),
        (("simple syrup", "1 l", "--input", "simple syrup=1 l"), "made from itself"),
        (("lemon peel", "3", "--input", "lemon=1"), "--yields"),
        (("simple syrup", "1 l", "--use-by", "2001-01-01"), "use by"),
    ],
)
def test_a_refusal_is_one_sentence_and_writes_nothing(barkeep, bar, words, said):
    before = barkeep("--bar", bar, "bottles", "--json").answer
    assert said in barkeep("--bar", bar, "make", *words).refusal
    assert barkeep("--bar", bar, "bottles", "--json").answer == before
