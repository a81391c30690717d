"""What the window's menus start: choosing files, and the small dialogs."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QFileDialog, QMessageBox

from barkeep.application import paths
from barkeep.application.spec_preview import NamedText
from barkeep.desktop.dialogs.about import AboutDialog
from barkeep.desktop.dialogs.shortcuts import ShortcutsDialog
from barkeep.desktop.operations import run_operation
from barkeep.documents.spec_files import SUFFIXES
from barkeep.errors import UserError

if TYPE_CHECKING:
    from barkeep.desktop.main_window import MainWindow

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
        found, hooks = QGuiApplication.clipboard().mimeData(), self._window.hooks
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
        from barkeep.desktop.dialogs.publish import publish  # printing need not be there at first

        publish(self._window)

    def make(self) -> None:
        """Make a syrup, juice or cordial out of what the bar holds."""
        from barkeep.desktop.dialogs.make_house_made import MakeDialog  # as above

        MakeDialog(self._window.context, self._window).open()

    def shop(self) -> None:
        """Show what to buy for the shoots to come and for the pars."""
        from barkeep.desktop.dialogs.shopping import ShoppingDialog  # as above

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
