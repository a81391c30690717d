"""The lines view of the spec editor: one draft with the text, its keys, its drags, its drafts."""

from __future__ import annotations

import json
import os
import signal
import subprocess
import sys
from dataclasses import replace

import pytest
from PySide6.QtCore import QModelIndex, Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QApplication, QLineEdit, QMessageBox

from barkeep.desktop.specs.drafts import KeptDrafts, SpecDraft, for_new
from barkeep.desktop.specs.editor import SpecEditor
from barkeep.desktop.specs.lines import (
    AMOUNT,
    GARNISH,
    INGREDIENT,
    NOTE,
    OPTIONAL,
    SHOWN,
    UNIT_COLUMN,
    LineTable,
    line_rows,
    texts_of,
    with_lines,
    with_name,
)
from barkeep.desktop.specs.page import SpecsScreen
from barkeep.desktop.specs.reading import see
from barkeep.desktop.specs.text_edit import pasted
from barkeep.domain.amounts.units import US_UNITS
from tests.desktop.audit import cut_off, focusable_without_name
from tests.desktop.pages import shown_page

pytestmark = pytest.mark.qt_log_ignore("^This plugin does not support", extend=True)


FOG = """Fog Lamp
- 1½ oz London dry gin, cold
20 ml lemon juice
Glass: coupe
Garnish: lemon peel and orange peel

Shake with ice.
"""
PAGE = """<!doctype html><title>x</title><script type="application/ld+json">
{"@type": "Recipe", "name": "Paper Lamp", "recipeIngredient": ["60 ml London dry gin",
"20 ml lemun juce"], "recipeInstructions": ["Shake.", "Strain."]}</script>"""


def rows_of(text, tree):
    spec = see(text, tree).specs[0]
    return spec, line_rows(spec, tree, US_UNITS, "ml")


@pytest.fixture
def editors(bar, qtbot):
    """Opens editors; what they save is kept in `saved`."""

    def opened(text: str = "", snapshot=None, keeper=None, **options):
        draft = SpecDraft("New spec", "", written=text, **options)
        editor = SpecEditor(draft, snapshot or bar.snapshot, keep, None, keeper)
        qtbot.addWidget(editor, before_close_func=lambda each: each.text.setPlainText(""))
        with qtbot.waitActive(editor):
            editor.show()
            editor.activateWindow()
        return editor

    def keep(_editor, specs):
        opened.saved += specs
        return True

    opened.saved = []
    return opened


def in_lines(editor):
    editor.views.choose("lines")
    editor.lines.view.setFocus()
    editor.lines.view.setCurrentIndex(editor.lines.table.index(0, INGREDIENT))
    return editor.lines


def write(qtbot, lines, row: int, column: int, words: str) -> None:
    """Type into a cell as the keyboard does."""
    lines.view.setFocus()
    lines.view.setCurrentIndex(lines.table.index(row, column))
    qtbot.keyClick(lines.view, Qt.Key.Key_F2)
    field = QApplication.focusWidget()
    assert isinstance(field, QLineEdit)
    field.selectAll()
    qtbot.keyClicks(field, words)
    finish(qtbot)


def finish(qtbot) -> None:
    """Enter in a cell; what is written is taken in once the key has been dealt with."""
    qtbot.keyClick(QApplication.focusWidget(), Qt.Key.Key_Return)
    QApplication.processEvents()


class TestOneDocument:
    def test_the_model_keeps_to_the_rules_of_models(self, tree, qtmodeltester):
        model = LineTable("In ml")
        model.show_rows(rows_of(FOG, tree)[1])
        qtmodeltester.check(model, force_py=True)

    def test_unchanged_lines_are_the_text_as_it_stands(self, tree):
        spec, rows = rows_of(FOG, tree)
        assert with_lines(FOG, spec, texts_of(rows, FOG.split("\n"))) == FOG

    def test_every_order_keeps_every_line_and_the_rest(self, tree):
        spec, rows = rows_of(FOG, tree)
        for turned in (rows[::-1], (*rows[1:], rows[0]), (rows[2], rows[0], rows[3], rows[1])):
            text = with_lines(FOG, spec, texts_of(turned, FOG.split("\n")))
            again = see(text, tree).specs[0]
            read = [(each.read.line.ingredient, each.read.line.amount) for each in again.lines]
            before = {row: line.read.line for row, line in zip(rows, spec.lines, strict=True)}
            assert read == [(before[row].ingredient, before[row].amount) for row in turned]
            assert (again.read.glass, again.read.method) == ("coupe", "Shake with ice.")

    def test_taking_one_of_two_garnishes_out_leaves_the_other(self, tree):
        spec, rows = rows_of(FOG, tree)
        text = with_lines(FOG, spec, texts_of(rows[:-1], FOG.split("\n")))
        assert "Garnish: lemon peel\n" in text
        assert "orange" not in text

    def test_a_line_goes_in_where_it_belongs(self, tree):
        spec, _rows = rows_of(FOG, tree)
        lines = ["60 ml gin", "5 ml honey syrup", "20 ml lemon juice", "Garnish: lemon peel"]
        assert with_lines(FOG, spec, lines).splitlines()[1:6] == [
            *lines[:3],
            "Glass: coupe",
            lines[3],
        ]
        assert with_lines("", None, ["60 ml gin"]) == "\n60 ml gin"
        bare = see("Fog Lamp\nGlass: coupe", tree).specs[0]
        text = with_lines("Fog Lamp\nGlass: coupe", bare, ["60 ml gin"])
        assert text == "Fog Lamp\n60 ml gin\nGlass: coupe"

    def test_a_name_is_written_put_in_and_taken_out(self, tree):
        spec, _rows = rows_of(FOG, tree)
        assert with_name(FOG, spec, "Night  Lamp").startswith("Night Lamp\n- 1½")
        assert with_name(FOG, spec, "").startswith("- 1½ oz")
        assert with_name("", None, "Fog").startswith("Fog\n")
        nameless = see("60 ml gin\n", tree).specs[0]
        assert with_name("60 ml gin\n", nameless, "Fog") == "Fog\n60 ml gin\n"
        assert see(with_name(FOG, spec, "Ice: Age"), tree).specs[0].name == "Ice: Age"


class TestEditing:
    def test_amounts_stay_as_written_beside_the_unit_the_bar_likes(self, editors, bar):
        snapshot = replace(bar.snapshot, settings=replace(bar.snapshot.settings, shown_in="ml"))
        table = in_lines(editors(FOG, snapshot)).table
        first = [
            table.data(table.index(0, column)) for column in (AMOUNT, UNIT_COLUMN, INGREDIENT, NOTE)
        ]
        assert first == ["1½", "oz", "London dry gin", "cold"]
        assert table.data(table.index(0, SHOWN)) == "45 ml"
        assert table.headerData(SHOWN, Qt.Orientation.Horizontal) == "In ml"
        checked = table.data(table.index(2, GARNISH), Qt.ItemDataRole.CheckStateRole)
        assert checked == Qt.CheckState.Checked

    def test_a_cell_changes_its_line_and_no_other(self, editors, qtbot):
        editor = editors(FOG)
        lines = in_lines(editor)
        write(qtbot, lines, 1, AMOUNT, "25")
        assert editor.text.toPlainText() == FOG.replace("20 ml lemon", "25 ml lemon")
        write(qtbot, lines, 0, NOTE, "very cold")
        assert editor.text.toPlainText().splitlines()[1] == "1½ oz London dry gin, very cold"
        lines.table.setData(
            lines.table.index(1, OPTIONAL), Qt.CheckState.Checked, Qt.ItemDataRole.CheckStateRole
        )
        assert "25 ml lemon juice (optional)\n" in editor.text.toPlainText()
        assert editor.seen.usable

    def test_undo_and_redo_are_of_the_one_draft(self, editors, qtbot):
        editor = editors(FOG)
        lines = in_lines(editor)
        assert not editor.undo_button.isEnabled()
        write(qtbot, lines, 1, AMOUNT, "25")
        lines.view.setFocus()
        qtbot.keyClick(lines.view, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
        assert editor.text.toPlainText() == FOG
        editor.read()
        assert lines.table.data(lines.table.index(1, AMOUNT)) == "20"
        editor.redo_button.click()
        assert "25 ml lemon" in editor.text.toPlainText()

    def test_what_is_typed_in_the_text_is_in_the_lines(self, editors, qtbot):
        editor = editors(FOG)
        in_lines(editor)
        editor.views.choose("text")
        editor.text.go_to(3, 1)
        qtbot.keyClicks(editor.text, "1")
        editor.views.choose("lines")
        table = editor.lines.table
        assert table.data(table.index(1, AMOUNT)) == "120"

    def test_a_new_line_is_written_cell_by_cell(self, editors, qtbot):
        editor = editors("Fog Lamp\n60 ml London dry gin\n")
        lines = in_lines(editor)
        qtbot.keyClick(lines.view, Qt.Key.Key_Insert)
        field = QApplication.focusWidget()
        assert isinstance(field, QLineEdit)
        qtbot.keyClicks(field, "20")
        qtbot.keyClick(field, Qt.Key.Key_Tab)
        assert editor.text.toPlainText() == "Fog Lamp\n60 ml London dry gin\n20\n"
        qtbot.keyClicks(QApplication.focusWidget(), "ml")
        qtbot.keyClick(QApplication.focusWidget(), Qt.Key.Key_Tab)
        qtbot.keyClicks(QApplication.focusWidget(), "lemon juice")
        finish(qtbot)
        assert editor.text.toPlainText() == "Fog Lamp\n60 ml London dry gin\n20 ml lemon juice\n"
        editor.save()
        assert [line.text for line in editors.saved[0].lines] == [
            "60 ml London dry gin",
            "20 ml lemon juice",
        ]

    def test_a_line_with_nothing_in_it_never_reaches_the_text(self, editors, qtbot):
        editor = editors(FOG)
        lines = in_lines(editor)
        lines.add_button.click()
        assert lines.table.rowCount() == 5
        assert editor.text.toPlainText() == FOG
        editor.views.choose("text")
        editor.views.choose("lines")
        assert lines.table.rowCount() == 4

    def test_lines_move_by_keys_buttons_and_drags(self, editors, qtbot):
        editor = editors(FOG)
        lines = in_lines(editor)

        def order():
            table = lines.table
            return [table.data(table.index(row, INGREDIENT)) for row in range(table.rowCount())]

        gin, lemon, *garnish = order()
        qtbot.keyClick(lines.view, Qt.Key.Key_Down, Qt.KeyboardModifier.AltModifier)
        assert order() == [lemon, gin, *garnish]
        assert lines.view.currentIndex().row() == 1
        qtbot.keyClick(lines.view, Qt.Key.Key_Up, Qt.KeyboardModifier.AltModifier)
        assert editor.text.toPlainText() == FOG
        lines.down_button.click()
        assert order() == [lemon, gin, *garnish]
        data = lines.table.mimeData([lines.table.index(0, INGREDIENT)])
        move, nowhere = Qt.DropAction.MoveAction, QModelIndex()
        assert lines.table.dropMimeData(data, move, 2, 0, nowhere)
        assert editor.text.toPlainText() == FOG
        assert lines.table.dropMimeData(data, move, -1, -1, lines.table.index(1, NOTE))
        assert order() == [gin, lemon, *garnish]

    def test_removing_takes_the_line_out(self, editors, qtbot):
        editor = editors(FOG)
        lines = in_lines(editor)
        qtbot.keyClick(lines.view, Qt.Key.Key_Delete)
        assert editor.text.toPlainText() == FOG.replace("- 1½ oz London dry gin, cold\n", "")
        for _ in range(3):
            lines.remove_button.click()
        assert lines.table.rowCount() == 0
        assert not lines.remove_button.isEnabled()
        assert editor.seen.specs[0].read.method == "Shake with ice."

    def test_names_complete_from_the_tree_and_from_the_shelf(self, editors, bar, qtbot):
        editor = editors(FOG)
        lines = in_lines(editor)
        product = next(each.product for each in bar.snapshot.bottles if each.product.unit == "ml")
        lines.view.edit(lines.table.index(0, INGREDIENT))
        field = QApplication.focusWidget()
        completer = field.completer()
        completer.setCompletionPrefix(product.title)
        shown = [
            completer.completionModel().index(row, 0).data()
            for row in range(completer.completionModel().rowCount())
        ]
        assert any(each.startswith(product.title) for each in shown)
        index = completer.completionModel().index(0, 0)
        field.setText(completer.pathFromIndex(index))
        finish(qtbot)
        read = editor.seen.specs[0].lines[0].read.line
        assert read.ingredient == product.ingredient
        assert product.title in read.note

    def test_the_name_is_the_name_of_the_text(self, editors, qtbot):
        editor = editors(FOG)
        lines = in_lines(editor)
        lines.name_field.setFocus()
        qtbot.keyClicks(lines.name_field, "s of Night")
        assert editor.text.toPlainText().splitlines()[0] == "Fog Lamps of Night"
        lines.name_field.selectAll()
        qtbot.keyClicks(lines.name_field, "Ash")
        assert editor.text.toPlainText() == FOG.replace("Fog Lamp", "Ash")

    def test_a_fault_is_marked_in_its_row(self, editors):
        lines = in_lines(editors("Fog Lamp\n60 ml zzyzx\n20 ml lemon juice"))
        tip = lines.table.data(lines.table.index(0, INGREDIENT), Qt.ItemDataRole.ToolTipRole)
        assert tip == "No ingredient is called “zzyzx”."

    @pytest.mark.parametrize("size", [(800, 560), (1280, 800)])
    def test_nothing_is_cut_off_and_all_has_a_name(self, editors, size):
        editor = editors(FOG)
        editor.resize(*size)
        in_lines(editor)
        QApplication.processEvents()
        assert cut_off(editor) == []
        assert focusable_without_name(editor) == []


class TestPasting:
    def test_a_page_becomes_a_draft_with_its_faults_marked(self, editors, qtbot):
        editor = editors()
        QGuiApplication.clipboard().setText(PAGE)
        qtbot.keyClick(editor.text, Qt.Key.Key_V, Qt.KeyboardModifier.ControlModifier)
        assert editor.text.toPlainText() == (
            "Paper Lamp\n60 ml London dry gin\n20 ml lemun juce\n\nShake.\nStrain.\n"
        )
        assert editor.banner.text == "Read as a web page: 1 spec."
        assert [fault.line for fault in editor.seen.faults] == [3]
        editor.text.undo()
        assert editor.text.toPlainText() == ""

    def test_a_document_goes_below_what_is_there(self, editors, qtbot):
        editor = editors(FOG)
        QGuiApplication.clipboard().setText("# Ash Lamp\n\n- 60 ml **London dry gin**\n")
        qtbot.keyClick(editor.text, Qt.Key.Key_V, Qt.KeyboardModifier.ControlModifier)
        assert editor.text.toPlainText() == f"{FOG}---\nAsh Lamp\n60 ml London dry gin\n"
        assert editor.save_button.text() == "Save 2 specs"

    def test_plain_words_go_in_where_the_cursor_is(self, editors, qtbot):
        editor = editors("Fog Lamp\n")
        editor.text.go_to(2)
        QGuiApplication.clipboard().setText("60 ml gin\n")
        qtbot.keyClick(editor.text, Qt.Key.Key_V, Qt.KeyboardModifier.ControlModifier)
        assert editor.text.toPlainText() == "Fog Lamp\n60 ml gin\n"

    def test_rows_pasted_into_the_lines_are_lines(self, editors, qtbot):
        editor = editors(FOG)
        lines = in_lines(editor)
        QGuiApplication.clipboard().setText("10 ml simple syrup\n2 dashes orange bitters\n")
        qtbot.keyClick(lines.view, Qt.Key.Key_V, Qt.KeyboardModifier.ControlModifier)
        assert editor.text.toPlainText().splitlines()[2:5] == [
            "10 ml simple syrup",
            "2 dashes orange bitters",
            "20 ml lemon juice",
        ]

    def test_what_holds_no_spec_stays_as_it_is(self):
        assert pasted("60 ml gin") is None
        assert pasted("<p>Nothing</p>") is None
        assert pasted("{") is None
        assert pasted("words", "<p>Nothing</p>") is None
        assert pasted("words", PAGE).specs == 1

    def test_a_character_of_two_units_moves_nothing(self, editors):
        editor = editors("🍸 Lamp\n60 ml gin\n")
        editor.text.rewrite("🍸 Lamp 🍋\n45 ml gin\n")
        assert editor.text.toPlainText() == "🍸 Lamp 🍋\n45 ml gin\n"


class TestKeptDrafts:
    def test_a_draft_is_kept_while_it_is_written_and_gone_when_saved(self, editors, bar, tmp_path):
        drafts = KeptDrafts(tmp_path, bar.path)
        keeper = drafts.begin(for_new())
        editor = editors(FOG, keeper=keeper)
        assert json.loads(keeper.file.read_text("utf-8"))["text"] == FOG
        assert drafts.offered() == ()
        editor.save()
        assert not keeper.file.exists()

    def test_a_broken_file_and_another_bars_draft_are_none(self, bar, tmp_path):
        drafts = KeptDrafts(tmp_path, bar.path)
        keeper = drafts.begin(for_new())
        keeper.keep(FOG)
        keeper.leave()
        assert [each.name for each in drafts.offered()] == ["Fog Lamp"]
        assert KeptDrafts(tmp_path, tmp_path / "other.bar").offered() == ()
        for broken in ("", "{}", "[]", '{"at": 4}', "\x00"):
            keeper.file.write_text(broken, encoding="utf-8")
            assert drafts.offered() == ()

    def test_kept_for_later_it_is_offered_and_gone_on_with(self, bar, qtbot, tmp_path):
        spec = bar.snapshot.specs[0]
        with shown_page(SpecsScreen, bar, qtbot, tmp_path) as page:
            screen = page.screen
            screen.show_thing(spec.name)
            screen.edit_current()
            text = screen.editor.text.toPlainText()
            screen.editor.text.setPlainText(f"{text}\nStir it once more.")
            answer(screen.editor, QMessageBox.ButtonRole.AcceptRole)
            assert screen.banner.text.startswith(f"“{spec.name}” was begun on")
            screen.banner._button.click()
            assert screen.editor.text.toPlainText().endswith("Stir it once more.")
            assert screen.editor.windowTitle() == f"Edit {spec.name}"
            screen.editor.save()
            assert bar.specs.get(spec.name).method.endswith("Stir it once more.")
            assert screen.writing.drafts.offered() == ()
            page.settle(qtbot)

    def test_thrown_away_it_is_gone(self, bar, qtbot, tmp_path):
        with shown_page(SpecsScreen, bar, qtbot, tmp_path) as page:
            page.screen.write_new()
            page.screen.editor.text.setPlainText(FOG)
            page.screen.editor.read()
            answer(page.screen.editor, QMessageBox.ButtonRole.DestructiveRole)
            assert page.screen.writing.drafts.offered() == ()
            assert page.screen.banner.text == ""

    def test_after_a_kill_it_is_offered_again(self, bar, qtbot, tmp_path):
        bar_file = bar.path
        program = (
            "import sys\n"
            "from pathlib import Path\n"
            "from PySide6.QtWidgets import QApplication\n"
            "from barkeep.application.bar import Bar\n"
            "from barkeep.desktop.specs.drafts import KeptDrafts\n"
            "from barkeep.desktop.specs.drafts import for_new\n"
            "from barkeep.desktop.specs.editor import SpecEditor\n"
            "app = QApplication([])\n"
            "bar = Bar.open(sys.argv[1])\n"
            "keeper = KeptDrafts(Path(sys.argv[2]), bar.path).begin(for_new())\n"
            "editor = SpecEditor(for_new(), bar.snapshot, lambda *_: False, None, keeper)\n"
            "editor.show()\n"
            "editor.text.setPlainText(sys.argv[3])\n"
            "app.processEvents()\n"
            "keep = keeper.keep\n"
            "keeper.keep = lambda text: (keep(text), print('kept', flush=True))\n"
            "app.exec()\n"
        )
        command = [sys.executable, "-c", program, str(bar_file), str(tmp_path), FOG]
        with subprocess.Popen(command, stdout=subprocess.PIPE, stderr=subprocess.DEVNULL) as child:
            assert child.stdout.readline() == b"kept\n"
            os.kill(child.pid, signal.SIGKILL)
            assert child.wait() == -signal.SIGKILL
        with shown_page(SpecsScreen, bar, qtbot, tmp_path) as page:
            assert page.screen.banner.text.startswith("“Fog Lamp” was begun on")
            button = page.screen.banner._button
            assert button.text() == "Go on with the draft of Fog Lamp"
            button.click()
            assert page.screen.editor.text.toPlainText() == FOG
            page.screen.editor.save()
            assert bar.specs.get("Fog Lamp").glass == "coupe"
            page.settle(qtbot)


def answer(editor, role) -> None:
    """Close the editor and answer its question."""
    editor.reject()
    question = editor.question
    next(each for each in question.buttons() if question.buttonRole(each) == role).click()


def test_by_keyboard_from_a_pasted_recipe_to_a_saved_riff(bar, qtbot, tmp_path):
    """Paste a page, put it right, save it; then riff on it, change a line, and save that."""
    with shown_page(SpecsScreen, bar, qtbot, tmp_path) as page:
        screen = page.screen

        def key(key, modifier=Qt.KeyboardModifier.NoModifier):
            qtbot.keyClick(QApplication.focusWidget(), key, modifier)

        def type_(words):
            qtbot.keyClicks(QApplication.focusWidget(), words)

        control, alt = Qt.KeyboardModifier.ControlModifier, Qt.KeyboardModifier.AltModifier
        QGuiApplication.clipboard().setText(PAGE)
        screen.view.setFocus()
        key(Qt.Key.Key_N, control)
        qtbot.waitUntil(lambda: screen.editor is not None and screen.editor.text.hasFocus())
        key(Qt.Key.Key_V, control)
        screen.editor.text.go_to(3, 15)
        type_("i")
        screen.editor.text.go_to(3, 10)
        key(Qt.Key.Key_Delete)
        type_("o")
        key(Qt.Key.Key_S, control)
        assert [line.ingredient for line in bar.specs.get("Paper Lamp").lines] == [
            "london-dry-gin",
            "lemon-juice",
        ]
        page.settle(qtbot)
        with qtbot.waitActive(page.host):
            page.host.activateWindow()  # as a window manager does once the dialog is gone
        screen.focus_list()
        key(Qt.Key.Key_R, control)
        editor = screen.editor
        qtbot.waitUntil(lambda: editor.isVisible() and editor.text.hasFocus())
        type_("Ash Lamp")
        key(Qt.Key.Key_Backtab, Qt.KeyboardModifier.ShiftModifier)
        while QApplication.focusWidget() is not editor.views.chip("text"):
            key(Qt.Key.Key_Backtab, Qt.KeyboardModifier.ShiftModifier)
        key(Qt.Key.Key_Right)
        assert editor.views.choice == "lines"
        while QApplication.focusWidget() is not editor.lines.view:
            key(Qt.Key.Key_Tab)
        editor.lines.view.setCurrentIndex(editor.lines.table.index(0, AMOUNT))
        key(Qt.Key.Key_Down, alt)
        key(Qt.Key.Key_F2)
        key(Qt.Key.Key_A, control)
        type_("45")
        finish(qtbot)
        key(Qt.Key.Key_S, control)
        riff = bar.specs.get("Ash Lamp")
        assert riff.riff_of == "Paper Lamp"
        assert [line.text for line in riff.lines] == ["20 ml lemon juice", "45 ml London dry gin"]
        page.settle(qtbot)
