"""When a bottle goes off: the last day it is good, why that day, and what it is after it."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, timedelta
from typing import Literal

from barkeep.domain.bottles.bottle import Bottle
from barkeep.domain.days import day_said, day_short
from barkeep.domain.ingredients.ordinary import WithAge
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import counted
from barkeep.translation import tr, tr_noop

Since = Literal["use_by", "opened", "made"]
"""From what the last day is reckoned: the date on it, or how long it keeps open or once made."""

DUE_DAYS = 3
"""So many days before its use-by date a thing is called due."""


@dataclass(frozen=True, slots=True)
class End:
    """The `last` day a bottle is good, and what it is `after` that.

    It was opened or made on `begun` and keeps `keeps_days` from there, by the owner's
    `own` figure or as shipped; both None where the last day is its own use-by date.
    """

    last: date
    since: Since
    after: WithAge
    begun: date | None = None
    keeps_days: int | None = None
    own: bool = False

    def is_over(self, on: date) -> bool:
        """Whether the last day lies before `on`."""
        return self.last < on

    def is_due(self, on: date) -> bool:
        """Whether the last day is over or will be within a few days."""
        return self.last <= on + timedelta(days=DUE_DAYS)

    def is_counted(self, on: date) -> bool:
        """Whether it may be poured on that day: good still, or only past its best."""
        return self.after == "past_its_best" or not self.is_over(on)


def end_of(bottle: Bottle, tree: FamilyTree, *, keeps: int | None, own: bool = False) -> End | None:
    """The earliest of its use-by date and the day it has been open too long; None where neither is.

    Its kind `keeps` so many days once it is open, by the owner's `own` figure or as
    shipped, None for ever. What is made here has no seal to break: its own use-by
    date decides, and how long it keeps from the day it was made, whenever it was begun,
    only where it has none.
    """
    after, opened = tree.with_age(bottle.ingredient), bottle.level.opened
    dated = None if bottle.use_by is None else End(bottle.use_by, "use_by", after)
    if dated is not None and (bottle.product.house_made or opened is None):
        return dated
    made = bottle.made if bottle.product.house_made or opened is None else None
    begun, since = made or opened, _since(made)
    if begun is None or keeps is None:
        return dated
    last = begun + timedelta(days=keeps)
    if dated is not None and dated.last <= last:
        return dated
    return End(last, since, after, begun=begun, keeps_days=keeps, own=own)


def _since(made: date | None) -> Since:
    return "opened" if made is None else "made"


AFTER_WORDS: dict[WithAge, str] = {
    "past_its_best": tr_noop("past its best"),
    "spent": tr_noop("flat, wilted or dried out"),
    "not_safe": tr_noop("not safe"),
}


def last_day_in_words(end: End) -> str:
    """*18 Nov 2026*, or *18 Nov 2026 (opened 13 Nov 2026, keeps 5 days, then not safe)*."""
    if end.begun is None:
        return day_short(end.last)
    told = tr_noop("{last} (opened {begun}, {keeps}, then {after})")
    if end.since == "made":
        told = tr_noop("{last} (made {begun}, {keeps}, then {after})")
    after = tr(AFTER_WORDS[end.after])
    last, begun = day_short(end.last), day_short(end.begun)
    return tr(told, last=last, begun=begun, keeps=_keeps(end), after=after)


def _keeps(end: End) -> str:
    days = counted(end.keeps_days or 0, "day")
    if end.own:
        return tr("keeps {days} by your own figure", days=days)
    return tr("keeps {days}", days=days)


def off_in_words(title: str, end: End, on: date) -> str:
    """That a bottle is past its date, why, and what comes of it, in one sentence."""
    so = tr("so taste it first") if end.after == "past_its_best" else tr("so not counted")
    after = f"{tr(AFTER_WORDS[end.after])}, {so}"
    if end.begun is None:
        return tr(
            "{title} is past its use-by date of {last}: {after}.",
            title=title,
            last=day_said(end.last),
            after=after,
        )
    told = tr_noop("{title} was opened {ago} and {keeps}: {after}.")
    if end.since == "made":
        told = tr_noop("{title} was made {ago} and {keeps}: {after}.")
    ago = days_ago((on - end.begun).days)
    return tr(told, title=title, ago=ago, keeps=_keeps(end), after=after)


def days_ago(days: int) -> str:
    """*1 day ago*, *3 days ago*."""
    return tr("{n} day ago", n=days) if days == 1 else tr("{n} days ago", n=days)
