"""Taking in what was bought: many packages at once, and the words they are written in."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import date
from math import isfinite

from barkeep.application.done import Done
from barkeep.application.finding import find_ingredient, find_product
from barkeep.application.paying import note_paid
from barkeep.application.session import Session, UseCases
from barkeep.application.shelving import checked_draft, product_there, shelve, take_in
from barkeep.domain.bar.pars import Par, read_par
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bar.to_buy import MOST_TO_BUY, ToBuy, less_bought, with_to_buy
from barkeep.domain.bottles.bottle import Bottle, BottleFacts, Label, Product
from barkeep.domain.bottles.paid import Payment
from barkeep.domain.buying.packages import Purchase, package_for, packages_for
from barkeep.domain.buying.plan import Plan
from barkeep.domain.buying.shopping import ShoppingItem
from barkeep.domain.ingredients.names import rather_named
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import price_in_words
from barkeep.errors import InvalidField, spoken_list
from barkeep.store.knowledge import read_settings, setting_rows
from barkeep.store.unit_of_work import UnitOfWork
from barkeep.translation import tr, tr_noop

MOST_PACKAGES = 99
"""Of one thing at one time; more is a misprint."""


@dataclass(frozen=True, slots=True)
class Bought:
    """So many packages of one product: its id, or a draft of a new one.

    `price` was paid for each, in the bar's currency, None where that is not
    known, at a `shop` where one is named. They came today unless `received`
    says when.
    """

    product: int | Label
    count: int = 1
    price: float | None = None
    received: date | None = None
    use_by: date | None = None
    shop: str = ""


class Shopping(UseCases):
    """The use cases of `bar.shopping`."""

    def receive(self, bought: Sequence[Bought]) -> Done[tuple[Bottle, ...]]:
        """Put all packages on the shelf, full, or none of them; one undo takes them back.

        What was paid is noted, in the ledger too, and is the product's price where nothing was
        bought later; what was put on the list by hand is off it.
        Raises `UnknownName`, `DuplicateName`, and `InvalidField` for a day to
        come, a price below nothing, or a count that is not 1 to 99.
        """
        if not bought:
            raise InvalidField("bought", "", tr("name at least one thing"))
        session, today = self._session, self._session.clock().date()
        for each in bought:
            _refuse(each, today)
        with session.writing() as work:
            received = [(each, _product(session, work, each)) for each in bought]
            ids = [
                shelve(
                    session,
                    work=work,
                    product=product,
                    facts=BottleFacts(received=each.received, use_by=each.use_by),
                    note=_note(each, session.snapshot.settings.currency),
                )
                for each, product in received
                for _package in range(each.count)
            ]
            came = [product.ingredient for each, product in received for _ in range(each.count)]
            listed = read_settings(work.connection).to_buy
            if (left := less_bought(listed, came, session.tree)) != listed:
                _write_list(work, left)
            work.label = _label([product for each, product in received for _ in range(each.count)])
        return session.finished(
            work, lambda bar: tuple(each for each in bar.bottles if each.id in set(ids))
        )

    def add(self, wanted: Sequence[ToBuy]) -> Done[tuple[ToBuy, ...]]:
        """Put packages of kinds on the shopping list; of what is on it the larger number counts.

        None of a kind (0) takes it off. Raises `UnknownName`, and `InvalidField` for no whole
        number from 0 to 99.
        """
        session = self._session
        for each in wanted:
            if not 0 <= each.packages <= MOST_TO_BUY:
                expected = tr("it is 0 to {most}", most=MOST_TO_BUY)
                raise InvalidField(tr_noop("packages"), each.packages, expected)
        where = "off" if all(each.packages == 0 for each in wanted) else "on"
        with session.writing() as work:
            keys = [find_ingredient(session.tree, each.ingredient) for each in wanted]
            names = [session.tree.in_sentence(each) for each in keys]
            work.label = f"Put {spoken_list(names, 'and')} {where} the list"
            before = read_settings(work.connection)
            _write_list(work, with_to_buy(before.to_buy, wanted))
        return session.finished(work, lambda bar: bar.settings.to_buy)


def _write_list(work: UnitOfWork, to_buy: Sequence[ToBuy]) -> None:
    settings = replace(read_settings(work.connection), to_buy=tuple(to_buy))
    for row in setting_rows(settings):
        if row["key"] == "to_buy":
            work.put("setting", (row["key"],), row)


def _refuse(bought: Bought, today: date) -> None:
    if not 1 <= bought.count <= MOST_PACKAGES:
        expected = tr("it is 1 to {most}", most=MOST_PACKAGES)
        raise InvalidField(tr_noop("count"), bought.count, expected)
    if bought.price is not None and not (isfinite(bought.price) and bought.price >= 0.0):
        raise InvalidField(tr_noop("price"), bought.price, tr("it is nothing or more"))
    if bought.received is not None and bought.received > today:
        expected = tr("that day is still to come")
        raise InvalidField(tr_noop("received"), bought.received, expected)
    received = bought.received or today
    if bought.use_by is not None and bought.use_by < received:
        expected = tr("it was received on {received}, after that", received=received)
        raise InvalidField(tr_noop("use by"), bought.use_by, expected)


def _product(session: Session, work: UnitOfWork, bought: Bought) -> Product:
    """The product, with what was paid for it noted. Raises `InvalidField` for what is made here."""
    if isinstance(bought.product, Label):
        product = take_in(work, checked_draft(bought.product, session.tree))
    else:
        product = product_there(work, bought.product)
    if product.house_made:
        expected = tr("it is made here, not bought")
        raise InvalidField(tr_noop("product"), product.title, expected)
    if bought.price is not None:
        payment = Payment(bought.price, bought.shop)
        note_paid(work, product, payment, bought.received or work.at.date())
    return product


def _note(bought: Bought, currency: str) -> str:
    if bought.price is None:
        return ""
    shop = " ".join(("", "at", *bought.shop.split())) if bought.shop.strip() else ""
    return f"paid {price_in_words(bought.price, currency)}{shop}"


def _label(products: Sequence[Product]) -> str:
    if len(products) == 1:
        return f"Receive {products[0].title}"
    noun = "bottles" if all(each.unit == "ml" for each in products) else "packages"
    return f"Receive {len(products)} {noun}"


def bought_of(
    item: ShoppingItem, *, count: int, price: float | None, received: date, tree: FamilyTree
) -> Bought:
    """One thing of a shopping list as it was bought; what the bar knows no product of is new."""
    if item.product is not None:
        return Bought(item.product.id, count, price, received)
    draft = Label(
        name=tree.name(item.ingredient),
        maker="",
        ingredient=item.ingredient,
        size=item.size,
        unit=item.unit,
        abv_percent=item.min_abv_percent,
    )
    return Bought(draft, count, price, received)


HOW_BOUGHT = "write the product, *how many and =the price of each, such as “Lamp Room gin*2=24.50”"
HOW_PAR = "write the ingredient, = and the least to have, such as “gin=1.4 l” or “gin=2 bottles”"


_BOUGHT = re.compile(
    r"(?P<product>[^*=]+?)\s*(?:\*\s*(?P<count>[0-9]{1,4}))?\s*(?:=\s*(?P<price>[0-9]+(?:[.,][0-9]+)?))?"
)


def read_bought(text: str, snapshot: Snapshot, received: date | None = None) -> Bought:
    """*PRODUCT*N=PRICE*, both numbers may be left out.

    Raises `InvalidField`, `UnknownName` or `AmbiguousName`.
    """
    found = _BOUGHT.fullmatch(text.strip())
    if found is None:
        raise InvalidField("received", text.strip(), HOW_BOUGHT)
    product = find_product(snapshot, found["product"])
    price = None if found["price"] is None else float(found["price"].replace(",", "."))
    return Bought(product.id, int(found["count"] or 1), price, received)


def read_par_line(text: str, snapshot: Snapshot) -> Par:
    """*INGREDIENT=AMOUNT*. Raises `InvalidField`, `UnknownName`, or as an amount does."""
    name, equals, amount = text.rpartition("=")
    if not equals or not name.strip():
        raise InvalidField("par", text.strip(), HOW_PAR)
    tree = snapshot.knowledge.tree
    rather = rather_named(name.strip(), tree)
    if rather:
        likely = f"likely “{tree.in_sentence(rather)}={amount.strip()}”"
        raise InvalidField("par", text.strip(), f"“{name.strip()}” may be several kinds; {likely}")
    key = find_ingredient(tree, name.strip(), owned=snapshot.owned)
    return Par(key, read_par(amount, tree[key], snapshot.settings.units))


HOW_WEIGHING = "write a query, = and how many times it counts, such as “tag:summer=2” or “own=3”"
HOW_PRICE = tr_noop("write the kind, = and what a purchase of it costs, such as “calvados=30”")
MOST_TIMES = 1000.0
"""A drink that counts oftener is a misprint."""
_MONEY = re.compile(
    r"(?P<before>[^\d\s.,-]{0,4})\s*(?P<amount>[-−]?[0-9]{1,9}(?:[.,][0-9]{1,2})?)\s*(?P<after>\S{0,4})"
)


def read_money(text: str, field: str, currency: str) -> float:
    """An amount of money in the bar's currency, which may be written beside it.

    Raises `InvalidField`, also for another currency.
    """
    found = _MONEY.fullmatch(text.strip())
    if found is None:
        raise InvalidField(field, text.strip(), tr("write an amount such as 80 or 79.50"))
    for said in (found["before"], found["after"]):
        if said and said.casefold() != currency.casefold():
            expected = tr("prices of this bar are in {currency}", currency=currency)
            raise InvalidField(field, text.strip(), expected)
    return float(found["amount"].replace(",", ".").replace("−", "-"))


def read_weighing(text: str) -> tuple[str, float]:
    """*QUERY=TIMES*: how often the drinks that a query finds count. Raises `InvalidField`."""
    query, equals, times = text.rpartition("=")
    if (
        not equals
        or not query.strip()
        or not re.fullmatch(r"[0-9]{1,4}(?:[.,][0-9]{1,3})?", times.strip())
    ):
        raise InvalidField("weigh", text.strip(), HOW_WEIGHING)
    factor = float(times.replace(",", "."))
    if factor > MOST_TIMES:
        raise InvalidField("weigh", text.strip(), f"it counts {MOST_TIMES:g} times at most")
    return query.strip(), factor


def read_kind_price(text: str, snapshot: Snapshot) -> tuple[str, float]:
    """*KIND=AMOUNT*: what a purchase of a kind costs. Raises `InvalidField` or `UnknownName`."""
    name, equals, price = text.rpartition("=")
    if not equals or not name.strip():
        raise InvalidField("price", text.strip(), HOW_PRICE)
    key = find_ingredient(snapshot.knowledge.tree, name.strip(), owned=snapshot.owned)
    paid = read_money(price, "price", snapshot.settings.currency)
    if paid < 0.0:
        raise InvalidField("price", price.strip(), tr("it is nothing or more"))
    return key, paid


HOW_LISTED = "write the kind, and * and how many, such as “calvados” or “calvados*2”"


def read_to_buy(text: str, snapshot: Snapshot) -> ToBuy:
    """*KIND*, or it and how many after an asterisk, 0 to take it off.

    Raises `InvalidField` or `UnknownName`.
    """
    name, times, count = text.partition("*")
    if not name.strip() or (times and not re.fullmatch(r"\s*[0-9]{1,2}\s*", count)):
        raise InvalidField("list", text.strip(), HOW_LISTED)
    key = find_ingredient(snapshot.knowledge.tree, name.strip(), owned=snapshot.owned)
    return ToBuy(key, int(count) if times else 1)


def to_buy_of(bought: Purchase, snapshot: Snapshot) -> ToBuy:
    """A purchase as it goes on the list; of what is sold by the piece as many as it has pieces."""
    packages = bought.packages
    if snapshot.knowledge.tree[bought.ingredient].unit == "each":
        size = package_for(bought.ingredient, None, snapshot).size
        packages = packages_for(bought.stock.amount, size)
    return ToBuy(bought.ingredient, packages)


def listed_of(plan: Plan, snapshot: Snapshot) -> tuple[ToBuy, ...]:
    """The purchases of a plan as they go on the list."""
    return tuple(to_buy_of(each.bought, snapshot) for each in plan.steps)
