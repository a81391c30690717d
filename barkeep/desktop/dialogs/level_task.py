"""What the level dialog can be asked to do: count, pour, waste, correct."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

from barkeep.application.done import Done
from barkeep.desktop.models.amount_text import read_amount, read_change
from barkeep.desktop.models.bottle_words import number, quantity
from barkeep.desktop.models.count_rows import CountRow, difference_in_words, exactly
from barkeep.domain.inventory import Bottle

if TYPE_CHECKING:
    from barkeep.application.bar import Bar


@dataclass(frozen=True, slots=True)
class Outcome:
    """What a text would come to: the level after it, and that in words."""

    level: float
    words: str


@dataclass(frozen=True, slots=True)
class LevelTask:
    """One change of one bottle's level.

    `preview` raises a `UserError` for a text that cannot be used; `perform`
    writes, given the text and a note. `from_gauge` lets the gauge be clicked.
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


def count_task(bar: Bar, bottle: Bottle, ingredient: str) -> LevelTask:
    """Write down what is really left."""
    product = bottle.product

    def row(text: str) -> CountRow:
        return CountRow(bottle, ingredient, exactly(bottle, text))

    def preview(text: str) -> Outcome:
        counted = row(text)
        level = counted.expected - counted.difference
        return Outcome(level, f"{quantity(level, product.unit)}: {difference_in_words(counted)}")

    def said(text: str) -> str:
        level = exactly(bottle, text).measured.amount
        return f"Counted {product.title}: {quantity(level, product.unit)}"

    return LevelTask(
        bottle,
        f"Count {product.title}",
        "Count",
        "&What is left",
        {
            "ml": "Such as 0.45 or 4/10 of the bottle, 315 ml or 10 oz",
            "g": "Such as 250 g, or 0.4 of it",
            "each": "Such as 4",
        }[product.unit],
        preview,
        lambda text, _note: bar.inventory.count({bottle.id: exactly(bottle, text).measured}),
        said,
        noted=False,
        from_gauge=product.unit != "each",
    )


def pour_task(bar: Bar, bottle: Bottle) -> LevelTask:
    """Take an amount out for use."""
    return _taking(bottle, "Pour", "Poured", bar.inventory.pour)


def waste_task(bar: Bar, bottle: Bottle) -> LevelTask:
    """Write off what was spilled or thrown away."""
    return _taking(bottle, "Waste", "Wasted", bar.inventory.waste)


def correct_task(bar: Bar, bottle: Bottle) -> LevelTask:
    """Put the ledger right by a signed change."""
    unit, title = bottle.product.unit, bottle.product.title

    def preview(text: str) -> Outcome:
        return _outcome(bottle, bottle.level.amount + read_change(text, unit))

    return LevelTask(
        bottle,
        f"Correct {title}",
        "Correct",
        "&More or less",
        f"Such as +{_some(bottle)} or −{_some(bottle)}",
        preview,
        lambda text, note: bar.inventory.correct(bottle.id, read_change(text, unit), note),
        lambda _text: f"Corrected {title}",
    )


def _taking(
    bottle: Bottle,
    verb: str,
    past: str,
    take: Callable[[int, float, str], Done[Bottle]],
) -> LevelTask:
    unit, title = bottle.product.unit, bottle.product.title

    def preview(text: str) -> Outcome:
        return _outcome(bottle, bottle.level.amount - read_amount(text, unit))

    return LevelTask(
        bottle,
        f"{verb} from {title}",
        verb,
        "&How much",
        f"Such as {_some(bottle)}" + (" or 2 oz" if unit == "ml" else ""),
        preview,
        lambda text, note: take(bottle.id, read_amount(text, unit), note),
        lambda text: f"{past} {quantity(read_amount(text, unit), unit)} of {title}",
    )


def _outcome(bottle: Bottle, level: float) -> Outcome:
    unit, size = bottle.product.unit, bottle.product.size
    if level < 0:
        short = quantity(-level, unit)
        return Outcome(0.0, f"That is {short} more than the ledger says is left")
    if level > size:
        return Outcome(size, f"That is {quantity(level - size, unit)} more than it holds")
    return Outcome(level, f"Leaves {number(level, unit)} of {quantity(size, unit)}")


def _some(bottle: Bottle) -> str:
    return {"ml": "60 ml", "g": "20 g", "each": "1"}[bottle.product.unit]
