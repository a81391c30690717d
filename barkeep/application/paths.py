"""Where barkeep keeps its things on this platform."""

from __future__ import annotations

from pathlib import Path

from platformdirs import PlatformDirs

_DIRS = PlatformDirs("barkeep", appauthor=False)


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


def log_file() -> Path:
    """Where faults of the program are written down."""
    return state_folder() / "barkeep.log"


def _made(folder: Path) -> Path:
    folder.mkdir(parents=True, exist_ok=True)
    return folder
