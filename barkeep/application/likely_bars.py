"""Which bar was likely meant where a file was named that holds none."""

from __future__ import annotations

from collections.abc import Iterable
from pathlib import Path

from barkeep.application.paths import where_default_bar_is
from barkeep.store.address import is_on_a_server
from barkeep.store.connection import JOURNALS, is_bar
from barkeep.store.refusals import NoBarThere

MOST_NAMED = 3
"""So many likely bars are named at most."""
MOST_LOOKED_INTO = 20
"""So many files of a folder are looked into at most, the likeliest first."""
ALIKE = 0.75
"""From here on, of 1, two names are alike: a letter or two amiss, or another suffix."""


def with_likely(error: NoBarThere) -> NoBarThere:
    """The refusal with the bars that may have been meant: of a like name beside it, else the usual.

    >>> with_likely(NoBarThere("/there/is/no/such.bar", "there is no such file")).file
    '/there/is/no/such.bar'
    """
    if is_on_a_server(error.file):
        return error
    path = Path(error.file)
    usual = where_default_bar_is()
    found = _alike(path) or [each for each in (usual,) if each != path and is_bar(each)]
    return NoBarThere(error.file, error.reason, tuple(map(str, found)))


def bars_beside(path: Path) -> list[Path]:
    """The other bars in the folder of a file, by name; none where it cannot be read.

    The file is not looked into: another program may just be beginning a bar in it.
    """
    return _bars(_others(path))


def _alike(path: Path) -> list[Path]:
    from difflib import SequenceMatcher  # nobody else needs it

    def likeness(other: Path) -> float:
        names = [(one.name.casefold(), one.stem.casefold()) for one in (path, other)]
        pairs = zip(*names, strict=True)
        return max(SequenceMatcher(None, *pair).ratio() for pair in pairs)

    others = [(likeness(each), each) for each in _others(path)]
    likely = sorted((each for each in others if each[0] >= ALIKE), key=lambda each: -each[0])
    return _bars(each for _, each in likely)


def _bars(files: Iterable[Path]) -> list[Path]:
    looked_into = [each for each, _ in zip(files, range(MOST_LOOKED_INTO), strict=False)]
    return [each for each in looked_into if is_bar(each)][:MOST_NAMED]


def _others(path: Path) -> list[Path]:
    """The other files in the folder of a file, by name, without those that SQLite keeps beside one.

    They are no bars, and whoever writes to the bar may just be deleting them.
    """
    try:
        files = sorted(each for each in path.parent.iterdir() if each.is_file())
    except OSError:
        return []
    of_sqlite = {f"{each.name}{ending}" for each in (path, *files) for ending in JOURNALS}
    return [each for each in files if each != path and each.name not in of_sqlite]
