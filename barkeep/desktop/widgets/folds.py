"""Parts of a page that open and close: which are open is remembered, for each kind of page."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QObject, QSize, Qt, Signal
from PySide6.QtGui import QKeyEvent, QMouseEvent, QPalette, QResizeEvent
from PySide6.QtWidgets import QBoxLayout, QWidget

from barkeep.desktop.look.icons import wear
from barkeep.desktop.look.metrics import HALF, PAD, UNIT, TypeSize, set_type
from barkeep.desktop.widgets.buttons import WordedButton
from barkeep.desktop.widgets.labels import PictureLabel, text_label
from barkeep.desktop.widgets.layouts import at_top, column_of, laid_out_once, row_of, wide
from barkeep.desktop.widgets.terms import explain_instead, word_in
from barkeep.translation import tr, tr_noop

ALL = "*"
"""Stands for every fold that nothing else is said of."""
OPEN_ALL, CLOSE_ALL = tr_noop("Open every part"), tr_noop("Close every part")


class Folds(QObject):
    """Which folds of one kind of page are open; `turned` is told of each change.

    What is remembered are the user's own turns, as words; what a page opens at first is its own.
    """

    turned = Signal()
    grown = Signal()
    """The Tab key must find another fold at its place."""

    def __init__(self, words: str = "", parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._said: dict[str, bool] = {}
        self.take(words)

    def is_open(self, key: str, at_first: bool) -> bool:
        """Whether a fold is open; `at_first` where nobody has turned it."""
        return self._said.get(key, self._said.get(ALL, at_first))

    def turn(self, key: str, is_open: bool) -> None:
        """Open or close one, or all of them."""
        if key == ALL:
            self._said.clear()
        self._said[key] = is_open
        self.turned.emit()

    def grow(self) -> None:
        """Tell that something was made that takes the Tab key."""
        self.grown.emit()

    @property
    def words(self) -> str:
        """What was turned, to be remembered: *method=open notes=shut*."""
        return " ".join(
            f"{key}={'open' if each else 'shut'}" for key, each in sorted(self._said.items())
        )

    def take(self, words: str) -> None:
        """Take what was remembered; words that say nothing are passed over."""
        said = (each.partition("=") for each in words.split())
        self._said = {key: how == "open" for key, _, how in said if how in ("open", "shut")}


class _FoldButton(WordedButton):
    """Enter and Space turn it, Right opens, Left closes, Up and Down go to its neighbours."""

    wanted = Signal(bool)

    def __init__(self) -> None:
        super().__init__()
        self.setProperty("fold", True)
        self.is_open = False
        self._picture = ""
        set_type(self, TypeSize.STRONG)
        self.clicked.connect(lambda: self.wanted.emit(not self.is_open))

    def show_state(self, words: str, about: str, *, is_open: bool) -> None:
        """Say what it opens, and whether that is open; what its word means, to who asks."""
        self.is_open = is_open
        self.setText(words.replace("&", "&&"))
        self.setAccessibleName(
            tr("{part}, open", part=words) if is_open else tr("{part}, closed", part=words)
        )
        explain_instead(self, word_in(words), about)
        picture = "chevron-up" if is_open else "chevron-down"
        if picture != self._picture:
            self._picture = picture
            wear(self, picture)

    def minimumSizeHint(self) -> QSize:
        """Narrow where it must be: the words are cut off by the edge rather than the page."""
        return QSize(0, super().minimumSizeHint().height())

    def keyPressEvent(self, event: QKeyEvent) -> None:
        keys = Qt.Key
        match event.key():
            case keys.Key_Right | keys.Key_Left:
                is_open = event.key() == keys.Key_Right
                if is_open != self.is_open:
                    self.wanted.emit(is_open)
            case keys.Key_Return | keys.Key_Enter:
                self.click()
            case keys.Key_Up | keys.Key_Down:
                self._go(1 if event.key() == keys.Key_Down else -1)
            case _:
                super().keyPressEvent(event)

    def _go(self, by: int) -> None:
        """To the next fold that is seen on the page, if there is one."""
        folds = [each for each in self.window().findChildren(_FoldButton) if each.isVisible()]
        folds.sort(key=lambda each: each.mapToGlobal(each.rect().topLeft()).y())
        place = folds.index(self) + by
        if 0 <= place < len(folds):
            folds[place].setFocus(Qt.FocusReason.TabFocusReason)


class FoldHead(QWidget):
    """The line that is left of a fold when it is closed: what is in it, and that in brief.

    `wanted` is told that it should be open, or closed. A click on the brief words opens it too.
    """

    wanted = Signal(bool)

    def __init__(self) -> None:
        super().__init__()
        self.button = _FoldButton()
        self._tag = PictureLabel("warning", 16, "warning")
        self.brief = text_label("", quiet=True, wrap=True)
        self.button.wanted.connect(self.wanted)
        self._are_tags = False
        words = row_of(at_top(self._tag), wide(self.brief), gap=HALF, margins=(HALF, 2, 0, 2))
        self._row = column_of(self.button, words, on=self, gap=0)

    def show_fold(self, words: str, brief: str, tone: str = "", *, is_open: bool) -> None:
        """Show what it is of; with a `tone` the brief words are tags, which stay while it is open.

        `tone` is a field of `Tones`.
        """
        with laid_out_once(self):
            self._show(words, brief, tone, is_open=is_open)

    def _show(self, words: str, brief: str, tone: str, *, is_open: bool) -> None:
        self.button.show_state(words, brief, is_open=is_open)
        shown = bool(brief) and (bool(tone) or not is_open)
        self.brief.setText(brief if shown else "")
        self.brief.setVisible(shown)
        self._tag.setVisible(shown and bool(tone))
        self._are_tags = bool(tone)
        role = QPalette.ColorRole
        self.brief.setForegroundRole(role.WindowText if tone else role.PlaceholderText)
        if tone:
            self._tag.show_picture("warning", tone)
        self._arrange()

    def _arrange(self) -> None:
        """Tags stand beside the words where they have room for one line."""
        wanted = self.button.sizeHint().width() + self._tag.width() + 2 * UNIT
        wanted += self.brief.fontMetrics().horizontalAdvance(self.brief.text())
        beside = self._are_tags and wanted <= self.width()
        way = QBoxLayout.Direction.LeftToRight if beside else QBoxLayout.Direction.TopToBottom
        if way != self._row.direction():
            self._row.setDirection(way)
            self._row.setStretch(1, 1 if beside else 0)
            self.updateGeometry()  # one line is lower than two

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._arrange()

    def mousePressEvent(self, event: QMouseEvent) -> None:
        if event.button() == Qt.MouseButton.LeftButton:
            self.wanted.emit(not self.button.is_open)
        event.accept()


class FoldedPart(QWidget):
    """A fold around widgets of its own, which are filled only while it is open."""

    def __init__(self, folds: Folds, key: str, content: QWidget) -> None:
        super().__init__()
        self._folds, self._key = folds, key
        self._content = content
        self._words, self._brief = "", ""
        self._fill: Callable[[], object] | None = None
        self.head = FoldHead()
        self.head.wanted.connect(self._turn)
        folds.turned.connect(self._show)
        column_of(self.head, content, on=self, margins=(0, PAD, 0, 0), gap=HALF)

    def show_part(self, words: str, brief: str, fill: Callable[[], object]) -> None:
        """Show another: what is in it, that in brief, and what fills it once it is open."""
        self._words, self._brief, self._fill = words, brief, fill
        self._show()

    def _show(self) -> None:
        is_open = self._folds.is_open(self._key, at_first=False)
        with laid_out_once(self):
            self.head.show_fold(self._words, self._brief, is_open=is_open)
            if is_open and self._fill is not None:
                self._fill()
                self._fill = None
            self._content.setVisible(is_open)

    def _turn(self, is_open: bool) -> None:
        self._folds.turn(self._key, is_open)
