"""spec read, add, show and list."""

from __future__ import annotations

import io
from datetime import date

import pytest

SPEC = [
    *("name", "lines", "method", "glass", "problems"),
    *("ice", "notes", "serves", "tags", "credit", "source"),
]
LINE = [
    *("text", "amount", "amount_high", "unit", "ingredient"),
    *("matched", "confidence", "optional", "garnish", "note", "alternatives", "guesses"),
    *("called", "stated"),
]
SOUND = """\
Signal Post
Riff of: Buffer Stop
1 1/2 oz rye whiskey
2-3 dashes aromatic bitters (optional)
Garnish: lemon peel
Glass: coupe

Stir with ice.
"""
BROKEN = "Broken Post\n30 g rye whiskey\n1 oz bourban\n1 oz dry vermouth\n\nStir.\n"


@pytest.fixture
def write(tmp_path):
    def written(text, name="specs.txt"):
        path = tmp_path / name
        path.write_text(text, encoding="utf-8")
        return path

    return written


class TestRead:
    def test_lines_with_stable_keys(self, barkeep, write):
        answer = barkeep("spec", "read", write(SOUND), "--json").answer
        assert list(answer) == ["specs", "remarks", "left_aside"]
        (spec,) = answer["specs"]
        assert list(spec) == SPEC
        assert (spec["name"], spec["glass"], spec["problems"]) == ("Signal Post", "coupe", [])
        rye, bitters, peel = spec["lines"]
        assert list(rye) == LINE
        assert rye == {
            "text": "1 1/2 oz rye whiskey",
            "amount": 1.5,
            "amount_high": None,
            "unit": "oz",
            "ingredient": "Rye whiskey",
            "matched": "Rye whiskey",
            "confidence": 1.0,
            "optional": False,
            "garnish": False,
            "note": "",
            "alternatives": [],
            "guesses": [],
            "called": "rye whiskey",
            "stated": [],
        }
        assert (bitters["amount"], bitters["amount_high"], bitters["optional"]) == (2, 3, True)
        assert peel["garnish"]

    def test_problems_have_their_place_and_the_rest_is_read(self, barkeep, write):
        broken, sound = barkeep("spec", "read", write(BROKEN + "---\n" + SOUND), "--json").answer[
            "specs"
        ]
        places = [(each["line"], each["column"]) for each in broken["problems"]]
        assert places == [(2, 1), (3, 6)]
        assert all(
            list(each) == ["line", "column", "message", "likely"] for each in broken["problems"]
        )
        assert "Bourbon" in broken["problems"][1]["message"]
        assert [line["ingredient"] for line in broken["lines"]] == [
            *("Rye whiskey", None, "Dry vermouth"),
        ]
        assert sound["problems"] == []

    def test_text_marks_what_is_wrong(self, barkeep, write):
        shown = barkeep("spec", "read", write(BROKEN)).out
        assert "  ? 1 oz bourban\n" in shown
        assert "  ! line 3, column 6: no ingredient is called “bourban”" in shown
        assert shown.endswith("1 spec, 1 with problems.\n")
        shown = barkeep("spec", "read", write(SOUND)).out
        assert "  1 ½ oz Rye whiskey\n  2–3 dashes Aromatic bitters (optional)\n" in shown

    def test_standard_input(self, barkeep, monkeypatch):
        stdin = io.TextIOWrapper(io.BytesIO(SOUND.encode()), encoding="ascii")
        monkeypatch.setattr("sys.stdin", stdin)
        (spec,) = barkeep("spec", "read", "-", "--json").answer["specs"]
        assert spec["name"] == "Signal Post"

    def test_reading_begins_no_bar(self, barkeep, write, tmp_path):
        barkeep("spec", "read", write(SOUND))
        assert list(tmp_path.rglob("*.barkeep")) == []

    def test_a_file_that_cannot_be_read_is_refused(self, barkeep, tmp_path):
        nothing = tmp_path / "nothing.txt"
        said = f"{nothing} cannot be used: there is no such file."
        assert barkeep("spec", "read", nothing).refusal == said
        assert "is a directory" in barkeep("spec", "read", tmp_path).refusal
        picture = tmp_path / "picture.txt"
        picture.write_bytes(b"\x89PNG\r\n\x1a\n\x00\x00")
        assert "it is no text in UTF-8" in barkeep("spec", "read", picture).refusal
        assert "cannot be used" in barkeep("spec", "read", "nul\0name").refusal


class TestAddShowList:
    def test_a_spec_added_is_shown_and_listed(self, barkeep, write, bar):
        (added,) = barkeep("spec", "add", write(SOUND), "--bar", bar, "--json").answer["specs"]
        assert list(added) == [*SPEC, "added", "riff_of", "unsettled"]
        assert (added["added"], added["riff_of"]) == (date.today().isoformat(), "Buffer Stop")
        (shown,) = barkeep("--bar", bar, "spec", "show", "signal post", "--json").answer["specs"]
        assert shown == added
        assert barkeep("--bar", bar, "spec", "show", "Signal Post").out == (
            "Signal Post\nRiff of: Buffer Stop\n1 1/2 oz rye whiskey\n"
            "2-3 dashes aromatic bitters (optional)\nGarnish: lemon peel\nGlass: coupe\n\n"
            "Stir with ice.\n"
        )
        listed = barkeep("--bar", bar, "spec", "list", "--json").answer["specs"]
        assert added in listed
        names = [each["name"].casefold() for each in listed]
        assert names == sorted(names)
        assert "riff of Buffer Stop" in barkeep("--bar", bar, "spec", "list").out

    def test_what_is_shown_can_be_added_elsewhere(self, barkeep, write, bar, tmp_path):
        text = barkeep("--bar", bar, "spec", "show", "Drift Fence").out
        other = tmp_path / "other.bar"
        barkeep("--bar", other, "--new", "bottles")
        assert barkeep("--bar", other, "spec", "add", write(text)).out == "Added Drift Fence.\n"

    def test_with_a_problem_nothing_is_added(self, barkeep, write, bar):
        before = bar.read_bytes()
        path = write(f"{SOUND}---\n{BROKEN}")
        said = barkeep("--bar", bar, "spec", "add", path).refusal.splitlines()
        assert said[0].startswith(f"{path}, line 11, column 1: Rye whiskey takes a volume")
        assert said[1].startswith(f"barkeep: {path}, line 12, column 6: no ingredient is called")
        assert bar.read_bytes() == before

    def test_a_name_that_is_taken_is_refused(self, barkeep, write, bar):
        text = SOUND.replace("Signal Post", "Drift Fence")
        said = barkeep("--bar", bar, "spec", "add", write(text)).refusal
        assert said == "There is already a spec called “Drift Fence”; choose another name."

    def test_an_empty_file_is_refused(self, barkeep, write, bar):
        path = write("\n")
        said = barkeep("--bar", bar, "spec", "add", path).refusal
        assert said == f"{path} cannot be used: there is no spec in it."
        assert barkeep("spec", "read", path).out == "0 specs, none with problems.\n"
        assert barkeep("--bar", bar, "undo").refusal == "There is nothing to undo."

    def test_a_riff_of_no_spec_is_refused(self, barkeep, write, bar):
        text = SOUND.replace("Buffer Stop", "Bufer Stop")
        said = barkeep("--bar", bar, "spec", "add", write(text)).refusal
        assert said.startswith("There is no spec called “Bufer Stop”. The nearest are Buffer Stop")

    def test_a_name_twice_in_a_file_is_located(self, barkeep, write, bar):
        path = write(f"{SOUND}---\n{SOUND}")
        said = barkeep("--bar", bar, "spec", "add", path).refusal
        assert said == (
            f"{path}, line 10, column 1: “Signal Post” is in this text twice; it is also on line 1"
        )

    @pytest.mark.parametrize("what", ["read", "add"])
    def test_help_says_what_parts_specs(self, barkeep, what, capsys):
        with pytest.raises(SystemExit):
            barkeep("spec", what, "--help")
        shown = " ".join(capsys.readouterr().out.split())
        assert "part specs with a line of --- or two empty lines" in shown

    def test_adding_is_undone(self, barkeep, write, bar):
        barkeep("--bar", bar, "spec", "add", write(SOUND))
        barkeep("--bar", bar, "undo")
        assert "no spec called" in barkeep("--bar", bar, "spec", "show", "Signal Post").refusal

    def test_spec_alone_is_a_usage_error(self, barkeep):
        with pytest.raises(SystemExit) as left:
            barkeep("spec")
        assert left.value.code == 2
