"""A bar in a file, or a folder, that may not be written: opened to be looked at."""

from __future__ import annotations

import os
from contextlib import closing
from pathlib import Path

from barkeep.errors import UnreadableFile
from barkeep.store.backup import connected
from barkeep.store.connection import read_header, spoken_errors
from barkeep.store.migrations import refuse_unknown, schema_number


def is_read_only(path: Path) -> bool:
    """Whether there is a file that cannot be written, or whose folder takes no journal."""
    return path.is_file() and not (os.access(path, os.W_OK) and os.access(path.parent, os.W_OK))


def see_that_it_is_sound(path: Path, wait_ms: int) -> None:
    """Refuse what only a bar that may be written could be made of.

    Raises `UnreadableFile`, `NewerBar` or `BarIsBusy`.
    """
    header = read_header(path, wait_ms)
    refuse_unknown(path, header)
    if header is not None and header.schema < schema_number():
        reason = "it is read-only, and of an older barkeep; copy it to where it can be written"
        raise UnreadableFile(str(path), reason)
    with spoken_errors(path), closing(connected(path, wait_ms)) as file:
        found = [str(row[0]) for row in file.execute("PRAGMA quick_check")]
    if found != ["ok"]:
        raise UnreadableFile(str(path), f"it is damaged ({found[0]})")
