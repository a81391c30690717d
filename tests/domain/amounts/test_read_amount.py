"""One amount typed into a field that says its unit, and a signed one."""

from __future__ import annotations

import pytest

from barkeep.domain.amounts.measures import read_amount, read_change
from barkeep.errors import AmountError, WrongDimension


@pytest.mark.parametrize(
    ("text", "unit", "amount"),
    [("315", "ml", 315.0), ("6 cl", "ml", 60.0), ("250", "g", 250.0), ("4", "each", 4.0)],
)
def test_a_bare_number_is_so_many_of_the_fields_unit(text, unit, amount):
    assert read_amount(text, unit) == pytest.approx(amount)


@pytest.mark.parametrize("text", ["1-2 cl", "", "some"])
def test_what_is_not_one_amount_is_refused(text):
    with pytest.raises(AmountError):
        read_amount(text, "ml")


def test_another_dimension_is_refused():
    with pytest.raises(WrongDimension):
        read_amount("250 g", "ml")


@pytest.mark.parametrize(
    ("text", "change"), [("+30 ml", 30.0), ("-3 cl", -30.0), ("−30", -30.0), (" + 30 ", 30.0)]
)
def test_a_change_has_a_sign(text, change):
    assert read_change(text, "ml") == pytest.approx(change)


def test_a_change_without_a_sign_is_asked_for_one():
    with pytest.raises(AmountError, match=r"begin with \+ for more"):
        read_change("30 ml", "ml")
