"""The bar's settings: what is kept, what is refused, and how they are said and read."""

from __future__ import annotations

import sqlite3
from contextlib import closing
from dataclasses import replace

import pytest

from barkeep.application.bar import Bar
from barkeep.application.knowledge import shipped
from barkeep.application.settings import SETTINGS, read_dash_ml, setting_named
from barkeep.domain.amounts.rounding import STYLES
from barkeep.domain.amounts.units import BarUnits
from barkeep.domain.bar.snapshot import Settings, Snapshot
from barkeep.domain.liquids.content import DEFAULT_COUNTRY, countries
from barkeep.domain.specs.trials import Scale
from barkeep.errors import InvalidField, UnknownName
from tests.worlds import TODAY

CHOSEN = Settings(
    "Lamp Room",
    "CHF",
    frozenset({"ice"}),
    "imp_oz",
    0.3,
    "cl",
    "Ireland",
    (Scale("Balance", 0, 10),),
    False,
)


def bar_with(settings: Settings) -> Snapshot:
    """A bar of nothing else."""
    return Snapshot(shipped(), TODAY, settings=settings)


def test_a_new_bar_has_us_ounces_and_dashes_from_a_bitters_bottle(bar):
    assert bar.snapshot.settings == Settings()
    assert bar.snapshot.settings.units == BarUnits("oz", 0.8)
    assert bar.snapshot.settings.country == DEFAULT_COUNTRY


def test_everything_that_is_chosen_is_kept_and_comes_back(bar, clock):
    changed = bar.settings.change(CHOSEN)
    assert changed.value == CHOSEN
    assert changed.changes == {"settings"}
    with Bar.open(bar.path, clock=clock) as again:
        assert again.snapshot.settings == CHOSEN
        assert again.snapshot.settings.units == BarUnits("imp_oz", 0.3)
    bar.undo()
    assert bar.snapshot.settings == Settings()
    bar.redo()
    assert bar.snapshot.settings == CHOSEN


def test_what_a_newer_barkeep_chose_besides_is_left_alone(bar):
    with closing(sqlite3.connect(bar.path)) as other, other:
        other.execute("INSERT INTO setting (key, value) VALUES ('trays', '\"two\"')")
    assert bar.settings.change(CHOSEN).value == CHOSEN
    with closing(sqlite3.connect(bar.path)) as other:
        kept = other.execute("SELECT value FROM setting WHERE key = 'trays'").fetchall()
    assert kept == [('"two"',)]


@pytest.mark.parametrize(
    ("changes", "said"),
    [
        ({"ounce": "ounce"}, "ounce cannot be “ounce”: it is the US or the imperial ounce"),
        ({"dash_ml": 0.04}, "dash cannot be “0.04 ml”: a dash is 0.05–2 ml"),
        ({"dash_ml": 2.1}, "dash cannot be “2.1 ml”: a dash is 0.05–2 ml"),
        ({"dash_ml": float("nan")}, "dash cannot be “nan ml”"),
        ({"shown_in": "pints"}, "shown in cannot be “pints”: it is as written, oz, ml, cl"),
        ({"country": "Nowhere"}, "country cannot be “Nowhere”: no standard drink of that"),
        ({"scales": ()}, "trials need at least one"),
        ({"scales": (Scale(" "),)}, "scales cannot be “1 to 5”: a scale needs a name"),
        ({"scales": (Scale("Nose"), Scale(" nose "))}, "“nose”: it is there twice"),
        ({"scales": (Scale("Nose", 2, 2),)}, "“Nose 2 to 2”: it runs between two different"),
        ({"scales": (Scale("Nose", 2, float("nan")),)}, "it runs between two different"),
        ({"country": "Irland"}, "the nearest is Ireland"),
    ],
)
def test_what_cannot_be_chosen_is_refused_and_nothing_is_written(bar, changes, said):
    with pytest.raises(InvalidField) as refused:
        bar.settings.change(replace(Settings(), **changes))
    assert said in str(refused.value)
    assert bar.snapshot.settings == Settings()


def test_every_country_and_every_style_can_be_chosen(bar):
    for country in countries():
        assert bar.settings.change(replace(Settings(), country=country)).value.country == country
    for style in STYLES:
        assert bar.settings.change(replace(Settings(), shown_in=style)).value.shown_in == style


class TestWords:
    @pytest.mark.parametrize(
        ("key", "text", "changes"),
        [
            ("name", "Lamp Room", {"name": "Lamp Room"}),
            ("currency", "chf", {"currency": "CHF"}),
            ("ounce", "imperial", {"ounce": "imp_oz"}),
            ("ounce", "UK", {"ounce": "imp_oz"}),
            ("ounce", "imp oz", {"ounce": "imp_oz"}),
            ("ounce", "imp_oz", {"ounce": "imp_oz"}),
            ("ounce", "us", {"ounce": "oz"}),
            ("Ounce", "US oz", {"ounce": "oz"}),
            ("ounce", "oz", {"ounce": "oz"}),
            ("dash", "0.3", {"dash_ml": 0.3}),
            ("dash", "0,3 ml", {"dash_ml": 0.3}),
            ("shown-in", "as-written", {"shown_in": "as_written"}),
            ("shown-in", "as written", {"shown_in": "as_written"}),
            ("shown_in", "as_written", {"shown_in": "as_written"}),
            ("shown-in", "ML", {"shown_in": "ml"}),
            ("shown-in", "centilitres", {"shown_in": "cl"}),
            ("shown-in", "parts", {"shown_in": "parts"}),
            ("country", " ireland ", {"country": "Ireland"}),
            ("country", "UK", {"country": "United Kingdom"}),
            ("country", "Great Britain", {"country": "United Kingdom"}),
            ("country", "America", {"country": "United States"}),
            ("region", "uk", {"region": "UK"}),
            ("region", "Ireland", {"region": "UK"}),
            ("region", " us ", {"region": "US"}),
            ("region", "New Zealand", {"region": "AU"}),
            ("region", "none", {"region": "none"}),
            ("region", "System", {"region": ""}),
            ("classics", "no", {"classics": False}),
            ("classics", "Off", {"classics": False}),
            ("classics", "yes", {"classics": True}),
            ("scales", "Nose, Finish 0-10", {"scales": (Scale("Nose"), Scale("Finish", 0, 10))}),
        ],
    )
    def test_a_setting_is_read_as_people_write_it(self, key, text, changes):
        before = replace(CHOSEN, ounce="oz", dash_ml=1.0, shown_in="oz")
        assert setting_named(key).read(bar_with(before), text) == replace(before, **changes)

    def test_each_says_what_it_is(self):
        said = {each.key: each.say(bar_with(CHOSEN)) for each in SETTINGS}
        assert said == {
            "name": "Lamp Room",
            "currency": "CHF",
            "ounce": "imperial fluid ounce, 28.4 ml",
            "dash": "0.3 ml",
            "shown-in": "centilitres",
            "country": "Ireland",
            "region": "as this system is set, none",
            "classics": "no",
            "scales": "Balance 0 to 10",
            "measure": "none of your own",
            "house": "none chosen",
            "keeps": "as barkeep comes",
            "backups": "beside the bar",
        }
        assert all(each.hint().endswith(".") for each in SETTINGS)

    def test_a_setting_that_there_is_not_names_the_nearest(self):
        with pytest.raises(UnknownName, match="The nearest is ounce"):
            setting_named("ounces")

    @pytest.mark.parametrize("text", ["two", "", "2 dashes", "0.3-0.5 ml", "3 g", "-1"])
    def test_what_is_no_dash_is_refused(self, text):
        with pytest.raises(InvalidField, match="write it in ml, such as"):
            read_dash_ml(text)

    def test_a_dash_may_be_written_in_any_volume(self):
        assert read_dash_ml("1/6 tsp") == pytest.approx(0.8215, abs=1e-4)

    @pytest.mark.parametrize(("key", "text"), [("ounce", "metric"), ("shown-in", "pints")])
    def test_a_choice_that_there_is_not_says_what_there_is(self, key, text):
        with pytest.raises(InvalidField, match=f"“{text}”: it is "):
            setting_named(key).read(bar_with(Settings()), text)
