"""`barkeep shoot check`: whether the bar can pour a whole shoot; and shoots as JSON."""

from __future__ import annotations

import argparse
from collections.abc import Iterable, Iterator, Sequence
from typing import Any

from barkeep.application.finding import find_shoot
from barkeep.cli.arguments import Arguments
from barkeep.cli.bar_source import opened_bar
from barkeep.cli.output import counted, day, iso, print_json, rounded, table
from barkeep.domain.amounts.measures import show_quantity
from barkeep.domain.bar.shoots import ChosenPour, LoggedBottle, Shoot, ShootDrink, ShootLog
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.pouring.supply import Draw
from barkeep.domain.shoots.drinks import spec_of
from barkeep.domain.shoots.log import BottleVariance
from barkeep.domain.shoots.menu import MenuLine
from barkeep.domain.shoots.plan import Rescue, ShootPlan, not_counted, plan, shortfall

SHOOT_KEYS = """\
a shoot in JSON:
  id theme on starts state notes ticked
  drinks   name tests camera tasting removed
           chosen   wanted ingredient ratio bottle product
  log      null, or at, made (drink serves) and bottles (bottle product unit
           poured spilled expected counted variance sigma)"""


CHECK_KEYS = """\
keys of the JSON:
  theme on possible verdict removed
  short    drink ingredient short unit serves why
  drop     drink serves
  rescues  drink wanted ingredient ratio closeness why use
  draws    bottle product amount unit
  past     bottle product use_by"""


def shoot_json(shoot: Shoot, snapshot: Snapshot) -> dict[str, object]:
    """One shoot with its drinks and its log."""
    return {
        "id": shoot.id,
        "theme": shoot.theme,
        "on": iso(shoot.on),
        "starts": shoot.starts.isoformat("minutes") if shoot.starts else None,
        "state": shoot.state,
        "notes": shoot.notes,
        "ticked": sorted(shoot.ticked),
        "drinks": [_drink(each, snapshot) for each in shoot.drinks],
        "log": None if shoot.log is None else _log(shoot.log, shoot),
    }


def check_json(plan: ShootPlan, snapshot: Snapshot) -> dict[str, object]:
    """The answer whether a shoot can be poured."""
    menu = plan.menu
    dropped = zip(menu.orders, menu.drop, strict=True)
    return {
        "theme": plan.shoot.theme,
        "on": iso(plan.on),
        "possible": plan.possible,
        "verdict": plan.verdict,
        "removed": list(plan.removed),
        "short": [_short(each, snapshot) for each in menu.lacking],
        "drop": [{"drink": order.spec.name, "serves": count} for order, count in dropped if count],
        "rescues": [_rescue(each, plan.shoot, snapshot) for each in plan.rescues],
        "draws": [_draw(each) for each in menu.draws],
        "past": [
            {"bottle": each.id, "product": each.product.title, "use_by": iso(each.use_by)}
            for each in plan.past
        ],
        "not_counted": list(not_counted(menu.orders, snapshot)),
    }


def bottles_json(bottles: Iterable[LoggedBottle]) -> list[dict[str, object]]:
    """What a log says of each bottle, in its unit."""
    return [
        {
            "bottle": each.bottle_id,
            "product": each.title,
            "unit": each.unit,
            "poured": rounded(each.poured, 2),
            "spilled": rounded(each.spilled, 2),
            "expected": rounded(each.expected, 2),
            "counted": rounded(each.counted, 2),
            "variance": rounded(each.variance, 2),
            "sigma": rounded(each.sigma, 2),
        }
        for each in bottles
    ]


def variances_json(found: Iterable[BottleVariance]) -> dict[str, object]:
    """What the logs say of each bottle over several shoots."""
    return {
        "bottles": [
            {
                "bottle": each.bottle_id,
                "product": each.title,
                "unit": each.unit,
                "shoots": each.shoots,
                "poured": rounded(each.poured, 2),
                "variance": rounded(each.variance, 2),
                "sigma": rounded(each.sigma, 2),
                "flagged": each.told_apart,
                "reason": each.reason,
            }
            for each in found
        ]
    }


def made_json(shoot: Shoot, made: Sequence[int]) -> list[dict[str, object]]:
    """The serves made of each drink."""
    pairs = zip(shoot.names, made, strict=True)
    return [{"drink": name, "serves": count} for name, count in pairs]


def _drink(drink: ShootDrink, snapshot: Snapshot) -> dict[str, object]:
    return {
        "name": drink.name,
        "tests": drink.serves.tests,
        "camera": drink.serves.camera,
        "tasting": drink.serves.tasting,
        "removed": spec_of(drink, snapshot) is None,
        "chosen": [_chosen(each, snapshot) for each in drink.chosen],
    }


def _chosen(chosen: ChosenPour, snapshot: Snapshot) -> dict[str, object]:
    return {
        "wanted": name_of(chosen.wanted, snapshot),
        "ingredient": name_of(chosen.ingredient, snapshot),
        "ratio": rounded(chosen.ratio, 4),
        "bottle": chosen.bottle_id,
        "product": snapshot.title_by_id.get(chosen.bottle_id or 0),
    }


def name_of(key: str, snapshot: Snapshot) -> str:
    """An ingredient's name; of one that is gone its key."""
    tree = snapshot.knowledge.tree
    return tree.name(key) if key in tree else key


def _log(log: ShootLog, shoot: Shoot) -> dict[str, object]:
    return {
        "at": log.at.isoformat(timespec="seconds"),
        "made": made_json(shoot, log.made),
        "bottles": bottles_json(log.bottles),
    }


def _short(line: MenuLine, snapshot: Snapshot) -> dict[str, object]:
    tree, key = snapshot.knowledge.tree, line.line.ingredient
    return {
        "drink": line.order.spec.name,
        "ingredient": tree.name(key),
        "short": rounded(line.short, 2),
        "unit": tree[key].unit,
        "serves": rounded(line.unmet, 2),
        "why": shortfall(line, snapshot),
    }


def _rescue(rescue: Rescue, shoot: Shoot, snapshot: Snapshot) -> dict[str, object]:
    tree = snapshot.knowledge.tree
    return {
        "drink": rescue.name,
        "wanted": tree.name(rescue.wanted),
        "ingredient": tree.name(rescue.chosen.ingredient),
        "ratio": rounded(rescue.chosen.ratio, 4),
        "closeness": rounded(rescue.closeness, 4),
        "why": rescue.why,
        "use": how_to_use(rescue, shoot, snapshot),
    }


def how_to_use(rescue: Rescue, shoot: Shoot, snapshot: Snapshot) -> str:
    """What to write after `--use` to take it: the line as its spec has it, and the stand-in."""
    spec = spec_of(shoot.drinks[rescue.drink], snapshot)
    asked = spec.lines[rescue.chosen.line].ingredient if spec else rescue.wanted
    tree = snapshot.knowledge.tree
    return f"{rescue.name}: {tree.in_sentence(asked)}={tree.in_sentence(rescue.chosen.ingredient)}"


def _draw(draw: Draw) -> dict[str, object]:
    return {
        "bottle": draw.bottle.id,
        "product": draw.bottle.product.title,
        "amount": rounded(draw.amount, 2),
        "unit": draw.bottle.product.unit,
    }


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
