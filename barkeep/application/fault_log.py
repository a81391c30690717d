"""Where faults of the program are written down: a log that never grows beyond a few files."""

from __future__ import annotations

from logging.handlers import RotatingFileHandler
from pathlib import Path

LOG_BYTES, LOG_FILES = 512 * 1024, 3


def rotating(log: Path) -> RotatingFileHandler:
    """What writes to a log; once it is full it is put aside, and the oldest goes."""
    return RotatingFileHandler(
        log, maxBytes=LOG_BYTES, backupCount=LOG_FILES, encoding="utf-8", delay=True
    )
