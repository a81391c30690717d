"""`barkeep import`: take in bottles from a CSV file, or specs from a document; all or none."""

from __future__ import annotations

import argparse

from barkeep.cli import import_specs
from barkeep.cli.arguments import Arguments
from barkeep.cli.bar_source import opened_bar, read_file, shown_name
from barkeep.cli.endings import complain
from barkeep.cli.output import counted, print_json
from barkeep.documents.bottles_csv import COLUMNS, read_bottles_csv
from barkeep.documents.specs.csv import COLUMNS as SPEC_COLUMNS
from barkeep.documents.specs.files import SUFFIXES, holds_specs
from barkeep.errors import UnreadableFile, UnusableFile, spoken_list

ABOUT = f"""\
Bottles come from a CSV file with the header
  {",".join(COLUMNS)}
where product, ingredient and size must be there.

Specs come from a file that ends in {", ".join(SUFFIXES)}: plain text,
Markdown, barkeep's own JSON, schema.org Recipe as JSON or within a saved web page,
or CSV with the header
  {",".join(SPEC_COLUMNS)}
where spec and line must be there. What a file holds is told by how it begins
rather than by its name. Commas, semicolons or tabs part the fields of CSV.

A spec of a name that the bar has for another one stays as the bar has it, unless
--take-theirs is given; a classic always stays. All of a file comes in or none;
with one problem nothing does, each is said, and the status is 1.

--json prints for bottles the keys products, bottles and ignored (columns that
nothing was read from); for specs added, replaced, kept and same (names),
differing (spec, where, classic, lines: mine, theirs, change; fields: field,
mine, theirs) and remarks (spec, remark). change is one of same, wording, amount,
swapped, added, left out.
"""


def configure(parser: argparse.ArgumentParser) -> None:
    """Its arguments."""
    parser.description = ABOUT
    parser.formatter_class = argparse.RawDescriptionHelpFormatter
    parser.add_argument("file", metavar="FILE", help="a file, or - for standard input")
    parser.add_argument(
        "--dry-run", action="store_true", help="say what specs would come in, and write nothing"
    )
    parser.add_argument(
        "--take-theirs",
        action="store_true",
        help="let a spec of the file take the place of another of its name",
    )
    parser.set_defaults(run=run)


def run(arguments: Arguments) -> int:
    """Import a file. With one problem nothing is written, and each is said."""
    text = read_file(arguments.file)
    if holds_specs(text, arguments.file):
        return import_specs.run(arguments, text)
    if arguments.dry_run or arguments.take_theirs:
        name = shown_name(arguments.file)
        raise UnreadableFile(name, "--dry-run and --take-theirs are for specs; it lists bottles")
    return _import_bottles(arguments, text)


def _import_bottles(arguments: Arguments, text: str) -> int:
    name = shown_name(arguments.file)
    with opened_bar(arguments) as bar:
        snapshot = bar.snapshot
        found = read_bottles_csv(text, snapshot.knowledge.tree, snapshot.settings.units)
        if found.problems:
            raise UnusableFile(name, found.problems)
        imported = bar.inventory.import_rows(found.rows, name).value
    if arguments.json:
        answer = {"products": imported.products, "bottles": imported.bottles}
        print_json({**answer, "ignored": list(found.ignored)})
        return 0
    if found.ignored:
        complain(f"{name}: nothing was read from {spoken_list(found.ignored, 'and')}.")
    new = counted(imported.products, "new product")
    print(f"{counted(imported.bottles, 'bottle')} came in, {new} among them.")
    return 0
