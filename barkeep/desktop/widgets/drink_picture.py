"""A drink in its glass, painted: the glass in profile, what is in it, and what stands on it."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass
from math import cos, pi, sin, sqrt
from typing import TYPE_CHECKING
from zlib import crc32

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QBrush, QColor, QLinearGradient, QPainter, QPainterPath, QPen

from barkeep.desktop.look.tones import Tones, blend, read_tones
from barkeep.desktop.widgets.glass import Place, liquid_colour, outline_of
from barkeep.desktop.widgets.picture import Picture, svg_of
from barkeep.translation import tr_noop

if TYPE_CHECKING:
    from barkeep.domain.drink.looks import Form, Stuff
    from barkeep.domain.drink.picture import DrawnGarnish, DrinkPicture

NAME = tr_noop("The drink in its glass")
ABOVE_CM, BESIDE_CM = 4.2, 1.6
"""Room above the brim for what stands on it, and beside the glass for a handle."""
LEAST_TALL_CM = 17.0
"""A smaller glass is not drawn as large as a tall one."""
BUBBLES = 14
"""As many bubbles tell that it sparkles."""

SCATTERED = 0.618033988749895
"""Multiples of this, their whole parts left off, lie evenly and in no pattern."""


class DrinkPictureView(Picture):
    """Shows a drink; nothing at all where there is no picture of it."""

    def __init__(self, high: int = 152) -> None:
        super().__init__(NAME)
        self.shown: DrinkPicture | None = None
        """What is drawn."""
        self._high = high

    def show_picture(self, picture: DrinkPicture | None) -> None:
        """Draw another drink."""
        self.shown = picture
        self.setVisible(picture is not None)
        self.show_words("" if picture is None else picture.in_words)

    def sizeHint(self) -> QSize:
        return QSize(round(self._high * 0.8), self._high)

    def draw(self, painter: QPainter, rect: QRectF, tones: Tones) -> None:
        if self.shown is not None:
            draw_drink(painter, rect, self.shown, tones)


def drink_svg(drink: DrinkPicture) -> str:
    """A drink as an SVG element that stands in a page on white paper, beside others of its like."""
    size, tones = QSize(180, 225), read_tones("light")
    room = QRectF(0.0, 0.0, size.width(), size.height())
    written = svg_of(
        size, lambda painter: draw_drink(painter, room, drink, tones), title="", words=""
    ).decode()
    element = _NAMING.sub("", written[written.index("<svg") :]).strip()
    # What is named in it (a cup's shine) must have another name in each drink of a page.
    own = f"d{crc32(drink.in_words.encode()):08x}-"
    return _NAMED.sub(lambda found: f"{found[1]}{own}{found[2]}", element)


_NAMING = re.compile(r"<(title|desc)>.*?</\1>\s*", re.DOTALL)
_NAMED = re.compile(r"(\bid=\"|url\(#)([\w-]+)")


def draw_drink(painter: QPainter, rect: QRectF, drink: DrinkPicture, tones: Tones) -> None:
    """Draw a drink into `rect`, its glass standing on the lower edge."""
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    place = _place_in(rect, drink)
    inside = outline_of(drink.vessel.profile.stations, place)
    _draw_behind(painter, drink, place, tones)
    if drink.vessel.made_of == "glass":
        _draw_inside(painter, drink, place, inside, tones=tones)
    else:
        _draw_outside(painter, drink, place, inside, tones=tones)
    _draw_stand(painter, drink, place, tones)
    _draw_rim(painter, drink, place)
    _draw_garnishes(painter, drink, place, tones)
    if drink.hot:
        _draw_steam(painter, drink, place, tones)
    painter.restore()


def _place_in(rect: QRectF, drink: DrinkPicture) -> Place:
    tall = max(LEAST_TALL_CM, drink.vessel.profile.brim_cm + ABOVE_CM)
    wide = 2.0 * BESIDE_CM + max(each.width_cm for each in drink.vessel.profile.stations)
    scale = min(rect.height() / tall, rect.width() / wide)
    return Place(rect.center().x(), rect.bottom() - 1.5, scale)


def _draw_inside(
    painter: QPainter, drink: DrinkPicture, place: Place, inside: QPainterPath, *, tones: Tones
) -> None:
    closed = QPainterPath(inside)
    closed.closeSubpath()
    glass = QColor(tones.glass)
    glass.setAlphaF(0.10)
    painter.fillPath(closed, glass)
    painter.save()
    painter.setClipPath(closed)
    _draw_liquid(painter, drink, place)
    _draw_ice(painter, drink, place, tones)
    _draw_bubbles(painter, drink, place)
    _draw_foam(painter, drink, place)
    painter.restore()
    painter.setPen(QPen(QColor(tones.glass), 1.6))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawPath(inside)


def _draw_liquid(painter: QPainter, drink: DrinkPicture, place: Place) -> None:
    wide = max(each.width_cm for each in drink.vessel.profile.stations)
    foot = drink.vessel.profile.base_cm
    for layer in drink.layers:
        top = place.at(-wide, layer.top_cm)
        box = QRectF(top, place.at(wide, foot))
        painter.fillRect(box, QBrush(liquid_colour(layer.tint)))
        foot = layer.top_cm
    if drink.layers:
        painter.setPen(QPen(liquid_colour(drink.layers[-1].tint).darker(135), 1.0))
        painter.drawLine(place.at(-wide, drink.surface_cm), place.at(wide, drink.surface_cm))


def _scattered(count: int, seed: int) -> Iterator[tuple[float, float]]:
    """Places from 0 to 1 either way, always the same ones."""
    for number in range(count):
        yield ((number + seed) * SCATTERED) % 1.0, ((number * number + seed) * SCATTERED**2) % 1.0


def _width_at(drink: DrinkPicture, height_cm: float) -> float:
    return 2.0 * sqrt(drink.vessel.profile.area_at(height_cm) / pi)


def _draw_ice(painter: QPainter, drink: DrinkPicture, place: Place, tones: Tones) -> None:
    if drink.ice == "none":
        return
    frost = QColor("#ffffff")
    frost.setAlphaF(0.2 if drink.ice == "crushed" else 0.4)
    edge = blend(tones.glass, "#ffffff", 0.45)
    painter.setBrush(frost)
    painter.setPen(QPen(edge, 1.0))
    if drink.ice == "large":
        side = drink.ice_side_cm
        foot = max(drink.vessel.profile.base_cm, drink.surface_cm - 0.917 * side)
        _draw_cube(painter, place.at(0.0, foot + side / 2.0), side * place.scale, 4.0)
        return
    _draw_heap(painter, drink, place)


def _draw_heap(painter: QPainter, drink: DrinkPicture, place: Place) -> None:
    """Pieces in rows from the bottom to just above the liquid, or heaped above the brim."""
    side, profile = drink.ice_side_cm, drink.vessel.profile
    heaped = drink.ice == "crushed"
    top = profile.brim_cm + (0.6 if heaped else -0.6)
    top = top if heaped else min(top, drink.surface_cm + 0.8)
    row, height = 0, profile.base_cm + side / 2.0
    while height < top:
        wide = max(0.0, _width_at(drink, min(height, profile.brim_cm)) - side * 0.8)
        fit = max(1, int(wide / side) + 1)
        for number in range(fit):
            shift = ((row * 7 + number * 3) % 5 - 2) * 0.06 * side
            x = 0.0 if fit == 1 else -wide / 2.0 + wide * number / (fit - 1)
            tilt = ((row * 31 + number * 17) % 9 - 4) * 7.0
            _draw_cube(
                painter, place.at(x + shift, height + shift), side * 0.92 * place.scale, tilt
            )
        row, height = row + 1, height + side * 0.98


def _draw_cube(painter: QPainter, middle: QPointF, side: float, tilt: float) -> None:
    """A piece of ice; in pixels and degrees."""
    painter.save()
    painter.translate(middle)
    painter.rotate(tilt)
    painter.drawRoundedRect(QRectF(-side / 2, -side / 2, side, side), side * 0.16, side * 0.16)
    painter.restore()


def _draw_bubbles(painter: QPainter, drink: DrinkPicture, place: Place) -> None:
    if not drink.bubbles or not drink.layers:
        return
    base, top = drink.vessel.profile.base_cm, drink.surface_cm
    painter.setPen(QPen(QColor(255, 255, 255, 170), 0.9))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    for across, up in _scattered(BUBBLES, 3):
        height = base + (top - base) * (0.08 + 0.88 * up)
        x = (across - 0.5) * _width_at(drink, height) * 0.86
        painter.drawEllipse(place.at(x, height), 1.0 + 1.1 * up, 1.0 + 1.1 * up)


def _draw_foam(painter: QPainter, drink: DrinkPicture, place: Place) -> None:
    if drink.foam_cm <= 0.0 or not drink.layers:
        return
    wide = _width_at(drink, drink.vessel.profile.brim_cm) + 2.0
    box = QRectF(
        place.at(-wide, drink.surface_cm + drink.foam_cm), place.at(wide, drink.surface_cm)
    )
    foam = blend(drink.layers[-1].tint.hex, "#fffaf0", 0.18)
    painter.fillRect(box, foam)
    painter.setPen(QPen(foam.darker(112), 0.9))
    for across, up in _scattered(18, 5):
        x = box.left() + box.width() * across
        painter.drawPoint(QPointF(x, box.top() + box.height() * (0.1 + 0.8 * up)))


_METAL: Mapping[Stuff, str] = {"glass": "#000000", "metal": "#b9bcb6", "ceramic": "#b5764c"}


def _draw_outside(
    painter: QPainter, drink: DrinkPicture, place: Place, inside: QPainterPath, *, tones: Tones
) -> None:
    """A cup that shows nothing of what is in it but what stands above its brim."""
    _draw_above_brim(painter, drink, place, tones)
    closed = QPainterPath(inside)
    closed.closeSubpath()
    bounds = closed.boundingRect()
    shine = QLinearGradient(bounds.topLeft(), bounds.topRight())
    colour = QColor(_METAL[drink.vessel.made_of])
    for where, factor in ((0.0, 118), (0.25, 88), (0.6, 108), (1.0, 138)):
        shine.setColorAt(where, colour.darker(factor))
    painter.fillPath(closed, shine)
    painter.setPen(QPen(QColor(tones.glass), 1.6))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawPath(closed)


def _draw_above_brim(painter: QPainter, drink: DrinkPicture, place: Place, tones: Tones) -> None:
    if drink.ice != "crushed":
        return
    frost = QColor("#ffffff")
    frost.setAlphaF(0.8)
    painter.setBrush(frost)
    painter.setPen(QPen(blend(tones.glass, "#ffffff", 0.5), 1.0))
    brim = drink.vessel.profile.brim_cm
    wide = _width_at(drink, brim)
    for number in range(9):
        x = (number / 8.0 - 0.5) * wide * 0.84
        _draw_cube(
            painter,
            place.at(x, brim + 0.75 * cos(x / wide * pi)),
            place.scale,
            number * 37.0 % 60.0,
        )


def _draw_stand(painter: QPainter, drink: DrinkPicture, place: Place, tones: Tones) -> None:
    """Stem and foot, the thick base of a tumbler, and a handle."""
    vessel, base = drink.vessel, drink.vessel.profile.base_cm
    painter.setPen(QPen(QColor(tones.glass), 1.6))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    if vessel.stem_cm:
        stem, foot = vessel.stem_cm / 2.0, vessel.foot_cm / 2.0
        for side in (-1.0, 1.0):
            path = QPainterPath(place.at(side * stem, base))
            path.cubicTo(
                place.at(side * stem * 0.55, base * 0.6),
                place.at(side * stem * 0.6, 0.7),
                place.at(side * foot, 0.0),
            )
            painter.drawPath(path)
        painter.drawLine(place.at(-foot, 0.0), place.at(foot, 0.0))
    elif vessel.made_of == "glass":
        wide = vessel.profile.stations[0].width_cm / 2.0 + 0.25
        painter.drawPolyline(
            [place.at(-wide, base), place.at(-wide, 0.0), place.at(wide, 0.0), place.at(wide, base)]
        )
    if vessel.handle:
        _draw_handle(painter, drink, place)


def _draw_handle(painter: QPainter, drink: DrinkPicture, place: Place) -> None:
    base, brim = drink.vessel.profile.base_cm, drink.vessel.profile.brim_cm
    high, low = base + (brim - base) * 0.82, base + (brim - base) * 0.3
    start, end = _width_at(drink, high) / 2.0, _width_at(drink, low) / 2.0
    path = QPainterPath(place.at(start, high))
    path.cubicTo(
        place.at(start + 2.2, high + 0.2), place.at(end + 2.2, low - 0.2), place.at(end, low)
    )
    painter.setPen(QPen(painter.pen().color(), 2.6))
    painter.drawPath(path)


def _draw_rim(painter: QPainter, drink: DrinkPicture, place: Place) -> None:
    if drink.rim is None:
        return
    colour, brim = QColor(drink.rim), drink.vessel.profile.brim_cm
    painter.setPen(QPen(colour.darker(125), 0.6))
    painter.setBrush(colour)
    half = _width_at(drink, brim) / 2.0
    for side in (-1.0, 1.0):
        for number in range(7):
            x = side * (half - 0.12 + 0.24 * ((number * SCATTERED) % 1.0))
            painter.drawEllipse(place.at(x, brim - 0.55 + 0.1 * number), 1.7, 1.7)


def _draw_behind(painter: QPainter, drink: DrinkPicture, place: Place, tones: Tones) -> None:
    """What leans in the glass behind the liquid: a straw."""
    if not drink.straw:
        return
    base, brim = drink.vessel.profile.base_cm, drink.vessel.profile.brim_cm
    half = _width_at(drink, brim) / 2.0
    pen = QPen(QColor(tones.accent), max(2.0, 0.42 * place.scale))
    pen.setCapStyle(Qt.PenCapStyle.RoundCap)
    painter.setPen(pen)
    painter.drawLine(place.at(-half * 0.1, base + 0.4), place.at(half * 0.62, brim + 3.4))


def _draw_steam(painter: QPainter, drink: DrinkPicture, place: Place, tones: Tones) -> None:
    brim = drink.vessel.profile.brim_cm
    steam = QColor(tones.muted)
    steam.setAlphaF(0.55)
    painter.setPen(QPen(steam, 1.4))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    for x in (-1.5, 0.0, 1.5):
        path = QPainterPath(place.at(x, brim + 0.5))
        path.cubicTo(
            place.at(x + 0.9, brim + 1.3), place.at(x - 0.9, brim + 2.1), place.at(x, brim + 3.0)
        )
        painter.drawPath(path)


@dataclass(frozen=True, slots=True)
class _Piece:
    """One piece of a garnish: where it is drawn, how many pixels a centimetre is, which it is."""

    at: QPointF
    cm: float
    colour: QColor
    number: int

    def off(self, x_cm: float, y_cm: float) -> QPointF:
        """A place so far to the right and down from it."""
        return self.at + QPointF(x_cm, y_cm) * self.cm


Draws = Callable[[QPainter, _Piece], None]


def _draw_garnishes(painter: QPainter, drink: DrinkPicture, place: Place, tones: Tones) -> None:
    for number, each in enumerate(drink.garnishes):
        where = _where(each, number, drink)
        for piece in range(each.pieces):
            x, y = where(piece)
            colour = QColor(each.colour)
            painter.setPen(QPen(colour.darker(150), 1.0))
            painter.setBrush(colour)
            _FORMS[each.form](painter, _Piece(place.at(x, y), place.scale, colour, piece))


def _where(
    garnish: DrawnGarnish, number: int, drink: DrinkPicture
) -> Callable[[int], tuple[float, float]]:
    """Where its pieces go: in the drink, on its surface, or on the rim, each side in turn."""
    brim = drink.vessel.profile.brim_cm
    surface = min(brim, drink.surface_cm + drink.foam_cm)
    seen = drink.vessel.made_of == "glass"
    half = _width_at(drink, brim) / 2.0
    side = 1.0 if number % 2 == 0 else -1.0
    if garnish.form in _SUNK and seen:
        low = max(drink.vessel.profile.base_cm + 0.9, surface - 1.6)
        return lambda piece: ((piece - (garnish.pieces - 1) / 2.0) * 1.5, low)
    if garnish.form in ("leaves", "sprig", "flower", "beans", "dust"):
        on_top = max(surface, brim - 0.8) if garnish.form in ("leaves", "sprig") else surface
        top = brim + 0.3 if drink.ice == "crushed" or not seen else on_top
        return lambda piece: ((piece - (garnish.pieces - 1) / 2.0) * 1.1 - 0.25 * half, top)
    if garnish.form == "blade":
        return lambda piece: (-side * half * 0.45 + 0.8 * piece, brim)
    return lambda piece: (side * (half - 0.1) - 0.5 * piece * side, brim + 0.1 + 0.4 * piece)


_SUNK = ("olive", "onion", "cherry")


def _draw_peel(painter: QPainter, piece: _Piece) -> None:
    pen = QPen(piece.colour, 0.55 * piece.cm)
    pen.setCapStyle(Qt.PenCapStyle.RoundCap)
    painter.setPen(pen)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    path = QPainterPath(piece.off(-1.3, 0.5))
    path.cubicTo(
        piece.off(-0.6, -1.6),
        piece.off(0.5, 0.9),
        piece.off(0.9, -1.0),
    )
    painter.drawPath(path)


def _draw_wheel(painter: QPainter, piece: _Piece) -> None:
    radius = 1.9 * piece.cm
    middle = piece.off(0.0, -0.8)
    painter.drawEllipse(middle, radius, radius)
    painter.setBrush(piece.colour.lighter(135))
    painter.setPen(QPen(QColor("#fff8e6"), 0.16 * piece.cm))
    painter.drawEllipse(middle, radius * 0.84, radius * 0.84)
    for spoke in range(8):
        angle = spoke * pi / 4.0 + 0.2
        painter.drawLine(middle, middle + QPointF(cos(angle), sin(angle)) * radius * 0.78)


def _draw_wedge(painter: QPainter, piece: _Piece) -> None:
    middle = piece.off(0.0, -0.2)
    box = QRectF(
        middle.x() - 1.7 * piece.cm, middle.y() - 1.7 * piece.cm, 3.4 * piece.cm, 3.4 * piece.cm
    )
    painter.drawChord(box, 20 * 16, 180 * 16)
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(piece.colour.lighter(140))
    painter.drawChord(
        box.adjusted(0.25 * piece.cm, 0.25 * piece.cm, -0.25 * piece.cm, -0.25 * piece.cm),
        20 * 16,
        180 * 16,
    )


def _draw_slice(painter: QPainter, piece: _Piece) -> None:
    painter.save()
    painter.translate(piece.at)
    painter.rotate(24.0 + 14.0 * piece.number)
    painter.drawEllipse(QPointF(0.0, -0.8 * piece.cm), 0.7 * piece.cm, 1.8 * piece.cm)
    painter.restore()


def _draw_round(painter: QPainter, piece: _Piece) -> None:
    painter.drawEllipse(piece.at, 0.75 * piece.cm, 0.75 * piece.cm)
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(piece.colour.lighter(165))
    painter.drawEllipse(piece.off(-0.25, -0.28), 0.17 * piece.cm, 0.17 * piece.cm)


def _draw_cherry(painter: QPainter, piece: _Piece) -> None:
    pen = painter.pen()
    painter.setPen(QPen(piece.colour.darker(170), 0.12 * piece.cm))
    stalk = QPainterPath(piece.at)
    stalk.quadTo(piece.off(0.1, -1.4), piece.off(0.9, -2.0))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawPath(stalk)
    painter.setPen(pen)
    painter.setBrush(piece.colour)
    _draw_round(painter, piece)


def _draw_olive(painter: QPainter, piece: _Piece) -> None:
    painter.drawEllipse(piece.at, 0.95 * piece.cm, 0.72 * piece.cm)
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(QColor("#b9402c"))
    painter.drawEllipse(piece.off(0.68, 0.0), 0.22 * piece.cm, 0.22 * piece.cm)


def _draw_berry(painter: QPainter, piece: _Piece) -> None:
    middle = piece.off(-0.4, -0.3)
    painter.drawEllipse(middle, 0.85 * piece.cm, 0.95 * piece.cm)
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(piece.colour.lighter(150))
    for across, up in _scattered(7, 2):
        painter.drawEllipse(
            middle + QPointF((across - 0.5) * 1.1 * piece.cm, (up - 0.5) * 1.2 * piece.cm),
            0.1 * piece.cm,
            0.1 * piece.cm,
        )


def _draw_leaves(painter: QPainter, piece: _Piece) -> None:
    for turn, long in ((-64.0, 1.7), (58.0, 1.7), (-28.0, 2.3), (26.0, 2.2), (0.0, 2.6)):
        painter.save()
        painter.translate(piece.at)
        painter.rotate(turn)
        leaf = QPainterPath(QPointF(0.0, 0.0))
        leaf.cubicTo(
            0.9 * piece.cm,
            -0.4 * long * piece.cm,
            0.6 * piece.cm,
            -0.9 * long * piece.cm,
            0.0,
            -long * piece.cm,
        )
        leaf.cubicTo(
            -0.6 * piece.cm,
            -0.9 * long * piece.cm,
            -0.9 * piece.cm,
            -0.4 * long * piece.cm,
            0.0,
            0.0,
        )
        painter.drawPath(leaf)
        painter.drawLine(QPointF(0.0, 0.0), QPointF(0.0, -0.8 * long * piece.cm))
        painter.restore()


def _draw_sprig(painter: QPainter, piece: _Piece) -> None:
    painter.setPen(QPen(piece.colour.darker(130), 0.2 * piece.cm))
    top = piece.off(0.9, -3.2)
    painter.drawLine(piece.at, top)
    for step in range(1, 9):
        stem = piece.at + (top - piece.at) * (step / 8.0)
        for side in (-1.0, 1.0):
            painter.drawLine(stem, stem + QPointF(side * 0.6 * piece.cm, -0.35 * piece.cm))


def _draw_flower(painter: QPainter, piece: _Piece) -> None:
    for petal in range(5):
        angle = petal * 2.0 * pi / 5.0 - pi / 2.0
        painter.drawEllipse(
            piece.at + QPointF(cos(angle), sin(angle)) * 0.65 * piece.cm,
            0.48 * piece.cm,
            0.48 * piece.cm,
        )
    painter.setBrush(QColor("#f0d060"))
    painter.drawEllipse(piece.at, 0.3 * piece.cm, 0.3 * piece.cm)


def _draw_blade(painter: QPainter, piece: _Piece) -> None:
    painter.save()
    painter.translate(piece.at)
    painter.rotate(-9.0 + 7.0 * piece.number)
    blade = QRectF(-0.42 * piece.cm, -3.4 * piece.cm, 0.84 * piece.cm, 4.4 * piece.cm)
    painter.drawRoundedRect(blade, 0.36 * piece.cm, 0.36 * piece.cm)
    painter.restore()


def _draw_beans(painter: QPainter, piece: _Piece) -> None:
    painter.drawEllipse(piece.at, 0.5 * piece.cm, 0.24 * piece.cm)


def _draw_dust(painter: QPainter, piece: _Piece) -> None:
    painter.setPen(Qt.PenStyle.NoPen)
    for across, up in _scattered(26, 1):
        grain = QPointF((across - 0.35) * 4.0 * piece.cm, -up * 0.28 * piece.cm)
        painter.drawEllipse(piece.at + grain, 0.9, 0.9)


def _draw_piece(painter: QPainter, piece: _Piece) -> None:
    painter.drawRoundedRect(
        QRectF(
            piece.at.x() - 0.9 * piece.cm,
            piece.at.y() - 1.1 * piece.cm,
            1.5 * piece.cm,
            1.3 * piece.cm,
        ),
        0.3 * piece.cm,
        0.3 * piece.cm,
    )


_FORMS: Mapping[Form, Draws] = {
    "peel": _draw_peel,
    "wheel": _draw_wheel,
    "wedge": _draw_wedge,
    "slice": _draw_slice,
    "cherry": _draw_cherry,
    "olive": _draw_olive,
    "onion": _draw_round,
    "berry": _draw_berry,
    "leaves": _draw_leaves,
    "sprig": _draw_sprig,
    "flower": _draw_flower,
    "blade": _draw_blade,
    "beans": _draw_beans,
    "dust": _draw_dust,
    "piece": _draw_piece,
}
