"""What a piece or a spoonful of an ingredient comes to, from `resources/portions.toml`."""

from __future__ import annotations

import tomllib
from collections.abc import Mapping
from dataclasses import dataclass, fields
from functools import cache

from barkeep import resource_files
from barkeep.errors import KnowledgeError

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
    try:
        tables = tomllib.loads(text)
    except tomllib.TOMLDecodeError as error:
        raise KnowledgeError(file, "the text", f"it is not TOML: {error}") from error
    known = [field.name for field in fields(Portions)]
    for name in tables:
        if name not in known:
            raise KnowledgeError(file, name, "there is no such entry; is it a misspelling?")
    return Portions(*(_amounts(name, tables.get(name, {}), file) for name in known))


def _amounts(name: str, table: object, file: str) -> Mapping[str, float]:
    if not isinstance(table, dict):
        raise KnowledgeError(file, name, "it must be a table")
    for key, value in table.items():
        if isinstance(value, bool) or not isinstance(value, int | float) or value <= 0:
            raise KnowledgeError(file, f"{name}.{key}", "it must be a number above nothing")
    return {key: float(value) for key, value in table.items()}
