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
from barkeep.translation import tr, tr_noop

Keys = QKeySequence.StandardKey
Shortcut = QKeySequence | QKeySequence.StandardKey | str | None
WHAT_IF, AS_IT_IS = tr_noop("&What if…"), tr_noop("&Back to the bar as it is")
THEME_WORDS: Mapping[ThemeChoice, str] = {
    "system": tr_noop("&As the system"),
    "light": tr_noop("&Light"),
    "dark": tr_noop("&Dark"),
    "contrast": tr_noop("&High contrast"),
}
TEXT_SIZE_WORDS: Mapping[TextSize, str] = {
    "plain": tr_noop("&As the system"),
    "larger": tr_noop("&Larger"),
    "large": tr_noop("L&arge"),
    "largest": tr_noop("&Twice as large"),
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
        for action, word, label, unless in (
            (self.undo, tr("&Undo"), undo, tr("There is nothing to undo")),
            (self.redo, tr("&Redo"), redo, tr("There is nothing to redo")),
        ):
            action.setText(word if label is None else f"{word}: {label.replace('&', '&&')}")
            offer(action, unless if label is None else "")

    def hold(self, reason: str) -> None:
        """Offer nothing that writes to the bar, or writes out what it holds, for a reason."""
        for each in (
            *(self.import_files, self.import_specs, self.paste, self.export_bottles),
            *(self.publish, self.backups, self.settings, self.undo, self.redo),
            *(self.removed, self.make),
        ):
            hold(each, reason)
        self.what_if.setText(tr(AS_IT_IS if reason else WHAT_IF))

    def _make_file(self) -> None:
        menu = self._menu(tr("&File"))
        self.new_bar = self._add(menu, tr("&New bar…"), None)
        self.open_bar = self._add(menu, tr("&Open bar…"), Keys.Open)
        self.open_server_bar = self._add(menu, tr("Open bar on a se&rver…"), None)
        menu.addSeparator()
        self.import_files = self._add(menu, tr("&Import bottles…"), "Ctrl+I", "import")
        self.import_specs = self._add(menu, tr("I&mport specs…"), "Ctrl+Shift+I", "import")
        self.export_bottles = self._add(menu, tr("&Export bottles…"), None, "export")
        self.publish = self._add(menu, tr("&Print and publish…"), Keys.Print, "print")
        self.export_everything = self._add(menu, tr("Export e&verything…"), None, "export")
        self.back_up = self._add(menu, tr("&Back up…"), None, "export")
        self.backups = self._add(menu, tr("Bac&kups…"), "Ctrl+Shift+U", "history")
        menu.addSeparator()
        self.settings = self._add(menu, tr("&Settings…"), "Ctrl+,", "settings")
        # Plain X11 binds nothing to QKeySequence.Quit, nor to Preferences.
        self.quit = self._add(menu, tr("&Quit"), "Ctrl+Q")

    def _make_edit(self) -> None:
        menu = self._menu(tr("&Edit"))
        self.undo = self._add(menu, tr("&Undo"), Keys.Undo, "undo")
        self.redo = self._add(menu, tr("&Redo"), "Ctrl+Shift+Z", "redo")
        for each, word in ((self.undo, tr("Undo")), (self.redo, tr("Redo"))):
            each.setToolTip(word)  # or it would be what the menu names first, for good
        self.removed = self._add(menu, tr("&Bring back…"), None, "history")
        menu.addSeparator()
        self.copy = self._add(menu, tr(COPY), Keys.Copy)
        self.copy_csv = self._add(menu, tr(COPY_CSV), None)
        self.paste = self._add(menu, tr("&Paste specs…"), Keys.Paste)
        self.find = self._add(menu, tr("&Find"), Keys.Find, "search")
        self.find_next = self._add(menu, tr("Find &next"), "F3")
        self.find_previous = self._add(menu, tr("Find pr&evious"), "Shift+F3")
        self.find_anything = self._add(menu, tr("Find an&ything…"), "Ctrl+K", "search")

    def _make_view(self, pages: Sequence[Page], parts: Sequence[Page]) -> None:
        menu = self._menu(tr("&View"))
        group = QActionGroup(self)
        for number, page in enumerate(pages, 1):
            words, keys = f"&{number} {tr(page.title)}", f"Ctrl+{number}"
            group.addAction(self._add_page(menu, page, words, keys))
        menu.addSeparator()
        for part in parts:
            group.addAction(self._add_page(menu, part, tr(part.title), part.shortcut))
        menu.addSeparator()
        self._make_themes(menu.addMenu(tr("&Theme")))
        self._make_text_sizes(menu.addMenu(tr("Te&xt size")))
        self._make_languages(menu.addMenu(tr("&Language")))
        self.reset_columns = self._add(menu, tr("Reset &columns"), None)
        self.read_again = self._add(menu, tr("&Read again"), Keys.Refresh)

    def _add_page(self, menu: QMenu, page: Page, words: str, shortcut: str) -> QAction:
        action = self._add(menu, words, shortcut)
        action.setCheckable(True)
        self._ask_on(action, self.page_wanted.emit, page.key)
        self.pages[page.key] = action
        return action

    def _make_themes(self, menu: QMenu) -> None:
        group = QActionGroup(self)
        for choice in CHOICES:
            action = self._add(menu, tr(THEME_WORDS[choice]), None)
            action.setCheckable(True)
            group.addAction(action)
            self._ask_on(action, self.theme_wanted.emit, choice)
            self.themes[choice] = action

    def _make_text_sizes(self, menu: QMenu) -> None:
        group = QActionGroup(self)
        for size in TEXT_SIZES:
            action = self._add(menu, tr(TEXT_SIZE_WORDS[size]), None)
            action.setCheckable(True)
            group.addAction(action)
            self._ask_on(action, self.text_size_wanted.emit, size)
            self.text_sizes[size] = action

    def _make_languages(self, menu: QMenu) -> None:
        group = QActionGroup(self)
        for choice, words in {SYSTEM: tr("&As the system"), **LANGUAGES}.items():
            action = self._add(menu, words, None)
            action.setCheckable(True)
            group.addAction(action)
            self._ask_on(action, self.language_wanted.emit, choice)
            self.languages[choice] = action

    def _make_bar(self) -> None:
        self.bar_menu = self._menu(tr("&Bar"))
        self._after_page = self.bar_menu.addSeparator()
        self.make = self._add(self.bar_menu, tr("&Make something here…"), "Ctrl+M", "house-made")
        self.shopping = self._add(self.bar_menu, tr("&Shopping list…"), "Ctrl+L", "price")
        self.evening = self._add(
            self.bar_menu, tr("What an evenin&g cost…"), "Ctrl+Shift+D", "price"
        )
        self.what_if = self._add(self.bar_menu, tr(WHAT_IF), "F4", "stand-ins")
        self.check = self._add(self.bar_menu, tr("C&heck this bar"), None, "check")

    def _make_help(self) -> None:
        menu = self._menu(tr("&Help"))
        self.help = self._add(menu, tr("&Help on this"), "F1", "info")
        self.help_pages = self._add(menu, tr("&Contents of the help"), None)
        self.shortcuts = self._add(menu, tr("&Keyboard shortcuts"), "Ctrl+?")
        self.changes = self._add(menu, tr("What is &new"), None)
        self.about = self._add(menu, tr("&About barkeep"), None)

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
