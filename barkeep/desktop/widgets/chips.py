"""Chips: one choice of a few, a choice that drops down, and what is on or off."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from PySide6.QtCore import QMargins, QPoint, QRect, QSize, Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import (
    QButtonGroup,
    QComboBox,
    QLayout,
    QLayoutItem,
    QPushButton,
    QSizePolicy,
    QStyle,
    QStyleOptionComboBox,
    QWidget,
)

from barkeep.desktop.look.metrics import HALF, PAD, UNIT, scaled, set_style
from barkeep.desktop.widgets.layouts import row_of
from barkeep.desktop.widgets.terms import TermLabel, explain
from barkeep.desktop.widgets.tips import plain_tip
from barkeep.translation import tr, tr_about, tr_noop


class FlowLayout(QLayout):
    """As high as its width makes it; every item keeps its own size.

    It asks for no more width than its widest item has, or for all of them in one row.
    """

    def __init__(
        self, widgets: Iterable[QWidget] = (), gap: int = UNIT, *, asks_for_one_row: bool = False
    ) -> None:
        super().__init__()
        self._asks_for_one_row = asks_for_one_row
        self._items: list[QLayoutItem] = []
        self._heights: dict[int, int] = {}
        """By the width: it is asked for over and over, until something in it is another."""
        self.setSpacing(gap)
        for each in widgets:
            self.addWidget(each)
        self.setContentsMargins(QMargins())

    def addItem(self, item: QLayoutItem) -> None:
        self._items.append(item)

    def count(self) -> int:
        return len(self._items)

    def itemAt(self, index: int) -> QLayoutItem | None:
        return self._items[index] if 0 <= index < len(self._items) else None

    def takeAt(self, index: int) -> QLayoutItem | None:
        return self._items.pop(index) if 0 <= index < len(self._items) else None

    def expandingDirections(self) -> Qt.Orientation:
        return Qt.Orientation(0)

    def hasHeightForWidth(self) -> bool:
        return True

    def invalidate(self) -> None:
        self._heights.clear()
        super().invalidate()

    def heightForWidth(self, width: int) -> int:
        if width not in self._heights:
            self._heights[width] = self._flow(QRect(0, 0, width, 0), move=False)
        return self._heights[width]

    def setGeometry(self, rect: QRect) -> None:
        super().setGeometry(rect)
        self._flow(rect, move=True)

    def sizeHint(self) -> QSize:
        if not self._asks_for_one_row:
            return self.minimumSize()
        hints = [item.sizeHint() for item in self._items if not item.isEmpty()]
        gaps = self.spacing() * max(0, len(hints) - 1)
        height = max((hint.height() for hint in hints), default=0)
        return QSize(sum(hint.width() for hint in hints) + gaps, height)

    def minimumSize(self) -> QSize:
        least = QSize()
        for item in self._items:
            least = least.expandedTo(item.minimumSize())
        return least

    def _flow(self, rect: QRect, *, move: bool) -> int:
        """Place the items in `rect`, those of a row about one middle; the height that takes."""
        top = rect.top()
        for row in self._rows(rect.width()):
            left, height = rect.left(), max(item.sizeHint().height() for item in row)
            for item in row if move else ():
                size = item.sizeHint().boundedTo(QSize(rect.width(), height))
                place = QRect(QPoint(left, top + (height - size.height()) // 2), size)
                item.setGeometry(QStyle.visualRect(self._direction, rect, place))
                left += size.width() + self.spacing()
            top += height + self.spacing()
        return max(0, top - rect.top() - self.spacing())

    @property
    def _direction(self) -> Qt.LayoutDirection:
        """From which side the rows begin."""
        on = self.parentWidget()
        return Qt.LayoutDirection.LeftToRight if on is None else on.layoutDirection()

    def _rows(self, width: int) -> list[list[QLayoutItem]]:
        """The items row by row, as many in each as fit."""
        rows, left = list[list[QLayoutItem]](), 0
        for item in self._items:
            if item.isEmpty():
                continue
            wide = item.sizeHint().width()
            if not rows or left + wide > width:
                rows.append([])
                left = 0
            rows[-1].append(item)
            left += wide + self.spacing()
        return rows


CLOSENESS = (
    ("exact", "Exact", tr_noop("Only what the spec asks for")),
    ("close", "Close", tr_noop("Also close stand-ins, 0.8 and better")),
    ("loose", "Loose", tr_noop("Also loose stand-ins, 0.6 and better")),
)
"""The chips of the closeness filter: key, word, explanation."""


def _closeness(key: str) -> str:
    """The word of a chip: *Close* is what a button of a window says too."""
    words = {
        "exact": tr_about("closeness", "Exact"),
        "close": tr_about("closeness", "Close"),
        "loose": tr_about("closeness", "Loose"),
    }
    return words[key]


class FilterChips(QWidget):
    """`chosen` carries the key of the chip the user picked; the arrow keys walk the row."""

    chosen = Signal(str)

    def __init__(
        self,
        title: str,
        chips: Sequence[tuple[str, str, str]],
        choice: str,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        title = tr(title)
        self.setAccessibleName(title)
        self._group = QButtonGroup(self)
        self._group.setExclusive(True)
        self._buttons: dict[str, QPushButton] = {}
        words = TermLabel(title, quiet=True)
        row = row_of(words, UNIT - HALF, on=self, gap=HALF)
        for key, word, explanation in chips:
            said = _closeness(key) if chips is CLOSENESS else tr(word)
            row.addWidget(self._chip(title, key, said, tr(explanation)))
        if chips is CLOSENESS:
            explain(self, "closeness")
            words.mark()
        self._buttons[choice].setChecked(True)
        self._lead_tab_to_the_choice()
        self._group.buttonToggled.connect(self._on_toggled)

    @property
    def choice(self) -> str:
        """The key of the chip that is on."""
        return next(key for key, each in self._buttons.items() if each.isChecked())

    def choose(self, key: str) -> None:
        """Put another chip on; tells as a click would."""
        self._buttons[key].setChecked(True)

    def chip(self, key: str) -> QPushButton:
        """The button of one chip."""
        return self._buttons[key]

    def _chip(self, title: str, key: str, word: str, explanation: str) -> QPushButton:
        made = QPushButton(word)
        made.setProperty("chip", True)
        made.setCheckable(True)
        made.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)
        made.setToolTip(plain_tip(explanation))
        made.setAccessibleName(f"{title}: {word}")
        made.setAccessibleDescription(explanation)
        self._group.addButton(made)
        self._buttons[key] = made
        return made

    def _on_toggled(self, button: QPushButton, on: bool) -> None:
        if on:
            self._lead_tab_to_the_choice()
            self.chosen.emit(next(key for key, each in self._buttons.items() if each is button))

    def _lead_tab_to_the_choice(self) -> None:
        # Qt does this itself, but only once the row has had the focus.
        for each in self._buttons.values():
            strong, click = Qt.FocusPolicy.StrongFocus, Qt.FocusPolicy.ClickFocus
            each.setFocusPolicy(strong if each.isChecked() else click)


def tick_chip(words: str, explanation: str) -> QPushButton:
    """A chip that is on or off by itself."""
    words, explanation = tr(words), tr(explanation)
    made = QPushButton(words)
    made.setProperty("chip", True)
    made.setCheckable(True)
    made.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)
    made.setToolTip(plain_tip(explanation))
    made.setAccessibleName(words)
    made.setAccessibleDescription(explanation)
    return made


class ChoiceChip(QComboBox):
    """A chip that drops down to choose of many; its first choice is none, and then it is off.

    It is as wide as what is chosen. Delete and Backspace choose none again.
    """

    MOST_WIDE = 190
    """In pixels of plain type; a longer choice is cut, and said whole by its tooltip."""

    def __init__(self, name: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAccessibleName(tr(name))
        self.setProperty("chip", True)
        self.setProperty("from_right", self.isRightToLeft())
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)
        self.currentIndexChanged.connect(self._show_choice)

    @property
    def shown(self) -> str:
        """What stands on it: the choice, or what may be chosen."""
        return self.currentText() if self.currentIndex() > 0 else self.accessibleName()

    def initStyleOption(self, option: QStyleOptionComboBox) -> None:
        super().initStyleOption(option)
        option.currentText = self.shown

    def sizeHint(self) -> QSize:
        words = self.fontMetrics().horizontalAdvance(self.shown)
        wide = min(words, scaled(self.MOST_WIDE)) + scaled(ARROW) + 2 * PAD - HALF
        return QSize(wide, super().sizeHint().height())

    def minimumSizeHint(self) -> QSize:
        return self.sizeHint()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() in (Qt.Key.Key_Delete, Qt.Key.Key_Backspace):
            self.setCurrentIndex(0)
        else:
            super().keyPressEvent(event)

    def _show_choice(self, index: int) -> None:
        set_style(self, "on", index > 0)
        self.setToolTip(plain_tip(self.currentText()) if index > 0 else "")
        self.updateGeometry()


ARROW = 22
"""How wide the arrow of a choice is, in pixels."""
