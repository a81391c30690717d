"""A day and a moment as they are said: one form everywhere, in the user's own order.

Files, commands' JSON and what is typed to a command keep the form of ISO 8601.
"""

from __future__ import annotations

from datetime import date, datetime, time
from typing import Literal

Order = Literal["day", "month"]
_order: Order = "day"
"""What comes first, the day or the month."""


def say_first(what: Order) -> None:
    """From now on begin every date with its day, or with its month."""
    global _order
    _order = what


def first() -> Order:
    """What a date begins with."""
    return _order


def day_said(day: date) -> str:
    """A day in full.

    >>> day_said(date(2026, 12, 3))
    '3 December 2026'
    """
    return f"{day_of_year(day, '%B')}{',' if _order == 'month' else ''} {day.year}"


def day_briefly(day: date, on: date) -> str:
    """For a column: the month cut short, and the year only where it is another than that of `on`.

    >>> [day_briefly(each, date(2026, 1, 1)) for each in (date(2026, 12, 3), date(2027, 1, 3))]
    ['3 Dec', '3 Jan 2027']
    """
    words = day_of_year(day, "%b")
    return words if day.year == on.year else f"{words}{',' if _order == 'month' else ''} {day.year}"


def day_of_year(day: date, month: Literal["%B", "%b"] = "%B") -> str:
    """A day without its year: *3 December*."""
    named = f"{day:{month}}"
    return f"{named} {day.day}" if _order == "month" else f"{day.day} {named}"


def time_said(at: time | datetime) -> str:
    """*14:05*."""
    return f"{at:%H:%M}"


def moment_said(at: datetime) -> str:
    """*3 December 2026 at 14:05*."""
    return f"{day_said(at.date())} at {time_said(at)}"
