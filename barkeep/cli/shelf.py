"""`barkeep bottles`, `pantry` and `move`: the shelf."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence

from barkeep.application.bar import Bar
from barkeep.application.finding import NobodyHasCode, find_bottle, find_by_code
from barkeep.cli.arguments import BOTTLE, Arguments, argument, command, flag, one_of
from barkeep.cli.bar_source import in_bar
from barkeep.cli.output import Answer, iso, level_bar, rounded, table
from barkeep.domain.amounts.measures import show_quantity, show_volume
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.bottle import Bottle
from barkeep.domain.phrases import counted


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
