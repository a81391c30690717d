"""Typed reading of one TOML table, every fault a `KnowledgeError` that names its place."""

from __future__ import annotations

import tomllib
from collections.abc import Collection, Mapping
from math import isfinite
from typing import Any, NoReturn

from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.errors import KnowledgeError

Table = Mapping[str, Any]


def parse(text: str, file: str) -> Table:
    """The whole document."""
    try:
        return tomllib.loads(text)
    except tomllib.TOMLDecodeError as error:
        raise KnowledgeError(file, "the text", f"it is not TOML: {error}") from error


def tables(document: Table, name: str, file: str) -> list[Table]:
    """The tables under `[[name]]`; none where there are none."""
    found = document.get(name, [])
    if not isinstance(found, list) or not all(isinstance(each, dict) for each in found):
        raise KnowledgeError(file, name, f"write each as [[{name}]]")
    return found


def refuse_other_tables(document: Table, known: Collection[str], file: str) -> None:
    """Raise for a top-level name that means nothing here."""
    for name in document:
        if name not in known:
            raise KnowledgeError(file, name, "there is no such entry; is it a misspelling?")


class Fields:
    """The fields of one table. What was not asked for by the end is unknown."""

    def __init__(self, table: Table, file: str, key: str) -> None:
        self._rest = dict(table)
        self.file = file
        self.key = key

    def refuse(self, reason: str) -> NoReturn:
        """Raise with this table's place."""
        raise KnowledgeError(self.file, self.key, reason)

    def finish(self) -> None:
        """Raise for a field that nothing asked for."""
        for name in self._rest:
            self.refuse(f"there is no field “{name}”")

    def names(self) -> tuple[str, ...]:
        """The names of the fields that are left, in order."""
        return tuple(self._rest)

    def text(self, name: str, default: str | None = None) -> str:
        """A text; without a default it must be there and say something."""
        value = self._rest.pop(name, default)
        if not isinstance(value, str):
            self._refuse_type(name, value, "a text")
        if default is None and not value.strip():
            self.refuse(f"“{name}” is empty")
        return value.strip()

    def flag(self, name: str) -> bool:
        """True or false; false where it is left out."""
        value = self._rest.pop(name, False)
        if not isinstance(value, bool):
            self._refuse_type(name, value, "true or false")
        return value

    def number(
        self, name: str, *, above: float | None = None, least: float = 0.0, most: float = 1e9
    ) -> float:
        """A number that must be there: `least` to `most`, and more than `above`."""
        value = self.number_or_none(name, above=above, least=least, most=most)
        if value is None:
            self.refuse(f"“{name}” is missing")
        return value

    def number_or_none(
        self, name: str, *, above: float | None = None, least: float = 0.0, most: float = 1e9
    ) -> float | None:
        """A number within limits, None where it is left out."""
        value = self._rest.pop(name, None)
        if value is None:
            return None
        if isinstance(value, bool) or not isinstance(value, int | float):
            self._refuse_type(name, value, "a number")
        too_low = value < least if above is None else value <= above
        if not isfinite(value) or too_low or value > most:
            low = f"more than {above:g}" if above is not None else f"{least:g} or more"
            high = f" and at most {most:g}" if most < 1e9 else ""
            self.refuse(f"“{name}” is {value:g}; it must be {low}{high}")
        return float(value)

    def days_or_none(self, name: str) -> int | None:
        """Whole days, None where it is left out."""
        value = self.number_or_none(name, above=0)
        if value is not None and value != int(value):
            self.refuse(f"“{name}” is {value:g}; it is counted in whole days")
        return None if value is None else int(value)

    def words(self, name: str) -> tuple[str, ...]:
        """A list of texts, each once; empty where it is left out."""
        value = self._rest.pop(name, [])
        if not isinstance(value, list) or not all(isinstance(each, str) for each in value):
            self._refuse_type(name, value, "a list of texts")
        for each in value:
            if not each.strip() or value.count(each) > 1:
                self.refuse(f"“{name}” has an empty text or “{each}” twice")
        return tuple(value)

    def rows(self, name: str, columns: int) -> tuple[tuple[float, ...], ...]:
        """A list of rows, each of so many numbers of zero or more."""
        value = self._rest.pop(name, None)
        if not isinstance(value, list) or not all(_is_row(row, columns) for row in value):
            self._refuse_type(name, value, f"a list of rows of {columns} numbers, zero or more")
        return tuple(tuple(float(each) for each in row) for row in value)

    def choice(self, name: str, choices: Collection[str], default: str) -> str:
        """One of a few words."""
        value = self.text(name, default)
        if value not in choices:
            self.refuse(f"“{name}” is “{value}”; it must be one of {', '.join(choices)}")
        return value

    def table(self, name: str) -> Table:
        """A table within this one; empty where it is left out."""
        value = self._rest.pop(name, {})
        if not isinstance(value, dict):
            self._refuse_type(name, value, "a table")
        return value

    def ingredient(self, name: str, tree: FamilyTree) -> str:
        """The key of an ingredient."""
        return self.known(self.text(name), tree)

    def known(self, key: str, tree: FamilyTree) -> str:
        """The key given, which must be an ingredient's."""
        if key not in tree:
            self.refuse(f"“{key}” is not an ingredient")
        return key

    def _refuse_type(self, name: str, value: object, expected: str) -> NoReturn:
        if value is None:
            self.refuse(f"“{name}” is missing")
        self.refuse(f"“{name}” must be {expected}, not {value!r}")


def _is_row(row: object, columns: int) -> bool:
    return (
        isinstance(row, list)
        and len(row) == columns
        and all(isinstance(each, int | float) and not isinstance(each, bool) for each in row)
        and all(isfinite(each) and each >= 0.0 for each in row)
    )
