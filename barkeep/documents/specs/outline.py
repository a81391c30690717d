"""A document as headings, items, table rows and paragraphs, and the specs that these make up.

Markdown and pages without data come to the same: a heading names a spec, or one
of its parts where it says *Ingredients*, *Method*, *Glass* or the like; items
before the method are lines; what follows them is the method.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from typing import Literal

from barkeep.documents.specs.document import Document, in_short
from barkeep.documents.specs.tables import table_lines
from barkeep.domain.amounts.spoken import any_amount_at_start
from barkeep.domain.spec_text.headers import Header, header_in
from barkeep.domain.spec_text.parts import SpecParts
from barkeep.errors import UserError
from barkeep.translation import tr

Kind = Literal["heading", "item", "step", "row", "text", "quote", "break"]
LOWEST = 7
"""The level of a heading that is none by its marks, such as a name in bold."""


@dataclass(frozen=True, slots=True)
class Block:
    """One piece of a document; `row` is the line it begins on, from 1.

    `level` is that of a heading, `cells` are those of a table's row. A *step* is
    an item with a number, a *break* a step that parts two paragraphs.
    """

    kind: Kind
    text: str = ""
    row: int = 1
    level: int = 0
    cells: tuple[str, ...] = ()


SECTIONS: Mapping[str, str] = {
    **dict.fromkeys(
        (
            "ingredients",
            "ingredient",
            "lines",
            "you need",
            "you will need",
            "spec",
            "what you need",
        ),
        "lines",
    ),
    **dict.fromkeys(
        (
            *("method", "instructions", "directions", "preparation", "build", "steps"),
            *("how to make it", "procedure", "to make"),
        ),
        "method",
    ),
    **dict.fromkeys(("notes", "note", "description", "about", "tips"), "notes"),
    **dict.fromkeys(("details", "service", "serving"), "details"),
    **dict.fromkeys(("garnish", "garnishes"), "garnish"),
    **dict.fromkeys(("glass", "glassware"), "glass"),
    **dict.fromkeys(("serves", "servings", "yield"), "serves"),
    **dict.fromkeys(("credit", "by", "author"), "credit"),
    **{each: each for each in ("ice", "source", "tags", "riff of")},
}
_ONCE = frozenset({"glass", "ice", "credit", "source", "serves", "tags", "riff of"})


@dataclass
class Draft:
    """A spec while its blocks are gone through."""

    name: str
    row: int = 0
    level: int = LOWEST
    lines: list[str] = field(default_factory=list)
    method: list[str] = field(default_factory=list)
    notes: list[str] = field(default_factory=list)
    fields: dict[str, str] = field(default_factory=dict)
    left_aside: list[str] = field(default_factory=list)

    @property
    def empty(self) -> bool:
        """Whether nothing but its name is there."""
        return not (self.lines or self.method or self.notes or self.fields)

    def take_field(self, header: Header) -> None:
        """Take in what is said of the spec in a word and a value."""
        name = "serves" if header.name in ("makes", "yield") else header.name
        if name == "notes":
            self.notes.append(header.value)
        elif name == "garnish":
            self.lines.append(f"Garnish: {header.value}")
        elif name == "method":
            self.method.append(header.value)
        elif name in _ONCE and self.fields.setdefault(name, header.value) != header.value:
            self.notes.append(f"{name.capitalize()}: {header.value}")

    def finished(self) -> SpecParts:
        """The spec in pieces."""
        fields = dict(self.fields)
        number = _number(fields.get("serves", ""))
        notes = list(self.notes)
        if number is None and fields.get("serves"):
            notes.append(f"Serves: {fields['serves']}")
        tags = tuple(tag.strip().lstrip("#") for tag in fields.get("tags", "").split(","))
        return SpecParts(
            name=self.name,
            lines=tuple(self.lines),
            method=tuple(self.method),
            glass=fields.get("glass", ""),
            ice=fields.get("ice", ""),
            notes=tuple(notes),
            riff_of=fields.get("riff of", ""),
            serves=number,
            tags=tuple(tag for tag in tags if tag),
            credit=fields.get("credit", ""),
            source=fields.get("source", ""),
            row=self.row,
            left_aside=tuple(self.left_aside),
        )


@dataclass(slots=True)
class _Section:
    """A heading and all up to the next one; the first of a document may have none."""

    heading: Block | None
    blocks: list[Block] = field(default_factory=list)

    @property
    def part(self) -> str | None:
        """Which part of a spec the heading says it is."""
        if self.heading is None:
            return None
        return SECTIONS.get(self.heading.text.rstrip(" :").casefold())

    @property
    def has_lines(self) -> bool:
        """Whether it holds a list or a table in which something has an amount."""
        return any(
            begins_with_amount(each.text)
            or (each.kind == "row" and any(map(begins_with_amount, each.cells)))
            for each in self.blocks
            if each.kind in ("item", "step", "row")
        )


def specs_of(blocks: Iterable[Block], *, strict: bool) -> Document:
    """The specs that the blocks of a document make up.

    `strict` is for a page, where a spec must have a list with amounts, and all
    words that are no part of one are left aside; else they are notes.
    """
    reading = _Reading(strict)
    sections = [*_sections(blocks)]
    for section, following in zip(sections, (*sections[1:], None), strict=True):
        reading.take(section, following)
    return reading.finished()


def begins_with_amount(text: str) -> bool:
    """Whether a text begins with an amount that has a number: *2 oz gin*."""
    if not any(mark.isnumeric() for mark in text[:12]):
        return False
    try:
        return any_amount_at_start(text) is not None
    except UserError:
        return True


def _measures(text: str) -> bool:
    """Whether a text begins with an amount in a unit: *2 oz gin*, and no *2 minutes later*."""
    try:
        found = any_amount_at_start(text)
    except UserError:
        return False
    return found is not None and found.unit not in (None, "each")


def _sections(blocks: Iterable[Block]) -> Iterator[_Section]:
    section = _Section(None)
    for block in blocks:
        if block.kind == "heading":
            yield section
            section = _Section(block)
        else:
            section.blocks.append(block)
    yield section


class _Reading:
    def __init__(self, strict: bool) -> None:
        self._strict = strict
        self._drafts: list[Draft] = []
        self._aside: list[str] = []

    def take(self, section: _Section, following: _Section | None) -> None:
        """Take a section in; the one behind it tells whether it has parts of its own."""
        heading = section.heading
        if heading is None:
            self._take_beginning(section)
            return
        draft = self._drafts[-1] if self._drafts else None
        inline = header_in(heading.text)
        if draft is not None and inline and inline.value and heading.level > draft.level:
            draft.take_field(inline)
            self._fill(draft, section.blocks, "details")
        elif draft is not None and section.part and self._is_part(section, following, draft):
            self._fill(draft, section.blocks, section.part)
        elif draft is not None and self._is_aside(section, draft):
            self._leave(section, draft)
        else:
            self._begin(heading, section.blocks)

    def finished(self) -> Document:
        """All specs; of a page, those without lines are left aside."""
        kept: list[SpecParts] = []
        for draft in self._drafts:
            if draft.empty or (self._strict and not any(map(begins_with_amount, draft.lines))):
                self._aside += self._words_of(draft)
            else:
                kept.append(draft.finished())
        return Document(tuple(kept), tuple(self._aside))

    def _begin(self, heading: Block, blocks: Sequence[Block]) -> None:
        draft = Draft(heading.text, heading.row, heading.level)
        self._drafts.append(draft)
        listed = not self._strict or _Section(heading, list(blocks)).has_lines
        self._fill(draft, blocks, "lines" if listed else "aside")

    def _take_beginning(self, section: _Section) -> None:
        """What stands before any heading."""
        if self._strict and section.has_lines:
            self._begin(Block("heading", "", section.blocks[0].row, LOWEST), section.blocks)
        else:
            self._aside += (f"“{in_short(each.text)}”" for each in section.blocks if each.text)

    def _is_part(self, section: _Section, following: _Section | None, draft: Draft) -> bool:
        """A heading as high as the spec's own begins a spec where it has a list of its own.

        So it does where parts of its own stand under it: a drink may be called *By*.
        """
        assert section.heading is not None
        if section.heading.level > draft.level:
            return True
        under = following.heading if following else None
        if under and following and under.level > section.heading.level and following.part:
            return False
        if section.part == "credit" and any(each.kind == "item" for each in section.blocks):
            return False
        return not section.has_lines or (section.part == "lines" and not draft.lines)

    def _is_aside(self, section: _Section, draft: Draft) -> bool:
        """A deeper heading without a list of lines, in a spec that has its own."""
        assert section.heading is not None
        deeper = section.heading.level > draft.level
        return deeper and bool(draft.lines) and bool(section.blocks) and not section.has_lines

    def _leave(self, section: _Section, draft: Draft) -> None:
        assert section.heading is not None
        words = " ".join(each.text or " ".join(each.cells) for each in section.blocks)
        said = f"{section.heading.text.rstrip(' :')}: {words}"
        if self._strict:
            draft.left_aside.append(f"“{in_short(said)}”")
        else:
            draft.notes.append(said)

    def _words_of(self, draft: Draft) -> Iterator[str]:
        if not self._strict:
            if draft.name:
                yield tr("the heading “{words}”", words=in_short(draft.name))
            return
        for each in (draft.name, *draft.lines, *draft.method, *draft.notes):
            if each:
                yield f"“{in_short(each)}”"
        yield from draft.left_aside

    def _fill(self, draft: Draft, blocks: Sequence[Block], section: str) -> None:
        rows: list[Block] = []
        for block in (*blocks, Block("text")):
            if block.kind == "row":
                rows.append(block)
                continue
            if rows:
                self._take_table(draft, rows)
                rows = []
            if block.text or block.kind == "break":
                section = self._take(draft, block, section)

    def _take_table(self, draft: Draft, rows: Sequence[Block]) -> None:
        lines, aside = table_lines([each.cells for each in rows])
        draft.lines += lines
        draft.left_aside += aside

    def _take(self, draft: Draft, block: Block, section: str) -> str:
        """Take one block in; the section that the next one belongs to."""
        text = block.text
        named = header_in(text)
        if named and named.value and section in ("lines", "details", "aside"):
            if named.name == "garnish":
                draft.lines.append(text)
                return section
            if named.name not in ("name", "ingredients"):
                draft.take_field(named)
                if text.casefold().startswith("for "):
                    draft.notes.append(text)  # a remark as much as a field
                return section
        listed = block.kind in ("item", "step", "break")
        if section == "lines" and block.kind == "quote":
            draft.notes.append(text)
            return section
        step = block.kind == "step" and not _measures(text)
        if section == "lines" and (not listed or step) and draft.lines:
            section = "method"  # prose, or steps, after the list of ingredients
        if section == "aside":
            draft.left_aside.append(f"“{in_short(text)}”")
        elif block.kind == "quote":
            draft.notes.append(text)
        elif section == "lines":
            self._take_line(draft, text, listed)
        elif section == "method":
            draft.method.append("" if block.kind == "break" else text)
        elif section == "garnish":
            draft.lines.append(f"Garnish: {text}")
        elif section in _ONCE:
            draft.take_field(Header(section, text, 0))
        else:
            draft.notes.append(text)
        return section

    def _take_line(self, draft: Draft, text: str, listed: bool) -> None:
        if listed:
            draft.lines.append(text)
        elif self._strict:
            draft.left_aside.append(f"“{in_short(text)}”")
        else:
            draft.notes.append(text)


def _number(text: str) -> float | None:
    header = header_in(f"Serves: {text}")
    if header is None or not text:
        return None
    try:
        found = any_amount_at_start(header.value)
    except UserError:
        return None
    if found is None or found.high is not None or found.unit not in (None, "each"):
        return None
    return found.value or None
