"""The help in a window of its own: contents, search over all pages, links, and the way back."""

from __future__ import annotations

from collections.abc import Iterable
from itertools import islice

from PySide6.QtCore import QEvent, QSize, Qt, QUrl
from PySide6.QtGui import (
    QColor,
    QKeySequence,
    QPalette,
    QShortcut,
    QTextBlock,
    QTextCursor,
    QTextDocument,
    QTextFormat,
    QTextTable,
    QTextTableFormat,
)
from PySide6.QtWidgets import (
    QFrame,
    QListWidget,
    QListWidgetItem,
    QSplitter,
    QTextBrowser,
    QWidget,
)

from barkeep.desktop.look.metrics import HALF, PAD, UNIT, TypeSize, font_of, scaled
from barkeep.desktop.widgets.buttons import button, offer
from barkeep.desktop.widgets.layouts import SPRING, column_of, row_of, wide
from barkeep.desktop.widgets.search_field import SearchField
from barkeep.desktop.widgets.type_ahead import type_to_rows
from barkeep.documents.help.glossary import FIRST_PAGE
from barkeep.documents.help.pages import parted, shipped_help
from barkeep.documents.help.searching import look_up
from barkeep.translation import spoken, tr, tr_noop

SIZE = QSize(900, 620)
CONTENTS_WIDTH = 250
PLACE = Qt.ItemDataRole.UserRole
NOTHING = tr_noop("Nothing in the help has these words")


class HelpWindow(QWidget):
    """Shows one place at a time: a page, or a heading of one (*page#heading*)."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent, Qt.WindowType.Window)
        self.setAttribute(Qt.WidgetAttribute.WA_QuitOnClose, False)
        self.setWindowTitle(tr("Help – barkeep"))
        self._been: list[str] = []
        self._at = -1
        self.search = SearchField(tr("Search the help…"))
        self.contents = QListWidget()
        type_to_rows(self.contents)
        self.page = _Page()
        self.back_button = button(tr("&Back"), lambda: self._walk(-1))
        self.on_button = button(tr("F&orward"), lambda: self._walk(1))
        self._lay_out()
        self._connect()
        self._list_pages()
        self.resize(SIZE)

    @property
    def place(self) -> str:
        """What is shown."""
        return self._been[self._at] if self._been else ""

    def go(self, place: str) -> None:
        """Show a place, and remember the one before."""
        if place != self.place:
            self._been = [*self._been[: self._at + 1], place]
            self._at = len(self._been) - 1
        self._show()

    def focus_search(self) -> None:
        """Put the cursor into the search."""
        self.search.take_focus()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() in (QEvent.Type.PaletteChange, QEvent.Type.FontChange) and self._been:
            self._on_search(self.search.text)
            self._show()

    def _walk(self, steps: int) -> None:
        if 0 <= self._at + steps < len(self._been):
            self._at += steps
            self._show()

    def _show(self) -> None:
        key, heading = parted(self.place)
        page = shipped_help(spoken()).pages[key]
        self.page.read(page.text, page.title)
        self.page.show_section(page.number_of(heading))
        self.setWindowTitle(tr("{title} – help – barkeep", title=page.title))
        offer(self.back_button, "" if self._at > 0 else tr("This is where you began"))
        is_last = self._at == len(self._been) - 1
        offer(self.on_button, tr("This is the last page you went to") if is_last else "")
        self._mark(key)

    def _mark(self, key: str) -> None:
        """Mark in the list which page is shown, without going there."""
        self.contents.blockSignals(True)
        rows = map(self.contents.item, range(self.contents.count()))
        fits = [each for each in rows if parted(each.data(PLACE) or "")[0] == key]
        if fits and self.contents.currentItem() not in fits:
            self.contents.setCurrentItem(fits[0])
        self.contents.blockSignals(False)

    def _list_pages(self) -> None:
        self.contents.clear()
        for title, pages in shipped_help(spoken()).parts:
            self._add_heading(title)
            self._add((page.key, page.title, page.about) for page in pages)

    def _on_search(self, words: str) -> None:
        self.contents.blockSignals(True)
        if not words:
            self._list_pages()
            self._mark(parted(self.place)[0])
        else:
            self.contents.clear()
            found = look_up(words, spoken())
            self._add_heading(tr("{number} found", number=len(found)) if found else tr(NOTHING))
            for each in found:
                heading = each.section.heading
                shown = f"{each.page.title}:\n{heading}" if heading else each.page.title
                self._add([(each.place, shown, each.page.about)])
        self.contents.blockSignals(False)

    def _add(self, rows: Iterable[tuple[str, str, str]]) -> None:
        for place, words, about in rows:
            row = QListWidgetItem(words)
            row.setData(PLACE, place)
            row.setToolTip(about)
            self.contents.addItem(row)

    def _add_heading(self, words: str) -> None:
        row = QListWidgetItem(words)
        row.setFlags(Qt.ItemFlag.NoItemFlags)
        row.setFont(font_of(TypeSize.STRONG))
        row.setForeground(self.palette().color(QPalette.ColorRole.WindowText))
        self.contents.addItem(row)

    def _go_to_first(self) -> None:
        """Go to the likeliest of what was found, and to the list."""
        for number in range(self.contents.count()):
            if self.contents.item(number).data(PLACE):
                self.contents.setCurrentRow(number)
                break
        self.contents.setFocus(Qt.FocusReason.OtherFocusReason)

    def _on_row(self, row: QListWidgetItem | None) -> None:
        if row is not None and row.data(PLACE):
            self.go(row.data(PLACE))

    def _follow(self, link: QUrl) -> None:
        self.go(link.toString())

    def _lay_out(self) -> None:
        self.contents.setAccessibleName(tr("Pages of the help"))
        self.contents.setWordWrap(True)
        self.contents.setSpacing(2)
        beside = QWidget()
        column_of(self.search, wide(self.contents), on=beside, gap=UNIT)
        splitter = QSplitter()
        splitter.setChildrenCollapsible(False)
        splitter.addWidget(beside)
        splitter.addWidget(self.page)
        splitter.setStretchFactor(1, 1)
        splitter.setSizes([scaled(CONTENTS_WIDTH), SIZE.width()])
        close = button(tr("C&lose"), self.close)
        ways = row_of(self.back_button, self.on_button, SPRING, close, gap=UNIT)
        column_of(wide(splitter), ways, on=self, margins=PAD, gap=UNIT)

    def _connect(self) -> None:
        self.search.searched.connect(self._on_search)
        self.search.left.connect(self._go_to_first)
        self.contents.currentItemChanged.connect(lambda row, _before: self._on_row(row))
        self.page.anchorClicked.connect(self._follow)
        for keys, act in (
            (QKeySequence.StandardKey.Find, self.focus_search),
            ("Alt+Left", lambda: self._walk(-1)),
            ("Alt+Right", lambda: self._walk(1)),
            ("Esc", self.close),
            ("F1", lambda: self.go(FIRST_PAGE)),
        ):
            QShortcut(QKeySequence(keys), self).activated.connect(act)


class _Page(QTextBrowser):
    """One page, laid out from its Markdown in the theme's colours."""

    def __init__(self) -> None:
        super().__init__()
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setOpenLinks(False)
        self.document().setDocumentMargin(PAD)
        self.document().setIndentWidth(PAD)

    def read(self, markdown: str, title: str) -> None:
        """Show a text."""
        self.setAccessibleName(title)
        self.setMarkdown(markdown)
        for block in _blocks(self.document()):
            _set(block, self.palette().color(QPalette.ColorRole.AlternateBase))
        for frame in self.document().rootFrame().childFrames():
            if isinstance(frame, QTextTable):
                form = QTextTableFormat(frame.format().toTableFormat())
                form.setBorder(0)
                form.setCellPadding(HALF)
                frame.setFormat(form)

    def show_section(self, number: int) -> None:
        """Bring the heading of a section to the top; the page's beginning for the first, 0."""
        headings = filter(_is_heading, _blocks(self.document()))
        wanted = next(islice(headings, number, None), None) if number else None
        cursor = QTextCursor(self.document() if wanted is None else wanted)
        self.setTextCursor(cursor)
        self.verticalScrollBar().setValue(
            0 if wanted is None else self.verticalScrollBar().value() + self.cursorRect().top()
        )


def _blocks(document: QTextDocument) -> Iterable[QTextBlock]:
    block = document.begin()
    while block.isValid():
        yield block
        block = block.next()


def _set(block: QTextBlock, ground: QColor) -> None:
    """Set a heading off from what is above it, and code from the words around it."""
    form = block.blockFormat()
    if form.headingLevel() > 1:
        form.setTopMargin(PAD)
    elif form.hasProperty(QTextFormat.Property.BlockCodeFence):
        form.setBackground(ground)
        form.setLeftMargin(UNIT)
    else:
        return
    QTextCursor(block).setBlockFormat(form)


def _is_heading(block: QTextBlock) -> bool:
    return block.blockFormat().headingLevel() > 0
