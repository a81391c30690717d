"""`barkeep trial`: written down, listed, settled, taken away."""

from __future__ import annotations

import pytest

TRIAL = ["id", "spec", "on", "scores", "mean_scores", "changed", "notes", "won"]


def add(barkeep, bar, *more):
    return barkeep("--bar", bar, "trial", "add", *more)


def listed(barkeep, bar, *spec):
    return barkeep("--bar", bar, "trial", "list", *spec, "--json").answer


def test_a_trial_is_written_down_and_listed(barkeep, bar):
    words = ("--on", "2026-01-31", "--changed", "less lime", "--notes", "Long.", "--won")
    scores = ("--score", "Ada On theme 4", "--score", "Ben Brook on theme 3,5")
    trial = add(barkeep, bar, "Buffer Stop", *words, *scores, "--json").answer["trial"]
    assert list(trial) == TRIAL
    assert (trial["spec"], trial["on"], trial["won"]) == ("Buffer Stop", "2026-01-31", True)
    assert trial["scores"][1] == {"taster": "Ben Brook", "scale": "On theme", "value": 3.5}
    assert trial["mean_scores"] == {"On theme": 3.75}
    assert (trial["changed"], trial["notes"]) == ("less lime", "Long.")
    answer = listed(barkeep, bar, "buffer stop")
    assert answer == {
        "trials": [trial],
        "won": "Buffer Stop",
        "mean_scores": {"On theme": 3.75},
    }
    table = barkeep("--bar", bar, "trial", "list", "Buffer Stop").out
    assert "On theme 3.8" in table and "less lime" in table
    assert table.endswith("Buffer Stop is the version that won.\n")
    barkeep("--bar", bar, "undo")
    assert barkeep("--bar", bar, "trial", "list", "Buffer Stop").out == (
        "Buffer Stop has no trial yet.\n"
    )


def test_who_tastes_alone_needs_no_name(barkeep, bar):
    scores = ("--score", "Balance 4", "--score", "on theme 3,5")
    trial = add(barkeep, bar, "Buffer Stop", *scores, "--json").answer["trial"]
    assert trial["scores"] == [
        {"taster": "", "scale": "Balance", "value": 4},
        {"taster": "", "scale": "On theme", "value": 3.5},
    ]
    assert trial["mean_scores"] == {"Balance": 4, "On theme": 3.5}
    assert "Balance 4, On theme 3.5" in barkeep("--bar", bar, "trial", "list", "Buffer Stop").out


def test_all_trials_are_listed_newest_first(barkeep, bar):
    trials = listed(barkeep, bar)["trials"]
    days = [each["on"] for each in trials]
    assert len(days) == 6 and days == sorted(days, reverse=True)
    assert listed(barkeep, bar)["won"] is None
    assert listed(barkeep, bar, "Upper Berth in the Corridor")["won"] == "Upper Berth"


def test_today_is_the_day_where_none_is_given(barkeep, bar):
    done = add(barkeep, bar, "Buffer Stop")
    assert done.status == 0 and "of Buffer Stop is written down." in done.out


def test_a_trial_is_settled_on_and_taken_away(barkeep, bar):
    (sunday,) = listed(barkeep, bar, "Request Stop on Sunday")["trials"]
    number = f"#{sunday['id']}"
    said = barkeep("--bar", bar, "trial", "won", number).out
    assert said == "Request Stop on Sunday is the version that won.\n"
    assert listed(barkeep, bar, "Request Stop")["won"] == "Request Stop on Sunday"
    said = barkeep("--bar", bar, "trial", "remove", number).out
    assert said == f"Trial {number} of Request Stop on Sunday is removed.\n"
    assert listed(barkeep, bar, "Request Stop on Sunday")["trials"] == []
    refusal = barkeep("--bar", bar, "trial", "remove", number).refusal
    assert refusal == f"There is no trial called “{number}”."


@pytest.mark.parametrize(
    ("words", "said"),
    [
        (("Daiquiri",), "There is no spec of yours called “Daiquiri”."),
        (("Nothing such",), "There is no spec called “Nothing such”."),
        (("Buffer Stop", "--score", "Ada Balance 6"), "Balance runs from 1 to 5."),
        (("Buffer Stop", "--score", "Ada Nose 4"), "There is no scale called “Nose”."),
        (("Buffer Stop", "--score", "4"), "write the scale and a number"),
        (
            ("Buffer Stop", "--score", "Balance 4", "--score", "Ada Flavour 3"),
            "where one is named, each score needs who gave it",
        ),
        (
            ("Buffer Stop", "--score", "Balance 4", "--score", "balance 3"),
            "Balance is scored already; name who gave each",
        ),
        (("Buffer Stop", "--on", "2999-01-01"), "a trial cannot be in the future."),
    ],
)
def test_what_cannot_be_is_one_clear_sentence(barkeep, bar, words, said):
    assert said in add(barkeep, bar, *words).refusal
    assert len(listed(barkeep, bar)["trials"]) == 6


@pytest.mark.parametrize("words", [("remove", "first"), ("add", "Buffer Stop", "--on", "today")])
def test_what_is_no_number_or_day_is_not_understood(barkeep, bar, words):
    with pytest.raises(SystemExit) as left:
        barkeep("--bar", bar, "trial", *words)
    assert left.value.code == 2


def test_scales_are_the_owners_own(barkeep, bar):
    barkeep("--bar", bar, "setting", "scales", "Nose 0 to 10")
    answer = add(barkeep, bar, "Buffer Stop", "--score", "Ada nose 9", "--json").answer
    assert answer["trial"]["mean_scores"] == {"Nose": 9.0}
