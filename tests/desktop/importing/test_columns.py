"""A list whose columns are unclear, from the real window to the specs that come in, by keyboard."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QLabel

from barkeep.application.imports import NamedText
from barkeep.desktop.importing.files import import_files, import_texts
from barkeep.desktop.importing.specs import ImportSpecsDialog
from barkeep.desktop.shell.main_window import WindowHooks
from tests.desktop.audit import cut_off, focusable_without_name
from tests.desktop.pages import settle

pytestmark = [
    pytest.mark.qt_log_ignore("^This plugin does not support", extend=True),
    pytest.mark.left_at("bottles"),
]

LIST = (
    "A,B,C,D,E\nSlip Coach,2,oz,gin,seen twice\nSlip Coach,1,oz,lime juice,\n"
    "Up Line,50,ml,rye whiskey,\nUp Line,25,ml,sweet vermouth,\n"
)


@pytest.fixture
def window(open_window):
    return open_window(WindowHooks(import_files=import_files, import_texts=import_texts))


def opened(window, qtbot, text: str, file: str = "drinks.csv") -> ImportSpecsDialog:
    import_texts(window.context, [NamedText(file, text)], window)
    dialog = window.findChild(ImportSpecsDialog)
    settle(window, qtbot)
    return dialog


def words(dialog) -> list[str]:
    return [label.text() for label in dialog.details.widget().findChildren(QLabel) if label.text()]


def own(bar) -> list[str]:
    return [spec.name for spec in bar.snapshot.specs]


def tab_to(qtbot, dialog, wanted) -> None:
    """Move the focus with the tab key until it is where it is wanted."""
    for _ in range(60):
        if QApplication.focusWidget() is wanted:
            return
        qtbot.keyClick(QApplication.focusWidget() or dialog, Qt.Key.Key_Tab)
    raise AssertionError(f"{wanted} cannot be reached by the tab key")


def test_the_likely_answer_is_ready_and_what_comes_of_it_is_shown(window, bar, qtbot):
    dialog = opened(window, qtbot, LIST)
    (row,) = dialog.table.rows
    assert (row.group, row.outcome) == ("columns", "Waits for its columns")
    columns = dialog.details.columns
    chosen = [each.currentText() for each in columns.choices]
    assert chosen == ["Name of the drink", "Amount", "Unit", "Ingredient", "Left aside"]
    assert columns.outcome.text() == "Slip Coach\n2 oz gin\n1 oz lime juice"
    assert "Column 1, A" in words(dialog) and "Slip Coach, Up Line" in words(dialog)
    assert columns.rows.model().index(0, 3).data() == "gin"
    assert not dialog.import_button.isEnabled()
    assert "Say which column is what" in dialog.summary.text()
    dialog.reject()
    assert "Slip Coach" not in own(bar)


def test_a_choice_is_changed_and_the_list_comes_in_by_keyboard(window, bar, qtbot):
    dialog = opened(window, qtbot, LIST)
    columns = dialog.details.columns
    tab_to(qtbot, dialog, columns.choices[4])
    qtbot.keyClicks(columns.choices[4], "Notes")
    assert columns.choices[4].currentText() == "Notes"
    tab_to(qtbot, dialog, columns.read_button)
    qtbot.keyClick(columns.read_button, Qt.Key.Key_Space)
    settle(window, qtbot)
    assert [(each.group, each.name) for each in dialog.table.rows] == [
        ("new", "Slip Coach"),
        ("new", "Up Line"),
    ]
    tab_to(qtbot, dialog, dialog.import_button)
    qtbot.keyClick(dialog.import_button, Qt.Key.Key_Space)
    settle(window, qtbot)
    assert {"Slip Coach", "Up Line"} <= set(own(bar))
    assert bar.specs.get("Slip Coach").notes == "seen twice"
    window.undo()
    assert "Slip Coach" not in own(bar)
    settle(window, qtbot)


def test_columns_that_give_no_drink_cannot_be_read_so(window, qtbot):
    dialog = opened(window, qtbot, LIST)
    columns = dialog.details.columns
    columns.choices[3].setCurrentIndex(0)
    assert "say which column holds the ingredients" in columns.outcome.text()
    assert not columns.read_button.isEnabled()
    dialog.reject()


def test_what_was_left_aside_is_in_the_list_and_beside_its_spec(window, qtbot):
    page = (
        "<html><body><nav>Home and away</nav><h1>Cinder Path</h1><p>A cold night.</p>"
        "<ul><li>60 ml London dry gin</li><li>20 ml lemon juice</li></ul>"
        "<p>Shake.</p></body></html>"
    )
    dialog = opened(window, qtbot, page, "path.html")
    assert [(each.group, each.name) for each in dialog.table.rows] == [
        ("new", "Cinder Path"),
        ("aside", "Around the specs"),
    ]
    assert "2 things are left aside" in dialog.summary.text()
    assert {"Left aside", "“A cold night.”"} <= set(words(dialog))
    dialog.view.selectRow(1)
    said = words(dialog)
    assert "The page holds no recipe data; it was read by its headings and lists." in said
    assert "“Home and away”" in said
    assert dialog.import_button.text() == "&Import 1 spec"
    dialog.reject()


def test_letters_that_were_guessed_are_said(window, qtbot, tmp_path):
    file = tmp_path / "crème.txt"
    file.write_bytes("Crème Dépôt\n60 ml London dry gin\n".encode("cp1252"))
    import_files(window.context, [file], window)
    dialog = window.findChild(ImportSpecsDialog)
    settle(window, qtbot)
    assert [each.name for each in dialog.table.rows] == ["Crème Dépôt", "Around the specs"]
    dialog.view.selectRow(1)
    assert any("read as Windows-1252, which is a guess" in each for each in words(dialog))
    dialog.reject()


@pytest.mark.parametrize("size", [(760, 480), (1024, 640)])
def test_nothing_is_cut_off_and_all_has_a_name(window, qtbot, size):
    dialog = opened(window, qtbot, LIST)
    dialog.resize(*size)
    QApplication.processEvents()
    assert cut_off(dialog) == []
    assert focusable_without_name(dialog) == []
    dialog.reject()
