"""`barkeep shoot log`: what a shoot poured, spilled and left; and what the logs say over time."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import replace
from datetime import date

from barkeep.application.bar import Bar
from barkeep.application.finding import find_shoot
from barkeep.application.shoots import NotFilmedYet, counts, serves_made, spills
from barkeep.cli.arguments import Arguments, argument, command, day, flag, many
from barkeep.cli.bar_source import opened_bar
from barkeep.cli.output import Answer, rounded, table
from barkeep.cli.shoot import bottles_json, bottles_table, made_json, signed
from barkeep.domain.bar.shoots import LoggedBottle, Shoot
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.phrases import counted
from barkeep.domain.shoots.log import (
    BottleVariance,
    LogSheet,
    PouredBeyond,
    not_taken,
    refuse_pours_beyond,
    variances,
    would_be_logged,
)
from barkeep.errors import InvalidField, UserError


class NotEnoughForAll(UserError):
    """A log of serves that take more than there is: why, and what may be written instead."""

    why: str
    says = "{why} Say with --made what was made, or --what-there-is to pour that much."


class ToBeFilmedFirst(UserError):
    """A log of a shoot that lies ahead: why not, and what to say first where it was today."""

    why: str
    shoot_id: int
    today: date
    says = (
        "{why} Filmed today? Then first: "
        'barkeep shoot plan "#{shoot_id}" --state filmed --on {today}'
    )


KEYS = """\
keys of the JSON:
  theme on written
  made     drink serves
  bottles  bottle product unit poured spilled expected counted variance sigma
  not_taken (sentences)
with --variances:
  bottles  bottle product unit shoots poured variance sigma flagged reason"""


@command(
    argument("theme", metavar="THEME", nargs="?", help="its theme, or #ID"),
    argument("--on", type=day, metavar="DAY", help="of several of one theme"),
    many("--made", "NAME=N", "serves really made of a drink (default: those planned)"),
    many("--spill", "BOTTLE=AMOUNT", "what was spilled of a bottle"),
    many("--count", "BOTTLE=LEVEL", "a bottle's level now: 0.4, 4/10, 315 ml, 812 g or 11.5 cm"),
    flag(
        "--what-there-is",
        "of serves that take more than there is of a bottle, pour what there is",
    ),
    flag("--plan-only", "say what would be written, and write nothing"),
    flag("--variances", "list what was found missing over all shoots"),
    description="Everything is written or nothing, and one undo takes all of it back.",
    epilog=KEYS,
)
def run(arguments: Arguments) -> Answer:
    """Log one shoot, or list the variances of all."""
    if arguments.theme is None and not arguments.variances:
        raise InvalidField("theme", "", "name the shoot to log, or ask for --variances")
    with opened_bar(arguments) as bar:
        return _variances(bar.snapshot) if arguments.variances else _log(arguments, bar)


def _log(arguments: Arguments, bar: Bar) -> Answer:
    snapshot, written = bar.snapshot, not arguments.plan_only
    shoot = find_shoot(snapshot, arguments.theme, arguments.on)
    made = serves_made(shoot, arguments.made)
    sheet = LogSheet(made, spills(arguments.spill, snapshot), counts(arguments.count, snapshot))
    unpoured = not_taken(replace(shoot, state="filmed"), snapshot, made)
    if not arguments.what_there_is:
        _refuse_beyond(replace(shoot, state="filmed"), snapshot, made)
    if written:
        shoot = _written(shoot.id or 0, sheet, bar, what_there_is=arguments.what_there_is)
        bottles = shoot.log.bottles if shoot.log else ()
    else:
        bottles = would_be_logged(shoot, snapshot, sheet)
    return Answer(
        lambda: {
            "theme": shoot.theme,
            "on": shoot.on.isoformat(),
            "written": written,
            "made": made_json(shoot, made),
            "bottles": bottles_json(bottles),
            "not_taken": list(unpoured),
        },
        _shown(shoot, bottles, unpoured, written=written),
    )


def _written(shoot_id: int, sheet: LogSheet, bar: Bar, *, what_there_is: bool) -> Shoot:
    try:
        return bar.shoots.log(shoot_id, sheet, what_there_is=what_there_is).value
    except NotFilmedYet as error:
        raise ToBeFilmedFirst(str(error), shoot_id, bar.snapshot.on) from None


def _refuse_beyond(shoot: Shoot, snapshot: Snapshot, made: Sequence[int]) -> None:
    try:
        refuse_pours_beyond(shoot, snapshot, made)
    except PouredBeyond as error:
        raise NotEnoughForAll(str(error)) from None


def _shown(
    shoot: Shoot,
    bottles: tuple[LoggedBottle, ...],
    unpoured: tuple[str, ...],
    *,
    written: bool,
) -> Iterator[str]:
    done = "is logged" if written else "would be logged so; nothing is written"
    yield f"{shoot.theme} on {shoot.on} {done}: {counted(len(bottles), 'bottle')}."
    if bottles:
        yield ""
        yield bottles_table(bottles)
    yield from unpoured


def _variances(snapshot: Snapshot) -> Answer:
    found = variances(snapshot.shoots, snapshot)
    shown = "No shoot has counted a bottle yet."
    if found:
        head = ("bottle", "shoots", "poured", "variance", "", "likely reason")
        shown = table(head, map(_variance_row, found), right="lrrr")
    return Answer(lambda: _variances_json(found), shown)


def _variance_row(each: BottleVariance) -> tuple[str, ...]:
    return (
        each.title,
        str(each.shoots),
        signed(each.poured, each.unit),
        signed(each.variance, each.unit),
        "!" if each.told_apart else "",
        each.reason,
    )


def _variances_json(found: Iterable[BottleVariance]) -> dict[str, object]:
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
