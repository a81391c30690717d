"""Print and publish, by the keyboard, over the sample bar."""

from __future__ import annotations

import io
from collections import Counter

import pytest
from pypdf import PdfReader
from PySide6.QtCore import QEvent, Qt, QTimer
from PySide6.QtGui import QGuiApplication
from PySide6.QtPrintSupport import QPrinter
from PySide6.QtWidgets import QAbstractButton, QApplication, QCheckBox, QComboBox, QLabel

from barkeep.desktop.look.theme import Theme
from barkeep.desktop.printing.pages import page_layout
from barkeep.desktop.publishing import output as publish_output
from barkeep.desktop.publishing.publish import KINDS, PublishDialog
from barkeep.desktop.screens.background import Background
from barkeep.desktop.screens.window_state import WindowState
from barkeep.desktop.shell.main_window import MainWindow
from tests.desktop.audit import cut_off, focusable_without_name

pytestmark = pytest.mark.qt_log_ignore("^This plugin does not support", extend=True)


KEYS = Qt.Key
ALT, CTRL = Qt.KeyboardModifier.AltModifier, Qt.KeyboardModifier.ControlModifier
TWO = ("Request Stop", "Upper Berth")


@pytest.fixture
def state(tmp_path):
    return WindowState(tmp_path / "window.ini")


@pytest.fixture
def open_dialog(bar, state, qtbot):
    """Opens the dialog by itself, and waits for its first pages."""
    background = Background()

    def opened(ticked=(), over=None) -> PublishDialog:
        dialog = PublishDialog(over or bar, state, background, ticked)
        qtbot.addWidget(dialog)
        with qtbot.waitActive(dialog):
            dialog.show()
            dialog.activateWindow()
        settle(dialog, background, qtbot)
        return dialog

    yield opened
    background.finish()


@pytest.fixture
def dialog(open_dialog):
    """The dialog with two specs ticked."""
    return open_dialog(TWO)


def settle(dialog, background, qtbot):
    qtbot.waitUntil(lambda: not background.is_busy and (dialog.ready or dialog.choice.empty))


def shown(dialog, qtbot):
    settle(dialog, dialog._background, qtbot)
    return dialog.preview.place.text()


def press(qtbot, dialog, key, held=Qt.KeyboardModifier.NoModifier):
    qtbot.keyClick(QApplication.focusWidget() or dialog, key, held)
    # A button that is pressed by its letter stays down for a moment before it clicks.
    buttons = dialog.findChildren(QAbstractButton)
    qtbot.waitUntil(lambda: not any(each.isDown() for each in buttons))


def write(qtbot, words):
    qtbot.keyClicks(QApplication.focusWidget(), words)


@pytest.fixture
def answer_files(monkeypatch):
    """Stands in for the file dialog: what it is asked, and the file and filter it gives."""
    asked = []

    def answer(name, chosen=""):
        def ask(_parent, title, offered, filters):
            asked.append((title, offered, filters))
            return str(name), chosen

        monkeypatch.setattr(publish_output.QFileDialog, "getSaveFileName", ask)
        return asked

    return answer


# Getting there


def test_ctrl_p_opens_it_with_the_chosen_spec_ticked(bar, state, qtbot, qapp):
    palette, sheet = qapp.palette(), qapp.styleSheet()
    window = MainWindow(bar, state, Theme(qapp, "light"))
    qtbot.addWidget(window)
    with qtbot.waitActive(window):
        window.show()
        window.activateWindow()
    window.go("specs", "Upper Berth")
    qtbot.waitUntil(lambda: not window.background.is_busy)
    press(qtbot, window, KEYS.Key_P, CTRL)
    dialog = window.findChild(PublishDialog)
    settle(dialog, window.background, qtbot)
    assert [spec.name for spec in dialog.specs.ticked] == ["Upper Berth"]
    assert dialog.preview.pages[0].titles == ["Upper Berth"]
    dialog.reject()
    window.close()
    qapp.setPalette(palette)
    qapp.setStyleSheet(sheet)


def test_without_a_choice_it_says_what_to_do(open_dialog):
    dialog = open_dialog()
    assert dialog.preview.sheet.words == "Tick at least one spec to see its page here"
    assert not any(each.isEnabled() for each in outputs(dialog))


def test_a_bar_without_house_made_things_says_so(open_dialog, empty_bar, qtbot):
    dialog = open_dialog(over=empty_bar)
    dialog.what.setCurrentIndex(3)
    assert dialog.preview.sheet.words == "There is no house-made thing in this bar yet"


def outputs(dialog):
    return dialog.print_button, dialog.pdf_button, dialog.copy_button, dialog.save_button


# Choosing by the keyboard


def test_find_a_spec_and_tick_it(open_dialog, qtbot):
    dialog = open_dialog()
    assert QApplication.focusWidget() is dialog.specs.search.focusProxy()
    write(qtbot, "request stop")
    assert dialog.specs.search.count_label.text() == "2 of " + total(dialog)
    press(qtbot, dialog, KEYS.Key_Down)
    press(qtbot, dialog, KEYS.Key_Space)
    assert shown(dialog, qtbot) == "Page 1 of 1"
    assert [spec.name for spec in dialog.specs.ticked] == ["Request Stop"]
    assert dialog.specs.ticked_words.text() == "1 ticked"
    press(qtbot, dialog, KEYS.Key_Space)
    assert dialog.choice.empty and not dialog.preview.pages


def total(dialog):
    return f"{dialog.specs.view.count()} specs"


def test_what_is_ticked_stays_while_something_else_is_looked_for(dialog, qtbot):
    write(qtbot, "nothing of the kind")
    assert {spec.name for spec in dialog.specs.ticked} == set(TWO)
    press(qtbot, dialog, KEYS.Key_A, ALT)
    assert {spec.name for spec in dialog.specs.ticked} == set(TWO)
    press(qtbot, dialog, KEYS.Key_U, ALT)
    assert dialog.choice.empty


def test_tick_all_ticks_what_the_search_shows(open_dialog, qtbot):
    dialog = open_dialog()
    write(qtbot, "request stop")
    press(qtbot, dialog, KEYS.Key_A, ALT)
    shown(dialog, qtbot)
    names = [spec.name for spec in dialog.specs.ticked]
    assert names == ["Request Stop", "Request Stop on Sunday"]


def test_every_kind_has_its_page(dialog, qtbot):
    seen = {}
    press(qtbot, dialog, KEYS.Key_W, ALT)
    for number, (kind, words) in enumerate(KINDS):
        assert dialog.what.currentText() == words and dialog.kind == kind
        shown(dialog, qtbot)
        seen[kind] = " ".join(dialog.preview.pages[0].titles)
        assert dialog.specs.isVisible() == (kind in ("card", "menu", "description"))
        if number + 1 < len(KINDS):
            press(qtbot, dialog, KEYS.Key_Down)
    assert "Request Stop" in seen["card"] and "Request Stop" in seen["menu"]
    assert "Orgeat" in seen["label"] and "☐ Orgeat" in seen["prep"]


def test_template_size_and_paper_are_chosen_and_remembered(dialog, open_dialog, qtbot):
    for key, times in ((KEYS.Key_T, 2), (KEYS.Key_Z, 1), (KEYS.Key_P, 1)):
        press(qtbot, dialog, key, ALT)
        for _ in range(times):
            press(qtbot, dialog, KEYS.Key_Down)
    shown(dialog, qtbot)
    choice = dialog.choice
    assert (choice.template.title, choice.card.title) == ("Bench", "3 × 5 in")
    assert choice.paper.title == "US Letter"
    assert dialog.preview.pages[0].sheet.width_mm == 215.9
    dialog.reject()
    again = open_dialog(TWO).choice
    assert (again.template, again.card, again.paper) == (choice.template, choice.card, choice.paper)


def test_a_card_may_be_a_sheet_of_its_own(dialog, qtbot):
    paper = dialog.options.paper
    paper.setCurrentIndex(paper.findText("The card itself"))
    assert shown(dialog, qtbot) == "Page 1 of 2"
    assert dialog.preview.pages[0].sheet.title == "A6"


def test_a_menu_has_a_title_and_marks(dialog, qtbot, answer_files, tmp_path):
    dialog.what.setCurrentIndex(1)
    shown(dialog, qtbot)
    press(qtbot, dialog, KEYS.Key_I, ALT)
    QApplication.focusWidget().selectAll()
    write(qtbot, "Platform One")
    press(qtbot, dialog, KEYS.Key_S, ALT)
    shown(dialog, qtbot)
    answer_files(tmp_path / "menu.txt")
    press(qtbot, dialog, KEYS.Key_V, ALT)
    text = (tmp_path / "menu.txt").read_text("utf-8")
    assert text.startswith("Platform One\n\nRequest Stop\nLondon dry gin, lime juice")
    assert "% vol" not in text and "Contains tree nuts" in text


def test_pages_are_turned_by_keys(dialog, qtbot):
    dialog.what.setCurrentIndex(2)
    assert shown(dialog, qtbot) == "Page 1 of 2"
    press(qtbot, dialog, KEYS.Key_N, ALT)
    assert dialog.preview.place.text() == "Page 2 of 2"
    assert dialog.preview.area.accessibleDescription() == "Page 2 of 2: Upper Berth"
    assert not dialog.preview.on.isEnabled()
    dialog.preview.area.setFocus()
    for key, number in ((KEYS.Key_Home, 0), (KEYS.Key_PageDown, 1), (KEYS.Key_PageUp, 0)):
        press(qtbot, dialog, key)
        assert dialog.preview.number == number


def test_zoom_makes_the_sheet_larger(dialog, qtbot):
    whole = dialog.preview.sheet.minimumWidth()
    dialog.preview.zoom.setCurrentIndex(dialog.preview.zoom.findText("200 %"))
    assert dialog.preview.sheet.minimumWidth() > 2 * whole


# Out


def test_a_pdf_holds_what_the_preview_shows(dialog, qtbot, answer_files, tmp_path):
    asked = answer_files(tmp_path / "cards")
    press(qtbot, dialog, KEYS.Key_D, ALT)
    qtbot.waitUntil(lambda: dialog.banner.kind == "done")
    assert asked == [("Save PDF", "Spec cards.pdf", "PDF (*.pdf)")]
    file = tmp_path / "cards.pdf"
    assert dialog.banner.text == f"Saved 1 page as {file}"
    text = PdfReader(io.BytesIO(file.read_bytes())).pages[0].extract_text()
    assert all(name in " ".join(text.split()) for name in TWO)
    assert QApplication.focusWidget() is not None and dialog.pdf_button.isEnabled()


def test_pages_go_to_the_printer(dialog, qtbot, monkeypatch, tmp_path):
    file = tmp_path / "printed.pdf"

    def printer(_parent, sheet, title):
        made = QPrinter(QPrinter.PrinterMode.HighResolution)
        made.setOutputFileName(str(file))
        made.setPageLayout(page_layout(sheet))
        made.setDocName(title)
        return made

    monkeypatch.setattr(publish_output, "ask_for_printer", printer)
    dialog.what.setCurrentIndex(2)
    shown(dialog, qtbot)
    press(qtbot, dialog, KEYS.Key_R, ALT)
    qtbot.waitUntil(lambda: dialog.banner.kind == "done" and bool(dialog.banner.text))
    assert dialog.banner.text == "2 pages went to the printer"
    pages = PdfReader(io.BytesIO(file.read_bytes())).pages
    for name, page in zip(TWO, pages, strict=True):
        assert name in " ".join(page.extract_text().split())
    assert round(pages[0].mediabox.width) == 595


def test_thinking_better_of_it_prints_nothing(dialog, qtbot, monkeypatch, answer_files):
    monkeypatch.setattr(publish_output, "ask_for_printer", lambda *_args: None)
    asked = answer_files("")
    for key in (KEYS.Key_R, KEYS.Key_D, KEYS.Key_V):
        press(qtbot, dialog, key, ALT)
    assert len(asked) == 2
    assert dialog.banner.text == ""


def test_text_is_copied(dialog, qtbot):
    press(qtbot, dialog, KEYS.Key_C, ALT)
    text = QGuiApplication.clipboard().text()
    assert text.startswith("Request Stop\n\n2 oz (60 ml) London dry gin\n")
    assert "\n---\n\nUpper Berth\n" in text
    assert dialog.banner.text == "The text was copied"


@pytest.mark.parametrize(
    ("chosen", "name", "file", "begins"),
    [
        ("Specs as CSV (*.csv)", "a", "a.csv", "spec,line,method"),
        ("Specs as JSON-LD (*.jsonld)", "a", "a.jsonld", '{\n  "@context"'),
        ("Specs as Markdown (*.md)", "a.md", "a.md", "# Request Stop\n\n- 2 oz London dry gin"),
        ("Description as Markdown (*.md)", "a.md", "a.md", "# Request Stop\n\n- **2 oz (60 ml)**"),
        ("Specs as CSV (*.csv)", "a.html", "a.html", "<!DOCTYPE html>"),
        ("", "a.json", "a.json", '{\n  "format": "barkeep-specs"'),
        ("", "a.txt", "a.txt", "Request Stop\n2 oz London dry gin"),
    ],
)
def test_saved_in_the_form_that_is_meant(
    dialog, qtbot, answer_files, tmp_path, chosen, name, file, begins
):
    asked = answer_files(tmp_path / name, chosen)
    press(qtbot, dialog, KEYS.Key_V, ALT)
    assert asked[0][1] == "Spec cards.txt"
    assert chosen in asked[0][2].split(";;") or not chosen
    assert (tmp_path / file).read_bytes().decode().startswith(begins)
    assert dialog.banner.text == f"Saved {tmp_path / file}"


def test_a_place_that_takes_nothing_is_said_and_nothing_is_lost(
    dialog, qtbot, answer_files, tmp_path
):
    answer_files(tmp_path / "missing" / "a.pdf")
    press(qtbot, dialog, KEYS.Key_D, ALT)
    qtbot.waitUntil(lambda: dialog.banner.kind == "error")
    assert "cannot be written" in dialog.banner.text
    answer_files(tmp_path / "missing" / "a.csv")
    press(qtbot, dialog, KEYS.Key_V, ALT)
    assert "a.csv cannot be written" in dialog.banner.text
    assert {spec.name for spec in dialog.specs.ticked} == set(TWO)
    assert dialog.specs.isEnabled() and dialog.print_button.isEnabled()


# Manners


def test_the_window_lives_while_everything_is_laid_out(open_dialog, qtbot):
    dialog = open_dialog()
    beats = []
    heart = QTimer()
    heart.timeout.connect(lambda: beats.append(dialog.ready))
    heart.start(0)
    press(qtbot, dialog, KEYS.Key_A, ALT)
    shown(dialog, qtbot)
    heart.stop()
    assert len(dialog.specs.ticked) > 200
    assert len(dialog.preview.pages) == -(-len(dialog.specs.ticked) // 4)
    assert beats.count(False) > 5


def test_a_newer_choice_takes_the_place_of_the_older(open_dialog, qtbot):
    dialog = open_dialog()
    press(qtbot, dialog, KEYS.Key_A, ALT)
    press(qtbot, dialog, KEYS.Key_U, ALT)
    write(qtbot, "upper berth")
    press(qtbot, dialog, KEYS.Key_Down)
    press(qtbot, dialog, KEYS.Key_Space)
    shown(dialog, qtbot)
    assert [page.titles for page in dialog.preview.pages] == [["Upper Berth"]]


def test_esc_closes_and_nothing_goes_on(open_dialog, qtbot):
    dialog = open_dialog()
    press(qtbot, dialog, KEYS.Key_A, ALT)
    press(qtbot, dialog, KEYS.Key_Escape)
    assert not dialog.isVisible() and not dialog.ready
    qtbot.waitUntil(lambda: not dialog._background.is_busy)
    assert not dialog.preview.pages


@pytest.mark.parametrize("size", [(960, 600), (860, 480)])
def test_everything_has_a_name_and_nothing_is_cut_off(dialog, qtbot, qapp, size):
    palette, sheet = qapp.palette(), qapp.styleSheet()
    theme = Theme(qapp, "dark")
    dialog.resize(*size)
    for number in range(len(KINDS)):
        dialog.what.setCurrentIndex(number)
        shown(dialog, qtbot)
        QApplication.sendPostedEvents(None, QEvent.Type.LayoutRequest)
        assert focusable_without_name(dialog) == []
        assert cut_off(dialog) == []
        boxes = [each for each in dialog.findChildren(QComboBox) if each.isVisible()]
        assert [each for each in boxes if each.width() < each.sizeHint().width()] == []
        assert [each for each in letters(dialog).items() if each[1] > 1] == []
    theme.remove_pictures()
    qapp.setPalette(palette)
    qapp.setStyleSheet(sheet)


def letters(dialog):
    """How often each letter is underlined."""
    kinds = (QAbstractButton, QCheckBox, QLabel)
    texts = {each: each.text() for kind in kinds for each in dialog.findChildren(kind)}
    return Counter(
        text[text.index("&") + 1].casefold()
        for widget, text in texts.items()
        if "&" in text and widget.isVisible()
    )
