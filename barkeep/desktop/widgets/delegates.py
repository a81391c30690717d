"""How list cells are drawn: two-line words, levels and verdicts."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QRect, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFont, QFontMetrics, QHelpEvent, QPainter, QPalette
from PySide6.QtWidgets import (
    QAbstractItemView,
    QApplication,
    QListView,
    QStyle,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QTableView,
    QToolTip,
    QWidget,
)

from barkeep.desktop.look.icons import pixmap
from barkeep.desktop.look.metrics import HALF, ICON, PAD, ROW, UNIT, TypeSize, font_of, scaled
from barkeep.desktop.look.sides import on_its_side, write
from barkeep.desktop.look.tones import Tones, current_tones
from barkeep.desktop.widgets.levels import LevelReading, draw_level
from barkeep.desktop.widgets.tips import plain_tip
from barkeep.desktop.widgets.verdict_badge import draw_verdict, verdict_width

LEVEL_ROLE = Qt.ItemDataRole.UserRole.value + 1
"""A `LevelReading`; `DisplayRole` says the same in words."""
VERDICT_ROLE = Qt.ItemDataRole.UserRole.value + 2
"""A verdict: *ready*, *stand_in*, *one_short* or *short*."""
SUBTITLE_ROLE = Qt.ItemDataRole.UserRole.value + 3
"""A second, quieter line under the words."""
VALUE_ROLE = Qt.ItemDataRole.UserRole.value + 4
"""The domain value the row stands for."""
ICONS_ROLE = Qt.ItemDataRole.UserRole.value + 6
"""A tuple of picture names drawn after the words: *house-made*, *allergen* …"""

CELL_ROLE = Qt.ItemDataRole.UserRole.value + 7
"""A `Cell`; models without it are asked for each part by its own role."""


@dataclass(frozen=True, slots=True)
class Cell:
    """What is drawn in a cell, in one answer: a list that is painted asks for a hundred.

    `side` is where its words begin.
    """

    text: str
    below: str
    marks: tuple[str, ...]
    side: Qt.AlignmentFlag


Index = QModelIndex | QPersistentModelIndex
"""What Qt hands to models and delegates."""

GAUGE_WIDTH, GAUGE_HEIGHT = 92, 14
MARK = 16
"""The edge of a picture after words, in pixels of plain type as the two before."""
_FEATURES = QStyleOptionViewItem.ViewItemFeature
DRAWN_BY_QT = (_FEATURES.HasCheckIndicator | _FEATURES.HasDecoration).value
WRAPPED = _FEATURES.WrapText.value
SELECTED, ENABLED = QStyle.StateFlag.State_Selected.value, QStyle.StateFlag.State_Enabled.value
MARKED = SELECTED | QStyle.StateFlag.State_MouseOver.value
"""Of a cell that has a ground of its own; as numbers, since each cell asks for several."""


class WordsInFull(QStyledItemDelegate):
    """Says all of a cell's words to a pointer that rests on it, where there is no room for them."""

    def helpEvent(
        self,
        event: QHelpEvent,
        view: QAbstractItemView,
        option: QStyleOptionViewItem,
        index: Index,
    ) -> bool:
        if index.data(Qt.ItemDataRole.ToolTipRole) or not self._is_cut(option, index):
            return super().helpEvent(event, view, option, index)
        words = filter(None, (index.data(), index.data(SUBTITLE_ROLE)))
        QToolTip.showText(event.globalPos(), plain_tip("\n".join(map(str, words))), view)
        return True

    def _is_cut(self, option: QStyleOptionViewItem, index: Index) -> bool:
        quiet = QFontMetrics(_small()).horizontalAdvance(index.data(SUBTITLE_ROLE) or "")
        needed = max(self.sizeHint(option, index).width(), quiet + 2 * UNIT)
        return needed > option.rect.width()


class RowDelegate(WordsInFull):
    """Draws words, with `SUBTITLE_ROLE` below them and `ICONS_ROLE` after them."""

    least_height = ROW

    def sizeHint(self, option: QStyleOptionViewItem, index: Index) -> QSize:
        hint = super().sizeHint(option, index)
        if index.data(Qt.ItemDataRole.SizeHintRole) is not None:  # it says its own size
            return hint
        lines = option.fontMetrics.height()
        if index.data(SUBTITLE_ROLE):
            lines += QFontMetrics(_small()).height() + 2
        marks = index.data(ICONS_ROLE) or ()
        wide = hint.width() + PAD + len(marks) * scaled(ICON)
        return QSize(wide, max(self.least_height, lines + UNIT + HALF))

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        styled = QStyleOptionViewItem(option)
        cell = index.data(CELL_ROLE)
        if cell is None:
            self.initStyleOption(styled, index)
            if styled.features.value & DRAWN_BY_QT:
                unlit = QStyleOptionViewItem(option)
                unlit.state &= ~QStyle.StateFlag.State_HasFocus
                super().paint(painter, unlit, index)
                _mark_current_row(painter, styled, index)
                return
            cell = _cell_of(styled, index)
        place = _ground(painter, styled, index).adjusted(UNIT, 0, -UNIT, 0)
        painter.save()
        if cell.marks:
            words = place.adjusted(0, 0, -len(cell.marks) * scaled(ICON), 0)
            _draw_words(painter, on_its_side(painter, words, place), styled, cell)
            _draw_marks(painter, place, words.right(), styled, marks=cell.marks)
        else:
            _draw_words(painter, place, styled, cell)
        painter.restore()


def _cell_of(styled: QStyleOptionViewItem, index: Index) -> Cell:
    """A cell of a model that is asked for each part."""
    below, marks = index.data(SUBTITLE_ROLE), index.data(ICONS_ROLE)
    side = styled.displayAlignment & Qt.AlignmentFlag.AlignHorizontal_Mask
    return Cell(styled.text, below or "", tuple(marks or ()), side)


def _draw_marks(
    painter: QPainter,
    place: QRect,
    after: int,
    styled: QStyleOptionViewItem,
    *,
    marks: tuple[str, ...],
) -> None:
    """Pictures in a row after the words, which end there as from the left."""
    step, edge = scaled(ICON), scaled(MARK)
    tones, ratio = current_tones(), painter.device().devicePixelRatio()
    colour = text_colour(styled, tones)
    for number, name in enumerate(marks):
        left, top = after + number * step + HALF, place.center().y() - edge // 2
        image = pixmap(name, colour=colour, size=edge, ratio=ratio, paper=tones.base)
        painter.drawPixmap(on_its_side(painter, QRect(left, top, edge, edge), place), image)


def _draw_words(painter: QPainter, place: QRect, styled: QStyleOptionViewItem, cell: Cell) -> None:
    """Words, and a quieter line below them where there is one."""
    tones, metrics = current_tones(), QFontMetrics(styled.font)
    painter.setFont(styled.font)
    painter.setPen(QColor(text_colour(styled, tones)))
    if styled.features.value & WRAPPED and not cell.below:
        flags = cell.side | Qt.AlignmentFlag.AlignVCenter
        painter.drawText(place, int(flags) | Qt.TextFlag.TextWordWrap, cell.text)
        return
    small = _small() if cell.below else styled.font
    small_metrics = QFontMetrics(small) if cell.below else metrics
    height = metrics.height() + (small_metrics.height() + 2 if cell.below else 0)
    line = QRect(place.left(), 0, place.width(), metrics.height())
    line.moveTop(place.top() + (place.height() - height) // 2)
    end = Qt.TextElideMode.ElideRight
    write(painter, line, cell.side, metrics.elidedText(cell.text, end, place.width()))
    if cell.below:
        painter.setFont(small)
        painter.setPen(QColor(quiet_colour(styled, tones)))
        line.translate(0, metrics.height() + 2)
        line.setHeight(small_metrics.height())
        write(painter, line, cell.side, small_metrics.elidedText(cell.below, end, place.width()))


class LowRowDelegate(RowDelegate):
    """The same in rows of one line, as `look_like_a_list` makes them low."""

    least_height = 0


class LevelDelegate(WordsInFull):
    """Draws `LEVEL_ROLE` as a gauge with the words after it."""

    def sizeHint(self, option: QStyleOptionViewItem, index: Index) -> QSize:
        hint = super().sizeHint(option, index)
        return QSize(hint.width() + scaled(GAUGE_WIDTH) + PAD, max(ROW, hint.height()))

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        reading = index.data(LEVEL_ROLE)
        if not isinstance(reading, LevelReading):
            super().paint(painter, option, index)
            return
        cell = drawn_ground(painter, option, index).adjusted(UNIT, 0, -UNIT, 0)
        tones = current_tones()
        width, height = min(scaled(GAUGE_WIDTH), cell.width()), scaled(GAUGE_HEIGHT)
        gauge = QRectF(cell.left(), cell.top() + (cell.height() - height) / 2, width, height)
        draw_level(painter, on_its_side(painter, gauge, QRectF(cell)), reading, tones)
        words = str(index.data(Qt.ItemDataRole.DisplayRole) or "")
        place = on_its_side(painter, cell.adjusted(width + UNIT, 0, 0, 0), cell)
        painter.save()
        painter.setPen(QColor(text_colour(option, tones)))
        metrics = option.fontMetrics
        shown = metrics.elidedText(words, Qt.TextElideMode.ElideRight, place.width())
        write(painter, place, Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft, shown)
        painter.restore()


class VerdictDelegate(WordsInFull):
    """Draws `VERDICT_ROLE` as its shape and word."""

    def sizeHint(self, option: QStyleOptionViewItem, index: Index) -> QSize:
        verdict = index.data(VERDICT_ROLE)
        hint = super().sizeHint(option, index)
        if not verdict:
            return hint
        font = option.font
        return QSize(verdict_width(verdict, font) + PAD, max(ROW, hint.height()))

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        verdict = index.data(VERDICT_ROLE)
        if not verdict:
            super().paint(painter, option, index)
            return
        cell = drawn_ground(painter, option, index).adjusted(UNIT, 0, -UNIT, 0)
        tones = current_tones()
        selected = is_selected(option)
        font = option.font
        draw_verdict(painter, cell=cell, verdict=verdict, font=font, tones=tones, selected=selected)


def drawn_ground(painter: QPainter, option: QStyleOptionViewItem, index: Index) -> QRect:
    """Paint a cell's ground and focus the style's way, without words; the cell's rectangle."""
    return _ground(painter, QStyleOptionViewItem(option), index)


def _ground(painter: QPainter, bare: QStyleOptionViewItem, index: Index) -> QRect:
    """As `drawn_ground`, with what the style is to be told, which loses its words."""
    if bare.state.value & MARKED or bare.backgroundBrush.style() != Qt.BrushStyle.NoBrush:
        bare.text = ""
        bare.state &= ~QStyle.StateFlag.State_HasFocus
        bare.features &= ~QStyleOptionViewItem.ViewItemFeature.HasDecoration
        style = bare.widget.style() if bare.widget else QApplication.style()
        style.drawControl(QStyle.ControlElement.CE_ItemViewItem, bare, painter, bare.widget)
    _mark_current_row(painter, bare, index)
    return QRect(bare.rect)


def _mark_current_row(painter: QPainter, cell: QStyleOptionViewItem, index: Index) -> None:
    """The keyboard's row is marked where it starts, not one cell of it."""
    if _begins_current_row(cell.widget, index):
        mark = QRect(cell.rect.topLeft(), QSize(3, cell.rect.height()))
        painter.fillRect(on_its_side(painter, mark, cell.rect), QColor(current_tones().accent))


def _begins_current_row(view: QWidget | None, index: Index) -> bool:
    """Whether the keyboard's row starts here, in a table or a list."""
    if isinstance(view, QListView):
        return view.hasFocus() and view.currentIndex() == index
    if not isinstance(view, QTableView) or not view.hasFocus():
        return False
    first = view.horizontalHeader().logicalIndex(0)
    return index.column() == first and view.currentIndex().row() == index.row()


def is_selected(option: QStyleOptionViewItem) -> bool:
    """Whether the row is selected."""
    return bool(option.state.value & SELECTED)


def text_colour(option: QStyleOptionViewItem, tones: Tones) -> str:
    """The colour of words in this row."""
    if not option.state.value & ENABLED:
        return tones.disabled
    if is_selected(option):
        return tones.on_highlight
    palette: QPalette = option.palette
    return palette.color(QPalette.ColorRole.Text).name()


def quiet_colour(option: QStyleOptionViewItem, tones: Tones) -> str:
    """The colour of second lines in this row."""
    return tones.on_highlight if is_selected(option) else tones.muted


def row_height(font: QFont) -> int:
    """How high a row must be for two lines, in device-independent pixels."""
    lines = QFontMetrics(font).height() + 2 + QFontMetrics(font_of(TypeSize.CAPTION, font)).height()
    return max(ROW, lines + UNIT)


def _small() -> QFont:
    return font_of(TypeSize.CAPTION)
