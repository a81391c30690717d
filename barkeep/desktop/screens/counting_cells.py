"""How the big rows of the count are drawn, and where a click on a gauge lands."""

from __future__ import annotations

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QPointF, QRect, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFont, QPainter
from PySide6.QtWidgets import QStyle, QStyleOptionViewItem

from barkeep.desktop.metrics import HALF, PAD, UNIT, TypeSize, font_of
from barkeep.desktop.models.count_rows import BOTTLE, COUNTED, DIFFERENCE, LEVEL, CountRow
from barkeep.desktop.screens.counting_legend import draw_mark
from barkeep.desktop.tones import current_tones
from barkeep.desktop.widgets.delegates import RowDelegate, drawn_ground, is_selected, quiet_colour
from barkeep.desktop.widgets.level_drawing import draw_level
from barkeep.desktop.widgets.roles import SUBTITLE_ROLE, VALUE_ROLE

Index = QModelIndex | QPersistentModelIndex
BIG_ROW = 60
GAUGE = 20
BAR = 4


class BigRowDelegate(RowDelegate):
    """Draws into the upper part of a row; below it a sentence may stand."""

    def sizeHint(self, option: QStyleOptionViewItem, index: Index) -> QSize:
        return QSize(super().sizeHint(option, index).width(), BIG_ROW)

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        held = QStyleOptionViewItem(option)
        held.rect = upper_part(option.rect)
        held.state &= ~QStyle.StateFlag.State_HasFocus  # the bar shows it for the whole row
        row = index.data(VALUE_ROLE)
        if index.column() == LEVEL:
            self._paint_gauge(painter, held, index, row)
            return
        held.font = _font_of(index.column(), row)
        if index.data(SUBTITLE_ROLE):
            super().paint(painter, held, index)
        else:
            _paint_words(self, painter, held, index)
        if index.column() == BOTTLE and is_selected(option):
            bar = QRect(held.rect)
            bar.setWidth(BAR)
            painter.fillRect(bar, QColor(current_tones().accent))

    def _paint_gauge(
        self, painter: QPainter, option: QStyleOptionViewItem, index: Index, row: CountRow
    ) -> None:
        cell = drawn_ground(self, painter, option, index)
        tones, gauge = current_tones(), gauge_in(cell)
        draw_level(painter, gauge, row.reading, tones)
        if row.typed is not None:
            painter.save()
            tip = QPointF(gauge.left() + row.reading.share * gauge.width(), gauge.bottom() + 1)
            draw_mark(painter, tip, "up", "text", tones)
            painter.restore()


def upper_part(cell: QRect) -> QRect:
    """The part of a cell the row is drawn in, however much stands below it."""
    return QRect(cell.left(), cell.top(), cell.width(), min(cell.height(), BIG_ROW))


def gauge_in(cell: QRect) -> QRectF:
    """Where the gauge lies in its cell: wider than tall, room for marks above and below."""
    inside = QRectF(upper_part(cell)).adjusted(UNIT, 0, -PAD, 0)
    width = max(inside.width(), GAUGE + HALF)
    return QRectF(inside.left(), inside.center().y() - GAUGE / 2, width, GAUGE)


def _font_of(column: int, row: CountRow) -> QFont:
    """Names and counts large, what differs strong."""
    if column == DIFFERENCE:
        return font_of(TypeSize.STRONG if row.flagged else TypeSize.BODY)
    font = font_of(TypeSize.SUBTITLE)
    if column != BOTTLE and (column != COUNTED or row.typed is None):
        font.setWeight(QFont.Weight.Normal)
    return font


def _paint_words(
    delegate: RowDelegate, painter: QPainter, option: QStyleOptionViewItem, index: Index
) -> None:
    """One quiet line, in line with the cells that have two."""
    cell = drawn_ground(delegate, painter, option, index).adjusted(UNIT, 0, -UNIT, 0)
    painter.save()
    painter.setFont(option.font)
    painter.setPen(QColor(quiet_colour(option, current_tones())))
    words = str(index.data() or "")
    painter.drawText(cell, Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft, words)
    painter.restore()
