"""More than four arguments are passed by name, so that no value lands in another's place."""

from __future__ import annotations

import ast
from collections.abc import Iterator
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent

MOST = 4

NOT_OURS = {
    "addWidget": "Qt's grid: row, column, and how many of each",
    "column_of": "widgets.layouts: the parts of a column, from top to bottom",
    "row_of": "widgets.layouts: the parts of a row, from left to right",
    "addLayout": "Qt's grid: row, column, and how many of each",
    "command": "cli.arguments.command: one a thing that may be written after it",
    "cubicTo": "Qt's curve: three points",
    "linprog": "scipy's linear program: the six parts of its standard form",
    "parse": "shipped_data.parse: after the file, one name a table that may stand there",
    "Table": "SQLAlchemy's table: one argument a column",
}
"""What takes more than four by position, and why it may."""


def called(call: ast.Call) -> tuple[ast.expr, int]:
    """What is called, and how many arguments are given it by position."""
    what, given = call.func, [each for each in call.args if not isinstance(each, ast.Starred)]
    if isinstance(what, ast.Name) and what.id == "partial" and given:
        what, given = given[0], given[1:]
    return what, len(given)


def name_of(what: ast.expr) -> str:
    return what.attr if isinstance(what, ast.Attribute) else ast.unparse(what)


def too_many(text: str) -> Iterator[tuple[int, str]]:
    """The line and the name of every call with more than four arguments by position."""
    for node in ast.walk(ast.parse(text)):
        if isinstance(node, ast.Call):
            what, given = called(node)
            if given > MOST and (name := name_of(what)) not in NOT_OURS:
                yield node.lineno, name


def test_more_than_four_arguments_are_passed_by_name():
    found = [
        f"{path.relative_to(ROOT)}:{line}: {name}"
        for path in sorted((ROOT / "barkeep").rglob("*.py"))
        for line, name in too_many(path.read_text(encoding="utf-8"))
    ]
    assert found == []


def test_the_check_finds_what_it_is_for():
    text = (
        "f(1, 2, 3, 4, 5)\nself.g(1, 2, 3, 4, *x, 5)\npartial(h, 1, 2, 3, 4)\nk(1, 2, 3, 4, l=5)\n"
    )
    assert list(too_many(text)) == [(1, "f"), (2, "g")]
    assert list(too_many("partial(h, 1, 2, 3, 4, 5)\ngrid.addWidget(a, 1, 2, 3, 4)")) == [(1, "h")]
