"""Bottles out of CSV: what is read, and where it is refused."""

from __future__ import annotations

from datetime import date

import pytest
from hypothesis import given
from hypothesis import strategies as st

from barkeep import resource_files
from barkeep.documents.bottles_csv import read_bottles_csv
from barkeep.documents.knowledge import read_tree
from barkeep.domain.amounts.units import BarUnits
from barkeep.domain.bottles.bottle import Label, Tare

HEADER = "product,maker,ingredient,abv,size,level,price,opened\n"


_TREE = read_tree(
    resource_files.read_text("ingredients.toml"), resource_files.read_text("confusables.toml")
)


def read(text):
    return read_bottles_csv(text, _TREE)


def one(row, header=HEADER):
    found = read(header + row)
    assert found.problems == ()
    (bottle,) = found.rows
    return bottle


def test_a_whole_row():
    bottle = one("Lamp Room dry gin,Pellow & Rudge,London dry gin,41.2,700 ml,0.4,24.50,2026-03-31")
    assert bottle.line == 2
    assert bottle.draft == Label(
        "Lamp Room dry gin", "Pellow & Rudge", "london-dry-gin", 700.0, "ml", 41.2, price=24.5
    )
    assert (bottle.level.amount, bottle.level.method) == (280.0, "tenths")
    assert bottle.opened == date(2026, 3, 31)


def test_what_may_be_left_out():
    bottle = one("Gin,,gin,,700,,,")
    assert bottle.level is None and bottle.opened is None
    assert (bottle.draft.abv_percent, bottle.draft.price, bottle.draft.maker) == (None, None, "")
    assert one("Gin,gin,70cl", "product,ingredient,size\n").draft.size == 700
    assert one("Gin,,gin,,700", HEADER).draft.size == 700


def test_columns_in_any_order_and_case_quoted_fields_and_a_byte_order_mark():
    text = '\ufeff"Size",INGREDIENT,Product\n70 cl,gin,"Signal, the second ""cut"""\n'
    assert one("", text).draft.name == 'Signal, the second "cut"'


def test_semicolons_and_decimal_commas():
    header = HEADER.replace(",", ";")
    bottle = one("Gin;Ninepin;gin;41,2 %;0,7 l;31 cl;24,50 €;", header)
    assert (bottle.draft.abv_percent, bottle.draft.size) == (41.2, 700)
    assert (bottle.draft.price, bottle.level.amount) == (24.5, 310)
    assert one("Gin\tgin\t700", "product\tingredient\tsize\n").draft.size == 700


def test_pieces_and_weights_take_their_own_unit():
    limes = one("Limes,,lime,,12,4,4.20,")
    assert (limes.draft.size, limes.draft.unit, limes.level.amount) == (12, "each", 4)
    sugar = one("Sugar,,white sugar,,1 kg,250 g,,")
    assert (sugar.draft.size, sugar.draft.unit, sugar.level.amount) == (1000, "g", 250)


def test_an_ingredient_may_be_given_by_key():
    assert one("Gin,,old-tom-gin,,700,,,").draft.ingredient == "old-tom-gin"


def test_unknown_columns_are_ignored_and_named():
    found = read("product,ingredient,size,shelf\nGin,gin,700,top\n")
    assert found.problems == () and len(found.rows) == 1
    assert found.ignored == ("shelf",)


@pytest.mark.parametrize(
    ("row", "column", "said"),
    [
        (",,gin,,700,,,", 1, "product is empty"),
        ("Gin,,,,700,,,", 3, "ingredient is empty"),
        ("Gin,,gin,,,,,", 5, "size is empty"),
        ("Gin,,bourban,,700,,,", 3, "no ingredient called “bourban”. The nearest are Bourbon"),
        ("Gin,,gin,strong,700,,,", 4, "write % vol"),
        ("Gin,,gin,141,700,,,", 4, "0 to 100"),
        ("Gin,,gin,-1,700,,,", 4, "write % vol"),
        ("Gin,,gin,,big,,,", 5, "cannot be read as an amount"),
        ("Gin,,gin,,700 g,,,", 5, "is a weight"),
        ("Gin,,gin,,0,,,", 5, "more than nothing"),
        ("Gin,,gin,,0.7,,,", 5, "write its unit, such as 0.7 l"),
        ("Gin,,gin,,700,1.4,,", 6, "a share of the bottle is 0 to 1"),
        ("Gin,,gin,,700,800 ml,,", 6, "is more than Gin holds"),
        ("Gin,,gin,,700,-3 ml,,", 6, "below nothing"),
        ("Gin,,gin,,700,,cheap,", 7, "write a number"),
        ('Gin,,gin,,700,,"1,000.00",', 7, "write a number"),
        ("Gin,,gin,,700,,,end of March", 8, "write a day as 2026-03-31"),
        ("Gin,,gin,,700,,,3/4/2026", 8, "write 2026-04-03 or 2026-03-04"),
        ("Gin,,gin,,700,,,2026-02-30", 8, "no such day"),
        ("Gin,,gin,41,2,700,,24,50", 9, "more fields than the header's 8"),
    ],
)
def test_each_bad_field_has_its_place(row, column, said):
    found = read(HEADER + "Sound,,gin,,700,,,\n" + row + "\nSound too,,gin,,700,,,\n")
    assert [each.line for each in found.rows] == [2, 4]
    (problem,) = found.problems
    assert (problem.line, problem.column) == (3, column)
    assert said in problem.message


def test_a_row_may_have_several_problems():
    found = read(HEADER + "Gin,,gin,x,y,0.5,z,today\n")
    assert [(each.line, each.column) for each in found.problems] == [(2, 5), (2, 4), (2, 7), (2, 8)]
    assert found.rows == ()


def test_more_fields_than_columns_are_refused():
    (problem,) = read("product,ingredient,size\nGin,gin,700,24,50\n").problems
    assert (problem.line, problem.column) == (2, 4)
    assert "more fields than the header's 3" in problem.message


def test_a_missing_or_doubled_column_is_named_and_nothing_is_read():
    found = read("product,maker\nGin,Ninepin\n")
    assert [each.message for each in found.problems] == [
        "the column “ingredient” is missing",
        "the column “size” is missing",
    ]
    assert found.rows == ()
    (problem,) = read("product,ingredient,size,Size\nGin,gin,700,700\n").problems
    assert (problem.line, problem.column) == (1, 4)


def test_line_numbers_count_lines_of_the_text_not_rows():
    text = HEADER + '"Gin\nof two lines",,gin,,700,,,\n\nGin,,moss,,700,,,\n'
    found = read(text)
    assert found.rows[0].line == 2 and found.rows[0].draft.name == "Gin of two lines"
    assert [each.line for each in found.problems] == [5]


def test_an_empty_text_says_what_was_expected():
    for text in ("", "\ufeff", "\n\n"):
        (problem,) = read(text).problems
        assert "product,maker,ingredient,abv,size,level,price,opened" in problem.message
    assert read(HEADER).rows == () and read(HEADER).problems == ()


@given(st.text(max_size=200))
def test_no_text_raises(text):
    read(text)
    read(HEADER + text)


_FIELDS = st.sampled_from(["", "gin", "700", "0.4", "41.2%", '"', "x;y", "2026-01-01", "1/0", "\n"])


@given(st.lists(st.lists(_FIELDS, max_size=9).map(",".join), max_size=6).map("\n".join))
def test_no_table_raises_and_each_row_is_used_or_refused(text):
    found = read(HEADER + text)
    refused = {problem.line for problem in found.problems}
    assert refused.isdisjoint(row.line for row in found.rows)


@pytest.mark.parametrize(
    ("size", "level", "ml"),
    [
        ("700", "300", 300),
        ("700 ml", "300", 300),
        ("700", "1", 700),
        ("70 cl", "31", 310),
        ('"0,7 l"', "0.5", 350),
        ("24 oz", "12.5", 369.67),
        ("5 imp oz", "4", 113.65),
    ],
)
def test_a_bare_level_above_one_is_in_the_unit_of_its_size(size, level, ml):
    assert one(f"Gin,,gin,,{size},{level},,").level.amount == pytest.approx(ml, abs=0.01)


@pytest.mark.parametrize(
    ("size", "level", "said"),
    [
        ("700", "800", "is more than Gin holds"),
        ("700", "4", "a share of the bottle is 0 to 1"),
        ("0.7 l", "300", "is more than Gin holds"),
    ],
)
def test_a_bare_level_that_is_rather_a_slip_is_refused(size, level, said):
    (problem,) = read(f"{HEADER}Gin,,gin,,{size},{level},,\n").problems
    assert problem.column == 6 and said in problem.message


def test_rows_say_where_their_fields_stand():
    columns = one("Gin\tgin\t700", "product\tingredient\tsize\n").columns
    assert columns == {"product": 1, "ingredient": 2, "size": 3}


MEASURED = "product,ingredient,abv,size,level,sugar,shape,tare\n"


def test_a_bottle_is_described_for_a_scale_and_a_ruler():
    bottle = one("Cassis,crème de cassis,18,500,716 g,450 g/l,Tall round bottle,371 g", MEASURED)
    assert (bottle.draft.shape, bottle.draft.sugar_g_per_l) == ("tall-round", 450.0)
    assert bottle.facts.tare == Tare(371.0, 1.0)
    assert bottle.level.amount == pytest.approx(300.2, abs=0.5)
    assert bottle.level.method == "weight"
    by_height = one("Gin,gin,40,700,11.5 cm,,squat-round,", MEASURED)
    assert (by_height.level.method, by_height.facts.tare) == ("height", None)
    assert one("Gin,gin,40,700,,,,0.52 kg", MEASURED).facts.tare == Tare(520.0, 1.0)
    assert one("Gin,gin,40,700,,,,520", MEASURED).facts.tare == Tare(520.0, 1.0)


def test_an_ounce_of_a_file_is_what_the_bar_means_by_it():
    text = HEADER + "Gin,,gin,,24 oz,12 oz,,\n"
    (us,), (imperial,) = (
        read_bottles_csv(text, _TREE, BarUnits(ounce)).rows for ounce in ("oz", "imp_oz")
    )
    assert us.draft.size == pytest.approx(709.76, abs=0.01)
    assert imperial.draft.size == pytest.approx(681.91, abs=0.01)
    for row in (us, imperial):
        assert row.level.amount == pytest.approx(row.draft.size / 2)
    bare = HEADER + "Gin,,gin,,24 US oz,12,,\n"
    (row,) = read_bottles_csv(bare, _TREE, BarUnits("imp_oz")).rows
    assert row.level.amount == pytest.approx(row.draft.size / 2)


@pytest.mark.parametrize(
    ("row", "column", "said"),
    [
        ("Gin,gin,40,700,812 g,,,", 5, "weighs without its contents is not known"),
        ("Gin,gin,40,700,400 g,,,520 g", 5, "less than Gin weighs empty"),
        ("Gin,gin,40,700,1500 g,,,520 g", 5, "weighs when it is full"),
        ("Cream,cream liqueur,17,700,900 g,,,520 g", 5, "it holds cream, milk, egg or coconut"),
        ("Gin,gin,40,700,90 cm,,,", 5, "above the whole bottle"),
        ("Gin,gin,40,700,,sweet,,", 6, "write g per litre"),
        ("Gin,gin,40,700,,,amphora,", 7, "it is one of general, wine, tall-round"),
        ("Gin,gin,40,700,,,,520 ml", 8, "is a volume"),
        ("Gin,gin,40,700,,,,0", 8, "more than nothing"),
    ],
)
def test_what_cannot_be_measured_so_has_its_place(row, column, said):
    (problem,) = read(MEASURED + row + "\n").problems
    assert (problem.line, problem.column) == (2, column)
    assert said in problem.message
