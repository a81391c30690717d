"""What `undo` and `redo` share: go one change back or forth and say which it was."""

from __future__ import annotations

from collections.abc import Callable

from barkeep.application.bar import Bar
from barkeep.application.done import Done
from barkeep.cli.arguments import Arguments
from barkeep.cli.bar_source import opened_bar
from barkeep.cli.output import print_json


def go(arguments: Arguments, step: Callable[[Bar], Done[None]], key: str, said: str) -> int:
    """Take one step; its label goes out under `key`, or after what is `said`."""
    with opened_bar(arguments) as bar:
        label = step(bar).label
    if arguments.json:
        print_json({key: label})
    else:
        print(f"{said}: {label}.")
    return 0
