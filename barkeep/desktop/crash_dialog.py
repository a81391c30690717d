"""What is shown after a fault of the program; the program itself goes on."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import Qt, QUrl
from PySide6.QtGui import QDesktopServices, QFontDatabase, QGuiApplication
from PySide6.QtWidgets import QDialog, QHBoxLayout, QPlainTextEdit, QVBoxLayout, QWidget

from barkeep.desktop.metrics import PAD, UNIT, TypeSize
from barkeep.desktop.widgets.buttons import button, primary_button
from barkeep.desktop.widgets.labels import PictureLabel, text_label

TITLE = "barkeep has a fault"
WORDS = (
    "The last step may not have been done. What was saved before is safe, and you can go on. "
    "If it happens again, send the details below to whoever looks after barkeep."
)


class CrashDialog(QDialog):
    """Shows details and the log's place; later faults are added to an open dialog."""

    def __init__(self, details: str, log: Path, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle(TITLE)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.resize(640, 440)
        self._log = log
        self._details = QPlainTextEdit(details)
        self._details.setReadOnly(True)
        self._details.setAccessibleName("Details")
        self._details.setFont(QFontDatabase.systemFont(QFontDatabase.SystemFont.FixedFont))
        column = QVBoxLayout(self)
        column.setContentsMargins(PAD, PAD, PAD, PAD)
        column.setSpacing(UNIT)
        head = QHBoxLayout()
        head.setSpacing(UNIT)
        head.addWidget(PictureLabel("error", 32, "danger"))
        head.addWidget(text_label(TITLE, TypeSize.SUBTITLE), 1)
        column.addLayout(head)
        column.addWidget(text_label(WORDS, wrap=True))
        column.addWidget(self._details, 1)
        column.addWidget(text_label(f"Written to {log}", TypeSize.CAPTION, quiet=True, wrap=True))
        column.addLayout(self._buttons())

    @property
    def details(self) -> str:
        """What is shown, and copied."""
        return self._details.toPlainText()

    def add(self, details: str) -> None:
        """Show one more fault below the others."""
        self._details.appendPlainText(f"\n{'-' * 40}\n{details}")

    def copy(self) -> None:
        """Put the details on the clipboard."""
        QGuiApplication.clipboard().setText(self.details)

    def _buttons(self) -> QHBoxLayout:
        row = QHBoxLayout()
        row.setSpacing(UNIT)
        row.addWidget(button("&Copy details", self.copy))
        row.addWidget(button("Open log &folder", self._open_folder))
        row.addStretch(1)
        close = primary_button("&Go on", self.accept)
        close.setDefault(True)
        close.setFocus()
        row.addWidget(close)
        return row

    def _open_folder(self) -> None:
        QDesktopServices.openUrl(QUrl.fromLocalFile(str(self._log.parent)))
