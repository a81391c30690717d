"""Safe copies of a bar, also while it is open and being written."""

from __future__ import annotations

import os
import sqlite3
from collections.abc import Iterator
from contextlib import closing, contextmanager
from filecmp import cmp
from itertools import count
from pathlib import Path
from tempfile import TemporaryDirectory

from barkeep.store.connection import journal_owner, kept_for, spoken_errors
from barkeep.store.refusals import CannotWrite


def copy_bar(source: Path, target: Path) -> None:
    """Copy a bar by SQLite's backup API; the target appears whole or not at all.

    Raises `CannotWrite` where the target exists or its folder cannot take it.
    """
    refuse_taken_name(target, source)
    # A file of the owner's may be called NAME.part: nothing beside the target is touched.
    with told_of(target), TemporaryDirectory(dir=target.parent, prefix=".barkeep-") as folder:
        partial = Path(folder) / "copy"
        _copy_pages(source, partial)
        partial.replace(os.path.realpath(target))


def refuse_taken_name(target: Path, source: Path) -> None:
    """Raise `CannotWrite` where no new file can be written; `source` is a bar that may be open."""
    with told_of(target):
        if target.exists():
            raise CannotWrite(str(target), "there is a file of that name already")
        if not target.parent.is_dir():
            raise CannotWrite(str(target), f"the folder {target.parent} does not exist")
        owner = journal_owner(target, known=source)
        if owner is not None:
            raise CannotWrite(str(target), kept_for(owner))


def copy_beside(path: Path, suffix: str) -> Path:
    """Copy a bar to its own name and `.suffix`, numbered where that name is taken.

    A copy that is there already is good enough where it is the same to the
    byte, so that an upgrade that was broken off and tried again leaves one.
    """
    partial = path.with_name(f"{path.name}.{suffix}.part")
    with told_of(partial):
        try:
            partial.unlink(missing_ok=True)
            _copy_pages(path, partial)
            for name in _numbered(f"{path.name}.{suffix}"):
                target = path.with_name(name)
                if not target.exists():
                    partial.replace(target)
                    return target
                if cmp(partial, target, shallow=False):
                    return target
        finally:
            partial.unlink(missing_ok=True)
    raise AssertionError("there is always a next number")


def _numbered(name: str) -> Iterator[str]:
    yield name
    for number in count(2):
        yield f"{name}-{number}"


@contextmanager
def told_of(target: Path) -> Iterator[None]:
    """What the disk says against a file that is to be written, in a sentence."""
    try:
        yield
    except OSError as error:
        raise CannotWrite(str(target), error.strerror or str(error)) from error


def _copy_pages(source: Path, target: Path) -> None:
    with (
        spoken_errors(source),
        closing(_reading(source)) as original,
        closing(sqlite3.connect(target)) as copy,
    ):
        original.backup(copy)


def _reading(source: Path) -> sqlite3.Connection:
    return sqlite3.connect(f"{source.absolute().as_uri()}?mode=ro", uri=True)
