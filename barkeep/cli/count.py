"""`barkeep count`: write down a measured level and see what is missing."""

from __future__ import annotations

import argparse

from barkeep.application.finding import find_bottle
from barkeep.application.inventory import Counted
from barkeep.cli.arguments import Arguments
from barkeep.cli.bar_source import opened_bar
from barkeep.cli.output import print_json, rounded
from barkeep.domain.levels import parse_level
from barkeep.domain.measures import show_quantity


def configure(parser: argparse.ArgumentParser) -> None:
    """Its arguments."""
    parser.add_argument(
        "bottle", metavar="BOTTLE", help="its id, or its maker and name; of several the open one"
    )
    parser.add_argument(
        "level",
        metavar="LEVEL",
        nargs="+",
        help="0.4 (of the bottle), 4/10, 315 ml, 10 oz, 31 cl; of what is counted or weighed "
        "4 or 250 g",
    )
    parser.set_defaults(run=run)


def run(arguments: Arguments) -> int:
    """Count one bottle; a positive variance is gone without a pour."""
    with opened_bar(arguments) as bar:
        bottle = find_bottle(bar.snapshot, arguments.bottle, rather_open=True)
        product = bottle.product
        text = " ".join(arguments.level)
        level = parse_level(text, product.size, product.unit, product.title)
        (counted,) = bar.inventory.count({bottle.id: level}).value
    if arguments.json:
        print_json(_counted_json(counted))
    else:
        print(_shown(counted))
    return 0


def _counted_json(counted: Counted) -> dict[str, object]:
    product = counted.bottle.product
    # What is not poured has no millilitres.
    suffix = "_ml" if product.unit == "ml" else ""
    answer: dict[str, object] = {
        "bottle": product.title,
        f"expected{suffix}": rounded(counted.expected, 2),
        f"counted{suffix}": rounded(counted.counted, 2),
        f"variance{suffix}": rounded(counted.variance, 2),
    }
    return answer if suffix else {**answer, "unit": product.unit}


def _shown(counted: Counted) -> str:
    product = counted.bottle.product
    expected = show_quantity(counted.expected, product.unit)
    found = show_quantity(counted.counted, product.unit)
    gap = show_quantity(abs(counted.variance), product.unit)
    match rounded(counted.variance, 2) or 0.0:
        case 0.0:
            verdict = "just as expected"
        case variance if variance > 0.0:
            verdict = f"{gap} less than expected"
        case _:
            verdict = f"{gap} more than expected"
    return f"{product.title}: {found}, {verdict} ({expected})."
