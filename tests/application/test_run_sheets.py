"""The run sheet of a shoot over the sample bar, and the text of its episode."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime

import pytest

from barkeep.application.bar import Bar
from barkeep.application.knowledge import shipped
from barkeep.application.publishing import publish_text_of, run_sheet_of
from barkeep.documents.printed.cards import FIRST_OF_ALL
from barkeep.domain.bar.shoots import ChosenPour, LoggedBottle, ShootDrink, ShootLog
from barkeep.domain.days import day_short
from tests.conftest import NOON
from tests.shoots_to_run import branch_line


@pytest.fixture
def snapshot(sample_bar):
    """The sample bar as a frozen picture."""
    with Bar.open(sample_bar, shipped(), lambda: NOON) as bar:
        return bar.snapshot


@pytest.fixture
def shoot(snapshot):
    return branch_line(snapshot)


@pytest.fixture
def sheet(shoot, snapshot):
    return run_sheet_of(shoot, snapshot)


def test_drinks_stand_in_running_order_with_their_serves(sheet):
    assert [(each.number, each.name) for each in sheet.drinks] == [
        (1, "Request Stop"),
        (2, "Two-Coach Local"),
        (3, "Upper Berth"),
        (4, "Gone Away"),
        (5, "Jack Rose"),
    ]
    assert sheet.drinks[0].serves == "4 serves: 1 test, 2 for the camera, 1 to taste"
    assert sheet.when == "Friday 27 November 2026, 15:00"


def test_a_stand_in_is_printed_as_it_is_poured(sheet):
    """2 oz of gin at 1.25 to one are 2 1/2 oz, 73.9 ml: 75 as it is measured."""
    line = sheet.drinks[0].card.lines[0]
    assert (line.first, line.second) == ("2 ½ oz", "75 ml")
    assert line.name == "bourbon, in place of London dry gin"
    assert "in place of" not in " ".join(each.name for each in sheet.drinks[0].card.lines[1:])


def test_a_kind_of_what_is_asked_for_replaces_nothing(shoot, snapshot):
    drink = replace(shoot.drinks[0], chosen=(ChosenPour(0, "london-dry-gin", 1.0),))
    one = replace(shoot, drinks=(drink,))
    card = run_sheet_of(one, snapshot).drinks[0].card
    assert card.lines[0].name == "London dry gin"


def test_what_was_poured_otherwise_in_pieces_is_counted_in_them(shoot, snapshot):
    """A line of 22 ml of juice poured as half a lime for each ml."""
    spec = next(each for each in snapshot.specs if each.name == "Request Stop")
    juice = next(n for n, line in enumerate(spec.lines) if line.ingredient == "lime-juice")
    drink = replace(shoot.drinks[0], chosen=(ChosenPour(juice, "lime", 1 / 22.18),))
    card = run_sheet_of(replace(shoot, drinks=(drink,)), snapshot).drinks[0].card
    assert card.lines[juice].amount == "1"
    assert card.lines[juice].name == "lime, in place of lime juice"


def test_a_drink_whose_spec_was_removed_is_named(sheet, shoot, snapshot):
    assert sheet.drinks[3].card is None
    assert "Gone Away" in sheet.verdict
    assert "Gone Away: its spec was removed." in publish_text_of(shoot, snapshot).text


def test_steps_have_clock_times_and_ticks(sheet):
    by_text = {each.text: each for each in sheet.steps}
    assert by_text["Chill soda water."].done
    assert by_text["Chill soda water."].when == "Friday 27 November 2026, 13:00"
    assert sum(each.done for each in sheet.steps) == 1
    juice = next(each for each in sheet.steps if "of lime juice from" in each.text)
    assert juice.when == "Friday 27 November 2026, 14:00"


def test_without_a_time_steps_say_how_long_before(shoot, snapshot):
    sheet = run_sheet_of(replace(shoot, starts=None), snapshot)
    assert sheet.when == "Friday 27 November 2026"
    assert {each.when for each in sheet.steps} >= {"Two hours before", "Half an hour before"}


def test_juice_that_is_past_its_date_by_then_is_not_counted_on(sheet, snapshot):
    (old,) = snapshot.usable["lime-juice"]
    assert old.use_by < sheet_day(sheet)
    told = [each.text for each in sheet.steps if old.product.title in each.text]
    assert told == [
        f"Do not count on {old.product.title}: its date is {day_short(old.use_by)}. "
        "Throw it away and make it anew."
    ]
    assert old.product.title not in {name for _amount, name in sheet.draws}


def sheet_day(sheet):
    return datetime.strptime(sheet.when.partition(" ")[2].partition(",")[0], "%d %B %Y").date()


def test_what_is_drawn_is_the_sum_of_the_drinks(sheet, snapshot):
    """2 1/2 oz four times over: 10 oz of bourbon, 295.7 ml."""
    titles = {each.product.title for each in snapshot.usable["bourbon"]}
    drawn = [float(amount.split()[0]) for amount, name in sheet.draws if name in titles]
    assert sum(drawn) == pytest.approx(295.7, abs=1.0)


def test_what_runs_short_is_said(shoot, snapshot):
    many = replace(shoot.drinks[2], serves=replace(shoot.drinks[2].serves, camera=190))
    sheet = run_sheet_of(replace(shoot, drinks=(many,)), snapshot)
    assert sheet.verdict.startswith("No: ")
    assert any("Upper Berth lacks" in each for each in sheet.short)
    assert sheet.short[-1].startswith("Without ")


def test_what_is_short_is_to_be_bought_while_the_shoot_lies_ahead(shoot, snapshot):
    many = replace(shoot.drinks[2], serves=replace(shoot.drinks[2].serves, camera=40))
    ahead = replace(shoot, drinks=(many,))
    (whiskey,) = [e for e in run_sheet_of(ahead, snapshot).shopping if "Irish whiskey" in e]
    assert whiskey.startswith("Irish whiskey: 3 × 700 ml ")  # 42 of 1 1/2 oz are 1863 ml
    assert run_sheet_of(replace(ahead, state="filmed"), snapshot).shopping == ()


def test_cautions_come_once_with_their_drinks(sheet):
    assert sheet.cautions[0] == FIRST_OF_ALL
    assert len(set(sheet.cautions)) == len(sheet.cautions)
    assert any(each.startswith("Do not drive") for each in sheet.cautions)
    assert "Request Stop: Contains tree nuts." in sheet.cautions


def test_drinks_without_alcohol_have_no_general_cautions(shoot, snapshot):
    plain = next(spec for spec in snapshot.all_specs if is_plain(spec, snapshot))
    one = replace(shoot, drinks=(ShootDrink(plain.id, plain.name),))
    assert not any("drive" in each for each in run_sheet_of(one, snapshot).cautions)


def is_plain(spec, snapshot):
    alcoholic = snapshot.knowledge.tree.alcoholic
    return not any(key in alcoholic for line in spec.lines for key in line.wanted)


def test_a_logged_shoot_says_what_was_poured(shoot, snapshot):
    bottle = LoggedBottle(1, "Lamp Room dry gin", "ml", 177.4, 30.0, 100.0)
    logged = replace(
        shoot, state="logged", log=ShootLog(datetime(2026, 11, 27, 19), (4, 4, 4, 0), (bottle,))
    )
    sheet = run_sheet_of(logged, snapshot)
    assert sheet.verdict == "It was logged on 27 November 2026."
    assert sheet.draws == (("207 ml", "Lamp Room dry gin"),)


def test_the_publish_text_has_every_drink_both_measures_and_cautions_once(shoot, snapshot):
    found = publish_text_of(shoot, snapshot)
    for text in (found.text, found.markdown):
        assert text.count("Local rules come first") >= 1
        assert text.count(FIRST_OF_ALL) == 1
        assert text.count("Do not drive") == 1
    assert found.text.startswith("Drinks of the branch line\n")
    assert "1 ½ oz (45 ml) blended Scotch" in found.text
    assert "2 ½ oz (75 ml) bourbon, in place of London dry gin" in found.text
    assert found.markdown.startswith("# Drinks of the branch line\n\n## Request Stop\n")
    assert "- **1 ½ oz (45 ml)** blended Scotch" in found.markdown
    headings = [row for row in found.markdown.splitlines() if row.startswith("# ")]
    assert headings == ["# Drinks of the branch line"]


def test_a_shoot_with_nothing_in_it_is_a_sheet_all_the_same(shoot, snapshot):
    empty = replace(shoot, drinks=())
    sheet = run_sheet_of(empty, snapshot)
    assert sheet.drinks == sheet.steps == sheet.cautions == ()
    assert sheet.verdict == "No drink is planned yet."
    assert publish_text_of(empty, snapshot).text == "Drinks of the branch line\n"
