"""In the real window a spec's own words stand wherever its ingredients are named."""

from __future__ import annotations

import re

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QApplication, QLabel

from barkeep.desktop.making.batch import BatchDialog
from barkeep.desktop.shell.main_window import WindowHooks
from barkeep.desktop.shell.settings import SettingsDialog, edit_settings
from barkeep.desktop.widgets.labels import LinkLabel
from barkeep.domain.spec_text.text import read_specs
from tests.desktop.pages import settle

pytestmark = pytest.mark.qt_log_ignore("^This plugin does not support", extend=True)

CIDER = """\
Signal Lamp
60 ml apple cider
2 oz Pellow & Rudge dry gin
1 tbsp caster sugar
4 oz club soda

Shake and strain into a coupe.
"""
CTRL = Qt.KeyboardModifier.ControlModifier


@pytest.fixture
def window(open_window, bar):
    """The window over the sample bar with one more spec."""
    (read,) = read_specs(CIDER, bar.snapshot.knowledge.tree)
    bar.specs.add([read.spec])
    return open_window(WindowHooks(settings=edit_settings))


def details(window):
    """All that the details of the page say from top to bottom, without the marks of their links."""
    page = window.current.detail.widget()
    found = [each for each in page.findChildren(QLabel) if each.isVisible()]
    found.sort(key=lambda each: each.mapTo(page, QPoint()).y())
    return [re.sub(r"<[^<>]*>", "", each.text()).replace("&amp;", "&") for each in found]


def at(window, page, name, qtbot):
    """What the details of one drink say on a page."""
    window.go(page, name)
    settle(window, qtbot)
    return details(window)


def column(table, number=0):
    return [table.item(row, number).text() for row in range(table.rowCount())]


def test_the_spec_page_has_the_words_and_the_kind_below_them(window, qtbot):
    said = at(window, "specs", "Signal Lamp", qtbot)
    assert "60 ml apple cider" in said
    below = said[said.index("60 ml apple cider") + 1 :]
    assert any(each.startswith("Cloudy apple juice. No apple cider in the bar") for each in below)
    assert "Missing apple cider" in said
    links = [each.toolTip() for each in window.current.detail.findChildren(LinkLabel)]
    assert "What stands in for apple cider?" in links
    row = window.current.current
    assert row.in_brief == "Apple cider, Pellow & Rudge dry gin, Caster sugar, Club soda"


def test_tonight_lacks_what_was_written(window, qtbot):
    said = at(window, "tonight", "Signal Lamp", qtbot)
    assert "60 ml apple cider" in said and "4 oz club soda" in said
    row, columns = window.current.current, window.current.table.columns
    cells = {column.title: column.text(row) for column in columns}
    assert cells["Limited by"] == "Apple cider"


def test_the_batch_sheet_and_its_copy_say_what_was_written(window, qtbot):
    window.go("specs", "Signal Lamp")
    settle(window, qtbot)
    window.current.focus_list()
    qtbot.keyClick(QApplication.focusWidget(), Qt.Key.Key_B, CTRL)
    dialog = window.findChildren(BatchDialog)[-1]
    assert column(dialog.table) == [
        "apple cider (cloudy apple juice)",
        "Pellow & Rudge dry gin (London dry gin)",
        "caster sugar (superfine sugar)",
        "club soda (soda water)",
        "Water",
    ]
    targets = [dialog.target.itemText(each) for each in range(dialog.target.count())]
    assert "From so much apple cider" in targets
    qtbot.keyClick(dialog.copy_button, Qt.Key.Key_Space)
    qtbot.waitUntil(lambda: "600 ml\tapple cider" in QGuiApplication.clipboard().text())
    dialog.reject()


def test_another_region_renames_what_nobody_wrote_on_every_page_at_once(window, bar, qtbot):
    window.go("stand-ins", "superfine-sugar")
    settle(window, qtbot)
    assert "Superfine sugar" in details(window)
    qtbot.keyClick(QApplication.focusWidget() or window, Qt.Key.Key_Comma, CTRL)
    dialog = window.findChild(SettingsDialog)
    assert dialog.region.currentText() == "as this system is set, none"
    dialog.region.setFocus()
    qtbot.keyClicks(dialog.region, "UK")
    assert dialog.region.currentText() == "UK: United Kingdom and Ireland"
    qtbot.keyClick(dialog.name, Qt.Key.Key_Return)
    assert bar.snapshot.settings.region == "UK"
    settle(window, qtbot)
    assert "Caster sugar" in details(window) and "Superfine sugar" not in details(window)
    assert "4 oz club soda" in at(window, "specs", "Signal Lamp", qtbot)
    window.undo()
    window.go("stand-ins", "superfine-sugar")
    settle(window, qtbot)
    assert "Superfine sugar" in details(window)
