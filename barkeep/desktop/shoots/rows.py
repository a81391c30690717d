"""How the Shoots list shows a shoot, what the page of one says, and its lines as poured."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime
from functools import cached_property

from barkeep.desktop.drink.words import (
    GARNISH_MISSING,
    NOT_UNDERSTOOD,
    STAND_IN,
    THERE,
    TO_CUT,
    LineState,
    with_duty,
)
from barkeep.desktop.screens.row_table import Column
from barkeep.desktop.widgets.delegates import ICONS_ROLE, SUBTITLE_ROLE
from barkeep.domain.bar.shoots import (
    STATES,
    LoggedBottle,
    ServeCounts,
    Shoot,
    ShootDrink,
    ShootState,
    find_shoots,
    still_chosen,
)
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.level_words import in_doubt, quantity
from barkeep.domain.buying.for_shoot import stops_for
from barkeep.domain.days import day_of_week, day_said, day_short
from barkeep.domain.ingredients.derivations import Derivation
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import capitalised, counted
from barkeep.domain.pouring.supply import supply_of
from barkeep.domain.shoots.drinks import as_poured, orders_of, spec_of
from barkeep.domain.shoots.garnish_needs import GarnishSource, needed_of, source_of
from barkeep.domain.shoots.log import not_taken_as_planned
from barkeep.domain.shoots.making_ahead import ToMake
from barkeep.domain.shoots.menu import MenuLine, Order
from barkeep.domain.shoots.mise_en_place import MiseEnPlace, mise_en_place
from barkeep.domain.shoots.plan import (
    ShootPlan,
    as_of,
    asked_of_bottles,
    not_counted,
    plan,
    shortfall,
)
from barkeep.domain.shoots.stops import StopLine
from barkeep.domain.specs.shown_lines import names_in_sentence, names_of, shown_lines, worded
from barkeep.domain.specs.spec import Line, UnsettledLine, with_unsettled
from barkeep.errors import spoken_list
from barkeep.translation import tr, tr_noop

STATE_WORDS: Mapping[ShootState, str] = {
    "idea": tr_noop("Idea"),
    "planned": tr_noop("Planned"),
    "filmed": tr_noop("Filmed"),
    "logged": tr_noop("Logged"),
}
STATE_PICTURES: Mapping[ShootState, str] = {
    "idea": "info",
    "planned": "calendar",
    "filmed": "shoots",
    "logged": "check",
}


@dataclass(frozen=True)
class ShootAnswer:
    """All that is asked about one shoot: the menu, what to have ready, what is next."""

    shoot: Shoot
    snapshot: Snapshot
    plan: ShootPlan
    mise: MiseEnPlace
    stops: StopLine

    @cached_property
    def starts(self) -> datetime | None:
        """When it begins, None where no hour was said."""
        begins = self.shoot.starts
        return None if begins is None else datetime.combine(self.shoot.on, begins)


def answer_for(shoot: Shoot, snapshot: Snapshot) -> ShootAnswer:
    """Ask everything about one shoot."""
    then = as_of(shoot, snapshot)
    ready = mise_en_place(orders_of(shoot, then), then, on=then.on)
    found = plan(shoot, snapshot)
    stops = stops_for(found, ready, snapshot)
    return ShootAnswer(shoot, snapshot, plan=found, mise=ready, stops=stops)


def shoot_columns() -> tuple[Column[Shoot], ...]:
    """Theme with its drinks, day, state."""
    return (
        Column(
            tr("Theme"),
            lambda row: row.theme,
            roles={SUBTITLE_ROLE: drinks_in_brief},
            tooltip=lambda row: f"{row.theme}\n{drinks_in_brief(row)}",
        ),
        Column(tr("Day"), lambda row: day_short(row.on), key=lambda row: (row.on, row.id or 0)),
        Column(
            tr("State"),
            lambda row: tr(STATE_WORDS[row.state]),
            key=lambda row: STATES.index(row.state),
            roles={ICONS_ROLE: lambda row: (STATE_PICTURES[row.state],)},
        ),
    )


def drinks_in_brief(shoot: Shoot) -> str:
    """The names of its drinks."""
    return ", ".join(shoot.names) if shoot.drinks else tr("No drink yet")


def found_by(shoot: Shoot, words: str, snapshot: Snapshot) -> bool:
    """Whether a search finds it: by theme, drink, notes, day, state or bottle."""
    return bool(find_shoots((shoot,), words, snapshot.title_by_id, _shown))


def _shown(shoot: Shoot) -> str:
    """Its day and its state, as they stand in the list and in the details."""
    return f"{day_short(shoot.on)} {day_said(shoot.on)} {tr(STATE_WORDS[shoot.state])}"


def when_in_words(shoot: Shoot) -> str:
    """The day, the hour and the state."""
    at = f", {shoot.starts:%H:%M}" if shoot.starts else ""
    day = tr("{weekday} {day}", weekday=day_of_week(shoot.on), day=day_said(shoot.on))
    return f"{day}{at} · {tr(STATE_WORDS[shoot.state])}"


def serves_in_words(serves: ServeCounts) -> str:
    """How many serves, and what for.

    >>> serves_in_words(ServeCounts(1, 2, 0))
    '3 serves: 1 test, 2 on camera'
    """
    parts = (
        (serves.tests, counted(serves.tests, "test")),
        (serves.camera, tr("{many} on camera", many=serves.camera)),
        (serves.tasting, tr("{many} to taste", many=serves.tasting)),
    )
    said = ", ".join(words for count, words in parts if count)
    total = counted(serves.total, "serve")
    return f"{total}: {said}" if said else tr("no serves")


def chosen_in_words(drink: ShootDrink, snapshot: Snapshot) -> Iterator[tuple[int, str]]:
    """Each line that is poured otherwise than its spec says: its place, and a sentence."""
    spec, tree = spec_of(drink, snapshot), snapshot.knowledge.tree
    for chosen in still_chosen(drink, spec).chosen if spec else ():
        if spec is None or chosen.ingredient not in tree:
            continue
        line = spec.lines[chosen.line]
        wanted = line.ingredient
        poured = snapshot.title_by_id.get(chosen.bottle_id or 0) or tree.in_sentence(
            chosen.ingredient
        )
        ratio = (
            ""
            if abs(chosen.ratio - 1.0) < 1e-9
            else tr(", {ratio:.3g} times as much", ratio=chosen.ratio)
        )
        if chosen.ingredient == wanted or tree.is_a(chosen.ingredient, wanted):
            yield chosen.line, f"{names_of(line, tree)}: {poured}"
        else:
            yield (
                chosen.line,
                tr(
                    "{poured} in place of {wanted}{ratio}",
                    poured=poured,
                    wanted=names_in_sentence(line, tree),
                    ratio=ratio,
                ),
            )


def shortfalls(answer: ShootAnswer) -> tuple[str, ...]:
    """What runs out, a sentence a line; of a filmed shoot what its log cannot take."""
    if answer.shoot.state == "filmed":
        return not_taken_as_planned(answer.shoot, answer.snapshot)
    return tuple(shortfall(each, answer.snapshot) for each in answer.plan.menu.lacking)


def drops(answer: ShootAnswer) -> str:
    """Which serves to leave out so that the rest can be poured; empty where none need be."""
    menu = answer.plan.menu
    dropped = [
        tr("{serves} of {drink}", serves=count, drink=order.spec.name)
        for order, count in zip(menu.orders, menu.drop, strict=True)
        if count
    ]
    return tr("Or leave out {dropped}.", dropped=spoken_list(dropped, "and")) if dropped else ""


def draws(answer: ShootAnswer) -> tuple[str, ...]:
    """What is taken from each bottle."""
    return tuple(
        f"{each.bottle.product.title}: {quantity(each.amount, each.bottle.product.unit)}"
        for each in answer.plan.menu.draws
    )


def things_to_make(answer: ShootAnswer) -> tuple[ToMake, ...]:
    """What the mise en place has made or squeezed, and so may come on the shelf with a date."""
    found = (*answer.mise.make, *answer.mise.squeeze)
    return tuple(each for each in found if each.task in ("make", "squeeze"))


def left_out(answer: ShootAnswer) -> tuple[str, ...]:
    """Lines that are not counted as they are written, and what lines ask of their bottles."""
    menu = answer.plan.menu
    return (*not_counted(menu.orders, answer.snapshot), *asked_of_bottles(menu, answer.snapshot))


def logged_in_words(each: LoggedBottle) -> str:
    """What the log says of one bottle, in its own unit."""
    unit = each.unit
    said = tr("Poured {amount}", amount=quantity(each.poured, unit))
    if each.spilled:
        said += tr(", spilled {amount}", amount=quantity(each.spilled, unit))
    said += tr("; expected {amount}", amount=quantity(each.expected, unit))
    if each.counted is None or each.variance is None:
        return tr("{said}, accepted", said=said)
    missing = each.variance
    doubt, amount = in_doubt(each.sigma, unit), quantity(abs(missing), unit)
    apart = tr("{amount} less", amount=amount) if missing >= 0 else _more(amount)
    within = f" ({doubt})" if doubt else ""
    return tr(
        "{said}, counted {amount}: {apart}{within}",
        said=said,
        amount=quantity(each.counted, unit),
        apart=apart,
        within=within,
    )


def _more(amount: str) -> str:
    return tr("{amount} more", amount=amount)


def used_in_brief(bottles: Sequence[LoggedBottle]) -> str:
    """How many bottles a log has, and how many of them were counted or only accepted."""
    counts = sum(each.counted is not None for each in bottles)
    parts = (
        tr("{many} counted", many=counts) if counts else "",
        _accepted(len(bottles) - counts),
    )
    return f"{counted(len(bottles), 'bottle')}: {spoken_list([*filter(None, parts)], 'and')}"


def _accepted(many: int) -> str:
    return tr("{many} taken as expected", many=many) if many else ""


RUNS_OUT = LineState(tr_noop("Runs out"), "verdict-short", "short")
NOT_TAKEN = LineState(tr_noop("Not taken from a bottle"), "warning", "warning")
"""Of a shoot that is filmed: nothing runs out any more."""
LEFT_OUT = LineState(tr_noop("Not counted"), "info", "muted")
"""Of an optional line, and of a drink of which no serve is planned."""


@dataclass(frozen=True, slots=True)
class PouredLine:
    """A line as it will be poured: what goes in, where from, and whether there is enough.

    `place` is the line's in the spec, `name` what the spec asks for there, and
    `chosen` says whether it is poured otherwise than written.
    """

    place: int
    name: str
    text: str
    note: str
    chosen: bool
    state: LineState


def poured_lines(answer: ShootAnswer, number: int) -> tuple[PouredLine, ...]:
    """Every line of one drink of the running order; none where its spec was removed."""
    snapshot, drink = answer.snapshot, answer.shoot.drinks[number]
    written, spec = spec_of(drink, snapshot), as_poured(drink, snapshot)
    if written is None or spec is None:
        return ()
    tree, settings = snapshot.knowledge.tree, snapshot.settings
    shown = shown_lines(spec, tree, settings.shown_in, settings.units)
    said = dict(chosen_in_words(drink, snapshot))
    asked = _asked(answer, number)
    lacks = NOT_TAKEN if answer.shoot.state == "filmed" else RUNS_OUT
    garnishes = _garnishes(answer, number)

    def standing(place: int) -> _Standing:
        met = asked.get(place)
        state = _state(met, written.lines[place], lacks, tree)
        note = _note(said.get(place, ""), _from(met, answer), state)
        return garnishes.get(place) or _Standing(state, note)

    stands = [standing(place) for place in range(len(spec.lines))]
    rows = tuple(
        PouredLine(
            place=place,
            name=names_in_sentence(written.lines[place], tree),
            text=with_duty(line, shown[place].text or _worded(line, shown[place].amount, tree)),
            note=stands[place].note,
            chosen=place in said,
            state=stands[place].state,
        )
        for place, line in enumerate(spec.lines)
    )
    return with_unsettled(spec, rows, _question)


@dataclass(frozen=True, slots=True)
class _Standing:
    """How a line will stand on the day, and what is said of it."""

    state: LineState
    note: str = ""


def _garnishes(answer: ShootAnswer, number: int) -> dict[int, _Standing]:
    """How the garnishes of a drink will stand, by their places; none where no serve is planned."""
    order, then = _order(answer, number), as_of(answer.shoot, answer.snapshot)
    supply, tree = supply_of(then), then.knowledge.tree
    found = {}
    for place, line in enumerate(order.spec.lines):
        if line.garnish and order.serves > 0 and not order.spec.requires(line):
            source = source_of(needed_of(line, order, tree), then, supply)
            if source is not None:
                found[place] = _garnish(source, tree)
    return found


def _garnish(source: GarnishSource, tree: FamilyTree) -> _Standing:
    if source.fruit is not None:
        return _Standing(
            TO_CUT,
            tr("To cut from {fruit}", fruit=tree.in_sentence(source.fruit.ingredient)),
        )
    if source.have >= source.amount:
        return _Standing(THERE)
    there = tr("Only {have:g} there", have=source.have) if source.have else tr("Missing")
    return _Standing(GARNISH_MISSING, there)


def _question(line: UnsettledLine) -> PouredLine:
    """A line that is not understood: it has no place among those that are poured."""
    return PouredLine(
        place=-1,
        name="",
        text=line.text,
        note=line.question,
        chosen=False,
        state=NOT_UNDERSTOOD,
    )


def _asked(answer: ShootAnswer, number: int) -> dict[int, MenuLine]:
    """What the menu says of a drink's lines, by their places."""
    order = _order(answer, number)
    places = {id(line): place for place, line in enumerate(order.spec.lines)}
    return {places[id(each.line)]: each for each in answer.plan.menu.lines if each.order is order}


def _order(answer: ShootAnswer, number: int) -> Order:
    """The order of a drink: those whose spec was removed have none."""
    before = answer.shoot.drinks[:number]
    place = sum(spec_of(each, answer.snapshot) is not None for each in before)
    return answer.plan.menu.orders[place]


def _worded(line: Line, amount: str, tree: FamilyTree) -> str:
    """A line that was chosen otherwise has no text of its own."""
    return worded(line, names_in_sentence(line, tree), amount)


def _note(chosen: str, source: str, state: LineState) -> str:
    """What was chosen, where it comes from, and that it runs out, each a sentence of its own."""
    short = tr(state.word) if state in (RUNS_OUT, NOT_TAKEN) else ""
    parts = (each for each in (chosen, source, short) if each)
    return ". ".join(map(capitalised, parts))


def _from(asked: MenuLine | None, answer: ShootAnswer) -> str:
    """Which bottles a line is poured from; empty where that is not known or needs no saying."""
    if asked is None:
        return ""
    ways = [each.derivation for each in asked.poured]
    as_it_is = [each for each in ways if each.leaves == {each.offered}]
    made = [each for each in ways if each not in as_it_is]
    found = ((tr_noop("from {titles}"), as_it_is), (tr_noop("made from {titles}"), made))
    said = [
        tr(how, titles=spoken_list(titles, "and"))
        for how, some in found
        if (titles := list(dict.fromkeys(_titles(asked, some, answer))))
    ]
    return capitalised(tr(", and ").join(said))


def _titles(asked: MenuLine, ways: Sequence[Derivation], answer: ShootAnswer) -> Iterator[str]:
    drawn = {each.bottle.id for each in answer.plan.menu.draws}
    stocks = supply_of(as_of(answer.shoot, answer.snapshot)).stocks
    least = asked.line.min_abv_percent or 0.0
    for key in sorted({key for each in ways for key in each.leaves}):
        for stock in stocks.get(key, ()):
            bottle = stock.bottle
            if bottle is not None and bottle.id in drawn and stock.abv_percent >= least:
                yield bottle.product.title


def _state(asked: MenuLine | None, written: Line, lacks: LineState, tree: FamilyTree) -> LineState:
    if asked is None:
        return LEFT_OUT
    if asked.unmet:
        return lacks
    poured = asked.line.ingredient
    return THERE if any(tree.is_a(poured, each) for each in written.wanted) else STAND_IN
