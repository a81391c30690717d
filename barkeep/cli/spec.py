"""`barkeep spec read`, `add`, `show` and `list`; and specs as JSON, with stable keys."""

from __future__ import annotations

import argparse
from collections.abc import Iterator, Sequence
from itertools import chain

from barkeep.application.bar import Bar
from barkeep.application.finding import find_spec
from barkeep.cli.arguments import DRINK, Arguments, argument, command
from barkeep.cli.bar_source import (
    in_bar,
    known_to_readers,
    opened_bar,
    read_document,
    read_file,
    shown_name,
)
from barkeep.cli.output import Answer, counted, iso, left_aside_shown, rounded, table, width
from barkeep.documents.specs.files import specs_in
from barkeep.domain.amounts.amount import show_range
from barkeep.domain.amounts.rounding import STYLES, Style
from barkeep.domain.amounts.units import BarUnits
from barkeep.domain.drink.search import search
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.spec_text.lines import ReadLine, read_line
from barkeep.domain.spec_text.text import (
    HOW_PARTED,
    ReadSpec,
    names_twice,
    read_specs,
    text_around,
    write_spec,
)
from barkeep.domain.specs.query import LANGUAGE, NO_FIELD
from barkeep.domain.specs.shown_lines import ShownLine, shown_lines, style_note, without_garnish
from barkeep.domain.specs.spec import Line, Spec
from barkeep.errors import UnreadableFile, UnusableFile, spoken_list

_STYLES = {style.replace("_", "-"): style for style in STYLES}
FORMAT = (
    "A spec is its name, a line for each ingredient and, after one empty line, the method. "
    f"Where a file holds several, {HOW_PARTED}."
)


FILE = argument("file", metavar="FILE", help="a text file, or - for standard input")


@command(
    argument("file", metavar="FILE", help="a document of specs, or - for standard input"),
    description=f"{FORMAT} Any document that import takes is read too.",
)
def read(arguments: Arguments) -> Answer:
    """Read specs with the bar's own ingredients; problems are part of the answer."""
    read_as, name = read_document(arguments.file), shown_name(arguments.file)
    tree, units = known_to_readers(arguments)
    specs, document = specs_in(read_as.text, name, tree, units)
    about = [each for each in (read_as.read_as, *document.remarks) if each]
    aside = [
        *(("", what) for what in document.left_aside),
        *((each.name, what) for each in document.parts for what in each.left_aside),
    ]
    return Answer(
        lambda: {
            "specs": [read_json(spec, tree) for spec in specs],
            "remarks": [
                *({"spec": None, "remark": remark} for remark in about),
                *(
                    {"spec": each.name, "remark": remark}
                    for each in specs
                    for remark in each.remarks
                ),
            ],
            "left_aside": [{"spec": spec or None, "what": what} for spec, what in aside],
        },
        chain(_read_shown(specs, tree, units), about, left_aside_shown(aside)),
    )


def _read_shown(specs: Sequence[ReadSpec], tree: FamilyTree, units: BarUnits) -> Iterator[str]:
    for spec in specs:
        yield spec.name or "(no name)"
        yield from (f"  {_line_shown(each.line, tree, units)}" for each in spec.lines)
        yield from (f"  ! {problem}" for problem in spec.problems)
        yield from (f"  i {remark}" for remark in spec.remarks)
        yield ""
    bad = sum(bool(spec.problems) for spec in specs)
    yield f"{counted(len(specs), 'spec')}, {bad or 'none'} with problems."


@command(FILE, description=FORMAT)
def add(arguments: Arguments) -> Answer:
    """Add every spec of a file; with one problem nothing is added."""
    text = read_file(arguments.file)
    with opened_bar(arguments) as bar:
        tree = bar.snapshot.knowledge.tree
        found = read_specs(text, tree, bar.snapshot.settings.units)
        problems = [*names_twice(found), *(each for spec in found for each in spec.problems)]
        if problems:
            in_order = tuple(sorted(problems, key=lambda each: (each.line, each.column)))
            raise UnusableFile(shown_name(arguments.file), in_order)
        if not found:
            raise UnreadableFile(shown_name(arguments.file), "there is no spec in it")
        added = bar.specs.add([spec.spec for spec in found if spec.spec is not None]).value
    return Answer(
        lambda: {"specs": [spec_json(spec, tree) for spec in added]},
        f"Added {', '.join(spec.name for spec in added)}.",
    )


def _style(text: str) -> Style:
    try:
        return _STYLES[text.casefold().replace("_", "-")]
    except KeyError:
        choices = ", ".join(_STYLES)
        raise argparse.ArgumentTypeError(f"“{text}” is none of {choices}") from None


@command(
    DRINK,
    argument(
        "--in",
        dest="style",
        type=_style,
        metavar="|".join(_STYLES),
        help="how amounts are shown (default: the bar's setting shown-in)",
    ),
)
@in_bar
def show(arguments: Arguments, bar: Bar) -> Answer:
    """One spec, with the amounts of its lines as the bar shows them or as `--in` asks."""
    spec = find_spec(bar.snapshot, arguments.name)
    tree, settings = bar.snapshot.knowledge.tree, bar.snapshot.settings
    style = settings.shown_in if arguments.style is None else arguments.style
    lines = shown_lines(spec, tree, style, settings.units)
    asked = None if arguments.style is None else lines
    if style == "as_written":
        text = write_spec(spec, tree, settings.units)
    else:
        note = style_note(spec, tree, style, settings.units)
        text = text_around(spec, _beside_written(lines)) + (f"\n{note}.\n" if note else "")
    return Answer(lambda: {"specs": [spec_json(spec, tree, asked)]}, text.removesuffix("\n"))


def _beside_written(lines: Sequence[ShownLine]) -> Iterator[str]:
    """Each line as it is shown, and beside it how it is written where that differs."""
    widest = max((width(line.text) for line in lines if line.written), default=0)
    for line in lines:
        gap = " " * (widest - width(line.text))
        yield f"{line.text}{gap}  (written: {line.written})" if line.written else line.text


def _query_help() -> str:
    said = table(("written", "a spec is found that"), LANGUAGE)
    minus = "A query that begins with a minus goes after --: barkeep spec list -- -egg"
    return f"{said}\n\n{NO_FIELD}\n{minus}"


@command(
    argument("query", metavar="QUERY", nargs="*", help="what to find (default: everything)"),
    epilog=_query_help(),
)
@in_bar
def find(arguments: Arguments, bar: Bar) -> Answer:
    """The owner's specs and the classics by name, or those that a query finds."""
    specs = search(bar.snapshot, " ".join(arguments.query))
    tree = bar.snapshot.knowledge.tree
    shown = "No spec is found by that."
    if specs:
        shown = table(("spec", "made", "glass", "lines", ""), map(_row, specs), right="lllr")
    return Answer(lambda: {"specs": [spec_json(spec, tree) for spec in specs]}, shown)


def _row(spec: Spec) -> tuple[str, ...]:
    kind = "classic" if spec.classic else f"riff of {spec.riff_of}" if spec.riff_of else ""
    made = "" if spec.technique == "unknown" else spec.technique
    return (spec.name, made, spec.glass, str(len(spec.required_lines)), kind)


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


def read_json(spec: ReadSpec, tree: FamilyTree) -> dict[str, object]:
    """A spec as it was read from a text."""
    return {
        "name": spec.name,
        "lines": [_line_json(line, tree) for line in spec.lines],
        "method": spec.method,
        "glass": spec.glass,
        "problems": [
            {"line": each.line, "column": each.column, "message": each.message}
            for each in spec.problems
        ],
        **_service(spec.spec),
    }


def spec_json(
    spec: Spec, tree: FamilyTree, shown: Sequence[ShownLine] | None = None
) -> dict[str, object]:
    """A spec of the book: as it is read, with the day it came in and what it is a riff of.

    `shown` adds to each line its amount as it is shown.
    """
    lines = tuple(_as_read(line, tree) for line in spec.lines)
    found = {
        **read_json(ReadSpec(spec, lines), tree),
        "added": iso(spec.added),
        "riff_of": spec.riff_of,
    }
    if shown is not None:
        pairs = zip(lines, shown, strict=True)
        found["lines"] = [{**_line_json(line, tree), "shown": each.amount} for line, each in pairs]
    return found


def _service(spec: Spec | None) -> dict[str, object]:
    """What a spec says beside its lines; null where it has problems and is no spec yet."""
    return {
        "ice": spec and spec.ice,
        "notes": spec and spec.notes,
        "serves": spec and spec.serves,
        "tags": spec and list(spec.tags),
        "credit": spec and spec.credit,
        "source": spec and spec.source,
    }


def _as_read(line: Line, tree: FamilyTree) -> ReadLine:
    """A line with the name in its text that was taken for its ingredient."""
    again = read_line(without_garnish(line.text), tree)
    matched, confidence = tree.name(line.ingredient), 1.0
    if again.line.ingredient == line.ingredient:
        matched, confidence = again.matched or matched, again.confidence
    return ReadLine(line, matched=matched, confidence=confidence)


def _line_json(read: ReadLine, tree: FamilyTree) -> dict[str, object]:
    line = read.line
    return {
        "text": line.text,
        "amount": rounded(line.amount, 4),
        "amount_high": rounded(line.amount_high, 4),
        "unit": line.unit,
        "ingredient": tree.name(line.ingredient) if line.ingredient else None,
        "matched": read.matched,
        "confidence": read.confidence,
        "optional": line.optional,
        "garnish": line.garnish,
        "note": line.note,
        "alternatives": [tree.name(key) for key in line.alternatives],
        "guesses": [
            {"ingredient": each.matched, "confidence": each.confidence} for each in read.guesses
        ],
    }
