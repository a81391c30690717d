"""The user's own way of writing numbers and naming things, as the system is set to it."""

from __future__ import annotations

import locale
import os

from barkeep.errors import UnknownName


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


_SAY_THE_REGION = ("LC_ALL", "LC_MESSAGES", "LANG")


def own_region() -> str:
    """The key of the region this system is set to; empty where it is none of the known ones."""
    from barkeep.domain.ingredients.regions import region_named  # the first line of all needs none

    said = next(filter(None, map(os.environ.get, _SAY_THE_REGION)), None)
    where = said or locale.setlocale(locale.LC_CTYPE)  # Windows has no such variables
    _language, _, country = where.partition(".")[0].partition("@")[0].partition("_")
    try:
        return region_named(country).key if country else ""
    except UnknownName:
        return ""
