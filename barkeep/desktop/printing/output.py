"""Pages on a printer, in a PDF, and as pictures."""

from __future__ import annotations

from PySide6.QtCore import QBuffer, QByteArray, QIODevice, QMarginsF, QSize, QSizeF, Qt
from PySide6.QtGui import QImage, QPagedPaintDevice, QPageLayout, QPageSize, QPainter, QPdfWriter

from barkeep import __version__
from barkeep.desktop.printing.block_document import PER_INCH, from_mm
from barkeep.desktop.printing.pages import PrintedPage, paint_page
from barkeep.documents.printed.paper import Size


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
