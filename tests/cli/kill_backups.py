"""Kill a command before each step it takes to change a file, and see what is there then.

Run as a program of its own, since it forks:

    python -m tests.cli.kill_backups FOLDER-WITH-A-BAR FOLDER EVERY ARGUMENT...

For every n-th time (EVERY of them apart) that SQLite writes, syncs, cuts or
deletes a file, a file is brought to the disk, or one is given its name or
deleted, a fresh process runs the arguments over a fresh copy of the folder,
which `{}` stands for, and is killed just before. One JSON object a line: where
it was killed and the folder it left; the last one lived.
"""

from __future__ import annotations

import json
import os
import shutil
import signal
import sys
from collections.abc import Callable
from itertools import count
from pathlib import Path
from typing import Any

from barkeep.cli import main
from tests.cli.kill_points import watch_writes


def watch_files(before: Callable[[str], None]) -> None:
    """As `watch_writes`, and for what is done to whole files."""
    watch_writes(before)
    for owner, name, word in ((os, "fsync", "sync"), (Path, "unlink", "delete")):
        setattr(owner, name, _told(getattr(owner, name), word, before))


def _told(original: Callable[..., Any], word: str, before: Callable[[str], None]) -> Any:
    def told(what: Any, *arguments: Any, **named: Any) -> Any:
        before(f"{word} {what.name if isinstance(what, Path) else 'a file'}")
        return original(what, *arguments, **named)

    return told


def killed_at(number: int, words: list[str]) -> str | None:
    """Run in a child that is killed at its n-th step; which step that was, None where it lived."""
    reading, writing = os.pipe()
    child = os.fork()
    if child == 0:
        steps = count(1)

        def before(what: str) -> None:
            if next(steps) == number:
                os.write(writing, what.encode())
                os.kill(os.getpid(), signal.SIGKILL)

        watch_files(before)
        sys.stdout = open(os.devnull, "w")  # noqa: PTH123, SIM115
        os._exit(main(words))
    os.close(writing)
    with os.fdopen(reading, "rb") as answer:
        where = answer.read().decode()
    _, status = os.waitpid(child, 0)
    code = os.waitstatus_to_exitcode(status)
    assert code == (-signal.SIGKILL if where else 0), (code, where)
    return where or None


if __name__ == "__main__":
    origin, into, every = Path(sys.argv[1]), Path(sys.argv[2]), int(sys.argv[3])
    for nth in count(1, every):
        here = into / str(nth)
        shutil.copytree(origin, here)
        where = killed_at(nth, [each.replace("{}", str(here)) for each in sys.argv[4:]])
        print(json.dumps({"folder": str(here), "killed_at": where}), flush=True)
        if where is None:
            break
