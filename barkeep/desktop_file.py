"""`barkeep-desktop [FILE]`: what a desktop starts, with the bar that was opened, if any."""

from __future__ import annotations

import sys
from collections.abc import Sequence

from barkeep import __main__ as program


def as_written(given: Sequence[str]) -> list[str]:
    """What the command line would be told: a lone file is the bar, whatever it is called.

    >>> as_written(["tonight"]), as_written(["--sample"]), as_written([])
    (['--bar', 'tonight'], ['--sample'], [])
    """
    is_file = len(given) == 1 and not given[0].startswith("-")
    return ["--bar", *given] if is_file else list(given)


def run() -> int:
    """The program as its own process; its exit status."""
    sys.argv[1:] = as_written(sys.argv[1:])
    return program.run()


if __name__ == "__main__":
    sys.exit(run())
