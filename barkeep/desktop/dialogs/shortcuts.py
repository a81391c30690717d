"""The list of keyboard shortcuts, read off the actions themselves."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt
from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import (
    QDialog,
    QFrame,
    QGridLayout,
    QHBoxLayout,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from barkeep.desktop.metrics import PAD, UNIT, WIDE, TypeSize
from barkeep.desktop.widgets.buttons import primary_button
from barkeep.desktop.widgets.labels import text_label

Group = tuple[str, Sequence[QAction]]


def rows_of(actions: Sequence[QAction]) -> tuple[tuple[str, str], ...]:
    """What each action is called and which keys call it; those without keys left out."""
    return tuple((_words(action), keys_of(action)) for action in actions if action.shortcuts())


def keys_of(action: QAction) -> str:
    """An action's shortcuts as this platform writes them."""
    native = QKeySequence.SequenceFormat.NativeText
    return " or ".join(each.toString(native) for each in action.shortcuts())


class ShortcutsDialog(QDialog):
    """Groups of shortcuts under headings."""

    def __init__(self, groups: Sequence[Group], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle("Keyboard shortcuts")
        self.resize(460, 560)
        page = QWidget()
        grid = QGridLayout(page)
        grid.setContentsMargins(0, 0, PAD, 0)
        grid.setHorizontalSpacing(WIDE)
        grid.setVerticalSpacing(UNIT)
        grid.setColumnStretch(0, 1)
        for heading, actions in groups:
            _add_group(grid, heading, rows_of(actions))
        grid.setRowStretch(grid.rowCount(), 1)
        area = QScrollArea()
        area.setWidgetResizable(True)
        area.setFrameShape(QFrame.Shape.NoFrame)
        area.setAccessibleName("Keyboard shortcuts")
        area.setWidget(page)
        column = QVBoxLayout(self)
        column.setContentsMargins(WIDE, PAD, PAD, PAD)
        column.setSpacing(PAD)
        column.addWidget(area, 1)
        column.addLayout(self._buttons())

    def _buttons(self) -> QHBoxLayout:
        row = QHBoxLayout()
        row.addStretch(1)
        close = primary_button("C&lose", self.accept)
        close.setDefault(True)
        row.addWidget(close)
        return row


def _add_group(grid: QGridLayout, heading: str, rows: Sequence[tuple[str, str]]) -> None:
    if not rows:
        return
    first = grid.rowCount()
    title = text_label(heading, TypeSize.SUBTITLE)
    title.setContentsMargins(0, UNIT if first > 1 else 0, 0, 0)
    grid.addWidget(title, first, 0, 1, 2)
    for number, (words, keys) in enumerate(rows, first + 1):
        grid.addWidget(text_label(words), number, 0)
        grid.addWidget(text_label(keys, TypeSize.STRONG), number, 1, Qt.AlignmentFlag.AlignRight)


def _words(action: QAction) -> str:
    """The menu text without mnemonic and ellipsis, and without what undo would undo."""
    text = action.text().replace("&&", "\0").replace("&", "").replace("\0", "&")
    return text.rstrip("…").split(": ")[0].lstrip("0123456789 ")
