"""What to pour, in amounts that can be measured, and what a line asks for as it is written."""

from __future__ import annotations

from math import floor

from barkeep.domain.amounts.amount import show_amount, show_number, show_range
from barkeep.domain.amounts.rounding import Style, show_as
from barkeep.domain.amounts.units import BarUnits
from barkeep.domain.bar.snapshot import Settings
from barkeep.domain.drink.contents import amount_poured
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.specs.ratios import MEASURES
from barkeep.domain.specs.spec import Line, Spec

_WISHES = ("oz", "ml", "cl")
"""The styles in which every volume is shown whatever the spec says."""
_SCALES = ((10.0, 1.0), (2.0, 0.5), (0.0, 0.1))
"""From so many grams on, weighed to so many, as a kitchen's scales do (*common practice*)."""


def measured_style(spec: Spec, settings: Settings) -> Style:
    """How amounts of a spec are measured: as the bar wishes, else as the spec is written."""
    if settings.shown_in in _WISHES:
        return settings.shown_in
    units = {line.unit for line in spec.lines}
    if units & {"oz", "imp_oz", "jigger"}:
        return "oz"
    return "cl" if "cl" in units and "ml" not in units else "ml"


def as_asked(line: Line, spec: Spec, settings: Settings, tree: FamilyTree) -> str:
    """What one serve takes of a line: as written, unless the bar shows another measure."""
    unit, style = line.unit, measured_style(spec, settings)
    kind = tree[line.ingredient]
    wished = settings.shown_in in _WISHES and unit in MEASURES and unit != style
    if not line.amount or unit is None or spec.serves != 1 or (wished and kind.unit == "ml"):
        return measured(
            amount_poured(line, tree),
            key=line.ingredient,
            style=style,
            settings=settings,
            tree=tree,
        )
    if unit == "each":
        return pieces(line.amount, tree.in_sentence(line.ingredient))
    return show_range(line.amount, line.amount_high, unit, settings.units)


def measured(quantity: float, key: str, style: Style, settings: Settings, tree: FamilyTree) -> str:
    """A quantity of an ingredient, in its own unit, as it can be measured; pieces are named."""
    unit = tree[key].unit
    if unit == "each":
        return pieces(max(0.5, floor(2.0 * quantity + 0.5) / 2.0), tree.in_sentence(key))
    if unit == "g":
        step = next(step for least, step in _SCALES if quantity >= least)
        quantity = max(step, floor(quantity / step + 0.5) * step)
    return show_as(quantity, unit, style, settings.units)


def loosely(amount: float, unit: str, units: BarUnits) -> str:
    """So many dashes, drops or splashes, at least one: none of them can be cut.

    >>> loosely(1.6, "dash", BarUnits())
    '2 dashes'
    """
    return show_amount(max(1.0, floor(amount + 0.5)), unit, units)


def pieces(number: float, name: str) -> str:
    """So many of a thing.

    >>> pieces(3.5, "sugar cube"), pieces(1.0, "lime"), pieces(2.0, "mint leaf")
    ('3 ½ sugar cubes', '1 lime', '2 mint leaves')
    """
    return f"{show_number(number, fractions=True)} {_several(name) if number > 1.0 else name}"


def _several(name: str) -> str:
    if name.endswith("s") and not name.endswith("ss"):
        return name  # the name is a plural already: cloves, allspice berries
    if name.endswith("leaf"):
        return f"{name[:-1]}ves"
    if name.endswith("y") and name[-2:-1] not in "aeiou":
        return f"{name[:-1]}ies"
    return f"{name}es" if name.endswith(("ss", "ch", "sh", "x")) else f"{name}s"
