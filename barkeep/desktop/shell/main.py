"""The desktop from start to end: Qt first, then the bar and one page, the rest after it shows."""

from __future__ import annotations

import argparse
import importlib
import sys
from collections.abc import Callable, Sequence
from contextlib import ExitStack
from functools import partial
from pathlib import Path
from threading import Thread
from typing import TYPE_CHECKING, cast

from PySide6.QtCore import QObject, Qt, QTimer, Signal
from PySide6.QtWidgets import QApplication, QMessageBox, QWidget

from barkeep import __version__
from barkeep.application import paths
from barkeep.application.own_locale import print_numbers_as_the_user_does
from barkeep.desktop.look.icons import app_icon
from barkeep.desktop.look.language import LANGUAGES, SYSTEM, Language
from barkeep.desktop.look.theme import CHOICES, TEXT_SIZES, TextSize, Theme, ThemeChoice
from barkeep.desktop.screens.background import Background
from barkeep.desktop.screens.window_state import WindowState
from barkeep.desktop.shell.cannot_open import Wanted, ask_instead, restore_instead
from barkeep.desktop.shell.faults import CrashDialog, Faults, last_end_in_words, safety_in_words
from barkeep.desktop.shell.opening import GarbageOnThisThread, OpeningWindow, ended_by_signals
from barkeep.errors import BarkeepError, UnreadableFile, UserError
from barkeep.store.address import At, Location, without_secrets
from barkeep.translation import tr

if TYPE_CHECKING:
    from barkeep.application.bar import Bar
    from barkeep.application.imports import NamedText
    from barkeep.desktop.screens.screen import ScreenContext
    from barkeep.desktop.shell.main_window import MainWindow
    from barkeep.desktop.shell.menus import WindowActions
    from barkeep.desktop.shell.one_window import OneWindow


SWITCH_S = 0.001
"""How soon a working answer gives Python's lock to the window that waits for it; else 5 ms."""
STATE_FILE, PROGRAM_FILE = "window.ini", "barkeep.ini"
THEME, TEXT_SIZE, LANGUAGE = "look/theme", "look/text-size", "look/language"

NEEDED = (
    "barkeep.application.bar",
    "barkeep.application.sample_copy",
    "barkeep.desktop.shell.main_window",
)
"""What the bar's window needs and the first paint does not."""
STORE = "barkeep.store.store"
"""What opens the bar's file: needed at once where nothing is kept of it."""
PAGES = (
    "barkeep.desktop.bottles.page",
    "barkeep.desktop.specs.page",
    "barkeep.desktop.shoots.page",
    "barkeep.desktop.buying.next_bottle",
    "barkeep.desktop.stand_ins.page",
)
"""What the pages need that are not shown at first."""
HEAVY = (
    "barkeep.desktop.drink.tonight_details",
    STORE,
    *PAGES,
    "barkeep.desktop.importing.files",
    "barkeep.desktop.shell.settings",
    "logging.handlers",
    "rapidfuzz",
    "networkx",
    "scipy.optimize",
)
"""What is needed later, and by neither the bar's window nor its first answer."""


def main(argv: Sequence[str]) -> int:
    """Show the desktop until its window closes; the process's exit status.

    `--bar FILE` names the bar, `--new` begins it; `--sample` shows a throw-away
    copy of the sample bar.
    """
    options = _parse(argv)
    app = QApplication.instance() or QApplication(["barkeep"])
    assert isinstance(app, QApplication)
    print_numbers_as_the_user_does()
    sys.setswitchinterval(SWITCH_S)
    app.setStyle("Fusion")  # once, before any widget or style sheet: Qt may not swap it later
    with ExitStack() as stack:
        stack.enter_context(ended_by_signals(app))  # first in, last out: all is put away before
        desktop = Desktop(app, stack)
        desktop.begin(Wanted(options.bar, options.new), sample=options.sample)
        return app.exec()


def _parse(argv: Sequence[str]) -> argparse.Namespace:
    parser = argparse.ArgumentParser("barkeep")
    parser.add_argument("--bar")
    parser.add_argument("--new", action="store_true")
    parser.add_argument("--sample", action="store_true")
    return parser.parse_args(argv)


class Desktop(QObject):
    """The running program: its look, its log, and the window over one bar.

    `no_backup` carries a sentence where a backup could not be made, from any thread; `warm` comes
    once the rest is imported.
    """

    no_backup = Signal(str)
    warm = Signal()

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
        self.language = Language(app, _language_choice(self.program))  # before any word is said
        stack.callback(self.language.leave)
        self.faults = Faults(paths.log_file(), self)
        self.faults.met.connect(self._show_fault)
        self.faults.refused.connect(self._refuse)
        self.faults.catch()
        stack.callback(self.faults.stop)
        stack.callback(GarbageOnThisThread(self).stop)
        self.theme = Theme(app, _theme_choice(self.program), _text_size(self.program))
        stack.callback(self.theme.remove_pictures)
        self.window: MainWindow | None = None
        self._bar: Bar | None = None
        self._sample: Path | None = None
        self._home: At | None = None
        """The bar that was shown before the sample bar."""
        self._crash: CrashDialog | None = None
        self._one: OneWindow | None = None
        self._warm_up = Thread(target=self._import_heavy, name="warm-up", daemon=True)
        self.warm.connect(self._follow)
        stack.callback(self._wait_for_warm_up)
        stack.callback(self._close)

    def begin(self, wanted: Wanted, *, sample: bool = False) -> None:
        """Show a window at once, read what is needed beside it, then show the bar in it."""
        opening = OpeningWindow(self.state)
        waiting = Background(self)
        self._stack.callback(waiting.finish)

        def show(prepared: Wanted | Exception) -> None:
            if isinstance(prepared, Exception):
                self._say_why_not(prepared)
            started = isinstance(prepared, Wanted) and self._start(prepared)
            opening.close()
            if self.window is None:
                self._app.exit(0 if started else 1)

        prepare = partial(self._prepare, wanted, sample)
        # Not before the paint is done: reading holds up everything else.
        later = Qt.ConnectionType.QueuedConnection
        opening.painted.connect(lambda: waiting.ask("bar", prepare, show), later)
        opening.show()

    def _prepare(self, wanted: Wanted, sample: bool) -> Wanted | Exception:
        """Import and read what the bar's window needs; which bar it shows, or why it cannot.

        What is raised here must not be left to the event loop: a window that says
        “Opening the bar…” would stay for ever.
        """
        try:
            for name in NEEDED:
                importlib.import_module(name)
            from barkeep.application.kept_bar import is_kept
            from barkeep.application.knowledge import shipped

            shipped()
            opened = Wanted(self.sample()) if sample else wanted
            if opened.new or not is_kept(opened.location or paths.default_bar()):
                importlib.import_module(STORE)
            return opened
        except Exception as error:
            return error

    def sample(self) -> Path:
        """A copy of the sample bar that is gone afterwards."""
        from barkeep.application import sample_copy

        path = self._sample = self._stack.enter_context(sample_copy.throw_away())
        self._stack.callback(self._close)  # before the copy goes
        return path

    def start(self, location: Location | None, *, new: bool = False) -> bool:
        """Show a bar, or ask for another while it cannot be shown; whether one is.

        It may be shown by another window, which has come forward.
        """
        return self._start(Wanted(location, new))

    def _start(self, first: Wanted) -> bool:
        from barkeep.desktop.shell.one_window import OpenElsewhere  # not before the first paint

        wanted: Wanted | None = first
        while wanted is not None:
            try:
                self._show(wanted)
            except OpenElsewhere as error:
                if error.raised and self.window is None:
                    return True
                wanted = ask_instead(error, wanted)
            except UserError as error:
                wanted = ask_instead(error, wanted)
            except Exception as error:
                wanted = ask_instead(self._written_down(error, wanted), wanted)
            else:
                return True
        return False

    def open(self, location: Location) -> None:
        """Show the bar that is there, in place of the one before. Raises a `UserError`."""
        self._show(Wanted(location))

    def begin_bar(self, location: Location) -> None:
        """Begin a new bar in a file or on a server, and show it as `open` does."""
        self._show(Wanted(location, new=True))

    def look_around(self) -> None:
        """Show a copy of the sample bar, which is gone once the program ends."""
        here = None if self._bar is None else self._bar.at
        home = self._home if here == self._sample else here
        self.open(self.sample())
        self._home = home

    def go_home(self) -> None:
        """Show the owner's own bar again, or the usual one where none was shown before."""
        self._show(Wanted(self._home))

    def _show(self, wanted: Wanted) -> None:
        from barkeep.application.bar import Bar, usual_bar
        from barkeep.desktop.shell.main_window import MainWindow, WindowHooks

        if self.window is not None and not self.window.may_close():
            return
        is_usual = wanted.location is None and not wanted.new
        place = usual_bar() if is_usual else wanted.location or paths.default_bar()
        one = self._one_window(Bar.at_location(place))
        try:
            told = None if place == self._sample else self.no_backup.emit
            new = None if is_usual else wanted.new
            kept = one.ended is None  # after a crash the file is checked before it is shown
            bar = Bar.open(place, told=told, new=new, empty_too=is_usual, kept=kept)
            bar.keep()
        except BaseException:
            self._give_up(one)
            raise
        hooks = WindowHooks(
            self._open_or_offer,
            _import_files,
            _edit_settings,
            _import_texts,
            new_bar=self.begin_bar,
            look_around=self.look_around,
            go_home=self.go_home if place == self._sample else None,
        )
        try:
            window = MainWindow(bar, self.state, self.theme, hooks)
        except BaseException:
            bar.close()
            self._give_up(one)
            raise
        if one.ended is not None:
            window.told_first = last_end_in_words(one.ended, self.faults.log, bar.at)
            one.ended = None
        window.first_shown.connect(lambda: QTimer.singleShot(0, self._warm_up_when_idle))
        window.theme_chosen.connect(self._keep_theme)
        window.text_size_chosen.connect(self._set_text_size, Qt.ConnectionType.QueuedConnection)
        window.actions_.mark_language(self.language.choice)
        window.language_chosen.connect(self._set_language, Qt.ConnectionType.QueuedConnection)
        self.no_backup.connect(window.toast.say)
        window.first_shown.connect(lambda: QTimer.singleShot(0, window, partial(self._shown, one)))
        window.show()
        self._close(keeps=one)
        self.window, self._bar, self._one = window, bar, one

    def _one_window(self, bar: At) -> OneWindow:
        """The right to show a bar. Raises `OpenElsewhere`."""
        from barkeep.desktop.shell.one_window import OneWindow

        one = OneWindow(bar, paths.state_folder(), self)
        if self._one is not None and self._one.bar == one.bar:
            return self._one
        one.take()
        return one

    def _give_up(self, one: OneWindow) -> None:
        """Let others show a bar that cannot be shown here."""
        if one is not self._one:
            one.leave()

    def _shown(self, one: OneWindow) -> None:
        """What can wait until the window is there."""
        one.listen(self._come_forward)

    def _come_forward(self) -> None:
        if self.window is not None:
            self.window.setWindowState(self.window.windowState() & ~Qt.WindowState.WindowMinimized)
            self.window.show()
            self.window.raise_()
            self.window.activateWindow()

    def _open_or_offer(self, location: Location) -> None:
        """Show another bar; of one that cannot be read, offer to put its backup in its place.

        Raises a `UserError`; the bar before is then still shown.
        """
        try:
            self.open(location)
        except UnreadableFile as error:
            restore_instead(error, location)
            self.open(location)

    def _close(self, keeps: OneWindow | None = None) -> None:
        if self.window is not None:
            self.window.close_unasked()
            self.window.deleteLater()
            self.window = None
        if self._bar is not None:
            self._bar.keep()
            self._bar.close()
            self._bar = None
        if self._one is not None and self._one is not keeps:
            self._one.leave()
            self._one = None

    def _keep_theme(self, choice: str) -> None:
        self.program.keep_text(THEME, choice)
        self.program.write()

    def _set_text_size(self, size: str) -> None:
        """Show the same bar in a window with larger or smaller type, and keep that."""
        theme = self.theme
        if size != theme.text_size and self._may_show_anew(
            lambda actions: actions.mark_text_size(theme.text_size)
        ):
            theme.choose_text_size(cast(TextSize, size))
            self._show_anew(TEXT_SIZE, size)

    def _set_language(self, choice: str) -> None:
        """Show the same bar in a window that speaks another language, and keep that."""
        language = self.language
        if choice != language.choice and self._may_show_anew(
            lambda actions: actions.mark_language(language.choice)
        ):
            language.choose(choice)
            self._show_anew(LANGUAGE, choice)

    def _may_show_anew(self, mark_as_it_is: Callable[[WindowActions], object]) -> bool:
        """Whether the window may be replaced; where not, its menu says again what is so."""
        if self._bar is None or self.window is None:
            return False
        if not self.window.may_close():
            mark_as_it_is(self.window.actions_)
            return False
        return True

    def _show_anew(self, key: str, chosen: str) -> None:
        """Keep what was chosen, and show the bar in a window that is made by it."""
        assert self._bar is not None
        self.program.keep_text(key, chosen)
        self.program.write()
        self._show(Wanted(self._bar.path))

    def _warm_up_when_idle(self) -> None:
        """Import the rest once nothing is waited for: it would hold up the first answer."""
        if self.window is None:
            return
        if not self.window.background.is_busy:
            self._start_warm_up()
        else:
            once = Qt.ConnectionType.SingleShotConnection
            self.window.background.idle.connect(self._start_warm_up, once)

    def _start_warm_up(self) -> None:
        if self._warm_up.ident is None:
            self._warm_up.start()
        elif not self._warm_up.is_alive():  # for a window before this one
            self._follow()

    def _import_heavy(self) -> None:
        import_heavy()
        self.warm.emit()

    def _follow(self) -> None:
        """Open the bar's file, where it was not needed yet: importing that is what took long.

        Nothing more is to be imported then, and the other pages are built.
        """
        if self.window is not None:
            self.window.follow()
            self.window.prepare_pages()

    def _wait_for_warm_up(self) -> None:
        """An import that the interpreter's end cuts off could crash it."""
        if self._warm_up.is_alive():
            self._warm_up.join()

    def _say_why_not(self, error: Exception) -> None:
        """Say why no bar at all can be shown; there is nothing to choose then."""
        told = str(error) if isinstance(error, BarkeepError) else self._fault_in_words(error)
        box = QMessageBox(QMessageBox.Icon.Critical, "barkeep", tr("barkeep cannot start"))
        box.setInformativeText(told)
        box.exec()
        box.deleteLater()

    def _written_down(self, error: Exception, wanted: Wanted) -> UserError:
        """A fault met while a bar was opened, as a refusal of that bar."""
        file = without_secrets(str(wanted.location or paths.default_bar()))
        return UnreadableFile(file, self._fault_in_words(error).rstrip("."))

    def _fault_in_words(self, error: Exception) -> str:
        self.faults.write_down(error)
        kind = type(error).__name__
        return tr(
            "barkeep met a fault ({kind}), which is written in {log}.",
            kind=kind,
            log=self.faults.log,
        )

    def _show_fault(self, details: str, report: str) -> None:
        if self._crash is not None:
            self._crash.add(details, report)
            return
        self._crash = CrashDialog(details, self.faults.log, self.window, report=report)
        self._crash.say_safety(safety_in_words(self._bar))
        self._crash.finished.connect(self._forget_crash)
        self._crash.open()

    def _refuse(self, error: UserError) -> None:
        """Say what nobody else has said, such as a lock met on the way."""
        if self.window is not None:
            self.window.refuse(error)

    def _forget_crash(self) -> None:
        self._crash = None


def _import_files(context: ScreenContext, files: Sequence[Path], parent: QWidget) -> None:
    from barkeep.desktop.importing.files import import_files  # every reader of documents

    import_files(context, files, parent)


def _import_texts(context: ScreenContext, texts: Sequence[NamedText], parent: QWidget) -> None:
    from barkeep.desktop.importing.files import import_texts

    import_texts(context, texts, parent)


def _edit_settings(context: ScreenContext, parent: QWidget) -> None:
    from barkeep.desktop.shell.settings import edit_settings

    edit_settings(context, parent)


def import_heavy() -> None:
    """Import what would hold up the first answer; a missing one shows when it is needed."""
    for name in HEAVY:
        try:
            importlib.import_module(name)
        except ImportError:
            return


def _theme_choice(program: WindowState) -> ThemeChoice:
    choice = program.text(THEME, "system")
    return choice if choice in CHOICES else "system"


def _text_size(program: WindowState) -> TextSize:
    size = program.text(TEXT_SIZE, "plain")
    return cast(TextSize, size) if size in TEXT_SIZES else "plain"


def _language_choice(program: WindowState) -> str:
    choice = program.text(LANGUAGE, SYSTEM)
    return choice if choice in LANGUAGES else SYSTEM
