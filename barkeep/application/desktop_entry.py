"""barkeep among the programs of a desktop: its entry, its pictures, and the type of a bar's file.

By the standards of freedesktop.org (Desktop Entry 1.1, Icon Theme 0.13, Shared MIME-info 0.21),
all below the user's own data folder: nothing is asked of root, and nobody else sees it.
"""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
import sysconfig
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from pathlib import Path

from barkeep import resource_files
from barkeep.errors import CannotUse
from barkeep.translation import tr

SIZES = (16, 24, 32, 48, 64, 128, 256)
"""Of the pictures, in pixels."""
PROGRAM = "barkeep-desktop"
FOLDER = "desktop"
_DATABASES = (
    ("update-desktop-database", Path("applications")),
    ("update-mime-database", Path("mime")),
)
"""What makes a desktop see what was written, and the folder it is told."""
_RESERVED = frozenset(" \t\n\"'\\><~|&;$*?#()`")
"""What an argument of Exec must be quoted for."""


@dataclass(frozen=True, slots=True)
class Entry:
    """What belongs to the entry: each file with what it holds, and those that hold something else.

    `there` are the files that are there just so, `other` those that are there otherwise.
    """

    folder: Path
    files: Mapping[Path, bytes]
    there: tuple[Path, ...]
    other: tuple[Path, ...]

    @property
    def missing(self) -> tuple[Path, ...]:
        """The files that are not there at all."""
        known = {*self.there, *self.other}
        return tuple(each for each in self.files if each not in known)


def entry() -> Entry:
    """What would be written for this user, and what of it is there.

    Raises `CannotUse` where the desktop goes by other standards.
    """
    if sys.platform in ("win32", "darwin"):
        raise CannotUse(tr("A desktop entry"), tr("this system's desktop knows programs otherwise"))
    folder = data_home(os.environ)
    files = {folder / place: content for place, content in _files(started_by())}
    there = [each for each in files if each.is_file()]
    same = tuple(each for each in there if each.read_bytes() == files[each])
    return Entry(folder, files, same, tuple(each for each in there if each not in same))


def install() -> tuple[Entry, tuple[str, ...]]:
    """Write what is not there just so; what was there before, and sentences on what is left to do.

    Raises `CannotUse`, and then nothing more is written.
    """
    before = entry()
    for path in (*before.missing, *before.other):
        try:
            path.parent.mkdir(parents=True, exist_ok=True)
            path.write_bytes(before.files[path])
        except OSError as error:
            raise CannotUse(str(path), error.strerror or str(error)) from error
    return before, tuple(_told(before.folder))


def remove() -> tuple[Entry, tuple[str, ...]]:
    """Take away all that `install` writes; what was there before, and what is left to do.

    Raises `CannotUse`.
    """
    before = entry()
    for path in (*before.there, *before.other):
        try:
            path.unlink()
        except OSError as error:
            raise CannotUse(str(path), error.strerror or str(error)) from error
    return before, tuple(_told(before.folder)) if before.there or before.other else ()


def data_home(environment: Mapping[str, str]) -> Path:
    """The user's own data folder; one that is not absolute is passed over, as the standard says."""
    named = environment.get("XDG_DATA_HOME", "")
    return Path(named) if Path(named).is_absolute() else Path.home() / ".local" / "share"


def started_by() -> tuple[str, ...]:
    """What starts the window from outside: the program where it is installed, else by Python."""
    if getattr(sys, "frozen", False):  # one folder, with everything in it
        return (sys.executable,)
    beside = Path(sysconfig.get_path("scripts")) / PROGRAM
    found = str(beside) if beside.is_file() else shutil.which(PROGRAM)
    return (found,) if found else (sys.executable, "-m", "barkeep.desktop_file")


def _files(command: Sequence[str]) -> Iterator[tuple[Path, bytes]]:
    text = resource_files.read_text(FOLDER, "barkeep.desktop")
    written = {"{exec}": " ".join(map(quoted, command)), "{program}": _string(command[0])}
    for mark, words in written.items():
        text = text.replace(mark, words)
    yield Path("applications", "barkeep.desktop"), text.encode()
    yield Path("mime", "packages", "barkeep.xml"), _resource("barkeep.xml")
    pictures = Path("icons", "hicolor")
    drawing = resource_files.read_text("icons", "barkeep.svg").encode()
    yield pictures / "scalable" / "apps" / "barkeep.svg", drawing
    for size in SIZES:
        yield (
            pictures / f"{size}x{size}" / "apps" / "barkeep.png",
            _resource("icons", f"{size}.png"),
        )


def _resource(*name: str) -> bytes:
    return resource_files.read_bytes(FOLDER, *name)


def quoted(argument: str) -> str:
    r"""An argument of the key Exec, quoted where it must be.

    >>> quoted("/opt/bar keep/run"), quoted("/opt/run"), quoted("100%")
    ('"/opt/bar keep/run"', '/opt/run', '100%%')
    """
    plain = argument.replace("%", "%%")
    if not set(plain) & _RESERVED:
        return plain
    inside = "".join(f"\\{each}" if each in '"`$\\' else each for each in plain)
    return _string(f'"{inside}"')


def _string(text: str) -> str:
    """A value of the type string: a backslash of it is written twice."""
    return text.replace("\\", "\\\\")


def _told(folder: Path) -> Iterator[str]:
    """Tell the desktop; a sentence for each part of it that cannot be told."""
    for program, below in _DATABASES:
        place = folder / below
        found = shutil.which(program)
        if not place.is_dir():
            continue
        if found is None:
            yield tr(
                "Your desktop may notice only once you log in again: there is no {program} here",
                program=program,
            )
            continue
        done = subprocess.run([found, str(place)], capture_output=True, check=False)
        if done.returncode:
            yield tr(
                "Your desktop may not notice: {program} could not go through {place}",
                program=program,
                place=place,
            )
