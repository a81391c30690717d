"""The window's menus: what each action is called, its shortcut, and what it starts."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QMimeData, QObject, Signal
from PySide6.QtGui import QAction, QActionGroup, QGuiApplication, QKeySequence
from PySide6.QtWidgets import QFileDialog, QMenu, QMenuBar, QMessageBox

from barkeep.application import paths
from barkeep.application.spec_imports import NamedText
from barkeep.desktop.look.icons import wear
from barkeep.desktop.look.theme import CHOICES, ThemeChoice
from barkeep.desktop.screens.operations import run_operation
from barkeep.desktop.shell.help import AboutDialog, ShortcutsDialog
from barkeep.desktop.shell.pages import Page
from barkeep.desktop.widgets.buttons import offer
from barkeep.documents.specs.files import SUFFIXES
from barkeep.errors import UserError

if TYPE_CHECKING:
    from barkeep.desktop.shell.main_window import MainWindow


Keys = QKeySequence.StandardKey
Shortcut = QKeySequence | QKeySequence.StandardKey | str | None
THEME_WORDS = {"system": "As the system", "light": "Light", "dark": "Dark"}


class WindowActions(QObject):
    """Every action of the menu bar, as an attribute; the window connects them.

    `page_wanted` carries a page's key, `theme_wanted` a choice of theme. The
    Bar menu starts with what the shown page offers.
    """

    page_wanted = Signal(str)
    theme_wanted = Signal(str)

    def __init__(self, bar: QMenuBar, pages: Sequence[Page]) -> None:
        super().__init__(bar)
        self._bar = bar
        self._all: list[QAction] = []
        self._page_actions: list[QAction] = []
        self.themes: dict[str, QAction] = {}
        self.pages: dict[str, QAction] = {}
        self._make_file()
        self._make_edit()
        self._make_view(pages)
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

    def _make_file(self) -> None:
        menu = self._menu("&File")
        self.new_bar = self._add(menu, "&New bar…", None)
        self.open_bar = self._add(menu, "&Open bar…", Keys.Open)
        menu.addSeparator()
        self.import_files = self._add(menu, "&Import bottles…", "Ctrl+I", "import")
        self.import_specs = self._add(menu, "I&mport specs…", "Ctrl+Shift+I", "import")
        self.publish = self._add(menu, "&Print and publish…", Keys.Print, "print")
        self.back_up = self._add(menu, "&Back up…", None, "export")
        menu.addSeparator()
        self.settings = self._add(menu, "&Settings…", "Ctrl+,", "settings")
        # Plain X11 binds nothing to QKeySequence.Quit, nor to Preferences.
        self.quit = self._add(menu, "&Quit", "Ctrl+Q")

    def _make_edit(self) -> None:
        menu = self._menu("&Edit")
        self.undo = self._add(menu, "&Undo", Keys.Undo, "undo")
        self.redo = self._add(menu, "&Redo", "Ctrl+Shift+Z", "redo")
        menu.addSeparator()
        self.paste = self._add(menu, "&Paste specs…", Keys.Paste)
        self.find = self._add(menu, "&Find", Keys.Find, "search")

    def _make_view(self, pages: Sequence[Page]) -> None:
        menu = self._menu("&View")
        group = QActionGroup(self)
        for number, page in enumerate(pages, 1):
            action = self._add(menu, f"&{number} {page.title}", f"Ctrl+{number}")
            action.setCheckable(True)
            group.addAction(action)
            self._ask_on(action, self.page_wanted.emit, page.key)
            self.pages[page.key] = action
        menu.addSeparator()
        self._make_themes(menu.addMenu("&Theme"))
        self.reset_columns = self._add(menu, "Reset &columns", None)
        self.read_again = self._add(menu, "&Read again", Keys.Refresh)

    def _make_themes(self, menu: QMenu) -> None:
        group = QActionGroup(self)
        for choice in CHOICES:
            action = self._add(menu, f"&{THEME_WORDS[choice]}", None)
            action.setCheckable(True)
            group.addAction(action)
            self._ask_on(action, self.theme_wanted.emit, choice)
            self.themes[choice] = action

    def _make_bar(self) -> None:
        self.bar_menu = self._menu("&Bar")
        self._after_page = self.bar_menu.addSeparator()
        self.make = self._add(self.bar_menu, "&Make something here…", "Ctrl+M", "house-made")
        self.shopping = self._add(self.bar_menu, "&Shopping list…", "Ctrl+L", "price")
        self.check = self._add(self.bar_menu, "C&heck this bar", None, "check")

    def _make_help(self) -> None:
        menu = self._menu("&Help")
        self.shortcuts = self._add(menu, "&Keyboard shortcuts", None)
        self.shortcuts.setShortcuts([QKeySequence("F1"), QKeySequence("Ctrl+?")])
        self.about = self._add(menu, "&About barkeep", None, "info")

    def mark_theme(self, choice: ThemeChoice) -> None:
        """Tick the theme that is chosen."""
        self.themes[choice].setChecked(True)

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


BARS = "Bars (*.barkeep);;All files (*)"
LISTS = "Lists of bottles (*.csv);;All files (*)"
DOCUMENTS = f"Specs ({' '.join(f'*{suffix}' for suffix in SUFFIXES)});;All files (*)"
CLIPBOARD = "What was pasted"


class WindowTasks:
    """The menus' tasks of one window."""

    def __init__(self, window: MainWindow) -> None:
        self._window = window

    def new_bar(self) -> None:
        """Begin a bar in a new file."""
        folder = str(paths.data_folder() / "bar.barkeep")
        name, _kind = QFileDialog.getSaveFileName(self._window, "New bar", folder, BARS)
        if name:
            path = Path(name)
            self._open(path if path.suffix else path.with_suffix(".barkeep"))

    def open_bar(self) -> None:
        """Show the bar in another file."""
        folder = str(self._window.bar.path.parent)
        name, _kind = QFileDialog.getOpenFileName(self._window, "Open bar", folder, BARS)
        if name:
            self._open(Path(name))

    def import_files(self) -> None:
        """Take in lists of bottles."""
        self._choose_and_import("Import bottles", LISTS)

    def import_specs(self) -> None:
        """Take in documents of specs."""
        self._choose_and_import("Import specs", DOCUMENTS)

    def paste(self) -> None:
        """Take in what is on the clipboard: files, or the text of a document."""
        # With nothing on it, some platforms give no data at all.
        found, hooks = QGuiApplication.clipboard().mimeData() or QMimeData(), self._window.hooks
        files = [Path(url.toLocalFile()) for url in found.urls() if url.isLocalFile()]
        if files and hooks.import_files is not None:
            hooks.import_files(self._window, files)
        elif found.text().strip() and hooks.import_texts is not None:
            hooks.import_texts(self._window, [NamedText(CLIPBOARD, found.text())])
        else:
            self._window.toast.say("There is no text to paste")

    def agree_to_lose(self, unsaved: str) -> bool:
        """Ask whether to close although something is lost; Esc stays."""
        box = QMessageBox(self._window)
        box.setIcon(QMessageBox.Icon.Warning)
        box.setWindowTitle("barkeep")
        box.setText(unsaved)
        box.setInformativeText("Nothing of them is in the ledger, and closing forgets them.")
        lose = box.addButton("Discard counts", QMessageBox.ButtonRole.DestructiveRole)
        keep = box.addButton("Keep counting", QMessageBox.ButtonRole.RejectRole)
        box.setDefaultButton(keep)
        box.setEscapeButton(keep)
        box.exec()
        box.deleteLater()
        return box.clickedButton() is lose

    def publish(self) -> None:
        """Print or publish specs and labels."""
        from barkeep.desktop.publishing.publish import (
            publish,  # printing need not be there at first
        )

        publish(self._window)

    def make(self) -> None:
        """Make a syrup, juice or cordial out of what the bar holds."""
        from barkeep.desktop.making.house_made import MakeDialog  # as above

        MakeDialog(self._window.context, self._window).open()

    def shop(self) -> None:
        """Show what to buy for the shoots to come and for the pars."""
        from barkeep.desktop.buying.shopping import ShoppingDialog  # as above

        ShoppingDialog(self._window.context, self._window).open()

    def back_up(self) -> None:
        """Copy the whole bar to another file."""
        bar = self._window.bar
        offered = bar.path.with_name(f"{bar.path.stem} {bar.snapshot.on:%Y-%m-%d}.barkeep")
        name, _kind = QFileDialog.getSaveFileName(self._window, "Back up", str(offered), BARS)
        if name:
            run_operation(
                self._window,
                lambda: bar.back_up(name),
                lambda path: self._window.toast.say(f"Backed up to {path}"),
                self._refused,
            )

    def settings(self) -> None:
        """Edit the bar's settings."""
        if self._window.hooks.settings is not None:
            self._window.hooks.settings(self._window)

    def check(self) -> None:
        """Look for what is wrong with the bar, and say it."""
        run_operation(self._window, self._window.bar.check, self._tell_findings, self._refused)

    def show_shortcuts(self) -> None:
        """Show what the keyboard can do."""
        window = self._window
        groups = (
            ("Everywhere", window.actions_.all),
            (window.current.title, window.current.bar_actions),
        )
        ShortcutsDialog(groups, window).open()

    def show_about(self) -> None:
        """Show version and places."""
        AboutDialog(self._window.bar.path, self._window).open()

    def _choose_and_import(self, title: str, kinds: str) -> None:
        names, _kind = QFileDialog.getOpenFileNames(self._window, title, "", kinds)
        if names and self._window.hooks.import_files is not None:
            self._window.hooks.import_files(self._window, [Path(name) for name in names])

    def _open(self, path: Path) -> None:
        open_bar = self._window.hooks.open_bar
        if open_bar is not None:
            run_operation(self._window, lambda: open_bar(path), None, self._refused)

    def _tell_findings(self, findings: tuple[str, ...]) -> None:
        if not findings:
            self._window.toast.say("Nothing is wrong with this bar")
            return
        box = QMessageBox(self._window)
        box.setIcon(QMessageBox.Icon.Warning)
        box.setWindowTitle("Check this bar")
        box.setText("The bar has faults. Back it up before anything else.")
        box.setInformativeText("\n".join(findings))
        box.open()

    def _refused(self, error: UserError) -> None:
        self._window.current.show_refusal(error)
