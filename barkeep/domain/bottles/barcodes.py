"""The numbers under a barcode, and whether one was typed right.

GTIN-8, -12, -13 and -14 end in a check digit. Source: GS1, *General
Specifications*, section 7.9 (section number *from memory*).
"""

from __future__ import annotations

import re

from barkeep.errors import InvalidField
from barkeep.translation import tr

GTIN_LENGTHS = (8, 12, 13, 14)
_BETWEEN_DIGITS = re.compile(r"(?<=[0-9])[ -]+(?=[0-9])")
_NUMBER = re.compile(r"[0-9]+", re.ASCII)


def check_digit(digits: str) -> int:
    """The check digit of a number without one: weights 3, 1, 3, ... from the right.

    Raises `ValueError` for what is not digits alone.

    >>> check_digit("629104150021")
    3
    """
    if not _NUMBER.fullmatch(digits):
        raise ValueError(f"{digits!r} is not digits alone")
    weighted = (int(digit) * (1 if at % 2 else 3) for at, digit in enumerate(reversed(digits)))
    return -sum(weighted) % 10


LEAST_DIGITS = 8
"""Fewer digits are no code of themselves; a shop's own code may have fewer."""


def same_code(one: str, other: str) -> bool:
    """Whether two codes are one: a GTIN is the same with noughts before it.

    >>> same_code("0212345678909", "212345678909"), same_code("shelf-12", "SHELF-12")
    (True, True)
    """
    return _bare(one) == _bare(other)


def is_like_a_code(text: str) -> bool:
    """Whether a text is digits enough for the number under a barcode.

    >>> is_like_a_code("2 140079 190177"), is_like_a_code("1840 gin"), is_like_a_code("700")
    (True, False, False)
    """
    digits = _BETWEEN_DIGITS.sub("", text.strip())
    return bool(_NUMBER.fullmatch(digits)) and len(digits) >= LEAST_DIGITS


def read_gtin(text: str) -> str:
    """As `checked_gtin`, of digits alone: a number of another length is refused as well."""
    digits = _BETWEEN_DIGITS.sub("", text.strip())
    if len(digits) not in GTIN_LENGTHS:
        expected = tr(
            "it has {n} digits, and the number under a barcode has 8, 12, 13 or 14", n=len(digits)
        )
        raise InvalidField("barcode", text.strip(), expected)
    return checked_gtin(digits)


def _bare(code: str) -> str:
    """As codes are compared: digits without the noughts before them, else letters folded."""
    digits = _BETWEEN_DIGITS.sub("", code.strip())
    return digits.lstrip("0") if _NUMBER.fullmatch(digits) else code.strip().casefold()


def checked_gtin(text: str) -> str:
    """A barcode as it is kept: of a GTIN's length, its digits alone with the check digit right.

    A shop's own code of another length, or with letters, cannot be checked and
    stays as typed, without the blanks around it; so does no code at all. Raises
    `InvalidField`, which names the digit expected.

    >>> checked_gtin("6 291041 500213")
    '6291041500213'
    >>> checked_gtin(" SHELF-12 ")
    'SHELF-12'
    """
    code = text.strip()
    digits = _BETWEEN_DIGITS.sub("", code)
    if len(digits) not in GTIN_LENGTHS or not _NUMBER.fullmatch(digits):
        return code
    expected = check_digit(digits[:-1])
    if digits[-1] != str(expected):
        raise InvalidField(
            "barcode",
            code,
            tr("by its other digits the last one is {expected}; type it again", expected=expected),
        )
    return digits
