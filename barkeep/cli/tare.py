"""`barkeep tare`: what a bottle weighs empty, so that it can be counted on a scale."""

from __future__ import annotations

import argparse

from barkeep.application.finding import find_bottle
from barkeep.cli.arguments import Arguments
from barkeep.cli.bar_source import opened_bar
from barkeep.cli.output import print_json, rounded
from barkeep.domain.bottles.levels import read_weight_g


def configure(parser: argparse.ArgumentParser) -> None:
    """Its arguments."""
    parser.add_argument(
        "bottle", metavar="BOTTLE", help="its id, or its maker and name; of several the open one"
    )
    parser.add_argument(
        "weight",
        metavar="WEIGHT",
        nargs="+",
        help="what the empty bottle weighs without its cap, such as 520 g",
    )
    parser.add_argument(
        "--full",
        action="store_true",
        help="it was full on the scale: what it should hold is taken off; cream liqueurs and the "
        "like need both weights, to learn how dense they are",
    )
    parser.set_defaults(run=run)


def run(arguments: Arguments) -> int:
    """Take down one weighing and say what is known from it."""
    weight_g = read_weight_g(" ".join(arguments.weight))
    with opened_bar(arguments) as bar:
        bottle = find_bottle(bar.snapshot, arguments.bottle, rather_open=True)
        weighed = bar.inventory.learn_tare(bottle.id, weight_g, arguments.full).value
    tare, product = weighed.bottle.tare, weighed.bottle.product
    if arguments.json:
        print_json(
            {
                "bottle": product.title,
                "tare_g": rounded(tare.weight_g, 2) if tare else None,
                "tare_sigma_g": rounded(tare.sigma_g, 2) if tare else None,
                "density_g_per_ml": rounded(product.density_g_per_ml, 4),
                "warning": weighed.warning or None,
            }
        )
    else:
        print(weighed.sentence)
    return 0
