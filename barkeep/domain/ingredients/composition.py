"""What solids and pieces come to and bring into a drink, and what counts for energy besides.

What they bring is from `resources/composition.toml`, what a piece or a spoonful
comes to from `resources/portions.toml`.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, fields
from functools import cache
from typing import Literal

from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.shipped_data import NotNegative, Text, amounts, parse, read, table_of

COMPOSITIONS_FILE = "composition.toml"


@dataclass(frozen=True, slots=True)
class Composition:
    """For a litre, a gram or a piece (`per`): room in ml and grams of each."""

    per: Literal["l", "g", "each"]
    basis: Text
    volume_ml: NotNegative = 0.0
    sugar_g: NotNegative = 0.0
    acid_g: NotNegative = 0.0
    protein_g: NotNegative = 0.0
    fat_g: NotNegative = 0.0
    blended: bool = False


PLAIN = Composition("l", "nothing is said of it")
"""What is taken of an ingredient that has no entry."""


def composition_of(key: str, tree: FamilyTree) -> Composition | None:
    """What is said of an ingredient or of the nearest kind above it; None where nothing is.

    Of a kind measured otherwise nothing is taken over.
    """
    return tree.once(_composition_of, key)


def _composition_of(tree: FamilyTree, key: str) -> Composition | None:
    known = shipped_compositions()
    per = "l" if tree[key].unit == "ml" else tree[key].unit
    said = (known[each] for each in (key, *tree.upwards(key)) if each in known)
    return next((each for each in said if each.per == per), None)


@cache
def shipped_compositions() -> Mapping[str, Composition]:
    """By ingredient key. Raises `KnowledgeError` for a broken resource."""
    return table_of(COMPOSITIONS_FILE, read_compositions, Mapping[str, Composition])


def read_compositions(text: str, file: str = COMPOSITIONS_FILE) -> Mapping[str, Composition]:
    """Compositions out of a TOML text. Raises `KnowledgeError`."""
    return {key: read(each, Composition, file, key) for key, each in parse(text, file).items()}


PORTIONS_FILE = "portions.toml"


@dataclass(frozen=True, slots=True)
class Portions:
    """By ingredient key: ml or g of one piece, g per ml of a spoonful, ml pressed from a piece.

    `each_g` is one of what is used by the piece and sold by weight.
    """

    piece_ml: Mapping[str, float]
    piece_g: Mapping[str, float]
    g_per_ml: Mapping[str, float]
    each_g: Mapping[str, float]
    pressed_ml: Mapping[str, float]


@cache
def shipped_portions() -> Portions:
    """The portions barkeep brings along. Raises `KnowledgeError` for a broken resource."""
    return table_of(PORTIONS_FILE, read_portions, Portions)


def read_portions(text: str, file: str = PORTIONS_FILE) -> Portions:
    """Portions out of a TOML text. Raises `KnowledgeError`."""
    known = [field.name for field in fields(Portions)]
    document = parse(text, file, *known)
    return Portions(*(amounts(document.get(name, {}), file, name) for name in known))
