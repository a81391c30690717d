"""The use cases of `bar.imports`: what files were found to hold comes in, all of it or nothing."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import TYPE_CHECKING

from barkeep.application.session import UseCases

if TYPE_CHECKING:
    from barkeep.application.bottle_imports import ImportedBottles
    from barkeep.application.done import Done
    from barkeep.application.imports import Decision, ImportedSpecs, ImportPreview, Progress
    from barkeep.documents.bottles_csv import ListedBottle


class Imports(UseCases):
    """The use cases of `bar.imports`. Who takes in bottles loads none of what reads specs."""

    def bottles(
        self, rows: Sequence[ListedBottle], file: str = "", progress: Progress | None = None
    ) -> Done[ImportedBottles]:
        """Take in all rows or none; one step of undo.

        Raises `UnusableFile` with every row that cannot be used, and `Stopped`
        where `progress` says not to go on.
        """
        from barkeep.application.bottle_imports import take_in_bottles

        return take_in_bottles(self._session, rows, file, progress)

    def specs(
        self,
        looked_at: ImportPreview,
        decisions: Mapping[int, Decision] | None = None,
        progress: Progress | None = None,
    ) -> Done[ImportedSpecs]:
        """Bring in what was looked at, all of it or nothing; one step of undo.

        `decisions` are by the place in `looked_at.differing`; without one, mine is
        kept. Raises `Stopped` where `progress` says not to go on, `DuplicateName`
        for a name that is taken, and `InvalidField` for a classic that cannot be
        replaced and for a spec that is no longer as it was compared, and `UnknownName` for
        a kind that has been removed since.
        """
        from barkeep.application.imports import take_in_specs

        return take_in_specs(self._session, looked_at, decisions or {}, progress)
