"""Where a shoot stands on its way: idea, shop, prepare, film, count; what is done, what is next.

One stop is next, which is the first that is not done and can be gone on with; after the log
none is. What is still to be bought is told by who knows what is sold (`buying.for_shoot`).
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import date
from typing import Literal, get_args

from barkeep.domain.bar.shoots import Shoot, ShootLog
from barkeep.domain.days import day_of_week, day_of_year, day_said
from barkeep.domain.phrases import counted
from barkeep.domain.shoots.making_ahead import ToMake
from barkeep.domain.shoots.mise_en_place import MiseEnPlace
from barkeep.domain.shoots.plan import ShootPlan, not_understood
from barkeep.errors import spoken_list
from barkeep.translation import tr, tr_about, tr_noop

StopKey = Literal["idea", "shop", "prepare", "film", "count"]
STOPS: tuple[StopKey, ...] = get_args(StopKey)
StopState = Literal["done", "next", "later", "not needed"]
STOP_WORDS: Mapping[StopKey, str] = {
    "idea": tr_noop("Idea"),
    "shop": tr_noop("Shop"),
    "prepare": tr_noop("Prepare"),
    "film": tr_noop("Film"),
    "count": tr_noop("Count"),
}


NO_DRINKS = tr_noop("once its drinks are chosen")


@dataclass(frozen=True, slots=True)
class Stop:
    """One stop of the line, how it stands, and why: a phrase without a stop at its end.

    `on` is the day it was or will be, None where it has none.
    """

    key: StopKey
    state: StopState
    why: str
    on: date | None = None

    @property
    def word(self) -> str:
        """What it is called."""
        return tr(STOP_WORDS[self.key])

    @property
    def in_words(self) -> str:
        """All of it: *Shop, next: 3 of 7 to buy*."""
        return f"{self.word}, {_state_said(self.state)}: {self.why}"


@dataclass(frozen=True, slots=True)
class StopLine:
    """The five stops of a shoot, in their order."""

    stops: tuple[Stop, ...]

    @property
    def next(self) -> Stop | None:
        """What is to be done now; None once the shoot is logged."""
        return next((each for each in self.stops if each.state == "next"), None)

    @property
    def in_words(self) -> str:
        """All stops, a sentence each."""
        return " ".join(f"{each.in_words}." for each in self.stops)

    def __getitem__(self, key: StopKey) -> Stop:
        return self.stops[STOPS.index(key)]


@dataclass(frozen=True, slots=True)
class ToShop:
    """The kinds that a shoot takes and that are bought: those still to buy, and how many in all."""

    left: tuple[str, ...]
    of: int


def stop_line(plan: ShootPlan, mise: MiseEnPlace, shop: ToShop, on: date) -> StopLine:
    """Where a shoot stands on a day."""
    shoot = plan.shoot
    if shoot.log is not None:
        return StopLine((*_behind(shoot), _filmed(shoot), _logged(shoot, shoot.log)))
    if shoot.state == "filmed":
        return StopLine((*_behind(shoot), _filmed(shoot), _to_log(plan)))
    ahead = (_idea(plan), _shop(plan, shop, mise), _prepare(mise, plan), _film(shoot, on))
    return StopLine((*_one_next(ahead, past=shoot.on < on), _count_later(shoot)))


def day_in_words(day: date, on: date | None = None) -> str:
    """*3 December*, with its year where that is another than on the day it is said.

    >>> day_in_words(date(2026, 12, 3), date(2026, 11, 1)), day_in_words(date(2026, 12, 3))
    ('3 December', '3 December 2026')
    """
    return day_of_year(day) if on is not None and on.year == day.year else day_said(day)


def _state_said(state: StopState) -> str:
    match state:
        case "done":
            return tr_about("how a stop of a shoot stands", "done")
        case "next":
            return tr_about("how a stop of a shoot stands", "next")
        case "later":
            return tr_about("how a stop of a shoot stands", "later")
        case "not needed":
            return tr_about("how a stop of a shoot stands", "not needed")


# What lies behind a shoot that was filmed


def _behind(shoot: Shoot) -> Iterator[Stop]:
    """It was filmed: nobody asks any more what was missing."""
    yield Stop("idea", "done", _drinks(shoot))
    yield Stop("shop", "not needed", tr("it is filmed"))
    yield Stop("prepare", "not needed", tr("it is filmed"))


def _filmed(shoot: Shoot) -> Stop:
    said = tr("filmed {day}", day=day_in_words(shoot.on))
    return Stop("film", "done", said, shoot.on)


def _to_log(plan: ShootPlan) -> Stop:
    """What nobody has decided yet: every bottle that it drew on as planned."""
    many = len(plan.menu.draws)
    said = (
        tr("{bottles} not logged", bottles=counted(many, "bottle"))
        if many
        else tr("its log is not written")
    )
    return Stop("count", "next", said)


def _logged(shoot: Shoot, log: ShootLog) -> Stop:
    taken = len(log.bottles)
    undecided = sum(each.counted is None for each in log.bottles)
    said = tr(
        "logged {day}, {bottles}",
        day=day_in_words(log.at.date()),
        bottles=counted(taken, "bottle"),
    )
    if undecided:
        said += tr(", {undecided} of them not counted", undecided=undecided)
    return Stop("count", "done", said, log.at.date())


# What lies ahead


def _idea(plan: ShootPlan) -> Stop:
    shoot = plan.shoot
    if not shoot.drinks:
        return Stop("idea", "next", tr("no drink yet"))
    if plan.removed:
        return Stop(
            "idea",
            "next",
            tr("the spec of {names} was removed", names=spoken_list(plan.removed, "and")),
        )
    if plan.unsettled:
        return Stop("idea", "next", not_understood(plan.unsettled))
    if not _is_anything_poured(plan):
        return Stop("idea", "next", tr("no serve is planned"))
    return Stop("idea", "done", _drinks(shoot))


def _is_anything_poured(plan: ShootPlan) -> bool:
    return any(order.serves for order in plan.menu.orders)


def _shop(plan: ShootPlan, shop: ToShop, mise: MiseEnPlace) -> Stop:
    if not _is_anything_poured(plan):
        return Stop("shop", "later", tr(NO_DRINKS))
    if shop.left:
        said = tr("{left} of {of} to buy", left=len(shop.left), of=shop.of)
        return Stop("shop", "next", said)
    if plan.menu.lacking and not mise.make:
        many = len(plan.menu.lacking)
        out = tr("1 line runs out") if many == 1 else tr("{many} lines run out", many=many)
        return Stop("shop", "next", out)
    if shop.of:
        there = tr("all {of} there", of=shop.of) if shop.of > 1 else tr("it is there")
        return Stop("shop", "done", there)
    return Stop("shop", "not needed", tr("nothing to buy"))


def _prepare(mise: MiseEnPlace, plan: ShootPlan) -> Stop:
    """What must stand there before the day; then, once ticking has begun, the steps of it."""
    if not _is_anything_poured(plan):
        return Stop("prepare", "later", tr(NO_DRINKS))
    ticked, steps = plan.shoot.ticked, mise.steps
    done = sum(each.key in ticked for each in steps)
    to_make = [each for each in mise.make if each.task == "make"]
    left = left_to_make(mise, plan.shoot)
    of = len({*_made_already(plan), *(each.ingredient for each in to_make)})
    rest = tr("{done} of {of} steps ticked", done=done, of=len(steps)) if done else ""
    if left:
        made = of - len({each.ingredient for each in left})
        said = (
            tr("made {made} of {of}", made=made, of=of)
            if made
            else tr("{things} to make", things=counted(of, "thing"))
        )
        return Stop("prepare", "next", ", ".join(filter(None, (said, rest))))
    if 0 < done < len(steps):
        return Stop("prepare", "next", rest)
    if of:
        return Stop("prepare", "done", tr("made {made} of {of}", made=of, of=of))
    if done:
        return Stop("prepare", "done", rest)
    return Stop("prepare", "not needed", tr("nothing to make ahead"))


def left_to_make(mise: MiseEnPlace, shoot: Shoot) -> Sequence[ToMake]:
    """What is still to be made ahead, what is begun first before."""
    return [each for each in mise.make if each.task == "make" and each.key not in shoot.ticked]


def _made_already(plan: ShootPlan) -> Iterator[str]:
    """The kinds made here that stand there already, and are poured."""
    for each in plan.menu.draws:
        if each.bottle.product.house_made:
            yield each.bottle.ingredient


def _film(shoot: Shoot, on: date) -> Stop:
    return Stop("film", "next", _when(shoot.on, on), shoot.on)


def _when(day: date, on: date) -> str:
    """When a shoot is, said on a day."""
    said = day_in_words(day, on)
    if day < on:
        return tr("its day was {day}", day=said)
    match (day - on).days:
        case 0:
            return tr_about("when a shoot is filmed", "today")
        case 1:
            return tr_about("when a shoot is filmed", "tomorrow")
    return tr("on {weekday} {day}", weekday=day_of_week(day), day=said)


def _count_later(shoot: Shoot) -> Stop:
    return Stop("count", "later", tr("once it is filmed"))


def _one_next(stops: Sequence[Stop], *, past: bool) -> Iterator[Stop]:
    """The first of those not done is next; after its day that is the filming, come what may."""
    found = False
    for each in stops:
        if each.state != "next":
            yield each
        elif past and each.key in ("shop", "prepare"):
            yield replace(each, state="not needed", why=f"its day is past; {each.why}")
        elif found:
            yield replace(each, state="later")
        else:
            found = True
            yield each


def _drinks(shoot: Shoot) -> str:
    return counted(len(shoot.drinks), "drink") if shoot.drinks else tr("no drink")
