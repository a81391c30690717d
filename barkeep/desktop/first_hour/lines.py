"""The lines of a pasted list as they are understood, with what the owner answered to each."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field, replace
from typing import Literal

from barkeep.application.bottle_imports import (
    BottlePreview,
    look_at_list,
    sorted_out,
    terms_of,
)
from barkeep.desktop.screens.row_table import Column
from barkeep.desktop.widgets.delegates import SUBTITLE_ROLE
from barkeep.documents.bottle_lines import answered
from barkeep.documents.bottles_csv import CellProblem, ListedBottle, ListedRow
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.level_words import percent, quantity
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import counted
from barkeep.errors import spoken_list
from barkeep.translation import tr, tr_noop

State = Literal["asked", "there", "in", "out"]
STATE_WORDS: Mapping[State, str] = {
    "asked": tr_noop("Asked"),
    "there": tr_noop("There already"),
    "in": tr_noop("Comes in"),
    "out": tr_noop("Left out"),
}
_TOLD: Mapping[State, str] = {
    "asked": tr_noop("{n} to answer"),
    "there": tr_noop("{n} there already"),
    "out": tr_noop("{n} left out"),
}
GUESS = "≈"
"""Before what is guessed."""


@dataclass(frozen=True, slots=True)
class Answers:
    """What the owner said of lines, by their words: to what was asked, and whether they come in.

    `told` holds answers in their order, each a column and a text; `out` what is left out,
    `again` what comes in beside what looks the same.
    """

    told: Mapping[str, tuple[tuple[str, str], ...]] = field(default_factory=dict)
    out: frozenset[str] = frozenset()
    again: frozenset[str] = frozenset()

    def telling(self, line: str, column: str, text: str) -> Answers:
        """With one more answer."""
        told = {**self.told, line: (*self.told.get(line, ()), (column, text))}
        return replace(self, told=told, out=self.out - {line})

    def leaving_out(self, line: str) -> Answers:
        """With a line left out."""
        return replace(self, out=self.out | {line}, again=self.again - {line})

    def taking(self, line: str) -> Answers:
        """With a line taken in after all, be it there already."""
        return replace(self, out=self.out - {line}, again=self.again | {line})


@dataclass(frozen=True, slots=True)
class ReadLine:
    """One line and what becomes of it; `asked` is the first thing to be answered."""

    row: ListedRow
    state: State
    kind: str = ""
    asked: CellProblem | None = None

    @property
    def words(self) -> str:
        """The line as it is written; the cells of a table's row."""
        return words_of(self.row)

    @property
    def title(self) -> str:
        """What is on the label, with how many of it there are."""
        bottle = self.row.bottle
        cells = self.row.cells
        said = f"{cells.get('maker', '')} {cells.get('product', '')}".strip()
        title = bottle.draft.title if bottle else said or self.words
        count = bottle.count if bottle else 1
        return f"{count} × {title}" if count > 1 else title


@dataclass(frozen=True, slots=True)
class ReadList:
    """All lines of a list in their order, and what only parts them."""

    lines: tuple[ReadLine, ...] = ()
    headings: tuple[str, ...] = ()
    faults: tuple[str, ...] = ()

    @property
    def coming(self) -> tuple[ListedBottle, ...]:
        """What comes in."""
        rows = (each.row.bottle for each in self.lines if each.state == "in")
        return tuple(each for each in rows if each is not None)

    @property
    def asked(self) -> tuple[ReadLine, ...]:
        """What is to be answered."""
        return tuple(each for each in self.lines if each.state == "asked")

    @property
    def in_words(self) -> str:
        """How many lines there are and what becomes of them; no line is left out unsaid."""
        if not self.lines:
            return ""
        how_many = {state: sum(each.state == state for each in self.lines) for state in STATE_WORDS}
        said = [counted(len(self.lines), "line")]
        coming = counted(sum(each.count for each in self.coming), "bottle")
        said.append(tr("{bottles} to come in", bottles=coming))
        said += [tr(told, n=how_many[state]) for state, told in _TOLD.items() if how_many[state]]
        said += [self._guessed] if self._guessed else []
        if self.headings:
            said.append(tr("headings: {headings}", headings=spoken_list(self.headings, "and")))
        return " · ".join((*said, *self.faults))

    @property
    def _guessed(self) -> str:
        coming = [each.row for each in self.lines if each.state == "in"]
        parts = []
        columns = {tr_noop("size"): tr_noop("sizes"), tr_noop("level"): tr_noop("levels")}
        for column, several in columns.items():
            count = sum(column in row.guessed for row in coming)
            parts += [counted(count, column, several)] if count else []
        if not parts:
            return ""
        return tr("{parts} guessed ({sign})", parts=spoken_list(parts, "and"), sign=GUESS)


def words_of(row: ListedRow) -> str:
    """By what a line is known: its words, or the cells of a table's row."""
    return row.written or f"{row.row}: {', '.join(row.cells.values())}"


def read_list(snapshot: Snapshot, text: str, answers: Answers) -> ReadList:
    """The lines of a text with the answers that were given. Writes nothing."""
    if not text.strip():
        return ReadList()
    found = look_at_list(snapshot, text)
    terms = terms_of(snapshot)
    rows = []
    words = {row.row: words_of(row) for row in found.file.listed}
    for row in found.file.listed:
        for column, said in answers.told.get(words[row.row], ()):
            row = answered(row, column, said, terms)
        rows.append(row)
    kept = [row for row in rows if words[row.row] not in answers.out]
    preview = sorted_out(found.file, kept, snapshot)
    state_of = _states(preview, answers, words)
    tree = snapshot.knowledge.tree
    lines = (_line(state_of.get(row.row, ("out", row)), tree) for row in rows)
    faults = tuple(str(each) for each in found.file.faults)
    return ReadList(tuple(lines), found.file.headings, faults)


def _states(
    preview: BottlePreview, answers: Answers, words: Mapping[int, str]
) -> dict[int, tuple[State, ListedRow]]:
    found: dict[int, tuple[State, ListedRow]] = {each.row: ("in", each) for each in preview.new}
    found |= {each.row: ("asked", each) for each in preview.repair}
    for same in preview.same:
        again = words[same.row.row] in answers.again
        found[same.row.row] = ("in" if again else "there", same.row)
    return found


def _line(said: tuple[State, ListedRow], tree: FamilyTree) -> ReadLine:
    state, row = said
    asked = row.problems[0] if state == "asked" and row.problems else None
    kind = tree.name(row.bottle.draft.ingredient) if row.bottle else row.cells.get("ingredient", "")
    asked_kind = tr("perhaps {likely}", likely=asked.likely) if asked and asked.likely else ""
    return ReadLine(row, state, asked_kind if state == "asked" else kind, asked)


def _size(line: ReadLine) -> str:
    bottle = line.row.bottle
    said = quantity(bottle.draft.size, bottle.draft.unit) if bottle else ""
    return _marked(said or line.row.cells.get("size", ""), "size", line.row)


def _level(line: ReadLine) -> str:
    bottle = line.row.bottle
    if bottle is None:
        said = line.row.cells.get("level", "")
    elif bottle.level is None:
        is_new = bottle.sealed or "level" in line.row.guessed
        said = tr("unopened") if is_new else tr("full")
    else:
        said = percent(bottle.level.amount / bottle.draft.size)
    if said == "?" or ("level" in line.row.guessed and said == "50 %"):
        return tr("{sign} half", sign=GUESS)
    return _marked(said, "level", line.row)


def _marked(said: str, column: str, row: ListedRow) -> str:
    return f"{GUESS} {said}" if said and column in row.guessed else said


def _tip(line: ReadLine) -> str:
    return " ".join((f"“{line.words}”", *line.row.remarks))


COLUMNS: tuple[Column[ReadLine], ...] = (
    Column(
        tr_noop("Line"), lambda line: str(line.row.line), key=lambda line: line.row.line, right=True
    ),
    Column(
        tr_noop("Bottle, and what it is"),
        lambda line: line.title,
        tooltip=_tip,
        roles={SUBTITLE_ROLE: lambda line: line.kind},
    ),
    Column(tr_noop("Size, level"), _size, roles={SUBTITLE_ROLE: _level}, right=True),
    Column(tr_noop("Then"), lambda line: tr(STATE_WORDS[line.state])),
)


def lines_to_show(found: ReadList) -> Sequence[ReadLine]:
    """What is asked first, then all else, each in the order of the list."""
    return (*found.asked, *(each for each in found.lines if each.state != "asked"))
