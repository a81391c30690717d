"""The log after a shoot: what each bottle should hold now, and what the logs say over time."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace
from math import hypot, sqrt

from barkeep.domain.amounts.units import Unit
from barkeep.domain.bar.shoots import LoggedBottle, Shoot
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.bottle import POUR_SIGMA, POUR_SIGMA_SHARE, SIGMAS, Bottle
from barkeep.domain.bottles.levels import MeasuredLevel
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.shoots.drinks import orders_of
from barkeep.domain.shoots.menu import Menu, MenuLine, wanted_by
from barkeep.domain.shoots.plan import as_of, draws_of, menu_made, shortfall
from barkeep.errors import NotEnoughLeft, UserError, spoken_list
from barkeep.translation import tr, tr_noop

EVAPORATION_A_MONTH = 0.01
"""The share of an open bottle's size that may go in a month (*common practice*)."""
OVER_POUR = 0.05
"""From this share of what was poured on, a variance is called over-pouring (*common practice*)."""


class SpilledBeyond(NotEnoughLeft):
    """A spill of more than was left after all that was poured; both in the bottle's unit."""

    amount: float
    left: float
    unit: str
    bottle: str
    says = (
        "{amount:g} {unit} cannot have been spilled of {bottle}: {left:g} {unit} of it is left "
        "after what was poured. Write {left:g} {unit} if all of that was spilled."
    )


class PouredBeyond(UserError):
    """Serves made that take more than there is: what they lack, and which serves there is for.

    `enough_for` are drinks with the most serves of each that could be poured.
    """

    lacking: tuple[str, ...]
    enough_for: tuple[tuple[str, int], ...]

    def __str__(self) -> str:
        most = [
            tr("{serves} of {drink}", serves=serves, drink=drink)
            for drink, serves in self.enough_for
        ]
        reach = tr(" There is enough for {most}.", most=spoken_list(most, "and")) if most else ""
        return tr(
            "The serves made take more than there is: {lacking}{reach}",
            lacking=" ".join(self.lacking),
            reach=reach,
        )


@dataclass(frozen=True, slots=True)
class LogSheet:
    """What happened: the serves really made of each drink, spills and counts by bottle id.

    Spills are in the bottle's unit.
    """

    made: tuple[int, ...]
    spilled: Mapping[int, float] = field(default_factory=dict)
    counted: Mapping[int, MeasuredLevel] = field(default_factory=dict)


@dataclass(frozen=True, slots=True)
class ExpectedBottle:
    """One bottle as it should be after a shoot, amounts in its unit."""

    bottle: Bottle
    poured: float
    spilled: float

    @property
    def expected(self) -> float:
        """The level it should have."""
        return max(0.0, self.bottle.level.amount - self.poured - self.spilled)

    @property
    def expected_sigma(self) -> float:
        """The one-sigma doubt of that, each pour adding its own."""
        level = self.bottle.level.expected_sigma
        if self.bottle.product.unit == "each":
            return level
        parts = [POUR_SIGMA_SHARE * each for each in (self.poured, self.spilled) if each]
        return hypot(level, *parts, *(POUR_SIGMA for _each in parts))

    @property
    def afterwards(self) -> Bottle:
        """The bottle with the level it should have."""
        level = self.bottle.level
        after = replace(level, amount=self.expected, expected_sigma=self.expected_sigma)
        return replace(self.bottle, level=after)


def as_planned(shoot: Shoot) -> LogSheet:
    """The sheet before anything is changed: just the serves that were planned."""
    return LogSheet(tuple(each.serves.total for each in shoot.drinks))


def expected_after(shoot: Shoot, snapshot: Snapshot, sheet: LogSheet) -> tuple[ExpectedBottle, ...]:
    """Each bottle the shoot bears on, in shelf order: drawn from, spilled or counted."""
    drawn = {each.bottle.id: each.amount for each in draws_of(shoot, snapshot, sheet.made)}
    touched = drawn.keys() | sheet.spilled.keys() | sheet.counted.keys()
    return tuple(
        ExpectedBottle(each, drawn.get(each.id, 0.0), sheet.spilled.get(each.id, 0.0))
        for each in sorted(snapshot.bottles, key=lambda one: (one.position, one.id))
        if each.id in touched
    )


ROUNDING = 1e-6
"""How far two amounts may differ and still be the same."""


def refuse_spills_beyond(expected: Iterable[ExpectedBottle]) -> None:
    """Raises `SpilledBeyond` for the first bottle of which more was spilled than was left."""
    for each in expected:
        left = max(0.0, each.bottle.level.amount - each.poured)
        if each.spilled > left + ROUNDING:
            product = each.bottle.product
            raise SpilledBeyond(each.spilled, round(left, 1), product.unit, product.title)


def refuse_pours_beyond(shoot: Shoot, snapshot: Snapshot, made: Sequence[int]) -> None:
    """Raises `PouredBeyond` where the serves made took more of a bottle than was in it."""
    found = menu_made(shoot, snapshot, made)
    tree = as_of(shoot, snapshot).knowledge.tree
    beyond = [each for each in found.lacking if _is_drawn_on(each, found, tree)]
    if beyond:
        kept = zip(found.orders, found.drop, strict=True)
        raise PouredBeyond(
            tuple(shortfall(each, snapshot) for each in beyond),
            tuple((order.spec.name, order.serves - drop) for order, drop in kept if drop),
        )


def not_taken(shoot: Shoot, snapshot: Snapshot, made: Sequence[int]) -> tuple[str, ...]:
    """Each line of the serves made that takes nothing, or too little, from any bottle."""
    found = menu_made(shoot, snapshot, made)
    short = (
        tr("Not all is taken from a bottle: {lacking}", lacking=shortfall(each, snapshot))
        for each in found.lacking
    )
    asked = (
        tr(
            "Nothing is taken for {named} of {name}: it is not understood.",
            named=each.named,
            name=order.spec.name,
        )
        for order in found.orders
        if order.serves
        for each in order.spec.unsettled
    )
    return tuple(dict.fromkeys((*short, *asked)))


def not_taken_as_planned(shoot: Shoot, snapshot: Snapshot) -> tuple[str, ...]:
    """What the log of a filmed shoot would not take, a sentence each, and what to do about it."""
    then, made = as_of(shoot, snapshot), as_planned(shoot).made
    found = not_taken(shoot, snapshot, made)
    past = (
        tr(
            "{title} was past its date of {last_day} by then, so the log takes nothing from it.",
            title=each.product.title,
            last_day=then.last_day_in_words(each),
        )
        for each in then.past_of(wanted_by(orders_of(shoot, then, made)))
    )
    return (*found, *([tr(CHOOSE_FIRST)] if found else []), *past)


CHOOSE_FIRST = tr_noop(
    "Where something else was poured, choose it for that line before the log is written."
)


def _is_drawn_on(line: MenuLine, found: Menu, tree: FamilyTree) -> bool:
    """Whether there was some of what a line that runs out takes."""
    return any(
        tree.is_a(draw.bottle.ingredient, key) for draw in found.draws for key in line.line.wanted
    )


def would_be_logged(shoot: Shoot, snapshot: Snapshot, sheet: LogSheet) -> tuple[LoggedBottle, ...]:
    """What the log would say of each bottle, before anything is written.

    Raises `SpilledBeyond`.
    """
    expected = expected_after(shoot, snapshot, sheet)
    refuse_spills_beyond(expected)
    return tuple(
        logged_bottle(
            each.afterwards,
            poured=each.poured,
            spilled=each.spilled,
            counted=sheet.counted.get(each.bottle.id),
        )
        for each in expected
    )


def logged_bottle(
    afterwards: Bottle, *, poured: float, spilled: float, counted: MeasuredLevel | None
) -> LoggedBottle:
    """What a log says of a bottle, whose level is the one expected after all that went out."""
    level = afterwards.level
    return LoggedBottle(
        bottle_id=afterwards.id,
        title=afterwards.product.title,
        unit=afterwards.product.unit,
        poured=poured,
        spilled=spilled,
        expected=level.amount,
        counted=None if counted is None else counted.amount,
        sigma=hypot(level.expected_sigma, 0.0 if counted is None else counted.sigma),
    )


@dataclass(frozen=True, slots=True)
class BottleVariance:
    """One bottle over several shoots: what was gone beyond the pours, and the likely reason.

    `variance` and `poured` are summed over the logs that counted it, in its
    unit; `told_apart` says whether the doubt of the counts could explain it.
    """

    bottle_id: int
    title: str
    unit: Unit
    shoots: int
    poured: float
    variance: float
    sigma: float
    reason: str

    @property
    def told_apart(self) -> bool:
        """Whether it is more than the doubt of all those levels."""
        return abs(self.variance) > SIGMAS * self.sigma


def variances(shoots: Iterable[Shoot], snapshot: Snapshot) -> tuple[BottleVariance, ...]:
    """Every bottle that a logged shoot counted, what the doubt does not explain first."""
    logged: dict[int, list[LoggedBottle]] = {}
    for shoot in shoots:
        for each in shoot.log.bottles if shoot.log else ():
            if each.counted is not None:
                logged.setdefault(each.bottle_id, []).append(each)
    there, tree = snapshot.bottle_by_id, snapshot.knowledge.tree
    found = [_variance(each, there.get(key), tree) for key, each in logged.items()]
    return tuple(sorted(found, key=lambda each: (not each.told_apart, -abs(each.variance))))


def _variance(
    logged: Sequence[LoggedBottle], bottle: Bottle | None, tree: FamilyTree
) -> BottleVariance:
    gone = sum(each.variance or 0.0 for each in logged)
    poured = sum(each.poured for each in logged)
    sigma = sqrt(sum(each.sigma**2 for each in logged))
    first = logged[0]
    told = abs(gone) > SIGMAS * sigma
    reason = _reason(gone, poured, bottle, tree) if told else tr(NO_TELLING)
    return BottleVariance(
        bottle_id=first.bottle_id,
        title=first.title,
        unit=first.unit,
        shoots=len(logged),
        poured=poured,
        variance=gone,
        sigma=sigma,
        reason=reason,
    )


NO_TELLING = tr_noop("No more than the doubt of the levels explains.")


def _reason(gone: float, poured: float, bottle: Bottle | None, tree: FamilyTree) -> str:
    return next(iter(_reasons(gone, poured, bottle, tree)), "")


def _reasons(gone: float, poured: float, bottle: Bottle | None, tree: FamilyTree) -> Iterator[str]:
    dashed = bottle is not None and bottle.ingredient in tree and _is_dashed(bottle, tree)
    if gone < 0 and dashed:
        yield tr(
            "Its dasher gives less than a dash: measure ten of them with the dasher's setting."
        )
    if gone < 0:
        yield tr("Less went out than the pours say: short pours, or a serve that was not made.")
    if dashed:
        yield tr(
            "Its dasher gives more than a dash: measure ten of them with the dasher's setting."
        )
    if bottle is not None and gone <= EVAPORATION_A_MONTH * bottle.product.size:
        yield tr(
            "As little as an open bottle loses in a month: evaporation, or drops on the jigger."
        )
    if poured and gone >= OVER_POUR * poured:
        share = 100.0 * gone / poured
        yield tr(
            "{share:.0f} % more than was poured by the specs: over-pouring, or pours not logged.",
            share=share,
        )
    yield tr("More is gone than the pours say: a spill or a drink nobody wrote down.")


def _is_dashed(bottle: Bottle, tree: FamilyTree) -> bool:
    return "bitters" in tree and tree.is_a(bottle.ingredient, "bitters")
