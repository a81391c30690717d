"""`barkeep product show`, `paid`, `forget`, and `evening`: what was paid, and what a day cost."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from barkeep.application.bar import Bar
from barkeep.application.finding import find_product
from barkeep.application.paying import PouredOn, spilled_in_words
from barkeep.application.shopping import read_money
from barkeep.cli.arguments import PRODUCT, SHOP, Arguments, argument, command, day
from barkeep.cli.bar_source import in_bar
from barkeep.cli.output import Answer, iso, rounded, table
from barkeep.cli.product import bottles_of, product_json
from barkeep.domain.amounts.measures import show_quantity
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.bottle import Product
from barkeep.domain.bottles.paid import Paid, Payment, cheapest_in_words, payment_in_words
from barkeep.domain.drink.costs import cost_in_words
from barkeep.domain.phrases import counted, price_in_words
from barkeep.errors import InvalidField

NOTHING_NOTED = "What was paid for it was never noted."


@command(PRODUCT)
@in_bar
def show(arguments: Arguments, bar: Bar) -> Answer:
    """One product, and what was paid for it, newest first."""
    product = find_product(bar.snapshot, arguments.product)
    return _answer(product, bar)


@command(
    PRODUCT,
    argument("amount", metavar="AMOUNT", help="what one bottle or pack cost"),
    SHOP,
    argument("--on", type=day, metavar="DAY", help="when it was bought (default: today)"),
)
@in_bar
def note(arguments: Arguments, bar: Bar) -> Answer:
    """Note what was paid for a product, such as from an old receipt."""
    product = find_product(bar.snapshot, arguments.product)
    amount = read_money(arguments.amount, "paid", bar.snapshot.settings.currency)
    payment = Payment(amount, arguments.shop or "")
    return _answer(bar.paying.note(product.id, payment, arguments.on).value, bar)


@command(PRODUCT, argument("number", metavar="N", help="which, as “product show” numbers them"))
@in_bar
def forget(arguments: Arguments, bar: Bar) -> Answer:
    """Take what was noted away; “removed bring-back” brings it back."""
    product = find_product(bar.snapshot, arguments.product)
    paid = _numbered(arguments.number, bar.paying.of(product.id))
    return _answer(bar.paying.forget(product.id, paid.id).value, bar)


def _numbered(text: str, payments: Sequence[Paid]) -> Paid:
    numbers = {str(number): each for number, each in enumerate(payments, 1)}
    if text not in numbers:
        expected = f"it is 1 to {len(numbers)}" if numbers else "nothing is noted as paid for it"
        raise InvalidField("number", text, expected)
    return numbers[text]


def _answer(product: Product, bar: Bar) -> Answer:
    payments, snapshot = bar.paying.of(product.id), bar.snapshot
    return Answer(
        lambda: {**product_json(product, snapshot), "paid": [_json(each) for each in payments]},
        _shown(product, payments, snapshot),
    )


def _json(paid: Paid) -> dict[str, object]:
    return {"on": iso(paid.day), "amount": rounded(paid.amount, 2), "shop": paid.shop}


def _shown(product: Product, payments: Sequence[Paid], snapshot: Snapshot) -> Iterator[str]:
    currency = snapshot.settings.currency
    kind = snapshot.knowledge.tree.in_sentence(product.ingredient)
    size = show_quantity(product.size, product.unit)
    yield f"{product.title}: {kind}, {size}, {counted(bottles_of(product, snapshot), 'bottle')}."
    price = price_in_words(product.price, currency)
    yield f"Its price is {price}." if price else "Its price is not known."
    if not payments:
        yield NOTHING_NOTED
        return
    yield ""
    rows = [
        (str(number), f"{each.day}", payment_in_words(each, currency))
        for number, each in enumerate(payments, 1)
    ]
    yield table(("", "on", "paid"), rows, right="r")
    yield from filter(None, (cheapest_in_words(payments, currency),))


@command(argument("day", nargs="?", type=day, metavar="DAY", help="which day (default: today)"))
@in_bar
def evening(arguments: Arguments, bar: Bar) -> Answer:
    """What was poured on a day, from midnight to midnight, and what it cost."""
    found = bar.paying.poured_on(arguments.day or bar.snapshot.on)
    return Answer(lambda: _poured_json(found, bar.snapshot), _poured_shown(found, bar.snapshot))


def _poured_json(found: PouredOn, snapshot: Snapshot) -> dict[str, object]:
    tree, cost = snapshot.knowledge.tree, found.cost
    return {
        "on": iso(found.day),
        "poured": [
            {
                "product": product.title,
                "amount": rounded(amount, 2),
                "unit": product.unit,
                "cost": rounded(each, 2),
            }
            for product, amount, each in found.poured
        ],
        "spilled": [
            {"product": product.title, "amount": rounded(amount, 2), "unit": product.unit}
            for product, amount in found.spilled
        ],
        "cost": rounded(cost.amount, 2),
        "currency": cost.currency,
        "priced": rounded(cost.priced, 2),
        "unpriced": [tree.name(each) for each in cost.unpriced],
    }


def _poured_shown(found: PouredOn, snapshot: Snapshot) -> Iterator[str]:
    if not found.poured:
        yield f"Nothing was poured on {found.day}."
    else:
        currency = found.cost.currency
        rows = [
            (
                product.title,
                show_quantity(amount, product.unit),
                price_in_words(each, currency, "not known"),
            )
            for product, amount, each in found.poured
        ]
        yield table(("poured", "amount", "cost"), rows, right="lrr")
        yield f"{found.day}: {cost_in_words(found.cost, snapshot.knowledge.tree)}"
    yield from spilled_in_words(found)
