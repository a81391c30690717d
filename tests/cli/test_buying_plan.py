"""`barkeep next-bottle --bottles` and `--budget`: from a budget to what can be made."""

from __future__ import annotations

import pytest

KEYS = [
    *("bottles", "unlocks", "cost", "unpriced", "proved_best", "ended", "upper_bound", "worth"),
    *("before", "left_out", "not_counted"),
]
STEP_KEYS = [
    *("ingredient", "product", "packages", "size", "unit", "price", "shop", "owned"),
    *("unlocks", "exactly", "makeable"),
]


def makeable(barkeep, bar):
    drinks = barkeep("--bar", bar, "tonight", "--json").answer["drinks"]
    return {each["spec"] for each in drinks if each["verdict"] in ("ready", "stand_in")}


def test_a_budget_becomes_bottles_and_bottles_the_drinks_that_were_claimed(barkeep, bar):
    plan = barkeep("--bar", bar, "next-bottle", "--budget", "60 EUR", "--json").answer
    assert list(plan) == KEYS
    assert all(list(each) == STEP_KEYS for each in plan["bottles"])
    assert plan["proved_best"]
    assert (plan["upper_bound"], plan["worth"]) == (len(plan["unlocks"]), len(plan["unlocks"]))
    assert plan["cost"] == pytest.approx(sum(each["price"] for each in plan["bottles"]))
    assert plan["cost"] <= 60.0
    before = makeable(barkeep, bar)
    assert len(before) == plan["before"]
    received = [f"--received={each['product']}*{each['packages']}" for each in plan["bottles"]]
    barkeep("--bar", bar, "buy", *received)
    assert makeable(barkeep, bar) - before == set(plan["unlocks"])


def test_one_bottle_is_the_one_that_next_bottle_names_first(barkeep, bar):
    first = barkeep("--bar", bar, "next-bottle", "--json").answer["candidates"][0]
    (step,) = barkeep("--bar", bar, "next-bottle", "--bottles", "1", "--json").answer["bottles"]
    assert (step["ingredient"], step["unlocks"]) == (first["ingredient"], first["unlocks"])


def test_what_it_says_to_a_person(barkeep, bar):
    shown = barkeep("--bar", bar, "next-bottle", "--bottles", "2").out
    assert shown.startswith("1. Vodka: 700 ml Grey Ferry Clear Signal vodka, 18.90 EUR\n")
    assert "Opens Black Russian, " in shown
    assert "Nothing within 2 bottles does better; that is proved." in shown
    shown = barkeep("--bar", bar, "next-bottle", "--budget", "0.50").out
    assert shown.startswith("Nothing that can be bought for 0.50 EUR turns another drink ready.")
    assert "Not looked at, since no price is known: " in shown


def test_drinks_are_weighed_by_a_query_and_for_a_shoot(barkeep, bar):
    asked = ("--bar", bar, "next-bottle", "--bottles", "2", "--json")
    shoot = barkeep(*asked, "--for", "Summer Excursion").answer
    assert {each["ingredient"] for each in shoot["bottles"]} <= {
        *("Maraschino liqueur", "Elderflower liqueur", "Mezcal"),
    }
    own = barkeep(*asked, "--weigh", "own=100").answer
    plain = barkeep(*asked).answer
    assert own["worth"] > plain["worth"]


REFUSED = [
    (["--bottles", "0"], "bottles cannot be “0”: it is 1 to 50."),
    (["--bottles", "-2"], "bottles cannot be “-2”: it is 1 to 50."),
    (["--budget", "0"], "budget cannot be “0”: it is more than nothing."),
    (["--budget", "-5"], "budget cannot be “-5”: it is more than nothing."),
    (["--budget", "much"], "budget cannot be “much”: write an amount such as 80 or 79.50."),
    (["--budget", "80 USD"], "budget cannot be “80 USD”: prices of this bar are in EUR."),
    (["--by-score"], "option cannot be “--by-score”: it goes with --bottles or --budget."),
    (
        ["--bottles", "2", "--weigh", "own"],
        "weigh cannot be “own”: write a query, = and how many times it counts, such as "
        "“tag:summer=2” or “own=3”.",
    ),
    (
        ["--budget", "20", "--price", "calvados=-3"],
        "price cannot be “-3”: it is nothing or more.",
    ),
]


def test_what_cannot_be_used_is_said(barkeep, bar):
    for written, said in REFUSED:
        assert barkeep("--bar", bar, "next-bottle", *written).refusal == said


def test_a_price_that_is_told_counts(barkeep, bar):
    asked = ("--bar", bar, "next-bottle", "--budget", "3", "--json")
    assert "Agave syrup" in barkeep(*asked).answer["left_out"]
    told = barkeep(*asked, "--price", "agave syrup=0.50").answer
    assert "Agave syrup" not in told["left_out"]
    assert "Agave syrup" in [each["ingredient"] for each in told["bottles"]]


def listed(barkeep, bar):
    return {
        each["ingredient"]: each["packages"]
        for each in barkeep("--bar", bar, "buy", "--json").answer["items"]
        if "you put it on the list" in each["why"]
    }


def test_a_plan_goes_on_the_list_and_is_off_it_once_it_came(barkeep, bar):
    answer = barkeep("--bar", bar, "next-bottle", "--bottles", "2", "--add", "--json").answer
    assert list(answer) == [*KEYS, "to_buy"]
    planned = {each["ingredient"]: each["packages"] for each in answer["bottles"]}
    assert listed(barkeep, bar) == planned
    assert {each["ingredient"]: each["packages"] for each in answer["to_buy"]} == planned
    shown = barkeep("--bar", bar, "buy").out
    assert "Vodka                as listed  1 × 700 ml Grey Ferry Clear Signal vodka" in shown
    barkeep("--bar", bar, "next-bottle", "--bottles", "2", "--add")
    assert listed(barkeep, bar) == planned, "it is not put there twice"
    barkeep("--bar", bar, "buy", "--received", "Grey Ferry Clear Signal vodka")
    assert listed(barkeep, bar) == {key: many for key, many in planned.items() if key != "Vodka"}
    barkeep("--bar", bar, "undo")
    assert listed(barkeep, bar) == planned


def test_a_thing_is_put_on_the_list_by_hand_and_taken_off(barkeep, bar):
    said = barkeep("--bar", bar, "buy", "--list", "gin*2", "--list", "maraschino liqueur").out
    assert said == "By hand on the list: 2 × gin and 1 × maraschino liqueur.\n"
    assert listed(barkeep, bar) == {"Gin": 2, "Maraschino liqueur": 1}
    barkeep("--bar", bar, "buy", "--received", "Pellow & Rudge Lamp Room dry gin")
    assert listed(barkeep, bar)["Gin"] == 1, "a London dry gin is a gin"
    said = barkeep("--bar", bar, "buy", "--list", "gin*0", "--list", "maraschino liqueur*0").out
    assert said == "Nothing is on the list by hand.\n"
    assert listed(barkeep, bar) == {}
    refusal = barkeep("--bar", bar, "buy", "--list", "gin*many").refusal
    assert refusal.startswith("list cannot be “gin*many”: write the kind, and * and how many")
    refusal = barkeep("--bar", bar, "next-bottle", "--bottles", "1", "--add", "--with", "gin")
    assert refusal.refusal == "option cannot be “--add”: what is on paper only goes on no list."
