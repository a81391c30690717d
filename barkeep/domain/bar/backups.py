"""The backups of one bar: what they are called, and which are let go as time passes."""

from __future__ import annotations

import re
from collections.abc import Callable, Collection, Iterable
from dataclasses import dataclass
from datetime import date, datetime
from typing import Literal, get_args

Why = Literal["daily", "asked for", "before import", "before restore", "unreadable"]
"""What a backup was made for; what is *unreadable* is a file that a restore took the place of."""

WHYS: tuple[Why, ...] = get_args(Why)

ALL_OF_DAYS, ONE_OF_WEEKS = 7, 8
"""Of so many days every backup is kept, then of so many weeks one each; of every month one."""

THINNED: tuple[Why, ...] = ("daily", "before import")
"""What barkeep makes by itself all the time; the others are for their owner to delete."""

SUFFIX = ".barkeep"

_NAME = re.compile(
    rf"(?P<at>\d{{4}}-\d\d-\d\d \d\d\.\d\d\.\d\d) (?P<why>{'|'.join(WHYS)})"
    rf"(?: (?P<number>[1-9]\d*))?{re.escape(SUFFIX)}"
)
_AT = "%Y-%m-%d %H.%M.%S"


@dataclass(frozen=True, slots=True)
class BackupName:
    """When a backup was made, by the clock of then, and why; its number among those alike."""

    at: datetime
    why: Why
    number: int = 1

    def __str__(self) -> str:
        number = f" {self.number}" if self.number > 1 else ""
        return f"{self.at:{_AT}} {self.why}{number}{SUFFIX}"


def read_name(text: str) -> BackupName | None:
    """The name of a backup, None for a file that is called otherwise.

    >>> read_name("2026-11-21 12.00.00 daily.barkeep")
    BackupName(at=datetime.datetime(2026, 11, 21, 12, 0), why='daily', number=1)
    """
    found = _NAME.fullmatch(text)
    if found is None:
        return None
    try:
        at = datetime.strptime(found["at"], _AT)
    except ValueError:  # such as the 31st of February
        return None
    why = next(each for each in WHYS if each == found["why"])
    return BackupName(at, why, int(found["number"] or 1))


def is_due(kept: Iterable[BackupName], now: datetime) -> bool:
    """Whether the day has no backup yet that holds the bar as it was."""
    return not any(each.at.date() == now.date() and each.why != "unreadable" for each in kept)


def to_let_go(kept: Iterable[BackupName], now: datetime) -> frozenset[BackupName]:
    """The backups that are one too many.

    Days, weeks and months count only where they have a backup, so that a bar
    which lay still, or a clock that was wrong, costs none. What is of a later
    time than now (the clock was put back) stays and is not counted.
    """
    past = sorted(
        (each for each in kept if each.why in THINNED and each.at <= now),
        key=lambda each: (each.at, each.number),
        reverse=True,
    )
    days = sorted({each.at.date() for each in past}, reverse=True)[:ALL_OF_DAYS]
    weeks = _newest_of_each(past, _week)[:ONE_OF_WEEKS]
    months = _newest_of_each(past, _month)
    staying: Collection[BackupName] = {*weeks, *months}
    return frozenset(each for each in past if each not in staying and each.at.date() not in days)


def _newest_of_each(
    newest_first: Iterable[BackupName], span: Callable[[date], tuple[int, int]]
) -> list[BackupName]:
    found: dict[tuple[int, int], BackupName] = {}
    for each in newest_first:
        found.setdefault(span(each.at.date()), each)
    return list(found.values())


def _week(day: date) -> tuple[int, int]:
    year, week, _day = day.isocalendar()
    return year, week


def _month(day: date) -> tuple[int, int]:
    return day.year, day.month
