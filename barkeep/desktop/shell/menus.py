"""The window's menus: what each action is called, and its shortcut."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence

from PySide6.QtCore import QObject, Signal
from PySide6.QtGui import QAction, QActionGroup, QKeySequence
from PySide6.QtWidgets import QMenu, QMenuBar

from barkeep.desktop.look.icons import wear
from barkeep.desktop.look.language import LANGUAGES, SYSTEM
from barkeep.desktop.look.theme import CHOICES, TEXT_SIZES, TextSize, ThemeChoice
from barkeep.desktop.shell.navigation import Page
from barkeep.desktop.widgets.buttons import hold, offer
from barkeep.desktop.widgets.list_keys import COPY, COPY_CSV

Keys = QKeySequence.StandardKey
Shortcut = QKeySequence | QKeySequence.StandardKey | str | None
WHAT_IF, AS_IT_IS = "&What if…", "&Back to the bar as it is"
THEME_WORDS: Mapping[ThemeChoice, str] = {
    "system": "&As the system",
    "light": "&Light",
    "dark": "&Dark",
    "contrast": "&High contrast",
}
TEXT_SIZE_WORDS: Mapping[TextSize, str] = {
    "plain": "&As the system",
    "larger": "&Larger",
    "large": "L&arge",
    "largest": "&Twice as large",
}


class WindowActions(QObject):
    """Every action of the menu bar, as an attribute; the window connects them.

    `page_wanted` carries a page's key, `theme_wanted` a choice of theme and
    `text_size_wanted` one of the size of all type, `language_wanted` one of a language. The Bar
    menu starts with what the shown page offers.
    """

    page_wanted = Signal(str)
    theme_wanted = Signal(str)
    text_size_wanted = Signal(str)
    language_wanted = Signal(str)

    def __init__(self, bar: QMenuBar, pages: Sequence[Page], parts: Sequence[Page]) -> None:
        super().__init__(bar)
        self._bar = bar
        self._all: list[QAction] = []
        self._page_actions: list[QAction] = []
        self.themes: dict[str, QAction] = {}
        self.text_sizes: dict[TextSize, QAction] = {}
        self.languages: dict[str, QAction] = {}
        self.pages: dict[str, QAction] = {}
        self._make_file()
        self._make_edit()
        self._make_view(pages, parts)
        self._make_bar()
        self._make_help()

    @property
    def all(self) -> tuple[QAction, ...]:
        """Every action of the window itself."""
        return tuple(self._all)

    def offer_of_page(self, actions: Sequence[QAction]) -> None:
        """Put a page's actions first in the Bar menu, in place of another page's."""
        for old in self._page_actions:
            self.bar_menu.removeAction(old)
        self._page_actions = list(actions)
        for action in actions:
            self.bar_menu.insertAction(self._after_page, action)
        self._after_page.setVisible(bool(actions))

    def name_undo(self, undo: str | None, redo: str | None) -> None:
        """Say in the menu what would be undone and redone."""
        for action, word, label in ((self.undo, "Undo", undo), (self.redo, "Redo", redo)):
            action.setText(f"&{word}" if label is None else f"&{word}: {label.replace('&', '&&')}")
            offer(action, f"There is nothing to {word.lower()}" if label is None else "")

    def hold(self, reason: str) -> None:
        """Offer nothing that writes to the bar, or writes out what it holds, for a reason."""
        for each in (
            *(self.import_files, self.import_specs, self.paste, self.export_bottles),
            *(self.publish, self.backups, self.settings, self.undo, self.redo),
            *(self.removed, self.make),
        ):
            hold(each, reason)
        self.what_if.setText(AS_IT_IS if reason else WHAT_IF)

    def _make_file(self) -> None:
        menu = self._menu("&File")
        self.new_bar = self._add(menu, "&New bar…", None)
        self.open_bar = self._add(menu, "&Open bar…", Keys.Open)
        self.open_server_bar = self._add(menu, "Open bar on a se&rver…", None)
        menu.addSeparator()
        self.import_files = self._add(menu, "&Import bottles…", "Ctrl+I", "import")
        self.import_specs = self._add(menu, "I&mport specs…", "Ctrl+Shift+I", "import")
        self.export_bottles = self._add(menu, "&Export bottles…", None, "export")
        self.publish = self._add(menu, "&Print and publish…", Keys.Print, "print")
        self.export_everything = self._add(menu, "Export e&verything…", None, "export")
        self.back_up = self._add(menu, "&Back up…", None, "export")
        self.backups = self._add(menu, "Bac&kups…", "Ctrl+Shift+U", "history")
        menu.addSeparator()
        self.settings = self._add(menu, "&Settings…", "Ctrl+,", "settings")
        # Plain X11 binds nothing to QKeySequence.Quit, nor to Preferences.
        self.quit = self._add(menu, "&Quit", "Ctrl+Q")

    def _make_edit(self) -> None:
        menu = self._menu("&Edit")
        self.undo = self._add(menu, "&Undo", Keys.Undo, "undo")
        self.redo = self._add(menu, "&Redo", "Ctrl+Shift+Z", "redo")
        for each, word in ((self.undo, "Undo"), (self.redo, "Redo")):
            each.setToolTip(word)  # or it would be what the menu names first, for good
        self.removed = self._add(menu, "&Bring back…", None, "history")
        menu.addSeparator()
        self.copy = self._add(menu, COPY, Keys.Copy)
        self.copy_csv = self._add(menu, COPY_CSV, None)
        self.paste = self._add(menu, "&Paste specs…", Keys.Paste)
        self.find = self._add(menu, "&Find", Keys.Find, "search")
        self.find_next = self._add(menu, "Find &next", "F3")
        self.find_previous = self._add(menu, "Find pr&evious", "Shift+F3")
        self.find_anything = self._add(menu, "Find an&ything…", "Ctrl+K", "search")

    def _make_view(self, pages: Sequence[Page], parts: Sequence[Page]) -> None:
        menu = self._menu("&View")
        group = QActionGroup(self)
        for number, page in enumerate(pages, 1):
            words, keys = f"&{number} {page.title}", f"Ctrl+{number}"
            group.addAction(self._add_page(menu, page, words, keys))
        menu.addSeparator()
        for part in parts:
            group.addAction(self._add_page(menu, part, part.title, part.shortcut))
        menu.addSeparator()
        self._make_themes(menu.addMenu("&Theme"))
        self._make_text_sizes(menu.addMenu("Te&xt size"))
        self._make_languages(menu.addMenu("&Language"))
        self.reset_columns = self._add(menu, "Reset &columns", None)
        self.read_again = self._add(menu, "&Read again", Keys.Refresh)

    def _add_page(self, menu: QMenu, page: Page, words: str, shortcut: str) -> QAction:
        action = self._add(menu, words, shortcut)
        action.setCheckable(True)
        self._ask_on(action, self.page_wanted.emit, page.key)
        self.pages[page.key] = action
        return action

    def _make_themes(self, menu: QMenu) -> None:
        group = QActionGroup(self)
        for choice in CHOICES:
            action = self._add(menu, THEME_WORDS[choice], None)
            action.setCheckable(True)
            group.addAction(action)
            self._ask_on(action, self.theme_wanted.emit, choice)
            self.themes[choice] = action

    def _make_text_sizes(self, menu: QMenu) -> None:
        group = QActionGroup(self)
        for size in TEXT_SIZES:
            action = self._add(menu, TEXT_SIZE_WORDS[size], None)
            action.setCheckable(True)
            group.addAction(action)
            self._ask_on(action, self.text_size_wanted.emit, size)
            self.text_sizes[size] = action

    def _make_languages(self, menu: QMenu) -> None:
        group = QActionGroup(self)
        for choice, words in {SYSTEM: "&As the system", **LANGUAGES}.items():
            action = self._add(menu, words, None)
            action.setCheckable(True)
            group.addAction(action)
            self._ask_on(action, self.language_wanted.emit, choice)
            self.languages[choice] = action

    def _make_bar(self) -> None:
        self.bar_menu = self._menu("&Bar")
        self._after_page = self.bar_menu.addSeparator()
        self.make = self._add(self.bar_menu, "&Make something here…", "Ctrl+M", "house-made")
        self.shopping = self._add(self.bar_menu, "&Shopping list…", "Ctrl+L", "price")
        self.evening = self._add(self.bar_menu, "What an evenin&g cost…", "Ctrl+Shift+D", "price")
        self.what_if = self._add(self.bar_menu, WHAT_IF, "F4", "stand-ins")
        self.check = self._add(self.bar_menu, "C&heck this bar", None, "check")

    def _make_help(self) -> None:
        menu = self._menu("&Help")
        self.help = self._add(menu, "&Help on this", "F1", "info")
        self.help_pages = self._add(menu, "&Contents of the help", None)
        self.shortcuts = self._add(menu, "&Keyboard shortcuts", "Ctrl+?")
        self.changes = self._add(menu, "What is &new", None)
        self.about = self._add(menu, "&About barkeep", None)

    def mark_theme(self, choice: ThemeChoice) -> None:
        """Tick the theme that is chosen."""
        self.themes[choice].setChecked(True)

    def mark_text_size(self, size: TextSize) -> None:
        """Tick the size of type that is chosen."""
        self.text_sizes[size].setChecked(True)

    def mark_language(self, choice: str) -> None:
        """Tick the language that is chosen."""
        self.languages[choice].setChecked(True)

    def _menu(self, title: str) -> QMenu:
        menu = self._bar.addMenu(title)
        menu.setToolTipsVisible(True)  # which say why something is not offered
        return menu

    def _add(self, menu: QMenu, text: str, shortcut: Shortcut, picture: str = "") -> QAction:
        action = QAction(text, self)
        if shortcut is not None:
            action.setShortcut(QKeySequence(shortcut))
        if picture:
            wear(action, picture)
        menu.addAction(action)
        self._all.append(action)
        return action

    def _ask_on(self, action: QAction, ask: Callable[[str], object], what: str) -> None:
        action.triggered.connect(lambda: ask(what))
