"""`barkeep buy`: the list, what was bought, and pars."""

from __future__ import annotations

import pytest

KEYS = [
    *("ingredient", "called", "need", "unit", "product", "packages", "size"),
    *("price", "cost", "why"),
]


def items(answer):
    return {each["ingredient"]: each for each in answer["items"]}


def test_keys_are_stable_and_the_figures_add_up(barkeep, bar):
    answer = barkeep("--bar", bar, "buy", "--json").answer
    assert list(answer) == ["items", "total", "unpriced", "not_counted", "faded", "assumed"]
    assert all(list(each) == KEYS for each in answer["items"])
    mezcal = items(answer)["Mezcal"]
    assert (mezcal["need"], mezcal["unit"], mezcal["packages"]) == (88.72, "ml", 1)
    assert mezcal["why"] == ["88.7 ml short for Summer Excursion’s Sand in the Points"]
    assert answer["total"] == pytest.approx(sum(each["cost"] for each in answer["items"]))
    for each in answer["items"]:
        assert each["packages"] * each["size"] >= each["need"]
        assert (each["packages"] - 1) * each["size"] < each["need"]


def test_what_is_bought_is_no_longer_on_the_list_and_undo_brings_it_back(barkeep, bar):
    before = items(barkeep("--bar", bar, "buy", "--json").answer)
    words = [f"--received={each['product']}*{each['packages']}=9,95" for each in before.values()]
    received = barkeep("--bar", bar, "buy", *words, "--json").answer["received"]
    assert len(received) == sum(each["packages"] for each in before.values())
    assert {each["price"] for each in received} == {9.95}
    assert barkeep("--bar", bar, "buy").out == "There is nothing to buy.\n"
    barkeep("--bar", bar, "undo")
    assert items(barkeep("--bar", bar, "buy", "--json").answer) == before


def test_a_par_is_set_listed_bought_for_and_taken_away(barkeep, bar):
    said = barkeep("--bar", bar, "buy", "--par", "gin=3 bottles").out
    assert said == "The par of gin is 2100 ml.\n"
    (par,) = barkeep("--bar", bar, "buy", "--pars", "--json").answer["pars"]
    assert (par["ingredient"], par["par"], par["unit"]) == ("Gin", 2100.0, "ml")
    gin = items(barkeep("--bar", bar, "buy", "--json").answer)["Gin"]
    assert gin["need"] == pytest.approx(2100.0 - par["there"], abs=0.1)
    assert gin["why"][0].startswith("par is 3 bottles, and ")
    assert "Gin" not in items(barkeep("--bar", bar, "buy", "--no-pars", "--json").answer)
    assert barkeep("--bar", bar, "buy", "--par", "gin=0").out == "There is no par of gin.\n"
    assert barkeep("--bar", bar, "buy", "--pars").out.startswith("No par is set")


def test_one_shoot_by_its_theme(barkeep, bar):
    shown = barkeep("--bar", bar, "buy", "--shoot", "summer excursion").out
    assert "Mezcal: 88.7 ml short for Summer Excursion’s Sand in the Points." in shown
    # All six limes are squeezed, so the wedges take another.
    assert "Lime: 1 short to cut 3 × lime wedge for Summer Excursion’s Sand in the Points." in shown
    assert shown.endswith("86.10 EUR for 4 things.\n")


def test_fruit_received_on_an_earlier_day(barkeep, bar):
    words = ("--received", "Limes*2=4.00", "--on", "2026-01-02")
    shown = barkeep("--bar", bar, "buy", *words).out
    assert shown.startswith("2 packages on the shelf:\n")
    assert shown.count("Limes, 12, 4.00 EUR") == 2


@pytest.mark.parametrize(
    ("words", "said"),
    [
        (("--shoot", "unicorn"), "There is no shoot called “unicorn”"),
        (("--received", "Limes*100"), "count cannot be “100”: it is 1 to 99"),
        (("--received", "Limes=cheap"), "write the product, *how many and =the price"),
        (("--received", "unicorn"), "There is no product called “unicorn”"),
        (("--received", "Limes", "--on", "2999-01-01"), "that day is still to come"),
        (("--on", "2026-01-01"), "it says when --received things came"),
        (("--par", "gin"), "write the ingredient, = and the least to have"),
        (("--par", "gin=3 kg"), "“3 kg” is a weight"),
        (("--par", "ice=3 kg"), "it counts as always there and is never bought"),
    ],
)
def test_what_cannot_be_is_said_and_nothing_is_written(barkeep, bar, words, said):
    before = barkeep("--bar", bar, "bottles", "--json").answer
    assert said in barkeep("--bar", bar, "buy", *words).refusal
    assert barkeep("--bar", bar, "bottles", "--json").answer == before
