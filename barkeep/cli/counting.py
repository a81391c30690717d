"""`barkeep count`, `tare` and `dasher`: what a scale, an eye and a spoon tell of a bottle."""

from __future__ import annotations

from barkeep.application.bar import Bar
from barkeep.application.counting import Counted
from barkeep.application.finding import find_bottle
from barkeep.application.settings import read_dash_ml
from barkeep.cli.arguments import OPEN_BOTTLE, Arguments, argument, command, flag
from barkeep.cli.bar_source import in_bar, opened_bar
from barkeep.cli.output import Answer, rounded
from barkeep.domain.amounts.measures import show_volume
from barkeep.domain.bottles.containers import container_of
from barkeep.domain.bottles.levels import MeasuredLevel, parse_level, read_weight_g


@command(
    OPEN_BOTTLE,
    argument(
        "level",
        metavar="LEVEL",
        nargs="+",
        help="0.4 (of the bottle), 4/10, 315 ml, 10 oz; 812 g (the bottle on a scale, with what "
        "is in it and without its cap); 11.5 cm (from the table to the surface of the liquid); "
        "of what is counted or kept by weight 4 or 250 g",
    ),
)
@in_bar
def count(arguments: Arguments, bar: Bar) -> Answer:
    """Count one bottle; a positive variance is gone without a pour."""
    snapshot = bar.snapshot
    bottle = find_bottle(snapshot, arguments.bottle, rather_open=True)
    container = container_of(bottle, snapshot.knowledge.tree, snapshot.bottles)
    level = parse_level(" ".join(arguments.level), container, snapshot.settings.units)
    (counted,) = bar.counting.count({bottle.id: level}).value
    said = f"{counted.bottle.product.title}: {counted.sentence}."
    return Answer(lambda: _counted_json(counted, level), said)


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


@command(
    OPEN_BOTTLE,
    argument(
        "weight",
        metavar="WEIGHT",
        nargs="+",
        help="what the empty bottle weighs without its cap, such as 520 g",
    ),
    flag(
        "--full",
        "it was full on the scale: what it should hold is taken off; cream liqueurs and the "
        "like need both weights, to learn how dense they are",
    ),
)
def tare(arguments: Arguments) -> Answer:
    """Take down one weighing and say what is known from it."""
    weight_g = read_weight_g(" ".join(arguments.weight))
    with opened_bar(arguments) as bar:
        bottle = find_bottle(bar.snapshot, arguments.bottle, rather_open=True)
        weighed = bar.counting.learn_tare(bottle.id, weight_g, arguments.full).value
    empty, product = weighed.bottle.tare, weighed.bottle.product
    return Answer(
        lambda: {
            "bottle": product.title,
            "tare_g": rounded(empty.weight_g, 2) if empty else None,
            "tare_sigma_g": rounded(empty.sigma_g, 2) if empty else None,
            "density_g_per_ml": rounded(product.density_g_per_ml, 4),
            "warning": weighed.warning or None,
        },
        weighed.sentence,
    )


USUAL = "usual"


@command(
    OPEN_BOTTLE,
    argument(
        "dash",
        metavar="DASH",
        nargs="+",
        help=f"what one dash from it comes to, such as 0.3 ml (count the dashes to 10 ml); "
        f"{USUAL} forgets it",
    ),
)
@in_bar
def dasher(arguments: Arguments, bar: Bar) -> Answer:
    """Set or forget one bottle's dasher."""
    text, units = " ".join(arguments.dash), bar.snapshot.settings.units
    bottle = find_bottle(bar.snapshot, arguments.bottle, rather_open=True)
    dash_ml = None if text == USUAL else read_dash_ml(text, units)
    bottle = bar.counting.set_dasher(bottle.id, dash_ml).value
    is_so = f"what the bar means by a dash, {show_volume(units.dash_ml)}"
    if bottle.dash_ml is not None:
        is_so = show_volume(bottle.dash_ml)
    title = bottle.product.title
    return Answer(
        lambda: {"bottle": title, "dash_ml": rounded(bottle.dash_ml, 4)},
        f"A dash of {title} is {is_so}.",
    )
