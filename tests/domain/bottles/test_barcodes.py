"""Check digits; the published examples are in `tests/outside`."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from barkeep.domain.bottles.barcodes import GTIN_LENGTHS, check_digit, checked_gtin
from barkeep.errors import InvalidField

DIGITS = "0123456789"
numbers = st.sampled_from(GTIN_LENGTHS).flatmap(
    lambda length: st.text(DIGITS, min_size=length - 1, max_size=length - 1)
)


def whole(digits: str) -> str:
    return digits + str(check_digit(digits))


@given(numbers)
def test_with_the_right_digit_a_number_is_kept(digits):
    assert checked_gtin(whole(digits)) == whole(digits)


@given(numbers, st.integers(1, 9))
def test_with_any_other_it_is_refused_and_the_right_one_named(digits, off):
    right = check_digit(digits)
    wrong = f"{digits}{(right + off) % 10}"
    with pytest.raises(InvalidField) as refused:
        checked_gtin(wrong)
    assert (refused.value.field, refused.value.value) == ("barcode", wrong)
    assert str(refused.value) == (
        f"barcode cannot be “{wrong}”: by its other digits the last one is {right}; type it again."
    )


@given(numbers, st.data())
def test_any_one_digit_mistyped_is_noticed(digits, data):
    number = whole(digits)
    at = data.draw(st.integers(0, len(number) - 1))
    other = data.draw(st.sampled_from([each for each in DIGITS if each != number[at]]))
    with pytest.raises(InvalidField):
        checked_gtin(number[:at] + other + number[at + 1 :])


@given(numbers, st.integers(1, 4))
def test_zeros_in_front_change_nothing(digits, zeros):
    """So a UPC-A is the GTIN-13 with a nought before it."""
    assert check_digit("0" * zeros + digits) == check_digit(digits)


def test_the_blanks_and_hyphens_printed_between_digits_are_left_out():
    assert checked_gtin(" 6 291041 500213 ") == "6291041500213"
    assert checked_gtin("629-1041-500213") == "6291041500213"


@pytest.mark.parametrize(
    "code", ["", "17", "1234567", "123456789", "123456789012345", "SHELF-12", "A2140079190177"]
)
def test_a_shop_s_own_code_stays_as_typed(code):
    assert checked_gtin(f"  {code} ") == code


def test_figures_of_other_scripts_are_no_digits():
    eastern = "٦٢٩١٠٤١٥٠٠٢١٣"
    assert checked_gtin(eastern) == eastern
    with pytest.raises(ValueError, match="not digits alone"):
        check_digit(eastern)


@pytest.mark.parametrize("text", ["", "12a", "1 2", "-1"])
def test_a_check_digit_is_of_digits_alone(text):
    with pytest.raises(ValueError, match="not digits alone"):
        check_digit(text)
