"""The pages of the window, and the way between them: a line with a lamp lit at the one shown."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QPointF, QRect, QRectF, QSize, Qt
from PySide6.QtCore import Signal as QtSignal
from PySide6.QtGui import QColor, QKeySequence, QPainter, QPen
from PySide6.QtWidgets import (
    QFrame,
    QListWidget,
    QListWidgetItem,
    QSizePolicy,
    QStyle,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QWidget,
)

from barkeep.desktop.drink.dragged_specs import TakesSpecs
from barkeep.desktop.look.icons import pixmap
from barkeep.desktop.look.metrics import HALF, ICON, PAD, TypeSize, font_of, scaled, set_type
from barkeep.desktop.look.sides import on_its_side, point_turned_about, runs_left
from barkeep.desktop.look.tones import Tones, blend, current_tones
from barkeep.desktop.screens.screen import Screen, ScreenContext
from barkeep.desktop.widgets.labels import ElidedLabel
from barkeep.desktop.widgets.layouts import column_of, wide
from barkeep.desktop.widgets.type_ahead import type_to_rows
from barkeep.translation import tr, tr_noop


@dataclass(frozen=True, slots=True)
class Page:
    """One stop of the navigation. `make` imports what the page needs and builds it.

    A part of a page is no stop of its own: it belongs to the stop `of` that key, and has the
    key that leads to it.
    """

    key: str
    title: str
    picture: str
    make: Callable[[ScreenContext], Screen]
    of: str = ""
    shortcut: str = ""

    @property
    def stop(self) -> str:
        """The key of the stop whose lamp is lit."""
        return self.of or self.key


def _tonight(context: ScreenContext) -> Screen:
    from barkeep.desktop.drink.tonight import TonightScreen

    return TonightScreen(context)


def _bottles(context: ScreenContext) -> Screen:
    from barkeep.desktop.bottles.page import BottlesScreen

    return BottlesScreen(context)


def _specs(context: ScreenContext) -> Screen:
    from barkeep.desktop.specs.page import SpecsScreen

    return SpecsScreen(context)


def _shoots(context: ScreenContext) -> Screen:
    from barkeep.desktop.shoots.page import ShootsScreen

    return ShootsScreen(context)


def _next_bottle(context: ScreenContext) -> Screen:
    from barkeep.desktop.buying.next_bottle import NextBottleScreen

    return NextBottleScreen(context)


def _use_up(context: ScreenContext) -> Screen:
    from barkeep.desktop.drink.use_up import UseUpScreen

    return UseUpScreen(context)


def _plan(context: ScreenContext) -> Screen:
    from barkeep.desktop.buying.plan import PlanScreen

    return PlanScreen(context)


def _carried(context: ScreenContext) -> Screen:
    from barkeep.desktop.buying.carried import CarriedScreen

    return CarriedScreen(context)


def _pairs(context: ScreenContext) -> Screen:
    from barkeep.desktop.buying.pairs import PairsScreen

    return PairsScreen(context)


def _list(context: ScreenContext) -> Screen:
    from barkeep.desktop.first_hour.listing import BottleListScreen

    return BottleListScreen(context)


def _tick(context: ScreenContext) -> Screen:
    from barkeep.desktop.first_hour.ticking import TickScreen

    return TickScreen(context)


def _stand_ins(context: ScreenContext) -> Screen:
    from barkeep.desktop.stand_ins.page import StandInsScreen

    return StandInsScreen(context)


PAGES = (
    Page("tonight", tr_noop("Tonight"), "tonight", _tonight),
    Page("bottles", tr_noop("Bottles"), "bottles", _bottles),
    Page("specs", tr_noop("Specs"), "specs", _specs),
    Page("shoots", tr_noop("Shoots"), "shoots", _shoots),
    Page("next-bottle", tr_noop("Buying"), "next-bottle", _next_bottle),
    Page("stand-ins", tr_noop("Stand-ins"), "stand-ins", _stand_ins),
)

PARTS = (
    Page("use-up", tr_noop("Tonight: &use up"), "tonight", _use_up, of="tonight", shortcut="F9"),
    Page(
        "buying-plan",
        tr_noop("Buying: a &plan"),
        "next-bottle",
        _plan,
        of="next-bottle",
        shortcut="F6",
    ),
    Page(
        "carried",
        tr_noop("Buying: &what each carries"),
        "next-bottle",
        _carried,
        of="next-bottle",
        shortcut="F7",
    ),
    Page(
        "pairs",
        tr_noop("Buying: pa&irs"),
        "next-bottle",
        _pairs,
        of="next-bottle",
        shortcut="Shift+F7",
    ),
    Page(
        "tick-bottles",
        tr_noop("Bottles: tic&k"),
        "bottles",
        _tick,
        of="bottles",
        shortcut="Ctrl+Shift+T",
    ),
    Page(
        "bottle-list",
        tr_noop("Bottles: a li&st"),
        "bottles",
        _list,
        of="bottles",
        shortcut="Ctrl+Shift+V",
    ),
)
"""Further parts of pages."""


SHOOTS = "shoots"
WIDTH, NARROW = 188, 72
STOP_HEIGHT = 60
LAMP = 18
"""The radius of a lamp."""
LINE_X = NARROW // 2
PICTURE_ROLE = Qt.ItemDataRole.UserRole + 1


class Navigation(QFrame):
    """`chosen` carries the key of the page the user went to; narrow, it shows lamps only.

    `for_a_shoot` carries the names of specs that are dropped on the shoots.
    """

    chosen = QtSignal(str)
    for_a_shoot = QtSignal(object)

    def __init__(self, pages: Sequence[Page], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("navigation")
        self._keys = [page.key for page in pages]
        self._stops = QListWidget()
        self._stops.setAccessibleName(tr("Pages"))
        type_to_rows(self._stops)
        self._stops.setFrameShape(QFrame.Shape.NoFrame)
        self._stops.setMouseTracking(True)
        self._stops.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._stops.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._stops.setItemDelegate(_StopDelegate(self))
        for number, page in enumerate(pages, 1):
            self._add_stop(page, number)
        self._stops.currentRowChanged.connect(self._on_row)
        if SHOOTS in self._keys:
            taking = TakesSpecs(self._stops, self._keys.index(SHOOTS))
            taking.dropped.connect(self.for_a_shoot)
        self._name = ElidedLabel()
        set_type(self._name, TypeSize.SUBTITLE)
        self._name.setObjectName("bar-name")
        self._name.setContentsMargins(PAD, 0, PAD, 0)
        column_of(self._name, wide(self._stops), on=self, margins=(0, PAD, 0, PAD))
        self.setSizePolicy(QSizePolicy.Policy.Maximum, QSizePolicy.Policy.Preferred)
        self.set_narrow(False)

    def set_narrow(self, narrow: bool) -> None:
        """Show lamps only, or the words beside them as well."""
        self.is_narrow = narrow
        self._name.setVisible(not narrow)
        self.updateGeometry()

    def sizeHint(self) -> QSize:
        return QSize(NARROW if self.is_narrow else scaled(WIDTH), super().sizeHint().height())

    def minimumSizeHint(self) -> QSize:
        """Narrow, so that the wide form does not keep a window from becoming small."""
        return QSize(NARROW, super().minimumSizeHint().height())

    def show_name(self, name: str) -> None:
        """Show the bar's name at the head."""
        self._name.setText(name)

    def light(self, key: str) -> None:
        """Light the lamp of a page without going anywhere."""
        self._stops.blockSignals(True)
        self._stops.setCurrentRow(self._keys.index(key))
        self._stops.blockSignals(False)
        self._stops.viewport().update()

    def _add_stop(self, page: Page, number: int) -> None:
        title = tr(page.title)
        stop = QListWidgetItem(title)
        stop.setData(PICTURE_ROLE, page.picture)
        keys = QKeySequence(f"Ctrl+{number}").toString(QKeySequence.SequenceFormat.NativeText)
        stop.setToolTip(f"{title} ({keys})")
        stop.setSizeHint(QSize(0, STOP_HEIGHT))
        self._stops.addItem(stop)

    def _on_row(self, row: int) -> None:
        if row >= 0:
            self.chosen.emit(self._keys[row])


class _StopDelegate(QStyledItemDelegate):
    """One stop: its piece of the line, its lamp, and its name."""

    def __init__(self, navigation: Navigation) -> None:
        super().__init__(navigation)
        self._navigation = navigation

    def paint(
        self,
        painter: QPainter,
        option: QStyleOptionViewItem,
        index: QModelIndex | QPersistentModelIndex,
    ) -> None:
        tones = current_tones()
        lit = bool(option.state & QStyle.StateFlag.State_Selected)
        near = bool(option.state & QStyle.StateFlag.State_MouseOver)
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        whole = QRectF(option.rect)
        middle = QPointF(LINE_X, whole.center().y())
        if runs_left(painter):
            middle = point_turned_about(middle, whole)
        _draw_line(painter, rect=option.rect, middle=middle, index=index, tones=tones)
        _draw_lamp(painter, middle, tones, lit=lit, near=near)
        picture = str(index.data(PICTURE_ROLE))
        colour, paper = (tones.on_lamp, tones.lamp) if lit else (tones.on_nav, tones.nav)
        ratio = painter.device().devicePixelRatio()
        corner = middle - QPointF(ICON / 2, ICON / 2)
        painter.drawPixmap(
            corner, pixmap(picture, colour=colour, size=ICON, ratio=ratio, paper=paper)
        )
        if not self._navigation.is_narrow:
            place = option.rect.adjusted(LINE_X + LAMP + PAD - HALF, 0, 0, 0)
            place = on_its_side(painter, place, option.rect)
            painter.setFont(font_of(TypeSize.STRONG if lit or near else TypeSize.BODY))
            painter.setPen(QColor(tones.on_nav))
            painter.drawText(place, Qt.AlignmentFlag.AlignVCenter, str(index.data()))
        if lit and option.state & QStyle.StateFlag.State_HasFocus:
            painter.setPen(QPen(QColor(tones.on_nav), 1.5, Qt.PenStyle.DotLine))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawEllipse(middle, LAMP + 5, LAMP + 5)
        painter.restore()


def _draw_line(
    painter: QPainter,
    *,
    rect: QRect,
    middle: QPointF,
    index: QModelIndex | QPersistentModelIndex,
    tones: Tones,
) -> None:
    """The line ends at the first and the last stop."""
    painter.setPen(QPen(QColor(tones.nav_line), 2))
    model = index.model()
    if index.row() > 0:
        painter.drawLine(QPointF(middle.x(), rect.top()), middle - QPointF(0, LAMP))
    if index.row() < model.rowCount() - 1:
        painter.drawLine(middle + QPointF(0, LAMP), QPointF(middle.x(), rect.bottom() + 1))


def _draw_lamp(painter: QPainter, middle: QPointF, tones: Tones, *, lit: bool, near: bool) -> None:
    if lit:
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(blend(tones.lamp, tones.nav, 0.28))
        painter.drawEllipse(middle, LAMP + 4, LAMP + 4)
        painter.setBrush(QColor(tones.lamp))
    else:
        painter.setPen(QPen(QColor(tones.lamp if near else tones.nav_line), 2))
        painter.setBrush(QColor(tones.nav))
    painter.drawEllipse(middle, LAMP, LAMP)
