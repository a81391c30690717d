"""A question of a bar changed on paper: said first, answered as if it were so, never written."""

from __future__ import annotations

import pytest

QUESTIONS = [
    ("tonight",),
    ("next-bottle",),
    ("next-bottle", "--bottles", "1"),
    ("stand-in", "vodka"),
    ("spec", "list", "vodka"),
    ("use-up", "--serves", "1"),
    ("carries",),
    ("pairs",),
    ("shoot", "check", "Summer Excursion"),
]


def test_each_answer_says_first_that_it_is_on_paper(barkeep, bar):
    changed = ("--with", "vodka", "--without", "18", "--json")
    for question in QUESTIONS:
        answer = barkeep("--bar", bar, *question, *changed).answer
        assert next(iter(answer)) == "on_paper", question
        assert answer["on_paper"] == {
            "with": ["700 ml of Grey Ferry Clear Signal vodka"],
            "without": ["Copperbend Straight bourbon (#18)"],
            "words": "On paper, not as the bar is: with 700 ml of Grey Ferry Clear Signal vodka, "
            "and without Copperbend Straight bourbon (#18).",
        }
    assert "on_paper" not in barkeep("--bar", bar, *QUESTIONS[-1], "--json").answer


def drinks(barkeep, bar, *more):
    found = barkeep("--bar", bar, "tonight", "--json", *more).answer["drinks"]
    return {each["spec"] for each in found if each["verdict"] in ("ready", "stand_in")}


def test_it_is_answered_as_if_it_were_so_and_the_bar_stays_as_it_is(barkeep, bar):
    before = drinks(barkeep, bar)
    candidates = barkeep("--bar", bar, "next-bottle", "--json").answer["candidates"]
    vodka = next(each for each in candidates if each["ingredient"] == "Vodka")
    assert drinks(barkeep, bar, "--with", "vodka") - before == set(vodka["unlocks"])
    assert drinks(barkeep, bar, "--with", "Clear Signal") == drinks(barkeep, bar, "--with", "vodka")
    shown = barkeep("--bar", bar, "tonight", "--without", "Cellar Six").out
    assert shown.startswith("On paper, not as the bar is: without Vantry Loop Cellar Six cognac")
    carried = barkeep("--bar", bar, "carries", "Cellar Six", "--json").answer["bottles"][0]
    assert before - drinks(barkeep, bar, "--without", "Cellar Six") == set(carried["lost"])
    assert drinks(barkeep, bar) == before


@pytest.mark.parametrize(
    ("written", "said"),
    [
        (["--with", "spirit"], "with cannot be “spirit”: it is several kinds; likely "),
        (["--with", "ice"], "with cannot be “ice”: it is always there."),
        (["--with", "fog machine"], "There is no kind or bottle called “fog machine”."),
        (["--without", "vodka"], "without cannot be “vodka”: there is none in the bar."),
        (["--without", "9999"], "There is no bottle called “9999”."),
        (["--without", "Tarpaulin"], "“Tarpaulin” could be more than one bottle: "),
    ],
)
def test_what_cannot_be_changed_is_said(barkeep, bar, written, said):
    refusal = barkeep("--bar", bar, "tonight", *written).refusal
    assert refusal.startswith(said), refusal


def test_no_command_that_writes_takes_it(barkeep, bar):
    with pytest.raises(SystemExit) as refused:
        barkeep("--bar", bar, "count", "1", "0.4", "--with", "vodka")
    assert refused.value.code == 2
