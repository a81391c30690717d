"""`barkeep setting`, and what follows from it on the command line."""

from __future__ import annotations

import locale

import pytest

KEYS = [
    *("name", "currency", "ounce", "dash_ml", "shown_in", "country", "region"),
    *("classics", "scales"),
    *("measures", "house", "keeps", "backups"),
]

TWO_OUNCES = "Milepost\n2 oz London dry gin\n2 dashes orange bitters\n\nStir.\n"


@pytest.fixture
def spec_file(tmp_path):
    """A file with one spec."""
    file = tmp_path / "milepost.txt"
    file.write_text(TWO_OUNCES, encoding="utf-8")
    return file


class TestSettings:
    def test_all_are_listed(self, barkeep, bar):
        listed = barkeep("--bar", bar, "setting")
        assert listed.status == 0
        assert [row.split()[0] for row in listed.out.splitlines()[2:]] == [
            *("name", "currency", "ounce", "dash", "shown-in", "country", "region"),
            *("classics", "scales"),
            *("measure", "house", "keeps", "backups"),
        ]
        assert "US fluid ounce, 29.6 ml" in listed.out

    def test_as_json_under_stable_keys(self, barkeep, bar):
        settings = barkeep("--bar", bar, "setting", "--json").answer["settings"]
        assert list(settings) == KEYS
        assert (settings["ounce"], settings["dash_ml"]) == ("us", 0.8)
        assert (settings["shown_in"], settings["country"]) == ("as-written", "United States")

    def test_json_gives_values_in_words_that_set_them_again(self, barkeep, bar):
        for key, name, value in (("ounce", "ounce", "imperial"), ("shown-in", "shown_in", "cl")):
            answer = barkeep("--bar", bar, "setting", key, value, "--json").answer
            assert answer["settings"][name] == value
        kept = barkeep("--bar", bar, "setting", "shown-in", "as-written", "--json").answer
        assert kept["settings"]["shown_in"] == "as-written"

    def test_a_country_by_another_name_and_all_there_are(self, barkeep, bar):
        said = barkeep("--bar", bar, "setting", "country", "UK").out
        assert said == "country is now United Kingdom.\n"
        listed = barkeep("--bar", bar, "setting", "country").out
        assert "Ireland" in listed and "Argentina" in listed and listed.count("\n") == 1

    def test_one_is_said_with_what_it_is_for(self, barkeep, bar):
        said = barkeep("--bar", bar, "setting", "dash").out
        assert said.startswith("dash is 0.8 ml. ")
        assert "Japanese-style dasher" in said

    def test_one_is_changed_kept_and_undone(self, barkeep, bar):
        changed = barkeep("--bar", bar, "setting", "dash", "0,3", "ml")
        assert changed.out == "dash is now 0.3 ml.\n"
        assert barkeep("--bar", bar, "setting", "--json").answer["settings"]["dash_ml"] == 0.3
        again = barkeep("--bar", bar, "setting", "dash", "0.3")
        assert again.out == "dash was already 0.3 ml.\n"
        barkeep("--bar", bar, "undo")
        assert barkeep("--bar", bar, "setting", "--json").answer["settings"]["dash_ml"] == 0.8

    def test_the_classics_may_be_left_out_and_come_back(self, barkeep, bar):
        whole = barkeep("--bar", bar, "spec", "list", "--json").answer["specs"]
        assert barkeep("--bar", bar, "setting", "classics", "no").out == "classics is now no.\n"
        own = barkeep("--bar", bar, "spec", "list", "--json").answer["specs"]
        assert 0 < len(own) < len(whole)
        drinks = barkeep("--bar", bar, "tonight", "--json").answer["drinks"]
        assert {each["spec"] for each in drinks} == {each["name"] for each in own}
        barkeep("--bar", bar, "undo")
        assert barkeep("--bar", bar, "spec", "list", "--json").answer["specs"] == whole

    def test_a_name_of_several_words_needs_no_quotes(self, barkeep, bar):
        answer = barkeep("--bar", bar, "setting", "name", "Lamp", "Room", "--json").answer
        assert answer["settings"]["name"] == "Lamp Room"

    @pytest.mark.parametrize(
        ("written", "said"),
        [
            (("dash", "5"), "dash cannot be “5 ml”: a dash is 0.05–2 ml."),
            (("dash", "two"), "dash cannot be “two”: write it in ml, such as 0.8 ml."),
            (("ounce", "metric"), "ounce cannot be “metric”: it is us or imperial."),
            (("shown-in", "pints"), "it is as-written, oz, ml, cl or parts."),
            (("country", "Qqqq"), "no standard drink of that country is known."),
            (("country", "Grate", "Britain"), "the nearest is United Kingdom."),
            (("currency", "euro"), "three capital letters"),
            (("ounces",), "There is no setting called “ounces”."),
        ],
    )
    def test_what_cannot_be_is_one_clear_sentence(self, barkeep, bar, written, said):
        assert said in barkeep("--bar", bar, "setting", *written).refusal


class TestOunces:
    def test_a_spec_is_read_in_the_bars_ounces_and_keeps_them(self, barkeep, bar, spec_file):
        barkeep("--bar", bar, "setting", "ounce", "imperial")
        read = barkeep("--bar", bar, "spec", "read", spec_file, "--json").answer["specs"]
        assert read[0]["lines"][0]["unit"] == "imp_oz"
        assert "  2 oz London dry gin" in barkeep("--bar", bar, "spec", "read", spec_file).out
        barkeep("--bar", bar, "spec", "add", spec_file)
        assert barkeep("--bar", bar, "spec", "show", "milepost").out == TWO_OUNCES
        barkeep("--bar", bar, "setting", "ounce", "us")
        shown = barkeep("--bar", bar, "spec", "show", "milepost")
        assert "\n2 imp oz London dry gin\n" in shown.out

    def test_a_level_is_counted_in_the_bars_ounces(self, barkeep, bar):
        (some, *_) = [
            each
            for each in barkeep("--bar", bar, "bottles", "--json").answer["bottles"]
            if each["level_ml"] and each["size_ml"] >= 700
        ]
        us = barkeep("--bar", bar, "count", f"#{some['id']}", "10 oz", "--json").answer
        assert us["counted_ml"] == 295.74
        barkeep("--bar", bar, "setting", "ounce", "imperial")
        imperial = barkeep("--bar", bar, "count", f"#{some['id']}", "10 oz", "--json").answer
        assert imperial["counted_ml"] == 284.13


class TestShownIn:
    def test_a_spec_is_shown_as_the_bar_likes_with_what_is_written_beside(self, barkeep, bar):
        written = barkeep("--bar", bar, "spec", "show", "Mojito").out
        assert "\n2 oz white rum\n" in written
        barkeep("--bar", bar, "setting", "shown-in", "ml")
        shown = barkeep("--bar", bar, "spec", "show", "Mojito").out.splitlines()
        assert shown[1] == "60 ml white rum       (written: 2 oz white rum)"
        assert shown[2] == "22.5 ml lime juice    (written: 3/4 oz lime juice)"
        assert "8 mint leaves" in shown
        again = barkeep("--bar", bar, "spec", "show", "Mojito", "--in", "as-written").out
        assert again == written

    def test_the_other_ounces_are_said_where_they_are_written(self, barkeep, bar, spec_file):
        barkeep("--bar", bar, "setting", "ounce", "imperial")
        barkeep("--bar", bar, "spec", "add", spec_file)
        barkeep("--bar", bar, "setting", "ounce", "us")
        shown = barkeep("--bar", bar, "spec", "show", "milepost", "--in", "oz").out
        assert "(written: 2 imp oz London dry gin)" in shown

    def test_parts_say_how_large_one_is_or_why_there_are_none(self, barkeep, bar):
        shown = barkeep("--bar", bar, "spec", "show", "Mojito", "--in", "parts").out
        assert shown.endswith("\n\n1 part = 1 oz.\n")
        shown = barkeep("--bar", bar, "spec", "show", "Old Fashioned", "--in", "parts").out
        assert "\n\nNot shown in parts: " in shown
        assert "1 part" not in barkeep("--bar", bar, "spec", "show", "Mojito", "--in", "ml").out

    @pytest.mark.parametrize(
        ("style", "amount"), [("oz", "2 oz"), ("ml", "60 ml"), ("cl", "6 cl"), ("parts", "2 parts")]
    )
    def test_once_it_is_asked_for(self, barkeep, bar, style, amount):
        shown = barkeep("--bar", bar, "spec", "show", "Mojito", "--in", style)
        assert shown.out.splitlines()[1].startswith(f"{amount} white rum")
        (spec,) = barkeep("--bar", bar, "spec", "show", "Mojito", "--in", style, "--json").answer[
            "specs"
        ]
        assert spec["lines"][0]["shown"] == amount
        assert spec["lines"][0]["text"] == "2 oz white rum"

    def test_what_there_is_not_is_a_usage_error(self, barkeep, bar, capsys):
        with pytest.raises(SystemExit) as ended:
            barkeep("--bar", bar, "spec", "show", "Mojito", "--in", "pints")
        assert ended.value.code == 2
        assert "“pints” is none of as-written, oz, ml, cl, parts" in capsys.readouterr().err


class TestDecimalMarks:
    @pytest.fixture
    def comma(self, monkeypatch):
        """A system whose locale writes a decimal comma; the C locale has the point."""
        chosen = []
        monkeypatch.setattr(locale, "setlocale", lambda _what, which=None: chosen.append(which))
        monkeypatch.setattr(
            locale, "localeconv", lambda: {"decimal_point": "." if chosen[-1] == "C" else ","}
        )

    def test_a_person_reads_the_users_mark_and_a_program_the_point(self, barkeep, bar, comma):
        shown = barkeep("--bar", bar, "spec", "show", "Mojito", "--in", "cl")
        assert "2,25 cl lime juice" in shown.out
        answer = barkeep("--bar", bar, "spec", "show", "Mojito", "--in", "cl", "--json").answer
        assert answer["specs"][0]["lines"][1]["shown"] == "2.25 cl"
        assert "dash is 0,8 ml." in barkeep("--bar", bar, "setting", "dash").out


def test_a_dasher_says_how_many_of_its_dashes(barkeep, bar):
    barkeep("--bar", bar, "setting", "dash", "0.8")
    drinks = barkeep("--bar", bar, "tonight", "--json").answer["drinks"]
    lines = [
        (drink["spec"], line)
        for drink in drinks
        if drink["verdict"] == "ready"
        for line in drink["lines"]
        if line["wanted"] == "Orange bitters" and line["closeness"] == 1
    ]
    name, line = lines[0]
    barkeep("--bar", bar, "dasher", line["bottle"], "0.2", "ml")
    (drink,) = [
        each
        for each in barkeep("--bar", bar, "tonight", "--json").answer["drinks"]
        if each["spec"] == name
    ]
    (poured,) = [each for each in drink["lines"] if each["wanted"] == "Orange bitters"]
    assert "from this dasher instead of" in poured["why"]
    shown = barkeep("--bar", bar, "tonight").out
    assert "Orange bitters: pour " in shown


LADLED = "Milepost\n1 small ladle London dry gin\n2 thimbles lime juice\n\nShake.\n"


class TestOwnMeasures:
    @pytest.fixture
    def set_measure(self, barkeep, bar):
        """Set, change or take away own measures."""
        return lambda text: barkeep("--bar", bar, "setting", "measure", text)

    @pytest.fixture
    def read_lines(self, barkeep, bar, tmp_path):
        """A spec of these lines, as this bar reads it."""

        def read(text: str):
            file = tmp_path / "read.txt"
            file.write_text(f"Drink\n{text}\n", encoding="utf-8")
            (spec,) = barkeep("--bar", bar, "spec", "read", file, "--json").answer["specs"]
            return spec

        return read

    @pytest.fixture
    def shown(self, barkeep, bar):
        """The lines of a spec as they are shown."""
        return lambda: barkeep("--bar", bar, "spec", "show", "Milepost").out.splitlines()[1:3]

    @pytest.fixture
    def milepost(self, barkeep, bar, set_measure, tmp_path):
        """A spec in two measures of the owner's."""
        set_measure("small ladle = 1.5 oz; thimble = 10 ml")
        file = tmp_path / "milepost.txt"
        file.write_text(LADLED, encoding="utf-8")
        assert barkeep("--bar", bar, "spec", "add", file).status == 0

    def test_several_are_set_listed_and_taken_away(self, barkeep, bar, set_measure):
        assert set_measure("Small  Ladle=1.5 oz").out == "measure is now small ladle = 1 ½ oz.\n"
        said = set_measure("thimble = 10 ml; jug = 2 small ladles").out
        assert said == "measure is now jug = 88.7 ml; small ladle = 1 ½ oz; thimble = 10 ml.\n"
        assert "jug = 88.7 ml; small ladle" in barkeep("--bar", bar, "setting").out
        assert set_measure("jug=; thimble=").out == "measure is now small ladle = 1 ½ oz.\n"
        answer = barkeep("--bar", bar, "setting", "--json").answer["settings"]["measures"]
        assert answer == [
            {"name": "small ladle", "amount": 1.5, "unit": "oz", "volume_ml": 44.36029434375}
        ]
        assert barkeep("--bar", bar, "undo").status == 0
        assert "thimble = 10 ml" in barkeep("--bar", bar, "setting", "measure").out

    def test_an_ounce_in_one_stays_that_ounce(self, barkeep, bar, set_measure):
        set_measure("small ladle=1.5 oz")
        barkeep("--bar", bar, "setting", "ounce", "imperial")
        said = barkeep("--bar", bar, "setting", "measure").out
        assert said.startswith("measure is small ladle = 1 ½ US oz. ")

    @pytest.mark.parametrize(
        ("text", "said"),
        [
            ("oz = 30 ml", "cannot be “oz”: it is a unit already"),
            ("Tea spoons = 5 ml", "cannot be “tea spoons”: it is a unit already"),
            ("hl = 2 ml", "cannot be “hl”: it is a unit already"),
            ("ladle = 30 g", "“30 g” is a weight, and a measure holds a volume"),
            ("ladle = 3", "“3” is a number of pieces, and a measure holds a volume"),
            ("ladle = some", "write a name, an equals sign and what it holds"),
            ("ladle", "write a name, an equals sign and what it holds"),
            ("ladle = -2 oz", "write a name, an equals sign and what it holds"),
            ("ladle = 1-2 oz", "it holds one volume, not a range"),
            ("ladle = 0 ml", "it holds more than 0 and up to 5000 ml"),
            ("ladle = 6 l", "it holds more than 0 and up to 5000 ml"),
            ("ladle 2 = 6 ml", "its name is one to three words of letters"),
            (" = 6 ml", "its name is one to three words of letters"),
            ("blood = 6 ml", "Blood orange juice begins with it"),
            ("large = 60 ml", "it would be read as part of an amount"),
            ("half cup = 60 ml", "it would be read as part of an amount"),
            ("bottle = 700 ml", "it is a unit already"),
            ("ladle = 1 oz; Ladle = 2 oz", "cannot be “ladle”: it is there twice"),
            ("ladle =", "there are no own measures to take away"),
        ],
    )
    def test_what_cannot_be_one_is_refused_in_a_sentence(self, barkeep, bar, text, said):
        refused = barkeep("--bar", bar, "setting", "measure", text)
        assert (refused.status, refused.out) == (1, "")
        assert said in refused.err
        assert barkeep("--bar", bar, "setting", "--json").answer["settings"]["measures"] == []

    def test_they_are_understood_in_specs_counts_and_batches(
        self, barkeep, bar, milepost, set_measure, shown
    ):
        assert shown() == ["1 small ladle London dry gin", "2 thimbles lime juice"]
        analysed = barkeep("--bar", bar, "spec", "analyse", "Milepost", "--json").answer
        assert analysed["start_volume_ml"] == pytest.approx(44.36 + 20)
        counted = barkeep("--bar", bar, "count", "1", "2 small ladles", "--json").answer
        assert counted["counted_ml"] == 88.72
        batch = ("batch", "Milepost", "--from", "London dry gin=4 small ladles", "--json")
        assert barkeep("--bar", bar, *batch).answer["serves"] == pytest.approx(4.0)

    def test_a_spec_keeps_what_it_came_to_when_one_is_changed(
        self, barkeep, bar, milepost, set_measure, shown
    ):
        assert set_measure("small ladle = 2 oz").out == (
            "measure is now small ladle = 2 oz; thimble = 10 ml. "
            "Milepost keeps what its lines came to when they were written.\n"
        )
        assert shown()[0] == "44.4 ml London dry gin, 1 small ladle when written"
        analysed = barkeep("--bar", bar, "spec", "analyse", "Milepost", "--json").answer
        assert analysed["start_volume_ml"] == pytest.approx(44.36 + 20)
        set_measure("small ladle = 1.5 oz")
        assert shown()[0] == "1 small ladle London dry gin"

    def test_and_when_one_is_taken_away(self, barkeep, bar, milepost, set_measure, shown):
        said = set_measure("small ladle =; thimble =").out
        assert said == (
            "measure is now none of your own. "
            "Milepost keeps what its lines came to when they were written.\n"
        )
        assert shown() == [
            "44.4 ml London dry gin, 1 small ladle when written",
            "20 ml lime juice, 2 thimbles when written",
        ]
        refused = barkeep("--bar", bar, "count", "1", "2 thimbles")
        assert refused.status == 1
        assert "“2 thimbles” cannot be read as an amount" in refused.err

    def test_shown_in_millilitres_a_line_says_how_it_is_written(
        self, barkeep, bar, milepost, shown
    ):
        barkeep("--bar", bar, "setting", "shown-in", "ml")
        assert shown()[1].startswith("20 ml lime juice")
        assert shown()[1].endswith("(written: 2 thimbles lime juice)")

    @pytest.mark.parametrize(
        ("line", "read"),
        [
            ("a small ladle gin", (1.0, "small ladle")),
            ("small ladle gin", (1.0, "small ladle")),
            ("half a small ladle of gin", (0.5, "small ladle")),
            ("ladle gin", (1.0, "ladle")),
            ("2 ladles gin", (2.0, "ladle")),
        ],
    )
    def test_the_longest_name_wins(self, read_lines, set_measure, line, read):
        set_measure("ladle = 45 ml; small ladle = 2 oz")
        spec = read_lines(line)
        assert spec["problems"] == []
        assert [(each["amount"], each["unit"]) for each in spec["lines"]] == [read]

    @pytest.mark.parametrize("line", ["1 large ladle gin", "2 big ladles gin"])
    def test_another_size_of_one_is_asked_about(self, read_lines, set_measure, line):
        set_measure("ladle = 45 ml")
        spec = read_lines(line)
        assert "is no unit that is known" in spec["problems"][0]["message"]

    def test_the_plural_of_one_is_the_same(self, set_measure):
        set_measure("small ladle = 2 oz")
        refused = set_measure("small ladles = 3 oz")
        assert refused.status == 1
        assert "“small ladle” is there already, and it would be read as that" in refused.err


class TestUndoByName:
    def test_a_step_that_is_named_is_undone_where_it_is_next(self, barkeep, bar):
        barkeep("--bar", bar, "setting", "currency", "SEK")
        assert barkeep("--bar", bar, "undo", "Change", "settings").out == (
            "Undone: Change settings.\n"
        )
        done = barkeep("--bar", bar, "redo", "Change settings", "--json").answer
        assert done == {"redone": "Change settings"}

    def test_another_step_than_the_named_one_stays(self, barkeep, bar):
        barkeep("--bar", bar, "setting", "currency", "SEK")
        assert barkeep("--bar", bar, "undo", "Count gin").refusal == (
            "“Count gin” is not the next step to undo, so nothing was changed: "
            "undo now means “Change settings”."
        )
        assert barkeep("--bar", bar, "redo", "Count gin").refusal == (
            "“Count gin” is not the next step to redo, so nothing was changed: there is nothing."
        )
        settings = barkeep("--bar", bar, "setting", "--json").answer["settings"]
        assert settings["currency"] == "SEK"
