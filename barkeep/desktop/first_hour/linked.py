"""A sentence with links in it, which stand where its language puts them."""

from __future__ import annotations

from collections.abc import Iterator
from string import Formatter

from barkeep.desktop.widgets.labels import Link
from barkeep.translation import tr


def linked(words: str, /, **fields: Link | object) -> tuple[str | Link, ...]:
    """`words` as they are said, with a field's link, or what else it holds, in its place."""
    return tuple(_parts(tr(words), fields))


def _parts(said: str, fields: dict[str, Link | object]) -> Iterator[str | Link]:
    for before, name, _form, _conversion in Formatter().parse(said):
        if before:
            yield before
        if name is not None:
            found = fields[name]
            yield found if isinstance(found, Link) else str(found)
