"""Kill an opening bar before each of its writes, and say what the next opening made of it.

Run as a program of its own, since it forks:

    python -m tests.cli.kill_points OLD-BAR FOLDER CACHE-PAGES

Where there is no OLD-BAR a new bar is begun. For the n-th time SQLite writes,
syncs, cuts or deletes a file, or a finished copy is given its name, a fresh
process runs `bottles` over a fresh copy and is killed just before; another one
then runs `bottles` over what is left. It ends when a run lives. One JSON
object a line: where it was killed, whether a journal was left, what the second
run said, and the folder it left behind.
"""

from __future__ import annotations

import _sqlite3
import ctypes
import io
import json
import os
import shutil
import signal
import sys
from collections.abc import Callable, Iterator
from contextlib import redirect_stderr, redirect_stdout
from itertools import count
from pathlib import Path
from typing import Any

from sqlalchemy import event
from sqlalchemy.engine import Engine

from barkeep.cli import main

BAR = "home.barkeep"


_POINTER = ctypes.c_void_p

_SIZE = ctypes.c_int64

# Names are passed on as the pointers they are: SQLite keeps them.
_XOPEN = ctypes.CFUNCTYPE(ctypes.c_int, _POINTER, _POINTER, _POINTER, ctypes.c_int, _POINTER)

_XDELETE = ctypes.CFUNCTYPE(ctypes.c_int, _POINTER, _POINTER, ctypes.c_int)

_XWRITE = ctypes.CFUNCTYPE(ctypes.c_int, _POINTER, _POINTER, ctypes.c_int, _SIZE)

_XTRUNCATE = ctypes.CFUNCTYPE(ctypes.c_int, _POINTER, _SIZE)

_XSYNC = ctypes.CFUNCTYPE(ctypes.c_int, _POINTER, ctypes.c_int)


class _Vfs(ctypes.Structure):
    """The beginning of SQLite's `sqlite3_vfs`."""

    _fields_ = (
        ("version", ctypes.c_int),
        ("file_size", ctypes.c_int),
        ("longest_name", ctypes.c_int),
        ("next", _POINTER),
        ("name", ctypes.c_char_p),
        ("data", _POINTER),
        ("x_open", _XOPEN),
        ("x_delete", _XDELETE),
    )


class _Methods(ctypes.Structure):
    """All of SQLite's `sqlite3_io_methods`; only what writes has its type."""

    _fields_ = (
        ("version", ctypes.c_int),
        ("x_close", _POINTER),
        ("x_read", _POINTER),
        ("x_write", _XWRITE),
        ("x_truncate", _XTRUNCATE),
        ("x_sync", _XSYNC),
        ("others", _POINTER * 13),
    )


class _File(ctypes.Structure):
    """The beginning of SQLite's `sqlite3_file`."""

    _fields_ = (("methods", ctypes.POINTER(_Methods)),)


_kept: list[Any] = []
"""What SQLite holds pointers to, and Python must therefore not let go of."""


def watch_writes(before: Callable[[str], None]) -> None:
    """Call `before` with what will be done, each time SQLite is about to change a file."""
    library = ctypes.CDLL(_sqlite3.__file__)  # finds what the module itself is linked to
    library.sqlite3_vfs_find.restype = ctypes.POINTER(_Vfs)
    vfs = library.sqlite3_vfs_find(None).contents
    opens, deletes = _copied(_XOPEN, vfs.x_open), _copied(_XDELETE, vfs.x_delete)

    def x_open(this: int, name: int | None, file: int, flags: int, shown: int) -> int:
        status = opens(this, name, file, flags, shown)
        if status == 0 and name:  # a nameless file is temporary
            opened = ctypes.cast(file, ctypes.POINTER(_File)).contents
            _watch_file(opened, _path(name).name, before)
        return int(status)

    def x_delete(this: int, name: int, sync: int) -> int:
        if _path(name).exists():
            before(f"delete {_path(name).name}")
        return int(deletes(this, name, sync))

    vfs.x_open, vfs.x_delete = _XOPEN(x_open), _XDELETE(x_delete)
    _kept.extend((vfs, library))

    replaces = Path.replace

    def replace(self: Path, target: Path) -> Path:
        before(f"name {target.name}")
        return replaces(self, target)

    Path.replace = replace  # type: ignore[method-assign, assignment]


def _path(name: int) -> Path:
    return Path(os.fsdecode(ctypes.string_at(name)))


def _watch_file(file: _File, name: str, before: Callable[[str], None]) -> None:
    methods = _Methods.from_buffer_copy(file.methods.contents)
    for word, kind in (("write", _XWRITE), ("truncate", _XTRUNCATE), ("sync", _XSYNC)):
        original = _copied(kind, getattr(methods, f"x_{word}"))
        setattr(methods, f"x_{word}", kind(_told(f"{word} {name}", original, before)))
    _kept.append(methods)
    file.methods = ctypes.pointer(methods)


def _told(
    what: str, original: Callable[..., int], before: Callable[[str], None]
) -> Callable[..., int]:
    def told(*arguments: int) -> int:
        before(what)
        return int(original(*arguments))

    return told


def _copied(kind: Any, function: Any) -> Any:
    """The function itself, not the place it is kept in, which is about to be changed."""
    return kind(ctypes.cast(function, _POINTER).value)


def killed_everywhere(old: Path | None, folder: Path) -> Iterator[dict[str, Any]]:
    """What became of a bar after each kill; at the end of one that was not killed."""
    for number in count(1):
        here = folder / str(number)
        here.mkdir()
        if old is not None:
            shutil.copyfile(old, here / BAR)
        report = _killed_at(number, here)
        yield report
        if report["first_status"] == 0:
            return


def _killed_at(number: int, here: Path) -> dict[str, Any]:
    status, answer = _forked(lambda: _run_until(number, here))
    journal = here / f"{BAR}-journal"
    hot = journal.exists() and journal.stat().st_size > 0
    _, then = _forked(lambda: _run(here))
    return {
        "folder": str(here),
        "first_status": status,
        "killed_at": answer["killed_at"],
        "hot": hot,
        "then": then,
    }


def _run_until(number: int, here: Path) -> dict[str, Any]:
    seen, last, said_to = count(1), "", _answer_end

    def before(what: str) -> None:
        nonlocal last
        again, last = what == last, what
        if again and what.endswith(".part"):
            return  # one kill amid the pages of a copy stands for all of them
        if next(seen) == number:
            os.write(said_to, json.dumps({"killed_at": what}).encode())
            os.kill(os.getpid(), signal.SIGKILL)

    watch_writes(before)
    return {"killed_at": None, **_run(here)}


def _run(here: Path) -> dict[str, Any]:
    out, err = io.StringIO(), io.StringIO()
    with redirect_stdout(out), redirect_stderr(err):
        status = main(["--bar", str(here / BAR), "bottles"])
    return {"status": status, "out": out.getvalue(), "err": err.getvalue()}


_answer_end = -1


def _forked(run: Callable[[], dict[str, Any]]) -> tuple[int, dict[str, Any]]:
    """Run in a child; how it ended (as `subprocess` says it) and what it answered."""
    global _answer_end
    reading, _answer_end = os.pipe()
    child = os.fork()
    if child == 0:
        os.close(reading)
        os.write(_answer_end, json.dumps(run()).encode())
        os._exit(0)
    os.close(_answer_end)
    with os.fdopen(reading, "rb") as answer:
        spoken = json.loads(answer.read())
    _, status = os.waitpid(child, 0)
    return os.waitstatus_to_exitcode(status), spoken


if __name__ == "__main__":
    from_bar, into, pages = sys.argv[1:]

    @event.listens_for(Engine, "connect")
    def _small_cache(connection: Any, _record: Any) -> None:
        connection.execute(f"PRAGMA cache_size = {int(pages)}")

    _run(Path(into))  # what this imports and reads, no child has to
    for each in killed_everywhere(Path(from_bar) if from_bar else None, Path(into)):
        print(json.dumps(each), flush=True)
