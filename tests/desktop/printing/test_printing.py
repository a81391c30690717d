"""Pages and PDFs: real text, everything on the page, nothing cut off."""

from __future__ import annotations

import io
import re
import unicodedata
from dataclasses import replace
from itertools import count

import pytest
from pypdf import PdfReader
from PySide6.QtCore import QSize

from barkeep.application.publishing import cards_of
from barkeep.desktop.printing.block_document import PER_INCH, document_of, from_mm
from barkeep.desktop.printing.layout import LARGEST_SCALE, steps_of
from barkeep.desktop.printing.pages import PdfFile, picture_of
from barkeep.desktop.screens.background import Steps
from barkeep.documents.printed.blocks import Rows, job_text
from barkeep.documents.printed.jobs import (
    cards_job,
    descriptions_job,
    labels_job,
    menu_job,
    prep_job,
)
from barkeep.documents.printed.labels import LabelContent, PrepContent, PrepRow
from barkeep.documents.printed.menus import menu_content
from barkeep.documents.printed.paper import shipped_sizes
from barkeep.documents.printed.templates import shipped_templates
from tests.documents.printed.drinks_to_publish import (
    ACCENTED,
    ARABIC,
    HEBREW,
    LONG_NAME,
    UNBROKEN,
    cards,
)
from tests.documents.printed.sizes import size_named

pytestmark = [
    pytest.mark.usefixtures("qapp"),
    pytest.mark.qt_log_ignore("^This plugin does not support", extend=True),
]


SIZES = shipped_sizes()
CARD_CASES = [
    pytest.param(template, card, paper, id=f"{template.key}-{card.key}-{paper.key}")
    for template in shipped_templates("card")
    for card in SIZES["card"]
    for paper in SIZES["paper"]
]
LABEL_CASES = [
    pytest.param(template, label, paper, id=f"{template.key}-{label.key}-{paper.key}")
    for template in shipped_templates("label")
    for label in SIZES["label"]
    for paper in SIZES["paper"]
]
FLOW_CASES = [
    pytest.param(template, paper, id=f"{template.key}-{paper.key}")
    for kind in ("menu", "prep", "description")
    for template in shipped_templates(kind)
    for paper in SIZES["paper"]
]
LABELS = (
    LabelContent(
        LONG_NAME, "2026-11-21", "2026-12-21", "310 ml", "18 % vol", "Contains egg, milk and nuts"
    ),
    LabelContent(HEBREW),
    LabelContent(ARABIC, "2026-11-21"),
    LabelContent(UNBROKEN, "2026-11-21"),
)


def text_of(pdf: bytes, number: int | None = None) -> str:
    """The text of a PDF or of one page, without spaces, letters in their plain forms."""
    pages = PdfReader(io.BytesIO(pdf)).pages
    chosen = pages if number is None else [pages[number]]
    return bare("".join(page.extract_text() for page in chosen))


def bare(text: str) -> str:
    return "".join(unicodedata.normalize("NFKC", text).split())


def holds(text: str, name: str) -> bool:
    """Whether a name stands there; what runs from the right may be given in the order seen."""
    return bare(name) in text or bare(name)[::-1] in text


def words_of(job) -> list[str]:
    """Everything that is printed; boxes to be ticked are drawn."""
    return re.sub(r"^\[[ x]\] ", "", job_text(job.groups), flags=re.MULTILINE).split()


def pages_of(job):
    """Every page of a job."""
    return (page for page in steps_of(job) if page is not None)


def pdf_of(pages, sheet, title) -> bytes:
    """A PDF of these pages."""
    pdf = PdfFile(sheet, title)
    for page in pages:
        pdf.add(page)
    return pdf.finished()


def assert_all_there(job) -> bytes:
    """Every word is on paper, every document inside its place, every place on its sheet."""
    pages = list(pages_of(job))
    pdf = pdf_of(pages, job.sheet, job.title)
    text = text_of(pdf)
    missing = [word for word in words_of(job) if not holds(text, word)]
    assert missing == []
    for page in pages:
        width, height = from_mm(page.sheet.width_mm), from_mm(page.sheet.height_mm)
        for placed in page.placed:
            area = placed.area
            assert area.left() >= 0 and area.right() <= width + 1
            assert area.top() >= 0 and area.bottom() <= height + 1
            assert placed.document.size().width() <= area.width() + 1
            whole = placed.document.pageSize().height() <= 0
            if whole:
                assert placed.document.size().height() <= area.height() + 1
    return pdf


@pytest.mark.parametrize(("template", "card", "paper"), CARD_CASES)
def test_a_long_name_and_fourteen_lines_are_all_on_every_card(tree, template, card, paper):
    assert len(LONG_NAME) == 60
    assert len(cards(tree)[0].lines) == 14
    assert_all_there(cards_job(cards(tree), template, paper, card))


@pytest.mark.parametrize(("template", "label", "paper"), LABEL_CASES)
def test_every_label_holds_all_it_says(template, label, paper):
    assert_all_there(labels_job(LABELS, template, paper, label))


@pytest.mark.parametrize(("template", "paper"), FLOW_CASES)
def test_everything_that_flows_is_all_there(tree, template, paper):
    if template.kind == "menu":
        menu = menu_content("Platform One", cards(tree) * 4, cautions=("Do not drive.",))
        job = menu_job(menu, template, paper)
    elif template.kind == "prep":
        rows = tuple(
            PrepRow(label.name, "310 ml", label.made, label.use_by, "Good", "Stir it. " * 30)
            for label in LABELS * 6
        )
        job = prep_job(PrepContent("Prep list", rows, ("Work clean.",)), template, paper)
    else:
        job = descriptions_job(cards(tree), template, paper)
    assert_all_there(job)


@pytest.mark.parametrize("name", [LONG_NAME, HEBREW, ARABIC, ACCENTED, UNBROKEN])
def test_names_of_every_script_are_real_text(tree, name):
    card = next(card for card in cards(tree) if card.name == name)
    template, paper = shipped_templates("card")[0], size_named("paper", "a4")
    job = cards_job([card], template, paper, size_named("card", "a6"))
    assert holds(text_of(pdf_of(pages_of(job), paper, "x")), name)


def test_letters_are_not_run_together(tree):
    """A search for the name a reader knows must find it: no single letter for ff."""
    job = cards_job(
        [replace(cards(tree)[0], name="Buffer Stop Shuffle")],
        shipped_templates("card")[0],
        None,
        size_named("card", "a6"),
    )
    page = PdfReader(io.BytesIO(pdf_of(pages_of(job), job.sheet, "x"))).pages[0]
    assert "Buffer" in page.extract_text() and "Shuffle" in page.extract_text()


@pytest.mark.parametrize(
    ("paper", "card", "pages"),
    [("a4", "a6", 25), ("letter", "a6", 50), ("letter", "index-3x5", 25), (None, "a6", 100)],
)
def test_a_hundred_cards_fill_their_sheets(tree, paper, card, pages):
    one = cards(tree)[1]
    many = [replace(one, name=f"Drink {number}") for number in range(100)]
    sheet = None if paper is None else size_named("paper", paper)
    job = cards_job(many, shipped_templates("card")[0], sheet, size_named("card", card))
    pdf = pdf_of(pages_of(job), job.sheet, "x")
    assert len(PdfReader(io.BytesIO(pdf)).pages) == pages
    assert holds(text_of(pdf, pages - 1), "Drink 99")


def test_a_pdf_has_its_sheets_size_and_title(tree):
    card = size_named("card", "a5")
    job = cards_job(cards(tree), shipped_templates("card")[0], size_named("paper", "a4"), card)
    assert job.sheet.width_mm == 297  # two A5 stand beside each other
    reader = PdfReader(io.BytesIO(pdf_of(pages_of(job), job.sheet, "Six drinks")))
    box = reader.pages[0].mediabox
    assert (round(box.width), round(box.height)) == (842, 595)
    assert reader.metadata is not None and reader.metadata.title == "Six drinks"


def test_what_no_type_can_fit_goes_on_on_another_card(tree):
    steps = tuple(f"Step {number}: shake it well and taste it." for number in range(80))
    card = replace(cards(tree)[0], method=steps)
    template = shipped_templates("card")[0]
    job = cards_job([card], template, None, size_named("card", "index-3x5"))
    pages = list(pages_of(job))
    assert len(pages) > 1
    assert [page.notes[0].text for page in pages] == [
        f"{number} of {len(pages)}" for number in range(1, len(pages) + 1)
    ]
    text = text_of(assert_all_there(job))
    assert all(text.count(bare(f"Step {number}:")) == 1 for number in range(80))


def test_type_is_made_smaller_only_as_far_as_it_must(tree):
    template, size = shipped_templates("card")[0], size_named("card", "a6")
    short, long = (
        next(iter(pages_of(cards_job([card], template, None, size)))).placed[0].document
        for card in (
            replace(cards(tree)[0], name="Siding", method=()),
            replace(cards(tree)[0], method=("Shake it well. " * 40,)),
        )
    )
    largest, smaller = (each.begin().charFormat().font().pixelSize() for each in (short, long))
    name = template.style("name").size * PER_INCH / 72
    assert name < largest <= name * LARGEST_SCALE
    assert name * template.least_scale - 1 <= smaller < largest


def test_type_does_not_grow_until_a_word_is_broken(tree):
    template, size = shipped_templates("card")[0], size_named("card", "a6")
    card = next(each for each in cards(tree) if each.name == UNBROKEN)
    (page, *_) = pages_of(cards_job([card], template, None, size))
    block = page.placed[0].document.begin()
    name = template.style("name").size * PER_INCH / 72
    assert block.charFormat().font().pixelSize() <= name


def test_a_drink_is_not_cut_in_two_where_it_fits_on_a_page(tree):
    """Qt heeds no wish to keep a paragraph together."""
    template, paper = shipped_templates("menu")[0], size_named("paper", "a5")
    one = cards(tree)[0]
    drinks = [replace(one, name=f"Drink {number:02}") for number in range(30)]
    job = menu_job(menu_content("Platform One", drinks), template, paper)
    pdf = pdf_of(pages_of(job), paper, "x")
    pages = len(PdfReader(io.BytesIO(pdf)).pages)
    assert pages > 3
    for number in range(pages):
        text = text_of(pdf, number)
        assert text.count("Drink") == text.count("Containseggandmilk")


def test_columns_are_filled_one_after_another(tree):
    template = next(each for each in shipped_templates("menu") if each.columns == 2)
    paper = size_named("paper", "a4")
    job = menu_job(menu_content("Platform One", cards(tree) * 6), template, paper)
    first = next(iter(pages_of(job)))
    lefts = [placed.area.left() for placed in first.placed]
    assert lefts == sorted(lefts) and len(set(lefts)) == 2
    assert first.placed[0].area.width() > 2 * first.placed[1].area.width()


def test_amounts_are_never_broken(tree):
    template = shipped_templates("card")[0]
    rows = Rows("lines", (("1 ½ oz", "45 ml", "gin"), ("1 barspoon", "5 ml", "x" * 400)))
    document = document_of([rows], template, from_mm(62))
    assert document.size().width() <= from_mm(62) + 1
    table = document.rootFrame().childFrames()[0]
    for row in range(2):
        for column in range(2):
            block = table.cellAt(row, column).firstCursorPosition().block()
            assert block.layout().lineCount() == 1
    assert table.cellAt(1, 2).firstCursorPosition().block().layout().lineCount() > 1


def test_right_to_left_names_begin_on_the_right(tree):
    template = shipped_templates("card")[0]
    size = size_named("card", "a6")
    (page,) = pages_of(cards_job([cards(tree)[1]], template, None, size))
    picture = picture_of(page, QSize(420, 592))
    rows = [y for y in range(592) if dark(picture, 0, 420, y)]
    first = range(rows[0], rows[0] + 12)
    inked = [x for x in range(420) if any(dark(picture, x, x + 1, y) for y in first)]
    assert 420 - inked[-1] < inked[0], "more is left free at the left than at the right"


def dark(picture, left: int, right: int, y: int) -> bool:
    return any(picture.pixelColor(x, y).lightness() < 100 for x in range(left, right))


def test_paper_is_white_and_ink_dark_whatever_the_theme(tree, qapp):
    from barkeep.desktop.look.theme import Theme

    theme = Theme(qapp, "dark")
    try:
        job = cards_job(
            cards(tree)[:1], shipped_templates("card")[0], None, size_named("card", "a6")
        )
        picture = picture_of(next(iter(pages_of(job))), QSize(420, 592), 2.0)
    finally:
        theme.choose("light")
        theme.remove_pictures()
    assert (picture.width(), picture.height()) == (840, 1184)
    assert picture.pixelColor(2, 2).name() == "#ffffff"
    shades = {picture.pixelColor(x, y).lightness() for x in range(60, 400) for y in range(60, 120)}
    assert min(shades) < 40


def test_steps_leave_time_for_the_window_and_stop_when_told(qtbot):
    done, seen = [], []
    steps: Steps[int] = Steps()
    steps.start(count(), seen.append, lambda: done.append(True))
    assert steps.running and not seen
    qtbot.waitUntil(lambda: bool(seen))
    steps.start(iter((7,)), seen.append, lambda: done.append(False))
    qtbot.waitUntil(lambda: bool(done))
    assert done == [False]
    assert seen[-1] == 7 and not steps.running


def test_laying_out_pauses_between_cards(tree):
    job = cards_job(cards(tree), shipped_templates("card")[0], None, size_named("card", "a6"))
    assert sum(step is None for step in steps_of(job)) == len(cards(tree))


def test_a_card_is_full_and_its_drink_drawn(tree, bar):
    """Words and drawing take nearly the whole height of an A6 card, whatever the drink."""
    size = size_named("card", "a6")
    template = shipped_templates("card")[0]
    drinks = [each for each in bar.snapshot.all_specs if not each.classic][:12]
    for card in cards_of(drinks, bar.snapshot):
        (page, *more) = pages_of(cards_job([card], template, None, size))
        words = page.placed[0].document.size().height()
        room = page.placed[0].area.height()
        if page.drawn:
            (drawn,) = page.drawn
            assert words + drawn.area.height() == pytest.approx(room), card.name
            assert drawn.area.height() >= 0.28 * room
        else:
            assert more or words > 0.8 * room, card.name
    assert any(
        page.drawn
        for card in cards_of(drinks, bar.snapshot)
        for page in pages_of(cards_job([card], template, None, size))
    )


def test_nothing_that_is_read_while_pouring_is_below_eleven_points():
    for kind in ("card", "run_sheet"):
        (bench,) = (each for each in shipped_templates(kind) if "ench" in each.title)
        for name in ("lines", "service", "method"):
            least = bench.least_scale if kind == "card" else 1.0
            assert bench.style(name).size * least >= 11.0, (bench.key, name)
