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
from barkeep.domain.phrases import counted
from barkeep.domain.shoots.making_ahead import ToMake
from barkeep.domain.shoots.mise_en_place import MiseEnPlace
from barkeep.domain.shoots.plan import ShootPlan
from barkeep.errors import spoken_list

StopKey = Literal["idea", "shop", "prepare", "film", "count"]
STOPS: tuple[StopKey, ...] = get_args(StopKey)
StopState = Literal["done", "next", "later", "not needed"]
STOP_WORDS: Mapping[StopKey, str] = {
    "idea": "Idea",
    "shop": "Shop",
    "prepare": "Prepare",
    "film": "Film",
    "count": "Count",
}


NO_DRINKS = "once its drinks are chosen"


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
        return STOP_WORDS[self.key]

    @property
    def in_words(self) -> str:
        """All of it: *Shop, next: 3 of 7 to buy*."""
        return f"{self.word}, {self.state}: {self.why}"


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
    year = "" if on is not None and on.year == day.year else f" {day.year}"
    return f"{day.day} {day:%B}{year}"


# What lies behind a shoot that was filmed


def _behind(shoot: Shoot) -> Iterator[Stop]:
    """It was filmed: nobody asks any more what was missing."""
    yield Stop("idea", "done", _drinks(shoot))
    yield Stop("shop", "not needed", "it is filmed")
    yield Stop("prepare", "not needed", "it is filmed")


def _filmed(shoot: Shoot) -> Stop:
    return Stop("film", "done", f"filmed {day_in_words(shoot.on)}", shoot.on)


def _to_log(plan: ShootPlan) -> Stop:
    """What nobody has decided yet: every bottle that it drew on as planned."""
    many = len(plan.menu.draws)
    said = f"{counted(many, 'bottle')} not logged" if many else "its log is not written"
    return Stop("count", "next", said)


def _logged(shoot: Shoot, log: ShootLog) -> Stop:
    taken = len(log.bottles)
    undecided = sum(each.counted is None for each in log.bottles)
    said = f"logged {day_in_words(log.at.date())}, {counted(taken, 'bottle')}"
    if undecided:
        said += f", {undecided} of them not counted"
    return Stop("count", "done", said, log.at.date())


# What lies ahead


def _idea(plan: ShootPlan) -> Stop:
    shoot = plan.shoot
    if not shoot.drinks:
        return Stop("idea", "next", "no drink yet")
    if plan.removed:
        return Stop("idea", "next", f"the spec of {spoken_list(plan.removed, 'and')} was removed")
    if plan.unsettled:
        names = spoken_list([each.named for each in plan.unsettled], "and")
        is_not = "is not" if len(plan.unsettled) == 1 else "are not"
        return Stop("idea", "next", f"{names} {is_not} understood")
    if not _is_anything_poured(plan):
        return Stop("idea", "next", "no serve is planned")
    return Stop("idea", "done", _drinks(shoot))


def _is_anything_poured(plan: ShootPlan) -> bool:
    return any(order.serves for order in plan.menu.orders)


def _shop(plan: ShootPlan, shop: ToShop, mise: MiseEnPlace) -> Stop:
    if not _is_anything_poured(plan):
        return Stop("shop", "later", NO_DRINKS)
    if shop.left:
        return Stop("shop", "next", f"{len(shop.left)} of {shop.of} to buy")
    if plan.menu.lacking and not mise.make:
        many = len(plan.menu.lacking)
        runs = "1 line runs" if many == 1 else f"{many} lines run"
        return Stop("shop", "next", f"{runs} out")
    if shop.of:
        return Stop("shop", "done", f"all {shop.of} there" if shop.of > 1 else "it is there")
    return Stop("shop", "not needed", "nothing to buy")


def _prepare(mise: MiseEnPlace, plan: ShootPlan) -> Stop:
    """What must stand there before the day; then, once ticking has begun, the steps of it."""
    if not _is_anything_poured(plan):
        return Stop("prepare", "later", NO_DRINKS)
    ticked, steps = plan.shoot.ticked, mise.steps
    done = sum(each.key in ticked for each in steps)
    to_make = [each for each in mise.make if each.task == "make"]
    left = left_to_make(mise, plan.shoot)
    of = len({*_made_already(plan), *(each.ingredient for each in to_make)})
    rest = f"{done} of {len(steps)} steps ticked" if done else ""
    if left:
        made = of - len({each.ingredient for each in left})
        said = f"made {made} of {of}" if made else f"{counted(of, 'thing')} to make"
        return Stop("prepare", "next", ", ".join(filter(None, (said, rest))))
    if 0 < done < len(steps):
        return Stop("prepare", "next", rest)
    if of:
        return Stop("prepare", "done", f"made {of} of {of}")
    if done:
        return Stop("prepare", "done", rest)
    return Stop("prepare", "not needed", "nothing to make ahead")


def left_to_make(mise: MiseEnPlace, shoot: Shoot) -> Sequence[ToMake]:
    """What is still to be made ahead, what is begun first before."""
    return [each for each in mise.make if each.task == "make" and each.key not in shoot.ticked]


def _made_already(plan: ShootPlan) -> Iterator[str]:
    """The kinds made here that stand there already, and are poured."""
    for each in plan.menu.draws:
        if each.bottle.product.house_made:
            yield each.bottle.ingredient


def _film(shoot: Shoot, on: date) -> Stop:
    day = day_in_words(shoot.on, on)
    said = {0: "today", 1: "tomorrow"}.get((shoot.on - on).days, f"on {shoot.on:%A} {day}")
    if shoot.on < on:
        said = f"its day was {day}"
    return Stop("film", "next", said, shoot.on)


def _count_later(shoot: Shoot) -> Stop:
    return Stop("count", "later", "once it is filmed")


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
    return counted(len(shoot.drinks), "drink") if shoot.drinks else "no drink"
