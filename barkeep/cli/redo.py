"""`barkeep redo`: do again what was undone last."""

from __future__ import annotations

import argparse

from barkeep.application.bar import Bar
from barkeep.cli.arguments import Arguments
from barkeep.cli.last_change import go


def configure(parser: argparse.ArgumentParser) -> None:
    """Its arguments."""
    parser.set_defaults(run=run)


def run(arguments: Arguments) -> int:
    """Redo one change."""
    return go(arguments, Bar.redo, "redone", "Done again")
