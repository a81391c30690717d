"""What the owner chose for this bar."""

from __future__ import annotations

import re
from dataclasses import replace

from barkeep.application.done import Done
from barkeep.application.session import Session
from barkeep.domain.snapshot import Settings
from barkeep.errors import InvalidField
from barkeep.store.owner_knowledge import read_settings, setting_rows

_CURRENCY = re.compile(r"[A-Z]{3}")  # ISO 4217's form; which codes exist changes by the year


class BarSettings:
    """The use cases of `bar.settings`."""

    def __init__(self, session: Session) -> None:
        self._session = session

    def change(self, settings: Settings) -> Done[Settings]:
        """Write the settings that differ. Raises `InvalidField`."""
        checked = self._checked(settings)
        with self._session.writing("Change settings") as work:
            there = setting_rows(read_settings(work.connection))
            for row in setting_rows(checked):
                if row not in there:
                    work.put("setting", (row["key"],), row)
        return self._session.finished(work, lambda bar: bar.settings)

    def _checked(self, settings: Settings) -> Settings:
        name = " ".join(settings.name.split())
        if not name:
            raise InvalidField("name", settings.name, "a bar needs a name")
        if not _CURRENCY.fullmatch(settings.currency):
            expected = "it is a code of three capital letters, such as EUR"
            raise InvalidField("currency", settings.currency, expected)
        tree = self._session.tree
        for key in sorted(settings.not_there):
            if key not in tree or not tree[key].always_there:
                expected = "only what counts as always there can be missing"
                raise InvalidField("not there", key, expected)
        return replace(settings, name=name)
