"""What is in a drink: ethanol, energy, what heat leaves of its alcohol, and its standard drinks."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from difflib import get_close_matches
from functools import cache
from typing import Literal

from barkeep.domain.liquids.constants import constants, within
from barkeep.domain.liquids.ethanol import density_of_mass_fraction
from barkeep.errors import UnknownName
from barkeep.shipped_data import Positive, Text, Texts, parse, read, table_of
from barkeep.translation import tr_noop

Nutrient = Literal["ethanol", "sugar", "polyol", "acid", "protein", "fat", "fibre"]


def ethanol_g(volume_ml: float, abv_percent: float) -> float:
    """Grams of ethanol in a volume: 0.789239 g to the ml at 20 °C (OIML R 22).

    >>> round(ethanol_g(44.36, 40.0), 1)  # one US standard drink
    14.0
    """
    share = within("strength", abv_percent, 0.0, 100.0, unit="% vol") / 100.0
    return ethanol_ml_g(within("volume", volume_ml, 0.0, 1e9, unit="ml") * share)


def ethanol_ml_g(ethanol_ml: float) -> float:
    """Grams of a volume of pure ethanol at 20 °C."""
    return ethanol_ml * density_of_mass_fraction(1.0) / 1000.0


def energy_kcal(grams: Mapping[Nutrient, float]) -> float:
    """Energy of what a drink holds. Source: Regulation (EU) 1169/2011, Annex XIV."""
    return _energy("kcal_per_g", grams)


def energy_kj(grams: Mapping[Nutrient, float]) -> float:
    """The same in kilojoules, by the regulation's own factors."""
    return _energy("kj_per_g", grams)


def alcohol_kept() -> Mapping[str, float]:
    """What was done to it -> the share of its alcohol that stays.

    Source: USDA Table of Nutrient Retention Factors, Release 6 (2007).
    """
    kept: Mapping[str, float] = constants("alcohol_kept")
    return kept


def _energy(table: str, grams: Mapping[Nutrient, float]) -> float:
    per_g: Mapping[str, float] = constants(table)
    return sum(
        per_g[each] * within(f"mass of {each}", amount, 0.0, 1e7, unit="g")
        for each, amount in grams.items()
    )


FILE = "standard_drinks.toml"

DEFAULT_COUNTRY = "United States"


@dataclass(frozen=True, slots=True)
class StandardDrink:
    """What one standard drink of a country holds, in grams of ethanol.

    `called` is the country's word for it; `doubt` says where lists disagree;
    `aliases` are other names of the country.
    """

    country: str
    grams: Positive
    basis: Text
    called: Text = "standard drink"
    doubt: str = ""
    aliases: Texts = ()


@cache
def _all() -> Mapping[str, StandardDrink]:
    return table_of(FILE, _read_standard_drinks, Mapping[str, StandardDrink])


def _read_standard_drinks(text: str) -> Mapping[str, StandardDrink]:
    entries = parse(text, FILE).items()
    return {name: read(entry, StandardDrink, FILE, name, country=name) for name, entry in entries}


def countries() -> tuple[str, ...]:
    """Every country whose standard drink is known, by name."""
    return tuple(sorted(_all()))


@cache
def _by_name() -> Mapping[str, str]:
    """Every name of a country, folded, with the one it goes by."""
    return {
        _folded(name): drink.country
        for drink in _all().values()
        for name in (drink.country, *drink.aliases)
    }


def country_named(name: str) -> str:
    """The country of this name or another of its names, however it is capitalised.

    Raises `UnknownName` with the nearest.

    >>> country_named("u.k.")
    'United Kingdom'
    """
    wanted, known = _folded(name), _by_name()
    if wanted in known:
        return known[wanted]
    near = (known[each] for each in get_close_matches(wanted, known, 5))
    raise UnknownName(tr_noop("country"), name.strip(), tuple(dict.fromkeys(near))[:3])


def standard_drink(country: str) -> StandardDrink:
    """The standard drink of a country. Raises `UnknownName`."""
    try:
        return _all()[country]
    except KeyError:
        raise UnknownName(
            tr_noop("country"), country, tuple(get_close_matches(country, countries(), 3))
        ) from None


def _folded(name: str) -> str:
    words = name.casefold().replace(".", "").split()
    return " ".join(words[1:] if words[:1] == ["the"] and len(words) > 1 else words)


def standard_drinks(ethanol_g: float, country: str) -> float:
    """How many standard drinks a mass of ethanol is. Raises `UnknownName`, `OutsideRange`."""
    return (
        within(tr_noop("mass of ethanol"), ethanol_g, 0.0, 1e7, unit="g")
        / standard_drink(country).grams
    )
