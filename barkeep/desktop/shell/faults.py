"""Faults of the program: written to a log, shown once, and survived."""

from __future__ import annotations

import faulthandler
import logging
import platform
import sys
import threading
import traceback
from collections.abc import Callable
from contextlib import suppress
from datetime import datetime
from pathlib import Path
from types import TracebackType
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Qt, QUrl, Signal, qVersion
from PySide6.QtGui import QDesktopServices, QFontDatabase, QGuiApplication
from PySide6.QtWidgets import QDialog, QHBoxLayout, QPlainTextEdit, QWidget

from barkeep import __version__
from barkeep.application.fault_log import FaultLog
from barkeep.desktop.look.metrics import PAD, TypeSize
from barkeep.desktop.widgets.buttons import accept_by_keys, button, primary_button
from barkeep.desktop.widgets.labels import PictureLabel, text_label
from barkeep.desktop.widgets.layouts import SPRING, column_of, row_of, wide
from barkeep.domain.days import day_said
from barkeep.errors import UserError
from barkeep.store.address import At, is_on_a_server
from barkeep.translation import tr, tr_noop

if TYPE_CHECKING:  # the window is painted before a bar can be opened
    from barkeep.application.bar import Bar

TITLE = tr_noop("barkeep has a fault")
WORDS = tr_noop(
    "The last step may not have been done; you can go on. If it happens again, send the report to "
    "whoever looks after barkeep: it says where it happened, and nothing of what is in your bar."
)


class CrashDialog(QDialog):
    """Shows details and the log's place; later faults are added to an open dialog."""

    def __init__(
        self, details: str, log: Path, parent: QWidget | None = None, *, report: str = ""
    ) -> None:
        super().__init__(parent)
        accept_by_keys(self)
        self.report = report or details
        """What is copied: the details without anything of the bar's."""
        self.safety = text_label("", TypeSize.STRONG, wrap=True)
        self.safety.hide()
        self.setWindowTitle(tr(TITLE))
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.resize(640, 440)
        self._log = log
        self._details = QPlainTextEdit(details)
        self._details.setReadOnly(True)
        self._details.setAccessibleName(tr("Details"))
        self._details.setFont(QFontDatabase.systemFont(QFontDatabase.SystemFont.FixedFont))
        head = row_of(
            PictureLabel("error", 32, "danger"), wide(text_label(tr(TITLE), TypeSize.SUBTITLE))
        )
        column_of(
            head,
            self.safety,
            text_label(tr(WORDS), wrap=True),
            wide(self._details),
            text_label(tr("Written to {log}", log=log), TypeSize.CAPTION, quiet=True, wrap=True),
            self._buttons(),
            on=self,
            margins=PAD,
        )

    @property
    def details(self) -> str:
        """What is shown."""
        return self._details.toPlainText()

    def say_safety(self, words: str) -> None:
        """Say what a check of the bar has found."""
        self.safety.setText(words)
        self.safety.setVisible(bool(words))

    def add(self, details: str, report: str = "") -> None:
        """Show one more fault below the others."""
        between = f"\n{'-' * 40}\n"
        self._details.appendPlainText(f"{between}{details}")
        self.report = f"{self.report}{between}{report or details}"

    def copy(self) -> None:
        """Put the report on the clipboard."""
        QGuiApplication.clipboard().setText(self.report)

    def _buttons(self) -> QHBoxLayout:
        close = primary_button(tr("&Go on"), self.accept)
        close.setDefault(True)
        close.setFocus()
        return row_of(
            button(tr("&Copy report"), self.copy),
            button(tr("Open log &folder"), self._open_folder),
            SPRING,
            close,
        )

    def _open_folder(self) -> None:
        QDesktopServices.openUrl(QUrl.fromLocalFile(str(self._log.parent)))


LOGGER = logging.getLogger("barkeep")


class Faults(QObject):
    """Catches what nothing else caught; signals come on the GUI thread.

    `met` carries the details of a fault and the report of it, `refused` a `UserError` that
    nobody has shown.
    """

    met = Signal(str, str)
    refused = Signal(object)
    _from_anywhere = Signal(str, str)
    _refused_anywhere = Signal(object)

    def __init__(self, log: Path, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.log = log
        self._from_anywhere.connect(self.met, Qt.ConnectionType.QueuedConnection)
        self._refused_anywhere.connect(self.refused, Qt.ConnectionType.QueuedConnection)
        self._handler = FaultLog(log)
        self._handler.setFormatter(logging.Formatter("%(asctime)s %(levelname)s %(message)s"))
        LOGGER.addHandler(self._handler)
        self._before: Callable[..., object] = sys.excepthook
        self._stacks = log.with_suffix(".stack").open("a", encoding="utf-8")

    def catch(self) -> None:
        """From now on take every uncaught error, of this thread and others, and hard crashes."""
        sys.excepthook = self._on_error
        threading.excepthook = self._on_thread_error
        faulthandler.enable(self._stacks)

    def stop(self) -> None:
        """Put everything back and close the log."""
        sys.excepthook = self._before
        threading.excepthook = threading.__excepthook__
        faulthandler.disable()
        LOGGER.removeHandler(self._handler)
        self._handler.close()
        self._stacks.close()

    def write_down(self, error: BaseException) -> str:
        """Write an error to the log; its details."""
        details = details_of(error)
        LOGGER.error("%s", details)
        return details

    def _on_error(
        self,
        kind: type[BaseException],
        error: BaseException,
        trace: TracebackType | None,
    ) -> None:
        if issubclass(kind, KeyboardInterrupt):
            sys.__excepthook__(kind, error, trace)
            return
        if isinstance(error, UserError):
            LOGGER.warning("%s", details_of(error))
            self._refused_anywhere.emit(error)
            return
        self._from_anywhere.emit(self.write_down(error), report_of(error))

    def _on_thread_error(self, args: threading.ExceptHookArgs) -> None:
        if args.exc_value is not None:
            self._on_error(args.exc_type, args.exc_value, args.exc_traceback)


def details_of(error: BaseException) -> str:
    """Everything a report needs: versions, platform, and where it happened."""
    trace = "".join(traceback.format_exception(error))
    return f"{versions()}\n\n{trace}"


def report_of(error: BaseException) -> str:
    """What can be sent to anybody: versions, kinds of errors, and the places in the program.

    What an error says is left out, since it may name what is in the bar, and so is every
    folder.
    """
    parts: list[str] = []
    seen: BaseException | None = error
    while seen is not None and len(parts) < MOST_CAUSES:
        frames = traceback.extract_tb(seen.__traceback__)
        places = "\n".join(
            f"  {_place(each.filename)}:{each.lineno} {each.name}" for each in frames
        )
        parts.append(f"{type(seen).__module__}.{type(seen).__qualname__}\n{places}")
        seen = seen.__cause__ or seen.__context__
    return "\n\n".join((versions(), "\nbefore it, ".join(parts)))


MOST_CAUSES = 10


def _place(file: str) -> str:
    """A file of the program or of a library, without the folders it lies in."""
    parts = Path(file).parts
    for root in ("site-packages", "barkeep"):
        if root in parts:
            place = len(parts) - 1 - parts[::-1].index(root)
            return "/".join(parts[place + (root == "site-packages") :])
    return Path(file).name


def safety_in_words(bar: Bar | None) -> str:
    """Whether the bar is safe, which is said only once it was checked; empty without one."""
    if bar is None:
        return ""
    try:
        moved = tr("{where} is not the file that was opened.", where=bar.where)
        findings = bar.check() if bar.is_in_place else (moved,)
    except Exception as error:  # whatever it was that went wrong may do so again
        return tr(
            "Whether your bar is safe could not be checked ({error}).", error=type(error).__name__
        )
    if findings:
        return tr(
            "Your bar was checked just now, and something is wrong with it. Back it up before "
            "anything else. {findings}",
            findings=" ".join(findings),
        )
    if is_on_a_server(bar.at):
        return tr(
            "Your bar was checked just now: its database is sound, and all that was saved is in it."
        )
    return tr("Your bar was checked just now: its file is sound, and all that was saved is in it.")


def last_end_in_words(opened: datetime, log: Path, bar: At) -> str:
    """What is told at the start after a window over a bar that was never closed."""
    checked = tr(
        "The file was checked as it was opened now, and is sound: all that was saved is in it"
    )
    if is_on_a_server(bar):
        checked = tr("All that was saved is on the server; Bar ▸ Check this bar looks it over")
    stacks = log.with_suffix(".stack")
    said = tr(
        "The window that was opened on {day} at {time} was not closed but ended, as by "
        "a crash or a power cut. {checked}.",
        day=day_said(opened.date()),
        time=f"{opened:%H:%M}",
        checked=checked,
    )
    with suppress(OSError):
        found = stacks.stat()
        if found.st_size and found.st_mtime >= opened.timestamp():
            said += " " + tr("Where it happened is in {stacks}.", stacks=stacks)
    return said


def versions() -> str:
    """barkeep, Python, Qt and the platform, one line each."""
    return "\n".join(
        (
            f"barkeep {__version__}",
            f"Python {platform.python_version()}",
            f"Qt {qVersion()}",
            platform.platform(),
        )
    )
