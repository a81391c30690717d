"""`barkeep bench`: how long the answers take on bars of any size, beside plainer ways."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import asdict
from datetime import date

from barkeep.application.benchmarks.files import FileRow, Held, file_rows
from barkeep.application.benchmarks.invented_bars import invented_bar
from barkeep.application.benchmarks.rows import BOTTLES, SIZES, Row, growth, rows
from barkeep.application.knowledge import shipped
from barkeep.cli.arguments import Arguments, argument, command, whole_number
from barkeep.cli.output import Answer, table
from barkeep.domain.phrases import counted

DESCRIPTION = """\
Makes bars up from a seed, asks each question of them, and sets what that takes
beside three plainer ways to find the same drinks, in the same process: a plain
networkx search for each thing asked for, a relational division in SQLite, and
bits in arrays, the least that it can cost. Each bar is also written to a file
beside bare SQLite: filled, opened, changed and searched. Your own bar is not
opened.

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
    knowledge, bottles, today = shipped(), arguments.bottles, date.today()
    found = tuple(rows(knowledge, sizes, bottles=bottles, seed=arguments.seed, on=today))
    bars = (invented_bar(knowledge, size, bottles, seed=arguments.seed, on=today) for size in sizes)
    in_files = tuple(each for bar in bars for each in file_rows(bar, knowledge))
    timed = [each for each in in_files if isinstance(each, FileRow)]
    held = [each for each in in_files if isinstance(each, Held)]
    return Answer(lambda: _json(found, timed, held), _shown(found, timed, held, bottles))


def _json(
    found: Sequence[Row], timed: Sequence[FileRow], held: Sequence[Held]
) -> dict[str, object]:
    return {
        "rows": [asdict(row) for row in found],
        "growth": [asdict(each) for each in growth(found)],
        "files": [asdict(row) for row in timed],
        "memory": [asdict(each) for each in held],
        "files_growth": [asdict(each) for each in growth(timed)],
    }


def _shown(
    found: Sequence[Row], timed: Sequence[FileRow], held: Sequence[Held], bottles: int
) -> Iterator[str]:
    shelf = counted(bottles, "open bottle")
    yield f"{shelf}; ms of CPU at best, and how many times each plainer way's."
    yield ""
    head = ("specs", "question", "ms", "search", "SQL", "bits")
    yield table(head, map(_cells, found), right="rlrrrr")
    yield ""
    yield "A bar's file, and how many times that takes what bare SQLite takes for the same rows:"
    yield ""
    yield table(("specs", "what is done", "ms", "SQLite"), map(_file_cells, timed), right="rlrr")
    for each in held:
        held_by = f"{each.mb:,.1f} MB, {each.times_file:.1f} times the file"
        yield f"{each.specs:,} specs opened hold {held_by}."
    grown = (*growth(found), *growth(timed))
    if grown:
        yield ""
        yield "Growth from the smallest bar to the largest (1 is linear, 2 quadratic):"
        yield from (f"  {each.question}: {each.exponent:.2f}" for each in grown)


def _file_cells(row: FileRow) -> tuple[str, ...]:
    return (f"{row.specs:,}", row.question, f"{row.ms:,.1f}", f"{row.against_bare:,.1f}")


def _cells(row: Row) -> tuple[str, ...]:
    ratios = (row.against_search, row.against_sql, row.against_floor)
    return (f"{row.specs:,}", row.question, f"{row.ms:,.1f}", *(f"{each:,.1f}" for each in ratios))
