"""Days as they are written on the command line."""

from __future__ import annotations

import argparse
from datetime import date


def day(text: str) -> date:
    """A day as year, month and day, for argparse."""
    try:
        return date.fromisoformat(text)
    except ValueError:
        raise argparse.ArgumentTypeError(f"“{text}” is not a day such as 2026-03-31") from None
