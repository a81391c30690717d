"""A spec in the pieces that a document gives, before its lines are read."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class SpecParts:
    """The texts of one spec; `lines` and `method` one text for each line or step.

    `where` says where in the document it stood, for a message. An empty step
    parts two paragraphs of the method.
    """

    name: str
    lines: tuple[str, ...]
    method: tuple[str, ...] = ()
    glass: str = ""
    ice: str = ""
    notes: tuple[str, ...] = ()
    riff_of: str = ""
    serves: float | None = None
    tags: tuple[str, ...] = ()
    credit: str = ""
    where: str = ""
