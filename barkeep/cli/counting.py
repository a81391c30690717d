"""`barkeep count`, `tare` and `dasher`: what a scale, an eye and a spoon tell of a bottle."""

from __future__ import annotations

import argparse

from barkeep.application.counting import Counted
from barkeep.application.finding import find_bottle
from barkeep.application.settings import read_dash_ml
from barkeep.cli.arguments import Arguments
from barkeep.cli.bar_source import opened_bar
from barkeep.cli.output import print_json, rounded
from barkeep.domain.amounts.measures import show_volume
from barkeep.domain.bottles.containers import container_of
from barkeep.domain.bottles.levels import MeasuredLevel, parse_level, read_weight_g


def configure_count(parser: argparse.ArgumentParser) -> None:
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
    parser.set_defaults(run=run_count)


def run_count(arguments: Arguments) -> int:
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


def configure_tare(parser: argparse.ArgumentParser) -> None:
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
    parser.set_defaults(run=run_tare)


def run_tare(arguments: Arguments) -> int:
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


USUAL = "usual"


def configure_dasher(parser: argparse.ArgumentParser) -> None:
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
    parser.set_defaults(run=run_dasher)


def run_dasher(arguments: Arguments) -> int:
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
