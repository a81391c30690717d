"""A shoot's drinks as they are meant, chosen, poured, repeated and looked for."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, datetime

import pytest

from barkeep.domain.bar.shoots import (
    ChosenPour,
    LoggedBottle,
    ServeCounts,
    Shoot,
    ShootDrink,
    ShootLog,
    as_written,
    choose,
    chosen_bottles,
    find_shoots,
    repeated,
    still_chosen,
)
from barkeep.domain.bar.snapshot import Settings, Snapshot
from barkeep.domain.shoots.drinks import as_poured, orders_of, spec_of, without_spec
from barkeep.domain.specs.spec import Line
from tests.application.conftest import plough, small_knowledge

TODAY = date(2026, 11, 21)
PLOUGH = replace(plough(), id=4)
INSTEAD = ChosenPour(0, "bourbon", 1.5, wanted="london-dry-gin")


@pytest.fixture
def bar():
    return Snapshot(small_knowledge(), TODAY, specs=(PLOUGH,))


def drink(*chosen, name="Snow Plough", spec_id=4):
    return ShootDrink(spec_id, name, ServeCounts(1, 2, 3), tuple(chosen))


def shoot(*drinks, theme="Night train", **more):
    return Shoot(1, theme, TODAY, drinks, **more)


def poured(each, bar):
    spec = as_poured(each, bar)
    return [(line.ingredient, line.quantity) for line in spec.lines]


def test_serves_are_tests_camera_and_tasting_together():
    assert ServeCounts(1, 2, 3).total == 6
    assert ServeCounts().total == 1


def test_a_spec_is_meant_by_its_id_and_a_classic_by_its_name(bar):
    renamed = drink(name="What it was called once")
    assert spec_of(renamed, bar) == PLOUGH
    assert spec_of(drink(name="signal daisy", spec_id=None), bar).classic
    assert spec_of(drink(spec_id=9), bar) is None  # the name is there, the spec is not
    assert spec_of(drink(name="Nothing", spec_id=None), bar) is None


def test_a_dash_of_a_shoot_is_the_bars_own(bar):
    line = Line("2 dashes bourbon", "bourbon", 2.0, None, "dash", 1.6)
    dashed = replace(PLOUGH, lines=(line,))
    other = replace(bar, specs=(dashed,), settings=Settings(dash_ml=0.5))
    assert poured(drink(), other) == [("bourbon", 1.0)]


def test_a_chosen_stand_in_is_poured_by_its_ratio(bar):
    assert poured(drink(), bar) == [("london-dry-gin", 60.0), ("lime-juice", 22.0)]
    assert poured(drink(INSTEAD), bar) == [("bourbon", 90.0), ("lime-juice", 22.0)]


def test_a_choice_stays_with_its_ingredient_when_the_spec_is_changed(bar):
    turned = replace(bar, specs=(replace(PLOUGH, lines=PLOUGH.lines[::-1]),))
    assert poured(drink(INSTEAD), turned) == [("lime-juice", 22.0), ("bourbon", 90.0)]
    moved = still_chosen(drink(INSTEAD), turned.specs[0])
    assert moved.chosen == (replace(INSTEAD, line=1),)


def test_a_choice_of_no_line_any_more_is_passed_over(bar):
    limes = replace(bar, specs=(replace(PLOUGH, lines=PLOUGH.lines[1:]),))
    assert poured(drink(INSTEAD), limes) == [("lime-juice", 22.0)]
    assert still_chosen(drink(INSTEAD), limes.specs[0]).chosen == ()
    by_place = ChosenPour(7, "bourbon")
    assert poured(drink(by_place), bar) == poured(drink(), bar)
    gone = replace(INSTEAD, ingredient="no-such-thing")
    assert poured(drink(gone), bar) == poured(drink(), bar)


def test_one_of_two_equal_lines_is_not_guessed(bar):
    lime, gin = PLOUGH.lines[1], PLOUGH.lines[0]
    twice = replace(bar, specs=(replace(PLOUGH, lines=(lime, gin, gin)),))
    assert poured(drink(INSTEAD), twice) == [
        ("lime-juice", 22.0),
        ("london-dry-gin", 60.0),
        ("london-dry-gin", 60.0),
    ]


def test_orders_are_those_planned_or_made_without_what_was_removed(bar):
    both = shoot(drink(spec_id=9, name="Gone"), drink())
    assert [(each.spec.name, each.serves) for each in orders_of(both, bar)] == [("Snow Plough", 6)]
    assert [each.serves for each in orders_of(both, bar, (2, 5))] == [5]
    assert without_spec(both, bar) == ("Gone",)


def test_one_line_has_one_choice():
    second = replace(INSTEAD, bottle_id=3)
    chosen = choose(choose(drink(), INSTEAD), second)
    assert chosen.chosen == (second,)
    assert chosen_bottles(shoot(chosen)) == (3,)
    assert as_written(chosen, 1) == chosen
    assert as_written(chosen, 0).chosen == ()


def test_a_repeated_shoot_starts_anew_and_chooses_no_bottle():
    log = ShootLog(datetime(2026, 11, 21, 18), (6,), ())
    done = shoot(drink(replace(INSTEAD, bottle_id=3)), log=log, state="logged", notes="Dim.")
    again = repeated(replace(done, ticked=frozenset({"tools"})), date(2026, 12, 24))
    assert again == Shoot(None, "Night train", date(2026, 12, 24), (drink(INSTEAD),), notes="Dim.")


def test_shoots_are_found_by_theme_drink_notes_state_day_and_bottle():
    bottle = LoggedBottle(5, "Brass Bell rum", "ml", 30.0, 0.0, 600.0)
    log = ShootLog(datetime(2026, 11, 21, 18), (1,), (bottle,))
    logged = shoot(drink(), log=log, state="logged")
    chosen = shoot(drink(replace(INSTEAD, bottle_id=3)), theme="Harbour", notes="At dusk.")
    both = (logged, chosen)
    titles = {3: "Copperbend bourbon"}
    for words, found in (
        ("", both),
        ("PLOUGH", both),
        ("night plough", (logged,)),
        ("brass", (logged,)),
        ("copperbend", (chosen,)),
        ("dusk", (chosen,)),
        ("logged 2026-11-21", (logged,)),
        ("night dusk", ()),
    ):
        assert find_shoots(both, words, titles) == found, words


def test_a_variance_is_expected_less_counted():
    bottle = LoggedBottle(5, "Rum", "ml", 30.0, 0.0, 600.0)
    assert bottle.variance is None
    assert replace(bottle, counted=570.0).variance == 30.0
