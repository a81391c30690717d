"""`barkeep import` of a list of bottles, and `add`: what comes in, what is there, what is left."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from pathlib import Path

from barkeep.application.bar import Bar
from barkeep.application.bottle_imports import (
    NO_BOTTLE,
    BottlePreview,
    ImportedBottles,
    guessed_levels,
    has_ready_answers,
    look_at_bottles,
    look_at_list,
    sorted_out,
    terms_of,
    with_ready_answers,
)
from barkeep.cli.arguments import Arguments, argument, command, flag
from barkeep.cli.bar_source import in_bar
from barkeep.cli.endings import complain
from barkeep.cli.output import Answer, table
from barkeep.documents.bottles_csv import ListedRow, rest_csv, told
from barkeep.documents.bytes_read import DecodedText
from barkeep.domain.buying.common_kinds import common_kinds
from barkeep.domain.buying.reach import Reach, reach, shelf_in_words
from barkeep.domain.phrases import counted
from barkeep.errors import InvalidField, UnusableFile, spoken_list

MOST_NAMED = 10
"""Rows said in a sentence; a hundred of them say nothing."""
HINT = (
    "nothing came in. --good-rows brings in the rows that can be used; "
    "--rest FILE also writes the others to a file, each with what is wrong."
)


LIKELY = flag("--likely", "take the likely answer to whatever is asked of a row of a list")
HINT_OF_WORDS = (
    "nothing came in. --likely takes what is said to be likely; --good-rows brings in the others."
)
ABOUT_ADD = """\
Each is one line, as you would write it on a piece of paper: a kind or a label, and with it,
as you like, how many, the size, the level, the strength, the price and whether it is open.
  barkeep add "London dry gin" "2 x tonic water 200 ml" "sweet vermouth, half, opened 2026-11-01"
What a line does not say of size and level is guessed: the usual size, and a level of half,
give or take all of it. It is said to be, until the bottle is counted. What may be meant in
two ways is asked about, and nothing comes in until it is answered. One undo takes all back.

Without any the kinds are listed that the specs of the bar ask for most often.

--json prints the keys of an import of a list, guessed (row, columns), and tonight (ready,
stand_in, one_more); without any line common: ingredient, group, specs, there.
"""


@dataclass(frozen=True, slots=True)
class _Done:
    """A list that came in: how it was read, what came of it, and where the rest is written.

    `reach` is how far the bar reaches now, None where that is not asked.
    """

    name: str
    read: DecodedText
    found: BottlePreview
    imported: ImportedBottles
    rest: Path | None
    reach: Reach | None = None


@command(
    argument("bottle", metavar="BOTTLE", nargs="*", help="a bottle in your own words"),
    LIKELY,
    flag("--again", "also put bottles there that look like ones that are there already"),
    flag("--good-rows", "put those there that are clear, and name the others"),
    description=ABOUT_ADD,
)
@in_bar
def add(arguments: Arguments, bar: Bar) -> Answer:
    """Put bottles on the shelf, each a line of words."""
    if not arguments.bottle:
        return _common(bar)
    arguments.rest, arguments.bottles = None, True
    read = DecodedText("\n".join(" ".join(each.split()) for each in arguments.bottle))
    return import_bottles(bar, "What was written", read, arguments)


def _common(bar: Bar) -> Answer:
    """The kinds that the specs ask for most often."""
    snapshot = bar.snapshot
    tree, kinds = snapshot.knowledge.tree, common_kinds(snapshot)
    rows = [
        (
            tree.name(each.key),
            tree.name(each.group) if each.group else "",
            f"{each.specs}",
            "there" if each.key in snapshot.owned else "",
        )
        for each in kinds
    ]
    return Answer(
        lambda: {
            "common": [
                {
                    "ingredient": name,
                    "group": group or None,
                    "specs": each.specs,
                    "there": bool(there),
                }
                for each, (name, group, _specs, there) in zip(kinds, rows, strict=True)
            ]
        },
        table(("ingredient", "group", "specs", ""), rows, right="llr"),
    )


def import_bottles(bar: Bar, name: str, read: DecodedText, arguments: Arguments) -> Answer:
    """Bring a list's bottles in, one step of undo.

    With rows that cannot be used nothing is written unless `--good-rows` or
    `--rest` is given. Raises `UnusableFile`, and `InvalidField` for the file of the rest.
    """
    look = look_at_list if arguments.bottles else look_at_bottles
    found = look(bar.snapshot, read.text)
    if arguments.likely:
        found = _answered(found, bar)
    if not found.file.listed:
        raise UnusableFile(name, found.problems or (NO_BOTTLE,))
    if found.problems and not (arguments.good_rows or arguments.rest):
        raise UnusableFile(name, found.problems, HINT_OF_WORDS if _in_words(found) else HINT)
    if arguments.again:
        found = found.without_same()
    rest = _written_rest(bar, found, arguments)
    bottles = [each.bottle for each in found.new if each.bottle is not None]
    imported = bar.imports.bottles(bottles, name).value
    reached = reach(bar.snapshot) if arguments.bottles else None
    done = _Done(name=name, read=read, found=found, imported=imported, rest=rest, reach=reached)
    return Answer(lambda: _as_json(done), _shown(done))


def _answered(found: BottlePreview, bar: Bar) -> BottlePreview:
    """The same with the likely answers taken in the rows that have one to everything asked."""
    snapshot = bar.snapshot
    ready = [each for each in found.repair if has_ready_answers(each)]
    taken = {each.row: each for each in with_ready_answers(ready, terms_of(snapshot))}
    rows = [taken.get(each.row, each) for each in found.file.listed]
    return sorted_out(found.file, rows, snapshot)


def _in_words(found: BottlePreview) -> bool:
    """Whether the list was one of lines without columns."""
    return any(each.written for each in found.file.listed)


def _written_rest(bar: Bar, found: BottlePreview, arguments: Arguments) -> Path | None:
    """Where the rows that cannot be used are written, before anything else is."""
    if not arguments.rest or not found.repair:
        return None
    if Path(arguments.rest).expanduser().exists():
        expected = "there is a file of that name already, which may hold rows to repair"
        raise InvalidField("--rest", arguments.rest, expected)
    return bar.write_file(arguments.rest, rest_csv(found.repair, found.file.aside))


def _as_json(done: _Done) -> dict[str, object]:
    found, imported = done.found, done.imported
    return {
        "products": imported.products,
        "bottles": imported.bottles,
        "ignored": list(found.file.ignored),
        "added": [each.bottle.draft.title for each in found.new if each.bottle is not None],
        "same": [
            {"row": each.row.row, "product": each.bottle.product.title, "bottle": each.bottle.id}
            for each in found.same
        ],
        "left": [
            {
                "row": row.row,
                "column": problem.column,
                "message": problem.message,
                "likely": problem.likely,
            }
            for row in found.repair
            for problem in row.problems
        ],
        "left_aside": list(found.file.ignored),
        "remarks": [
            {"row": row.row, "remark": remark} for row in found.new for remark in row.remarks
        ],
        "read_as": done.read.read_as,
        "rest": None if done.rest is None else str(done.rest),
        "guessed": [
            {"row": row.row, "columns": sorted(row.guessed)} for row in found.new if row.guessed
        ],
        "headings": list(found.file.headings),
        **({} if done.reach is None else {"tonight": _reach_json(done.reach)}),
    }


def _reach_json(found: Reach) -> dict[str, int]:
    return {"ready": found.ready, "stand_in": found.stand_in, "one_more": found.one_more}


def _shown(done: _Done) -> Iterator[str]:
    found, name = done.found, done.name
    if done.read.read_as:
        complain(f"{name}: {done.read.read_as}")
    if found.file.ignored:
        complain(f"{name}: nothing was read from {spoken_list(found.file.ignored, 'and')}.")
    for fault in found.file.faults:
        complain(f"{name}, {fault}")
    for row in found.repair:
        complain(f"{name}, row {row.row} was left out: {told(row)}")
    for row in found.new:
        yield from (f"Row {row.row}: {remark}" for remark in row.remarks)
    if found.file.headings:
        complain(f"{name}: taken for headings, {spoken_list(found.file.headings, 'and')}.")
    new = counted(done.imported.products, "new product")
    came = [each.bottle for each in found.new if each.bottle is not None]
    if done.reach is None:
        yield f"{counted(done.imported.bottles, 'bottle')} came in, {new} among them."
    else:
        yield shelf_in_words(done.imported.bottles, guessed_levels(came))
    if found.same:
        yield _same(tuple(each.row for each in found.same))
    if found.repair:
        kept = "" if done.rest is None else f"; {_they(found.repair)} in {done.rest}"
        yield f"{counted(len(found.repair), 'row')} left out{kept}."
    if done.reach is not None:
        yield done.reach.in_words


def _they(rows: Sequence[ListedRow]) -> str:
    return "it is" if len(rows) == 1 else "they are"


def _same(rows: Sequence[ListedRow]) -> str:
    looks, was, them = ("looks", "was", "it") if len(rows) == 1 else ("look", "were", "them")
    few = len(rows) <= MOST_NAMED
    which = f" ({spoken_list([str(each.row) for each in rows], 'and')})" if few else ""
    return (
        f"{counted(len(rows), 'row')}{which} {looks} like what is there already and {was} "
        f"left out; --again adds {them}."
    )
