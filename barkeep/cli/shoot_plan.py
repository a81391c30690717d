"""`barkeep shoot plan`: write a shoot down, or change one."""

from __future__ import annotations

import argparse
from dataclasses import replace
from datetime import date, time

from barkeep.application.bar import Bar
from barkeep.application.finding import find_shoot, find_spec, nearest_names, shoots_called
from barkeep.application.shoots import (
    HOW_SERVES,
    FilmedAhead,
    with_choice,
    with_drink,
    with_drink_at,
    with_line_as_written,
    without_drink,
)
from barkeep.cli.arguments import Arguments, argument, command, day, flag, many, one_of
from barkeep.cli.bar_source import in_bar
from barkeep.cli.output import Answer
from barkeep.cli.shoot import SHOOT_KEYS, shoot_json, steps_of
from barkeep.domain.bar.shoots import STATES, Shoot, repeated
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.phrases import counted
from barkeep.domain.shoots.mise_en_place import Step
from barkeep.domain.shoots.running_order import next_shoot
from barkeep.errors import InvalidField, UnknownName, UserError

HOW = """\
A theme that is not there yet is a new shoot and needs its day. Of one that is
there everything given is changed, in one step that undo takes back; of several
of one theme it is the nearest not yet logged, else name it by its #ID. Where
all of a theme are logged, a day makes a new one."""


class NewShootWithoutDay(UnknownName):
    """A theme that no shoot has, and no day to make a new one of it."""

    def __str__(self) -> str:
        return f"{UnknownName.__str__(self)} A new one needs its day: --on 2026-03-31."


class FilmedTodayPerhaps(UserError):
    """A shoot that is called filmed on a day to come: why not, and the likely answer."""

    why: str
    same: str
    today: date
    says = "{why} Filmed today? Say {same} with --on {today}."


class NoShootAhead(UserError):
    """Drinks for the next shoot, where none is to be filmed."""

    says = (
        "No shoot is to be filmed: name one with --to, "
        "or write one down with barkeep shoot plan THEME --on DAY."
    )


def _clock(text: str) -> time:
    try:
        return time.fromisoformat(text).replace(second=0, microsecond=0, tzinfo=None)
    except ValueError:
        raise argparse.ArgumentTypeError(f"“{text}” is not a time such as 18:30") from None


@command(
    argument("theme", metavar="THEME", help="its theme, or #ID of one that is there"),
    argument("--on", type=day, metavar="DAY", help="the day, such as 2026-03-31"),
    argument("--at", type=_clock, metavar="HH:MM", help="when it starts"),
    many("--drink", "NAME[=1+1+2]", f"add a drink or change its serves: {HOW_SERVES}"),
    many("--drop", "NAME", "take a drink out"),
    many("--move", "NAME=PLACE", "put a drink at a place of the running order, from 1"),
    many(
        "--use",
        '"DRINK: WANTED=INSTEAD"',
        "pour a stand-in or a bottle of yours for a line, by the ratio of the stand-in graph",
    ),
    many("--as-written", '"DRINK: WANTED"', "pour a line as its spec says again"),
    many("--tick", "KEY", "tick off a step of the mise en place, by number or key"),
    many("--untick", "KEY", "take such a tick back"),
    argument("--notes", metavar="TEXT", help="what else is to be known"),
    argument("--state", choices=STATES[:-1], help="how far it is"),
    one_of(
        flag("--repeat", "a new shoot from that one (default: today)"),
        flag("--remove", "take it away; the ledger stays as it is"),
    ),
    description=HOW,
    epilog=f"keys of the JSON:\n  shoot    the shoot\n\n{SHOOT_KEYS}",
)
@in_bar
def run(arguments: Arguments, bar: Bar) -> Answer:
    """Add, change, repeat or remove one shoot."""
    try:
        shoot, sentence = _done(arguments, bar)
    except FilmedAhead as error:
        raise FilmedTodayPerhaps(str(error), _the_same(error.shoot_id), bar.snapshot.on) from None
    snapshot = bar.snapshot
    return Answer(lambda: {"shoot": shoot_json(shoot, snapshot)}, sentence)


@command(
    argument("names", metavar="NAME", nargs="+", help="a spec of yours or a classic"),
    argument("--to", metavar="THEME", help="its theme, or #ID (default: the next to be filmed)"),
    argument("--on", type=day, metavar="DAY", help="of several of one theme the one on this day"),
    epilog=f"keys of the JSON:\n  shoot    the shoot\n  added, there  names\n\n{SHOOT_KEYS}",
)
@in_bar
def add(arguments: Arguments, bar: Bar) -> Answer:
    """Put drinks at the end of a shoot's running order; what is there keeps its place."""
    specs = [find_spec(bar.snapshot, name) for name in arguments.names]
    shoot = _added_to(arguments, bar.snapshot)
    done = bar.shoots.add_drinks(shoot.id or 0, specs).value
    snapshot = bar.snapshot
    said = f"{done.in_words} (#{done.shoot.id}, {done.shoot.on})."
    return Answer(
        lambda: {
            "shoot": shoot_json(done.shoot, snapshot),
            "added": list(done.added),
            "there": list(done.there),
        },
        said,
    )


def _added_to(arguments: Arguments, snapshot: Snapshot) -> Shoot:
    """The shoot that is named, or the next. Raises what `find_shoot` raises, and `NoShootAhead`."""
    if arguments.to is not None:
        return find_shoot(snapshot, arguments.to, arguments.on)
    that_day = [each for each in snapshot.shoots if arguments.on in (None, each.on)]
    found = next_shoot(that_day, snapshot.on)
    if found is None:
        raise NoShootAhead
    return found


def _done(arguments: Arguments, bar: Bar) -> tuple[Shoot, str]:
    snapshot = bar.snapshot
    if arguments.remove:
        found = find_shoot(snapshot, arguments.theme, arguments.on)
        shoot = bar.shoots.remove(found.id or 0).value
        return shoot, f"{shoot.theme} on {shoot.on} is removed."
    if arguments.repeat:
        again = repeated(find_shoot(snapshot, arguments.theme), arguments.on or snapshot.on)
        shoot = bar.shoots.add(changed(again, arguments, snapshot)).value
        return shoot, f"{_said(shoot)} is planned again."
    found_or_none = _meant(arguments.theme, arguments.on, snapshot)
    if found_or_none is not None:
        wanted = changed(found_or_none, arguments, snapshot)
        shoot = bar.shoots.replace(wanted, found_or_none).value
        return shoot, f"{_said(shoot)} is changed."
    new = Shoot(None, arguments.theme, arguments.on)
    shoot = bar.shoots.add(changed(new, arguments, snapshot)).value
    return shoot, f"{_said(shoot)} is written down."


def _meant(theme: str, on: date | None, snapshot: Snapshot) -> Shoot | None:
    """The shoot to change; None for a new one. Raises `UnknownName` where that has no day."""
    called = shoots_called(snapshot, theme)
    by_id = theme.strip().startswith("#")
    open_ones = [each for each in called if each.log is None]
    if by_id or open_ones or (called and on is None):
        that_day = on if len(open_ones) > 1 else None
        return find_shoot(snapshot, theme, that_day)
    if on is None:
        names = nearest_names(theme, (each.theme for each in snapshot.shoots))
        raise NewShootWithoutDay("shoot", theme, names)
    return None


def changed(shoot: Shoot, arguments: Arguments, snapshot: Snapshot) -> Shoot:
    """The shoot with everything done to it that was written."""
    given = {"on": arguments.on, "starts": arguments.at, "state": arguments.state}
    given["notes"] = arguments.notes
    shoot = replace(shoot, **{key: each for key, each in given.items() if each is not None})
    for name in arguments.drop:
        shoot = without_drink(shoot, name)
    for text in arguments.drink:
        shoot = with_drink(shoot, text, snapshot)
    for text in arguments.move:
        shoot = with_drink_at(shoot, text)
    for text in arguments.as_written:
        shoot = with_line_as_written(shoot, text, snapshot)
    for text in arguments.use:
        shoot = with_choice(shoot, text, snapshot)
    if not (arguments.tick or arguments.untick):
        return shoot
    steps = steps_of(shoot, snapshot)
    ticked = shoot.ticked | {_key(each, shoot, steps) for each in arguments.tick}
    return replace(shoot, ticked=ticked - {_key(each, shoot, steps) for each in arguments.untick})


def _key(text: str, shoot: Shoot, steps: tuple[Step, ...]) -> str:
    """The key of the step of this number or key; a tick may outlive its step."""
    wanted = text.strip()
    keys = [each.key for each in steps]
    if wanted in keys or wanted in shoot.ticked:
        return wanted
    number = wanted.removeprefix("#")
    if number.isascii() and number.isdecimal() and 1 <= int(number[:6]) <= len(keys):
        return keys[int(number[:6]) - 1]
    if not keys:
        raise InvalidField("step", text, f"{shoot.theme} has nothing to make ready")
    raise UnknownName("step", text, nearest_names(text, keys))


def _the_same(shoot_id: int | None) -> str:
    """By its #ID: of several of one theme a day would name another."""
    return "the same" if shoot_id is None else f"the same of “#{shoot_id}”"


def _said(shoot: Shoot) -> str:
    return f"{shoot.theme} (#{shoot.id}) on {shoot.on} with {counted(len(shoot.drinks), 'drink')}"
