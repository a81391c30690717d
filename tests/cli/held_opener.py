"""Run barkeep, holding it once at a named place until it is let go.

    python -m tests.cli.held_opener PLACE READY GO ARGUMENT...

At the place it writes a byte to the pipe READY and reads one from the pipe GO.
The places: `connect`, just before SQLite opens the bar for the first time;
`begin`, just before the first transaction that may write; or what
`kill_points.watch_writes` says of one write, such as `write home.barkeep`.
"""

from __future__ import annotations

import os
import sys
from typing import Any

from sqlalchemy import event
from sqlalchemy.engine import Connection, Engine

from barkeep.cli import main
from tests.cli.kill_points import watch_writes

if __name__ == "__main__":
    place, ready, go = sys.argv[1], int(sys.argv[2]), int(sys.argv[3])
    waiting_for = [place]

    def reached(here: str) -> None:
        if here in waiting_for:
            waiting_for.clear()
            os.write(ready, b".")
            os.read(go, 1)

    @event.listens_for(Engine, "begin")
    def _begin(connection: Connection) -> None:
        if connection.get_execution_options().get("writing"):
            reached("begin")

    def _audit(name: str, _arguments: tuple[Any, ...]) -> None:
        if name == "sqlite3.connect":
            reached("connect")

    sys.addaudithook(_audit)
    watch_writes(lambda step: reached(step.what))
    sys.exit(main(sys.argv[4:]))
