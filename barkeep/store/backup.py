"""Safe copies of a bar, also while it is open and being written."""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator
from contextlib import closing, contextmanager
from filecmp import cmp
from itertools import count
from pathlib import Path

from barkeep.store.connection import spoken_errors
from barkeep.store.refusals import CannotWrite


def copy_bar(source: Path, target: Path) -> None:
    """Copy a bar by SQLite's backup API; the target appears whole or not at all.

    Raises `CannotWrite` where the target exists or its folder cannot take it.
    """
    if target.exists():
        raise CannotWrite(str(target), "there is a file of that name already")
    with _copied_to_part_of(target, source) as partial:
        partial.replace(target)


def copy_beside(path: Path, suffix: str) -> Path:
    """Copy a bar to its own name and `.suffix`, numbered where that name is taken.

    A copy that is there already is good enough where it is the same to the
    byte, so that an upgrade that was broken off and tried again leaves one.
    """
    with _copied_to_part_of(path.with_name(f"{path.name}.{suffix}"), path) as partial:
        for name in _numbered(f"{path.name}.{suffix}"):
            target = path.with_name(name)
            if not target.exists():
                partial.replace(target)
                return target
            if cmp(partial, target, shallow=False):
                return target
    raise AssertionError("there is always a next number")


def _numbered(name: str) -> Iterator[str]:
    yield name
    for number in count(2):
        yield f"{name}-{number}"


@contextmanager
def _copied_to_part_of(target: Path, source: Path) -> Iterator[Path]:
    partial = target.with_name(f"{target.name}.part")
    try:
        partial.unlink(missing_ok=True)
        _copy_pages(source, partial)
        yield partial
    except OSError as error:
        raise CannotWrite(str(target), error.strerror or str(error)) from error
    finally:
        _discard(partial)


def _copy_pages(source: Path, target: Path) -> None:
    if not target.parent.is_dir():
        raise CannotWrite(str(target), f"the folder {target.parent} does not exist")
    with (
        spoken_errors(source),
        closing(_reading(source)) as original,
        closing(sqlite3.connect(target)) as copy,
    ):
        original.backup(copy)


def _reading(source: Path) -> sqlite3.Connection:
    return sqlite3.connect(f"{source.absolute().as_uri()}?mode=ro", uri=True)


def _discard(partial: Path) -> None:
    if partial.exists():
        partial.unlink()
