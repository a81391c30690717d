"""What amounts come to: conversions, with the factors of `barkeep.domain.amounts.units`."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from dataclasses import replace

from barkeep.domain.amounts.amount import Amount, parse_amount, show_amount, show_number, show_range
from barkeep.domain.amounts.spoken import HOW_FULL, NUMBER_WORDS
from barkeep.domain.amounts.units import (
    TABLE,
    US_UNITS,
    BarUnits,
    Dimension,
    OwnMeasure,
    Unit,
    defined,
    plain_word,
    unit_named,
)
from barkeep.errors import AmountError, InvalidField, NegativeAmount, WrongDimension, spoken_list
from barkeep.translation import tr, tr_noop

_SAID: Mapping[Dimension, str] = {
    "volume": tr_noop("a volume"),
    "mass": tr_noop("a weight"),
    "count": tr_noop("a number of pieces"),
    "part": tr_noop("a share of the drink"),
    "length": tr_noop("a length"),
    "loose": tr_noop("a piece of no fixed size"),
}
_WANTED: Mapping[Unit, str] = {
    "ml": tr_noop("a volume such as 60 ml or 2 oz"),
    "g": tr_noop("a weight such as 10 g"),
    "each": tr_noop("a number of pieces such as 2"),
}
_DIMENSION: Mapping[Unit, Dimension] = {"ml": "volume", "g": "mass", "each": "count"}


def dimension(unit: str, units: BarUnits = US_UNITS) -> Dimension:
    """What a unit measures."""
    return defined(unit, units)[0]


def to_quantity(amount: Amount, unit: Unit, units: BarUnits = US_UNITS) -> float:
    """An amount in *ml*, *g* or *each*; of a range its lower end, of dashes the bar's own.

    Raises `WrongDimension`.

    >>> to_quantity(Amount(6.0, None, "cl"), "ml")
    60.0
    """
    return _converted(amount, _DIMENSION[unit], _WANTED[unit], units)


def quantity_in(text: str, unit: Unit, units: BarUnits = US_UNITS) -> float:
    """What an amount that is written with its unit comes to in `unit`, as `to_quantity` says.

    Raises `AmountError`, `NegativeAmount` or `WrongDimension`.
    """
    return to_quantity(parse_amount(text, units), unit, units)


def read_amount(text: str, unit: Unit, units: BarUnits = US_UNITS) -> float:
    """An amount in `unit`; a bare number is so many of that unit, which is said beside it.

    Raises `AmountError`, `NegativeAmount` or `WrongDimension`.
    """
    amount = parse_amount(text, units)
    if amount.high is not None:
        raise AmountError(text.strip(), tr_noop("write one amount, not a range"))
    if not any(letter.isalpha() for letter in text):
        amount = replace(amount, unit=unit)
    return to_quantity(amount, unit, units)


def read_change(text: str, unit: Unit, units: BarUnits = US_UNITS) -> float:
    """A signed amount in `unit`: *+30 ml* adds, *−30 ml* takes away.

    Raises `AmountError` for an amount without a sign, and as `read_amount` does.
    """
    plain = text.strip()
    if plain[:1] not in ("+", "-", "−"):
        expected = tr_noop(
            "begin with + for more or − for less than the ledger says, such as +30 ml"
        )
        raise AmountError(plain, expected)
    amount = read_amount(plain[1:], unit, units)
    return amount if plain[0] == "+" else -amount


def length_cm(amount: Amount) -> float:
    """A length in cm, such as the height of a liquid. Raises `WrongDimension`.

    >>> length_cm(Amount(4.5, None, "in"))
    11.43
    """
    return _converted(amount, "length", tr_noop("a length such as 11.5 cm or 4.5 in"), US_UNITS)


def _converted(amount: Amount, wanted: Dimension, example: str, units: BarUnits) -> float:
    kind, factor = defined(amount.unit, units)
    if kind != wanted:
        shown = show_range(amount.value, amount.high, amount.unit, units)
        raise WrongDimension(shown, _SAID[kind], example)
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


MOST_MEASURE_ML = 5000.0
"""What holds more is no measure to pour with."""

HOW_MEASURES = tr_noop(
    "write a name, an equals sign and what it holds, such as small ladle = 1.5 oz"
)

_MEASURE_NAME = re.compile(r"[^\W\d_]+(?: [^\W\d_]+){0,2}")

PACKAGES = ("bottle", "pack", "carton", "can", "bag")
"""What things are bought in: so many of them are no measure."""

_NOT_FIRST = NUMBER_WORDS | {*PACKAGES, *(f"{each}s" for each in PACKAGES)}
"""Words that an amount is read by: no measure's name begins with one."""


def with_measures(text: str, units: BarUnits) -> tuple[OwnMeasure, ...]:
    """A bar's own measures with those of a text, parted by semicolons, each *name = volume*.

    One that is there already is changed; *name =* takes it away. By name.

    Raises `InvalidField`.
    """
    found = {each.name: each for each in units.own}
    said: set[str] = set()
    for part in filter(None, map(str.strip, text.split(";"))):
        left, equals, size = part.partition("=")
        name = plain_word(left)
        if not equals:
            raise InvalidField("measure", part, HOW_MEASURES)
        if name in said:
            raise InvalidField("measure", name, tr_noop("it is there twice"))
        said.add(name)
        if size.strip():
            others = replace(units, own=tuple(found[key] for key in found if key != name))
            found[name] = _own_measure(name, size.strip(), others)
        elif found.pop(name, None) is None:
            raise InvalidField("measure", part, _no_such_measure(list(found)))
    return tuple(sorted(found.values(), key=lambda each: each.name))


def show_measures(measures: Sequence[OwnMeasure], units: BarUnits) -> str:
    """Own measures as `with_measures` reads them, such as *small ladle = 1 ½ oz*."""
    return "; ".join(
        f"{each.name} = {show_amount(each.amount, each.unit, units)}" for each in measures
    )


def _own_measure(name: str, size: str, units: BarUnits) -> OwnMeasure:
    """One own measure. Raises `InvalidField`."""
    if not _MEASURE_NAME.fullmatch(name):
        raise InvalidField("measure", name, tr_noop("its name is one to three words of letters"))
    if unit_named(name, replace(units, own=())) is not None:
        raise InvalidField("measure", name, tr_noop("it is a unit already"))
    other = unit_named(name, units)
    if other is not None:
        raise InvalidField(
            "measure",
            name,
            tr("“{other}” is there already, and it would be read as that", other=other),
        )
    if name.split()[0] in _NOT_FIRST or name in HOW_FULL:
        raise InvalidField("measure", name, tr_noop("it would be read as part of an amount"))
    amount, volume_ml = _volume_of(f"{name} = {size}", size, units)
    if not 0.0 < volume_ml <= MOST_MEASURE_ML:
        most = show_volume(MOST_MEASURE_ML)
        raise InvalidField(
            "measure", f"{name} = {size}", tr("it holds more than 0 and up to {most}", most=most)
        )
    if amount.unit not in TABLE or amount.unit == "dash":
        return OwnMeasure(name, volume_ml, "ml")
    return OwnMeasure(name, amount.value, amount.unit)


def _volume_of(whole: str, size: str, units: BarUnits) -> tuple[Amount, float]:
    try:
        amount = parse_amount(size, units)
        volume_ml = to_quantity(amount, "ml", units)
    except (AmountError, NegativeAmount):
        raise InvalidField("measure", whole, HOW_MEASURES) from None
    except WrongDimension as wrong:
        expected = tr(
            "“{text}” is {given}, and a measure holds a volume such as 1.5 oz",
            text=wrong.text,
            given=tr(wrong.given),
        )
        raise InvalidField("measure", whole, expected) from None
    if amount.high is not None:
        raise InvalidField("measure", whole, tr_noop("it holds one volume, not a range"))
    return amount, volume_ml


def _no_such_measure(names: list[str]) -> str:
    if not names:
        return tr("there are no own measures to take away")
    if len(names) == 1:
        return tr("there is no such measure to take away; there is {name}", name=names[0])
    listed = spoken_list(names, "and")
    return tr("there is no such measure to take away; there are {names}", names=listed)
