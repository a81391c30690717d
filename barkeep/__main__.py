"""`python -m barkeep`: the command line, which starts the desktop."""

from __future__ import annotations

import sys

from barkeep.cli import main

if __name__ == "__main__":
    sys.exit(main())
