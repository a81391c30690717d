"""`barkeep sample`: write the sample bar to a file of your own."""

from __future__ import annotations

import argparse
from pathlib import Path

from barkeep.application.sample import build
from barkeep.cli.arguments import Arguments
from barkeep.cli.output import print_json


def configure(parser: argparse.ArgumentParser) -> None:
    """Its arguments."""
    parser.add_argument("file", metavar="FILE", help="a new file; none is ever written over")
    parser.set_defaults(run=run)


def run(arguments: Arguments) -> int:
    """Build the sample bar."""
    path = Path(arguments.file).expanduser().absolute()
    build(path)
    if arguments.json:
        print_json({"file": str(path)})
    else:
        print(f"The sample bar is in {path}. Everything in it is invented.")
    return 0
