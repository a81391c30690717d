"""What can be done with a bottle: one action each, for the Bar menu, the list and the details."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass

from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import QMenu, QPushButton, QWidget

from barkeep.desktop.icons import wear
from barkeep.desktop.widgets.buttons import button


@dataclass(frozen=True, slots=True)
class Doing:
    """An action's name, its words in menus and on a button, its shortcut and its picture."""

    key: str
    words: str
    shortcut: str
    picture: str = ""
    brief: str = ""


DOINGS = (
    Doing("shelf", "Count the &shelf", "Ctrl+Shift+C", "count"),
    Doing("count", "&Count bottle…", "Ctrl+Shift+B", "count", "Count…"),
    Doing("open", "&Open", "Ctrl+Shift+O", "open-bottle"),
    Doing("pour", "&Pour…", "Ctrl+Shift+P", "pour"),
    Doing("waste", "&Waste…", "Ctrl+Shift+W"),
    Doing("empty", "&Empty", "Ctrl+Shift+E"),
    Doing("correct", "Co&rrect…", "Ctrl+Shift+K"),
    Doing("tare", "Weigh it e&mpty…", "", "scale"),
    Doing("full", "Weigh it &full…", "", "scale"),
    Doing("dasher", "Set its das&her…", ""),
    Doing("label", "Change its &label…", ""),
    Doing("again", "Receive a&nother", "Ctrl+Shift+R", "bottles", "Receive"),
    Doing("add", "&Add bottle…", "Ctrl+N", "add"),
    Doing("remove", "Remo&ve", "Del", "remove"),
    Doing("up", "Move &up the shelf", "Alt+Up", "chevron-up"),
    Doing("down", "Move &down the shelf", "Alt+Down", "chevron-down"),
    Doing("write", "Confirm the coun&ts…", "Ctrl+Return", "check"),
    Doing("leave", "&Leave the count\tEsc", "", "clear"),
)
GROUPS = (
    ("shelf", "write", "leave"),
    ("count", "open", "pour", "waste", "empty", "correct"),
    ("tare", "full", "dasher", "label"),
    ("add", "again", "remove"),
    ("up", "down"),
)
OF_ONE_BOTTLE = (
    *("count", "open", "pour", "waste", "empty", "correct"),
    *("tare", "full", "dasher", "label"),
    *("again", "remove"),
)
OF_THE_COUNT = ("write", "leave")
IN_THE_LIST = (*OF_ONE_BOTTLE, "up", "down")


class BottleActions:
    """The actions of the Bottles page by key; `parent` owns them."""

    def __init__(self, parent: QWidget, does: dict[str, Callable[[], object]]) -> None:
        self._parent = parent
        self._actions: dict[str, QAction] = {}
        for each in DOINGS:
            action = QAction(each.words, parent)
            if each.shortcut:
                action.setShortcuts(_keys(each.shortcut))
            if each.picture:
                wear(action, each.picture)
            action.triggered.connect(_calling(does[each.key]))
            self._actions[each.key] = action

    def __getitem__(self, key: str) -> QAction:
        return self._actions[key]

    def in_menu_order(self) -> Iterator[QAction]:
        """The actions as the Bar menu lists them, in groups."""
        for group in GROUPS:
            yield from (self._actions[key] for key in group)
            if group is not GROUPS[-1]:
                line = QAction(self._parent)
                line.setSeparator(True)
                yield line

    def allow(self, *, counting: bool) -> None:
        """While the shelf is counted only the count's own actions can be taken, else all others."""
        for key, action in self._actions.items():
            action.setEnabled((key in OF_THE_COUNT) == counting)

    def push_button(self, key: str) -> QPushButton:
        """A button that does what the action does, and says its shortcut."""
        action = self._actions[key]
        words = action.text().replace("&", "")
        brief = next(each.brief for each in DOINGS if each.key == key)
        made = button(brief or words, action.trigger)
        keys = action.shortcut().toString(QKeySequence.SequenceFormat.NativeText)
        made.setAccessibleName(words)
        made.setToolTip(f"{words} ({keys})" if keys else words)
        return made

    def menu_button(self, keys: Sequence[str]) -> QPushButton:
        """A button that offers actions in a menu of its own."""
        made = QPushButton("More")
        made.setAccessibleName("More for this bottle")
        menu = QMenu(made)
        menu.addActions([self._actions[key] for key in keys])
        made.setMenu(menu)
        return made


def _keys(shortcut: str) -> list[QKeySequence]:
    keys = [QKeySequence(shortcut)]
    if shortcut == "Ctrl+Return":
        keys.append(QKeySequence("Ctrl+Enter"))  # the one of the number pad
    return keys


def _calling(act: Callable[[], object]) -> Callable[[], None]:
    """Without the checked state that Qt hands over."""

    def call() -> None:
        act()

    return call
