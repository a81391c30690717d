"""A bar with too little of the ordinary: only navy gin, smoky Scotch, a little carton white."""

from __future__ import annotations

import pytest

from tests.second_bar.asking import HERE, TODAY, SecondBar, about, flat


@pytest.fixture(scope="module")
def narrow_file(tmp_path_factory):
    """The bar, built once."""
    bar = SecondBar(tmp_path_factory.mktemp("narrow") / "narrow.bar")
    bar.tell("--new", "import", str(HERE / "narrow_bottles.csv"))
    bar.tell("spec", "add", str(HERE / "narrow_specs.txt"))
    bar.without_classics()
    return bar.path


@pytest.fixture
def narrow(narrow_file, tmp_path) -> SecondBar:
    """A copy of it to ask and to change."""
    copy = tmp_path / "copy.bar"
    copy.write_bytes(narrow_file.read_bytes())
    return SecondBar(copy, TODAY)


class TestOnlyNavyGinIsLeft:
    """It stands in at three quarters, and is nowhere taken for gin."""

    def test_the_analysis_is_of_gin(self, narrow):
        found = narrow.answer("spec", "analyse", "Slipway")
        assert found["abv_percent"] < 18.0, "two ounces of 57 % would be 20 %"

    def test_a_batch_says_that_gin_is_short(self, narrow):
        said = narrow.ask("batch", "Tall Reed", "--serves", "6")
        assert "Short of gin: 355 ml needed, 0 ml there." in said
        assert "350 ml  Gin (navy" not in said

    def test_the_shopping_does_not_buy_it_for_gin(self, narrow):
        shoot = narrow.shoot({"Tall Reed": 1})
        (gin,) = [each for each in shoot.items if each["ingredient"].casefold() == "gin"]
        assert gin["product"] is None

    def test_unless_it_is_the_owners_gin(self, narrow):
        narrow.tell("setting", "house", "gin=Fleet Wall navy gin")
        narrow.empty("Fleet Wall")
        shoot = narrow.shoot({"Tall Reed": 1})
        assert "Fleet Wall navy gin" in flat(shoot.items)


class TestALittleCartonWhite:
    """Enough for three sours; the fourth takes an egg."""

    def test_the_sheet_separates_one_egg_and_no_more(self, narrow):
        steps = about(narrow.shoot({"Gull": 4}).steps, "egg white")
        assert "from 1 × whole egg" in steps

    def test_analysed_it_is_no_raw_egg(self, narrow):
        assert "Raw egg" not in narrow.ask("spec", "analyse", "Gull")

    def test_three_are_batched_of_it_alone(self, narrow):
        said = narrow.ask("batch", "Gull", "--serves", "3")
        assert "96 ml  Egg white (pasteurised egg white)" in said
        assert "Separate" not in said and "Raw egg" not in said

    def test_four_take_an_egg_and_its_caution(self, narrow):
        said = narrow.ask("batch", "Gull", "--serves", "4")
        assert "First take the 100 ml of pasteurised egg white there is." in said
        assert "Separate 28 ml of egg white from 1 × whole egg first." in said
        assert "Raw egg" in said and "Short of" not in said

    def test_due_finds_what_uses_it(self, narrow):
        assert "Gull" in narrow.drinks("own due")

    def test_due_finds_what_fruit_gives(self, narrow):
        assert "Jetty" in narrow.drinks("own due:21") and "Jetty" not in narrow.drinks("own due")


def test_smoky_scotch_is_no_reason_to_say_that_scotch_is_low(narrow):
    said = narrow.shown("Weir", "--all", "--full")
    assert "Only 600 ml" not in said
    assert "smoky Scotch is poured only when asked for, and is not close enough" in said


def test_after_the_carton_the_raw_egg_is_said(narrow):
    said = " ".join(narrow.ask("tonight", "Gull").split())
    assert "After 3: Raw egg" in said
    narrow.empty("Eggs")
    assert "Raw egg" not in narrow.ask("tonight", "Gull")


class TestABatchOfAllThereIs:
    """All the lemon is its fruit as well; what is short says what else is there."""

    def test_all_the_lemon_is_six_lemons(self, narrow):
        found = narrow.answer("batch", "Jetty", "--from", "lemon juice=all")
        assert 10.0 < found["serves"] < 10.4, "6 × 38 / 22.2"

    def test_the_rest_of_the_rum_is_named(self, narrow):
        said = narrow.ask("batch", "Jetty", "--from", "lemon juice=all")
        assert "Short of rum (white rum): 608 ml needed, 300 ml there." in said
        assert "To go on with there is 500 ml of aged rum." in said

    def test_so_is_what_stands_in_and_how_much_of_it(self, narrow):
        said = narrow.ask("batch", "Tall Reed", "--serves", "6")
        assert "400 ml of navy-strength gin, as a stand-in, 0.75 times as much." in said

    def test_all_of_nothing_is_refused(self, narrow):
        status, _out, err = narrow.run("batch", "Jetty", "--from", "lime juice=all")
        assert (status, "there is no lime juice" in err) == (1, True)


@pytest.mark.parametrize("query", [["own", "-egg"], ["-egg", "own"], ["own -egg"]])
def test_a_query_is_typed_with_or_without_quotation_marks(narrow, query):
    found = narrow.drinks(*query)
    assert "Jetty" in found and "Gull" not in found


def test_a_label_that_says_less_is_no_second_purchase(narrow):
    narrow.tell("setting", "classics", "yes")
    found = {each["ingredient"]: each for each in narrow.answer("next-bottle")["candidates"]}
    assert "Scotch whisky" not in found
    assert "Scotch whisky turns " in found["Blended Scotch"]["why"]
    assert "ready, of which Whisky Highball with a stand-in" in found["Blended Scotch"]["why"]


def test_a_syrup_of_a_list_ages_from_the_day_it_was_made(narrow, tmp_path):
    """45 days old, and not opened today because nobody said when."""
    rows = tmp_path / "made.csv"
    rows.write_text(
        "product,ingredient,size,level,made,house_made\n"
        "Old syrup,simple-syrup,500 ml,90 ml,2026-10-15,yes\n"
        "New syrup,rich-simple-syrup,500 ml,90 ml,2026-11-24,yes\n",
        encoding="utf-8",
    )
    assert "counts as opened today" not in narrow.tell("import", str(rows))
    said = narrow.ask("bottles")
    assert "Old syrup was made 45 days ago and keeps 30 days: not safe, so not counted." in said
    assert "New syrup was" not in said
    assert narrow.drink("Jetty")["make_first"], "the old syrup is poured away"


def test_the_safer_white_is_offered_before_the_raw_one(narrow):
    first, second, *_others = narrow.answer("stand-in", "egg white")["stand_ins"]
    assert (first["ingredient"], second["ingredient"]) == ("Pasteurised egg white", "Egg white")


def test_navy_gin_keeps_no_par_of_gin(narrow):
    narrow.tell("buy", "--par", "gin=1 bottle")
    said = narrow.ask("buy")
    assert "par is 1 bottle, and 0 ml will be left" in said
    narrow.tell("setting", "house", "gin=Fleet Wall navy gin")
    assert "par is 1 bottle, and 400 ml will be left" in narrow.ask("buy")
