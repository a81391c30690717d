"""The command line over a team's bar, on a PostgreSQL server."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest

from barkeep.application import paths
from barkeep.store.address import read_address
from tests import servers

ROOT = Path(__file__).resolve().parents[2]


@pytest.fixture
def address(server):
    """Where a team's bar may be begun, and none is."""
    return server.new_bar()


@pytest.fixture
def document(barkeep, bar, tmp_path):
    """The whole sample bar as one document."""
    file = tmp_path / "sample.json"
    assert barkeep("--bar", bar, "export", "--everything", file).status == 0
    return file


@pytest.fixture
def team(barkeep, address, document):
    """A team's bar with what the sample bar holds."""
    assert barkeep("--bar", address, "--new", "import", document).status == 0
    return address


def test_it_begins_from_the_real_program(address, tmp_path):
    """A process of its own, as a person starts it."""
    env = {**os.environ, "PYTHONPATH": str(ROOT)}
    outs = []
    for words in (["bottles"], ["--new", "setting", "name", "Signal box"], ["setting", "name"]):
        command = [sys.executable, "-m", "barkeep", "--bar", address, *words]
        done = subprocess.run(
            command, env=env, capture_output=True, text=True, check=False, cwd=tmp_path
        )
        outs.append((done.returncode, done.stdout, done.stderr))
    name = read_address(address).name
    assert outs[0][0] == 1 and outs[0][2] == (
        f"barkeep: There is no bar in {name}: there is no schema “{read_address(address).schema}” "
        "in that database. To begin a new bar there, add --new.\n"
    )
    assert outs[1] == (
        0,
        "name is now Signal box.\n",
        f"barkeep: a new bar was begun in {name}.\n",
    )
    assert (outs[2][0], outs[2][2]) == (0, "") and outs[2][1].startswith("name is Signal box.")


def test_a_bar_moves_over_and_back_and_is_the_same(barkeep, bar, team, document, tmp_path):
    for words in (["tonight", "--all"], ["bottles"], ["spec", "list"], ["shoot", "list"]):
        there, here = (barkeep("--bar", each, *words, "--json").answer for each in (team, bar))
        assert there == here
    back, copied = tmp_path / "back.json", tmp_path / "back.bar"
    barkeep("--bar", team, "export", "--everything", back)
    assert back.read_bytes() == document.read_bytes()
    assert barkeep("--bar", copied, "--new", "import", back).status == 0
    again = tmp_path / "again.json"
    barkeep("--bar", copied, "export", "--everything", again)
    assert again.read_bytes() == document.read_bytes()


def test_it_is_counted_undone_checked_and_kept(barkeep, team):
    name = read_address(team).name
    before = barkeep("--bar", team, "bottles", "--json").answer
    assert barkeep("--bar", team, "count", "1", "0.4").status == 0
    assert barkeep("--bar", team, "bottles", "--json").answer != before
    assert barkeep("--bar", team, "undo").out.startswith("Undone: Count ")
    assert barkeep("--bar", team, "bottles", "--json").answer == before
    assert barkeep("--bar", team, "check").out == f"Nothing is wrong with {name}.\n"
    kept = barkeep("--bar", team, "backup", "--list", "--json").answer
    (daily,) = kept["backups"]  # of before the first change of the day
    assert (daily["why"], daily["problem"]) == ("daily", None)
    assert Path(daily["file"]).is_relative_to(paths.where_default_bar_is().parent / "servers")

    barkeep("--bar", team, "count", "1", "0.2")
    asked = barkeep("--bar", team, "restore", Path(daily["file"]).name)
    assert "nothing is restored yet" in asked.refusal
    done = barkeep("--bar", team, "restore", Path(daily["file"]).name, "--yes")
    assert (done.status, done.err) == (0, "") and f"{name} holds what " in done.out
    assert barkeep("--bar", team, "bottles", "--json").answer == before


def test_what_is_of_a_file_alone_says_what_to_do_instead(barkeep, team, tmp_path):
    said = barkeep("--bar", team, "check", "--save-what-can-be", tmp_path / "new.bar").refusal
    assert said == (
        f"{read_address(team).name} is on a server and in no file: what that needs is done there, "
        "by pg_dump and pg_restore. “Export everything” and a backup are files that barkeep takes "
        "back."
    )


SECRET = servers.PASSWORD


def test_why_it_cannot_be_reached_is_one_sentence_without_the_password(barkeep, server, tmp_path):
    locked = server.as_user(servers.LOCKED).bar("any")
    known = locked.replace(f"//{servers.LOCKED}@", f"//{servers.LOCKED}:{SECRET}@")
    cases = {
        locked.replace("@", ":wr0ng-w0rd@"): "the server does not take the password of the user",
        locked: "the server wants a password of the user “locked”; give it as PGPASSWORD",
        known: "there is no schema “any” in that database",
        known.replace("/bars?", "/nothing?"): "there is no database “nothing” on that server",
        server.as_user("stranger").bar("any"): 'the server says “role "stranger" does not exist”',
        f"postgresql://u:{SECRET}@/bars?host={tmp_path}": "no connection to the server can be made",
        f"postgresql://u:{SECRET}@/bars?host={tmp_path}&{SECRET}=1": "the address is not understo",
        f"postgresql://u@/bars?host={tmp_path}&password={SECRET}": "no connection to the server",
    }
    for address, reason in cases.items():
        said = barkeep("--bar", address, "bottles").refusal
        assert reason in said and "\n" not in said, said
        assert SECRET not in said.replace(f"&{SECRET}=1", "") and "wr0ng-w0rd" not in said
        assert said.startswith(("postgresql://", "There is no bar in postgresql://"))


def test_the_password_is_written_down_nowhere(barkeep, server, tmp_path, monkeypatch):
    """Not in what is said, logged, kept, exported or backed up."""
    server.run(f"GRANT CREATE ON DATABASE bars TO {servers.LOCKED}", "bars")
    whole = server.as_user(servers.LOCKED).new_bar()
    address = whole.replace("@", f":{SECRET}@")
    said = [
        barkeep("--bar", address, *words)
        for words in (
            ["--new", "setting", "name", "Signal box"],
            ["setting", "name", "Branch line"],
            ["backup"],
            ["check", "--json"],
            ["export", "--everything", str(tmp_path / "all.json")],
            ["backup", "--list"],
        )
    ]
    assert [each.status for each in said] == [0] * len(said)
    from barkeep.application.session import Session

    def fault(*_args):
        raise RuntimeError("a fault")

    monkeypatch.setattr(Session, "finished", fault)
    faulty = barkeep(f"--bar={address}", "setting", "name", "Third")
    assert faulty.status == 70 and paths.log_file().exists()
    said.append(faulty)
    assert not any(SECRET in each.out + each.err for each in said)
    files = [each for each in tmp_path.rglob("*") if each.is_file()]
    assert paths.log_file() in files and len(files) > 3
    for each in files:
        assert SECRET.encode() not in each.read_bytes(), each
    monkeypatch.setenv("PGPASSWORD", SECRET)
    assert "name is Third" in barkeep("--bar", whole, "setting", "name").out


def test_without_the_library_the_extra_is_named(barkeep, monkeypatch):
    monkeypatch.setitem(sys.modules, "psycopg", None)
    said = barkeep("--bar", "postgresql://ada@cellar/bars", "bottles").refusal
    assert said == (
        "postgresql://ada@cellar/bars cannot be used: the library for PostgreSQL is not here; "
        "install it by: pip install 'barkeep[team]'."
    )
