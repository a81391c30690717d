"""Labels that keep to the type scale and never cut a word off without saying so."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QSize, Qt
from PySide6.QtGui import QPainter, QPaintEvent, QPalette, QResizeEvent
from PySide6.QtWidgets import QLabel, QSizePolicy, QWidget

from barkeep.desktop.icons import pixmap
from barkeep.desktop.metrics import ICON, TypeSize, set_type
from barkeep.desktop.tones import current_tones


def text_label(
    text: str, size: TypeSize = TypeSize.BODY, *, quiet: bool = False, wrap: bool = False
) -> QLabel:
    """A label of one step of the type scale; `quiet` is for what is said in passing."""
    label = QLabel(text)
    label.setTextFormat(Qt.TextFormat.PlainText)
    set_type(label, size)
    label.setWordWrap(wrap)
    if quiet:
        label.setForegroundRole(QPalette.ColorRole.PlaceholderText)
    return label


class ElidedLabel(QLabel):
    """One line that ends in an ellipsis where there is no room, and then has a tooltip."""

    def __init__(self, text: str = "", parent: QWidget | None = None) -> None:
        super().__init__(text, parent)
        self.setTextFormat(Qt.TextFormat.PlainText)
        self.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)

    @property
    def shown_text(self) -> str:
        """What there is room for."""
        return self.fontMetrics().elidedText(
            self.text(), Qt.TextElideMode.ElideRight, self.contentsRect().width()
        )

    def minimumSizeHint(self) -> QSize:
        return QSize(self.fontMetrics().averageCharWidth() * 4, super().minimumSizeHint().height())

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._explain()

    def setText(self, text: str, /) -> None:
        super().setText(text)
        self._explain()

    def paintEvent(self, _event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setPen(self.palette().color(self.foregroundRole()))
        painter.setFont(self.font())
        painter.drawText(self.contentsRect(), int(self.alignment()), self.shown_text)

    def _explain(self) -> None:
        self.setToolTip("" if self.shown_text == self.text() else self.text())


class PictureLabel(QLabel):
    """A picture that follows the theme; `tone` is a field of `Tones`."""

    def __init__(self, name: str, size: int = ICON, tone: str = "text", meaning: str = "") -> None:
        super().__init__()
        self._size = size
        self.setToolTip(meaning)
        self.setAccessibleName(meaning)
        self.setFixedSize(size, size)
        self.show_picture(name, tone)

    def show_picture(self, name: str, tone: str = "text") -> None:
        """Show another picture."""
        self._name, self._tone = name, tone
        self._draw()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() in (QEvent.Type.PaletteChange, QEvent.Type.DevicePixelRatioChange):
            self._draw()

    def _draw(self) -> None:
        tones = current_tones()
        colour = str(getattr(tones, self._tone))
        ratio = self.devicePixelRatioF()
        self.setPixmap(pixmap(self._name, colour, self._size, ratio, tones.base))
