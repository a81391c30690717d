"""The window over a real bar: pages, menus, shortcuts, undo, dropping files, and its memory."""

from __future__ import annotations

from collections import Counter
from dataclasses import replace
from datetime import datetime
from itertools import product

import pytest
from PySide6.QtCore import QMimeData, QPointF, Qt, QUrl
from PySide6.QtGui import QDragEnterEvent, QDropEvent, QGuiApplication
from PySide6.QtWidgets import QApplication, QListWidget, QPushButton, QWidget

from barkeep import __version__
from barkeep.application import licences
from barkeep.application.bar import Bar
from barkeep.desktop.importing.bottles import ImportDialog
from barkeep.desktop.importing.files import import_files
from barkeep.desktop.look.language import LANGUAGES
from barkeep.desktop.look.tones import current_tones, read_tones
from barkeep.desktop.publishing import output as publish_output
from barkeep.desktop.publishing.publish import PublishDialog
from barkeep.desktop.shell.help import AboutDialog, ShortcutsDialog, TextDialog, rows_of
from barkeep.desktop.shell.main_window import NARROW_BELOW, MainWindow, WindowHooks
from barkeep.desktop.shell.navigation import PAGES
from tests.desktop.audit import cut_off, focusable_without_name, mnemonics, shortcuts_of
from tests.desktop.pages import settle
from tests.walked import walked

KEYS = [page.key for page in PAGES]


def press(qtbot, window, key, *modifiers):
    """A key stroke where the focus is."""
    held = Qt.KeyboardModifier.NoModifier
    for each in modifiers:
        held |= each
    qtbot.keyClick(QApplication.focusWidget() or window, key, held)


# Pages


def test_pages_are_made_on_their_first_visit(window, qtbot):
    assert window.stack.count() == 1
    first = window.show_page("bottles")
    assert window.stack.count() == 2
    window.show_page("tonight")
    assert window.show_page("bottles") is first


def test_ctrl_and_a_number_show_the_pages(window, qtbot):
    for number, key in enumerate(KEYS):
        press(qtbot, window, Qt.Key(Qt.Key.Key_1 + number), Qt.KeyboardModifier.ControlModifier)
        assert window.current.key == key
        assert window.actions_.pages[key].isChecked()
    settle(window, qtbot)


def test_the_navigation_goes_by_the_arrow_keys(window, qtbot):
    stops = window.navigation.findChild(QListWidget)
    stops.setFocus()
    qtbot.keyClick(stops, Qt.Key.Key_Down)
    assert window.current.key == KEYS[1]
    settle(window, qtbot)


def test_going_somewhere_with_something_shows_it(window, qtbot):
    window.go("specs", window.bar.snapshot.specs[0].name)
    settle(window, qtbot)
    assert window.current.key == "specs"
    assert window.current.current.spec.name == window.bar.snapshot.specs[0].name


def test_find_puts_the_cursor_into_the_search(window, qtbot):
    window.current.focus_list()
    press(qtbot, window, Qt.Key.Key_F, Qt.KeyboardModifier.ControlModifier)
    assert window.current.search.focusProxy().hasFocus()


# What is offered


def test_no_shortcut_is_given_twice(window, qtbot):
    for key in KEYS:
        page = window.show_page(key)
        found = Counter(shortcuts_of([*window.actions_.all, *page.bar_actions]))
        assert [keys for keys, times in found.items() if times > 1] == []
    settle(window, qtbot)


def test_the_expected_shortcuts_are_there(open_window):
    hooks = WindowHooks(lambda _path: None, import_files, lambda _context, _parent: None)
    given = set(shortcuts_of(list(open_window(hooks).actions_.all)))
    every = [
        "Ctrl+Z",
        "Ctrl+Shift+Z",
        "Ctrl+F",
        "Ctrl+Q",
        "Ctrl+,",
        "Ctrl+O",
        "Ctrl+I",
        "F1",
        "F5",
        "Ctrl+?",
    ]
    assert given >= {*every, *(f"Ctrl+{number}" for number in range(1, 6))}


def test_no_letter_is_underlined_twice_in_a_menu(open_window):
    hooks = WindowHooks(lambda _path: None, import_files, lambda _context, _parent: None)
    window = open_window(hooks)
    for action in window.menuBar().actions():
        letters = Counter(mnemonics(action.menu()))
        assert [each for each, times in letters.items() if times > 1] == [], action.text()


def test_menu_texts_are_in_sentence_case_without_full_stops(open_window):
    for action in open_window().actions_.all:
        words = action.text().replace("&", "").split()
        assert not action.text().endswith("."), action.text()
        assert not any(word[:1].isupper() for word in words[1:] if word not in named(action))


def named(action) -> set[str]:
    """Words that are names: of pages, of languages, of Qt, of a kind of file."""
    own = (*(page.title for page in PAGES), *LANGUAGES.values())
    return {word for each in own for word in each.split()} | {"Qt", "CSV"}


def test_what_nobody_does_is_not_offered(window, open_window):
    assert not window.actions_.settings.isVisible()
    assert not window.actions_.import_files.isVisible()
    hooks = WindowHooks(lambda _path: None, import_files, lambda _context, _parent: None)
    offering = open_window(hooks).actions_
    assert offering.settings.isVisible()
    assert offering.import_files.isVisible()


def test_an_empty_shelf_offers_no_import_that_nobody_does(open_window, empty_bar):
    page = open_window(over=empty_bar).show_page("bottles")
    assert [each.isVisible() for each in page.list_stack.empty.buttons] == [True, False]


def test_the_bar_menu_offers_what_the_page_does(window, qtbot):
    page = window.show_page("bottles")
    menu = window.actions_.bar_menu
    assert page.bar_actions
    assert menu.actions()[: len(page.bar_actions)] == page.bar_actions
    window.show_page("tonight")
    assert not set(page.bar_actions) & set(menu.actions())
    settle(window, qtbot)


def test_everything_the_keyboard_reaches_has_a_name(window, qtbot):
    for key in KEYS:
        window.show_page(key)
        settle(window, qtbot)
        assert focusable_without_name(window) == []


@pytest.mark.parametrize("size", [(800, 600), (1024, 768), (1400, 900)])
def test_nothing_is_cut_off(window, qtbot, size):
    window.resize(*size)
    for key in KEYS:
        window.show_page(key)
        settle(window, qtbot)
        assert window.size().toTuple() == size
        assert cut_off(window) == []


def test_a_small_window_keeps_the_lamps_only(window, qtbot):
    window.resize(NARROW_BELOW + 40, 700)
    assert not window.navigation.is_narrow
    wide = window.navigation.width()
    window.resize(NARROW_BELOW - 40, 700)
    qtbot.waitUntil(lambda: window.navigation.width() < wide)
    assert window.navigation.is_narrow


# Changes, undo


def rename(bar: Bar, name: str) -> None:
    """One change that can be undone."""
    bar.settings.change(replace(bar.snapshot.settings, name=name))


def test_a_change_renames_window_and_status(window):
    rename(window.bar, "Branch line bar")
    assert window.windowTitle() == "Branch line bar – barkeep"
    assert window.bar_name.text() == "Branch line bar"
    assert window.saved.text() == "Saved"


def test_the_menu_names_what_would_be_undone(window, qtbot):
    rename(window.bar, "Branch line bar")
    assert window.actions_.undo.text() == f"&Undo: {window.bar.undo_label}"
    before = window.bar.undo_label
    window.current.focus_list()
    press(qtbot, window, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert window.bar.snapshot.settings.name != "Branch line bar"
    assert window.toast.text == f"Undone: {before}"
    assert window.actions_.redo.text() == f"&Redo: {before}"
    shifted = (Qt.KeyboardModifier.ControlModifier, Qt.KeyboardModifier.ShiftModifier)
    press(qtbot, window, Qt.Key.Key_Z, *shifted)
    assert window.bar.snapshot.settings.name == "Branch line bar"


def test_an_empty_bar_has_nothing_to_undo(open_window, empty_bar):
    actions = open_window(over=empty_bar).actions_
    assert (actions.undo.text(), actions.undo.isEnabled()) == ("&Undo", False)


def test_a_refused_undo_is_explained_on_the_page(window):
    while window.bar.undo_label is not None:
        window.bar.undo()
    window.undo()
    assert window.current.banner.text == "There is nothing to undo."


def test_what_another_program_wrote_is_read_on_f5(window, sample_bar, clock, qtbot):
    with Bar.open(sample_bar, clock=clock) as other:
        rename(other, "Renamed elsewhere")
    window.current.focus_list()
    press(qtbot, window, Qt.Key.Key_F5)
    assert window.bar_name.text() == "Renamed elsewhere"


def test_midnight_makes_a_new_day(open_window, sample_bar, qtbot):
    """The pages are asked again when the window is next activated."""
    now = [datetime(2026, 11, 21, 23, 59)]
    with Bar.open(sample_bar, clock=lambda: now[0]) as bar:
        window = open_window(over=bar)
        asked: list[frozenset[str]] = []
        window.current.refresh = asked.append
        now[0] = datetime(2026, 11, 22, 0, 1)
        other = QWidget()
        qtbot.addWidget(other)
        for each in (other, window):
            with qtbot.waitActive(each):
                each.show()
                each.activateWindow()
        assert asked
        window.close()


def test_pages_that_are_not_shown_ask_when_they_are(window, qtbot):
    page = window.show_page("bottles")
    window.show_page("tonight")
    settle(window, qtbot)
    asked: list[frozenset[str]] = []
    page.refresh = asked.append
    bottle = next(each for each in window.bar.snapshot.bottles if each.level.state == "open")
    window.bar.inventory.empty(bottle.id)
    assert asked == []
    window.show_page("bottles")
    assert len(asked) == 1
    assert "bottles" in asked[0]
    settle(window, qtbot)


# Dropping files


def dropped(window: MainWindow, paths) -> QDropEvent:
    """Drop files on the window as a file manager does."""
    data = QMimeData()
    data.setUrls([QUrl.fromLocalFile(str(path)) for path in paths])
    copy, left, none = (
        Qt.DropAction.CopyAction,
        Qt.MouseButton.LeftButton,
        Qt.KeyboardModifier.NoModifier,
    )
    enter = QDragEnterEvent(QPointF(50, 50).toPoint(), copy, data, left, none)
    QApplication.sendEvent(window, enter)
    drop = QDropEvent(QPointF(50, 50), copy, data, left, none)
    QApplication.sendEvent(window, drop)
    return drop


GOOD = "product,maker,ingredient,size,level\nSleeper dry,Hollow Lamp,London dry gin,700 ml,0.4\n"
BAD = "product,maker,ingredient,size,level\nSleeper dry,Hollow Lamp,London dry gin,700 ml,1.4\n"


def test_a_dropped_list_is_shown_first_and_then_imported(open_window, tmp_path, qtbot):
    window = open_window(WindowHooks(import_files=import_files))
    file = tmp_path / "shelf.csv"
    file.write_text(GOOD, encoding="utf-8")
    before = len(window.bar.snapshot.bottles)
    dropped(window, [file])
    dialog = window.findChild(ImportDialog)
    settle(window, qtbot)
    assert dialog.isVisible()
    assert len(window.bar.snapshot.bottles) == before
    assert cut_off(dialog) == []
    assert focusable_without_name(dialog) == []
    dialog.import_button.click()
    settle(window, qtbot)
    assert len(window.bar.snapshot.bottles) == before + 1
    assert window.toast.text == "1 bottle came in"
    window.undo()
    assert len(window.bar.snapshot.bottles) == before


def test_the_first_runs_import_brings_a_list_in(
    open_window, empty_bar, tmp_path, monkeypatch, qtbot
):
    file = tmp_path / "shelf.csv"
    file.write_text(GOOD, encoding="utf-8")
    asked: list[str] = []

    def choose(_parent, title, *_args):
        asked.append(title)
        return [str(file)], ""

    monkeypatch.setattr(
        "barkeep.desktop.shell.main_window.QFileDialog.getOpenFileNames", staticmethod(choose)
    )
    window = open_window(WindowHooks(import_files=import_files), over=empty_bar)
    page = window.show_page("bottles")
    settle(window, qtbot)
    offered = page.list_stack.empty.buttons[1]
    assert (offered.text(), offered.isVisible()) == ("Import…", True)
    offered.setFocus(Qt.FocusReason.TabFocusReason)
    qtbot.keyClick(offered, Qt.Key.Key_Space)
    assert asked == ["Import bottles"]
    dialog = window.findChild(ImportDialog)
    settle(window, qtbot)
    assert dialog.isVisible()
    dialog.import_button.click()
    settle(window, qtbot)
    assert [row.bottle.product.name for row in page.table.rows] == ["Sleeper dry"]
    assert page.list_stack.currentWidget() is page.view


def test_a_list_with_a_mistake_is_explained_and_nothing_comes_in(open_window, tmp_path, qtbot):
    window = open_window(WindowHooks(import_files=import_files))
    file = tmp_path / "shelf.csv"
    file.write_text(BAD, encoding="utf-8")
    before = window.bar.snapshot.bottles
    dropped(window, [file])
    dialog = window.findChild(ImportDialog)
    settle(window, qtbot)
    model = dialog.view.model()
    assert [model.index(0, place).data() for place in (0, 4)] == ["2", "To repair"]
    said = dialog.details.form.fields["level"].problem
    assert said.isVisible() and "a share of the bottle is 0 to 1" in said.text()
    assert not dialog.import_button.isEnabled()
    dialog.reject()
    assert window.bar.snapshot.bottles == before


def test_a_file_that_is_no_text_is_refused_by_name(open_window, tmp_path):
    window = open_window(WindowHooks(import_files=import_files))
    file = tmp_path / "photo.csv"
    file.write_bytes(b"\xff\xfe\x00\x81")
    dropped(window, [file])
    said = "photo.csv cannot be used: it is no text in UTF-8, UTF-16 or Windows-1252."
    assert window.current.banner.text == said


def test_without_a_hook_nothing_can_be_dropped(window, tmp_path):
    assert not window.acceptDrops()


# Memory


def test_size_page_columns_and_splitter_are_remembered(open_window, qtbot):
    first = open_window()
    first.resize(790, 690)  # within the screen, or it is corrected
    page = first.show_page("bottles")
    settle(first, qtbot)
    header = page.list_stack.view.horizontalHeader()
    header.resizeSection(1, 233)
    page.splitter.setSizes([500, 300])
    sizes = page.splitter.sizes()
    first.close()
    second = open_window()
    settle(second, qtbot)
    assert second.size().toTuple() == (790, 690)
    assert second.current.key == "bottles"
    assert second.current.list_stack.view.horizontalHeader().sectionSize(1) == 233
    assert second.current.splitter.sizes() == pytest.approx(sizes, abs=2)


def test_columns_can_be_put_back(window, qtbot):
    page = window.show_page("bottles")
    settle(window, qtbot)
    header = page.list_stack.view.horizontalHeader()
    before = header.sectionSize(1)
    header.resizeSection(1, before + 77)
    window.actions_.reset_columns.trigger()
    assert header.sectionSize(1) == before


def test_a_theme_is_shown_at_once_and_told(window, qtbot):
    settle(window, qtbot)
    with qtbot.waitSignal(window.theme_chosen) as told:
        window.actions_.themes["dark"].trigger()
    assert told.args == ["dark"]
    assert current_tones() == read_tones("dark")


# Small dialogs


def test_about_tells_versions_and_places_and_copies_them(window):
    window.actions_.about.trigger()
    dialog = window.findChild(AboutDialog)
    dialog.copy()
    copied = QGuiApplication.clipboard().text()
    assert f"barkeep {__version__}" in copied
    assert "Qt 6." in copied
    assert str(window.bar.path) in copied
    assert cut_off(dialog) == []
    assert focusable_without_name(dialog) == []
    dialog.reject()


def test_the_list_of_shortcuts_has_the_windows_and_the_pages(window, qtbot):
    page = window.show_page("bottles")
    settle(window, qtbot)
    rows = rows_of([*window.actions_.all, *page.bar_actions])
    assert ("Find", "Ctrl+F") in rows
    assert ("Bottles", "Ctrl+2") in rows
    assert ("Help on this", "F1") in rows
    assert ("Keyboard shortcuts", "Ctrl+?") in rows
    assert ("Tonight: use up", "F9") in rows
    window.actions_.shortcuts.trigger()
    dialog = window.findChild(ShortcutsDialog)
    assert cut_off(dialog) == []
    assert focusable_without_name(dialog) == []
    dialog.reject()


def test_a_sound_bar_is_called_sound(window):
    window.actions_.check.trigger()
    assert window.toast.text == "Nothing is wrong with this bar"


@pytest.fixture
def open_printing(window, qtbot):
    """Ctrl+P on the window, its pages laid out."""
    window.go("specs", "Upper Berth")
    settle(window, qtbot)
    press(qtbot, window, Qt.Key.Key_P, Qt.KeyboardModifier.ControlModifier)
    dialog = window.findChild(PublishDialog)
    qtbot.waitUntil(lambda: not window.background.is_busy and dialog.ready, timeout=20_000)
    yield dialog
    dialog.reject()


@walked("button, kind", list(product(("pdf_button", "save_button"), range(3))))
def test_no_print_or_export_is_written_over_the_bar(
    window, open_printing, qtbot, tmp_path, monkeypatch, button, kind
):
    dialog, bar = open_printing, window.bar.path
    dialog.what.setCurrentIndex(kind)
    qtbot.waitUntil(lambda: not window.background.is_busy and dialog.ready, timeout=20_000)
    link = tmp_path / "link.txt"
    if not link.is_symlink():
        link.symlink_to(bar)
    beside = bar.with_name(f"{bar.name}-journal")
    before = bar.read_bytes()
    for name, said in (
        (bar, "it is the bar that is open"),
        (link, "it is the bar that is open"),
        (beside, f"SQLite keeps this name for the journal of {bar.name}"),
    ):
        monkeypatch.setattr(
            publish_output.QFileDialog, "getSaveFileName", lambda *_args, name=name: (str(name), "")
        )
        dialog.banner.clear()
        qtbot.mouseClick(getattr(dialog, button), Qt.MouseButton.LeftButton)
        qtbot.waitUntil(lambda: dialog.banner.kind == "error" and bool(dialog.banner.text))
        assert said in dialog.banner.text
        assert "choose another name. Nothing was changed." in dialog.banner.text
    assert bar.read_bytes() == before
    assert not beside.exists()
    assert link.is_symlink()


@pytest.mark.parametrize("suffix", ["", "-journal"])
def test_no_backup_is_written_over_the_bar(window, monkeypatch, suffix):
    bar = window.bar.path
    target, before = bar.with_name(bar.name + suffix), bar.read_bytes()
    monkeypatch.setattr(
        "barkeep.desktop.shell.main_window.QFileDialog.getSaveFileName",
        lambda *_args: (str(target), ""),
    )
    window.actions_.back_up.trigger()
    assert f"{target} cannot be written" in window.current.banner.text
    assert bar.read_bytes() == before
    assert [each.name for each in bar.parent.glob(f"{bar.name}*")] == [bar.name]


def test_a_backup_is_written_where_it_is_wanted(window, tmp_path, monkeypatch, clock):
    target = tmp_path / "copy.barkeep"
    mine = tmp_path / "copy.barkeep.part"
    mine.write_text("mine", encoding="utf-8")
    monkeypatch.setattr(
        "barkeep.desktop.shell.main_window.QFileDialog.getSaveFileName",
        lambda *_args: (str(target), ""),
    )
    window.actions_.back_up.trigger()
    assert window.toast.text == f"Backed up to {target}"
    assert mine.read_text(encoding="utf-8") == "mine"
    with Bar.open(target, clock=clock) as copy:
        assert copy.snapshot.bottles == window.bar.snapshot.bottles


def test_what_is_new_is_told_by_version(window):
    window.actions_.changes.trigger()
    words = window.findChild(TextDialog).text.toPlainText()
    assert words.startswith("What is new") and __version__ in words


def test_about_shows_our_licence_and_those_of_what_it_is_built_on(window):
    window.actions_.about.trigger()
    about = window.findChild(AboutDialog)
    (show,) = [each for each in about.findChildren(QPushButton) if "Licences" in each.text()]
    show.click()
    words = about.findChild(TextDialog).text.toPlainText()
    assert words.startswith("barkeep\nMIT License")
    for name in ("networkx", "pint", "Qt for Python", "SQLAlchemy", "msgspec"):
        assert f"\n{name}\n" in words
    # And all that is installed with them, by what the packages say of themselves.
    for package in licences.packages():
        assert package.name in words and package.version in words and package.licence in words
    assert {"flexparser", "shiboken6"} <= {each.name for each in licences.packages()}
