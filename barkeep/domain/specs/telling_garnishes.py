"""Garnishes that are more than an ornament: an onion, an olive, a salted rim.

What is said of each is in `resources/garnishes.toml`.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache

from barkeep.shipped_data import Text, parse, read, table_of

FILE = "garnishes.toml"
_RIM = re.compile(r"\b(?:rim|rims|rimmed)\b", re.IGNORECASE)


@dataclass(frozen=True, slots=True)
class TellingGarnish:
    """Why a drink is another without it.

    With `rim` it is so only as a rim; with `needed` it gives the drink its name.
    """

    why: Text
    rim: bool = False
    needed: bool = False


@cache
def shipped_telling_garnishes() -> Mapping[str, TellingGarnish]:
    """By ingredient key. Raises `KnowledgeError` for a broken resource."""
    return table_of(FILE, read_telling_garnishes, Mapping[str, TellingGarnish])


def read_telling_garnishes(text: str, file: str = FILE) -> Mapping[str, TellingGarnish]:
    """Telling garnishes out of a TOML text. Raises `KnowledgeError`."""
    return {key: read(each, TellingGarnish, file, key) for key, each in parse(text, file).items()}


def is_rim(text: str, note: str = "") -> bool:
    """Whether a garnish goes on the rim of the glass.

    >>> [is_rim(each) for each in ("salt rim", "half-rimmed with salt", "a pinch of salt")]
    [True, True, False]
    """
    return bool(_RIM.search(f"{text} {note}"))
