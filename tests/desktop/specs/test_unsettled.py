"""A spec kept with its questions, by keyboard in the real window: every page names its line."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QAbstractButton, QApplication, QLabel

from barkeep.application.imports import NamedText
from barkeep.desktop.importing.files import import_texts
from barkeep.desktop.importing.specs import ImportSpecsDialog
from barkeep.desktop.making.batch import BatchDialog
from barkeep.desktop.shell.main_window import WindowHooks
from barkeep.domain.ingredients.tree import Ingredient
from barkeep.domain.specs.spec import UnsettledLine
from tests.desktop.pages import settle

pytestmark = [
    pytest.mark.qt_log_ignore("^This plugin does not support", extend=True),
    pytest.mark.left_at("specs"),
]


Keys = Qt.Key
CTRL, ALT = Qt.KeyboardModifier.ControlModifier, Qt.KeyboardModifier.AltModifier
FOG = """Fog Signal
45 ml London dry gin
15 ml moonpetal cordial
top with soda water

Shake the first two.
"""
LINE = "15 ml moonpetal cordial"
NOT_UNDERSTOOD = f"“{LINE}” is not understood"
MOONPETAL = Ingredient(
    "moonpetal-cordial", "Moonpetal cordial", ("syrup",), abv_percent=0.0, sugar_g_per_l=500.0
)


@pytest.fixture
def window(open_window, qtbot):
    """The whole window over the sample bar, on the Specs page."""
    shown = open_window(WindowHooks(import_texts=import_texts))
    shown.show_page("specs")
    settle(shown, qtbot)
    return shown


def key(qtbot, pressed, held=Qt.KeyboardModifier.NoModifier):
    """A key where the focus is; a button pressed by its letter stays down for a moment."""
    qtbot.keyClick(QApplication.focusWidget(), pressed, held)
    qtbot.waitUntil(
        lambda: (
            not any(
                each.isDown()
                for top in QApplication.topLevelWidgets()
                for each in top.findChildren(QAbstractButton)
            )
        )
    )


def activate(shown, qtbot):
    """As a window manager does once a dialog is gone."""
    with qtbot.waitActive(shown):
        shown.show()
        shown.activateWindow()


def said(widget) -> str:
    """Everything a widget says, top to bottom."""
    return "\n".join(label.text() for label in widget.findChildren(QLabel) if label.text())


def written(screen, qtbot, text: str):
    """The editor opened by its key, with a text pasted into it."""
    QGuiApplication.clipboard().setText(text)
    screen.view.setFocus()
    key(qtbot, Keys.Key_N, CTRL)
    qtbot.waitUntil(lambda: screen.editor is not None and screen.editor.text.hasFocus())
    editor = screen.editor
    key(qtbot, Keys.Key_V, CTRL)
    editor.read()
    return editor


def kept(window, bar, qtbot):
    """The spec, kept with its question by the editor's own key."""
    screen = window.current
    editor = written(screen, qtbot, FOG)
    qtbot.waitUntil(lambda: editor.keep_button.isVisible())
    editor.save_button.setFocus()
    key(qtbot, Keys.Key_K, ALT)
    settle(window, qtbot)
    activate(window, qtbot)
    return bar.specs.get("Fog Signal")


def test_the_editor_asks_first_and_keeps_the_line_where_the_owner_says_so(window, bar, qtbot):
    screen = window.current
    editor = written(screen, qtbot, FOG)
    assert editor.keep_button.text().replace("&", "") == "Keep with 1 question"
    key(qtbot, Keys.Key_S, CTRL)
    assert editor.isVisible() and "moonpetal cordial" in editor.banner.text
    assert bar.undo_label is None
    editor.save_button.setFocus()
    key(qtbot, Keys.Key_K, ALT)
    settle(window, qtbot)
    (line,) = bar.specs.get("Fog Signal").unsettled
    assert (line.text, line.place) == (LINE, 1)
    assert line.question.startswith("No ingredient is called “moonpetal cordial”")
    assert NOT_UNDERSTOOD in said(screen.detail)


def test_nothing_else_that_is_wrong_is_kept(window, qtbot):
    editor = written(window.current, qtbot, "Fog Signal\n15 ml moonpetal cordial\nServes: none\n")
    assert editor.seen.faults and not editor.keep_button.isVisible()


def test_every_page_names_the_line(window, bar, qtbot):
    spec = kept(window, bar, qtbot)
    assert spec.unsettled
    specs = window.current
    assert LINE in said(specs.detail) and NOT_UNDERSTOOD in said(specs.detail)
    specs.search.set_text("moonpetal")
    assert [row.spec.name for row in specs.shown.shown_rows()] == ["Fog Signal"]

    specs.focus_list()
    key(qtbot, Keys.Key_B, CTRL)
    batch = window.findChild(BatchDialog)
    settle(window, qtbot)
    told = said(batch)
    assert f"Not in the batch: “{LINE}”, for it is not understood" in told
    assert "Counted in Fog Signal: “top with soda water” as 90 ml a serve" in told
    batch.reject()
    activate(window, qtbot)

    specs.focus_list()
    key(qtbot, Keys.Key_T, CTRL)
    settle(window, qtbot)
    tonight = window.current
    assert tonight.key == "tonight" and tonight.current.spec.name == "Fog Signal"
    assert not tonight.current.makeable
    assert LINE in said(tonight.detail) and "No ingredient is called" in said(tonight.detail)

    window.show_page("next-bottle")
    settle(window, qtbot)
    assert "not counted until understood: Fog Signal" in window.current.summary.text()


def test_it_is_settled_once_its_ingredient_is_known_and_undo_takes_that_back(window, bar, qtbot):
    before = kept(window, bar, qtbot)
    screen = window.current
    bar.knowledge.add_ingredient(MOONPETAL)
    settle(window, qtbot)
    assert bar.specs.get("Fog Signal") == before  # nobody has said so yet
    assert f"“{LINE}” is understood now and can be settled." in said(screen.detail)
    settle_it = next(
        each for each in screen.detail.findChildren(QAbstractButton) if each.text() == "Settle"
    )
    settle_it.setFocus()
    key(qtbot, Keys.Key_Space)
    settle(window, qtbot)
    after = bar.specs.get("Fog Signal")
    assert not after.unsettled
    assert [line.ingredient for line in after.lines][1] == "moonpetal-cordial"
    assert after.lines[0] == before.lines[0]
    bar.undo()
    assert bar.specs.get("Fog Signal") == before


def test_an_import_leaves_it_out_until_the_owner_keeps_it(window, bar, qtbot):
    text = "Home Lamp\n60 ml gin\n\nStir.\n---\n" + FOG
    import_texts(window.context, [NamedText("drinks.txt", text)], window)
    dialog = window.findChild(ImportSpecsDialog)
    settle(window, qtbot)
    first = dialog.table.rows[0]
    assert (first.name, first.outcome) == ("Fog Signal", "Is left out")
    dialog.view.selectRow(0)
    dialog.details.keep_chips.chip("keep").setFocus()
    key(qtbot, Keys.Key_Space)
    settle(window, qtbot)
    outcomes = {row.name: row.outcome for row in dialog.table.rows}
    assert outcomes == {"Home Lamp": "Comes in", "Fog Signal": "Comes in with 1 question"}
    dialog.import_button.setFocus()
    key(qtbot, Keys.Key_Space)
    settle(window, qtbot)
    (line,) = bar.specs.get("Fog Signal").unsettled
    assert isinstance(line, UnsettledLine) and line.text == LINE
