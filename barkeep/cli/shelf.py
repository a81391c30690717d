"""`barkeep bottles`, `pantry`, `history` and `receive`: what is on the shelf, and what came."""

from __future__ import annotations

import argparse
from collections.abc import Callable, Sequence
from dataclasses import dataclass

from barkeep.application.finding import find_bottle, find_product
from barkeep.cli.arguments import Arguments
from barkeep.cli.bar_source import opened_bar
from barkeep.cli.output import counted, day, iso, level_bar, print_json, rounded, table
from barkeep.domain.amounts.measures import show_quantity, show_volume
from barkeep.domain.amounts.units import Unit
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.bottle import Bottle, BottleFacts, Entry
from barkeep.domain.bottles.containers import container_for, like_tare
from barkeep.domain.bottles.level_words import certainty
from barkeep.domain.bottles.levels import parse_level
from barkeep.domain.ingredients.tree import FamilyTree


@dataclass(frozen=True, slots=True)
class Listing:
    """One way to list bottles. `right` is as for `table`, `foot` a line under it or nothing."""

    key: str
    holds: Callable[[Bottle], bool]
    as_json: Callable[[Bottle, FamilyTree], dict[str, object]]
    head: Sequence[str]
    as_row: Callable[[Bottle, FamilyTree], Sequence[str]]
    right: str
    foot: Callable[[int, Snapshot], str] | None = None


def print_listing(arguments: Arguments, listing: Listing) -> int:
    """Print the bottles of the bar that a listing holds, along the shelf."""
    with opened_bar(arguments) as bar:
        snapshot = bar.snapshot
    tree = snapshot.knowledge.tree
    bottles = [each for each in snapshot.bottles if listing.holds(each)]
    if arguments.json:
        print_json({listing.key: [listing.as_json(each, tree) for each in bottles]})
        return 0
    rows = [listing.as_row(each, tree) for each in bottles]
    print(table(listing.head, rows, right=listing.right))
    if listing.foot:
        print(f"\n{listing.foot(len(bottles), snapshot)}")
    return 0


def configure_bottles(parser: argparse.ArgumentParser) -> None:
    """Its arguments."""
    parser.set_defaults(run=run_bottles)


def run_bottles(arguments: Arguments) -> int:
    """Print the bottles along the shelf."""
    return print_listing(arguments, _POURED)


def _bottle_json(bottle: Bottle, tree: FamilyTree) -> dict[str, object]:
    product = bottle.product
    return {
        "id": bottle.id,
        "product": product.title,
        "ingredient": tree.name(product.ingredient),
        "abv_percent": product.abv_percent,
        "size_ml": rounded(product.size),
        "level_ml": rounded(bottle.level.amount),
        "opened": iso(bottle.level.opened),
        "use_by": iso(bottle.use_by),
        "price": rounded(product.price, 2),
    }


def _bottle_row(bottle: Bottle, tree: FamilyTree) -> tuple[str, ...]:
    product = bottle.product
    state = "sealed" if bottle.level.state == "sealed" else level_bar(bottle.share)
    return (
        str(bottle.id),
        product.title,
        tree.name(product.ingredient),
        "" if product.abv_percent is None else f"{product.abv_percent:g}",
        show_volume(bottle.level.amount),
        state,
        show_volume(product.size),
        iso(bottle.use_by) or "",
    )


def _how_many(number: int, snapshot: Snapshot) -> str:
    return f"{counted(number, 'bottle')} in {snapshot.settings.name}."


_POURED = Listing(
    key="bottles",
    holds=lambda bottle: bottle.product.unit == "ml",
    as_json=_bottle_json,
    head=("id", "product", "ingredient", "% vol", "level", "", "of", "use by"),
    as_row=_bottle_row,
    right="rllrrlr",
    foot=_how_many,
)


def configure_pantry(parser: argparse.ArgumentParser) -> None:
    """Its arguments."""
    parser.set_defaults(run=run_pantry)


def run_pantry(arguments: Arguments) -> int:
    """Print what is not poured."""
    return print_listing(arguments, _KEPT)


def _kept_json(bottle: Bottle, tree: FamilyTree) -> dict[str, object]:
    product = bottle.product
    return {
        "id": bottle.id,
        "product": product.title,
        "ingredient": tree.name(product.ingredient),
        "unit": product.unit,
        "size": rounded(product.size, 2),
        "level": rounded(bottle.level.amount, 2),
        "opened": iso(bottle.level.opened),
        "use_by": iso(bottle.use_by),
        "price": rounded(product.price, 2),
    }


def _kept_row(bottle: Bottle, tree: FamilyTree) -> tuple[str, ...]:
    product = bottle.product
    return (
        str(bottle.id),
        product.title,
        tree.name(product.ingredient),
        show_quantity(bottle.level.amount, product.unit),
        show_quantity(product.size, product.unit),
        iso(bottle.use_by) or "",
    )


_KEPT = Listing(
    key="pantry",
    holds=lambda bottle: bottle.product.unit != "ml",
    as_json=_kept_json,
    head=("id", "product", "ingredient", "level", "of", "use by"),
    as_row=_kept_row,
    right="rllrr",
)


_WITHOUT_AMOUNT = ("open", "empty")


def configure_history(parser: argparse.ArgumentParser) -> None:
    """Its arguments."""
    parser.add_argument("bottle", metavar="BOTTLE", help="its id, or its maker and name")
    parser.set_defaults(run=run_history)


def run_history(arguments: Arguments) -> int:
    """Print a bottle's entries, oldest first, each with the level after it."""
    with opened_bar(arguments) as bar:
        bottle = find_bottle(bar.snapshot, arguments.bottle)
        steps = bar.inventory.history(bottle.id)
    product = bottle.product
    if arguments.json:
        entries = [_entry_json(entry, level) for entry, level in steps]
        print_json({"bottle": product.title, "unit": product.unit, "entries": entries})
        return 0
    print(f"{product.title} (#{bottle.id})")
    rows = [_entry_row(entry, level, product.unit) for entry, level in steps]
    print(table(("when", "what", "amount", "level", "how", "note"), rows, right="llrr"))
    return 0


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


def configure_receive(parser: argparse.ArgumentParser) -> None:
    """Its arguments."""
    parser.add_argument("product", metavar="PRODUCT", help="its maker and name")
    parser.add_argument("--level", metavar="LEVEL", help="what is in it (default: it is full)")
    parser.add_argument("--made", type=day, metavar="DAY", help="when it was made here")
    parser.add_argument("--use-by", type=day, metavar="DAY", help="how long it keeps")
    parser.set_defaults(run=run_receive)


def run_receive(arguments: Arguments) -> int:
    """Receive one bottle."""
    with opened_bar(arguments) as bar:
        snapshot = bar.snapshot
        product = find_product(snapshot, arguments.product)
        facts = BottleFacts(made=arguments.made, use_by=arguments.use_by)
        amount = None
        if arguments.level is not None:
            tare = like_tare(product, snapshot.bottles)
            container = container_for(product, snapshot.knowledge.tree, tare)
            amount = parse_level(arguments.level, container, snapshot.settings.units).amount
        done = bar.inventory.receive(product.id, amount, facts)
    bottle = done.value
    if arguments.json:
        print_json(
            {
                "id": bottle.id,
                "product": product.title,
                "unit": product.unit,
                "level": rounded(bottle.level.amount, 2),
                "made": iso(bottle.made),
                "use_by": iso(bottle.use_by),
            }
        )
    else:
        level_shown = show_quantity(bottle.level.amount, product.unit)
        keeps = f", use by {bottle.use_by}" if bottle.use_by else ""
        print(f"{product.title} is on the shelf as #{bottle.id} with {level_shown}{keeps}.")
    return 0
