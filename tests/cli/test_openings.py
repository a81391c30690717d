"""A bar that is opened after a kill, or by several at once, is right and has lost nothing.

Real processes over real bars of every schema there has been.
"""

from __future__ import annotations

import json
import os
import shutil
import socket
import sqlite3
import subprocess
import sys
from collections.abc import Callable, Iterator, Sequence
from contextlib import AbstractContextManager, ExitStack, closing, contextmanager
from dataclasses import asdict
from pathlib import Path
from typing import Any

import pytest

from barkeep.store.migrations import schema_number
from tests.cli.kill_points import BAR, USUAL, Kills
from tests.how_much import EVERYTHING, some_of

OLD_BARS = Path(__file__).parent.parent / "reference" / "old_bars"
"""Bars as programs of older schemas left them; never to be changed."""

OLD_SCHEMAS = (1, 2, 3, 4, 5, 6, 7)

TESTS = Path(__file__).parent.parent.parent

ORDINARY_CACHE, TINY_CACHE = -2000, 2
"""Pages of SQLite's memory; with a tiny one pages reach the file long before the end."""


def old_bar(schema: int) -> Path:
    return OLD_BARS / f"schema_{schema}.barkeep"


def dump(path: Path) -> list[str]:
    with closing(sqlite3.connect(path)) as file:
        marks = [file.execute(f"PRAGMA {name}").fetchone() for name in MARKS]
        assert file.execute("PRAGMA integrity_check").fetchall() == [("ok",)]
        # Sorted, since the indexes of one table are made in any order.
        return [str(marks), *sorted(file.iterdump())]


MARKS = ("application_id", "user_version")


def names(folder: Path) -> list[str]:
    return sorted(each.name for each in folder.iterdir())


def copies_from(schema: int) -> list[str]:
    return [f"{BAR}.before-schema-{number}" for number in range(schema + 1, schema_number() + 1)]


def run(*arguments: str | Path, **how: Any) -> subprocess.CompletedProcess[str]:
    command = [sys.executable, *map(str, arguments)]
    return subprocess.run(command, capture_output=True, text=True, check=False, cwd=TESTS, **how)


def naming(bar: Path) -> tuple[str, ...]:
    """What names a bar in a command: nothing for the usual one."""
    return () if bar.name == USUAL else ("--bar", str(bar))


def at_home(bar: Path) -> dict[str, str]:
    """The surroundings in which a bar of the usual name is the usual one."""
    return {**os.environ, "XDG_DATA_HOME": str(bar.parent.parent)}


MOST = None if EVERYTHING else 1
"""So many places of a kind are tried in the ordinary run: the one amid them."""


def killed_everywhere(old: Path | None, folder: Path, cache: int) -> list[dict[str, Any]]:
    """Openings of an old bar, or first starts: those begin the usual bar."""
    command, before = ["bottles"], str(old or "")
    plan = Kills(before, str(folder), command, command, cache, most=MOST, usual=not old)
    return kill([plan])[0]


def kill(plans: list[Kills]) -> list[list[dict[str, Any]]]:
    """For each plan what became of it at each of its places; its last run was not killed."""
    return list(killed_one_by_one(plans))


def killed_one_by_one(plans: list[Kills]) -> Iterator[list[dict[str, Any]]]:
    """The same, as soon as each plan is done."""
    asked = json.dumps([asdict(each) for each in plans])
    command = [sys.executable, "-m", "tests.cli.kill_points", asked]
    pipe = subprocess.PIPE
    with subprocess.Popen(command, stdout=pipe, stderr=pipe, text=True, cwd=TESTS) as process:
        assert process.stdout is not None and process.stderr is not None
        for plan, line in zip(plans, process.stdout, strict=True):
            reports = json.loads(line)
            if "ENDURANCE" in os.environ:  # past what catches the output of tests
                told = f"{Path(plan.folder).name}, {plan.how}: {len(reports) - 1} kills"
                print(told, file=sys.__stdout__, flush=True)
            yield reports
        assert process.stderr.read() == ""
    assert process.returncode == 0


def right_after_every_kill(reports: list[dict[str, Any]], expected_names: list[str]) -> None:
    *killed, alive = reports
    assert (alive["first_status"], alive["killed_at"]) == (0, None)
    bar = expected_names[0]
    right = dump(Path(alive["folder"], bar))
    for report in killed:
        where = (report["folder"], report["killed_at"])
        assert report["first_status"] == -9, where
        assert (report["then"]["status"], report["then"]["out"]) == (0, alive["then"]["out"]), where
        assert dump(Path(report["folder"], bar)) == right, where
        assert names(Path(report["folder"])) == expected_names, where


@pytest.mark.endurance
@pytest.mark.parametrize(
    ("schema", "cache"),
    some_of(
        [
            (1, ORDINARY_CACHE),
            (2, TINY_CACHE),
            (6, TINY_CACHE),
            (3, ORDINARY_CACHE),
            (4, TINY_CACHE),
            (5, ORDINARY_CACHE),
        ],
        2,
    ),
)
def test_an_upgrade_that_is_killed_anywhere_is_done_by_the_next_opening(tmp_path, schema, cache):
    reports = killed_everywhere(old_bar(schema), tmp_path / "killed", cache)
    right_after_every_kill(reports, [BAR, *copies_from(schema)])
    steps = len(copies_from(schema))
    where = reports[-1]["places"]
    assert where.count(f"delete {BAR}-journal") == steps  # the commit of every step
    assert sum(each.startswith(f"name {BAR}.before") for each in where) == steps
    # The fault this guards against: pages of a step in the file, and a journal to take them back.
    half_written = [each for each in reports if each["hot"] and each["killed_at"] == f"sync {BAR}"]
    assert len(half_written) >= (steps if EVERYTHING else 1)
    *killed, alive = reports
    for copy in copies_from(schema):
        undisturbed = Path(alive["folder"], copy).read_bytes()
        assert all(Path(each["folder"], copy).read_bytes() == undisturbed for each in killed)
    assert dump(Path(alive["folder"], copies_from(schema)[0])) == dump(old_bar(schema))
    assert {report["then"]["err"] for report in reports} == {""}


@pytest.mark.endurance
@pytest.mark.parametrize("cache", some_of([TINY_CACHE, ORDINARY_CACHE], 2))
def test_a_new_bar_that_is_killed_anywhere_is_begun_by_the_next_opening(tmp_path, cache):
    reports = killed_everywhere(None, tmp_path / "killed", cache)
    right_after_every_kill(reports, [USUAL])
    assert any(report["hot"] and report["killed_at"] == f"sync {USUAL}" for report in reports)
    for report in reports[:-1]:
        bar = Path(report["folder"], USUAL)
        # Killed as what was read of it is kept for the next time, the bar is there already.
        is_there = report["killed_at"].startswith("name ")
        said = "" if is_there else f"barkeep: a new bar was begun in {bar}.\n"
        assert report["then"]["err"] == said


class Held:
    """A command, `barkeep bottles` if none is said, that stops once at a place and waits there.

    It is a process of its own, forked by the one that listens to `asking`.
    """

    def __init__(self, asking: socket.socket, bar: Path, place: str, *command: str) -> None:
        self._ready, ready = os.pipe()
        go, self._go = os.pipe()
        (self._out, out), (self._err, err), (self._ended, ended) = (os.pipe() for _ in range(3))
        theirs = [ready, go, out, err, ended]
        asked = {
            "place": place,
            "words": [*naming(bar), *(command or ("bottles",))],
            "surroundings": at_home(bar),
        }
        socket.send_fds(asking, [json.dumps(asked).encode()], theirs)
        for each in theirs:
            os.close(each)

    def reach(self) -> str:
        """Wait until it is there, an end before that fails; what it is about to do."""
        what = os.read(self._ready, 4096)
        assert what, self.answer()
        return what.decode()

    def let_go(self) -> None:
        os.write(self._go, b".")

    def answer(self) -> tuple[int, str, str]:
        out, err, ended = map(_all_of, (self._out, self._err, self._ended))
        return int(ended), out, err

    def end(self) -> None:
        """Let it go where it still waits; what it says then, nobody hears."""
        for each in (self._ready, self._go, self._out, self._err, self._ended):
            os.close(each)


def _all_of(pipe: int) -> str:
    with os.fdopen(os.dup(pipe), encoding="utf-8") as read:
        return read.read()


Hold = Callable[..., AbstractContextManager[list[Held]]]


@pytest.fixture(scope="module")
def held() -> Iterator[Hold]:
    """Openers of a bar, each held at one place."""
    ours, theirs = socket.socketpair(socket.AF_UNIX, socket.SOCK_SEQPACKET)
    forking = subprocess.Popen(
        [sys.executable, "-m", "tests.cli.held_opener", str(theirs.fileno())],
        cwd=TESTS,
        pass_fds=(theirs.fileno(),),
    )
    theirs.close()

    @contextmanager
    def hold(bar: Path, *places: str, command: Sequence[str] = ()) -> Iterator[list[Held]]:
        with ExitStack() as stack:
            openers = [Held(ours, bar, place, *command) for place in places]
            for each in openers:
                stack.callback(each.end)
            yield openers

    yield hold
    ours.close()
    assert forking.wait() == 0


@pytest.fixture(params=[1, None], ids=lambda schema: f"schema {schema}")
def opened_by_many(request, tmp_path, held):
    """A bar to open, and a check of what openers made of it: their answers are given."""
    bar, alone = (
        tmp_path / home / "barkeep" / (BAR if request.param else USUAL)
        for home in ("here", "alone")
    )
    for path in (bar, alone):
        path.parent.mkdir(parents=True)
        if request.param:
            shutil.copyfile(old_bar(request.param), path)
    with held(alone, "") as (one,):
        right = one.answer()[1]
    begun = f"barkeep: a new bar was begun in {bar}.\n"

    def check(answers: list[tuple[int, str, str]]) -> None:
        assert [(status, out) for status, out, _ in answers] == [(0, right)] * len(answers), answers
        said = sorted(err for _, _, err in answers if err)
        assert said == ([] if request.param else [begun])
        assert dump(bar) == dump(alone)
        copies = copies_from(request.param) if request.param else []
        assert names(bar.parent) == [bar.name, *copies] == names(alone.parent)
        for copy in copies:
            assert dump(bar.with_name(copy)) == dump(alone.with_name(copy))

    return bar, check


@pytest.mark.parametrize(("number", "place"), [(2, "begin"), (4, "begin"), (4, "connect")])
def test_several_openers_at_once_all_succeed(opened_by_many, held, number, place):
    """Let go together: having seen the old schema (`begin`), or before anything (`connect`)."""
    bar, check = opened_by_many
    with held(bar, *[place] * number) as openers:
        for each in openers:
            each.reach()
        for each in openers:
            each.let_go()
        check([each.answer() for each in openers])


@pytest.mark.parametrize("journal", ["-journal", ""])
def test_an_opener_waits_for_one_that_is_amid_its_writing(opened_by_many, held, journal):
    bar, check = opened_by_many
    with held(bar, f"sync {bar.name}{journal}") as (first,):
        first.reach()
        with held(bar, "connect") as (second,):
            # Not the journal, which is there and which the first is about to delete.
            assert second.reach() == f"connect {bar.name}"
            second.let_go()
            first.let_go()
            check([first.answer(), second.answer()])


def test_an_opener_says_so_where_the_other_never_ends(tmp_path):
    bar = tmp_path / BAR
    shutil.copyfile(old_bar(1), bar)
    before = bar.read_bytes()
    with closing(sqlite3.connect(bar)) as other:
        other.execute("BEGIN IMMEDIATE")
        ran = run("-m", "barkeep", "--bar", bar, "bottles")
    assert (ran.returncode, ran.stdout) == (1, "")
    assert ran.stderr == (
        f"barkeep: {bar} could not be opened: it is in use by another program, which has not "
        "finished within 10 s. Nothing of it was lost; open it again when the other program has "
        "finished or is closed.\n"
    )
    assert bar.read_bytes() == before and names(tmp_path) == [BAR]


def another_programs(path: Path, *, tables: bool, application_id: int, wal: bool = False) -> None:
    with closing(sqlite3.connect(path)) as file, file:
        file.execute(f"PRAGMA application_id = {application_id}")
        if wal:
            file.execute("PRAGMA journal_mode = WAL")
        if tables:
            file.execute("CREATE TABLE mail (id INTEGER)")


@pytest.mark.parametrize(
    "made",
    [
        {"tables": True, "application_id": 0},
        {"tables": False, "application_id": 1234},
        {"tables": True, "application_id": 1234},
        {"tables": True, "application_id": 0, "wal": True},
        {"tables": False, "application_id": 1234, "wal": True},
        {"tables": False, "application_id": 0, "wal": True},
    ],
    ids=str,
)
def test_the_database_of_another_program_is_refused_untouched(tmp_path, held, made):
    path = tmp_path / "mail.db"
    another_programs(path, **made)
    before = path.read_bytes()
    sentence = f"{path} cannot be used: it is the database of another program."
    with held(path, "") as (one,):
        assert one.answer() == (1, "", f"barkeep: {sentence}\n")
    assert path.read_bytes() == before and names(tmp_path) == ["mail.db"]


@pytest.mark.parametrize("ending", ["-journal", "-wal"])
@pytest.mark.parametrize("there", [True, False])
def test_a_file_that_only_has_the_name_of_a_journal_is_not_lost(tmp_path, barkeep, ending, there):
    """SQLite would delete it: also beside a text, and where a bar is about to begin."""
    path, beside = tmp_path / "notes", tmp_path / f"notes{ending}"
    if there:
        path.write_text("Snow Plough\n60 ml gin\n" * 50, encoding="utf-8")
    beside.write_text("What I wrote that winter.", encoding="utf-8")
    said = barkeep("--bar", path, *(() if there else ("--new",)), "bottles").refusal
    assert said == (
        f"{path} cannot be used: {beside.name} beside it would be lost, as SQLite keeps a file of "
        "that name; give that one another name first."
    )
    assert beside.read_text(encoding="utf-8") == "What I wrote that winter."
    assert path.exists() == there


def test_an_empty_file_becomes_a_bar_where_that_is_asked_and_says_so(tmp_path):
    bar = tmp_path / BAR
    bar.touch()
    ran = run("-m", "barkeep", "--bar", bar, "bottles")
    assert (ran.returncode, ran.stdout) == (1, "")
    said = f"There is no bar in {bar}: it is empty (0 bytes). To begin a new bar there, add --new."
    assert ran.stderr == f"barkeep: {said}\n"
    assert bar.read_bytes() == b"" and names(tmp_path) == [BAR]
    ran = run("-m", "barkeep", "--bar", bar, "--new", "bottles")
    assert (ran.returncode, ran.stderr) == (0, f"barkeep: a new bar was begun in {bar}.\n")
    assert "0 bottles" in ran.stdout and names(tmp_path) == [BAR]
