"""What a piece or a spoonful of an ingredient comes to, from `resources/portions.toml`."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, fields
from functools import cache

from barkeep import resource_files
from barkeep.shipped_data import amounts, parse

FILE = "portions.toml"


@dataclass(frozen=True, slots=True)
class Portions:
    """By ingredient key: ml or g of one piece, and g per ml of a spoonful."""

    piece_ml: Mapping[str, float]
    piece_g: Mapping[str, float]
    g_per_ml: Mapping[str, float]


@cache
def shipped_portions() -> Portions:
    """The portions barkeep brings along. Raises `KnowledgeError` for a broken resource."""
    return read_portions(resource_files.read_text(FILE))


def read_portions(text: str, file: str = FILE) -> Portions:
    """Portions out of a TOML text. Raises `KnowledgeError`."""
    known = [field.name for field in fields(Portions)]
    document = parse(text, file, *known)
    return Portions(*(amounts(document.get(name, {}), file, name) for name in known))
