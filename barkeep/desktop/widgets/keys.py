"""Keys on a screen: a key event as a plain word, and the legend that is always in view."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

from PySide6.QtCore import QPoint, QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFont, QKeyEvent, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from barkeep.desktop.look.metrics import HALF, UNIT, TypeSize, font_of
from barkeep.desktop.look.sides import point_turned_about, turned_about
from barkeep.desktop.look.tones import Tones, current_tones
from barkeep.desktop.widgets.levels import draw_pointer
from barkeep.translation import tr, tr_noop

HELD = (
    Qt.KeyboardModifier.ControlModifier
    | Qt.KeyboardModifier.AltModifier
    | Qt.KeyboardModifier.MetaModifier
)
"""With one of these a key is a shortcut and types nothing."""

_NAMES: Mapping[int, str] = {
    Qt.Key.Key_Return: "Enter",
    Qt.Key.Key_Enter: "Enter",
    Qt.Key.Key_Space: "Space",
    Qt.Key.Key_Backspace: tr_noop("Backspace"),
    Qt.Key.Key_Home: tr_noop("Home"),
    Qt.Key.Key_End: tr_noop("End"),
}


def typed_key(event: QKeyEvent) -> str:
    """*7*, *f*, *Enter*: what was typed, in small letters, or the name of a key that types nothing.

    Empty for a shortcut and for every other key.
    """
    if event.modifiers() & HELD:
        return ""
    if name := _NAMES.get(event.key(), ""):
        return name
    text = event.text().casefold()
    if text.isascii() and text.isprintable() and text:
        return text
    if Qt.Key.Key_A <= event.key() <= Qt.Key.Key_Z:  # the letter on a key that types another
        return chr(event.key()).casefold()
    return text if text.isprintable() else ""


BETWEEN = UNIT + HALF

Keys = Sequence[tuple[tuple[str, ...], str]]
"""Key caps and what they do; a dash between caps is no key."""

Marks = Sequence[tuple[str, str, str]]
"""Which way a mark points, its tone, and what it marks."""


class KeyLegend(QWidget):
    """Wraps like text, so nothing is cut off in a narrow window."""

    def __init__(self, keys: Keys, marks: Marks = (), parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._keys = tuple((tuple(map(tr, caps)), tr(does)) for caps, does in keys)
        self._marks = tuple((way, tone, tr(marks)) for way, tone, marks in marks)
        self._measured: tuple[QFont, Sequence[int]] | None = None
        self.setFont(font_of(TypeSize.CAPTION))
        policy = QSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Minimum)
        policy.setHeightForWidth(True)
        self.setSizePolicy(policy)
        self.setAccessibleName(tr("Keys"))
        words = (f"{' '.join(caps)}: {does}" for caps, does in self._keys)
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
            if number < len(self._keys):
                self._draw_keys(painter, place, *self._keys[number], tones)
            else:
                self._draw_mark(painter, place, *self._marks[number - len(self._keys)], tones)

    def _places(self, width: int) -> Iterator[tuple[int, QPoint]]:
        """Where each entry stands, line after line."""
        left = top = 0
        for number, wide in enumerate(self._widths()):
            if left and left + wide > width:
                left, top = 0, top + self._line_height() + HALF
            yield number, QPoint(left, top)
            left += wide + BETWEEN

    def _widths(self) -> Sequence[int]:
        """How wide each entry is in its type: a layout asks for its places over and over."""
        font = self.font()
        if self._measured is None or self._measured[0] != font:
            many = len(self._keys) + len(self._marks)
            self._measured = font, tuple(map(self._width_of, range(many)))
        return self._measured[1]

    def _width_of(self, number: int) -> int:
        if number >= len(self._keys):
            return UNIT + HALF + self._advance(self._marks[number - len(self._keys)][2])
        caps, does = self._keys[number]
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
            box = self._on_its_side(box)
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
        tip = middle + QPointF(0, 3 if way == "down" else -3)
        if self.isRightToLeft():
            tip = point_turned_about(tip, QRectF(self.rect()))
        draw_pointer(painter, tip, way, str(getattr(tones, tone)))
        self._draw_words(
            painter, left=place.x() + UNIT + HALF, top=place.y(), words=marks, tones=tones
        )

    def _draw_words(
        self, painter: QPainter, left: float, top: float, words: str, tones: Tones
    ) -> None:
        painter.setPen(QColor(tones.muted))
        box = QRectF(left, top, self._advance(words) + HALF, self._line_height())
        painter.drawText(self._on_its_side(box), Qt.AlignmentFlag.AlignVCenter, words)

    def _on_its_side(self, place: QRectF) -> QRectF:
        return turned_about(place, QRectF(self.rect())) if self.isRightToLeft() else place
