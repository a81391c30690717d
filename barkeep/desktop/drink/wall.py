"""Tonight as a wall: each drink in its glass on a shelf, its verdict and what to mind below it.

The wall shows the very rows of the list, in the same order. Only what is seen is painted; a
picture is drawn once for each drink and size.
"""

from __future__ import annotations

from collections import OrderedDict
from collections.abc import Callable, Sequence
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import (
    QIdentityProxyModel,
    QModelIndex,
    QObject,
    QRect,
    QRectF,
    QSize,
    Qt,
)
from PySide6.QtGui import QColor, QFont, QFontMetrics, QPainter, QPen, QPixmap, QResizeEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QListView,
    QStyle,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QWidget,
)

from barkeep.desktop.drink.tonight_rows import NOT_YET, TonightRow, card_in_words, serves_shown
from barkeep.desktop.look.metrics import HALF, UNIT, TypeSize, font_of, scaled
from barkeep.desktop.look.tones import Tones, blend, current_tones
from barkeep.desktop.screens.row_table import RowFilter
from barkeep.desktop.widgets.delegates import VALUE_ROLE, Index, is_selected
from barkeep.desktop.widgets.drink_picture import draw_drink
from barkeep.desktop.widgets.verdict_badge import draw_verdict, verdict_width
from barkeep.translation import tr

if TYPE_CHECKING:
    from barkeep.domain.drink.picture import DrinkPicture

LEAST_WIDTH = 148
"""How wide a place on the shelf is at least, in pixels of plain type."""
GLASS_HIGH = 104
"""How high the highest glass is drawn, in device-independent pixels."""
BOARD = 5
"""How thick the board is on which they stand."""
MOST_KEPT = 600
"""So many pictures are kept as they were drawn."""
LETTERS = Qt.MatchFlag.MatchStartsWith | Qt.MatchFlag.MatchWrap
"""How a view looks for what is typed to it."""


class Cards(QIdentityProxyModel):
    """The rows of the list, each said whole in its first column."""

    def __init__(self, rows: RowFilter, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._rows = rows
        self.setSourceModel(rows)

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        if role == Qt.ItemDataRole.AccessibleTextRole and index.isValid():
            return card_in_words(self._rows.row(index))
        return self._rows.data(index, role)  # the places are the same

    def match(
        self,
        start: Index,
        role: int,
        value: Any,
        hits: int = 1,
        flags: Qt.MatchFlag = LETTERS,
    ) -> list[QModelIndex]:
        # Letters go through all drinks: Qt would ask for each by an index of its own.
        if (role, hits, flags) != (Qt.ItemDataRole.DisplayRole, 1, LETTERS):
            return super().match(start, role, value, hits=hits, flags=flags)
        typed, column, many = str(value).lower(), start.column(), self.rowCount()
        for place in ((start.row() + step) % many for step in range(many)):
            if self._rows.words_at(place, column).lower().startswith(typed):
                return [self.index(place, column)]
        return []


class DrinkWall(QListView):
    """As many glasses beside each other as there is room for; the arrow keys go along them."""

    def __init__(
        self,
        rows: RowFilter,
        look_at: Callable[[TonightRow], object],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self.setAccessibleName(tr("Tonight, as a wall"))
        self.setModel(Cards(rows, self))
        self.setItemDelegate(_Place(look_at, self))
        self.setFlow(QListView.Flow.LeftToRight)
        self.setWrapping(True)
        self.setResizeMode(QListView.ResizeMode.Adjust)
        self.setUniformItemSizes(True)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOn)
        self.setMouseTracking(True)
        self.setMinimumSize(240, 160)
        self._share_out()

    def resizeEvent(self, event: QResizeEvent) -> None:
        self._share_out()
        super().resizeEvent(event)

    def dataChanged(self, first: Index, last: Index, roles: Sequence[int] = ()) -> None:
        # All places are as large as each other: a list view would measure every row anew.
        QAbstractItemView.dataChanged(self, first, last, roles)

    def _share_out(self) -> None:
        """Give each glass its share of the width, so that the boards reach from side to side."""
        room = max(1, self.viewport().width() - 1)
        wide = room // max(1, room // min(room, scaled(LEAST_WIDTH)))
        size = QSize(wide, place_height(self.font()))
        if size != self.gridSize():
            self.setGridSize(size)
            self.verticalScrollBar().setSingleStep(size.height() // 3)


def place_height(font: QFont) -> int:
    """How high a glass with its board and its words is: a name of two lines, and two lines more."""
    body, small = QFontMetrics(font), QFontMetrics(font_of(TypeSize.CAPTION, font))
    words = 2 * body.height() + max(body.height(), 16) + small.height() + 3 * HALF
    return UNIT + GLASS_HIGH + BOARD + words + UNIT


class _Place(QStyledItemDelegate):
    """One glass on its piece of the board, with its words below."""

    def __init__(self, look_at: Callable[[TonightRow], object], parent: QObject) -> None:
        super().__init__(parent)
        self._look_at = look_at
        self._drawn: OrderedDict[tuple[object, ...], QPixmap] = OrderedDict()

    def sizeHint(self, option: QStyleOptionViewItem, index: Index) -> QSize:
        view = option.widget
        return view.gridSize() if isinstance(view, QListView) else super().sizeHint(option, index)

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        row = index.data(VALUE_ROLE)
        if not isinstance(row, TonightRow):
            return
        if not row.is_drawn:
            self._look_at(row)
        tones = current_tones()
        painter.save()
        _draw_ground(painter, option, tones)
        cell = QRect(option.rect)
        glass = QRect(cell.left() + UNIT, cell.top() + UNIT, cell.width() - 2 * UNIT, GLASS_HIGH)
        self._draw_glass(painter, glass, row, tones)
        _draw_board(painter, QRect(cell.left(), glass.bottom() + 1, cell.width(), BOARD), tones)
        top = glass.bottom() + 1 + BOARD + HALF
        words = QRect(cell.left() + UNIT, top, cell.width() - 2 * UNIT, cell.bottom() - top)
        _draw_words(painter, words, option, row, tones=tones)
        painter.restore()

    def _draw_glass(self, painter: QPainter, place: QRect, row: TonightRow, tones: Tones) -> None:
        drink = row.picture
        if drink is None:
            return
        ratio = painter.device().devicePixelRatio()
        if not row.makeable:
            painter.setOpacity(0.45)
        painter.drawPixmap(place.topLeft(), self._picture(drink, place.size(), ratio, tones))
        painter.setOpacity(1.0)

    def _picture(self, drink: DrinkPicture, size: QSize, ratio: float, tones: Tones) -> QPixmap:
        """The glass as it was drawn before at this size, or drawn now."""
        key = (drink, size.width(), size.height(), ratio, tones.glass)
        kept = self._drawn.pop(key, None)
        if kept is None:
            kept = QPixmap(size * ratio)
            kept.setDevicePixelRatio(ratio)
            kept.fill(Qt.GlobalColor.transparent)
            with_glass = QPainter(kept)
            draw_drink(with_glass, QRectF(0, 0, size.width(), size.height()), drink, tones)
            with_glass.end()
        self._drawn[key] = kept
        if len(self._drawn) > MOST_KEPT:
            self._drawn.popitem(last=False)
        return kept


def _draw_ground(painter: QPainter, option: QStyleOptionViewItem, tones: Tones) -> None:
    """What is chosen or pointed at has a ground of its own, and the keyboard's place a frame."""
    state, flag = option.state, QStyle.StateFlag
    inside = QRectF(option.rect).adjusted(2.0, 2.0, -2.0, -2.0)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setPen(Qt.PenStyle.NoPen)
    if is_selected(option):
        painter.setBrush(QColor(tones.highlight))
        painter.drawRoundedRect(inside, UNIT, UNIT)
    elif state & flag.State_MouseOver:
        painter.setBrush(blend(tones.highlight, tones.base, 0.45))
        painter.drawRoundedRect(inside, UNIT, UNIT)
    if state & flag.State_HasFocus:
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.setPen(QPen(QColor(tones.accent), 2.0))
        painter.drawRoundedRect(inside, UNIT, UNIT)


def _draw_board(painter: QPainter, place: QRect, tones: Tones) -> None:
    """The board runs on through its neighbours, lit from above."""
    painter.fillRect(place, blend(tones.liquid, tones.base, 0.55))
    painter.setPen(QPen(QColor(tones.glass), 1.0))
    painter.drawLine(place.bottomLeft(), place.bottomRight())


def _draw_words(
    painter: QPainter,
    place: QRect,
    option: QStyleOptionViewItem,
    row: TonightRow,
    *,
    tones: Tones,
) -> None:
    """The name in two lines at most, the verdict with the serves, and what to mind."""
    chosen = is_selected(option)
    ink = tones.on_highlight if chosen else tones.text
    quiet = tones.on_highlight if chosen else tones.muted
    strong, small = font_of(TypeSize.STRONG, option.font), font_of(TypeSize.CAPTION, option.font)
    middle = Qt.AlignmentFlag.AlignVCenter
    line = QRect(place.left(), place.top(), place.width(), QFontMetrics(strong).height())
    painter.setFont(strong)
    painter.setPen(QColor(ink))
    for each in in_two_lines(row.spec.name, QFontMetrics(strong), place.width()):
        painter.drawText(line, middle, each)
        line.translate(0, line.height())
    line.translate(0, HALF)
    line.setHeight(max(QFontMetrics(option.font).height(), 16))
    draw_verdict(
        painter, cell=line, verdict=row.verdict, font=option.font, tones=tones, selected=chosen
    )
    metrics = QFontMetrics(small)
    beside = line.width() - verdict_width(row.verdict, option.font) - UNIT
    painter.setFont(small)
    painter.setPen(QColor(quiet))
    right = Qt.AlignmentFlag.AlignRight
    painter.drawText(line, middle | right, _serves(row, metrics, beside))
    line.translate(0, line.height() + HALF)
    line.setHeight(metrics.height())
    tags = metrics.elidedText(row.tags, Qt.TextElideMode.ElideRight, place.width())
    painter.drawText(line, middle, tags)


def _serves(row: TonightRow, metrics: QFontMetrics, width: int) -> str:
    """How many serves, with the word for it where there is room."""
    said = serves_shown(row)
    if said == NOT_YET or not row.makeable:
        return said if row.makeable else ""
    worded = tr("{serves} serves", serves=said)
    return worded if metrics.horizontalAdvance(worded) <= width else said


def in_two_lines(name: str, metrics: QFontMetrics, width: int) -> tuple[str, ...]:
    """A name broken between its words where it is too long for one line, and cut in the second."""
    end = Qt.TextElideMode.ElideRight
    if metrics.horizontalAdvance(name) <= width:
        return (name,)
    words = name.split(" ")
    first = words.pop(0)
    while words and metrics.horizontalAdvance(f"{first} {words[0]}") <= width:
        first = f"{first} {words.pop(0)}"
    first, rest = metrics.elidedText(first, end, width), " ".join(words)
    return (first, metrics.elidedText(rest, end, width)) if rest else (first,)


def keep_together(list_view: QAbstractItemView, wall: QListView) -> None:
    """What is chosen in one is chosen in the other."""

    def follow(leader: QModelIndex, view: QAbstractItemView) -> None:
        model = view.model()
        here = model.index(leader.row(), 0) if model and leader.isValid() else QModelIndex()
        if here.row() != view.currentIndex().row():
            view.setCurrentIndex(here)

    list_view.selectionModel().currentRowChanged.connect(lambda now, _was: follow(now, wall))
    wall.selectionModel().currentChanged.connect(lambda now, _was: follow(now, list_view))
