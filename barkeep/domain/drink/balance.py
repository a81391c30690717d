"""Where a drink lies among its family: stronger, sweeter or sourer than usual, or not.

The ranges are *from memory* (`resources/balance_ranges.toml`): habits, no rules.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from functools import cache
from typing import Literal, NamedTuple, get_args

from barkeep import resource_files
from barkeep.domain.drink.contents import Content
from barkeep.domain.drink.ice import is_carbonated, meets_ice
from barkeep.domain.ingredients.relations import Technique
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.specs.spec import ACCENT_ML, Spec
from barkeep.errors import KnowledgeError
from barkeep.shipped_data import NotNegative, Text, by_key, parse

FILE = "balance_ranges.toml"
Quality = Literal["strength", "sugar", "acid"]
QUALITIES: tuple[Quality, ...] = get_args(Quality)
Place = Literal["below", "within", "above"]
SOUR_G_PER_L = 20.0
"""A line is sour from this much acid: citrus, verjus, vinegar."""
_EGG_WHITES = ("egg", "egg-white", "pasteurised-egg-white", "aquafaba")


class Range(NamedTuple):
    """From and to, both within it."""

    low: NotNegative
    high: NotNegative

    def place_of(self, value: float) -> Place:
        """Where a value lies, to the digit in which the ranges are given."""
        if value < self.low - 0.05:
            return "below"
        return "above" if value > self.high + 0.05 else "within"


@dataclass(frozen=True, slots=True)
class DrinkStyle:
    """A family of drinks: strength in % vol, sugar and acid in g per litre, ice melted in."""

    key: str
    name: Text
    strength: Range
    sugar: Range
    acid: Range
    note: str = ""

    def range_of(self, quality: Quality) -> Range:
        """The usual range of one quality."""
        return {"strength": self.strength, "sugar": self.sugar, "acid": self.acid}[quality]


def style_of(
    spec: Spec, technique: Technique, contents: Sequence[Content], tree: FamilyTree
) -> DrinkStyle | None:
    """The family a drink belongs to, None where no range of it is known.

    Without alcohol there is none, nor for hot drinks, for what is shaken with
    nothing sour, or for what is built with juice.
    """
    keys = [each.pour.ingredient for each in contents if each.volume_ml > ACCENT_ML]
    if sum(each.ethanol_ml for each in contents) < 1.0 or technique == "hot":
        return None
    known, sour = styles(), any(map(_is_sour, contents))
    if any(is_carbonated(key, tree) for key in keys):
        return known["carbonated"]
    if technique == "blended":
        return known["blended"]
    if technique in ("shaken", "swizzled") and sour:
        foams = any(tree.is_a(key, each) for key in keys for each in _EGG_WHITES)
        return known["shaken_egg_white" if foams else "shaken"]
    if technique in ("stirred", "thrown") and not sour:
        return known["stirred"]
    if technique == "built" and not sour and meets_ice(spec, technique):
        long = any(tree.is_a(key, "juice") or tree.is_a(key, "dairy") for key in keys)
        return None if long else known["built"]
    return None


@cache
def styles() -> Mapping[str, DrinkStyle]:
    """Every family by its key. Raises `KnowledgeError` for a broken resource."""
    return read_styles(resource_files.read_text(FILE))


def read_styles(text: str, file: str = FILE) -> Mapping[str, DrinkStyle]:
    """Families out of a TOML text. Raises `KnowledgeError`."""
    found = by_key(parse(text, file), DrinkStyle, file)
    for key, style in found.items():
        for name, (low, high) in zip(
            QUALITIES, (style.strength, style.sugar, style.acid), strict=True
        ):
            if low >= high:
                reason = f"“{name}” must be two numbers, from the lower to the higher"
                raise KnowledgeError(file, key, reason)
    return found


def _is_sour(content: Content) -> bool:
    return content.volume_ml > 0.0 and content.liquid.acid.value >= SOUR_G_PER_L
