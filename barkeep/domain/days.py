"""A day as it is said on every page. Files and commands' JSON keep the form of ISO 8601."""

from __future__ import annotations

from datetime import date


def day_said(day: date) -> str:
    """A day in full.

    >>> day_said(date(2026, 12, 3))
    '3 December 2026'
    """
    return f"{day_of_year(day)} {day.year}"


def day_of_year(day: date) -> str:
    """A day without its year: *3 December*."""
    return f"{day.day} {day:%B}"
