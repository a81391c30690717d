"""The backups of a bar, whether it can be opened or not: found, made, put back.

Each is a file, also of a bar on a server; those lie on the machine they were made on.
"""

from __future__ import annotations

import zlib
from collections.abc import Callable, Iterator
from contextlib import contextmanager, suppress
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path
from tempfile import TemporaryDirectory

from barkeep.application.paths import file_of
from barkeep.domain.bar.backups import BackupName, Why, is_due, read_name, to_let_go
from barkeep.domain.phrases import counted
from barkeep.errors import UnreadableFile, UserError, spoken_list
from barkeep.store.address import At, Location
from barkeep.store.checking import check_file
from barkeep.store.holdings import Holdings, holdings_of
from barkeep.store.location import read_location
from barkeep.store.place import place_of
from barkeep.store.refusals import CannotWrite, ReadOnlyBar
from barkeep.translation import tr, tr_noop

FOLDER_SUFFIX = ".backups"
ELSEWHERE = "kept elsewhere.txt"
"""Beside a bar, in the folder named after it: in which other folder its backups are."""

BEFORE_UPGRADE = ".before-schema-"
"""In the names of the copies that upgrades leave beside a bar."""


class NoSuchBackup(UserError):
    """A backup that is neither a file nor among those of the bar; `newest` may be offered."""

    name: str
    folder: str
    newest: tuple[str, ...] = ()

    def __str__(self) -> str:
        said = tr(
            "There is no backup “{name}”, neither as a file nor in {folder}.",
            name=self.name,
            folder=self.folder,
        )
        newest = spoken_list([f"“{each}”" for each in self.newest], "and")
        return f"{said} {tr('The newest there are {newest}.', newest=newest)}" if newest else said


class BackupOffered(UnreadableFile):
    """A bar that cannot be read, and the newest backup of it that can: its name, and what it is.

    `how` says how it is put in the bar's place.
    """

    backup: str = ""
    told: str = ""
    how: str = ""

    def __str__(self) -> str:
        offered = tr(
            "Its newest good backup is “{backup}” {told}", backup=self.backup, told=self.told
        )
        return f"{super().__str__()} {offered}{self.how}."


@dataclass(frozen=True, slots=True)
class KeptBackup:
    """One backup: its file, when it was made and why, its size in bytes and what it holds.

    `problem` says why that cannot be told; `holds` is then None.
    """

    path: Path
    at: datetime
    why: str
    size: int
    holds: Holdings | None
    problem: str = ""

    @property
    def name(self) -> str:
        """What it is called, as it may be asked for."""
        return self.path.name

    @property
    def told(self) -> str:
        """Its day and what it holds, as part of a sentence."""
        held = in_words(self.holds) if self.holds else tr("cannot be read")
        return tr("of {moment} ({held})", moment=said_at(self.at), held=held)


def in_words(holds: Holdings) -> str:
    """What a bar holds: *66 bottles, 31 specs and 9 shoots*."""
    counts = ((holds.bottles, "bottle"), (holds.specs, "spec"), (holds.shoots, "shoot"))
    return spoken_list([counted(number, word) for number, word in counts], "and")


def said_at(moment: datetime) -> str:
    """A moment as the program's sentences have it."""
    return tr("{moment:%Y-%m-%d %H:%M}", moment=moment)


def last_change(holds: Holdings) -> str:
    """When and by what a bar was changed last."""
    if holds.changed is None:
        return tr("never changed")
    return f"{said_at(holds.changed)}, {holds.last}"


# Where they are


def beside(bar: At) -> Path:
    """The folder of a bar's backups where its owner has not chosen another."""
    file = file_of(bar)
    return file.with_name(f"{file.name}{FOLDER_SUFFIX}")


def folder_of(bar: At, chosen: str) -> Path:
    """Where the backups of a bar go; in a `chosen` folder, bars of one name are kept apart."""
    if not chosen:
        return beside(bar)
    mark = zlib.crc32(str(bar).encode("utf-8", "surrogateescape"))
    return Path(chosen).expanduser() / f"{file_of(bar).name}{FOLDER_SUFFIX}-{mark:08x}"


def folders_of(bar: At) -> tuple[Path, ...]:
    """Where there are backups of a bar, told without reading the bar itself."""
    own = beside(bar)
    try:
        noted = (own / ELSEWHERE).read_text(encoding="utf-8", errors="surrogateescape").strip()
    except OSError:
        noted = ""
    return (own, Path(noted)) if noted else (own,)


def backups_of(bar: At) -> tuple[KeptBackup, ...]:
    """Every backup of a bar, the newest first, with what each holds."""
    return tuple(_looked_at(*each) for each in _newest_first(bar))


def newest_good(bar: At) -> KeptBackup | None:
    """The newest backup that is sound, None where there is none."""
    for path, at, why in _newest_first(bar):
        found = _looked_at(path, at, why)
        if found.holds is not None and why != "unreadable" and not check_file(path).faults:
            return found
    return None


def bar_at(location: Location) -> At:
    """The file or the address that is named as a bar. Raises `UnreadableFile`."""
    return read_location(location)


def with_backup_offered(
    error: UnreadableFile, location: Location, how: Callable[[str], str]
) -> UnreadableFile:
    """What cannot be read, with the newest good backup offered where there is one.

    `how` says, after its name, how to put it in the bar's place.
    """
    with suppress(UserError, OSError):
        kept = newest_good(bar_at(location))
        if kept is not None:
            held = vars(error)
            return BackupOffered(
                **{name: held[name] for name in ("file", "reason", "line", "column", "overall")},
                backup=kept.name,
                told=kept.told,
                how=how(kept.name),
            )
    return error


def backup_named(bar: At, name: str) -> Path:
    """The file of a backup, by its path, its name among the bar's, or the beginning of that.

    Raises `NoSuchBackup`.
    """
    path = Path(name).expanduser()
    if name and path.is_file():
        return path.absolute()
    files = [each for each, _at, _why in _newest_first(bar)]
    of_name = [each for each in files if each.name == name]
    begun = [each for each in files if name and each.name.startswith(name)]
    if len(of_name or begun) == 1:
        return (of_name or begun)[0]
    newest = tuple(each.name for each in (begun or files)[:3])
    raise NoSuchBackup(name, spoken_list([str(each) for each in folders_of(bar)]), newest)


def _newest_first(bar: At) -> list[tuple[Path, datetime, str]]:
    """Of those of one moment the one with the larger number is the newer."""

    def age(found: tuple[Path, datetime, str]) -> tuple[datetime, int]:
        name = read_name(found[0].name)
        return found[1], name.number if name else 1

    return sorted(_all_files(bar), key=age, reverse=True)


def _all_files(bar: At) -> Iterator[tuple[Path, datetime, str]]:
    for folder in folders_of(bar):
        for path, name in _named(folder):
            yield path, name.at, name.why
    file = file_of(bar)
    for path in file.parent.glob(f"{_literal(file.name)}{BEFORE_UPGRADE}*"):
        with suppress(OSError):
            if path.is_file():
                yield path, datetime.fromtimestamp(path.stat().st_mtime), "before upgrade"


def _literal(name: str) -> str:
    return "".join(f"[{each}]" if each in "*?[" else each for each in name)


def _named(folder: Path) -> Iterator[tuple[Path, BackupName]]:
    """The backups in a folder; none where it is not there or cannot be read."""
    with suppress(OSError):
        for path in folder.iterdir():
            name = read_name(path.name)
            if name is not None:
                yield path, name


def _looked_at(path: Path, at: datetime, why: str) -> KeptBackup:
    size, holds, problem = 0, None, ""
    try:
        size = path.stat().st_size
        holds = holdings_of(path)
    except OSError as error:
        problem = error.strerror or str(error)
    except UserError as error:
        problem = str(error)
    return KeptBackup(path=path, at=at, why=why, size=size, holds=holds, problem=problem)


def holds_nothing(bar: At) -> bool:
    """Whether there is no bar in a place yet, or one in which nothing has happened."""
    place = place_of(bar)
    if not place.is_there():
        return True
    try:
        return place.holdings().changed is None
    except UserError:  # it may hold what can be saved
        return False


# Making them


def back_up(bar: At, folder: Path, why: Why, now: datetime) -> Path:
    """Keep a backup of a bar, and let go of those that are one too many.

    Raises `CannotWrite`, `UnreadableFile` for a damaged bar, or `BarIsBusy`.
    """
    kept = place_of(bar).copy_into(folder, lambda number: str(BackupName(now, why, number)))
    _note_where(bar, folder)
    _tidy(folder, now)
    return kept


def back_up_if_due(bar: At, folder: Path, now: datetime) -> None:
    """Keep the day's backup where there is none yet. Raises as `back_up` does."""
    if is_due((name for _, name in _named(folder)), now):
        back_up_unless_empty(bar, folder, "daily", now)


def back_up_unless_empty(bar: At, folder: Path, why: Why, now: datetime) -> None:
    """Keep a backup of a bar in which anything ever happened. Raises as `back_up` does."""
    if place_of(bar).holdings().changed is not None:
        back_up(bar, folder, why, now)


def _note_where(bar: At, folder: Path) -> None:
    """Leave a note beside the bar where its backups are elsewhere, for when it cannot be read."""
    own = beside(bar)
    if folder == own:
        return
    note, said = own / ELSEWHERE, f"{folder}\n".encode("utf-8", "surrogateescape")
    with suppress(OSError):  # the bar itself may lie where only it may be written
        if not note.is_file() or note.read_bytes() != said:
            own.mkdir(exist_ok=True)
            note.write_bytes(said)


def _tidy(folder: Path, now: datetime) -> None:
    """Delete what is one too many; a file that stays is no harm."""
    kept = {name: path for path, name in _named(folder)}
    for name in to_let_go(kept, now):
        with suppress(OSError):
            kept[name].unlink()


# Putting one back


@dataclass(frozen=True, slots=True)
class Comparison:
    """A bar as it is and what would be put in its place; `problem` says why it cannot be told."""

    bar: At
    now: Holdings | None
    problem: str
    file: Path
    then: Holdings


@dataclass(frozen=True, slots=True)
class Restored:
    """What was put in place, and where what it replaced is kept; None where nothing was there."""

    comparison: Comparison
    kept: Path | None


Filled = Callable[[Path, Path], None]
"""Fills a new file with the bar that another file is, or says, or raises a `UserError`."""


@contextmanager
def prepared(bar: At, file: Path, fill: Filled) -> Iterator[tuple[Path, Comparison]]:
    """A whole bar made out of a file, ready to be put in place, set beside what is there.

    It is gone afterwards. Raises a `UserError` for a file that is no sound bar.
    """
    try:
        folder = TemporaryDirectory(prefix="barkeep-", ignore_cleanup_errors=True)
    except OSError as error:
        raise CannotWrite(tr_noop("the folder for temporary files"), str(error.strerror)) from error
    with folder as name:
        ready = Path(name) / "bar"
        fill(file, ready)
        now, problem = None, ""
        try:
            now = place_of(bar).holdings()
        except UserError as error:
            problem = str(error)
        then = holdings_of(ready)
        yield ready, Comparison(bar=bar, now=now, problem=problem, file=file, then=then)


def replace_bar(bar: At, ready: Path, folder: Path, now: datetime) -> Path | None:
    """Put a prepared bar in place; where what was there before is kept.

    Raises `CannotWrite`, `ReadOnlyBar` or `BarIsBusy`; the bar is then as it was.
    """
    place = place_of(bar)
    if not place.may_be_written():
        raise ReadOnlyBar(str(bar))
    kept = None
    if place.is_there():
        try:
            return place.write_over(ready, lambda: back_up(bar, folder, "before restore", now))
        except UnreadableFile:
            kept = place.keep_as_it_is(
                folder, lambda number: str(BackupName(now, "unreadable", number))
            )
    place.put_in_place(ready)
    return kept
