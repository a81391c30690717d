"""The bar as a whole: its snapshot, who is told, opening, checking and copying."""

from __future__ import annotations

import sqlite3
from contextlib import closing
from dataclasses import FrozenInstanceError, replace
from datetime import datetime

import pytest

from barkeep.application.bar import Bar
from barkeep.domain.bar.knowledge import Knowledge
from barkeep.domain.bar.snapshot import Settings
from barkeep.domain.bottles.bottle import NOTHING_KNOWN, new_bottle
from barkeep.domain.ingredients.relations import StandIn
from barkeep.domain.ingredients.tree import FamilyTree, Ingredient
from barkeep.errors import UnreadableFile
from barkeep.store.refusals import BarIsBusy, CannotWrite, WrittenNotRead
from tests.application.conftest import INGREDIENTS, gin_draft, plough


def test_a_new_bar_is_empty_and_has_todays_date(bar, knowledge, clock):
    shot = bar.snapshot
    assert (shot.products, shot.bottles, shot.specs, shot.settings) == ((), (), (), Settings())
    assert shot.knowledge == knowledge and shot.on == clock.now.date()
    assert bar.undo_label is None and bar.redo_label is None


def test_only_what_changed_is_renewed(bar, gin):
    bar.specs.add([plough()])
    before = bar.snapshot
    bar.inventory.pour(gin.id, 60.0)
    after = bar.snapshot
    assert after is not before and after.bottles != before.bottles
    assert after.products is before.products
    assert after.specs is before.specs
    assert after.settings is before.settings
    assert after.knowledge is before.knowledge

    bar.settings.change(Settings("Signal box"))
    assert bar.snapshot.bottles is after.bottles and bar.snapshot.specs is after.specs
    bar.specs.add([plough("Night Sleeper")])
    assert bar.snapshot.bottles is after.bottles and bar.snapshot.knowledge is after.knowledge


def test_a_snapshot_does_not_move(bar, gin):
    before = bar.snapshot
    bar.inventory.empty(gin.id)
    assert before.bottles[0].level.amount == 700.0
    with pytest.raises(FrozenInstanceError):
        before.bottles = ()


def test_after_midnight_the_snapshot_is_of_the_new_day(bar, gin, clock):
    before = bar.snapshot
    assert bar.snapshot is before
    clock.now = datetime(2026, 11, 22, 0, 1)
    assert bar.snapshot.on == clock.now.date()
    assert bar.snapshot.bottles is before.bottles


def test_subscribers_hear_what_changed_once_it_has(bar, gin):
    heard = []
    stop = bar.subscribe(lambda changes: heard.append((changes, bar.snapshot.bottles)))
    bar.inventory.pour(gin.id, 60.0)
    assert heard == [(frozenset({"bottles"}), bar.snapshot.bottles)]
    bar.undo()
    assert heard[1] == (frozenset({"bottles"}), bar.snapshot.bottles)
    bar.settings.change(Settings())
    assert len(heard) == 2
    stop()
    stop()
    bar.inventory.open(gin.id)
    assert len(heard) == 2


def test_a_refused_change_is_not_heard_of(bar, gin):
    heard = []
    bar.subscribe(heard.append)
    with pytest.raises(Exception, match="cannot be taken"):
        bar.inventory.pour(gin.id, 900.0)
    assert heard == []


def test_what_another_program_wrote_is_read_on_refresh(bar, gin, reopen):
    other = reopen()
    heard = []
    bar.subscribe(heard.append)
    assert bar.refresh() is False
    other.inventory.pour(gin.id, 60.0)
    assert bar.snapshot.bottles[0].level.amount == 700.0
    assert bar.refresh() is True and bar.refresh() is False
    assert bar.snapshot.bottles[0].level.amount == 640.0
    assert len(heard) == 1 and "bottles" in heard[0]


def test_a_write_upon_a_stale_picture_reads_everything(bar, gin, reopen):
    other = reopen()
    second = other.inventory.receive(gin.product.id).value
    other.inventory.pour(gin.id, 60.0)
    done = bar.inventory.pour(second.id, 100.0)
    assert [each.level.amount for each in bar.snapshot.bottles] == [640.0, 600.0]
    assert done.value.level.amount == 600.0 and "specs" in done.changes


def test_undo_takes_back_what_the_other_program_did(bar, gin, reopen):
    reopen().inventory.pour(gin.id, 60.0)
    assert bar.undo_label == "Pour 60 ml of Tansy Lock navy-strength gin"
    bar.undo()
    assert bar.snapshot.bottles[0].level.amount == 700.0


def test_an_ingredient_this_barkeep_does_not_know_does_not_lock_the_bar(
    bar, gin, bar_file, clock, knowledge
):
    bar.specs.add([plough()])
    kept_one = bar.knowledge.add_stand_in(StandIn("navy-strength-gin", "bourbon", 0.5, 1.0, "so"))
    bar.knowledge.add_stand_in(StandIn("simple-syrup", "lime-cordial", 0.5, 1.0, "so"))
    bar.close()
    gone = ("navy-strength-gin", "lime-juice", "simple-syrup")
    kept = {each.key: each for each in INGREDIENTS if each.key not in gone}
    with Bar.open(bar_file, Knowledge(FamilyTree(kept)), clock) as poorer:
        tree = poorer.snapshot.knowledge.tree
        assert tree.name(poorer.snapshot.bottles[0].ingredient) == "navy strength gin (not known)"
        assert poorer.snapshot.knowledge.stand_ins == (kept_one.value,)
        assert len(poorer.check()) == 2 and "navy-strength-gin" in poorer.check()[1]


def test_a_name_barkeep_has_taken_since_does_not_lock_the_bar(bar, bar_file, clock):
    own = Ingredient("rail-bitters", "Rail bitters", ("spirit",), ("track bitters",))
    bar.knowledge.add_ingredient(own)
    bar.close()
    newer = {each.key: each for each in INGREDIENTS if each.key != "spirit"}
    newer = {key: replace(each, parents=()) for key, each in newer.items()}
    newer["other-bitters"] = Ingredient("other-bitters", "Rail Bitters", aliases=("track bitters",))
    with Bar.open(bar_file, Knowledge(FamilyTree(newer)), clock) as later:
        mended = later.snapshot.knowledge.tree["rail-bitters"]
        assert mended == replace(own, name="Rail bitters (own)", parents=(), aliases=())


def test_a_sound_bar_has_no_findings(bar, gin):
    bar.inventory.pour(gin.id, 60.0)
    assert bar.check() == ()


def test_a_ledger_beyond_its_bottle_is_found(bar, gin, bar_file):
    with closing(sqlite3.connect(bar_file)) as file, file:
        file.execute("UPDATE product SET size = 500")
    (changed, finding, stale) = bar.check()
    assert (
        changed == "Damage or another program changed it: product 1: it is not as barkeep wrote it."
    )
    assert finding == "The ledger of Tansy Lock navy-strength gin (#1) says it holds 700 of 500 ml."
    assert "open the bar again" in stale


def test_a_copy_is_whole_and_never_writes_over_a_file(bar, gin, tmp_path, knowledge, clock):
    copy = bar.back_up(tmp_path / "copy.bar")
    with Bar.open(copy, knowledge, clock) as copied:
        assert copied.snapshot.bottles == bar.snapshot.bottles
        assert copied.undo_label == bar.undo_label
    with pytest.raises(CannotWrite, match="of that name already"):
        bar.back_up(copy)
    with pytest.raises(CannotWrite, match="does not exist"):
        bar.back_up(tmp_path / "missing" / "copy.bar")
    assert sorted(each.name for each in tmp_path.iterdir()) == ["copy.bar", "signal-box.bar"]


def test_a_bar_that_cannot_be_read_is_closed_again(bar_file, knowledge, clock):
    bar_file.write_bytes(b"not a bar at all, but a text that is long enough" * 9)
    with pytest.raises(UnreadableFile, match="not a SQLite file"):
        Bar.open(bar_file, knowledge, clock)


def test_a_bar_of_500_bottles(bar, reopen):
    """A large bar reads back whole; `tests/benchmarks/test_large_bars.py` prints its times."""
    product = bar.inventory.add_product(gin_draft()).value
    store = bar._session.store
    with store.unit_of_work("Fill the shelf") as work:
        along = [new_bottle(product, NOTHING_KNOWN, place) for place in range(500)]
        for bottle_id in work.insert("bottle", along):
            work.append(bottle_id, "receive", 700.0)
            for _ in range(9):
                work.append(bottle_id, "pour", 30.0)
    later = reopen()
    poured = later.inventory.pour(250, 30.0)
    assert len(later.snapshot.bottles) == 500
    levels = [each.level.amount for each in later.snapshot.bottles]
    assert levels.count(430.0) == 499 and poured.value.level.amount == 400.0


def test_a_change_is_called_written_where_only_reading_it_again_is_held_up(tmp_path, monkeypatch):
    file = tmp_path / "held.bar"
    with Bar.open(file) as bar, closing(sqlite3.connect(file, isolation_level=None)) as holder:
        settle = bar._session.settle

        def held(*how):
            holder.execute("BEGIN EXCLUSIVE")
            try:
                return settle(*how)
            finally:
                holder.execute("ROLLBACK")

        monkeypatch.setattr(bar._session, "settle", held)
        with pytest.raises(WrittenNotRead) as told:
            bar.settings.change(replace(bar.snapshot.settings, name="Branch line bar"))
        assert str(told.value) == (
            f"What you did is written, but {file} is in use by another program just now, so it "
            "does not show yet. Read it again in a moment."
        )
        assert bar.follow() == "written"
        assert bar.snapshot.settings.name == "Branch line bar"
        assert bar.follow() == "same"


def test_who_holds_the_file_as_it_is_opened_anew_is_only_said_to_hold_it(tmp_path):
    file = tmp_path / "held.bar"
    with Bar.open(file) as bar, closing(sqlite3.connect(file, isolation_level=None)) as holder:
        bar._session.store.place._busy_ms = 0
        bar._session.store.open_again()
        holder.execute("BEGIN EXCLUSIVE")
        assert bar.follow() == "busy"
        holder.execute("ROLLBACK")
        assert bar.follow() == "same"


def test_what_could_not_be_read_at_once_is_read_the_next_time(tmp_path):
    file = tmp_path / "held.bar"
    with Bar.open(file) as bar, closing(sqlite3.connect(file, isolation_level=None)) as holder:
        holder.execute("INSERT INTO setting VALUES ('name', '\"Elsewhere\"')")
        holder.execute("BEGIN EXCLUSIVE")
        assert bar.follow() == "busy"
        with pytest.raises(BarIsBusy):
            bar.refresh()
        holder.execute("ROLLBACK")
        assert bar.refresh()
        assert bar.snapshot.settings.name == "Elsewhere"
