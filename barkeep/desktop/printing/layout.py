"""Lay a job out on pages, a little at a time: nothing is ever cut off.

The type of cards and labels grows until they are full, and is made smaller where they
do not fit; they go on on another card where that is not enough. A drink is drawn in the
room that its words leave, and its words are left a little less large for it.

What flows is kept together where it can be: Qt heeds no wish to keep a paragraph from
breaking, so each group is a document of its own.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from math import sqrt

from PySide6.QtCore import QRectF, QSizeF
from PySide6.QtGui import QTextDocument

from barkeep.desktop.printing.block_document import (
    breaks_a_word,
    document_of,
    from_mm,
    from_points,
    rules_of,
)
from barkeep.desktop.printing.pages import Drawn, Framed, Note, Placed, PrintedPage
from barkeep.documents.printed.blocks import (
    Block,
    Drawing,
    Group,
    Rows,
    Text,
    Tick,
    Words,
    without_drawings,
)
from barkeep.documents.printed.jobs import CardJob, FlowJob, Job
from barkeep.documents.printed.paper import Size, cut_marks
from barkeep.documents.printed.templates import Template
from barkeep.domain.drink.picture import DrinkPicture
from barkeep.translation import tr

SCALE_STEP = 0.04
LARGEST_SCALE = 2.6
"""However large a card is, its type grows no more than this."""
GROWS = 1.5
"""Beyond what suits its size, the type of a card with few words grows no more than this."""
DRAWN_SHARE = 0.3
"""Of the height of a card, the least that a drink is drawn in."""
LEAST_DRAWN_SCALE = 0.9
"""No words are set smaller than this for the sake of a drawing."""
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
    picture: DrinkPicture | None = None


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
    words, picture = without_drawings(group), _picture_in(group)
    document, count = None, 1
    if picture is not None:
        above = QSizeF(width, height * (1.0 - DRAWN_SHARE))
        least = max(template.least_scale, LEAST_DRAWN_SCALE * _suits(job))
        document = _fitted(words, job, above, least)
    if document is None:
        document, picture = _fitted(words, job, QSizeF(width, height)), None
    if document is None:
        scale = max(template.least_scale, CONTINUED_SCALE)
        document = document_of(words, template, width, scale)
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
            picture=picture,
        )
        for number in range(count)
    ]


def _picture_in(group: Group) -> DrinkPicture | None:
    return next((each.picture for each in group if isinstance(each, Drawing)), None)


def _fitted(
    words: Sequence[Words], job: CardJob, size: QSizeF, least: float | None = None
) -> QTextDocument | None:
    """The document in the largest type in which it fits, None where it never does."""
    suits = _suits(job)
    scales = _scales(job.template.least_scale if least is None else least, suits)
    found: QTextDocument | None = None
    low, high = 0, len(scales) - 1
    while low <= high:
        middle = (low + high) // 2
        document = document_of(words, job.template, size.width(), scales[middle])
        if _fits(document, size, may_break=scales[middle] <= suits):
            found, high = document, middle - 1
        else:
            low = middle + 1
    return found


def _fits(document: QTextDocument, size: QSizeF, *, may_break: bool) -> bool:
    """Whether a document is no higher; type does not grow until a word is broken for it."""
    if document.size().height() > size.height():
        return False
    return may_break or not breaks_a_word(document)


def _suits(job: CardJob) -> float:
    """The scale of type that suits the size of a card."""
    card, template = job.grid.card, job.template
    if template.drawn_for_mm is None:
        return 1.0
    width, height = template.drawn_for_mm
    return sqrt(card.width_mm * card.height_mm / (width * height))


def _scales(least: float, suits: float) -> list[float]:
    """The scales of type there are, the largest first."""
    largest = max(least, min(suits * GROWS, LARGEST_SCALE))
    steps = int((largest - least) / SCALE_STEP + 1e-9)
    scales = {largest - step * SCALE_STEP for step in range(steps + 1)}
    return sorted({*scales, max(least, suits)}, reverse=True)


def _card_page(job: CardJob, faces: Sequence[_Face]) -> PrintedPage:
    grid, template = job.grid, job.template
    placed, frames, notes, drawn = [], [], [], []
    for number, face in enumerate(faces):
        left, top = (from_mm(each) for each in grid.corner(number))
        outside = QRectF(left, top, from_mm(grid.card.width_mm), from_mm(grid.card.height_mm))
        margin = from_mm(template.margin_mm)
        inside = outside.adjusted(margin, margin, -margin, -margin)
        rules = [rule for rule in rules_of(face.document) if _within(rule.y, face)]
        placed.append(Placed(face.document, inside, face.top, rules))
        frames += _frame(outside, template)
        if face.picture is not None:
            below = inside.adjusted(0.0, face.document.size().height(), 0.0, 0.0)
            drawn.append(Drawn(face.picture, below))
        if face.of > 1:
            below = QRectF(inside.left(), inside.bottom(), inside.width(), margin)
            notes.append(Note(below, tr("{number} of {of}", number=face.number, of=face.of)))
    titles = [face.title for face in faces]
    return PrintedPage(
        sheet=grid.sheet,
        placed=placed,
        frames=frames,
        notes=notes,
        marks=cut_marks(grid),
        titles=titles,
        drawn=drawn,
    )


def _within(y: float, face: _Face) -> bool:
    return face.top <= y <= face.top + face.height


def _frame(outside: QRectF, template: Template) -> list[Framed]:
    if template.frame == "none":
        return []
    inset = from_mm(template.margin_mm) * 0.45
    return [Framed(outside.adjusted(inset, inset, -inset, -inset), template.frame)]


def _title(group: Sequence[Block]) -> str:
    """What a group is about: its first paragraph."""
    return next((each.text for each in group if isinstance(each, Text | Tick)), "")


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
            yield from self._take(without_drawings(group))
            yield None
        if self._page.placed:
            yield self._finished()

    @property
    def _column_width(self) -> float:
        columns = self._template.columns
        return (self._width - (columns - 1) * self._gap) / columns

    def _new_page(self) -> _Open:
        return _Open(self._margin, start=self._margin, y=self._margin)

    def _take(self, group: Sequence[Words]) -> Iterator[PrintedPage]:
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

    def _span(self, group: Sequence[Words]) -> None:
        """A title runs across all columns of the first page."""
        document = document_of(group, self._template, self._width)
        height = document.size().height()
        below = self._space_below(group)
        area = QRectF(self._margin, self._page.y, self._width, height + below)
        self._page.placed.append(Placed(document, area, 0.0, rules_of(document)))
        self._page.y += height + below
        self._page.start = self._page.y

    def _space_above(self, group: Sequence[Words]) -> float:
        """What a document leaves out: the space above its first paragraph."""
        first = group[0]
        return (
            0.0
            if isinstance(first, Rows)
            else from_points(self._template.style(first.style).before)
        )

    def _space_below(self, group: Sequence[Words]) -> float:
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
