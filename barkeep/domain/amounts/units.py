"""Units: their names, plurals and abbreviations, and what one bar means by them."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Literal

Ounce = Literal["oz", "imp_oz"]
"""The US and the imperial fluid ounce."""

OUNCES: Mapping[str, str] = {"oz": "US oz", "imp_oz": "imp oz"}
"""Each fluid ounce with the words that mean it at every bar."""

DASH_ML = 0.8
"""A dash from a bitters bottle; see `resources/units.txt` for its range and sources."""


@dataclass(frozen=True, slots=True)
class BarUnits:
    """What one bar means by the measures that bars do not agree on.

    `ounce` is what *oz* with nothing before it is; `dash_ml` what a dash comes to.
    """

    ounce: Ounce = "oz"
    dash_ml: float = DASH_ML


US_UNITS = BarUnits()
"""What is meant where no bar is asked: US ounces, and dashes from a bitters bottle."""


_WORDS: Mapping[str, tuple[str, ...]] = {
    "ml": ("milliliter", "millilitre", "mils"),
    "cl": ("centiliter", "centilitre"),
    "dl": ("deciliter", "decilitre"),
    "l": ("liter", "litre", "ltr"),
    "oz": (
        *("fl oz", "floz", "ounce", "fluid ounce", "ozs"),
        *("us oz", "us fl oz", "us ounce", "us fluid ounce"),
    ),
    "imp_oz": (
        *("imp oz", "imp fl oz", "imperial oz", "imperial fl oz", "uk oz", "uk fl oz"),
        *("imperial ounce", "imperial fluid ounce", "uk fluid ounce"),
    ),
    "tsp": ("teaspoon", "tea spoon", "teaspoonful", "tsps"),
    "tbsp": ("tablespoon", "table spoon", "tablespoonful", "tbs", "tbsps"),
    "dessertspoon": ("dessert spoon", "dsp", "dessertspoonful"),
    "barspoon": ("bar spoon", "barspoonful", "bsp", "bsps"),
    "dash": ("ds",),
    "drop": (),
    "splash": (),
    "float": (),
    "rinse": (),
    "pinch": (),
    "jigger": (),
    "shot": (),
    "pony": (),
    "wineglass": ("wine glass",),
    "cup": (),
    "gill": ("us gill",),
    "imp_gill": ("imperial gill", "uk gill"),
    "pint": ("us pint",),
    "imp_pint": ("imperial pint", "uk pint"),
    "g": ("gram", "gramme", "gr", "gm", "grms"),
    "kg": ("kilo", "kilogram", "kilogramme"),
    "lb": ("pound",),
    "cm": ("centimeter", "centimetre"),
    "mm": ("millimeter", "millimetre"),
    "in": ("inch",),
    "part": (),
    "each": ("whole",),
    "piece": ("pc", "pcs"),
    "sprig": (),
    "stick": (),
    "cube": (),
    "leaf": (),
    "slice": (),
    "wedge": (),
    "wheel": (),
    "peel": (),
    "twist": (),
    "handful": (),
}
"""Unit -> other words for it; plurals are understood."""


UNITS = frozenset(_WORDS)

FRACTIONAL = UNITS - {"ml", "cl", "dl", "l", "g", "kg", "cm", "mm"}
"""Units whose amounts are printed as fractions; the metric ones are printed as decimals."""


_ABBREVIATED = frozenset(
    {*OUNCES, "tsp", "tbsp", "ml", "cl", "dl", "l", "g", "kg", "lb", "cm", "mm", "in"}
)
"""Units that are printed the same for one and for many."""


def unit_named(word: str, units: BarUnits = US_UNITS) -> str | None:
    """The unit of this name, plural or abbreviation; an ounce of neither kind is the bar's.

    >>> unit_named("Table Spoons")
    'tbsp'
    """
    plain = " ".join(word.casefold().replace(".", " ").split())
    unit = _BY_WORD.get(plain)
    return units.ounce if unit == "oz" and not plain.startswith("us ") else unit


def unit_words(unit: str, units: BarUnits | None = None) -> str:
    """The name of one of a unit; without a bar's `units`, as it is read at every bar.

    >>> unit_words("oz"), unit_words("oz", US_UNITS), unit_words("imp_oz", US_UNITS)
    ('US oz', 'oz', 'imp oz')
    """
    if unit in OUNCES:
        return "oz" if units and unit == units.ounce else OUNCES[unit]
    return unit.replace("_", " ")


def spoken_unit(unit: str, units: BarUnits, *, plural: bool) -> str:
    """A unit as it follows an amount at a bar: *oz*, *dash* or *dashes*."""
    words = unit_words(unit, units)
    return _plurals(words)[0] if plural and unit not in _ABBREVIATED else words


def _plurals(word: str) -> tuple[str, ...]:
    if word == "leaf":
        return ("leaves",)
    if word.endswith("y"):
        return (f"{word[:-1]}ies",)
    if word.endswith(("sh", "ch", "ss")):
        return (f"{word}es",)
    return (f"{word}s",)


def _by_word() -> dict[str, str]:
    found: dict[str, str] = {}
    for unit, others in _WORDS.items():
        for word in (unit.replace("_", " "), *others):
            for form in (word, *_plurals(word)):
                found.setdefault(form, unit)
    return found


_BY_WORD: Mapping[str, str] = _by_word()


Unit = Literal["ml", "g", "each"]
