"""The lines of a spec as parts of one another: 2 parts to ¾ part to ¾ part."""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction
from functools import reduce
from math import gcd, lcm

from barkeep.domain.amounts.amount import NEAR_ENOUGH, Amount, show_amount, show_range
from barkeep.domain.amounts.measures import to_quantity
from barkeep.domain.amounts.rounding import rounded
from barkeep.domain.amounts.units import FRACTIONAL, US_UNITS, BarUnits
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.specs.spec import Line, Spec
from barkeep.translation import tr

MEASURES = frozenset(
    {
        *("ml", "cl", "dl", "l", "oz", "imp_oz", "jigger", "shot", "pony", "wineglass", "tbsp"),
        *("dessertspoon", "cup", "gill", "imp_gill", "pint", "imp_pint"),
    }
)
"""Units that are poured to a mark; a dash, a splash or a small spoon stays what it is."""
_PRICES: Mapping[int, tuple[float, int]] = {
    1: (0.0, 12),
    2: (2.0, 6),
    4: (2.5, 5),
    3: (4.5, 3),
    8: (5.0, 1),
}
"""Denominator -> how much harder it is to read than one part, and below how many parts it is plain.

A whole number costs one less than itself, so that 2 : ¾ : ¾ is cheaper than
8 : 3 : 3, and 2 : 1 : 1 than 1 ½ : ¾ : ¾. All of it is a choice of barkeep.
"""
_NOISE = Fraction(1, 10**6)
"""A share by which a ratio may miss a plain one: what arithmetic and twelve digits leave."""


@dataclass(frozen=True, slots=True)
class Parts:
    """What one part comes to, and how many parts a line takes, by the line's number.

    `part` is one part of what the lines write, where they share a unit; where
    they do not, it is None and `part_ml` that of one serve.
    """

    part_ml: float
    of_line: Mapping[int, Fraction]
    part: Amount | None = None


def parts_of(lines: Sequence[Line], tree: FamilyTree) -> Parts | None:
    """The ratios of what is poured; None for fewer than two such lines, or written in parts."""
    poured = {
        number: line
        for number, line in enumerate(lines)
        if line.unit in MEASURES and line.quantity and tree[line.ingredient].unit == "ml"
    }
    if len(poured) < 2 or any(line.unit == "part" for line in lines):
        return None
    unit = _shared_unit(poured.values())
    if unit is not None:
        sizes = [_as_written(line) for line in poured.values()]
        part = _easiest_part(sizes)
        if part is not None:
            amount = Amount(float(part), None, unit)
            return Parts(to_quantity(amount, "ml"), _ratios(poured, sizes, part), amount)
    sizes = [rounded(line.quantity or 0.0, "ml").value for line in poured.values()]
    if not all(sizes):
        return None
    part = _easiest_part(sizes) or _common_measure(sizes)
    return Parts(float(part), _ratios(poured, sizes, part))


def parts_in_words(spec: Spec, tree: FamilyTree, units: BarUnits = US_UNITS) -> str:
    """How large a part of a spec is, *1 part = ½ oz*, or why there are none to show.

    Empty for a spec that is written in parts.
    """
    parts = parts_of(spec.lines, tree)
    if parts is not None:
        size = parts.part or Amount(parts.part_ml * spec.serves, None, "ml")
        return tr("1 part = {size}", size=show_amount(size.value, size.unit, units))
    if any(line.unit == "part" for line in spec.lines):
        return ""
    return tr("Not shown in parts: that takes two lines in more than spoons, dashes or pieces")


def as_parts(lines: Sequence[Line], tree: FamilyTree) -> tuple[str | None, ...]:
    """Each line's amount in parts as it is printed; None for a line that stays as written."""
    parts = parts_of(lines, tree)
    ratios = parts.of_line if parts else {}
    return tuple(
        _label(ratios[number], line) if number in ratios else None
        for number, line in enumerate(lines)
    )


def _label(ratio: Fraction, line: Line) -> str:
    low, high = float(ratio), None
    if line.amount_high is not None and line.amount:
        high = low * line.amount_high / line.amount
    return show_range(low, high, "part")


def _ratios(
    numbers: Collection[int], sizes: Sequence[Fraction], part: Fraction
) -> Mapping[int, Fraction]:
    ratios = (_plain(size / part) or size / part for size in sizes)
    return dict(zip(numbers, ratios, strict=True))


def _shared_unit(lines: Collection[Line]) -> str | None:
    units = {line.unit for line in lines}
    return units.pop() if len(units) == 1 else None


def _as_written(line: Line) -> Fraction:
    """A line's amount in its own unit, where 0.33 oz is a third of one."""
    exact = Fraction(repr(line.amount or 0.0))
    if line.unit not in FRACTIONAL:
        return exact
    steps = (Fraction(round(exact * under), under) for under in (8, 3))
    near = min(steps, key=lambda each: abs(each - exact))
    return near if abs(near - exact) <= NEAR_ENOUGH * exact else exact


def _easiest_part(sizes: Sequence[Fraction]) -> Fraction | None:
    """The part that makes the ratios easiest to read; None where none makes them plain."""
    found: dict[tuple[float, int, Fraction], Fraction] = {}
    for ratio in _PLAIN:
        part = sizes[0] / ratio
        ratios = _all_plain(sizes, part)
        if ratios:
            broken = sum(each.denominator > 1 for each in ratios)
            found[sum(_PLAIN[each] for each in ratios), broken, -part] = part
    return found[min(found)] if found else None


def _all_plain(sizes: Sequence[Fraction], part: Fraction) -> list[Fraction]:
    """Every ratio, none where one of them is not plain."""
    found = []
    for size in sizes:
        plain = _plain(size / part)
        if plain is None:
            return []
        found.append(plain)
    return found


def _plain(ratio: Fraction) -> Fraction | None:
    """The ratio that is plain to read and as good as this one, None where there is none."""
    near = ratio.limit_denominator(max(_PRICES))
    return near if near in _PLAIN and abs(near - ratio) <= _NOISE * ratio else None


def _common_measure(sizes: Sequence[Fraction]) -> Fraction:
    """The largest part of which every size is a whole number."""
    under = reduce(lcm, (size.denominator for size in sizes))
    return Fraction(reduce(gcd, (int(size * under) for size in sizes)), under)


def _plain_ratios() -> Mapping[Fraction, float]:
    """The ratios that are plain to read, each with what it costs the reader."""
    found: dict[Fraction, float] = {}
    for under, (price, below) in _PRICES.items():
        for over in range(1, under * below + (under == 1)):
            ratio = Fraction(over, under)
            if ratio.denominator == under:
                found[ratio] = ratio - 1.0 if under == 1 else price + ratio // 1
    return found


_PLAIN = _plain_ratios()
