"""`barkeep backup` and `restore`: copies of the whole bar, and one of them put in its place."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from barkeep.application import paths
from barkeep.application.backups import compare, restore
from barkeep.application.kept_backups import (
    Comparison,
    KeptBackup,
    backup_named,
    backups_of,
    bar_at,
    folders_of,
    in_words,
    last_change,
)
from barkeep.cli.arguments import Arguments, argument, command, flag
from barkeep.cli.bar_source import opened_bar
from barkeep.cli.output import Answer, table
from barkeep.errors import InvalidField, UserError
from barkeep.store.address import At
from barkeep.store.holdings import Holdings, holdings_of

ABOUT_BACKUP = """\
Copy the whole bar, safely while it is in use, and check the copy. Without FILE it
goes among the bar's backups, in a folder beside the bar or where the setting backups
says. There barkeep keeps one before the first change of each day and before each
import by itself: all of the last seven days, one of each of the last eight weeks, and
one of every month. Those that you asked for stay until you delete them.

--json prints file, bytes, bottles, products, specs, shoots, changed and last (when and
by what the bar was changed last); with --list folders, and backups: file, at, why,
bytes, the same figures, and problem where it cannot be read.
"""
ABOUT_RESTORE = """\
Put what a backup holds in the bar's place: a file, or a backup of the bar by its name
or the beginning of that, as “barkeep backup --list” has them. Without --yes the two are
only set side by side. What it replaces is kept as a backup; undo goes no further back
than it did in the one that is restored.

--json prints bar, file, kept (the backup of what was replaced), before and after: each
bottles, products, specs, shoots, changed and last; before is null, and problem says
why, where it cannot be read.
"""


class NotRestoredYet(UserError):
    """What a restore would do, which has not been agreed to."""

    rows: str
    verb: str
    says = (
        "nothing is {verb} yet. --yes puts what stands right in the place of what is there:\n{rows}"
    )


@command(
    argument("file", metavar="FILE", nargs="?", help="a new file (default: among the backups)"),
    flag("--list", "list the backups that there are, and make none"),
    description=ABOUT_BACKUP,
)
def backup(arguments: Arguments) -> Answer:
    """Make a backup, or list them."""
    if arguments.list:
        if arguments.file is not None:
            raise InvalidField("--list", arguments.file, "it makes no backup, so it takes no file")
        with named_bar(arguments) as bar:
            return _listed(bar)
    with opened_bar(arguments) as opened:
        made = opened.backups.make() if arguments.file is None else opened.back_up(arguments.file)
    holds, size = holdings_of(made), made.stat().st_size
    return Answer(
        lambda: {"file": str(made), "bytes": size, **figures(holds)},
        f"The bar is backed up to {made}: {in_words(holds)}.",
    )


def _listed(bar: At) -> Answer:
    kept, folders = backups_of(bar), folders_of(bar)
    rows = [table(HEAD, map(_row, kept), right="lr"), ""] if kept else []
    where = " and ".join(str(each) for each in folders)
    said = f"They are in {where}." if kept else f"There is no backup in {where} yet."
    return Answer(
        lambda: {
            "folders": [str(each) for each in folders],
            "backups": [_json(each) for each in kept],
        },
        [*rows, said],
    )


HEAD = ("backup", "kB", "what is in it", "changed last")


def _row(each: KeptBackup) -> tuple[str, ...]:
    size = f"{each.size / 1000:.0f}"
    if each.holds is None:
        return (each.name, size, each.problem, "")
    return (each.name, size, in_words(each.holds), last_change(each.holds))


def _json(each: KeptBackup) -> dict[str, object]:
    return {
        "file": str(each.path),
        "at": each.at.isoformat(timespec="seconds"),
        "why": each.why,
        "bytes": each.size,
        **figures(each.holds),
        "problem": each.problem or None,
    }


def figures(holds: Holdings | None) -> dict[str, object]:
    """What a bar holds, as JSON gives it; null where it cannot be read."""
    if holds is None:
        return dict.fromkeys(("bottles", "products", "specs", "shoots", "changed", "last"))
    changed = holds.changed
    return {
        "bottles": holds.bottles,
        "products": holds.products,
        "specs": holds.specs,
        "shoots": holds.shoots,
        "changed": None if changed is None else changed.isoformat(timespec="seconds"),
        "last": holds.last or None,
    }


YES = flag("--yes", "do it, and do not only set the two side by side")


@command(
    argument("file", metavar="FILE", help="a backup, by its file or its name"),
    YES,
    description=ABOUT_RESTORE,
)
def put_back(arguments: Arguments) -> Answer:
    """Restore a backup."""
    with named_bar(arguments) as bar:
        file = backup_named(bar, arguments.file)
        return replaced_by(file, bar, agreed=arguments.yes, verb="restored")


def replaced_by(file: Path, bar: At, *, agreed: bool, verb: str) -> Answer:
    """Put what a file holds in the bar's place where that is agreed to; else say what it would do.

    Raises `NotRestoredYet` and what `restore` does.
    """
    if not agreed:
        raise NotRestoredYet(_side_by_side(compare(bar, file)), verb)
    done = restore(bar, file, folders_of(bar)[-1])
    found, kept = done.comparison, done.kept
    before = f" What was there is kept as {kept}." if kept else ""
    return Answer(
        lambda: {
            "bar": str(bar),
            "file": str(file),
            "kept": None if kept is None else str(kept),
            "before": None if found.now is None else figures(found.now),
            "problem": found.problem or None,
            "after": figures(found.then),
        },
        f"{bar} holds what {file} holds: {in_words(found.then)}.{before}",
    )


def _side_by_side(found: Comparison) -> str:
    now, then = found.now, found.then
    shown = [
        (word, "" if now is None else str(getattr(now, word)), str(getattr(then, word)))
        for word in ("bottles", "products", "specs", "shoots")
    ]
    changed = "" if now is None else last_change(now)
    rows = [*shown, ("changed last", changed, last_change(then))]
    told = table(("", found.bar.name, found.file.name), rows)
    return f"{told}\n{found.problem}" if found.problem else told


@contextmanager
def named_bar(arguments: Arguments) -> Iterator[At]:
    """Where the bar is that is named, which is not opened and need not be sound."""
    if arguments.sample:
        with opened_bar(arguments) as bar:
            yield bar.path
        return
    yield bar_at(arguments.bar or paths.default_bar())
