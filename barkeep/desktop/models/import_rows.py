"""The specs of documents as a list: what each is to the bar, and what will become of it."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Literal

from barkeep.application.spec_imports import Decision
from barkeep.application.spec_preview import Differing, Incoming, Preview, Unreadable
from barkeep.desktop.models.row_table import Column

Group = Literal["unreadable", "differing", "new"]
GROUP_WORDS: dict[Group, str] = {
    "unreadable": "Cannot be read",
    "differing": "Differs",
    "new": "New",
}
KEPT_WORDS = "Stays as you have it"
KEPT = Decision()


@dataclass(frozen=True, slots=True)
class ImportRow:
    """One spec of a document; `place` is that among the differing, -1 for the others."""

    group: Group
    name: str
    where: str
    thing: Incoming | Differing | Unreadable
    place: int = -1
    decision: Decision = KEPT

    @property
    def outcome(self) -> str:
        """What importing will do with it."""
        if self.group == "unreadable":
            return "Is left out"
        if self.group == "new":
            return "Comes in"
        if self.decision.choice == "take_theirs":
            return "Takes the place of yours"
        if self.decision.choice == "add":
            return f"Comes in as {self.decision.name or self.free_name}"
        return KEPT_WORDS

    @property
    def free_name(self) -> str:
        """A name under which it could come in beside yours."""
        return self.thing.free_name if isinstance(self.thing, Differing) else ""

    @property
    def comes_in(self) -> bool:
        """Whether importing writes it."""
        return self.group == "new" or self.decision.choice != "keep_mine"


def import_rows(found: Preview, *, one_file: bool) -> tuple[ImportRow, ...]:
    """What needs a look first: the unreadable, the differing, then the new."""
    rows = [
        ImportRow(
            "unreadable",
            each.name or ("The whole file" if not each.where else "No name"),
            _place(each.file, each.where, one_file),
            each,
        )
        for each in found.unreadable
    ]
    for place, each in enumerate(found.differing):
        where = _place(each.incoming.file, each.incoming.where, one_file)
        rows.append(ImportRow("differing", each.mine.name, where, each, place))
    rows += [
        ImportRow("new", each.spec.name, _place(each.file, each.where, one_file), each)
        for each in found.new
    ]
    return tuple(rows)


def decided(row: ImportRow, decision: Decision) -> ImportRow:
    """The row after a decision; theirs never takes the place of a classic."""
    if row.group != "differing":
        return row
    possible = isinstance(row.thing, Differing) and row.thing.replaceable
    if decision.choice == "take_theirs" and not possible:
        return row
    return replace(row, decision=decision)


def import_columns() -> tuple[Column[ImportRow], ...]:
    """The columns of the list."""
    return (
        Column("Spec", lambda row: row.name, tooltip=lambda row: row.name),
        Column("What it is", lambda row: GROUP_WORDS[row.group]),
        Column("What happens", lambda row: row.outcome, tooltip=lambda row: row.outcome),
    )


def _place(file: str, where: str, one_file: bool) -> str:
    return where if one_file else ", ".join(each for each in (file, where) if each)
