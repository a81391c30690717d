"""Where barkeep keeps its things on this platform."""

from __future__ import annotations

import re
import zlib
from pathlib import Path

from platformdirs import PlatformDirs

from barkeep.store.address import At, ServerAddress

_DIRS = PlatformDirs("barkeep", appauthor=False)

MOST_LETTERS = 80
"""Of what a bar on a server is called, in the name of the folder that is kept of it here."""


def data_folder() -> Path:
    """Where bars are kept; made where it is missing."""
    return _made(_DIRS.user_data_path)


def state_folder() -> Path:
    """For logs and how windows were left; made where it is missing."""
    return _made(_DIRS.user_state_path)


def config_folder() -> Path:
    """For what was set in the program, not in a bar; made where it is missing."""
    return _made(_DIRS.user_config_path)


def cache_folder() -> Path:
    """For what can be worked out again at any time; it need not be there."""
    return _DIRS.user_cache_path


def default_bar() -> Path:
    """The bar that opens where none is named."""
    data_folder()
    return where_default_bar_is()


def where_default_bar_is() -> Path:
    """The same for who only looks: nothing is made for it, and it need not be there."""
    return _DIRS.user_data_path / "bar.barkeep"


def file_of(at: At) -> Path:
    """The file of a bar; of one on a server, a path of its own on this machine that is no file.

    Beside it lies what is kept of the bar here, such as its backups.
    """
    if not isinstance(at, ServerAddress):
        return at
    plain = re.sub(r"\W+", "-", f"{at.schema} of {at.database} at {at.host or 'here'}").strip("-")
    mark = zlib.crc32(at.name.encode())
    return where_default_bar_is().with_name("servers") / f"{plain[:MOST_LETTERS]}-{mark:08x}"


def log_file() -> Path:
    """Where faults of the program are written down."""
    return state_folder() / "barkeep.log"


def _made(folder: Path) -> Path:
    folder.mkdir(parents=True, exist_ok=True)
    return folder
