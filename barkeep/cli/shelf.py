"""`barkeep bottles`, `pantry`, `history` and `receive`: what is on the shelf, and what came."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence

from barkeep.application.bar import Bar
from barkeep.application.finding import find_bottle, find_product
from barkeep.cli.arguments import (
    BOTTLE,
    PRODUCT,
    SHOP,
    USE_BY,
    Arguments,
    argument,
    command,
    day,
)
from barkeep.cli.bar_source import in_bar
from barkeep.cli.output import Answer, iso, level_bar, rounded, table
from barkeep.domain.amounts.measures import show_quantity, show_volume
from barkeep.domain.amounts.units import Unit
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.bottle import Bottle, BottleFacts, Entry
from barkeep.domain.bottles.containers import container_for, like_tare
from barkeep.domain.bottles.level_words import certainty
from barkeep.domain.bottles.levels import parse_level
from barkeep.domain.bottles.paid import Payment, payment_in_words
from barkeep.domain.phrases import counted
from barkeep.errors import InvalidField


@command()
@in_bar
def bottles(_arguments: Arguments, bar: Bar) -> Answer:
    """The bottles along the shelf."""
    snapshot = bar.snapshot
    poured = [each for each in snapshot.bottles if each.product.unit == "ml"]
    head = ("id", "product", "ingredient", "% vol", "level", "", "of", "use by")
    rows = [_row(each, snapshot, _poured_cells(each)) for each in poured]
    how_many = f"{counted(len(poured), 'bottle')} in {snapshot.settings.name}."
    return Answer(
        lambda: {"bottles": [_json(each, snapshot, _poured_json(each)) for each in poured]},
        [table(head, rows, right="rllrrlr"), "", how_many, *_off(poured, snapshot)],
    )


@command()
@in_bar
def pantry(_arguments: Arguments, bar: Bar) -> Answer:
    """What is not poured, along the shelf."""
    snapshot = bar.snapshot
    kept = [each for each in snapshot.bottles if each.product.unit != "ml"]
    rows = [_row(each, snapshot, _kept_cells(each)) for each in kept]
    head = ("id", "product", "ingredient", "level", "of", "use by")
    return Answer(
        lambda: {"pantry": [_json(each, snapshot, _kept_json(each)) for each in kept]},
        [table(head, rows, right="rllrr"), *_off(kept, snapshot)],
    )


def _off(bottles: Iterable[Bottle], snapshot: Snapshot) -> Iterator[str]:
    """What is past its date, why, and what comes of it."""
    held = (each for each in bottles if each.level.amount > 0.0)
    yield from filter(None, map(snapshot.off_in_words, held))


def _json(bottle: Bottle, snapshot: Snapshot, amounts: Mapping[str, object]) -> dict[str, object]:
    """`past` is what it is past its date; null where it is good still, always keeps or is empty."""
    tree, end = snapshot.knowledge.tree, snapshot.ends.get(bottle.id)
    is_off = end is not None and bottle.level.amount > 0.0 and end.is_over(snapshot.on)
    return {
        "id": bottle.id,
        "product": bottle.product.title,
        "ingredient": tree.name(bottle.ingredient),
        **amounts,
        "opened": iso(bottle.level.opened),
        "use_by": iso(bottle.use_by),
        "price": rounded(bottle.product.price, 2),
        "good_until": None if end is None else iso(end.last),
        "past": end.after if is_off and end is not None else None,
        "past_because": snapshot.off_in_words(bottle) if is_off else None,
    }


def _poured_json(bottle: Bottle) -> dict[str, object]:
    return {
        "abv_percent": bottle.product.abv_percent,
        "size_ml": rounded(bottle.product.size),
        "level_ml": rounded(bottle.level.amount),
    }


def _kept_json(bottle: Bottle) -> dict[str, object]:
    return {
        "unit": bottle.product.unit,
        "size": rounded(bottle.product.size, 2),
        "level": rounded(bottle.level.amount, 2),
    }


def _row(bottle: Bottle, snapshot: Snapshot, amounts: Sequence[str]) -> tuple[str, ...]:
    name, end = snapshot.knowledge.tree.name(bottle.ingredient), snapshot.ends.get(bottle.id)
    last = "" if end is None else f"{end.last}"
    return (str(bottle.id), bottle.product.title, name, *amounts, last)


def _poured_cells(bottle: Bottle) -> tuple[str, ...]:
    strength = bottle.product.abv_percent
    return (
        "" if strength is None else f"{strength:g}",
        show_volume(bottle.level.amount),
        "sealed" if bottle.level.state == "sealed" else level_bar(bottle.share),
        show_volume(bottle.product.size),
    )


def _kept_cells(bottle: Bottle) -> tuple[str, ...]:
    unit = bottle.product.unit
    return (show_quantity(bottle.level.amount, unit), show_quantity(bottle.product.size, unit))


_WITHOUT_AMOUNT = ("open", "empty")


@command(BOTTLE)
@in_bar
def history(arguments: Arguments, bar: Bar) -> Answer:
    """A bottle's entries, oldest first, each with the level after it."""
    bottle = find_bottle(bar.snapshot, arguments.bottle)
    steps = bar.inventory.history(bottle.id)
    title, unit = bottle.product.title, bottle.product.unit
    head = ("when", "what", "amount", "level", "how", "note")
    rows = table(head, [_entry_row(*each, unit) for each in steps], right="llrr")
    return Answer(
        lambda: {"bottle": title, "unit": unit, "entries": [_entry_json(*each) for each in steps]},
        f"{title} (#{bottle.id})\n{rows}",
    )


def _entry_json(entry: Entry, level: float) -> dict[str, object]:
    amount = None if entry.kind in _WITHOUT_AMOUNT else rounded(entry.amount, 2)
    return {
        "at": entry.at.isoformat(timespec="seconds"),
        "kind": entry.kind,
        "amount": amount,
        "level": rounded(level, 2),
        "method": entry.method,
        "sigma": rounded(entry.sigma, 2),
        "note": entry.note,
    }


def _entry_row(entry: Entry, level: float, unit: Unit) -> tuple[str, ...]:
    sign = "−" if entry.amount < 0 else ""
    amount = sign + show_quantity(abs(entry.amount), unit)
    return (
        f"{entry.at:%Y-%m-%d %H:%M}",
        entry.kind,
        "" if entry.kind in _WITHOUT_AMOUNT else amount,
        show_quantity(level, unit),
        certainty(entry.method, entry.sigma, unit),
        entry.note,
    )


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
    from barkeep.application.shopping import read_money  # loads the store, which no list needs

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
