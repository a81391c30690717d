"""Whose version holds, where somebody else has changed what is being edited here."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QAbstractItemView,
    QDialog,
    QHeaderView,
    QTableWidget,
    QTableWidgetItem,
    QWidget,
)

from barkeep.application.stale import ChangedSince
from barkeep.desktop.look.metrics import TypeSize
from barkeep.desktop.widgets.buttons import accept_by_keys, button, primary_button
from barkeep.desktop.widgets.labels import text_label
from barkeep.desktop.widgets.layouts import DIALOG, SPRING, Card, column_of, row_of, wide
from barkeep.translation import tr, tr_noop

SIZE = (720, 420)
COLUMNS = ("", tr_noop("Yours"), tr_noop("Theirs"))
FIELD_WIDTH = 120
INTRO = tr_noop(
    "What you typed is still there, and nothing of it is written yet. Below is what differs. "
    "Where yours is put over theirs, undo brings theirs back."
)


class BothVersions(QDialog):
    """Rejected goes on editing: neither version is lost by that."""

    def __init__(
        self,
        error: ChangedSince,
        take: Callable[[], object],
        put: Callable[[], object],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        accept_by_keys(self)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(tr("Changed by somebody else"))
        heading = tr("Another window or a command has changed {what}", what=tr(error.what))
        self.heading = text_label(heading, TypeSize.SUBTITLE, wrap=True)
        self.table = QTableWidget(len(error.differences), len(COLUMNS))
        self.keep_button = primary_button(tr_noop("&Go on editing"), self.reject)
        self.take_button = button(tr_noop("Take &theirs"), lambda: self._end(take))
        self.put_button = button(tr_noop("Put &mine over it"), lambda: self._end(put))
        self._fill(error)
        self._lay_out()
        self.resize(*SIZE)
        self.keep_button.setDefault(True)
        self.keep_button.setFocus()

    def _end(self, act: Callable[[], object]) -> None:
        self.accept()
        act()

    def _fill(self, error: ChangedSince) -> None:
        table = self.table
        table.setHorizontalHeaderLabels([tr(each) for each in COLUMNS])
        table.setAccessibleName(tr("Yours and theirs"))
        table.verticalHeader().hide()
        table.setWordWrap(True)
        table.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        table.setTabKeyNavigation(False)
        for row, each in enumerate(error.differences):
            for column, words in enumerate((tr(each.field), each.mine, each.theirs)):
                table.setItem(row, column, QTableWidgetItem(words or tr("nothing")))
        header = table.horizontalHeader()
        header.setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        header.setSectionResizeMode(QHeaderView.ResizeMode.Stretch)
        header.setSectionResizeMode(0, QHeaderView.ResizeMode.Fixed)
        header.resizeSection(0, FIELD_WIDTH)
        table.verticalHeader().setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)

    def _lay_out(self) -> None:
        for each in (self.take_button, self.put_button):
            each.setAutoDefault(False)
        column_of(
            self.heading,
            text_label(tr(INTRO), quiet=True, wrap=True),
            wide(Card(self.table)),
            row_of(self.take_button, self.put_button, SPRING, self.keep_button),
            on=self,
            margins=DIALOG,
        )
