"""One drink by keyboard in the real window: pasted, riffed on, tasted, printed as a card."""

from __future__ import annotations

import io

import pytest
from pypdf import PdfReader
from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QAbstractButton, QApplication

from barkeep.desktop.publishing import output as publish_output
from barkeep.desktop.publishing.publish import PublishDialog
from barkeep.desktop.specs.family import trials_of
from barkeep.desktop.specs.trials import TrialsSection
from barkeep.domain.specs.trials import Score
from tests.desktop.pages import settle

pytestmark = [
    pytest.mark.qt_log_ignore("^This plugin does not support", extend=True),
    pytest.mark.left_at("specs"),
]


Keys = Qt.Key
CTRL, ALT = Qt.KeyboardModifier.ControlModifier, Qt.KeyboardModifier.AltModifier
PASTED = """Distant Signal
two ounces of gin
three-quarters of an ounce of lemon juice
half an ounce of honey syrup
Garnish: lemon peel
Glass: coupe

Shake with ice and double strain.
"""


@pytest.fixture
def window(open_window, qtbot):
    """The whole window over the sample bar, on the Specs page."""
    shown = open_window()
    shown.show_page("specs")
    settle(shown, qtbot)
    return shown


def activate(shown, qtbot):
    """As a window manager does once a dialog is gone."""
    with qtbot.waitActive(shown):
        shown.show()
        shown.activateWindow()


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


def write(qtbot, words):
    qtbot.keyClicks(QApplication.focusWidget(), words)


def test_from_paste_to_saved_riff_to_recorded_trial_to_printed_card(
    window, bar, qtbot, tmp_path, monkeypatch
):
    screen = window.current

    # Pasted as it was dictated, and saved.
    QGuiApplication.clipboard().setText(PASTED)
    screen.view.setFocus()
    key(qtbot, Keys.Key_N, CTRL)
    qtbot.waitUntil(lambda: screen.editor is not None and screen.editor.text.hasFocus())
    key(qtbot, Keys.Key_V, CTRL)
    key(qtbot, Keys.Key_S, CTRL)
    parent = bar.specs.get("Distant Signal")
    poured = [(line.amount, line.unit, line.ingredient) for line in parent.required_lines]
    assert poured == [(2.0, "oz", "gin"), (0.75, "oz", "lemon-juice"), (0.5, "oz", "honey-syrup")]
    settle(window, qtbot)
    activate(window, qtbot)

    # A riff of it with one line changed.
    screen.focus_list()
    key(qtbot, Keys.Key_R, CTRL)
    editor = screen.editor
    qtbot.waitUntil(lambda: editor.isVisible() and editor.text.hasFocus())
    write(qtbot, "Home Signal")
    rows = editor.text.toPlainText().splitlines()
    changed = next(number for number, row in enumerate(rows, 1) if "honey syrup" in row)
    editor.text.go_to(changed, 1)
    key(qtbot, Keys.Key_End, Qt.KeyboardModifier.ShiftModifier)
    write(qtbot, "3/4 oz honey syrup")
    key(qtbot, Keys.Key_S, CTRL)
    riff = bar.specs.get("Home Signal")
    assert riff.riff_of == "Distant Signal"
    assert riff.required_lines[2].amount == 0.75
    settle(window, qtbot)
    activate(window, qtbot)

    # Tasted, and settled on.
    screen.show_thing("Home Signal")
    settle(window, qtbot)
    section = screen.detail.widget().findChild(TrialsSection)
    section.add_button.setFocus()
    key(qtbot, Keys.Key_Space)
    dialog = screen.dialog
    qtbot.waitUntil(lambda: QApplication.focusWidget() is dialog.tasters)
    dialog.tasters.selectAll()
    write(qtbot, "Wren")
    dialog.scores.setFocus()
    dialog.scores.setCurrentCell(0, 0)
    write(qtbot, "4")
    key(qtbot, Keys.Key_Return)
    qtbot.waitUntil(lambda: QApplication.focusWidget() is dialog.scores)
    dialog.changed.setFocus()
    write(qtbot, "more honey")
    dialog.won.setFocus()
    key(qtbot, Keys.Key_Space)
    dialog.accept_button.setFocus()
    key(qtbot, Keys.Key_Space)
    (trial,) = trials_of(riff, bar.snapshot)
    assert (trial.scores, trial.changed, trial.won) == (
        (Score("Wren", "Balance", 4.0),),
        "more honey",
        True,
    )
    settle(window, qtbot)
    activate(window, qtbot)

    # Printed as a card; only the file dialog is stood in for.
    file = tmp_path / "card.pdf"
    monkeypatch.setattr(
        publish_output.QFileDialog, "getSaveFileName", lambda *_asked: (str(file), "")
    )
    screen.focus_list()
    key(qtbot, Keys.Key_P, CTRL)
    cards = window.findChild(PublishDialog)
    qtbot.waitUntil(lambda: not window.background.is_busy and cards.ready)
    assert [spec.name for spec in cards.specs.ticked] == ["Home Signal"]
    key(qtbot, Keys.Key_D, ALT)
    qtbot.waitUntil(lambda: cards.banner.kind == "done")
    printed = " ".join(PdfReader(io.BytesIO(file.read_bytes())).pages[0].extract_text().split())
    for words in ("Home Signal", "¾ oz", "Shake with ice and double strain."):
        assert words in printed
    cards.reject()
