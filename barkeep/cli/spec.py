"""`barkeep spec read`, `add`, `show` and `list`; and specs as JSON, with stable keys."""

from __future__ import annotations

import argparse
from collections.abc import Iterator, Sequence
from dataclasses import replace
from itertools import chain

from barkeep.application.bar import Bar
from barkeep.application.finding import find_spec
from barkeep.cli.arguments import DRINK, Arguments, argument, command, flag
from barkeep.cli.bar_source import (
    in_bar,
    known_to_readers,
    opened_bar,
    read_document,
    read_file,
    shown_name,
)
from barkeep.cli.on_paper import ON_PAPER, of_snapshot
from barkeep.cli.output import Answer, iso, left_aside_shown, rounded, table, width
from barkeep.cli.query_help import query_help
from barkeep.cli.teaching import told_how_to_teach
from barkeep.documents.specs.files import specs_in
from barkeep.domain.amounts.amount import show_range
from barkeep.domain.amounts.rounding import STYLES, Style
from barkeep.domain.amounts.units import US_UNITS, BarUnits
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.drink.search import search
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import counted
from barkeep.domain.spec_text.lines import ReadLine, read_line
from barkeep.domain.spec_text.settling import open_questions
from barkeep.domain.spec_text.text import (
    HOW_PARTED,
    ReadSpec,
    names_twice,
    read_specs,
    text_around,
    write_spec,
)
from barkeep.domain.specs.called import called_in_sentence
from barkeep.domain.specs.shown_lines import (
    ShownLine,
    names_and_kind,
    shown_lines,
    style_note,
    without_garnish,
)
from barkeep.domain.specs.spec import Line, Spec, UnsettledLine, with_unsettled
from barkeep.errors import InvalidField, Problem, UnreadableFile, UnusableFile, spoken_list

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
    found, document = specs_in(read_as.text, name, tree, units)
    specs = [
        replace(each, problems=told_how_to_teach(each.problems, tree, arguments)) for each in found
    ]
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
        yield from (f"  {row}" for row in _service_shown(spec.understood))
        yield from (f"  ! {problem}" for problem in spec.problems)
        yield from (f"  i {remark}" for remark in spec.remarks)
        yield ""
    bad = sum(bool(spec.problems) for spec in specs)
    yield f"{counted(len(specs), 'spec')}, {bad or 'none'} with problems."


def _service_shown(spec: Spec) -> Iterator[str]:
    """Everything beside its lines that was read of a spec."""
    said = (
        ("Riff of", spec.riff_of or ""),
        ("Glass", spec.glass),
        ("Ice", spec.ice),
        ("Serves", "" if spec.serves == 1.0 else f"{spec.serves:g}"),
        ("Tags", ", ".join(spec.tags)),
        ("Credit", spec.credit),
        ("Source", spec.source),
    )
    yield from (f"{word}: {text}" for word, text in said if text)
    for note in spec.notes.splitlines():
        strange = note.startswith("Garnish: ")
        yield (
            f"? {note} (no ingredient is called that; kept as a note)"
            if strange
            else (f"Notes: {note}")
        )
    rows = [row for row in spec.method.splitlines() if row]
    yield from (f"Method: {row}" for row in rows[:1])
    yield from (f"        {row}" for row in rows[1:])


KEEP_QUESTIONS = flag(
    "--keep-questions",
    "keep lines that are not understood with their spec, to be settled later",
)
HOW_TO_KEEP = "--keep-questions keeps such lines with their spec, as they are written"


def questions_refused(file: str, problems: Sequence[Problem]) -> UnusableFile:
    """Why a file cannot be used as it is; says where nothing but questions stands in the way."""
    in_order = sorted(problems, key=lambda each: (each.line, each.column))
    only_questions = all(each.asks for each in in_order)
    return UnusableFile(file, tuple(in_order), HOW_TO_KEEP if only_questions else "")


@command(FILE, KEEP_QUESTIONS, description=FORMAT)
def add(arguments: Arguments) -> Answer:
    """Add every spec of a file; with one problem that is not kept nothing is added."""
    text = read_file(arguments.file)
    with opened_bar(arguments) as bar:
        tree = bar.snapshot.knowledge.tree
        found = read_specs(text, tree, bar.snapshot.settings.units)
        problems = [*names_twice(found), *(each for spec in found for each in spec.problems)]
        if arguments.keep_questions:
            problems = [each for each in problems if not each.asks]
        if problems:
            raise questions_refused(shown_name(arguments.file), problems)
        if not found:
            raise UnreadableFile(shown_name(arguments.file), "there is no spec in it")
        kept = [spec for each in found if (spec := each.with_questions) is not None]
        added = bar.specs.add(kept).value
    return Answer(lambda: {"specs": [spec_json(spec, tree) for spec in added]}, _added(added))


def _added(specs: Sequence[Spec]) -> Iterator[str]:
    yield f"Added {', '.join(spec.name for spec in specs)}."
    yield from kept_questions(specs)


def kept_questions(specs: Sequence[Spec]) -> Iterator[str]:
    """Each line that is kept though it is not understood, a sentence each."""
    for spec in specs:
        for each in spec.unsettled:
            yield f"{spec.name}: {each.named} is kept as it is. {each.question}"


@command(
    DRINK,
    description="Read the lines of a spec that were not understood again, such as after an "
    "ingredient or an alias was added; what is still not understood stays a question.",
)
@in_bar
def settle(arguments: Arguments, bar: Bar) -> Answer:
    """Settle what can be settled of one spec."""
    spec = find_spec(bar.snapshot, arguments.name)
    tree, units = bar.snapshot.knowledge.tree, bar.snapshot.settings.units
    asked = open_questions(spec, tree, units)
    if not asked:
        raise InvalidField("spec", spec.name, "it has no line that is not understood")
    if not any(each.settles for each in asked):
        said = " ".join(each.sentence for each in asked).rstrip(".")
        raise InvalidField("spec", spec.name, f"nothing of it can be settled yet. {said}")
    done = bar.specs.settle(spec.id or 0).value
    return Answer(
        lambda: {"specs": [spec_json(done, tree, units=units)]},
        _settled([each.line for each in asked if each.settles], done),
    )


def _settled(lines: Sequence[UnsettledLine], spec: Spec) -> Iterator[str]:
    names = spoken_list([each.named for each in lines], "and")
    yield f"{names} of {spec.name} {'is' if len(lines) == 1 else 'are'} understood and counted now."
    yield from kept_questions([spec])


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
    questions = open_questions(spec, tree, settings.units)
    if style == "as_written":
        text = write_spec(spec, tree, settings.units)
    else:
        note = style_note(spec, tree, style, settings.units)
        among = with_unsettled(spec, list(_beside_written(lines)), lambda each: each.text)
        text = text_around(spec, among) + (f"\n{note}.\n" if note else "")
    if questions:
        text += "\n" + "".join(f"? {each.sentence}\n" for each in questions)
    if any(each.settles for each in questions):
        text += f"To settle it: barkeep spec settle “{spec.name}”\n"
    return Answer(
        lambda: {"specs": [spec_json(spec, tree, asked, units=settings.units)]},
        text.removesuffix("\n"),
    )


def _beside_written(lines: Sequence[ShownLine]) -> Iterator[str]:
    """Each line as it is shown, and beside it how it is written where that differs."""
    widest = max((width(line.text) for line in lines if line.written), default=0)
    for line in lines:
        gap = " " * (widest - width(line.text))
        yield f"{line.text}{gap}  (written: {line.written})" if line.written else line.text


@command(
    argument("query", metavar="QUERY", nargs="*", help="what to find (default: everything)"),
    *ON_PAPER,
    epilog=query_help("spec list"),
)
@of_snapshot
def find(arguments: Arguments, snapshot: Snapshot) -> Answer:
    """The owner's specs and the classics by name, or those that a query finds."""
    specs = search(snapshot, " ".join(arguments.query))
    tree = snapshot.knowledge.tree
    shown = "No spec is found by that."
    if specs:
        shown = table(("spec", "made", "glass", "lines", ""), map(_row, specs), right="lllr")
    return Answer(lambda: {"specs": [spec_json(spec, tree) for spec in specs]}, shown)


def _row(spec: Spec) -> tuple[str, ...]:
    kind = "classic" if spec.classic else f"riff of {spec.riff_of}" if spec.riff_of else ""
    if spec.unsettled:
        asked = f"not understood: {spoken_list([each.named for each in spec.unsettled], 'and')}"
        kind = "; ".join(each for each in (kind, asked) if each)
    made = "" if spec.technique == "unknown" else spec.technique
    return (spec.name, made, spec.glass, str(len(spec.required_lines)), kind)


def _line_shown(line: Line, tree: FamilyTree, units: BarUnits) -> str:
    if not line.ingredient:
        return f"? {line.text}"
    amount = ""
    if line.amount is not None and line.unit is not None:
        amount = show_range(line.amount, line.amount_high, line.unit, units)
    words = [amount, names_and_kind(line, tree)]
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
            {
                "line": each.line,
                "column": each.column,
                "message": each.message,
                "likely": each.answer,
            }
            for each in spec.problems
        ],
        **_service(spec.spec),
    }


def spec_json(
    spec: Spec,
    tree: FamilyTree,
    shown: Sequence[ShownLine] | None = None,
    *,
    units: BarUnits = US_UNITS,
) -> dict[str, object]:
    """A spec of the book: as it is read, with the day it came in and what it is a riff of.

    `shown` adds to each line its amount as it is shown. A line that is not
    understood stands among the others without an ingredient, and once more
    with its question under `unsettled`.
    """
    lines = tuple(_as_read(line, tree) for line in spec.lines)
    every = with_unsettled(spec, lines, lambda each: ReadLine(Line(each.text, "")))
    found = {
        **read_json(ReadSpec(spec, every), tree),
        "added": iso(spec.added),
        "riff_of": spec.riff_of,
        "unsettled": [
            {
                "text": each.line.text,
                "line": each.line.place + 1,
                "question": each.line.question,
                "settles": each.settles,
            }
            for each in open_questions(spec, tree, units)
        ],
    }
    if shown is not None:
        amounts = with_unsettled(spec, [each.amount for each in shown], lambda _each: "")
        pairs = zip(every, amounts, strict=True)
        found["lines"] = [{**_line_json(line, tree), "shown": amount} for line, amount in pairs]
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
        "called": called_in_sentence(line, tree) if line.ingredient else "",
        "stated": list(line.stated),
    }
