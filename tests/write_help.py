"""Write the tables of the help that come from the two faces: `python -m tests.write_help`.

The keys are those of the real window's actions, in each language that it speaks, the commands
those of the parser; tests hold what is written to them. What the window says is translated by
its `.qm`: run `python -m tests.write_words` first.
"""

from __future__ import annotations

import os
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path
from tempfile import TemporaryDirectory

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from PySide6.QtWidgets import QApplication

from barkeep.application.bar import Bar
from barkeep.application.sample import build
from barkeep.cli.arguments import COMMANDS, Command
from barkeep.desktop.look.language import Language
from barkeep.desktop.look.theme import Theme
from barkeep.desktop.screens.window_state import WindowState
from barkeep.desktop.shell.help import rows_of
from barkeep.desktop.shell.main_window import MainWindow, WindowHooks
from barkeep.desktop.shell.navigation import PAGES, PARTS
from barkeep.documents.help.pages import TRANSLATED, markdown_table
from barkeep.translation import ENGLISH, tr

TABLES = Path(__file__).resolve().parent.parent / "resources" / "help" / "tables"
DAY = datetime(2026, 11, 21, 12, 0)


@dataclass(frozen=True, slots=True)
class _Said:
    """What the table of keys says itself."""

    what: str
    keys: str
    everywhere: str
    on: str


SAID: Mapping[str, _Said] = {
    ENGLISH: _Said("what", "keys", "Everywhere", "On {title}"),
    "de": _Said("was", "Tasten", "Überall", "Auf der Seite {title}"),
}


def keys_table(window: MainWindow, language: str = ENGLISH) -> str:
    """Every key of the window's own actions, then those of each page, in what the window speaks."""
    said = SAID[language]
    return "\n\n".join(
        f"## {heading}\n\n{markdown_table((said.what, said.keys), rows)}"
        for heading, rows in _groups(window, said)
        if rows
    )


def _groups(window: MainWindow, said: _Said) -> Iterator[tuple[str, list[tuple[str, str]]]]:
    yield said.everywhere, _marked(rows_of(window.actions_.all))
    for page in (*PAGES, *PARTS):
        title = tr(page.title).replace("&", "")
        yield said.on.format(title=title), _marked(rows_of(window.show_page(page.key).bar_actions))


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
    """Write them all."""
    app = QApplication.instance() or QApplication([])
    assert isinstance(app, QApplication)
    with TemporaryDirectory() as folder:
        path = Path(folder) / "sample.bar"
        build(path, clock=lambda: DAY)
        for language in (ENGLISH, *TRANSLATED):
            spoken = Language(app, language)
            within = TABLES if language == ENGLISH else TABLES / language
            (within / "keys.md").write_text(f"{_keys_of(path, app, language)}\n", "utf-8")
            spoken.leave()
    (TABLES / "commands.md").write_text(f"{commands_table()}\n", "utf-8")


def _keys_of(path: Path, app: QApplication, language: str) -> str:
    with Bar.open(path, clock=lambda: DAY) as bar:
        hooks = WindowHooks(*[lambda *_given: None] * 4, new_bar=lambda _place: None)
        state = WindowState(path.parent / "window.ini")
        window = MainWindow(bar, state, Theme(app, "light"), hooks)
        table = keys_table(window, language)
        window.close_unasked()
    return table


if __name__ == "__main__":
    write()
