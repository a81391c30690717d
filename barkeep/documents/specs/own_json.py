"""Specs as barkeep's own JSON, which loses nothing of what a spec holds.

A line is its text; where that does not say all that the line holds, such as after a person
put it right, `fields` does. `of` is the text they are for: of one that was changed since,
the text counts.
"""

from __future__ import annotations

import json
from collections.abc import Mapping, Sequence
from dataclasses import asdict, fields
from math import isfinite
from typing import Any

from barkeep.documents.foreign_text import read_json
from barkeep.domain.spec_text.parts import SpecParts
from barkeep.domain.specs.spec import Line
from barkeep.errors import UnreadableFile
from barkeep.translation import tr

FORMAT, VERSION = "barkeep-specs", 1
_TEXTS = ("name", "glass", "ice", "riff_of", "credit", "source")
_LISTS = ("lines", "method", "notes", "tags")
_NOT_WRITTEN = ("row", "number", "rows", "known", "left_aside")


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
        raise UnreadableFile(file, tr("its “format” is not “{format}”", format=FORMAT))
    if whole.get("version") != VERSION:
        found = whole.get("version")
        raise UnreadableFile(
            file,
            tr("its version is {found!r}; this barkeep reads {known}", found=found, known=VERSION),
        )
    specs = whole.get("specs")
    if not isinstance(specs, list):
        raise UnreadableFile(file, tr("“specs” must be a list"))
    return tuple(_read(spec, number, file) for number, spec in enumerate(specs, 1))


def _read(spec: Any, number: int, file: str) -> SpecParts:
    where = tr("spec {number}", number=number)
    if not isinstance(spec, dict):
        raise UnreadableFile(file, tr("{where} must be an object", where=where))
    serves = spec.get("serves")
    if serves is not None and (isinstance(serves, bool) or not isinstance(serves, int | float)):
        raise UnreadableFile(file, tr("{where}: “serves” must be a number", where=where))
    found: dict[str, Any] = {each: _text(spec, each, where, file) for each in _TEXTS}
    found |= {each: _list(spec, each, where, file) for each in _LISTS}
    served = None if serves is None else float(serves)
    known = _known(spec.get("fields"), found["lines"], where, file)
    return SpecParts(**found, serves=served, number=number, known=known)


def _text(spec: Mapping[str, Any], key: str, where: str, file: str) -> str:
    value = spec.get(key, "")
    if not isinstance(value, str):
        raise UnreadableFile(file, tr("{where}: “{key}” must be a text", where=where, key=key))
    return value


def _list(spec: Mapping[str, Any], key: str, where: str, file: str) -> tuple[str, ...]:
    values = spec.get(key, [])
    if not isinstance(values, list) or not all(isinstance(value, str) for value in values):
        raise UnreadableFile(
            file, tr("{where}: “{key}” must be a list of texts", where=where, key=key)
        )
    return tuple(values)


_NUMBERS = ("amount", "amount_high", "quantity", "min_abv_percent")
_TYPES: Mapping[str, str] = {each.name: str(each.type) for each in fields(Line)}
"""Field of a line -> its type as it is written there."""


def _known(values: Any, lines: Sequence[str], where: str, file: str) -> tuple[Line | None, ...]:
    """What a document says each line is in fields; none where it does not."""
    if values is None:
        return ()
    if not isinstance(values, list) or len(values) != len(lines):
        raise UnreadableFile(
            file, tr("{where}: “fields” must be a list with one for each line", where=where)
        )
    return tuple(
        _line(value, text, tr("{where}, line {number}", where=where, number=number), file)
        if _is_of(value, text)
        else None
        for number, (value, text) in enumerate(zip(values, lines, strict=True), 1)
    )


def _is_of(value: Any, text: str) -> bool:
    """Whether fields are there, and for this text."""
    return value is not None and (not isinstance(value, dict) or value.get("of") == text)


def _line(value: Any, text: str, where: str, file: str) -> Line:
    if not isinstance(value, dict) or not isinstance(value.get("ingredient"), str):
        raise UnreadableFile(
            file, tr("{where}: its fields must be an object with an “ingredient”", where=where)
        )
    found: dict[str, Any] = {"text": text}
    for key, each in value.items():
        if key == "of":
            continue
        if key not in _TYPES:
            raise UnreadableFile(
                file, tr("{where}: a line has no field “{key}”", where=where, key=key)
            )
        if not _fits(each, key):
            raise UnreadableFile(
                file, tr("{where}: “{key}” cannot be {value!r}", where=where, key=key, value=each)
            )
        found[key] = tuple(each) if isinstance(each, list) else each
    for key in _NUMBERS:
        if found.get(key) is not None:
            found[key] = float(found[key])
    return Line(**found)


def _fits(value: Any, key: str) -> bool:
    """Whether a value may be what a field of a line holds."""
    kind = _TYPES[key]
    if value is None:
        return "None" in kind
    if kind.startswith("tuple"):
        return isinstance(value, list) and all(isinstance(each, str) for each in value)
    if kind.startswith("float"):
        number = isinstance(value, int | float) and not isinstance(value, bool)
        return number and isfinite(value) and value >= 0
    return isinstance(value, bool if kind == "bool" else str)


def _written(spec: SpecParts) -> dict[str, Any]:
    held = {name: value for name, value in asdict(spec).items() if name not in _NOT_WRITTEN}
    whole = {key: value for key, value in held.items() if value or key in ("name", "lines")}
    if any(spec.known):
        whole["fields"] = [
            None if line is None else _fields(line, text)
            for line, text in zip(spec.known, spec.lines, strict=True)
        ]
    return whole


def _fields(line: Line, text: str) -> dict[str, Any]:
    """What a line holds beyond its text, its own text only where that is another."""
    nothing = Line(text, "")
    said = ((each.name, getattr(line, each.name)) for each in fields(Line))
    return {"of": text, **{key: value for key, value in said if value != getattr(nothing, key)}}
