"""Lay a job out on pages, a little at a time: nothing is ever cut off.

Cards and labels are fitted into their place by smaller type, and go on on
another card where that is not enough. What flows is kept together where it can
be: Qt heeds no wish to keep a paragraph from breaking, so each group is a
document of its own.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from math import sqrt

from PySide6.QtCore import QRectF, QSizeF
from PySide6.QtGui import QTextDocument

from barkeep.desktop.printing.block_document import document_of, from_mm, from_points, rules_of
from barkeep.desktop.printing.pages import Framed, Note, Placed, PrintedPage
from barkeep.documents.printed.blocks import Group, Rows
from barkeep.documents.printed.jobs import CardJob, FlowJob, Job
from barkeep.documents.printed.paper import Size, cut_marks
from barkeep.documents.printed.templates import Template

SCALE_STEP = 0.04
LARGEST_SCALE = 1.45
"""However large a card is, its type grows no more than this."""
CONTINUED_SCALE = 0.85
"""The type of what goes on on another card: there is room enough then."""


Step = PrintedPage | None
"""A finished page, or None where only something more is laid out."""


def steps_of(job: Job) -> Iterator[Step]:
    """Every page of a job, with a chance to pause after each group of blocks."""
    return _card_steps(job) if isinstance(job, CardJob) else _Flow(job).steps()


# Cards and labels


@dataclass(frozen=True)
class _Face:
    """One card's worth of a document."""

    document: QTextDocument
    top: float
    height: float
    number: int
    of: int
    title: str


def _card_steps(job: CardJob) -> Iterator[Step]:
    waiting: list[_Face] = []
    for group in job.groups:
        waiting += _faces(group, job)
        while len(waiting) >= job.grid.each:
            yield _card_page(job, waiting[: job.grid.each])
            waiting = waiting[job.grid.each :]
        yield None
    if waiting:
        yield _card_page(job, waiting)


def _faces(group: Group, job: CardJob) -> list[_Face]:
    card, template = job.grid.card, job.template
    margin = 2.0 * template.margin_mm
    width, height = from_mm(card.width_mm - margin), from_mm(card.height_mm - margin)
    document, count = _fitted(group, job, width, height), 1
    if document is None:
        scale = max(template.least_scale, CONTINUED_SCALE)
        document = document_of(group, template, width, scale)
        document.setPageSize(QSizeF(width, height))
        count = document.pageCount()
    return [
        _Face(
            document=document,
            top=number * height,
            height=height,
            number=number + 1,
            of=count,
            title=_title(group),
        )
        for number in range(count)
    ]


def _fitted(group: Group, job: CardJob, width: float, height: float) -> QTextDocument | None:
    """The document in the largest type in which it fits, None where it never does."""
    scales = _scales(job)
    best = document_of(group, job.template, width, scales[0])  # which fits most often
    if best.size().height() <= height:
        return best
    found: QTextDocument | None = None
    low, high = 1, len(scales) - 1
    while low <= high:
        middle = (low + high) // 2
        document = document_of(group, job.template, width, scales[middle])
        if document.size().height() <= height:
            found, high = document, middle - 1
        else:
            low = middle + 1
    return found


def _scales(job: CardJob) -> list[float]:
    """The scales of type there are for a card, the one that suits its size first."""
    card, template = job.grid.card, job.template
    suits = 1.0
    if template.drawn_for_mm is not None:
        width, height = template.drawn_for_mm
        suits = sqrt(card.width_mm * card.height_mm / (width * height))
    largest = max(template.least_scale, min(suits, LARGEST_SCALE))
    steps = int((largest - template.least_scale) / SCALE_STEP + 1e-9)
    return [largest - step * SCALE_STEP for step in range(steps + 1)]


def _card_page(job: CardJob, faces: Sequence[_Face]) -> PrintedPage:
    grid, template = job.grid, job.template
    placed, frames, notes = [], [], []
    for number, face in enumerate(faces):
        left, top = (from_mm(each) for each in grid.corner(number))
        outside = QRectF(left, top, from_mm(grid.card.width_mm), from_mm(grid.card.height_mm))
        margin = from_mm(template.margin_mm)
        inside = outside.adjusted(margin, margin, -margin, -margin)
        rules = [rule for rule in rules_of(face.document) if _within(rule.y, face)]
        placed.append(Placed(face.document, inside, face.top, rules))
        frames += _frame(outside, template)
        if face.of > 1:
            below = QRectF(inside.left(), inside.bottom(), inside.width(), margin)
            notes.append(Note(below, f"{face.number} of {face.of}"))
    titles = [face.title for face in faces]
    return PrintedPage(
        sheet=grid.sheet,
        placed=placed,
        frames=frames,
        notes=notes,
        marks=cut_marks(grid),
        titles=titles,
    )


def _within(y: float, face: _Face) -> bool:
    return face.top <= y <= face.top + face.height


def _frame(outside: QRectF, template: Template) -> list[Framed]:
    if template.frame == "none":
        return []
    inset = from_mm(template.margin_mm) * 0.45
    return [Framed(outside.adjusted(inset, inset, -inset, -inset), template.frame)]


def _title(group: Group) -> str:
    """What a group is about: its first paragraph."""
    return next((each.text for each in group if not isinstance(each, Rows)), "")


# What flows down columns


@dataclass
class _Open:
    """The page being filled: `column` from 0, `y` below what it holds, `start` of its columns."""

    top: float
    column: int = 0
    start: float = 0.0
    y: float = 0.0
    placed: list[Placed] = field(default_factory=list)
    titles: list[str] = field(default_factory=list)


class _Flow:
    def __init__(self, job: FlowJob) -> None:
        self._job, self._template = job, job.template
        self._margin = from_mm(job.template.margin_mm)
        self._gap = from_mm(job.template.gap_mm)
        self._width = from_mm(job.sheet.width_mm) - 2.0 * self._margin
        self._bottom = from_mm(job.sheet.height_mm) - self._margin
        self._number = 0
        self._page = self._new_page()

    def steps(self) -> Iterator[Step]:
        for group in self._job.groups:
            yield from self._take(group)
            yield None
        if self._page.placed:
            yield self._finished()

    @property
    def _column_width(self) -> float:
        columns = self._template.columns
        return (self._width - (columns - 1) * self._gap) / columns

    def _new_page(self) -> _Open:
        return _Open(self._margin, start=self._margin, y=self._margin)

    def _take(self, group: Group) -> Iterator[PrintedPage]:
        if self._template.new_page_each and self._page.placed:
            yield self._finished()
        if group[0].style == "title" and not self._page.placed:
            self._span(group)
            return
        document = document_of(group, self._template, self._column_width)
        height = document.size().height()
        above = self._space_above(group)
        if self._page.y + above + height > self._bottom:
            yield from self._next_column()
        if self._page.y > self._page.start:
            self._page.y += above
        room = self._bottom - self._page.y
        if height <= room:
            self._place(document, height, _title(group))
            self._page.y += self._space_below(group)
            return
        yield from self._split(document, room, _title(group))

    def _span(self, group: Group) -> None:
        """A title runs across all columns of the first page."""
        document = document_of(group, self._template, self._width)
        height = document.size().height()
        below = self._space_below(group)
        area = QRectF(self._margin, self._page.y, self._width, height + below)
        self._page.placed.append(Placed(document, area, 0.0, rules_of(document)))
        self._page.y += height + below
        self._page.start = self._page.y

    def _space_above(self, group: Group) -> float:
        """What a document leaves out: the space above its first paragraph."""
        first = group[0]
        return (
            0.0
            if isinstance(first, Rows)
            else from_points(self._template.style(first.style).before)
        )

    def _space_below(self, group: Group) -> float:
        """What a document leaves out: the space below its last paragraph."""
        return from_points(self._template.style(group[-1].style).after)

    def _next_column(self) -> Iterator[PrintedPage]:
        page = self._page
        if page.y == page.start:
            return  # nothing stands in this column yet
        if page.column + 1 < self._template.columns:
            page.column, page.y = page.column + 1, page.start
        else:
            yield self._finished()

    def _split(self, document: QTextDocument, room: float, title: str) -> Iterator[PrintedPage]:
        """What is longer than a column goes on in the next, whole lines at a time."""
        document.setPageSize(QSizeF(self._column_width, room))
        count = document.pageCount()
        for number in range(count):
            self._place(document, room, title, number * room)
            if number + 1 < count:
                yield from self._next_column()

    def _place(self, document: QTextDocument, height: float, title: str, top: float = 0.0) -> None:
        page = self._page
        left = self._margin + page.column * (self._column_width + self._gap)
        area = QRectF(left, page.y, self._column_width, height)
        rules = [rule for rule in rules_of(document) if top <= rule.y <= top + height]
        page.placed.append(Placed(document, area, top, rules))
        page.titles.append(title)
        page.y += height

    def _finished(self) -> PrintedPage:
        page, sheet = self._page, self._job.sheet
        self._number += 1
        self._page = self._new_page()
        outside = QRectF(0.0, 0.0, from_mm(sheet.width_mm), from_mm(sheet.height_mm))
        notes = [self._page_number(sheet)] if self._number > 1 else []
        frames = _frame(outside, self._template)
        return PrintedPage(
            sheet=sheet,
            placed=page.placed,
            frames=frames,
            notes=notes,
            marks=(),
            titles=page.titles,
        )

    def _page_number(self, sheet: Size) -> Note:
        foot = QRectF(0.0, self._bottom, from_mm(sheet.width_mm), self._margin * 0.5)
        return Note(foot, str(self._number))
