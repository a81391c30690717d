"""Specs as barkeep's own JSON, which loses nothing of what a spec holds."""

from __future__ import annotations

import json
from collections.abc import Mapping, Sequence
from dataclasses import asdict
from typing import Any

from barkeep.documents.foreign_text import read_json
from barkeep.domain.spec_text.parts import SpecParts
from barkeep.errors import UnreadableFile

FORMAT, VERSION = "barkeep-specs", 1
_TEXTS = ("name", "glass", "ice", "riff_of", "credit", "source")
_LISTS = ("lines", "method", "notes", "tags")
_NOT_WRITTEN = ("row", "number", "rows", "left_aside")


def is_own_json(text: str) -> bool:
    """Whether a text says that it is this format."""
    return f'"{FORMAT}"' in text[:400]


def specs_json(specs: Sequence[SpecParts]) -> str:
    """Specs as one document that `parts_in_json` reads back."""
    whole = {"format": FORMAT, "version": VERSION, "specs": [_written(spec) for spec in specs]}
    return json.dumps(whole, ensure_ascii=False, indent=2) + "\n"


def parts_in_json(text: str, file: str) -> tuple[SpecParts, ...]:
    """The specs of a document. Raises `UnreadableFile` that names the place."""
    whole = read_json(text, file)
    if not isinstance(whole, dict) or whole.get("format") != FORMAT:
        raise UnreadableFile(file, f"its “format” is not “{FORMAT}”")
    if whole.get("version") != VERSION:
        found = whole.get("version")
        raise UnreadableFile(file, f"its version is {found!r}; this barkeep reads {VERSION}")
    specs = whole.get("specs")
    if not isinstance(specs, list):
        raise UnreadableFile(file, "“specs” must be a list")
    return tuple(_read(spec, number, file) for number, spec in enumerate(specs, 1))


def _read(spec: Any, number: int, file: str) -> SpecParts:
    where = f"spec {number}"
    if not isinstance(spec, dict):
        raise UnreadableFile(file, f"{where} must be an object")
    serves = spec.get("serves")
    if serves is not None and (isinstance(serves, bool) or not isinstance(serves, int | float)):
        raise UnreadableFile(file, f"{where}: “serves” must be a number")
    fields: dict[str, Any] = {each: _text(spec, each, where, file) for each in _TEXTS}
    fields |= {each: _list(spec, each, where, file) for each in _LISTS}
    served = None if serves is None else float(serves)
    return SpecParts(**fields, serves=served, number=number)


def _text(spec: Mapping[str, Any], key: str, where: str, file: str) -> str:
    value = spec.get(key, "")
    if not isinstance(value, str):
        raise UnreadableFile(file, f"{where}: “{key}” must be a text")
    return value


def _list(spec: Mapping[str, Any], key: str, where: str, file: str) -> tuple[str, ...]:
    values = spec.get(key, [])
    if not isinstance(values, list) or not all(isinstance(value, str) for value in values):
        raise UnreadableFile(file, f"{where}: “{key}” must be a list of texts")
    return tuple(values)


def _written(spec: SpecParts) -> dict[str, Any]:
    fields = {name: value for name, value in asdict(spec).items() if name not in _NOT_WRITTEN}
    return {key: value for key, value in fields.items() if value or key in ("name", "lines")}
