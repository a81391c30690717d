"""What a drink comes to: its balance as a picture, its figures in a grid, and how sure they are."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, QSize, Qt, QTimer, Signal
from PySide6.QtGui import (
    QBrush,
    QColor,
    QFontMetricsF,
    QKeyEvent,
    QPainter,
    QPaintEvent,
    QPen,
    QPolygonF,
)
from PySide6.QtWidgets import QGridLayout, QLabel, QSizePolicy, QWidget

from barkeep.desktop.drink.all_cautions import ALL_CAUTIONS, AllCautionsDialog
from barkeep.desktop.drink.analysis_view import AnalysisView, BalanceBar, KinMark, every_caution
from barkeep.desktop.look.metrics import HALF, UNIT, TypeSize, font_of
from barkeep.desktop.look.sides import on_its_side, turn_about, write
from barkeep.desktop.look.tones import Tones, blend
from barkeep.desktop.widgets.buttons import button
from barkeep.desktop.widgets.labels import caption, copyable, text_label
from barkeep.desktop.widgets.layouts import at_left, column_of, laid_out_once
from barkeep.desktop.widgets.notices import announce
from barkeep.desktop.widgets.picture import Picture
from barkeep.desktop.widgets.tips import plain_tip
from barkeep.domain.drink.words import INFORMATION, Fact
from barkeep.translation import tr, tr_noop

NAME = tr_noop("Balance among its family")
TROUGH = 12.0
"""How high a trough is, in device-independent pixels."""
DOT = 1.8
MEANT = 4.0
"""So near to another drink of the family the mouse means it."""
MOST_NAMED = 6
"""So many of those that lie in one place are named."""
ROOM = 7.0
"""Above and below a trough, for the mark that stands out of it."""


class BalancePicture(Picture):
    """Draws bars; the arrow keys walk the others of the family that lie on them.

    `seen` comes once the bars of another drink are painted: only then it is worth finding out
    about the others.
    """

    seen = Signal()

    turns = True

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(NAME, parent)
        self.bars: tuple[BalanceBar, ...] = ()
        """What is drawn."""
        self.at: tuple[int, int] | None = None
        """The bar, and of its family the one that is lit."""
        self.is_new = False
        """Whether nobody has seen the drink yet."""
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def show_bars(self, bars: Sequence[BalanceBar]) -> None:
        """Draw other bars."""
        self.bars, self.at = tuple(bars), None
        said = "; ".join(bar.in_words for bar in bars)
        self.setToolTip(plain_tip(said))
        self.show_words(said)

    def says_at(self, point: QPointF) -> str:
        """Whoever of the family lies there, else the bar."""
        number = int(point.y() // self._row_height())
        if not 0 <= number < len(self.bars):
            return super().says_at(point)
        bar, trough = self.bars[number], self._trough(number)
        near = [each for each in bar.kin if abs(_place(trough, each.mark) - point.x()) <= MEANT]
        if not near or point.y() < trough.top() - ROOM:
            return bar.in_words
        near.sort(key=lambda each: abs(_place(trough, each.mark) - point.x()))
        more = [tr("and {more} more", more=len(near) - MOST_NAMED)] * (len(near) > MOST_NAMED)
        return "\n".join([*(each.in_words for each in near[:MOST_NAMED]), *more])

    def sizeHint(self) -> QSize:
        return QSize(264, round(self._row_height() * max(1, len(self.bars))))

    def minimumSizeHint(self) -> QSize:
        return QSize(160, self.sizeHint().height())

    def draw(self, painter: QPainter, rect: QRectF, tones: Tones) -> None:
        high = self._row_height()
        for number, bar in enumerate(self.bars):
            row = QRectF(0.0, number * high, rect.width(), high)
            self._draw_words(painter, row, bar, tones)
            trough = self._trough(number)
            lit = self.at[1] if self.at is not None and self.at[0] == number else None
            painter.save()
            turn_about(painter, trough)
            _draw_bar(painter, trough, bar, lit, tones=tones)
            painter.restore()

    def paintEvent(self, event: QPaintEvent) -> None:
        super().paintEvent(event)
        if self.is_new:
            self.is_new = False
            QTimer.singleShot(0, self, self.seen.emit)  # whoever hears it may be in mid-change now

    def keyPressEvent(self, event: QKeyEvent) -> None:
        steps = {
            Qt.Key.Key_Left: (0, -1),
            Qt.Key.Key_Right: (0, 1),
            Qt.Key.Key_Up: (-1, 0),
            Qt.Key.Key_Down: (1, 0),
        }
        step = steps.get(Qt.Key(event.key()))
        if step is None or not any(bar.kin for bar in self.bars):
            super().keyPressEvent(event)
            return
        row, place = self.at or (0, -1)
        row = max(0, min(len(self.bars) - 1, row + step[0]))
        kin = self.bars[row].kin
        place = max(0, min(len(kin) - 1, place + step[1]))
        self.at = (row, place)
        if kin:
            words = f"{self.bars[row].label}: {kin[place].in_words}"
            self.setAccessibleDescription(words)
            announce(self, words)
            trough = self._trough(row)
            at = QPointF(_place(trough, kin[place].mark), trough.bottom())
            self.show_tip(words, at.toPoint())
        self.update()

    def _trough(self, number: int) -> QRectF:
        top = number * self._row_height() + self._words_height() + ROOM
        return QRectF(ROOM, top, self.width() - 2 * ROOM, TROUGH)

    def _words_height(self) -> float:
        return QFontMetricsF(font_of(TypeSize.STRONG, self.font())).height()

    def _row_height(self) -> float:
        return self._words_height() + TROUGH + 2 * ROOM + HALF

    def _draw_words(self, painter: QPainter, row: QRectF, bar: BalanceBar, tones: Tones) -> None:
        """The label, the usual range in quieter letters, and the value at the right."""
        strong, quiet = (
            font_of(TypeSize.STRONG, self.font()),
            font_of(TypeSize.CAPTION, self.font()),
        )
        line = QRectF(row.left(), row.top(), row.width(), self._words_height())
        middle, right = Qt.AlignmentFlag.AlignVCenter, Qt.AlignmentFlag.AlignRight
        painter.setPen(QColor(tones.text))
        painter.setFont(strong)
        write(painter, line, middle | Qt.AlignmentFlag.AlignLeft, bar.label)
        write(painter, line, middle | right, bar.value)
        metrics = QFontMetricsF(strong)
        start = metrics.horizontalAdvance(bar.label) + UNIT
        end = metrics.horizontalAdvance(bar.value) + UNIT
        between = on_its_side(painter, line.adjusted(start, 0.0, -end, 0.0), line)
        painter.setPen(QColor(tones.muted))
        painter.setFont(quiet)
        words = QFontMetricsF(quiet).elidedText(
            bar.range_words, Qt.TextElideMode.ElideRight, between.width()
        )
        write(painter, between, middle | Qt.AlignmentFlag.AlignLeft, words)


def _draw_bar(
    painter: QPainter, trough: QRectF, bar: BalanceBar, lit: int | None, *, tones: Tones
) -> None:
    painter.setPen(QPen(QColor(tones.glass), 1))
    painter.setBrush(QColor(tones.raised))
    painter.drawRoundedRect(trough, TROUGH / 2, TROUGH / 2)
    if bar.usual is not None:
        _draw_usual(painter, trough, bar.usual, tones)
    for number, each in enumerate(bar.kin):
        _draw_kin(painter, trough, each, number, tones=tones)
    if lit is not None and lit < len(bar.kin):
        painter.setPen(QPen(QColor(tones.accent), 2))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawEllipse(_spot(trough, bar.kin[lit], lit), DOT + 3, DOT + 3)
    _draw_mark(painter, trough, bar, tones)


def _draw_usual(
    painter: QPainter, trough: QRectF, usual: tuple[float, float], tones: Tones
) -> None:
    """The usual range: tinted brass between two posts, so that colour is not the only sign."""
    left, right = (_place(trough, share) for share in usual)
    painter.fillRect(
        QRectF(left, trough.top() + 1, right - left, trough.height() - 2),
        blend(tones.liquid, tones.base, 0.45),
    )
    painter.setPen(QPen(QColor(tones.accent), 1.5))
    for post in (left, right):
        painter.drawLine(QPointF(post, trough.top() - 2), QPointF(post, trough.bottom() + 2))


def _draw_kin(
    painter: QPainter, trough: QRectF, kin: KinMark, number: int, *, tones: Tones
) -> None:
    """A dot for a classic, a ring for one of the owner's."""
    colour = QColor(tones.text)
    colour.setAlphaF(0.55)
    painter.setPen(QPen(colour, 1.2) if kin.own else Qt.PenStyle.NoPen)
    painter.setBrush(Qt.BrushStyle.NoBrush if kin.own else colour)
    painter.drawEllipse(_spot(trough, kin, number), DOT, DOT)


def _spot(trough: QRectF, kin: KinMark, number: int) -> QPointF:
    """Where it lies; neighbours a little above and below each other."""
    off = (number % 3 - 1) * TROUGH / 4.0
    return QPointF(_place(trough, kin.mark), trough.center().y() + off)


def _draw_mark(painter: QPainter, trough: QRectF, bar: BalanceBar, tones: Tones) -> None:
    """The drink: a needle with its doubt as a line through it, an arrow beyond the scale."""
    middle, x = trough.center().y(), _place(trough, bar.mark)
    colour = QColor(tones.link)
    if bar.was is not None:
        _draw_was(painter, trough, _place(trough, bar.was), x, colour=colour)
    painter.setPen(QPen(colour, 2))
    ends = [_place(trough, bar.mark + side * bar.sigma) for side in (-1.0, 1.0)]
    painter.drawLine(QPointF(ends[0], middle), QPointF(ends[1], middle))
    painter.setPen(QPen(QColor(tones.base), 1))
    painter.setBrush(QBrush(colour))
    half, tall = 5.0, TROUGH / 2 + ROOM - 2
    if bar.mark > 1.0:
        tip = QPointF(trough.right() + ROOM - 1, middle)
        back = tip.x() - 2 * half
        shape = [tip, QPointF(back, middle - tall), QPointF(back, middle + tall)]
    else:
        shape = [
            QPointF(x, middle - tall),
            QPointF(x + half, middle),
            QPointF(x, middle + tall),
            QPointF(x - half, middle),
        ]
    painter.drawPolygon(QPolygonF(shape))


def _draw_was(painter: QPainter, trough: QRectF, was: float, now: float, *, colour: QColor) -> None:
    """Where the drink stood before: a ring, with a dotted way from it to where it stands now."""
    middle = trough.center().y()
    painter.setPen(QPen(colour, 1.5, Qt.PenStyle.DotLine))
    painter.drawLine(QPointF(was, middle), QPointF(now, middle))
    painter.setPen(QPen(colour, 1.5))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawEllipse(QPointF(was, middle), TROUGH / 3, TROUGH / 3)


def _place(trough: QRectF, share: float) -> float:
    return trough.left() + max(0.0, min(1.0, share)) * trough.width()


class AnalysisPanel(QWidget):
    """Shows one view after another; its labels are kept, for it may follow every keystroke."""

    def __init__(self, view: AnalysisView | None = None, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.picture = BalancePicture()
        self._place = copyable("")
        self._ranges, self._doubts = caption(), caption()
        self._view = view
        self._general = caption()
        self._all = button(ALL_CAUTIONS, self.show_all_cautions)
        self._grid = _FactGrid()
        column_of(
            self.picture,
            self._place,
            self._ranges,
            UNIT,
            self._grid.layout,
            UNIT,
            text_label(tr("How sure this is"), TypeSize.STRONG),
            self._doubts,
            UNIT,
            self._general,
            caption(tr(INFORMATION)),
            at_left(self._all),
            on=self,
            margins=(0, HALF, 0, 0),
            gap=HALF,
        )
        if view is not None:
            self.show_view(view)

    def show_view(self, view: AnalysisView) -> None:
        """Show another drink."""
        with laid_out_once(self):
            self._show(view)

    def _show(self, view: AnalysisView) -> None:
        self.picture.show_bars(view.bars)
        self._place.setText(view.place)
        self._ranges.setText(view.ranges)
        self._ranges.setVisible(bool(view.ranges))
        self._grid.show_facts(view.facts)
        self.picture.is_new = bool(view.ranges)
        self._view = view
        self._general.setVisible(bool(view.before_anyone_drinks))
        self._general.setText(view.before_anyone_drinks)
        self._all.setVisible(bool(every_caution(view.minded, view.general)))
        self._doubts.setText("\n".join(f"• {sentence}" for sentence in view.uncertain))

    def show_bars(self, bars: Sequence[BalanceBar]) -> None:
        """Draw the bars anew, once the others of its family are known."""
        self.picture.show_bars(bars)

    def show_all_cautions(self) -> None:
        """Show every caution of the drink, with its authority."""
        if self._view is not None:
            view = self._view
            AllCautionsDialog(view.name, view.minded, view.general, self).open()


@dataclass(frozen=True, slots=True)
class _Row:
    label: QLabel
    value: QLabel
    note: QLabel

    def show_fact(self, fact: Fact | None) -> None:
        """Show a fact, or nothing at all."""
        said = ("", "", "") if fact is None else (fact.label, fact.value, fact.note)
        for label, words in zip((self.label, self.value, self.note), said, strict=True):
            label.setText(words)
            label.setVisible(bool(words))


class _FactGrid:
    """Labels at the left, what they say at the right, with a smaller note below it."""

    def __init__(self) -> None:
        self.layout = QGridLayout()
        self.layout.setContentsMargins(0, 0, 0, 0)
        self.layout.setHorizontalSpacing(UNIT + HALF)
        self.layout.setVerticalSpacing(HALF)
        self.layout.setColumnStretch(1, 1)
        self._rows: list[_Row] = []

    def show_facts(self, facts: Sequence[Fact]) -> None:
        """Show these in the order given."""
        while len(self._rows) < len(facts):
            self._rows.append(self._new_row(len(self._rows)))
        for number, row in enumerate(self._rows):
            row.show_fact(facts[number] if number < len(facts) else None)

    def _new_row(self, number: int) -> _Row:
        label = text_label("", quiet=True)
        row = _Row(label, copyable(""), caption())
        words = column_of(row.value, row.note, gap=0)
        self.layout.addWidget(label, number, 0, Qt.AlignmentFlag.AlignTop)
        self.layout.addLayout(words, number, 1)
        return row
