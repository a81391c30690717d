"""The desktop from start to end: Qt first, then the bar and one page, the rest after it shows."""

from __future__ import annotations

import argparse
import importlib
from collections.abc import Sequence
from contextlib import ExitStack
from functools import partial
from pathlib import Path
from threading import Thread
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Qt, QTimer, Signal
from PySide6.QtWidgets import QApplication, QFileDialog, QMessageBox

from barkeep import __version__
from barkeep.application import paths
from barkeep.application.own_locale import print_numbers_as_the_user_does
from barkeep.desktop.look.icons import app_icon
from barkeep.desktop.look.theme import CHOICES, Theme, ThemeChoice
from barkeep.desktop.screens.background import Background
from barkeep.desktop.screens.window_state import WindowState
from barkeep.desktop.shell.faults import CrashDialog, Faults
from barkeep.desktop.shell.opening import GarbageOnThisThread, OpeningWindow, ended_by_signals
from barkeep.errors import UnreadableFile, UserError

if TYPE_CHECKING:
    from barkeep.application.bar import Bar
    from barkeep.desktop.shell.main_window import MainWindow


STATE_FILE, PROGRAM_FILE = "window.ini", "barkeep.ini"
THEME = "look/theme"
RESTORE = "Restore that backup"

NEEDED = (
    "barkeep.application.bar",
    "barkeep.application.sample",
    "barkeep.desktop.shell.main_window",
)
"""What the bar's window needs and the first paint does not."""
HEAVY = ("networkx", "scipy.optimize", "rapidfuzz")
"""What the answers need and the bar's window does not."""


def main(argv: Sequence[str]) -> int:
    """Show the desktop until its window closes; the process's exit status.

    `--bar FILE` names the bar, `--sample` shows a throw-away copy of the
    sample bar.
    """
    options = _parse(argv)
    app = QApplication.instance() or QApplication(["barkeep"])
    assert isinstance(app, QApplication)
    print_numbers_as_the_user_does()
    app.setStyle("Fusion")  # once, before any widget or style sheet: Qt may not swap it later
    with ExitStack() as stack:
        stack.enter_context(ended_by_signals(app))  # first in, last out: all is put away before
        desktop = Desktop(app, stack)
        desktop.begin(options.bar, sample=options.sample)
        return app.exec()


def _parse(argv: Sequence[str]) -> argparse.Namespace:
    parser = argparse.ArgumentParser("barkeep")
    parser.add_argument("--bar")
    parser.add_argument("--sample", action="store_true")
    return parser.parse_args(argv)


class Desktop(QObject):
    """The running program: its look, its log, and the window over one bar.

    `no_backup` carries a sentence where a backup could not be made, from any thread.
    """

    no_backup = Signal(str)

    def __init__(self, app: QApplication, stack: ExitStack) -> None:
        super().__init__(app)
        self._app, self._stack = app, stack
        app.setApplicationName("barkeep")
        app.setApplicationDisplayName("")
        app.setApplicationVersion(__version__)
        app.setDesktopFileName("barkeep")
        app.setWindowIcon(app_icon())
        self.state = WindowState(paths.state_folder() / STATE_FILE)
        self.program = WindowState(paths.config_folder() / PROGRAM_FILE)
        self.faults = Faults(paths.log_file(), self)
        self.faults.met.connect(self._show_fault)
        self.faults.catch()
        stack.callback(self.faults.stop)
        stack.callback(GarbageOnThisThread(self).stop)
        self.theme = Theme(app, _theme_choice(self.program))
        stack.callback(self.theme.remove_pictures)
        self.window: MainWindow | None = None
        self._bar: Bar | None = None
        self._sample: Path | None = None
        self._crash: CrashDialog | None = None
        self._warm_up = Thread(target=import_heavy, name="warm-up", daemon=True)
        stack.callback(self._wait_for_warm_up)
        stack.callback(self._close)

    def begin(self, location: str | None, *, sample: bool = False) -> None:
        """Show a window at once, read what is needed beside it, then show the bar in it."""
        opening = OpeningWindow(self.state)
        waiting = Background(self)
        self._stack.callback(waiting.finish)

        def show(wanted: str | Path) -> None:
            started = self.start(wanted)
            opening.close()
            if not started:
                self._app.exit(1)

        prepare = partial(self._prepare, location, sample)
        # Not before the paint is done: reading holds up everything else.
        later = Qt.ConnectionType.QueuedConnection
        opening.painted.connect(lambda: waiting.ask("bar", prepare, show), later)
        opening.show()

    def _prepare(self, location: str | None, sample: bool) -> str | Path:
        """Import and read what the bar's window needs; where its bar is."""
        for name in NEEDED:
            importlib.import_module(name)
        from barkeep.application.knowledge import shipped

        shipped()
        return self.sample() if sample else location or paths.default_bar()

    def sample(self) -> Path:
        """A copy of the sample bar that is gone afterwards."""
        from barkeep.application.sample import throw_away_copy

        path = self._sample = self._stack.enter_context(throw_away_copy())
        self._stack.callback(self._close)  # before the copy goes
        return path

    def start(self, location: str | Path) -> bool:
        """Show a bar, or ask for another while it cannot be shown; whether one is."""
        wanted: str | Path | None = location
        while wanted is not None:
            try:
                self.open(wanted)
            except UserError as error:
                wanted = _ask_for_another(error, wanted)
            else:
                return True
        return False

    def open(self, location: str | Path) -> None:
        """Show the bar at a place, in place of the one before. Raises a `UserError`."""
        from barkeep.application.bar import Bar
        from barkeep.desktop.importing.files import import_files, import_texts
        from barkeep.desktop.shell.main_window import MainWindow, WindowHooks
        from barkeep.desktop.shell.settings import edit_settings

        if self.window is not None and not self.window.may_close():
            return
        told = None if location == self._sample else self.no_backup.emit
        bar = Bar.open(location, told=told)
        hooks = WindowHooks(self._open_or_offer, import_files, edit_settings, import_texts)
        window = MainWindow(bar, self.state, self.theme, hooks)
        window.first_shown.connect(lambda: QTimer.singleShot(0, self._start_warm_up))
        window.theme_chosen.connect(self._keep_theme)
        self.no_backup.connect(window.toast.say)
        window.show()
        self._close()
        self.window, self._bar = window, bar

    def _open_or_offer(self, path: Path) -> None:
        """Show another bar; of one that cannot be read, offer to put its backup in its place.

        Raises a `UserError`; the bar before is then still shown.
        """
        from barkeep.application.kept_backups import BackupOffered, with_backup_offered

        try:
            self.open(path)
        except UnreadableFile as error:
            offered = with_backup_offered(error, path, nothing_more)
            if not isinstance(offered, BackupOffered) or not _wants_backup(offered):
                raise offered from error
            _put_back(offered.backup, path)
            self.open(path)

    def _close(self) -> None:
        if self.window is not None:
            self.window.close_unasked()
            self.window.deleteLater()
            self.window = None
        if self._bar is not None:
            self._bar.close()
            self._bar = None

    def _keep_theme(self, choice: str) -> None:
        self.program.keep_text(THEME, choice)
        self.program.write()

    def _start_warm_up(self) -> None:
        if not self._warm_up.is_alive() and self._warm_up.ident is None:
            self._warm_up.start()

    def _wait_for_warm_up(self) -> None:
        """An import that the interpreter's end cuts off could crash it."""
        if self._warm_up.is_alive():
            self._warm_up.join()

    def _show_fault(self, details: str) -> None:
        if self._crash is not None:
            self._crash.add(details)
            return
        self._crash = CrashDialog(details, self.faults.log, self.window)
        self._crash.finished.connect(self._forget_crash)
        self._crash.open()

    def _forget_crash(self) -> None:
        self._crash = None


def import_heavy() -> None:
    """Import what would hold up the first paint; a missing one shows when it is needed."""
    for name in HEAVY:
        try:
            importlib.import_module(name)
        except ImportError:
            return


def _theme_choice(program: WindowState) -> ThemeChoice:
    choice = program.text(THEME, "system")
    return choice if choice in CHOICES else "system"


def nothing_more(_backup: str) -> str:
    """What the window adds to the sentence that names a backup: its buttons say the rest."""
    return ""


def _wants_backup(error: UserError) -> bool:
    """Whether the backup that is offered shall be put in its bar's place."""
    box = _box(error)
    restored = box.addButton(RESTORE, QMessageBox.ButtonRole.AcceptRole)
    leave = box.addButton("Cancel", QMessageBox.ButtonRole.RejectRole)
    box.setEscapeButton(leave)
    box.exec()
    return box.clickedButton() is restored


def _box(error: UserError) -> QMessageBox:
    box = QMessageBox()
    box.setIcon(QMessageBox.Icon.Warning)
    box.setWindowTitle("barkeep")
    box.setText("This bar cannot be opened")
    box.setInformativeText(str(error))
    return box


def _ask_for_another(error: UserError, location: str | Path) -> str | Path | None:
    """Say why a bar cannot be shown; what to show instead, None to leave.

    Of a bar that cannot be read the newest good backup is offered, and put in its place.
    """
    from barkeep.application.kept_backups import BackupOffered, with_backup_offered

    if isinstance(error, UnreadableFile):
        error = with_backup_offered(error, location, nothing_more)
    box, accept = _box(error), QMessageBox.ButtonRole.AcceptRole
    restored = box.addButton(RESTORE, accept) if isinstance(error, BackupOffered) else None
    another = box.addButton("Open another bar…", accept)
    leave = box.addButton("Quit", QMessageBox.ButtonRole.RejectRole)
    box.setEscapeButton(leave)
    box.exec()
    if isinstance(error, BackupOffered) and box.clickedButton() is restored:
        try:
            _put_back(error.backup, location)
        except UserError as refused:
            return _ask_for_another(refused, location)
        return location
    if box.clickedButton() is not another:
        return None
    name, _kind = QFileDialog.getOpenFileName(None, "Open bar", str(paths.data_folder()))
    return Path(name) if name else None


def _put_back(backup: str, location: str | Path) -> None:
    """Put a backup in the place of a bar that cannot be read, which is kept."""
    from barkeep.application.backups import restore
    from barkeep.application.kept_backups import backup_named, bar_file, folders_of

    bar = bar_file(location)
    restore(bar, backup_named(bar, backup), folders_of(bar)[-1])
