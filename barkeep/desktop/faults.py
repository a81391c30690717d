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

from PySide6.QtCore import QObject, Qt, Signal, qVersion

from barkeep import __version__

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

    def _on_error(
        self,
        kind: type[BaseException],
        error: BaseException,
        trace: TracebackType | None,
    ) -> None:
        if issubclass(kind, KeyboardInterrupt):
            sys.__excepthook__(kind, error, trace)
            return
        details = details_of(error)
        LOGGER.error("%s", details)
        self._from_anywhere.emit(details)

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
