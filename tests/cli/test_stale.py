"""A command that read the bar before another wrote to it writes nothing, and shows both."""

from __future__ import annotations

import pytest

from tests.cli.test_openings import held

__all__ = ["held"]

SYRUP = ("ingredient", "add", "Rail syrup", "--kind", "syrup")
CASES = {
    "par": (
        (),
        ("buy", "--par", "gin=2 l"),
        ("buy", "--par", "gin=700 ml"),
        "the par of gin since you began, so nothing was written. "
        "Par: yours “2000 ml”, theirs “700 ml”.",
    ),
    "ingredient": (
        SYRUP,
        ("ingredient", "change", "Rail syrup", "--sugar", "500"),
        ("ingredient", "change", "Rail syrup", "--alias", "track syrup"),
        "the ingredient Rail syrup since you began, so nothing was written. Other names: yours “”, "
        "theirs “track syrup”; sugar in g per litre: yours “500.0”, theirs “”.",
    ),
}


@pytest.mark.parametrize("case", CASES)
def test_a_command_refuses_what_another_has_changed_meanwhile(barkeep, bar, held, case):
    before, mine, theirs, told = CASES[case]
    if before:
        assert barkeep("--bar", bar, *before).status == 0
    with held(bar, "begin", command=mine) as (one,):
        one.reach()
        assert barkeep("--bar", bar, *theirs).status == 0
        shown = barkeep("--bar", bar, "check", "--json").answer
        one.let_go()
        status, out, err = one.answer()
    assert (status, out) == (1, "") and shown["sound"]
    assert err == f"barkeep: Another window or a command has changed {told}\n"


TAKEN = {
    "one name for two kinds": (
        ("ingredient", "alias", "vodka", "Lamp spirit"),
        ("ingredient", "alias", "gin", "Lamp spirit"),
        "There is already an ingredient called “Lamp spirit”; choose another name.",
    ),
    "two new kinds of one name": (
        (*SYRUP, "--sugar", "500"),
        SYRUP,
        "Another window or a command has changed the ingredient Rail syrup since you began, so "
        "nothing was written. Sugar in g per litre: yours “500.0”, theirs “”.",
    ),
}


@pytest.mark.parametrize("case", TAKEN)
def test_a_name_that_another_took_meanwhile_is_refused(barkeep, bar, held, case):
    mine, theirs, told = TAKEN[case]
    with held(bar, "begin", command=mine) as (one,):
        one.reach()
        assert barkeep("--bar", bar, *theirs).status == 0
        shown = barkeep("--bar", bar, "ingredient", "list", "--own", "--json").out
        one.let_go()
        assert one.answer() == (1, "", f"barkeep: {told}\n")
    assert barkeep("--bar", bar, "ingredient", "list", "--own", "--json").out == shown


def test_a_bottle_of_a_product_that_another_removed_meanwhile_is_refused(barkeep, bar, held):
    box = ("Box gin", "--maker", "Grey Ferry", "--ingredient", "London dry gin", "--size", "70 cl")
    assert barkeep("--bar", bar, "product", "add", *box).status == 0
    with held(bar, "begin", command=("receive", "Grey Ferry Box gin")) as (one,):
        one.reach()
        assert barkeep("--bar", bar, "product", "remove", "Grey Ferry Box gin").status == 0
        shown = barkeep("--bar", bar, "bottles", "--json").out
        one.let_go()
        assert one.answer() == (
            1,
            "",
            "barkeep: Another window or a command has removed the product Grey Ferry Box gin since "
            "you began, so nothing was written. Undo may bring it back.\n",
        )
    assert barkeep("--bar", bar, "bottles", "--json").out == shown
