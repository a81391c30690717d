"""`barkeep dasher`: what one dash from a bottle comes to."""

from __future__ import annotations

import argparse

from barkeep.application.finding import find_bottle
from barkeep.cli.arguments import Arguments
from barkeep.cli.bar_source import opened_bar
from barkeep.cli.output import print_json
from barkeep.domain.measures import parse_amount, to_quantity

USUAL = "usual"


def configure(parser: argparse.ArgumentParser) -> None:
    """Its arguments."""
    parser.add_argument(
        "bottle", metavar="BOTTLE", help="its id, or its maker and name; of several the open one"
    )
    parser.add_argument(
        "dash",
        metavar="DASH",
        nargs="+",
        help=f"what one dash from it comes to, such as 0.3 ml (count the dashes to 10 ml); "
        f"{USUAL} forgets it",
    )
    parser.set_defaults(run=run)


def run(arguments: Arguments) -> int:
    """Set or forget one bottle's dasher."""
    text = " ".join(arguments.dash)
    with opened_bar(arguments) as bar:
        snapshot = bar.snapshot
        units = snapshot.settings.units
        bottle = find_bottle(snapshot, arguments.bottle, rather_open=True)
        amount = None if text == USUAL else parse_amount(text, units)
        dash_ml = None if amount is None else to_quantity(amount, "ml", units)
        bottle = bar.inventory.set_dasher(bottle.id, dash_ml).value
    title = bottle.product.title
    if arguments.json:
        print_json({"bottle": title, "dash_ml": bottle.dash_ml})
    elif bottle.dash_ml is None:
        print(f"A dash of {title} is what the bar means by a dash, {units.dash_ml:g} ml.")
    else:
        print(f"A dash of {title} is {bottle.dash_ml:g} ml.")
    return 0
