"""Nothing stands in barkeep that only its tests call."""

from __future__ import annotations

import re
import subprocess
import sys
from functools import cache
from pathlib import Path

from barkeep.cli.arguments import COMMANDS

ROOT = Path(__file__).resolve().parent.parent

FOUND = re.compile(r"unused (?P<kind>\w+) '(?P<name>\w+)'")

CALLED_BY_QT = re.compile(
    "contextMenuEvent|createEditor|drag(?:Enter|Move|Leave)Event|dropEvent|dropMimeData"
    "|expandingDirections|filterAcceptsRow"
    "|hasHeightForWidth|headerData|keyboardSearch|lessThan|mimeTypes|mouse[A-Z][A-Za-z]*Event|pathFromIndex"
    "|splitPath|startDrag|supportedDropActions|takeAt"
)
"""Methods of Qt's own classes, which Qt calls."""

CALLED_BY_NAME = {
    each.does.partition(":")[2] for command in COMMANDS for each in (command, *command.parts)
}
"""What the command line calls by the name its table gives."""

ALLOWED = {
    "__init_subclass__": "Python calls it for each kind of error",
    "clip": "Qt's paint context reads it",
    "formatter_class": "argparse reads it",
    "index_of_the_same_rows": "SQLAlchemy calls it where PostgreSQL makes an index",
    "isolation_level": "sqlite3 reads it",
}


@cache
def unreached(*folders: str) -> dict[str, str]:
    """Name -> place of each function, method, class or attribute that nothing in there uses."""
    done = subprocess.run(
        [sys.executable, "-m", "vulture", "--min-confidence", "60", *folders],
        cwd=ROOT,
        capture_output=True,
        text=True,
        check=False,
    )
    assert done.returncode in (0, 3), done.stderr
    found = {}
    for line in done.stdout.splitlines():
        said = FOUND.search(line)
        assert said, line
        # A field of a record is read by name from files and rows, and shown by it.
        if said["kind"] != "variable":
            found[said["name"]] = line
    return found


def test_every_function_is_reached_without_the_tests():
    found = unreached("barkeep")
    strangers = [
        place
        for name, place in found.items()
        if name not in ALLOWED.keys() | CALLED_BY_NAME and not CALLED_BY_QT.fullmatch(name)
    ]
    assert strangers == []


def test_the_list_of_what_is_allowed_is_no_longer_than_it_must_be():
    assert ALLOWED.keys() <= unreached("barkeep").keys()


def test_a_function_that_only_a_test_calls_is_found(tmp_path):
    (tmp_path / "rooms.py").write_text("def forgotten():\n    return 1\n", encoding="utf-8")
    assert "forgotten" in unreached(str(tmp_path))
