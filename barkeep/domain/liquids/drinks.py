"""Standard drinks, country by country, from `resources/standard_drinks.toml`.

Information, not advice: what is low-risk for whom is for health authorities
and a doctor to say.
"""

from __future__ import annotations

import tomllib
from collections.abc import Mapping
from dataclasses import dataclass
from difflib import get_close_matches
from functools import cache

from barkeep import resource_files
from barkeep.domain.liquids.constants import within
from barkeep.errors import UnknownName

DEFAULT_COUNTRY = "United States"


@dataclass(frozen=True, slots=True)
class StandardDrink:
    """What one standard drink of a country holds, in grams of ethanol.

    `called` is the country's word for it; `doubt` says where lists disagree;
    `aliases` are other names of the country.
    """

    country: str
    grams: float
    called: str
    basis: str
    doubt: str
    aliases: tuple[str, ...] = ()


@cache
def _all() -> Mapping[str, StandardDrink]:
    tables = tomllib.loads(resource_files.read_text("standard_drinks.toml"))
    return {
        country: StandardDrink(
            country,
            float(entry["grams"]),
            entry.get("called", "standard drink"),
            entry["basis"],
            entry.get("doubt", ""),
            tuple(entry.get("aliases", ())),
        )
        for country, entry in tables.items()
    }


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
    raise UnknownName("country", name.strip(), tuple(dict.fromkeys(near))[:3])


def standard_drink(country: str) -> StandardDrink:
    """The standard drink of a country. Raises `UnknownName`."""
    try:
        return _all()[country]
    except KeyError:
        raise UnknownName(
            "country", country, tuple(get_close_matches(country, countries(), 3))
        ) from None


def _folded(name: str) -> str:
    words = name.casefold().replace(".", "").split()
    return " ".join(words[1:] if words[:1] == ["the"] and len(words) > 1 else words)


def standard_drinks(ethanol_g: float, country: str) -> float:
    """How many standard drinks a mass of ethanol is. Raises `UnknownName`, `OutsideRange`."""
    return within("mass of ethanol", ethanol_g, 0.0, 1e7, "g") / standard_drink(country).grams
