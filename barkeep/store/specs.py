"""Specs, their lines and their trials: between rows and the domain's values."""

from __future__ import annotations

import gc
from collections.abc import Collection, Iterator
from contextlib import contextmanager
from typing import Any

from sqlalchemy import Connection, select

from barkeep.domain.phrases import folded
from barkeep.domain.specs.spec import Line, Spec
from barkeep.domain.specs.trials import Score, Trial
from barkeep.store.records import Row
from barkeep.store.schema import spec, spec_line, trial

_SPEC = (
    spec.c.id,
    spec.c.name,
    spec.c.method,
    spec.c.technique,
    spec.c.glass,
    spec.c.ice,
    spec.c.notes,
    spec.c.riff_of,
    spec.c.added,
    spec.c.serves,
    spec.c.tags,
    spec.c.credit,
    spec.c.source,
)

_LINE = (
    spec_line.c.spec_id,
    spec_line.c.text,
    spec_line.c.ingredient,
    spec_line.c.amount,
    spec_line.c.amount_high,
    spec_line.c.unit,
    spec_line.c.quantity,
    spec_line.c.optional,
    spec_line.c.garnish,
    spec_line.c.note,
    spec_line.c.min_abv_percent,
    spec_line.c.alternatives,
)


def read_specs(connection: Connection) -> tuple[Spec, ...]:
    """Every spec that is not hidden, by name."""
    shown = select(*_SPEC).where(~spec.c.hidden).order_by(spec.c.folded_name, spec.c.id)
    # The lines of hidden specs are read too: dropping them here costs less than a join.
    in_order = select(*_LINE).order_by(spec_line.c.spec_id, spec_line.c.position)
    lines: dict[int, list[Line]] = {}
    with _collector_paused():
        for row in connection.execute(in_order):
            lines.setdefault(row[0], []).append(_line(row))
        return tuple(_spec(row, lines.get(row[0], [])) for row in connection.execute(shown))


def read_spec(connection: Connection, spec_id: int) -> Spec | None:
    """One spec, None where there is none or it is hidden."""
    row = connection.execute(select(*_SPEC).where(spec.c.id == spec_id, ~spec.c.hidden)).first()
    if row is None:
        return None
    own = select(*_LINE).where(spec_line.c.spec_id == spec_id).order_by(spec_line.c.position)
    return _spec(row, [_line(each) for each in connection.execute(own)])


def taken_names(connection: Connection, apart_from: Collection[int] = ()) -> frozenset[str]:
    """The folded names of the specs there are."""
    rows = connection.execute(select(spec.c.id, spec.c.folded_name).where(~spec.c.hidden))
    return frozenset(row[1] for row in rows if row[0] not in apart_from)


def spec_row(one: Spec) -> Row:
    """The row of a spec with its lines, without its id."""
    return {
        "name": one.name,
        "folded_name": folded(one.name),
        "method": one.method,
        "technique": one.technique,
        "glass": one.glass,
        "ice": one.ice,
        "notes": one.notes,
        "riff_of": one.riff_of,
        "added": one.added,
        "hidden": False,
        "serves": one.serves,
        "tags": list(one.tags) or None,
        "credit": one.credit,
        "source": one.source,
        "lines": [_line_row(line) for line in one.lines],
    }


@contextmanager
def _collector_paused() -> Iterator[None]:
    """No cyclic garbage collection: it takes a quarter of the time of a large read for nothing."""
    was_on = gc.isenabled()
    gc.disable()
    try:
        yield
    finally:
        if was_on:
            gc.enable()


def _line_row(line: Line) -> Row:
    return {
        "text": line.text,
        "ingredient": line.ingredient,
        "amount": line.amount,
        "amount_high": line.amount_high,
        "unit": line.unit,
        "quantity": line.quantity,
        "optional": line.optional,
        "garnish": line.garnish,
        "note": line.note,
        "min_abv_percent": line.min_abv_percent,
        "alternatives": list(line.alternatives) or None,
    }


def _line(row: Any) -> Line:
    values: tuple[Any, ...] = (*row[1:-1], tuple(row[-1] or ()))
    return Line(*values)


def _spec(row: Any, lines: list[Line]) -> Spec:
    identity, name, *fields, added, serves, tags, credit, source = row
    method, technique, glass, ice, notes, riff_of = fields
    return Spec(
        name,
        tuple(lines),
        method,
        technique,
        glass,
        ice,
        notes,
        riff_of,
        identity,
        added=added,
        serves=serves,
        tags=tuple(tags or ()),
        credit=credit,
        source=source,
    )


_COLUMNS = (
    trial.c.id,
    trial.c.spec_id,
    trial.c.on,
    trial.c.scores,
    trial.c.notes,
    trial.c.changed,
    trial.c.won,
)

_SHOWN = select(*_COLUMNS).join_from(trial, spec).where(~trial.c.hidden, ~spec.c.hidden)


def read_trials(connection: Connection) -> tuple[Trial, ...]:
    """Every trial of a spec that is there, oldest first."""
    ordered = _SHOWN.order_by(trial.c.on, trial.c.id)
    return tuple(_trial(row) for row in connection.execute(ordered))


def read_trial(connection: Connection, trial_id: int) -> Trial | None:
    """One trial, None where there is none, or it or its spec is hidden."""
    row = connection.execute(_SHOWN.where(trial.c.id == trial_id)).first()
    return None if row is None else _trial(row)


def trial_row(one: Trial) -> Row:
    """The row of a trial, without its id."""
    return {
        "spec_id": one.spec_id,
        "on": one.on,
        "changed": one.changed,
        "notes": one.notes,
        "scores": [
            {"taster": each.taster, "scale": each.scale, "value": each.value} for each in one.scores
        ],
        "won": one.won,
        "hidden": False,
    }


def _trial(row: Any) -> Trial:
    identity, spec_id, on, scores, notes, changed, won = row
    return Trial(
        identity, spec_id, on, tuple(Score(**each) for each in scores), notes, changed, won
    )
