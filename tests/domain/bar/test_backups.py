"""What backups are called, and which stay as the days go by."""

from __future__ import annotations

from datetime import datetime, timedelta

import pytest

from barkeep.domain.bar.backups import BackupName, is_due, read_name, to_let_go
from tests.walked import walked

NOON = datetime(2026, 11, 21, 12, 0)  # a Saturday


def ago(*days: float, why="daily"):
    return [BackupName(NOON - timedelta(days=each), why) for each in days]


def let_go(kept, now=NOON):
    """The ages in days of what goes."""
    gone = to_let_go(kept, now)
    return sorted((NOON - each.at) / timedelta(days=1) for each in gone)


@walked(
    ("ages", "gone"),
    [
        # nothing, one, and a week of days
        ([], []),
        ([0], []),
        ([0, 1, 2, 3, 4, 5, 6], []),
        # several of one day within the week stay, all of them
        ([0, 0.1, 0.2, 1, 1.1, 6, 6.1], []),
        # the eighth day back is a Saturday, and its week has the Sunday after it
        ([0, 1, 2, 3, 4, 5, 6, 7], [7.0]),
        # older: of each week its newest (Sundays are 6, 13, 20 ... days ago)
        ([0, 1, 2, 3, 4, 5, 6, 7, 8, 13, 14, 15], [7.0, 8.0, 14.0, 15.0]),
        # several of a day that is older: the newest of them
        ([0, 1, 2, 3, 4, 5, 6, 13, 13.1, 13.2], [13.1, 13.2]),
        # a bar that lay still for a year has lost nothing of its last days
        ([400, 401, 402, 403, 404], []),
        # used once a week: eight weeks stay, then the newest of each month, which of September
        # is 56 days ago
        ([0, 7, 14, 21, 28, 35, 42, 49, 56, 63], [63.0]),
        # once a month: all stay, for ever
        (range(0, 3000, 31), []),
    ],
)
def test_which_go(ages, gone):
    assert let_go(ago(*ages)) == gone


def test_what_the_owner_asked_for_and_what_a_restore_replaced_stays():
    days = ago(*range(0, 200))
    rare = [
        *ago(101, why="asked for"),
        *ago(102, why="before restore"),
        *ago(103, why="unreadable"),
    ]
    assert not to_let_go([*days, *rare], NOON) & set(rare)


def test_before_import_is_thinned_with_the_days():
    assert let_go([*ago(0, 1, 2, 3, 4, 5, 6, 13), *ago(13.5, why="before import")]) == [13.5]


def test_a_clock_put_back_costs_nothing():
    """Backups of a later time than now stay, and take no day from the others."""
    future = ago(*range(-40, -1))
    past = ago(0, 1, 2, 3, 4, 5, 6)
    assert to_let_go([*future, *past], NOON) == frozenset()
    assert let_go([*future, *past, *ago(13, 14)]) == [14.0]


def test_a_clock_that_ran_ahead_costs_nothing():
    """Now is ten years later: what there is counts by its own days."""
    assert to_let_go(ago(0, 1, 2, 3, 4, 5, 6, 13), NOON.replace(year=2036)) == frozenset()


def test_three_years_of_days_leave_a_steady_number():
    """Thinned every day, as in use: seven days, eight weeks, and a month each stay."""
    kept: set[BackupName] = set()
    for day in range(3 * 365):
        now = datetime(2024, 1, 1, 9) + timedelta(days=day)
        kept.add(BackupName(now, "daily"))
        kept -= to_let_go(kept, now)
    months = {(each.at.year, each.at.month) for each in kept}
    assert len(months) == 36
    assert 36 + 6 <= len(kept) <= 36 + 7 + 8
    weeks = {each.at.isocalendar()[:2] for each in kept}
    last = sorted(
        {(datetime(2026, 12, 30) - timedelta(weeks=n)).isocalendar()[:2] for n in range(8)}
    )
    assert set(last) <= weeks


@walked(
    ("ages", "due"),
    [([], True), ([1], True), ([0], False), ([0.25], False), ([0.6], True), ([-0.1], False),
     ([-1], True), ([-300], True)],
)  # fmt: skip
def test_a_day_has_one(ages, due):
    assert is_due(ago(*ages), NOON) is due


def test_one_that_was_asked_for_today_is_enough_but_not_what_cannot_be_read():
    assert not is_due(ago(0.1, why="asked for"), NOON)
    assert is_due(ago(0.1, why="unreadable"), NOON)


@pytest.mark.parametrize(
    "name",
    [
        "2026-11-21 12.00.00 daily.barkeep",
        "2026-11-21 12.00.00 before import 12.barkeep",
        "2024-02-29 23.59.59 asked for.barkeep",
    ],
)
def test_a_name_says_what_it_is(name):
    assert str(read_name(name)) == name


@pytest.mark.parametrize(
    "name",
    [
        "2026-02-31 12.00.00 daily.barkeep",
        "2026-11-21 12.00.00 daily.barkeep.part",
        "2026-11-21 12.00.00 daily 0.barkeep",
        "2026-11-21 daily.barkeep",
        "bar.barkeep",
        "2026-11-21 12.00.00 weekly.barkeep",
    ],
)
def test_another_name_is_no_backup(name):
    assert read_name(name) is None
