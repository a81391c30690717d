"""Kill a command before each of its writes, and say what the next one made of the bar.

Run as a program of its own, since it forks, with several `Kills` as JSON:

    python -m tests.cli.kill_points KILLS

Its places are the times that SQLite writes, syncs, cuts or deletes a file, a
file is brought to the disk, or one is given its name or deleted. For each of
them a fresh process runs a command over a fresh copy and is killed just before;
another one then runs a second command over what is left. A line of JSON for each
`Kills` lists its runs: where it was killed, whether a journal was left, what the
second command said, and the folder it left behind. The last run lives, and
lists all the places.
"""

from __future__ import annotations

import _sqlite3
import ctypes
import io
import json
import os
import re
import shutil
import signal
import sys
from collections import defaultdict
from collections.abc import Callable, Iterator, Sequence
from contextlib import redirect_stderr, redirect_stdout, suppress
from dataclasses import dataclass
from functools import partial
from pathlib import Path
from random import Random
from typing import Any

from sqlalchemy import event
from sqlalchemy.engine import Engine

from barkeep.cli import main

BAR = "home.barkeep"

USUAL = "bar.barkeep"
"""The name of the bar that opens where none is named."""


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


@dataclass(frozen=True)
class Step:
    """What is about to be done to a file; `tear` does half of it, where it is a write.

    `lose` takes back, of what was written and never synced, what a machine
    that loses its power may lose.
    """

    what: str
    tear: Callable[[], object]
    lose: Callable[[Random], None]


@dataclass
class _Written:
    """What was written to one file since it was synced: where, and what stood there before."""

    file: int
    parts: list[tuple[int, bytes, int]]

    def note(self, offset: int, length: int) -> None:
        self.parts.append((offset, os.pread(self.file, length, offset), length))

    def lose(self, random: Random) -> None:
        for offset, before, length in reversed(self.parts):
            if random.random() < 0.5:
                os.pwrite(self.file, before.ljust(length, b"\0"), offset)


_written: dict[str, _Written] = {}
"""By path; never closed, since that would drop the locks SQLite holds."""


def _lose(random: Random) -> None:
    for each in _written.values():
        each.lose(random)


def watch_writes(before: Callable[[Step], None]) -> None:
    """Call `before` with what will be done, each time SQLite is about to change a file."""
    library = ctypes.CDLL(_sqlite3.__file__)  # finds what the module itself is linked to
    library.sqlite3_vfs_find.restype = ctypes.POINTER(_Vfs)
    vfs = library.sqlite3_vfs_find(None).contents
    opens, deletes = _copied(_XOPEN, vfs.x_open), _copied(_XDELETE, vfs.x_delete)

    def x_open(this: int, name: int | None, file: int, flags: int, shown: int) -> int:
        status = opens(this, name, file, flags, shown)
        if status == 0 and name:  # a nameless file is temporary
            opened = ctypes.cast(file, ctypes.POINTER(_File)).contents
            # Another process may have deleted it since. Anything raised here would not reach
            # SQLite, which would take whatever stands in memory for the status.
            with suppress(FileNotFoundError):
                _watch_file(opened, _path(name), before)
        return int(status)

    def x_delete(this: int, name: int, sync: int) -> int:
        if _path(name).exists():
            before(Step(f"delete {_path(name).name}", int, _lose))
            _written.pop(str(_path(name)), None)
        return int(deletes(this, name, sync))

    vfs.x_open, vfs.x_delete = _XOPEN(x_open), _XDELETE(x_delete)
    _kept.extend((vfs, library))

    _watch(Path, "replace", before, lambda _, target: f"name {Path(target).name}")
    _watch(os, "link", before, lambda _, target: f"name {Path(target).name}")
    _watch(Path, "unlink", before, lambda path: f"delete {path.name}")
    _watch(os, "fsync", before, lambda _: "sync a file")


def _watch(owner: Any, name: str, before: Callable[[Step], None], what: Callable[..., str]) -> None:
    original = getattr(owner, name)

    def watched(*arguments: Any, **named: Any) -> Any:
        before(Step(what(*arguments), int, _lose))
        return original(*arguments, **named)

    setattr(owner, name, watched)


def _path(name: int) -> Path:
    return Path(os.fsdecode(ctypes.string_at(name)))


def _watch_file(file: _File, path: Path, before: Callable[[Step], None]) -> None:
    written = _written[str(path)] = _Written(os.open(path, os.O_RDWR), [])
    name = path.name
    methods = _Methods.from_buffer_copy(file.methods.contents)
    writes = _copied(_XWRITE, methods.x_write)
    truncates = _copied(_XTRUNCATE, methods.x_truncate)
    syncs = _copied(_XSYNC, methods.x_sync)

    def x_write(this: int, data: int, length: int, offset: int) -> int:
        half = partial(writes, this, data, length // 2, offset)
        before(Step(f"write {name}", half, _lose))
        written.note(offset, length)
        return int(writes(this, data, length, offset))

    def x_truncate(this: int, size: int) -> int:
        before(Step(f"truncate {name}", int, _lose))
        return int(truncates(this, size))

    def x_sync(this: int, flags: int) -> int:
        before(Step(f"sync {name}", int, _lose))
        status = int(syncs(this, flags))
        written.parts.clear()
        return status

    methods.x_write, methods.x_truncate = _XWRITE(x_write), _XTRUNCATE(x_truncate)
    methods.x_sync = _XSYNC(x_sync)
    _kept.append(methods)
    file.methods = ctypes.pointer(methods)


def _copied(kind: Any, function: Any) -> Any:
    """The function itself, not the place it is kept in, which is about to be changed."""
    return kind(ctypes.cast(function, _POINTER).value)


@dataclass(frozen=True)
class Kills:
    """What is run and killed, and what is run then, if anything.

    `old` is a bar, or a folder with one and more, and empty where there is none before.
    `how` is *killed* just before a step, *torn* with half of a write done, or
    *powerless*: of what was not synced about half is lost as well. At most `most` places
    of a kind are tried, where it is given: always the same, from the first to the last.
    `{folder}` in a command is the folder of the bar; a `usual` bar is not named.
    """

    old: str
    folder: str
    command: list[str]
    then: list[str]
    cache_pages: int = -2000
    how: str = "killed"
    most: int | None = None
    usual: bool = False

    @property
    def name(self) -> str:
        """What the file of the bar is called."""
        return USUAL if self.usual else BAR


def killed_everywhere(plan: Kills) -> Iterator[dict[str, Any]]:
    """What became of a bar after each kill; at the end of one that was not killed."""
    alive = _killed_at(0, plan)
    for number in _chosen(alive["places"], plan.most):
        yield _killed_at(number, plan)
    yield alive


def _chosen(places: Sequence[str], most: int | None) -> list[int]:
    """The numbers, from 1, of the places to try: of each kind as many, spread evenly."""
    kinds: dict[str, list[int]] = defaultdict(list)
    for number, what in enumerate(places, 1):
        kinds[_kind(what)].append(number)
    return sorted(number for each in kinds.values() for number in _spread(each, most))


def _kind(place: str) -> str:
    """What is done there and to what; files beside a bar have made up names, and are one kind."""
    done, _, name = place.partition(" ")
    if not name.startswith((BAR, USUAL)):
        name = "other-journal" if name.endswith("-journal") else "other"
    return f"{done} {re.sub('[0-9]+', '', name)}"


def _spread(numbers: list[int], most: int | None) -> list[int]:
    if most is None or len(numbers) <= most:
        return numbers
    if most == 1:
        return [numbers[len(numbers) // 2]]
    return [numbers[place * (len(numbers) - 1) // (most - 1)] for place in range(most)]


def _prepared(name: str, plan: Kills) -> Path:
    """A fresh folder with all that is there before."""
    here = Path(plan.folder, name, "barkeep")
    if Path(plan.old).is_dir() and plan.old:
        shutil.copytree(plan.old, here)
        return here
    here.mkdir(parents=True)
    if plan.old:
        shutil.copyfile(plan.old, here / plan.name)
    return here


def _killed_at(number: int, plan: Kills) -> dict[str, Any]:
    here = _prepared(str(number), plan)
    status, answer = _forked(lambda: _run_until(number, here, plan))
    journal = here / f"{plan.name}-journal"
    hot = journal.exists() and journal.stat().st_size > 0
    then = _forked(lambda: _run(here, plan, plan.then))[1] if plan.then else None
    return {"folder": str(here), "first_status": status, "hot": hot, "then": then, **answer}


def _run_until(number: int, here: Path, plan: Kills) -> dict[str, Any]:
    places: list[str] = []
    last, said_to = "", _answer_end

    def before(step: Step) -> None:
        nonlocal last
        what = step.what
        again, last = what == last, what
        if again and what.endswith(".part"):
            return  # one kill amid the pages of a copy stands for all of them
        places.append(what)
        if len(places) == number:
            if plan.how != "killed":
                step.tear()
            if plan.how == "powerless":
                step.lose(Random(number))
            os.write(said_to, json.dumps({"killed_at": what}).encode())
            os.kill(os.getpid(), signal.SIGKILL)

    watch_writes(before)
    done = _run(here, plan, plan.command)
    if plan.how == "powerless":  # right after it said that it is done
        _lose(Random(number))
    return {"killed_at": None, "first": done, "places": places}


def _run(here: Path, plan: Kills, command: list[str]) -> dict[str, Any]:
    out, err = io.StringIO(), io.StringIO()
    words = [each.replace("{folder}", str(here)) for each in command]
    if plan.usual:
        os.environ["XDG_DATA_HOME"] = str(here.parent)
    else:
        words = ["--bar", str(here / BAR), *words]
    with redirect_stdout(out), redirect_stderr(err):
        status = main(words)
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
    pages = [0]

    @event.listens_for(Engine, "connect")
    def _small_cache(connection: Any, _record: Any) -> None:
        connection.execute(f"PRAGMA cache_size = {pages[0]}")

    for wanted in (Kills(**each) for each in json.loads(sys.argv[1])):
        pages[0] = wanted.cache_pages
        warm = _prepared("warm", wanted)  # what this imports and reads, no child has to
        for words in filter(None, (wanted.command, wanted.then)):
            _run(warm, wanted, words)
        print(json.dumps(list(killed_everywhere(wanted))), flush=True)
