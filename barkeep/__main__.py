"""`python -m barkeep`: the command line, which starts the desktop."""

from __future__ import annotations

import gc
import sys

from barkeep.cli import main


def run() -> int:
    """The program as its own process; its exit status."""
    status = main()
    gc.freeze()  # the interpreter ends without one more look through all that was loaded
    return status


if __name__ == "__main__":
    sys.exit(run())
