"""Specs dragged out of a list with the mouse, and taken where they are dropped."""

from __future__ import annotations

import json
from collections.abc import Callable, Sequence

from PySide6.QtCore import QByteArray, QEvent, QMimeData, QObject, QPoint, Qt, Signal
from PySide6.QtGui import QDrag, QDropEvent, QMouseEvent
from PySide6.QtWidgets import QAbstractItemView, QApplication, QLabel

from barkeep.domain.phrases import counted

SPECS = "application/x-barkeep-specs"
"""What is carried: the names of specs, as a list in JSON."""


class DragsSpecs(QObject):
    """Lets what is `chosen` in a list, by name, be dragged elsewhere.

    A press on one of several that are chosen leaves them so until it is known not to be the
    beginning of a drag.
    """

    def __init__(self, view: QAbstractItemView, chosen: Callable[[], Sequence[str]]) -> None:
        super().__init__(view)
        self._view, self._chosen = view, chosen
        self._pressed_at: QPoint | None = None
        self._is_put_off = False
        self._was_dragged = False
        """Since the last press: what is left of that is no choosing."""
        view.viewport().installEventFilter(self)

    def eventFilter(self, _watched: QObject, event: QEvent) -> bool:
        if not isinstance(event, QMouseEvent):
            return False
        match event.type():
            case QEvent.Type.MouseButtonPress:
                return self._press(event)
            case QEvent.Type.MouseMove if self._pressed_at is not None:
                return self._move(event, self._pressed_at)
            case QEvent.Type.MouseMove:
                return self._was_dragged
            case QEvent.Type.MouseButtonRelease:
                self._release()
        return False

    def _press(self, event: QMouseEvent) -> bool:
        self._was_dragged = False
        index = self._view.indexAt(event.position().toPoint())
        plain = event.modifiers() == Qt.KeyboardModifier.NoModifier
        if event.button() != Qt.MouseButton.LeftButton or not plain or not index.isValid():
            self._pressed_at = None
            return False
        self._pressed_at = event.position().toPoint()
        selected = self._view.selectionModel()
        self._is_put_off = selected.isSelected(index) and len(self._chosen()) > 1
        return self._is_put_off

    def _move(self, event: QMouseEvent, pressed_at: QPoint) -> bool:
        far = (event.position().toPoint() - pressed_at).manhattanLength()
        if far >= QApplication.startDragDistance():
            self._pressed_at, self._is_put_off = None, False
            self._was_dragged = True
            drag_specs(self._chosen(), self._view)
        return True  # or the rows it goes over would be chosen

    def _release(self) -> None:
        if self._is_put_off and self._pressed_at is not None:
            self._view.setCurrentIndex(self._view.indexAt(self._pressed_at))
            self._view.setFocus(Qt.FocusReason.MouseFocusReason)
        self._pressed_at, self._is_put_off = None, False
        self._was_dragged = False


def drag_specs(names: Sequence[str], source: QAbstractItemView) -> None:
    """Drag specs, seen below the mouse, until they are dropped."""
    carried = QMimeData()
    carried.setData(SPECS, QByteArray(json.dumps([*names]).encode()))
    label = QLabel(names[0] if len(names) == 1 else counted(len(names), "spec"))
    label.setContentsMargins(8, 4, 8, 4)
    drag = QDrag(source)
    drag.setMimeData(carried)
    drag.setPixmap(label.grab())
    drag.exec(Qt.DropAction.CopyAction)


class TakesSpecs(QObject):
    """Takes specs that are dropped on one row of a list; `dropped` carries their names."""

    dropped = Signal(object)

    def __init__(self, view: QAbstractItemView, row: int) -> None:
        super().__init__(view)
        self._view, self._row = view, row
        view.viewport().setAcceptDrops(True)
        view.viewport().installEventFilter(self)

    def eventFilter(self, _watched: QObject, event: QEvent) -> bool:
        if not isinstance(event, QDropEvent) or not event.mimeData().hasFormat(SPECS):
            return False
        if event.type() != QEvent.Type.DragEnter and not self._is_over(event):
            event.ignore()
            return True
        event.setDropAction(Qt.DropAction.CopyAction)
        event.accept()
        if event.type() == QEvent.Type.Drop:
            self.dropped.emit(json.loads(bytes(event.mimeData().data(SPECS).data())))
        return True

    def _is_over(self, event: QDropEvent) -> bool:
        return self._view.indexAt(event.position().toPoint()).row() == self._row
