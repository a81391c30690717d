"""What was paid for a product: noted as it comes in, corrected, asked for; and what a day cost."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, datetime, time, timedelta

from barkeep.application.done import Done
from barkeep.application.finding import there
from barkeep.application.session import UseCases
from barkeep.application.shelving import product_there, refuse_beyond
from barkeep.domain.amounts.measures import show_quantity
from barkeep.domain.bottles.bottle import NEW, EntryKind, Product
from barkeep.domain.bottles.paid import Paid, Payment
from barkeep.domain.drink.costs import Cost, cost_of_amounts
from barkeep.errors import InvalidField
from barkeep.store import bottles as bottle_rows
from barkeep.store.unit_of_work import UnitOfWork
from barkeep.translation import tr


@dataclass(frozen=True, slots=True)
class PouredOn:
    """What was poured on a day: so much of each product in its unit, what it costs, and all of it.

    The cost of a product is None where nobody knows its price. What was `spilled` is in no cost.
    """

    day: date
    poured: tuple[tuple[Product, float, float | None], ...]
    spilled: tuple[tuple[Product, float], ...]
    cost: Cost


def spilled_in_words(poured: PouredOn) -> tuple[str, ...]:
    """*30 ml of Dock Light was spilled: not counted.*, of each product."""
    return tuple(
        tr(
            "{amount} of {title} was spilled: not counted.",
            amount=show_quantity(amount, product.unit),
            title=product.title,
        )
        for product, amount in poured.spilled
    )


class Paying(UseCases):
    """The use cases of `bar.paying`."""

    def of(self, product_id: int) -> tuple[Paid, ...]:
        """What was paid for a product, newest first. Raises `UnknownName`."""
        with self._session.store.reading() as connection:
            there("product", bottle_rows.read_product(connection, product_id), product_id)
            return bottle_rows.read_paid(connection, product_id)

    def note(self, product_id: int, payment: Payment, day: date | None = None) -> Done[Product]:
        """Write down what was paid on a day, today where none is said, without a bottle.

        Raises `UnknownName`, and `InvalidField` for a day to come and as `note_paid` does.
        """
        today = self._session.clock().date()
        if day is not None and day > today:
            raise InvalidField("paid", day, tr("that day is still to come"))
        with self._session.writing() as work:
            product = product_there(work, product_id)
            work.label = f"Note what was paid for {product.title}"
            note_paid(work, product, payment, day or today)
        return self._session.finished(work, lambda bar: bar.product_by_id[product_id])

    def forget(self, product_id: int, paid_id: int) -> Done[Product]:
        """Take what was noted away; it can be brought back. Raises `UnknownName`."""
        with self._session.writing() as work:
            product = product_there(work, product_id)
            known = {each.id: each for each in bottle_rows.read_paid(work.connection, product_id)}
            there("payment", known.get(paid_id), paid_id)
            work.label = f"Forget what was paid for {product.title}"
            work.put("paid", (paid_id,), None)
            follow_newest(work, product_id)
        return self._session.finished(work, lambda bar: bar.product_by_id[product_id])

    def poured_on(self, day: date) -> PouredOn:
        """What was poured on a day, from the ledger, at the prices known now."""
        begin = datetime.combine(day, time())
        with self._session.store.reading() as connection:
            entries = bottle_rows.entries_between(connection, begin, begin + timedelta(days=1))
        snapshot = self._session.snapshot

        def taken(kind: EntryKind) -> Sequence[tuple[Product, float]]:
            sums = [
                (product, sum(each.amount for each in own if each.kind == kind))
                for product, own in entries.items()
            ]
            amounts = [(product, amount) for product, amount in sums if amount > 0.0]
            return sorted(amounts, key=lambda each: (each[0].title.casefold(), each[0].id))

        poured = taken("pour")
        each_cost = [cost_of_amounts([one], snapshot).amount for one in poured]
        return PouredOn(
            day,
            tuple((*one, cost) for one, cost in zip(poured, each_cost, strict=True)),
            tuple(taken("waste")),
            cost_of_amounts(poured, snapshot),
        )


def checked_payment(payment: Payment, product: Product) -> Payment:
    """The payment without stray blanks. Raises `InvalidField`."""
    if product.house_made:
        raise InvalidField("product", product.title, tr("it is made here, not bought"))
    refuse_beyond("paid", payment.amount, None, tr("it is nothing or more"))
    return Payment(payment.amount, " ".join(payment.shop.split()))


def note_paid(work: UnitOfWork, product: Product, payment: Payment, day: date) -> None:
    """Write down what one package cost; the product's price is what was paid last.

    Raises `InvalidField` for less than nothing and for what is made here.
    """
    checked = checked_payment(payment, product)
    paid = Paid(NEW, product.id, day, checked.amount, size=product.size, shop=checked.shop)
    work.insert("paid", [paid])
    follow_newest(work, product.id)


def follow_newest(work: UnitOfWork, product_id: int) -> None:
    """Make the price what was paid last; where nothing was, it stays as it is."""
    found = bottle_rows.read_paid(work.connection, product_id)
    if found:
        work.change("product", (product_id,), price=found[0].amount)
