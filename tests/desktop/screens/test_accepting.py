"""Ctrl+Enter presses the main button of every dialog."""

from __future__ import annotations

import ast
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QDialog

import barkeep.desktop
from barkeep.desktop.shell.main_window import WindowHooks
from barkeep.desktop.shell.settings import edit_settings
from barkeep.desktop.widgets.buttons import main_button
from tests.desktop.pages import settle

pytestmark = pytest.mark.qt_log_ignore("^This plugin does not support", extend=True)

HERE = Path(barkeep.desktop.__file__).parent
BY_ITSELF = {"SpecEditor"}
"""It saves with the keys of a text editor as well."""


def bases(made: ast.ClassDef) -> set[str]:
    return {each.id for each in made.bases if isinstance(each, ast.Name)}


def takes_keys(made: ast.ClassDef) -> bool:
    return any(
        isinstance(each, ast.Name) and each.id == "accept_by_keys" for each in ast.walk(made)
    )


def test_every_dialog_takes_the_keys():
    trees = [ast.parse(path.read_text("utf-8")) for path in HERE.rglob("*.py")]
    dialogs = [
        each
        for tree in trees
        for each in ast.walk(tree)
        if isinstance(each, ast.ClassDef) and "QDialog" in bases(each)
    ]
    silent = {each.name for each in dialogs if not takes_keys(each)}
    assert len(dialogs) > 15
    assert silent == BY_ITSELF


ACTIONS = {
    "": (
        *(
            "Settings",
            "Make something here",
            "Shopping list",
            "What an evening cost",
            "What if",
            "Keyboard shortcuts",
        ),
        *("What is new", "About barkeep", "Backups", "Print and publish"),
    ),
    "bottles": (
        *("Count bottle", "Pour", "Waste", "Correct", "Weigh it full", "Set its dasher"),
        *(
            "Make it a house pour",
            "Set its use-by day",
            "Change its label",
            "Add bottle",
            "What was paid",
        ),
    ),
    "specs": ("Batch",),
    "shoots": ("New shoot", "Edit shoot", "Shopping for it", "Variances"),
    "stand-ins": ("Add a stand-in", "New ingredient"),
}


def test_the_keys_press_what_each_dialog_is_for(open_window, qtbot, subtests):
    window = open_window(WindowHooks(settings=edit_settings))
    pressed: list[str] = []
    for page, words in ACTIONS.items():
        if page:
            window.arrive(page)
            settle(window, qtbot)
        offered = window.current.bar_actions if page else window.actions_.all
        actions = {each.toolTip().rstrip("…"): each for each in offered}
        for word in words:
            with subtests.test(page=page, word=word):
                actions[word].trigger()
                settle(window, qtbot)
                dialog = QApplication.activeModalWidget()
                assert isinstance(dialog, QDialog)
                main = main_button(dialog)
                if main is None:  # it only shows something
                    dialog.accepted.connect(lambda word=word: pressed.append(word))
                else:
                    main.setEnabled(True)
                    main.clicked.disconnect()  # only that it is pressed is asked
                    main.clicked.connect(lambda _on, word=word: pressed.append(word))
                with qtbot.waitActive(dialog):
                    dialog.activateWindow()
                qtbot.keyClick(
                    dialog.focusWidget() or dialog,
                    Qt.Key.Key_Return,
                    Qt.KeyboardModifier.ControlModifier,
                )
                assert pressed[-1:] == [word]
            for each in QApplication.topLevelWidgets():
                if isinstance(each, QDialog):
                    each.done(0)
            settle(window, qtbot)
