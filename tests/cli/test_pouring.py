"""What is poured, from the command line: what follows, the house pour, and what has gone off."""

from __future__ import annotations


def drinks(barkeep, bar, *arguments):
    """The drinks of `barkeep tonight`, by name."""
    found = barkeep("--bar", bar, "tonight", *arguments, "--json").answer["drinks"]
    return {each["spec"]: each for each in found}


def test_serves_say_what_they_pour_and_what_follows(barkeep, bar):
    martini = drinks(barkeep, bar)["Dry Martini"]
    assert martini["then"][0]["ingredient"] == "Old Tom gin"
    assert martini["then"][0]["stand_in"] is False and martini["then"][0]["closeness"] == 1.0
    second = martini["then"][1]
    assert (second["ingredient"], second["stand_in"]) == ("Navy-strength gin", True)
    assert second["bottle"] == second["lines"][0]["bottle"]
    counted = martini["serves"] + sum(each["serves"] for each in martini["then"])
    assert martini["serves_in_all"] == counted
    shown = barkeep("--bar", bar, "tonight").out
    assert f"Dry Martini: {martini['serves']} serves, then Old Tom gin for" in shown


def test_a_house_pour_is_chosen_refused_poured_taken_away_and_undone(barkeep, bar):
    before = drinks(barkeep, bar)["Gin Fizz"]["lines"][0]["bottle"]
    title = "Pellow & Rudge Brass Bell Old Tom gin"
    said = barkeep("--bar", bar, "setting", "house", f"gin = {title}").out
    assert said == f"house is now gin = {title}.\n"
    assert drinks(barkeep, bar)["Gin Fizz"]["lines"][0]["bottle"] == title != before
    settings = barkeep("--bar", bar, "setting", "--json").answer["settings"]
    assert settings["house"] == [{"ingredient": "Gin", "product": title}]
    barkeep("--bar", bar, "undo")
    assert drinks(barkeep, bar)["Gin Fizz"]["lines"][0]["bottle"] == before
    barkeep("--bar", bar, "redo")
    assert barkeep("--bar", bar, "setting", "house", "gin =").out == "house is now none chosen.\n"
    for wrong, why in (
        (f"rum = {title}", "no kind of rum"),
        ("gin", "write it as rum = the label of a bottle"),
        ("rum =", "there is none of it to take away"),
        ("gin = Nobody's gin", "no product"),
    ):
        refused = barkeep("--bar", bar, "setting", "house", wrong)
        assert refused.status == 1 and why in refused.err.casefold()


def test_how_long_a_thing_keeps_is_the_owner_s(barkeep, bar):
    def vermouth():
        found = barkeep("--bar", bar, "bottles", "--json").answer["bottles"]
        return next(each for each in found if each["product"] == "Vantry Loop Sweet vermouth")

    assert vermouth()["past"] == "past_its_best"
    assert "keeps 49 days: past its best" in vermouth()["past_because"]
    said = barkeep("--bar", bar, "setting", "keeps", "sweet vermouth = 200 days").out
    assert said == "keeps is now sweet vermouth = 200.\n"
    assert (vermouth()["past"], vermouth()["past_because"]) == (None, None)
    refused = barkeep("--bar", bar, "setting", "keeps", "sweet vermouth = a while")
    assert refused.status == 1 and "whole number of days" in refused.err


def test_what_is_not_safe_is_told_from_what_has_faded(barkeep, bar):
    shown = barkeep("--bar", bar, "bottles").out
    assert "Double cream was opened 7 days ago and keeps 5 days: not safe, so not counted." in shown
    assert "keeps 49 days: past its best, so taste it first." in shown
    found = drinks(barkeep, bar)
    assert found["Alexander"]["missing"] == ["Double cream"]
    assert any("keeps 49 days: past its best" in each for each in found["Americano"]["warnings"])
    batch = barkeep("--bar", bar, "batch", "Americano", "--serves", "4", "--json").answer
    assert any("keeps 49 days: past its best" in each for each in batch["past"])
    cream = barkeep("--bar", bar, "batch", "Alexander", "--serves", "4", "--json").answer
    assert any("is past its date of" in each and "not counted" in each for each in cream["past"])
