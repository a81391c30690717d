"""Where a drink lies among its family: stronger, sweeter or sourer than usual, or not.

The ranges are where the classics of barkeep's own book lie, by barkeep's own
figures (`resources/balance_ranges.toml`): habits, no rules. A test derives them
anew from the book.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from functools import cache
from typing import Annotated, Literal, NamedTuple, get_args

from barkeep import resource_files
from barkeep.domain.drink.contents import Content
from barkeep.domain.drink.ice import is_carbonated, meets_ice
from barkeep.domain.ingredients.relations import Technique
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.specs.spec import ACCENT_ML, Spec
from barkeep.errors import KnowledgeError
from barkeep.shipped_data import Limits, NotNegative, Text, by_key, parse

FILE = "balance_ranges.toml"
Quality = Literal["strength", "sugar", "acid"]
QUALITIES: tuple[Quality, ...] = get_args(Quality)
Place = Literal["below", "within", "above"]
LEFT_OUT = 10
"""Of so many classics one, the farthest out, is left out of a range at either end."""
SOUR_G_PER_L = 20.0
"""A line is sour from this much acid: citrus, verjus, vinegar."""
SWEET_G_PER_L = 100.0
"""A line is sweet from this much sugar, the least of a liqueur (Regulation (EU) 2019/787)."""
_DASHED_ML = 2.0
"""So little of something sweet leaves a drink dry: two dashes."""
_EGG_WHITES = ("egg", "egg-white", "pasteurised-egg-white", "aquafaba")
_SPARKLING = ("sparkling-wine", "alcohol-free-sparkling-wine")
_WINES = ("wine", "fortified-wine", "aromatised-wine")


class Range(NamedTuple):
    """From and to, both within it."""

    low: NotNegative
    high: NotNegative

    def place_of(self, value: float) -> Place:
        """Where a value lies, to the digit in which the ranges are given."""
        if value < self.low - 0.05:
            return "below"
        return "above" if value > self.high + 0.05 else "within"


Count = Annotated[int, Limits(gt=0, description="a whole number")]
Middle = tuple[NotNegative, NotNegative, NotNegative]


@dataclass(frozen=True, slots=True)
class DrinkStyle:
    """A family of drinks: strength in % vol, sugar and acid in g per litre, ice melted in.

    `middle` is the median of each, in that order, and `classics` how many drinks
    of the book the ranges are drawn from.
    """

    key: str
    name: Text
    classics: Count
    strength: Range
    sugar: Range
    acid: Range
    middle: Middle

    def range_of(self, quality: Quality) -> Range:
        """The usual range of one quality."""
        return {"strength": self.strength, "sugar": self.sugar, "acid": self.acid}[quality]


def style_of(
    spec: Spec, technique: Technique, contents: Sequence[Content], tree: FamilyTree
) -> DrinkStyle | None:
    """The family a drink belongs to, None where no range of it is known."""
    key = family_of(spec, technique, contents, tree)
    return None if key is None else styles().get(key)


def family_of(
    spec: Spec, technique: Technique, contents: Sequence[Content], tree: FamilyTree
) -> str | None:
    """The key of the family a drink is judged among, None where there is none.

    Without alcohol there is none, nor for hot drinks, for what holds beer or
    cider, for what is shaken with nothing sour, or for what is built with juice.
    """
    if sum(each.ethanol_ml for each in contents) < 1.0 or technique == "hot":
        return None
    parts = _Parts(tuple(contents), tree)
    if any(is_carbonated(key, tree) for key in parts.main):
        return _with_bubbles(parts)
    if technique == "blended":
        return "blended"
    if technique in ("shaken", "swizzled"):
        return _shaken(parts) if parts.sour else None
    if technique in ("stirred", "thrown"):
        return None if parts.sour else _stirred(parts)
    if technique == "built" and not parts.sour and meets_ice(spec, technique):
        return None if parts.holds("juice", "dairy") else "built"
    return None


@dataclass(frozen=True, slots=True)
class _Parts:
    """What a family is told by. `main` are the keys of all that is more than an accent."""

    contents: tuple[Content, ...]
    tree: FamilyTree

    @property
    def main(self) -> tuple[str, ...]:
        return tuple(each.pour.ingredient for each in self.contents if each.volume_ml > ACCENT_ML)

    @property
    def sour(self) -> bool:
        return any(
            each.volume_ml > 0.0 and each.liquid.acid.value >= SOUR_G_PER_L
            for each in self.contents
        )

    @property
    def dry(self) -> bool:
        return not any(
            each.volume_ml > _DASHED_ML and each.liquid.sugar.value >= SWEET_G_PER_L
            for each in self.contents
        )

    def holds(self, *kinds: str) -> bool:
        return any(self.tree.is_a(key, kind) for key in self.main for kind in kinds)

    def sugar_g_of(self, kind: str) -> float:
        return sum(
            each.sugar_g for each in self.contents if self.tree.is_a(each.pour.ingredient, kind)
        )


def _with_bubbles(parts: _Parts) -> str | None:
    if parts.holds("beer", "cider"):
        return None
    if parts.holds(*_SPARKLING):
        return "sparkling"
    return "long_sour" if parts.sour else "long"


def _shaken(parts: _Parts) -> str:
    if parts.holds(*_EGG_WHITES):
        return "shaken_egg_white"
    sugar_g = sum(each.sugar_g for each in parts.contents)
    from_liqueur = 2.0 * parts.sugar_g_of("liqueur") >= sugar_g > 0.0
    return "shaken_liqueur" if from_liqueur else "shaken"


def _stirred(parts: _Parts) -> str:
    if not parts.holds("spirit"):
        return "stirred_aperitif"
    if parts.dry:
        return "stirred_dry"
    return "stirred" if parts.holds(*_WINES) else "stirred_spirit"


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
