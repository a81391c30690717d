"""`barkeep bottles`, `pantry`, `history`, `receive` and `move`: the shelf, and what came."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence

from barkeep.application.bar import Bar
from barkeep.application.finding import NobodyHasCode, find_bottle, find_by_code, find_product
from barkeep.cli.arguments import (
    BOTTLE,
    PRODUCT,
    SHOP,
    USE_BY,
    Arguments,
    argument,
    command,
    day,
    flag,
    one_of,
)
from barkeep.cli.bar_source import in_bar
from barkeep.cli.output import Answer, iso, level_bar, rounded, table
from barkeep.domain.amounts.measures import show_quantity, show_volume
from barkeep.domain.amounts.units import Unit
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.bottle import Bottle, BottleFacts
from barkeep.domain.bottles.containers import container_for, like_tare
from barkeep.domain.bottles.level_steps import LevelStep, level_steps
from barkeep.domain.bottles.level_words import certainty, in_doubt
from barkeep.domain.bottles.levels import parse_level
from barkeep.domain.bottles.paid import Payment, payment_in_words
from barkeep.domain.phrases import counted
from barkeep.errors import InvalidField


@command(
    argument("--code", metavar="CODE", help="only those with this number under their barcode"),
)
@in_bar
def bottles(arguments: Arguments, bar: Bar) -> Answer:
    """The bottles along the shelf."""
    snapshot = bar.snapshot
    along = _along(snapshot, poured=True)
    if arguments.code is not None:
        found = find_by_code(snapshot, arguments.code)
        along = [(place, each) for place, each in along if each in found.bottles]
        if not found.bottles:
            known = found.products[0].title if found.products else ""
            raise NobodyHasCode(found.code, known)
    poured = [each for _place, each in along]
    head = ("id", "product", "ingredient", "% vol", "level", "", "of", "use by")
    rows = [_row(each, snapshot, _poured_cells(each)) for each in poured]
    how_many = f"{counted(len(poured), 'bottle')} in {snapshot.settings.name}."
    return Answer(
        lambda: {"bottles": [_json(*each, snapshot, _poured_json(each[1])) for each in along]},
        [table(head, rows, right="rllrrlr"), "", how_many, *_off(poured, snapshot)],
    )


@command()
@in_bar
def pantry(_arguments: Arguments, bar: Bar) -> Answer:
    """What is not poured, along the shelf."""
    snapshot = bar.snapshot
    along = _along(snapshot, poured=False)
    kept = [each for _place, each in along]
    rows = [_row(each, snapshot, _kept_cells(each)) for each in kept]
    head = ("id", "product", "ingredient", "level", "of", "use by")
    return Answer(
        lambda: {"pantry": [_json(*each, snapshot, _kept_json(each[1])) for each in along]},
        [table(head, rows, right="rllrr"), *_off(kept, snapshot)],
    )


def _along(snapshot: Snapshot, *, poured: bool) -> list[tuple[int, Bottle]]:
    """What is poured, or is not, each with its place along the whole shelf from 1."""
    along = enumerate(snapshot.bottles, 1)
    return [(place, each) for place, each in along if (each.product.unit == "ml") == poured]


def _off(bottles: Iterable[Bottle], snapshot: Snapshot) -> Iterator[str]:
    """What is past its date, why, and what comes of it."""
    held = (each for each in bottles if each.level.amount > 0.0)
    yield from filter(None, map(snapshot.off_in_words, held))


def _json(
    place: int, bottle: Bottle, snapshot: Snapshot, amounts: Mapping[str, object]
) -> dict[str, object]:
    """`past` is what it is past its date; null where it is good still, always keeps or is empty."""
    from barkeep.domain.drink.looks import shipped_looks  # only data tell how it looks
    from barkeep.domain.drink.shelf import standing

    tree, end = snapshot.knowledge.tree, snapshot.ends.get(bottle.id)
    is_held = end is not None and bottle.level.amount > 0.0
    is_off = is_held and end is not None and end.is_over(snapshot.on)
    seen = standing(bottle, tree, shipped_looks())
    return {
        "id": bottle.id,
        "product": bottle.product.title,
        "ingredient": tree.name(bottle.ingredient),
        **amounts,
        "opened": iso(bottle.level.opened),
        "use_by": iso(bottle.use_by),
        "price": rounded(bottle.product.price, 2),
        "barcode": bottle.product.barcode or None,
        "good_until": None if end is None else iso(end.last),
        "past": end.after if is_off and end is not None else None,
        "past_because": snapshot.off_in_words(bottle) if is_off else None,
        "place": place,
        "state": bottle.level.state,
        "low": bottle.is_low,
        "due": is_held and end is not None and end.is_due(snapshot.on),
        "stands_as": seen.shape,
        "colour": seen.colour,
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
    title, unit, size = bottle.product.title, bottle.product.unit, bottle.product.size
    entries = [entry for entry, _level in bar.inventory.history(bottle.id)]
    steps = level_steps(entries, unit)
    head = ("when", "what", "amount", "level", "doubt", "how", "note")
    rows = table(head, [_entry_row(each, unit, size) for each in steps], right="llrrr")
    return Answer(
        lambda: {"bottle": title, "unit": unit, "entries": [_entry_json(each) for each in steps]},
        f"{title} (#{bottle.id})\n{rows}",
    )


def _entry_json(step: LevelStep) -> dict[str, object]:
    """`sigma` is how sure a count was, `level_sigma` how sure the level is after the entry."""
    entry = step.entry
    amount = None if entry.kind in _WITHOUT_AMOUNT else rounded(entry.amount, 2)
    return {
        "at": entry.at.isoformat(timespec="seconds"),
        "kind": entry.kind,
        "amount": amount,
        "level": rounded(step.after, 2),
        "method": entry.method,
        "sigma": rounded(entry.sigma, 2),
        "note": entry.note,
        "level_sigma": rounded(step.after_sigma, 2),
    }


def _entry_row(step: LevelStep, unit: Unit, size: float) -> tuple[str, ...]:
    entry = step.entry
    sign = "−" if entry.amount < 0 else ""
    amount = sign + show_quantity(abs(entry.amount), unit)
    return (
        f"{entry.at:%Y-%m-%d %H:%M}",
        entry.kind,
        "" if entry.kind in _WITHOUT_AMOUNT else amount,
        show_quantity(step.after, unit),
        in_doubt(step.after_sigma, unit),
        certainty(entry.method, entry.sigma, unit, size),
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


@command(
    BOTTLE,
    one_of(
        argument("--before", metavar="BOTTLE", help="right before this one"),
        flag("--last", "behind all others"),
        required=True,
    ),
)
@in_bar
def move(arguments: Arguments, bar: Bar) -> Answer:
    """Put a bottle at another place along the shelf."""
    bottle = find_bottle(bar.snapshot, arguments.bottle)
    before = None if arguments.last else find_bottle(bar.snapshot, arguments.before)
    moved = bar.inventory.move(bottle.id, None if before is None else before.id).value
    place = bar.snapshot.bottles.index(moved) + 1
    where = "last" if before is None else f"before {before.product.title}"
    return Answer(
        lambda: {"id": moved.id, "product": moved.product.title, "place": place},
        f"{moved.product.title} stands {where}, {place} along the shelf.",
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
