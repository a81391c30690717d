"""Where the data that barkeep brings along is found, however it was installed.

A wheel has `barkeep.resources` and `barkeep.sample_db` inside the package; in an
editable install and a plain clone the two folders lie beside it. Anywhere else
they are found by the import system, as packages. That is asked last: what it
needs takes as long to load as all of the data.
"""

from __future__ import annotations

from collections.abc import Iterator
from functools import cache
from pathlib import Path
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from importlib.resources.abc import Traversable


def root(folder: str = "resources") -> Traversable:
    """The folder `resources` or `sample_db`.

    Raises `ModuleNotFoundError` where the installation lacks it.
    """
    return _beside(__file__, folder)


@cache
def _beside(here: str, folder: str) -> Traversable:
    package = Path(here).resolve().parent
    for place in (package, package.parent):
        if (place / folder / "__init__.py").is_file():
            return place / folder
    from importlib.resources import files

    return files(f"barkeep.{folder}")


def read_text(*parts: str, folder: str = "resources") -> str:
    """The text of one file, UTF-8: `read_text("classics", "sours.txt")`.

    Raises `FileNotFoundError`.
    """
    return _at(root(folder), parts).read_text(encoding="utf-8")


def read_said(*parts: str, language: str) -> str:
    """The text of a file in a language: it lies beside the English one, in a folder named so.

    In English where the language has none. Raises `FileNotFoundError`.
    """
    *folders, name = parts
    try:
        return read_text(*folders, language, name)
    except FileNotFoundError:
        return read_text(*parts)


def read_bytes(*parts: str, folder: str = "resources") -> bytes:
    """What is in one file, as it is. Raises `FileNotFoundError`."""
    return _at(root(folder), parts).read_bytes()


def names(*parts: str, folder: str = "resources", suffix: str = "") -> tuple[str, ...]:
    """The names of the files in a folder that end in `suffix`, in order; none without a folder."""
    place = _at(root(folder), parts)
    if not place.is_dir():
        return ()
    return tuple(sorted(_file_names(place, suffix)))


def _file_names(place: Traversable, suffix: str) -> Iterator[str]:
    for entry in place.iterdir():
        if entry.is_file() and entry.name.endswith(suffix):
            yield entry.name


def _at(place: Traversable, parts: tuple[str, ...]) -> Traversable:
    # One "/" at a time: joinpath with several parts fails on some loaders.
    for part in parts:
        place = place / part
    return place
