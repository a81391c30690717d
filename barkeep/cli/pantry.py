"""`barkeep pantry`: what is counted by the piece or weighed, such as fruit, eggs and sugar."""

from __future__ import annotations

import argparse

from barkeep.cli.arguments import Arguments
from barkeep.cli.output import iso, rounded
from barkeep.cli.shelf import Listing, print_listing
from barkeep.domain.amounts.measures import show_quantity
from barkeep.domain.bottles.bottle import Bottle
from barkeep.domain.ingredients.tree import FamilyTree


def configure(parser: argparse.ArgumentParser) -> None:
    """Its arguments."""
    parser.set_defaults(run=run)


def run(arguments: Arguments) -> int:
    """Print what is not poured."""
    return print_listing(arguments, _KEPT)


def _entry_json(bottle: Bottle, tree: FamilyTree) -> dict[str, object]:
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


def _entry_row(bottle: Bottle, tree: FamilyTree) -> tuple[str, ...]:
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
    as_json=_entry_json,
    head=("id", "product", "ingredient", "level", "of", "use by"),
    as_row=_entry_row,
    right="rllrr",
)
