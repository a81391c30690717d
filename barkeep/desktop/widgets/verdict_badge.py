"""A drink's verdict as a shape and a word, so that colour is never the only sign."""

from __future__ import annotations

from PySide6.QtCore import QRect, QSize, Qt
from PySide6.QtGui import QColor, QFont, QFontMetrics, QPainter, QPaintEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from barkeep.desktop.look.icons import pixmap
from barkeep.desktop.look.metrics import HALF, PAD, UNIT, scaled
from barkeep.desktop.look.sides import on_its_side, write
from barkeep.desktop.look.tones import Tones, blend, current_tones
from barkeep.domain.pouring.verdict import VERDICT_WORDS, Verdict
from barkeep.translation import tr

SHAPE = 16
"""The edge of the shape, in pixels of plain type."""


def verdict_icon(verdict: Verdict) -> str:
    """The name of a verdict's picture."""
    return f"verdict-{verdict.replace('_', '-')}"


def _name(verdict: Verdict) -> str:
    return tr(VERDICT_WORDS[verdict].name)


def verdict_width(verdict: Verdict, font: QFont) -> int:
    """How wide shape and word are together, in pixels."""
    return scaled(SHAPE) + UNIT + QFontMetrics(font).horizontalAdvance(_name(verdict))


def draw_verdict(
    painter: QPainter,
    cell: QRect,
    verdict: Verdict,
    font: QFont,
    tones: Tones,
    *,
    selected: bool = False,
) -> None:
    """Draw shape and word where `cell` begins, centred in its height."""
    colour = tones.on_highlight if selected else str(getattr(tones, verdict))
    paper = tones.highlight if selected else tones.base
    ratio = painter.device().devicePixelRatio()
    painter.save()
    edge = scaled(SHAPE)
    shape = QRect(cell.left(), cell.top() + (cell.height() - edge) // 2, edge, edge)
    painter.drawPixmap(
        on_its_side(painter, shape, cell),
        pixmap(verdict_icon(verdict), colour=colour, size=edge, ratio=ratio, paper=paper),
    )
    painter.setFont(font)
    painter.setPen(QColor(colour))
    place = on_its_side(painter, cell.adjusted(edge + UNIT, 0, 0, 0), cell)
    words = QFontMetrics(font).elidedText(
        _name(verdict), Qt.TextElideMode.ElideRight, place.width()
    )
    write(painter, place, Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft, words)
    painter.restore()


class VerdictBadge(QWidget):
    """One verdict on its own, in a tinted pill."""

    def __init__(self, verdict: Verdict, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)
        self.show_verdict(verdict)

    def show_verdict(self, verdict: Verdict) -> None:
        """Show another verdict."""
        self._verdict = verdict
        self.setAccessibleName(_name(verdict))
        meaning = tr(VERDICT_WORDS[verdict].meaning)
        self.setAccessibleDescription(meaning)
        self.setToolTip(meaning)
        self.updateGeometry()
        self.update()

    def sizeHint(self) -> QSize:
        width = verdict_width(self._verdict, self.font()) + PAD + HALF
        return QSize(width, max(scaled(SHAPE), self.fontMetrics().height()) + UNIT)

    def paintEvent(self, _event: QPaintEvent) -> None:
        tones = current_tones()
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(blend(str(getattr(tones, self._verdict)), tones.base, 0.12))
        radius = self.height() / 2
        painter.drawRoundedRect(self.rect(), radius, radius)
        inside = self.rect().adjusted(UNIT + HALF // 2, 0, -UNIT, 0)
        inside = on_its_side(painter, inside, self.rect())
        draw_verdict(painter, cell=inside, verdict=self._verdict, font=self.font(), tones=tones)
