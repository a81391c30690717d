"""A rounded frame; it carries the corners that tables and scroll areas cannot."""

from __future__ import annotations

from PySide6.QtWidgets import QFrame, QVBoxLayout, QWidget


class Card(QFrame):
    """A framed ground for one list, form or panel."""

    def __init__(self, content: QWidget | None = None, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setProperty("card", True)
        self.column = QVBoxLayout(self)
        self.column.setContentsMargins(1, 1, 1, 1)
        self.column.setSpacing(0)
        if content is not None:
            self.column.addWidget(content)
