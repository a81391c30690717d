"""Blocks of a template as a text document, in tenths of a point."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import Any

from PySide6.QtCore import Qt
from PySide6.QtGui import (
    QColor,
    QFont,
    QFontMetricsF,
    QTextBlock,
    QTextBlockFormat,
    QTextCharFormat,
    QTextCursor,
    QTextDocument,
    QTextFrameFormat,
    QTextLength,
    QTextOption,
    QTextTable,
    QTextTableCellFormat,
    QTextTableFormat,
)

from barkeep.desktop.look.typeface import has_letters_of, set_in_it
from barkeep.documents.printed.blocks import Rows, Tick, Words
from barkeep.documents.printed.templates import Align, BlockStyle, Font, Template

PER_POINT = 10.0
"""The one measure of printing is a tenth of a point, so that type needs no rounding."""

PER_INCH = 72.0 * PER_POINT
_MM_PER_INCH = 25.4


def from_mm(length_mm: float) -> float:
    """A length in tenths of a point."""
    return length_mm * PER_INCH / _MM_PER_INCH


def from_points(length: float) -> float:
    """A length in tenths of a point."""
    return length * PER_POINT


COLUMN_GAP = 6.0
"""Between the columns of a table, in points."""
MOST_FOR_AMOUNTS = 0.6
"""Of the width, what all columns but the last may take together."""
ABOVE_RULE = 0.35
"""Of the space below a block with a rule, how much lies above the rule."""
BOX_SHARE = 0.95
"""A box to be ticked, against the size of the type beside it."""
BOX_ROOM = 1.7
"""What it takes with the space after it, against the same."""
_FAMILIES: dict[Font, tuple[str, QFont.StyleHint]] = {
    "sans": ("Sans Serif", QFont.StyleHint.SansSerif),
    "serif": ("Serif", QFont.StyleHint.Serif),
}
"""What the system calls them; the first of them is barkeep's own typeface."""
_ALIGNMENT: dict[Align, Qt.AlignmentFlag] = {
    "start": Qt.AlignmentFlag.AlignLeft,  # turned about in a text that runs from the right
    "centre": Qt.AlignmentFlag.AlignHCenter,
}


@dataclass(frozen=True)
class RuledLine:
    """A line across below a block: how far down it is, and its colour."""

    y: float
    colour: str


@dataclass(frozen=True)
class Box:
    """A box to be ticked, at the left edge beside the first line of its paragraph."""

    y: float
    side: float
    done: bool
    colour: str


def document_of(
    blocks: Sequence[Words], template: Template, width: float, scale: float = 1.0
) -> QTextDocument:
    """A document of this width, its type `scale` times what the template says."""
    return _Writer(template, width, scale).written(blocks)


def rules_of(document: QTextDocument) -> tuple[RuledLine, ...]:
    """The lines to be drawn below the blocks that have one."""
    found = []
    for block, colour in _with_property(document, _RULE):
        below = document.documentLayout().blockBoundingRect(block).bottom()
        found.append(RuledLine(below + block.blockFormat().bottomMargin() * ABOVE_RULE, colour))
    return tuple(found)


def breaks_a_word(document: QTextDocument) -> bool:
    """Whether a line ends within a word, for want of room."""
    return any(_ends_within_words(block) for block in _blocks_of(document))


def _ends_within_words(block: QTextBlock) -> bool:
    text, layout = block.text(), block.layout()
    ends = (
        layout.lineAt(number).textStart() + layout.lineAt(number).textLength()
        for number in range(layout.lineCount() - 1)
    )
    return any(text[end - 1].isalnum() and text[end].isalnum() for end in ends)


def _blocks_of(document: QTextDocument) -> Iterator[QTextBlock]:
    block = document.begin()
    while block.isValid():
        yield block
        block = block.next()


def boxes_of(document: QTextDocument) -> tuple[Box, ...]:
    """The boxes to be drawn beside the paragraphs that have one."""
    found = []
    for block, (size, done, colour) in _with_property(document, _BOX):
        top = document.documentLayout().blockBoundingRect(block).top()
        line = block.layout().lineAt(0)
        middle = top + line.y() + line.height() / 2.0
        side = size * BOX_SHARE
        found.append(Box(middle - side / 2.0, side, bool(done), colour))
    return tuple(found)


def _with_property(document: QTextDocument, which: int) -> Iterator[tuple[QTextBlock, Any]]:
    """The paragraphs that have a property of ours, and what it says."""
    for block in _blocks_of(document):
        if kept := block.blockFormat().property(which):
            yield block, kept


def plain_font(kind: Font, text: str = "") -> QFont:
    """The font of a kind for a text, of no certain size."""
    family, hint = _FAMILIES[kind]
    font = QFont(family)
    font.setStyleHint(hint)
    return set_in_it(font) if kind == "sans" and has_letters_of(text) else font


def font_for(template: Template, style: BlockStyle, scale: float = 1.0, text: str = "") -> QFont:
    """A style's font for a text, its size in tenths of a point."""
    font = plain_font(template.font, text)
    font.setPixelSize(max(1, round(from_points(style.size) * scale)))
    font.setBold(style.bold)
    font.setItalic(style.italic)
    # Who copies "Buffer" out of a PDF shall not get a letter that is no f.
    font.setFeature(QFont.Tag("liga"), 0)
    font.setHintingPreference(QFont.HintingPreference.PreferNoHinting)
    return font


_RULE = QTextBlockFormat.Property.UserProperty.value + 1
_BOX = _RULE + 1


class _Writer:
    def __init__(self, template: Template, width: float, scale: float) -> None:
        self._template, self._width, self._scale = template, width, scale
        self._document = QTextDocument()
        self._document.setUndoRedoEnabled(False)
        self._document.setUseDesignMetrics(True)
        self._document.setDocumentMargin(0)
        option = QTextOption()
        # A word too long for the width is broken rather than cut off.
        option.setWrapMode(QTextOption.WrapMode.WrapAtWordBoundaryOrAnywhere)
        self._document.setDefaultTextOption(option)
        self._cursor = QTextCursor(self._document)
        self._at_empty_block = True

    def written(self, blocks: Sequence[Words]) -> QTextDocument:
        for block in blocks:
            style = self._template.style(block.style)
            if isinstance(block, Rows):
                self._write_rows(block, style)
            else:
                self._begin_block(style, block if isinstance(block, Tick) else None)
                self._cursor.insertText(block.text, self._char_format(style, block.text))
                self._at_empty_block = False
        if self._at_empty_block:
            self._flatten_block()
        self._document.setTextWidth(self._width)
        return self._document

    def _begin_block(self, style: BlockStyle, tick: Tick | None = None) -> None:
        layout = QTextBlockFormat()
        layout.setAlignment(_ALIGNMENT[style.align])
        layout.setTopMargin(from_points(style.before) * self._scale)
        layout.setBottomMargin(from_points(style.after) * self._scale)
        if style.rule:
            layout.setProperty(_RULE, style.colour)
        if tick is not None:
            size = from_points(style.size) * self._scale
            layout.setLeftMargin(size * BOX_ROOM)
            layout.setProperty(_BOX, [size, tick.done, style.colour])
        if self._at_empty_block:
            self._cursor.setBlockFormat(layout)
            self._cursor.setBlockCharFormat(self._char_format(style))
        else:
            self._cursor.insertBlock(layout, self._char_format(style))

    def _flatten_block(self, height: float = 0.01) -> None:
        """An empty block that takes just this room: a document has one around each table."""
        layout = QTextBlockFormat()
        layout.setLineHeight(height, QTextBlockFormat.LineHeightTypes.FixedHeight.value)
        tiny = QTextCharFormat()
        font = QFont()
        font.setPixelSize(1)
        tiny.setFont(font)
        self._cursor.setBlockFormat(layout)
        self._cursor.setBlockCharFormat(tiny)

    def _write_rows(self, block: Rows, style: BlockStyle) -> None:
        if not self._at_empty_block:
            self._cursor.insertBlock()  # the space below a paragraph is lost right before a table
        self._flatten_block(max(0.01, from_points(style.before) * self._scale))
        widths = self._column_widths(block, font_for(self._template, style, self._scale))
        layout = QTextTableFormat()
        layout.setBorder(0)
        layout.setBorderStyle(QTextFrameFormat.BorderStyle.BorderStyle_None)
        layout.setCellPadding(0)
        layout.setCellSpacing(0)
        layout.setBottomMargin(from_points(style.after) * self._scale)
        fixed = QTextLength.Type.FixedLength
        layout.setColumnWidthConstraints([QTextLength(fixed, width) for width in widths])
        if self._template.style("body").align == "centre":
            layout.setAlignment(Qt.AlignmentFlag.AlignHCenter)
        table = self._cursor.insertTable(len(block.rows), len(widths), layout)
        for number, row in enumerate(block.rows):
            self._fill(table, number, row, style)
        self._cursor.movePosition(QTextCursor.MoveOperation.End)
        self._at_empty_block = True

    def _fill(self, table: QTextTable, number: int, row: Sequence[str], style: BlockStyle) -> None:
        for column, text in enumerate(row):
            cell = table.cellAt(number, column)
            apart = QTextTableCellFormat()
            apart.setBottomPadding(from_points(style.between) * self._scale)
            cell.setFormat(apart)
            inside = cell.firstCursorPosition()
            inside.insertText(text, self._char_format(style, text))

    def _column_widths(self, block: Rows, font: QFont) -> list[float]:
        """Each column as wide as its longest cell; the last takes what is left, or less."""
        measure = QFontMetricsF(font).horizontalAdvance
        gap = from_points(COLUMN_GAP) * self._scale
        wide = [
            max(measure(each) for each in cells) + gap for cells in zip(*block.rows, strict=True)
        ]
        front, last = wide[:-1], wide[-1]
        most = self._width * MOST_FOR_AMOUNTS
        if sum(front) > most:
            front = [each * most / sum(front) for each in front]
        return [*front, min(last, self._width - sum(front))]

    def _char_format(self, style: BlockStyle, text: str = "") -> QTextCharFormat:
        layout = QTextCharFormat()
        layout.setFont(font_for(self._template, style, self._scale, text))
        layout.setForeground(QColor(style.colour))
        return layout
