"""What was removed from the bar, in the window: listed, and brought back."""

from __future__ import annotations

from collections.abc import Mapping

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QDialog, QTableView, QWidget

from barkeep.application.bar import Bar
from barkeep.application.done import Done
from barkeep.desktop.look.metrics import PAD, TypeSize
from barkeep.desktop.screens.list_stack import ListStack, prepare_view, set_widths
from barkeep.desktop.screens.operations import RefusedInBanner, run_operation
from barkeep.desktop.screens.row_table import Column, RowTable
from barkeep.desktop.widgets.buttons import accept_by_keys, button, offer, primary_button
from barkeep.desktop.widgets.empty_state import EmptyState
from barkeep.desktop.widgets.labels import text_label
from barkeep.desktop.widgets.layouts import DIALOG, SPRING, Card, column_of, row_of, wide
from barkeep.desktop.widgets.notices import Banner
from barkeep.domain.amounts.measures import show_quantity
from barkeep.domain.days import moment_said
from barkeep.store.removed import Removed, RemovedKind
from barkeep.translation import tr, tr_noop

KIND_WORDS: Mapping[RemovedKind, str] = {
    "bottle": tr_noop("bottle"),
    "product": tr_noop("product"),
    "spec": tr_noop("spec"),
    "trial": tr_noop("trial"),
    "shoot": tr_noop("shoot"),
    "paid": tr_noop("paid"),
}
WORDS = tr_noop("Nothing that you made is ever deleted. A bottle comes back with its history.")


def _columns() -> tuple[Column[Removed], ...]:
    """What, its name, what is left of a bottle, when it was changed last."""
    return (
        Column(tr("What"), lambda row: tr(KIND_WORDS[row.kind])),
        Column(tr("Name"), lambda row: row.name, tooltip=lambda row: row.name),
        Column(
            tr("Left"),
            lambda row: "" if row.left is None else show_quantity(row.left, row.unit),
            right=True,
        ),
        Column(tr("Changed last"), lambda row: "" if row.at is None else moment_said(row.at)),
    )


class RemovedDialog(RefusedInBanner, QDialog):
    """A table of what was removed, the latest first; it stays open."""

    def __init__(self, bar: Bar, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        accept_by_keys(self)
        self.setWindowTitle(tr("Removed things"))
        self._bar = bar
        self.table: RowTable[Removed] = RowTable(_columns(), self)
        self.view = QTableView()
        self.view.setModel(self.table)
        prepare_view(self.view, tr("Removed things"))
        self.view.setSortingEnabled(False)
        self.stack = ListStack(
            self.view,
            EmptyState("picture-empty-shelf", tr("Nothing was removed")),
            EmptyState.no_match(tr_noop("things")),
        )
        self.banner = Banner()
        self.back_button = primary_button(tr("&Bring back"), self.bring_back, "undo")
        self.close_button = button(tr("C&lose"), self.reject)
        self.close_button.setAutoDefault(False)
        self._lay_out()
        self.renew()

    def bring_back(self) -> None:
        """Show the chosen thing again."""
        row = self.view.currentIndex().row()
        if row >= 0:
            thing = self.table.rows[row]
            run_operation(
                self, lambda: self._bar.removed.bring_back(thing.kind, thing.id), self._finish
            )

    def renew(self) -> None:
        """List what is removed now."""
        things = self._bar.removed.listed()
        self.table.show_rows(things)
        self.stack.show_counts(len(things), len(things))
        if things:
            self.view.selectRow(0)
        offer(self.back_button, "" if things else tr("Nothing was removed"))

    def _finish(self, done: Done[Removed]) -> None:
        self.renew()
        self.banner.say(tr("{name} is back", name=done.value.name), "done", tr("Undo"), self._undo)

    def _undo(self) -> None:
        self.banner.clear()
        run_operation(self, self._bar.undo, lambda _done: self.renew())

    def _lay_out(self) -> None:
        self.view.doubleClicked.connect(lambda _index: self.bring_back())
        column_of(
            text_label(self.windowTitle(), TypeSize.SUBTITLE),
            text_label(tr(WORDS), quiet=True, wrap=True),
            wide(Card(self.stack)),
            self.banner,
            row_of(SPRING, self.close_button, self.back_button),
            on=self,
            margins=DIALOG,
            gap=PAD,
        )
        self.resize(720, 480)
        set_widths(self.view, (80, 320, 80))
        self.view.setFocus(Qt.FocusReason.OtherFocusReason)
