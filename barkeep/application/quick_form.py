"""What was read of the shipped data, kept in a quick form so that the next start need not read it.

The readable files stay the only source. The form carries a fingerprint of
them, of the code that reads them and of the Python that runs it, and a
checksum of itself: where either differs, or the form cannot be read, the
files are read again and the form is written anew. It is written beside its
place and moved there whole, so that two starts at once, or one that is
killed, leave a sound form or none. Where it cannot be kept, starts are slower
and nothing else.
"""

from __future__ import annotations

import os
import sys
from collections.abc import Callable, Iterator
from functools import cache
from hashlib import blake2b
from pathlib import Path
from typing import TypeVar

import barkeep
from barkeep import __version__, resource_files
from barkeep.shipped_data import packed, unpacked

Value = TypeVar("Value")

_DIGEST = 32
"""Bytes of a digest: the fingerprint comes first, then the checksum, then what was read."""

_DATA = (
    *(("resources", (), ".toml"), ("resources", (), ".txt")),
    *(("resources", ("languages",), ".toml"), ("resources", ("classics",), ".txt")),
    *(("sample_db", (), ".toml"), ("sample_db", (), ".txt")),
)
"""The shipped data that what is kept depends on: the folders, and the ends of the files' names."""

_CODE = ("application", "documents", "domain", "store")
"""The packages that make of it what is kept."""


def kept(kind: type[Value], file: Path, read: Callable[[], Value], *, of: str = "") -> Value:
    """What the form in a file holds, else what `read` gives, which is then kept there.

    `of` names what else it depends on, such as a day.
    """
    value = found(kind, file, of)
    if value is None:
        value = read()
        keep(value, file, of)
    return value


def found(kind: type[Value], file: Path, of: str = "") -> Value | None:
    """What a file holds; None where there is none, it is of other data, or damaged."""
    try:
        form = file.read_bytes()
    except OSError:
        return None
    content = form[2 * _DIGEST :]
    if form[: 2 * _DIGEST] != _fingerprint(of) + _digest(content):
        return None
    try:
        return unpacked(content, kind)
    except ValueError:
        return None


def keep(value: object, file: Path, of: str = "") -> None:
    """Write the form of a value, which depends on `of` as well; nothing where it cannot be kept."""
    content = packed(value)
    _write(file, _fingerprint(of) + _digest(content) + content)


def _write(file: Path, form: bytes) -> None:
    from tempfile import NamedTemporaryFile  # most starts only read

    try:
        file.parent.mkdir(parents=True, exist_ok=True)
        with NamedTemporaryFile(dir=file.parent, prefix=f".{file.name}-", delete=False) as beside:
            try:
                beside.write(form)
                beside.close()
                Path(beside.name).replace(file)
            except OSError:
                Path(beside.name).unlink()
    except OSError:
        return  # the next start reads the files again


def _digest(content: bytes) -> bytes:
    return blake2b(content, digest_size=_DIGEST).digest()


def _fingerprint(of: str) -> bytes:
    total = _of_what_reads_it().copy()
    total.update(of.encode())
    return total.digest()


@cache
def _of_what_reads_it() -> blake2b:
    """Of the shipped files, byte by byte, and of the code: its version, and its files as dated.

    Looked at once: a process reads with what it began with.
    """
    total = blake2b(f"{__version__} {sys.version} ".encode(), digest_size=_DIGEST)
    for top, inside, end in _DATA:
        for name in resource_files.names(*inside, folder=top, suffix=end):
            content = resource_files.read_bytes(*inside, name, folder=top)
            total.update(f"{name} {len(content)} ".encode() + content)
    for line in sorted(_code()):
        total.update(line.encode())
    return total


def _code() -> Iterator[str]:
    """The modules that read the data, each with its size and date; none where they are zipped."""
    waiting = [Path(barkeep.__file__).parent / each for each in _CODE]
    while waiting:
        folder = waiting.pop()
        if not folder.is_dir():
            continue
        for entry in os.scandir(folder):
            if entry.is_dir():
                waiting.append(Path(entry.path))
            elif entry.name.endswith(".py"):
                found = entry.stat()
                yield f"{entry.path} {found.st_size} {found.st_mtime_ns}\n"
