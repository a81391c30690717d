"""Where faults of the program are written down: a log that never grows beyond a few files."""

from __future__ import annotations

import logging
from pathlib import Path
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from logging.handlers import RotatingFileHandler

LOG_BYTES, LOG_FILES = 512 * 1024, 3


def rotating(log: Path) -> RotatingFileHandler:
    """What writes to a log; once it is full it is put aside, and the oldest goes."""
    from logging.handlers import RotatingFileHandler  # slow to load, and few starts have a fault

    return RotatingFileHandler(
        log, maxBytes=LOG_BYTES, backupCount=LOG_FILES, encoding="utf-8", delay=True
    )


class FaultLog(logging.Handler):
    """The same, which is made for the first fault."""

    def __init__(self, log: Path) -> None:
        super().__init__()
        self._log = log
        self._writes: logging.Handler | None = None

    def emit(self, record: logging.LogRecord) -> None:
        if self._writes is None:
            self._writes = rotating(self._log)
            self._writes.setFormatter(self.formatter)
        self._writes.handle(record)

    def close(self) -> None:
        if self._writes is not None:
            self._writes.close()
        super().close()
