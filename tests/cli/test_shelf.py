"""bottles, pantry, count, receive, history, undo and redo."""

from __future__ import annotations

import pytest

from barkeep.application.bar import Bar
from barkeep.domain.amounts.measures import show_volume

BOTTLE = [
    *("id", "product", "ingredient", "abv_percent", "size_ml"),
    *("level_ml", "opened", "use_by", "price", "barcode"),
    *("good_until", "past", "past_because"),
    *("place", "state", "low", "due", "stands_as", "colour"),
]
COUNTED = [
    *("bottle", "expected_ml", "counted_ml", "variance_ml"),
    *("sigma_ml", "expected", "counted", "variance", "sigma", "unit"),
    *("method", "flagged"),
]
ENTRY = [
    *("id", "product", "ingredient", "unit", "size"),
    *("level", "opened", "use_by", "price", "barcode"),
    *("good_until", "past", "past_because"),
    *("place", "state", "low", "due", "stands_as", "colour"),
]


@pytest.fixture
def snapshot(bar):
    def now():
        with Bar.open(bar) as opened:
            return opened.snapshot

    return now


@pytest.fixture
def open_bottle(snapshot):
    """A bottle that is open, not empty, and the only one of its product."""
    bottles = snapshot().bottles
    titles = [each.product.title for each in bottles]
    return next(
        each
        for each in bottles
        if each.level.state == "open"
        and each.product.unit == "ml"
        and titles.count(each.product.title) == 1
        and each.level.amount > 100.0
    )


class TestLists:
    def test_bottles_and_pantry_part_the_shelf(self, barkeep, bar, snapshot, tree):
        bottles = barkeep("--bar", bar, "bottles", "--json").answer["bottles"]
        pantry = barkeep("--bar", bar, "pantry", "--json").answer["pantry"]
        assert all(list(each) == BOTTLE for each in bottles)
        assert all(list(each) == ENTRY for each in pantry)
        ids = [each["id"] for each in (*bottles, *pantry)]
        assert sorted(ids) == sorted(each.id for each in snapshot().bottles)
        assert {each["unit"] for each in pantry} <= {"g", "each"}
        assert len(bottles) >= 60 and len(pantry) >= 5

    def test_a_bottle_says_what_the_bar_says(self, barkeep, bar, open_bottle, tree):
        said = barkeep("--bar", bar, "bottles", "--json").answer["bottles"]
        (one,) = [each for each in said if each["id"] == open_bottle.id]
        product = open_bottle.product
        assert one["product"] == product.title
        assert one["ingredient"] == tree.name(product.ingredient)
        assert one["level_ml"] == pytest.approx(open_bottle.level.amount, abs=0.05)
        assert one["size_ml"] == product.size
        assert one["opened"] == open_bottle.level.opened.isoformat()

    def test_text_draws_each_level(self, barkeep, bar, open_bottle):
        shown = barkeep("--bar", bar, "bottles").out
        row = next(line for line in shown.splitlines() if open_bottle.product.title in line)
        assert show_volume(open_bottle.level.amount) in row
        assert "█" in row
        assert "sealed" in shown
        assert "Limes" in barkeep("--bar", bar, "pantry").out
        assert "Limes" not in shown


class TestCount:
    def test_a_share_of_the_bottle(self, barkeep, bar, open_bottle, snapshot):
        title, size = open_bottle.product.title, open_bottle.product.size
        answer = barkeep("--bar", bar, "count", title, "0.1", "--json").answer
        assert list(answer) == COUNTED
        assert answer["bottle"] == title
        assert answer["counted_ml"] == pytest.approx(0.1 * size)
        expected = open_bottle.level.amount
        assert answer["expected_ml"] == pytest.approx(expected, abs=0.01)
        assert answer["variance_ml"] == pytest.approx(expected - 0.1 * size, abs=0.01)
        now = next(each for each in snapshot().bottles if each.id == open_bottle.id)
        assert (now.level.amount, now.level.method) == (pytest.approx(0.1 * size), "tenths")

    @pytest.mark.parametrize(
        ("level", "ml"), [(["50 ml"], 50), (["50", "ml"], 50), (["1 oz"], 29.57), (["5 cl"], 50)]
    )
    def test_a_volume(self, barkeep, bar, open_bottle, level, ml):
        ran = barkeep("--bar", bar, "count", str(open_bottle.id), *level, "--json")
        assert ran.answer["counted_ml"] == pytest.approx(ml, abs=0.01)

    def test_pieces_have_no_millilitres(self, barkeep, bar):
        answer = barkeep("--bar", bar, "count", "Limes", "2", "--json").answer
        assert list(answer) == COUNTED
        assert {answer[key] for key in COUNTED if key.endswith("_ml")} == {None}
        assert (answer["counted"], answer["sigma"], answer["unit"]) == (2, 0, "each")

    def test_millilitres_stand_under_both_keys(self, barkeep, bar, open_bottle):
        answer = barkeep("--bar", bar, "count", str(open_bottle.id), "50 ml", "--json").answer
        assert (answer["counted"], answer["counted_ml"], answer["unit"]) == (50, 50, "ml")
        assert answer["variance"] == answer["variance_ml"]

    def test_half_a_lime_is_not_half_the_box(self, barkeep, bar):
        assert barkeep("--bar", bar, "count", "Limes", "0.5", "--json").answer["counted"] == 0.5
        said = barkeep("--bar", bar, "count", "Limes", "3").out
        assert said == "Limes: 3, 2.5 more than expected (0.5).\n"

    def test_text_says_what_is_missing(self, barkeep, bar, open_bottle):
        shown = barkeep("--bar", bar, "count", open_bottle.product.title, "50 ml").out
        gone = show_volume(open_bottle.level.amount - 50)
        title = open_bottle.product.title
        assert shown.startswith(f"{title}: 50 ml ± 10, {gone} less than expected")
        shown = barkeep("--bar", bar, "count", title, "80 ml").out
        assert "30 ml more than expected (50 ml): beyond the doubt of ± 14 ml" in shown
        shown = barkeep("--bar", bar, "count", title, "70 ml").out
        assert "as expected (80 ml): 10 ml less, within ± 14 ml" in shown
        shown = barkeep("--bar", bar, "count", title, "70 ml").out
        assert "70 ml ± 10, as expected (70 ml).\n" in shown

    @pytest.mark.parametrize(
        ("level", "said"),
        [
            ("1.2", "a share of the bottle is 0 to 1"),
            ("-0.2", "below nothing"),
            ("-5 ml", "below nothing"),
            ("5000 ml", "more than"),
            ("5000 g", "more than"),
            ("5 g", "less than"),
            ("3 dashes", "a dash is too small to measure a level in"),
            ("4 each", "is a number of pieces"),
            ("80 cm", "above the whole bottle"),
            ("nan", "cannot be read as an amount"),
            ("some", "cannot be read as an amount"),
        ],
    )
    def test_a_level_that_cannot_be_changes_nothing(self, barkeep, bar, open_bottle, level, said):
        before = bar.read_bytes()
        refusal = barkeep("--bar", bar, "count", str(open_bottle.id), level).refusal
        assert said in refusal and "\n" not in refusal
        assert bar.read_bytes() == before

    def test_a_name_of_two_bottles_means_the_only_open_one_or_asks_which(
        self, barkeep, bar, snapshot
    ):
        answer = barkeep("--bar", bar, "count", "Lamp Room", "0.4", "--json").answer
        assert answer["counted_ml"] == 280
        assert [each.level.amount for each in snapshot().bottles[:2]] == [280, 700]
        barkeep("--bar", bar, "count", "2", "0.9")
        said = barkeep("--bar", bar, "count", "Lamp Room", "0.4").refusal
        assert "could be more than one bottle" in said and "(#1)" in said and "(#2)" in said

    def test_an_unknown_bottle_gets_the_nearest(self, barkeep, bar, open_bottle):
        misspelt = open_bottle.product.title[:-2] + "zz"
        said = barkeep("--bar", bar, "count", misspelt, "0.4").refusal
        assert said.startswith("There is no bottle called") and open_bottle.product.title in said


class TestUndo:
    def test_a_count_is_taken_back_and_done_again_in_other_runs(
        self, barkeep, bar, open_bottle, snapshot
    ):
        def level():
            return next(e for e in snapshot().bottles if e.id == open_bottle.id).level.amount

        barkeep("--bar", bar, "count", str(open_bottle.id), "50 ml")
        label = f"Count {open_bottle.product.title}"
        assert barkeep("--bar", bar, "undo", "--json").answer == {"undone": label}
        assert level() == pytest.approx(open_bottle.level.amount)
        assert barkeep("--bar", bar, "redo", "--json").answer == {"redone": label}
        assert level() == pytest.approx(50)
        assert barkeep("--bar", bar, "undo").out == f"Undone: {label}.\n"
        assert barkeep("--bar", bar, "redo").out == f"Done again: {label}.\n"

    def test_with_nothing_to_undo_it_says_so(self, barkeep, bar):
        assert barkeep("--bar", bar, "undo").refusal == "There is nothing to undo."
        assert barkeep("--bar", bar, "redo").refusal == "There is nothing to redo."


class TestReceive:
    def test_a_full_bottle_of_a_known_product(self, barkeep, bar, open_bottle, snapshot):
        title = open_bottle.product.title
        answer = barkeep("--bar", bar, "receive", title, "--json").answer
        assert list(answer) == ["id", "product", "unit", "level", "made", "use_by", "paid"]
        assert answer["level"] == open_bottle.product.size
        new = next(each for each in snapshot().bottles if each.id == answer["id"])
        assert new.product.title == title and new.level.state == "sealed"

    def test_a_level_and_a_day(self, barkeep, bar, open_bottle):
        argv = ("receive", open_bottle.product.title, "--level", "200 ml", "--use-by", "2199-01-31")
        assert "with 200 ml, use by 2199-01-31" in barkeep("--bar", bar, *argv).out

    def test_an_unknown_product_is_refused(self, barkeep, bar):
        assert "no product called" in barkeep("--bar", bar, "receive", "moss wine zz").refusal

    def test_a_day_that_is_none_is_a_usage_error(self, barkeep, bar, open_bottle):
        with pytest.raises(SystemExit) as left:
            barkeep("--bar", bar, "receive", "x", "--use-by", "soon")
        assert left.value.code == 2


def test_a_bottle_is_put_at_another_place(barkeep, bar, open_bottle, snapshot):
    title, first = open_bottle.product.title, snapshot().bottles[0]
    said = barkeep("--bar", bar, "move", title, "--last").out
    many = len(snapshot().bottles)
    assert said == f"{title} stands last, {many} along the shelf.\n"
    answer = barkeep("--bar", bar, "move", title, "--before", str(first.id), "--json").answer
    assert answer == {"id": open_bottle.id, "product": title, "place": 1}
    assert snapshot().bottles[0].id == open_bottle.id
    shown = barkeep("--bar", bar, "bottles", "--json").answer["bottles"][0]
    assert (shown["place"], shown["state"]) == (1, "open")
    assert "name another bottle" in barkeep("--bar", bar, "move", title, "--before", title).refusal
    assert barkeep("--bar", bar, "undo").status == 0


def test_history_tells_every_step_with_the_level_after_it(barkeep, bar, open_bottle):
    barkeep("--bar", bar, "count", str(open_bottle.id), "50 ml")
    answer = barkeep("--bar", bar, "history", str(open_bottle.id), "--json").answer
    assert list(answer) == ["bottle", "unit", "entries"]
    first, *_, last = answer["entries"]
    assert list(first) == [
        *("at", "kind", "amount", "level", "method", "sigma", "note"),
        "level_sigma",
    ]
    assert last["level_sigma"] == 5
    assert first["kind"] == "receive"
    assert (last["kind"], last["level"], last["method"], last["sigma"]) == (
        "count",
        50,
        "volume",
        5,
    )
    assert [each["at"] for each in answer["entries"]] == sorted(e["at"] for e in answer["entries"])
    shown = barkeep("--bar", bar, "history", str(open_bottle.id)).out
    assert shown.startswith(f"{open_bottle.product.title} (#{open_bottle.id})\n")
    assert len(shown.splitlines()) == 3 + len(answer["entries"])


def test_bottles_are_found_by_the_number_under_their_barcode(barkeep, bar):
    def asked(code):
        return barkeep("--bar", bar, "bottles", "--code", code, "--json")

    found = asked("2 140079 190177").answer["bottles"]
    assert {each["product"] for each in found} == {"Pellow & Rudge Lamp Room dry gin"}
    wrong, nobody = asked("2140079190178"), asked("2999999999991")
    assert wrong.status == 1 and "by its other digits the last one is 7" in wrong.err
    assert nobody.status == 1 and "No bottle has the barcode 2999999999991" in nobody.err
