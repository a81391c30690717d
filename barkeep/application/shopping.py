"""Taking in what was bought: many packages at once, with what was paid for them."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from math import isfinite

from barkeep.application.bottle_checks import product_there
from barkeep.application.done import Done
from barkeep.application.product_checks import checked_draft
from barkeep.application.session import Session
from barkeep.application.shelving import shelve, take_in
from barkeep.domain.answers.shopping import ShoppingItem
from barkeep.domain.drafts import ProductDraft
from barkeep.domain.ingredients import FamilyTree
from barkeep.domain.inventory import Bottle, Product
from barkeep.errors import InvalidField
from barkeep.store.unit_of_work import UnitOfWork

MOST_PACKAGES = 99
"""Of one thing at one time; more is a misprint."""


@dataclass(frozen=True, slots=True)
class Bought:
    """So many packages of one product: its id, or a draft of a new one.

    `price` was paid for each, in the bar's currency, None where that is not
    known. They came today unless `received` says when.
    """

    product: int | ProductDraft
    count: int = 1
    price: float | None = None
    received: date | None = None
    use_by: date | None = None


def receive_bought(session: Session, bought: Sequence[Bought]) -> Done[tuple[Bottle, ...]]:
    """Put all packages on the shelf, full, in one unit of work; or none of them.

    What was paid becomes the product's price and is noted in the ledger.
    Raises `UnknownName`, `DuplicateName` or `InvalidField`.
    """
    if not bought:
        raise InvalidField("bought", "", "name at least one thing")
    today = session.clock().date()
    for each in bought:
        _refuse(each, today)
    with session.writing() as work:
        received = [(each, _product(session, work, each)) for each in bought]
        ids = [
            shelve(
                session,
                work,
                product,
                None,
                each.use_by,
                None,
                received=each.received,
                note=_note(each, session.snapshot.settings.currency),
            )
            for each, product in received
            for _package in range(each.count)
        ]
        work.label = _label([product for each, product in received for _ in range(each.count)])
    return session.finished(
        work, lambda bar: tuple(each for each in bar.bottles if each.id in set(ids))
    )


def _refuse(bought: Bought, today: date) -> None:
    if not 1 <= bought.count <= MOST_PACKAGES:
        raise InvalidField("count", bought.count, f"it is 1 to {MOST_PACKAGES}")
    if bought.price is not None and not (isfinite(bought.price) and bought.price >= 0.0):
        raise InvalidField("price", bought.price, "it is nothing or more")
    if bought.received is not None and bought.received > today:
        raise InvalidField("received", bought.received, "that day is still to come")
    received = bought.received or today
    if bought.use_by is not None and bought.use_by < received:
        raise InvalidField("use by", bought.use_by, f"it was received on {received}, after that")


def _product(session: Session, work: UnitOfWork, bought: Bought) -> Product:
    """The product at the price that was paid. Raises `InvalidField` for what is made here."""
    if isinstance(bought.product, ProductDraft):
        product = take_in(work, checked_draft(bought.product, session.tree))
    else:
        product = product_there(work, bought.product)
    if product.house_made:
        raise InvalidField("product", product.title, "it is made here, not bought")
    if bought.price is not None and bought.price != product.price:
        work.change("product", (product.id,), price=bought.price)
    return product


def _note(bought: Bought, currency: str) -> str:
    return "" if bought.price is None else f"paid {bought.price:.2f} {currency}"


def _label(products: Sequence[Product]) -> str:
    if len(products) == 1:
        return f"Receive {products[0].title}"
    noun = "bottles" if all(each.unit == "ml" for each in products) else "packages"
    return f"Receive {len(products)} {noun}"


def bought_of(
    item: ShoppingItem, count: int, price: float | None, received: date, tree: FamilyTree
) -> Bought:
    """One thing of a shopping list as it was bought; what the bar knows no product of is new."""
    if item.product is not None:
        return Bought(item.product.id, count, price, received)
    draft = ProductDraft(
        tree.name(item.ingredient),
        "",
        item.ingredient,
        item.size,
        item.unit,
        abv_percent=item.min_abv_percent,
    )
    return Bought(draft, count, price, received)
