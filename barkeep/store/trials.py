"""Trials: between rows and the domain's values."""

from __future__ import annotations

from typing import Any

from sqlalchemy import Connection, select

from barkeep.domain.trials import Score, Trial
from barkeep.store.records import Row
from barkeep.store.schema import spec, trial

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
