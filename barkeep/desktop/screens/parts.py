"""A page of several parts: each a screen of its own, and a row of choices leads to the rest."""

from __future__ import annotations

from functools import partial
from typing import ClassVar

from PySide6.QtCore import QSize, Qt, QTimer
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QSplitter, QVBoxLayout, QWidget

from barkeep.desktop.screens.screen import Screen
from barkeep.desktop.widgets.chips import FilterChips
from barkeep.desktop.widgets.layouts import Card, column_of
from barkeep.translation import tr_noop

LEAST_LIST = 160
"""How high a list with a picture below it is at least, in pixels."""


class _ListOverPicture(QSplitter):
    """A list, and below it a picture where there is room for both: its words say it as well."""

    def __init__(self) -> None:
        super().__init__(Qt.Orientation.Vertical)
        self.setChildrenCollapsible(False)

    def add(self, listed: QWidget, picture: QWidget) -> None:
        """Show these."""
        self._picture = Card(picture)
        self.addWidget(listed)
        self.addWidget(self._picture)
        self.setStretchFactor(0, 1)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        both = LEAST_LIST + self.handleWidth() + self._picture.minimumSizeHint().height()
        self._picture.setVisible(self.height() >= both)

    def minimumSizeHint(self) -> QSize:
        return QSize(super().minimumSizeHint().width(), LEAST_LIST)


class OfParts(Screen):
    """One part of a page; `add_parts` puts the row of choices beside the title."""

    parts: ClassVar[tuple[tuple[str, str, str], ...]]
    """Of all parts the key, the word and what it shows."""

    def add_parts(self) -> None:
        """Lead to the other parts."""
        self.parts_row = FilterChips(tr_noop("Show"), self.parts, self.key)
        self.parts_row.chosen.connect(self._go_to)
        self.add_header_button(self.parts_row)
        self._give_summary_its_own_row()

    def show_thing(self, thing: object) -> None:
        """Bring one thing into view; without one, what was there stays as it is."""
        if thing is None:
            self.parts_row.chip(self.key).setFocus(Qt.FocusReason.TabFocusReason)
        else:
            super().show_thing(thing)

    def put_below(self, picture: QWidget) -> None:
        """Show a picture below the list, as high as it asks for; the list takes the rest."""
        left = _ListOverPicture()
        listed = self.splitter.widget(0)
        assert listed is not None
        left.add(listed, picture)
        if self.list_stack is not None:
            self.list_stack.setMinimumHeight(LEAST_LIST)
        self.splitter.insertWidget(0, left)
        self.splitter.setStretchFactor(0, 3)
        self.splitter.setSizes([560, 340])

    def _give_summary_its_own_row(self) -> None:
        """Beside the row of choices there would be no room for it."""
        page = self.layout()
        assert isinstance(page, QVBoxLayout)
        self._title_words.removeItem(self._below_title)
        page.removeItem(self._header_row)
        for each in (self._below_title, self._header_row):
            each.setParent(None)
        page.insertLayout(0, column_of(self._header_row, self._below_title, gap=2))

    def _go_to(self, key: str) -> None:
        if key != self.key:
            self.parts_row.choose(self.key)
            # An arrow key moves the focus once this is done: the other part takes it after that.
            QTimer.singleShot(0, self, partial(self.context.go, key, None))
