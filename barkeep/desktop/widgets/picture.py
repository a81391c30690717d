"""What every painted picture can do: say itself, show values under the mouse, and be copied."""

from __future__ import annotations

from collections.abc import Callable
from typing import ClassVar

from PySide6.QtCore import QBuffer, QEvent, QIODevice, QPoint, QPointF, QRectF, QSize, Qt
from PySide6.QtGui import (
    QAction,
    QColor,
    QGuiApplication,
    QHelpEvent,
    QImage,
    QKeyEvent,
    QKeySequence,
    QPainter,
    QPaintEvent,
    QPalette,
)
from PySide6.QtSvg import QSvgGenerator
from PySide6.QtWidgets import QToolTip, QWidget

from barkeep.desktop.look.metrics import RADIUS
from barkeep.desktop.look.tones import Tones, current_tones
from barkeep.desktop.widgets.tips import plain_tip
from barkeep.translation import tr, tr_noop

COPIED_SCALE = 3.0
"""How many pixels a device-independent one becomes in what is copied."""
COPIED_LARGEST = 8_000
"""No side of a copied picture has more pixels: a long shelf would fill the memory."""
Copy = QKeySequence.StandardKey.Copy
COPY, COPY_SVG = tr_noop("Copy picture"), tr_noop("Copy picture as SVG")


def svg_of(size: QSize, draw: Callable[[QPainter], object], *, title: str, words: str) -> bytes:
    """What is drawn as an SVG document, its words as the description."""
    buffer = QBuffer()
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    made = QSvgGenerator(QSvgGenerator.SvgVersion.Svg11)  # the plainer one cuts nothing off
    made.setOutputDevice(buffer)
    made.setSize(size)
    made.setResolution(96)  # as pages have it; else it would be drawn a third larger
    made.setViewBox(QRectF(QPointF(), size.toSizeF()))
    made.setTitle(title)
    made.setDescription(words)
    painter = QPainter(made)
    draw(painter)
    painter.end()
    return bytes(buffer.data().data())


class Picture(QWidget):
    """A picture drawn by `draw`, which is also what is copied.

    `in_words` is the same for whoever does not see it. It can be reached by Tab;
    Ctrl+C copies it, and its menu copies it as drawing instructions too.
    """

    turns: ClassVar[bool] = False
    """Whether it is drawn from the right in a window that runs from there; else it stays as it is,
    its words among it."""

    def __init__(self, name: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        if not self.turns:
            self.setLayoutDirection(Qt.LayoutDirection.LeftToRight)
        self.setAccessibleName(tr(name))
        self.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        self.setContextMenuPolicy(Qt.ContextMenuPolicy.ActionsContextMenu)
        self._add_action(COPY, self.copy_image).setShortcut(Copy)
        self._add_action(COPY_SVG, self.copy_svg)

    def draw(self, painter: QPainter, rect: QRectF, tones: Tones) -> None:
        """Draw it into `rect`; each picture does."""
        raise NotImplementedError

    def says_at(self, _point: QPointF) -> str:
        """What stands at a point of the picture, in words; all of it where nothing does."""
        return self.accessibleDescription()

    def show_words(self, in_words: str) -> None:
        """Say something else, and be drawn anew."""
        self.setAccessibleDescription(in_words)
        self.updateGeometry()
        self.update()

    def copy_image(self) -> None:
        """Put it on the clipboard as an image."""
        scale = min(COPIED_SCALE, COPIED_LARGEST / max(self.width(), self.height(), 1))
        image = QImage(self.size() * scale, QImage.Format.Format_ARGB32_Premultiplied)
        image.setDevicePixelRatio(scale)
        image.fill(self.palette().color(QPalette.ColorRole.Base))
        painter = QPainter(image)
        self.draw(painter, QRectF(self.rect()), current_tones())
        painter.end()
        QGuiApplication.clipboard().setImage(image)

    def copy_svg(self) -> None:
        """Put it on the clipboard as the text of an SVG document."""
        # As text: on some clipboards data of our own would outlive the interpreter, which fails.
        QGuiApplication.clipboard().setText(self.as_svg().decode())

    def as_svg(self) -> bytes:
        """It as an SVG document, its words as the description."""
        return svg_of(
            self.size(),
            lambda painter: self.draw(painter, QRectF(self.rect()), current_tones()),
            title=self.accessibleName(),
            words=self.accessibleDescription(),
        )

    def minimumSizeHint(self) -> QSize:
        return self.sizeHint()

    def paintEvent(self, _event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setLayoutDirection(self.layoutDirection())
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        self.draw(painter, QRectF(self.rect()), current_tones())
        if self.hasFocus():
            painter.setPen(QColor(current_tones().accent))
            painter.drawRoundedRect(QRectF(self.rect()).adjusted(1, 1, -1, -1), RADIUS, RADIUS)

    def show_tip(self, words: str, at: QPoint) -> None:
        """Say something beside a point of it, as the mouse would have it said there."""
        QToolTip.showText(self.mapToGlobal(at), plain_tip(words), self)

    def event(self, event: QEvent) -> bool:
        if isinstance(event, QHelpEvent) and event.type() == QEvent.Type.ToolTip:
            self.show_tip(self.says_at(QPointF(event.pos())), event.pos())
            return True
        # What the keys copy is the picture that has the focus, not the rows of the list.
        is_override = event.type() == QEvent.Type.ShortcutOverride
        if is_override and isinstance(event, QKeyEvent) and event.matches(Copy):
            event.accept()
            return True
        return super().event(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.matches(Copy):
            self.copy_image()
        else:
            super().keyPressEvent(event)

    def _add_action(self, words: str, does: object) -> QAction:
        action = QAction(tr(words), self)
        action.setShortcutContext(Qt.ShortcutContext.WidgetShortcut)
        action.triggered.connect(does)
        self.addAction(action)
        return action
