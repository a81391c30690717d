"""A bar in a file, or a folder, that may not be written: opened to be looked at."""

from __future__ import annotations

import os
from pathlib import Path

from barkeep.errors import UnreadableFile
from barkeep.store.checking import known_header, opened_to_look, refuse_damaged
from barkeep.store.migrations import schema_number
from barkeep.translation import tr


def is_read_only(path: Path) -> bool:
    """Whether there is a file that cannot be written, or whose folder takes no journal."""
    try:
        is_there = path.is_file()
    except OSError:  # a name that is too long, say: whoever opens it says so
        return False
    return is_there and not (os.access(path, os.W_OK) and os.access(path.parent, os.W_OK))


def see_that_it_is_sound(path: Path, wait_ms: int) -> None:
    """Refuse what only a bar that may be written could be made of.

    Raises `NoBarThere`, `UnreadableFile`, `NewerBar` or `BarIsBusy`.
    """
    if known_header(path, wait_ms).schema < schema_number():
        reason = tr("it is read-only, and of an older barkeep; copy it to where it can be written")
        raise UnreadableFile(str(path), reason)
    with opened_to_look(path, wait_ms) as file:
        refuse_damaged(path, file)
