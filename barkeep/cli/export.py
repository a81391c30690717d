"""`barkeep export`: specs to a file, its kind told by the suffix."""

from __future__ import annotations

import argparse

from barkeep.application.publishing import specs_to_export
from barkeep.cli.arguments import Arguments
from barkeep.cli.bar_source import opened_bar
from barkeep.cli.output import counted, print_json
from barkeep.documents.specs.files import EXPORT_FORMATS, exported


def configure(parser: argparse.ArgumentParser) -> None:
    """Its arguments."""
    kinds = ", ".join(f"{each.suffix} {each.title}" for each in EXPORT_FORMATS.values())
    parser.description = f"Write specs to a file. Its suffix says what it will be: {kinds}."
    parser.add_argument(
        "file", metavar="FILE", help="the file, in place of an old one, never of a bar"
    )
    parser.add_argument(
        "names", metavar="NAME", nargs="*", help="which specs (default: all your own)"
    )
    parser.add_argument("--classics", action="store_true", help="the classics as well")
    parser.set_defaults(run=run)


def run(arguments: Arguments) -> int:
    """Write the file, whole or not at all."""
    with opened_bar(arguments) as bar:
        specs = specs_to_export(bar.snapshot, arguments.names, classics=arguments.classics)
        tree, units = bar.snapshot.knowledge.tree, bar.snapshot.settings.units
        text = exported(specs, arguments.file, tree, units)
        file = bar.write_file(arguments.file, text)
    if arguments.json:
        print_json({"file": str(file), "specs": [spec.name for spec in specs]})
    else:
        was = "was" if len(specs) == 1 else "were"
        print(f"{counted(len(specs), 'spec')} {was} written to {file}.")
    return 0
