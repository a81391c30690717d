"""Cells of a CSV text that no spreadsheet runs, and that come back as they were.

A spreadsheet takes a cell for a formula by its first letter. An apostrophe before it says that
it is text: one is written before such a cell, and taken off one where it is read.
"""

from __future__ import annotations

import csv
import io
import re
from collections.abc import Iterable, Sequence

_RUN = re.compile(r"'*[=+\-@\t\r\n]")
"""How a cell begins that is run, or that says of such a one that it is text."""


def csv_text(rows: Iterable[Sequence[str]]) -> str:
    """Rows as a CSV text."""
    out = io.StringIO(newline="")
    writer = csv.writer(out, lineterminator="\r\n")
    writer.writerows([as_text(cell) for cell in row] for row in rows)
    return out.getvalue()


def as_text(cell: str) -> str:
    """A cell that every spreadsheet shows and none runs.

    >>> as_text("=1+1"), as_text("+1 dash"), as_text("gin")
    ("'=1+1", "'+1 dash", 'gin')
    """
    return f"'{cell}" if _RUN.match(cell) else cell


def read_cell(cell: str) -> str:
    """A cell as it was before `as_text`.

    >>> read_cell("'=1+1"), read_cell("'tis gin")
    ('=1+1', "'tis gin")
    """
    return cell[1:] if cell[:1] == "'" and _RUN.match(cell) else cell
