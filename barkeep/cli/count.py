"""`barkeep count`: write down a measured level and see what is missing."""

from __future__ import annotations

import argparse

from barkeep.application.counting import Counted
from barkeep.application.finding import find_bottle
from barkeep.cli.arguments import Arguments
from barkeep.cli.bar_source import opened_bar
from barkeep.cli.output import print_json, rounded
from barkeep.domain.bottles.containers import container_of
from barkeep.domain.bottles.levels import MeasuredLevel, parse_level


def configure(parser: argparse.ArgumentParser) -> None:
    """Its arguments."""
    parser.add_argument(
        "bottle", metavar="BOTTLE", help="its id, or its maker and name; of several the open one"
    )
    parser.add_argument(
        "level",
        metavar="LEVEL",
        nargs="+",
        help="0.4 (of the bottle), 4/10, 315 ml, 10 oz; 812 g (the bottle on a scale, with what "
        "is in it and without its cap); 11.5 cm (from the table to the surface of the liquid); "
        "of what is counted or kept by weight 4 or 250 g",
    )
    parser.set_defaults(run=run)


def run(arguments: Arguments) -> int:
    """Count one bottle; a positive variance is gone without a pour."""
    with opened_bar(arguments) as bar:
        snapshot = bar.snapshot
        bottle = find_bottle(snapshot, arguments.bottle, rather_open=True)
        container = container_of(bottle, snapshot.knowledge.tree, snapshot.bottles)
        text = " ".join(arguments.level)
        level = parse_level(text, container, snapshot.settings.units)
        (counted,) = bar.inventory.count({bottle.id: level}).value
    if arguments.json:
        print_json(_counted_json(counted, level))
    else:
        print(f"{counted.bottle.product.title}: {counted.sentence}.")
    return 0


def _counted_json(counted: Counted, level: MeasuredLevel) -> dict[str, object]:
    product = counted.bottle.product
    figures = {
        "expected": rounded(counted.expected, 2),
        "counted": rounded(counted.counted, 2),
        "variance": rounded(counted.variance, 2),
        "sigma": rounded(level.sigma, 2),
    }
    poured = product.unit == "ml"  # nothing else has millilitres
    return {
        "bottle": product.title,
        **{f"{name}_ml": figure if poured else None for name, figure in figures.items()},
        **figures,
        "unit": product.unit,
        "method": level.method,
        "flagged": counted.told_apart,
    }
