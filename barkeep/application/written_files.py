"""Files the user names: written whole or not at all, and never over a bar."""

from __future__ import annotations

import os
import shutil
from pathlib import Path
from tempfile import NamedTemporaryFile

from barkeep.store.connection import is_database, journal_owner, kept_for
from barkeep.store.refusals import CannotWrite
from barkeep.translation import tr, tr_noop

ANOTHER = tr_noop("choose another name")


def write_file(path: str | Path, content: str | bytes, open_bar: Path | None) -> Path:
    """Write a whole file or leave the old one as it was; the place that was named, made absolute.

    A link stays a link: the file it leads to is written. An old file's
    permissions are kept. `open_bar` is the file of the bar that is open, where it is in one,
    which is never written over, whatever it is called; nor is any other bar, nor a
    name that SQLite keeps for a bar's journal. Raises `CannotWrite`.
    """
    named = Path(path).expanduser().absolute()
    data = content.encode("utf-8") if isinstance(content, str) else content
    try:
        target = Path(os.path.realpath(named))
        reason = _why_not(target, open_bar)
        if reason:
            raise CannotWrite(str(named), reason)
        _replace(target, data)
    except OSError as error:
        raise CannotWrite(str(named), error.strerror or str(error)) from error
    return named


def _why_not(target: Path, open_bar: Path | None) -> str:
    """Why a file must be left as it is, empty where it may be written."""
    if open_bar is not None and _same(target, open_bar):
        return tr("it is the bar that is open; {another}", another=tr(ANOTHER))
    owner = journal_owner(target, known=open_bar)
    if owner is not None:
        return f"{kept_for(owner)}; {ANOTHER}"
    if not target.exists():
        return ""
    if target.is_dir():
        return tr("it is a folder")
    if not target.is_file():
        return tr("it is not an ordinary file")
    if is_database(target):
        return tr("it is a bar or another SQLite file; {another}", another=tr(ANOTHER))
    return "" if os.access(target, os.W_OK) else tr("it is read-only")


def _same(one: Path, other: Path) -> bool:
    """Whether two paths are one file, by whatever names; a file that is gone, by its name."""
    try:
        return one.samefile(other)
    except FileNotFoundError:
        return one == Path(os.path.realpath(other))


def _replace(target: Path, data: bytes) -> None:
    """Put new content in a file's place in one step, its permissions kept."""
    with NamedTemporaryFile(dir=target.parent, prefix=".barkeep-", delete=False) as out:
        beside = Path(out.name)
        try:
            out.write(data)
            out.flush()
            os.fsync(out.fileno())
            _give_rights(beside, target)
            beside.replace(target)
        except BaseException:
            beside.unlink(missing_ok=True)
            raise


def _give_rights(path: Path, old: Path) -> None:
    """Those of the old file, else the usual: a temporary file is its owner's alone."""
    if old.exists():
        shutil.copymode(old, path)
        return
    mask = os.umask(0)
    os.umask(mask)
    path.chmod(0o666 & ~mask)
