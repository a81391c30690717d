"""What is left in a bottle, read from how someone measured it.

Four means: a share of the bottle, a volume, its weight on a scale, and the
height of the liquid above the table. The weight is that of the bottle with
what is in it, without its cap. Volumes are those at 20 °C; a weight does not
change with the temperature, so one taken from the fridge is as good.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from math import hypot

from barkeep.domain.amounts.amount import Amount, amount_at_start, parse_amount, spaced
from barkeep.domain.amounts.measures import dimension, length_cm, to_quantity
from barkeep.domain.amounts.units import US_UNITS, BarUnits, Dimension, Unit
from barkeep.domain.bottles.bottle import (
    GUESSED_SIGMA,
    SCALE_SIGMA_G,
    TENTHS_SIGMA,
    VOLUME_SIGMA_ML,
    CountMethod,
    Tare,
)
from barkeep.domain.bottles.containers import Container
from barkeep.domain.bottles.shapes import MOST_HEADSPACE, volume_ml, volume_sigma_ml
from barkeep.domain.liquids.sweetened import SpiritDensity, in_air
from barkeep.errors import (
    AmountError,
    BelowTare,
    DensityUnknown,
    LevelAboveSize,
    TareUnknown,
    WeightAboveFull,
    WrongDimension,
)
from barkeep.translation import tr, tr_noop

_LEVEL_WANTED: Mapping[Unit, str] = {
    "ml": tr_noop(
        "a share of the bottle such as 0.4 or 4/10, a volume such as 315 ml, a weight on a "
        "scale such as 812 g, or the height of the liquid such as 11.5 cm"
    ),
    "g": tr_noop("a weight such as 250 g, or a share such as 0.4"),
    "each": tr_noop("a number of pieces such as 4"),
}
TOLERATED_SIGMAS = 3.0
"""So far above full or below empty a reading is taken as full or empty; beyond, as a mistake."""


EMPTY_SIGMA = 1.0
"""One-sigma doubt of a bottle found empty, in ml or g: what clings to its walls.

*Common practice*; nobody takes an empty bottle for one that holds a tenth.
"""


_ROUNDING = 1e-6
_TOO_SMALL = frozenset({"dash", "drop", "pinch", "splash", "barspoon", "rinse", "float"})
"""What is poured by feel: no level is measured in it."""
_BARE_NUMBER = re.compile(r"[-−]?[ ]?(?:[0-9]+(?:[.,][0-9]*)?|[.,][0-9]+)")
_PERCENT = re.compile(r"(?P<number>[0-9]{1,3}(?:[.,][0-9]+)?)[ ]?%")


@dataclass(frozen=True, slots=True)
class MeasuredLevel:
    """A level in the bottle's unit, how it was measured, and its one-sigma doubt."""

    amount: float
    method: CountMethod
    sigma: float


def parse_level(text: str, container: Container, units: BarUnits = US_UNITS) -> MeasuredLevel:
    """Read what is left in a bottle, at a bar that means `units` by its measures.

    A bare number up to 1, `4/10` and `40 %` are shares of the bottle; pieces
    are counted, so for them a bare number is just that many. Of what is kept
    by weight `250 g` is the weight of the goods alone. A little more than the
    maker fills in is full.

    Raises `AmountError`, `NegativeAmount`, `WrongDimension` or
    `LevelAboveSize`; for a weight `TareUnknown`, `DensityUnknown`, `BelowTare`
    or `WeightAboveFull`; for a height `HeightAboveBottle`.
    """
    plain = spaced(text.strip())
    share = share_in(plain, container.unit)
    if share is not None:
        return _within(judged(share, container.size), container)
    amount = _one_amount(text, plain, container.unit, units)
    means = (
        _OF_WHAT_IS_POURED.get(dimension(amount.unit, units)) if container.unit == "ml" else None
    )
    if means is not None:
        return means(amount, container)
    try:
        quantity = to_quantity(amount, container.unit, units)
    except WrongDimension as wrong:
        wanted = _LEVEL_WANTED[container.unit]
        raise WrongDimension(text.strip(), wrong.given, wanted) from None
    method, sigma = _MEASURED[container.unit]
    if not quantity:
        sigma = min(sigma, EMPTY_SIGMA)
    return _within(MeasuredLevel(quantity, method, sigma), container)


def judged(share: float, size: float) -> MeasuredLevel:
    """A share of a bottle of `size` as the eye judges it; an empty one is plain to see."""
    sigma = TENTHS_SIGMA * size
    return MeasuredLevel(share * size, "tenths", sigma if share else min(sigma, EMPTY_SIGMA))


def guessed(size: float) -> MeasuredLevel:
    """What a bottle holds that is open and that nobody looked at: half, give or take all of it."""
    return MeasuredLevel(size / 2, "tenths", GUESSED_SIGMA * size)


def is_guess(sigma: float | None, size: float) -> bool:
    """Whether a level with this doubt was guessed rather than looked at."""
    return sigma is not None and bool(size) and sigma >= GUESSED_SIGMA * size - _ROUNDING


def read_weight_g(text: str) -> float:
    """A weight on a scale in g, as it was written: *520 g*, *1.2 kg*.

    Raises `AmountError`, `NegativeAmount` or `WrongDimension`.
    """
    amount = parse_amount(text)
    if amount.high is not None:
        raise AmountError(text.strip(), tr("a weight is one number, not a range"))
    if amount.unit == "each" and text.strip()[-1:].isdigit():
        raise AmountError(text.strip(), tr("a weight needs its unit, such as 520 g"))
    return to_quantity(amount, "g")


def level_by_weight(gross_g: float, container: Container) -> MeasuredLevel:
    """What is left in a bottle that weighs so much with its contents, without its cap.

    Raises `TareUnknown`, `DensityUnknown`, `BelowTare` or `WeightAboveFull`.
    """
    tare, density = known_weights(container)
    per_ml = in_air(density.g_per_ml)
    net_g, net_sigma_g = gross_g - tare.weight_g, hypot(SCALE_SIGMA_G, tare.sigma_g)
    if net_g < -TOLERATED_SIGMAS * net_sigma_g:
        raise BelowTare(gross_g, tare.weight_g, container.title)
    left_ml = max(0.0, net_g / per_ml)
    sigma_ml = hypot(net_sigma_g / per_ml, left_ml * density.sigma_share)
    if left_ml > _most(container, sigma_ml):
        raise WeightAboveFull(gross_g, gross_weight_g(container.size, container), container.title)
    return MeasuredLevel(min(left_ml, container.size), "weight", sigma_ml)


def level_by_height(height_cm: float, container: Container) -> MeasuredLevel:
    """What is left below a height of liquid above the table, at the bottle's middle.

    Raises `HeightAboveBottle` or `LevelAboveSize`.
    """
    assert container.shape is not None, "only what is poured has a height"
    left_ml = volume_ml(container.shape, container.size, height_cm)
    sigma_ml = volume_sigma_ml(container.shape, container.size, height_cm)
    if left_ml > _most(container, sigma_ml):
        raise _above_size(left_ml, container)
    if not height_cm:
        sigma_ml = min(sigma_ml, EMPTY_SIGMA)
    return MeasuredLevel(min(left_ml, container.size), "height", sigma_ml)


def gross_weight_g(left_ml: float, container: Container) -> float:
    """What a scale shows for a bottle with so much in it. Raises as `known_weights` does."""
    tare, density = known_weights(container)
    return tare.weight_g + left_ml * in_air(density.g_per_ml)


def known_weights(container: Container) -> tuple[Tare, SpiritDensity]:
    """What the empty bottle weighs and how dense its contents are.

    Raises `DensityUnknown` or `TareUnknown`.
    """
    density = container.contents.density
    if density is None:
        raise DensityUnknown(container.title, container.contents.no_density_because)
    if container.tare is None:
        raise TareUnknown(container.title)
    return container.tare, density


_OF_WHAT_IS_POURED: Mapping[Dimension, Callable[[Amount, Container], MeasuredLevel]] = {
    "mass": lambda amount, container: level_by_weight(to_quantity(amount, "g"), container),
    "length": lambda amount, container: level_by_height(length_cm(amount), container),
}
_MEASURED: Mapping[Unit, tuple[CountMethod, float]] = {
    "ml": ("volume", VOLUME_SIGMA_ML),
    "g": ("weight", SCALE_SIGMA_G),
    "each": ("volume", 0.0),
}


def share_in(text: str, unit: Unit) -> float | None:
    """The share of a bottle that a text names, None where it names an amount instead.

    >>> share_in("25 %", "ml"), share_in("315 ml", "ml")
    (0.25, None)
    """
    percent = _PERCENT.fullmatch(text)
    if percent:
        return float(percent["number"].replace(",", ".")) / 100.0
    found = amount_at_start(text, US_UNITS)
    if found is None or found.unit or found.high is not None or text[found.end :].strip():
        return None
    pieces = unit == "each" and _BARE_NUMBER.fullmatch(text)  # half a lime, not half the box
    return None if found.value > 1.0 or pieces else found.value


def _one_amount(text: str, plain: str, unit: Unit, units: BarUnits) -> Amount:
    """The one amount that a text is."""
    found = amount_at_start(plain, units)
    if found is None or plain[found.end :].strip(" ."):
        raise AmountError(text.strip()[:60], tr("write {wanted}", wanted=tr(_LEVEL_WANTED[unit])))
    if found.high is not None:
        raise AmountError(text.strip(), tr("a level is one number, not a range"))
    if found.unit in _TOO_SMALL:
        expected = tr(
            "a {unit} is too small to measure a level in; write {wanted}",
            unit=tr(found.unit),
            wanted=tr(_LEVEL_WANTED[unit]),
        )
        raise AmountError(text.strip(), expected)
    if found.unit is None and unit == "ml":
        expected = tr(
            "a share of the bottle is 0 to 1; anything else needs a unit, such as 315 ml, "
            "812 g on a scale or 11.5 cm high"
        )
        raise AmountError(text.strip(), expected)
    return Amount(found.value, None, found.unit or unit)


def _most(container: Container, sigma: float) -> float:
    """The most that may be read off before it is a mistake: makers fill a little over, too."""
    return container.size + TOLERATED_SIGMAS * hypot(sigma, container.full_sigma)


def _most_measured(level: MeasuredLevel, container: Container) -> float:
    """The same for a level that was poured out and measured, or told by eye or by number.

    Ounces are rounded and makers fill over, but no shape holds more than so
    much above its size.
    """
    if container.unit == "each" or level.method == "tenths":
        return container.size
    return min(_most(container, level.sigma), container.size * (1.0 + MOST_HEADSPACE))


def _within(level: MeasuredLevel, container: Container) -> MeasuredLevel:
    if level.amount > _most_measured(level, container) + _ROUNDING:
        raise _above_size(level.amount, container)
    return MeasuredLevel(min(level.amount, container.size), level.method, level.sigma)


def _above_size(amount: float, container: Container) -> LevelAboveSize:
    shown = float(f"{amount:.6g}")
    return LevelAboveSize(shown, container.size, container.unit, container.title)
