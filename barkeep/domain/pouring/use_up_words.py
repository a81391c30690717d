"""What to drink before it goes, in words for both faces."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from barkeep.domain.amounts.units import Unit
from barkeep.domain.days import day_said
from barkeep.domain.phrases import counted
from barkeep.domain.pouring.serves import SLACK
from barkeep.domain.pouring.use_up import NEARLY_ALL, Ageing, Use, UsedIn, UseUp
from barkeep.domain.pouring.words import plain_amount, unproved_because
from barkeep.errors import spoken_list
from barkeep.translation import tr


def use_up_in_words(found: UseUp) -> Iterator[str]:
    """What it comes to, how good that is, and what nothing is poured from; a sentence each."""
    if not found.ageing:
        yield tr("Nothing that is here goes off {within}.", within=within_days(found.days))
        return
    if not found.drinks and found.ended == "cancelled":
        yield tr("It was stopped before any drink was found.")
        return
    if not found.drinks:
        many = len(found.ageing)
        yield tr(
            "1 thing goes off {within}, and no drink uses any of it."
            if many == 1
            else "{many} things go off {within}, and no drink uses any of it.",
            many=many,
            within=within_days(found.days),
        )
        return
    serves = sum(each.serves for each in found.drinks)
    drinks = counted(len(found.drinks), "drink")
    yield tr(
        "{serves} of {drinks} use nearly all that can be used of what goes off {within}."
        if found.serves is None
        else "{serves} of {drinks} use as much as so many can of what goes off {within}.",
        serves=counted(serves, "serve"),
        drinks=drinks,
        within=within_days(found.days),
    )
    yield _how_good(found)
    if found.idle:
        names = spoken_list(list(dict.fromkeys(map(_title, found.idle))), "and")
        yield tr("Nothing is poured from {names}.", names=names)


def within_days(days: int) -> str:
    """*within 1 day*, *within 7 days*."""
    return tr("within {days} day" if days == 1 else "within {days} days", days=days)


def _how_good(found: UseUp) -> str:
    if not found.proved_best:
        why = unproved_because(found.ended)
        return tr(
            "{why} before it was known whether anything uses more, or as much in less.", why=why
        )
    if found.serves is None:
        share = f"{NEARLY_ALL:.0%}"
        return tr(
            "No fewer serves use {share} of all that could be used; that is proved.", share=share
        )
    return tr(
        "No {serves} use more, ready drinks first; that is proved.",
        serves=counted(found.serves, "serve"),
    )


def drink_in_words(each: UsedIn) -> str:
    """What a drink uses: *3 × Sherry Flip, with 177 ml of Chalk Bank oloroso*."""
    instead = "" if each.verdict == "ready" else tr(", which takes a stand-in")
    return f"{each.serves} × {each.spec.name}{instead}: {uses_in_words(each)}"


def uses_in_words(each: UsedIn) -> str:
    """So much of each ageing bottle: *177 ml of Chalk Bank oloroso*."""
    return spoken_list([_use_in_words(use) for use in _shown(each.uses)], "and")


def _shown(uses: Sequence[Use]) -> list[Use]:
    return [each for each in uses if each.amount > SLACK]


def _use_in_words(use: Use) -> str:
    return f"{_amount(use.amount, use.bottle.product.unit)} {use.bottle.product.title}"


def ageing_in_words(each: Ageing, found: UseUp) -> str:
    """A bottle's last day, and what is then left: *to 1 December 2026: 12 ml left of 440 ml*."""
    unit = each.bottle.product.unit
    return tr(
        "to {day}: {left} left of {there}"
        if each.last >= found.on
        else "to {day}, which is over: {left} left of {there}",
        day=day_said(each.last),
        left=_amount(each.left, unit),
        there=_amount(each.bottle.level.amount, unit),
    )


def _amount(amount: float, unit: Unit) -> str:
    return plain_amount(round(amount, 1 if unit == "each" else 0), unit)


def _title(each: Ageing) -> str:
    return each.bottle.product.title
