"""Write the tables of the help that come from the two faces: `python -m tests.write_help`.

The keys are those of the real window's actions, the commands those of the parser; a test
holds what is written to them.
"""

from __future__ import annotations

import os
from collections.abc import Iterator, Sequence
from datetime import datetime
from pathlib import Path
from tempfile import TemporaryDirectory

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from PySide6.QtWidgets import QApplication

from barkeep.application.bar import Bar
from barkeep.application.sample import build
from barkeep.cli.arguments import COMMANDS, Command
from barkeep.desktop.look.theme import Theme
from barkeep.desktop.screens.window_state import WindowState
from barkeep.desktop.shell.help import rows_of
from barkeep.desktop.shell.main_window import MainWindow, WindowHooks
from barkeep.desktop.shell.navigation import PAGES, PARTS
from barkeep.documents.help.pages import markdown_table

TABLES = Path(__file__).resolve().parent.parent / "resources" / "help" / "tables"
DAY = datetime(2026, 11, 21, 12, 0)


def keys_table(window: MainWindow) -> str:
    """Every key of the window's own actions, then those of each page."""
    return "\n\n".join(
        f"## {heading}\n\n{markdown_table(('what', 'keys'), rows)}"
        for heading, rows in _groups(window)
        if rows
    )


def _groups(window: MainWindow) -> Iterator[tuple[str, list[tuple[str, str]]]]:
    yield "Everywhere", _marked(rows_of(window.actions_.all))
    for page in (*PAGES, *PARTS):
        title = page.title.replace("&", "")
        yield f"On {title}", _marked(rows_of(window.show_page(page.key).bar_actions))


def _marked(rows: Sequence[tuple[str, str]]) -> list[tuple[str, str]]:
    return [(what, f"`{keys}`") for what, keys in rows]


def commands_table() -> str:
    """Every command with what it is for."""
    return markdown_table(("command", "does"), [_row(each) for each in _every(COMMANDS)])


def _every(commands: tuple[Command, ...], before: str = "") -> Iterator[tuple[str, str]]:
    for each in commands:
        name = f"{before}{each.name}"
        if each.parts:
            yield from _every(each.parts, f"{name} ")
        else:
            yield name, each.help


def _row(command: tuple[str, str]) -> tuple[str, str]:
    name, does = command
    return f"`{name}`", does


def write() -> None:
    """Write both."""
    app = QApplication.instance() or QApplication([])
    assert isinstance(app, QApplication)
    with TemporaryDirectory() as folder:
        path = Path(folder) / "sample.bar"
        build(path, clock=lambda: DAY)
        with Bar.open(path, clock=lambda: DAY) as bar:
            hooks = WindowHooks(*[lambda *_given: None] * 4, new_bar=lambda _place: None)
            window = MainWindow(
                bar, WindowState(Path(folder) / "window.ini"), Theme(app, "light"), hooks
            )
            (TABLES / "keys.md").write_text(f"{keys_table(window)}\n", "utf-8")
            window.close_unasked()
    (TABLES / "commands.md").write_text(f"{commands_table()}\n", "utf-8")


if __name__ == "__main__":
    write()
