"""Names that look like markup are shown letter by letter, wherever Qt would take them for it."""

from __future__ import annotations

from dataclasses import replace

import pytest
from PySide6.QtCore import QAbstractItemModel, QModelIndex, Qt
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QAbstractItemView, QDialog, QLabel, QMessageBox, QWidget

from barkeep.application.bar import Bar
from barkeep.desktop.shell.navigation import PAGES
from barkeep.desktop.widgets.tips import plain_tip
from barkeep.domain.bottles.bottle import label_of
from tests.conftest import NOON
from tests.desktop.pages import settle

MARK = "<b>Fog</b>"
Role, Format = Qt.ItemDataRole, Qt.TextFormat


@pytest.fixture(scope="module")
def marked_file(_sample_file, tmp_path_factory):
    """The sample bar, every name of which looks like markup."""
    path = tmp_path_factory.mktemp("marked") / "marked.bar"
    path.write_bytes(_sample_file.read_bytes())
    with Bar.open(path, clock=lambda: NOON) as opened:
        shot = opened.snapshot
        for each in shot.products:
            label = replace(label_of(each), name=f"{MARK} {each.name}", maker=f"{MARK}{each.maker}")
            opened.inventory.change_product(each.id, label)
        for each in opened.snapshot.shoots:
            if each.log is None:
                opened.shoots.replace(replace(each, theme=f"{MARK} {each.theme}"))
        for each in shot.specs:
            lines = tuple(replace(line, note=f"{MARK} {line.note}") for line in each.lines)
            spec = replace(each, name=f"{MARK} {each.name}", lines=lines, notes=MARK, riff_of=None)
            opened.specs.replace(spec)
        opened.settings.change(replace(shot.settings, name=f"{MARK} bar"))
    return path


@pytest.fixture
def bar(marked_file, tmp_path, clock):
    """A copy of it, open."""
    copy = tmp_path / "marked.bar"
    copy.write_bytes(marked_file.read_bytes())
    with Bar.open(copy, clock=clock) as opened:
        yield opened


def tips_of(model: QAbstractItemModel) -> list[str]:
    found = []
    for row in range(model.rowCount(QModelIndex())):
        index = model.index(row, 0)
        while index.isValid():
            found.append(str(index.data(Role.ToolTipRole) or ""))
            index = index.siblingAtColumn(index.column() + 1)
    return found


def taken_for_markup(root: QWidget) -> list[tuple[str, str]]:
    """Every text below a widget that Qt reads as markup although a name stands in it."""
    found: list[tuple[str, str]] = []
    widgets = [root, *root.findChildren(QWidget)]
    for each in widgets:
        if MARK in each.toolTip():
            found.append((type(each).__name__, each.toolTip()))
        if isinstance(each, QAbstractItemView) and each.model() is not None:
            tips = [tip for tip in tips_of(each.model()) if MARK in tip]
            found.extend((type(each).__name__, tip) for tip in tips)
        shows = isinstance(each, QLabel) and each.textFormat() != Format.PlainText
        if shows and MARK in each.text():
            found.append((type(each).__name__, each.text()))
    actions = [each for each in root.findChildren(QAction) if MARK in each.toolTip()]
    named = {each.parent().objectName() for each in actions if each.parent()}
    found.extend(("QAction", each.toolTip()) for each in actions if named)
    return found


DIALOGS = {
    "bottles": ("count_current", "weigh_empty", "change_label", "set_use_by"),
    "specs": ("edit_current", "add_trial", "batch_current"),
    "shoots": ("edit_current",),
}


def test_no_page_and_no_dialog_takes_a_name_for_markup(window, qtbot):
    seen = {}
    for page in PAGES:
        screen = window.show_page(page.key)
        settle(window, qtbot)
        seen[page.key] = taken_for_markup(screen)
        screen.focus_list()
        settle(window, qtbot)
        seen[page.key] += taken_for_markup(screen.detail)
        for ask in DIALOGS.get(page.key, ()):
            getattr(screen, ask)()
            settle(window, qtbot)
            asked = [each for each in window.findChildren(QDialog) if each.isVisible()]
            assert asked
            for dialog in asked:
                seen[ask] = taken_for_markup(dialog)
                dialog.done(0)
            settle(window, qtbot)
    seen["window"] = taken_for_markup(window)
    assert {where: found for where, found in seen.items() if found} == {}


def test_questions_say_names_letter_by_letter(window, qtbot):
    page = window.show_page("specs")
    page.show_thing(f"{MARK} Brazier")
    settle(window, qtbot)
    page.edit_current()
    page.editor.text.setPlainText(f"{MARK}\n60 ml gin")
    page.editor.reject()
    question = page.editor.question
    assert isinstance(question, QMessageBox)
    assert question.textFormat() == Format.PlainText
    question.close()
    page.editor.close()


def test_undo_says_names_letter_by_letter(window):
    window.bar.specs.remove(next(each.id for each in window.bar.snapshot.specs))
    assert MARK in window.actions_.undo.text()
    assert window.actions_.undo.toolTip() == "Undo"


@pytest.mark.parametrize(
    ("text", "tip"),
    [
        ("Fog Lamp", "Fog Lamp"),
        ("1 < 2 & 3", "<qt>1 &lt; 2 &amp; 3</qt>"),
        ("a & b", "a & b"),
        ("a\n<i>", "<qt>a<br>&lt;i&gt;</qt>"),
        ("&lt;", "<qt>&amp;lt;</qt>"),
    ],
)
def test_a_tip_shows_what_it_is_given(text, tip):
    assert plain_tip(text) == tip
