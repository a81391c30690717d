"""Undo and redo, one line of actions that outlives a restart.

Actions are *done*, then *undone* from the newest back; a new action makes
those that are undone *superseded*, for good.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime
from itertools import groupby
from typing import Any

from sqlalchemy import Connection, select, update
from sqlalchemy.exc import IntegrityError

from barkeep.errors import NothingToUndo
from barkeep.store import records, seal
from barkeep.store.bottles import restore_entries, reverse_entries
from barkeep.store.records import KINDS, Key
from barkeep.store.refusals import AnotherStep, CannotUndo
from barkeep.store.schema import action, action_image, ledger
from barkeep.store.steps import Action, Stamp, Way
from barkeep.store.unit_of_work import Touched, UnitOfWork, supersede
from barkeep.translation import tr


def newest(connection: Connection) -> Stamp | None:
    """The action written last, None where there is none."""
    newest_first = select(action.c.id, action.c.at, action.c.label).order_by(action.c.id.desc())
    row = connection.execute(newest_first.limit(1)).first()
    return None if row is None else Stamp(*row)


def at(connection: Connection, action_id: int) -> Stamp | None:
    """The action of a number, None where there is none."""
    one = select(action.c.id, action.c.at, action.c.label).where(action.c.id == action_id)
    row = connection.execute(one).first()
    return None if row is None else Stamp(*row)


def next_action(connection: Connection, way: Way) -> Action | None:
    """What undo or redo would act on, None where there is nothing."""
    state, newest = ("done", True) if way == "undo" else ("undone", False)
    order = action.c.id.desc() if newest else action.c.id
    statement = select(action.c.id, action.c.label).where(action.c.state == state)
    row = connection.execute(statement.order_by(order).limit(1)).first()
    return None if row is None else Action(row[0], row[1])


def step(
    connection: Connection, way: Way, at: datetime, named: Action | None = None
) -> tuple[Action, Touched]:
    """Undo or redo one action within the caller's transaction.

    Where one is `named`, it is that one or none. Raises `NothingToUndo`,
    `AnotherStep`, and `CannotUndo` where the records as they were no longer
    fit into the bar.
    """
    found = next_action(connection, way)
    if named is not None and (found is None or found.id != named.id):
        raise _another(connection, way, named, found)
    if found is None:
        raise NothingToUndo(way)
    try:
        written = _put_images(connection, found, way)
    except IntegrityError as error:
        raise CannotUndo(way, found.label, tr("a name it needs is taken by now")) from error
    own = action.c.id == found.id
    with seal.changing(connection, (action, own), (ledger, ledger.c.action_id == found.id)):
        take = reverse_entries if way == "undo" else restore_entries
        bottle_ids = take(connection, found.id, at)
        state = "undone" if way == "undo" else "done"
        connection.execute(update(action).where(own).values(state=state))
    return found, Touched.by_writing(written, bottle_ids)


def _another(connection: Connection, way: Way, named: Action, found: Action | None) -> AnotherStep:
    """Why a step that a menu named is not the next one any more."""
    state = connection.execute(select(action.c.state).where(action.c.id == named.id)).scalar()
    if way == "redo":
        gone = (
            tr("was done again already")
            if state == "done"
            else tr("was followed by another change")
        )
    elif state == "done" and found is not None:
        gone = tr("was followed by “{label}”", label=found.label)
    else:
        gone = tr("was undone already")
    return AnotherStep(way, named.label, gone, "" if found is None else found.label)


def begin_here(work: UnitOfWork) -> None:
    """Make all actions so far the bar's beginning, which neither undo nor redo goes behind.

    Their ledger entries and records stay as they are.
    """
    assert work.action_id is None  # it would be among them
    supersede(work.connection, action.c.state != "superseded")


def _put_images(connection: Connection, found: Action, way: Way) -> list[tuple[str, Key]]:
    """Make the records what they were before, or after, the action; the records these are.

    Step by step as they were written, for undo from the last one back. What a
    step needs, such as a name that another record gave up, is then there, and a
    record that was added and changed, or changed several times, passes through
    the same states again.
    """
    images = _images(connection, found.id, way)
    for (_record, is_added), run in groupby(images, _record_and_whether_added):
        if is_added:
            _hide_or_show(connection, found, way, tuple(run))
        else:
            for image in run:
                _put_image(connection, found, way, image)
    return [(image.record, tuple(image.key)) for image in images]


def _record_and_whether_added(image: Any) -> tuple[str, bool]:
    return image.record, image.before is None and image.after is None


def _images(connection: Connection, action_id: int, way: Way) -> list[Any]:
    order = action_image.c.position.desc() if way == "undo" else action_image.c.position
    statement = select(action_image).where(action_image.c.action_id == action_id)
    return list(connection.execute(statement.order_by(order)))


def _hide_or_show(connection: Connection, found: Action, way: Way, added: Sequence[Any]) -> None:
    """Hide records of one kind that the action added, or show them again."""
    record = added[0].record
    keys = [tuple(each.key) for each in added]
    if records.set_hidden(connection, KINDS[record], keys, way == "undo") != len(keys):
        raise CannotUndo(way, found.label, _moved(record))


def _put_image(connection: Connection, found: Action, way: Way, image: Any) -> None:
    kind, key = KINDS[image.record], tuple(image.key)
    old, new = (image.after, image.before) if way == "undo" else (image.before, image.after)
    if records.to_image(records.read(connection, kind, key)) != old:
        raise CannotUndo(way, found.label, _moved(image.record))
    records.write(connection, kind, key, records.from_image(kind, new))


def _moved(record: str) -> str:
    return tr("the {record} was changed in another way since", record=tr(record.replace("_", " ")))
