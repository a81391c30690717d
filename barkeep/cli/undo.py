"""`barkeep undo`: take the last change of the bar back."""

from __future__ import annotations

import argparse

from barkeep.cli.arguments import Arguments
from barkeep.cli.bar_source import opened_bar
from barkeep.cli.output import print_json


def configure(parser: argparse.ArgumentParser) -> None:
    """Its arguments."""
    parser.set_defaults(run=run)


def run(arguments: Arguments) -> int:
    """Undo one change."""
    with opened_bar(arguments) as bar:
        label = bar.undo().label
    if arguments.json:
        print_json({"undone": label})
    else:
        print(f"Undone: {label}.")
    return 0
