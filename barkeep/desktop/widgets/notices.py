"""What is said in passing or lasts: a toast, a banner, a question."""

from __future__ import annotations

from collections.abc import Callable
from typing import Literal, Protocol

from PySide6.QtCore import QEvent, QObject, QRectF, Qt, QTimer, SignalInstance
from PySide6.QtGui import (
    QColor,
    QEnterEvent,
    QKeyEvent,
    QPainter,
    QPaintEvent,
)
from PySide6.QtWidgets import QFrame, QMessageBox, QSizePolicy, QWidget

from barkeep.desktop.look.icons import pixmap, wear
from barkeep.desktop.look.metrics import HALF, ICON, PAD, RADIUS, UNIT, WIDE
from barkeep.desktop.look.tones import blend, current_tones
from barkeep.desktop.widgets.buttons import WordedButton, accept_by_keys, quiet_button
from barkeep.desktop.widgets.labels import PictureLabel, text_label
from barkeep.desktop.widgets.layouts import Slot, row_of, wide
from barkeep.desktop.widgets.said_aloud import announce as announce
from barkeep.translation import tr, tr_noop


def question_before_losing(
    parent: QWidget, *, title: str, text: str, keep: str, later: str = ""
) -> QMessageBox:
    """A question to be opened: *Discard* loses something, Enter and Esc keep it.

    `later`, where it is given, is the button of the accept role between the two.
    """
    question, tones = QMessageBox(parent), current_tones()
    question.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    question.setWindowTitle(tr(title))
    question.setTextFormat(Qt.TextFormat.PlainText)
    question.setText(tr(text))
    ratio = parent.devicePixelRatioF()
    question.setIconPixmap(
        pixmap("warning", colour=tones.warning, size=32, ratio=ratio, paper=tones.window)
    )
    question.addButton(tr("&Discard"), QMessageBox.ButtonRole.DestructiveRole)
    if later:
        question.addButton(tr(later), QMessageBox.ButtonRole.AcceptRole)
    kept = question.addButton(tr(keep), QMessageBox.ButtonRole.RejectRole)
    question.setDefaultButton(kept)
    question.setEscapeButton(kept)
    accept_by_keys(question)
    return question


SHOWN_MS = 6000
WIDEST = 560


class Timer(Protocol):
    """What a toast needs of a clock."""

    @property
    def timeout(self) -> SignalInstance: ...
    def start(self, milliseconds: int, /) -> None: ...
    def stop(self) -> None: ...


NO_FOCUS = Qt.FocusPolicy.NoFocus


class _Notice(QFrame):
    """Words, a button for what can be done about them, and a cross that sends them away."""

    def __init__(self, parent: QWidget | None, send_away: Callable[[], object]) -> None:
        super().__init__(parent)
        self._act: Callable[[], object] | None = None
        self._words = text_label("", wrap=True)
        self._button = WordedButton()
        self._button.setFocusPolicy(NO_FOCUS)  # until it has something to do
        self._button.clicked.connect(self._on_act)
        self._close = quiet_button("clear", tr_noop("Dismiss"), send_away)

    @property
    def text(self) -> str:
        """What it says, empty while hidden."""
        return "" if self.isHidden() else self._words.text()

    def _write(self, text: str, action: str, on_action: Callable[[], object] | None) -> None:
        self._act = on_action
        self._words.setText(text)
        self._button.setText(tr(action))
        self._button.setAccessibleName(self._button.text().replace("&", ""))
        self._button.setFocusPolicy(Qt.FocusPolicy.StrongFocus if action else NO_FOCUS)
        self._button.setVisible(bool(action))
        self.setAccessibleName(text)

    def _on_act(self) -> None:
        if self._act is not None:
            self._act()


class Toast(_Notice):
    """One message over `host`; a new one takes the place of the one before.

    It stays while the pointer is over it or the focus is in it, and Esc or
    its cross sends it away.
    """

    def __init__(self, host: QWidget, timer: Timer | None = None) -> None:
        super().__init__(host, self.dismiss)
        self.setObjectName("toast")
        self._host = host
        self._timer: Timer = timer or QTimer(self, singleShot=True)
        self._timer.timeout.connect(self.dismiss)
        wear(self._close, "clear", "on_nav")
        self._words.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Preferred)
        self._row = row_of(
            wide(self._words), self._button, self._close, on=self, margins=(PAD, UNIT, UNIT, UNIT)
        )
        host.installEventFilter(self)
        self.hide()

    def say(
        self, text: str, action: str = "", on_action: Callable[[], object] | None = None
    ) -> None:
        """Show a message for a few seconds: `say("Bottle removed", "Undo", bar.undo)`."""
        self._write(text, action, on_action)
        self.show()
        self._place()
        self.raise_()
        self._timer.start(SHOWN_MS)
        announce(self, text)

    def dismiss(self) -> None:
        """Send it away."""
        self._timer.stop()
        self._act = None
        self.hide()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if watched is self._host and event.type() == QEvent.Type.Resize and not self.isHidden():
            self._place()
        return super().eventFilter(watched, event)

    def enterEvent(self, event: QEnterEvent) -> None:
        super().enterEvent(event)
        self._timer.stop()

    def leaveEvent(self, event: QEvent) -> None:
        super().leaveEvent(event)
        if not self.isHidden():
            self._timer.start(SHOWN_MS)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape:
            self.dismiss()
            return
        super().keyPressEvent(event)

    def _place(self) -> None:
        """Bottom centre, as wide as its words up to a limit."""
        room = min(WIDEST, self._host.width() - 2 * WIDE)
        beside = sum(
            each.sizeHint().width() + UNIT
            for each in (self._button, self._close)
            if not each.isHidden()
        )
        line = self._words.fontMetrics().horizontalAdvance(self._words.text()) + HALF
        width = min(room, line + beside + PAD + UNIT + HALF)
        needed = self._row.totalHeightForWidth(width)
        self.resize(width, needed if needed > 0 else self.sizeHint().height())
        left = (self._host.width() - width) // 2
        self.move(left, self._host.height() - self.height() - WIDE)

    def _on_act(self) -> None:
        act = self._act
        self.dismiss()
        if act is not None:
            act()


BannerKind = Literal["info", "warning", "error", "done"]
_PICTURES = {"info": "info", "warning": "warning", "error": "error", "done": "check"}
_TONES = {"info": "info", "warning": "warning", "error": "danger", "done": "ready"}
GROUND = 0.10
"""How much of its tone is in a banner's ground."""


class Banner(_Notice):
    """Hidden until `say`, and again when the user closes it."""

    def __init__(self, parent: QWidget | None = None, *, closable: bool = True) -> None:
        super().__init__(parent, self.clear)
        self.kind: BannerKind = "info"
        """What kind of message it is."""
        self._image = PictureLabel("info", ICON, "info")
        self._words.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self._words.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Preferred)
        if not closable:
            self._close.hide()
        row_of(
            Slot(self._image, 0, Qt.AlignmentFlag.AlignVCenter),
            wide(self._words),
            self._button,
            self._close,
            on=self,
            margins=(UNIT + HALF, HALF, HALF, HALF),
        )
        self.hide()

    def say(
        self,
        text: str,
        kind: BannerKind = "error",
        action: str = "",
        on_action: Callable[[], object] | None = None,
    ) -> None:
        """Show a message, in place of the one before."""
        self.kind = kind
        self._write(text, action, on_action)
        self.update()
        self._image.show_picture(_PICTURES[kind], _TONES[kind])
        self.show()
        announce(self, text)

    def paintEvent(self, _event: QPaintEvent) -> None:
        tones = current_tones()
        mark = str(getattr(tones, _TONES[self.kind]))
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(QColor(mark))
        painter.setBrush(blend(mark, tones.base, GROUND))
        painter.drawRoundedRect(QRectF(self.rect()).adjusted(0.5, 0.5, -0.5, -0.5), RADIUS, RADIUS)

    def focus_action(self) -> None:
        """Give the keyboard to the button, where what it does is the likely answer."""
        self._button.setFocus(Qt.FocusReason.OtherFocusReason)

    def clear(self) -> None:
        """Take the message away."""
        self._act = None
        self.hide()
