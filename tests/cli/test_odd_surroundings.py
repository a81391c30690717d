"""Names, places and letters a command may meet: a sentence and a status each, never a fault."""

from __future__ import annotations

import os
import sqlite3
import subprocess
import sys
from contextlib import closing
from pathlib import Path

import pytest

from tests.cli.test_openings import TESTS

NO_TEXT = b"\xff".decode("utf-8", "surrogateescape")
"""A byte that is no letter, as the system hands it over."""

LONG = "x" * 300
DEEP = "/".join(["d" * 200] * 25)


@pytest.mark.parametrize("new", [(), ("--new",)])
@pytest.mark.parametrize("name", [f"{LONG}.bar", f"{DEEP}/a.bar"], ids=["long", "deep"])
def test_a_name_that_is_too_long(barkeep, tmp_path, name, new):
    said = barkeep("--bar", tmp_path / name, *new, "bottles").refusal
    assert said == f"{tmp_path / name} cannot be used: file name too long."


def test_a_new_file_with_a_name_that_is_too_long(barkeep, bar, tmp_path):
    name = tmp_path / f"{LONG}.bar"
    assert "File name too long" in barkeep("sample", name).refusal
    said = barkeep("--bar", bar, "check", "--save-what-can-be", name).refusal
    assert "File name too long" in said


@pytest.mark.skipif(os.geteuid() == 0, reason="nothing is unreadable to root")
def test_a_folder_that_may_not_be_looked_into(barkeep, tmp_path):
    shut = tmp_path / "shut"
    shut.mkdir(mode=0)
    try:
        said = barkeep("--bar", shut / "a.bar", "bottles").refusal
    finally:
        shut.chmod(0o700)
    assert said == f"{shut / 'a.bar'} cannot be used: permission denied."


def test_a_folder_that_cannot_be_looked_into(barkeep, tmp_path, monkeypatch):
    """The same for whoever is root."""

    def refuse(self: Path) -> bool:
        raise PermissionError(13, "Permission denied", str(self))

    monkeypatch.setattr(Path, "exists", refuse)
    said = barkeep("--bar", tmp_path / "a.bar", "bottles").refusal
    assert said == f"{tmp_path / 'a.bar'} cannot be used: permission denied."


def test_a_data_folder_that_is_no_folder(barkeep, tmp_path, monkeypatch):
    file = tmp_path / "file"
    file.touch()
    monkeypatch.setenv("XDG_DATA_HOME", str(file))
    said = barkeep("bottles").refusal
    assert said.startswith(f"{file}/barkeep cannot be used: ")


@pytest.mark.parametrize(
    ("url", "reason"),
    [
        ("postgresql://u:secret@h:notaport/x", "it is neither a path nor a database URL"),
        ("postgresql://u:secret@h/", "it names no database"),
        ("postgresql://u:secret@h/x?schema=", "it names no schema"),
        ("postgresql://u:sec/ret@h/x", "it is neither a path nor a database URL"),
        ("postgresql://u:12#secret@h/x", "it is neither a path nor a database URL"),
        ("postgresql://u:12?secret@h/x", "it is neither a path nor a database URL"),
        ("mysql://u:secret@h/x", "only a SQLite file or a PostgreSQL server can hold a bar"),
        ("http://x/y", "only a SQLite file or a PostgreSQL server can hold a bar"),
        ("sqlite://host/x", "write it as sqlite:/// and the path, with nothing more"),
        ("sqlite:////x?mode=ro", "write it as sqlite:/// and the path, with nothing more"),
        ("sqlite:///", "it names no file"),
        ("://", "it is neither a path nor a database URL"),
    ],
)
def test_a_url_that_names_no_bar(barkeep, url, reason):
    said = barkeep("--bar", url, "bottles").refusal
    assert said.endswith(f" cannot be used: {reason}.") and "secret" not in said


@pytest.mark.parametrize(
    "words",
    [
        ("setting", "name", f"Ba{NO_TEXT}r"),
        ("count", f"a{NO_TEXT}", "0.4"),
        ("tonight", NO_TEXT),
        ("ingredient", "add", f"M{NO_TEXT}oss", "--kind", "gin"),
        ("trial", "add", "Request Stop", "--notes", NO_TEXT),
        ("shoot", "plan", NO_TEXT, "--on", "2099-01-05"),
    ],
    ids=lambda words: words[0],
)
def test_letters_that_are_none_are_never_kept(barkeep, bar, words):
    before = bar.read_bytes()
    said = barkeep("--bar", bar, *words).refusal
    assert said.endswith("� holds bytes that are no text (UTF-8); write it anew.") or (
        "holds bytes that are no text (UTF-8); write it anew." in said and "�" in said
    )
    assert bar.read_bytes() == before


def test_a_bar_and_files_of_names_that_are_no_text(barkeep, bar, tmp_path):
    odd = bar.rename(tmp_path / f"n{NO_TEXT}o.bar")
    assert barkeep("--bar", odd, "count", "1", "0.4").status == 0
    assert barkeep("--bar", odd, "check", "--json").answer["sound"]
    rows = tmp_path / f"r{NO_TEXT}.csv"
    assert barkeep("--bar", odd, "export", rows, "--bottles").status == 0
    assert barkeep("--bar", odd, "import", rows).status == 0
    assert barkeep("sample", tmp_path / f"s{NO_TEXT}.bar").status == 0
    saved = tmp_path / f"w{NO_TEXT}.bar"
    assert barkeep("--bar", odd, "check", "--save-what-can-be", saved).status == 0
    assert barkeep("--bar", saved, "bottles").out == barkeep("--bar", odd, "bottles").out
    said = barkeep("--bar", tmp_path / f"n{NO_TEXT}oo.bar", "bottles").refusal
    assert "Did you mean" in said


def run(bar: Path, *words: str, out: str | None = None, err: str | None = None) -> tuple[int, str]:
    """A command in a process of its own, its output going to files that are named."""
    command = [sys.executable, "-m", "barkeep", "--bar", str(bar), *words]
    with Path(out or os.devnull).open("w") as said, Path(err or os.devnull).open("w") as told:
        where = told if err else subprocess.PIPE
        done = subprocess.run(command, stdout=said, stderr=where, text=True, cwd=TESTS, check=False)
    return done.returncode, done.stderr or ""


def test_an_answer_that_cannot_be_printed_is_told_apart_from_one_that_was_not_done(bar):
    if not Path("/dev/full").exists():
        pytest.skip("there is no /dev/full here")
    said = "What was asked is done, but the answer could not be printed: no space left on device."
    assert run(bar, "count", "1", "0.4", out="/dev/full") == (4, f"barkeep: {said}\n")
    with closing(sqlite3.connect(bar)) as file:
        last = file.execute("SELECT kind, amount FROM ledger ORDER BY id DESC LIMIT 1").fetchone()
    assert last == ("count", 280.0)
    assert run(bar, "count", "1", "0.4", out="/dev/full", err="/dev/full")[0] == 4
    assert run(bar, "count", "nothing such", "0.4", err="/dev/full")[0] == 1
