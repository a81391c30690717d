"""What solids and pieces bring into a drink, and the protein and fat that count for energy."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from typing import Literal

from barkeep import resource_files
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.shipped_data import NotNegative, Text, parse, read

FILE = "composition.toml"


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
    known = shipped_compositions()
    per = "l" if tree[key].unit == "ml" else tree[key].unit
    nearest = [key]
    while nearest:
        for each in nearest:
            if each in known and known[each].per == per:
                return known[each]
        nearest = [above for each in nearest for above in tree[each].parents]
    return None


@cache
def shipped_compositions() -> Mapping[str, Composition]:
    """By ingredient key. Raises `KnowledgeError` for a broken resource."""
    return read_compositions(resource_files.read_text(FILE))


def read_compositions(text: str, file: str = FILE) -> Mapping[str, Composition]:
    """Compositions out of a TOML text. Raises `KnowledgeError`."""
    return {key: read(each, Composition, file, key) for key, each in parse(text, file).items()}
