"""`barkeep spec riff`, `spec compare` and finding specs on the command line."""

from __future__ import annotations

import pytest

RIFF, PARENT = "Request Stop on Sunday", "Request Stop"


class TestRiff:
    def test_a_riff_is_printed_as_text_that_can_be_added(self, barkeep, bar, tmp_path):
        printed = barkeep("--bar", bar, "spec", "riff", "daiquiri", "Milepost").out
        assert printed.startswith("Milepost\nRiff of: Daiquiri\n")
        file = tmp_path / "milepost.txt"
        file.write_text(printed, encoding="utf-8")
        barkeep("--bar", bar, "spec", "add", file)
        assert barkeep("--bar", bar, "spec", "show", "Milepost").out == printed

    def test_it_is_added_as_it_is_and_undone(self, barkeep, bar):
        words = ("--bar", bar, "spec", "riff", PARENT, "Halt", "--add")
        answer = barkeep(*words, "--json").answer
        assert answer["is_added"] and answer["text"].startswith(f"Halt\nRiff of: {PARENT}\n")
        assert answer["specs"][0]["riff_of"] == PARENT and answer["specs"][0]["added"]
        refusal = barkeep(*words).refusal
        assert refusal == "There is already a spec called “Halt”; choose another name."
        barkeep("--bar", bar, "undo")
        assert barkeep(*words).out == f"Added Halt, a riff of {PARENT}.\n"

    def test_what_is_only_printed_is_not_added(self, barkeep, bar):
        answer = barkeep("--bar", bar, "spec", "riff", PARENT, "Halt", "--json").answer
        assert not answer["is_added"]
        assert "no spec called “Halt”" in barkeep("--bar", bar, "spec", "show", "Halt").refusal


class TestCompare:
    def test_stable_keys(self, barkeep, bar):
        answer = barkeep("--bar", bar, "spec", "compare", RIFF, "--json").answer
        assert list(answer) == ["parent", "riff", "lines", "changes", "not_compared"]
        assert (answer["parent"], answer["riff"]) == (PARENT, RIFF)
        assert list(answer["changes"]) == [
            *("abv_percent", "sugar_g_per_l", "acid_g_per_l", "served_volume_ml", "cost")
        ]
        lines = answer["lines"]
        assert lines[0] == {
            "before": "2 oz London dry gin",
            "after": "1 1/2 oz Old Tom gin",
            "change": "swapped",
        }
        assert lines[-1] == {"before": None, "after": "1/2 oz fino sherry", "change": "added"}

    def test_the_changes_are_those_between_both_analyses(self, barkeep, bar):
        changes = barkeep("--bar", bar, "spec", "compare", RIFF, "--json").answer["changes"]
        both = [
            barkeep("--bar", bar, "spec", "analyse", name, "--json").answer
            for name in (PARENT, RIFF)
        ]
        for key, change in changes.items():
            assert change == pytest.approx(both[1][key] - both[0][key], abs=0.011), key

    def test_two_columns_are_read(self, barkeep, bar):
        out = barkeep("--bar", bar, "spec", "compare", RIFF).out
        assert out.splitlines()[0].split("  ")[0] == PARENT
        assert "swapped" in out and "added" in out and "−" in out and "% vol" in out

    def test_any_two_may_be_compared(self, barkeep, bar):
        answer = barkeep("--bar", bar, "spec", "compare", "Daiquiri", PARENT, "--json").answer
        assert (answer["parent"], answer["riff"]) == (PARENT, "Daiquiri")

    def test_what_is_no_riff_needs_another(self, barkeep, bar):
        refusal = barkeep("--bar", bar, "spec", "compare", PARENT).refusal
        assert refusal.endswith("it is no riff; name the spec to set beside it as well.")


class TestFinding:
    def found(self, barkeep, *query):
        specs = barkeep("--sample", "spec", "list", "--json", *query).answer["specs"]
        return [spec["name"] for spec in specs]

    def test_words_and_fields_are_joined(self, barkeep):
        assert self.found(barkeep, "berth", "with:rye", "strength:>20") == [
            "Upper Berth in the Corridor"
        ]
        assert self.found(barkeep, "tag:spring", "without:gin") == []
        assert self.found(barkeep, "tag:spring") == [PARENT, RIFF]

    def test_what_it_has_not_comes_after_two_dashes(self, barkeep):
        assert self.found(barkeep, "--", "-sunday", "stop", "tag:spring") == [PARENT]

    def test_nothing_found_is_said(self, barkeep):
        assert barkeep("--sample", "spec", "list", "zzyzx").out == "No spec is found by that.\n"

    def test_a_bad_term_is_one_clear_sentence(self, barkeep):
        refusal = barkeep("--sample", "spec", "list", "due:soon").refusal
        assert refusal == ("“due:soon” finds nothing: write a number of days, such as due:14.")

    def test_the_help_is_the_table_of_the_language(self, barkeep, capsys):
        with pytest.raises(SystemExit) as left:
            barkeep("spec", "list", "--help")
        assert left.value.code == 0
        out = capsys.readouterr().out
        assert "strength:>25, <12, 18..24, 20" in out and "barkeep spec list -- -egg" in out
