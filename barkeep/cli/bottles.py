"""`barkeep bottles`: every bottle of what is poured, with its level."""

from __future__ import annotations

import argparse

from barkeep.cli.arguments import Arguments
from barkeep.cli.bar_source import opened_bar
from barkeep.cli.output import counted, iso, print_json, rounded
from barkeep.cli.table import level_bar, table
from barkeep.domain.ingredients import FamilyTree
from barkeep.domain.inventory import Bottle
from barkeep.domain.measures import show_volume


def configure(parser: argparse.ArgumentParser) -> None:
    """Its arguments."""
    parser.set_defaults(run=run)


def run(arguments: Arguments) -> int:
    """Print the bottles along the shelf."""
    with opened_bar(arguments) as bar:
        snapshot = bar.snapshot
    tree = snapshot.knowledge.tree
    poured = [each for each in snapshot.bottles if each.product.unit == "ml"]
    if arguments.json:
        print_json({"bottles": [_bottle_json(each, tree) for each in poured]})
        return 0
    head = ("id", "product", "ingredient", "% vol", "level", "", "of", "use by")
    print(table(head, [_bottle_row(each, tree) for each in poured], right="rllrrlr"))
    print(f"\n{counted(len(poured), 'bottle')} in {snapshot.settings.name}.")
    return 0


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
