"""`barkeep import`: take in bottles from a CSV file, all of them or none."""

from __future__ import annotations

import argparse

from barkeep.cli.arguments import Arguments
from barkeep.cli.bar_source import opened_bar, read_file, shown_name
from barkeep.cli.faults import complain
from barkeep.cli.output import counted, print_json
from barkeep.documents.bottles_csv import COLUMNS, read_bottles_csv
from barkeep.errors import UnusableFile, spoken_list


def configure(parser: argparse.ArgumentParser) -> None:
    """Its arguments."""
    parser.add_argument(
        "file",
        metavar="FILE",
        help=f"a CSV file with the header {','.join(COLUMNS)}, or - for standard input; "
        "product, ingredient and size must be there; commas, semicolons or tabs part the fields",
    )
    parser.set_defaults(run=run)


def run(arguments: Arguments) -> int:
    """Import a file. With one problem nothing is written, and each is said."""
    text = read_file(arguments.file)
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
