"""Every caution of a drink, each with its authority, one step from where they are in brief."""

from __future__ import annotations

from collections.abc import Iterable

from PySide6.QtWidgets import QDialog, QWidget

from barkeep.desktop.drink.analysis_view import CautionRow, every_caution
from barkeep.desktop.widgets.buttons import accept_by_keys, primary_button
from barkeep.desktop.widgets.details import DetailPanel, DetailRow, DetailSection
from barkeep.desktop.widgets.layouts import DIALOG, SPRING, column_of, row_of, wide
from barkeep.domain.cautions.cautions import Caution
from barkeep.domain.pouring.minded import Minded
from barkeep.translation import tr, tr_noop

ALL_CAUTIONS = tr_noop("&All cautions…")


class AllCautionsDialog(QDialog):
    """Reads as a list: those of this drink, then what is true of every drink with alcohol."""

    def __init__(
        self, name: str, minded: Minded, general: Iterable[Caution], parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        accept_by_keys(self)
        self.setWindowTitle(tr("All cautions"))
        self.panel = DetailPanel(tr("All cautions"))
        sections = [
            DetailSection(heading, tuple(map(_row, rows)))
            for heading, rows in every_caution(minded, general)
        ]
        self.panel.show_details(name, "", sections)
        close = primary_button(tr("Close"), self.accept)
        close.setDefault(True)
        column_of(wide(self.panel), row_of(SPRING, close), on=self, margins=DIALOG)
        self.resize(560, 480)


def _row(row: CautionRow) -> DetailRow:
    return DetailRow(row.text, label=row.meaning, note=row.source, picture="warning", tone=row.tone)
