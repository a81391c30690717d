"""`barkeep undo`: take the last change of the bar back."""

from __future__ import annotations

import argparse

from barkeep.application.bar import Bar
from barkeep.cli.arguments import Arguments
from barkeep.cli.last_change import go


def configure(parser: argparse.ArgumentParser) -> None:
    """Its arguments."""
    parser.set_defaults(run=run)


def run(arguments: Arguments) -> int:
    """Undo one change."""
    return go(arguments, Bar.undo, "undone", "Undone")
