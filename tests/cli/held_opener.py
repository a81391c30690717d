"""Run barkeep in processes of their own, each held once at a named place until it is let go.

    python -m tests.cli.held_opener SOCKET

What it loads, it loads once: it forks for each message that comes by the socket, which is JSON
with the `place`, the `words` of the command and its `surroundings`, and brings the pipes READY,
GO, OUT, ERR and ENDED. At the place what is about to be done is written to READY and a byte is
read from GO; at the end the command's status goes to ENDED. The places: `connect`, just before
SQLite opens a file for the first time, which READY is told as well; `connect PATH`, just before it
opens that by its path; `begin`, just before the first transaction that may write; `make NAME`, just
before a folder of that name is made; what `kill_points.watch_writes` says of one write, such as
`write home.barkeep`; or none.
"""

from __future__ import annotations

import json
import os
import socket
import sys
import traceback
from contextlib import redirect_stderr, redirect_stdout, suppress
from io import StringIO
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import Any

from sqlalchemy import event
from sqlalchemy.engine import Connection, Engine

from barkeep.cli import main
from barkeep.store import backup
from tests.cli.kill_points import watch_writes

PIPES = 5


def run(asked: dict[str, Any], ready: int, go: int) -> int:
    """Run the command that is asked for; its status."""
    waiting_for = [asked["place"]]
    os.environ.update(asked["surroundings"])

    def reached(here: str, *which: str) -> None:
        if here in waiting_for:
            waiting_for.clear()
            os.write(ready, " ".join((here, *which)).encode())
            os.read(go, 1)

    @event.listens_for(Engine, "begin")
    def _begin(connection: Connection) -> None:
        if connection.get_execution_options().get("writing"):
            reached("begin")

    def _audit(name: str, arguments: tuple[Any, ...]) -> None:
        if name == "sqlite3.connect":
            # A path, or an address with `?mode=`.
            reached("connect", Path(str(arguments[0]).partition("?")[0]).name)
            reached(f"connect {arguments[0]}")
        elif name == "os.mkdir":
            reached(f"make {Path(arguments[0]).name}")

    sys.addaudithook(_audit)
    watch_writes(lambda step: reached(step.what))
    return main(asked["words"])


def answer(message: bytes, pipes: list[int]) -> None:
    """In a process of its own: run, tell the status, and end."""
    ready, go, out, err, ended = pipes
    sys.stdout = os.fdopen(out, "w", encoding="utf-8")
    sys.stderr = os.fdopen(err, "w", encoding="utf-8")
    status = 1
    try:
        status = run(json.loads(message), ready, go)
    except SystemExit as leaving:
        status = leaving.code if isinstance(leaving.code, int) else 1
    except BaseException:
        traceback.print_exc()
    finally:
        sys.stdout.flush()
        sys.stderr.flush()
        os.write(ended, b"%d" % status)
        os._exit(0)


if __name__ == "__main__":
    backup.BUSY_MS = 600_000  # a copy waits for who is held, however slow the machine is
    with TemporaryDirectory() as folder, redirect_stdout(StringIO()), redirect_stderr(StringIO()):
        main(["--bar", f"{folder}/warm.barkeep", "--new", "bottles"])
    with socket.socket(fileno=int(sys.argv[1])) as asking:
        while True:
            message, pipes, _flags, _address = socket.recv_fds(asking, 65_536, PIPES)
            if not message:
                break
            if os.fork() == 0:
                asking.close()
                answer(message, pipes)
            for each in pipes:
                os.close(each)
    with suppress(ChildProcessError):
        while True:
            os.wait()
