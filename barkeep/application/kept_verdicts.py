"""The verdicts of a bar as it was last shown, for the first picture of it that a window shows.

They are kept in a quick form under the digest of the bar's file, the day and what was asked, so
that they can never be those of another state: to work them out anew loads more than a whole
picture of the bar takes.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from hashlib import blake2b
from pathlib import Path
from typing import TYPE_CHECKING

from barkeep.application import quick_form
from barkeep.application.kept_bar import MOST_KEPT, forget_the_oldest
from barkeep.application.paths import cache_folder
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.pouring.verdict import Verdicts

if TYPE_CHECKING:
    from barkeep.domain.pouring.sourcing import Within


@dataclass(frozen=True, eq=False, slots=True)
class KeptVerdicts:
    """The verdicts of one picture of a bar, which was read of the file with this digest.

    They may be asked for by any thread.
    """

    snapshot: Snapshot = field(repr=False)
    digest: str

    def found(self, snapshot: Snapshot, within: Within, serves: int) -> Verdicts | None:
        """What is kept of a snapshot; None where nothing is, or it is another picture."""
        if snapshot is not self.snapshot:
            return None
        of = self._of(within, serves)
        found = quick_form.found(Verdicts, _form(of), of)
        count = len(snapshot.all_specs)
        return found if found and len(found.of) == len(found.order) == count else None

    def keep(self, snapshot: Snapshot, within: Within, serves: int, found: Verdicts) -> None:
        """Keep what was found, where it is of this picture."""
        if snapshot is self.snapshot:
            of = self._of(within, serves)
            quick_form.keep(found, _form(of), of)
            forget_the_oldest(_folder(), MOST_KEPT)

    def _of(self, within: Within, serves: int) -> str:
        return f"{self.digest} {self.snapshot.on} {within} {serves}"


def _folder() -> Path:
    return cache_folder() / "verdicts"


def _form(of: str) -> Path:
    return _folder() / blake2b(of.encode(), digest_size=32).hexdigest()
