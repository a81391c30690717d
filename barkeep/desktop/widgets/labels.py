"""Labels that keep to the type scale, never cut a word off unsaid, and may hold links."""

from __future__ import annotations

import html
from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import QEvent, QSize, Qt, Signal
from PySide6.QtGui import (
    QFocusEvent,
    QGuiApplication,
    QPainter,
    QPaintEvent,
    QPalette,
    QResizeEvent,
)
from PySide6.QtWidgets import QLabel, QSizePolicy, QWidget

from barkeep.desktop.look.icons import pixmap
from barkeep.desktop.look.metrics import ICON, TypeSize, scaled, set_type
from barkeep.desktop.look.sides import write
from barkeep.desktop.look.tones import current_tones
from barkeep.desktop.widgets.tips import plain_tip


def text_label(
    text: str, size: TypeSize = TypeSize.BODY, *, quiet: bool = False, wrap: bool = False
) -> QLabel:
    """A label of one step of the type scale; `quiet` is for what is said in passing."""
    label = _FromRight(text) if QGuiApplication.isRightToLeft() else QLabel(text)
    label.setTextFormat(Qt.TextFormat.PlainText)
    set_type(label, size)
    label.setWordWrap(wrap)
    if quiet:
        label.setForegroundRole(QPalette.ColorRole.PlaceholderText)
    return label


def selectable(label: QLabel) -> QLabel:
    """Let a label's words be marked and copied."""
    label.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
    begin_at_side(label)
    return label


def begin_at_side(label: QLabel) -> None:
    """Let words that can be marked begin where all others do: Qt goes by their own direction."""
    if QGuiApplication.isRightToLeft():
        sides = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignAbsolute
        label.setAlignment(sides | Qt.AlignmentFlag.AlignVCenter)


class _FromRight(QLabel):
    """Plain words at the right of a window that runs from there, read as they are written."""

    def paintEvent(self, event: QPaintEvent) -> None:
        by_mouse = Qt.TextInteractionFlag.TextSelectableByMouse
        if self.textInteractionFlags() & by_mouse or self.textFormat() != Qt.TextFormat.PlainText:
            super().paintEvent(event)
            return
        paint_from_right(self)


def paint_from_right(label: QLabel) -> None:
    """Paint plain words where lines begin, each read in its own direction."""
    painter, room = QPainter(label), label.contentsRect()
    painter.setPen(label.palette().color(label.foregroundRole()))
    painter.setFont(label.font())
    write(painter, room, label.alignment(), label.text(), wrap=label.wordWrap())


def copyable(text: str, size: TypeSize = TypeSize.BODY, *, quiet: bool = False) -> QLabel:
    """Words that wrap, and can be marked and copied."""
    return selectable(text_label(text, size, quiet=quiet, wrap=True))


def caption(text: str = "") -> QLabel:
    """A small quiet sentence, such as a note below another."""
    return copyable(text, TypeSize.CAPTION, quiet=True)


def in_danger(label: QLabel) -> QLabel:
    """Give a label's words the colour of what is wrong."""
    colours = label.palette()
    colours.setColor(label.foregroundRole(), current_tones().danger)
    label.setPalette(colours)
    return label


class ElidedLabel(QLabel):
    """One line that ends in an ellipsis where there is no room, and then has a tooltip."""

    def __init__(self, text: str = "", parent: QWidget | None = None) -> None:
        super().__init__(text, parent)
        self.setTextFormat(Qt.TextFormat.PlainText)
        self.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)

    def sizeHint(self) -> QSize:
        return super().sizeHint() + QSize(1, 0)  # or a rounding would cut off what fits

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
        write(painter, self.contentsRect(), self.alignment(), self.shown_text)

    def _explain(self) -> None:
        self.setToolTip("" if self.shown_text == self.text() else plain_tip(self.text()))


BESIDE_WORDS = 32
"""Pictures up to this edge, in pixels, are as large as the type; larger ones stand alone."""


def quiet_line() -> ElidedLabel:
    """A quiet line as wide as its words, or as there is room for."""
    made = ElidedLabel()
    made.setSizePolicy(QSizePolicy.Policy.Maximum, QSizePolicy.Policy.Preferred)
    made.setForegroundRole(QPalette.ColorRole.PlaceholderText)
    return made


class PictureLabel(QLabel):
    """A picture that follows the theme; `tone` is a field of `Tones`."""

    def __init__(self, name: str, size: int = ICON, tone: str = "text", meaning: str = "") -> None:
        super().__init__()
        self._size = scaled(size) if size <= BESIDE_WORDS else size
        self.setToolTip(plain_tip(meaning))
        self.setAccessibleName(meaning)
        self.setFixedSize(self._size, self._size)
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
        self.setPixmap(
            pixmap(self._name, colour=colour, size=self._size, ratio=ratio, paper=tones.base)
        )


@dataclass(frozen=True, slots=True)
class Link:
    """Words that lead to `target`."""

    text: str
    target: str


class LinkLabel(QLabel):
    """`followed` carries the target of the link the user took."""

    followed = Signal(str)

    def __init__(
        self,
        parts: Sequence[str | Link] = (),
        size: TypeSize = TypeSize.BODY,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        set_type(self, size)
        self.setTextFormat(Qt.TextFormat.RichText)
        self.setWordWrap(True)
        self.setTextInteractionFlags(
            Qt.TextInteractionFlag.TextSelectableByMouse
            | Qt.TextInteractionFlag.LinksAccessibleByMouse
            | Qt.TextInteractionFlag.LinksAccessibleByKeyboard
        )
        begin_at_side(self)
        self.linkActivated.connect(self.followed)
        self.show_parts(parts)

    def show_parts(self, parts: Sequence[str | Link]) -> None:
        """Say something else."""
        self._parts = tuple(parts)
        self.setAccessibleName(self.plain_text)
        policy = Qt.FocusPolicy
        self.setFocusPolicy(policy.StrongFocus if self._parts else policy.NoFocus)
        self._write()

    @property
    def plain_text(self) -> str:
        """What it says."""
        return "".join(part if isinstance(part, str) else part.text for part in self._parts)

    @property
    def links(self) -> tuple[Link, ...]:
        """What can be followed."""
        return tuple(part for part in self._parts if isinstance(part, Link))

    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        forward = event.reason() == Qt.FocusReason.TabFocusReason
        if self.links and (forward or event.reason() == Qt.FocusReason.BacktabFocusReason):
            self.focusNextPrevChild(forward)  # straight to a link, not to the words first

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.PaletteChange:
            self._write()

    def _write(self) -> None:
        # A rich text keeps the link colour it was first read with, so the theme is written in.
        colour = current_tones().link
        self.setText("".join(_marked_up(part, colour) for part in self._parts))


def _marked_up(part: str | Link, colour: str) -> str:
    if isinstance(part, str):
        return html.escape(part)
    target, words = html.escape(part.target), html.escape(part.text)
    return f'<a href="{target}" style="color: {colour}">{words}</a>'
