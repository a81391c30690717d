"""`barkeep shoot log`: what a shoot poured, spilled and left; and what the logs say over time."""

from __future__ import annotations

import argparse
from collections.abc import Iterable, Iterator
from typing import Any

from barkeep.application.finding import find_shoot
from barkeep.application.shoots import counts, serves_made, spills
from barkeep.cli.arguments import Arguments
from barkeep.cli.bar_source import opened_bar
from barkeep.cli.output import counted, day, print_json, table
from barkeep.cli.shoot_check import bottles_json, made_json, variances_json
from barkeep.domain.amounts.measures import show_quantity
from barkeep.domain.amounts.units import Unit
from barkeep.domain.bar.shoots import LoggedBottle, Shoot, ShootLog
from barkeep.domain.shoots.log import BottleVariance, LogSheet, variances, would_be_logged
from barkeep.errors import InvalidField

KEYS = """\
keys of the JSON:
  theme on written
  made     drink serves
  bottles  bottle product unit poured spilled expected counted variance sigma
with --variances:
  bottles  bottle product unit shoots poured variance sigma flagged reason"""


def configure(what: Any, common: list[argparse.ArgumentParser]) -> None:
    """Its arguments. `what` is argparse's own action, which has no public type."""
    parser = what.add_parser(
        "log",
        parents=common,
        help="pour what a shoot took, with spills and counts, in one step",
        description="Everything is written or nothing, and one undo takes all of it back.",
        epilog=KEYS,
        formatter_class=argparse.RawDescriptionHelpFormatter,
    )
    parser.add_argument("theme", metavar="THEME", nargs="?", help="its theme, or #ID")
    parser.add_argument("--on", type=day, metavar="DAY", help="of several of one theme")
    for option, metavar, told in (
        ("--made", "NAME=N", "serves really made of a drink (default: those planned)"),
        ("--spill", "BOTTLE=AMOUNT", "what was spilled of a bottle"),
        ("--count", "BOTTLE=LEVEL", "a bottle's level now: 0.4, 4/10, 315 ml, 812 g or 11.5 cm"),
    ):
        parser.add_argument(
            option, action="append", default=[], metavar=metavar, help=f"{told}; may be given again"
        )
    parser.add_argument(
        "--plan-only", action="store_true", help="say what would be written, and write nothing"
    )
    parser.add_argument(
        "--variances", action="store_true", help="list what was found missing over all shoots"
    )
    parser.set_defaults(run=run)


def run(arguments: Arguments) -> int:
    """Log one shoot, or list the variances of all."""
    if arguments.variances:
        return _run_variances(arguments)
    if arguments.theme is None:
        raise InvalidField("theme", "", "name the shoot to log, or ask for --variances")
    with opened_bar(arguments) as bar:
        snapshot = bar.snapshot
        shoot = find_shoot(snapshot, arguments.theme, arguments.on)
        made = serves_made(shoot, arguments.made)
        sheet = LogSheet(made, spills(arguments.spill, snapshot), counts(arguments.count, snapshot))
        if arguments.plan_only:
            bottles = would_be_logged(shoot, snapshot, sheet)
        else:
            shoot = bar.shoots.log(shoot.id or 0, sheet).value
            bottles = shoot.log.bottles if shoot.log else ()
    if arguments.json:
        print_json(
            {
                "theme": shoot.theme,
                "on": shoot.on.isoformat(),
                "written": not arguments.plan_only,
                "made": made_json(shoot, made),
                "bottles": bottles_json(bottles),
            }
        )
    else:
        print("\n".join(_answer(shoot, bottles, written=not arguments.plan_only)))
    return 0


def shown(shoot: Shoot, log: ShootLog) -> Iterator[str]:
    """A shoot's log for a person."""
    made = ", ".join(f"{count} × {name}" for name, count in zip(shoot.names, log.made, strict=True))
    yield f"Logged {log.at:%Y-%m-%d %H:%M}: {made or 'no drink'}"
    if log.bottles:
        yield ""
        yield _table(log.bottles)


def _answer(shoot: Shoot, bottles: tuple[LoggedBottle, ...], *, written: bool) -> Iterator[str]:
    done = "is logged" if written else "would be logged so; nothing is written"
    yield f"{shoot.theme} on {shoot.on} {done}: {counted(len(bottles), 'bottle')}."
    if bottles:
        yield ""
        yield _table(bottles)


def _table(bottles: Iterable[LoggedBottle]) -> str:
    head = ("bottle", "poured", "spilled", "expected", "counted", "variance")
    return table(head, map(_row, bottles), right="lrrrrr")


def _row(each: LoggedBottle) -> tuple[str, ...]:
    return (
        each.title,
        _amount(each.poured or None, each.unit),
        _amount(each.spilled or None, each.unit),
        _amount(each.expected, each.unit),
        _amount(each.counted, each.unit),
        _amount(each.variance, each.unit),
    )


def _amount(amount: float | None, unit: Unit) -> str:
    if amount is None:
        return ""
    shown = show_quantity(abs(amount), unit)
    return f"-{shown}" if amount < 0.0 and shown != show_quantity(0.0, unit) else shown


def _run_variances(arguments: Arguments) -> int:
    with opened_bar(arguments) as bar:
        snapshot = bar.snapshot
    found = variances(snapshot.shoots, snapshot)
    if arguments.json:
        print_json(variances_json(found))
    elif not found:
        print("No shoot has counted a bottle yet.")
    else:
        head = ("bottle", "shoots", "poured", "variance", "", "likely reason")
        print(table(head, map(_variance_row, found), right="lrrr"))
    return 0


def _variance_row(each: BottleVariance) -> tuple[str, ...]:
    return (
        each.title,
        str(each.shoots),
        _amount(each.poured, each.unit),
        _amount(each.variance, each.unit),
        "!" if each.told_apart else "",
        each.reason,
    )
