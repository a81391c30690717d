"""`barkeep redo`: do again what was undone last."""

from __future__ import annotations

import argparse

from barkeep.cli.arguments import Arguments
from barkeep.cli.bar_source import opened_bar
from barkeep.cli.output import print_json


def configure(parser: argparse.ArgumentParser) -> None:
    """Its arguments."""
    parser.set_defaults(run=run)


def run(arguments: Arguments) -> int:
    """Redo one change."""
    with opened_bar(arguments) as bar:
        label = bar.redo().label
    if arguments.json:
        print_json({"redone": label})
    else:
        print(f"Done again: {label}.")
    return 0
