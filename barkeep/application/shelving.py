"""A bottle comes on the shelf: what is asked of labels and bottles before anything is written."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace
from datetime import date, datetime, timedelta
from math import isfinite
from typing import TYPE_CHECKING, Literal, get_args

from barkeep.application.done import Done
from barkeep.application.finding import find_ingredient, there
from barkeep.application.session import Session
from barkeep.application.stale import RemovedSince
from barkeep.domain.amounts.units import Unit
from barkeep.domain.bottles.barcodes import checked_gtin
from barkeep.domain.bottles.bottle import (
    NOTHING_KNOWN,
    Bottle,
    BottleFacts,
    Entry,
    Label,
    Product,
    new_bottle,
)
from barkeep.domain.bottles.shapes import shipped_shapes
from barkeep.domain.bottles.taring import HEAVIEST_G_PER_ML, LIGHTEST_G_PER_ML
from barkeep.domain.days import day_said
from barkeep.domain.ingredients.tree import FamilyTree, Ingredient
from barkeep.errors import (
    DuplicateName,
    InvalidField,
    LevelAboveSize,
    NegativeAmount,
    NotEnoughLeft,
    UserError,
)
from barkeep.store import bottles as bottle_rows
from barkeep.store.unit_of_work import UnitOfWork
from barkeep.translation import tr, tr_noop

if TYPE_CHECKING:
    from barkeep.domain.bottles.levels import MeasuredLevel


class WrongState(UserError):
    """A bottle that is not as the action needs it, such as opening an open one."""

    bottle: str
    state: str
    advice: str

    def __str__(self) -> str:
        return tr(
            "{bottle} is {state} already: {advice}.",
            bottle=self.bottle,
            state=tr(self.state),
            advice=self.advice,
        )


class NeverOffered(UserError):
    """A stand-in between things that are mistaken for each other."""

    wanted: str
    offered: str
    why: str
    says = "{offered} must never stand in for {wanted}: {why}"


class StillInUse(UserError):
    """Something that cannot go while other things refer to it."""

    thing: str
    users: str
    several: bool = True

    def __str__(self) -> str:
        if self.several:
            told = tr_noop("{thing} cannot be removed: {users} still refer to it.")
        else:
            told = tr_noop("{thing} cannot be removed: {users} still refers to it.")
        return tr(told, thing=self.thing, users=self.users)


ROUNDING = 1e-6
"""A level may exceed a size, or a pour what is left, by this much: arithmetic, not a mistake."""


def product_there(work: UnitOfWork, product_id: int) -> Product:
    """The product as it is within the transaction. Raises `UnknownName` or `RemovedSince`."""
    found = bottle_rows.read_product(work.connection, product_id)
    if found is None:
        removed = bottle_rows.read_removed_product(work.connection, product_id)
        if removed is not None:
            raise RemovedSince(tr("the product {name}", name=removed.title))
    return there("product", found, product_id)


def bottle_there(work: UnitOfWork, bottle_id: int) -> Bottle:
    """The bottle as it is within the transaction. Raises `UnknownName`."""
    return there("bottle", bottle_rows.read_bottle(work.connection, bottle_id), bottle_id)


def on_bottle(
    session: Session,
    bottle_id: int,
    label: str,
    act: Callable[[UnitOfWork, Bottle], object],
) -> Done[Bottle]:
    """Do one thing to a bottle in a unit of work of its own; its title ends the label.

    Raises `UnknownName`, and what `act` raises.
    """
    with session.writing() as work:
        bottle = bottle_there(work, bottle_id)
        work.label = f"{label} {bottle.product.title}"
        act(work, bottle)
    return session.finished(work, lambda bar: bar.bottle_by_id[bottle_id])


def count_one(work: UnitOfWork, bottle: Bottle, measured: MeasuredLevel) -> Entry:
    """Append one count, in the bottle's unit. Raises `LevelAboveSize` or `NegativeAmount`."""
    level = counted_level(measured, bottle.product)
    return work.append(bottle.id, "count", level, method=measured.method, sigma=measured.sigma)


def counted_level(measured: MeasuredLevel, of: Label) -> float:
    """What a bottle with this label holds. Raises `LevelAboveSize` or `NegativeAmount`."""
    if measured.amount < 0:
        raise NegativeAmount(said(measured.amount, of))
    return level_within(measured.amount, of, may_be_nothing=True)


def open_one(work: UnitOfWork, bottle: Bottle) -> Entry:
    """Break the seal. Raises `WrongState` for a bottle that is open or empty."""
    title, level = bottle.product.title, bottle.level
    if level.state == "open":
        since = (
            tr("it was opened on {day}", day=day_said(level.opened))
            if level.opened
            else tr("there is nothing to do")
        )
        raise WrongState(title, "open", since)
    if level.state == "empty":
        raise WrongState(title, "empty", tr("count it if something is left"))
    return work.append(bottle.id, "open")


def take_one(
    work: UnitOfWork, bottle: Bottle, kind: Literal["pour", "waste"], amount: float, note: str
) -> Entry:
    """Append one pour or spill, in the bottle's unit. Raises `NotEnoughLeft`, `InvalidField`."""
    return work.append(bottle.id, kind, taken_from(bottle, amount), note=note)


def empty_one(work: UnitOfWork, bottle: Bottle, note: str) -> Entry:
    """Say that nothing is left. Raises `WrongState` for a bottle that is empty."""
    if bottle.level.state == "empty":
        raise WrongState(bottle.product.title, "empty", tr("there is nothing to do"))
    return work.append(bottle.id, "empty", note=note)


def level_within(level: float, of: Label, may_be_nothing: bool = False) -> float:
    """A level in the label's unit, at most its size. Raises `InvalidField`, `LevelAboveSize`."""
    if not isfinite(level) or level < 0 or (level == 0 and not may_be_nothing):
        raise InvalidField("level", level, tr("a bottle holds more than nothing"))
    if level > of.size + ROUNDING:
        raise LevelAboveSize(level, of.size, of.unit, of.title)
    return min(level, of.size)


def taken_from(bottle: Bottle, amount: float) -> float:
    """What is poured where `amount` of the bottle's unit is asked for.

    Raises `InvalidField` for nothing or less, `NotEnoughLeft` for more than is left.
    """
    if not isfinite(amount) or amount <= 0:
        raise InvalidField("amount", amount, tr("it is more than nothing"))
    left, product = bottle.level.amount, bottle.product
    if amount > left + ROUNDING:
        raise NotEnoughLeft(amount, left, product.unit, product.title)
    # A hair less than all of it is all of it, or the bottle would never be empty.
    return left if amount > left - ROUNDING else amount


def refuse_dates(made: date | None, use_by: date | None) -> None:
    """Raises `InvalidField` where a use-by day lies before the day of making."""
    if made and use_by and use_by < made:
        expected = tr("it was made on {day}, after that", day=day_said(made))
        raise InvalidField("use by", use_by, expected)


def refuse_repeats(bottle_ids: Sequence[int]) -> None:
    """Raises `InvalidField` where a bottle is named twice, or none is."""
    if not bottle_ids:
        raise InvalidField("bottles", "", tr("name at least one"))
    for bottle_id in bottle_ids:
        if bottle_ids.count(bottle_id) > 1:
            raise InvalidField("bottles", f"#{bottle_id}", tr("each is named once"))


def said(amount: float, of: Bottle | Label) -> str:
    """An amount with the unit of the bottle or product it is of, for a message."""
    unit = of.product.unit if isinstance(of, Bottle) else of.unit
    return f"{amount:g} {unit}"


STRONGEST = 100.0
"""% vol; more than this there cannot be."""


DENSEST_G_PER_L = 1_700.0
"""A litre of solid citric acid is 1,660 g and one of sucrose 1,590 g; nothing holds more."""


_UNITS = get_args(Unit)


def checked_draft(draft: Label, tree: FamilyTree) -> Label:
    """The draft with its ingredient as a key and without stray blanks.

    Raises `InvalidField`, or `UnknownName` for the ingredient.
    """
    name, maker = " ".join(draft.name.split()), " ".join(draft.maker.split())
    if not name:
        raise InvalidField("name", draft.name, tr("a product needs a name"))
    if draft.unit not in _UNITS:
        raise InvalidField("unit", draft.unit, tr("it is ml, g or each"))
    if not (isfinite(draft.size) and draft.size > 0):
        raise InvalidField("size", draft.size, tr("it is more than nothing"))
    refuse_figures(draft)
    refuse_beyond("price", draft.price, None, tr_noop("it is nothing or more"))
    _refuse_unlikely(draft.density_g_per_ml)
    if draft.shape is not None and draft.shape not in shipped_shapes():
        shapes = ", ".join(shipped_shapes())
        raise InvalidField("shape", draft.shape, tr("it is one of {shapes}", shapes=shapes))
    key = find_ingredient(tree, draft.ingredient)
    barcode = checked_gtin(draft.barcode)
    if (name, maker, key, barcode) == (draft.name, draft.maker, draft.ingredient, draft.barcode):
        return draft
    return replace(draft, name=name, maker=maker, ingredient=key, barcode=barcode)


def _refuse_unlikely(density_g_per_ml: float | None) -> None:
    lightest, heaviest = LIGHTEST_G_PER_ML, HEAVIEST_G_PER_ML
    if density_g_per_ml is not None and not lightest <= density_g_per_ml <= heaviest:
        raise InvalidField(
            "density",
            density_g_per_ml,
            tr("it is {lightest:g} to {heaviest:g} g/ml", lightest=lightest, heaviest=heaviest),
        )


def refuse_figures(of: Label | Ingredient) -> None:
    """Raises `InvalidField` for a strength, sugar or acid that there cannot be."""
    refuse_beyond("strength", of.abv_percent, STRONGEST, tr_noop("it is 0 to 100 % vol"))
    for field, value in (("sugar", of.sugar_g_per_l), ("acid", of.acid_g_per_l)):
        refuse_beyond(field, value, None, tr_noop("it is 0 g/l or more"))
        if value is not None and value > DENSEST_G_PER_L:
            expected = tr("it is 0 to {densest:,.0f} g/l", densest=DENSEST_G_PER_L)
            raise InvalidField(field, value, expected)


def refuse_beyond(field: str, value: float | None, highest: float | None, expected: str) -> None:
    """Raises `InvalidField` for a number below nothing or above the highest; None is neither."""
    if value is None:
        return
    if not isfinite(value) or value < 0 or (highest is not None and value > highest):
        raise InvalidField(field, value, expected)


def shelve(
    session: Session,
    *,
    work: UnitOfWork,
    product: Product,
    amount: float | None = None,
    facts: BottleFacts = NOTHING_KNOWN,
    note: str = "",
) -> int:
    """Add a bottle as the last on the shelf; its id. Full unless `amount` says less.

    It came in today unless the facts say when. Raises `LevelAboveSize` or `InvalidField`.
    """
    level = product.size if amount is None else level_within(amount, product)
    received = facts.received or work.at.date()
    bottle_id = put_last(work, product, _dated(session, product, facts, received))
    at = datetime.combine(received, work.at.time())
    work.append(bottle_id, "receive", level, at=at, note=note)
    return bottle_id


def put_last(work: UnitOfWork, product: Product, facts: BottleFacts) -> int:
    """Add a bottle behind all others along the shelf, its ledger empty yet; its id."""
    place = bottle_rows.last_position(work.connection) + 1
    return work.insert("bottle", [new_bottle(product, facts, place)])[0]


def take_in(work: UnitOfWork, checked: Label) -> Product:
    """Add a product that was checked. Raises `DuplicateName`."""
    refuse_taken(work, checked)
    (product_id,) = work.insert("product", [checked])
    return product_there(work, product_id)


def refuse_taken(work: UnitOfWork, draft: Label, apart_from: int | None = None) -> None:
    """Raises `DuplicateName` where another product has the title and size already."""
    taken = bottle_rows.product_named(work.connection, draft)
    if taken is not None and taken.id != apart_from:
        raise DuplicateName("product", f"{draft.title}, {said(draft.size, draft)}")


def _dated(session: Session, product: Product, facts: BottleFacts, received: date) -> BottleFacts:
    """What is made here is made today and keeps as long as its ingredient, unless told."""
    made, use_by = facts.made, facts.use_by
    if product.house_made:
        made = made or session.clock().date()
        days = session.snapshot.keeps_days(product.ingredient)
        if use_by is None and days is not None:
            use_by = made + timedelta(days=days)
    refuse_dates(made, use_by)
    return replace(facts, received=received, made=made, use_by=use_by)
