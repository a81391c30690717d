"""What is typed to find something: it stands below until another key or Esc ends it.

No key's meaning hangs on how fast it comes, so there is no pause after which typing begins anew.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable

from PySide6.QtCore import QEvent, QObject, QPoint, Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QAbstractItemView, QComboBox, QLabel, QWidget

from barkeep.desktop.look.metrics import HALF, UNIT
from barkeep.desktop.widgets.keys import HELD
from barkeep.desktop.widgets.said_aloud import announce
from barkeep.domain.phrases import folded


class TypeAhead(QObject):
    """What is typed to one widget, which asks `takes` of each key that it does not want itself.

    `first` says where what was typed leads, None where nothing fits; `go_to` goes there.
    """

    def __init__(
        self,
        host: QWidget,
        first: Callable[[str], int | None],
        go_to: Callable[[int], object],
    ) -> None:
        super().__init__(host)
        self._host, self._first, self._go_to = host, first, go_to
        self.typed = self.given = ""
        """What is looked for, and all that was typed since the last other key."""
        self.is_kept: Callable[[str], bool] = lambda _given: False
        """Whether all that was typed belongs together though it fits nothing, as a code does."""
        self.shown = QLabel(host)
        """Says what is looked for."""
        self.shown.setObjectName("typed")
        self.shown.setTextFormat(Qt.TextFormat.PlainText)
        self.shown.setContentsMargins(UNIT, HALF, UNIT, HALF)
        self.shown.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        self.shown.hide()
        host.installEventFilter(self)

    def takes(self, event: QKeyEvent) -> bool:
        """Whether a key was meant for this; any other one ends what is typed."""
        key, text = event.key(), event.text()
        if event.modifiers() & HELD or key in _ALONE:
            return False
        if key == Qt.Key.Key_Escape and self.given:
            self.forget()
            return True
        if key == Qt.Key.Key_Backspace and self.typed:
            self.say(self.typed[:-1], self.given[:-1])
            return True
        if (text.isprintable() and text.strip()) or (text == " " and self.typed):
            self.type_on(text)
            return True
        self.forget()
        return False

    def type_on(self, text: str) -> None:
        """Look for what was typed so far and this; what fits nothing begins anew."""
        typed, given = self.typed + text, self.given + text
        found = self._first(typed)
        if found is None and not self.is_kept(given) and (anew := self._first(text)) is not None:
            typed, found = text, anew
        if found is not None:
            self._go_to(found)
        self.say(typed, given)

    def say(self, typed: str, given: str) -> None:
        """Have so much typed, without looking for it."""
        self.typed, self.given = typed, given
        self.shown.setText(typed)
        self.shown.setVisible(bool(typed))
        if typed:
            self._place()
            announce(self._host, typed)

    def forget(self) -> None:
        """Nothing is typed any more."""
        if self.given or self.typed:
            self.say("", "")

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        kind = event.type()
        if kind in (QEvent.Type.MouseButtonPress, QEvent.Type.FocusOut):
            self.forget()
        elif kind == QEvent.Type.Resize:
            self._place()
        elif kind == QEvent.Type.ShortcutOverride and self.typed and _ends(event):
            event.accept()  # a shortcut elsewhere, and here a part of what is typed
        return super().eventFilter(watched, event)

    def _place(self) -> None:
        """At the foot of what is typed to; in the window, below what is too low for that."""
        host = self._host
        self.shown.adjustSize()
        if host.height() >= 3 * self.shown.height():
            self.shown.move(HALF, host.height() - self.shown.height() - HALF)
            return
        window = host.window()
        if self.shown.parentWidget() is not window:
            self.shown.setParent(window)
            self.shown.setVisible(bool(self.typed))
        self.shown.move(host.mapTo(window, QPoint(0, host.height() + 1)))
        self.shown.raise_()


def begun_with(typed: str, names: Iterable[tuple[int, str]]) -> int | None:
    """Of numbered names the first that begins so, else the first with a word that does.

    >>> begun_with("b", enumerate(["Dry gin", "Gin, barrel-aged", "Bitters"]))
    2
    """
    by_word = None
    for number, name in names:
        plain = folded(name)
        if plain.startswith(plainly(typed)):
            return number
        if by_word is None and begins_a_word(plain, typed):
            by_word = number
    return by_word


def begins_a_word(plain: str, typed: str) -> bool:
    """Whether a name that is folded already, or a word of it, begins with what was typed."""
    wanted = plainly(typed)
    return plain.startswith(wanted) or f" {wanted}" in plain


def plainly(typed: str) -> str:
    """Folded, but with the blank that a word was ended with."""
    return folded(typed) + (" " if typed.endswith(" ") else "")


def type_to_rows(view: QAbstractItemView) -> TypeAhead:
    """Let a plain list be typed to; one with `ListKeys` is already."""

    def first(typed: str) -> int | None:
        model, at = view.model(), max(0, view.currentIndex().row())
        many = model.rowCount()
        rows = ((at + step) % many for step in range(many))
        return begun_with(typed, ((row, str(model.index(row, 0).data() or "")) for row in rows))

    def go_to(row: int) -> None:
        view.setCurrentIndex(view.model().index(row, 0))

    return _Typed(view, first, go_to)


def type_to_choices(box: QComboBox) -> None:
    """Let a choice be typed to, while it is closed and in its list; once is enough."""
    if box.isEditable() or box.findChild(_Typed) is not None:
        return

    def first(typed: str) -> int | None:
        many, at = box.count(), max(0, box.currentIndex())
        places = ((at + step) % many for step in range(many))
        return begun_with(typed, ((place, box.itemText(place)) for place in places))

    def choose(place: int) -> None:
        if place != box.currentIndex():
            box.setCurrentIndex(place)
            box.activated.emit(place)

    _Typed(box, first, choose)
    type_to_rows(box.view())


class _Typed(TypeAhead):
    """Takes the keys of a widget that knows nothing of it."""

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() == QEvent.Type.KeyPress and isinstance(event, QKeyEvent):
            return self.takes(event)
        return super().eventFilter(watched, event)


def _ends(event: QEvent) -> bool:
    ends = (Qt.Key.Key_Backspace, Qt.Key.Key_Escape)
    return isinstance(event, QKeyEvent) and event.key() in ends


_ALONE = (Qt.Key.Key_Shift, Qt.Key.Key_Control, Qt.Key.Key_Alt, Qt.Key.Key_AltGr, Qt.Key.Key_Meta)
"""Keys that do nothing by themselves, and end nothing."""
