"""Units: their names, plurals and abbreviations, and what one bar means by them.

The one source is `resources/units.txt`, in pint's definition format. Its lines
are read here, a table that costs a start nothing; a prefixed unit that the
table does not know (*hl*, *decagram*) is read by pint, which is loaded when
the first such word is met.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from functools import cache
from typing import TYPE_CHECKING, Literal

from barkeep import resource_files

if TYPE_CHECKING:
    import pint

Unit = Literal["ml", "g", "each"]
"""What bottles and ingredients are kept in."""

Dimension = Literal["volume", "mass", "count", "part", "length", "loose"]
"""What a unit measures; *loose* is a piece of no fixed size, such as a leaf or a wedge."""

Ounce = Literal["oz", "imp_oz"]
"""The US and the imperial fluid ounce."""
OUNCES: Mapping[str, str] = {"oz": "US oz", "imp_oz": "imp oz"}
"""Each fluid ounce with the words that mean it at every bar."""

FILE = "units.txt"

_DIMENSIONS: Mapping[tuple[str, int], Dimension] = {
    ("length", 1): "length",
    ("length", 3): "volume",
    ("mass", 1): "mass",
    ("count", 1): "count",
    ("part", 1): "part",
}

_BASES: Mapping[Dimension, str] = {"volume": "ml", "mass": "g"}
"""What pint tells a prefixed unit in; no other kind of unit takes a prefix."""

_DEFINITION = re.compile(
    r"(?P<name>\w+) = (?:\[(?P<base>\w+)\]|(?P<factor>[0-9.]+) \* (?P<of>\w+)"
    r"(?: \*\* (?P<power>[0-9]))?) = (?P<symbol>\w+)(?P<others>(?: = \w+)*)"
)

_PREFIX = re.compile(r"(?P<name>\w+)- = [0-9.e-]+ = (?P<symbol>\w+)-")


@dataclass(frozen=True, slots=True)
class DefinedUnit:
    """One line of the file: so much of its dimension's base, in ml, g, each, part or cm.

    `abbreviated` where it is printed as its symbol, the same for one and for
    many; `words` are all its names, with spaces.
    """

    name: str
    words: tuple[str, ...]
    abbreviated: bool
    dimension: Dimension
    factor: float


def _definitions() -> Iterator[str]:
    for line in resource_files.read_text(FILE).splitlines():
        plain = line.partition("#")[0].strip()
        if plain:
            yield plain


def _read_table() -> dict[str, DefinedUnit]:
    """Every unit by the name it is stored under."""
    found: dict[str, DefinedUnit] = {}
    bases: dict[str, tuple[str, int]] = {}
    for line in _definitions():
        match = _DEFINITION.fullmatch(line)
        if match is None:
            continue  # a prefix, which is pint's
        word = match["name"] if match["symbol"] == "_" else match["symbol"]
        factor, base = 1.0, (match["base"], 1)
        if match["of"]:
            name, power = bases[match["of"]]
            raised = int(match["power"] or 1)
            factor = float(match["factor"]) * found[match["of"]].factor ** raised
            base = (name, power * raised)
        bases[word] = base
        names = [word, match["name"], *match["others"].split(" = ")[1:]]
        words = tuple(dict.fromkeys(each.replace("_", " ") for each in names))
        kind = _DIMENSIONS.get(base, "loose")
        found[word] = DefinedUnit(
            name=word,
            words=words,
            abbreviated=match["symbol"] != "_",
            dimension=kind,
            factor=factor,
        )
    return found


TABLE: Mapping[str, DefinedUnit] = _read_table()
"""Every unit that is defined, by the name it is stored under."""

UNITS = frozenset(TABLE)

METRIC = frozenset(
    each.name
    for each in TABLE.values()
    if each.abbreviated and f"{each.factor:e}".startswith("1.000000e")
)
"""Units whose amounts are printed as decimals."""

FRACTIONAL = UNITS - METRIC
"""Units whose amounts are printed as fractions."""

DASH_ML = TABLE["dash"].factor
"""A dash from a bitters bottle; see `resources/units.txt` for its range and sources."""


@dataclass(frozen=True, slots=True)
class OwnMeasure:
    """A measure of the owner's: `name` is so many of `unit`, a volume that is defined."""

    name: str
    amount: float
    unit: str

    @property
    def volume_ml(self) -> float:
        """What one holds."""
        return self.amount * TABLE[self.unit].factor


@dataclass(frozen=True, slots=True)
class BarUnits:
    """What one bar means by the measures that bars do not agree on.

    `ounce` is what *oz* with nothing before it is; `dash_ml` what a dash comes
    to; `own` are the owner's measures.
    """

    ounce: Ounce = "oz"
    dash_ml: float = DASH_ML
    own: tuple[OwnMeasure, ...] = ()

    def measure(self, name: str) -> OwnMeasure | None:
        """The own measure of this name, None where there is none."""
        return next((each for each in self.own if each.name == name), None)


US_UNITS = BarUnits()
"""What is meant where no bar is asked: US ounces, and dashes from a bitters bottle."""


def unit_named(word: str, units: BarUnits = US_UNITS) -> str | None:
    """The unit of this name, plural or abbreviation; an ounce of neither kind is the bar's.

    >>> unit_named("Table Spoons"), unit_named("hl")
    ('tbsp', 'hectolitre')
    """
    plain = plain_word(word)
    unit = _BY_WORD.get(plain)
    if unit is not None:
        return units.ounce if unit == "oz" and not plain.startswith("us ") else unit
    for own in units.own:
        if plain in _forms(plain_word(own.name)):
            return own.name
    return prefixed_unit(plain)


def defined(unit: str, units: BarUnits = US_UNITS) -> tuple[Dimension, float]:
    """What a unit measures and how many ml, g, pieces, parts or cm it comes to at a bar.

    A unit that is none, or no longer one, is a piece of no fixed size.
    """
    if unit == "dash":
        return "volume", units.dash_ml
    if unit in TABLE:
        return TABLE[unit].dimension, TABLE[unit].factor
    own = units.measure(unit)
    if own is not None:
        return "volume", own.volume_ml
    return _by_pint(unit) if prefixed_unit(unit) == unit else ("loose", 1.0)


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
    abbreviated = unit in TABLE and TABLE[unit].abbreviated
    return _plural(words) if plural and not abbreviated else words


def plain_word(word: str) -> str:
    """A unit's name as names are compared: no case, points, underscores or wide spaces."""
    return " ".join(word.casefold().replace(".", " ").replace("_", " ").split())


def _plural(word: str) -> str:
    if word.endswith("f"):
        return f"{word[:-1]}ves"
    if word.endswith("y"):
        return f"{word[:-1]}ies"
    if word.endswith(("sh", "ch", "ss")):
        return f"{word}es"
    return f"{word}s"


def _forms(word: str) -> tuple[str, str]:
    return word, _plural(word)


def _by_word() -> dict[str, str]:
    found: dict[str, str] = {}
    for unit in TABLE.values():
        for word in unit.words:
            for form in _forms(word):
                found.setdefault(form, unit.name)
    return found


_BY_WORD: Mapping[str, str] = _by_word()


def words_of_units() -> Iterator[str]:
    """Every word of every unit of the table, of one and of many."""
    yield from _BY_WORD


def _may_be_prefixed() -> re.Pattern[str]:
    """What only can be a prefixed litre or gram: pint is too slow to be asked of every word."""
    prefixes = [_PREFIX.fullmatch(line) for line in _definitions() if "- =" in line]
    marks = {mark for each in prefixes if each for mark in each.groups()}
    bases = (form for unit in ("l", "g") for word in TABLE[unit].words for form in _forms(word))
    return re.compile(f"(?:{'|'.join(sorted(marks))})(?:{'|'.join(sorted(bases))})")


_PREFIXED = _may_be_prefixed()


def prefixed_unit(word: str) -> str | None:
    """The full name of a litre or gram with a prefix, as pint reads it: *hl* is a hectolitre."""
    return _named_by_pint(word) if _PREFIXED.fullmatch(word) else None


@cache
def registry() -> pint.UnitRegistry[float]:
    """The pint registry of barkeep's own units, built once from `units.txt`."""
    import pint  # heavy: it brings numpy along

    units: pint.UnitRegistry[float] = pint.UnitRegistry(None)
    units.load_definitions(list(_definitions()))
    return units


@cache
def _named_by_pint(word: str) -> str | None:
    """Its full name; what is one of the table, as *mlitre* is, keeps that name.

    Pint would define it a second time, by itself.
    """
    names = registry().parse_unit_name(word)
    if not names:
        return None
    prefix, base, _suffix = names[0]
    return _BY_WORD.get(f"{prefix}{base}") or str(registry().parse_units(word))


@cache
def _by_pint(unit: str) -> tuple[Dimension, float]:
    quantity = registry().Quantity(1.0, unit)
    kind, base = next(each for each in _BASES.items() if quantity.is_compatible_with(each[1]))
    return kind, float(quantity.to(base).magnitude)
