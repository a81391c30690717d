"""The finder: whatever has a name, by typing some of it, on a line that branches off the pages.

It lies over the page and has the keyboard while it is shown. The stop that is lit is the one
Enter goes to, or does; a command that cannot be given says why in its place.
"""

from __future__ import annotations

import json
from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import partial
from typing import Protocol

from PySide6.QtCore import (
    QAbstractListModel,
    QEvent,
    QModelIndex,
    QObject,
    QPointF,
    QRect,
    QRectF,
    QSize,
    Qt,
    QTimer,
)
from PySide6.QtGui import QAction, QColor, QFontMetrics, QKeyEvent, QKeySequence, QPainter, QPen
from PySide6.QtWidgets import (
    QAbstractItemView,
    QApplication,
    QFrame,
    QLineEdit,
    QListView,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QWidget,
)

from barkeep.application.by_name import ByName, Sort, Thing
from barkeep.desktop.look.icons import pixmap
from barkeep.desktop.look.language import in_english
from barkeep.desktop.look.metrics import HALF, PAD, RADIUS, UNIT, TypeSize, font_of, scaled
from barkeep.desktop.look.tones import Tones, blend, current_tones
from barkeep.desktop.screens.name_completion import family_of
from barkeep.desktop.screens.screen import Screen, ScreenContext
from barkeep.desktop.shell.help import bare, words_of
from barkeep.desktop.shell.menus import WindowActions
from barkeep.desktop.shell.navigation import Page
from barkeep.desktop.widgets.buttons import held_for
from barkeep.desktop.widgets.delegates import VALUE_ROLE, Index
from barkeep.desktop.widgets.labels import text_label
from barkeep.desktop.widgets.layouts import column_of, wide
from barkeep.desktop.widgets.notices import announce
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.level_words import quantity
from barkeep.domain.days import day_said
from barkeep.translation import tr, tr_noop

WIDTH, LINE_X, LAMP = 560, 28, 9
LATELY, MOST_LATELY = "finder/lately", 8
PICTURES: Mapping[Sort, str] = {
    "command": "chevron-down",
    "bottle": "bottles",
    "drink": "tonight",
    "shoot": "shoots",
    "ingredient": "house-made",
}
SHOWN_ON: Mapping[Sort, str] = {
    "bottle": "bottles",
    "drink": "specs",
    "shoot": "shoots",
    "ingredient": "stand-ins",
}
"""The page that each sort of thing is shown on."""
STATES = {"open": tr_noop("open"), "sealed": tr_noop("sealed"), "empty": tr_noop("empty")}
AT_FIRST = tr_noop("Type some of a name. Used lately, then every command:")
UNUSED = tr_noop("Type some of a name. Every command:")
CANNOT = tr_noop("It cannot be done just now")
_NOWHERE = QModelIndex()


@dataclass(frozen=True, slots=True)
class Stop:
    """One row: a thing, what stands beside it, its keys, and what Enter does."""

    thing: Thing
    beside: str
    act: Callable[[], object]
    keys: str = ""

    @property
    def told(self) -> str:
        """All of it in words."""
        return ", ".join(filter(None, (self.thing.name, self.beside, self.keys)))


class FoundIn(Protocol):
    """What the finder asks of the window."""

    context: ScreenContext
    actions_: WindowActions

    def pages_to_find(self) -> Sequence[Page]:
        """Every page and part."""
        ...

    def built(self, key: str, /) -> Screen | None:
        """A page that is built already."""
        ...

    def build(self, key: str, /) -> Screen:
        """A page, built but not shown."""
        ...

    def arrive(self, key: str, /) -> Screen:
        """Show a page, its list in hand."""
        ...


class Finder(QFrame):
    """Shown by `begin` over `host`; whoever had the keyboard has it back where it is left."""

    def __init__(self, window: FoundIn, host: QWidget, beside: QWidget) -> None:
        """It lies at the right of `beside`, which lies in the host."""
        super().__init__(host)
        self.setObjectName("finder")
        self._window, self._host, self._beside = window, host, beside
        self._by_name = ByName()
        self._before: QWidget | None = None
        self._unbuilt: list[str] = []
        self._building = QTimer(self, interval=0)
        self._building.timeout.connect(self._build_next)
        self.field = QLineEdit()
        self.field.setPlaceholderText(tr("A command, drink, bottle, ingredient or shoot…"))
        self.field.setAccessibleName(tr("Find anything"))
        self.said = text_label("", TypeSize.CAPTION, wrap=True)
        self.stops = _Stops(self)
        self.list = QListView()
        self._prepare()
        self.hide()

    # What the window calls

    def begin(self) -> None:
        """Show it, with what was used lately first."""
        if self.isHidden():
            self._before = QApplication.focusWidget()
        self._unbuilt = [
            page.key
            for page in self._window.pages_to_find()
            if self._window.built(page.key) is None
        ]
        self._know()
        self.field.clear()
        self._find("")
        self._place()
        self.show()
        self.raise_()
        self.field.setFocus(Qt.FocusReason.ShortcutFocusReason)
        self._building.start()

    def leave(self) -> None:
        """Back to where the keyboard was."""
        before, self._before = self._before, None
        self._building.stop()
        self.hide()
        if before is not None and before.isVisible():
            before.setFocus(Qt.FocusReason.OtherFocusReason)

    @property
    def is_ready(self) -> bool:
        """Whether the commands of every page are known."""
        return not self._unbuilt

    @property
    def lit(self) -> Stop | None:
        """The stop that Enter goes to."""
        row = self.list.currentIndex().row()
        return self.stops.rows[row] if 0 <= row < len(self.stops.rows) else None

    # Qt

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if watched is self._host and event.type() == QEvent.Type.Resize and self.isVisible():
            self._place()
        if watched is self.field and self.isVisible():
            if event.type() == QEvent.Type.FocusOut and not self._is_only_aside():
                self.hide()
            if isinstance(event, QKeyEvent) and event.type() == QEvent.Type.KeyPress:
                return self._take_key(event)
        return super().eventFilter(watched, event)

    def _is_only_aside(self) -> bool:
        """Whether the keyboard is gone from the window as a whole, or in a menu of the field."""
        window = self.window()
        return not window.isActiveWindow() or QApplication.activePopupWidget() is not None

    def _take_key(self, event: QKeyEvent) -> bool:
        key = event.key()
        if key in _STEPS:
            self._walk(_STEPS[key])
        elif key in (Qt.Key.Key_PageDown, Qt.Key.Key_PageUp):
            page = max(1, self.list.viewport().height() // self.list.sizeHintForRow(0) - 1)
            self._walk(page if key == Qt.Key.Key_PageDown else -page)
        elif key in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.take(self.lit)
        elif key == Qt.Key.Key_Escape:
            self.leave()
        else:
            return False
        return True

    # What the keys do

    def take(self, stop: Stop | None) -> None:
        """Go there, or do it; what cannot be done says why."""
        if stop is None:
            return
        if stop.thing.unless:
            self._say(f"{stop.thing.name}: {stop.thing.unless}.")
            return
        self._remember(stop.thing)
        self.leave()
        stop.act()

    def _walk(self, by: int) -> None:
        last = len(self.stops.rows) - 1
        row = max(0, min(last, self.list.currentIndex().row() + by))
        self._light(row)

    def _light(self, row: int) -> None:
        index = self.stops.index(row, 0)
        self.list.setCurrentIndex(index)
        self.list.scrollTo(index)
        if (lit := self.lit) is not None:
            announce(self.field, lit.told)

    def _find(self, text: str) -> None:
        lately = self._lately()
        found = self._by_name.found(text, lately)
        if found or not text.strip():
            self.stops.show(list(filter(None, map(self._stop, found))))
            at_first = tr(AT_FIRST) if lately else tr(UNUSED)
            self._say(_how_many(len(found)) if text.strip() else at_first)
        else:
            self.stops.show(list(self._offers(text.strip())))
            self._say(tr("Nothing is called “{name}”. You may:", name=text.strip()))
        if self.stops.rows:
            self._light(0)

    def _say(self, words: str) -> None:
        self.said.setText(words)
        self.field.setAccessibleDescription(words)

    # What there is

    def _know(self) -> None:
        self._commands = dict(self._all_commands())
        things = [each.thing for each in self._commands.values()]
        self._by_name.know(self._window.context.bar.snapshot, things)

    def _build_next(self) -> None:
        """Build the pages that nobody has been to, one at a time, for what they offer."""
        if not self._unbuilt:
            self._building.stop()
            return
        self._window.build(self._unbuilt.pop(0))
        self._know()
        before, typed = self.lit, self.field.text()
        self._find(typed)
        if before is not None:
            names = [each.thing.key for each in self.stops.rows]
            if before.thing.key in names and typed.strip():
                self._light(names.index(before.thing.key))

    def _all_commands(self) -> Iterator[tuple[str, Stop]]:
        actions, pages = self._window.actions_, self._window.pages_to_find()
        led = {
            action: before
            for before, several in (
                (tr_noop("Theme: "), actions.themes),
                (tr_noop("Text size: "), actions.text_sizes),
                (tr_noop("Language: "), actions.languages),
            )
            for action in several.values()
        }
        for action in actions.all:
            if action.isVisible() and action is not actions.find_anything:
                before = led.get(action, "")
                beside = tr("View") if before else ""
                yield self._command("", action, before=before, beside=beside, act=action.trigger)
        for page in pages:
            screen = self._window.built(page.key)
            for action in () if screen is None else screen.bar_actions:
                if not action.isSeparator() and action.isVisible():
                    act = partial(self._do_there, page.key, action)
                    beside = tr(page.title).replace("&", "")
                    yield self._command(page.key, action, beside=beside, act=act)

    @staticmethod
    def _command(
        page: str, action: QAction, *, before: str = "", beside: str, act: Callable[[], object]
    ) -> tuple[str, Stop]:
        words, english = words_of(action), _english(action)
        name = tr(before) + words if before else words
        unless = "" if action.isEnabled() else _reason(action)
        also = tuple(each for each in dict.fromkeys((words, english)) if each != name)
        thing = Thing("command", name, f"{page}/{before}{english}", also=also, unless=unless)
        keys = action.shortcut().toString(QKeySequence.SequenceFormat.NativeText)
        return thing.key, Stop(thing, unless or beside, act, keys)

    def _do_there(self, page: str, action: QAction) -> None:
        self._window.arrive(page)
        action.trigger()

    def _stop(self, thing: Thing) -> Stop | None:
        if thing.sort == "command":
            return self._commands.get(thing.key)
        snapshot = self._window.context.bar.snapshot
        go = partial(self._window.context.go, SHOWN_ON[thing.sort], thing.identity)
        return Stop(thing, _beside(thing, snapshot), go)

    def _offers(self, text: str) -> Iterator[Stop]:
        """What may be done with a name that nothing has."""
        window = self._window
        for page, words in (
            ("specs", tr("Search the specs for “{text}”", text=text)),
            ("bottles", tr("Search bottles for “{text}”", text=text)),
        ):

            def search(key: str = page) -> None:
                window.arrive(key).search_for(text)

            yield Stop(Thing("command", words, f"search/{page}"), "", search)
        add = self._commands.get("command:bottles/Add bottle")
        if add is not None:
            named = Thing("command", tr("Add a bottle"), "offer/add", unless=add.thing.unless)
            yield Stop(named, add.beside, add.act, add.keys)

    # What was used lately

    def _lately(self) -> list[str]:
        try:
            kept = json.loads(self._window.context.state.text(LATELY, "[]"))
        except ValueError:  # somebody else has written it
            return []
        return [each for each in kept if isinstance(each, str)] if isinstance(kept, list) else []

    def _remember(self, thing: Thing) -> None:
        lately = [thing.key, *(each for each in self._lately() if each != thing.key)]
        self._window.context.state.keep_text(LATELY, json.dumps(lately[:MOST_LATELY]))

    # How it is put together

    def _prepare(self) -> None:
        self.list.setModel(self.stops)
        self.list.setAccessibleName(tr("Found"))
        self.list.setItemDelegate(StopDelegate(self.list))
        self.list.setFrameShape(QFrame.Shape.NoFrame)
        self.list.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.list.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.list.setUniformItemSizes(True)
        self.list.setMouseTracking(True)
        self.list.clicked.connect(lambda index: self.take(self.stops.rows[index.row()]))
        self.field.textEdited.connect(self._find)
        self.field.installEventFilter(self)
        self._host.installEventFilter(self)
        column_of(
            self.field,
            self.said,
            wide(self.list),
            on=self,
            margins=(PAD, PAD, PAD, UNIT),
            gap=UNIT,
        )

    def _place(self) -> None:
        """Beside the pages, as high as the window."""
        left = self._beside.geometry().right() + 1
        width = min(scaled(WIDTH), self._host.width() - left)
        self.setGeometry(left, 0, width, self._host.height())


class _Stops(QAbstractListModel):
    """Stops as the rows of a list."""

    def __init__(self, parent: QObject) -> None:
        super().__init__(parent)
        self.rows: tuple[Stop, ...] = ()

    def show(self, rows: Sequence[Stop]) -> None:
        """Show these."""
        self.beginResetModel()
        self.rows = tuple(rows)
        self.endResetModel()

    def rowCount(self, parent: Index = _NOWHERE) -> int:
        return 0 if parent.isValid() else len(self.rows)

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> object:
        if not index.isValid():
            return None
        stop = self.rows[index.row()]
        said = {
            Qt.ItemDataRole.DisplayRole: stop.thing.name,
            Qt.ItemDataRole.AccessibleTextRole: stop.told,
            VALUE_ROLE: stop,
        }
        return said.get(role)


class StopDelegate(QStyledItemDelegate):
    """A stop of the line: its lamp, its name, and at the right what it is and its keys."""

    def sizeHint(self, option: QStyleOptionViewItem, _index: Index) -> QSize:
        return QSize(0, max(2 * LAMP, option.fontMetrics.height()) + UNIT + HALF)

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        tones, stop = current_tones(), index.data(VALUE_ROLE)
        view = option.widget
        lit = isinstance(view, QListView) and view.currentIndex() == index
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        if lit:
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(blend(tones.lamp, tones.nav, 0.16))
            painter.drawRoundedRect(QRectF(option.rect).adjusted(0, 1, -1, -1), RADIUS, RADIUS)
        self._draw_stop(painter, option.rect, index, lit=lit)
        cell = option.rect.adjusted(LINE_X + LAMP + UNIT + HALF, 0, -UNIT, 0)
        cell = _draw_keys(painter, cell, stop.keys, tones)
        painter.setFont(font_of(TypeSize.STRONG if lit else TypeSize.BODY))
        painter.setPen(QColor(tones.nav_muted if stop.thing.unless else tones.on_nav))
        _draw_name(painter, cell, stop, tones)
        painter.restore()

    @staticmethod
    def _draw_stop(painter: QPainter, place: QRect, index: Index, *, lit: bool) -> None:
        tones, middle = current_tones(), QPointF(LINE_X, QRectF(place).center().y())
        painter.setPen(QPen(QColor(tones.nav_line), 2))
        if index.row() > 0:
            painter.drawLine(QPointF(LINE_X, place.top()), middle - QPointF(0, LAMP))
        if index.row() < index.model().rowCount() - 1:
            painter.drawLine(middle + QPointF(0, LAMP), QPointF(LINE_X, place.bottom() + 1))
        painter.setPen(QPen(QColor(tones.lamp if lit else tones.nav_line), 2))
        painter.setBrush(QColor(tones.lamp if lit else tones.nav))
        painter.drawEllipse(middle, LAMP, LAMP)
        sort = index.data(VALUE_ROLE).thing.sort
        if sort != "command":
            colour, paper = (tones.on_lamp, tones.lamp) if lit else (tones.on_nav, tones.nav)
            edge, ratio = LAMP + HALF, painter.device().devicePixelRatio()
            image = pixmap(PICTURES[sort], colour=colour, size=edge, ratio=ratio, paper=paper)
            painter.drawPixmap(middle - QPointF(edge / 2, edge / 2), image)


def _draw_keys(painter: QPainter, cell: QRect, keys: str, tones: Tones) -> QRect:
    """The keys in a frame at the right; what room is left."""
    if not keys:
        return cell
    painter.setFont(font_of(TypeSize.CAPTION))
    width = painter.fontMetrics().horizontalAdvance(keys) + 2 * UNIT
    height = painter.fontMetrics().height() + HALF
    box = QRectF(cell.right() - width, cell.center().y() - height / 2, width, height)
    painter.setPen(QPen(QColor(tones.nav_muted), 1))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawRoundedRect(box, HALF, HALF)
    painter.setPen(QColor(tones.on_nav))
    painter.drawText(box, Qt.AlignmentFlag.AlignCenter, keys)
    return cell.adjusted(0, 0, -width - UNIT, 0)


def _draw_name(painter: QPainter, cell: QRect, stop: Stop, tones: Tones) -> None:
    """The name from the left, and in small letters from the right what it is."""
    metrics, middle = painter.fontMetrics(), Qt.AlignmentFlag.AlignVCenter
    name = metrics.elidedText(stop.thing.name, Qt.TextElideMode.ElideRight, cell.width())
    painter.drawText(cell, middle | Qt.AlignmentFlag.AlignLeft, name)
    small = font_of(TypeSize.CAPTION)
    room = cell.width() - metrics.horizontalAdvance(name) - UNIT
    beside = QFontMetrics(small).elidedText(stop.beside, Qt.TextElideMode.ElideRight, max(0, room))
    if len(beside) > 1:  # an ellipsis alone says nothing
        painter.setFont(small)
        painter.setPen(QColor(tones.nav_muted))
        painter.drawText(cell, middle | Qt.AlignmentFlag.AlignRight, beside)


def _beside(thing: Thing, snapshot: Snapshot) -> str:
    """What a thing is, in a few words."""
    match thing.sort:
        case "bottle":
            bottle = snapshot.bottle_by_id[int(str(thing.identity))]
            left = quantity(bottle.level.amount, bottle.product.unit)
            state = bottle.level.state
            sort = tr("bottle") if bottle.product.unit == "ml" else tr("pantry")
            told = f"{sort}, {tr(STATES[state])}"
            return told if state == "empty" else f"{told}, {left}"
        case "shoot":
            shoot = next(each for each in snapshot.shoots if each.id == thing.identity)
            return tr("shoot, {day}", day=day_said(shoot.on))
        case "drink":
            spec = next(each for each in snapshot.all_specs if each.name == thing.identity)
            return tr("classic") if spec.classic else tr("your own spec")
    family = family_of(str(thing.identity), snapshot.knowledge.tree)
    return tr("ingredient, {family}", family=family) if family else tr("ingredient")


def _english(action: QAction) -> str:
    """What a command is called in English: it is remembered, and found, by that as well."""
    said = action.text()
    return bare(in_english(said) if in_english(said) != said else in_english(words_of(action)))


def _reason(action: QAction) -> str:
    said = held_for(action) or str(action.property("unless") or "") or tr(CANNOT)
    return said.rstrip(".")


def _how_many(many: int) -> str:
    return tr("1 found") if many == 1 else tr("{many} found", many=many)


_STEPS: Mapping[int, int] = {
    Qt.Key.Key_Down: 1,
    Qt.Key.Key_Up: -1,
    Qt.Key.Key_Tab: 1,
    Qt.Key.Key_Backtab: -1,
}
