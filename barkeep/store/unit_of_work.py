"""One change of the bar: all of it or nothing, kept so that it can be undone.

For every record it changes, the unit of work keeps the record before and
after. What it adds needs no image, since undo hides it and redo shows it
again; nor do ledger entries, which undo reverses.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from datetime import datetime
from functools import cached_property
from typing import NamedTuple, Self

from sqlalchemy import ColumnElement, Connection, insert, select, update

from barkeep.domain.bar.changes import NOTHING, Changes, Part
from barkeep.domain.bottles.bottle import CountMethod, Entry, EntryKind
from barkeep.store import records, schema, seal
from barkeep.store.bottles import append_entries, append_entry
from barkeep.store.records import KINDS, Key
from barkeep.store.rows import Row, insert_many


@dataclass(frozen=True, slots=True)
class Touched:
    """What a change has touched: the parts of the snapshot, and the bottles whose level moved.

    `ids` are those of the records that were written, by the kind of record, where they number
    themselves.
    """

    changes: Changes = NOTHING
    bottle_ids: frozenset[int] = frozenset()
    ids: Mapping[str, frozenset[int]] = field(default_factory=dict)

    @classmethod
    def by_writing(cls, written: Iterable[tuple[str, Key]], bottle_ids: Iterable[int]) -> Self:
        """What is touched by writing records, and the ledgers of bottles."""
        keys: defaultdict[str, list[Key]] = defaultdict(list)
        for record, key in written:
            keys[record].append(key)
        changes = NOTHING.union(*(KINDS[record].changes for record in keys))
        moved = frozenset(bottle_ids)
        return cls(
            changes | {Part.BOTTLES} if moved else changes,
            moved,
            {
                record: frozenset(key[0] for key in some)
                for record, some in keys.items()
                if KINDS[record].soft
            },
        )


class _Image(NamedTuple):
    """One record that was written, before and after; neither for one that was added."""

    record: str
    key: Key
    before: Row | None = None
    after: Row | None = None


class UnitOfWork:
    """Writes within one open transaction; `label` names the action in menus."""

    def __init__(self, connection: Connection, label: str, at: datetime) -> None:
        self.connection = connection
        self.label = label
        self.at = at
        self._first_label = label
        self._images: list[_Image] = []
        self._bottle_ids: set[int] = set()

    @property
    def touched(self) -> Touched:
        """What has been written so far."""
        written = ((image.record, image.key) for image in self._images)
        return Touched.by_writing(written, self._bottle_ids)

    @property
    def action_id(self) -> int | None:
        """The action that this has become, once it is finished; None where nothing was changed."""
        return self._action_id if self._images or self._bottle_ids else None

    def insert(self, record: str, values: Iterable[object], **alike: object) -> tuple[int, ...]:
        """Add values as records of a soft kind, which numbers itself; their ids, in order.

        What is `alike` in all of them takes the place of their own.
        """
        ids = records.insert_new(self.connection, KINDS[record], tuple(values), alike)
        self._images.extend(_Image(record, (identity,)) for identity in ids)
        return ids

    def put(self, record: str, key: Key, value: object | None) -> None:
        """Make one record what a value and its key say; None takes it away."""
        kind = KINDS[record]
        self._put(record, key, None if value is None else kind.named(key) | kind.row(value))

    def change(self, record: str, key: Key, **values: object) -> None:
        """Change some values of a record that is there."""
        row = records.read(self.connection, KINDS[record], key)
        assert row is not None
        self._put(record, key, {**row, **values})

    def _put(self, record: str, key: Key, row: Row | None) -> None:
        """Write a whole row and its image; neither where it is no change."""
        kind = KINDS[record]
        before = records.read(self.connection, kind, key)
        if before == row:
            return
        records.write(self.connection, kind, key, row)
        self._keep(record, key, before, row)

    def append(
        self,
        bottle_id: int,
        kind: EntryKind,
        amount: float = 0.0,
        *,
        at: datetime | None = None,
        method: CountMethod | None = None,
        sigma: float | None = None,
        note: str = "",
    ) -> Entry:
        """Add a ledger entry, `amount` in the bottle's unit."""
        moment = at or self.at
        unnumbered = Entry(
            id=0,
            bottle_id=bottle_id,
            kind=kind,
            at=moment,
            amount=amount,
            method=method,
            sigma=sigma,
            note=note,
        )
        entry = append_entry(self.connection, unnumbered, self._action_id)
        self._bottle_ids.add(bottle_id)
        return entry

    def append_all(self, ledgers: Mapping[int, Sequence[Entry]]) -> None:
        """Add entries that have no number yet to the ledgers of bottles, by the bottles' ids."""
        if not any(ledgers.values()):
            return
        append_entries(self.connection, ledgers, self._action_id)
        self._bottle_ids.update(each for each, entries in ledgers.items() if entries)

    def finish(self) -> None:
        """Write the action with its images; nothing where nothing was changed."""
        if not (self._images or self._bottle_ids):
            return
        action_id = self._action_id
        if self.label != self._first_label:
            named = update(schema.action).where(schema.action.c.id == action_id)
            self.connection.execute(named.values(label=self.label))
        if self._images:
            count = len(self._images)
            columns = {
                "action_id": [action_id] * count,
                "position": range(count),
                "record": [image.record for image in self._images],
                "key": [list(image.key) for image in self._images],
                "before": [records.to_image(image.before) for image in self._images],
                "after": [records.to_image(image.after) for image in self._images],
            }
            insert_many(self.connection, schema.action_image, columns)
        seal.added_by(
            self.connection,
            action_id,
            has_images=bool(self._images),
            has_entries=bool(self._bottle_ids),
        )

    @cached_property
    def _action_id(self) -> int:
        supersede(self.connection, schema.action.c.state == "undone")
        self._first_label = self.label
        row = {"at": self.at, "label": self.label, "state": "done"}
        result = self.connection.execute(insert(schema.action).values(row))
        identity = result.inserted_primary_key
        assert identity is not None
        return int(identity[0])

    def _keep(self, record: str, key: Key, before: Row | None, after: Row | None) -> None:
        if after is None and KINDS[record].soft and before is not None:
            after = {**before, "hidden": True}
        self._images.append(_Image(record, key, before, after))


def supersede(connection: Connection, which: ColumnElement[bool]) -> None:
    """Make some actions such as neither undo nor redo goes to any more."""
    ids = connection.execute(select(schema.action.c.id).where(which)).scalars().all()
    for place in seal.of_ids(schema.action.c.id, ids):
        with seal.changing(connection, place):
            connection.execute(update(schema.action).where(place[1]).values(state="superseded"))
