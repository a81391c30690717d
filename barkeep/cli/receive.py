"""`barkeep receive`: put a bottle of a known product on the shelf."""

from __future__ import annotations

import argparse

from barkeep.application.finding import find_product
from barkeep.cli.arguments import Arguments
from barkeep.cli.bar_source import opened_bar
from barkeep.cli.days import day
from barkeep.cli.output import iso, print_json, rounded
from barkeep.domain.amounts.measures import show_quantity
from barkeep.domain.bottles.bottle import BottleFacts
from barkeep.domain.bottles.containers import container_for, like_tare
from barkeep.domain.bottles.levels import parse_level


def configure(parser: argparse.ArgumentParser) -> None:
    """Its arguments."""
    parser.add_argument("product", metavar="PRODUCT", help="its maker and name")
    parser.add_argument("--level", metavar="LEVEL", help="what is in it (default: it is full)")
    parser.add_argument("--made", type=day, metavar="DAY", help="when it was made here")
    parser.add_argument("--use-by", type=day, metavar="DAY", help="how long it keeps")
    parser.set_defaults(run=run)


def run(arguments: Arguments) -> int:
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
