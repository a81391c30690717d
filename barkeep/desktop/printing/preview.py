"""The pages as they will come out, one at a time, with a way through them."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QEvent, QRect, QSize, Qt, Signal
from PySide6.QtGui import QKeyEvent, QPainter, QPaintEvent, QPalette, QPixmap, QResizeEvent
from PySide6.QtWidgets import QComboBox, QHBoxLayout, QLabel, QScrollArea, QWidget

from barkeep.desktop.look.metrics import PAD, TypeSize
from barkeep.desktop.printing.pages import PrintedPage, picture_of
from barkeep.desktop.widgets.buttons import button
from barkeep.desktop.widgets.chips import FlowLayout
from barkeep.desktop.widgets.labels import text_label
from barkeep.desktop.widgets.layouts import column_of, wide
from barkeep.documents.printed.paper import Size
from barkeep.translation import tr, tr_noop

ZOOMS = (
    (tr_noop("Whole page"), None),
    ("50 %", 0.5),
    ("100 %", 1.0),
    ("150 %", 1.5),
    ("200 %", 2.0),
)
_MM_PER_INCH = 25.4
_SMALLEST = 60


class Preview(QWidget):
    """One page at a time; pages come in one by one while they are laid out."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._pages: list[PrintedPage] = []
        self.number = 0
        """Which page is shown, from 0."""
        self._more_to_come = False
        self.sheet = _Sheet()
        self.area = _PageScroll(self)
        self.area.setWidget(self.sheet)
        self.back = button(tr("&Back a page"), lambda: self.show_page(self.number - 1))
        self.on = button(tr("&Next page"), lambda: self.show_page(self.number + 1))
        self.zoom = QComboBox()
        self.place = text_label("", quiet=True)
        self._lay_out()
        self.clear("")

    @property
    def pages(self) -> Sequence[PrintedPage]:
        """The pages there are so far."""
        return tuple(self._pages)

    def clear(self, why: str) -> None:
        """Show no page, and say why."""
        self._pages, self.number, self._more_to_come = [], 0, False
        self.sheet.show_page(None, why)
        self._say_place()

    def begin(self) -> None:
        """Take new pages in; the one that is shown stays until they are there."""
        self._pages, self._more_to_come = [], True

    def add(self, page: PrintedPage) -> None:
        """One more page."""
        self._pages.append(page)
        if len(self._pages) - 1 == self.number:
            self.show_page(self.number)
        self._say_place()

    def finish(self) -> None:
        """All pages are there."""
        self._more_to_come = False
        self.show_page(min(self.number, len(self._pages) - 1))

    def show_page(self, number: int) -> None:
        """Show one page, if there is such a one."""
        if not 0 <= number < len(self._pages):
            return
        self.number = number
        page = self._pages[number]
        self.sheet.show_page(page, "")
        self._fit()
        self._say_place()
        titles = ", ".join(dict.fromkeys(title for title in page.titles if title))
        self.area.setAccessibleDescription(f"{self.place.text()}: {titles}")

    def _say_place(self) -> None:
        count = len(self._pages)
        more = "…" if self._more_to_come else ""
        number = self.number + 1
        self.place.setText(
            tr("Page {number} of {count}{more}", number=number, count=count, more=more)
            if count
            else ""
        )
        self.back.setEnabled(self.number > 0 and count > 0)
        self.on.setEnabled(self.number + 1 < count)

    def _fit(self) -> None:
        """Make the sheet as large as the zoom asks for."""
        if self.number >= len(self._pages):
            return
        size, zoom = self._pages[self.number].sheet, self.zoom.currentData()
        room = self.area.viewport().size() - QSize(2 * PAD, 2 * PAD)
        if zoom is None:
            per_mm = min(room.width() / size.width_mm, room.height() / size.height_mm)
        else:
            per_mm = zoom * self.logicalDpiX() / _MM_PER_INCH
        self.sheet.set_page_size(_pixels(size, per_mm))

    def _lay_out(self) -> None:
        self.area.setWidgetResizable(True)
        self.area.setAccessibleName(tr("Preview"))
        self.area.resized.connect(self._fit)
        self.zoom.setAccessibleName(tr("Zoom of the preview"))
        for words, factor in ZOOMS:
            self.zoom.addItem(tr(words), factor)
        self.zoom.currentIndexChanged.connect(lambda _index: self._fit())
        turning = FlowLayout((self.back, self.on, self.place), asks_for_one_row=True)
        below = QHBoxLayout()
        below.addLayout(turning, 1)
        below.addWidget(self.zoom)
        column_of(wide(self.area), below, on=self)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        keys = Qt.Key
        jumps = {
            keys.Key_PageDown: self.number + 1,
            keys.Key_PageUp: self.number - 1,
            keys.Key_Home: 0,
            keys.Key_End: len(self._pages) - 1,
        }
        number = jumps.get(keys(event.key()))
        if number is None:
            super().keyPressEvent(event)
            return
        self.show_page(number)


class _PageScroll(QScrollArea):
    """Leaves the keys that turn pages to the preview."""

    resized = Signal()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        keys = Qt.Key
        if event.key() in (keys.Key_PageDown, keys.Key_PageUp, keys.Key_Home, keys.Key_End):
            event.ignore()
            return
        super().keyPressEvent(event)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self.resized.emit()


class _Sheet(QWidget):
    """White paper on the window's ground, or a sentence where there is none."""

    def __init__(self) -> None:
        super().__init__()
        self._page: PrintedPage | None = None
        self._size = QSize()
        self._drawn: QPixmap | None = None
        self._words = QLabel(self)
        self._words.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self._words.setWordWrap(True)
        self._words.setTextFormat(Qt.TextFormat.PlainText)
        self._words.setForegroundRole(QPalette.ColorRole.PlaceholderText)
        self._words.setFont(text_label("", TypeSize.BODY).font())

    @property
    def words(self) -> str:
        """What is said in place of a page."""
        return self._words.text()

    def show_page(self, page: PrintedPage | None, words: str) -> None:
        self._page, self._drawn = page, None
        self._words.setText(words)
        self._words.setVisible(page is None)
        if page is None:
            self.setMinimumSize(0, 0)
        self.update()

    def set_page_size(self, size: QSize) -> None:
        if size != self._size:
            self._size, self._drawn = size, None
        self.setMinimumSize(size + QSize(2 * PAD, 2 * PAD))
        self.update()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._words.setGeometry(self.rect().adjusted(PAD, PAD, -PAD, -PAD))

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.PaletteChange:
            self.update()

    def paintEvent(self, _event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.fillRect(self.rect(), self.palette().color(QPalette.ColorRole.AlternateBase))
        if self._page is None or self._size.isEmpty():
            return
        ratio = self.devicePixelRatioF()
        if self._drawn is None or self._drawn.devicePixelRatio() != ratio:
            self._drawn = QPixmap.fromImage(picture_of(self._page, self._size, ratio))
        place = QRect(0, 0, self._size.width(), self._size.height())
        place.moveCenter(self.rect().center())
        painter.drawPixmap(place.topLeft(), self._drawn)
        painter.setPen(self.palette().color(QPalette.ColorRole.Mid))
        painter.drawRect(place.adjusted(-1, -1, 0, 0))


def _pixels(size: Size, per_mm: float) -> QSize:
    width, height = round(size.width_mm * per_mm), round(size.height_mm * per_mm)
    return QSize(max(_SMALLEST, width), max(_SMALLEST, height))
