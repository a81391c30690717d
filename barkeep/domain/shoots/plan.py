"""A shoot against the bar: what it pours, from which bottles, and what stands in its way."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from datetime import date

from barkeep.domain.amounts.rounding import whole_up
from barkeep.domain.bar.shoots import ChosenPour, Shoot, choose, chosen_bottles
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.bottle import Bottle
from barkeep.domain.days import day_said
from barkeep.domain.ingredients.derivations import Derivation
from barkeep.domain.pouring.assumed import Assumed, assumed_in
from barkeep.domain.pouring.sourcing import Within, need, sourcing_for
from barkeep.domain.pouring.supply import Draw, supply_of
from barkeep.domain.pouring.words import asks_in_words, plain_amount, why_met
from barkeep.domain.shoots.drinks import orders_of, spec_of, without_spec
from barkeep.domain.shoots.menu import Menu, MenuLine, Order, menu, wanted_by
from barkeep.domain.specs.left_out import left_out_of
from barkeep.domain.specs.shown_lines import named_with_kind
from barkeep.domain.specs.spec import Line, UnsettledLine
from barkeep.errors import spoken_list
from barkeep.translation import tr

OFFERED_EACH = 3
"""So many stand-ins are offered for a line that runs out."""


@dataclass(frozen=True, slots=True)
class Rescue:
    """A stand-in that would meet a line: which drink, what to choose for it, and why it may."""

    drink: int
    name: str
    wanted: str
    chosen: ChosenPour
    closeness: float
    why: str


@dataclass(frozen=True, slots=True)
class ShootPlan:
    """The answer. `past` are bottles its lines would take that are past their date by then.

    `faded` says in sentences what it does draw on that is past its best by then.
    """

    shoot: Shoot
    on: date
    menu: Menu
    removed: tuple[str, ...]
    past: tuple[Bottle, ...]
    rescues: tuple[Rescue, ...]
    faded: tuple[str, ...] = ()

    @property
    def possible(self) -> bool:
        """Whether every serve of every drink can be poured as it is planned."""
        return self.menu.possible and not self.removed and not self.unsettled

    @property
    def unsettled(self) -> tuple[UnsettledLine, ...]:
        """The lines of its drinks that are not understood."""
        return tuple(each for order in self.menu.orders for each in order.spec.unsettled)

    @property
    def verdict(self) -> str:
        """The answer in one sentence."""
        return self.verdict_with(day_said)

    def verdict_with(self, said: Callable[[date], str]) -> str:
        """The answer in one sentence, with days as they are `said`."""
        if self.shoot.log is not None:
            return tr("It was logged on {day}.", day=said(self.shoot.log.at.date()))
        if self.shoot.state == "filmed" and not self.removed:
            return self._to_log
        if not self.shoot.drinks:
            return tr("No drink is planned yet.")
        if self.removed:
            names = tr(" and ").join(self.removed)
            return tr(
                "The spec of {names} was removed: put another in its place or take it out.",
                names=names,
            )
        if self.possible:
            return tr("Yes: every serve can be poured.")
        lacks = [_lines_out(len(self.menu.lacking))] if self.menu.lacking else []
        lacks += [not_understood(self.unsettled)] if self.unsettled else []
        return tr("No: {lacks}.", lacks=spoken_list(lacks, "and"))

    @property
    def _to_log(self) -> str:
        """Of what is filmed nobody asks whether it can be poured."""
        count = len(self.menu.lacking) + len(self.unsettled)
        if not count:
            return tr("It is filmed; its log is still to be written.")
        if count == 1:
            return tr(
                "It is filmed; its log is still to be written, and cannot take one line as planned."
            )
        return tr(
            "It is filmed; its log is still to be written, "
            "and cannot take {count} lines as planned.",
            count=count,
        )


def as_of(shoot: Shoot, snapshot: Snapshot) -> Snapshot:
    """The bar on the day of the shoot, as far as dates go.

    A shoot to come counts on nothing that will be past its date; one that was
    filmed may have poured what was still good then.
    """
    past = shoot.state in ("filmed", "logged")
    return snapshot.on_day(shoot.on if past else max(shoot.on, snapshot.on))


def plan(shoot: Shoot, snapshot: Snapshot, within: Within = "exact") -> ShootPlan:
    """Ask whether the bar can pour a shoot, as it will be on that day."""
    then = as_of(shoot, snapshot)
    orders = orders_of(shoot, then)
    found = menu(orders, then, within, first=chosen_bottles(shoot))
    found = replace(found, draws=tuple(in_whole_pieces(each) for each in found.draws))
    rescues = () if found.possible else tuple(_rescues(shoot, orders, found, then))
    return ShootPlan(
        shoot=shoot,
        on=then.on,
        menu=found,
        removed=without_spec(shoot, then),
        past=then.past_of(wanted_by(orders)),
        rescues=rescues,
        faded=faded_among(found.draws, then),
    )


def past_by_then(found: ShootPlan, snapshot: Snapshot) -> tuple[str, ...]:
    """What is past its date on that day and not counted on, and what is past its best, in words."""
    past = (
        tr(
            "{title} is past its date of {last_day} by then and is not counted on.",
            title=each.product.title,
            last_day=snapshot.last_day_in_words(each),
        )
        for each in found.past
    )
    return (*past, *found.faded)


def faded_among(draws: Iterable[Draw], then: Snapshot) -> tuple[str, ...]:
    """What is drawn on that is past its best on that day, in sentences."""
    said = (then.off_in_words(each.bottle) for each in draws)
    return tuple(dict.fromkeys(filter(None, said)))


def draws_of(shoot: Shoot, snapshot: Snapshot, made: Sequence[int]) -> tuple[Draw, ...]:
    """What the serves really made should have taken from each bottle, on that day.

    What is counted in pieces is taken in whole ones. A line that nothing was
    chosen for and that the bar could not pour takes nothing: what went into the
    glass instead is not known.
    """
    return tuple(in_whole_pieces(each) for each in menu_made(shoot, snapshot, made).draws)


def menu_made(shoot: Shoot, snapshot: Snapshot, made: Sequence[int]) -> Menu:
    """How the serves really made were poured, as far as the bar had it on that day."""
    then = as_of(shoot, snapshot)
    return menu(orders_of(shoot, then, made), then, "exact", first=chosen_bottles(shoot))


def shortfall(line: MenuLine, snapshot: Snapshot) -> str:
    """What a line lacks, in one sentence."""
    tree = snapshot.knowledge.tree
    key = line.line.ingredient
    unit = tree[key].unit
    amount = plain_amount(round(line.short, 1), unit)
    return tr(
        "{drink} lacks {amount} of {name}, for {unmet:.3g} of {serves} serves.",
        drink=line.order.spec.name,
        amount=amount,
        name=named_with_kind(line.line, tree),
        unmet=line.unmet,
        serves=line.order.serves,
    )


def not_counted(orders: Sequence[Order], snapshot: Snapshot) -> Iterator[str]:
    """Every line of the drinks that is not counted as it is written, a sentence each.

    What gives no amount is counted on as `need` takes it, and what is taken for
    the rest that lines leave open is named after that. Garnishes are named and
    counted by the mise en place.
    """
    tree = snapshot.knowledge.tree
    found = (each for order in orders for each in left_out_of(order.spec))
    for each in dict.fromkeys(found):
        if each.why == "garnish":
            continue
        if isinstance(each.line, Line) and each.line.required:
            unit = tree[each.line.ingredient].unit
            amount = plain_amount(need(each.line, tree), unit)
            yield tr(
                "{amount} a serve is guessed in {drink}: {because}.",
                amount=amount,
                drink=each.drink,
                because=each.because(tree),
            )
        else:
            yield tr(
                "Not counted in {drink}: {because}.", drink=each.drink, because=each.because(tree)
            )
    said = (each.sentence for each in assumed(orders, snapshot, unsaid=False))
    yield from dict.fromkeys(said)


def assumed(
    orders: Sequence[Order], snapshot: Snapshot, *, unsaid: bool = True
) -> Iterator[Assumed]:
    """What is taken for what the lines leave open; `unsaid` lines give no amount at all."""
    tree, units = snapshot.knowledge.tree, snapshot.settings.units
    for order in orders:
        for line in order.spec.required_lines:
            if unsaid or line.quantity is not None or line.alternatives:
                found = assumed_in(
                    order.spec.name, line, tree, units, amount=lambda each: need(each, tree)
                )
                yield from found


def asked_of_bottles(found: Menu, snapshot: Snapshot) -> Iterator[str]:
    """What the lines ask of the bottles they are poured from and no label says, a sentence each."""
    tree = snapshot.knowledge.tree
    told = (
        asks_in_words(line.line, draw.bottle, tree)
        for line in found.lines
        for draw in found.draws
        if any(draw.bottle.ingredient in each.derivation.leaves for each in line.poured)
    )
    yield from dict.fromkeys(each for each in told if each)


def _lines_out(count: int) -> str:
    return tr("one line runs out") if count == 1 else tr("{count} lines run out", count=count)


def not_understood(lines: Sequence[UnsettledLine]) -> str:
    """That these lines are not understood, a phrase."""
    names = spoken_list([each.named for each in lines], "and")
    if len(lines) == 1:
        return tr("{names} is not understood", names=names)
    return tr("{names} are not understood", names=names)


def in_whole_pieces(draw: Draw) -> Draw:
    """The draw in whole pieces, where its bottle is counted in them."""
    if draw.bottle.product.unit != "each":
        return draw
    return replace(draw, amount=min(whole_up(draw.amount), draw.bottle.level.amount))


def _rescues(
    shoot: Shoot, orders: Sequence[Order], found: Menu, snapshot: Snapshot
) -> Iterator[Rescue]:
    """For each line that runs out, the closest stand-ins that reach for all its serves."""
    sourcing = sourcing_for(snapshot, "loose")
    numbers = [
        number for number, each in enumerate(shoot.drinks) if spec_of(each, snapshot) is not None
    ]
    for short in found.lacking:
        place = next(at for at, order in enumerate(orders) if order is short.order)
        offered = 0
        for way in sourcing.ways_to(short.line, short.order.spec):
            if offered == OFFERED_EACH:
                break
            rescue = _rescue(shoot, number=numbers[place], short=short, way=way, snapshot=snapshot)
            if rescue is not None and _reaches(
                shoot, rescue=rescue, short=short, before=found, snapshot=snapshot
            ):
                offered += 1
                yield rescue


def _rescue(
    shoot: Shoot, number: int, short: MenuLine, way: Derivation, snapshot: Snapshot
) -> Rescue | None:
    """A way as a choice for its line; None where it is the thing itself or takes several."""
    if way.exact or way.leaves != {way.offered}:
        return None
    drink, line = shoot.drinks[number], short.order.spec.lines.index(short.line)
    before = next((each.ratio for each in drink.chosen if each.line == line), 1.0)
    bottle = supply_of(snapshot).bottle(way.offered, short.line.min_abv_percent)
    return Rescue(
        drink=number,
        name=drink.name,
        wanted=short.line.ingredient,
        chosen=ChosenPour(line, way.offered, before * way.ratio),
        closeness=way.closeness,
        why=why_met(short.line, way, bottle, snapshot.knowledge.tree),
    )


def _reaches(
    shoot: Shoot, *, rescue: Rescue, short: MenuLine, before: Menu, snapshot: Snapshot
) -> bool:
    """Whether the line no longer runs out, and no other runs out in its turn."""
    saved = rescued(shoot, rescue)
    after = menu(orders_of(saved, snapshot), snapshot, "exact", first=chosen_bottles(saved))
    return _places(after) <= _places(before) - {_place(short)}


def _places(found: Menu) -> frozenset[tuple[str, int]]:
    """The lines that run out, by drink and place: a rescue changes the lines themselves."""
    return frozenset(map(_place, found.lacking))


def _place(line: MenuLine) -> tuple[str, int]:
    return line.order.spec.name, line.order.spec.lines.index(line.line)


def rescued(shoot: Shoot, rescue: Rescue) -> Shoot:
    """The shoot with a stand-in taken for the line that ran out."""
    drinks = list(shoot.drinks)
    drinks[rescue.drink] = choose(drinks[rescue.drink], rescue.chosen)
    return replace(shoot, drinks=tuple(drinks))
