"""What an evening cost: what was poured on a day, in the window."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QDialog, QTableView, QWidget

from barkeep.application.bar import Bar
from barkeep.application.paying import PouredOn, spilled_in_words
from barkeep.desktop.look.metrics import PAD, TypeSize
from barkeep.desktop.screens.list_stack import ListStack, prepare_view, set_widths
from barkeep.desktop.screens.operations import RefusedInBanner, run_operation
from barkeep.desktop.screens.row_table import Column, RowTable
from barkeep.desktop.widgets.buttons import accept_by_keys, button, day_field, day_in
from barkeep.desktop.widgets.empty_state import EmptyState
from barkeep.desktop.widgets.fields import labelled
from barkeep.desktop.widgets.labels import copyable, text_label
from barkeep.desktop.widgets.layouts import DIALOG, SPRING, column_of, row_of, wide
from barkeep.desktop.widgets.notices import Banner
from barkeep.domain.amounts.measures import show_quantity
from barkeep.domain.bottles.bottle import Product
from barkeep.domain.drink.costs import cost_in_words
from barkeep.domain.phrases import price_in_words
from barkeep.translation import tr, tr_about, tr_noop

MIDNIGHT = tr_noop("From midnight to midnight, by the ledger; at the prices that are known now.")
NOTHING = tr_noop("What is poured in Tonight, from Bottles and in the log of a shoot is counted")


@dataclass(frozen=True, slots=True)
class _Poured:
    """So much of a product, and what it cost: None where nobody knows."""

    product: Product
    amount: float
    cost: float | None


def _columns(currency: str) -> tuple[Column[_Poured], ...]:
    return (
        Column(
            tr_about("column", "Poured"),
            lambda row: row.product.title,
            tooltip=lambda row: row.product.title,
        ),
        Column(tr("Amount"), lambda row: show_quantity(row.amount, row.product.unit), right=True),
        Column(
            tr("Cost"), lambda row: price_in_words(row.cost, currency, tr("not known")), right=True
        ),
    )


class EveningDialog(RefusedInBanner, QDialog):
    """What was poured on a day and what it cost; today at first."""

    def __init__(self, bar: Bar, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle(tr("What an evening cost"))
        self._bar = bar
        self.table: RowTable[_Poured] = RowTable(_columns(bar.snapshot.settings.currency), self)
        self.view = QTableView()
        self.view.setModel(self.table)
        prepare_view(self.view, tr("What was poured"))
        self.view.setSortingEnabled(False)
        self.stack = ListStack(
            self.view,
            EmptyState("picture-empty-glass", tr("Nothing was poured on this day"), tr(NOTHING)),
            EmptyState.no_match("bottles"),
        )
        self.total = copyable("", TypeSize.STRONG)
        self.spilled = copyable("", quiet=True)
        self.banner = Banner()
        self.on = day_field(bar.snapshot.on, latest=bar.snapshot.on)
        self.close_button = button(tr("C&lose"), self.reject)
        self._lay_out()
        accept_by_keys(self)
        self.on.dateChanged.connect(lambda _day: self.renew())
        self.renew()

    def renew(self) -> None:
        """Ask for the day that is chosen."""
        self.clear_refusal()
        run_operation(self, lambda: self._bar.paying.poured_on(day_in(self.on)), self._show)

    def _show(self, found: PouredOn) -> None:
        self.table.show_rows([_Poured(*each) for each in found.poured])
        self.stack.show_counts(len(found.poured), len(found.poured))
        if found.poured:
            self.view.selectRow(0)
        tree = self._bar.snapshot.knowledge.tree
        self.total.setText(cost_in_words(found.cost, tree) if found.poured else "")
        self.total.setVisible(bool(found.poured))
        lost = spilled_in_words(found)
        self.spilled.setText("\n".join(lost))
        self.spilled.setVisible(bool(lost))

    def _lay_out(self) -> None:
        self.on.setAccessibleName(tr("Day"))
        self.close_button.setAutoDefault(False)
        column_of(
            row_of(
                text_label(self.windowTitle(), TypeSize.SUBTITLE),
                SPRING,
                labelled(tr("&Day"), self.on),
            ),
            text_label(tr(MIDNIGHT), quiet=True, wrap=True),
            wide(self.stack),
            self.total,
            self.spilled,
            self.banner,
            row_of(SPRING, self.close_button),
            on=self,
            margins=DIALOG,
            gap=PAD,
        )
        self.resize(640, 460)
        set_widths(self.view, (330, 110, 110))
        self.on.setFocus(Qt.FocusReason.OtherFocusReason)
