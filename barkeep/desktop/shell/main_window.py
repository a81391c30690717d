"""The one window: navigation, pages, menus, status bar, and what belongs to all pages."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from contextlib import suppress
from dataclasses import dataclass
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING, Literal, Protocol, cast

from PySide6.QtCore import QEvent, QMimeData, QObject, QSize, Qt, QTimer, Signal
from PySide6.QtGui import (
    QCloseEvent,
    QDragEnterEvent,
    QDropEvent,
    QGuiApplication,
    QResizeEvent,
    QShowEvent,
)
from PySide6.QtWidgets import QFileDialog, QMainWindow, QMessageBox, QStackedWidget, QWidget

from barkeep import __version__
from barkeep.application import paths
from barkeep.application.bar import Bar
from barkeep.application.done import BUSY, Step
from barkeep.desktop.look.metrics import ICON, PAD, UNIT, scaled
from barkeep.desktop.look.theme import Theme, ThemeChoice
from barkeep.desktop.screens.background import Background
from barkeep.desktop.screens.operations import run_operation
from barkeep.desktop.screens.screen import NOT_WRITTEN, Screen, ScreenContext
from barkeep.desktop.screens.window_state import GEOMETRY, WindowState, restore_window
from barkeep.desktop.shell.following import Following
from barkeep.desktop.shell.help import AboutDialog, ShortcutsDialog, TextDialog, changes_as_markdown
from barkeep.desktop.shell.help_here import HelpHere
from barkeep.desktop.shell.menus import WindowActions
from barkeep.desktop.shell.navigation import PAGES, PARTS, WIDTH, Navigation, Page
from barkeep.desktop.widgets.buttons import accept_by_keys
from barkeep.desktop.widgets.labels import ElidedLabel, PictureLabel, text_label
from barkeep.desktop.widgets.layouts import column_of, row_of, wide
from barkeep.desktop.widgets.notices import Banner, BannerKind, Toast
from barkeep.desktop.widgets.tips import plain_tip
from barkeep.documents.help.glossary import FIRST_PAGE
from barkeep.domain.bar.changes import EVERYTHING, Changes
from barkeep.errors import UnknownName, UserError
from barkeep.store.address import Location, is_on_a_server
from barkeep.store.refusals import DamagedBar
from barkeep.translation import tr, tr_noop

if TYPE_CHECKING:
    from barkeep.application.imports import NamedText
    from barkeep.desktop.shell.finder import Finder

NARROW_BELOW = 1100
"""The width, in device-independent pixels, under which the navigation shows lamps only."""
PAGE, VERSION = "window/page", "window/version"
PREPARED = "pages"
"""Under which the pages wait to be built."""

BARS = tr_noop("Bars (*.barkeep);;All files (*)")
LISTS = tr_noop("Lists of bottles (*.csv);;All files (*)")
WHOLE = tr_noop("Documents of a whole bar (*.json);;All files (*)")
CLIPBOARD = tr_noop("What was pasted")
GO_BACK = tr_noop("Back to the bar as it is (F4)")
SAMPLE = tr_noop("This is a copy of the sample bar to look around in: nothing you do here is kept.")
GO_HOME = tr_noop("Go to your own bar")


@dataclass(frozen=True, slots=True)
class WindowHooks:
    """What the window asks others for; an action without its hook is not offered.

    `open_bar` shows the bar in a place, `new_bar` begins one there; `import_files`
    takes in files chosen or dropped, `import_texts` texts that were pasted;
    `settings` edits the bar's settings; `look_around` shows a copy of the sample bar, and
    `go_home`, where this is one, the owner's own bar again. The last argument is the window they
    come before.
    """

    open_bar: Callable[[Location], object] | None = None
    import_files: Callable[[ScreenContext, Sequence[Path], QWidget], object] | None = None
    settings: Callable[[ScreenContext, QWidget], object] | None = None
    import_texts: Callable[[ScreenContext, Sequence[NamedText], QWidget], object] | None = None
    new_bar: Callable[[Location], object] | None = None
    look_around: Callable[[], object] | None = None
    go_home: Callable[[], object] | None = None


class Telling(Protocol):
    """What this needs of a bar."""

    def subscribe(self, callback: Callable[[Changes], None], /) -> Callable[[], None]: ...


class BarSignals(QObject):
    """`changed` carries the parts of the bar that changed, such as *bottles* or *trials*."""

    changed = Signal(object)

    def __init__(self, bar: Telling, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._unsubscribe = bar.subscribe(self.changed.emit)

    def stop(self) -> None:
        """Listen no longer; to be called before the bar closes."""
        self._unsubscribe()


class _Pages(QStackedWidget):
    """Asks for no more than it must have: the navigation keeps its width, pages take the rest."""

    def sizeHint(self) -> QSize:
        return self.minimumSizeHint()


@dataclass(frozen=True, slots=True)
class _Written:
    """What is said where a file is written: the dialog's title, its kinds, and once it is done."""

    title: str
    kinds: str
    done: str


class MainWindow(QMainWindow):
    """Shows one bar.

    `first_shown` comes once, `theme_chosen` with each choice of a look, `text_size_chosen` with
    one of another size of type, for which the window is to be built anew.
    """

    first_shown = Signal()
    theme_chosen = Signal(str)
    text_size_chosen = Signal(str)
    language_chosen = Signal(str)

    def __init__(
        self,
        bar: Bar,
        state: WindowState,
        theme: Theme,
        hooks: WindowHooks | None = None,
        pages: Sequence[Page] = PAGES,
        parts: Sequence[Page] = PARTS,
    ) -> None:
        super().__init__()
        self.bar = bar
        self.state = state
        self.hooks = hooks or WindowHooks()
        self._theme = theme
        self._pages = {page.key: page for page in (*pages, *parts)}
        self._screens: dict[str, Screen] = {}
        self._day = bar.snapshot.on
        self._was_shown = False
        self._asks = True
        self._finder: Finder | None = None
        self.told_first = ""
        """What is to be said as it opens."""
        self._undoes: Step | None = None
        self._redoes: Step | None = None
        self.navigation = Navigation(pages)
        self.stack = _Pages()
        self.on_paper = Banner(closable=False)
        """Says over every page that the bar is shown as it is not."""
        self.of_sample = Banner(closable=False)
        """Says over every page that this is a copy of the sample bar, to look around in."""
        if self.hooks.go_home is not None:
            self.of_sample.say(tr(SAMPLE), "info", tr(GO_HOME), self.hooks.go_home)
        self._host = self._centre()
        self.setCentralWidget(self._host)
        self.toast = Toast(self._host)
        self.background = Background(self)
        self.context = ScreenContext(
            bar=bar,
            state=state,
            background=self.background,
            toast=self.toast,
            go=self.go,
            undo=self.undo,
            refuse=self.refuse,
        )
        self.actions_ = WindowActions(self.menuBar(), pages, parts)
        self._add_status()
        self.help = HelpHere(self)
        self._connect()
        self.signals = BarSignals(bar, self)
        self.signals.changed.connect(self._on_changed)
        self.following = Following(
            self.context, lambda: self.current, self._say_saved, self, check=self.check
        )
        self.setAcceptDrops(self.hooks.import_files is not None)
        self._restore()
        self._name_things()

    @property
    def current(self) -> Screen:
        """The page that is shown."""
        return cast(Screen, self.stack.currentWidget())

    def show_page(self, key: str) -> Screen:
        """Show a page, building it on the first visit."""
        self._theme.finish()
        screen = self.build(key)
        self.navigation.light(self._pages[key].stop)
        self.actions_.pages[key].setChecked(True)
        self.actions_.offer_of_page(screen.bar_actions)
        screen.hold(self._held)
        self.stack.setCurrentWidget(screen)
        return screen

    def arrive(self, key: str) -> Screen:
        """Show a page with its list in hand, as for whoever asked for it by a key."""
        screen = self.show_page(key)
        screen.focus_list()
        return screen

    def build(self, key: str) -> Screen:
        """A page, built the first time it is asked for."""
        screen = self._screens.get(key)
        if screen is None:
            screen = self._pages[key].make(self.context)
            offered = self.hooks.import_files is not None
            screen.offer_import(self.import_files if offered else None)
            can_open = self.hooks.open_bar is not None
            screen.offer_bars(self.hooks.look_around, self.open_bar if can_open else None)
            screen.hold(self._held)
            self._screens[key] = screen
            self.stack.addWidget(screen)
        return screen

    def prepare_pages(self) -> None:
        """Build the pages of the navigation one by one, so that none is waited for when it comes.

        Each takes a turn of its own, and what is pressed meanwhile comes before the next.
        """
        stops = (key for key, page in self._pages.items() if page.stop == key)
        unbuilt = next((key for key in stops if key not in self._screens), None)
        if unbuilt is not None:
            self.background.soon(PREPARED, partial(self._prepare, unbuilt))

    def _prepare(self, key: str) -> None:
        self.build(key)
        self.background.soon(PREPARED, partial(self._make_ready, key))

    def _make_ready(self, key: str) -> None:
        screen = self._screens[key]
        if not screen.was_shown:
            screen.make_ready(self.stack.size())
        self.prepare_pages()

    def built(self, key: str) -> Screen | None:
        """A page that is built already."""
        return self._screens.get(key)

    def pages_to_find(self) -> Sequence[Page]:
        """Every page and part, for the finder."""
        return tuple(self._pages.values())

    def go(self, page: str, thing: object) -> None:
        """Show a page and, there, one thing, with the list in hand."""
        screen = self.show_page(page)
        screen.show_thing(thing)
        if thing is not None:  # or a part was gone to, which has put the keyboard in its place
            screen.focus_list()

    def find_here(self) -> None:
        """Put the cursor into the shown page's search."""
        self.current.focus_search()

    def find_next(self, by: int) -> None:
        """Go to the next row that is found, or with -1 to the one before; or say there is none."""
        if not self.current.find_next(by):
            self.toast.say(tr("There is no other row to go to"))

    def find_anything(self) -> None:
        """Find a command or a thing by its name."""
        if self._finder is None:
            from barkeep.desktop.shell.finder import Finder  # need not be there at first

            self._finder = Finder(self, self._host, self.navigation)
        self._finder.begin()

    def undo(self, named: Step | None = None) -> None:
        """Take back the change that the menu names, or another that is named, and say which."""
        self._step(partial(self.bar.undo, named or self._undoes), tr("Undone"))

    def redo(self) -> None:
        """Do the change again that the menu names, and say which."""
        self._step(partial(self.bar.redo, self._redoes), tr("Done again"))

    def read_again(self) -> None:
        """Read what another program may have written, and ask the shown page again."""

        def read(others_wrote: bool) -> None:
            self.current.clear_refusal()
            if others_wrote:
                self.toast.say(tr("What another program wrote was read"))
            else:
                self.current.notice(EVERYTHING)
                self.toast.say(tr("Read again: nobody else has changed the bar"))

        run_operation(self, self.bar.refresh, read, self.refuse)

    def reset_columns(self) -> None:
        """Lay the shown page's columns out as they were at first."""
        self.current.reset_columns()
        self.toast.say(tr("The columns are as they were at first"))

    def choose_theme(self, choice: str) -> None:
        """Show another theme."""
        self._theme.choose(cast(ThemeChoice, choice))
        self.theme_chosen.emit(choice)

    # What the menus start

    def new_bar(self) -> None:
        """Begin a bar in a new file."""
        folder = str(paths.data_folder() / "bar.barkeep")
        name, _kind = QFileDialog.getSaveFileName(self, tr("New bar"), folder, tr(BARS))
        if name:
            path = Path(name)
            named = path if path.suffix else path.with_suffix(".barkeep")
            self._show_in_place(self.hooks.new_bar, named)

    def open_bar(self) -> None:
        """Show the bar in another file."""
        folder = str(self.bar.offered("").parent)
        name, _kind = QFileDialog.getOpenFileName(self, tr("Open bar"), folder, tr(BARS))
        if name:
            self._show_in_place(self.hooks.open_bar, Path(name))

    def open_server_bar(self) -> None:
        """Show a bar on a server, or begin one there."""
        from barkeep.desktop.shell.server_bar import ServerBarDialog  # need not be there at first

        dialog = ServerBarDialog(self.bar.at, self)

        def show() -> None:
            hook = self.hooks.new_bar if dialog.is_new else self.hooks.open_bar
            if dialog.chosen is not None:
                self._show_in_place(hook, dialog.chosen)

        dialog.accepted.connect(show)
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        dialog.open()

    def import_files(self) -> None:
        """Take in lists of bottles."""
        self._choose_and_import(tr("Import bottles"), tr(LISTS))

    def import_specs(self) -> None:
        """Take in documents of specs."""
        from barkeep.documents.specs.files import SUFFIXES  # every reader of documents

        documents = " ".join(f"*{suffix}" for suffix in SUFFIXES)
        self._choose_and_import(
            tr("Import specs"), tr("Specs ({documents});;All files (*)", documents=documents)
        )

    def copy_rows(self, *, as_csv: bool = False) -> None:
        """Put the chosen rows of the shown page on the clipboard, and say how many."""
        keys = self.current.list_keys
        many = 0 if keys is None else keys.copy_rows_as_csv() if as_csv else keys.copy_rows()
        rows = tr("1 row is copied") if many == 1 else tr("{many} rows are copied", many=many)
        self.toast.say(rows if many else tr("No row is chosen to be copied"))

    def paste(self) -> None:
        """Take in what is on the clipboard: files, or the text of a document."""
        # With nothing on it, some platforms give no data at all.
        found, hooks = QGuiApplication.clipboard().mimeData() or QMimeData(), self.hooks
        files = _files_in(found)
        if files and hooks.import_files is not None:
            hooks.import_files(self.context, files, self)
        elif found.text().strip() and hooks.import_texts is not None:
            from barkeep.application.imports import NamedText

            hooks.import_texts(self.context, [NamedText(tr(CLIPBOARD), found.text())], self)
        else:
            self.toast.say(tr("There is no text to paste"))

    def publish(self) -> None:
        """Print or publish specs and labels, those ticked that are chosen on the shown page."""
        from barkeep.desktop.publishing.publish import publish  # need not be there at first

        publish(self.context, self.current.chosen_specs(), self)

    def export_bottles(self) -> None:
        """Write all bottles to a list that an import brings back."""
        from barkeep.application.publishing import list_of_bottles  # as above

        bar = self.bar
        self._write(
            _Written(tr("Export bottles"), tr(LISTS), tr("All bottles are written to {file}")),
            bar.offered("").with_name("bottles.csv"),
            lambda path: bar.write_file(path, list_of_bottles(bar.snapshot)),
        )

    def export_everything(self) -> None:
        """Write the whole bar to one document, which a restore takes back."""
        bar = self.bar
        self._write(
            _Written(tr("Export everything"), tr(WHOLE), tr("The whole bar is written to {file}")),
            bar.offered(".json"),
            lambda path: bar.write_file(path, bar.backups.everything()),
        )

    def _write(self, said: _Written, offered: Path, write: Callable[[Path], Path]) -> None:
        """Write a file the user names; one without a suffix gets that of the name offered."""
        name, _kind = QFileDialog.getSaveFileName(self, said.title, str(offered), said.kinds)
        if name:
            path = Path(name)
            named = path if path.suffix else path.with_suffix(offered.suffix)
            run_operation(
                self,
                lambda: write(named),
                lambda file: self.toast.say(said.done.format(file=file)),
                self.refuse,
            )

    def show_backups(self) -> None:
        """Show the bar's backups, to make one or put one in its place."""
        from barkeep.desktop.shell.backups import BackupsDialog  # as above

        BackupsDialog(self.context, self.may_close, self).open()

    def show_removed(self) -> None:
        """Show what was removed, to bring it back."""
        from barkeep.desktop.shell.removed import RemovedDialog  # as above

        RemovedDialog(self.bar, self).open()

    def back_up(self) -> None:
        """Copy the whole bar to another file."""
        bar = self.bar
        offered = bar.offered(f" {bar.snapshot.on:%Y-%m-%d}.barkeep")
        name, _kind = QFileDialog.getSaveFileName(self, tr("Back up"), str(offered), tr(BARS))
        if name:
            run_operation(
                self,
                lambda: bar.back_up(name),
                lambda path: self.toast.say(tr("Backed up to {path}", path=path)),
                self.refuse,
            )

    def settings(self) -> None:
        """Edit the bar's settings."""
        if self.hooks.settings is not None:
            self.hooks.settings(self.context, self)

    def make(self) -> None:
        """Make a syrup, juice or cordial out of what the bar holds."""
        from barkeep.desktop.making.house_made import MakeDialog  # as above

        MakeDialog(self.context, self).open()

    def shop(self) -> None:
        """Show what to buy for the shoots to come and for the pars."""
        from barkeep.desktop.buying.shopping import ShoppingDialog  # as above

        ShoppingDialog(self.context, self).open()

    def show_evening(self) -> None:
        """Show what was poured on a day, and what it cost."""
        from barkeep.desktop.drink.evening import EveningDialog  # as above

        EveningDialog(self.bar, self).open()

    def what_if(self) -> None:
        """Ask everything of a bar changed on paper; or, where it is, of the bar as it is again."""
        if self.bar.on_paper is not None:
            self.bar.as_it_is()
            self.toast.say(tr("This is the bar as it is"))
            return
        from barkeep.desktop.shell.what_if import WhatIfDialog  # as above

        WhatIfDialog(self.bar, self.current.likely_on_paper(), self).open()

    def check(self) -> None:
        """Look for what is wrong with the bar, and say it."""
        run_operation(self, self.bar.check, self._tell_findings, self.refuse)

    def show_shortcuts(self) -> None:
        """Show what the keyboard can do."""
        groups = (
            (tr("Everywhere"), self.actions_.all),
            (tr(self.current.title), (*self.current.bar_actions, self.current.more_action)),
        )
        ShortcutsDialog(groups, self).open()

    def show_changes(self) -> None:
        """Show what is new, by version."""
        TextDialog(tr("What is new"), changes_as_markdown(), self).open()

    def show_about(self) -> None:
        """Show version and places."""
        AboutDialog(self.bar.where, self).open()

    # Qt

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        if not self._was_shown:
            self._was_shown = True
            self.current.focus_list()
            self.first_shown.emit()
            if self.bar.is_opened:
                self.following.start()
            QTimer.singleShot(0, self, self._tell_what_was_left)
            QTimer.singleShot(0, self, self._tell_what_is_new)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        beside = scaled(WIDTH) + self.stack.minimumSizeHint().width()  # with large letters
        self.navigation.set_narrow(self.width() < max(scaled(NARROW_BELOW), beside))

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.ActivationChange and self.isActiveWindow():
            self._catch_up()

    def may_close(self) -> bool:
        """Whether everything is in the bar, or the user says what becomes of the rest."""
        seen = (each for each in self._screens.values() if each.was_shown)
        unsaved = {each: words for each in seen if (words := each.unsaved())}
        answer = _asked_about(" ".join(unsaved.values()), self) if unsaved else "later"
        if answer == "discard":
            for each in unsaved:
                each.forget_unsaved()
        return answer != "stay"

    def close_unasked(self) -> None:
        """Close without a question: the program ends, or the user was asked before."""
        self._asks = False
        self.close()

    def closeEvent(self, event: QCloseEvent) -> None:
        if self._asks and not self.may_close():
            event.ignore()
            return
        self.state.keep_data(GEOMETRY, self.saveGeometry())
        self.state.keep_text(PAGE, self.current.key)
        for screen in self._screens.values():
            screen.save_layout()
        self.state.write()
        self.help.close()
        self.following.stop()
        self.signals.stop()
        self.background.finish()
        super().closeEvent(event)

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        if _files_of(event):
            event.acceptProposedAction()

    def dropEvent(self, event: QDropEvent) -> None:
        files = _files_of(event)
        if files and self.hooks.import_files is not None:
            event.acceptProposedAction()
            self.hooks.import_files(self.context, files, self)

    # Inside

    def _add_to_shoot(self, names: Sequence[str]) -> None:
        """Ask which shoot these specs go into; they may come from the window of another bar."""
        from barkeep.desktop.drink.to_shoot import add_to_shoot

        by_name = {each.name: each for each in self.bar.snapshot.all_specs}
        strange = [name for name in names if name not in by_name]
        if strange:
            self.current.show_refusal(UnknownName("spec", strange[0]))
        else:
            add_to_shoot(self.current, [by_name[name] for name in names])

    def _centre(self) -> QWidget:
        centre = QWidget()
        shown = column_of(self.of_sample, self.on_paper, wide(self.stack), gap=0)
        row_of(self.navigation, wide(shown), on=centre, gap=0)
        return centre

    def _add_status(self) -> None:
        self.bar_name = ElidedLabel()
        self.bar_name.setContentsMargins(UNIT, 0, 0, 0)
        self.saved = text_label(tr("Saved"), quiet=True)
        bar = self.statusBar()
        bar.addWidget(self.bar_name, 1)
        self.saved_picture = PictureLabel("check", ICON - 4, "ready")
        bar.addPermanentWidget(self.saved_picture)
        bar.addPermanentWidget(self.saved)
        bar.setContentsMargins(0, 0, PAD, 0)

    def _say_saved(self, is_saved: bool) -> None:
        """Say whether every change is in the bar's file at once."""
        unsaved = tr("Out of reach") if is_on_a_server(self.bar.at) else tr("Not in its file")
        self.saved.setText(tr("Saved") if is_saved else unsaved)
        picture = ("check", "ready") if is_saved else ("warning", "warning")
        self.saved_picture.show_picture(*picture)

    def _connect(self) -> None:
        actions = self.actions_
        self.navigation.chosen.connect(self.show_page)
        self.navigation.for_a_shoot.connect(self._add_to_shoot)
        actions.page_wanted.connect(self.arrive)
        actions.theme_wanted.connect(self.choose_theme)
        actions.mark_theme(self._theme.choice)
        actions.text_size_wanted.connect(self.text_size_chosen)
        actions.mark_text_size(self._theme.text_size)
        actions.language_wanted.connect(self.language_chosen)
        offered: tuple[tuple[object, Callable[[], object]], ...] = (
            (actions.new_bar, self.new_bar),
            (actions.open_bar, self.open_bar),
            (actions.open_server_bar, self.open_server_bar),
            (actions.import_files, self.import_files),
            (actions.import_specs, self.import_specs),
            (actions.copy, self.copy_rows),
            (actions.copy_csv, partial(self.copy_rows, as_csv=True)),
            (actions.paste, self.paste),
            (actions.publish, self.publish),
            (actions.export_bottles, self.export_bottles),
            (actions.export_everything, self.export_everything),
            (actions.back_up, self.back_up),
            (actions.backups, self.show_backups),
            (actions.removed, self.show_removed),
            (actions.settings, self.settings),
            (actions.quit, self.close),
            (actions.undo, self.undo),
            (actions.redo, self.redo),
            (actions.find, self.find_here),
            (actions.find_next, partial(self.find_next, 1)),
            (actions.find_previous, partial(self.find_next, -1)),
            (actions.find_anything, self.find_anything),
            (actions.reset_columns, self.reset_columns),
            (actions.read_again, self.read_again),
            (actions.make, self.make),
            (actions.shopping, self.shop),
            (actions.evening, self.show_evening),
            (actions.what_if, self.what_if),
            (actions.check, self.check),
            (actions.help, self.help.show_here),
            (actions.help_pages, lambda: self.help.show_place(FIRST_PAGE)),
            (actions.shortcuts, self.show_shortcuts),
            (actions.changes, self.show_changes),
            (actions.about, self.show_about),
        )
        for action, act in offered:
            _on(action, act)
        actions.new_bar.setVisible(self.hooks.new_bar is not None)
        actions.open_bar.setVisible(self.hooks.open_bar is not None)
        actions.open_server_bar.setVisible(self.hooks.open_bar is not None)
        for action in (actions.import_files, actions.import_specs):
            action.setVisible(self.hooks.import_files is not None)
        actions.paste.setVisible(self.hooks.import_texts is not None)
        actions.settings.setVisible(self.hooks.settings is not None)

    def _restore(self) -> None:
        restore_window(self, self.state)
        page = self.state.text(PAGE)
        self.show_page(page if page in self._pages else next(iter(self._pages)))

    def _on_changed(self, changes: Changes) -> None:
        self._name_things()
        for screen in tuple(self._screens.values()):
            screen.notice(changes)

    def _name_things(self) -> None:
        name = self.bar.snapshot.settings.name
        shown = f"{name} ({self.bar.where})" if is_on_a_server(self.bar.at) else name
        self.setWindowTitle(
            tr("{bar} – on paper – barkeep", bar=shown)
            if self._held
            else tr("{bar} – barkeep", bar=shown)
        )
        self.bar_name.setText(name)
        self.navigation.show_name(name)
        if self.bar.is_read_only:
            self.saved.setText(tr("Read-only"))
            said = tr("{where} can be looked at, and nothing can be changed", where=self.bar.where)
        else:
            said = tr("Every change is in {where} at once", where=self.bar.where)
        self.saved.setToolTip(plain_tip(said))
        with suppress(*BUSY):  # whoever is named by the menu is undone, or nobody
            self._undoes, self._redoes = self.bar.next_step("undo"), self.bar.next_step("redo")
        undo, redo = (None if each is None else each.label for each in (self._undoes, self._redoes))
        self.actions_.name_undo(undo, redo)
        self._say_on_paper()

    @property
    def _held(self) -> str:
        """Why nothing can be written; empty where it can."""
        paper = self.bar.on_paper
        return "" if paper is None else f"{paper.in_words} {tr(NOT_WRITTEN)}"

    def _say_on_paper(self) -> None:
        """Say over every page that the bar is shown as it is not, and offer nothing that writes."""
        if self._held:
            self.on_paper.say(self._held, "warning", tr(GO_BACK), self.what_if)
        else:
            self.on_paper.clear()
        self.actions_.hold(self._held)
        for screen in self._screens.values():
            screen.hold(self._held)

    def follow(self) -> None:
        """Open the file of a bar that is shown as it was kept, and follow it from now on.

        What another program has written to it since is read.
        """
        run_operation(self, self.bar.refresh, None, self.refuse)
        self.following.start()

    def _catch_up(self) -> None:
        """Back after another program, or after midnight."""
        if self._was_shown and self.bar.is_opened:
            self.follow()
        if self.bar.snapshot.on != self._day:
            self._day = self.bar.snapshot.on
            self._on_changed(EVERYTHING)

    def _tell_what_was_left(self) -> None:
        """Say what was typed the last time and is not in the bar, and offer to go on with it."""
        from barkeep.desktop.shell.left import what_was_left  # is nothing, nearly always

        left, banner = what_was_left(self.state.folder, self.bar), self.current.banner
        said = " ".join([*filter(None, [self.told_first]), *(each.said for each in left)])
        if not said or (banner.text and not self.told_first):
            return

        def go_on() -> None:
            self.current.banner.clear()
            self.show_page(left[0].page).go_on_with(left[0].name)

        kind: BannerKind = "warning" if self.told_first else "info"
        banner.say(said, kind, left[0].act if left else "", go_on if left else None)

    def _tell_what_is_new(self) -> None:
        """Say once that this is another version than the last time, where nothing else is said."""
        is_known = self.state.text(VERSION) == __version__
        was_here = not self.state.data(GEOMETRY).isEmpty()
        banner = self.current.banner
        if is_known or (was_here and banner.text):
            return
        self.state.keep_text(VERSION, __version__)
        if was_here:
            said = tr("barkeep is now {version}.", version=__version__)
            banner.say(said, "info", tr("What is new"), self.show_changes)

    def _step(self, step: Callable[[], object], said: str) -> None:
        def done(result: object) -> None:
            self.toast.say(f"{said}: {getattr(result, 'label', '')}")

        def refused(error: UserError) -> None:
            with suppress(UserError):
                if not self.bar.refresh():  # which names the steps as well
                    self._name_things()
            self.refuse(error)

        run_operation(self, step, done, refused)

    def _choose_and_import(self, title: str, kinds: str) -> None:
        names, _kind = QFileDialog.getOpenFileNames(self, title, "", kinds)
        if names and self.hooks.import_files is not None:
            self.hooks.import_files(self.context, [Path(name) for name in names], self)

    def _show_in_place(self, show: Callable[[Location], object] | None, location: Location) -> None:
        if show is not None:
            run_operation(self, lambda: show(location), None, partial(self._not_shown, location))

    def _not_shown(self, location: Location, error: UserError) -> None:
        self.refuse(error)
        if isinstance(error, DamagedBar) or isinstance(error.__cause__, DamagedBar):
            self._look_over(location)

    def _tell_findings(self, findings: tuple[str, ...]) -> None:
        if findings:
            self._look_over(self.bar.at, findings)
        else:
            self.toast.say(tr("Nothing is wrong with this bar"))

    def _look_over(self, location: Location, known: tuple[str, ...] = ()) -> None:
        """Say what is wrong with a bar, and show the one in which what can be read was saved."""
        from barkeep.desktop.shell.check import CheckDialog  # need not be there at first

        dialog = CheckDialog(location, self, known)
        dialog.accepted.connect(lambda: self._show_saved(dialog.to_open))
        dialog.open()

    def _show_saved(self, path: Path | None) -> None:
        if path is not None:
            self._show_in_place(self.hooks.open_bar, path)

    def refuse(self, error: UserError) -> None:
        """Say on the page that is shown why something cannot be done."""
        if isinstance(error, BUSY):
            self.current.banner.say(str(error), "error", tr("Try again"), self.read_again)
        else:
            self.current.show_refusal(error)


def _on(action: object, act: Callable[[], object]) -> None:
    action.triggered.connect(lambda: act())  # type: ignore[attr-defined]


def _files_of(event: QDragEnterEvent | QDropEvent) -> list[Path]:
    copies = event.possibleActions() & Qt.DropAction.CopyAction
    return _files_in(event.mimeData()) if copies else []


def _files_in(data: QMimeData) -> list[Path]:
    return [Path(url.toLocalFile()) for url in data.urls() if url.isLocalFile()]


def _asked_about(unsaved: str, parent: QWidget) -> Literal["discard", "later", "stay"]:
    """Ask what becomes of what is not in the bar yet; Esc stays."""
    box = QMessageBox(parent)
    box.setIcon(QMessageBox.Icon.Warning)
    box.setWindowTitle("barkeep")
    box.setTextFormat(Qt.TextFormat.PlainText)
    box.setText(unsaved)
    box.setInformativeText(tr("Nothing of them is in the ledger. Left for later, they are kept."))
    lose = box.addButton(tr("Discard counts"), QMessageBox.ButtonRole.DestructiveRole)
    later = box.addButton(tr("Leave for &later"), QMessageBox.ButtonRole.AcceptRole)
    keep = box.addButton(tr("Keep counting"), QMessageBox.ButtonRole.RejectRole)
    box.setDefaultButton(keep)
    box.setEscapeButton(keep)
    accept_by_keys(box)
    box.exec()
    box.deleteLater()
    if box.clickedButton() is lose:
        return "discard"
    return "later" if box.clickedButton() is later else "stay"
