"""Which caution leads, what Tonight lists first, and what stands in, is asked and comes out."""

from __future__ import annotations

import csv

import pytest

from tests.second_bar.asking import SecondBar, flat, has, names_listed


def cautions_of(bar: SecondBar, name: str) -> list[str]:
    """The cautions of a drink as analysing it says them, the first first."""
    found = bar.answer("spec", "analyse", name)["cautions"]
    assert isinstance(found, list)
    return [flat(each) for each in found]


def told_tonight(bar: SecondBar, name: str) -> list[str]:
    """The cautions of a drink as Tonight says them, the first first."""
    drink = bar.drink(name)
    return [flat(each) for each in drink.get("cautions", drink["warnings"])]


@pytest.mark.parametrize(
    ("name", "leads"),
    [("Gin and Tonic", "quinine"), ("Salty Dog", "grapefruit.*medicin|medicin.*grapefruit")],
)
def test_what_can_hurt_now_leads(bar, name, leads):
    """38. What can hurt now leads. A stirred rinse is no fire, home-made syrup and spirit carry no
    sulphites, a missing cherry adds none."""
    assert has(cautions_of(bar, name)[0], leads)
    assert has(told_tonight(bar, name)[0], leads)


def test_raw_egg_leads_where_no_pasteurised_white_is_there(changed):
    """38. What can hurt now leads. A stirred rinse is no fire, home-made syrup and spirit carry no
    sulphites, a missing cherry adds none."""
    changed.without_classics()
    changed.empty("Liquid egg white")
    assert has(cautions_of(changed, "Moth")[0], "raw egg")
    assert has(told_tonight(changed, "Moth")[0], "raw egg")


def test_a_stirred_rinse_is_no_fire(bar):
    """38. What can hurt now leads. A stirred rinse is no fire, home-made syrup and spirit carry no
    sulphites, a missing cherry adds none."""
    # That a strong bottle is kept from any flame stays one action away, among the general words.
    minded = [each for each in bar.drink("Rinse")["cautions"] if each["tier"] != "general"]
    shown = flat([minded, bar.drink("Rinse")["warnings"], bar.shown("Rinse")])
    said = "\n".join(shown.splitlines())
    assert not has(said, r"\b(fire|flame|flaming|ignit|alight|burn)")


@pytest.mark.parametrize("name", ["Straight Toddy", "Cherry Sour"])
def test_neither_home_made_syrup_nor_a_missing_cherry_carries_sulphites(changed, name):
    """38. What can hurt now leads. A stirred rinse is no fire, home-made syrup and spirit carry no
    sulphites, a missing cherry adds none."""
    changed.without_classics()
    changed.empty("Cocktail cherries")
    found = changed.answer("spec", "analyse", name)
    said = flat([found["allergens"], found["cautions"], changed.drink(name)["warnings"]])
    assert not has(said, "sulphite")


def test_tree_nuts_stand_in_the_line_of_tags(bar):
    """38. What can hurt now leads. A stirred rinse is no fire, home-made syrup and spirit carry no
    sulphites, a missing cherry adds none."""
    first = bar.shown("Army and Navy").splitlines()[0]
    assert has(first, "tree nuts")


def test_own_drinks_with_gin_and_no_egg_lead(bar):
    """39. Egg is struck out, own drinks lead; fino and dry vermouth are what ages. Clover Club's
    raspberry syrup is bad besides."""
    shown = bar.ask("tonight", "with:gin -egg")
    names = names_listed(shown)
    assert names.index("Fence Post") < names.index("Negroni")
    assert names.index("Cherry Sour") < names.index("Negroni")
    assert not {"Moth", "Clover Club", "Night Boat"} & set(names)
    assert "Gibson" not in names or has(bar.shown("Gibson", "with:gin -egg"), "onion")


def test_what_is_ageing_is_due(bar):
    """39. Egg is struck out, own drinks lead; fino and dry vermouth are what ages. Clover Club's
    raspberry syrup is bad besides."""
    assert "Bamboo" in names_listed(bar.ask("tonight", "due"))


def test_triple_sec_stands_in_for_dry_curacao(bar):
    """40. Both are orange liqueurs of 38-40 %, triple sec a little sweeter, without brandy. One
    taster is oneself; salt is sold by weight."""
    offers = bar.answer("stand-in", "dry curaçao", "--for", "Brandy Crusta")["stand_ins"]
    first = next(each for each in offers if each["owned"])
    assert "Vask triple sec" in first["bottle"]
    assert 0.8 <= first["ratio"] <= 1.1
    assert first["why"]


def test_a_trial_of_one_taster_needs_no_name(changed):
    """40. Both are orange liqueurs of 38-40 %, triple sec a little sweeter, without brandy. One
    taster is oneself; salt is sold by weight."""
    changed.tell("trial", "add", "Rinse", "--score", "Balance 4")
    (trial,) = changed.answer("trial", "list", "Rinse")["trials"]
    assert [(each["scale"], each["value"]) for each in trial["scores"]] == [("Balance", 4)]


def test_the_name_of_a_glass_stays_as_it_was_written(bar):
    """40. Both are orange liqueurs of 38-40 %, triple sec a little sweeter, without brandy. One
    taster is oneself; salt is sold by weight."""
    assert "Glass: Nick and Nora" in bar.ask("spec", "show", "Rinse")
    assert "Nick and Nora" in bar.ask("publish", "Rinse")


def test_bottles_go_out_with_their_days_and_come_back_equal(bar, tmp_path):
    """40. Both are orange liqueurs of 38-40 %, triple sec a little sweeter, without brandy. One
    taster is oneself; salt is sold by weight."""
    file = tmp_path / "bottles.csv"
    bar.ask("export", str(file))
    with file.open(encoding="utf-8-sig", newline="") as opened:
        rows = list(csv.DictReader(opened))
    (cream,) = (each for each in rows if each["product"] == "Double cream")
    assert (cream["opened"], cream["use_by"]) == ("2026-11-22", "2026-12-04")
    (salt,) = (each for each in rows if each["product"] == "Fine salt")
    assert salt["size"] == "500 g"
    again = SecondBar(tmp_path / "again.bar")
    again.tell("--new", "import", str(file), "--again")
    assert shelf(again) == shelf(bar)


def test_days_come_in_with_the_list(bar):
    """40. Both are orange liqueurs of 38-40 %, triple sec a little sweeter, without brandy. One
    taster is oneself; salt is sold by weight."""
    (cream,) = (each for each in bar.bottles() if "Double cream" in each["product"])
    assert (cream["opened"], cream["use_by"]) == ("2026-11-22", "2026-12-04")


def test_salt_is_sold_by_weight(bar):
    """40. Both are orange liqueurs of 38-40 %, triple sec a little sweeter, without brandy. One
    taster is oneself; salt is sold by weight."""
    shown = bar.ask("pantry")
    assert has(shown, "Fine salt[^\n]*500 g")
    assert not has(shown, "Fine salt[^\n]* ml")


def test_a_maker_of_the_sample_is_called_hollow_lamp(sample_bar):
    """40. Both are orange liqueurs of 38-40 %, triple sec a little sweeter, without brandy. One
    taster is oneself; salt is sold by weight."""
    shown = SecondBar(sample_bar).ask("bottles")
    assert "Hollow Lamp" in shown
    assert not has(shown, r"\bnine")


def shelf(bar: SecondBar) -> list[str]:
    """What stands there, without the numbers of the bottles."""
    things = ({key: each for key, each in one.items() if key != "id"} for one in bar.bottles())
    return sorted(map(flat, things))
