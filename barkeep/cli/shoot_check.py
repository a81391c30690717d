"""`barkeep shoot check`: whether the bar can pour a whole shoot."""

from __future__ import annotations

import argparse
from collections.abc import Iterator
from typing import Any

from barkeep.application.finding import find_shoot
from barkeep.cli.arguments import Arguments
from barkeep.cli.bar_source import opened_bar
from barkeep.cli.days import day
from barkeep.cli.output import counted, print_json
from barkeep.cli.shoot_json import CHECK_KEYS, check_json, how_to_use
from barkeep.cli.table import table
from barkeep.domain.amounts.measures import show_quantity
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.shoots.plan import ShootPlan, not_counted, plan, shortfall


def configure(what: Any, common: list[argparse.ArgumentParser]) -> None:
    """Its arguments. `what` is argparse's own action, which has no public type."""
    parser = what.add_parser(
        "check",
        parents=common,
        help="whether every serve can be poured, what runs out, and what would save it",
        epilog=CHECK_KEYS,
        formatter_class=argparse.RawDescriptionHelpFormatter,
    )
    parser.add_argument("theme", metavar="THEME", help="its theme, how that begins, or #ID")
    parser.add_argument("--on", type=day, metavar="DAY", help="of several of one theme")
    parser.add_argument(
        "--within",
        choices=("exact", "close", "loose"),
        default="exact",
        help="the least closeness of stand-ins nobody chose: exact (none, the default), "
        "close (0.8), loose (0.6)",
    )
    parser.set_defaults(run=run)


def run(arguments: Arguments) -> int:
    """Answer; a *no* is an answer too."""
    with opened_bar(arguments) as bar:
        snapshot = bar.snapshot
    shoot = find_shoot(snapshot, arguments.theme, arguments.on)
    answer = plan(shoot, snapshot, arguments.within)
    if arguments.json:
        print_json(check_json(answer, snapshot))
    else:
        print("\n".join(_shown(answer, snapshot)))
    return 0


def _shown(answer: ShootPlan, snapshot: Snapshot) -> Iterator[str]:
    yield f"{answer.shoot.theme}, {answer.on}"
    yield answer.verdict
    yield from (shortfall(each, snapshot) for each in answer.menu.lacking)
    dropped = zip(answer.menu.orders, answer.menu.drop, strict=True)
    fewer = [f"{counted(count, 'serve')} of {order.spec.name}" for order, count in dropped if count]
    if fewer:
        yield f"To pour the rest as planned, leave out {' and '.join(fewer)}."
    for bottle in answer.past:
        yield f"{bottle.product.title} is past its date of {bottle.use_by} by then; not counted on."
    yield from not_counted(answer.menu.orders, snapshot)
    for rescue in answer.rescues:
        yield ""
        yield f'--use "{how_to_use(rescue, answer.shoot, snapshot)}"  ({rescue.closeness:.2f})'
        yield f"  {rescue.why}"
    if answer.menu.draws:
        rows = [
            (each.bottle.product.title, show_quantity(each.amount, unit), show_quantity(left, unit))
            for each in answer.menu.draws
            for unit, left in ((each.bottle.product.unit, each.bottle.level.amount),)
        ]
        yield ""
        yield table(("bottle", "takes", "of"), rows, right="lrr")
