"""`barkeep bench`: how long the answers take on bars of any size, beside plainer ways."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import asdict
from datetime import date

from barkeep.application.benchmarks.rows import BOTTLES, SIZES, Growth, Row, growth, rows
from barkeep.application.knowledge import shipped
from barkeep.cli.arguments import Arguments, argument, command, whole_number
from barkeep.cli.output import Answer, table
from barkeep.domain.phrases import counted

DESCRIPTION = """\
Makes bars up from a seed, asks each question of them, and sets what that takes
beside three plainer ways to find the same drinks, in the same process: a plain
networkx search for each thing asked for, a relational division in SQLite, and
bits in arrays, the least that it can cost. Your own bar is not opened.

Ratios are what to read: times are this machine's. The largest bars take a while.
"""


@command(
    argument(
        "--specs",
        type=whole_number,
        nargs="+",
        default=list(SIZES),
        metavar="N",
        help=f"how many specs, smallest first (default: {' '.join(map(str, SIZES))})",
    ),
    argument(
        "--bottles",
        type=whole_number,
        default=BOTTLES,
        metavar="N",
        help=f"how many open bottles (default: {BOTTLES})",
    ),
    argument(
        "--seed",
        type=whole_number,
        default=1,
        metavar="N",
        help="the same seed makes the same bars (default: 1)",
    ),
    description=DESCRIPTION,
)
def run(arguments: Arguments) -> Answer:
    """Each question at each size, with its ratios to the plainer ways."""
    sizes = sorted(set(arguments.specs))
    asked = rows(shipped(), sizes, bottles=arguments.bottles, seed=arguments.seed, on=date.today())
    found = tuple(asked)
    return Answer(lambda: _json(found, growth(found)), _shown(found, arguments.bottles))


def _json(found: Sequence[Row], grown: Sequence[Growth]) -> dict[str, object]:
    return {
        "rows": [asdict(row) for row in found],
        "growth": [asdict(each) for each in grown],
    }


def _shown(found: Sequence[Row], bottles: int) -> Iterator[str]:
    shelf = counted(bottles, "open bottle")
    yield f"{shelf}; ms of CPU at best, and how many times each plainer way's."
    yield ""
    head = ("specs", "question", "ms", "search", "SQL", "bits")
    yield table(head, map(_cells, found), right="rlrrrr")
    grown = growth(found)
    if grown:
        yield ""
        yield "Growth from the smallest bar to the largest (1 is linear, 2 quadratic):"
        yield from (f"  {each.question}: {each.exponent:.2f}" for each in grown)


def _cells(row: Row) -> tuple[str, ...]:
    ratios = (row.against_search, row.against_sql, row.against_floor)
    return (f"{row.specs:,}", row.question, f"{row.ms:,.1f}", *(f"{each:,.1f}" for each in ratios))
