"""What the level dialog can be asked to do: count, pour, waste, correct."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING, Any

from barkeep.application.done import Done
from barkeep.desktop.models.amount_text import read_amount, read_change
from barkeep.desktop.models.count_rows import (
    CountRow,
    Typed,
    difference_explained,
    difference_in_words,
    exactly,
    reading_in_words,
)
from barkeep.domain.amounts import BarUnits
from barkeep.domain.inventory import Bottle
from barkeep.domain.level_words import doubt_of, number, quantity

if TYPE_CHECKING:
    from barkeep.application.bar import Bar

HOW_TO_COUNT = (
    "A share of the bottle, a volume, its weight with what is in it but without its cap, "
    "or the height of the liquid above the table."
)


@dataclass(frozen=True, slots=True)
class Outcome:
    """What a text would come to: the level after it, that in words, and what stands after ±."""

    level: float
    words: str
    doubt: float = 0.0


@dataclass(frozen=True, slots=True)
class LevelTask:
    """One change of one bottle's level.

    `preview` raises a `UserError` for a text that cannot be used; `perform`
    writes, given the text and a note. `from_gauge` lets the gauge be clicked;
    `help` says more than the hint has room for.
    """

    bottle: Bottle
    title: str
    verb: str
    label: str
    hint: str
    preview: Callable[[str], Outcome]
    perform: Callable[[str, str], Done[Any]]
    said: Callable[[str], str]
    noted: bool = True
    from_gauge: bool = False
    help: str = ""


def count_task(bar: Bar, bottle: Bottle, ingredient: str) -> LevelTask:
    """Write down what is really left."""
    product = bottle.product

    def read(text: str) -> Typed:
        return exactly(bottle, text, bar.snapshot)

    def preview(text: str) -> Outcome:
        typed = read(text)
        row = CountRow(bottle, ingredient, typed)
        found = reading_in_words(typed, bottle)
        words = f"{found}. {_capital(difference_in_words(row))}: {difference_explained(row)}"
        return Outcome(typed.measured.amount, words, doubt_of(typed.measured.sigma))

    def said(text: str) -> str:
        return f"Counted {product.title}: {quantity(read(text).measured.amount, product.unit)}"

    return LevelTask(
        bottle,
        f"Count {product.title}",
        "Count",
        "&What is left",
        {
            "ml": "Such as 0.45, 315 ml, 812 g or 11.5 cm",
            "g": "Such as 250 g, or 0.4 of it",
            "each": "Such as 4",
        }[product.unit],
        preview,
        lambda text, _note: bar.inventory.count({bottle.id: read(text).measured}),
        said,
        noted=False,
        from_gauge=product.unit != "each",
        help=HOW_TO_COUNT if product.unit == "ml" else "",
    )


def pour_task(bar: Bar, bottle: Bottle) -> LevelTask:
    """Take an amount out for use."""
    return _taking(bar, bottle, ("Pour", "Poured"), bar.inventory.pour)


def waste_task(bar: Bar, bottle: Bottle) -> LevelTask:
    """Write off what was spilled or thrown away."""
    return _taking(bar, bottle, ("Waste", "Wasted"), bar.inventory.waste)


def correct_task(bar: Bar, bottle: Bottle) -> LevelTask:
    """Put the ledger right by a signed change."""
    unit, title = bottle.product.unit, bottle.product.title

    def read(text: str) -> float:
        return read_change(text, unit, units_of(bar, bottle))

    def preview(text: str) -> Outcome:
        return _outcome(bottle, bottle.level.amount + read(text))

    return LevelTask(
        bottle,
        f"Correct {title}",
        "Correct",
        "&More or less",
        f"Such as +{_some(bottle)} or −{_some(bottle)}",
        preview,
        lambda text, note: bar.inventory.correct(bottle.id, read(text), note),
        lambda _text: f"Corrected {title}",
    )


def units_of(bar: Bar, bottle: Bottle) -> BarUnits:
    """What the bar means by its measures; a dash is what this bottle's dasher gives."""
    units = bar.snapshot.settings.units
    return units if bottle.dash_ml is None else replace(units, dash_ml=bottle.dash_ml)


def _taking(
    bar: Bar,
    bottle: Bottle,
    verbs: tuple[str, str],
    take: Callable[[int, float, str], Done[Bottle]],
) -> LevelTask:
    unit, title = bottle.product.unit, bottle.product.title
    verb, past = verbs

    def read(text: str) -> float:
        return read_amount(text, unit, units_of(bar, bottle))

    def preview(text: str) -> Outcome:
        return _outcome(bottle, bottle.level.amount - read(text))

    return LevelTask(
        bottle,
        f"{verb} from {title}",
        verb,
        "&How much",
        f"Such as {_some(bottle)}" + (" or 2 oz" if unit == "ml" else ""),
        preview,
        lambda text, note: take(bottle.id, read(text), note),
        lambda text: f"{past} {quantity(read(text), unit)} of {title}",
    )


def _outcome(bottle: Bottle, level: float) -> Outcome:
    unit, size = bottle.product.unit, bottle.product.size
    if level < 0:
        short = quantity(-level, unit)
        return Outcome(0.0, f"That is {short} more than the ledger says is left")
    if level > size:
        return Outcome(size, f"That is {quantity(level - size, unit)} more than it holds")
    return Outcome(level, f"Leaves {number(level, unit)} of {quantity(size, unit)}")


def _capital(words: str) -> str:
    return words[:1].upper() + words[1:]


def _some(bottle: Bottle) -> str:
    return {"ml": "60 ml", "g": "20 g", "each": "1"}[bottle.product.unit]
