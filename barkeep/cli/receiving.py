"""`barkeep receive`: a bottle that came."""

from __future__ import annotations

from collections.abc import Iterator

from barkeep.application.bar import Bar
from barkeep.application.finding import find_product
from barkeep.cli.arguments import PRODUCT, SHOP, USE_BY, Arguments, argument, command, day
from barkeep.cli.bar_source import in_bar
from barkeep.cli.output import Answer, iso, rounded
from barkeep.domain.amounts.measures import show_quantity
from barkeep.domain.bottles.bottle import Bottle, BottleFacts
from barkeep.domain.bottles.containers import container_for, like_tare
from barkeep.domain.bottles.levels import parse_level
from barkeep.domain.bottles.paid import Payment, payment_in_words
from barkeep.errors import InvalidField


@command(
    PRODUCT,
    argument("--level", metavar="LEVEL", help="what is in it (default: it is full)"),
    argument("--made", type=day, metavar="DAY", help="when it was made here"),
    USE_BY,
    argument("--paid", metavar="AMOUNT", help="what it cost, in the bar's currency"),
    SHOP,
)
@in_bar
def receive(arguments: Arguments, bar: Bar) -> Answer:
    """Receive one bottle."""
    snapshot = bar.snapshot
    product = find_product(snapshot, arguments.product)
    facts = BottleFacts(made=arguments.made, use_by=arguments.use_by)
    amount = None
    if arguments.level is not None:
        tare = like_tare(product, snapshot.bottles)
        container = container_for(product, snapshot.knowledge.tree, tare)
        amount = parse_level(arguments.level, container, snapshot.settings.units).amount
    payment = _payment(arguments, snapshot.settings.currency)
    bottle = bar.inventory.receive(product.id, amount, facts, payment).value
    level = show_quantity(bottle.level.amount, product.unit)
    keeps = f", use by {bottle.use_by}" if bottle.use_by else ""
    return Answer(
        lambda: {
            "id": bottle.id,
            "product": product.title,
            "unit": product.unit,
            "level": rounded(bottle.level.amount, 2),
            "made": iso(bottle.made),
            "use_by": iso(bottle.use_by),
            "paid": None if payment is None else rounded(payment.amount, 2),
        },
        [
            f"{product.title} is on the shelf as #{bottle.id} with {level}{keeps}.",
            *_cost_said(bottle, payment, snapshot.settings.currency),
        ],
    )


def _payment(arguments: Arguments, currency: str) -> Payment | None:
    """What was paid, where it is said. Raises `InvalidField`."""
    from barkeep.application.shopping import read_money  # loads the store, which few need

    shop = " ".join((arguments.shop or "").split())
    if arguments.paid is not None:
        return Payment(read_money(arguments.paid, "paid", currency), shop)
    if shop:
        raise InvalidField("shop", shop, "say with --paid what was paid there")
    return None


def _cost_said(bottle: Bottle, payment: Payment | None, currency: str) -> Iterator[str]:
    if payment is not None:
        yield f"{payment_in_words(payment, currency)} was paid for it."
    elif bottle.product.price is None and not bottle.product.house_made:
        yield "Nobody knows what it cost; --paid says it."
