"""One window a bar: a lock that dies with its process, and a second start that raises the first.

The lock is a file in the state folder; the first window listens on a local socket for others that
ask for the bar. A lock that is found without its process tells that the window before was not
closed but ended.
"""

from __future__ import annotations

import os
from collections.abc import Callable
from contextlib import suppress
from datetime import datetime
from hashlib import sha256
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QLockFile, QObject

from barkeep.errors import UserError
from barkeep.store.address import At
from barkeep.translation import tr, tr_noop

if TYPE_CHECKING:
    from PySide6.QtNetwork import QLocalServer

FOLDER = "open"
WAIT_MS = 3000
"""How long another window has to answer."""
COME_FORWARD = tr_noop("{file} is open in another window already; it was brought to the front.")
SILENT = tr_noop("{file} is open in another window already; it does not answer just now.")
RAISE, RAISED = b"raise\n", b"raised\n"


class OpenElsewhere(UserError):
    """A bar that another window of this user's has open; `raised` says that it came forward."""

    file: str
    raised: bool

    def __str__(self) -> str:
        return tr(COME_FORWARD if self.raised else SILENT, file=self.file)


class OneWindow(QObject):
    """The right of this process to show a bar, from `take` to `leave`."""

    def __init__(self, bar: At, state_folder: Path, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.bar = os.path.realpath(bar) if isinstance(bar, Path) else bar.name
        digest = sha256(f"{state_folder}\n{self.bar}".encode(errors="surrogateescape")).hexdigest()
        self._name = f"barkeep-{digest[:24]}"
        self._file = state_folder / FOLDER / f"{self._name}.lock"
        self._lock = QLockFile(str(self._file))
        self._lock.setStaleLockTime(0)  # as long as its process lives, however long that is
        self._server: QLocalServer | None = None
        self.ended: datetime | None = None
        """When a window was opened over this bar that was never closed; None for none."""

    def take(self) -> None:
        """Take the bar for this process. Raises `OpenElsewhere`, and raises the other window.

        Where no lock can be written, as on a full disk, the bar is shown all the same.
        """
        with suppress(OSError):
            self._file.parent.mkdir(parents=True, exist_ok=True)
        left = self._when_left()
        if self._lock.tryLock(0):
            self.ended = left
        elif self._lock.error() == QLockFile.LockError.LockFailedError:
            raise OpenElsewhere(self.bar, _asked_to_raise(self._name))

    def listen(self, come_forward: Callable[[], object]) -> None:
        """From now on come forward when another start asks for this bar."""
        from PySide6.QtNetwork import QLocalServer  # no start waits for it

        def asked() -> None:
            while (caller := server.nextPendingConnection()) is not None:
                come_forward()
                # Who asked hangs up: what it has not read yet would go with the connection.
                caller.disconnected.connect(caller.deleteLater)
                caller.write(RAISED)
                caller.flush()

        self._server = server = QLocalServer(self)
        server.setSocketOptions(QLocalServer.SocketOption.UserAccessOption)
        server.newConnection.connect(asked)
        QLocalServer.removeServer(self._name)  # what a process that was killed has left
        server.listen(self._name)

    def leave(self) -> None:
        """Let another window have the bar."""
        if self._server is not None:
            self._server.close()
            self._server = None
        self._lock.unlock()

    def _when_left(self) -> datetime | None:
        try:
            return datetime.fromtimestamp(self._file.stat().st_mtime)
        except OSError:
            return None


def _asked_to_raise(name: str) -> bool:
    """Whether the window that listens under a name has come forward."""
    from PySide6.QtNetwork import QLocalSocket

    socket = QLocalSocket()
    socket.connectToServer(name)
    if not socket.waitForConnected(WAIT_MS):
        return False
    socket.write(RAISE)
    socket.flush()
    # The answer may be there before it is waited for, and would then be waited for in vain.
    if not socket.bytesAvailable():
        socket.waitForReadyRead(WAIT_MS)
    came = bytes(socket.readAll().data()) == RAISED
    socket.abort()
    return came
