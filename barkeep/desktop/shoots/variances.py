"""What the logs of several shoots say of each bottle, with a plain reason."""

from __future__ import annotations

from PySide6.QtCore import QModelIndex, Qt
from PySide6.QtWidgets import QDialog, QTableView, QWidget

from barkeep.desktop.look.metrics import PAD, TypeSize
from barkeep.desktop.screens.list_stack import ListStack, prepare_view, set_widths
from barkeep.desktop.screens.row_table import Column, RowTable
from barkeep.desktop.widgets.buttons import accept_by_keys, button
from barkeep.desktop.widgets.empty_state import EmptyState
from barkeep.desktop.widgets.labels import text_label
from barkeep.desktop.widgets.layouts import SPRING, Card, column_of, row_of, wide
from barkeep.desktop.widgets.terms import meaning
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.level_words import in_doubt, quantity
from barkeep.domain.shoots.log import BottleVariance, variances
from barkeep.translation import tr


def variance_columns() -> tuple[Column[BottleVariance], ...]:
    """Bottle, shoots, poured, gone beyond that, doubt, reason."""
    return (
        Column(tr("Bottle"), lambda row: row.title, tooltip=lambda row: row.title),
        Column(tr("Shoots"), lambda row: str(row.shoots), key=lambda row: row.shoots, right=True),
        Column(
            tr("Poured"),
            lambda row: quantity(row.poured, row.unit),
            key=lambda row: row.poured,
            right=True,
        ),
        Column(tr("Gone besides"), gone_in_words, key=lambda row: row.variance, right=True),
        Column(
            tr("Doubt"),
            lambda row: in_doubt(row.sigma, row.unit),
            right=True,
            about=meaning("doubt"),
        ),
        Column(tr("Likely reason"), lambda row: row.reason, tooltip=lambda row: row.reason),
    )


def gone_in_words(row: BottleVariance) -> str:
    """What is gone beyond the pours; *too much left* where it is the other way round."""
    amount = quantity(abs(row.variance), row.unit)
    return amount if row.variance >= 0 else tr("{amount} too much left", amount=amount)


class VariancesDialog(QDialog):
    """A table of bottles, what the doubt does not explain first."""

    def __init__(self, snapshot: Snapshot, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        accept_by_keys(self)
        self.setWindowTitle(tr("Variances over all shoots"))
        self.table: RowTable[BottleVariance] = RowTable(variance_columns(), self)
        self.view = QTableView()
        self.view.setModel(self.table)
        prepare_view(self.view, tr("Variances"))
        self.view.setSortingEnabled(False)
        words = tr("Log a shoot and count its bottles: what is gone without a pour shows here.")
        self.stack = ListStack(
            self.view,
            EmptyState("picture-empty-shelf", tr("Nothing to compare yet"), words),
            EmptyState.no_match("bottles"),
        )
        self.reason = text_label("", wrap=True)
        self.view.selectionModel().currentRowChanged.connect(lambda now, _old: self._explain(now))
        rows = variances(snapshot.shoots, snapshot)
        self.table.show_rows(rows)
        self.stack.show_counts(len(rows), len(rows))
        self._lay_out()

    def _lay_out(self) -> None:
        said = tr("Summed over the shoots that counted a bottle. Reasons are common practice.")
        column_of(
            text_label(self.windowTitle(), TypeSize.SUBTITLE),
            text_label(said, quiet=True, wrap=True),
            wide(Card(self.stack)),
            self.reason,
            row_of(SPRING, button(tr("Close"), self.accept)),
            on=self,
            margins=PAD,
        )
        self.resize(960, 560)
        set_widths(self.view, (248, 72, 104, 140, 100))
        if self.table.rows:
            self.view.selectRow(0)
        self.view.setFocus(Qt.FocusReason.OtherFocusReason)

    def _explain(self, index: QModelIndex) -> None:
        """Say the whole reason of the present bottle, which its cell has no room for."""
        row = self.table.rows[index.row()]
        self.reason.setText(f"{row.title}: {row.reason}")
