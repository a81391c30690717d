"""Copies that are not finished: where they are made, and what is left of those broken off.

A copy is made in a hidden folder of its own beside what it is to become, and
moved out of it once it is whole. That folder's name says whose it is, so that
the next copy made there clears away what a program left that was stopped.
"""

from __future__ import annotations

import os
import platform
import re
import shutil
import time
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from pathlib import Path
from tempfile import TemporaryDirectory
from zlib import crc32

_HOST = f"{crc32(platform.node().encode()):08x}"
_OWN = re.compile(r"\.barkeep-(?P<host>[0-9a-f]{8})-(?P<process>[0-9]+)-[^-]+\.part")

_OLD_S = 86_400.0
"""What was begun so many seconds ago is nobody's any more, wherever they are."""


@contextmanager
def unfinished_in(folder: Path) -> Iterator[Path]:
    """A name for a copy that will be moved into a folder; what is left there is gone afterwards.

    Raises `OSError` where the folder takes nothing.
    """
    clear_unfinished(folder)
    prefix = f".barkeep-{_HOST}-{os.getpid()}-"
    with TemporaryDirectory(
        dir=folder, prefix=prefix, suffix=".part", ignore_cleanup_errors=True
    ) as own:
        yield Path(own) / "copy.part"


def clear_unfinished(folder: Path) -> None:
    """Delete the copies in a folder that nobody is making any more; what stays is no harm."""
    with suppress(OSError):
        for path in folder.iterdir():
            own = _OWN.fullmatch(path.name)
            if own is not None and _is_nobodys(path, own["host"], int(own["process"])):
                shutil.rmtree(path, ignore_errors=True)


def _is_nobodys(path: Path, host: str, process: int) -> bool:
    if host == _HOST and not _runs(process):
        return True
    with suppress(OSError):
        return path.stat().st_mtime < time.time() - _OLD_S
    return False


def _runs(process: int) -> bool:
    """Whether a process of this machine runs, as far as that can be asked without ending it."""
    if os.name != "posix":
        return True
    try:
        os.kill(process, 0)
    except ProcessLookupError:
        return False
    except OSError:  # it is another user's, say
        return True
    return True
