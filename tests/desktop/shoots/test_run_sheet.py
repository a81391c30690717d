"""The run sheet of a shoot over the sample bar: seen, saved as a PDF, its text copied."""

from __future__ import annotations

import pytest
from pypdf import PdfReader
from PySide6.QtCore import QRectF, QSize, Qt
from PySide6.QtGui import QColor, QGuiApplication
from PySide6.QtWidgets import QApplication, QWidget

from barkeep.application.publishing import publish_text_of, run_sheet_of
from barkeep.desktop.printing.block_document import boxes_of, document_of, from_mm
from barkeep.desktop.printing.pages import Placed, PrintedPage, picture_of
from barkeep.desktop.publishing import output as publish_output
from barkeep.desktop.screens.background import Background
from barkeep.desktop.screens.window_state import WindowState
from barkeep.desktop.shoots.run_sheet import RunSheetDialog
from barkeep.desktop.widgets.notices import Toast
from barkeep.documents.printed.blocks import Tick
from barkeep.documents.printed.jobs import run_sheet_job
from barkeep.documents.printed.paper import shipped_sizes
from barkeep.documents.printed.templates import shipped_templates
from tests.desktop.audit import cut_off, focusable_without_name
from tests.desktop.pages import context_over
from tests.desktop.printing.test_printing import assert_all_there, bare, text_of
from tests.documents.printed.sizes import size_named
from tests.shoots_to_run import branch_line

pytestmark = [
    pytest.mark.usefixtures("qapp"),
    pytest.mark.qt_log_ignore("^This plugin does not support", extend=True),
]


CASES = [
    pytest.param(template, paper, id=f"{template.key}-{paper.key}")
    for template in shipped_templates("run_sheet")
    for paper in shipped_sizes()["paper"]
]


@pytest.fixture
def dialog(bar, tmp_path, qtbot):
    """The dialog, its pages laid out."""
    background = Background()
    parent = QWidget()
    state, toast = WindowState(tmp_path / "window.ini"), Toast(parent)
    context = context_over(bar, state, background, toast)
    shown = RunSheetDialog(context, branch_line(bar.snapshot))
    qtbot.addWidget(parent)
    qtbot.addWidget(shown)
    with qtbot.waitActive(shown):
        shown.show()
        shown.activateWindow()
    settle(shown, qtbot)
    yield shown
    background.finish()


def settle(dialog, qtbot):
    qtbot.waitUntil(lambda: dialog.ready and not dialog._background.is_busy)


def save_to(monkeypatch, file):
    asked = []

    def ask(_parent, title, offered, _filters):
        asked.append((title, offered))
        return str(file), ""

    monkeypatch.setattr(publish_output.QFileDialog, "getSaveFileName", ask)
    return asked


@pytest.mark.parametrize(("template", "paper"), CASES)
def test_every_word_is_on_paper_in_every_look_and_on_every_paper(bar, template, paper):
    sheet = run_sheet_of(branch_line(bar.snapshot), bar.snapshot)
    assert_all_there(run_sheet_job(sheet, template, paper))


@pytest.mark.parametrize("done", [False, True])
def test_a_box_is_drawn_beside_its_step(done):
    template = shipped_templates("run_sheet")[0]
    document = document_of((Tick("step", "Chill soda water.", done),), template, 3000.0)
    (box,) = boxes_of(document)
    assert box.done == done
    assert box.y >= 0.0 and box.y + box.side <= document.size().height()
    paper = size_named("paper", "a5")
    page = PrintedPage(paper, [Placed(document, document_area(document))])
    size = QSize(round(from_mm(paper.width_mm)), round(from_mm(paper.height_mm)))
    image = picture_of(page, size)
    middle = [
        QColor(image.pixel(x, y)).lightness()
        for x in range(round(box.side * 0.2), round(box.side * 0.85))
        for y in range(round(box.y + box.side * 0.25), round(box.y + box.side * 0.8))
    ]
    edge = QColor(image.pixel(1, round(box.y + box.side / 2.0))).lightness()
    assert edge < 128
    assert (min(middle) < 128) == done


def document_area(document):
    return QRectF(0.0, 0.0, 3000.0, document.size().height())


def test_the_preview_shows_the_sheet(dialog):
    assert dialog.windowTitle() == "Run sheet of Drinks of the branch line"
    titles = [title for page in dialog.preview.pages for title in page.titles]
    assert "1. Request Stop" in " ".join(titles) or "Running order" in titles
    assert all(each.isEnabled() for each in dialog.outputs)


def test_a_pdf_of_it_holds_real_text(dialog, monkeypatch, tmp_path, qtbot):
    asked = save_to(monkeypatch, tmp_path / "sheet.pdf")
    qtbot.keyClick(
        QApplication.focusWidget() or dialog, Qt.Key.Key_D, Qt.KeyboardModifier.AltModifier
    )
    qtbot.waitUntil(lambda: "Saved" in dialog.banner.text)
    assert asked == [("Save PDF", "Run sheet, Drinks of the branch line.pdf")]
    reader = PdfReader(tmp_path / "sheet.pdf")
    assert reader.metadata.title == "Run sheet, Drinks of the branch line"
    text = text_of((tmp_path / "sheet.pdf").read_bytes())
    assert bare("bourbon, in place of London dry gin") in text
    assert bare("Friday 27 November 2026, 15:00") in text


def test_the_publish_text_is_copied_both_ways(dialog, bar, qtbot):
    expected = publish_text_of(branch_line(bar.snapshot), bar.snapshot)
    qtbot.mouseClick(dialog.copy_button, Qt.MouseButton.LeftButton)
    assert QGuiApplication.clipboard().text() == expected.text
    qtbot.mouseClick(dialog.markdown_button, Qt.MouseButton.LeftButton)
    assert QGuiApplication.clipboard().text() == expected.markdown
    assert dialog.banner.text == "The publish text was copied as Markdown"


def test_another_look_is_laid_out_anew(dialog, qtbot):
    before = dialog.preview.pages[0].titles
    dialog.options.template.setCurrentIndex(1)
    qtbot.waitUntil(lambda: dialog.ready and dialog.preview.pages[0].titles != before)


@pytest.mark.parametrize("size", [(1024, 640), (1280, 800)])
def test_nothing_is_cut_off_and_all_is_named(dialog, size):
    dialog.resize(*size)
    QApplication.processEvents()
    assert cut_off(dialog) == []
    assert focusable_without_name(dialog) == []
    assert dialog.minimumSizeHint().width() <= 1024


def test_closing_it_ends_its_work(dialog, qtbot):
    dialog.options.template.setCurrentIndex(1)
    dialog.reject()
    qtbot.waitUntil(lambda: not dialog._background.is_busy)
    assert not dialog.ready
