"""The window follows its file: what others write to it, and what becomes of it beneath the window.

Once a second it is looked at, without waiting for whoever holds it. A file that is gone, or that
another lies in the place of, is said once, with what can be done; nothing that is shown is lost.
"""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from pathlib import Path
from time import monotonic

from PySide6.QtCore import QObject, Qt, QTimer
from PySide6.QtWidgets import QFileDialog, QMessageBox, QWidget

from barkeep.application.session import Followed
from barkeep.desktop.screens.operations import run_operation
from barkeep.desktop.screens.screen import Screen, ScreenContext
from barkeep.desktop.widgets.buttons import accept_by_keys
from barkeep.domain.bar.changes import EVERYTHING
from barkeep.domain.days import day_said
from barkeep.translation import tr, tr_noop

EVERY_MS = 1000
RESTS = 20
"""A server that does not answer holds the window, and is asked again after so many times that."""
GONE = tr_noop(
    "{file} is gone: it was deleted, moved or renamed. What is shown was read before that, and "
    "nothing can be written to it."
)
REPLACED = tr_noop(
    "Another file lies in the place of {file} since it was opened. What is shown is still the bar "
    "that was opened, and nothing can be written to it."
)
AWAY = tr_noop(
    "{file} cannot be reached just now. What is shown was read before that, and nothing can be "
    "written to it until it is; barkeep goes on trying by itself."
)
RESTORED = tr_noop("{file} was put back to an older state, which is what is shown now. {newest}")
FOREIGN = tr_noop(
    "Something other than barkeep changed {file}: another program, or damage. What stands there "
    "now is shown; look at what it is before you go on."
)
BACK_IN_REACH = tr_noop("{file} can be reached again.")
BACK = tr_noop("{file} is back, as it was opened.")
LOOK_OVER = tr_noop("Check this bar…")
WHAT_NOW = tr_noop("What can be done…")


class Following(QObject):
    """`question` is what was asked last of a file that is gone or replaced."""

    def __init__(
        self,
        context: ScreenContext,
        current: Callable[[], Screen],
        say_saved: Callable[[bool], object],
        parent: QWidget,
        *,
        check: Callable[[], object],
    ) -> None:
        """`current` is the page that is shown; `say_saved` is told whether a change is saved.

        `check` looks the bar over.
        """
        super().__init__(parent)
        self._context, self._current, self._say_saved = context, current, say_saved
        self._parent, self._check = parent, check
        self._last: Followed = "same"
        self.question: QMessageBox | None = None
        self._timer = QTimer(self)
        self._timer.setInterval(EVERY_MS)
        self._timer.timeout.connect(self.look)

    def start(self) -> None:
        """Look every second from now on."""
        self._timer.start()

    def stop(self) -> None:
        """Look no longer."""
        self._timer.stop()

    def look(self) -> None:
        """Look at the file now, and say what has become of it.

        Where that cannot be found out, it is said once and not each second.
        """
        bar, refuse = self._context.bar, self._context.refuse
        began = monotonic()
        if not run_operation(self._parent, bar.follow, self._tell, refuse):
            self.stop()
        took_ms = 1000 * (monotonic() - began) if self._last == "away" else 0
        self._timer.setInterval(max(EVERY_MS, int(RESTS * took_ms)))

    def _tell(self, now: Followed) -> None:
        before, self._last = self._last, now if now in ("gone", "replaced", "away") else "same"
        if now == "restored":
            self._say(tr(RESTORED, file=self._file, newest=self._newest()), "", None)
        elif now == "foreign":
            self._say(tr(FOREIGN, file=self._file), tr(LOOK_OVER), self._check)
        elif self._last == before:
            return
        elif self._last == "same":
            self._say_saved(True)
            words = BACK_IN_REACH if before == "away" else BACK
            self._say(tr(words, file=self._file), "", None)
        elif now == "away":
            self._say_saved(False)
            self._say(tr(AWAY, file=self._file), "", None)
        else:
            self._say_saved(False)
            words = GONE if now == "gone" else REPLACED
            self._say(tr(words, file=self._file), tr(WHAT_NOW), partial(self.ask, now))

    def ask(self, what: Followed) -> None:
        """Offer what can be done about a file that is gone or replaced."""
        box = QMessageBox(self._parent)
        box.setIcon(QMessageBox.Icon.Warning)
        box.setWindowTitle("barkeep")
        box.setTextFormat(Qt.TextFormat.PlainText)
        box.setText(tr(GONE if what == "gone" else REPLACED, file=self._file))
        role = QMessageBox.ButtonRole.ActionRole
        ways: dict[object, Callable[[], object]] = {}
        if what == "gone":
            ways[box.addButton(tr("&Write it there again"), role)] = self.put_back
        else:
            ways[box.addButton(tr("&Show the new one"), role)] = self.show_new
        ways[box.addButton(tr("Save what is shown &elsewhere…"), role)] = self.save_elsewhere
        leave = box.addButton(tr("&Go on looking"), QMessageBox.ButtonRole.RejectRole)
        box.setDefaultButton(leave)
        box.setEscapeButton(leave)
        accept_by_keys(box)
        box.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        box.finished.connect(lambda: ways.get(box.clickedButton(), self._leave)())
        self.question = box
        box.open()

    def put_back(self) -> None:
        """Write the bar that is shown where its file was."""
        done = tr("The bar is in {file} again, with everything that is shown", file=self._file)
        self._do(self._context.bar.put_back, done)

    def show_new(self) -> None:
        """Show the bar that lies there now."""
        self._do(self._context.bar.open_again, tr("{file} was opened anew", file=self._file))

    def save_elsewhere(self) -> None:
        """Copy the bar that is shown to another file."""
        offered = self._context.bar.offered(" saved.barkeep")
        name, _kind = QFileDialog.getSaveFileName(
            self._parent, tr("Save what is shown"), str(offered)
        )
        if name:
            run_operation(
                self._parent,
                lambda: self._context.bar.back_up(Path(name)),
                lambda path: self._context.toast.say(tr("What is shown is in {path}", path=path)),
                self._context.refuse,
            )

    def _do(self, act: Callable[[], object], said: str) -> None:
        def done(_result: object) -> None:
            self._last = "same"
            self._say_saved(True)
            self._current().banner.clear()
            self._current().notice(EVERYTHING)
            self._context.toast.say(said)

        run_operation(self._parent, act, done, self._context.refuse)

    def _leave(self) -> None:
        """Nothing is done; the status bar goes on saying it."""

    @property
    def _file(self) -> str:
        return self._context.bar.where

    def _newest(self) -> str:
        found = self._context.bar.newest_step()
        if found is None:
            return tr("Nothing was done to it that can be undone.")
        return tr(
            "What was done last in it is “{label}”, on {day} at {time}.",
            label=found.label,
            day=day_said(found.at.date()),
            time=f"{found.at:%H:%M}",
        )

    def _say(self, words: str, act: str, on_act: Callable[[], object] | None) -> None:
        self._current().banner.say(words, "warning", act, on_act)
