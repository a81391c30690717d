"""A shoot comes back out of the file as it went in, also by undo and redo."""

from __future__ import annotations

import tempfile
from dataclasses import replace
from datetime import date, datetime, time
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from barkeep.domain.bar.shoots import (
    STATES,
    ChosenPour,
    LoggedBottle,
    ServeCounts,
    Shoot,
    ShootDrink,
    ShootLog,
)
from barkeep.store.shoots import read_shoot, read_shoots
from barkeep.store.store import Store
from tests.engines import on_both

NOON = datetime(2026, 11, 21, 12, 0)


_ids = st.none() | st.integers(1, 2**40)
_texts = st.text(st.characters(exclude_categories=("Cs",), exclude_characters="\0"), max_size=20)
_amounts = st.floats(0.0, 1e6)
_counts = st.integers(0, 200)
_moments = st.datetimes(datetime(2000, 1, 1), datetime(2100, 1, 1))
_chosen = st.builds(ChosenPour, st.integers(0, 40), _texts, _amounts, _ids, _texts)
_drinks = st.builds(
    ShootDrink,
    _ids,
    _texts,
    st.builds(ServeCounts, _counts, _counts, _counts),
    st.lists(_chosen, max_size=3).map(tuple),
)
_bottles = st.builds(
    LoggedBottle,
    st.integers(1, 2**40),
    _texts,
    st.sampled_from(["ml", "g", "each"]),
    _amounts,
    _amounts,
    _amounts,
    st.none() | _amounts,
    _amounts,
)
_logs = st.builds(
    ShootLog,
    _moments,
    st.lists(_counts, max_size=4).map(tuple),
    st.lists(_bottles, max_size=3).map(tuple),
)
_minutes = st.builds(time, st.integers(0, 23), st.integers(0, 59))
_shoots = st.builds(
    Shoot,
    st.none(),
    _texts,
    st.dates(date(2000, 1, 1), date(2100, 1, 1)),
    st.lists(_drinks, max_size=4).map(tuple),
    st.sampled_from(STATES),
    st.none() | _minutes,
    _texts,
    st.frozensets(_texts, max_size=4),
    st.none() | _logs,
)


@pytest.fixture(scope="module")
def kept():
    """One store for all examples: opening one each would take most of the time."""
    with tempfile.TemporaryDirectory() as folder:
        store = Store.open(Path(folder) / "shoots.bar", lambda: NOON)
        yield store
        store.close()


def read(store, shoot_id):
    with store.reading() as connection:
        return read_shoot(connection, shoot_id)


@given(_shoots, _shoots)
def test_a_shoot_comes_back_as_it_went_in_and_by_undo_and_redo(kept, first, second):
    with kept.unit_of_work("Add") as work:
        (shoot_id,) = work.insert("shoot", [first])
    before, after = replace(first, id=shoot_id), replace(second, id=shoot_id)
    assert read(kept, shoot_id) == before
    with kept.unit_of_work("Change") as work:
        work.put("shoot", (shoot_id,), second)
    assert read(kept, shoot_id) == after
    if first != second:  # what changes nothing is no step
        kept.undo_or_redo("undo")
        assert read(kept, shoot_id) == before
        kept.undo_or_redo("redo")
        assert read(kept, shoot_id) == after


@on_both
def test_a_removed_shoot_is_hidden_and_comes_back(store):
    shoot = Shoot(None, "Night train", date(2026, 11, 21))
    with store.unit_of_work("Add") as work:
        (shoot_id,) = work.insert("shoot", [shoot])
    with store.unit_of_work("Remove") as work:
        work.put("shoot", (shoot_id,), None)
    assert read(store, shoot_id) is None
    with store.reading() as connection:
        assert read_shoots(connection) == ()
    store.undo_or_redo("undo")
    assert read(store, shoot_id) == replace(shoot, id=shoot_id)


@on_both
def test_shoots_of_one_day_come_the_last_written_first(store):
    rows = [
        Shoot(None, theme, date(2026, 11, day)) for theme, day in (("a", 21), ("b", 21), ("c", 30))
    ]
    with store.unit_of_work("Add") as work:
        work.insert("shoot", rows)
    with store.reading() as connection:
        assert [each.theme for each in read_shoots(connection)] == ["c", "b", "a"]
