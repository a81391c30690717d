"""Faults of the program: written to a log, shown once, and survived."""

from __future__ import annotations

import faulthandler
import logging
import platform
import sys
import threading
import traceback
from collections.abc import Callable
from logging.handlers import RotatingFileHandler
from pathlib import Path
from types import TracebackType

from PySide6.QtCore import QObject, Qt, QUrl, Signal, qVersion
from PySide6.QtGui import QDesktopServices, QFontDatabase, QGuiApplication
from PySide6.QtWidgets import QDialog, QHBoxLayout, QPlainTextEdit, QWidget

from barkeep import __version__
from barkeep.desktop.look.metrics import PAD, TypeSize
from barkeep.desktop.widgets.buttons import button, primary_button
from barkeep.desktop.widgets.labels import PictureLabel, text_label
from barkeep.desktop.widgets.layouts import SPRING, column_of, row_of, wide

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
        head = row_of(
            PictureLabel("error", 32, "danger"), wide(text_label(TITLE, TypeSize.SUBTITLE))
        )
        column_of(
            head,
            text_label(WORDS, wrap=True),
            wide(self._details),
            text_label(f"Written to {log}", TypeSize.CAPTION, quiet=True, wrap=True),
            self._buttons(),
            on=self,
            margins=PAD,
        )

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
        close = primary_button("&Go on", self.accept)
        close.setDefault(True)
        close.setFocus()
        return row_of(
            button("&Copy details", self.copy),
            button("Open log &folder", self._open_folder),
            SPRING,
            close,
        )

    def _open_folder(self) -> None:
        QDesktopServices.openUrl(QUrl.fromLocalFile(str(self._log.parent)))


LOGGER = logging.getLogger("barkeep")
LOG_BYTES, LOG_FILES = 512 * 1024, 3


class Faults(QObject):
    """Catches what nothing else caught; `met` carries the details, on the GUI thread."""

    met = Signal(str)
    _from_anywhere = Signal(str)

    def __init__(self, log: Path, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.log = log
        self._from_anywhere.connect(self.met, Qt.ConnectionType.QueuedConnection)
        self._handler = RotatingFileHandler(
            log, maxBytes=LOG_BYTES, backupCount=LOG_FILES, encoding="utf-8", delay=True
        )
        self._handler.setFormatter(logging.Formatter("%(asctime)s %(levelname)s %(message)s"))
        LOGGER.addHandler(self._handler)
        self._before: Callable[..., object] = sys.excepthook
        self._stacks = log.with_suffix(".stack").open("a", encoding="utf-8")

    def catch(self) -> None:
        """From now on take every uncaught error, of this thread and others, and hard crashes."""
        sys.excepthook = self._on_error
        threading.excepthook = self._on_thread_error
        faulthandler.enable(self._stacks)

    def stop(self) -> None:
        """Put everything back and close the log."""
        sys.excepthook = self._before
        threading.excepthook = threading.__excepthook__
        faulthandler.disable()
        LOGGER.removeHandler(self._handler)
        self._handler.close()
        self._stacks.close()

    def write_down(self, error: BaseException) -> str:
        """Write an error to the log; its details."""
        details = details_of(error)
        LOGGER.error("%s", details)
        return details

    def _on_error(
        self,
        kind: type[BaseException],
        error: BaseException,
        trace: TracebackType | None,
    ) -> None:
        if issubclass(kind, KeyboardInterrupt):
            sys.__excepthook__(kind, error, trace)
            return
        self._from_anywhere.emit(self.write_down(error))

    def _on_thread_error(self, args: threading.ExceptHookArgs) -> None:
        if args.exc_value is not None:
            self._on_error(args.exc_type, args.exc_value, args.exc_traceback)


def details_of(error: BaseException) -> str:
    """Everything a report needs: versions, platform, and where it happened."""
    trace = "".join(traceback.format_exception(error))
    return f"{versions()}\n\n{trace}"


def versions() -> str:
    """barkeep, Python, Qt and the platform, one line each."""
    return "\n".join(
        (
            f"barkeep {__version__}",
            f"Python {platform.python_version()}",
            f"Qt {qVersion()}",
            platform.platform(),
        )
    )
