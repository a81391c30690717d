"""A day as it is said on every page. Files and commands' JSON keep the form of ISO 8601."""

from __future__ import annotations

from datetime import date, datetime

from barkeep.translation import tr, tr_noop

MONTHS = (
    tr_noop("January"),
    tr_noop("February"),
    tr_noop("March"),
    tr_noop("April"),
    tr_noop("May"),
    tr_noop("June"),
    tr_noop("July"),
    tr_noop("August"),
    tr_noop("September"),
    tr_noop("October"),
    tr_noop("November"),
    tr_noop("December"),
)
SHORT_MONTHS = (
    tr_noop("Jan"),
    tr_noop("Feb"),
    tr_noop("Mar"),
    tr_noop("Apr"),
    tr_noop("May"),
    tr_noop("Jun"),
    tr_noop("Jul"),
    tr_noop("Aug"),
    tr_noop("Sep"),
    tr_noop("Oct"),
    tr_noop("Nov"),
    tr_noop("Dec"),
)
WEEK = (
    tr_noop("Monday"),
    tr_noop("Tuesday"),
    tr_noop("Wednesday"),
    tr_noop("Thursday"),
    tr_noop("Friday"),
    tr_noop("Saturday"),
    tr_noop("Sunday"),
)


def day_said(day: date) -> str:
    """A day in full.

    >>> day_said(date(2026, 12, 3))
    '3 December 2026'
    """
    return tr("{day} {month} {year}", day=day.day, month=_month(day), year=day.year)


def day_of_year(day: date) -> str:
    """A day without its year: *3 December*."""
    return tr("{day} {month}", day=day.day, month=_month(day))


def day_short(day: date) -> str:
    """A day where there is little room, in lists.

    >>> day_short(date(2026, 12, 3))
    '3 Dec 2026'
    """
    return tr("{day} {short_month} {year}", day=day.day, short_month=_short(day), year=day.year)


def day_of_year_short(day: date) -> str:
    """A day without its year where there is little room: *3 Dec*."""
    return tr("{day} {short_month}", day=day.day, short_month=_short(day))


def day_of_week(day: date) -> str:
    """The name of a day: *Thursday*."""
    return tr(WEEK[day.weekday()])


def moment_said(at: datetime) -> str:
    """A day and a time of day.

    >>> moment_said(datetime(2026, 12, 3, 9, 5))
    '3 December 2026, 09:05'
    """
    return f"{day_said(at.date())}, {at:%H:%M}"


def _month(day: date) -> str:
    return tr(MONTHS[day.month - 1])


def _short(day: date) -> str:
    return tr(SHORT_MONTHS[day.month - 1])
