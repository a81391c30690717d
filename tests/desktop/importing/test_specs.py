"""Specs out of documents over the real window: the preview, decisions, stopping, undo."""

from __future__ import annotations

from threading import Event

import pytest
from PySide6.QtCore import QMimeData, QPointF, Qt, QUrl
from PySide6.QtGui import QDropEvent, QGuiApplication
from PySide6.QtWidgets import QApplication, QFileDialog, QLabel

from barkeep.application.imports import Decision, NamedText, preview
from barkeep.desktop.importing.bottles import ImportDialog
from barkeep.desktop.importing.files import import_files, import_texts
from barkeep.desktop.importing.specs import ImportSpecsDialog, import_columns, import_rows
from barkeep.desktop.screens.row_table import RowTable
from barkeep.desktop.shell.main_window import WindowHooks
from barkeep.domain.spec_text.text import write_spec
from tests.desktop.audit import cut_off, focusable_without_name
from tests.desktop.pages import settle
from tests.desktop.patience import WAIT_S

pytestmark = [
    pytest.mark.qt_log_ignore("^This plugin does not support", extend=True),
    pytest.mark.left_at("bottles"),
]


FOG = "Fog Lamp\n60 ml London dry gin\n20 ml lemon juice\n\nShake with ice.\n"
BAD = "Moss Lamp\n60 ml moss\n"


@pytest.fixture
def window(open_window):
    """The window, with its ways to take documents in."""
    return open_window(WindowHooks(import_files=import_files, import_texts=import_texts))


def changed(bar) -> tuple[str, str]:
    """A spec of the bar's own and its text with another glass."""
    spec = bar.snapshot.specs[0]
    text = write_spec(spec, bar.snapshot.knowledge.tree)
    return spec.name, text.replace(f"Glass: {spec.glass}", "Glass: tin mug")


def opened(window, qtbot, text: str, file: str = "drinks.txt") -> ImportSpecsDialog:
    import_texts(window.context, [NamedText(file, text)], window)
    dialog = window.findChild(ImportSpecsDialog)
    settle(window, qtbot)
    return dialog


def words(dialog) -> list[str]:
    """What the pane beside the list says."""
    return [label.text() for label in dialog.details.widget().findChildren(QLabel) if label.text()]


def own(bar) -> list[str]:
    return [spec.name for spec in bar.snapshot.specs]


def test_the_model_keeps_to_the_rules_of_models(bar, qtmodeltester):
    text = "---\n".join((FOG, BAD, changed(bar)[1]))
    found = preview(bar.snapshot, [NamedText("drinks.txt", text)])
    model = RowTable(import_columns())
    model.show_rows(import_rows(found, one_file=True))
    qtmodeltester.check(model, force_py=True)
    assert model.rowCount() == 3


def test_three_groups_are_shown_with_their_details(window, bar, qtbot):
    name, text = changed(bar)
    dialog = opened(window, qtbot, "---\n".join((FOG, BAD, text)))
    assert [(row.group, row.name) for row in dialog.shown.shown_rows()] == [
        ("unreadable", "Moss Lamp"),
        ("differing", name),
        ("new", "Fog Lamp"),
    ]
    assert any("moss" in each and "Line 8, column 7" in each for each in words(dialog))
    dialog.view.selectRow(1)
    assert {"Yours", "Theirs", "tin mug", bar.snapshot.specs[0].glass} <= set(words(dialog))
    dialog.view.selectRow(2)
    assert any("20 ml lemon juice" in each for each in words(dialog))
    dialog.chips.choose("differing")
    assert [row.name for row in dialog.shown.shown_rows()] == [name]
    assert dialog.import_button.text() == "&Import 1 spec"
    assert "1 cannot be read and will be left out." in dialog.summary.text()
    dialog.reject()


def test_what_is_chosen_is_what_comes_in_and_undo_takes_all_of_it_back(window, bar, qtbot):
    before, (name, text) = bar.snapshot.specs, changed(bar)
    dialog = opened(window, qtbot, f"{FOG}---\n{text}")
    dialog.view.selectRow(0)
    dialog.details.chips.choose("take_theirs")
    assert dialog.import_button.text() == "&Import 2 specs"
    assert dialog.table.rows[0].outcome == "Takes the place of yours"
    dialog.import_button.click()
    settle(window, qtbot)
    assert "Fog Lamp" in own(bar)
    assert bar.specs.get(name).glass == "tin mug"
    assert window.toast.text == "1 spec came in and 1 spec replaced"
    window.undo()
    assert bar.snapshot.specs == before
    settle(window, qtbot)


def test_both_can_be_kept_under_a_name_of_ones_own(window, bar, qtbot):
    name, text = changed(bar)
    dialog = opened(window, qtbot, text)
    dialog.details.chips.choose("add")
    field = dialog.details.name_field
    assert (field.isVisible(), field.text()) == (True, f"{name} 2")
    field.selectAll()
    qtbot.keyClicks(field, "Tin Mug Night")
    assert dialog.table.rows[0].outcome == "Comes in as Tin Mug Night"
    dialog.import_button.click()
    settle(window, qtbot)
    assert {"Tin Mug Night", name} <= set(own(bar))


def test_a_name_that_is_taken_is_refused_and_nothing_is_lost(window, bar, qtbot):
    name, text = changed(bar)
    dialog = opened(window, qtbot, text)
    dialog.details.chips.choose("add")
    dialog.details.name_field.setText(name)
    dialog.details.name_field.textEdited.emit(name)
    dialog.import_button.click()
    settle(window, qtbot)
    assert "already" in dialog.banner.text
    assert dialog.isVisible()
    assert dialog.table.rows[0].decision == Decision("add", name)
    dialog.reject()


def test_one_choice_for_all_spares_the_classics(window, bar, qtbot):
    classic = next(each for each in bar.snapshot.all_specs if each.classic)
    _name, text = changed(bar)
    dialog = opened(window, qtbot, f"{text}---\n{classic.name}\n60 ml London dry gin\n")
    qtbot.keyClick(dialog.for_all, Qt.Key.Key_Down)
    qtbot.keyClick(dialog.for_all, Qt.Key.Key_Down)
    dialog.for_all.activated.emit(dialog.for_all.currentIndex())
    outcomes = [row.decision.choice for row in dialog.table.rows]
    assert outcomes == ["take_theirs", "keep_mine"]
    dialog.view.selectRow(1)
    assert any("classic" in each for each in words(dialog))
    dialog.reject()


@pytest.mark.parametrize("when", ["reading", "writing"])
def test_stopping_leaves_nothing_behind(window, bar, qtbot, when):
    """The work is held where it first tells of its progress, so that there is time to stop it."""
    before, held, started = bar.snapshot, Event(), Event()
    text = "---\n".join(FOG.replace("Fog Lamp", f"Fog {number}") for number in range(40))
    dialog = opened(window, qtbot, text)

    def hold(question):
        def asked(progress):
            def told(done, total):
                started.set()
                assert held.wait(WAIT_S)
                return progress(done, total)

            return question(told)

        return asked

    ask = dialog.asking.ask
    dialog.asking.ask = lambda question, *others: ask(hold(question), *others)
    if when == "reading":
        dialog._read()
    else:
        dialog.import_button.click()
    qtbot.waitUntil(started.is_set)
    assert dialog.progress.isVisible()
    assert dialog.cancel_button.text() == "&Stop"
    dialog.cancel_button.click()
    held.set()
    settle(window, qtbot)
    assert "was stopped; nothing was written" in dialog.banner.text
    assert not dialog.progress.isVisible()
    assert not bar.refresh()
    assert bar.snapshot is before
    dialog.reject()


def test_a_file_is_chosen_dropped_or_pasted(window, bar, qtbot, tmp_path, monkeypatch):
    file = tmp_path / "drinks.md"
    file.write_text(
        "# Fog Lamp\n\n- 60 ml London dry gin\n- 20 ml lemon juice\n\n## Method\n\n1. Shake.\n",
        encoding="utf-8",
    )
    asked = []

    def choose(*arguments):
        asked.append(arguments[1:])
        return ([str(file)], "")

    monkeypatch.setattr(QFileDialog, "getOpenFileNames", choose)
    data = QMimeData()
    data.setUrls([QUrl.fromLocalFile(str(file))])
    drop = QDropEvent(
        QPointF(5, 5),
        Qt.DropAction.CopyAction,
        data,
        Qt.MouseButton.LeftButton,
        Qt.KeyboardModifier.NoModifier,
    )
    clipboard = QGuiApplication.clipboard()
    for act in (
        window.actions_.import_specs.trigger,
        lambda: window.dropEvent(drop),
        lambda: (clipboard.setText(file.read_text("utf-8")), window.actions_.paste.trigger()),
        lambda: (clipboard.setMimeData(data), window.actions_.paste.trigger()),
    ):
        act()
        settle(window, qtbot)
        (dialog,) = window.findChildren(ImportSpecsDialog)
        assert [row.name for row in dialog.table.rows] == ["Fog Lamp"]
        dialog.reject()
        dialog.deleteLater()
        QApplication.sendPostedEvents(dialog)
        qtbot.waitUntil(lambda: not window.findChildren(ImportSpecsDialog))
    assert asked[0][0] == "Import specs"
    assert "*.jsonld" in asked[0][2]


def test_a_list_of_bottles_is_still_one(window, qtbot):
    import_texts(
        window.context, [NamedText("a.csv", "product,ingredient,size\nGin,gin,700\n")], window
    )
    assert window.findChild(ImportDialog) is not None
    assert window.findChild(ImportSpecsDialog) is None


def test_nothing_on_the_clipboard_is_said(window):
    QGuiApplication.clipboard().setText("  ")
    window.actions_.paste.trigger()
    assert window.toast.text == "There is no text to paste"


@pytest.mark.parametrize("size", [(760, 480), (1024, 640)])
def test_nothing_is_cut_off_and_all_has_a_name(window, bar, qtbot, size):
    _name, text = changed(bar)
    dialog = opened(window, qtbot, "---\n".join((FOG, BAD, text)))
    dialog.resize(*size)
    for row in range(3):
        dialog.view.selectRow(row)
        QApplication.processEvents()
        assert cut_off(dialog) == []
        assert focusable_without_name(dialog) == []
    dialog.reject()
