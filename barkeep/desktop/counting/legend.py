"""The keys of the count and the marks of its gauges, always in view."""

from __future__ import annotations

from collections.abc import Iterator

from PySide6.QtCore import QPoint, QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen, QPolygonF
from PySide6.QtWidgets import QSizePolicy, QWidget

from barkeep.desktop.look.metrics import HALF, UNIT, TypeSize, font_of
from barkeep.desktop.look.tones import Tones, current_tones

BETWEEN = UNIT + HALF

KEYS: tuple[tuple[tuple[str, ...], str], ...] = (
    (("0", "–", "9"), "tenths"),
    (("F",), "full"),
    (("E",), "as expected"),
    (("Space",), "skip"),
    (("↑", "↓"), "move"),
    (("Backspace",), "clear, back"),
    (("Enter",), "exactly: 315 ml, 812 g on a scale, 11.5 cm high"),
    (("Ctrl", "Enter"), "confirm"),
    (("Esc",), "leave"),
)
"""Key caps and what they do; a dash between caps is no key."""

MARKS = (("down", "info", "expected"), ("up", "text", "counted"))
"""Which way a mark points, its tone, and what it marks."""


class CountingLegend(QWidget):
    """Wraps like text, so nothing is cut off in a narrow window."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setFont(font_of(TypeSize.CAPTION))
        policy = QSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Minimum)
        policy.setHeightForWidth(True)
        self.setSizePolicy(policy)
        self.setAccessibleName("Keys")
        words = (f"{' '.join(caps)}: {does}" for caps, does in KEYS)
        self.setAccessibleDescription("; ".join(words))

    def sizeHint(self) -> QSize:
        return QSize(760, self.heightForWidth(760))

    def minimumSizeHint(self) -> QSize:
        return QSize(240, self._line_height())

    def hasHeightForWidth(self) -> bool:
        return True

    def heightForWidth(self, width: int) -> int:
        last = 0
        for _number, place in self._places(width):
            last = place.y()
        return last + self._line_height()

    def paintEvent(self, _event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        tones = current_tones()
        for number, place in self._places(self.width()):
            if number < len(KEYS):
                self._draw_keys(painter, place, *KEYS[number], tones)
            else:
                self._draw_mark(painter, place, *MARKS[number - len(KEYS)], tones)

    def _places(self, width: int) -> Iterator[tuple[int, QPoint]]:
        """Where each entry stands, line after line."""
        left = top = 0
        for number in range(len(KEYS) + len(MARKS)):
            wide = self._width_of(number)
            if left and left + wide > width:
                left, top = 0, top + self._line_height() + HALF
            yield number, QPoint(left, top)
            left += wide + BETWEEN

    def _width_of(self, number: int) -> int:
        if number >= len(KEYS):
            return UNIT + HALF + self._advance(MARKS[number - len(KEYS)][2])
        caps, does = KEYS[number]
        return sum(self._cap_width(cap) + HALF for cap in caps) + self._advance(does)

    def _cap_width(self, cap: str) -> int:
        if cap == "–":
            return self._advance(cap)
        return max(self._line_height(), self._advance(cap) + 2 * HALF + 2)

    def _advance(self, words: str) -> int:
        return self.fontMetrics().horizontalAdvance(words)

    def _line_height(self) -> int:
        return self.fontMetrics().height() + HALF

    def _draw_keys(
        self, painter: QPainter, place: QPoint, caps: tuple[str, ...], does: str, tones: Tones
    ) -> None:
        left, height = float(place.x()), self._line_height()
        for cap in caps:
            box = QRectF(left + 0.5, place.y() + 0.5, self._cap_width(cap) - 1, height - 1)
            if cap != "–":
                painter.setPen(QPen(QColor(tones.glass), 1))
                painter.setBrush(QColor(tones.button))
                painter.drawRoundedRect(box, HALF - 1, HALF - 1)
            painter.setPen(QColor(tones.text))
            painter.drawText(box, Qt.AlignmentFlag.AlignCenter, cap)
            left += self._cap_width(cap) + HALF
        self._draw_words(painter, left=left, top=place.y(), words=does, tones=tones)

    def _draw_mark(
        self, painter: QPainter, place: QPoint, way: str, tone: str, marks: str, tones: Tones
    ) -> None:
        middle = QPointF(place.x() + HALF, place.y() + self._line_height() / 2)
        draw_mark(
            painter,
            tip=middle + QPointF(0, 3 if way == "down" else -3),
            way=way,
            tone=tone,
            tones=tones,
        )
        self._draw_words(
            painter, left=place.x() + UNIT + HALF, top=place.y(), words=marks, tones=tones
        )

    def _draw_words(
        self, painter: QPainter, left: float, top: float, words: str, tones: Tones
    ) -> None:
        painter.setPen(QColor(tones.muted))
        box = QRectF(left, top, self._advance(words) + HALF, self._line_height())
        painter.drawText(box, Qt.AlignmentFlag.AlignVCenter, words)


def draw_mark(painter: QPainter, *, tip: QPointF, way: str, tone: str, tones: Tones) -> None:
    """A small triangle whose tip touches a gauge from above or from below."""
    rise = -6.0 if way == "down" else 6.0
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(QColor(str(getattr(tones, tone))))
    corners = (tip, tip + QPointF(-4.0, rise), tip + QPointF(4.0, rise))
    painter.drawPolygon(QPolygonF(list(corners)))
    painter.setBrush(Qt.BrushStyle.NoBrush)
