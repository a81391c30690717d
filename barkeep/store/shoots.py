"""Shoots: between rows and the domain's values."""

from __future__ import annotations

from dataclasses import asdict
from datetime import datetime, time

from sqlalchemy import Connection, select

from barkeep.domain.bar.shoots import (
    ChosenPour,
    LoggedBottle,
    ServeCounts,
    Shoot,
    ShootDrink,
    ShootLog,
)
from barkeep.store.rows import Kept, Mapper, Row
from barkeep.store.schema import shoot


def read_shoots(connection: Connection) -> tuple[Shoot, ...]:
    """Every shoot that is there, the latest first."""
    ordered = _SHOWN.order_by(shoot.c.on.desc(), shoot.c.id.desc())
    return SHOOT.every(connection, ordered)


def read_shoot(connection: Connection, shoot_id: int) -> Shoot | None:
    """One shoot, None where there is none or it is hidden."""
    return SHOOT.first(connection, _SHOWN.where(shoot.c.id == shoot_id))


def _drink_row(one: ShootDrink) -> Row:
    return asdict(one) | {"chosen": [asdict(each) for each in one.chosen]}


def _drink(found: Row) -> ShootDrink:
    chosen = tuple(ChosenPour(**each) for each in found["chosen"])
    return ShootDrink(**found | {"serves": ServeCounts(**found["serves"]), "chosen": chosen})


def _log_row(log: ShootLog | None) -> Row | None:
    if log is None:
        return None
    bottles = [asdict(each) for each in log.bottles]
    return {"at": log.at.isoformat(), "made": list(log.made), "bottles": bottles}


def _log(found: Row | None) -> ShootLog | None:
    if found is None:
        return None
    return ShootLog(
        at=datetime.fromisoformat(found["at"]),
        made=tuple(found["made"]),
        bottles=tuple(LoggedBottle(**each) for each in found["bottles"]),
    )


SHOOT = Mapper(
    Shoot,
    shoot,
    kept={
        # Lists and not tuples, as JSON gives them back: undo compares the two.
        "drinks": Kept(
            lambda drinks: [_drink_row(each) for each in drinks],
            lambda found: tuple(_drink(each) for each in found),
            list[ShootDrink],
        ),
        "starts": Kept(
            lambda starts: starts.isoformat("minutes") if starts else None,
            lambda found: time.fromisoformat(found) if found else None,
            str | None,
        ),
        "ticked": Kept(sorted, frozenset, list[str]),
        "log": Kept(_log_row, _log, ShootLog | None),
    },
    beside={"hidden": lambda _one: False},
)

_SHOWN = select(*SHOOT.columns).where(~shoot.c.hidden)
