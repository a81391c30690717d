"""What solids and pieces bring into a drink, and the protein and fat that count for energy."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache

from barkeep import resource_files
from barkeep.domain.ingredients.toml_fields import Fields, parse
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.errors import KnowledgeError

FILE = "composition.toml"

PER = ("l", "g", "each")


@dataclass(frozen=True, slots=True)
class Composition:
    """For a litre, a gram or a piece (`per`): room in ml and grams of each."""

    per: str
    volume_ml: float = 0.0
    sugar_g: float = 0.0
    acid_g: float = 0.0
    protein_g: float = 0.0
    fat_g: float = 0.0
    blended: bool = False
    basis: str = ""


NOTHING = Composition("l")


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
    found = {}
    for key, table in parse(text, file).items():
        if not isinstance(table, dict):
            raise KnowledgeError(file, key, "it must be a table")
        found[key] = _composition(Fields(table, file, key))
    return found


def _composition(fields: Fields) -> Composition:
    per = fields.text("per")
    if per not in PER:
        fields.refuse("“per” must be l, g or each")
    read = Composition(
        per=per,
        volume_ml=fields.number_or_none("volume_ml") or 0.0,
        sugar_g=fields.number_or_none("sugar_g") or 0.0,
        acid_g=fields.number_or_none("acid_g") or 0.0,
        protein_g=fields.number_or_none("protein_g") or 0.0,
        fat_g=fields.number_or_none("fat_g") or 0.0,
        blended=fields.flag("blended"),
        basis=fields.text("basis"),
    )
    fields.finish()
    return read
