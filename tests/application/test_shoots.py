"""Shoots: written down, changed, ticked, logged; levels and ledger are right to the drop."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, time, timedelta

import pytest

from barkeep.application.shoots import AlreadyLogged, NotFilmedYet, SpecGone
from barkeep.domain.bar.shoots import ChosenPour, ServeCounts, Shoot, ShootDrink
from barkeep.domain.bottles.bottle import Label
from barkeep.domain.bottles.levels import MeasuredLevel
from barkeep.domain.shoots.drinks import as_poured, without_spec
from barkeep.domain.shoots.log import LogSheet, as_planned, variances, would_be_logged
from barkeep.errors import InvalidField, LevelAboveSize, NegativeAmount, NotEnoughLeft, UnknownName
from tests.application.conftest import NOON, plough

TODAY = NOON.date()


@pytest.fixture
def shelf(bar):
    """A bottle of London dry gin, one of bourbon and one of lime juice, all full."""
    drafts = (
        Label("London dry gin", "Hollow Lamp", "london-dry-gin", 700.0, abv_percent=43.0),
        Label("Bourbon", "Hollow Lamp", "bourbon", 700.0),
        Label("Lime juice", "", "lime-juice", 500.0),
    )
    added = [bar.inventory.receive_new(each).value for each in drafts]
    return {each.ingredient: each.id for each in added}


@pytest.fixture
def spec(bar):
    return bar.specs.add([plough()]).value[0]


def drink(spec, serves=(1, 2, 0), *chosen):
    return ShootDrink(spec.id, spec.name, ServeCounts(*serves), chosen)


@pytest.fixture
def shoot(bar, spec, shelf):
    """Three serves of one drink, today."""
    return bar.shoots.add(Shoot(None, "Night train", TODAY, (drink(spec),))).value


def levels(bar):
    return {each.ingredient: each.level.amount for each in bar.snapshot.bottles}


def ledger(bar, bottle_id):
    return [(entry.kind, entry.amount) for entry, _level in bar.inventory.history(bottle_id)]


FULL = {"london-dry-gin": 700.0, "bourbon": 700.0, "lime-juice": 500.0}
POURED = {"london-dry-gin": 520.0, "bourbon": 700.0, "lime-juice": 434.0}


def test_a_shoot_is_written_down_kept_undone_and_redone(bar, spec, reopen):
    given = Shoot(
        None,
        " Night   train ",
        TODAY,
        (drink(spec), ShootDrink(None, "signal daisy")),
        "planned",
        time(18, 30),
        " Dim. ",
        frozenset({"tools"}),
    )
    done = bar.shoots.add(given)
    daisy = ShootDrink(None, "Signal Daisy")
    kept = replace(given, id=done.value.id, theme="Night train", notes="Dim.")
    kept = replace(kept, drinks=(drink(spec), daisy))
    assert done.value == kept and done.changes == {"shoots"}
    assert done.label == "Add shoot Night train"
    assert bar.snapshot.shoots == (kept,) == reopen().snapshot.shoots
    bar.undo()
    assert bar.snapshot.shoots == ()
    bar.redo()
    assert bar.snapshot.shoots == (kept,)


def test_shoots_are_read_the_latest_first(bar):
    days = [TODAY + timedelta(days=number) for number in (0, 5, -5)]
    for on in days:
        bar.shoots.add(Shoot(None, "Idea", on))
    assert [each.on for each in bar.snapshot.shoots] == sorted(days, reverse=True)


def test_a_shoot_is_changed_moved_ticked_repeated_and_removed(bar, shoot):
    changed = bar.shoots.replace(replace(shoot, theme="Mail train", drinks=())).value
    assert (changed.theme, changed.drinks) == ("Mail train", ())
    assert bar.undo_label == "Change shoot Mail train"
    bar.undo()
    assert bar.snapshot.shoots == (shoot,)
    assert bar.shoots.move(shoot.id, "filmed").value.state == "filmed"
    assert bar.shoots.tick(shoot.id, "tools").value.ticked == {"tools"}
    assert bar.undo_label == "Tick a step of Night train"
    assert bar.shoots.tick(shoot.id, "tools", done=False).value.ticked == frozenset()
    again = bar.shoots.repeat(shoot.id).value
    assert (again.on, again.state, again.drinks) == (TODAY, "idea", shoot.drinks)
    assert bar.shoots.repeat(shoot.id, date(2027, 1, 2)).value.on == date(2027, 1, 2)
    before = bar.snapshot.shoots
    removed = bar.shoots.remove(shoot.id)
    assert removed.label == "Remove shoot Night train"
    assert shoot.id not in {each.id for each in bar.snapshot.shoots}
    bar.undo()
    assert bar.snapshot.shoots == before


BAD = {
    "theme": {"theme": "  "},
    "state": {"state": "cut"},
    "logged by hand": {"state": "logged"},
    "tests": {"serves": (-1, 1, 0)},
    "camera": {"serves": (0, 201, 0)},
    "ratio": {"chosen": (ChosenPour(0, "bourbon", 0.0),)},
    "twice": {"twice": True},
}


@pytest.mark.parametrize("what", BAD)
def test_what_makes_no_sense_is_refused_and_nothing_is_written(bar, shoot, spec, what):
    bad = dict(BAD[what])
    one = drink(spec, bad.pop("serves", (0, 1, 0)), *bad.pop("chosen", ()))
    drinks = (one, one) if bad.pop("twice", False) else (one,)
    with pytest.raises(InvalidField):
        bar.shoots.replace(replace(shoot, drinks=drinks, **bad))
    assert bar.snapshot.shoots == (shoot,)
    if what != "logged by hand":
        with pytest.raises(InvalidField):
            bar.shoots.add(replace(shoot, id=None, drinks=drinks, **bad))
        assert bar.snapshot.shoots == (shoot,)


def test_what_is_not_there_is_refused(bar, shoot, spec):
    nowhere = replace(shoot, id=99)
    for refused in (
        lambda: bar.shoots.replace(nowhere),
        lambda: bar.shoots.remove(99),
        lambda: bar.shoots.repeat(99),
        lambda: bar.shoots.move(99, "idea"),
        lambda: bar.shoots.tick(99, "tools"),
        lambda: bar.shoots.log(99, LogSheet((1,))),
        lambda: bar.shoots.add(Shoot(None, "A", TODAY, (ShootDrink(None, "Nothing"),))),
        lambda: bar.shoots.add(
            Shoot(None, "A", TODAY, (drink(spec, (0, 1, 0), ChosenPour(0, "no-such")),))
        ),
    ):
        with pytest.raises(UnknownName):
            refused()
    assert bar.snapshot.shoots == (shoot,)


def test_a_log_pours_spills_and_counts_in_one_step(bar, shoot, shelf):
    gin, lime = shelf["london-dry-gin"], shelf["lime-juice"]
    sheet = LogSheet((4,), {lime: 12.0}, {gin: MeasuredLevel(430.0, "weight", 3.0)})
    expected = would_be_logged(shoot, bar.snapshot, sheet)
    done = bar.shoots.log(shoot.id, sheet)
    assert done.changes == {"bottles", "shoots"} and done.label == "Log shoot Night train"
    log = done.value.log
    assert (done.value.state, log.made, log.at) == ("logged", (4,), NOON)
    found = {each.bottle_id: each for each in log.bottles}
    assert set(found) == {gin, lime}
    assert (found[gin].poured, found[gin].expected, found[gin].counted) == (240.0, 460.0, 430.0)
    assert found[gin].variance == 30.0
    assert (found[lime].poured, found[lime].spilled, found[lime].expected) == (88.0, 12.0, 400.0)
    assert found[lime].variance is None
    assert [each.expected for each in expected] == [each.expected for each in log.bottles]
    assert [each.sigma for each in expected] == pytest.approx([each.sigma for each in log.bottles])
    assert levels(bar) == {**FULL, "london-dry-gin": 430.0, "lime-juice": 400.0}
    assert ledger(bar, gin)[-2:] == [("pour", 240.0), ("count", 430.0)]
    assert ledger(bar, lime)[-2:] == [("pour", 88.0), ("waste", 12.0)]


def test_levels_and_ledger_are_exact_after_log_undo_redo_and_log_again(bar, shoot, shelf, reopen):
    gin = shelf["london-dry-gin"]
    assert levels(bar) == FULL
    received = ledger(bar, gin)
    logged = bar.shoots.log(shoot.id, as_planned(shoot)).value
    assert levels(bar) == POURED
    assert ledger(bar, gin) == [*received, ("pour", 180.0)]
    bar.undo()
    assert levels(bar) == FULL and bar.snapshot.shoots == (shoot,)
    assert ledger(bar, gin) == received
    bar.redo()
    assert levels(bar) == POURED and bar.snapshot.shoots == (logged,)
    assert ledger(bar, gin) == [*received, ("pour", 180.0)]
    bar.undo()
    again = bar.shoots.log(shoot.id, LogSheet((1,), {}, {gin: MeasuredLevel(640.0, "volume", 5.0)}))
    assert levels(bar) == {**FULL, "london-dry-gin": 640.0, "lime-juice": 478.0}
    (bottle,) = (each for each in again.value.log.bottles if each.bottle_id == gin)
    assert (bottle.expected, bottle.variance) == (640.0, 0.0)
    assert levels(reopen()) == levels(bar)
    bar.undo()
    assert levels(bar) == FULL


def test_a_second_log_is_refused(bar, shoot):
    bar.shoots.log(shoot.id, as_planned(shoot))
    with pytest.raises(AlreadyLogged, match="was logged on 2026-11-21 at 12:00 already"):
        bar.shoots.log(shoot.id, as_planned(shoot))
    assert levels(bar) == POURED


def test_a_shoot_still_to_come_cannot_be_logged(bar, shoot):
    later = bar.shoots.replace(replace(shoot, on=TODAY + timedelta(days=1))).value
    with pytest.raises(NotFilmedYet, match="is on 2026-11-22, which is still to come"):
        bar.shoots.log(later.id, as_planned(later))
    assert levels(bar) == FULL and bar.snapshot.shoots == (later,)


@pytest.mark.parametrize(
    ("sheet", "error"),
    [
        (lambda _gin: LogSheet(()), InvalidField),
        (lambda _gin: LogSheet((-1,)), InvalidField),
        (lambda _gin: LogSheet((601,)), InvalidField),
        (lambda _gin: LogSheet((1,), {99: 5.0}), UnknownName),
        (lambda gin: LogSheet((1,), {gin: -5.0}), InvalidField),
        (lambda gin: LogSheet((1,), {gin: 641.0}), NotEnoughLeft),
        (
            lambda gin: LogSheet((1,), {}, {gin: MeasuredLevel(701.0, "volume", 5.0)}),
            LevelAboveSize,
        ),
        (lambda gin: LogSheet((1,), {}, {gin: MeasuredLevel(-1.0, "volume", 5.0)}), NegativeAmount),
    ],
)
def test_a_log_that_cannot_be_writes_nothing(bar, shoot, shelf, sheet, error):
    gin = shelf["london-dry-gin"]
    before = ledger(bar, gin)
    with pytest.raises(error):
        bar.shoots.log(shoot.id, sheet(gin))
    assert levels(bar) == FULL and ledger(bar, gin) == before
    assert bar.snapshot.shoots == (shoot,)


def test_a_removed_spec_is_named_loses_nothing_and_comes_back(bar, shoot, spec):
    bar.specs.remove(spec.id)
    assert bar.snapshot.shoots == (shoot,)
    assert without_spec(shoot, bar.snapshot) == ("Snow Plough",)
    with pytest.raises(SpecGone, match="The spec of Snow Plough was removed"):
        bar.shoots.log(shoot.id, as_planned(shoot))
    noted = bar.shoots.replace(replace(shoot, notes="Who took it?")).value
    assert noted.drinks == shoot.drinks  # what was there before may stay
    with pytest.raises(UnknownName):
        bar.shoots.add(replace(shoot, id=None))
    bar.undo()
    bar.undo()
    assert bar.undo_label == "Add shoot Night train"
    assert without_spec(shoot, bar.snapshot) == ()
    bar.shoots.log(shoot.id, as_planned(shoot))
    assert levels(bar) == POURED


def test_a_removed_spec_that_was_not_made_does_not_stop_the_log(bar, shoot, spec):
    bar.specs.remove(spec.id)
    log = bar.shoots.log(shoot.id, LogSheet((0,))).value.log
    assert (log.made, log.bottles) == ((0,), ()) and levels(bar) == FULL


def test_a_spec_changed_after_a_choice_keeps_it_for_its_ingredient(bar, shoot, spec):
    chosen = ChosenPour(0, "bourbon", 1.5)
    shoot = bar.shoots.replace(replace(shoot, drinks=(drink(spec, (0, 2, 0), chosen),))).value
    assert shoot.drinks[0].chosen == (replace(chosen, wanted="london-dry-gin"),)
    bar.specs.replace(replace(spec, lines=spec.lines[::-1]))
    poured = as_poured(shoot.drinks[0], bar.snapshot)
    assert [line.ingredient for line in poured.lines] == ["lime-juice", "bourbon"]
    moved = bar.shoots.replace(shoot).value.drinks[0].chosen
    assert [each.line for each in moved] == [1]
    bar.shoots.log(shoot.id, LogSheet((2,)))
    assert levels(bar) == {**FULL, "bourbon": 520.0, "lime-juice": 456.0}


def test_a_choice_of_a_line_that_went_is_passed_over_and_does_not_pour(bar, shoot, spec):
    chosen = ChosenPour(0, "bourbon", 1.5)
    shoot = bar.shoots.replace(replace(shoot, drinks=(drink(spec, (0, 2, 0), chosen),))).value
    bar.specs.replace(replace(spec, lines=spec.lines[1:]))
    bar.shoots.log(shoot.id, LogSheet((2,)))
    assert levels(bar) == {**FULL, "lime-juice": 456.0}


def test_a_logged_shoot_keeps_its_log_its_drinks_and_its_state(bar, shoot):
    logged = bar.shoots.log(shoot.id, as_planned(shoot)).value
    noted = bar.shoots.replace(replace(logged, notes="Good light.", log=None)).value
    assert noted.log == logged.log and noted.notes == "Good light."
    with pytest.raises(InvalidField, match="keeps the drinks"):
        bar.shoots.replace(replace(noted, drinks=()))
    with pytest.raises(AlreadyLogged):
        bar.shoots.move(shoot.id, "filmed")
    assert bar.snapshot.shoots == (noted,)


def test_a_removed_shoot_leaves_what_it_poured(bar, shoot):
    bar.shoots.log(shoot.id, as_planned(shoot))
    bar.shoots.remove(shoot.id)
    assert levels(bar) == POURED


def test_a_log_of_more_than_there_was_takes_what_was_there(bar, shoot, shelf):
    gin = shelf["london-dry-gin"]
    bar.counting.count({gin: MeasuredLevel(100.0, "volume", 5.0)})
    logged = bar.shoots.log(shoot.id, LogSheet((3,))).value
    assert levels(bar)["london-dry-gin"] == 0.0
    (bottle,) = (each for each in logged.log.bottles if each.bottle_id == gin)
    assert (bottle.poured, bottle.expected) == (100.0, 0.0)


def test_variances_are_summed_over_shoots_and_survive_a_bottle_that_is_gone(bar, shoot, shelf):
    gin = shelf["london-dry-gin"]
    second = bar.shoots.repeat(shoot.id).value
    for one, found in ((shoot, 480.0), (second, 260.0)):
        count = {gin: MeasuredLevel(found, "weight", 3.0)}
        bar.shoots.log(one.id, LogSheet((3,), {}, count))
    (total,) = variances(bar.snapshot.shoots, bar.snapshot)
    assert (total.bottle_id, total.shoots, total.poured) == (gin, 2, 360.0)
    assert total.variance == pytest.approx(40.0 + 40.0) and total.told_apart
    assert total.reason.startswith("22 % more than was poured")
    bar.inventory.remove(gin)
    (after,) = variances(bar.snapshot.shoots, bar.snapshot)
    assert (after.title, after.variance) == (total.title, total.variance)


def test_another_window_sees_the_log(bar, shoot, reopen):
    other = reopen()
    bar.shoots.log(shoot.id, as_planned(shoot))
    with pytest.raises(AlreadyLogged):  # also before it has looked
        other.shoots.log(shoot.id, as_planned(shoot))
    assert other.refresh() and levels(other) == POURED
    with pytest.raises(AlreadyLogged):
        other.shoots.log(shoot.id, as_planned(shoot))
