"""`barkeep pour`, and `spec riff` with what is used for a line."""

from __future__ import annotations

import pytest

SWAP = "gold rum=white rum"
FIGURES = ["abv_percent", "sugar_g_per_l", "acid_g_per_l", "served_volume_ml", "cost"]


def level(barkeep, bar, title):
    bottles = barkeep("--bar", bar, "bottles", "--json").answer["bottles"]
    return next(each["level_ml"] for each in bottles if each["product"] == title)


class TestPour:
    def test_a_drink_with_a_stand_in_takes_from_the_bottles_and_is_undone_at_once(
        self, barkeep, bar
    ):
        rum = "Marrow Hill Tarpaulin white rum"
        before = level(barkeep, bar, rum)
        answer = barkeep("--bar", bar, "pour", "airmail", "--use", SWAP, "--json").answer
        assert list(answer) == [
            *("spec", "serves", "poured", "lines", "bottles", "before", "after", "changes"),
            *("allergens", "cautions"),
        ]
        assert answer["poured"] and (answer["spec"], answer["serves"]) == ("Airmail", 1)
        assert list(answer["before"]) == list(answer["changes"]) == FIGURES
        taken = next(each for each in answer["bottles"] if each["product"] == rum)
        swapped = next(each for each in answer["lines"] if each["stand_in"])
        assert (swapped["wanted"], swapped["ingredient"]) == ("Gold rum", "White rum")
        assert taken["amount"] == pytest.approx(swapped["amount"])
        assert level(barkeep, bar, rum) == pytest.approx(before - taken["amount"], abs=0.06)
        assert "Pour Airmail" in barkeep("--bar", bar, "undo").out
        assert level(barkeep, bar, rum) == before

    def test_a_plan_writes_nothing_and_says_what_changes(self, barkeep, bar):
        before = barkeep("--bar", bar, "bottles").out
        said = barkeep("--bar", bar, "pour", "bramble", "--plan", "--use", "creme de mure=cassis")
        assert said.out.startswith("To pour Bramble\n")
        assert "Strength" in said.out and "as written" in said.out and "as poured" in said.out
        assert "oz crème de cassis, in place of crème de mûre" in said.out
        assert barkeep("--bar", bar, "bottles").out == before

    def test_what_is_short_is_refused_with_what_stands_in(self, barkeep, bar):
        assert barkeep("--bar", bar, "pour", "Airmail").refusal == (
            "Airmail cannot be poured so. Airmail lacks 44.4 ml of gold rum, for 1 of 1 serves. "
            "What stands in for it is aged rum (0.80)."
        )
        both = barkeep("--bar", bar, "pour", "Aviation").refusal
        assert "Nothing stands in for it: cherry stone" in both and "violet liqueur" in both

    def test_what_can_never_stand_in_is_refused_with_the_reason(self, barkeep, bar):
        use = "red bitter aperitivo=orange bitters"
        refusal = barkeep("--bar", bar, "pour", "Negroni", "--use", use).refusal
        assert "not known to stand in" in refusal and "a seasoning used by the dash" in refusal
        for text in ("gin", "=gin", "gin="):
            refusal = barkeep("--bar", bar, "pour", "Negroni", "--use", text).refusal
            assert "write what a line asks for, = and" in refusal
        twice = ("--use", SWAP, "--use", "gold rum=aged rum")
        assert "named once" in barkeep("--bar", bar, "pour", "Airmail", *twice).refusal


class TestRiffWithStandIns:
    def test_the_riff_has_the_line_replaced_and_says_of_what(self, barkeep, bar):
        use = "creme de mure=crème de cassis"
        words = ("--bar", bar, "spec", "riff", "Bramble", "Hedgerow", "--use", use)
        printed = barkeep(*words).out
        assert printed.startswith("Hedgerow\nRiff of: Bramble\n")
        assert "Crème de cassis, in place of crème de mûre" in printed
        answer = barkeep(*words, "--add", "--json").answer
        assert answer["is_added"] and answer["specs"][0]["riff_of"] == "Bramble"
        assert barkeep("--bar", bar, "spec", "show", "Hedgerow").out == printed
        compared = barkeep("--bar", bar, "spec", "compare", "Hedgerow", "--json").answer
        assert [each["change"] for each in compared["lines"]].count("swapped") == 1
