"""Undo and redo: every use case, across restarts, and with conflicts."""

from __future__ import annotations

import sqlite3
import tempfile
from contextlib import closing
from dataclasses import replace
from datetime import datetime
from pathlib import Path

import pytest
from hypothesis import HealthCheck, settings
from hypothesis import strategies as st
from hypothesis.stateful import (
    RuleBasedStateMachine,
    invariant,
    precondition,
    rule,
    run_state_machine_as_test,
)

from barkeep.application.bar import Bar
from barkeep.domain.bar.shoots import Shoot, ShootDrink
from barkeep.domain.bar.snapshot import Settings
from barkeep.domain.bottles.bottle import fold
from barkeep.domain.bottles.levels import MeasuredLevel
from barkeep.domain.ingredients.relations import StandIn
from barkeep.domain.shoots.log import LogSheet
from barkeep.errors import NothingToUndo, UserError
from barkeep.store.refusals import CannotUndo
from tests.application.conftest import NOON, gin_draft, plough, small_knowledge
from tests.how_much import EVERYTHING


def picture(bar):
    """What a user can see of a bar."""
    shot = bar.snapshot
    knowledge = (shot.knowledge.stand_ins, tuple(shot.knowledge.tree))
    return shot.products, shot.bottles, shot.specs, shot.settings, shot.shoots, knowledge


def night_train(bar):
    """A shoot of the first spec, today."""
    drinks = tuple(ShootDrink(each.id, each.name) for each in bar.snapshot.specs[:1])
    return Shoot(None, "Night train", NOON.date(), drinks)


ACTIONS = {
    "add product": lambda bar: bar.inventory.add_product(gin_draft(name="dry gin")),
    "change product": lambda bar: bar.inventory.change_product(1, gin_draft(price=1.0)),
    "receive": lambda bar: bar.inventory.receive(1),
    "open": lambda bar: bar.inventory.open(1),
    "pour": lambda bar: bar.inventory.pour(1, 60.0),
    "waste": lambda bar: bar.inventory.waste(1, 60.0),
    "empty": lambda bar: bar.inventory.empty(1),
    "correct": lambda bar: bar.inventory.correct(1, -5.0),
    "count": lambda bar: bar.counting.count({1: MeasuredLevel(315.0, "tenths", 35.0)}),
    "weigh empty": lambda bar: bar.counting.learn_tare(1, 520.0),
    "weigh full": lambda bar: bar.counting.learn_tare(1, 1230.0, full=True),
    "dasher": lambda bar: bar.counting.set_dasher(1, 0.3),
    "count by weight": lambda bar: bar.counting.count({1: MeasuredLevel(315.0, "weight", 3.0)}),
    "reorder": lambda bar: bar.inventory.reorder([2, 1]),
    "move": lambda bar: bar.inventory.move(1, None),
    "remove": lambda bar: bar.inventory.remove(1),
    "add spec": lambda bar: bar.specs.add([plough("Night Sleeper"), plough("Branch Line")]),
    "replace spec": lambda bar: bar.specs.replace(
        replace(bar.snapshot.specs[0], lines=plough().lines[:1], name="Plough")
    ),
    "remove spec": lambda bar: bar.specs.remove(1),
    "add shoot": lambda bar: bar.shoots.add(night_train(bar)),
    "tick": lambda bar: bar.shoots.tick(1, "tools"),
    "log shoot": lambda bar: bar.shoots.log(
        1, LogSheet((2,), {1: 5.0}, {1: MeasuredLevel(315.0, "tenths", 35.0)})
    ),
    "remove shoot": lambda bar: bar.shoots.remove(1),
    "settings": lambda bar: bar.settings.change(Settings("Signal box", "GBP", frozenset({"ice"}))),
    "stand-in": lambda bar: bar.knowledge.add_stand_in(StandIn("gin", "bourbon", 0.6, 1.0, "so")),
    "forget": lambda bar: bar.knowledge.remove_stand_in("sweet-vermouth", "bourbon"),
}


@pytest.fixture
def stocked(bar, gin):
    """Two bottles, a spec and a stand-in."""
    bar.inventory.receive(gin.product.id)
    bar.specs.add([plough()])
    bar.knowledge.add_stand_in(StandIn("sweet-vermouth", "bourbon", 0.3, 1.0, "a last resort"))
    bar.shoots.add(night_train(bar))
    return bar


@pytest.mark.parametrize("name", ACTIONS)
def test_each_action_is_undone_and_redone_across_restarts(stocked, reopen, name):
    before = picture(stocked)
    done = ACTIONS[name](stocked)
    after = picture(stocked)
    assert after != before and stocked.undo_label == done.label
    stocked.close()

    later = reopen()
    assert picture(later) == after
    undone = later.undo()
    assert (undone.label, undone.changes) == (done.label, done.changes)
    assert picture(later) == before and later.redo_label == done.label
    later.close()

    latest = reopen()
    assert picture(latest) == before
    latest.redo()
    assert picture(latest) == after and latest.redo_label is None
    latest.undo()
    assert picture(latest) == before
    latest.redo()
    assert picture(latest) == after == picture(reopen())


def test_nothing_to_undo_or_redo_is_said(bar):
    with pytest.raises(NothingToUndo, match="nothing to undo"):
        bar.undo()
    with pytest.raises(NothingToUndo, match="nothing to redo"):
        bar.redo()


def test_a_new_action_supersedes_what_was_undone(bar, gin):
    bar.inventory.pour(gin.id, 60.0)
    bar.inventory.pour(gin.id, 40.0)
    bar.undo()
    bar.inventory.pour(gin.id, 1.0)
    assert bar.redo_label is None
    with pytest.raises(NothingToUndo):
        bar.redo()
    assert bar.undo().label == "Pour 1 ml of Tansy Lock navy-strength gin"
    assert bar.undo().label == "Pour 60 ml of Tansy Lock navy-strength gin"
    assert bar.snapshot.bottles[0].level.amount == 700.0


def test_the_ledger_only_grows(bar, gin, bar_file):
    bar.inventory.pour(gin.id, 60.0)
    for _ in range(3):
        bar.undo()
        bar.redo()
    with closing(sqlite3.connect(bar_file)) as file:
        kinds = [row[0] for row in file.execute("SELECT kind FROM ledger ORDER BY id")]
        assert kinds == ["receive", "pour", *["reverse"] * 6]
        for change in ("DELETE FROM ledger", "UPDATE ledger SET amount = 1"):
            with pytest.raises(sqlite3.IntegrityError, match="only ever added"):
                file.execute(change)


def test_undo_that_needs_a_taken_name_changes_nothing(bar, bar_file):
    spec = bar.specs.add([plough()]).value[0]
    bar.specs.remove(spec.id)
    with closing(sqlite3.connect(bar_file)) as file, file:
        file.execute(
            "INSERT INTO spec (name, folded_name, method, technique, glass, ice, notes, hidden) "
            "VALUES ('SNOW PLOUGH', 'snow plough', '', 'built', '', '', '', 0)"
        )
    bar.refresh()
    before = picture(bar)
    with pytest.raises(CannotUndo, match="a name it needs is taken"):
        bar.undo()
    assert picture(bar) == before
    assert bar.undo_label == "Remove spec Snow Plough" and bar.redo_label is None


def test_undo_does_not_write_over_what_came_from_elsewhere(bar, gin, bar_file):
    bar.inventory.change_product(gin.product.id, gin_draft(price=41.0))
    with closing(sqlite3.connect(bar_file)) as file, file:
        file.execute("UPDATE product SET price = 99")
    with pytest.raises(CannotUndo, match="the product was changed in another way since"):
        bar.undo()
    bar.refresh()
    assert bar.snapshot.products[0].price == 99


def test_undo_of_an_addition_that_is_gone_is_refused(bar, gin, bar_file):
    with closing(sqlite3.connect(bar_file)) as file, file:
        file.execute("UPDATE bottle SET hidden = 1")
    with pytest.raises(CannotUndo, match="the bottle was changed"):
        bar.undo()


class UndoMachine(RuleBasedStateMachine):
    """Any order of changes, undo, redo and restarts, against a list of past pictures.

    The ledger's fold must be the level that stood when the same point of
    history was last left, in the snapshot and when folded from the raw rows.
    """

    def __init__(self) -> None:
        super().__init__()
        self.folder = tempfile.TemporaryDirectory()
        self.location = self.begun_at()
        self.knowledge = small_knowledge()
        self.bar = self.opened()
        product = self.bar.inventory.add_product(gin_draft()).value
        for _ in range(2):
            self.bar.inventory.receive(product.id)
        self.past = [picture(self.bar)]
        self.future: list[object] = []

    def begun_at(self) -> Path | str:
        return Path(self.folder.name) / "bar"

    def opened(self) -> Bar:
        return Bar.open(self.location, self.knowledge, lambda: NOON)

    def tried(self, use_case, *args):
        """Run a use case; a refusal must leave everything as it was."""
        before = picture(self.bar)
        try:
            done = use_case(*args)
        except UserError:
            assert picture(self.bar) == before
            return
        if done.changes:
            self.past.append(picture(self.bar))
            self.future.clear()

    bottles = st.integers(1, 3)
    amounts = st.sampled_from([0.1, 33.3, 60.0, 350.0, 700.0])

    @rule(bottle=bottles, amount=amounts)
    def pour(self, bottle, amount):
        self.tried(self.bar.inventory.pour, bottle, amount)

    @rule(bottle=bottles, amount=amounts)
    def correct(self, bottle, amount):
        self.tried(self.bar.inventory.correct, bottle, -amount)

    @rule(levels=st.dictionaries(bottles, amounts, min_size=1))
    def count(self, levels):
        measured = {each: MeasuredLevel(amount, "volume", 5.0) for each, amount in levels.items()}
        self.tried(self.bar.counting.count, measured)

    @rule(bottle=bottles)
    def open_one(self, bottle):
        self.tried(self.bar.inventory.open, bottle)

    @rule(bottle=bottles)
    def empty(self, bottle):
        self.tried(self.bar.inventory.empty, bottle)

    @rule(bottle=bottles)
    def remove(self, bottle):
        self.tried(self.bar.inventory.remove, bottle)

    @rule()
    def receive(self):
        self.tried(self.bar.inventory.receive, 1)

    @precondition(lambda self: len(self.past) > 1)
    @rule()
    def undo(self):
        self.bar.undo()
        self.future.append(self.past.pop())

    @precondition(lambda self: self.future)
    @rule()
    def redo(self):
        self.bar.redo()
        self.past.append(self.future.pop())

    @rule()
    def restart(self):
        self.bar.close()
        self.bar = self.opened()

    @rule(bottle=bottles, amount=amounts)
    def pour_elsewhere(self, bottle, amount):
        """Another session writes, and this one follows it."""
        with self.opened() as other:
            try:
                written = other.inventory.pour(bottle, amount).changes
            except UserError:
                written = None
            theirs = picture(other)
        assert self.bar.follow() == ("written" if written else "same")
        assert picture(self.bar) == theirs
        if written:
            self.past.append(theirs)
            self.future.clear()

    @invariant()
    def the_bar_is_as_it_was_at_this_point(self):
        assert picture(self.bar) == self.past[-1]
        assert (self.bar.redo_label is not None) == bool(self.future)

    @invariant()
    def the_raw_ledger_folds_to_the_level_shown(self):
        for bottle in self.bar.snapshot.bottles:
            steps = self.bar.inventory.history(bottle.id)
            assert fold([entry for entry, _after in steps]) == bottle.level
            assert steps[-1][1] == bottle.level.amount

    def teardown(self):
        self.bar.close()
        self.folder.cleanup()


TestUndoMachine = UndoMachine.TestCase
TestUndoMachine.settings = settings(
    max_examples=15,
    stateful_step_count=25,
    deadline=None,
    suppress_health_check=[HealthCheck.too_slow],
)


def test_any_order_of_changes_undo_redo_and_restarts_on_a_server(server):
    class OnAServer(UndoMachine):
        def begun_at(self):
            return server.new_bar()

    few = settings(
        max_examples=100 if EVERYTHING else 3,
        stateful_step_count=15,
        suppress_health_check=[HealthCheck.too_slow],
    )
    run_state_machine_as_test(OnAServer, settings=few)


def test_every_action_on_a_server_is_undone_and_redone_across_restarts(server):
    """One after the other over one bar, which each leaves as it was."""
    address, known = server.new_bar(), small_knowledge()

    def reopened():
        return Bar.open(address, known, lambda: NOON)

    with reopened() as first:
        product = first.inventory.add_product(gin_draft()).value
        for _ in range(2):
            first.inventory.receive(product.id)
        first.specs.add([plough()])
        first.knowledge.add_stand_in(StandIn("sweet-vermouth", "bourbon", 0.3, 1.0, "a last"))
        first.shoots.add(night_train(first))
        before = picture(first)
    for name, act in ACTIONS.items():
        with reopened() as bar:
            done, after = act(bar), picture(bar)
            assert after != before and bar.undo_label == done.label, name
        with reopened() as later:
            assert picture(later) == after
            undone = later.undo()
            assert (undone.label, undone.changes) == (done.label, done.changes)
            assert picture(later) == before and later.redo_label == done.label
            later.redo()
            assert picture(later) == after
            later.undo()
            assert picture(later) == before


def test_labels_survive_a_restart_in_order(bar, gin, reopen):
    bar.inventory.open(gin.id)
    assert reopen().undo_label == "Open Tansy Lock navy-strength gin"


def test_an_undone_entry_keeps_its_moment(bar, gin, clock):
    bar.inventory.open(gin.id)
    clock.now = datetime(2026, 12, 24, 18, 0)
    bar.undo()
    bar.redo()
    assert bar.snapshot.bottles[0].level.opened == NOON.date()
