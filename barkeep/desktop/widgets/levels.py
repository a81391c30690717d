"""A level as a picture, upright or lying, that can be read, and set by mouse and keyboard."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace

from PySide6.QtCore import QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import (
    QBrush,
    QColor,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPainterPath,
    QPaintEvent,
    QPen,
    QPolygonF,
)
from PySide6.QtWidgets import QSizePolicy, QWidget

from barkeep.desktop.look.metrics import UNIT
from barkeep.desktop.look.sides import turn_about
from barkeep.desktop.look.tones import Tones, current_tones
from barkeep.desktop.widgets.tips import plain_tip
from barkeep.translation import tr

FULL_LINE = 0.30
"""Where 100 % stands in the drawn bottle, as a share of its height from the top."""
TENTHS_FROM = 70.0
"""The least length on which tenth marks can be told apart, in pixels."""


@dataclass(frozen=True, slots=True)
class LevelReading:
    """What to draw; all shares are of the bottle's size, 0 to 1.

    `share` is what counts now; `expected` what the ledger says where a new
    count differs; `doubt` what stands after ± in words; `par` the owner's least.
    """

    share: float
    expected: float | None = None
    doubt: float | None = None
    par: float | None = None
    sealed: bool = False

    @property
    def low(self) -> bool:
        """Whether it is below the owner's least."""
        return self.par is not None and self.share < self.par


def draw_level(painter: QPainter, rect: QRectF, reading: LevelReading, tones: Tones) -> None:
    """Draw a level into `rect`: a bottle where it is taller than wide, else a gauge."""
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    if rect.height() > rect.width():
        _draw_bottle(painter, rect, reading, tones)
    else:
        turn_about(painter, rect)
        _draw_gauge(painter, rect, reading, tones)
    painter.restore()


def share_at(rect: QRectF, point: QPointF, *, from_right: bool = False) -> float:
    """The share a point of a drawn level stands for, held to 0 to 1.

    A lying one is filled `from_right` where the language runs so.
    """
    if rect.height() > rect.width():
        place = _bottle_place(_body(rect))
        share = (place(0.0) - point.y()) / (place(0.0) - place(1.0))
    else:
        share = (point.x() - rect.left()) / rect.width()
        share = 1.0 - share if from_right else share
    return _held(share)


def _draw_bottle(painter: QPainter, rect: QRectF, reading: LevelReading, tones: Tones) -> None:
    body = _body(rect)
    outline = _outline(body)
    place = _bottle_place(body)
    painter.fillPath(outline, QColor(tones.raised))
    painter.save()
    painter.setClipPath(outline)
    top = place(_held(reading.share))
    painter.fillRect(QRectF(body.left(), top, body.width(), body.bottom() - top), _liquid(tones))
    for low, high, ink in _doubtful(reading, tones):
        foot, head = place(low), place(high)
        painter.fillRect(QRectF(body.left(), head, body.width(), foot - head), _dotted(ink))
    if reading.share > 0:
        painter.setPen(QPen(QColor(tones.text), 1.5))
        painter.drawLine(QPointF(body.left(), top), QPointF(body.right(), top))
    if body.height() >= TENTHS_FROM:
        for tenth in range(1, 10):
            painter.setPen(QPen(QColor(_ink(tenth / 10, reading, tones)), 1))
            reach = body.width() * (0.32 if tenth == 5 else 0.18)
            y = round(place(tenth / 10)) + 0.5
            painter.drawLine(QPointF(body.right() - reach, y), QPointF(body.right(), y))
    painter.restore()
    painter.setPen(QPen(QColor(tones.glass), 1.5 if body.height() < TENTHS_FROM else 2))
    painter.drawPath(outline)
    _draw_cap(painter, body, reading.sealed, tones)
    if reading.expected is not None:
        draw_pointer(
            painter, QPointF(body.right() + 3, place(_held(reading.expected))), "left", tones.info
        )
    if reading.par is not None:
        draw_pointer(
            painter,
            QPointF(body.left() - 3, place(_held(reading.par))),
            "right",
            _par(reading, tones),
        )


def _draw_gauge(painter: QPainter, rect: QRectF, reading: LevelReading, tones: Tones) -> None:
    trough = rect.adjusted(0.5, 0.5, -0.5, -0.5)
    radius = min(4.0, trough.height() / 2)
    outline = QPainterPath()
    outline.addRoundedRect(trough, radius, radius)
    painter.fillPath(outline, QColor(tones.raised))
    painter.save()
    painter.setClipPath(outline)

    def place(share: float) -> float:
        return trough.left() + _held(share) * trough.width()

    end = place(reading.share)
    painter.fillRect(
        QRectF(trough.left(), trough.top(), end - trough.left(), trough.height()), _liquid(tones)
    )
    for low, high, ink in _doubtful(reading, tones):
        left, right = place(low), place(high)
        painter.fillRect(QRectF(left, trough.top(), right - left, trough.height()), _dotted(ink))
    if trough.width() >= TENTHS_FROM:
        for tenth in range(1, 10):
            painter.setPen(QPen(QColor(_ink(tenth / 10, reading, tones)), 1))
            x = round(place(tenth / 10)) + 0.5
            reach = trough.height() * (0.5 if tenth == 5 else 0.28)
            painter.drawLine(QPointF(x, trough.bottom() - reach), QPointF(x, trough.bottom()))
    painter.restore()
    painter.setPen(QPen(QColor(tones.glass), 1))
    painter.drawPath(outline)
    if reading.expected is not None:
        draw_pointer(
            painter, QPointF(place(reading.expected), trough.top() - 1), "down", tones.info
        )
    if reading.par is not None:
        draw_pointer(
            painter, QPointF(place(reading.par), trough.bottom() + 1), "up", _par(reading, tones)
        )


def _body(rect: QRectF) -> QRectF:
    """The bottle inside `rect`: two and a half times as tall as wide, room for marks beside."""
    height = rect.height() - 2
    width = min(rect.width() - 14 if rect.width() > 36 else rect.width() - 2, height * 0.42)
    return QRectF(rect.center().x() - width / 2, rect.top() + 1, width, height)


def _bottle_place(body: QRectF) -> Callable[[float], float]:
    foot, full = body.bottom() - 1, body.top() + body.height() * FULL_LINE
    return lambda share: foot - share * (foot - full)


def _outline(body: QRectF) -> QPainterPath:
    neck = body.width() * 0.19
    middle, top, bottom = body.center().x(), body.top(), body.bottom()
    shoulder, curve = top + body.height() * 0.40, body.height() * 0.13
    corner = body.width() * 0.16
    neck_foot = top + body.height() * 0.24
    path = QPainterPath(QPointF(middle - neck, top + body.height() * 0.05))
    path.lineTo(middle - neck, neck_foot)
    path.cubicTo(
        middle - neck, neck_foot + curve, body.left(), shoulder - curve, body.left(), shoulder
    )
    path.lineTo(body.left(), bottom - corner)
    path.quadTo(body.left(), bottom, body.left() + corner, bottom)
    path.lineTo(body.right() - corner, bottom)
    path.quadTo(body.right(), bottom, body.right(), bottom - corner)
    path.lineTo(body.right(), shoulder)
    path.cubicTo(
        body.right(), shoulder - curve, middle + neck, neck_foot + curve, middle + neck, neck_foot
    )
    path.lineTo(middle + neck, top + body.height() * 0.05)
    path.closeSubpath()
    return path


def _draw_cap(painter: QPainter, body: QRectF, sealed: bool, tones: Tones) -> None:
    """A capsule down the neck while sealed; the bare rim once open."""
    width = body.width() * (0.44 if sealed else 0.5)
    height = body.height() * (0.15 if sealed else 0.035)
    cap = QRectF(
        body.center().x() - width / 2,
        body.top() + (0 if sealed else body.height() * 0.03),
        width,
        max(2.5, height),
    )
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(QColor(tones.accent if sealed else tones.glass))
    painter.drawRoundedRect(cap, 1.5, 1.5)
    painter.setBrush(Qt.BrushStyle.NoBrush)


def draw_pointer(painter: QPainter, tip: QPointF, way: str, colour: str) -> None:
    """A small triangle whose tip touches a level from above, below or beside."""
    long, half = 6.0, 4.0
    ends = {
        "left": ((long, -half), (long, half)),
        "right": ((-long, -half), (-long, half)),
        "down": ((-half, -long), (half, -long)),
        "up": ((-half, long), (half, long)),
    }[way]
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(QColor(colour))
    painter.drawPolygon(QPolygonF([tip, *(tip + QPointF(*each) for each in ends)]))
    painter.setBrush(Qt.BrushStyle.NoBrush)


def _liquid(tones: Tones) -> QColor:
    return QColor(tones.liquid)


def _ink(share: float, reading: LevelReading, tones: Tones) -> str:
    """What a mark at a share is drawn with: it lies on the liquid, or on what is empty."""
    return tones.on_lamp if share <= reading.share else tones.text


def _doubtful(reading: LevelReading, tones: Tones) -> Iterator[tuple[float, float, str]]:
    """From where to where the level may lie: the part within the liquid, and the one above it."""
    if reading.doubt:
        low, high = _held(reading.share - reading.doubt), _held(reading.share + reading.doubt)
        yield low, _held(reading.share), tones.on_lamp
        yield _held(reading.share), high, tones.text


def _dotted(colour: str) -> QBrush:
    return QBrush(QColor(colour), Qt.BrushStyle.Dense6Pattern)


def _par(reading: LevelReading, tones: Tones) -> str:
    return tones.danger if reading.low else tones.muted


def _held(share: float) -> float:
    return max(0.0, min(1.0, share))


TENTH, HUNDREDTH = 0.1, 0.01
_STEPS = {
    Qt.Key.Key_Up: TENTH,
    Qt.Key.Key_Right: TENTH,
    Qt.Key.Key_Down: -TENTH,
    Qt.Key.Key_Left: -TENTH,
}
_ACROSS = (Qt.Key.Key_Left, Qt.Key.Key_Right)


class LevelGauge(QWidget):
    """Draws a level; with `editable`, a click, a drag or the arrow keys pick a new one.

    `picked` carries the share of the size. Shift makes the arrow keys go by
    hundredths, Home and End to empty and full.
    """

    picked = Signal(float)

    def __init__(self, parent: QWidget | None = None, *, editable: bool = False) -> None:
        super().__init__(parent)
        self.reading = LevelReading(0.0)
        """What is drawn."""
        self._editable = editable
        self.setAccessibleName(tr("Level"))
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Fixed)
        if editable:
            self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
            self.setCursor(Qt.CursorShape.PointingHandCursor)

    def show_reading(self, reading: LevelReading, words: str) -> None:
        """Draw a reading; `words` say the same: “Level 315 of 700 ml, 45 %”."""
        self.reading = reading
        self.setAccessibleDescription(words)
        self.setToolTip(plain_tip(words))
        self.update()

    def sizeHint(self) -> QSize:
        return QSize(96, 168)

    def minimumSizeHint(self) -> QSize:
        return QSize(40, 96)

    def paintEvent(self, _event: QPaintEvent) -> None:
        painter = QPainter(self)
        tones = current_tones()
        draw_level(painter, self._drawn(), self.reading, tones)
        if self.hasFocus():
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            painter.setPen(QPen(QColor(tones.accent), 2))
            painter.drawRoundedRect(QRectF(self.rect()).adjusted(1, 1, -1, -1), UNIT / 2, UNIT / 2)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        self._pick_at(event)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        self._pick_at(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key = Qt.Key(event.key())
        if not self._editable or key not in (*_STEPS, Qt.Key.Key_Home, Qt.Key.Key_End):
            super().keyPressEvent(event)
            return
        fine = bool(event.modifiers() & Qt.KeyboardModifier.ShiftModifier)
        if key in _STEPS:
            step = _STEPS[key] * (HUNDREDTH / TENTH if fine else 1)
            step *= -1 if self.isRightToLeft() and key in _ACROSS else 1
            self._pick(self.reading.share + step)
        else:
            self._pick(0.0 if key == Qt.Key.Key_Home else 1.0)

    def _pick_at(self, event: QMouseEvent) -> None:
        if not self._editable or not event.buttons() & Qt.MouseButton.LeftButton:
            return
        point, from_right = QPointF(event.position()), self.isRightToLeft()
        self._pick(share_at(self._drawn(), point, from_right=from_right))

    def _pick(self, share: float) -> None:
        """Show the new share at once; whoever listens brings the words."""
        held = round(_held(share), 2)
        self.reading = replace(self.reading, share=held)
        self.update()
        self.picked.emit(held)

    def _drawn(self) -> QRectF:
        """Where the level goes; a lying gauge keeps room above and below for its pointers."""
        lying = self.width() >= self.height()
        across = UNIT if lying else UNIT / 2
        return QRectF(self.rect()).adjusted(UNIT / 2, across, -UNIT / 2, -across)
