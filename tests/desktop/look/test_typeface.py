"""The typeface is barkeep's own, on the screen and on paper, whatever the machine has."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtGui import QFont, QFontInfo, QFontMetricsF, QRawFont
from PySide6.QtWidgets import QLabel

from barkeep import resource_files
from barkeep.desktop.look.metrics import TypeSize, font_of
from barkeep.desktop.look.typeface import FAMILY, FOLDER, family, has_letters_of, set_in_it
from barkeep.desktop.printing.block_document import plain_font

SHOWN = "½⅓⅔¼¾⅛⅜⅝⅞⁄×→←↑↓✓·•–—…“”‘’±≈≤≥−€£₹°µÅéñßœŁőŐžğİΩαжЖ"
"""What barkeep's own words and the names of a bar are written with, beside plain letters."""


def test_all_type_is_set_in_it_with_its_own_weights(theme, qapp, qtbot):
    label = QLabel("Request Stop")
    qtbot.addWidget(label)
    assert QFontInfo(label.font()).family() == FAMILY == family()
    assert all(QFontInfo(font_of(size)).family() == FAMILY for size in TypeSize)
    strong, slanted = font_of(TypeSize.STRONG), QFont(qapp.font())
    slanted.setItalic(True)
    assert (QFontInfo(strong).styleName(), QFontInfo(slanted).styleName()) == ("Bold", "Italic")
    assert QFontInfo(plain_font("sans")).family() == FAMILY


def test_figures_stand_below_each_other_and_what_is_shown_has_its_letters(theme, qapp):
    for style in (TypeSize.BODY, TypeSize.STRONG):
        wide = QFontMetricsF(font_of(style)).horizontalAdvance
        assert len({wide(each * 20) for each in "0123456789"}) == 1
        letters = QRawFont.fromFont(font_of(style))
        assert [each for each in SHOWN if not letters.supportsCharacter(ord(each))] == []


def test_a_letter_it_lacks_comes_from_the_system(qapp):
    before = qapp.font()
    font = set_in_it(before)
    assert font.families() == [FAMILY, *before.families()]
    assert set_in_it(font).families() == font.families()  # the face stands there once
    assert QFontMetricsF(font).horizontalAdvance("שלום") > 0.0
    assert has_letters_of("1 ½ oz Žluťoučký Kůň ⇄") and not has_letters_of("ערב 2 oz")


def test_what_it_is_of_and_its_licence_come_along():
    said = resource_files.read_text("licences", "Inter.txt")
    assert all(each in said for each in (FAMILY, "Inter 4.1", "SIL OPEN FONT LICENSE Version 1.1"))
    files = Path(str(resource_files.root()), FOLDER).iterdir()
    assert sum(each.stat().st_size for each in files) < 500_000
