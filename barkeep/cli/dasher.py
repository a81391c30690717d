"""`barkeep dasher`: what one dash from a bottle comes to."""

from __future__ import annotations

import argparse

from barkeep.application.finding import find_bottle
from barkeep.application.settings import read_dash_ml
from barkeep.cli.arguments import Arguments
from barkeep.cli.bar_source import opened_bar
from barkeep.cli.output import print_json, rounded
from barkeep.domain.amounts.measures import show_volume

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
        dash_ml = None if text == USUAL else read_dash_ml(text, units)
        bottle = bar.inventory.set_dasher(bottle.id, dash_ml).value
    title = bottle.product.title
    if arguments.json:
        print_json({"bottle": title, "dash_ml": rounded(bottle.dash_ml, 4)})
    elif bottle.dash_ml is None:
        print(f"A dash of {title} is what the bar means by a dash, {show_volume(units.dash_ml)}.")
    else:
        print(f"A dash of {title} is {show_volume(bottle.dash_ml)}.")
    return 0
