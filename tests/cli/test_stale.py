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
