"""How dates, levels, methods and ledger entries read on the Bottles pages."""

from __future__ import annotations

from datetime import date

from PySide6.QtCore import QDate, QLocale

from barkeep.domain.amounts.units import Unit
from barkeep.domain.bottles.bottle import Bottle, Entry, Level
from barkeep.domain.bottles.level_words import number, percent, quantity

NONE = "—"

_WHAT = {
    "receive": "Received",
    "open": "Opened",
    "count": "Counted",
    "pour": "Poured",
    "waste": "Wasted",
    "empty": "Emptied",
    "correct": "Corrected",
    "reverse": "Taken back",
}


def left_of(bottle: Bottle) -> str:
    """What is left of how much: *315 of 700 ml*."""
    product = bottle.product
    size = quantity(product.size, product.unit)
    return f"{number(bottle.level.amount, product.unit)} of {size}"


def level_in_words(bottle: Bottle) -> str:
    """The level for those who do not see the gauge."""
    return f"{left_of(bottle)}, {percent(bottle.share)}, {bottle.level.state}"


def short_date(day: date | None, on: date) -> str:
    """Day and month, and the year where it is another than that of `on`."""
    if day is None:
        return NONE
    pattern = "d MMM" if day.year == on.year else "d MMM yyyy"
    return QLocale().toString(QDate(day.year, day.month, day.day), pattern)


def state_in_words(level: Level, on: date) -> str:
    """Sealed, open since when, or empty."""
    if level.state == "open" and level.opened is not None:
        return f"Open since {short_date(level.opened, on)}"
    return level.state.capitalize()


def entry_in_words(entry: Entry, unit: Unit) -> str:
    """What happened: *Poured 60 ml*."""
    what = _WHAT[entry.kind]
    if entry.kind in ("open", "empty", "reverse"):
        return what
    if entry.kind == "correct":
        sign = "+" if entry.amount > 0 else "−"
        return f"{what} {sign}{quantity(abs(entry.amount), unit)}"
    return f"{what} {quantity(entry.amount, unit)}"
