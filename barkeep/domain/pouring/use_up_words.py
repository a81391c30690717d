"""What to drink before it goes, in words for both faces."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from barkeep.domain.amounts.units import Unit
from barkeep.domain.phrases import counted
from barkeep.domain.pouring.serves import SLACK
from barkeep.domain.pouring.use_up import NEARLY_ALL, Ageing, Use, UsedIn, UseUp
from barkeep.domain.pouring.words import plain_amount, unproved_because
from barkeep.errors import spoken_list


def use_up_in_words(found: UseUp) -> Iterator[str]:
    """What it comes to, how good that is, and what nothing is poured from; a sentence each."""
    if not found.ageing:
        yield f"Nothing that is here goes off within {counted(found.days, 'day')}."
        return
    if not found.drinks and found.ended == "cancelled":
        yield "It was stopped before any drink was found."
        return
    if not found.drinks:
        things = counted(len(found.ageing), "thing goes", "things go")
        yield f"{things} off within {counted(found.days, 'day')}, and no drink uses any of it."
        return
    serves = sum(each.serves for each in found.drinks)
    drinks = counted(len(found.drinks), "drink")
    days = counted(found.days, "day")
    much = "nearly all that can be used" if found.serves is None else "as much as so many can"
    yield f"{counted(serves, 'serve')} of {drinks} use {much} of what goes off within {days}."
    yield _how_good(found)
    if found.idle:
        names = spoken_list(list(dict.fromkeys(map(_title, found.idle))), "and")
        yield f"Nothing is poured from {names}."


def _how_good(found: UseUp) -> str:
    if not found.proved_best:
        why = unproved_because(found.ended)
        return f"{why} before it was known whether anything uses more, or as much in less."
    if found.serves is None:
        share = f"{NEARLY_ALL:.0%}"
        return f"No fewer serves use {share} of all that could be used; that is proved."
    return f"No {counted(found.serves, 'serve')} use more, ready drinks first; that is proved."


def drink_in_words(each: UsedIn) -> str:
    """What a drink uses: *3 × Sherry Flip, with 177 ml of Chalk Bank oloroso*."""
    instead = "" if each.verdict == "ready" else ", which takes a stand-in"
    return f"{each.serves} × {each.spec.name}{instead}: {uses_in_words(each)}"


def uses_in_words(each: UsedIn) -> str:
    """So much of each ageing bottle: *177 ml of Chalk Bank oloroso*."""
    return spoken_list([_use_in_words(use) for use in _shown(each.uses)], "and")


def _shown(uses: Sequence[Use]) -> list[Use]:
    return [each for each in uses if each.amount > SLACK]


def _use_in_words(use: Use) -> str:
    return f"{_amount(use.amount, use.bottle.product.unit)} {use.bottle.product.title}"


def ageing_in_words(each: Ageing, found: UseUp) -> str:
    """A bottle's last day, and what is then left of it: *2026-12-01, 12 ml left of 440 ml*."""
    unit = each.bottle.product.unit
    day = f"to {each.last}" if each.last >= found.on else f"to {each.last}, which is over"
    left, there = _amount(each.left, unit), _amount(each.bottle.level.amount, unit)
    return f"{day}: {left} left of {there}"


def _amount(amount: float, unit: Unit) -> str:
    return plain_amount(round(amount, 1 if unit == "each" else 0), unit)


def _title(each: Ageing) -> str:
    return each.bottle.product.title
