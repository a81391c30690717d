"""Choose one bottle of several by a part of its name."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QDialog, QListWidget, QListWidgetItem, QWidget

from barkeep.desktop.look.metrics import PAD
from barkeep.desktop.widgets.buttons import accept_by_keys, button, primary_button
from barkeep.desktop.widgets.delegates import SUBTITLE_ROLE, RowDelegate
from barkeep.desktop.widgets.layouts import SPRING, Card, column_of, row_of, wide
from barkeep.desktop.widgets.list_keys import ListKeys
from barkeep.desktop.widgets.search_field import SearchField
from barkeep.desktop.widgets.tips import plain_tip
from barkeep.domain.bottles.bottle import Bottle
from barkeep.domain.bottles.level_words import quantity
from barkeep.domain.phrases import folded
from barkeep.translation import tr

ID_ROLE = Qt.ItemDataRole.UserRole


class ChooseBottle(QDialog):
    """`chosen` carries the bottle's id."""

    chosen = Signal(int)

    def __init__(self, bottles: Sequence[Bottle], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        accept_by_keys(self)
        self.setWindowTitle(tr("Another bottle"))
        self.search = SearchField(tr("Search bottles…"))
        self.view = QListWidget()
        ListKeys(self.view)
        self.view.setAccessibleName(tr("Bottles"))
        self.view.setItemDelegate(RowDelegate(self.view))
        self.view.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        for each in bottles:
            item = QListWidgetItem(each.product.title)
            item.setData(ID_ROLE, each.id)
            left = quantity(each.level.amount, each.product.unit)
            item.setData(SUBTITLE_ROLE, left)
            item.setData(Qt.ItemDataRole.AccessibleTextRole, f"{each.product.title}, {left}")
            item.setToolTip(plain_tip(each.product.title))
            self.view.addItem(item)
        self.take_button = primary_button(tr("Take"), self.take)
        self._lay_out()
        self.search.searched.connect(self._find)
        self.search.left.connect(self.view.setFocus)
        self.view.itemDoubleClicked.connect(lambda _item: self.take())
        self._find("")

    def take(self) -> None:
        """Choose the present bottle."""
        item = self.view.currentItem()
        if item is not None and not item.isHidden():
            self.chosen.emit(item.data(ID_ROLE))
            self.accept()

    def _find(self, text: str) -> None:
        asked = folded(text).split()
        items = [self.view.item(number) for number in range(self.view.count())]
        for item in items:
            item.setHidden(not all(each in folded(item.text()) for each in asked))
        found = [item for item in items if not item.isHidden()]
        self.search.show_count(len(found), len(items), "bottles")
        self.take_button.setEnabled(bool(found))
        if found:
            self.view.setCurrentItem(found[0])

    def _lay_out(self) -> None:
        cancel = button(tr("Cancel"), self.reject)
        cancel.setAutoDefault(False)  # Enter takes
        self.take_button.setDefault(True)
        column_of(
            self.search,
            wide(Card(self.view)),
            row_of(SPRING, cancel, self.take_button),
            on=self,
            margins=PAD,
        )
        self.resize(420, 420)
