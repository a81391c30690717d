"""barkeep's own words, marked where a screen says them and explained where they are asked.

The explanation is a tooltip, what a screen reader says, and what F1 on the widget opens.
"""

from __future__ import annotations

from PySide6.QtCore import QRect, Qt
from PySide6.QtGui import QFocusEvent, QPainter, QPaintEvent, QPalette, QPen
from PySide6.QtWidgets import QLabel, QToolTip, QWidget

from barkeep.desktop.look.metrics import TypeSize, set_type
from barkeep.desktop.look.sides import on_its_side
from barkeep.desktop.widgets.labels import paint_from_right
from barkeep.desktop.widgets.tips import broken
from barkeep.documents.help.glossary import word_called
from barkeep.domain.phrases import capitalised
from barkeep.translation import spoken

EXPLAINS = "explains"


def meaning(name: str) -> str:
    """What one of barkeep's words means, with the word before it."""
    word = word_called(name, spoken())
    assert word is not None, name
    return f"{capitalised(word.name)}: {word.says}"


def explain(widget: QWidget, name: str) -> None:
    """Let a widget that says one of barkeep's words explain it, after what it said before."""
    told = meaning(name)
    widget.setProperty(EXPLAINS, name)
    tip, said = widget.toolTip(), widget.accessibleDescription()
    widget.setToolTip(f"{tip}\n{broken(told)}" if tip else broken(told))
    widget.setWhatsThis(told)
    widget.setAccessibleDescription(f"{said} {told}" if said else told)


def explain_instead(widget: QWidget, name: str, said: str = "") -> None:
    """Let a widget that is filled anew explain another word, an empty one for none.

    `said` is what it tells a screen reader besides.
    """
    widget.setToolTip("")
    widget.setWhatsThis("")
    widget.setAccessibleDescription(said)
    widget.setProperty(EXPLAINS, "")
    if name:
        explain(widget, name)


def word_in(heading: str) -> str:
    """The word of barkeep's own that a heading begins with, up to a comma; empty for none.

    >>> word_in("Ledger, 8 entries"), word_in("Method")
    ('ledger', '')
    """
    word = word_called(heading.partition(",")[0], spoken())
    return "" if word is None else word.key


def explained_by(widget: QWidget) -> str:
    """The word that a widget explains; empty for none."""
    found = widget.property(EXPLAINS)
    return found if isinstance(found, str) else ""


class TermLabel(QLabel):
    """Words with dots below them where what they mean is explained, here or beside them."""

    def __init__(
        self, text: str = "", size: TypeSize = TypeSize.BODY, *, quiet: bool = False
    ) -> None:
        super().__init__(text)
        self._is_marked = False
        if quiet:
            self.setForegroundRole(QPalette.ColorRole.PlaceholderText)
        self.setTextFormat(Qt.TextFormat.PlainText)
        set_type(self, size)

    def mark(self, is_marked: bool = True) -> None:
        """Draw the dots, or take them away."""
        self._is_marked = is_marked
        self.update()

    def explain(self, name: str) -> None:
        """Explain a word from now on, also to the Tab key and F1; an empty one for none."""
        if explained_by(self) == name:
            return
        self.mark(bool(name))
        explain_instead(self, name)
        policy = Qt.FocusPolicy
        self.setFocusPolicy(policy.TabFocus if name else policy.NoFocus)

    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        if self.toolTip():
            QToolTip.showText(self.mapToGlobal(self.rect().bottomLeft()), self.toolTip(), self)

    def focusOutEvent(self, event: QFocusEvent) -> None:
        super().focusOutEvent(event)
        QToolTip.hideText()

    def paintEvent(self, event: QPaintEvent) -> None:
        if self.isRightToLeft():
            paint_from_right(self)
        else:
            super().paintEvent(event)
        if not self._is_marked:
            return
        painter, roles, has_focus = QPainter(self), QPalette.ColorRole, self.hasFocus()
        colour = self.palette().color(roles.Accent if has_focus else roles.PlaceholderText)
        style = Qt.PenStyle.SolidLine if has_focus else Qt.PenStyle.DotLine
        painter.setPen(QPen(colour, 1, style))
        room = self.contentsRect()
        words = self.fontMetrics().size(Qt.TextFlag.TextShowMnemonic, self.text())
        # A label that is as high as a field has its words in the middle of it.
        base = min(room.center().y() + words.height() // 2, room.bottom())
        line = QRect(room.left(), base, min(words.width(), room.width()), 1)
        line = on_its_side(painter, line, room)
        painter.drawLine(line.topLeft(), line.topRight())
