"""`barkeep carries`, `pairs` and `use-up`."""

from __future__ import annotations

import pytest


def test_keys_of_carries_are_stable_and_what_matters_is_said(barkeep, bar):
    answer = barkeep("--bar", bar, "carries", "--json").answer
    assert list(answer) == ["bottles", "makeable", "low", "nothing"]
    keys = [
        *("id", "bottle", "ingredient", "level", "unit", "lost", "worse", "poured_for", "pour"),
        *("cost", "serves_left"),
    ]
    assert all(list(each) == keys for each in answer["bottles"])
    lost = [len(each["lost"]) for each in answer["bottles"]]
    assert lost == sorted(lost, reverse=True)
    idle = {each["id"] for each in answer["bottles"] if not each["poured_for"]}
    assert set(answer["nothing"]) <= idle
    shown = barkeep("--bar", bar, "carries", "Cellar Six").out
    assert shown.startswith("#23 Vantry Loop Cellar Six cognac\n      Lost without it: ")
    assert "51.8 ml (3.03 EUR) a serve, 8 serves left." in " ".join(shown.split())
    whole = barkeep("--bar", bar, "carries").out
    assert "carry nothing that can be made." in whole


def test_pairs_turn_what_neither_turns_alone(barkeep, bar):
    found = barkeep("--bar", bar, "pairs", "--json").answer["pairs"]
    assert all(list(each) == ["ingredients", "together", "apart", "prices"] for each in found)
    first = found[0]
    one, other = first["ingredients"]
    drinks = barkeep("--bar", bar, "tonight", "--with", one, "--with", other, "--json").answer
    ready = {each["spec"] for each in drinks["drinks"] if each["verdict"] in ("ready", "stand_in")}
    assert set(first["together"]) <= ready
    assert "more pairs turn a drink; --json lists them all." in barkeep("--bar", bar, "pairs").out


def test_use_up_says_what_to_drink_and_what_is_then_left(barkeep, bar):
    answer = barkeep("--bar", bar, "use-up", "--serves", "3", "--json").answer
    assert list(answer) == ["drinks", "left", "proved_best", "days"]
    assert answer["proved_best"]
    assert sum(each["serves"] for each in answer["drinks"]) <= 3
    used = {}
    for drink in answer["drinks"]:
        for use in drink["uses"]:
            used[use["id"]] = used.get(use["id"], 0.0) + use["amount"]
    for each in answer["left"]:
        assert each["used"] == pytest.approx(used.get(each["id"], 0.0), abs=0.02)
    shown = barkeep("--bar", bar, "use-up", "--serves", "3").out
    assert "No 3 serves use more, ready drinks first; that is proved." in shown


@pytest.mark.parametrize(
    ("written", "said"),
    [
        (["--serves", "0"], "serves cannot be “0”: it is 1 to 99."),
        (["--serves", "-4"], "serves cannot be “-4”: it is 1 to 99."),
        (["--days", "5000"], "days cannot be “5000”: it is 0 to 366."),
    ],
)
def test_what_cannot_be_asked_is_said(barkeep, bar, written, said):
    assert barkeep("--bar", bar, "use-up", *written).refusal == said


def test_an_empty_bar_has_a_sentence_for_each(barkeep, tmp_path):
    new = tmp_path / "new.barkeep"
    barkeep("--bar", new, "--new", "bottles")
    assert barkeep("--bar", new, "carries").out.strip() == "There is nothing to pour from."
    assert barkeep("--bar", new, "use-up").out == "Nothing that is here goes off within 14 days.\n"
    plan = barkeep("--bar", new, "next-bottle", "--budget", "50").out
    assert plan.startswith("Nothing that can be bought for 50.00 EUR turns another drink ready.")
