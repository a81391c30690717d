"""Which bar on a server to show: its address, and the password where one has to be given."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtWidgets import QCheckBox, QLineEdit, QWidget

from barkeep.desktop.screens.form_dialog import FormDialog
from barkeep.errors import UserError
from barkeep.store.address import (
    SCHEMES,
    Location,
    ServerAddress,
    is_on_a_server,
    read_address,
)
from barkeep.translation import tr, tr_noop

TITLE = tr_noop("Open a bar on a server")
WORDS = tr_noop(
    "A team keeps its bar in a database of a PostgreSQL server, where all of them see each "
    "other’s changes at once."
)
EXAMPLE = f"{SCHEMES[0]}://user@host/database"
HOW = tr_noop(
    "Such as {example}. Where the database holds several bars, add ?schema= and the one’s name."
)
PASSWORD_HOW = tr_noop(
    "Empty where PGPASSWORD or the file ~/.pgpass has it. It is written down nowhere."
)


class ServerBarDialog(FormDialog):
    """`chosen` is the address that was given, None until then; `is_new` where one is begun."""

    def __init__(self, shown: Location | None = None, parent: QWidget | None = None) -> None:
        super().__init__(tr(TITLE), tr("&Open"), parent)
        self.chosen: ServerAddress | None = None
        self.address, self.password = QLineEdit(), QLineEdit()
        self.new = QCheckBox(tr("&Begin a new bar there"))
        self.address.setPlaceholderText(EXAMPLE)
        self.password.setEchoMode(QLineEdit.EchoMode.Password)
        self.say_intro(tr(WORDS))
        self.add_field("address", tr("&Address"), self.address, hint=tr(HOW, example=EXAMPLE))
        self.add_field("password", tr("&Password"), self.password, hint=tr(PASSWORD_HOW))
        self.add_field("new", "", self.new)
        self.setMinimumWidth(560)
        self._begin_from(shown)

    @property
    def is_new(self) -> bool:
        """Whether a bar is to be begun there."""
        return self.new.isChecked()

    def submit(self) -> None:
        """Read the address; a password of its own goes before one that is in it."""
        found = self.read("address", lambda: read_address(self.address.text().strip()))
        if found is not None:
            typed = self.password.text()
            self.chosen = replace(found, password=typed) if typed else found
            self.accept()

    def _begin_from(self, shown: Location | None) -> None:
        """Stand on the server that is shown, or that could not be: often only a word was amiss."""
        if shown is None or not is_on_a_server(shown):
            return
        try:
            address = shown if isinstance(shown, ServerAddress) else read_address(str(shown))
        except UserError:
            return
        self.address.setText(address.name)
        self.password.setText(address.password)
