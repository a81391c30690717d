"""`barkeep bottles`: every bottle of what is poured, with its level."""

from __future__ import annotations

import argparse

from barkeep.cli.arguments import Arguments
from barkeep.cli.output import counted, iso, rounded
from barkeep.cli.shelf import Listing, print_listing
from barkeep.cli.table import level_bar
from barkeep.domain.amounts.measures import show_volume
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.bottle import Bottle
from barkeep.domain.ingredients.tree import FamilyTree


def configure(parser: argparse.ArgumentParser) -> None:
    """Its arguments."""
    parser.set_defaults(run=run)


def run(arguments: Arguments) -> int:
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
