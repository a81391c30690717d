"""Where a bar's undo begins."""

from __future__ import annotations

from sqlalchemy import update

from barkeep.store.schema import action
from barkeep.store.unit_of_work import UnitOfWork


def begin_here(work: UnitOfWork) -> None:
    """Make all actions so far the bar's beginning, which neither undo nor redo goes behind.

    Their ledger entries and records stay as they are.
    """
    reachable = update(action).where(action.c.state != "superseded")
    work.connection.execute(reachable.values(state="superseded"))
