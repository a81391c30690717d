"""One shoot on the command line: planned, checked, saved, made and bought for, logged, undone."""

from __future__ import annotations

from datetime import date

import pytest

OUNCE_ML = 29.5735295625
"""NIST Handbook 44, appendix C: the US fluid ounce."""
GIN, TEQUILA, RUM, FALERNUM = 1, 8, 10, 31
SYRUP, HONEY, JUICE, STICKS = 52, 54, 60, 79
"""Bottles of the sample bar."""


@pytest.fixture
def run(barkeep, bar):
    """One command on the bar, its answer as JSON."""
    return lambda *argv: barkeep("--bar", bar, *argv, "--json").answer


@pytest.fixture
def levels(run):
    """Bottle id -> level of everything that is there, in the bottle's unit."""

    def now():
        poured = {each["id"]: each["level_ml"] for each in run("bottles")["bottles"]}
        kept = {each["id"]: each["level"] for each in run("pantry")["pantry"]}
        return {**poured, **kept}

    return now


def gone(before, after):
    """What each bottle has less of; what came in is left out."""
    return {key: round(before[key] - after.get(key, 0.0), 2) for key in before}


def moved(before, after):
    return {key: each for key, each in gone(before, after).items() if each}


def test_a_whole_shoot(run, barkeep, bar, levels):
    today = barkeep("--bar", bar, "shoot", "list", "--json").answer
    assert [each["theme"] for each in today["shoots"]][:2] == ["Summer Excursion", "Snow Plough"]
    start = levels()

    # Three specs planned for today; one cannot be poured, one lacks a bottle.
    drinks = ("Request Stop", "Sand in the Points", "Deckchair Special")
    asked = [word for name in drinks for word in ("--drink", f"{name}=1+1+1")]
    run("shoot", "plan", "Wet Rails", "--on", date.today().isoformat(), *asked)
    check = run("shoot", "check", "Wet Rails")
    assert not check["possible"]
    short = {(each["drink"], round(each["short"], 1)) for each in check["short"]}
    assert short == {
        ("Sand in the Points", round(3 * OUNCE_ML, 1)),
        ("Deckchair Special", round(1.5 * OUNCE_ML, 1)),
    }
    assert levels() == start

    # A stand-in saves the one.
    run("shoot", "plan", "Wet Rails", "--use", "Sand in the Points: mezcal=blanco tequila")
    check = run("shoot", "check", "Wet Rails")
    assert [each["drink"] for each in check["short"]] == ["Deckchair Special"]

    # A syrup is made: half a batch of 790 ml takes three of its six sticks.
    made = run("make", "cinnamon syrup", "395 ml")
    assert made
    after_making = levels()
    assert moved(start, after_making) == {STICKS: 3.0}
    (new,) = after_making.keys() - start.keys()
    assert after_making[new] == 395.0

    # The other is bought, and comes in with its price and date.
    items = run("buy", "--shoot", "Wet Rails", "--no-pars")["items"]
    assert [each["ingredient"] for each in items] == ["Maraschino liqueur"]
    assert items[0]["packages"] == 1
    run("buy", "--received", f"{items[0]['product']}=21.50")
    bought = next(each for each in run("bottles")["bottles"] if each["id"] not in after_making)
    assert (bought["level_ml"], bought["price"]) == (700.0, 21.5)
    check = run("shoot", "check", "Wet Rails")
    assert check["possible"] and not check["short"]
    before_log = levels()

    # The run sheet and the text to publish.
    sheet = barkeep("--bar", bar, "shoot", "show", "Wet Rails", "--run-sheet").out
    assert "Wet Rails" in sheet and "Mise en place" in sheet and "blanco tequila" in sheet.lower()
    text = barkeep("--bar", bar, "shoot", "show", "Wet Rails", "--publish").out
    assert all(name in text for name in drinks) and "oz" in text and "ml" in text

    # Logged with one more serve of the last, a spill and a count; to the millilitre.
    run("shoot", "plan", "Wet Rails", "--state", "filmed")
    sheet = (
        "--made",
        "Deckchair Special=4",
        "--spill",
        f"#{GIN}=20 ml",
        "--count",
        f"#{HONEY}=150ml",
    )
    log = run("shoot", "log", "Wet Rails", *sheet)
    assert log["written"]
    logged = levels()
    drawn = gone(before_log, logged)
    assert drawn[GIN] == pytest.approx(6 * OUNCE_ML + 20, abs=0.11)
    assert drawn[TEQUILA] == pytest.approx((3 + 3 * 1.1) * OUNCE_ML, abs=0.11)
    assert drawn[RUM] == pytest.approx(8 * OUNCE_ML, abs=0.11)
    assert drawn[FALERNUM] == pytest.approx((1.5 + 1.0) * OUNCE_ML, abs=0.11)
    assert drawn[SYRUP] == pytest.approx(0.75 * OUNCE_ML, abs=0.11)
    assert drawn[bought["id"]] == pytest.approx(2.0 * OUNCE_ML, abs=0.11)
    assert logged[HONEY] == 150.0
    honey = next(each for each in log["bottles"] if each["bottle"] == HONEY)
    assert honey["expected"] == pytest.approx(240 - 2.25 * OUNCE_ML, abs=0.11)
    assert honey["variance"] == pytest.approx(honey["expected"] - 150.0, abs=0.11)

    # A second log is refused, and nothing moves.
    refused = barkeep("--bar", bar, "shoot", "log", "Wet Rails")
    assert "logged on" in refused.refusal and levels() == logged

    # One undo takes all of it back, and it can be logged again as planned.
    assert run("undo")["undone"] == "Log shoot Wet Rails"
    assert levels() == before_log
    run("shoot", "log", "Wet Rails")
    again = gone(before_log, levels())
    assert again[GIN] == pytest.approx(6 * OUNCE_ML, abs=0.11)
    assert again[RUM] == pytest.approx(6 * OUNCE_ML, abs=0.11)
    assert again[HONEY] == pytest.approx(2.25 * OUNCE_ML, abs=0.11)
    found = run("shoot", "list", "maraschino")["shoots"]
    assert "Wet Rails" in [each["theme"] for each in found]


def order_of(run, theme):
    found = run("shoot", "list", *theme.split())["shoots"]
    return [each["name"] for each in found[0]["drinks"]]


def test_drinks_go_into_the_next_shoot_and_into_order(run, barkeep, bar):
    summer = ["Deckchair Special", "Sand in the Points", "Ices on Platform Three"]
    done = run("shoot", "add", "Gangway", "Deckchair Special", "Daiquiri")
    assert (done["added"], done["there"]) == (["Gangway", "Daiquiri"], ["Deckchair Special"])
    assert done["shoot"]["theme"] == "Summer Excursion"
    assert order_of(run, "Summer Excursion") == [*summer, "Gangway", "Daiquiri"]
    again = barkeep("--bar", bar, "shoot", "add", "Gangway")
    assert "Gangway was in Summer Excursion already; nothing is added (#6, " in again.out

    run("shoot", "plan", "Summer Excursion", "--move", "Gangway=1", "--move", "Daiquiri=2")
    assert order_of(run, "Summer Excursion") == ["Gangway", "Daiquiri", *summer]
    run("undo")
    assert barkeep("--bar", bar, "undo").out.startswith("Undone: Add 2 drinks to shoot Summer")
    assert order_of(run, "Summer Excursion") == summer

    run("shoot", "add", "Daiquiri", "--to", "snow")
    assert order_of(run, "Snow Plough")[-1] == "Daiquiri"


@pytest.mark.parametrize(
    ("asked", "said"),
    [
        (("add", "Gangwy"), "There is no spec called “Gangwy”. The nearest is Gangway."),
        (("add", "Gangway", "--to", "Mail Train"), "Mail Train is logged and keeps the drinks"),
        (("add", "Gangway", "--on", "1999-01-01"), "No shoot is to be filmed: name one with --to"),
        (("plan", "Summer Excursion", "--move", "Sand in the Points=4"), "a place from 1 to 3"),
        (("plan", "Summer Excursion", "--move", "Sand in the Points"), "a place from 1 to 3"),
        (("plan", "Summer Excursion", "--move", "Gangway=1"), "no drink of Summer Excursion"),
    ],
)
def test_what_cannot_be_added_or_moved(barkeep, bar, asked, said):
    ran = barkeep("--bar", bar, "shoot", *asked)
    assert ran.status == 1 and said in ran.err and not ran.out
