"""`barkeep bench` over small made-up bars."""

from __future__ import annotations

import pytest

QUESTIONS = [
    "tonight, from nothing",
    "tonight, after a count",
    "next bottle, from nothing",
    "next bottle, after a count",
    "both, from nothing",
    "both, after a count",
    "both, asked again",
]


def test_each_question_is_set_beside_each_peer_at_each_size(barkeep):
    answer = barkeep("bench", "--specs", "20", "5", "--bottles", "10", "--json").answer
    assert [row["specs"] for row in answer["rows"]] == [5] * 7 + [20] * 7
    assert [row["question"] for row in answer["rows"]] == QUESTIONS * 2
    for row in answer["rows"]:
        assert row.keys() == {
            "specs", "question", "ms", "against_search", "against_sql", "against_floor",
        }  # fmt: skip
        assert all(row[key] > 0.0 for key in row if key.startswith(("ms", "against")))
    assert [each["question"] for each in answer["growth"]] == QUESTIONS


DONE_TO_A_FILE = [
    "adding the specs",
    "importing the bottles",
    "opening it",
    "changing a spec",
    "taking that back",
    "searching for gin, first",
    "searching for gin, again",
    "searching for strength:>25, first",
    "searching for strength:>25, again",
]


def test_what_is_done_to_a_file_is_set_beside_bare_sqlite(barkeep):
    answer = barkeep("bench", "--specs", "5", "20", "--bottles", "10", "--json").answer
    assert [row["specs"] for row in answer["files"]] == [5] * 9 + [20] * 9
    assert [row["question"] for row in answer["files"]] == DONE_TO_A_FILE * 2
    for row in answer["files"]:
        assert row.keys() == {"specs", "question", "ms", "against_bare"}
        assert row["ms"] > 0.0 and row["against_bare"] > 0.0
    assert [each["question"] for each in answer["files_growth"]] == DONE_TO_A_FILE
    assert [each["specs"] for each in answer["memory"]] == [5, 20]
    assert all(each["mb"] > 0.0 and each["times_file"] > 0.0 for each in answer["memory"])
    shown = barkeep("bench", "--specs", "5", "--bottles", "1").out
    assert all(each in shown for each in DONE_TO_A_FILE)
    assert "5 specs opened hold" in shown


def test_the_table_names_what_the_ratios_are_to(barkeep):
    shown = barkeep("bench", "--specs", "5", "--bottles", "10").out
    assert shown.startswith("10 open bottles; ms of CPU at best")
    head = shown.splitlines()[2].split()
    assert head == ["specs", "question", "ms", "search", "SQL", "bits"]
    assert all(question in shown for question in QUESTIONS)
    assert "Growth" not in shown


def test_no_specs_at_all_is_no_size(barkeep, capsys):
    with pytest.raises(SystemExit) as left:
        barkeep("bench", "--specs", "0")
    assert left.value.code == 2
    assert "“0” is not a whole number from 1" in capsys.readouterr().err
