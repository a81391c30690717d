"""Lays widgets out like words: side by side, going on below where there is no more room."""

from __future__ import annotations

from PySide6.QtCore import QMargins, QRect, QSize, Qt
from PySide6.QtWidgets import QLayout, QLayoutItem, QWidget


class FlowLayout(QLayout):
    """As high as its width makes it; every item keeps its own size."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._items: list[QLayoutItem] = []
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

    def heightForWidth(self, width: int) -> int:
        return self._flow(QRect(0, 0, width, 0), move=False)

    def setGeometry(self, rect: QRect) -> None:
        super().setGeometry(rect)
        self._flow(rect, move=True)

    def sizeHint(self) -> QSize:
        return self.minimumSize()

    def minimumSize(self) -> QSize:
        least = QSize()
        for item in self._items:
            least = least.expandedTo(item.minimumSize())
        return least

    def _flow(self, rect: QRect, *, move: bool) -> int:
        """Place the items in `rect`; the height that takes."""
        left, top, row_height = rect.left(), rect.top(), 0
        for item in self._items:
            size = item.sizeHint()
            if left > rect.left() and left + size.width() > rect.right() + 1:
                left, top = rect.left(), top + row_height + self.spacing()
                row_height = 0
            if move:
                item.setGeometry(QRect(left, top, min(size.width(), rect.width()), size.height()))
            left += size.width() + self.spacing()
            row_height = max(row_height, size.height())
        return top + row_height - rect.top()
