"""All that a bar holds, told by one short number: a digest of its file as SQLite has it.

Where two files have the same digest, whatever is read from the one would be
read from the other. SQLAlchemy is not here, so that a command may ask this
before it loads it.
"""

from __future__ import annotations

import os
import sqlite3
from contextlib import closing
from hashlib import blake2b
from pathlib import Path

MOST_BYTES = 8_000_000
"""Of a larger file no digest is given: who keeps what was read of it would fill the disk."""

_BESIDE = ("-journal", "-wal", "-shm")
"""What SQLite puts behind a file's name for those it keeps beside it."""


def digest_of_file(path: Path) -> str | None:
    """The digest of a bar that nobody has open for writing; None for any other file.

    None too where the file must be put in order first, or cannot be written
    to: all that is for who opens it to see. The file is not changed.
    """
    try:
        if not path.is_file() or any(Path(f"{path}{end}").exists() for end in _BESIDE):
            return None
        if not (os.access(path, os.W_OK) and os.access(path.parent, os.W_OK)):
            return None
        # Through SQLite and its locks: no other program is half way through a change.
        with closing(
            sqlite3.connect(f"{path.as_uri()}?mode=ro", uri=True, timeout=0, isolation_level=None)
        ) as file:
            file.execute("BEGIN")
            return digest(file)
    except (OSError, sqlite3.Error):
        return None


def digest(file: sqlite3.Connection) -> str | None:
    """The digest of an open file, as this connection sees it; None for a large one."""
    pages, size = (
        int(file.execute(f"PRAGMA {each}").fetchone()[0]) for each in ("page_count", "page_size")
    )
    if pages * size > MOST_BYTES:
        return None
    return blake2b(file.serialize(), digest_size=32).hexdigest()
