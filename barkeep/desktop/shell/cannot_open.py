"""A bar that cannot be shown: why not, and what can be done instead."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from functools import partial
from pathlib import Path

from PySide6.QtWidgets import QFileDialog, QMessageBox

from barkeep.application import paths
from barkeep.errors import UserError
from barkeep.store.refusals import DamagedBar, NoBarThere

Role = QMessageBox.ButtonRole


@dataclass(frozen=True, slots=True)
class Wanted:
    """A bar to show: where it is, None for the usual one; `new` where one is to be begun there."""

    location: str | Path | None
    new: bool = False


def ask_instead(error: UserError) -> Wanted | None:
    """Say why a bar cannot be shown; what to show instead, None to leave."""
    while True:
        box = QMessageBox()
        box.setIcon(QMessageBox.Icon.Warning)
        box.setWindowTitle("barkeep")
        box.setText("This bar cannot be opened")
        box.setInformativeText(str(error))
        acts = [(box.addButton(words, Role.AcceptRole), act) for words, act in _offers(error)]
        box.setDefaultButton(acts[0][0])
        box.setEscapeButton(box.addButton("&Quit", Role.RejectRole))
        box.exec()
        act = next((act for each, act in acts if each is box.clickedButton()), None)
        box.deleteLater()
        if act is None:
            return None
        wanted = act()
        if wanted is not None:
            return wanted
        if not isinstance(error, DamagedBar | NoBarThere):
            return None


def _offers(error: UserError) -> list[tuple[str, Callable[[], Wanted | None]]]:
    """What can be done: words for a button, and what gives the bar to show then."""
    offers: list[tuple[str, Callable[[], Wanted | None]]] = []
    if isinstance(error, DamagedBar):
        offers.append(("&Look it over…", partial(_look_over, error.file)))
    if isinstance(error, NoBarThere):
        for each in error.likely:
            shown = Path(each).name.replace("&", "&&")
            offers.append((f"Open {shown}", partial(Wanted, Path(each))))
        offers.append(("&Begin a new bar there", partial(Wanted, error.file, new=True)))
    offers.append(("&Open another bar…", _choose))
    return offers


def _choose() -> Wanted | None:
    name, _kind = QFileDialog.getOpenFileName(None, "Open bar", str(paths.data_folder()))
    return Wanted(Path(name)) if name else None


def _look_over(file: str) -> Wanted | None:
    from barkeep.desktop.shell.check import CheckDialog  # the first paint does not wait for it

    dialog = CheckDialog(Path(file))
    dialog.exec()
    dialog.deleteLater()
    return None if dialog.to_open is None else Wanted(dialog.to_open)
