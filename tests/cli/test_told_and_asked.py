"""What an answer says of strengths and garnishes, and what is asked of a grouping's name."""

from __future__ import annotations

import pytest

STRONG = "Cold Anvil\n2 oz bourbon, at least 60 %\n1 oz sweet vermouth\n\nStir.\n"
KELP = (
    "Pin Mill\n2 oz gin\n1 oz lime juice\nGarnish: candied kelp\n"
    "Garnish: toasted moss and a lemon peel\n\nShake.\n"
)


@pytest.fixture
def with_spec(barkeep, bar, tmp_path):
    def add(text):
        (tmp_path / "spec.txt").write_text(text)
        assert barkeep("--bar", bar, "spec", "add", tmp_path / "spec.txt").status == 0

    return add


def test_tonight_says_that_what_is_there_is_too_weak(barkeep, bar, with_spec):
    with_spec(STRONG)
    shown = barkeep("--bar", bar, "tonight", "--all").out
    _, _, after = shown.partition("Cold Anvil: no bourbon\n")
    reason = after.splitlines()[0].strip()
    assert reason.startswith("No bourbon here has 60 % vol or more: the strongest, ")
    assert reason.endswith("has 45 %.")


def test_a_batch_says_that_no_bottle_is_as_strong_as_it_asks(barkeep, bar, with_spec):
    with_spec(STRONG)
    shown = barkeep("--bar", bar, "batch", "Cold Anvil", "--serves", "4").out
    told = "Bourbon: asks for 60 % vol or more, and no bottle of it here is as strong."
    assert told in shown.splitlines()


def test_a_batch_names_garnishes_that_are_no_ingredients(barkeep, bar, with_spec):
    with_spec(KELP)
    shown = barkeep("--bar", bar, "batch", "Pin Mill", "--serves", "4").out
    for garnish in ("candied kelp", "toasted moss", "a lemon peel"):
        assert f"Not in the batch: “Garnish: {garnish}”, for it is a garnish." in shown
    left = barkeep("--bar", bar, "batch", "Pin Mill", "--serves", "4", "--json").answer["left_out"]
    assert {"ingredient": None, "as_written": "Garnish: candied kelp", "why": "garnish"} in left


def test_a_par_of_bitters_is_asked_about_with_the_likely_one(barkeep, bar):
    refused = barkeep("--bar", bar, "buy", "--par", "bitters=2 bottles").refusal
    assert refused.endswith("“bitters” may be several kinds; likely “aromatic bitters=2 bottles”.")
    told = barkeep("--bar", bar, "buy", "--par", "aromatic bitters=2 bottles").out
    assert told.strip() == "The par of aromatic bitters is 400 ml."


def test_a_par_of_two_of_what_is_poured_asks_for_bottles(barkeep, bar):
    refused = barkeep("--bar", bar, "buy", "--par", "gin=2").refusal
    assert refused.endswith("likely “2 bottles”.")


def test_a_list_of_bottles_asks_which_bitters_and_takes_no_empty_one_for_opened_today(
    barkeep, bar, tmp_path
):
    listed = tmp_path / "bottles.csv"
    listed.write_text("name,ingredient,level,size\nOld Tin,bitters,0,100 ml\n")
    assert "Perhaps Aromatic bitters." in barkeep("--bar", bar, "import", listed).err
    listed.write_text("name,ingredient,level,size\nOld Tin,aromatic bitters,0,100 ml\n")
    assert barkeep("--bar", bar, "import", listed).status == 0
    bottles = barkeep("--bar", bar, "bottles", "--json").answer["bottles"]
    (tin,) = [each for each in bottles if each["product"] == "Old Tin"]
    assert tin["opened"] is None
