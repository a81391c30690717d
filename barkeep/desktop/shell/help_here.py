"""F1: the help on where the keyboard is, in the window and in its dialogs."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Qt
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QApplication, QMenu, QWidget
from shiboken6 import isValid

from barkeep.desktop.widgets.terms import explained_by
from barkeep.documents.help.glossary import FIRST_PAGE, word_called

if TYPE_CHECKING:
    from barkeep.desktop.shell.help_window import HelpWindow

KEY = "F1"


def place_of(widget: QWidget | None) -> str:
    """What tells of a widget: the word it explains, else of the part, page or dialog around it."""
    from barkeep.documents.help.pages import shipped_help  # need not be there at first

    pages = shipped_help()
    while widget is not None:
        word = word_called(explained_by(widget))
        if word is not None:
            return word.place
        # A dialog that nothing tells of by name is told of as what it is made from.
        kinds = type(widget).__mro__ if widget.isWindow() else (type(widget),)
        place = pages.place_of([each.__name__ for each in kinds])
        if place is not None:
            return place
        widget = widget.parentWidget()
    return FIRST_PAGE


class HelpHere(QObject):
    """One help window for one main window, and its key in each dialog that gets the keyboard.

    A dialog holds up the keys of the window behind it, so it is given the key itself.
    """

    def __init__(self, window: QWidget) -> None:
        super().__init__(window)
        self._window = window
        self._help: HelpWindow | None = None
        application = QApplication.instance()
        assert isinstance(application, QApplication)
        application.focusChanged.connect(self._on_focus)

    @property
    def shown(self) -> HelpWindow | None:
        """The help window, once there is one."""
        return self._help if self._help is not None and isValid(self._help) else None

    def show_here(self) -> None:
        """Show what tells of where the keyboard is."""
        top = QApplication.activeWindow() or self._window
        self.show_place(place_of(top.focusWidget() or self._page_of(top)))

    def show_place(self, place: str) -> None:
        """Show one place of the help, before whatever is there."""
        from barkeep.desktop.shell.help_window import HelpWindow  # as above

        shown = self.shown
        over = QApplication.activeModalWidget()
        holds_up_all = over is not None and (
            over.windowModality() == Qt.WindowModality.ApplicationModal
        )
        if shown is None or (holds_up_all and shown.parentWidget() is not over):
            self.close()
            shown = self._help = HelpWindow(over if holds_up_all else None)
        shown.go(place)
        shown.show()
        shown.raise_()
        shown.activateWindow()
        shown.page.setFocus(Qt.FocusReason.OtherFocusReason)

    def close(self) -> None:
        """Close it with the window it belongs to."""
        if (shown := self.shown) is not None:
            shown.close()
            shown.deleteLater()
        self._help = None

    def _page_of(self, top: QWidget) -> QWidget:
        current = getattr(top, "current", None)
        return current if isinstance(current, QWidget) else top

    def _on_focus(self, _old: QWidget | None, now: QWidget | None) -> None:
        top = None if now is None else now.window()
        if top is None or top is self._window or top is self._help or isinstance(top, QMenu):
            return
        if not self._belongs_here(top) or top.findChild(QShortcut, KEY) is not None:
            return
        key = QShortcut(QKeySequence(KEY), top)
        key.setObjectName(KEY)
        key.activated.connect(self.show_here)

    def _belongs_here(self, top: QWidget) -> bool:
        parent = top.parentWidget()
        return parent is not None and (
            parent.window() is self._window or self._belongs_here(parent.window())
        )
