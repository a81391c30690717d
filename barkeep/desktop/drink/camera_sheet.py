"""The sheet on camera: one step at a time in large type, gone through by a key or a tap anywhere.

The type is as large as the step allows. Common practice is a letter at least
a two-hundredth of the distance high: 10 mm at two metres. `CAPITAL_SHARE` of
the height comes to that on a screen 25 cm high; a shorter one is read from nearer.
"""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QRect, QRectF, Qt
from PySide6.QtGui import QColor, QFont, QFontMetrics, QKeyEvent, QMouseEvent, QPainter, QPaintEvent
from PySide6.QtWidgets import QWidget

from barkeep.desktop.look.metrics import UNIT
from barkeep.desktop.look.tones import current_tones
from barkeep.desktop.widgets.drink_picture import draw_drink
from barkeep.desktop.widgets.notices import announce
from barkeep.documents.printed.camera import CameraDrink, CameraStep
from barkeep.translation import tr

CAPITAL_SHARE = 1 / 25
"""The height of a capital in the large type, as a share of the sheet's, at least."""
LEAST_SHARE, MOST_SHARE = 0.03, 0.15
"""The size of the large type, as a share of the sheet's height. What is so long that its
capitals would be too large to fit (some 300 letters) grows smaller: cut off would be worse."""
SMALL_SHARE, LIST_SHARE, LEAST_LIST_SHARE = 0.05, 0.042, 0.018
LIST_WIDTH, LIST_GAP = 0.34, UNIT // 2
PICTURE_SHARE, LEAST_PICTURE_SHARE = 0.4, 0.2
"""How high the drink is drawn, as a share of the sheet's height; less is not worth it."""
BACK_WIDTH = 1 / 3
"""A tap in this share of the width from the left goes back; anywhere else it goes on."""
DONE, NOW, AHEAD = "✓", "▶", "·"


_NEXT = (
    Qt.Key.Key_Space,
    Qt.Key.Key_Right,
    Qt.Key.Key_Return,
    Qt.Key.Key_Enter,
    Qt.Key.Key_PageDown,
)
_BACK = (Qt.Key.Key_Left, Qt.Key.Key_Backspace, Qt.Key.Key_PageUp)
_WORDS = Qt.TextFlag.TextWordWrap | Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft


class CameraSheet(QWidget):
    """A window of its own; `showFullScreen` shows it, Esc closes it."""

    def __init__(self, drinks: Sequence[CameraDrink], parent: QWidget | None = None) -> None:
        super().__init__(parent, Qt.WindowType.Window)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(tr("On camera"))
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setCursor(Qt.CursorShape.PointingHandCursor)
        self.setMinimumSize(480, 320)
        self.resize(1024, 640)
        self._drinks = tuple(drinks)
        self._drink = self._step = 0
        self._tell()

    @property
    def drink(self) -> CameraDrink | None:
        """The drink that is shown, None where there is none."""
        return self._drinks[self._drink] if self._drinks else None

    @property
    def step(self) -> CameraStep:
        """The step that is shown."""
        return self.drink.steps[self._step] if self.drink else CameraStep(tr("No drink to show"))

    @property
    def place(self) -> str:
        """Which drink of how many, and which step of how many."""
        if self.drink is None:
            return ""
        steps = len(self.drink.steps)
        return tr(
            "Drink {drink} of {drinks}: {name}   step {step} of {steps}",
            drink=self._drink + 1,
            drinks=len(self._drinks),
            name=self.drink.name,
            step=self._step + 1,
            steps=steps,
        )

    def go_on(self) -> None:
        """Show the next step, or the next drink after the last."""
        if self.drink is None:
            return
        if self._step + 1 < len(self.drink.steps):
            self._go(self._drink, self._step + 1)
        elif self._drink + 1 < len(self._drinks):
            self._go(self._drink + 1, 0)

    def go_back(self) -> None:
        """Show the step before, or the last of the drink before."""
        if self._step:
            self._go(self._drink, self._step - 1)
        elif self._drink:
            self._go(self._drink - 1, len(self._drinks[self._drink - 1].steps) - 1)

    def change_drink(self, by: int) -> None:
        """Show the first step of another drink."""
        if 0 <= self._drink + by < len(self._drinks):
            self._go(self._drink + by, 0)

    def marks(self) -> tuple[tuple[str, str], ...]:
        """The lines of the list beside, each with its mark: poured, now, or ahead."""
        if self.drink is None:
            return ()
        before = [each.line for each in self.drink.steps[: self._step]]
        return tuple(
            (NOW if self.step.line == number else DONE if number in before else AHEAD, line)
            for number, line in enumerate(self.drink.lines)
        )

    # What arrives

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key = event.key()
        if key in _NEXT:
            self.go_on()
        elif key in _BACK:
            self.go_back()
        elif key in (Qt.Key.Key_Down, Qt.Key.Key_N):
            self.change_drink(1)
        elif key in (Qt.Key.Key_Up, Qt.Key.Key_P):
            self.change_drink(-1)
        elif key == Qt.Key.Key_Home:
            self._go(self._drink, 0)
        elif key == Qt.Key.Key_F:
            self.setWindowState(self.windowState() ^ Qt.WindowState.WindowFullScreen)
        elif key == Qt.Key.Key_Escape:
            self.close()
        else:
            super().keyPressEvent(event)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """A tap; a touch arrives as one as well."""
        if event.position().x() < self.width() * BACK_WIDTH:
            self.go_back()
        else:
            self.go_on()

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        """Two quick taps are two taps."""
        self.mousePressEvent(event)

    def _go(self, drink: int, step: int) -> None:
        self._drink, self._step = drink, step
        self._tell()
        self.update()

    def _tell(self) -> None:
        said = " ".join(part for part in (self.step.text, self.step.below) if part)
        self.setAccessibleName(said)
        picture = None if self.drink is None else self.drink.picture
        seen = "" if picture is None else f". {picture.in_words}"
        self.setAccessibleDescription(f"{self.place}{seen}")
        announce(self, said)

    # How it looks

    def text_area(self) -> QRect:
        """Where the step stands."""
        edge, foot = 4 * UNIT, self._foot()
        width = round(self.width() * (1 - LIST_WIDTH)) - 2 * edge
        return QRect(edge, edge, width, self.height() - foot - 2 * edge)

    def list_area(self) -> QRect:
        """Where the list of lines stands."""
        left, edge = round(self.width() * (1 - LIST_WIDTH)), 3 * UNIT
        height = self.height() - self._foot() - 2 * edge
        return QRect(left, edge, self.width() - left - edge, height)

    def text_font(self) -> QFont:
        """The largest type in which the step fits."""
        area = self.text_area()
        room = area.adjusted(0, 0, 0, -self._below_height())
        return self._fitted(self.step.text, room, MOST_SHARE, LEAST_SHARE, bold=True)

    def list_font(self) -> QFont:
        """The largest type in which the whole list fits."""
        words = "\n".join(f"{mark} {line}" for mark, line in self.marks())
        room = self.list_area().adjusted(0, 0, 0, -LIST_GAP * len(self.marks()))
        # What is now is bold, which is wider: all is measured as if it were.
        return self._fitted(words, room, LIST_SHARE, LEAST_LIST_SHARE, bold=True)

    def paintEvent(self, _event: QPaintEvent) -> None:
        tones = current_tones()
        painter = QPainter(self)
        painter.fillRect(self.rect(), QColor(tones.base))
        self._paint_step(painter, QColor(tones.text), QColor(tones.muted))
        painter.fillRect(self._list_ground(), QColor(tones.nav))
        end = self._paint_list(painter, QColor(tones.on_nav), QColor(tones.nav_muted))
        self._paint_drink(painter, end)
        self._paint_foot(painter, QColor(tones.accent), QColor(tones.on_accent))
        painter.end()

    def _paint_step(self, painter: QPainter, text: QColor, muted: QColor) -> None:
        area = self.text_area()
        room = area.adjusted(0, 0, 0, -self._below_height())
        painter.setPen(text)
        painter.setFont(self.text_font())
        painter.drawText(room, int(_WORDS), self.step.text)
        if self.step.below:
            below = QRect(area.left(), room.bottom(), area.width(), self._below_height())
            painter.setPen(muted)
            words = self._fitted(self.step.below, below, 0.09, 0.03, bold=False)
            painter.setFont(words)
            painter.drawText(below, int(_WORDS), self.step.below)

    def _paint_drink(self, painter: QPainter, below: int) -> None:
        """The drink in its glass where the list leaves room for it; no letter is smaller for it."""
        picture = None if self.drink is None else self.drink.picture
        room = self.list_area()
        room.setTop(max(below + 2 * UNIT, room.bottom() - round(self.height() * PICTURE_SHARE)))
        if picture is None or room.height() < self.height() * LEAST_PICTURE_SHARE:
            return
        tones = current_tones()
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(tones.base))
        painter.drawRoundedRect(room, UNIT, UNIT)
        inside = QRectF(room.adjusted(UNIT, UNIT, -UNIT, -UNIT))
        draw_drink(painter, inside, picture, tones)
        painter.restore()

    def _paint_list(self, painter: QPainter, text: QColor, muted: QColor) -> int:
        """Paint it; where it ends."""
        area, font = self.list_area(), self.list_font()
        top = area.top()
        for mark, line in self.marks():
            own = QFont(font)
            own.setBold(mark == NOW)
            painter.setFont(own)
            painter.setPen(text if mark == NOW else muted)
            words = f"{mark} {line}"
            place = QRect(area.left(), top, area.width(), area.bottom() - top)
            used = painter.boundingRect(place, int(Qt.TextFlag.TextWordWrap), words)
            painter.drawText(place, int(Qt.TextFlag.TextWordWrap), words)
            top += used.height() + LIST_GAP
        return top

    def _paint_foot(self, painter: QPainter, ground: QColor, text: QColor) -> None:
        foot = QRect(0, self.height() - self._foot(), self.width(), self._foot())
        steps = len(self.drink.steps) if self.drink else 1
        done = QRect(foot.left(), foot.top(), round(foot.width() * (self._step + 1) / steps), UNIT)
        painter.fillRect(foot, QColor(current_tones().raised))
        painter.fillRect(done, ground)
        painter.setPen(QColor(current_tones().text))
        words = foot.adjusted(3 * UNIT, UNIT, -3 * UNIT, 0)
        painter.setFont(self._fitted(self.place, words, SMALL_SHARE, 0.018, bold=False))
        painter.drawText(words, int(Qt.AlignmentFlag.AlignVCenter), self.place)

    def _list_ground(self) -> QRect:
        area = self.list_area()
        left = area.left() - 2 * UNIT
        return QRect(left, 0, self.width() - left, self.height() - self._foot())

    def _foot(self) -> int:
        return max(6 * UNIT, round(self.height() * 0.09))

    def _below_height(self) -> int:
        return round(self.text_area().height() * 0.22) if self.step.below else 0

    def _fitted(self, words: str, room: QRect, most: float, least: float, *, bold: bool) -> QFont:
        """The largest type between two shares of the height in which words fit a room."""
        font = QFont(self.font())
        font.setBold(bold)
        size = round(self.height() * most)
        smallest = max(8, round(self.height() * least))
        while size > smallest:
            font.setPixelSize(size)
            used = QFontMetrics(font).boundingRect(room, int(Qt.TextFlag.TextWordWrap), words)
            if used.height() <= room.height() and used.width() <= room.width():
                break
            size -= 1
        font.setPixelSize(max(size, smallest))
        return font


def open_on_camera(drinks: Sequence[CameraDrink], parent: QWidget) -> CameraSheet:
    """Show the sheet on the whole screen."""
    sheet = CameraSheet(drinks, parent)
    sheet.showFullScreen()
    return sheet
