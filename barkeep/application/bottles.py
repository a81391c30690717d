"""Bottles and their ledger: each use case one transaction, each with its own refusals."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from datetime import date
from math import isfinite
from typing import TYPE_CHECKING

from barkeep.application.bottle_imports import Imported, import_rows
from barkeep.application.counting import (
    Counted,
    Weighed,
    count_bottles,
    learn_tare,
    set_dasher,
    tares_again,
)
from barkeep.application.done import Done
from barkeep.application.session import Session
from barkeep.application.shelving import (
    ROUNDING,
    StillInUse,
    WrongState,
    bottle_there,
    checked_draft,
    empty_one,
    level_within,
    no_bottle,
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
from barkeep.application.shopping import Bought, receive_bought
from barkeep.domain.bottles.bottle import (
    NOTHING_KNOWN,
    Bottle,
    BottleFacts,
    Entry,
    Label,
    Product,
    history,
)
from barkeep.errors import InvalidField, LevelAboveSize
from barkeep.store import bottles as bottle_rows
from barkeep.store.unit_of_work import UnitOfWork

if TYPE_CHECKING:
    from barkeep.documents.bottles_csv import ListedBottle
    from barkeep.domain.bottles.levels import MeasuredLevel


class Inventory:
    """The use cases of `bar.inventory`."""

    def __init__(self, session: Session) -> None:
        self._session = session

    def add_product(self, draft: Label) -> Done[Product]:
        """Take in a product. Raises `InvalidField`, `UnknownName` or `DuplicateName`."""
        checked = checked_draft(draft, self._session.tree)
        with self._session.writing(f"Add product {checked.title}") as work:
            product_id = take_in(work, checked).id
        return self._session.finished(work, lambda bar: bar.product_by_id[product_id])

    def change_product(self, product_id: int, draft: Label) -> Done[Product]:
        """Correct what a product's label says. Raises as `add_product` does.

        Raises `LevelAboveSize` where a bottle of it holds more than the new size, and
        `UnlikelyTare` where what one weighed full does not go with the new label.
        """
        checked = checked_draft(draft, self._session.tree)
        with self._session.writing(f"Change product {checked.title}") as work:
            old = product_there(work, product_id)
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
                raise StillInUse(product.title, f"{count} bottle{'s' * (count > 1)}")
            work.put("product", (product_id,), None)
        return self._session.finished(work, lambda _bar: product)

    def receive(
        self,
        product_id: int,
        amount: float | None = None,
        facts: BottleFacts = NOTHING_KNOWN,
    ) -> Done[Bottle]:
        """Put a bottle on the shelf; full unless `amount` says less, in the product's unit.

        What was made here is made today and keeps as long as its ingredient
        does, unless the dates say otherwise. Raises `LevelAboveSize` or
        `InvalidField`.
        """
        with self._session.writing() as work:
            product = product_there(work, product_id)
            bottle_id = self._shelve(work, product, amount, facts)
        return self._bottle_done(work, bottle_id)

    def receive_new(
        self,
        draft: Label,
        amount: float | None = None,
        facts: BottleFacts = NOTHING_KNOWN,
    ) -> Done[Bottle]:
        """Take in a product and put a bottle of it on the shelf, both or neither.

        Raises as `add_product` and `receive` do.
        """
        checked = checked_draft(draft, self._session.tree)
        with self._session.writing() as work:
            product = take_in(work, checked)
            bottle_id = self._shelve(work, product, amount, facts)
        return self._bottle_done(work, bottle_id)

    def receive_bought(self, bought: Sequence[Bought]) -> Done[tuple[Bottle, ...]]:
        """Put what was bought on the shelf, all of it or nothing; one undo takes it back.

        Raises as `receive_new` does, and `InvalidField` for a day to come, a
        price below nothing, or a count that is not 1 to 99.
        """
        return receive_bought(self._session, bought)

    def open(self, bottle_id: int) -> Done[Bottle]:
        """Break the seal. Raises `WrongState` for a bottle that is open or empty."""
        with self._session.writing() as work:
            bottle = bottle_there(work, bottle_id)
            work.label = f"Open {bottle.product.title}"
            open_one(work, bottle)
        return self._bottle_done(work, bottle_id)

    def count(
        self, levels: Mapping[int, MeasuredLevel] | Iterable[tuple[int, MeasuredLevel]]
    ) -> Done[tuple[Counted, ...]]:
        """Write down measured levels, all of them or none. The bottles may be sealed or empty.

        Raises `LevelAboveSize`, `NegativeAmount`, `UnknownName`, and
        `InvalidField` for a bottle counted twice or no bottle at all.
        """
        return count_bottles(self._session, levels)

    def learn_tare(self, bottle_id: int, weight_g: float, full: bool = False) -> Done[Weighed]:
        """Take down what a bottle weighs empty, or full with its contents; without its cap.

        Weighed full, what the nominal contents leave is the bottle's weight. What
        strength and sugar say nothing of, such as cream, gets its density from
        both weighings. Raises `UnknownName`, `InvalidField` or `UnlikelyTare`.
        """
        return learn_tare(self._session, bottle_id, weight_g, full)

    def set_dasher(self, bottle_id: int, dash_ml: float | None) -> Done[Bottle]:
        """Say what one dash from this bottle comes to; None for the bar's usual dash.

        Raises `UnknownName` or `InvalidField`.
        """
        return set_dasher(self._session, bottle_id, dash_ml)

    def pour(self, bottle_id: int, amount: float, note: str = "") -> Done[Bottle]:
        """Take an amount out for use, in the bottle's unit; a sealed bottle is open then.

        Raises `NotEnoughLeft` beyond what the ledger says is left, `InvalidField`.
        """
        with self._session.writing() as work:
            bottle = bottle_there(work, bottle_id)
            work.label = f"Pour {said(amount, bottle)} of {bottle.product.title}"
            take_one(work, bottle=bottle, kind="pour", amount=amount, note=note)
        return self._bottle_done(work, bottle_id)

    def waste(self, bottle_id: int, amount: float, note: str = "") -> Done[Bottle]:
        """Write off what was spilled or thrown away. Raises as `pour` does."""
        with self._session.writing() as work:
            bottle = bottle_there(work, bottle_id)
            work.label = f"Waste {said(amount, bottle)} of {bottle.product.title}"
            take_one(work, bottle=bottle, kind="waste", amount=amount, note=note)
        return self._bottle_done(work, bottle_id)

    def empty(self, bottle_id: int, note: str = "") -> Done[Bottle]:
        """Say that nothing is left. Raises `WrongState` for a bottle that is empty."""
        with self._session.writing() as work:
            bottle = bottle_there(work, bottle_id)
            work.label = f"Empty {bottle.product.title}"
            empty_one(work, bottle, note)
        return self._bottle_done(work, bottle_id)

    def correct(self, bottle_id: int, change: float, note: str = "") -> Done[Bottle]:
        """Put the ledger right by a signed change, in the bottle's unit.

        Raises `LevelAboveSize`, `NotEnoughLeft`, `InvalidField`, and
        `WrongState` for an empty bottle, which is to be counted.
        """
        if not isfinite(change) or change == 0:
            raise InvalidField("correction", change, "it adds or takes away an amount")
        with self._session.writing() as work:
            bottle = bottle_there(work, bottle_id)
            work.label = f"Correct {bottle.product.title}"
            if bottle.level.state == "empty":
                raise WrongState(bottle.product.title, "empty", "count it if something is left")
            if change < 0:
                change = -taken_from(bottle, -change)
            else:
                level_within(bottle.level.amount + change, bottle.product)
            work.append(bottle_id, "correct", change, note=note)
        return self._bottle_done(work, bottle_id)

    def reorder(self, bottle_ids: Sequence[int]) -> Done[tuple[Bottle, ...]]:
        """Put bottles along the shelf in this order; those not named follow in theirs.

        Raises `UnknownName`, and `InvalidField` for a bottle named twice.
        """
        refuse_repeats(bottle_ids)
        with self._session.writing("Reorder the shelf") as work:
            there = {each.id: each for each in bottle_rows.read_bottles(work.connection)}
            for bottle_id in bottle_ids:
                if bottle_id not in there:
                    raise no_bottle(bottle_id)
            rest = [bottle_id for bottle_id in there if bottle_id not in set(bottle_ids)]
            for position, bottle_id in enumerate((*bottle_ids, *rest)):
                if there[bottle_id].position != position:
                    work.change("bottle", (bottle_id,), position=position)
        return self._session.finished(work, lambda bar: bar.bottles)

    def redate(self, bottle_id: int, made: date | None, use_by: date | None) -> Done[Bottle]:
        """Correct a bottle's dates. Raises `InvalidField` for a use-by before it was made."""
        refuse_dates(made, use_by)
        with self._session.writing() as work:
            bottle = bottle_there(work, bottle_id)
            work.label = f"Change the dates of {bottle.product.title}"
            work.change("bottle", (bottle_id,), made=made, use_by=use_by)
        return self._bottle_done(work, bottle_id)

    def remove(self, bottle_id: int) -> Done[Bottle]:
        """Take a bottle off the shelf; its ledger stays."""
        with self._session.writing() as work:
            bottle = bottle_there(work, bottle_id)
            work.label = f"Remove {bottle.product.title}"
            work.put("bottle", (bottle_id,), None)
        return self._session.finished(work, lambda _bar: bottle)

    def history(self, bottle_id: int) -> tuple[tuple[Entry, float], ...]:
        """A bottle's active entries, oldest first, each with the level after it."""
        with self._session.store.reading() as connection:
            if bottle_rows.read_bottle(connection, bottle_id) is None:
                raise no_bottle(bottle_id)
            return history(bottle_rows.entries_of(connection, bottle_id))

    def import_rows(self, rows: Sequence[ListedBottle], file: str = "") -> Done[Imported]:
        """Take in the rows of a file, all of them or none. Raises `UnusableFile`."""
        return import_rows(self._session, rows, file)

    def _bottle_done(self, work: UnitOfWork, bottle_id: int) -> Done[Bottle]:
        return self._session.finished(work, lambda bar: bar.bottle_by_id[bottle_id])

    def _shelve(
        self, work: UnitOfWork, product: Product, amount: float | None, facts: BottleFacts
    ) -> int:
        work.label = f"Receive {product.title}"
        return shelve(self._session, work=work, product=product, amount=amount, facts=facts)


def _refuse_overfull(work: UnitOfWork, old: Product, draft: Label) -> None:
    own = [
        bottle
        for bottle in bottle_rows.read_bottles(work.connection)
        if bottle.product.id == old.id
    ]
    if own and draft.unit != old.unit:
        expected = f"its bottles are counted in {old.unit}"
        raise InvalidField("unit", draft.unit, expected)
    for bottle in own:
        if bottle.level.amount > draft.size + ROUNDING:
            raise LevelAboveSize(bottle.level.amount, draft.size, draft.unit, draft.title)
