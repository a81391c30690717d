"""The user's own way of writing numbers, taken up once by whichever face starts."""

from __future__ import annotations

import locale


def print_numbers_as_the_user_does() -> None:
    """From now on decimals are printed with the decimal mark of the user's locale.

    Where the system does not know that locale, they keep the point. Numbers
    are read with either mark in any case.
    """
    try:
        locale.setlocale(locale.LC_NUMERIC, "")
    except locale.Error:
        print_numbers_for_programs()


def print_numbers_for_programs() -> None:
    """From now on decimals are printed with a point: for what another program reads."""
    locale.setlocale(locale.LC_NUMERIC, "C")
