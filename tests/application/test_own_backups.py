"""The backups that barkeep keeps by itself, over days that go on and clocks that do not."""

from __future__ import annotations

from datetime import timedelta

import pytest

from barkeep.application.bar import Bar
from barkeep.application.kept_backups import backups_of, beside
from tests.application.conftest import NOON, gin_draft


@pytest.fixture
def told():
    return []


@pytest.fixture
def kept(bar_file, knowledge, clock, told):
    """A bar as a person opens it, in which something has happened."""
    with Bar.open(bar_file, knowledge, clock, told.append) as opened:
        opened.inventory.add_product(gin_draft())
        yield opened


def names(bar):
    return [each.name for each in backups_of(bar.path)]


def test_each_days_first_write_keeps_one(kept, clock, told):
    """The window may stay open for days."""
    days = [
        (timedelta(0), 0),  # the bar was new when it was first written to
        (timedelta(hours=11), 0),
        (timedelta(hours=13), 1),  # past midnight
        (timedelta(hours=14), 1),
        (timedelta(days=2), 2),
    ]
    for later, many in days:
        clock.now = NOON + later
        kept.inventory.add_product(gin_draft(name=f"gin {later}"))
        assert len(names(kept)) == many, later
    assert told == []


def test_a_clock_that_is_put_back_keeps_one_and_loses_none(kept, clock):
    for day in (1, 30, 2, 3):
        clock.now = NOON + timedelta(days=day)
        kept.inventory.add_product(gin_draft(name=f"gin {day}"))
    assert len(names(kept)) == 4


def test_one_that_is_told_nothing_keeps_none(bar, clock):
    bar.inventory.add_product(gin_draft())
    clock.now = NOON + timedelta(days=1)
    bar.inventory.add_product(gin_draft(name="another"))
    assert names(bar) == []


def test_a_second_connection_keeps_what_the_first_would(kept, clock):
    clock.now = NOON + timedelta(days=1)
    with kept.beside() as other:
        other.inventory.add_product(gin_draft(name="another"))
    kept.inventory.add_product(gin_draft(name="third"))
    assert len(names(kept)) == 1


def test_a_failure_is_told_once_a_day_and_everything_is_written(kept, clock, told):
    beside(kept.path).write_text("in the way", encoding="utf-8")
    for day in (1, 1, 2):
        clock.now = NOON + timedelta(days=day)
        kept.inventory.add_product(gin_draft(name=f"gin {len(kept.snapshot.products)}"))
    assert len(told) == 2 and len(kept.snapshot.products) == 4
    assert told[0].startswith(f"No backup of {kept.path} could be made: ")


def test_a_write_that_is_refused_has_its_backup_all_the_same(kept, clock):
    clock.now = NOON + timedelta(days=1)
    with pytest.raises(Exception, match="There is already a product"):
        kept.inventory.add_product(gin_draft())
    assert len(names(kept)) == 1
