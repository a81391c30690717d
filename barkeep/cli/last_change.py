"""`barkeep undo` and `redo`: go one change back or forth, and say which it was."""

from __future__ import annotations

import argparse
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


def configure_undo(parser: argparse.ArgumentParser) -> None:
    """Its arguments."""
    parser.set_defaults(run=run_undo)


def run_undo(arguments: Arguments) -> int:
    """Undo one change."""
    return go(arguments, Bar.undo, "undone", "Undone")


def configure_redo(parser: argparse.ArgumentParser) -> None:
    """Its arguments."""
    parser.set_defaults(run=run_redo)


def run_redo(arguments: Arguments) -> int:
    """Redo one change."""
    return go(arguments, Bar.redo, "redone", "Done again")
