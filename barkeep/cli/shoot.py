"""`barkeep shoot list`, `show` and `check`; and shoots as JSON, with stable keys."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from datetime import date, datetime

from barkeep.application.bar import Bar
from barkeep.application.finding import find_shoot
from barkeep.cli.arguments import Arguments, argument, command, day, flag, one_of
from barkeep.cli.bar_source import in_bar
from barkeep.cli.on_paper import ON_PAPER, of_snapshot
from barkeep.cli.output import Answer, assumed_json, iso, rounded, table
from barkeep.domain.amounts.amount import show_number
from barkeep.domain.amounts.measures import show_quantity
from barkeep.domain.amounts.units import Unit
from barkeep.domain.bar.shoots import (
    STATES,
    ChosenPour,
    LoggedBottle,
    Shoot,
    ShootDrink,
    ShootLog,
    find_shoots,
)
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.buying.for_shoot import stops_for
from barkeep.domain.drink.costs import cost_in_words, cost_of_draws
from barkeep.domain.phrases import counted
from barkeep.domain.pouring.supply import Draw
from barkeep.domain.shoots.drinks import orders_of, spec_of
from barkeep.domain.shoots.log import not_taken_as_planned
from barkeep.domain.shoots.menu import MenuLine
from barkeep.domain.shoots.mise_en_place import MiseEnPlace, Step, mise_en_place
from barkeep.domain.shoots.plan import (
    Rescue,
    ShootPlan,
    as_of,
    asked_of_bottles,
    assumed,
    not_counted,
    past_by_then,
    plan,
    shortfall,
)
from barkeep.domain.shoots.stops import Stop, StopLine, StopState

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
  short    drink ingredient as_written short unit serves why
  drop     drink serves
  rescues  drink wanted ingredient ratio closeness why use
  draws    bottle product amount unit
  past     bottle product use_by
  not_counted, asks  sentences
  assumed  drink line taken
  cost     of what is poured, null where a price is not known; priced unpriced"""


LIST_KEYS = f"keys of the JSON:\n  shoots   a shoot each\n\n{SHOOT_KEYS}"


SHOW_KEYS = f"""\
keys of the JSON:
  shoot          the shoot
  stops          key state (done, next, later, not needed) why on, idea to count
  mise_en_place  key when text done
with --run-sheet: theme text; with --publish: theme text markdown

{SHOOT_KEYS}"""


@command(
    argument(
        "words",
        metavar="WORDS",
        nargs="*",
        help="words of the theme, a drink, the notes or a bottle (default: everything)",
    ),
    argument("--state", choices=STATES, help="only those in this state"),
    epilog=LIST_KEYS,
)
@in_bar
def listed(arguments: Arguments, bar: Bar) -> Answer:
    """The shoots that hold all the words."""
    snapshot = bar.snapshot
    found = find_shoots(snapshot.shoots, " ".join(arguments.words), snapshot.title_by_id)
    among = [each for each in found if arguments.state in (None, each.state)]
    shown = "No shoot is found by that." if snapshot.shoots else "No shoot is planned yet."
    if among:
        shown = table(("id", "on", "theme", "state", "drinks"), map(_row, among), right="r")
    return Answer(lambda: {"shoots": [shoot_json(each, snapshot) for each in among]}, shown)


@command(
    argument("theme", metavar="THEME", help="its theme, how that begins, words of it, or #ID"),
    argument(
        "--on",
        type=day,
        metavar="DAY",
        help="of several of one theme the one on this day (default: the nearest not yet logged)",
    ),
    one_of(
        flag("--run-sheet", "print the run sheet as text"),
        flag("--publish", "print what is put beside the film"),
    ),
    epilog=SHOW_KEYS,
)
@in_bar
def show(arguments: Arguments, bar: Bar) -> Answer:
    """One shoot, its run sheet or what is published with it."""
    snapshot = bar.snapshot
    shoot = find_shoot(snapshot, arguments.theme, arguments.on)
    if arguments.run_sheet or arguments.publish:
        text = _run_sheet(shoot, snapshot) if arguments.run_sheet else _publish(shoot, snapshot)
        return Answer(lambda: text, text["text"].rstrip("\n"))
    ready = _ready(shoot, snapshot)
    stops = stops_for(plan(shoot, snapshot), ready, snapshot)
    return Answer(
        lambda: {
            "shoot": shoot_json(shoot, snapshot),
            "stops": list(map(_stop_json, stops.stops)),
            "mise_en_place": [_step_json(each, shoot) for each in ready.steps],
        },
        _shown(shoot, stops, ready.steps, snapshot),
    )


def steps_of(shoot: Shoot, snapshot: Snapshot) -> tuple[Step, ...]:
    """The steps of a shoot's mise en place, with the bar as it will be on that day."""
    return _ready(shoot, snapshot).steps


def _ready(shoot: Shoot, snapshot: Snapshot) -> MiseEnPlace:
    then = as_of(shoot, snapshot)
    return mise_en_place(orders_of(shoot, then), then)


def _stop_json(stop: Stop) -> dict[str, object]:
    return {"key": stop.key, "state": stop.state, "why": stop.why, "on": iso(stop.on)}


_STOP_MARKS: Mapping[StopState, str] = {"done": "x", "next": ">", "later": "", "not needed": "-"}


def _stops_shown(stops: StopLine) -> Iterator[str]:
    """The stops from top to bottom, and what is next."""
    for each in stops.stops:
        yield f"  [{_STOP_MARKS[each.state] or ' '}] {each.word:8} {each.why}"


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


def _shown(
    shoot: Shoot, stops: StopLine, steps: tuple[Step, ...], snapshot: Snapshot
) -> Iterator[str]:
    starts = f" at {shoot.starts:%H:%M}" if shoot.starts else ""
    yield f"{shoot.theme} (#{shoot.id}), {shoot.on}{starts}, {shoot.state}"
    yield ""
    yield from _stops_shown(stops)
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
        yield from _log_shown(shoot, shoot.log)
    elif shoot.state == "filmed":
        yield ""
        yield plan(shoot, snapshot).verdict_with(date.isoformat)
        yield from not_taken_as_planned(shoot, snapshot)
        yield f'To write it: barkeep shoot log "#{shoot.id}"'
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
        said = step.said_when(starts, date.isoformat)
        if said != when:
            when = said
            yield f"{when}:"
        done = "x" if step.key in shoot.ticked else " "
        yield f"  [{done}] {number}. {step.text}"
    left = sum(step.key not in shoot.ticked for step in steps)
    yield f"{counted(left, 'step')} to do; --tick NUMBER ticks one off."


def _log_shown(shoot: Shoot, log: ShootLog) -> Iterator[str]:
    made = ", ".join(f"{count} × {name}" for name, count in zip(shoot.names, log.made, strict=True))
    yield f"Logged {log.at:%Y-%m-%d %H:%M}: {made or 'no drink'}"
    if log.bottles:
        yield ""
        yield bottles_table(log.bottles)


def bottles_table(bottles: Iterable[LoggedBottle]) -> str:
    """What a log says of each bottle, for a person."""
    head = ("bottle", "poured", "spilled", "expected", "counted", "variance")
    return table(head, map(_bottle_row, bottles), right="lrrrrr")


def _bottle_row(each: LoggedBottle) -> tuple[str, ...]:
    return (
        each.title,
        signed(each.poured or None, each.unit),
        signed(each.spilled or None, each.unit),
        signed(each.expected, each.unit),
        signed(each.counted, each.unit),
        signed(each.variance, each.unit),
    )


def signed(amount: float | None, unit: Unit) -> str:
    """An amount that may be below nothing, as a variance is; empty for none."""
    if amount is None:
        return ""
    shown = show_quantity(abs(amount), unit)
    return f"-{shown}" if amount < 0.0 and shown != show_quantity(0.0, unit) else shown


@command(
    argument("theme", metavar="THEME", help="its theme, how that begins, or #ID"),
    argument("--on", type=day, metavar="DAY", help="of several of one theme"),
    argument(
        "--within",
        choices=("exact", "close", "loose"),
        default="exact",
        help="the least closeness of stand-ins nobody chose: exact (none, the default), "
        "close (0.8), loose (0.6)",
    ),
    *ON_PAPER,
    epilog=CHECK_KEYS,
)
@of_snapshot
def check(arguments: Arguments, snapshot: Snapshot) -> Answer:
    """Whether every serve can be poured; a *no* is an answer too."""
    shoot = find_shoot(snapshot, arguments.theme, arguments.on)
    answer = plan(shoot, snapshot, arguments.within)
    return Answer(lambda: check_json(answer, snapshot), _check_shown(answer, snapshot))


def _check_shown(answer: ShootPlan, snapshot: Snapshot) -> Iterator[str]:
    yield f"{answer.shoot.theme}, {answer.on}"
    yield answer.verdict_with(date.isoformat)
    if answer.shoot.log is not None:
        yield f'What it took: barkeep shoot show "#{answer.shoot.id}"'
        return
    if answer.shoot.state == "filmed":
        yield from not_taken_as_planned(answer.shoot, snapshot)
    else:
        yield from _runs_short(answer, snapshot)
    yield from not_counted(answer.menu.orders, snapshot)
    yield from asked_of_bottles(answer.menu, snapshot)
    if answer.shoot.state != "filmed":
        yield from _rescues_shown(answer, snapshot)
    yield from _draws_shown(answer)
    if answer.menu.draws:
        cost = cost_of_draws(answer.menu.draws, snapshot)
        yield cost_in_words(cost, snapshot.knowledge.tree)


def _runs_short(answer: ShootPlan, snapshot: Snapshot) -> Iterator[str]:
    yield from (shortfall(each, snapshot) for each in answer.menu.lacking)
    dropped = zip(answer.menu.orders, answer.menu.drop, strict=True)
    fewer = [f"{counted(count, 'serve')} of {order.spec.name}" for order, count in dropped if count]
    if fewer:
        yield f"To pour the rest as planned, leave out {' and '.join(fewer)}."
    yield from past_by_then(answer, snapshot)


def _rescues_shown(answer: ShootPlan, snapshot: Snapshot) -> Iterator[str]:
    for rescue in answer.rescues:
        yield ""
        yield f'--use "{how_to_use(rescue, answer.shoot, snapshot)}"  ({rescue.closeness:.2f})'
        yield f"  {rescue.why}"


def _draws_shown(answer: ShootPlan) -> Iterator[str]:
    if answer.menu.draws:
        rows = [
            (each.bottle.product.title, show_quantity(each.amount, unit), show_quantity(left, unit))
            for each in answer.menu.draws
            for unit, left in ((each.bottle.product.unit, each.bottle.level.amount),)
        ]
        yield ""
        yield table(("bottle", "takes", "of"), rows, right="lrr")


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
    cost, tree = cost_of_draws(menu.draws, snapshot), snapshot.knowledge.tree
    return {
        "theme": plan.shoot.theme,
        "on": iso(plan.on),
        "possible": plan.possible,
        "verdict": plan.verdict_with(date.isoformat),
        "removed": list(plan.removed),
        "short": [_short(each, snapshot) for each in menu.lacking],
        "drop": [{"drink": order.spec.name, "serves": count} for order, count in dropped if count],
        "rescues": [_rescue(each, plan.shoot, snapshot) for each in plan.rescues],
        "draws": [_draw(each) for each in menu.draws],
        "past": [
            {
                "bottle": each.id,
                "product": each.product.title,
                "use_by": iso(each.use_by),
                "last_day": iso(snapshot.ends[each.id].last),
            }
            for each in plan.past
        ],
        "faded": list(plan.faded),
        "not_counted": list(not_counted(menu.orders, snapshot)),
        "asks": list(asked_of_bottles(menu, snapshot)),
        "assumed": assumed_json(dict.fromkeys(assumed(menu.orders, snapshot))),
        "cost": rounded(cost.amount, 2),
        "priced": rounded(cost.priced, 2),
        "unpriced": [tree.name(each) for each in cost.unpriced],
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
        "as_written": line.line.text,
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
