"""The lines of a spec as the bar likes to see them, each beside how it is written."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass

from barkeep.domain.amounts import OUNCES, US_UNITS, BarUnits, show_range
from barkeep.domain.ingredients import FamilyTree
from barkeep.domain.part_ratios import MEASURES, as_parts
from barkeep.domain.printing import Style, rounded, show_as
from barkeep.domain.specs import Line, Spec

_SPOONS = frozenset({"tsp", "barspoon"})
"""Small enough to stand among ounces as they are."""


@dataclass(frozen=True, slots=True)
class ShownLine:
    """A line as it is shown, and its amount alone, empty where it has none.

    `written` is the line's own text where that says something else, else empty.
    """

    text: str
    amount: str
    written: str = ""


def shown_lines(
    spec: Spec, tree: FamilyTree, style: Style, units: BarUnits = US_UNITS
) -> tuple[ShownLine, ...]:
    """Every line of a spec in a style; dashes, drops and pieces stay what they are.

    A line in ounces that are not the bar's says which ounces they are, in
    every style.
    """
    amounts = _amounts(spec.lines, tree, style, units)
    return tuple(
        _shown(line, amount, tree, units) for line, amount in zip(spec.lines, amounts, strict=True)
    )


def worded(line: Line, name: str, amount: str) -> str:
    """A line's text made from its fields, with its ingredient's name and its amount as given."""
    words = [amount, name]
    text = " ".join(word for word in words if word)
    if line.note:
        text += f", {line.note}" if not re.search(r"[,()]", line.note) else f" ({line.note})"
    if line.min_abv_percent is not None:
        text += f" (at least {line.min_abv_percent:g} %)"
    if line.optional:
        text += " (optional)"
    return f"Garnish: {text}" if line.garnish else text


def _shown(line: Line, amount: str | None, tree: FamilyTree, units: BarUnits) -> ShownLine:
    own = ""
    if line.amount is not None and line.unit is not None:
        own = show_range(line.amount, line.amount_high, line.unit, units)
    foreign = line.unit in OUNCES and line.unit != units.ounce
    if amount is None and not foreign:
        return ShownLine(line.text, own)
    shown = amount or own
    text = worded(line, tree.in_sentence(line.ingredient), shown)
    return ShownLine(text, shown, line.text)


def _amounts(
    lines: Sequence[Line], tree: FamilyTree, style: Style, units: BarUnits
) -> tuple[str | None, ...]:
    """The amount of each line in a style, None where it stays as it is written."""
    if style == "as_written":
        return (None,) * len(lines)
    if style == "parts":
        return as_parts(lines, tree)
    wanted = units.ounce if style == "oz" else style
    kinds = MEASURES | {"part"} if style == "oz" else MEASURES | {"part"} | _SPOONS
    return tuple(
        _poured(line, style, units)
        if line.unit in kinds - {wanted} and tree[line.ingredient].unit == "ml"
        else None
        for line in lines
    )


def _poured(line: Line, style: Style, units: BarUnits) -> str | None:
    if not line.quantity or not line.amount:
        return None
    low = show_as(line.quantity, "ml", style, units)
    if line.amount_high is None:
        return low
    high_ml = line.quantity * line.amount_high / line.amount
    first, last = rounded(line.quantity, style, units), rounded(high_ml, style, units)
    high = show_as(high_ml, "ml", style, units)
    if first.value == last.value and first.unit == last.unit:
        return low
    if first.unit == last.unit:
        return show_range(float(first.value), float(last.value), last.unit, units)
    return f"{low} to {high}"
