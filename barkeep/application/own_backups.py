"""The backups that barkeep makes of an open bar by itself.

Those who only ask a bar load none of what makes them.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from datetime import date, datetime
from pathlib import Path

from barkeep.errors import UserError
from barkeep.store.address import At


class NoBackup(UserError):
    """No backup could be made of a bar; `reason` is a sentence. What was to be done goes on."""

    file: str
    reason: str
    says = "No backup of {file} could be made: {reason} What you did is written all the same."


class OwnBackups:
    """What barkeep keeps of one open bar by itself: before a day's first write, before an import.

    Where no backup can be made what was to be done goes on, and `told` is
    called with a sentence.
    """

    def __init__(self, bar: At, told: Callable[[str], object]) -> None:
        self._bar = bar
        self._told = told
        self._seen_to: date | None = None

    def before_write(self, folder: Path, now: datetime) -> None:
        """Keep the day's backup where there is none yet. A bar that holds nothing needs none."""
        if self._seen_to == now.date():
            return
        self._seen_to = now.date()
        from barkeep.application.kept_backups import back_up_if_due

        with self._telling():
            back_up_if_due(self._bar, folder, now)

    def before_import(self, folder: Path, now: datetime) -> None:
        """Keep the bar as it is before much comes into it at once."""
        from barkeep.application.kept_backups import back_up_unless_empty

        with self._telling():
            back_up_unless_empty(self._bar, folder, "before import", now)

    @contextmanager
    def _telling(self) -> Iterator[None]:
        try:
            yield
        except UserError as error:
            self._told(str(NoBackup(str(self._bar), str(error))))
