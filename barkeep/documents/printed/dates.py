"""A day on paper: in figures, so that it fits a label and may be written by hand as well."""

from __future__ import annotations

from datetime import date

from barkeep.translation import tr_about


def day_on_paper(day: date) -> str:
    """A day in figures.

    >>> day_on_paper(date(2026, 12, 3))
    '2026-12-03'
    """
    return tr_about(
        "a day in figures",
        "{year:04}-{month:02}-{day:02}",
        year=day.year,
        month=day.month,
        day=day.day,
    )
