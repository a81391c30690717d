"""Sheets, and how cards and labels are laid out on them; all lengths in mm.

The sizes are data, in `resources/print/sizes.toml`.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from functools import cache
from typing import Annotated, Literal, cast, get_args

from barkeep import resource_files
from barkeep.errors import KnowledgeError
from barkeep.shipped_data import Limits, Text, by_key, parse, table_in

FOLDER, FILE = "print", "sizes.toml"

MARK_MM, MARK_GAP_MM = 4.0, 1.5
"""A cut mark's length, and how far outside the cut it begins where there is room."""

FITS_MM = 0.2
"""Paper is cut no more exactly than this: A6 counts as a quarter of A4."""


Length = Annotated[float, Limits(ge=20.0, le=1000.0)]

SizeKind = Literal["paper", "card", "label"]


@dataclass(frozen=True, slots=True)
class Size:
    """A sheet, card or label; `title` says what it is called."""

    key: str
    title: Text
    width_mm: Length
    height_mm: Length

    @property
    def turned(self) -> Size:
        """The same, on its side."""
        return Size(self.key, self.title, self.height_mm, self.width_mm)


@dataclass(frozen=True, slots=True)
class Mark:
    """A short line along which to cut."""

    x1_mm: float
    y1_mm: float
    x2_mm: float
    y2_mm: float


@dataclass(frozen=True, slots=True)
class Grid:
    """Cards edge to edge in the middle of a sheet."""

    sheet: Size
    card: Size
    columns: int
    rows: int

    @property
    def each(self) -> int:
        """How many a sheet takes."""
        return self.columns * self.rows

    @property
    def left_mm(self) -> float:
        """Where the first column begins."""
        return (self.sheet.width_mm - self.columns * self.card.width_mm) / 2.0

    @property
    def top_mm(self) -> float:
        """Where the first row begins."""
        return (self.sheet.height_mm - self.rows * self.card.height_mm) / 2.0

    def corner(self, number: int) -> tuple[float, float]:
        """The upper left corner of a card, counted from 0 row by row."""
        row, column = divmod(number, self.columns)
        left = self.left_mm + column * self.card.width_mm
        return left, self.top_mm + row * self.card.height_mm


def grid_for(sheet: Size, card: Size) -> Grid:
    """The way up of the sheet that takes the most cards; a card too large has a sheet of its size.

    >>> a4, a6 = Size("a4", "A4", 210, 297), Size("a6", "A6", 105, 148)
    >>> grid_for(a4, a6).each
    4
    """
    upright, sideways = (_grid(each, card) for each in (sheet, sheet.turned))
    best = sideways if sideways.each > upright.each else upright
    return best if best.each else Grid(card, card, 1, 1)


def cut_marks(grid: Grid) -> tuple[Mark, ...]:
    """Where to cut: at the ends of every cut, and a cross wherever two cuts meet inside.

    A card that fills its sheet needs none. Where the margin is too narrow for a
    mark outside the cards, it lies on the cut itself.
    """
    if grid.each == 1 and grid.sheet == grid.card:
        return ()
    xs = [grid.left_mm + n * grid.card.width_mm for n in range(grid.columns + 1)]
    ys = [grid.top_mm + n * grid.card.height_mm for n in range(grid.rows + 1)]
    marks: list[Mark] = []
    for x in _inside(xs, grid.sheet.width_mm):
        for start, end in _ends(grid.top_mm, ys[-1], grid.sheet.height_mm):
            marks.append(Mark(x, start, x, end))
    for y in _inside(ys, grid.sheet.height_mm):
        for start, end in _ends(grid.left_mm, xs[-1], grid.sheet.width_mm):
            marks.append(Mark(start, y, end, y))
    half = MARK_MM / 4.0
    for x in xs[1:-1]:
        for y in ys[1:-1]:
            marks += [Mark(x - half, y, x + half, y), Mark(x, y - half, x, y + half)]
    return tuple(marks)


@cache
def shipped_sizes() -> Mapping[SizeKind, tuple[Size, ...]]:
    """The papers, cards and labels barkeep brings along. Raises `KnowledgeError`."""
    return read_sizes(resource_files.read_text(FOLDER, FILE))


def size_named(kind: SizeKind, key: str) -> Size:
    """A shipped size by its key. Raises `KeyError`."""
    return {size.key: size for size in shipped_sizes()[kind]}[key]


def read_sizes(text: str, file: str = FILE) -> Mapping[SizeKind, tuple[Size, ...]]:
    """Sizes out of a TOML text, in its order. Raises `KnowledgeError`."""
    kinds = cast(tuple[SizeKind, ...], get_args(SizeKind))
    document = parse(text, file, *kinds)
    found: dict[SizeKind, tuple[Size, ...]] = {}
    for kind in kinds:
        sizes = by_key(table_in(document, kind, file), Size, file, kind)
        if not sizes:
            raise KnowledgeError(file, kind, f"write at least one, such as [{kind}.a6]")
        found[kind] = tuple(sizes.values())
    return found


def _grid(sheet: Size, card: Size) -> Grid:
    columns = int((sheet.width_mm + FITS_MM) // card.width_mm)
    rows = int((sheet.height_mm + FITS_MM) // card.height_mm)
    return Grid(sheet, card, columns, rows)


def _inside(places: Sequence[float], edge_mm: float) -> list[float]:
    """The cuts that are no edge of the sheet."""
    return [place for place in places if FITS_MM < place < edge_mm - FITS_MM]


def _ends(first: float, last: float, edge_mm: float) -> tuple[tuple[float, float], ...]:
    """A mark before the first card and one after the last; on the cut where there is no room."""
    if first < MARK_MM + MARK_GAP_MM:
        return (first, first + MARK_MM), (last - MARK_MM, last)
    return (
        (first - MARK_GAP_MM - MARK_MM, first - MARK_GAP_MM),
        (last + MARK_GAP_MM, last + MARK_GAP_MM + MARK_MM),
    )
