"""A bottle's level over time in its details: what it says under the mouse and by keys."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QDate, QLocale, QPointF
from PySide6.QtGui import QColor
from PySide6.QtTest import QTest

from barkeep.desktop.bottles.level_history import LevelHistory
from barkeep.desktop.look.tones import blend, current_tones
from barkeep.domain.bottles.levels import MeasuredLevel
from tests.desktop.pages import settle

pytestmark = [
    pytest.mark.qt_log_ignore("^This plugin does not support", extend=True),
    pytest.mark.left_at("bottles"),
]


def test_every_entry_is_said_where_it_is_drawn(window, qtbot):
    """By the mouse, by the arrow keys and as one sentence; the days as the locale writes them."""
    QTest.keySequence(window, "Ctrl+2")
    settle(window, qtbot)
    screen, bar = window.current, window.bar
    gin = screen.current.bottle
    bar.counting.count({gin.id: MeasuredLevel(200.0, "volume", 5.0)})
    settle(window, qtbot)
    line = screen.detail.findChild(LevelHistory)
    last = len(line.steps) - 1
    assert line.steps[last].after == 200.0
    words = line.words_of(last)
    assert "Counted 200 ml ± 10 ml, 115 ml less than expected" in words
    assert line.says_at(line._place(line._area(), line.steps[last].at, 200.0)) == words
    assert line.says_at(QPointF(0.0, 0.0)) == line.accessibleDescription()
    said = line.accessibleDescription()
    assert said.startswith("From 700 ml on ") and "to 200 ml ± 10 today" in said
    day = line.steps[0].at
    shown = QLocale().toString(QDate(day.year, day.month, day.day), "d MMM")
    assert line.words_of(0).startswith(f"{shown}: Received 700 ml, 700 ml ± ")
    line.setFocus()
    QTest.keySequence(line, "End")
    assert line.accessibleDescription() == words
    QTest.keySequence(line, "Home")
    assert line.accessibleDescription() == line.words_of(0)
    svg = line.as_svg().decode()
    assert shown in svg and "today" in svg


def test_the_band_is_as_high_as_the_doubt(window, qtbot):
    """Read off the painted pixels: beside the last count the band spans two sigmas either way."""
    QTest.keySequence(window, "Ctrl+2")
    settle(window, qtbot)
    bottle = window.current.current.bottle
    line = window.current.detail.findChild(LevelHistory)
    area, step = line._area(), line.steps[-1]
    x = round((line._x(area, step.at) + area.right()) / 2.0)
    image = line.grab().toImage()
    ratio = image.height() / line.height()
    tones = current_tones()
    ground = QColor(tones.base)
    band = blend(tones.liquid, tones.base, 0.45)
    rows = [
        y
        for y in range(image.height())
        if _near(image.pixelColor(round(x * ratio), y), band, ground)
    ]
    spans = 4.0 * step.after_sigma / bottle.product.size * area.height() * ratio
    assert max(rows) - min(rows) == pytest.approx(spans, abs=4.0 * ratio)


def _near(colour: QColor, one: QColor, other: QColor) -> bool:
    def apart(a: QColor, b: QColor) -> int:
        return abs(a.red() - b.red()) + abs(a.green() - b.green()) + abs(a.blue() - b.blue())

    return apart(colour, one) < 24 and apart(colour, one) < apart(colour, other)
