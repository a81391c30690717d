"""The list of the count: one key a bottle, a click on a gauge, or an exact amount in the row."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QModelIndex, QPointF, QRect, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QFont, QKeyEvent, QMouseEvent, QPainter, QPalette, QResizeEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QHeaderView,
    QLabel,
    QLineEdit,
    QStyle,
    QStyleOptionViewItem,
    QTableView,
    QWidget,
)

from barkeep.desktop.counting.keys import meaning_of
from barkeep.desktop.counting.rows import BOTTLE, COUNTED, DIFFERENCE, EXPECTED, LEVEL, reading_of
from barkeep.desktop.look.metrics import HALF, PAD, UNIT, TypeSize, font_of, scaled, set_style
from barkeep.desktop.look.sides import on_its_side, turn_about, write
from barkeep.desktop.look.tones import current_tones
from barkeep.desktop.screens.list_stack import prepare_view, set_widths
from barkeep.desktop.widgets.delegates import (
    SUBTITLE_ROLE,
    VALUE_ROLE,
    Index,
    RowDelegate,
    drawn_ground,
    is_selected,
    quiet_colour,
)
from barkeep.desktop.widgets.keys import HELD, typed_key
from barkeep.desktop.widgets.labels import ElidedLabel, in_danger, text_label
from barkeep.desktop.widgets.levels import draw_level, draw_pointer, share_at
from barkeep.desktop.widgets.notices import announce
from barkeep.domain.bottles.counting import CountRow
from barkeep.translation import tr

BIG_ROW = 60
GAUGE = 20
BAR = 4


class BigRowDelegate(RowDelegate):
    """Draws into the upper part of a row; below it a sentence may stand."""

    def sizeHint(self, option: QStyleOptionViewItem, index: Index) -> QSize:
        return QSize(super().sizeHint(option, index).width(), scaled(BIG_ROW))

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
            _paint_words(painter, held, index)
        if index.column() == BOTTLE and is_selected(option):
            bar = QRect(held.rect)
            bar.setWidth(BAR)
            painter.fillRect(on_its_side(painter, bar, held.rect), QColor(current_tones().accent))

    def _paint_gauge(
        self, painter: QPainter, option: QStyleOptionViewItem, index: Index, row: CountRow
    ) -> None:
        cell = drawn_ground(painter, option, index)
        tones, gauge, reading = current_tones(), gauge_in(cell), reading_of(row)
        draw_level(painter, gauge, reading, tones)
        if row.typed is not None:
            painter.save()
            turn_about(painter, gauge)
            tip = QPointF(gauge.left() + reading.share * gauge.width(), gauge.bottom() + 1)
            draw_pointer(painter, tip, "up", tones.text)
            painter.restore()


def upper_part(cell: QRect) -> QRect:
    """The part of a cell the row is drawn in, however much stands below it."""
    return QRect(cell.left(), cell.top(), cell.width(), min(cell.height(), scaled(BIG_ROW)))


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


def _paint_words(painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
    """One quiet line, in line with the cells that have two."""
    cell = drawn_ground(painter, option, index).adjusted(UNIT, 0, -UNIT, 0)
    painter.save()
    painter.setFont(option.font)
    painter.setPen(QColor(quiet_colour(option, current_tones())))
    words = str(index.data() or "")
    write(painter, cell, Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft, words)
    painter.restore()


AHEAD = 2
"""So many bottles after the present one stay in view."""
WIDTHS = {EXPECTED: 84, COUNTED: 132, DIFFERENCE: 230}
MORE_TO_TYPE = 32
"""So much wider than its column is the field for an exact amount."""
NAMES = 0.58
"""What the names take of the width that the words leave; the gauges have the rest."""


_MOVING = frozenset(
    (
        Qt.Key.Key_Up,
        Qt.Key.Key_Down,
        Qt.Key.Key_PageUp,
        Qt.Key.Key_PageDown,
    )
)


class ExactEntry(QLineEdit):
    """Where an amount is typed in its row; Enter and Esc are its own."""

    accepted = Signal(str)
    cancelled = Signal()

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self.setAccessibleName(tr("Exact amount"))
        self.setPlaceholderText(tr("812 g, 11.5 cm, 315 ml"))
        self.hide()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        held = event.modifiers() & HELD
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and not held:
            self.accepted.emit(self.text())
        elif event.key() == Qt.Key.Key_Escape:
            self.cancelled.emit()
        elif event.key() not in (Qt.Key.Key_Up, Qt.Key.Key_Down):
            super().keyPressEvent(event)


class OnSelection(ElidedLabel):
    """Words over a selected row: its ground hides what the row says there."""

    def __init__(self, text: str, parent: QWidget) -> None:
        super().__init__(text, parent)
        self.setAutoFillBackground(True)
        self.setBackgroundRole(QPalette.ColorRole.Highlight)
        self.setForegroundRole(QPalette.ColorRole.HighlightedText)
        self.setContentsMargins(UNIT, 0, UNIT, 0)
        self.setAlignment(Qt.AlignmentFlag.AlignVCenter)


class CountingView(QTableView):
    """Says what was typed; what it means is the page's affair."""

    meant = Signal(object)
    """What the key that was pressed means."""
    exact_given = Signal(str)
    exact_edited = Signal(str)
    other_typed = Signal(str)
    """A letter or a mark that is no key of the count."""
    picked = Signal(int, float)
    """Row, and the share of the size that was clicked."""

    def __init__(self, settle: Callable[[], bool], parent: QWidget | None = None) -> None:
        """`settle` takes over what is being typed, and says whether nothing is left of it."""
        super().__init__(parent)
        self.settle = settle
        prepare_view(self, tr("Bottles to count"), own_keys=True)
        self.setSortingEnabled(False)
        self.setItemDelegate(BigRowDelegate(self))
        self.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerItem)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.verticalHeader().setDefaultSectionSize(scaled(BIG_ROW))
        self.entry = ExactEntry(self.viewport())
        self.problem: QLabel = text_label("", wrap=True)
        self.problem.setParent(self.viewport())
        self.problem.setForegroundRole(QPalette.ColorRole.BrightText)
        self.problem.hide()
        self.reading = OnSelection("", self.viewport())
        self.reading.hide()
        self.entry.accepted.connect(self.exact_given)
        self.entry.cancelled.connect(self.close_entry)
        self.entry.textEdited.connect(self._on_edited)
        self.verticalScrollBar().valueChanged.connect(lambda _value: self._place_entry())

    def prepare_columns(self) -> None:
        """Bottle and gauge share what the words leave; called once the model is there."""
        header = self.horizontalHeader()
        header.setStretchLastSection(False)
        header.setSectionsClickable(False)
        header.setSectionResizeMode(QHeaderView.ResizeMode.Fixed)
        set_widths(self, WIDTHS)
        self._share_width()

    # Moving

    @property
    def row(self) -> int:
        """The present row, -1 where there is none."""
        return self.currentIndex().row()

    def go_to(self, row: int) -> None:
        """Make another row the present one, with the next few in view."""
        many = self.model().rowCount()
        held = max(0, min(row, many - 1))
        if not many:
            return
        self.close_entry()
        for ahead in (min(held + AHEAD, many - 1), held):
            self.scrollTo(self.model().index(ahead, BOTTLE))
        self.setCurrentIndex(self.model().index(held, BOTTLE))

    # The exact amount

    @property
    def is_entering(self) -> bool:
        """Whether an exact amount is being typed."""
        return not self.entry.isHidden()

    def open_entry(self, text: str = "", *, select: bool = True) -> None:
        """Type an exact amount for the present row."""
        if self.row < 0:
            return
        self.entry.setText(text)
        self.entry.show()
        self.reading.show()
        self.show_reading("")
        self._place_entry()
        self.entry.setFocus(Qt.FocusReason.OtherFocusReason)
        if select:
            self.entry.selectAll()

    def close_entry(self) -> None:
        """Type no exact amount after all."""
        if self.is_entering:
            self._forgive()
            self.entry.hide()
            self.reading.hide()
            self.setFocus(Qt.FocusReason.OtherFocusReason)

    def show_reading(self, words: str) -> None:
        """Say beside the entry how what is typed reads so far."""
        self.reading.setText(words)

    def refuse(self, sentence: str) -> None:
        """Say below the present row why an amount cannot be used."""
        in_danger(self.problem).setText(sentence)
        self.problem.show()
        self.entry.setAccessibleDescription(sentence)
        set_style(self.entry, "invalid", True)
        self._place_entry()
        self.scrollTo(self.currentIndex())
        self._place_entry()
        announce(self.entry, sentence)

    def _on_edited(self, text: str) -> None:
        self._forgive()
        self.exact_edited.emit(text)

    def _forgive(self) -> None:
        if self.problem.isHidden():
            return
        self.problem.hide()
        self.entry.setAccessibleDescription("")
        set_style(self.entry, "invalid", False)
        self.setRowHeight(self.row, scaled(BIG_ROW))
        self._place_entry()

    def _place_entry(self) -> None:
        if not self.is_entering or self.row < 0:
            return
        cell = upper_part(self.visualRect(self.currentIndex().siblingAtColumn(COUNTED)))
        height = self.entry.sizeHint().height()
        top = cell.center().y() - height // 2
        width = self.viewport().width() - cell.left() - UNIT
        typing = min(width, cell.width() + MORE_TO_TYPE)
        self.entry.setGeometry(cell.left(), top, typing, height)
        beside = cell.left() + typing
        self.reading.setGeometry(beside, cell.top() + 1, width + UNIT - typing, cell.height() - 2)
        if self.problem.isHidden():
            return
        left = UNIT + HALF
        width = self.viewport().width() - 2 * left
        below = self.problem.heightForWidth(width) + UNIT
        self.setRowHeight(self.row, scaled(BIG_ROW) + below)
        self.updateGeometries()  # at once: the last row would lie below the end of the list
        row = self.visualRect(self.currentIndex())
        self.problem.setGeometry(left, row.top() + scaled(BIG_ROW), width, below)

    # Keys and clicks

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.modifiers() & HELD:
            event.ignore()  # the page's shortcuts
        elif event.key() in _MOVING:
            super().keyPressEvent(event)
        elif not self._take_key(event.isAutoRepeat(), typed_key(event)):
            event.ignore()  # letters must not search the list

    def _take_key(self, is_repeated: bool, typed: str) -> bool:
        """Whether it was a key of the count; one that is held down counts one bottle."""
        if not typed:
            return False
        if is_repeated:
            return True
        ends = {"Home": 0, "End": self.model().rowCount() - 1}
        if typed in ends:
            self.go_to(ends[typed])
        elif (meaning := meaning_of(typed)) is not None:
            self.meant.emit(meaning)
        else:
            self.other_typed.emit(typed)
        return True

    def mousePressEvent(self, event: QMouseEvent) -> None:
        if not self.settle():
            event.accept()  # what was typed cannot be read yet: it stays, and so does its row
            return
        super().mousePressEvent(event)
        index = self.indexAt(event.position().toPoint())
        if index.isValid() and event.button() == Qt.MouseButton.LeftButton:
            self._pick(index, QPointF(event.position()))

    def _pick(self, index: QModelIndex, point: QPointF) -> None:
        gauge = gauge_in(QRect(self.visualRect(index)))
        reach = gauge.adjusted(-UNIT, -UNIT, UNIT, UNIT)
        if index.column() == LEVEL and reach.contains(point):
            share = share_at(gauge, point, from_right=self.isRightToLeft())
            self.picked.emit(index.row(), share)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._share_width()
        self._place_entry()

    def _share_width(self) -> None:
        rest = self.viewport().width() - scaled(sum(WIDTHS.values()))
        names = round(rest * NAMES)
        self.setColumnWidth(BOTTLE, names)
        self.setColumnWidth(LEVEL, rest - names)
