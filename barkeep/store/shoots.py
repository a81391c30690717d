"""Shoots: between rows and the domain's values."""

from __future__ import annotations

from dataclasses import asdict
from datetime import datetime, time
from typing import Any

from sqlalchemy import Connection, select

from barkeep.domain.bar.shoots import (
    ChosenPour,
    LoggedBottle,
    ServeCounts,
    Shoot,
    ShootDrink,
    ShootLog,
)
from barkeep.store.records import Row
from barkeep.store.schema import shoot

_COLUMNS = (
    shoot.c.id,
    shoot.c.theme,
    shoot.c.on,
    shoot.c.drinks,
    shoot.c.state,
    shoot.c.starts,
    shoot.c.notes,
    shoot.c.ticked,
    shoot.c.log,
)

_SHOWN = select(*_COLUMNS).where(~shoot.c.hidden)


def read_shoots(connection: Connection) -> tuple[Shoot, ...]:
    """Every shoot that is there, the latest first."""
    ordered = _SHOWN.order_by(shoot.c.on.desc(), shoot.c.id.desc())
    return tuple(_shoot(row) for row in connection.execute(ordered))


def read_shoot(connection: Connection, shoot_id: int) -> Shoot | None:
    """One shoot, None where there is none or it is hidden."""
    row = connection.execute(_SHOWN.where(shoot.c.id == shoot_id)).first()
    return None if row is None else _shoot(row)


def shoot_row(one: Shoot) -> Row:
    """The row of a shoot, without its id."""
    return {
        "theme": one.theme,
        "on": one.on,
        "starts": one.starts.isoformat("minutes") if one.starts else None,
        "state": one.state,
        # Lists and not tuples, as JSON gives them back: undo compares the two.
        "drinks": [
            {
                "spec_id": each.spec_id,
                "name": each.name,
                "serves": asdict(each.serves),
                "chosen": [asdict(chosen) for chosen in each.chosen],
            }
            for each in one.drinks
        ],
        "notes": one.notes,
        "ticked": sorted(one.ticked),
        "log": _log_row(one.log),
        "hidden": False,
    }


def _log_row(log: ShootLog | None) -> Row | None:
    if log is None:
        return None
    bottles = [asdict(each) for each in log.bottles]
    return {"at": log.at.isoformat(), "made": list(log.made), "bottles": bottles}


def _shoot(row: Any) -> Shoot:
    identity, theme, on, drinks, state, starts, notes, ticked, log = row
    return Shoot(
        id=identity,
        theme=theme,
        on=on,
        drinks=tuple(_drink(each) for each in drinks),
        state=state,
        starts=time.fromisoformat(starts) if starts else None,
        notes=notes,
        ticked=frozenset(ticked),
        log=_log(log),
    )


def _drink(found: Any) -> ShootDrink:
    chosen = tuple(ChosenPour(**each) for each in found["chosen"])
    return ShootDrink(found["spec_id"], found["name"], ServeCounts(**found["serves"]), chosen)


def _log(found: Any) -> ShootLog | None:
    if found is None:
        return None
    bottles = tuple(LoggedBottle(**each) for each in found["bottles"])
    return ShootLog(datetime.fromisoformat(found["at"]), tuple(found["made"]), bottles)
