"""A throw-away copy of the sample bar, built once a day and kept for the next who asks."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from datetime import datetime
from functools import partial
from pathlib import Path
from tempfile import TemporaryDirectory

from barkeep.application.paths import cache_folder
from barkeep.application.quick_form import kept


@contextmanager
def throw_away(clock: Callable[[], datetime] = datetime.now) -> Iterator[Path]:
    """The path of a sample bar that is gone afterwards. Close the bar before leaving.

    It is built once a day; what happened at its start carries the time of that.
    """
    with TemporaryDirectory(prefix="barkeep-", ignore_cleanup_errors=True) as folder:
        path = Path(folder) / "sample.barkeep"
        day = clock().date().isoformat()
        path.write_bytes(kept(bytes, cache_folder() / "sample", partial(_built, clock), of=day))
        yield path


def _built(clock: Callable[[], datetime]) -> bytes:
    """The file of a sample bar."""
    from barkeep.application.sample import build  # what builds it is of no use to a copy

    with TemporaryDirectory(prefix="barkeep-", ignore_cleanup_errors=True) as folder:
        path = Path(folder) / "sample.barkeep"
        build(path, clock)
        return path.read_bytes()
