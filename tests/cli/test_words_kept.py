"""What a spec calls an ingredient comes back in every answer; a region names what nobody wrote."""

from __future__ import annotations

import json
import shutil
from dataclasses import replace
from pathlib import Path

import pytest

from barkeep.application.bar import Bar
from barkeep.domain.specs.spec import Line, Spec

OLD_BAR = Path(__file__).parent.parent / "reference" / "old_bars" / "schema_4.barkeep"
CIDER = """\
Signal Lamp
60 ml apple cider
2 oz Pellow & Rudge dry gin
1 tbsp caster sugar
4 oz club soda

Shake and strain into a coupe.
"""


@pytest.fixture
def ask(barkeep, bar, tmp_path):
    """Asks the sample bar, which has the drink above as well."""
    (tmp_path / "cider.txt").write_text(CIDER, encoding="utf-8")

    def run(*words, of=bar):
        return barkeep("--bar", of, *words)

    assert run("spec", "add", tmp_path / "cider.txt").status == 0
    return run


@pytest.fixture
def shoot(ask):
    """The drink, planned for a day."""
    ask("shoot", "plan", "Lamp night", "--on", "2031-01-10", "--drink", "Signal Lamp=1+2+0")
    return "Lamp night"


def only_words_of_the_writer(said):
    """Every name as it was written; the kinds only in brackets beside them."""
    for words, kind in (("apple cider", "cloudy apple juice"), ("club soda", "soda water")):
        assert words in said
        assert kind not in said.casefold().replace(f"{words} ({kind})", "")


def test_the_batch_sheet_says_what_the_spec_says(ask):
    said = ask("batch", "Signal Lamp", "--serves", "10").out
    only_words_of_the_writer(said)
    assert "apple cider (cloudy apple juice)" in said
    assert "Pellow & Rudge dry gin (London dry gin)" in said
    assert "Short of apple cider (cloudy apple juice): 600 ml needed, 0 ml there." in said


def test_the_batch_as_json_has_the_line_its_words_and_the_kind(ask):
    answer = ask("batch", "Signal Lamp", "--serves", "10", "--json").answer
    lines = [(each["as_written"], each["called"], each["ingredient"]) for each in answer["lines"]]
    assert lines == [
        ("60 ml apple cider", "apple cider", "Cloudy apple juice"),
        ("2 oz Pellow & Rudge dry gin", "Pellow & Rudge dry gin", "London dry gin"),
        ("1 tbsp caster sugar", "caster sugar", "Superfine sugar"),
        ("4 oz club soda", "club soda", "Soda water"),
    ]
    assert answer["short"][0]["as_written"] == "60 ml apple cider"


def test_two_lines_of_one_kind_are_both_named(ask, tmp_path):
    twice = (
        "Two Names\n30 ml club soda\n30 ml sparkling water\n30 ml lime juice\n\nBuild over ice.\n"
    )
    (tmp_path / "twice.txt").write_text(twice, encoding="utf-8")
    ask("spec", "add", tmp_path / "twice.txt")
    (water, _lime) = ask("batch", "Two Names", "--serves", "4", "--json").answer["lines"]
    assert water["called"] == "club soda and sparkling water"
    assert water["as_written"] == "30 ml club soda; 30 ml sparkling water"


def test_tonight_misses_what_was_written(ask):
    said = ask("tonight", "--all").out
    assert "Signal Lamp: no apple cider (cloudy apple juice)\n" in said
    drinks = ask("tonight", "--json").answer["drinks"]
    (drink,) = [each for each in drinks if each["spec"] == "Signal Lamp"]
    cider = drink["lines"][0]
    assert (cider["as_written"], cider["called"]) == ("60 ml apple cider", "apple cider")
    assert cider["why"].startswith("No apple cider in the bar")
    assert drink["missing"] == [cider["wanted"]] == ["Cloudy apple juice"]
    sugar = drink["lines"][2]
    assert sugar["why"] == "Caster sugar is made here from white sugar."


def test_an_analysis_names_what_it_is_unsure_of_as_the_spec_does(ask):
    answer = ask("spec", "analyse", "Signal Lamp", "--json").answer
    said = " ".join(answer["uncertain"])
    only = "No price is known for apple cider, so the cost is not"
    assert only in said and "cloudy apple juice" not in said


@pytest.mark.parametrize("form", ["text", "markdown", "html"])
def test_a_description_says_what_the_spec_says(ask, form):
    said = ask("publish", "Signal Lamp", "--as", form).out
    assert "apple cider" in said and "caster sugar" in said
    assert "cloudy" not in said.casefold() and "superfine" not in said.casefold()


@pytest.mark.parametrize("suffix", ["txt", "md", "jsonld", "json", "csv"])
def test_a_spec_that_goes_out_comes_back_with_its_words(ask, barkeep, tmp_path, suffix):
    out, other = tmp_path / f"lamp.{suffix}", tmp_path / "other.bar"
    assert ask("export", out, "Signal Lamp").status == 0
    assert barkeep("--bar", other, "--new", "import", out).status == 0
    (there,) = barkeep("--bar", other, "spec", "show", "Signal Lamp", "--json").answer["specs"]
    (here,) = ask("spec", "show", "Signal Lamp", "--json").answer["specs"]
    assert [each["called"] for each in there["lines"]] == [each["called"] for each in here["lines"]]
    assert [each["text"] for each in there["lines"]] == [each["text"] for each in here["lines"]]


def test_a_shoot_runs_out_of_what_was_written(ask, shoot):
    lacks = "Signal Lamp lacks 180 ml of apple cider (cloudy apple juice), for 3 of 3 serves."
    assert lacks in ask("shoot", "check", shoot).out
    (short,) = ask("shoot", "check", shoot, "--json").answer["short"]
    assert short["as_written"] == "60 ml apple cider"


def test_what_to_have_ready_and_to_buy_says_what_was_written(ask, shoot):
    said = ask("shoot", "show", shoot).out
    assert "Chill club soda." in said and "g of caster sugar from" in said
    assert "ml of apple cider from" in said
    assert "soda water" not in said and "cloudy" not in said
    bought = ask("buy", "--shoot", shoot, "--no-pars").out
    assert "180 ml of apple cider short for Lamp night’s Signal Lamp" in bought


def test_a_run_sheet_says_what_was_written(ask, shoot):
    said = ask("shoot", "show", shoot, "--run-sheet").out
    only_words_of_the_writer(said.replace("Teasel Weir Soda water", "what a label says"))


def test_what_is_bought_is_named_as_it_was_written_with_its_kind(ask, tmp_path):
    text = "Coal Hole\n60 ml heavy cream\n30 ml white rum\n\nShake with ice.\n"
    (tmp_path / "coal.txt").write_text(text, encoding="utf-8")
    ask("spec", "add", tmp_path / "coal.txt")
    ask("shoot", "plan", "Coal", "--on", "2031-01-10", "--drink", "Coal Hole=0+40+0")
    said = ask("buy", "--shoot", "Coal", "--no-pars").out
    assert "heavy cream (whipping cream)" in said
    items = ask("buy", "--shoot", "Coal", "--no-pars", "--json").answer["items"]
    (cream,) = [each for each in items if each["ingredient"] == "Whipping cream"]
    assert cream["called"] == ["heavy cream"]


class TestStated:
    """What a line asks of the bottle beyond its kind."""

    LINE = Line(
        *("60 ml gin, navy blue label", "london-dry-gin", 60.0, None, "ml", 60.0),
        called="dry gin",
        stated=("8 year", "from the north"),
    )

    @pytest.fixture
    def asked(self, ask, bar):
        """Tells the bar a spec that asks for something."""

        def tell(*stated):
            with Bar.open(bar) as opened:
                line = replace(self.LINE, stated=stated)
                opened.specs.add([Spec("Old Rails", (line,), "Stir with ice.", "stirred")])
            return ask

        return tell

    def test_no_answer_that_picks_a_bottle_passes_over_it(self, asked):
        ask = asked("8 year", "from the north")
        remark = "Dry gin: asks for 8 year and from the north; check the bottle, Pellow & Rudge "
        drinks = ask("tonight", "--json").answer["drinks"]
        (drink,) = [each for each in drinks if each["spec"] == "Old Rails"]
        assert any(each.startswith(remark) for each in drink["warnings"])
        assert f"! {remark}" in ask("tonight").out
        assert remark in ask("batch", "Old Rails", "--serves", "2").out
        ask("shoot", "plan", "Rails", "--on", "2031-01-10", "--drink", "Old Rails=0+2+0")
        assert remark in ask("shoot", "check", "Rails").out
        (asks,) = ask("shoot", "check", "Rails", "--json").answer["asks"]
        assert asks.startswith(remark)
        assert remark in ask("shoot", "show", "Rails", "--run-sheet").out

    def test_it_stands_beside_the_name(self, asked):
        said = asked("8 year")("batch", "Old Rails", "--serves", "2").out
        assert "dry gin (8 year)" in said

    def test_a_label_that_says_it_needs_no_remark(self, asked):
        ask = asked("Lamp Room", "Pellow & Rudge")
        assert "check the bottle" not in ask("batch", "Old Rails", "--serves", "2").out

    def test_it_is_on_the_shopping_list(self, asked):
        ask = asked("8 year")
        ask("shoot", "plan", "Rails", "--on", "2031-01-10", "--drink", "Old Rails=0+90+0")
        assert (
            "short for Rails’s Old Rails, which asks for 8 year"
            in ask("buy", "--shoot", "Rails", "--no-pars").out
        )

    def test_a_spec_shows_it(self, asked):
        (spec,) = asked("8 year")("spec", "show", "Old Rails", "--json").answer["specs"]
        assert (spec["lines"][0]["called"], spec["lines"][0]["stated"]) == ("dry gin", ["8 year"])


def test_a_bar_from_before_the_words_were_kept_says_them_too(barkeep, tmp_path):
    old = tmp_path / "old.barkeep"
    shutil.copyfile(OLD_BAR, old)
    said = barkeep("--bar", old, "batch", "Orchard Siding", "--serves", "4").out
    assert "apple cider (cloudy apple juice)" in said and "caster sugar" in said
    out = tmp_path / "out.json"
    barkeep("--bar", old, "publish", "Orchard Siding", "--as", "json", "--to", out)
    lines = json.loads(out.read_text(encoding="utf-8"))["specs"][0]["lines"]
    assert lines == ["60 ml apple cider", "2 oz Pellow & Rudge dry gin", "2 tsp caster sugar"]


class TestRegion:
    def test_it_names_what_nobody_wrote(self, ask):
        assert "region is now UK: United Kingdom and Ireland." in ask("setting", "region", "uk").out
        assert "Instead of caster sugar" in ask("stand-in", "superfine sugar").out
        assert "Caster sugar" in ask("ingredient", "list", "sugar").out
        ask("setting", "region", "US")
        assert "Instead of club soda" in ask("stand-in", "soda water").out
        assert "Instead of superfine sugar" in ask("stand-in", "caster sugar").out
        ask("undo")
        assert "Instead of soda water" in ask("stand-in", "club soda").out

    def test_what_was_written_stays(self, ask):
        ask("setting", "region", "US")
        said = ask("batch", "Signal Lamp", "--serves", "10").out
        assert "caster sugar (superfine sugar)" in said and "  apple cider\n" in said
        ask("setting", "region", "UK")
        said = ask("batch", "Signal Lamp", "--serves", "10").out
        assert "caster sugar\n" in said and "club soda (soda water)" in said

    def test_it_comes_from_the_system_until_it_is_chosen(self, ask, monkeypatch):
        monkeypatch.setenv("LANG", "en_AU.UTF-8")
        assert ask("setting", "--json").answer["settings"]["region"] == "AU"
        assert "Instead of caster sugar" in ask("stand-in", "superfine sugar").out
        ask("setting", "region", "none")
        assert "Instead of superfine sugar" in ask("stand-in", "superfine sugar").out
        ask("setting", "region", "system")
        assert "as this system is set, AU" in ask("setting", "region").out

    @pytest.mark.parametrize("system", ["C", "C.UTF-8", "POSIX", "de_DE.UTF-8", "en", ""])
    def test_a_system_of_no_known_region_leaves_the_names_as_they_are(
        self, ask, monkeypatch, system
    ):
        monkeypatch.setenv("LANG", system)
        assert "Instead of soda water" in ask("stand-in", "soda water").out

    def test_one_that_there_is_not_is_refused_with_those_there_are(self, ask):
        assert ask("setting", "region", "Mars").refusal == (
            "region cannot be “Mars”: it is UK, US, CA, AU, IT, none or system."
        )
