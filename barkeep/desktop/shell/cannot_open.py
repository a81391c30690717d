"""A bar that cannot be shown: why not, and what can be done instead."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFileDialog, QMessageBox

from barkeep.application import paths
from barkeep.desktop.widgets.buttons import accept_by_keys
from barkeep.errors import UnreadableFile, UserError
from barkeep.store.address import Location, is_on_a_server
from barkeep.store.refusals import DamagedBar, NoBarThere, OutOfReach
from barkeep.translation import tr, tr_noop

if TYPE_CHECKING:
    from barkeep.application.kept_backups import BackupOffered

Role = QMessageBox.ButtonRole

RESTORE = tr_noop("Restore that backup")


@dataclass(frozen=True, slots=True)
class Wanted:
    """A bar to show: where it is, None for the usual one; `new` where one is to be begun there."""

    location: Location | None
    new: bool = False


def ask_instead(error: UserError, wanted: Wanted) -> Wanted | None:
    """Say why a bar cannot be shown; what to show instead, None to leave.

    Of a bar that cannot be read the newest good backup is offered, and put in its place.
    """
    offered = _with_backup(error, wanted.location or paths.default_bar())
    while True:
        box = _box(offered)
        acts = [
            (box.addButton(words, Role.AcceptRole), act)
            for words, act in _offers(error, offered, wanted)
        ]
        box.setDefaultButton(acts[0][0])
        box.setEscapeButton(box.addButton(tr("&Quit"), Role.RejectRole))
        box.exec()
        act = next((act for each, act in acts if each is box.clickedButton()), None)
        box.deleteLater()
        if act is None:
            return None
        try:
            instead = act()
        except UserError as refused:
            return ask_instead(refused, wanted)
        if instead is not None:
            return instead
        if not isinstance(error, DamagedBar | NoBarThere):
            return None


def restore_instead(error: UnreadableFile, location: Location) -> None:
    """Put the backup of a bar that cannot be read in its place, where that is agreed to.

    Raises the error, with the backup it has, where it is not, and a `UserError`
    where that could not be done.
    """
    from barkeep.application.kept_backups import BackupOffered  # not before the first paint

    offered = _with_backup(error, location)
    if not isinstance(offered, BackupOffered):
        raise error
    if not _is_agreed(offered):
        raise offered from error
    _put_back(offered.backup, location)


def _is_agreed(offered: BackupOffered) -> bool:
    box = _box(offered)
    restored = box.addButton(tr(RESTORE), Role.AcceptRole)
    box.setEscapeButton(box.addButton(tr("Cancel"), Role.RejectRole))
    box.exec()
    is_agreed = box.clickedButton() is restored
    box.deleteLater()
    return is_agreed


def _with_backup(error: UserError, location: Location) -> UserError:
    """The error with the newest good backup of a bar that cannot be read, where there is one."""
    if not isinstance(error, UnreadableFile):
        return error
    from barkeep.application.kept_backups import with_backup_offered

    return with_backup_offered(error, location, lambda _backup: "")  # the buttons say the rest


def _box(error: UserError) -> QMessageBox:
    box = QMessageBox()
    box.setIcon(QMessageBox.Icon.Warning)
    box.setWindowTitle("barkeep")
    box.setTextFormat(Qt.TextFormat.PlainText)
    box.setText(tr("This bar cannot be opened"))
    box.setInformativeText(str(error))
    accept_by_keys(box)
    return box


def _offers(
    error: UserError, offered: UserError, wanted: Wanted
) -> list[tuple[str, Callable[[], Wanted | None]]]:
    """What can be done: words for a button, and what gives the bar to show then."""
    from barkeep.application.kept_backups import BackupOffered

    offers: list[tuple[str, Callable[[], Wanted | None]]] = []
    if isinstance(offered, BackupOffered):
        offers.append((tr(RESTORE), partial(_restored, offered.backup, wanted)))
    if isinstance(error, DamagedBar):
        offers.append((tr("&Look it over…"), partial(_look_over, error.file)))
    if isinstance(error, NoBarThere):
        for each in error.likely:
            shown = Path(each).name.replace("&", "&&")
            offers.append((tr("Open {bar}", bar=shown), partial(Wanted, Path(each))))
        offers.append((tr("&Begin a new bar there"), partial(_begin_there, error, wanted)))
    if isinstance(error, OutOfReach):
        offers.append((tr("&Try again"), partial(Wanted, wanted.location, new=wanted.new)))
    offers.append((tr("&Open another bar…"), _choose))
    if _is_on_a_server(wanted):
        offers.append((tr("Open one on a &server…"), partial(_choose_server, wanted)))
    return offers


def _begin_there(error: NoBarThere, wanted: Wanted) -> Wanted:
    """A new bar where none was; of an address, as it was given: no error holds its password."""
    return Wanted(wanted.location if _is_on_a_server(wanted) else error.file, new=True)


def _is_on_a_server(wanted: Wanted) -> bool:
    return wanted.location is not None and is_on_a_server(wanted.location)


def _choose_server(wanted: Wanted) -> Wanted | None:
    from barkeep.desktop.shell.server_bar import ServerBarDialog  # the first paint needs it not

    dialog = ServerBarDialog(wanted.location)
    dialog.exec()
    dialog.deleteLater()
    return None if dialog.chosen is None else Wanted(dialog.chosen, new=dialog.is_new)


def _restored(backup: str, wanted: Wanted) -> Wanted:
    _put_back(backup, wanted.location or paths.default_bar())
    return Wanted(wanted.location)


def _put_back(backup: str, location: Location) -> None:
    """Put a backup in the place of a bar that cannot be read, which is kept."""
    from barkeep.application.backups import restore
    from barkeep.application.kept_backups import backup_named, bar_at, folders_of

    bar = bar_at(location)
    restore(bar, backup_named(bar, backup), folders_of(bar)[-1])


def _choose() -> Wanted | None:
    name, _kind = QFileDialog.getOpenFileName(None, tr("Open bar"), str(paths.data_folder()))
    return Wanted(Path(name)) if name else None


def _look_over(file: str) -> Wanted | None:
    from barkeep.desktop.shell.check import CheckDialog  # the first paint does not wait for it

    dialog = CheckDialog(Path(file))
    dialog.exec()
    dialog.deleteLater()
    return None if dialog.to_open is None else Wanted(dialog.to_open)
