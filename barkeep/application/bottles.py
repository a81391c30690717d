"""Bottles and their ledger: each use case one transaction, each with its own refusals."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from datetime import date
from functools import partial
from math import isfinite
from typing import Literal

from barkeep.application.counting import tares_again
from barkeep.application.done import Done
from barkeep.application.finding import there
from barkeep.application.paying import note_paid
from barkeep.application.session import UseCases
from barkeep.application.shelving import (
    ROUNDING,
    StillInUse,
    WrongState,
    bottle_there,
    checked_draft,
    empty_one,
    level_within,
    on_bottle,
    open_one,
    product_there,
    refuse_dates,
    refuse_repeats,
    refuse_taken,
    said,
    shelve,
    take_in,
    take_one,
    taken_from,
)
from barkeep.application.stale import dates_in_words, label_in_words, refuse_stale
from barkeep.domain.bottles.bottle import (
    NOTHING_KNOWN,
    Bottle,
    BottleFacts,
    Entry,
    Label,
    Product,
    history,
)
from barkeep.domain.bottles.paid import Payment
from barkeep.domain.phrases import counted
from barkeep.errors import InvalidField, LevelAboveSize
from barkeep.store import bottles as bottle_rows
from barkeep.store.unit_of_work import UnitOfWork
from barkeep.translation import tr


class Inventory(UseCases):
    """The use cases of `bar.inventory`."""

    def add_product(self, draft: Label) -> Done[Product]:
        """Take in a product. Raises `InvalidField`, `UnknownName` or `DuplicateName`."""
        with self._session.writing() as work:
            checked = checked_draft(draft, self._session.tree)
            work.label = f"Add product {checked.title}"
            product_id = take_in(work, checked).id
        return self._session.finished(work, lambda bar: bar.product_by_id[product_id])

    def change_product(
        self, product_id: int, draft: Label, seen: Label | None = None
    ) -> Done[Product]:
        """Correct what a product's label says. Raises as `add_product` does.

        Raises `LevelAboveSize` where a bottle of it holds more than the new size,
        `UnlikelyTare` where what one weighed full does not go with the new label, and
        `ChangedSince` where the label does not say what it did when it was `seen`.
        """
        with self._session.writing() as work:
            checked = checked_draft(draft, self._session.tree)
            work.label = f"Change product {checked.title}"
            old = product_there(work, product_id)
            words = partial(label_in_words, tree=self._session.tree)
            what = tr("the label of {title}", title=old.title)
            refuse_stale(what, seen=seen, now=old, mine=checked, words=words)
            refuse_taken(work, checked, apart_from=product_id)
            _refuse_overfull(work, old, checked)
            work.put("product", (product_id,), checked)
            tares_again(self._session, work, product_there(work, product_id))
        return self._session.finished(work, lambda bar: bar.product_by_id[product_id])

    def remove_product(self, product_id: int) -> Done[Product]:
        """Hide a product that has no bottles. Raises `StillInUse`."""
        with self._session.writing() as work:
            product = product_there(work, product_id)
            work.label = f"Remove product {product.title}"
            count = bottle_rows.bottles_of(work.connection, product_id)
            if count:
                users = counted(count, "bottle")
                raise StillInUse(product.title, users, several=count > 1)
            work.put("product", (product_id,), None)
        return self._session.finished(work, lambda _bar: product)

    def receive(
        self,
        product_id: int,
        amount: float | None = None,
        facts: BottleFacts = NOTHING_KNOWN,
        payment: Payment | None = None,
    ) -> Done[Bottle]:
        """Put a bottle on the shelf; full unless `amount` says less, in the product's unit.

        What was made here is made today and keeps as long as its ingredient
        does, unless the dates say otherwise. What was paid is noted, and is
        the product's price where nothing was bought later. Raises
        `LevelAboveSize` or `InvalidField`.
        """
        with self._session.writing() as work:
            product = product_there(work, product_id)
            bottle_id = self._shelve(work, product, amount, facts)
            _note(work, product, payment, facts)
        return self._bottle_done(work, bottle_id)

    def receive_new(
        self,
        draft: Label,
        amount: float | None = None,
        facts: BottleFacts = NOTHING_KNOWN,
        payment: Payment | None = None,
    ) -> Done[Bottle]:
        """Take in a product and put a bottle of it on the shelf, both or neither.

        Raises as `add_product` and `receive` do, and `InvalidField` where the
        label's price is another than what was paid.
        """
        with self._session.writing() as work:
            checked = checked_draft(draft, self._session.tree)
            _refuse_another_price(checked, payment)
            product = take_in(work, checked)
            bottle_id = self._shelve(work, product, amount, facts)
            _note(work, product, payment, facts)
        return self._bottle_done(work, bottle_id)

    def open(self, bottle_id: int) -> Done[Bottle]:
        """Break the seal. Raises `WrongState` for a bottle that is open or empty."""
        return on_bottle(self._session, bottle_id, "Open", open_one)

    def pour(self, bottle_id: int, amount: float, note: str = "") -> Done[Bottle]:
        """Take an amount out for use, in the bottle's unit; a sealed bottle is open then.

        Raises `NotEnoughLeft` beyond what the ledger says is left, `InvalidField`.
        """
        return self._take(bottle_id, "pour", amount, note)

    def waste(self, bottle_id: int, amount: float, note: str = "") -> Done[Bottle]:
        """Write off what was spilled or thrown away. Raises as `pour` does."""
        return self._take(bottle_id, "waste", amount, note)

    def _take(
        self, bottle_id: int, kind: Literal["pour", "waste"], amount: float, note: str
    ) -> Done[Bottle]:
        def take(work: UnitOfWork, bottle: Bottle) -> None:
            work.label = f"{kind.capitalize()} {said(amount, bottle)} of {bottle.product.title}"
            take_one(work, bottle=bottle, kind=kind, amount=amount, note=note)

        return on_bottle(self._session, bottle_id, kind.capitalize(), take)

    def empty(self, bottle_id: int, note: str = "") -> Done[Bottle]:
        """Say that nothing is left. Raises `WrongState` for a bottle that is empty."""
        return on_bottle(
            self._session, bottle_id, "Empty", lambda work, bottle: empty_one(work, bottle, note)
        )

    def correct(self, bottle_id: int, change: float, note: str = "") -> Done[Bottle]:
        """Put the ledger right by a signed change, in the bottle's unit.

        Raises `LevelAboveSize`, `NotEnoughLeft`, `InvalidField`, and
        `WrongState` for an empty bottle, which is to be counted.
        """
        if not isfinite(change) or change == 0:
            raise InvalidField("correction", change, tr("it adds or takes away an amount"))

        def put_right(work: UnitOfWork, bottle: Bottle) -> None:
            by = change
            if bottle.level.state == "empty":
                raise WrongState(bottle.product.title, "empty", tr("count it if something is left"))
            if by < 0:
                by = -taken_from(bottle, -by)
            else:
                level_within(bottle.level.amount + by, bottle.product)
            work.append(bottle_id, "correct", by, note=note)

        return on_bottle(self._session, bottle_id, "Correct", put_right)

    def reorder(self, bottle_ids: Sequence[int]) -> Done[tuple[Bottle, ...]]:
        """Put bottles along the shelf in this order; those not named follow in theirs.

        Raises `UnknownName`, and `InvalidField` for a bottle named twice.
        """
        refuse_repeats(bottle_ids)
        with self._session.writing("Reorder the shelf") as work:
            along = {each.id: each for each in bottle_rows.read_bottles(work.connection)}
            for bottle_id in bottle_ids:
                there("bottle", along.get(bottle_id), bottle_id)
            rest = [bottle_id for bottle_id in along if bottle_id not in set(bottle_ids)]
            _put_along(work, along, (*bottle_ids, *rest))
        return self._session.finished(work, lambda bar: bar.bottles)

    def move(self, bottle_id: int, before: int | None) -> Done[Bottle]:
        """Put a bottle right before another along the shelf, or behind all others.

        Raises `UnknownName`, and `InvalidField` for a place before itself.
        """
        if before == bottle_id:
            raise InvalidField("before", f"#{before}", tr("name another bottle"))

        def put(work: UnitOfWork, _bottle: Bottle) -> None:
            along = {each.id: each for each in bottle_rows.read_bottles(work.connection)}
            order = [each for each in along if each != bottle_id]
            place = len(order)
            if before is not None:
                there("bottle", along.get(before), before)
                place = order.index(before)
            _put_along(work, along, (*order[:place], bottle_id, *order[place:]))

        return on_bottle(self._session, bottle_id, "Move", put)

    def redate(
        self,
        bottle_id: int,
        made: date | None,
        use_by: date | None,
        seen: BottleFacts | None = None,
    ) -> Done[Bottle]:
        """Correct a bottle's dates. Raises `InvalidField` for a use-by before it was made.

        Raises `ChangedSince` where they are not as they were `seen`.
        """
        refuse_dates(made, use_by)
        wanted = BottleFacts(made=made, use_by=use_by)

        def put(work: UnitOfWork, bottle: Bottle) -> None:
            what = tr("the dates of {title}", title=bottle.product.title)
            refuse_stale(what, seen=seen, now=bottle, mine=wanted, words=dates_in_words)
            work.change("bottle", (bottle_id,), made=made, use_by=use_by)

        return on_bottle(self._session, bottle_id, "Change the dates of", put)

    def remove(self, bottle_id: int, *others: int) -> Done[Bottle]:
        """Take a bottle, or several in one step, off the shelf; their ledger stays.

        Gives the first of them.
        """
        with self._session.writing() as work:
            bottles = [bottle_there(work, each) for each in (bottle_id, *others)]
            several = f"{len(bottles)} bottles" if others else bottles[0].product.title
            work.label = f"Remove {several}"
            for each in bottles:
                work.put("bottle", (each.id,), None)
        return self._session.finished(work, lambda _bar: bottles[0])

    def history(self, bottle_id: int) -> tuple[tuple[Entry, float], ...]:
        """A bottle's active entries, oldest first, each with the level after it.

        One that is there on paper alone has none.
        """
        paper = self._session.on_paper
        if paper is not None and paper.is_only_there(bottle_id):
            return ()
        with self._session.store.reading() as connection:
            there("bottle", bottle_rows.read_bottle(connection, bottle_id), bottle_id)
            return history(bottle_rows.entries_of(connection, bottle_id))

    def _bottle_done(self, work: UnitOfWork, bottle_id: int) -> Done[Bottle]:
        return self._session.finished(work, lambda bar: bar.bottle_by_id[bottle_id])

    def _shelve(
        self, work: UnitOfWork, product: Product, amount: float | None, facts: BottleFacts
    ) -> int:
        work.label = f"Receive {product.title}"
        return shelve(self._session, work=work, product=product, amount=amount, facts=facts)


def _put_along(work: UnitOfWork, along: Mapping[int, Bottle], bottle_ids: Iterable[int]) -> None:
    for position, bottle_id in enumerate(bottle_ids):
        if along[bottle_id].position != position:
            work.change("bottle", (bottle_id,), position=position)


def _note(work: UnitOfWork, product: Product, payment: Payment | None, facts: BottleFacts) -> None:
    """Note what was paid on the day that a bottle came, where it was said."""
    if payment is not None:
        note_paid(work, product, payment, facts.received or work.at.date())


def _refuse_another_price(draft: Label, payment: Payment | None) -> None:
    if payment is not None and draft.price not in (None, payment.amount):
        expected = tr(
            "{amount:.2f} was paid for it; leave one of the two out", amount=payment.amount
        )
        raise InvalidField("price", f"{draft.price:.2f}", expected)


def _refuse_overfull(work: UnitOfWork, old: Product, draft: Label) -> None:
    own = [
        bottle
        for bottle in bottle_rows.read_bottles(work.connection)
        if bottle.product.id == old.id
    ]
    if own and draft.unit != old.unit:
        expected = tr("its bottles are counted in {unit}", unit=old.unit)
        raise InvalidField("unit", draft.unit, expected)
    for bottle in own:
        if bottle.level.amount > draft.size + ROUNDING:
            raise LevelAboveSize(bottle.level.amount, draft.size, draft.unit, draft.title)
