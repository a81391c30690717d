"""What was removed from a bar: hidden rows, which are shown again by a unit of work."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from datetime import datetime
from json import loads
from typing import Literal, get_args

from sqlalchemy import Connection, Text, cast, func, select

from barkeep.domain.amounts.units import Unit
from barkeep.domain.bottles.bottle import Product, active, fold
from barkeep.domain.phrases import price_in_words
from barkeep.store.bottles import PRODUCT, entries_by_bottle
from barkeep.store.schema import action, action_image, bottle, paid, product, shoot, spec, trial
from barkeep.translation import tr

RemovedKind = Literal["bottle", "product", "spec", "trial", "shoot", "paid"]
KINDS: tuple[RemovedKind, ...] = get_args(RemovedKind)


@dataclass(frozen=True, slots=True)
class Removed:
    """One thing that was removed, or whose adding was undone, and when.

    `left` is what a bottle holds, in `unit`; None of anything else.
    """

    kind: RemovedKind
    id: int
    name: str
    at: datetime | None
    left: float | None = None
    unit: Unit = "ml"


def read_removed(connection: Connection) -> tuple[Removed, ...]:
    """Everything removed, the latest first.

    A bottle without an entry that counts never came in: that it did was undone.
    """
    when = _last_changes(connection)
    found = (*_bottles(connection, when), *_others(connection, when))
    oldest = datetime.min
    return tuple(sorted(found, key=lambda each: (each.at or oldest, each.id), reverse=True))


When = Mapping[tuple[str, int], datetime]

_KEY = cast(action_image.c.key, Text)
"""The key as its letters, which can be told from one another in any database."""


def _last_changes(connection: Connection) -> When:
    """Kind and id -> when an action changed it last."""
    images = (
        select(action_image.c.record, _KEY, func.max(action.c.at))
        .join_from(action_image, action)
        .where(action_image.c.record.in_(KINDS))
        .group_by(action_image.c.record, _KEY)
    )
    return {(record, loads(key)[0]): at for record, key, at in connection.execute(images)}


def _taken_away(connection: Connection) -> frozenset[int]:
    """The ids of the payments that were once there and changed, such as taken away."""
    keys = (
        select(_KEY)
        .join_from(action_image, action)
        .where(action_image.c.record == "paid", action_image.c.before.is_not(None))
        .where(action.c.state != "undone")
    )
    return frozenset(loads(key)[0] for key in connection.execute(keys).scalars())


def _bottles(connection: Connection, when: When) -> Iterator[Removed]:
    hidden = select(bottle.c.id, bottle.c.product_id).where(bottle.c.hidden)
    product_of = {row.id: row.product_id for row in connection.execute(hidden)}
    products = PRODUCT.every(connection, select(*PRODUCT.columns)) if product_of else ()
    by_id = {each.id: each for each in products}
    for bottle_id, entries in entries_by_bottle(connection, product_of.keys()).items():
        its = by_id[product_of[bottle_id]]
        if active(entries):
            left = fold(entries, its.unit).amount
            at = when.get(("bottle", bottle_id))
            yield Removed("bottle", bottle_id, its.title, at, left=left, unit=its.unit)


def _others(connection: Connection, when: When) -> Iterator[Removed]:
    for each in PRODUCT.every(connection, select(*PRODUCT.columns).where(product.c.hidden)):
        yield Removed("product", each.id, each.title, when.get(("product", each.id)))
    drinks = select(spec.c.id, spec.c.name).where(spec.c.hidden)
    for spec_id, name in connection.execute(drinks):
        yield Removed("spec", spec_id, name, when.get(("spec", spec_id)))
    tastings = select(trial.c.id, trial.c.on, spec.c.name).join_from(trial, spec)
    for trial_id, on, name in connection.execute(tastings.where(trial.c.hidden, ~spec.c.hidden)):
        yield Removed("trial", trial_id, f"{name}, {on}", when.get(("trial", trial_id)))
    sessions = select(shoot.c.id, shoot.c.theme).where(shoot.c.hidden)
    for shoot_id, theme in connection.execute(sessions):
        yield Removed("shoot", shoot_id, theme, when.get(("shoot", shoot_id)))
    columns = (paid.c.id, paid.c.amount, paid.c.day, product.c.maker, product.c.name)
    its = select(*columns).join_from(paid, product).where(paid.c.hidden, ~product.c.hidden)
    taken = _taken_away(connection)
    for paid_id, amount, day, maker, name in connection.execute(its):
        if ("paid", paid_id) in when and paid_id not in taken:
            continue  # that a bottle came was undone, and with it what it cost
        words = tr(
            "{price} for {maker} {name}", price=price_in_words(amount), maker=maker, name=name
        ).replace("  ", " ")
        yield Removed("paid", paid_id, f"{words}, {day}", when.get(("paid", paid_id)))


def product_behind(connection: Connection, thing: Removed) -> Product | None:
    """The product that comes back with a thing, or is the thing; None where none is removed."""
    of = select(*PRODUCT.columns).where(product.c.hidden)
    if thing.kind == "bottle":
        of = of.join_from(product, bottle).where(bottle.c.id == thing.id)
    elif thing.kind == "product":
        of = of.where(product.c.id == thing.id)
    else:
        return None
    return PRODUCT.first(connection, of)
