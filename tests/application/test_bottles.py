"""Bottles: every use case, every refusal, and what each leaves in the file."""

from __future__ import annotations

from datetime import date, datetime, timedelta
from math import inf, nan

import pytest

from barkeep.application.shelving import StillInUse, WrongState
from barkeep.domain.bottles.bottle import BottleFacts
from barkeep.domain.bottles.levels import MeasuredLevel
from barkeep.errors import (
    DuplicateName,
    InvalidField,
    LevelAboveSize,
    NegativeAmount,
    NotEnoughLeft,
    UnknownName,
)
from barkeep.translation import speak_through
from tests.application.conftest import NOON, gin_draft


def level(amount):
    return MeasuredLevel(amount, "volume", 5.0)


def test_a_product_is_taken_in_with_its_ingredient_as_a_key(bar):
    done = bar.inventory.add_product(gin_draft(ingredient="Navy Strength Gin", name=" navy  gin "))
    assert done.value.ingredient == "navy-strength-gin"
    assert done.value.title == "Tansy Lock navy gin"
    assert done.label == "Add product Tansy Lock navy gin"
    assert bar.snapshot.products == (done.value,)


@pytest.mark.parametrize(
    ("changes", "field"),
    [
        ({"name": "  "}, "name"),
        ({"size": 0.0}, "size"),
        ({"size": -1.0}, "size"),
        ({"size": nan}, "size"),
        ({"size": inf}, "size"),
        ({"unit": "oz"}, "unit"),
        ({"abv_percent": 100.5}, "strength"),
        ({"abv_percent": -1.0}, "strength"),
        ({"abv_percent": nan}, "strength"),
        ({"sugar_g_per_l": -3.0}, "sugar"),
        ({"acid_g_per_l": -3.0}, "acid"),
        ({"density_g_per_ml": 0.0}, "density"),
        ({"density_g_per_ml": nan}, "density"),
        ({"density_g_per_ml": 13.6}, "density"),
        ({"shape": "amphora"}, "shape"),
        ({"price": -0.01}, "price"),
        ({"barcode": "2140079190178"}, "barcode"),
    ],
)
def test_a_product_that_cannot_be_is_refused(bar, changes, field):
    with pytest.raises(InvalidField) as refused:
        bar.inventory.add_product(gin_draft(**changes))
    assert refused.value.field == field
    assert bar.snapshot.products == () and bar.undo_label is None


def test_a_barcode_is_kept_as_its_digits_and_a_shop_s_own_code_as_typed(bar):
    printed = bar.inventory.add_product(gin_draft(barcode=" 2 140079 190177 ")).value
    own = bar.inventory.add_product(gin_draft(name="Other gin", barcode="SHELF 12")).value
    assert (printed.barcode, own.barcode) == ("2140079190177", "SHELF 12")


def test_an_unknown_ingredient_names_the_nearest(bar):
    with pytest.raises(UnknownName) as refused:
        bar.inventory.add_product(gin_draft(ingredient="londn dry gin"))
    assert refused.value.nearest[0] == "London dry gin"
    assert len(refused.value.nearest) == 3


def test_a_second_product_of_the_same_title_and_size_is_refused(bar):
    bar.inventory.add_product(gin_draft())
    with pytest.raises(DuplicateName, match="Tansy LOCK Navy strength gin, 700 ml"):
        bar.inventory.add_product(gin_draft(maker="Tansy LOCK", name="Navy strength gin"))
    bar.inventory.add_product(gin_draft(size=500.0))
    assert len(bar.snapshot.products) == 2


def test_a_product_is_changed_and_its_bottles_with_it(bar, gin):
    done = bar.inventory.change_product(gin.product.id, gin_draft(price=41.0))
    assert done.value.price == 41.0
    assert bar.snapshot.bottles[0].product is bar.snapshot.products[0] == done.value
    assert done.changes == {"products", "bottles"}
    bar.undo()
    assert bar.snapshot.bottles[0].product.price == 38.5


def test_a_product_may_keep_its_own_name_but_not_take_anothers(bar, gin):
    other = bar.inventory.add_product(gin_draft(name="dry gin")).value
    bar.inventory.change_product(other.id, gin_draft(name="dry gin", price=20.0))
    with pytest.raises(DuplicateName):
        bar.inventory.change_product(other.id, gin_draft())


def test_a_product_cannot_shrink_below_what_its_bottles_hold(bar, gin):
    with pytest.raises(LevelAboveSize):
        bar.inventory.change_product(gin.product.id, gin_draft(size=500.0))
    with pytest.raises(InvalidField, match="counted in ml"):
        bar.inventory.change_product(gin.product.id, gin_draft(unit="g"))


def test_a_product_with_bottles_stays(bar, gin):
    with pytest.raises(StillInUse, match="1 bottle still refer"):
        bar.inventory.remove_product(gin.product.id)
    bar.inventory.remove(gin.id)
    bar.inventory.remove_product(gin.product.id)
    assert bar.snapshot.products == ()
    bar.inventory.add_product(gin_draft())


def test_a_received_bottle_is_full_and_sealed_at_the_end_of_the_shelf(bar, gin):
    second = bar.inventory.receive(gin.product.id)
    assert second.label == "Receive Tansy Lock navy-strength gin"
    assert second.value.level.amount == 700.0 and second.value.level.state == "sealed"
    assert second.value.received == NOON.date()
    assert [each.id for each in bar.snapshot.bottles] == [gin.id, second.value.id]


def test_a_new_product_and_its_bottle_come_in_together_or_not_at_all(bar):
    with pytest.raises(LevelAboveSize):
        bar.inventory.receive_new(gin_draft(), 701.0)
    assert bar.snapshot.products == () and bar.undo_label is None
    bottle = bar.inventory.receive_new(gin_draft(), 350.0).value
    assert (bottle.product.title, bottle.level.amount) == ("Tansy Lock navy-strength gin", 350.0)
    bar.undo()
    assert bar.snapshot.products == () and bar.snapshot.bottles == ()


def test_a_bottle_is_received_with_less(bar, gin):
    assert bar.inventory.receive(gin.product.id, 350.0).value.level.amount == 350.0
    for wrong in (0.0, -1.0, nan, inf):
        with pytest.raises(InvalidField):
            bar.inventory.receive(gin.product.id, wrong)
    with pytest.raises(LevelAboveSize):
        bar.inventory.receive(gin.product.id, 701.0)
    with pytest.raises(UnknownName):
        bar.inventory.receive(999)


def test_what_is_made_here_keeps_as_long_as_its_ingredient(bar):
    draft = gin_draft(name="syrup", ingredient="simple-syrup", house_made=True)
    syrup = bar.inventory.add_product(draft).value
    bottle = bar.inventory.receive(syrup.id).value
    assert bottle.made == NOON.date()
    assert bottle.use_by == NOON.date() + timedelta(days=14)
    dated = bar.inventory.receive(
        syrup.id, facts=BottleFacts(made=date(2026, 11, 1), use_by=date(2026, 11, 9))
    ).value
    assert (dated.made, dated.use_by) == (date(2026, 11, 1), date(2026, 11, 9))
    with pytest.raises(InvalidField, match="use by"):
        bar.inventory.receive(
            syrup.id, facts=BottleFacts(made=date(2026, 11, 9), use_by=date(2026, 11, 1))
        )


def test_dates_are_corrected(bar, gin):
    bottle = bar.inventory.redate(gin.id, None, date(2027, 1, 1)).value
    assert bottle.use_by == date(2027, 1, 1)
    bar.undo()
    assert bar.snapshot.bottles[0].use_by is None


def test_a_bottle_opens_once(bar, gin):
    opened = bar.inventory.open(gin.id).value
    assert opened.level.state == "open" and opened.level.opened == NOON.date()
    with pytest.raises(WrongState, match="is open already: it was opened on 21 November 2026"):
        bar.inventory.open(gin.id)
    bar.inventory.empty(gin.id)
    with pytest.raises(WrongState, match="is empty already"):
        bar.inventory.open(gin.id)


def test_a_pour_opens_and_takes_away(bar, gin):
    done = bar.inventory.pour(gin.id, 60.0, "Snow Plough")
    assert done.value.level.amount == 640.0 and done.value.level.state == "open"
    assert done.label == "Pour 60 ml of Tansy Lock navy-strength gin"
    with pytest.raises(NotEnoughLeft) as refused:
        bar.inventory.pour(gin.id, 641.0)
    assert (refused.value.amount, refused.value.left) == (641.0, 640.0)
    for wrong in (0.0, -5.0, nan, inf):
        with pytest.raises(InvalidField):
            bar.inventory.pour(gin.id, wrong)
    assert bar.snapshot.bottles[0].level.amount == 640.0


def test_the_last_pour_empties(bar, gin):
    # Ten pours of a tenth do not add up to the whole in binary.
    for _ in range(9):
        bar.inventory.pour(gin.id, 77.7)
    last = bar.inventory.pour(gin.id, 700.0 - 9 * 77.7).value
    assert last.level.state == "empty" and last.level.amount == 0.0


def test_waste_is_not_a_pour(bar, gin):
    done = bar.inventory.waste(gin.id, 20.0, "spilled")
    assert done.label == "Waste 20 ml of Tansy Lock navy-strength gin"
    entry, after = bar.inventory.history(gin.id)[-1]
    assert (entry.kind, entry.note, after) == ("waste", "spilled", 680.0)
    with pytest.raises(NotEnoughLeft):
        bar.inventory.waste(gin.id, 700.0)


def test_a_bottle_is_emptied_once(bar, gin):
    assert bar.inventory.empty(gin.id).value.level.state == "empty"
    with pytest.raises(WrongState, match="is empty already"):
        bar.inventory.empty(gin.id)


def test_a_correction_adds_and_takes_away_within_the_bottle(bar, gin):
    assert bar.inventory.correct(gin.id, -100.0).value.level.amount == 600.0
    assert bar.inventory.correct(gin.id, 50.0).value.level.amount == 650.0
    with pytest.raises(LevelAboveSize):
        bar.inventory.correct(gin.id, 51.0)
    with pytest.raises(NotEnoughLeft):
        bar.inventory.correct(gin.id, -651.0)
    for wrong in (0.0, nan):
        with pytest.raises(InvalidField):
            bar.inventory.correct(gin.id, wrong)
    bar.inventory.empty(gin.id)
    with pytest.raises(WrongState, match="count it"):
        bar.inventory.correct(gin.id, 10.0)


def test_a_count_gives_the_variance(bar, gin):
    bar.inventory.pour(gin.id, 60.0)
    done = bar.counting.count({gin.id: level(600.0)})
    (counted,) = done.value
    assert (counted.expected, counted.counted, counted.variance) == (640.0, 600.0, 40.0)
    assert counted.bottle.level.method == "volume" and counted.bottle.level.sigma == 5.0
    assert done.label == "Count Tansy Lock navy-strength gin"


def test_many_bottles_are_counted_in_one_action(bar, gin):
    ids = [gin.id] + [bar.inventory.receive(gin.product.id).value.id for _ in range(5)]
    done = bar.counting.count({bottle_id: level(300.0) for bottle_id in ids})
    assert done.label == "Count 6 bottles" == bar.undo_label
    assert {each.level.amount for each in bar.snapshot.bottles} == {300.0}
    bar.undo()
    assert {each.level.amount for each in bar.snapshot.bottles} == {700.0}
    assert {each.level.state for each in bar.snapshot.bottles} == {"sealed"}


@pytest.mark.parametrize(
    ("wrong", "error"),
    [(701.0, LevelAboveSize), (-1.0, NegativeAmount), (nan, InvalidField), (inf, InvalidField)],
)
def test_one_wrong_level_leaves_all_uncounted(bar, gin, wrong, error):
    second = bar.inventory.receive(gin.product.id).value
    before = bar.snapshot
    with pytest.raises(error):
        bar.counting.count({gin.id: level(300.0), second.id: level(wrong)})
    assert bar.snapshot is before
    assert len(bar.inventory.history(gin.id)) == 1


def test_a_bottle_is_counted_once_in_a_count(bar, gin):
    with pytest.raises(InvalidField, match="named once"):
        bar.counting.count([(gin.id, level(300.0)), (gin.id, level(200.0))])
    with pytest.raises(InvalidField, match="at least one"):
        bar.counting.count({})
    with pytest.raises(UnknownName):
        bar.counting.count({999: level(1.0)})


def test_a_sealed_and_an_empty_bottle_may_be_counted(bar, gin):
    sealed = bar.counting.count({gin.id: level(700.0)}).value[0].bottle
    assert sealed.level.state == "sealed" and sealed.level.counted == NOON
    bar.inventory.empty(gin.id)
    found = bar.counting.count({gin.id: level(80.0)}).value[0]
    assert found.bottle.level.state == "open" and found.variance == -80.0


def test_the_shelf_is_reordered_and_back(bar, gin):
    second = bar.inventory.receive(gin.product.id).value
    third = bar.inventory.receive(gin.product.id).value
    done = bar.inventory.reorder([third.id])
    assert [each.id for each in done.value] == [third.id, gin.id, second.id]
    bar.undo()
    assert [each.id for each in bar.snapshot.bottles] == [gin.id, second.id, third.id]
    with pytest.raises(UnknownName):
        bar.inventory.reorder([third.id, 999])
    with pytest.raises(InvalidField):
        bar.inventory.reorder([third.id, third.id])


def test_a_bottle_is_put_before_another_and_last(bar, gin):
    second = bar.inventory.receive(gin.product.id).value
    third = bar.inventory.receive(gin.product.id).value

    def along():
        return [each.id for each in bar.snapshot.bottles]

    assert bar.inventory.move(third.id, gin.id).value.id == third.id
    assert along() == [third.id, gin.id, second.id]
    assert bar.undo_label == "Move Tansy Lock navy-strength gin"
    bar.inventory.move(gin.id, None)
    assert along() == [third.id, second.id, gin.id]
    bar.undo()
    bar.undo()
    assert along() == [gin.id, second.id, third.id]
    assert bar.inventory.move(gin.id, second.id).changes == frozenset()
    for before, refused in ((gin.id, InvalidField), (999, UnknownName)):
        with pytest.raises(refused):
            bar.inventory.move(gin.id, before)


def test_an_order_that_is_there_already_is_no_action(bar, gin):
    done = bar.inventory.reorder([gin.id])
    assert done.changes == frozenset()
    assert bar.undo_label == "Receive Tansy Lock navy-strength gin"


def test_a_removed_bottle_comes_back_with_its_history(bar, gin):
    bar.inventory.pour(gin.id, 60.0)
    assert bar.inventory.remove(gin.id).value.level.amount == 640.0
    assert bar.snapshot.bottles == ()
    for use_case in (bar.inventory.open, bar.inventory.history, bar.inventory.remove):
        with pytest.raises(UnknownName):
            use_case(gin.id)
    bar.undo()
    assert bar.snapshot.bottles[0].level.amount == 640.0
    assert len(bar.inventory.history(gin.id)) == 2


def test_history_shows_only_what_counts(bar, gin, clock):
    bar.inventory.pour(gin.id, 60.0)
    clock.now = datetime(2026, 11, 22, 9, 30)
    bar.inventory.pour(gin.id, 40.0)
    bar.undo()
    steps = bar.inventory.history(gin.id)
    assert [(entry.kind, entry.at, after) for entry, after in steps] == [
        ("receive", NOON, 700.0),
        ("pour", NOON, 640.0),
    ]


def test_steps_are_kept_in_english_whatever_is_spoken(bar, gin):
    speak_through(lambda words, _about: f"[{words}]")
    try:
        inventory = bar.inventory
        done = (inventory.open(gin.id), inventory.pour(gin.id, 60.0), inventory.remove(gin.id))
    finally:
        speak_through(None)
    title = gin.product.title
    assert [each.label for each in done] == [
        f"Open {title}",
        f"Pour 60 ml of {title}",
        f"Remove {title}",
    ]
