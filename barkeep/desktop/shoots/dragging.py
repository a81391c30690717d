"""Drinks dragged into order with the mouse: rows of a table, and drinks told below each other."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QByteArray, QMimeData, QPoint, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QDrag, QDropEvent, QMouseEvent, QPainter, QPaintEvent
from PySide6.QtWidgets import QAbstractItemView, QApplication, QTableWidget, QWidget

from barkeep.desktop.look.metrics import HALF, TypeSize, scaled
from barkeep.desktop.look.tones import current_tones
from barkeep.desktop.widgets.labels import copyable
from barkeep.desktop.widgets.layouts import row_of, wide
from barkeep.translation import tr

PLACE = "application/x-barkeep-place"
"""What is carried: the number of a drink in the running order, from 0."""
DOTS, ACROSS, DOWN = 2.0, 2, 3
"""Of a grip: the size of its dots in pixels beside plain type, and how many there are."""


def carry(number: int, source: QWidget) -> None:
    """Drag the drink of this number until it is dropped."""
    carried = QMimeData()
    carried.setData(PLACE, QByteArray(str(number).encode()))
    drag = QDrag(source)
    drag.setMimeData(carried)
    drag.exec(Qt.DropAction.MoveAction)


def carried_by(event: QDropEvent) -> int | None:
    """The number of the drink that is dragged here; None for anything else."""
    if not event.mimeData().hasFormat(PLACE):
        return None
    return int(bytes(event.mimeData().data(PLACE).data()).decode())


def gap_at(y: float, tops: Sequence[float], end: float) -> int:
    """Before which of the things that begin at `tops`, the last at its `end`, `y` is nearest to.

    >>> [gap_at(y, (0.0, 10.0), 20.0) for y in (2.0, 7.0, 14.0, 16.0)]
    [0, 1, 1, 2]
    """
    ends = (*tops[1:], end)
    return sum(y > (top + below) / 2.0 for top, below in zip(tops, ends, strict=True))


def place_in(gap: int, number: int) -> int:
    """The place of what is dropped before the thing at `gap`, once it has left its own."""
    return gap - 1 if gap > number else gap


class OrderTable(QTableWidget):
    """`dragged` carries the number of a row that was dropped elsewhere, and its new place."""

    dragged = Signal(int, int)

    def __init__(self, columns: int) -> None:
        super().__init__(0, columns)
        self.setDragDropMode(QAbstractItemView.DragDropMode.DragDrop)
        self.setDragDropOverwriteMode(False)  # so that the place between two rows is shown

    def startDrag(self, _actions: Qt.DropAction) -> None:
        """As views do it they would take the row away themselves."""
        carry(self.currentRow(), self.viewport())

    def mimeTypes(self) -> list[str]:
        return [PLACE]

    def supportedDropActions(self) -> Qt.DropAction:
        return Qt.DropAction.MoveAction

    def dropEvent(self, event: QDropEvent) -> None:
        number, rows = carried_by(event), range(self.rowCount())
        if number is None or number not in rows:
            event.ignore()
            return
        event.acceptProposedAction()
        tops = [float(self.rowViewportPosition(row)) for row in rows]
        gap = gap_at(event.position().y(), tops, tops[-1] + self.rowHeight(rows[-1]))
        if (to := place_in(gap, number)) != number:
            self.dragged.emit(number, to)


class Grip(QWidget):
    """Dots by which something is taken hold of; `pulled` once it is really dragged."""

    pulled = Signal()

    def __init__(self) -> None:
        super().__init__()
        self._pressed_at: QPoint | None = None
        self.setCursor(Qt.CursorShape.OpenHandCursor)
        self.setToolTip(tr("Drag the drink to its place (Alt+Up, Alt+Down)"))
        dots = scaled(DOTS)
        self.setFixedSize(QSize(round(2 * ACROSS * dots + dots), round(2 * DOWN * dots + dots)))

    def mousePressEvent(self, event: QMouseEvent) -> None:
        if event.button() == Qt.MouseButton.LeftButton:
            self._pressed_at = event.position().toPoint()

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        if self._pressed_at is None:
            return
        far = (event.position().toPoint() - self._pressed_at).manhattanLength()
        if far >= QApplication.startDragDistance():
            self._pressed_at = None
            self.pulled.emit()

    def mouseReleaseEvent(self, _event: QMouseEvent) -> None:
        self._pressed_at = None

    def paintEvent(self, _event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(self.palette().placeholderText())
        dots = float(scaled(DOTS))
        for column in range(ACROSS):
            for row in range(DOWN):
                corner = (dots + 2 * column * dots, dots + 2 * row * dots)
                painter.drawEllipse(QRectF(*corner, dots, dots))


class DrinkHead(QWidget):
    """The name of one drink of the running order, with a grip where it may be moved."""

    def __init__(self, above: int) -> None:
        super().__init__()
        self._number = 0
        self.grip = Grip()
        self.grip.pulled.connect(lambda: carry(self._number, self.grip))
        self.label = copyable("", TypeSize.STRONG)
        row_of(self.grip, wide(self.label), on=self, gap=HALF, margins=(0, above, 0, 0))

    def fill(self, number: int, words: str, *, movable: bool) -> None:
        """Say which drink it is."""
        self._number = number
        self.label.setText(words)
        self.grip.setVisible(movable)


class DropLine(QWidget):
    """Where what is dragged would go, across what it would go between."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self._across = parent
        self.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        self.hide()

    def show_at(self, y: float) -> None:
        """Show it this far down."""
        self.setGeometry(0, round(y) - 1, self._across.width(), 3)
        self.raise_()
        self.show()

    def paintEvent(self, _event: QPaintEvent) -> None:
        QPainter(self).fillRect(self.rect(), current_tones().accent)
