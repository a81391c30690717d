"""What amounts come to: the only pint registry, conversions, and levels.

The units are barkeep's own (`resources/units.txt`). pint checks them and
works out what each comes to; its factors are exported once to
`resources/unit_factors.toml`, so that converting is plain arithmetic and
starting the program does not import pint.
"""

from __future__ import annotations

import re
import tomllib
from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from typing import TYPE_CHECKING, Literal

from barkeep import resource_files
from barkeep.domain.amounts import (
    UNITS,
    Amount,
    amount_at_start,
    parse_amount,
    show_amount,
    show_number,
    show_range,
    spaced,
    unit_named,
)
from barkeep.domain.ingredients import Unit
from barkeep.domain.inventory import TENTHS_SIGMA, VOLUME_SIGMA_ML, CountMethod
from barkeep.errors import AmountError, LevelAboveSize, WrongDimension

if TYPE_CHECKING:
    import pint

__all__ = [
    "Amount",
    "MeasuredLevel",
    "dimension",
    "parse_amount",
    "parse_level",
    "show_amount",
    "show_quantity",
    "show_range",
    "show_volume",
    "to_quantity",
    "unit_named",
]

Dimension = Literal["volume", "mass", "count", "part", "length", "loose"]
"""What a unit measures; *loose* is a piece of no fixed size, such as a leaf or a wedge."""

_SAID: Mapping[Dimension, str] = {
    "volume": "a volume",
    "mass": "a weight",
    "count": "a number of pieces",
    "part": "a share of the drink",
    "length": "a length",
    "loose": "a piece of no fixed size",
}
_WANTED: Mapping[Unit, str] = {
    "ml": "a volume such as 60 ml or 2 oz",
    "g": "a weight such as 10 g",
    "each": "a number of pieces such as 2",
}
_LEVEL_WANTED: Mapping[Unit, str] = {
    "ml": "a share of the bottle such as 0.4 or 4/10, or a volume such as 315 ml",
    "g": "a weight such as 250 g, or a share such as 0.4",
    "each": "a number of pieces such as 4",
}
_DIMENSION: Mapping[Unit, Dimension] = {"ml": "volume", "g": "mass", "each": "count"}

_BASES: Mapping[str, Dimension] = {
    "ml": "volume",
    "g": "mass",
    "each": "count",
    "part": "part",
    "cm": "length",
}
EXPORT_HEAD = """\
# What each unit comes to in ml, g, each, part or cm. Exported from units.txt by pint.
# After a change there: python -m barkeep.domain.measures > resources/unit_factors.toml"""

WEIGHT_SIGMA_G = 1.0
"""One-sigma doubt of a kitchen scale (*common practice*)."""

_ROUNDING = 1e-6
_PERCENT = re.compile(r"(?P<number>[0-9]{1,3}(?:[.,][0-9]+)?)[ ]?%")


@dataclass(frozen=True, slots=True)
class MeasuredLevel:
    """A level in the bottle's unit, how it was measured, and its one-sigma doubt."""

    amount: float
    method: CountMethod
    sigma: float


@cache
def registry() -> pint.UnitRegistry[float]:
    """The pint registry of barkeep's own units, built once from `units.txt`."""
    import pint  # heavy: it brings numpy along

    lines = resource_files.read_text("units.txt").splitlines()
    units: pint.UnitRegistry[float] = pint.UnitRegistry(None)
    units.load_definitions(lines)
    return units


def exported_factors() -> str:
    """The text of `unit_factors.toml`: what each unit comes to, as pint works it out."""
    units = registry()
    lines = [EXPORT_HEAD]
    for base, kind in _BASES.items():
        lines.append(f"\n[{kind}]")
        for name in sorted(UNITS):
            if name in units and units.is_compatible_with(name, base):
                lines.append(f"{name} = {float(units.Quantity(1.0, name).to(base).magnitude)!r}")
    return "\n".join(lines) + "\n"


@cache
def _factors() -> Mapping[str, tuple[Dimension, float]]:
    """Unit -> its dimension and how much of that dimension's base unit it is.

    Read from what pint exported, so that nothing at a start imports pint.
    """
    tables = tomllib.loads(resource_files.read_text("unit_factors.toml"))
    return {
        unit: (kind, float(factor))
        for kind in _BASES.values()
        for unit, factor in tables[kind].items()
    }


def dimension(unit: str) -> Dimension:
    """What a unit measures."""
    return _factors().get(unit, ("loose", 1.0))[0]


def to_quantity(amount: Amount, unit: Unit) -> float:
    """An amount in *ml*, *g* or *each*; of a range its lower end.

    Raises `WrongDimension`.

    >>> to_quantity(Amount(6.0, None, "cl"), "ml")
    60.0
    """
    kind, factor = _factors().get(amount.unit, ("loose", 1.0))
    if kind != _DIMENSION[unit]:
        shown = show_range(amount.value, amount.high, amount.unit)
        raise WrongDimension(shown, _SAID[kind], _WANTED[unit])
    # 12 digits: 0.1 l is 100 ml, not 100.00000000000001.
    return float(f"{amount.value * factor:.12g}")


def parse_level(text: str, size: float, unit: Unit, bottle_title: str) -> MeasuredLevel:
    """Read what is left in a bottle of `size` (in `unit`).

    A bare number up to 1, `4/10` and `40 %` are shares of the bottle; pieces
    are counted, so for them a whole number is just that many.

    Raises `AmountError`, `NegativeAmount`, `WrongDimension` or `LevelAboveSize`.
    """
    plain = spaced(text.strip())
    share = _share(plain, unit)
    if share is not None:
        amount, method, sigma = share * size, "tenths", TENTHS_SIGMA * size
        return MeasuredLevel(_within(amount, size, unit, bottle_title), "tenths", sigma)
    found = amount_at_start(plain)
    if found is None or plain[found.end :].strip(" ."):
        raise AmountError(text.strip()[:60], f"write {_LEVEL_WANTED[unit]}")
    if found.high is not None:
        raise AmountError(text.strip(), "a level is one number, not a range")
    if found.unit is None and unit == "ml":
        expected = "a share of the bottle is 0 to 1, and a volume needs a unit, such as 315 ml"
        raise AmountError(text.strip(), expected)
    try:
        amount = to_quantity(Amount(found.value, None, found.unit or unit), unit)
    except WrongDimension as wrong:
        raise WrongDimension(text.strip(), wrong.given, _LEVEL_WANTED[unit]) from None
    method, sigma = _MEASURED[unit]
    return MeasuredLevel(_within(amount, size, unit, bottle_title), method, sigma)


_MEASURED: Mapping[Unit, tuple[CountMethod, float]] = {
    "ml": ("volume", VOLUME_SIGMA_ML),
    "g": ("weight", WEIGHT_SIGMA_G),
    "each": ("volume", 0.0),
}


def show_volume(volume_ml: float) -> str:
    """A volume in ml as it is printed: *22.5 ml*, *315 ml*."""
    return show_amount(volume_ml, "ml")


def show_quantity(amount: float, unit: Unit) -> str:
    """An amount in an ingredient's or bottle's own unit as it is printed."""
    return show_number(amount, fractions=True) if unit == "each" else show_amount(amount, unit)


def _share(text: str, unit: Unit) -> float | None:
    """The share of a bottle that a text names, None where it names an amount instead."""
    percent = _PERCENT.fullmatch(text)
    if percent:
        return float(percent["number"].replace(",", ".")) / 100.0
    found = amount_at_start(text)
    if found is None or found.unit or found.high is not None or text[found.end :].strip():
        return None
    pieces = unit == "each" and found.value == int(found.value)  # 1 is one piece, not all
    return None if found.value > 1.0 or pieces else found.value


def _within(amount: float, size: float, unit: Unit, bottle_title: str) -> float:
    if amount > size + _ROUNDING:
        raise LevelAboveSize(float(f"{amount:.6g}"), size, unit, bottle_title)
    return min(amount, size)


if __name__ == "__main__":
    print(exported_factors(), end="")
