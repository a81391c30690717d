"""What amounts come to: the only pint registry, and conversions.

The units are barkeep's own (`resources/units.txt`). pint checks them and
works out what each comes to; its factors are exported once to
`resources/unit_factors.toml`, so that converting is plain arithmetic and
starting the program does not import pint.
"""

from __future__ import annotations

import tomllib
from collections.abc import Mapping
from functools import cache
from typing import TYPE_CHECKING, Literal

from barkeep import resource_files
from barkeep.domain.amounts.amount import (
    UNITS,
    US_UNITS,
    Amount,
    BarUnits,
    parse_amount,
    show_amount,
    show_number,
    show_range,
    unit_named,
)
from barkeep.domain.amounts.units import Unit
from barkeep.errors import WrongDimension

if TYPE_CHECKING:
    import pint


__all__ = [
    "US_UNITS",
    "Amount",
    "BarUnits",
    "dashes_from",
    "dimension",
    "length_cm",
    "parse_amount",
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
# After a change there: python -m barkeep.domain.amounts.measures > resources/unit_factors.toml"""


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


def to_quantity(amount: Amount, unit: Unit, units: BarUnits = US_UNITS) -> float:
    """An amount in *ml*, *g* or *each*; of a range its lower end, of dashes the bar's own.

    Raises `WrongDimension`.

    >>> to_quantity(Amount(6.0, None, "cl"), "ml")
    60.0
    """
    return _converted(amount, _DIMENSION[unit], _WANTED[unit], units)


def length_cm(amount: Amount) -> float:
    """A length in cm, such as the height of a liquid. Raises `WrongDimension`.

    >>> length_cm(Amount(4.5, None, "in"))
    11.43
    """
    return _converted(amount, "length", "a length such as 11.5 cm or 4.5 in", US_UNITS)


def _converted(amount: Amount, wanted: Dimension, example: str, units: BarUnits) -> float:
    kind, factor = _factors().get(amount.unit, ("loose", 1.0))
    if kind != wanted:
        shown = show_range(amount.value, amount.high, amount.unit, units)
        raise WrongDimension(shown, _SAID[kind], example)
    if amount.unit == "dash":
        factor = units.dash_ml
    # 12 digits: 0.1 l is 100 ml, not 100.00000000000001.
    return float(f"{amount.value * factor:.12g}")


def dashes_from(bottle_dash_ml: float | None, dashes: float, bar_dash_ml: float) -> float:
    """How many dashes of one bottle come to so many of the bar's.

    `bottle_dash_ml` is what one dash from that bottle comes to, None for the
    bar's own: two dashes of one may be four of the other.

    >>> dashes_from(0.4, 2.0, 0.8)
    4.0
    """
    return dashes if bottle_dash_ml is None else dashes * bar_dash_ml / bottle_dash_ml


def show_volume(volume_ml: float) -> str:
    """A volume in ml as it is printed: *22.5 ml*, *315 ml*."""
    return show_amount(volume_ml, "ml")


def show_quantity(amount: float, unit: Unit) -> str:
    """An amount in an ingredient's or bottle's own unit as it is printed."""
    return show_number(amount, fractions=True) if unit == "each" else show_amount(amount, unit)


if __name__ == "__main__":
    print(exported_factors(), end="")
