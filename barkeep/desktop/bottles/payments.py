"""What was paid for a product, in the window: listed, noted, forgotten."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QDialog, QLineEdit, QTableView, QWidget

from barkeep.application.bar import Bar
from barkeep.application.done import Done
from barkeep.application.shopping import read_money
from barkeep.desktop.look.metrics import PAD, TypeSize
from barkeep.desktop.screens.list_stack import ListStack, prepare_view, set_widths
from barkeep.desktop.screens.operations import RefusedInBanner, run_operation
from barkeep.desktop.screens.row_table import Column, RowTable
from barkeep.desktop.widgets.buttons import (
    accept_by_keys,
    button,
    day_field,
    day_in,
    offer,
    primary_button,
)
from barkeep.desktop.widgets.empty_state import EmptyState
from barkeep.desktop.widgets.fields import labelled
from barkeep.desktop.widgets.labels import text_label
from barkeep.desktop.widgets.layouts import DIALOG, SPRING, column_of, row_of, wide
from barkeep.desktop.widgets.notices import Banner
from barkeep.domain.bottles.bottle import Product
from barkeep.domain.bottles.paid import Paid, Payment, cheapest_in_words
from barkeep.domain.days import day_said
from barkeep.domain.phrases import price_in_words
from barkeep.errors import UserError
from barkeep.translation import tr, tr_noop

NOTHING = tr_noop(
    "What an old receipt says can be noted here; a price nobody knows is never taken as free"
)


def _columns(currency: str) -> tuple[Column[Paid], ...]:
    return (
        Column(tr("On"), lambda row: day_said(row.day), key=lambda row: row.day),
        Column(tr("Paid"), lambda row: price_in_words(row.amount, currency), right=True),
        Column(tr("Shop"), lambda row: row.shop, tooltip=lambda row: row.shop),
    )


class PaymentsDialog(RefusedInBanner, QDialog):
    """What was paid for one product, newest first; it stays open.

    What is likely to be noted stands in the fields: the last price and shop, and today.
    """

    def __init__(self, bar: Bar, product: Product, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle(tr("What was paid for {title}", title=product.title))
        self._bar, self._product_id = bar, product.id
        self._currency = bar.snapshot.settings.currency
        self.table: RowTable[Paid] = RowTable(_columns(self._currency), self)
        self.view = QTableView()
        self.view.setModel(self.table)
        prepare_view(self.view, tr("What was paid"))
        self.view.setSortingEnabled(False)
        self.stack = ListStack(
            self.view,
            EmptyState("picture-empty-shelf", tr("Nothing was noted yet"), NOTHING),
            EmptyState.no_match("payments"),
        )
        self.cheapest = text_label("", quiet=True, wrap=True)
        self.banner = Banner()
        self.amount, self.shop = QLineEdit(), QLineEdit()
        self.on = day_field(bar.snapshot.on, latest=bar.snapshot.on)
        self.note_button = primary_button(tr("&Note it"), self.note, "check")
        self.forget_button = button(tr("&Forget the chosen one"), self.forget)
        self.close_button = button(tr("C&lose"), self.reject)
        self._lay_out()
        accept_by_keys(self)
        self.renew()
        self._offer_likely(product)

    def note(self) -> None:
        """Write down what the fields say."""
        self.clear_refusal()
        try:
            amount = read_money(self.amount.text(), "paid", self._currency)
        except UserError as error:
            self.show_refusal(error)
            self.amount.setFocus(Qt.FocusReason.OtherFocusReason)
            return
        payment = Payment(amount, self.shop.text().strip())
        noting = partial(self._bar.paying.note, self._product_id, payment, day_in(self.on))
        run_operation(self, noting, partial(self._finish, tr("Noted")))

    def forget(self) -> None:
        """Take the chosen one away; *Undo* brings it back."""
        self.clear_refusal()
        row = self.view.currentIndex().row()
        if row >= 0:
            forgetting = partial(self._bar.paying.forget, self._product_id, self.table.rows[row].id)
            run_operation(self, forgetting, partial(self._finish, tr("Forgotten")))

    def renew(self) -> None:
        """List what is noted now."""
        payments = self._bar.paying.of(self._product_id)
        self.table.show_rows(payments)
        self.stack.show_counts(len(payments), len(payments))
        cheapest = cheapest_in_words(payments, self._currency)
        self.cheapest.setText(cheapest)
        self.cheapest.setVisible(bool(cheapest))
        if payments:
            self.view.selectRow(0)
        offer(self.forget_button, "" if payments else tr("Nothing was noted yet"))

    def _finish(self, word: str, done: Done[Product]) -> None:
        self.renew()
        price = price_in_words(done.value.price, self._currency)
        said = tr("{word}; its price is {price}", word=word, price=price or tr("not known"))
        self.banner.say(said, "done", tr("Undo"), self._undo)

    def _undo(self) -> None:
        self.banner.clear()
        run_operation(self, self._bar.undo, lambda _done: self.renew())

    def _offer_likely(self, product: Product) -> None:
        if product.price is not None:
            self.amount.setText(f"{product.price:.2f}")
        if self.table.rows:
            self.shop.setText(self.table.rows[0].shop)
        self.amount.selectAll()
        self.amount.setFocus(Qt.FocusReason.OtherFocusReason)

    def _lay_out(self) -> None:
        self.amount.setAccessibleName(tr("Paid, in {currency}", currency=self._currency))
        self.amount.setPlaceholderText(tr("Such as 24.50"))
        self.shop.setAccessibleName(tr("Shop"))
        self.shop.setPlaceholderText(tr("Shop, if wanted"))
        self.on.setAccessibleName(tr("Bought on"))
        for each in (self.close_button, self.forget_button):
            each.setAutoDefault(False)
        self.note_button.setDefault(True)
        column_of(
            text_label(self.windowTitle(), TypeSize.SUBTITLE, wrap=True),
            wide(self.stack),
            self.cheapest,
            row_of(
                labelled(tr("&Paid ({currency})", currency=self._currency), self.amount),
                wide(labelled(tr("&at"), self.shop)),
                labelled(tr("&on"), self.on),
            ),
            self.banner,
            row_of(self.forget_button, SPRING, self.close_button, self.note_button),
            on=self,
            margins=DIALOG,
            gap=PAD,
        )
        self.resize(640, 440)
        set_widths(self.view, (180, 110, 220))
