"""In what two specs of one name differ, line by line and field by field."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from typing import Literal

from barkeep.domain.amounts.units import US_UNITS, BarUnits
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import folded
from barkeep.domain.spec_text.text import line_text
from barkeep.domain.specs.riffs import Change, LinePair, line_pairs
from barkeep.domain.specs.spec import Line, Spec
from barkeep.translation import tr_noop

LineChange = Change | Literal["wording"]
"""What became of a line; *wording* is the same drink, measured or remarked on otherwise."""


@dataclass(frozen=True, slots=True)
class ComparedLine:
    """A line of one spec beside that of the other, as text; either may be empty."""

    mine: str
    theirs: str
    change: LineChange


@dataclass(frozen=True, slots=True)
class ComparedField:
    """A field other than the lines in which two specs differ."""

    name: str
    mine: str
    theirs: str


@dataclass(frozen=True, slots=True)
class Differences:
    """Two specs side by side: all their lines, and the fields that differ."""

    lines: tuple[ComparedLine, ...]
    fields: tuple[ComparedField, ...]

    @property
    def same(self) -> bool:
        """Whether nothing that is made, served or told differs."""
        return not self.fields and all(line.change == "same" for line in self.lines)


def same_spec(mine: Spec, theirs: Spec) -> bool:
    """Whether two specs of one name say the same, however their lines are worded."""
    return _same_order(mine, theirs) and not any(_fields(mine, theirs))


def compared(mine: Spec, theirs: Spec, tree: FamilyTree, units: BarUnits = US_UNITS) -> Differences:
    """Both specs side by side, the lines in the order of `mine`."""
    pairs = line_pairs(mine, _with_own_quantities(mine, theirs), tree)
    lines = (
        *(_compared_line(pair, tree, units) for pair in pairs),
        *_compared_unsettled(mine, theirs),
    )
    fields = list(_fields(mine, theirs))
    if all(line.change == "same" for line in lines) and not _same_order(mine, theirs):
        orders = ("; ".join(line.text for line in spec.in_order) for spec in (mine, theirs))
        fields.insert(0, ComparedField(tr_noop("order of the lines"), *orders))
    return Differences(lines, tuple(fields))


def _unsettled(spec: Spec) -> list[tuple[str, int]]:
    """What is not understood of a spec, and where; how it was asked about is no difference."""
    return [(each.text, each.place) for each in spec.unsettled]


def _compared_unsettled(mine: Spec, theirs: Spec) -> Iterator[ComparedLine]:
    """The lines that are not understood: those of the same words are the same."""
    left = [each.text for each in theirs.unsettled]
    for each in mine.unsettled:
        both = each.text in left
        if both:
            left.remove(each.text)
        yield ComparedLine(each.text, each.text if both else "", "same" if both else "left out")
    yield from (ComparedLine("", text, "added") for text in left)


def _with_own_quantities(mine: Spec, theirs: Spec) -> Spec:
    """`theirs` with the quantities of `mine` for lines that say the same.

    A dash was worth what the bar said when the spec was written.
    """
    known = {_measured(line): line.quantity for line in mine.lines}
    lines = (
        replace(line, quantity=known.get(_measured(line), line.quantity)) for line in theirs.lines
    )
    return replace(theirs, lines=tuple(lines))


def _compared_line(pair: LinePair, tree: FamilyTree, units: BarUnits) -> ComparedLine:
    before, after = pair.before, pair.after
    change: LineChange = pair.change
    if change == "same" and before and after and not _say_the_same(before, after):
        change = "wording"
    mine, theirs = (
        "" if line is None else line_text(line, tree, units) for line in (before, after)
    )
    return ComparedLine(mine, theirs, change)


def _said(line: Line) -> Line:
    """What a line says, without the letters it is said in."""
    return replace(line, text="", quantity=None)


def _measured(line: Line) -> Line:
    """What a line says whatever it calls its ingredient."""
    return replace(_said(line), called="", stated=())


def _say_the_same(one: Line, other: Line) -> bool:
    """Whether two lines say the same; of a line kept before its words were, its text says them."""
    if one.text == other.text and not (one.called and other.called):
        one, other = (replace(each, called="", stated=()) for each in (one, other))
    return _said(one) == _said(other)


def _same_order(mine: Spec, theirs: Spec) -> bool:
    if len(mine.lines) != len(theirs.lines) or _unsettled(mine) != _unsettled(theirs):
        return False
    return all(map(_say_the_same, mine.lines, theirs.lines))


def _fields(mine: Spec, theirs: Spec) -> Iterator[ComparedField]:
    for name, one, other in (
        (tr_noop("method"), _plain(mine.method), _plain(theirs.method)),
        (tr_noop("glass"), mine.glass, theirs.glass),
        (tr_noop("ice"), mine.ice, theirs.ice),
        (tr_noop("notes"), _plain(mine.notes), _plain(theirs.notes)),
        (tr_noop("serves"), f"{mine.serves:g}", f"{theirs.serves:g}"),
        (tr_noop("tags"), ", ".join(mine.tags), ", ".join(theirs.tags)),
        (tr_noop("credit"), mine.credit, theirs.credit),
    ):
        if one != other:
            yield ComparedField(name, one, other)
    if folded(mine.riff_of or "") != folded(theirs.riff_of or ""):
        yield ComparedField(tr_noop("riff of"), mine.riff_of or "", theirs.riff_of or "")


def _plain(text: str) -> str:
    return "\n".join(" ".join(row.split()) for row in text.strip().split("\n"))
