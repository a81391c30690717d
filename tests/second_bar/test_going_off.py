"""What was opened or made too long ago: past its best, or not safe, and the reason."""

from __future__ import annotations

from datetime import date

from tests.second_bar.asking import about, flat, has, line_of

SHOOT_DAY = date(2026, 12, 5)


def as_said(day: str) -> str:
    """A pattern of a day as it is said: in full or shortened."""
    when = date.fromisoformat(day)
    month = f"{when:%B}"
    return rf"{when.day} {month[:3]}(?:{month[3:]})? {when.year}"


def reason(*, last: str, begun: str, days: int, keeps: int) -> str:
    """A pattern of the reason in any of the words that say it; the dates in ISO's form."""
    since = rf"({as_said(begun)}|{days} days)"
    return rf"{as_said(last)}|{since}.*\b{keeps}\b|\b{keeps}\b.*{since}"


FINO = reason(last="2026-11-24", begun="2026-11-17", days=12, keeps=7)
VERMOUTH = reason(last="2026-11-07", begun="2026-10-10", days=50, keeps=28)


def test_old_dry_vermouth_is_past_its_best_and_counted_with_a_warning(bar):
    """14. Opened 50 days, keeps 28. Oxidised vermouth is dull and harmless: taste it first.
    200 / 75 = 2.7."""
    drink = bar.drink("Dry Martini")
    assert "Thimble" in line_of(drink, "gin")["bottle"]
    assert "White Feather" in line_of(drink, "dry vermouth")["bottle"]
    assert drink["serves"] == 2
    said = about(drink["warnings"], "White Feather")
    assert has(said, "past its best")
    assert has(said, VERMOUTH)
    assert not has(said, "not safe")


def test_two_tired_wines_in_one_glass_are_both_named(bar):
    """15. 250 / 45 = 5.6 of fino (12 days open, keeps 7). Wine gone flat is a warning; two tired
    wines in one glass deserve saying."""
    drink = bar.drink("Bamboo")
    assert drink["serves"] == 5
    for wine, why in (("Salt Pan", FINO), ("White Feather", VERMOUTH)):
        said = about(drink["warnings"], wine)
        assert has(said, "past its best"), wine
        assert has(said, why), wine
    assert not has(flat(drink["warnings"]), "not safe")


def test_old_honey_syrup_is_not_safe_and_made_anew_first(bar):
    """16. One to one syrup spoils; 21 days are up. Honey and a kettle make new in ten minutes."""
    drink = bar.drink("Straight Toddy")
    assert "Honey syrup" not in (line_of(drink, "honey syrup")["bottle"] or "")
    said = about(drink["warnings"], "Honey syrup")
    assert has(said, "not safe")
    assert has(said, reason(last="2026-11-20", begun="2026-10-30", days=30, keeps=21))
    assert has(bar.shown("Straight Toddy"), r"make honey syrup first.*\(10 min\)")
    rows = bar.answer("next-bottle")["candidates"]
    assert "Honey syrup" not in [each["ingredient"] for each in rows]


def test_old_cold_brew_is_not_safe_and_never_counted(bar):
    """17. Low acid, no sugar, five days: poured away. Steeping takes 12 hours and more."""
    drink = bar.drink("Night Boat")
    assert line_of(drink, "cold brew")["bottle"] is None
    said = about(drink["warnings"], "Cold brew")
    assert has(said, "not safe")
    assert not has(said, "past its best")
    assert has(said, reason(last="2026-11-27", begun="2026-11-24", days=5, keeps=3))
    if drink["verdict"] in ("ready", "stand_in"):
        assert has(bar.shown("Night Boat"), r"make cold brew.* first .*\b\d+ h\b")


def test_old_lemon_juice_is_left_and_lemons_are_squeezed(bar, changed):
    """18. 3 x 22.5 = 67.5 ml / 38 = 1.8. The jar kept one day and is two old."""
    shoot = changed.shoot({"Gin Sour": 3})
    assert shoot.drawn("Lemons") == 2
    assert shoot.drawn("Lemon juice") == 0
    said = f"{about(bar.drink('Gin Sour')['warnings'], 'Lemon juice')}\n{shoot.shown_check}"
    assert has(said, "lemon juice[^\n]*(not safe|past its date)")


def test_squeezing_for_three_sours_asks_for_two_lemons(changed):
    """18. 3 x 22.5 = 67.5 ml / 38 = 1.8. The jar kept one day and is two old."""
    squeeze = about(changed.shoot({"Gin Sour": 3}).steps, "squeeze", "lemon")
    assert has(squeeze, r"\b2 (× )?lemons?\b"), squeeze


def test_opened_cream_is_not_safe_before_its_printed_date(bar):
    """19. Opened plus 5 days comes before the printed date, which holds for a sealed pot."""
    drink = bar.drink("Cream Step")
    assert line_of(drink, "double cream")["bottle"] is None
    assert "Double cream" in drink["missing"]
    said = about(drink["warnings"], "Double cream")
    assert has(said, "not safe")
    assert has(said, "opened")
    assert not has(said, "past its best")
    rows = bar.answer("next-bottle")["candidates"]
    (cream,) = (each for each in rows if "Cream Step" in each["unlocks"])
    assert has(flat(cream), "cream")
    assert has(flat(cream), "market")


def test_old_coffee_liqueur_is_past_its_best_and_counted(changed):
    """20. A year open dulls a coffee liqueur; sugar and 20 % keep it harmless. 400 / 22.5 = 17
    serves of it."""
    changed.without_classics()
    changed.empty("Cold brew")
    changed.tell("receive", "Cold brew", "--made", "2026-11-29")
    drink = changed.drink("Night Boat")
    assert "Cold brew" in line_of(drink, "cold brew")["bottle"]
    assert "Night Ferry" in line_of(drink, "coffee liqueur")["bottle"]
    assert drink["serves"] > 0
    said = about(drink["warnings"], "Night Ferry")
    assert has(said, "past its best")
    assert has(said, reason(last="2026-09-15", begun="2025-09-15", days=440, keeps=365))
    assert not has(flat(drink["warnings"]), "not safe")


def test_the_owners_own_figure_says_how_long_vermouth_keeps(changed):
    """21. The owner's figure comes before the shipped 49."""
    changed.tell("setting", "keeps", "sweet vermouth=14")
    opened = changed.ids("Red Comb")[0]
    (bottle,) = (flat(each) for each in changed.bottles() if each["id"] == opened)
    told = about(changed.ask("bottles"), "Red Comb", "opened")
    said = f"{bottle}\n{told}\n{about(changed.drink('Negroni')['warnings'], 'Red Comb')}"
    assert has(said, "past its best")
    assert has(said, reason(last="2026-11-22", begun="2026-11-08", days=21, keeps=14))
    assert has(said, r"\b14\b")
    assert has(said, r"\b(own|yours?)\b")
    assert not has(said, r"not safe|\b49\b")


def test_orgeat_is_judged_on_the_day_it_is_poured(bar, changed):
    """22. Judged on the day it is poured, not on the day one plans."""
    today = bar.drink("Army and Navy")
    assert "Orgeat" in line_of(today, "orgeat")["bottle"]
    assert not about(today["warnings"], "Orgeat was")
    shoot = changed.shoot({"Army and Navy": 2}, on=SHOOT_DAY)
    assert shoot.drawn("Orgeat") == 0
    said = f"{shoot.shown_check}\n{shoot.sheet}"
    assert has(about(said, "orgeat"), rf"{as_said('2026-12-04')}|keeps 14 days")
    assert has("\n".join(map(flat, shoot.items)) + "\n".join(shoot.steps), "orgeat")
