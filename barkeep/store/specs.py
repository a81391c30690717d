"""Specs, their lines and their trials: between rows and the domain's values."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Collection, Sequence
from dataclasses import replace
from typing import Any

from sqlalchemy import Connection, select

from barkeep.collector import collector_paused
from barkeep.domain.phrases import folded
from barkeep.domain.specs.spec import Line, Spec, UnsettledLine
from barkeep.domain.specs.trials import Score, Trial
from barkeep.store.rows import (
    MANY,
    WORDS_OR_NULL,
    Mapper,
    as_driven,
    kept_records,
    records_or_null,
)
from barkeep.store.schema import spec, spec_line, trial

LINE = Mapper(Line, spec_line, kept=dict.fromkeys(("alternatives", "stated"), WORDS_OR_NULL))

SPEC = Mapper(
    Spec,
    spec,
    kept={"tags": WORDS_OR_NULL, "unsettled": records_or_null(UnsettledLine)},
    apart=("lines", "classic"),
    beside={
        "folded_name": lambda one: folded(one.name),
        "hidden": lambda _one: False,
    },
    lines=LINE,
)

TRIAL = Mapper(
    Trial, trial, kept={"scores": kept_records(Score)}, beside={"hidden": lambda _one: False}
)


_OWNER = spec_line.c.spec_id
_LINES = select(*LINE.columns, _OWNER)
_LINES_AS_TEXT = select(_OWNER, *LINE.columns_as_text)


def read_specs(connection: Connection, ids: Collection[int] | None = None) -> tuple[Spec, ...]:
    """Every spec that is not hidden, by name; of those with these ids where some are given."""
    shown = select(*SPEC.columns).where(~spec.c.hidden).order_by(spec.c.folded_name, spec.c.id)
    # The lines of hidden specs are read too: dropping them here costs less than a join.
    in_order = _LINES_AS_TEXT.order_by(spec_line.c.spec_id, spec_line.c.position)
    if ids is not None:
        shown, in_order = shown.where(spec.c.id.in_(ids)), in_order.where(_OWNER.in_(ids))
    lines: defaultdict[int, list[Line]] = defaultdict(list)
    with collector_paused():
        with as_driven(connection.execute(in_order)) as found:
            values = LINE.sharing(connection.dialect, found.types[1:])
            for row in found.rows:
                lines[row[0]].append(values[row[1:]])
        rows = connection.execute(shown).all()
        return tuple(_spec(row, _each_once(lines.get(row.id, ()))) for row in rows)


def in_order(one: Spec) -> tuple[str, int]:
    """The place of a spec among those read."""
    return folded(one.name), one.id or 0


def read_spec(connection: Connection, spec_id: int) -> Spec | None:
    """One spec, None where there is none or it is hidden."""
    one = select(*SPEC.columns).where(spec.c.id == spec_id, ~spec.c.hidden)
    row = connection.execute(one).first()
    if row is None:
        return None
    own = _LINES.where(spec_line.c.spec_id == spec_id).order_by(spec_line.c.position)
    return _spec(row, [LINE.value(each) for each in connection.execute(own).all()])


def taken_names(
    connection: Connection, names: Collection[str], apart_from: Collection[int] = ()
) -> frozenset[str]:
    """Those of these folded names that specs have."""
    found = select(spec.c.id, spec.c.folded_name).where(~spec.c.hidden)
    if len(names) <= MANY:
        found = found.where(spec.c.folded_name.in_(names))
    rows = connection.execute(found)
    return frozenset(row[1] for row in rows if row[0] not in apart_from)


def _each_once(lines: Sequence[Line]) -> Sequence[Line]:
    """Lines of which no two are one object, as no two lines of a spec are."""
    if len(set(map(id, lines))) == len(lines):
        return lines
    return [replace(line) for line in lines]


def _spec(row: Any, lines: Sequence[Line]) -> Spec:
    return SPEC.value(row, lines=tuple(lines))


_SHOWN = select(*TRIAL.columns).join_from(trial, spec).where(~trial.c.hidden, ~spec.c.hidden)


def read_trials(connection: Connection) -> tuple[Trial, ...]:
    """Every trial of a spec that is there, oldest first."""
    ordered = _SHOWN.order_by(trial.c.on, trial.c.id)
    return TRIAL.every(connection, ordered)


def read_trial(connection: Connection, trial_id: int) -> Trial | None:
    """One trial, None where there is none, or it or its spec is hidden."""
    return TRIAL.first(connection, _SHOWN.where(trial.c.id == trial_id))
