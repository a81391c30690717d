"""The shelf as a picture: each bottle in its shape at its place, with what is in it.

Boards of equal cells, filled in the owner's order; only what is seen is painted. What a search
leaves out is dimmed. The bottles are walked by the arrow keys and moved by dragging.
"""

from __future__ import annotations

from collections.abc import Callable, Collection, Mapping, Sequence
from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRect, QRectF, QSize, Qt, Signal
from PySide6.QtGui import (
    QColor,
    QFontMetricsF,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPainterPath,
    QPaintEvent,
    QPen,
    QPolygonF,
    QResizeEvent,
    QTextLayout,
    QTextOption,
)
from PySide6.QtWidgets import QApplication, QFrame, QScrollArea, QSizePolicy, QWidget

from barkeep.desktop.bottles.rows import (
    BottleRow,
    level_in_words,
    marks_of,
    use_by_in_words,
)
from barkeep.desktop.look.metrics import HALF, RADIUS, UNIT, TypeSize, font_of, scaled
from barkeep.desktop.look.tones import Tones, current_tones
from barkeep.desktop.widgets.glass import Place, liquid_colour, outline_of
from barkeep.desktop.widgets.notices import announce
from barkeep.desktop.widgets.picture import Picture
from barkeep.desktop.widgets.type_ahead import TypeAhead, plainly
from barkeep.domain.drink.looks import shipped_looks
from barkeep.domain.drink.shelf import Standing, standing
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import counted, folded
from barkeep.translation import tr, tr_noop

NAME = tr_noop("The shelf")
CELL, TALL = 88, 104
"""How wide a bottle's cell is, and how high the room for a bottle."""
TALLEST_CM = 31.0
"""A bottle as tall fills that room; a taller one is drawn smaller."""
LINES = 2
"""A name takes so many lines below the board."""
DIMMED = 0.28
"""How much is left to see of what a search leaves out."""


@dataclass(frozen=True, slots=True)
class _Grid:
    """Where the cells lie: so many side by side, each so wide and high."""

    across: int
    wide: float
    high: float

    def cell(self, number: int) -> QRectF:
        row, column = divmod(number, self.across)
        return QRectF(column * self.wide, HALF + row * self.high, self.wide, self.high)

    def nearest(self, point: QPointF) -> tuple[int, bool]:
        """The cell at a point or beside it, and whether the point is in its right half."""
        row = max(0, int((point.y() - HALF) // self.high))
        column = min(max(0, int(point.x() // self.wide)), self.across - 1)
        return row * self.across + column, point.x() - column * self.wide > self.wide / 2.0


class ShelfPicture(Picture):
    """Tells by their ids which bottle is `chosen`, `opened` (Enter, a second click) and `moved`.

    `moved` carries the bottle and the one it is put before, None for behind all others;
    `in_view` where the chosen one stands, `panned` by how far the shelf itself is dragged.
    """

    chosen = Signal(int)
    opened = Signal(int)
    moved = Signal(int, object)
    in_view = Signal(QRect)
    panned = Signal(int)

    def __init__(self) -> None:
        super().__init__(tr(NAME))
        self.rows: tuple[BottleRow, ...] = ()
        """The bottles, left to right and board by board."""
        self.lit: Collection[int] = frozenset()
        """The ids of those that a search and the filters leave."""
        self.may_move = True
        self._at: int | None = None
        self._tree: FamilyTree | None = None
        self._drawn: dict[int, tuple[BottleRow, Standing]] = {}
        self._pressed: QPointF | None = None
        self._held: int | None = None
        self._over: int | None = None
        self._typing = _TypedOnShelf(self, self._begun_with, self._go_to)
        self.take_code: Callable[[str], bool] = lambda _text: False
        """Asked on Enter whether what was typed is a code, and taken as one."""
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        policy = QSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Preferred)
        policy.setHeightForWidth(True)
        self.setSizePolicy(policy)

    # What it is told

    def show_rows(self, rows: Sequence[BottleRow], tree: FamilyTree) -> None:
        """Stand these on the boards in this order; the chosen bottle stays so."""
        kept = self.current
        if tree is not self._tree:
            self._drawn.clear()
        self.rows, self._tree, self._held = tuple(rows), tree, None
        there = {each.bottle.id for each in rows}
        self._drawn = {key: each for key, each in self._drawn.items() if key in there}
        self._at = None if kept is None else self._place_of(kept.bottle.id)
        self._say()

    def light(self, lit: Collection[int]) -> None:
        """Dim all but these."""
        self.lit = lit
        self._say()

    def choose(self, bottle_id: int | None) -> None:
        """Mark one, and bring it into view."""
        self._at = None if bottle_id is None else self._place_of(bottle_id)
        self.update()
        if self._at is not None:
            self.in_view.emit(self._grid().cell(self._at).toAlignedRect())

    @property
    def current(self) -> BottleRow | None:
        """The bottle that is marked."""
        return None if self._at is None else self.rows[self._at]

    # What it says

    def says_at(self, point: QPointF) -> str:
        number = self._number_at(point)
        return super().says_at(point) if number is None else words_of(self.rows[number])

    def _say(self) -> None:
        lit = sum(each.bottle.id in self.lit for each in self.rows)
        bottles = counted(len(self.rows), "bottle")
        if lit == len(self.rows):
            self.show_words(tr("{bottles} in the order of the shelf", bottles=bottles))
            return
        told = tr_noop("{bottles} in the order of the shelf, {lit} lit by the search")
        self.show_words(tr(told, bottles=bottles, lit=lit))

    # How it is laid out

    def hasHeightForWidth(self) -> bool:
        return True

    def heightForWidth(self, width: int) -> int:
        grid = self._grid(width)
        boards = -(-len(self.rows) // grid.across)
        return round(2 * HALF + boards * grid.high)

    def sizeHint(self) -> QSize:
        return QSize(scaled(CELL), self.heightForWidth(max(self.width(), scaled(CELL))))

    def minimumSizeHint(self) -> QSize:
        return QSize(scaled(CELL), scaled(CELL))

    def _grid(self, width: int | None = None) -> _Grid:
        room = self.width() if width is None else width
        across = max(1, room // scaled(CELL))
        words = LINES * QFontMetricsF(font_of(TypeSize.CAPTION)).lineSpacing()
        return _Grid(across, room / across, scaled(TALL) + UNIT + words + UNIT)

    def _place_of(self, bottle_id: int) -> int | None:
        return next((n for n, each in enumerate(self.rows) if each.bottle.id == bottle_id), None)

    def _number_at(self, point: QPointF) -> int | None:
        number, _right = self._grid().nearest(point)
        inside = number < len(self.rows) and self._grid().cell(number).contains(point)
        return number if inside else None

    # How it is drawn

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        self._draw_boards(painter, self._grid(), QRectF(event.rect()), current_tones())

    def draw(self, painter: QPainter, rect: QRectF, tones: Tones) -> None:
        self._draw_boards(painter, self._grid(round(rect.width())), rect, tones)

    def _draw_boards(self, painter: QPainter, grid: _Grid, seen: QRectF, tones: Tones) -> None:
        painter.setFont(font_of(TypeSize.CAPTION))
        first = max(0, int((seen.top() - HALF) // grid.high)) * grid.across
        last = (int((seen.bottom() - HALF) // grid.high) + 1) * grid.across
        for number in range(first, min(last, len(self.rows))):
            self._draw_cell(painter, grid.cell(number), number, tones)
        if self._over is not None and self._held is not None:
            self._draw_gap(painter, grid, tones)

    def _draw_cell(self, painter: QPainter, cell: QRectF, number: int, tones: Tones) -> None:
        row = self.rows[number]
        board = cell.top() + scaled(TALL) + HALF
        self._draw_ground(painter, cell, number, tones)
        painter.setPen(_board_pen(tones))
        painter.drawLine(QPointF(cell.left(), board), QPointF(cell.right(), board))
        painter.save()
        painter.setOpacity(1.0 if row.bottle.id in self.lit else DIMMED)
        stands = self._standing(row)
        high = scaled(TALL) - UNIT
        scale = high / max(TALLEST_CM, stands.tall_cm)
        place = Place(cell.center().x(), board - 1.0, scale)
        sealed = row.bottle.level.state == "sealed"
        draw_standing(painter, place, stands, sealed=sealed, tones=tones)
        _draw_marks(painter, QRectF(cell.left(), board - high, cell.width(), high), row, tones)
        below = QRectF(cell.left() + 3, board + 3, cell.width() - 6, cell.bottom() - board - 3)
        painter.setPen(QColor(tones.on_highlight if number == self._at else tones.text))
        _draw_name(painter, below, row.bottle.product.name)
        painter.restore()

    def _draw_ground(self, painter: QPainter, cell: QRectF, number: int, tones: Tones) -> None:
        if number != self._at:
            return
        ground = cell.adjusted(1, 1, -1, -3)
        shape = QPainterPath()
        shape.addRoundedRect(ground, RADIUS, RADIUS)
        painter.fillPath(shape, QColor(tones.highlight))
        if self.hasFocus():
            painter.setPen(QPen(QColor(tones.accent), 2))
            painter.drawPath(shape)

    def _draw_gap(self, painter: QPainter, grid: _Grid, tones: Tones) -> None:
        """Where the bottle that is held would come to stand."""
        over = self._over or 0
        at_end = over == len(self.rows)
        cell = grid.cell(over - 1 if at_end else over)
        x = cell.right() - 2 if at_end else cell.left() + 2
        painter.setPen(QPen(QColor(tones.accent), 4))
        painter.drawLine(QPointF(x, cell.top()), QPointF(x, cell.top() + scaled(TALL)))

    def _standing(self, row: BottleRow) -> Standing:
        """How a bottle looks, worked out once it is seen and while it stays as it is."""
        known = self._drawn.get(row.bottle.id)
        if known is None or known[0].bottle is not row.bottle:
            assert self._tree is not None
            known = row, standing(row.bottle, self._tree, shipped_looks())
            self._drawn[row.bottle.id] = known
        return known[1]

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        if self._at is not None:  # it stands elsewhere on boards of another length
            self.in_view.emit(self._grid().cell(self._at).toAlignedRect())

    # The mouse

    def mousePressEvent(self, event: QMouseEvent) -> None:
        if event.button() != Qt.MouseButton.LeftButton:
            return
        self._pressed = QPointF(event.position())
        number = self._number_at(self._pressed)
        if number is not None:
            self._go_to(number)

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        number = self._number_at(QPointF(event.position()))
        if number is not None and event.button() == Qt.MouseButton.LeftButton:
            self._pressed = None
            self.opened.emit(self.rows[number].bottle.id)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        if self._pressed is None:
            return
        at = QPointF(event.position())
        taken = self._number_at(self._pressed)
        if taken is None:
            self.panned.emit(round(self._pressed.y() - at.y()))
            return
        far = (at - self._pressed).manhattanLength() >= QApplication.startDragDistance()
        if self._held is None and far and self.may_move:
            self._held = taken
            self.setCursor(Qt.CursorShape.ClosedHandCursor)
        if self._held is not None:
            self._over = self._gap_at(at)
            self.in_view.emit(QRect(at.toPoint(), QSize(1, 1)))
            self.update()

    def mouseReleaseEvent(self, _event: QMouseEvent) -> None:
        held, over = self._held, self._over
        self._let_go()
        if held is not None and over is not None and over not in (held, held + 1):
            before = None if over == len(self.rows) else self.rows[over].bottle.id
            self.moved.emit(self.rows[held].bottle.id, before)

    def _let_go(self) -> None:
        self._pressed = self._held = self._over = None
        self.unsetCursor()
        self.update()

    def _gap_at(self, point: QPointF) -> int:
        number, right = self._grid().nearest(point)
        return min(number + right, len(self.rows))

    # The keyboard

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key = Qt.Key(event.key())
        if key == Qt.Key.Key_Escape and self._held is not None:
            self._let_go()
        elif key in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and self.current is not None:
            self._enter(self.current)
        elif key in _STEPS and not event.modifiers() & ~_TYPING:
            self._typing.forget()
            self._walk(key)
        elif not self._typing.takes(event):
            super().keyPressEvent(event)

    def _enter(self, current: BottleRow) -> None:
        """Take what was typed as a code, as a reader types one, or open the bottle."""
        given = self._typing.given
        self._typing.forget()
        if not (given and self.take_code(given)):
            self.opened.emit(current.bottle.id)

    def _walk(self, key: Qt.Key) -> None:
        place = _STEPS[key](self._at, self._lit_places(), self._grid().across)
        if place is not None:
            self._go_to(place)

    def _lit_places(self) -> list[int]:
        return [n for n, each in enumerate(self.rows) if each.bottle.id in self.lit]

    def _begun_with(self, typed: str) -> int | None:
        """The next lit bottle whose name begins so; of a letter typed again, the one after."""
        wanted, start = plainly(typed), -1 if self._at is None else self._at
        if len(set(wanted)) == 1:
            wanted = wanted[0]
        elif self._at is not None:
            start -= 1
        lit = self._lit_places()
        order = [n for n in lit if n > start] + [n for n in lit if n <= start]
        return next((n for n in order if _begins(self.rows[n], wanted)), None)

    def _go_to(self, number: int) -> None:
        self._at = number
        bottle_id = self.rows[number].bottle.id
        self.choose(bottle_id)
        announce(self, words_of(self.rows[number]))
        self.chosen.emit(bottle_id)


class _TypedOnShelf(TypeAhead):
    """What is typed to the picture, said at the foot of what is seen of it."""

    def __init__(
        self,
        picture: ShelfPicture,
        first: Callable[[str], int | None],
        go_to: Callable[[int], object],
    ) -> None:
        super().__init__(picture, first, go_to)
        self._picture = picture

    def _place(self) -> None:
        seen = self._picture.visibleRegion().boundingRect()
        self.shown.adjustSize()
        self.shown.move(seen.left() + HALF, seen.bottom() - self.shown.height() - HALF)


class Shelf(QScrollArea):
    """The picture of the shelf, as wide as there is room and scrolled down."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.picture = ShelfPicture()
        self.setAccessibleName(tr(NAME))
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setFocusProxy(self.picture)
        self.setWidgetResizable(True)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.viewport().setAutoFillBackground(False)
        self.setWidget(self.picture)
        self.picture.setAutoFillBackground(False)  # a scroll area fills what it is given
        self.picture.in_view.connect(self._bring_into_view)
        self.picture.panned.connect(self._pan)

    def _bring_into_view(self, cell: QRect) -> None:
        for corner in (cell.bottomLeft(), cell.topLeft()):
            self.ensureVisible(corner.x(), corner.y(), 0, HALF)

    def _pan(self, by: int) -> None:
        scroll = self.verticalScrollBar()
        scroll.setValue(scroll.value() + by)


def _board_pen(tones: Tones) -> QPen:
    solid, flat = Qt.PenStyle.SolidLine, Qt.PenCapStyle.FlatCap  # or cells would show their joints
    return QPen(QColor(tones.glass), 2.0, solid, flat)


def words_of(row: BottleRow) -> str:
    """A bottle for those who do not see it, and what the mouse says of it."""
    product = row.bottle.product
    marks = [word for _mark, word in marks_of(row)]
    last = use_by_in_words(row)
    said = [product.title, row.ingredient, level_in_words(row.bottle), *marks]
    said += [tr("use by {last}", last=last)] if last and not row.past else [last] if last else []
    said.append(tr("place {place}", place=row.place))
    return "; ".join(dict.fromkeys(said))


_TYPING = Qt.KeyboardModifier.ShiftModifier | Qt.KeyboardModifier.KeypadModifier
Step = Callable[[int | None, Sequence[int], int], int | None]


def _along(by: int) -> Step:
    """One lit bottle further, or back."""

    def step(at: int | None, lit: Sequence[int], _across: int) -> int | None:
        beyond = [n for n in lit if at is None or (n - at) * by > 0]
        return (beyond[0] if by > 0 else beyond[-1]) if beyond else None

    return step


def _boards(by: int) -> Step:
    """The lit bottle nearest above or below, on the next board that has one."""

    def step(at: int | None, lit: Sequence[int], across: int) -> int | None:
        if at is None:
            return lit[0] if lit else None
        row, column = divmod(at, across)
        others = [n for n in lit if (n // across - row) * by > 0]
        near = min((abs(n // across - row) for n in others), default=0)
        on_it = [n for n in others if abs(n // across - row) == near]
        return min(on_it, key=lambda n: abs(n % across - column), default=None)

    return step


_STEPS: Mapping[Qt.Key, Step] = {
    Qt.Key.Key_Left: _along(-1),
    Qt.Key.Key_Right: _along(1),
    Qt.Key.Key_Up: _boards(-1),
    Qt.Key.Key_Down: _boards(1),
    Qt.Key.Key_Home: lambda _at, lit, _across: lit[0] if lit else None,
    Qt.Key.Key_End: lambda _at, lit, _across: lit[-1] if lit else None,
}


def _begins(row: BottleRow, wanted: str) -> bool:
    product = row.bottle.product
    return any(folded(each).startswith(wanted) for each in (product.name, product.title))


def draw_standing(
    painter: QPainter, place: Place, stands: Standing, *, sealed: bool, tones: Tones
) -> None:
    """Draw a bottle, a jar or a bowl with what is in it, standing on the board."""
    inside = outline_of(stands.inside, place)
    closed = QPainterPath(inside)
    closed.closeSubpath()
    glass = QColor(tones.glass)
    glass.setAlphaF(0.14)
    painter.fillPath(closed, glass)
    if stands.form == "bowl":
        _draw_pieces(painter, place, stands)
    else:
        _draw_liquid(painter, place, stands, closed, tones=tones)
    painter.setPen(QPen(QColor(tones.glass), 1.4))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawPath(inside)
    if stands.form != "bowl":
        _draw_closure(painter, place, stands, sealed=sealed, tones=tones)


def _draw_liquid(
    painter: QPainter, place: Place, stands: Standing, inside: QPainterPath, *, tones: Tones
) -> None:
    foot = stands.inside[0].height_cm
    if stands.surface_cm <= foot:
        return
    wide = max(each.width_cm for each in stands.inside)
    box = QRectF(place.at(-wide, stands.surface_cm), place.at(wide, foot))
    within = QPainterPath()
    within.addRect(box)
    filled = inside.intersected(within)
    painter.fillPath(filled, _seen_through(tones))
    painter.fillPath(filled, liquid_colour(stands.tint))
    painter.save()
    painter.setClipPath(inside, Qt.ClipOperation.IntersectClip)
    painter.setPen(QPen(QColor(tones.text), 1.4))
    painter.drawLine(box.topLeft(), box.topRight())
    painter.restore()


def _seen_through(tones: Tones) -> QColor:
    """What lies behind a liquid that is clear as water, so that its level is seen."""
    behind = QColor(tones.glass)
    behind.setAlphaF(0.3)
    return behind


def _draw_closure(
    painter: QPainter, place: Place, stands: Standing, *, sealed: bool, tones: Tones
) -> None:
    """A capsule down the neck while it is sealed, a stopper once it is open."""
    brim = stands.inside[-1]
    down = 0.13 * brim.height_cm if sealed and stands.form == "bottle" else 0.0
    wide = brim.width_cm + (0.9 if sealed else 0.5)
    high = stands.tall_cm - brim.height_cm + down
    middle = stands.tall_cm - high / 2.0
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(QColor(tones.accent if sealed else tones.muted))
    painter.drawRoundedRect(place.box(0.0, middle, wide, max(high, 1.2)), 1.5, 1.5)
    painter.setBrush(Qt.BrushStyle.NoBrush)


_HEAP = ((-3.0, 2.6), (0.0, 2.4), (3.0, 2.6), (-1.6, 4.9), (1.6, 4.9), (0.0, 7.0), (3.6, 5.2))
"""Where pieces lie in a bowl, the lowest first; from its middle and the board, in cm."""


def _draw_pieces(painter: QPainter, place: Place, stands: Standing) -> None:
    colour = QColor.fromRgbF(*stands.tint.rgb)
    painter.setPen(QPen(colour.darker(160), 1.0))
    painter.setBrush(colour)
    for x, y in _HEAP[: stands.pieces]:
        painter.drawEllipse(place.at(x, y), 1.7 * place.scale, 1.6 * place.scale)
    painter.setBrush(Qt.BrushStyle.NoBrush)


def _draw_marks(painter: QPainter, room: QRectF, row: BottleRow, tones: Tones) -> None:
    """Beside the neck, a shape and its word for each thing there is to know."""
    small = painter.fontMetrics()
    top = room.top()
    for mark, word in marks_of(row):
        wide = small.horizontalAdvance(word)
        right = min(room.right() - 3, room.center().x() + BESIDE_NECK + wide)
        painter.setPen(QColor(_MARK_TONES[mark](tones)))
        words = QRectF(right - wide, top + MARK + 1, wide, small.height())
        painter.drawText(words, int(Qt.AlignmentFlag.AlignCenter), word)
        _draw_mark(painter, QPointF(words.center().x(), top + MARK / 2.0), mark, tones)
        top = words.bottom() + 2


BESIDE_NECK = 11.0
MARK = 10.0
"""How large the shape of a mark is, in pixels."""

_MARK_TONES: Mapping[str, Callable[[Tones], str]] = {
    "past": lambda tones: tones.danger,
    "due": lambda tones: tones.warning,
    "low": lambda tones: tones.info,
    "empty": lambda tones: tones.muted,
}


def _draw_mark(painter: QPainter, at: QPointF, mark: str, tones: Tones) -> None:
    """Past: a cross. Due: a triangle standing. Low: one on its tip. Empty: a ring."""
    half = MARK / 2.0
    colour = QColor(_MARK_TONES[mark](tones))
    painter.setPen(QPen(colour, 2.2))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    if mark == "past":
        for way in (-1.0, 1.0):
            corner = QPointF(half - 1, way * (half - 1))
            painter.drawLine(at + corner, at - corner)
    elif mark == "empty":
        painter.drawEllipse(at, half - 1.2, half - 1.2)
    else:
        way = 1.0 if mark == "low" else -1.0
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(colour)
        corners = ((-half, -half * way), (half, -half * way), (0.0, half * way))
        painter.drawPolygon(QPolygonF([at + QPointF(*each) for each in corners]))
    painter.setBrush(Qt.BrushStyle.NoBrush)


def _draw_name(painter: QPainter, room: QRectF, name: str) -> None:
    """A name in two lines, the second cut where it is longer."""
    small = painter.fontMetrics()
    layout = QTextLayout(name, painter.font())
    option = QTextOption()
    option.setWrapMode(QTextOption.WrapMode.WrapAtWordBoundaryOrAnywhere)
    layout.setTextOption(option)
    layout.beginLayout()
    top = room.top()
    for number in range(LINES):
        line = layout.createLine()
        if not line.isValid():
            break
        line.setLineWidth(room.width())
        rest = name[line.textStart() :]
        shown = rest[: line.textLength()].strip()
        if number == LINES - 1:
            shown = small.elidedText(rest.strip(), Qt.TextElideMode.ElideRight, int(room.width()))
        painter.drawText(
            QRectF(room.left(), top, room.width(), small.height()),
            int(Qt.AlignmentFlag.AlignHCenter | Qt.TextFlag.TextDontClip),
            shown,
        )
        top += small.lineSpacing()
    layout.endLayout()
