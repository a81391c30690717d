"""Undo and redo, one line of actions that outlives a restart.

Actions are *done*, then *undone* from the newest back; a new action makes
those that are undone *superseded*, for good.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from itertools import groupby
from typing import Any, Literal

from sqlalchemy import Connection, select, update
from sqlalchemy.exc import IntegrityError

from barkeep.domain.bar.changes import NOTHING, Changes, Part
from barkeep.errors import NothingToUndo
from barkeep.store import records
from barkeep.store.bottles import restore_entries, reverse_entries
from barkeep.store.records import KINDS
from barkeep.store.refusals import CannotUndo
from barkeep.store.schema import action, action_image
from barkeep.store.unit_of_work import Touched, UnitOfWork

Way = Literal["undo", "redo"]


@dataclass(frozen=True, slots=True)
class Action:
    """One action as menus name it."""

    id: int
    label: str


def next_action(connection: Connection, way: Way) -> Action | None:
    """What undo or redo would act on, None where there is nothing."""
    state, newest = ("done", True) if way == "undo" else ("undone", False)
    order = action.c.id.desc() if newest else action.c.id
    statement = select(action.c.id, action.c.label).where(action.c.state == state)
    row = connection.execute(statement.order_by(order).limit(1)).first()
    return None if row is None else Action(row[0], row[1])


def step(connection: Connection, way: Way, at: datetime) -> tuple[Action, Touched]:
    """Undo or redo one action within the caller's transaction.

    Raises `NothingToUndo`, and `CannotUndo` where the records as they were no
    longer fit into the bar.
    """
    found = next_action(connection, way)
    if found is None:
        raise NothingToUndo(way)
    try:
        changes = _put_images(connection, found, way)
    except IntegrityError as error:
        raise CannotUndo(way, found.label, "a name it needs is taken by now") from error
    take = reverse_entries if way == "undo" else restore_entries
    bottle_ids = take(connection, found.id, at)
    state = "undone" if way == "undo" else "done"
    connection.execute(update(action).where(action.c.id == found.id).values(state=state))
    if bottle_ids:
        changes |= {Part.BOTTLES}
    return found, Touched(changes, bottle_ids)


def begin_here(work: UnitOfWork) -> None:
    """Make all actions so far the bar's beginning, which neither undo nor redo goes behind.

    Their ledger entries and records stay as they are.
    """
    reachable = update(action).where(action.c.state != "superseded")
    work.connection.execute(reachable.values(state="superseded"))


def _put_images(connection: Connection, found: Action, way: Way) -> Changes:
    """Make the records what they were before, or after, the action; what that changes.

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
    return NOTHING.union(*(KINDS[image.record].changes for image in images))


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
    return f"the {record.replace('_', ' ')} was changed in another way since"
