"""A page that is laid out, and how it is painted: on paper, into a PDF, on the screen."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import (
    QBuffer,
    QByteArray,
    QIODevice,
    QMarginsF,
    QPointF,
    QRectF,
    QSize,
    QSizeF,
    Qt,
)
from PySide6.QtGui import (
    QAbstractTextDocumentLayout,
    QColor,
    QImage,
    QPagedPaintDevice,
    QPageLayout,
    QPageSize,
    QPainter,
    QPdfWriter,
    QPen,
    QTextDocument,
)

from barkeep import __version__
from barkeep.desktop.look.tones import read_tones
from barkeep.desktop.printing.block_document import (
    PER_INCH,
    PER_POINT,
    Box,
    RuledLine,
    boxes_of,
    from_mm,
    from_points,
    plain_font,
)
from barkeep.desktop.widgets.drink_picture import draw_drink
from barkeep.documents.printed.paper import Mark, Size
from barkeep.documents.printed.templates import Frame
from barkeep.domain.drink.picture import DrinkPicture

_MARK_COLOUR, _FRAME_COLOUR, _NOTE_COLOUR = QColor("#808080"), QColor("#404040"), QColor("#4d4d4d")
_BETWEEN_FRAMES_MM = 1.0
_NOTE_POINTS = 7.0


@dataclass(frozen=True)
class Placed:
    """A document, or the stretch of it from `top` on that is `area` high, and its rules."""

    document: QTextDocument
    area: QRectF
    top: float = 0.0
    rules: Sequence[RuledLine] = ()


@dataclass(frozen=True)
class Framed:
    """A frame around an area."""

    area: QRectF
    frame: Frame


@dataclass(frozen=True)
class Note:
    """A few small words at the end of an area, such as a page number."""

    area: QRectF
    text: str


@dataclass(frozen=True)
class Drawn:
    """A drink in its glass, in an area."""

    picture: DrinkPicture
    area: QRectF


@dataclass(frozen=True)
class PrintedPage:
    """One sheet, all of it in tenths of a point; `titles` are what stands on it."""

    sheet: Size
    placed: Sequence[Placed]
    frames: Sequence[Framed] = ()
    notes: Sequence[Note] = ()
    marks: Sequence[Mark] = ()
    titles: Sequence[str] = ()
    drawn: Sequence[Drawn] = ()


def paint_page(painter: QPainter, page: PrintedPage) -> None:
    """Paint a page on a painter that counts in tenths of a point."""
    painter.save()
    painter.setRenderHints(QPainter.RenderHint.Antialiasing | QPainter.RenderHint.TextAntialiasing)
    for mark in page.marks:
        _paint_mark(painter, mark)
    for framed in page.frames:
        _paint_frame(painter, framed)
    for placed in page.placed:
        _paint_document(painter, placed)
    for note in page.notes:
        _paint_note(painter, note)
    for drawn in page.drawn:
        _paint_drink(painter, drawn)
    painter.restore()


def _paint_drink(painter: QPainter, drawn: Drawn) -> None:
    """In points, in which a drink's lines are as thick as on a screen, in the tones of paper."""
    painter.save()
    painter.translate(drawn.area.topLeft())
    painter.scale(PER_POINT, PER_POINT)
    size = drawn.area.size() / PER_POINT
    draw_drink(painter, QRectF(QPointF(0.0, 0.0), size), drawn.picture, read_tones("light"))
    painter.restore()


def _paint_document(painter: QPainter, placed: Placed) -> None:
    painter.save()
    painter.translate(placed.area.left(), placed.area.top() - placed.top)
    # A stretch is whole lines: its clip keeps the others away, and no slanted letter's end.
    loose = from_points(4.0)
    shown = QRectF(-loose, placed.top, placed.area.width() + 2 * loose, placed.area.height())
    painter.setClipRect(shown)
    context = QAbstractTextDocumentLayout.PaintContext()
    # A line that begins where the stretch ends would be painted too, and found in the PDF twice.
    context.clip = shown.adjusted(0.0, 1.0, 0.0, -1.0)
    placed.document.documentLayout().draw(painter, context)
    for box in boxes_of(placed.document):
        if placed.top <= box.y + box.side / 2.0 <= placed.top + placed.area.height():
            _paint_box(painter, box)
    for rule in placed.rules:
        painter.setPen(_pen(QColor(rule.colour), 0.6))
        painter.drawLine(QPointF(0.0, rule.y), QPointF(placed.area.width(), rule.y))
    painter.restore()


def _paint_mark(painter: QPainter, mark: Mark) -> None:
    painter.setPen(_pen(_MARK_COLOUR, 0.3))
    painter.drawLine(
        QPointF(from_mm(mark.x1_mm), from_mm(mark.y1_mm)),
        QPointF(from_mm(mark.x2_mm), from_mm(mark.y2_mm)),
    )


def _paint_frame(painter: QPainter, framed: Framed) -> None:
    painter.setPen(_pen(_FRAME_COLOUR, 0.6))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawRect(framed.area)
    if framed.frame == "double":
        inset = from_mm(_BETWEEN_FRAMES_MM)
        painter.drawRect(framed.area.adjusted(inset, inset, -inset, -inset))


def _paint_note(painter: QPainter, note: Note) -> None:
    font = plain_font("sans")
    font.setPixelSize(round(from_points(_NOTE_POINTS)))
    painter.setFont(font)
    painter.setPen(_NOTE_COLOUR)
    painter.drawText(note.area, int(Qt.AlignmentFlag.AlignCenter), note.text)


def _pen(colour: QColor, points: float) -> QPen:
    return QPen(colour, from_points(points))


def _paint_box(painter: QPainter, box: Box) -> None:
    painter.setPen(_pen(QColor(box.colour), 0.8))
    area = QRectF(0.0, box.y, box.side, box.side)
    painter.drawRect(area)
    if box.done:
        painter.setPen(_pen(QColor(box.colour), 1.4))
        foot = QPointF(area.left() + 0.42 * box.side, area.bottom() - 0.2 * box.side)
        painter.drawLine(QPointF(area.left() + 0.18 * box.side, area.center().y()), foot)
        painter.drawLine(foot, QPointF(area.right() - 0.14 * box.side, area.top() + 0.2 * box.side))


class PdfFile:
    """A PDF in memory, its text real text; pages are added one by one."""

    def __init__(self, sheet: Size, title: str) -> None:
        self._data = QByteArray()
        self._buffer = QBuffer(self._data)
        self._buffer.open(QIODevice.OpenModeFlag.WriteOnly)
        self._writer = QPdfWriter(self._buffer)
        self._writer.setTitle(title)
        self._writer.setCreator(f"barkeep {__version__}")
        self._writer.setResolution(round(PER_INCH))
        self._pages = PagePainter(self._writer, sheet)

    def add(self, page: PrintedPage) -> None:
        """Paint one more page."""
        self._pages.add(page)

    def finished(self) -> bytes:
        """The whole file; nothing can be added any more."""
        self._pages.finish()
        self._buffer.close()
        return bytes(self._data.data())


class PagePainter:
    """Paints pages, one after another, on a printer or a PDF."""

    def __init__(self, device: QPagedPaintDevice, sheet: Size) -> None:
        self._device = device
        self._painter: QPainter | None = None
        device.setPageLayout(page_layout(sheet))

    def add(self, page: PrintedPage) -> None:
        """Paint one more page. Raises `OSError` where the device takes nothing."""
        if self._painter is None:
            self._painter = QPainter()
            if not self._painter.begin(self._device):
                raise OSError("the printer takes nothing")
            self._painter.scale(
                self._device.logicalDpiX() / PER_INCH, self._device.logicalDpiY() / PER_INCH
            )
        else:
            self._device.newPage()
        paint_page(self._painter, page)

    def finish(self) -> None:
        """Send off what was painted."""
        if self._painter is not None:
            self._painter.end()
            self._painter = None


def page_layout(sheet: Size) -> QPageLayout:
    """A sheet without margins, which the templates bring; on its side it is landscape."""
    wide = sheet.width_mm > sheet.height_mm
    short, long = sorted((sheet.width_mm, sheet.height_mm))
    size = QPageSize(QSizeF(short, long), QPageSize.Unit.Millimeter, sheet.title)
    way = QPageLayout.Orientation.Landscape if wide else QPageLayout.Orientation.Portrait
    layout = QPageLayout(size, way, QMarginsF(0.0, 0.0, 0.0, 0.0))
    layout.setMode(QPageLayout.Mode.FullPageMode)
    return layout


def picture_of(page: PrintedPage, size: QSize, ratio: float = 1.0) -> QImage:
    """A page on white, `size` device-independent pixels large."""
    image = QImage(size * ratio, QImage.Format.Format_RGB32)
    image.fill(Qt.GlobalColor.white)
    painter = QPainter(image)
    painter.scale(
        image.width() / from_mm(page.sheet.width_mm),
        image.height() / from_mm(page.sheet.height_mm),
    )
    paint_page(painter, page)
    painter.end()
    image.setDevicePixelRatio(ratio)
    return image
