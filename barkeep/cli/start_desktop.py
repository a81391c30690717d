"""Start the desktop, or say what this machine lacks for it."""

from __future__ import annotations

import os
import re
import sys
from collections.abc import Mapping

from barkeep.cli.arguments import Arguments
from barkeep.cli.endings import complain
from barkeep.collector import collector_paused

CANNOT_START = 3


PACKAGES: Mapping[str, str] = {
    "libglib-2.0.so.0": "libglib2.0-0",
    "libgthread-2.0.so.0": "libglib2.0-0",
    "libGL.so.1": "libgl1",
    "libEGL.so.1": "libegl1",
    "libfontconfig.so.1": "libfontconfig1",
    "libxkbcommon.so.0": "libxkbcommon0",
    "libdbus-1.so.3": "libdbus-1-3",
}
"""Shared library that Qt needs -> the Debian package that has it."""


_MISSING = re.compile(r"(?P<library>\S+\.so[.\d]*): cannot open shared object file")


def start(arguments: Arguments) -> int:
    """Open the desktop; 3 where it cannot start on this machine."""
    lacking = without_display(sys.platform, os.environ)
    if lacking is None:
        try:
            with collector_paused():
                from barkeep.desktop.shell.main import main
        except ImportError as error:
            lacking = without_qt(error)
            if lacking is None:
                raise
    if lacking is not None:
        complain(f"the window cannot open: {lacking}.")
        return CANNOT_START
    return main(_passed_on(arguments))


def without_display(platform: str, environment: Mapping[str, str]) -> str | None:
    """What is wrong where there is no display: Qt would abort, and nothing could catch that."""
    if platform != "linux":
        return None
    if any(environment.get(name) for name in ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM")):
        return None
    return "there is no display here; the commands work without one, see barkeep --help"


def without_qt(error: ImportError) -> str | None:
    """What to install for a Qt that cannot be imported; None for any other failure."""
    missing = _MISSING.search(str(error))
    if missing:
        library = missing["library"]
        package = PACKAGES.get(library)
        if package:
            return f"{library} is missing; on Debian, apt install {package}"
        every = " ".join(dict.fromkeys(PACKAGES.values()))
        return f"{library} is missing; on Debian, Qt needs {every}"
    if isinstance(error, ModuleNotFoundError) and (error.name or "").startswith("PySide6"):
        return "PySide6 is not installed; pip install PySide6-Essentials"
    return None


def _passed_on(arguments: Arguments) -> list[str]:
    """What the desktop is told, as it would be written."""
    if arguments.sample:
        return ["--sample"]
    named = [] if arguments.bar is None else ["--bar", arguments.bar]
    return [*named, *(["--new"] if arguments.new else [])]
