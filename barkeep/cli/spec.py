"""`barkeep spec`: read, add, show and list specs."""

from __future__ import annotations

import argparse

from barkeep.application.finding import find_spec
from barkeep.cli.arguments import Arguments, common_options
from barkeep.cli.bar_source import known_ingredients, opened_bar, read_file, shown_name
from barkeep.cli.output import counted, print_json
from barkeep.cli.spec_json import read_json, spec_json
from barkeep.cli.table import table
from barkeep.domain.amounts import show_range
from barkeep.domain.ingredients import FamilyTree
from barkeep.domain.spec_lines import ReadLine
from barkeep.domain.spec_text import HOW_PARTED, ReadSpec, names_twice, read_specs, write_spec
from barkeep.domain.specs import Spec
from barkeep.errors import UnreadableFile, UnusableFile

FORMAT = (
    "A spec is its name, a line for each ingredient and, after one empty line, the method. "
    f"Where a file holds several, {HOW_PARTED}."
)


def configure(parser: argparse.ArgumentParser) -> None:
    """Its arguments."""
    what = parser.add_subparsers(dest="what", metavar="WHAT", required=True)
    common = [common_options()]
    reading = what.add_parser(
        "read", parents=common, help="read specs and say what is wrong", description=FORMAT
    )
    reading.add_argument("file", metavar="FILE", help="a text file, or - for standard input")
    reading.set_defaults(run=run_read)
    adding = what.add_parser(
        "add", parents=common, help="add the specs of a file, all or none", description=FORMAT
    )
    adding.add_argument("file", metavar="FILE", help="a text file, or - for standard input")
    adding.set_defaults(run=run_add)
    showing = what.add_parser("show", parents=common, help="show one spec as text")
    showing.add_argument("name", metavar="NAME", help="the drink's name")
    showing.set_defaults(run=run_show)
    listing = what.add_parser("list", parents=common, help="list your specs and the classics")
    listing.set_defaults(run=run_list)


def run_read(arguments: Arguments) -> int:
    """Read specs with the bar's own ingredients; problems are part of the answer."""
    text = read_file(arguments.file)
    tree = known_ingredients(arguments)
    specs = read_specs(text, tree)
    if arguments.json:
        print_json({"specs": [read_json(spec, tree) for spec in specs]})
        return 0
    for spec in specs:
        print(_read_shown(spec, tree))
    bad = sum(bool(spec.problems) for spec in specs)
    print(f"{counted(len(specs), 'spec')}, {bad or 'none'} with problems.")
    return 0


def run_add(arguments: Arguments) -> int:
    """Add every spec of a file; with one problem nothing is added."""
    text = read_file(arguments.file)
    with opened_bar(arguments) as bar:
        tree = bar.snapshot.knowledge.tree
        read = read_specs(text, tree)
        problems = [*names_twice(read), *(each for spec in read for each in spec.problems)]
        if problems:
            in_order = tuple(sorted(problems, key=lambda each: (each.line, each.column)))
            raise UnusableFile(shown_name(arguments.file), in_order)
        if not read:
            raise UnreadableFile(shown_name(arguments.file), "there is no spec in it")
        added = bar.specs.add([spec.spec for spec in read if spec.spec is not None]).value
    if arguments.json:
        print_json({"specs": [spec_json(spec, tree) for spec in added]})
    else:
        names = ", ".join(spec.name for spec in added)
        print(f"Added {names}.")
    return 0


def run_show(arguments: Arguments) -> int:
    """Show one spec."""
    with opened_bar(arguments) as bar:
        spec = find_spec(bar.snapshot, arguments.name)
        tree = bar.snapshot.knowledge.tree
    if arguments.json:
        print_json({"specs": [spec_json(spec, tree)]})
    else:
        print(write_spec(spec, tree), end="")
    return 0


def run_list(arguments: Arguments) -> int:
    """List the owner's specs and the classics by name."""
    with opened_bar(arguments) as bar:
        specs = bar.snapshot.all_specs
        tree = bar.snapshot.knowledge.tree
    if arguments.json:
        print_json({"specs": [spec_json(spec, tree) for spec in specs]})
        return 0
    print(table(("spec", "made", "glass", "lines", ""), map(_row, specs), right="lllr"))
    return 0


def _row(spec: Spec) -> tuple[str, ...]:
    kind = "classic" if spec.classic else f"riff of {spec.riff_of}" if spec.riff_of else ""
    made = "" if spec.technique == "unknown" else spec.technique
    return (spec.name, made, spec.glass, str(len(spec.required_lines)), kind)


def _read_shown(spec: ReadSpec, tree: FamilyTree) -> str:
    rows = [spec.name or "(no name)"]
    rows += [f"  {_line_shown(line, tree)}" for line in spec.lines]
    rows += [f"  ! {problem}" for problem in spec.problems]
    return "\n".join(rows) + "\n"


def _line_shown(line: ReadLine, tree: FamilyTree) -> str:
    if line.ingredient is None:
        return f"? {line.text}"
    amount = ""
    if line.amount is not None and line.unit is not None:
        amount = show_range(line.amount, line.amount_high, line.unit)
    words = [amount, tree.name(line.ingredient)]
    marks = [line.note, "optional" * line.optional, "garnish" * line.garnish]
    said = ", ".join(mark for mark in marks if mark)
    return " ".join(word for word in words if word) + (f" ({said})" if said else "")
