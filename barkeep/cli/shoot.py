"""`barkeep shoot`: list, show, plan, check and log what is filmed."""

from __future__ import annotations

import argparse
from collections.abc import Iterator
from datetime import datetime

from barkeep.application.finding import find_shoot
from barkeep.cli import shoot_check, shoot_log, shoot_plan
from barkeep.cli.arguments import Arguments, common_options
from barkeep.cli.bar_source import opened_bar
from barkeep.cli.output import counted, day, print_json, table
from barkeep.cli.shoot_check import SHOOT_KEYS, name_of, shoot_json
from barkeep.domain.amounts.amount import show_number
from barkeep.domain.bar.shoots import STATES, Shoot, ShootDrink, find_shoots
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.shoots.drinks import spec_of
from barkeep.domain.shoots.mise_en_place import Step

LIST_KEYS = f"keys of the JSON:\n  shoots   a shoot each\n\n{SHOOT_KEYS}"


SHOW_KEYS = f"""\
keys of the JSON:
  shoot          the shoot
  mise_en_place  key when text done
with --run-sheet: theme text; with --publish: theme text markdown

{SHOOT_KEYS}"""


def configure(parser: argparse.ArgumentParser) -> None:
    """Its arguments."""
    what = parser.add_subparsers(dest="what", metavar="WHAT", required=True)
    common = [common_options()]
    raw = argparse.RawDescriptionHelpFormatter
    listing = what.add_parser(
        "list",
        parents=common,
        help="list the shoots, the latest first, or those that some words find",
        epilog=LIST_KEYS,
        formatter_class=raw,
    )
    listing.add_argument(
        "words",
        metavar="WORDS",
        nargs="*",
        help="words of the theme, a drink, the notes or a bottle (default: everything)",
    )
    listing.add_argument("--state", choices=STATES, help="only those in this state")
    listing.set_defaults(run=run_list)
    showing = what.add_parser(
        "show",
        parents=common,
        help="show one shoot: drinks, what is poured, what to have ready, the log",
        epilog=SHOW_KEYS,
        formatter_class=raw,
    )
    add_which(showing)
    as_text = showing.add_mutually_exclusive_group()
    as_text.add_argument("--run-sheet", action="store_true", help="print the run sheet as text")
    as_text.add_argument("--publish", action="store_true", help="print what is put beside the film")
    showing.set_defaults(run=run_show)
    shoot_plan.configure(what, common)
    shoot_check.configure(what, common)
    shoot_log.configure(what, common)


def add_which(parser: argparse.ArgumentParser) -> None:
    """Which shoot is meant."""
    parser.add_argument(
        "theme", metavar="THEME", help="its theme, how that begins, words of it, or #ID"
    )
    parser.add_argument(
        "--on",
        type=day,
        metavar="DAY",
        help="of several of one theme the one on this day (default: the nearest not yet logged)",
    )


def run_list(arguments: Arguments) -> int:
    """List the shoots that hold all the words."""
    with opened_bar(arguments) as bar:
        snapshot = bar.snapshot
    found = find_shoots(snapshot.shoots, " ".join(arguments.words), snapshot.title_by_id)
    shown = [each for each in found if arguments.state in (None, each.state)]
    if arguments.json:
        print_json({"shoots": [shoot_json(each, snapshot) for each in shown]})
    elif not shown:
        print("No shoot is found by that." if snapshot.shoots else "No shoot is planned yet.")
    else:
        print(table(("id", "on", "theme", "state", "drinks"), map(_row, shown), right="r"))
    return 0


def run_show(arguments: Arguments) -> int:
    """Show one shoot, its run sheet or what is published with it."""
    with opened_bar(arguments) as bar:
        snapshot = bar.snapshot
    shoot = find_shoot(snapshot, arguments.theme, arguments.on)
    if arguments.run_sheet or arguments.publish:
        text = _run_sheet(shoot, snapshot) if arguments.run_sheet else _publish(shoot, snapshot)
        print_json(text) if arguments.json else print(text["text"].rstrip("\n"))
        return 0
    steps = shoot_plan.steps_of(shoot, snapshot)
    if arguments.json:
        ready = [_step_json(each, shoot) for each in steps]
        print_json({"shoot": shoot_json(shoot, snapshot), "mise_en_place": ready})
    else:
        print("\n".join(_shown(shoot, steps, snapshot)))
    return 0


def _run_sheet(shoot: Shoot, snapshot: Snapshot) -> dict[str, str]:
    from barkeep.application.publishing import run_sheet_of  # few ask for either of the two
    from barkeep.documents.printed.run_sheet import run_sheet_text

    return {"theme": shoot.theme, "text": run_sheet_text(run_sheet_of(shoot, snapshot))}


def _publish(shoot: Shoot, snapshot: Snapshot) -> dict[str, str]:
    from barkeep.application.publishing import publish_text_of

    told = publish_text_of(shoot, snapshot)
    return {"theme": shoot.theme, "text": told.text, "markdown": told.markdown}


def _row(shoot: Shoot) -> tuple[str, ...]:
    return (f"#{shoot.id}", str(shoot.on), shoot.theme, shoot.state, ", ".join(shoot.names))


def _step_json(step: Step, shoot: Shoot) -> dict[str, object]:
    done = step.key in shoot.ticked
    return {"key": step.key, "when": step.when, "text": step.text, "done": done}


def _shown(shoot: Shoot, steps: tuple[Step, ...], snapshot: Snapshot) -> Iterator[str]:
    starts = f" at {shoot.starts:%H:%M}" if shoot.starts else ""
    yield f"{shoot.theme} (#{shoot.id}), {shoot.on}{starts}, {shoot.state}"
    yield ""
    if shoot.drinks:
        head = ("", "drink", "tests", "camera", "tasting", "poured with")
        rows = [_drink_row(*each, snapshot) for each in enumerate(shoot.drinks, 1)]
        yield table(head, rows, right="rlrrr")
    else:
        yield "No drink is planned yet."
    if shoot.notes:
        yield f"\n{shoot.notes}"
    if shoot.log is not None:
        yield ""
        yield from shoot_log.shown(shoot, shoot.log)
    elif steps:
        yield "\nMise en place"
        yield from _steps_shown(steps, shoot)


def _drink_row(number: int, drink: ShootDrink, snapshot: Snapshot) -> tuple[str, ...]:
    serves = drink.serves
    poured = "; ".join(_poured(drink, snapshot))
    if spec_of(drink, snapshot) is None:
        poured = "its spec was removed"
    counts = (str(each) for each in (serves.tests, serves.camera, serves.tasting))
    return (f"{number}.", drink.name, *counts, poured)


def _poured(drink: ShootDrink, snapshot: Snapshot) -> Iterator[str]:
    for each in drink.chosen:
        title = snapshot.title_by_id.get(each.bottle_id or 0)
        thing = title or name_of(each.ingredient, snapshot)
        times = show_number(each.ratio, fractions=False)
        much = "" if abs(each.ratio - 1.0) < 1e-9 else f" ({times} times the amount)"
        yield f"{thing} for {name_of(each.wanted, snapshot)}{much}"


def _steps_shown(steps: tuple[Step, ...], shoot: Shoot) -> Iterator[str]:
    starts = datetime.combine(shoot.on, shoot.starts) if shoot.starts else None
    when = ""
    for number, step in enumerate(steps, 1):
        said = step.said_when(starts)
        if said != when:
            when = said
            yield f"{when}:"
        done = "x" if step.key in shoot.ticked else " "
        yield f"  [{done}] {number}. {step.text}"
    left = sum(step.key not in shoot.ticked for step in steps)
    yield f"{counted(left, 'step')} to do; --tick NUMBER ticks one off."
