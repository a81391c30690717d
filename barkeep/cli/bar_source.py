"""Open the bar that a command is about."""

from __future__ import annotations

import shlex
import sys
from collections.abc import Callable, Iterator
from contextlib import AbstractContextManager, contextmanager
from functools import wraps
from pathlib import Path

from barkeep.application import paths
from barkeep.application.bar import Bar, usual_bar
from barkeep.application.knowledge import shipped
from barkeep.cli.arguments import Arguments
from barkeep.cli.endings import complain
from barkeep.cli.output import Answer
from barkeep.cli.teaching import saying_how_to_teach
from barkeep.documents.bytes_read import DecodedText, decoded
from barkeep.domain.amounts.units import US_UNITS, BarUnits
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import begun_small
from barkeep.errors import UnreadableFile
from barkeep.store.refusals import ChangedBar, DamagedBar, NoBarThere

STDIN = "-"

HOW_NEW = "To begin a new bar there, add --new."


@contextmanager
def opened_bar(arguments: Arguments) -> Iterator[Bar]:
    """The bar named by `--bar` or `--sample`, or else the one in the data folder.

    A new bar is begun by `--new`, or by the very first start, and said so.
    Raises a `UserError` where it cannot be opened.
    """
    if arguments.sample:
        from barkeep.application import sample_copy  # other bars need no folder to throw away

        with (
            sample_copy.throw_away() as path,
            Bar.open(path, kept=True) as bar,
            _teaching(arguments, bar),
        ):
            yield bar
        return
    with _opened(arguments) as bar:
        if bar.is_new:
            complain(f"a new bar was begun in {bar.where}.")
        if bar.is_read_only:
            complain(f"{bar.where} is read-only: it is open to be looked at.")
        with _teaching(arguments, bar):
            yield bar


def _opened(arguments: Arguments) -> Bar:
    try:
        if arguments.bar is None and not arguments.new:
            return Bar.open(usual_bar(), told=complain, kept=True, empty_too=True)
        location = arguments.bar or paths.default_bar()
        return Bar.open(location, told=complain, kept=True, new=arguments.new)
    except NoBarThere as none:
        raise NoBarThere(none.file, none.reason, none.likely, HOW_NEW) from None
    except DamagedBar as damaged:
        advice = "“barkeep check” says all that is wrong with it, and saves what can be read"
        if isinstance(damaged, ChangedBar):
            advice = "“barkeep check” says more, and with --accept it takes the bar as it is"
        advised = UnreadableFile(damaged.file, f"{damaged.reason}; {advice}")
        raise _with_backup(arguments, advised) from damaged
    except UnreadableFile as error:
        raise _with_backup(arguments, error) from error


def _with_backup(arguments: Arguments, error: UnreadableFile) -> UnreadableFile:
    """The same with the bar's newest good backup, and how it is put back."""
    from barkeep.application.kept_backups import with_backup_offered

    which = ["--bar", arguments.bar] if arguments.bar else []

    def how(backup: str) -> str:
        said = shlex.join(["barkeep", *which, "restore", backup])
        return f"; to see what it would bring back, say {said}"

    return with_backup_offered(error, arguments.bar or paths.default_bar(), how)


def _teaching(arguments: Arguments, bar: Bar) -> AbstractContextManager[None]:
    return saying_how_to_teach(arguments, bar.snapshot.knowledge.tree)


def in_bar(run: Callable[[Arguments, Bar], Answer]) -> Callable[[Arguments], Answer]:
    """A command that is done in the bar that is named; it is closed when the answer is there."""

    @wraps(run)
    def opened(arguments: Arguments) -> Answer:
        with opened_bar(arguments) as bar:
            return run(arguments, bar)

    return opened


def known_to_readers(arguments: Arguments) -> tuple[FamilyTree, BarUnits]:
    """The family tree of the bar that is named, and what it means by its measures.

    Those of no bar where there is none yet: for what only reads a text, no
    bar is begun.
    """
    may_be_none = arguments.bar is None and not arguments.new
    if may_be_none and (arguments.sample or not paths.default_bar().exists()):
        return shipped().tree, US_UNITS
    with opened_bar(arguments) as bar:
        return bar.snapshot.knowledge.tree, bar.snapshot.settings.units


def read_file(name: str) -> str:
    """The text of a file, or of stdin for `-`. Raises `UnreadableFile`."""
    return read_document(name).text


def read_document(name: str) -> DecodedText:
    """The text of a file, or of stdin for `-`, and how it was read. Raises `UnreadableFile`."""
    try:
        if name == STDIN:
            # Bytes, so that the terminal's encoding does not matter.
            if sys.stdin is None:
                raise UnreadableFile(shown_name(name), "it is closed")
            content = sys.stdin.buffer.read() if hasattr(sys.stdin, "buffer") else None
            if content is None:
                return DecodedText(sys.stdin.read())
            return decoded(content, shown_name(name))
        return decoded(Path(name).expanduser().read_bytes(), shown_name(name))
    except FileNotFoundError:
        raise UnreadableFile(shown_name(name), "there is no such file") from None
    except (OSError, ValueError) as error:
        reason = getattr(error, "strerror", None) or "it cannot be read"
        raise UnreadableFile(shown_name(name), begun_small(reason)) from None


def shown_name(name: str) -> str:
    """What to call a file in a message."""
    return "standard input" if name == STDIN else name
