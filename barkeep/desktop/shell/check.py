"""What is wrong with a bar, and saving what can be read of it into a new one."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtWidgets import QDialog, QFileDialog, QPlainTextEdit, QWidget

from barkeep.application.checking import Checked, Saveable, check, save, take_as_it_is
from barkeep.desktop.look.metrics import PAD, TypeSize
from barkeep.desktop.screens.operations import run_operation
from barkeep.desktop.widgets.buttons import accept_by_keys, button, primary_button
from barkeep.desktop.widgets.labels import text_label
from barkeep.desktop.widgets.layouts import SPRING, column_of, row_of, wide
from barkeep.desktop.widgets.notices import Banner
from barkeep.errors import UserError
from barkeep.store.address import Location
from barkeep.store.location import read_location
from barkeep.store.place import in_a_file
from barkeep.translation import tr, tr_noop

TITLE = tr_noop("Check this bar")
BACK_UP_FIRST = tr_noop("The bar has faults. Back it up before anything else.")
MAY_BE_TAKEN = tr_noop(
    "Each of these can be as it is, but barkeep did not write it so. If another program was to "
    "change it, take the bar as it is; if not, restore a backup."
)
LOST = tr_noop("{things} thing could not be read:")
SEVERAL_LOST = tr_noop("{things} things could not be read:")
CANNOT_BE_OPENED = tr_noop("The bar cannot be opened as it is. Nothing of it is changed here.")


class CheckDialog(QDialog):
    """Says what is wrong with the bar in a place, and saves what can be read of a damaged one.

    `known` are findings that are known already, and may be of what is on the screen.
    `to_open` is the new bar that was saved and is to be shown, None where none is.
    """

    def __init__(
        self, location: Location, parent: QWidget | None = None, known: tuple[str, ...] = ()
    ) -> None:
        super().__init__(parent)
        accept_by_keys(self)
        self.setWindowTitle(tr(TITLE))
        self.resize(640, 440)
        self.to_open: Path | None = None
        self._location, self._known = location, known
        self._saved: Path | None = None
        self._head = text_label("", TypeSize.SUBTITLE, wrap=True)
        self._text = QPlainTextEdit()
        self._text.setReadOnly(True)
        self._text.setAccessibleName(tr("What was found"))
        self._banner = Banner()
        self._save = button(tr("&Save what can be read…"), self.save)
        self._take = button(tr("&Take it as it is"), self.take)
        self._open = primary_button(tr("&Open the new bar"), self._open_saved)
        self._close = primary_button(tr("C&lose"), self.reject)
        buttons = row_of(self._save, self._take, SPRING, self._open, self._close)
        column_of(self._head, wide(self._text), self._banner, buttons, on=self, margins=PAD)
        self._open.hide()
        self._save.hide()
        self._take.hide()
        run_operation(self, lambda: check(location), self._show, self.show_refusal)

    @property
    def told(self) -> str:
        """All that is said, as it can be copied."""
        return f"{self._head.text()}\n{self._text.toPlainText()}"

    def save(self) -> None:
        """Ask for a name, and write a new bar with everything that can be read."""
        file = in_a_file(read_location(self._location))
        offered = file.with_name(f"{file.stem} saved.barkeep")
        name, _kind = QFileDialog.getSaveFileName(self, tr("Save what can be read"), str(offered))
        if name:
            path = Path(name)
            self._saved = saved = path if path.suffix else path.with_suffix(".barkeep")
            run_operation(self, lambda: save(file, saved), self._show_saved, self.show_refusal)

    def take(self) -> None:
        """Make the bar's own what another program has changed in it."""
        run_operation(
            self, lambda: take_as_it_is(self._location), self._show_taken, self.show_refusal
        )

    def show_refusal(self, error: UserError) -> None:
        """Say why not."""
        self._banner.say(str(error), "error")

    def clear_refusal(self) -> None:
        """Take it away again."""
        self._banner.clear()

    def _show(self, found: Checked) -> None:
        self._head.setText(tr(BACK_UP_FIRST if found.opens else CANNOT_BE_OPENED))
        rows = list(dict.fromkeys((*found.findings, *self._known)))
        if not rows:
            self._head.setText(tr("Nothing is wrong with this bar"))
        if found.saveable is not None:
            rows += ["", tr("Of it {things} can be saved.", things=found.saveable.in_words)]
            self._save.show()
            self._save.setFocus()
        if found.may_be_taken:
            rows += ["", tr(MAY_BE_TAKEN)]
            self._take.show()
        self._text.setPlainText("\n".join(rows))

    def _show_taken(self, taken: tuple[str, ...]) -> None:
        self.clear_refusal()
        self._head.setText(tr("The bar is taken as it is"))
        self._text.setPlainText("\n".join(f"• {each}" for each in taken))
        self._take.hide()
        self._save.hide()
        if not self._known:  # else it is open
            self._saved = in_a_file(read_location(self._location))
            self._open.setText(tr("&Open the bar"))
            self._open.show()
            self._open.setFocus()

    def _show_saved(self, saved: Saveable) -> None:
        self.clear_refusal()
        self._head.setText(tr("Saved in {file}", file=self._saved))
        rows = [
            tr(
                "{things} are in the new bar; what could be undone is not.",
                things=saved.in_words,
            )
        ]
        if saved.lost:
            lost = len(saved.lost)
            rows += ["", tr(LOST if lost == 1 else SEVERAL_LOST, things=lost)]
            rows += [f"• {each}" for each in saved.lost]
        self._text.setPlainText("\n".join(rows))
        self._save.hide()
        self._take.hide()
        self._open.show()
        self._open.setFocus()

    def _open_saved(self) -> None:
        self.to_open = self._saved
        self.accept()
