"""Amounts, numbers and signed changes as they are typed into a form."""

from __future__ import annotations

from dataclasses import replace

from barkeep.domain.ingredients import Unit
from barkeep.domain.measures import US_UNITS, BarUnits, parse_amount, to_quantity
from barkeep.errors import AmountError, InvalidField


def read_amount(text: str, unit: Unit, units: BarUnits = US_UNITS) -> float:
    """An amount in `unit`; a bare number is so many of that unit, as the form says beside it.

    Raises `AmountError`, `NegativeAmount` or `WrongDimension`.
    """
    amount = parse_amount(text, units)
    if amount.high is not None:
        raise AmountError(text.strip(), "write one amount, not a range")
    if not any(letter.isalpha() for letter in text):
        amount = replace(amount, unit=unit)
    return to_quantity(amount, unit, units)


def read_change(text: str, unit: Unit, units: BarUnits = US_UNITS) -> float:
    """A signed amount in `unit`: *+30 ml* adds, *−30 ml* takes away.

    Raises `AmountError` for an amount without a sign, and as `read_amount` does.
    """
    plain = text.strip()
    if plain[:1] not in ("+", "-", "−"):
        expected = "begin with + for more or − for less than the ledger says, such as +30 ml"
        raise AmountError(plain, expected)
    amount = read_amount(plain[1:], unit, units)
    return amount if plain[0] == "+" else -amount


def read_number(field: str, text: str, example: str) -> float | None:
    """A decimal with a point or a comma; None for an empty text. Raises `InvalidField`."""
    plain = text.strip().removesuffix("%").strip().replace(",", ".")
    if not plain:
        return None
    try:
        return float(plain)
    except ValueError:
        raise InvalidField(field, text.strip(), f"it is a number such as {example}") from None
