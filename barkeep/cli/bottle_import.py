"""`barkeep import` of a list of bottles: what comes in, what is there already, what is left."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from pathlib import Path

from barkeep.application.bar import Bar
from barkeep.application.bottle_imports import (
    NO_BOTTLE,
    BottlePreview,
    ImportedBottles,
    look_at_bottles,
)
from barkeep.cli.arguments import Arguments
from barkeep.cli.endings import complain
from barkeep.cli.output import Answer
from barkeep.documents.bottles_csv import ListedRow, rest_csv, told
from barkeep.documents.bytes_read import DecodedText
from barkeep.domain.phrases import counted
from barkeep.errors import InvalidField, UnusableFile, spoken_list

MOST_NAMED = 10
"""Rows said in a sentence; a hundred of them say nothing."""
HINT = (
    "nothing came in. --good-rows brings in the rows that can be used; "
    "--rest FILE also writes the others to a file, each with what is wrong."
)


@dataclass(frozen=True, slots=True)
class _Done:
    """A list that came in: how it was read, what came of it, and where the rest is written."""

    name: str
    read: DecodedText
    found: BottlePreview
    imported: ImportedBottles
    rest: Path | None


def import_bottles(bar: Bar, name: str, read: DecodedText, arguments: Arguments) -> Answer:
    """Bring a list's bottles in, one step of undo.

    With rows that cannot be used nothing is written unless `--good-rows` or
    `--rest` is given. Raises `UnusableFile`, and `InvalidField` for the file of the rest.
    """
    found = look_at_bottles(bar.snapshot, read.text)
    if not found.file.listed:
        raise UnusableFile(name, found.problems or (NO_BOTTLE,))
    if found.problems and not (arguments.good_rows or arguments.rest):
        raise UnusableFile(name, found.problems, HINT)
    if arguments.again:
        found = found.without_same()
    rest = _written_rest(bar, found, arguments)
    bottles = [each.bottle for each in found.new if each.bottle is not None]
    imported = bar.imports.bottles(bottles, name).value
    done = _Done(name=name, read=read, found=found, imported=imported, rest=rest)
    return Answer(lambda: _as_json(done), _shown(done))


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
    }


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
    new = counted(done.imported.products, "new product")
    yield f"{counted(done.imported.bottles, 'bottle')} came in, {new} among them."
    if found.same:
        yield _same(tuple(each.row for each in found.same))
    if found.repair:
        kept = "" if done.rest is None else f"; {_they(found.repair)} in {done.rest}"
        yield f"{counted(len(found.repair), 'row')} left out{kept}."


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
