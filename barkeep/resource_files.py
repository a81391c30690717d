"""Where the data that barkeep brings along is found, however it was installed.

A wheel and an editable install offer `barkeep.resources` and
`barkeep.sample_db` as packages; in a plain clone the two folders lie beside
the package.
"""

from __future__ import annotations

from collections.abc import Iterator
from importlib.resources import files
from importlib.resources.abc import Traversable
from pathlib import Path


def root(folder: str = "resources") -> Traversable:
    """The folder `resources` or `sample_db`.

    Raises `ModuleNotFoundError` where the installation lacks it.
    """
    try:
        return files(f"barkeep.{folder}")
    except ModuleNotFoundError:
        beside = Path(__file__).resolve().parent.parent / folder
        if beside.is_dir():
            return beside
        raise


def read_text(*parts: str, folder: str = "resources") -> str:
    """The text of one file, UTF-8: `read_text("classics", "sours.txt")`.

    Raises `FileNotFoundError`.
    """
    return _at(root(folder), parts).read_text(encoding="utf-8")


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
