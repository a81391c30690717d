"""Safe copies of a bar, also while it is open and being written, and one put in its place.

A copy is made by SQLite's backup API under another name, brought to the disk
and checked; only then does it get its name, and that is brought to the disk
too. So a copy that has its name is whole, wherever the program was stopped.
"""

from __future__ import annotations

import os
import shutil
import sqlite3
import stat
from collections.abc import Callable, Iterator
from contextlib import closing, contextmanager
from filecmp import cmp
from itertools import count
from pathlib import Path
from typing import TypeVar

from barkeep.errors import UnreadableFile
from barkeep.store.connection import (
    BUSY_MS,
    JOURNALS,
    journal_owner,
    kept_for,
    open_file,
    spoken_errors,
)
from barkeep.store.refusals import BarIsBusy, CannotWrite
from barkeep.store.unfinished import unfinished_in
from barkeep.translation import tr, tr_noop

T = TypeVar("T")

_NO_ROOM = tr_noop("the disk is full or reported an error")
_WRITE_REASONS = {
    "SQLITE_CANTOPEN": tr_noop("its folder takes no file"),
    **dict.fromkeys(("SQLITE_FULL", "SQLITE_IOERR_WRITE", "SQLITE_IOERR_FSYNC"), _NO_ROOM),
}

_SLEEP_S = 0.05
"""How long to wait before a locked file is tried again."""


def copy_bar(source: Path, target: Path) -> None:
    """Copy a bar to a new file; the target appears whole or not at all.

    Raises `CannotWrite` where the target exists or its folder cannot take it,
    `UnreadableFile` for a bar that is damaged, and `BarIsBusy`.
    """
    refuse_taken_name(target, source)
    with told_of(target), unfinished_in(target.parent) as partial:
        _copy_whole(source, partial)
        _name(partial, Path(os.path.realpath(target)))


def copy_open(file: sqlite3.Connection, target: Path, mode: int) -> None:
    """Copy a bar that is open to a new file, also where its own is no longer in its place.

    `mode` is the copy's, as `os.stat` gives it. Raises as `copy_bar` does.
    """
    refuse_taken_name(target, target)
    with told_of(target), unfinished_in(target.parent) as partial:
        _fill(partial, file, used=target)
        partial.chmod(stat.S_IMODE(mode))
        _see_that_it_is_whole(partial, target)
        _name(partial, Path(os.path.realpath(target)))


def write_filled(target: Path, fill: Callable[[Path], None]) -> None:
    """Write a new file with what `fill` puts into it, whole or not at all. As `copy_bar` raises."""
    refuse_taken_name(target, target)
    with told_of(target), unfinished_in(target.parent) as partial:
        _fill_whole(partial, fill, target)
        _name(partial, Path(os.path.realpath(target)))


def filled_into(folder: Path, name: Callable[[int], str], fill: Callable[[Path], None]) -> Path:
    """As `copy_into`, with what `fill` puts into a new file."""
    with _in_own_folder(folder) as partial:
        _fill_whole(partial, fill, _first_free(folder, name))
        return _name_first_free(partial, folder, name)


def refuse_taken_name(target: Path, source: Path) -> None:
    """Raise `CannotWrite` where no new file can be written; `source` is a bar that may be open."""
    with told_of(target):
        if target.exists():
            raise CannotWrite(str(target), tr("there is a file of that name already"))
        if not target.parent.is_dir():
            raise CannotWrite(
                str(target), tr("the folder {parent} does not exist", parent=target.parent)
            )
        owner = journal_owner(target, known=source)
        if owner is not None:
            raise CannotWrite(str(target), kept_for(owner))


def copy_beside(path: Path, suffix: str) -> Path:
    """Copy a bar to its own name and `.suffix`, numbered where that name is taken.

    A copy that is there already is good enough where it is the same to the
    byte, so that an upgrade that was broken off and tried again leaves one.
    Raises as `copy_bar` does.
    """
    with told_of(path.with_name(f"{path.name}.{suffix}")), unfinished_in(path.parent) as partial:
        _copy_whole(path, partial)
        for name in _numbered(f"{path.name}.{suffix}"):
            target = path.with_name(name)
            if not target.exists():
                _name(partial, target)
                return target
            if cmp(partial, target, shallow=False):
                return target
    raise AssertionError("there is always a next number")


def copy_into(source: Path, folder: Path, name: Callable[[int], str]) -> Path:
    """Copy a bar into a folder of its backups, which is made where it is missing.

    `name` gives the copy's name by a number from 1 on; the first that is free
    is taken. Raises as `copy_bar` does.
    """
    with _in_own_folder(folder) as partial:
        _copy_whole(source, partial)
        return _name_first_free(partial, folder, name)


def keep_as_it_is(source: Path, folder: Path, name: Callable[[int], str]) -> Path:
    """Copy a file that SQLite cannot read, byte by byte, with what SQLite kept beside it.

    To be asked only of a file that is not open here. Raises `CannotWrite`.
    """
    with _in_own_folder(folder) as partial:
        target = _first_free(folder, name)
        for ending in _endings_beside(source):
            beside = partial.with_name(f"{partial.name}{ending}")
            shutil.copyfile(f"{source}{ending}", beside)
            _sync(beside)
            _name(beside, target.with_name(f"{target.name}{ending}"))
        shutil.copyfile(source, partial)
        _sync(partial)
        _name(partial, target)
    return target


def write_over(bar: Path, source: Path, keep: Callable[[], T]) -> T:
    """Make a bar hold what another file holds, once `keep` has kept it as it is; what that gives.

    What is kept is the last that anybody wrote: where another wrote to the bar since, it is
    kept anew. Else as `put_in_place`, and it raises `UnreadableFile` for what SQLite cannot
    write into, and what `keep` raises.
    """
    with (
        told_of(bar),
        spoken_errors(bar),
        _writes_told(bar),
        closing(open_file(source, BUSY_MS)) as original,
        closing(_writing(bar)) as target,
    ):
        kept = _held_as_kept(target, keep)
        try:
            original.backup(target, progress=_waiting_for(bar), sleep=_SLEEP_S)
        finally:
            _let_go(target)
    return kept


def _held_as_kept(target: sqlite3.Connection, keep: Callable[[], T]) -> T:
    """Keep a bar, and from then on let nobody else read or write it, until `_let_go`.

    SQLite copies into no file in which a transaction is open, so it is the lock that stays.
    """
    target.execute(f"PRAGMA busy_timeout = {BUSY_MS}")
    while True:
        before = _version(target)
        kept = keep()
        target.execute("PRAGMA locking_mode = EXCLUSIVE").fetchall()
        target.execute("BEGIN IMMEDIATE")
        now = _version(target)
        target.execute("COMMIT")
        if now == before:
            return kept
        _let_go(target)


def _version(file: sqlite3.Connection) -> int:
    """A number that changes when another has written to an open file."""
    return int(file.execute("PRAGMA data_version").fetchone()[0])


def _let_go(target: sqlite3.Connection) -> None:
    """Let others read and write again, and SQLite delete its journal."""
    target.execute("PRAGMA locking_mode = NORMAL").fetchall()
    target.execute("SELECT count(*) FROM sqlite_master").fetchall()


def put_in_place(source: Path, bar: Path) -> None:
    """Make a bar hold what another file holds: all of it, or it stays as it was.

    SQLite does it in one transaction, which other programs wait for and see,
    and which a kill takes back. A file it cannot write into, being none of its
    own, is replaced, and what SQLite kept beside that is deleted before: to
    another file's pages it would be put back. `source` is whole and not in
    use. Raises `CannotWrite` or `BarIsBusy`.
    """
    with told_of(bar):
        if bar.exists() and bar.stat().st_size:
            try:
                _copy_pages(source, bar, used=bar)
            except UnreadableFile:
                pass
            else:
                return
        target = Path(os.path.realpath(bar))
        with unfinished_in(target.parent) as partial:
            _copy_whole(source, partial)
            if target.exists():
                shutil.copymode(target, partial)
            for ending in _endings_beside(target):
                Path(f"{target}{ending}").unlink()
            _sync(target.parent)
            _name(partial, target)


def faults_of(path: Path) -> tuple[str, ...]:
    """What SQLite finds wrong with a whole file, in its own words. Raises `UnreadableFile`."""
    with spoken_errors(path), closing(open_file(path, 0)) as file:
        found = [str(row[0]) for row in file.execute("PRAGMA integrity_check")]
    return () if found == ["ok"] else tuple(found)


@contextmanager
def _in_own_folder(folder: Path) -> Iterator[Path]:
    """A name for what is unfinished, in a folder that is made where it is missing."""
    with told_of(folder):
        if not folder.is_dir():
            folder.mkdir(parents=True, exist_ok=True)  # another program may make it just now
            _sync(folder.parent)
        with unfinished_in(folder) as partial:
            yield partial


def _first_free(folder: Path, name: Callable[[int], str]) -> Path:
    return next(path for n in count(1) if not (path := folder / name(n)).exists())


def _name_first_free(partial: Path, folder: Path, name: Callable[[int], str]) -> Path:
    """Give a finished copy the first free name, for good: another may take one just before."""
    while True:
        target = _first_free(folder, name)
        try:
            os.link(partial, target)
        except FileExistsError:
            continue
        except OSError:  # not every disk knows links
            _name(partial, target)
        _sync(folder)
        return target


def _numbered(name: str) -> Iterator[str]:
    yield name
    for number in count(2):
        yield f"{name}-{number}"


def _endings_beside(path: Path) -> list[str]:
    return [each for each in JOURNALS if Path(f"{path}{each}").exists()]


@contextmanager
def told_of(target: Path) -> Iterator[None]:
    """What the disk says against a file that is to be written, in a sentence."""
    try:
        yield
    except OSError as error:
        raise CannotWrite(str(target), error.strerror or str(error)) from error


def _copy_whole(source: Path, partial: Path) -> None:
    """A copy that is on the disk and sound. Raises `UnreadableFile` for a damaged bar."""
    _copy_pages(source, partial)
    shutil.copymode(source, partial)  # what only its owner may read stays so
    _see_that_it_is_whole(partial, source)


def _fill_whole(partial: Path, fill: Callable[[Path], None], target: Path) -> None:
    fill(partial)
    partial.chmod(0o600)
    _see_that_it_is_whole(partial, target)


def _see_that_it_is_whole(partial: Path, source: Path) -> None:
    _sync(partial)
    faults = faults_of(partial)
    if faults:
        raise UnreadableFile(str(source), tr("it is damaged ({faults})", faults=faults[0]))


def _copy_pages(source: Path, target: Path, *, used: Path | None = None) -> None:
    """Copy page by page; `used` is which of the two others may use, the source where not said."""
    with spoken_errors(source), closing(open_file(source, BUSY_MS)) as original:
        original.execute("SELECT count(*) FROM sqlite_master").fetchall()
        original.execute("PRAGMA busy_timeout = 0")  # from here on the copying waits
        _fill(target, original, used=used or source)


def _fill(target: Path, original: sqlite3.Connection, used: Path) -> None:
    with spoken_errors(target), _writes_told(target), closing(_writing(target)) as copy:
        original.backup(copy, progress=_waiting_for(used), sleep=_SLEEP_S)


def _waiting_for(used: Path) -> Callable[[int, int, int], None]:
    """What ends a copy that meets a locked file for too long; it would wait for ever."""
    most, tried = int(BUSY_MS / 1000 / _SLEEP_S), count(1)

    def go_on(status: int, _left: int, _of: int) -> None:
        if status in (sqlite3.SQLITE_BUSY, sqlite3.SQLITE_LOCKED) and next(tried) > most:
            raise BarIsBusy(str(used))

    return go_on


def _writing(target: Path) -> sqlite3.Connection:
    copy = sqlite3.connect(target, timeout=BUSY_MS / 1000, isolation_level=None)
    copy.execute("PRAGMA synchronous = FULL")
    copy.execute("PRAGMA busy_timeout = 0")  # from here on the copying waits
    return copy


@contextmanager
def _writes_told(target: Path) -> Iterator[None]:
    """What SQLite says of writing a copy, where that is no word of the file that is read."""
    try:
        yield
    except sqlite3.Error as error:
        reason = _WRITE_REASONS.get(str(getattr(error, "sqlite_errorname", "")))
        if reason is None:
            raise
        raise CannotWrite(str(target), reason) from error


def _name(partial: Path, target: Path) -> None:
    """Give a finished copy its name, for good."""
    partial.replace(target)
    _sync(target.parent)


def _sync(path: Path) -> None:
    """Bring a file, or the names in a folder, to the disk."""
    flags = os.O_RDONLY | getattr(os, "O_BINARY", 0)
    try:
        handle = os.open(path, flags)
    except PermissionError:
        if path.is_dir():  # some platforms open no folder
            return
        raise
    try:
        os.fsync(handle)
    finally:
        os.close(handle)
