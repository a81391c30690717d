"""The list of names that drops down below a field: how it is drawn, and which row is meant.

A name stands with what it is a kind of in small letters, and with a bottle before it where
it is in the bar. The row Enter would take is framed; once the arrow keys have come to a row,
it is filled.
"""

from __future__ import annotations

from PySide6.QtCore import QItemSelectionModel, QModelIndex, QRect, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFontMetrics, QPainter, QPen, QShowEvent
from PySide6.QtWidgets import (
    QListView,
    QStyle,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QWidget,
)

from barkeep.desktop.look.icons import pixmap
from barkeep.desktop.look.metrics import HALF, RADIUS, UNIT, TypeSize, font_of
from barkeep.desktop.look.sides import on_its_side, write
from barkeep.desktop.look.tones import current_tones
from barkeep.desktop.widgets.delegates import Index
from barkeep.translation import tr, tr_noop

BESIDE = Qt.ItemDataRole.UserRole + 2
"""What the name is a kind of, in words for the small letters."""
THERE = Qt.ItemDataRole.UserRole + 3
"""Whether it is in the bar."""
SURE = Qt.ItemDataRole.UserRole + 4
"""Whether it holds what was typed as it is spelt, and is no guess."""
IN_THE_BAR, PERHAPS = tr_noop("in the bar"), tr_noop("perhaps")
LEAST_PICTURE = 16
LETTERS_WIDE, WIDEST = 64, 600
"""The list is as wide as so many letters, or as its field: it must not jump while one types."""
LIST_STYLE = """
QListView { background: palette(base); color: palette(text); border: 1px solid palette(dark);
  padding: 2px; outline: none; }
"""


class OfferList(QListView):
    """A list that keeps its own mind about which row is chosen.

    Qt writes every row that is *selected* into the field at once, and so forgets what was
    typed. Rows are therefore walked over here without selecting them.
    """

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.offers_first = False
        """Whether Enter takes the first row though nobody has come to it."""
        self.walked = False
        """Whether the arrow keys have come to a row."""
        self.setStyleSheet(LIST_STYLE)
        self.setMouseTracking(True)
        self.setUniformItemSizes(True)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)

    @property
    def chosen(self) -> QModelIndex:
        """The row that Enter takes; none where only a guess is offered and none was come to."""
        current = self.currentIndex()
        if self.walked:
            return current
        return self.model().index(0, 0) if self.offers_first else QModelIndex()

    def begin(self, *, offers_first: bool) -> None:
        """Other names are offered: nobody has come to any of them yet."""
        self.walked, self.offers_first = False, offers_first
        self.setMinimumWidth(min(WIDEST, LETTERS_WIDE * self.fontMetrics().averageCharWidth()))

    def walk(self, by: int) -> None:
        """Go so many rows down; the first step comes to the first row, or up to the last."""
        last = self.model().rowCount() - 1
        row = self.currentIndex().row() + by if self.walked else (0 if by > 0 else last)
        index = self.model().index(max(0, min(last, row)), 0)
        self.walked = True
        self.selectionModel().setCurrentIndex(index, QItemSelectionModel.SelectionFlag.NoUpdate)
        self.scrollTo(index)
        self.viewport().update()

    @property
    def rows_seen(self) -> int:
        """How many rows one page of the list holds."""
        return max(1, self.viewport().height() // max(1, self.sizeHintForRow(0)) - 1)

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        beyond = self.geometry().right() - self.screen().availableGeometry().right()
        if beyond > 0:
            self.move(max(self.screen().availableGeometry().left(), self.x() - beyond), self.y())


class OfferDelegate(QStyledItemDelegate):
    """Draws a name, what it is a kind of, and whether it is in the bar."""

    def sizeHint(self, option: QStyleOptionViewItem, _index: Index) -> QSize:
        return QSize(0, max(LEAST_PICTURE, option.fontMetrics.height()) + 2 * HALF + 2)

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        tones = current_tones()
        filled = _is_filled(option, index)
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        _draw_ground(painter, option, index, filled=filled)
        cell = option.rect.adjusted(UNIT, 0, -UNIT, 0)
        quiet = tones.on_highlight if filled else tones.muted
        edge = max(LEAST_PICTURE, option.fontMetrics.ascent())
        if index.data(THERE):
            _draw_picture(painter, cell, edge, quiet)
        painter.setPen(QColor(tones.on_highlight if filled else tones.text))
        painter.setFont(option.font)
        words = on_its_side(painter, cell.adjusted(edge + UNIT, 0, 0, 0), cell)
        _draw_words(painter, words, index, quiet)
        painter.restore()


def _is_filled(option: QStyleOptionViewItem, index: Index) -> bool:
    """Whether the arrow keys or the pointer have come to this row."""
    if option.state & QStyle.StateFlag.State_Selected:
        return True
    view = option.widget
    return isinstance(view, OfferList) and view.walked and view.currentIndex().row() == index.row()


def _draw_ground(
    painter: QPainter, option: QStyleOptionViewItem, index: Index, *, filled: bool
) -> None:
    tones, view = current_tones(), option.widget
    place = QRectF(option.rect).adjusted(0.5, 0.5, -0.5, -0.5)
    framed = isinstance(view, OfferList) and view.chosen.row() == index.row()
    hovered = bool(option.state & QStyle.StateFlag.State_MouseOver)
    if not (filled or framed or hovered):
        return
    painter.setPen(QPen(QColor(tones.accent), 1.0) if framed else Qt.PenStyle.NoPen)
    painter.setBrush(QColor(tones.highlight if filled else tones.raised))
    painter.drawRoundedRect(place, RADIUS, RADIUS)


def _draw_picture(painter: QPainter, cell: QRect, edge: int, colour: str) -> None:
    ratio = painter.device().devicePixelRatio()
    image = pixmap("bottles", colour, edge, ratio, paper=current_tones().base)
    place = QRect(cell.left(), cell.center().y() - edge // 2 + 1, edge, edge)
    painter.drawPixmap(on_its_side(painter, place, cell), image)


def _draw_words(painter: QPainter, cell: QRect, index: Index, quiet: str) -> None:
    """The name from the left, and from the right in small letters what goes beside it."""
    middle, end = Qt.AlignmentFlag.AlignVCenter, Qt.TextElideMode.ElideRight
    metrics = painter.fontMetrics()
    name = metrics.elidedText(str(index.data() or ""), end, cell.width())
    write(painter, cell, middle | Qt.AlignmentFlag.AlignLeft, name)
    room = cell.width() - metrics.horizontalAdvance(name) - 2 * UNIT
    small = font_of(TypeSize.CAPTION)
    beside = QFontMetrics(small).elidedText(_beside(index), end, max(0, room))
    if len(beside) > 1:  # an ellipsis alone says nothing
        painter.setFont(small)
        painter.setPen(QColor(quiet))
        write(painter, cell, middle | Qt.AlignmentFlag.AlignRight, beside)


def _beside(index: Index) -> str:
    return beside(index.data(BESIDE), sure=index.data(SURE), there=index.data(THERE))


def beside(family: str, *, sure: bool, there: bool, joiner: str = " · ") -> str:
    """What goes beside a name: that it is a guess, what it is a kind of, that it is there."""
    said = ("" if sure else tr(PERHAPS), family, tr(IN_THE_BAR) if there else "")
    return joiner.join(filter(None, said))
