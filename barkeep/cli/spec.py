"""`barkeep spec`: read, add, show, list, analyse, riff on and compare specs."""

from __future__ import annotations

import argparse
from collections.abc import Iterator, Sequence

from barkeep.application.finding import find_spec
from barkeep.cli.arguments import Arguments, common_options
from barkeep.cli.bar_source import known_to_readers, opened_bar, read_file, shown_name
from barkeep.cli.output import counted, print_json, table, width
from barkeep.cli.spec_analyse import configure_analyse, configure_riff
from barkeep.cli.spec_json import read_json, spec_json
from barkeep.domain.amounts.amount import show_range
from barkeep.domain.amounts.rounding import STYLES, Style
from barkeep.domain.amounts.units import BarUnits
from barkeep.domain.drink.search import search
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.spec_text.text import (
    HOW_PARTED,
    ReadSpec,
    names_twice,
    read_specs,
    text_around,
    write_spec,
)
from barkeep.domain.specs.query import LANGUAGE, NO_FIELD
from barkeep.domain.specs.shown_lines import ShownLine, shown_lines, style_note
from barkeep.domain.specs.spec import Line, Spec
from barkeep.errors import UnreadableFile, UnusableFile, spoken_list

_STYLES = {style.replace("_", "-"): style for style in STYLES}
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
    showing.add_argument(
        "--in",
        dest="style",
        type=_style,
        metavar="|".join(_STYLES),
        help="how amounts are shown (default: the bar's setting shown-in)",
    )
    showing.set_defaults(run=run_show)
    listing = what.add_parser(
        "list",
        parents=common,
        help="list your specs and the classics, or those that a query finds",
        epilog=_query_help(),
        formatter_class=argparse.RawDescriptionHelpFormatter,
    )
    listing.add_argument(
        "query", metavar="QUERY", nargs="*", help="what to find (default: everything)"
    )
    listing.set_defaults(run=run_list)
    configure_riff(what, common)
    configure_analyse(
        what.add_parser(
            "analyse",
            parents=common,
            help="what a drink comes to: volume, strength, sugar, acid, energy, cost",
        )
    )


def _query_help() -> str:
    said = table(("written", "a spec is found that"), LANGUAGE)
    minus = "A query that begins with a minus goes after --: barkeep spec list -- -egg"
    return f"{said}\n\n{NO_FIELD}\n{minus}"


def _style(text: str) -> Style:
    try:
        return _STYLES[text.casefold().replace("_", "-")]
    except KeyError:
        choices = ", ".join(_STYLES)
        raise argparse.ArgumentTypeError(f"“{text}” is none of {choices}") from None


def run_read(arguments: Arguments) -> int:
    """Read specs with the bar's own ingredients; problems are part of the answer."""
    text = read_file(arguments.file)
    tree, units = known_to_readers(arguments)
    specs = read_specs(text, tree, units)
    if arguments.json:
        print_json({"specs": [read_json(spec, tree) for spec in specs]})
        return 0
    for spec in specs:
        print(_read_shown(spec, tree, units))
    bad = sum(bool(spec.problems) for spec in specs)
    print(f"{counted(len(specs), 'spec')}, {bad or 'none'} with problems.")
    return 0


def run_add(arguments: Arguments) -> int:
    """Add every spec of a file; with one problem nothing is added."""
    text = read_file(arguments.file)
    with opened_bar(arguments) as bar:
        tree = bar.snapshot.knowledge.tree
        read = read_specs(text, tree, bar.snapshot.settings.units)
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
    """Show one spec, with the amounts of its lines as the bar shows them or as `--in` asks."""
    with opened_bar(arguments) as bar:
        spec = find_spec(bar.snapshot, arguments.name)
        tree, settings = bar.snapshot.knowledge.tree, bar.snapshot.settings
    style = settings.shown_in if arguments.style is None else arguments.style
    lines = shown_lines(spec, tree, style, settings.units)
    if arguments.json:
        asked = None if arguments.style is None else lines
        print_json({"specs": [spec_json(spec, tree, asked)]})
    elif style == "as_written":
        print(write_spec(spec, tree, settings.units), end="")
    else:
        print(text_around(spec, _beside_written(lines)), end="")
        note = style_note(spec, tree, style, settings.units)
        print(f"\n{note}." if note else "", end="\n" if note else "")
    return 0


def _beside_written(lines: Sequence[ShownLine]) -> Iterator[str]:
    """Each line as it is shown, and beside it how it is written where that differs."""
    widest = max((width(line.text) for line in lines if line.written), default=0)
    for line in lines:
        gap = " " * (widest - width(line.text))
        yield f"{line.text}{gap}  (written: {line.written})" if line.written else line.text


def run_list(arguments: Arguments) -> int:
    """List the owner's specs and the classics by name, or those that a query finds."""
    with opened_bar(arguments) as bar:
        specs = search(bar.snapshot, " ".join(arguments.query))
        tree = bar.snapshot.knowledge.tree
    if arguments.json:
        print_json({"specs": [spec_json(spec, tree) for spec in specs]})
        return 0
    if not specs:
        print("No spec is found by that.")
        return 0
    print(table(("spec", "made", "glass", "lines", ""), map(_row, specs), right="lllr"))
    return 0


def _row(spec: Spec) -> tuple[str, ...]:
    kind = "classic" if spec.classic else f"riff of {spec.riff_of}" if spec.riff_of else ""
    made = "" if spec.technique == "unknown" else spec.technique
    return (spec.name, made, spec.glass, str(len(spec.required_lines)), kind)


def _read_shown(spec: ReadSpec, tree: FamilyTree, units: BarUnits) -> str:
    rows = [spec.name or "(no name)"]
    rows += [f"  {_line_shown(each.line, tree, units)}" for each in spec.lines]
    rows += [f"  ! {problem}" for problem in spec.problems]
    return "\n".join(rows) + "\n"


def _line_shown(line: Line, tree: FamilyTree, units: BarUnits) -> str:
    if not line.ingredient:
        return f"? {line.text}"
    amount = ""
    if line.amount is not None and line.unit is not None:
        amount = show_range(line.amount, line.amount_high, line.unit, units)
    others = [tree.in_sentence(key) for key in line.alternatives]
    words = [amount, spoken_list((tree.name(line.ingredient), *others))]
    marks = [line.note, "optional" * line.optional, "garnish" * line.garnish]
    said = ", ".join(mark for mark in marks if mark)
    return " ".join(word for word in words if word) + (f" ({said})" if said else "")
