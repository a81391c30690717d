"""Things to tick: boxes as one field of a form, and a list with a search."""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass
from typing import Generic, TypeVar

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtWidgets import QCheckBox, QListWidget, QListWidgetItem, QVBoxLayout, QWidget

from barkeep.desktop.look.metrics import HALF, UNIT, TypeSize, scaled
from barkeep.desktop.widgets.buttons import button
from barkeep.desktop.widgets.chips import FlowLayout
from barkeep.desktop.widgets.delegates import RowDelegate
from barkeep.desktop.widgets.labels import text_label
from barkeep.desktop.widgets.layouts import Card, Slot, add_parts, column_of, row_of, wide
from barkeep.desktop.widgets.list_keys import ListKeys
from barkeep.desktop.widgets.search_field import SearchField
from barkeep.desktop.widgets.tips import plain_tip
from barkeep.domain.phrases import folded
from barkeep.translation import tr, tr_noop

Key = TypeVar("Key", bound=str)


class CheckGroup(QWidget, Generic[Key]):
    """One box a key, with its words; `ticked` comes when the user ticks or unticks one.

    They stand below each other, or `beside` each other in rows.
    """

    ticked = Signal()

    def __init__(
        self,
        words: Mapping[Key, str],
        hint: str = "",
        parent: QWidget | None = None,
        *,
        beside: bool = False,
    ) -> None:
        super().__init__(parent)
        self.boxes = {key: QCheckBox(said.replace("&", "&&")) for key, said in words.items()}
        column = QVBoxLayout(self)
        column.setContentsMargins(0, HALF + 2, 0, 0)  # level with the label of a form
        column.setSpacing(UNIT)
        for box in self.boxes.values():
            box.clicked.connect(lambda: self.ticked.emit())
        if beside:
            column.addLayout(FlowLayout(_alike_wide(self.boxes.values())))
        else:
            add_parts(column, *self.boxes.values())
        if hint:
            column.addWidget(text_label(tr(hint), TypeSize.CAPTION, quiet=True, wrap=True))
        if self.boxes:
            self.setFocusProxy(next(iter(self.boxes.values())))

    @property
    def chosen(self) -> tuple[Key, ...]:
        """The keys that are ticked, in order."""
        return tuple(key for key, box in self.boxes.items() if box.isChecked())

    def choose(self, keys: frozenset[Key]) -> None:
        """Tick these and no others."""
        for key, box in self.boxes.items():
            box.setChecked(key in keys)


def _alike_wide(boxes: Collection[QCheckBox]) -> Collection[QCheckBox]:
    """The boxes, each as wide as the widest, so that their rows stand in columns."""
    widest = max((box.sizeHint().width() for box in boxes), default=0)
    for box in boxes:
        box.setMinimumWidth(widest)
    return boxes


T = TypeVar("T")
ROW_HEIGHT = 28
"""Lower than other lists' rows: these have one line and are many."""
THING_ROLE = Qt.ItemDataRole.UserRole + 40


@dataclass(frozen=True)
class Tickable(Generic[T]):
    """One thing: what it is called, and the words it is found by besides."""

    thing: T
    title: str
    words: str = ""


class TickList(QWidget, Generic[T]):
    """`changed` comes when something else is ticked than before."""

    changed = Signal()

    def __init__(self, name: str, noun: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._noun = tr(noun)
        self._things: list[T] = []
        self.search = SearchField(tr("Search {noun}…", noun=self._noun))
        self.view = QListWidget()
        ListKeys(self.view)
        self.view.setAccessibleName(tr(name))
        self.view.setItemDelegate(RowDelegate(self.view))
        self.view.setUniformItemSizes(True)
        self.view.setTextElideMode(Qt.TextElideMode.ElideRight)
        self.view.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.tick_shown = button(tr_noop("Tick &all"), lambda: self._tick_shown(True))
        self.untick = button(tr_noop("&Untick all"), lambda: self._tick_shown(False))
        self.ticked_words = text_label("", quiet=True)
        self.search.searched.connect(self._find)
        self.search.left.connect(self._go_to_list)
        self.view.itemChanged.connect(self._tell)
        self._lay_out()

    @property
    def ticked(self) -> tuple[T, ...]:
        """What is ticked, in the list's order, shown or not."""
        return tuple(
            self._things[number] for number, item in enumerate(self._items()) if _is_ticked(item)
        )

    def offer(self, things: Sequence[Tickable[T]], ticked: Collection[str] = ()) -> None:
        """List these, those of the given titles ticked."""
        self.view.blockSignals(True)
        self.view.clear()
        self._things = [each.thing for each in things]
        first: QListWidgetItem | None = None
        for each in things:
            item = QListWidgetItem(each.title)
            item.setFlags(Qt.ItemFlag.ItemIsEnabled | Qt.ItemFlag.ItemIsSelectable)
            item.setFlags(item.flags() | Qt.ItemFlag.ItemIsUserCheckable)
            wanted = each.title in ticked
            item.setCheckState(Qt.CheckState.Checked if wanted else Qt.CheckState.Unchecked)
            item.setData(THING_ROLE, folded(f"{each.title} {each.words}"))
            item.setToolTip(
                plain_tip("\n".join(words for words in (each.title, each.words) if words))
            )
            item.setSizeHint(QSize(0, scaled(ROW_HEIGHT)))
            self.view.addItem(item)
            first = item if wanted and first is None else first
        self.view.blockSignals(False)
        self._find(self.search.text)
        if first is not None:
            self.view.setCurrentItem(first)
            self.view.scrollToItem(first)
        self._count()

    def _items(self) -> list[QListWidgetItem]:
        return [self.view.item(number) for number in range(self.view.count())]

    def _find(self, text: str) -> None:
        asked = folded(text).split()
        shown = 0
        for item in self._items():
            words = item.data(THING_ROLE)
            found = all(each in words for each in asked)
            item.setHidden(not found)
            shown += found
        self.search.show_count(shown, self.view.count(), self._noun)

    def _tick_shown(self, ticked: bool) -> None:
        """Tick what the search shows, or untick everything."""
        state = Qt.CheckState.Checked if ticked else Qt.CheckState.Unchecked
        self.view.blockSignals(True)
        for item in self._items():
            if not (ticked and item.isHidden()):
                item.setCheckState(state)
        self.view.blockSignals(False)
        self._tell()

    def _go_to_list(self) -> None:
        shown = [item for item in self._items() if not item.isHidden()]
        self.view.setFocus(Qt.FocusReason.ShortcutFocusReason)
        if shown and (self.view.currentItem() is None or self.view.currentItem().isHidden()):
            self.view.setCurrentItem(shown[0])

    def _tell(self, _item: object = None) -> None:
        self._count()
        self.changed.emit()

    def _count(self) -> None:
        self.ticked_words.setText(tr("{number} ticked", number=len(self.ticked)))

    def _lay_out(self) -> None:
        both = FlowLayout((self.tick_shown, self.untick), asks_for_one_row=True)
        row = row_of(wide(both), Slot(self.ticked_words, 0, Qt.AlignmentFlag.AlignRight))
        column_of(self.search, wide(Card(self.view)), row, on=self)


def _is_ticked(item: QListWidgetItem) -> bool:
    return item.checkState() == Qt.CheckState.Checked
