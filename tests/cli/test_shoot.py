"""`barkeep shoot`: planned, found, checked, ticked off and logged from the command line."""

from __future__ import annotations

import json
import shlex
from datetime import date, timedelta

import pytest

from barkeep.application.bar import Bar
from barkeep.application.knowledge import shipped
from tests.walked import walked

SHOOT = ["id", "theme", "on", "starts", "state", "notes", "ticked", "drinks", "log"]
DRINK = ["name", "tests", "camera", "tasting", "removed", "chosen"]
BOTTLE = [
    "bottle",
    "product",
    "unit",
    "poured",
    "spilled",
    "expected",
    "counted",
    "variance",
    "sigma",
]
RED_FLAG = "Tansy Lock Red Flag bitter aperitivo"
TODAY = date.today()


@pytest.fixture
def shoot(barkeep, bar):
    """Run one `shoot` command on the bar."""
    return lambda *words: barkeep("--bar", bar, "shoot", *words)


@pytest.fixture
def planned(shoot):
    """One drink, three serves of it, today."""
    words = ("--on", TODAY, "--at", "18:30", "--drink", "Request Stop=1+2+0", "--notes", "Dim.")
    return shoot("plan", "Signal night", *words, "--json").answer["shoot"]


def listed(shoot, *words):
    return shoot("list", *words, "--json").answer["shoots"]


def levels(barkeep, bar):
    bottles = barkeep("--bar", bar, "bottles", "--json").answer["bottles"]
    return {each["id"]: each["level_ml"] for each in bottles}


def test_a_shoot_is_written_down_listed_shown_and_undone(barkeep, bar, shoot, planned):
    assert list(planned) == SHOOT
    assert (planned["theme"], planned["on"], planned["starts"]) == (
        "Signal night",
        TODAY.isoformat(),
        "18:30",
    )
    assert (planned["state"], planned["notes"], planned["log"]) == ("idea", "Dim.", None)
    (drink,) = planned["drinks"]
    assert list(drink) == DRINK
    assert list(drink.values()) == ["Request Stop", 1, 2, 0, False, []]
    assert planned in listed(shoot)
    answer = shoot("show", "signal", "--json").answer
    assert list(answer) == ["shoot", "stops", "mise_en_place"] and answer["shoot"] == planned
    assert all(list(each) == ["key", "when", "text", "done"] for each in answer["mise_en_place"])
    assert [each["key"] for each in answer["stops"]] == ["idea", "shop", "prepare", "film", "count"]
    assert all(list(each) == ["key", "state", "why", "on"] for each in answer["stops"])
    assert sum(each["state"] == "next" for each in answer["stops"]) == 1
    text = shoot("show", "Signal night").out
    assert text.startswith(f"Signal night (#{planned['id']}), {TODAY} at 18:30, idea\n")
    assert "1.  Request Stop      1       2        0" in text
    assert "Mise en place" in text and "Dim." in text
    barkeep("--bar", bar, "undo")
    assert planned not in listed(shoot)


def test_the_run_sheet_and_what_is_published_are_plain_text(shoot):
    sheet = shoot("show", "summer", "--run-sheet").out
    for said in ("Summer Excursion", "Sand in the Points", "3 serves", "Squeeze 153 ml"):
        assert said in sheet
    answer = shoot("show", "summer", "--run-sheet", "--json").answer
    assert list(answer) == ["theme", "text"] and answer["text"].strip() == sheet.strip()
    published = shoot("show", "summer", "--publish").out
    assert "Deckchair Special" in published and "mezcal" in published
    answer = shoot("show", "summer", "--publish", "--json").answer
    assert list(answer) == ["theme", "text", "markdown"]
    assert answer["text"].strip() == published.strip()
    assert "# " in answer["markdown"]


def test_shoots_are_found_by_words_and_state(shoot):
    everything = listed(shoot)
    days = [each["on"] for each in everything]
    assert len(days) == 6 and days == sorted(days, reverse=True)
    assert [each["theme"] for each in listed(shoot, "dropped", "bag")] == ["Mail Train"]
    logged = listed(shoot, "--state", "logged")
    assert len(logged) == 4 and {each["state"] for each in logged} == {"logged"}
    table = shoot("list", "harbour").out.splitlines()
    assert len(table) == 3 and "Harbour Halt" in table[2] and "Tide Table" in table[2]
    assert shoot("list", "nothing", "such").out == "No shoot is found by that.\n"


def test_a_shoot_is_changed_in_one_step(barkeep, bar, shoot, planned):
    later = TODAY + timedelta(days=9)
    words = ("--drink", "Buffer Stop=0+1+1", "--drink", "Request Stop=2+2+2", "--state", "planned")
    changed = shoot("plan", "signal NIGHT", "--on", later, *words, "--json").answer["shoot"]
    assert changed["id"] == planned["id"]
    assert (changed["on"], changed["state"], changed["starts"]) == (
        later.isoformat(),
        "planned",
        "18:30",
    )
    drinks = [[each[key] for key in DRINK[:4]] for each in changed["drinks"]]
    assert drinks == [["Request Stop", 2, 2, 2], ["Buffer Stop", 0, 1, 1]]
    said = shoot("plan", "Signal night", "--drop", "Request Stop").out
    assert said == f"Signal night (#{planned['id']}) on {later} with 1 drink is changed.\n"
    for _ in range(2):
        barkeep("--bar", bar, "undo")
    assert shoot("show", "signal", "--json").answer["shoot"] == planned


def test_a_shoot_is_repeated_and_the_nearest_not_yet_logged_is_meant(shoot):
    mail = shoot("show", "mail train", "--json").answer["shoot"]
    day = TODAY + timedelta(days=30)
    again = shoot("plan", "Mail Train", "--repeat", "--on", day, "--json").answer["shoot"]
    assert (again["on"], again["state"], again["log"]) == (day.isoformat(), "idea", None)
    assert [each["name"] for each in again["drinks"]] == [each["name"] for each in mail["drinks"]]
    assert shoot("show", "mail", "--json").answer["shoot"] == again
    assert shoot("show", "mail", "--on", mail["on"], "--json").answer["shoot"] == mail
    assert shoot("show", f"#{mail['id']}", "--json").answer["shoot"] == mail
    said = shoot("plan", "Mail Train", "--remove").out
    assert said == f"Mail Train on {day} is removed.\n"
    assert shoot("show", "mail", "--json").answer["shoot"] == mail


def test_a_logged_theme_with_a_new_day_is_a_new_shoot(shoot):
    new = shoot("plan", "Mail Train", "--on", TODAY, "--json").answer["shoot"]
    assert (new["drinks"], new["state"]) == ([], "idea")
    assert len(listed(shoot, "mail train")) == 2
    assert "No drink is planned yet." in shoot("show", "mail").out
    assert "No drink is planned yet." in shoot("check", "mail").out


def test_what_is_chosen_for_a_line_is_poured_and_taken_back(barkeep, bar, shoot):
    shoot("plan", "Agave", "--on", TODAY, "--drink", "Sand in the Points=0+2+0")
    short = shoot("check", "agave", "--json").answer
    assert list(short) == [
        "theme",
        "on",
        "possible",
        "verdict",
        "removed",
        "short",
        "drop",
        "rescues",
        "draws",
        "past",
        "faded",
        "not_counted",
        "asks",
        "assumed",
        "cost",
        "priced",
        "unpriced",
    ]
    assert (short["possible"], short["verdict"]) == (False, "No: one line runs out.")
    (lack,) = short["short"]
    assert list(lack) == ["drink", "ingredient", "as_written", "short", "unit", "serves", "why"]
    assert (lack["ingredient"], lack["unit"], lack["serves"]) == ("Mezcal", "ml", 2.0)
    assert short["drop"] == [{"drink": "Sand in the Points", "serves": 2}]
    rescue = short["rescues"][0]
    assert rescue["use"] == "Sand in the Points: mezcal=blanco tequila"
    assert rescue["why"] == "Blanco tequila stands in for mezcal: agave without the smoke."
    text = shoot("check", "agave").out
    assert "No: one line runs out." in text and f'--use "{rescue["use"]}"' in text
    assert "leave out 2 serves of Sand in the Points." in text

    used = shoot("plan", "Agave", "--use", rescue["use"], "--json").answer["shoot"]
    (chosen,) = used["drinks"][0]["chosen"]
    assert list(chosen) == ["wanted", "ingredient", "ratio", "bottle", "product"]
    assert (chosen["wanted"], chosen["ingredient"]) == ("Mezcal", "Blanco tequila")
    assert chosen["ratio"] == rescue["ratio"]
    saved = shoot("check", "agave", "--json").answer
    assert saved["possible"] and saved["verdict"] == "Yes: every serve can be poured."
    before, after = (
        next(each for each in answer["draws"] if "blanco tequila" in each["product"])
        for answer in (short, saved)
    )
    assert list(after) == ["bottle", "product", "amount", "unit"]
    more = after["amount"] - before["amount"]
    assert more == pytest.approx(lack["short"] * chosen["ratio"], abs=0.02)
    assert "Blanco tequila for Mezcal (1.1 times the amount)" in shoot("show", "agave").out

    shoot("plan", "Agave", "--as-written", "Sand in the Points: mezcal")
    assert not shoot("check", "agave", "--json").answer["possible"]
    assert shoot("check", "agave", "--within", "loose", "--json").answer["possible"]


def test_one_bottle_of_several_is_chosen_by_its_id(shoot, planned):
    gins = ("Request Stop: London dry gin=#2", "Request Stop: gin=#2")  # a kind names its line too
    for written in gins:
        done = shoot("plan", "Signal night", "--use", written, "--json").answer["shoot"]
        (chosen,) = done["drinks"][0]["chosen"]
        assert (chosen["bottle"], chosen["ratio"]) == (2, 1.0)
    drawn = {each["bottle"] for each in shoot("check", "signal", "--json").answer["draws"]}
    assert 2 in drawn and 1 not in drawn
    assert f"{chosen['product']} for London dry gin" in shoot("show", "signal").out


def test_a_removed_spec_is_named_and_undo_brings_it_back(barkeep, bar, shoot, planned):
    with Bar.open(bar, shipped()) as opened:
        spec = next(each for each in opened.snapshot.specs if each.name == "Request Stop")
        opened.specs.remove(spec.id)
    answer = shoot("check", "signal", "--json").answer
    assert answer["removed"] == ["Request Stop"] and not answer["possible"]
    assert shoot("show", "signal", "--json").answer["shoot"]["drinks"][0]["removed"]
    assert "its spec was removed" in shoot("show", "signal").out
    assert "The spec of Request Stop was removed" in shoot("log", "signal").refusal
    barkeep("--bar", bar, "undo")
    assert shoot("show", "signal", "--json").answer["shoot"] == planned


def test_steps_are_ticked_by_number_or_key(shoot, planned):
    steps = shoot("show", "signal", "--json").answer["mise_en_place"]
    keys = [each["key"] for each in steps]
    shoot("plan", "Signal night", "--tick", "1", "--tick", keys[-1])
    shown = shoot("show", "signal", "--json").answer
    assert {each["key"] for each in shown["mise_en_place"] if each["done"]} == {keys[0], keys[-1]}
    assert "[x] 1. " in shoot("show", "signal").out
    shoot("plan", "Signal night", "--untick", keys[0], "--untick", str(len(keys)))
    assert shoot("show", "signal", "--json").answer["shoot"]["ticked"] == []


def test_a_shoot_is_logged_with_spills_and_counts_in_one_step(barkeep, bar, shoot, planned):
    before = levels(barkeep, bar)
    draws = shoot("check", "signal", "--json").answer["draws"]
    titles = [each["product"] for each in draws if each["unit"] == "ml"]
    spilled, found = titles[:2]
    words = ("--spill", f"{spilled}=10 ml", "--spill", f"{spilled}=5 ml", "--count", f"{found}=0.5")
    only = shoot("log", "signal", *words, "--plan-only", "--json").answer
    assert not only["written"] and levels(barkeep, bar) == before
    done = shoot("log", "signal", *words, "--json").answer
    assert list(done) == ["theme", "on", "written", "made", "bottles", "not_taken"]
    assert done == {**only, "written": True}
    assert done["made"] == [{"drink": "Request Stop", "serves": 3}]
    by_title = {each["product"]: each for each in done["bottles"]}
    assert all(list(each) == BOTTLE for each in done["bottles"])
    assert by_title[spilled]["spilled"] == 15.0
    one = by_title[found]
    assert one["variance"] == pytest.approx(one["expected"] - one["counted"], abs=0.02)
    for draw in draws:
        assert by_title[draw["product"]]["poured"] >= draw["amount"] - 0.01

    shown = shoot("show", "signal", "--json").answer["shoot"]
    assert shown["state"] == "logged" and shown["log"]["bottles"] == done["bottles"]
    assert shown["log"]["made"] == done["made"]
    assert "3 × Request Stop" in shoot("show", "signal").out
    after = levels(barkeep, bar)
    assert after != before
    assert "was logged on" in shoot("log", "signal").refusal
    assert levels(barkeep, bar) == after
    barkeep("--bar", bar, "undo")
    assert levels(barkeep, bar) == before
    assert shoot("show", "signal", "--json").answer["shoot"] == planned
    barkeep("--bar", bar, "redo")
    assert levels(barkeep, bar) == after


def test_a_log_is_told_bottle_by_bottle(shoot, planned):
    said = shoot("log", "signal", "--made", "Request Stop=1", "--plan-only").out
    assert "would be logged so; nothing is written" in said
    assert "bottle" in said and "expected" in said and "variance" in said
    said = shoot("log", "signal", "--made", "Request Stop=0").out
    assert said == f"Signal night on {TODAY} is logged: 0 bottles.\n"


def test_variances_over_shoots_come_with_a_reason(shoot):
    answer = shoot("log", "--variances", "--json").answer
    keys = ["bottle", "product", "unit", "shoots", "poured", "variance"]
    assert list(answer["bottles"][0]) == [*keys, "sigma", "flagged", "reason"]
    flagged = [each for each in answer["bottles"] if each["flagged"]]
    assert flagged == answer["bottles"][: len(flagged)]
    assert all(each["reason"] for each in answer["bottles"])
    table = shoot("log", "--variances").out
    assert answer["bottles"][0]["product"] in table and "likely reason" in table


def test_a_new_bar_has_neither_shoots_nor_variances(barkeep, tmp_path):
    new = tmp_path / "new.bar"
    assert barkeep("--bar", new, "--new", "shoot", "list").out == "No shoot is planned yet.\n"
    said = barkeep("--bar", new, "shoot", "log", "--variances").out
    assert said == "No shoot has counted a bottle yet.\n"


TOMORROW = TODAY + timedelta(days=1)


@walked(
    "words, said",
    [
        (("show", "Nothing such"), "There is no shoot called “Nothing such”."),
        (("show", "signal", "--on", "2001-01-01"), "There is no shoot called “signal, 2001-01-01”"),
        (("show", "s"), "“s” could be more than one shoot: "),
        (("plan", "Signel night"), "The nearest are Signal night"),
        (("plan", "Fog"), "A new one needs its day: --on"),
        (("plan", "Fog", "--on", "2026-12-01", "--drink", "Nothing"), "no spec called “Nothing”"),
        (("plan", "Signal night", "--drink", "Buffer Stop=3"), "tests + camera + tasting"),
        (("plan", "Signal night", "--drink", "Buffer Stop=999+0+0"), "from 0 to 200"),
        (("plan", "Signal night", "--drop", "Buffer Stop"), "no drink of Signal night called"),
        (("plan", "Signal night", "--use", "Request Stop"), "write the drink, a colon"),
        (("plan", "Signal night", "--use", "Request Stop: rye=gin"), "Request Stop has no such"),
        (("plan", "Signal night", "--as-written", "Request Stop"), "write the drink, a colon"),
        (("plan", "Signal night", "--tick", "99"), "There is no step called “99”."),
        (("plan", "#1", "--state", "idea"), "was logged on"),
        (("log",), "name the shoot to log"),
        (("log", "signal", "--made", "Request Stop"), "write a name, = and how much"),
        (("log", "signal", "--made", "Request Stop=two"), "a whole number of serves"),
        (("log", "signal", "--spill", "Nothing at all=3 ml"), "There is no bottle called"),
        (("log", "signal", "--spill", f"{RED_FLAG}=3"), "“3”"),
        (("log", "signal", "--count", f"{RED_FLAG}=9 l"), "is more than"),
        (
            ("log", "signal", "--count", f"{RED_FLAG}=0.1", "--count", f"{RED_FLAG}=0.2"),
            "each bottle is counted once",
        ),
    ],
)
def test_what_cannot_be_is_one_clear_sentence(barkeep, bar, shoot, planned, words, said):
    before = levels(barkeep, bar)
    assert said in shoot(*words).refusal
    assert levels(barkeep, bar) == before
    assert planned in listed(shoot) and len(listed(shoot)) == 7


def test_a_shoot_still_to_come_cannot_be_logged(barkeep, bar, shoot, planned):
    shoot("plan", "Signal night", "--on", TOMORROW)
    refused = shoot("log", "signal").refusal
    assert "still to come; there is nothing to log." in refused
    first = f'shoot plan "#{planned["id"]}" --state filmed --on {TODAY}'
    assert refused.strip().endswith(f"Filmed today? Then first: barkeep {first}")
    assert barkeep("--bar", bar, *shlex.split(first)).status == 0
    assert shoot("log", "signal").out.startswith(f"Signal night on {TODAY} is logged: ")


def test_what_may_not_stand_in_is_refused_with_the_reason(shoot):
    shoot("plan", "Agave", "--on", TODAY, "--drink", "Sand in the Points")
    words = ("plan", "Agave", "--use", "Sand in the Points: mezcal=double cream")
    assert "it is not known to stand in for mezcal" in shoot(*words).refusal


@pytest.mark.parametrize(
    "words",
    [
        ("plan", "A", "--on", "tomorrow"),
        ("plan", "A", "--at", "late"),
        ("plan", "A", "--state", "logged"),
        ("plan", "A", "--repeat", "--remove"),
        ("list", "--state", "cut"),
        (),
    ],
)
def test_what_is_not_understood_leaves_with_two(shoot, words, capsys):
    with pytest.raises(SystemExit) as left:
        shoot(*words)
    assert left.value.code == 2


def test_a_day_to_come_is_not_filmed_yet(shoot, planned):
    ahead = TODAY + timedelta(days=1)
    refused = shoot("plan", planned["theme"], "--on", ahead, "--state", "filmed")
    assert refused.status == 1
    assert f"Signal night is on {ahead}, which is still to come" in refused.err
    assert f"Filmed today? Say the same of “#{planned['id']}” with --on {TODAY}." in refused.err
    new = shoot("plan", "Fog", "--on", ahead, "--state", "filmed").refusal
    assert new.strip().endswith(f"Filmed today? Say the same with --on {TODAY}.")
    shown = shoot("list", "--json").answer["shoots"]
    (kept,) = [each for each in shown if each["theme"] == "Signal night"]
    assert (kept["on"], kept["state"]) == (TODAY.isoformat(), "idea")
    assert shoot("plan", "Signal night", "--state", "filmed").status == 0


def test_a_filmed_shoot_speaks_of_its_log_and_not_of_what_can_be_poured(shoot):
    before = shoot("show", "summer", "--json").answer
    assert "No: 3 lines run out." in shoot("check", "summer").out
    shoot("plan", "Summer Excursion", "--state", "filmed", "--on", TODAY)
    verdict = "It is filmed; its log is still to be written, and cannot take 3 lines as planned."
    lacks = "Not all is taken from a bottle: Sand in the Points lacks 88.7 ml of mezcal"
    shown = shoot("show", "summer").out
    assert verdict in shown and lacks in shown and "Mise en place" not in shown
    assert shown.rstrip().endswith('To write it: barkeep shoot log "#6"')
    check = shoot("check", "summer").out
    assert verdict in check and lacks in check
    assert not [words for words in ("--use", "leave out", "No: ") if words in check]
    sheet = shoot("show", "summer", "--run-sheet").out
    assert f"The log\n{verdict}" in sheet and "Can it be poured?" not in sheet
    after = shoot("show", "summer", "--json").answer
    assert after.keys() == before.keys() and len(after["mise_en_place"]) > 10
    assert shoot("log", "summer").status == 0
    check = shoot("check", "summer").out
    assert f"It was logged on {TODAY}." in check and 'shoot show "#6"' in check


@pytest.mark.parametrize("what", ["list", "show", "plan", "check", "log"])
def test_the_help_names_the_keys_of_the_json(shoot, what, capsys):
    with pytest.raises(SystemExit):
        shoot(what, "--help")
    assert "keys of the JSON:" in capsys.readouterr().out


def test_the_json_is_one_object(shoot):
    assert json.loads(shoot("check", "summer", "--json").out)["theme"] == "Summer Excursion"
