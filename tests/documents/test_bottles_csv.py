"""Bottles out of CSV: what is read, and where it is refused."""

from __future__ import annotations

from datetime import date

import pytest
from hypothesis import given
from hypothesis import strategies as st

from barkeep import resource_files
from barkeep.documents.bottles_csv import is_bottles_csv, read_bottles_csv, rest_csv
from barkeep.documents.knowledge import read_tree
from barkeep.domain.amounts.units import BarUnits
from barkeep.domain.bottles.bottle import Label, Tare
from tests.walked import walked

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
    bottle = one("Gin;Hollow Lamp;gin;41,2 %;0,7 l;31 cl;24,50 €;", header)
    assert (bottle.draft.abv_percent, bottle.draft.size) == (41.2, 700)
    assert (bottle.draft.price, bottle.level.amount) == (24.5, 310)
    assert one("Gin\tgin\t700", "product\tingredient\tsize\n").draft.size == 700


def test_pieces_and_weights_take_their_own_unit():
    limes = one("Limes,,lime,,12,4,4.20,")
    assert (limes.draft.size, limes.draft.unit, limes.level.amount) == (12, "each", 4)
    sugar = one("Sugar,,white sugar,,1 kg,250 g,,")
    assert (sugar.draft.size, sugar.draft.unit, sugar.level.amount) == (1000, "g", 250)


def test_a_weight_of_what_is_poured_is_a_size_where_it_is_sold_so():
    (row,) = read("product,ingredient,size\nBlossom,honey,340 g\n").listed
    assert row.bottle.draft.size == pytest.approx(237.26, abs=0.01)
    assert row.remarks == ("340 g of honey is about 237 ml.",)
    (cubes,) = read("product,ingredient,size\nCubes,sugar cube,500 g\n").listed
    assert cubes.bottle is None and cubes.problems[0].likely == "125"
    (gin,) = read("product,ingredient,size\nGin,gin,700 g\n").listed
    assert "is a weight" in gin.problems[0].message


@walked(
    ("column", "cell", "said"),
    [
        ("use_by", "soon", "write a day as 2026-03-31"),
        ("use_by", "31.2.2026", "there is no such day"),
        ("made", "2999-01-01", "still to come"),
        ("received", "2999-01-01", "still to come"),
        ("house_made", "perhaps", "write yes or no"),
        ("barcode", "2140079190178", "the last one is 7"),
        ("density", "heavy", "g per ml"),
        ("acid", "sour", "g per litre"),
        ("dash", "9 ml", "a dash gives"),
        ("full", "0 g", "weighs more than nothing"),
        ("tare", "400 g ± much", "cannot be read"),
        ("level", "300 ml ± much", "cannot be read"),
    ],
)
def test_what_cannot_stand_in_the_seldom_columns_has_its_place(column, cell, said):
    text = f"product,ingredient,size,{column}\nGin,gin,700,{cell}\n"
    (row,) = read_bottles_csv(text, _TREE, today=date(2026, 11, 21)).listed
    (problem,) = row.problems
    assert problem.column == column and said in problem.message


def test_of_two_days_a_use_by_is_rather_still_to_come():
    text = "product,ingredient,size,use_by,opened\nGin,gin,700,03/12/2026,03/12/2025\n"
    (row,) = read_bottles_csv(text, _TREE, today=date(2026, 11, 21)).listed
    likely = {each.column: each.likely for each in row.problems}
    assert likely == {"use_by": "2026-12-03", "opened": "2025-12-03"}


def test_nothing_is_used_up_before_it_was_made():
    text = "product,ingredient,size,made,use_by\nSyrup,simple syrup,700,2026-03-04,2026-03-01\n"
    (row,) = read(text).listed
    assert [each.column for each in row.problems] == ["use_by"]


def test_an_ingredient_may_be_given_by_key():
    assert one("Gin,,old-tom-gin,,700,,,").draft.ingredient == "old-tom-gin"


def test_unknown_columns_are_ignored_and_named():
    found = read("product,ingredient,size,shelf\nGin,gin,700,top\n")
    assert found.problems == () and len(found.rows) == 1
    assert found.ignored == ("shelf",)


def test_a_name_that_may_be_several_kinds_is_asked_with_the_likely_one(tree):
    found = read_bottles_csv(HEADER + "Old Tin,,bitters,44,100 ml,,,\n", tree)
    (problem,) = found.problems
    assert "“bitters” may be any of several kinds" in problem.message
    assert problem.message.endswith("Perhaps Aromatic bitters.")


@walked(
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
    found = read("product,maker\nGin,Hollow Lamp\n")
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


@walked(
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


def asked(row, column, header=HEADER):
    """What is said of one cell of a row, and its likely answer."""
    (listed,) = read(header + row).listed
    assert listed.bottle is None
    (problem,) = (each for each in listed.problems if each.column == column)
    return problem.message, problem.likely


@walked(
    ("row", "column", "likely"),
    [
        ("Gin,,gin,0.41,700,,,", "abv", "41 %"),
        ("Juice,,lemon juice,0.5,1 l,,,", "abv", "0.5 %"),
        ("Gin,,gin,43°,700,,,", "abv", "43 %"),
        ("Rye,,rye whiskey,100,700,,,", "abv", "100 proof"),
        ("Gin,,gin,,0.7,,,", "size", "700 ml"),
        ("Gin,,gin,,70,,,", "size", "700 ml"),
        ("Gin,,gin,,1.75,,,", "size", "1750 ml"),
        ("Gin,,gin,,,,,", "size", "700 ml"),
        ("Gin,,gin,,700,60,,", "level", "60 %"),
        ("Gin,,gin,,700,nearly full,,", "level", "90 %"),
        ("Gin,,gin,,700,,£24.50,", "price", ""),
        ('Gin,,gin,,700,,"1,024.50",', "price", "1024.50"),
        ("Gin,,gin,,700,,,03/04/2026", "opened", "2026-04-03"),
        ("Gin,,gin,,700,,,14/03/26", "opened", "2026-03-14"),
        ("Gin,,gin,,700,,,March 2026", "opened", "2026-03-01"),
        ("Gin,,gin,,700,,,46095", "opened", "2026-03-14"),
        ("Gin,,gin,,700,half,,no", "opened", "yes"),
        ("Gin,,bourban,,700,,,", "ingredient", "Bourbon"),
        ("Gin,,Mossy gin,,700,,,", "ingredient", "Gin"),
        ("Gin,,gin (cherry bark),,700,,,", "ingredient", "Gin"),
        ("Gin,,Florble,,700,,,", "ingredient", ""),
        ("Mossy London dry gin,,,,700,,,", "ingredient", "London dry gin"),
        (",Hollow Lamp,gin,,700,,,", "product", "Gin"),
    ],
)
def test_what_may_mean_two_things_is_asked_about_with_the_likelier_ready(row, column, likely):
    assert asked(row, column)[1].casefold() == likely.casefold()


def test_words_of_the_maker_or_the_label_may_stand_in_front_of_the_kind():
    assert one("Mossy,,Mossy gin,,700,,,").draft.ingredient == "gin"
    assert one("Signal,Seven Sisters,Seven Sisters vodka,40,700,,,").draft.maker == "Seven Sisters"


@walked(
    ("day", "said"),
    [
        ("1. März 2026", date(2026, 3, 1)),
        ("le 1er mars 2026", None),
        ("1er mars 2026", date(2026, 3, 1)),
        ("1 de marzo de 2026", date(2026, 3, 1)),
        ("1 marzo 2026", date(2026, 3, 1)),
        ("March 1st, 2026", date(2026, 3, 1)),
        ("2026-03-01 00:00:00", date(2026, 3, 1)),
        ("2026-03-01T12:30", date(2026, 3, 1)),
        ("03-03-2026", date(2026, 3, 3)),
        ("03.14.2026", None),
        ("tomorrow", None),
    ],
)
def test_days_as_they_are_written(day, said):
    found = read(f'{HEADER}Gin,,gin,,700,,,"{day}"\n')
    assert [each.opened for each in found.rows] == ([said] if said else [])


def test_all_that_is_wrong_with_a_row_is_said_at_once():
    (row,) = read(HEADER + "Gin,,Londn dry gin,0.4,0.7,60,$20,03/04/2026\n").listed
    assert [each.column for each in row.problems] == [
        *("ingredient", "size", "abv", "price", "opened", "level"),
    ]


@pytest.mark.parametrize(
    ("header", "bottles"),
    [
        ("product,ingredient", True),
        ("Name;Zutat;Größe;Füllstand", True),
        ("Product name,Kind,ABV (%)", True),
        ("spec,line,method", False),
        ("name,amount,unit,ingredient", False),
        ("Fog Lamp", False),
        ("60 ml gin, 20 ml lemon juice", False),
    ],
)
def test_a_list_of_bottles_is_told_by_its_header(header, bottles):
    assert is_bottles_csv(header + "\n") is bottles


def test_a_header_with_a_unit_that_is_none_is_left_aside():
    found = read("product,ingredient,size,price (a litre),level %\nGin,gin,700,20,60\n")
    assert found.ignored == ("price (a litre)",)
    assert found.rows[0].draft.price is None
    assert found.rows[0].level.amount == 420


def test_a_column_by_its_own_name_goes_before_another_word_for_it():
    found = read("type,product,ingredient,size\nspirit,Gin,London dry gin,700\n")
    assert found.ignored == ("type",)
    assert found.rows[0].draft.ingredient == "london-dry-gin"


def test_rows_count_as_in_a_spreadsheet():
    text = HEADER + '"Gin\nof two lines",,gin,,700,,,\n\nGin,,moss,,700,,,\n'
    assert [(each.row, each.line) for each in read(text).listed] == [(2, 2), (4, 5)]


def test_rows_left_over_are_left_over_for_the_same_reasons_when_they_are_read_again():
    text = (
        'product,ingredient,size,price,price,"shelf, bay"\n'
        "Gin,gin,700,20,25,top\nFog,Londn dry gin,0.7,20,20,low\nRye,rye whiskey,700,20,20,x,50\n"
    )
    found = read(text)
    assert found.aside == ("price", "shelf, bay")
    again = read(rest_csv(found.listed, found.aside))
    first, second = (
        [[(problem.column, problem.likely) for problem in row.problems] for row in each.listed]
        for each in (found, again)
    )
    assert (
        first
        == second
        == [[("price", "20")], [("ingredient", "London dry gin"), ("size", "700 ml")], [("", "")]]
    )
    assert [each.beyond for each in again.listed] == [(), (), ("50",)]
    assert again.ignored == ("shelf, bay", "problem")
