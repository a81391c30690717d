"""What was typed in a dialog and not written: kept as it was left, until it is or is dropped."""

from __future__ import annotations

import json
import os
from collections.abc import Mapping
from contextlib import suppress
from datetime import datetime
from hashlib import sha256
from pathlib import Path
from typing import Any

from barkeep.translation import tr, tr_noop

FOLDER = "left"
COUNT, LOG = "shelf-count", "log-"
"""Under which the count of the shelf is left, and before its id the log of a shoot."""
LIST = "bottle-list"
"""Under which a list of bottles is left that is not on the shelf yet."""
START_AFRESH = tr_noop("Start afresh")
"""What drops what was left, where it stands again."""
AT = "at"


def folder_of(bar: Path, state_folder: Path, kind: str) -> Path:
    """Where what is kept of one kind for one bar lies, beside the window's state."""
    digest = sha256(os.fsencode(bar)).hexdigest()[:16]
    return state_folder / kind / digest


def write_whole(file: Path, values: Mapping[str, Any]) -> None:
    """Write plain values to a file, whole or not at all. Raises `OSError`."""
    file.parent.mkdir(parents=True, exist_ok=True)
    beside = file.with_suffix(".new")
    beside.write_text(json.dumps(values, ensure_ascii=False), encoding="utf-8")
    beside.replace(file)  # half a draft is never read


class KeptTyping:
    """What the dialogs of one bar were left with, each under a name of its own.

    It is held here as well as in its file, so that a full disk loses nothing
    before the program ends.
    """

    def __init__(self, state_folder: Path, bar: Path) -> None:
        self._folder = folder_of(bar, state_folder, FOLDER)
        self._held: dict[str, Mapping[str, Any]] = {}

    def keep(self, name: str, values: Mapping[str, Any]) -> None:
        """Keep plain values under a name, with the moment."""
        kept = {AT: datetime.now().isoformat(timespec="minutes"), **values}
        self._held[name] = kept
        with suppress(OSError):
            write_whole(self._file(name), kept)

    def left(self, name: str) -> Mapping[str, Any] | None:
        """What was left under a name; None where nothing was, or nothing that can be read."""
        if name not in self._held:
            with suppress(OSError, ValueError):
                read = json.loads(self._file(name).read_text(encoding="utf-8"))
                if isinstance(read, dict):
                    self._held[name] = read
        return self._held.get(name)

    def drop(self, name: str) -> None:
        """Keep it no longer: it is written, or thrown away."""
        self._held.pop(name, None)
        with suppress(OSError):
            self._file(name).unlink(missing_ok=True)

    def names(self) -> tuple[str, ...]:
        """Under which names something was left, the oldest first."""
        with suppress(OSError):
            files = sorted(self._folder.glob("*.json"), key=lambda each: each.stat().st_mtime)
            return tuple(each.stem for each in files)
        return ()

    def _file(self, name: str) -> Path:
        return self._folder / f"{name}.json"


def when_left(kept: Mapping[str, Any]) -> str:
    """The moment it was left: *2026-11-29 at 18:20*."""
    at = datetime.fromisoformat(str(kept[AT]))
    return tr("{at:%Y-%m-%d} at {at:%H:%M}", at=at)
