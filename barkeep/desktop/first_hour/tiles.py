"""Kinds as pictures in their groups, to be gone over with the arrow keys and ticked."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from PySide6.QtCore import QModelIndex, QPoint, QPointF, QRect, QRectF, QSize, Qt, Signal
from PySide6.QtGui import (
    QColor,
    QFontMetrics,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPen,
    QResizeEvent,
    QStandardItem,
    QStandardItemModel,
)
from PySide6.QtWidgets import (
    QListView,
    QStyle,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QWidget,
)

from barkeep.desktop.look.metrics import HALF, PAD, RADIUS, UNIT, TypeSize, font_of, scaled
from barkeep.desktop.look.tones import Tones, blend, current_tones
from barkeep.desktop.widgets.delegates import Index
from barkeep.desktop.widgets.levels import LevelReading, draw_level
from barkeep.desktop.widgets.type_ahead import TypeAhead
from barkeep.domain.amounts.units import Unit
from barkeep.domain.name_search import Fit, Named, NameIndex
from barkeep.domain.phrases import folded
from barkeep.translation import tr

WIDE_TILE, PICTURE_WIDE, PICTURE_HIGH = 104, 30, 58
TILE = Qt.ItemDataRole.UserRole
TICK = 16


@dataclass(frozen=True, slots=True)
class Tile:
    """A kind as it is shown: its key, its name, its colour as *#rrggbb*, and in what it is kept.

    A heading has no key; `there` says that the bar has it already, `names` are all it is found by.
    """

    key: str
    name: str
    colour: str = ""
    unit: Unit = "ml"
    there: bool = False
    names: tuple[str, ...] = ()
    said: str = ""


class KindTiles(QListView):
    """`ticks_changed` comes with each tick, `wanted` with Enter.

    Arrows move, Space ticks, and letters go to the kind whose name they begin.
    """

    ticks_changed = Signal()
    wanted = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAccessibleName(tr("Kinds to tick"))
        self.setFrameShape(QListView.Shape.NoFrame)
        self.setFlow(QListView.Flow.LeftToRight)
        self.setWrapping(True)
        self.setResizeMode(QListView.ResizeMode.Adjust)
        self.setSelectionMode(QListView.SelectionMode.SingleSelection)
        self.setEditTriggers(QListView.EditTrigger.NoEditTriggers)
        self.setVerticalScrollMode(QListView.ScrollMode.ScrollPerPixel)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setSpacing(HALF)
        self.setMouseTracking(True)
        self.tiles = QStandardItemModel(self)
        self.setModel(self.tiles)
        self.setItemDelegate(_TileDelegate(self))
        self.tiles.itemChanged.connect(lambda _item: self.ticks_changed.emit())
        self._index: NameIndex[int] = NameIndex(())
        self._typing = TypeAhead(self, self._place_for, self._go_to_row)

    def show_tiles(self, tiles: Sequence[Tile], ticked: frozenset[str]) -> None:
        """Show these, with those ticked; the one that was current stays so."""
        before = self.current_key
        self.tiles.blockSignals(True)
        self.tiles.clear()
        for each in tiles:
            self.tiles.appendRow(_item_of(each, ticked))
        self.tiles.blockSignals(False)
        self.tiles.layoutChanged.emit()
        self._index = NameIndex(
            Named(place, each.names) for place, each in enumerate(tiles) if each.key
        )
        self.go_to(before if any(each.key == before for each in tiles) else "")

    @property
    def ticked(self) -> tuple[str, ...]:
        """The keys of what is ticked, in the order it is shown."""
        items = (self.tiles.item(row) for row in range(self.tiles.rowCount()))
        return tuple(
            each.data(TILE).key for each in items if each.checkState() == Qt.CheckState.Checked
        )

    @property
    def current_key(self) -> str:
        """The key of the kind that the arrows have come to."""
        tile = self.currentIndex().data(TILE)
        return tile.key if isinstance(tile, Tile) else ""

    def go_to(self, key: str) -> None:
        """Go to a kind by its key, to the first where there is none."""
        rows = range(self.tiles.rowCount())
        of_kinds = [row for row in rows if self.tiles.item(row).data(TILE).key]
        found = [row for row in of_kinds if self.tiles.item(row).data(TILE).key == key]
        for row in (*found, *of_kinds)[:1]:
            self.setCurrentIndex(self.tiles.index(row, 0))

    def _go_to_row(self, row: int) -> None:
        self.setCurrentIndex(self.tiles.index(row, 0))

    def _place_for(self, typed: str) -> int | None:
        """The row of the likeliest kind of which a name or a word begins so; None where none is."""
        found = self._index.hits(folded(typed), guess=False)
        best = max(found, key=lambda each: (each.fit, each.score), default=None)
        return None if best is None or best.fit < Fit.BEGINNINGS else best.value

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key, item = event.key(), self.tiles.itemFromIndex(self.currentIndex())
        if key in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and not event.modifiers() & (
            Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.AltModifier
        ):
            self._typing.forget()
            self.wanted.emit()
        elif key == Qt.Key.Key_Space and item is not None:
            self._typing.forget()
            self._toggle(self.currentIndex())
        elif not self._typing.takes(event):
            super().keyPressEvent(event)

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        super().mouseReleaseEvent(event)
        if event.button() == Qt.MouseButton.LeftButton:
            self._toggle(self.indexAt(event.position().toPoint()))

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self.scheduleDelayedItemsLayout()  # headings are as wide as the view

    def _toggle(self, index: QModelIndex) -> None:
        item = self.tiles.itemFromIndex(index)
        if item is not None and item.isCheckable():
            checked = item.checkState() == Qt.CheckState.Checked
            item.setCheckState(Qt.CheckState.Unchecked if checked else Qt.CheckState.Checked)


def _item_of(tile: Tile, ticked: frozenset[str]) -> QStandardItem:
    item = QStandardItem(tile.name)
    item.setData(tile, TILE)
    if not tile.key:
        item.setFlags(Qt.ItemFlag.NoItemFlags)
        return item
    item.setFlags(
        Qt.ItemFlag.ItemIsEnabled | Qt.ItemFlag.ItemIsSelectable | Qt.ItemFlag.ItemIsUserCheckable
    )
    checked = tile.key in ticked
    item.setCheckState(Qt.CheckState.Checked if checked else Qt.CheckState.Unchecked)
    item.setToolTip(tile.said)
    item.setData(f"{tile.name}, {tile.said}", Qt.ItemDataRole.AccessibleTextRole)
    return item


class _TileDelegate(QStyledItemDelegate):
    """A heading over the whole width, or a kind: its bottle, its name and its tick."""

    def __init__(self, view: KindTiles) -> None:
        super().__init__(view)
        self._view = view

    def sizeHint(self, _option: QStyleOptionViewItem, index: Index) -> QSize:
        tile = index.data(TILE)
        words = QFontMetrics(font_of(TypeSize.CAPTION))
        if not tile.key:
            heading = QFontMetrics(font_of(TypeSize.STRONG)).height()
            room = self._view.viewport().width() - 4 * HALF - UNIT
            return QSize(max(room, scaled(WIDE_TILE)), heading + UNIT)
        return QSize(scaled(WIDE_TILE), PICTURE_HIGH + 2 * words.height() + PAD)

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        tile, tones = index.data(TILE), current_tones()
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        if not tile.key:
            painter.setFont(font_of(TypeSize.STRONG))
            painter.setPen(QColor(tones.text))
            where = Qt.AlignmentFlag.AlignBottom | Qt.AlignmentFlag.AlignLeft
            painter.drawText(option.rect.adjusted(HALF, 0, 0, 0), int(where), tile.name)
        else:
            ticked = index.data(Qt.ItemDataRole.CheckStateRole)
            _draw_tile(painter, option, tile, tones, ticked=_is_checked(ticked))
        painter.restore()


def _is_checked(value: object) -> bool:
    return value in (Qt.CheckState.Checked, Qt.CheckState.Checked.value)


def _draw_tile(
    painter: QPainter, option: QStyleOptionViewItem, tile: Tile, tones: Tones, *, ticked: bool
) -> None:
    rect = QRectF(option.rect).adjusted(1.5, 1.5, -1.5, -1.5)
    is_current = bool(option.state & QStyle.StateFlag.State_Selected)
    near = bool(option.state & QStyle.StateFlag.State_MouseOver)
    ground = blend(tones.accent, tones.base, 0.14) if ticked else QColor(tones.base)
    painter.setBrush(ground)
    edge = tones.accent if is_current or ticked else (tones.muted if near else tones.line)
    painter.setPen(QPen(QColor(edge), 2.5 if is_current else 1))
    painter.drawRoundedRect(rect, RADIUS, RADIUS)
    left = rect.center().x() - PICTURE_WIDE / 2
    _draw_kind(
        painter, QRectF(left, rect.top() + HALF, PICTURE_WIDE, PICTURE_HIGH - HALF), tile, tones
    )
    _draw_tick(
        painter, QRectF(rect.right() - TICK - HALF, rect.top() + HALF, TICK, TICK), tones, ticked
    )
    painter.setFont(font_of(TypeSize.CAPTION))
    painter.setPen(QColor(tones.text))
    words = QRect(
        QPoint(option.rect.left() + HALF, option.rect.top() + PICTURE_HIGH + HALF),
        QPoint(option.rect.right() - HALF, option.rect.bottom() - HALF),
    )
    where = Qt.AlignmentFlag.AlignHCenter | Qt.AlignmentFlag.AlignTop | Qt.TextFlag.TextWordWrap
    painter.drawText(words, int(where), tile.name)
    if tile.there:
        painter.setPen(QColor(tones.muted))
        corner = QRectF(rect.left() + HALF + 1, rect.top() + 2, rect.width() / 2, 16)
        painter.drawText(corner, int(Qt.AlignmentFlag.AlignLeft), tr("there"))


def _draw_kind(painter: QPainter, rect: QRectF, tile: Tile, tones: Tones) -> None:
    """A bottle of what is poured, a piece of what is counted, a jar of what is weighed."""
    if tile.unit == "ml":
        painter.setBrush(Qt.BrushStyle.NoBrush)
        draw_level(painter, rect, LevelReading(0.9), replace(tones, liquid=tile.colour))
        return
    painter.setPen(QPen(QColor(tones.glass), 1.5))
    painter.setBrush(QColor(tile.colour))
    if tile.unit == "each":
        painter.drawEllipse(rect.center() + QPointF(0, 6), rect.width() * 0.46, rect.width() * 0.46)
        return
    jar = QRectF(
        rect.left() + 3, rect.top() + rect.height() * 0.36, rect.width() - 6, rect.height() * 0.56
    )
    painter.drawRoundedRect(jar, 4, 4)
    painter.setBrush(QColor(tones.glass))
    painter.drawRect(QRectF(jar.left() + 2, jar.top() - 6, jar.width() - 4, 6))


def _draw_tick(painter: QPainter, box: QRectF, tones: Tones, ticked: bool) -> None:
    painter.setPen(QPen(QColor(tones.accent if ticked else tones.muted), 1.5))
    painter.setBrush(QColor(tones.accent if ticked else tones.base))
    painter.drawRoundedRect(box, 3, 3)
    if ticked:
        painter.setPen(QPen(QColor(tones.on_accent), 2))
        middle = box.center()
        painter.drawPolyline(
            [
                QPointF(box.left() + 3.5, middle.y()),
                QPointF(middle.x() - 1, box.bottom() - 4.5),
                QPointF(box.right() - 3.5, box.top() + 4.5),
            ]
        )
