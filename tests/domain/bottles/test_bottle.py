"""A level is a fold of the ledger, and undo never deletes."""

from __future__ import annotations

from datetime import date, datetime, timedelta
from random import Random

from hypothesis import given
from hypothesis import strategies as st

from barkeep.domain.bottles.bottle import (
    Bottle,
    Entry,
    Level,
    Product,
    active,
    fold,
    history,
    variance,
)
from barkeep.domain.bottles.pour_order import pour_order

START = datetime(2026, 11, 1, 20, 0)


def ledger(*written: tuple) -> list[Entry]:
    """Entries from (kind, amount) or ('reverse', id of what it reverses)."""
    entries = []
    for number, (kind, value) in enumerate(written, 1):
        at = START + timedelta(days=number)
        if kind == "reverse":
            entries.append(Entry(number, 1, "reverse", at, reverses=value))
        else:
            method = "tenths" if kind == "count" else None
            entries.append(Entry(number, 1, kind, at, value, method, 35.0 if method else None))
    return entries


def test_a_level_follows_every_kind_of_entry():
    entries = ledger(("receive", 700), ("open", 0), ("pour", 45), ("waste", 5), ("correct", 10))
    assert fold(entries).amount == 660
    assert fold(entries).state == "open"
    assert fold(entries).opened == (START + timedelta(days=2)).date()


def test_a_count_sets_the_level_and_keeps_how_it_was_measured():
    level = fold(ledger(("receive", 700), ("pour", 100), ("count", 540)))
    assert (level.amount, level.method, level.sigma) == (540, "tenths", 35.0)
    assert variance(600, level.amount) == 60


def test_counting_a_sealed_bottle_full_leaves_it_sealed():
    assert fold(ledger(("receive", 700), ("count", 700))).state == "sealed"
    assert fold(ledger(("receive", 700), ("count", 600))).state == "open"


def test_nobody_knows_when_a_bottle_that_is_found_empty_was_opened():
    assert fold(ledger(("receive", 700), ("count", 0))).opened is None
    assert fold(ledger(("receive", 700), ("count", 300), ("count", 0))).opened is not None


def test_a_bottle_counted_to_nothing_is_empty_and_can_be_refilled():
    assert fold(ledger(("receive", 700), ("count", 0))).state == "empty"
    assert fold(ledger(("receive", 700), ("empty", 0), ("count", 300))).state == "open"


def test_a_level_never_falls_below_nothing():
    assert fold(ledger(("receive", 30), ("pour", 45))).amount == 0


def test_undo_and_redo_are_entries():
    entries = ledger(("receive", 700), ("pour", 45), ("reverse", 2))
    assert fold(entries).amount == 700
    assert fold([*entries, *ledger(*[("open", 0)] * 3, ("reverse", 3))[3:]]).amount == 655


def test_the_history_shows_the_level_after_each_entry_that_counts():
    entries = ledger(("receive", 700), ("pour", 45), ("reverse", 2), ("count", 500))
    assert [(entry.kind, left) for entry, left in history(entries)] == [
        ("receive", 700),
        ("count", 500),
    ]


def test_the_open_bottle_with_the_soonest_use_by_is_poured_first():
    product = Product("Lime juice", "", "lime-juice", 500, id=1)
    sealed = Bottle(1, product, Level(500, "sealed"))
    late = Bottle(2, product, Level(100, "open"), use_by=date(2026, 12, 1))
    soon = Bottle(3, product, Level(400, "open"), use_by=date(2026, 11, 22))
    assert pour_order([sealed, late, soon]) == (soon, late, sealed)


@given(st.integers(0, 2**32), st.integers(1, 40))
def test_any_order_of_undo_and_redo_leaves_the_fold_of_what_still_counts(seed, length):
    """Against a plain list that really drops what is undone."""
    chance = Random(seed)
    entries, done, undone = [], [], []
    for number in range(1, length + 1):
        at = START + timedelta(hours=number)
        step = chance.choice(["do", "do", "undo", "redo"])
        if step == "undo" and done:
            original, mark = done.pop()
            entries.append(Entry(number, 1, "reverse", at, reverses=mark))
            undone.append((original, number))
        elif step == "redo" and undone:
            original, mark = undone.pop()
            entries.append(Entry(number, 1, "reverse", at, reverses=mark))
            done.append((original, number))
        else:
            kind = chance.choice(["receive", "count", "pour", "waste", "correct", "empty"])
            entry = Entry(number, 1, kind, at, float(chance.randint(0, 700)))
            entries.append(entry)
            done.append((entry, number))
            undone.clear()
    kept = [entry for entry, _ in done]
    assert active(entries) == tuple(kept)
    assert fold(entries).amount == fold(kept).amount
