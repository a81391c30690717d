"""`barkeep import`, `export` and `publish`: bottles and specs, in and out."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from pathlib import Path

from barkeep.application.bar import Bar
from barkeep.application.bottle_imports import terms_of
from barkeep.application.finding import find_spec
from barkeep.application.imports import (
    Decision,
    Differing,
    ImportedSpecs,
    ImportPreview,
    NamedText,
    keep_all,
    keep_none,
    preview,
)
from barkeep.application.kept_backups import holds_nothing
from barkeep.application.publishing import (
    cards_of,
    drink_facts,
    list_of_bottles,
    specs_to_export,
)
from barkeep.cli.arguments import DRINK, Arguments, argument, command, flag
from barkeep.cli.backups import YES, named_bar, replaced_by
from barkeep.cli.bar_source import STDIN, in_bar, opened_bar, read_document, shown_name
from barkeep.cli.bottle_import import LIKELY, import_bottles
from barkeep.cli.output import Answer, left_aside_shown
from barkeep.cli.spec import HOW_TO_KEEP, KEEP_QUESTIONS
from barkeep.documents.bottles_csv import COLUMNS
from barkeep.documents.bottles_or_specs import lists_bottles
from barkeep.documents.bytes_read import DecodedText
from barkeep.documents.everything import is_everything
from barkeep.documents.foreign_text import fields_of_header
from barkeep.documents.printed.cards import CardContent
from barkeep.documents.printed.descriptions import (
    description_html,
    description_markdown,
    description_text,
)
from barkeep.documents.specs.columns import (
    EXAMPLE,
    ColumnRequest,
    SeenColumn,
    columns_text,
    read_columns,
)
from barkeep.documents.specs.csv import COLUMNS as SPEC_COLUMNS
from barkeep.documents.specs.files import EXPORT_FORMATS, SUFFIXES, exported, holds_specs
from barkeep.documents.specs.tables import MEANING_WORDS
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.phrases import counted
from barkeep.domain.specs.spec import Spec
from barkeep.errors import UnreadableFile, UnusableFile, UserError, spoken_list

MOST_NAMED = 10
"""Names said in a sentence; a hundred of them say nothing."""


ABOUT = f"""\
Bottles come from a CSV file with the header
  {",".join(COLUMNS)}
in English, German, French, Italian or Spanish, in any order; product, ingredient
and size must be there. With --bottles it may also be lines as you
would write them down, a bottle a line, such as “2 x London dry gin 70 cl, half full”:
see “barkeep add --help”. Lines that may be either are asked about: --bottles or --specs
says which. A level is full, half, 3/4, 60 %, 0.6, 315 ml or 10 oz; a
strength 43, 43 % or 86 proof; a size 70 cl, 0.7 l, 700 or 24 oz; opened is yes, no
or a day. What may mean two things, such as 0.43 or 03/04/2026, is a problem that
says what is likely.

With one problem nothing comes in, each is said, and the status is 1. --good-rows
brings in the other rows. --rest FILE does too, and writes the rows that were left
to a new CSV file with a column problem; put them right there and import that file.
A row that looks like a bottle that is there already (the same product and size) is
left out, unless --again is given. One undo takes all of a file back.

A whole bar comes from what “export --everything” wrote, in the place of the bar that is
there; what it replaces is kept as a backup. Without --yes the two are only set side by
side, unless the bar that is there is new. With it --json prints what restore does.

Specs come from a file that ends in {", ".join(SUFFIXES)}: plain text, Markdown,
barkeep's own JSON, schema.org Recipe as JSON or within a saved web page (JSON-LD,
microdata, RDFa), a page whose text is plainly a recipe, or a list in CSV. What a
file holds is told by how it begins rather than by its name; commas, semicolons or
tabs part the fields of a list. Its columns may have these names or others that are
usual in English, German, French, Italian or Spanish:
  {",".join(SPEC_COLUMNS)}
or amount, unit and ingredient in place of line. A row is a line of a drink, its
name on each row or only on the first; or all of a drink, with the columns numbered
(amount1, unit1, ingredient1, amount2 ...). Where it is not clear which column is
what, --columns says it, and the refusal gives the likely answer to be repeated:
  --columns "name=1,amount=2,unit=3,ingredient=4"
by the columns' numbers or names; what is not named is left aside. Words for
columns: {", ".join(MEANING_WORDS)}.

A spec of a name that the bar has for another one stays as the bar has it, unless
--take-theirs is given; a classic always stays. All of a file's specs come in or
none; with one problem nothing does, each is said, and the status is 1. Lines that are
not understood are kept with their spec, as they are written, where --keep-questions is
given.

--json prints for bottles the keys added (titles), same (row, product, bottle),
left (row, column, message, likely), left_aside (columns that nothing was read
from), remarks (row, remark), read_as (a sentence where the letters were not
UTF-8), rest (the file written), and the numbers products and bottles; ignored is
left_aside by its older name. Rows count from 1 as in a spreadsheet, the header
among them. It prints for specs added, replaced, kept and same (names),
differing (spec, where, classic, lines: mine, theirs, change; fields: field,
mine, theirs), remarks (spec, remark) and left_aside (spec, what): what the file
says and no spec has a place for. spec is null where it is of the whole file.
change is one of same, wording, amount, swapped, added, left out.
"""


class ColumnsToSay(UserError):
    """A list of which the user must say what its columns are: `columns` is the likely answer."""

    file: str
    why: str
    columns: str
    seen: str
    says = "{file} cannot be used yet: {why} Its columns are {seen}. Say {columns}."


class ReadsLikeBottles(UserError):
    """Free lines taken for specs, of which so many name a bottle: the user must say which."""

    file: str
    bottles: int
    lines: int

    says = (
        "{file} reads like a list of bottles: {bottles} of its {lines} lines name one, and nothing "
        "came in. Say --bottles to bring them in, or --specs if it holds specs."
    )


COLUMNS_OPTION = argument(
    "--columns",
    metavar="WHICH",
    default="",
    help="which columns of a list are what, such as “name=1,amount=2,unit=3,ingredient=4”",
)


@command(
    argument("file", metavar="FILE", help="a file, or - for standard input"),
    flag("--dry-run", "say what specs would come in, and write nothing"),
    flag("--take-theirs", "let a spec of the file take the place of another of its name"),
    flag("--bottles", "it lists bottles: a table with a header, or one a line in your own words"),
    flag("--specs", "it holds specs, though its lines read like bottles"),
    LIKELY,
    flag("--good-rows", "bring in the bottles of rows that can be used, and name the others"),
    argument(
        "--rest",
        metavar="FILE",
        help="as --good-rows, and write the other rows to a new file, to be repaired and imported",
    ),
    YES,
    flag("--again", "also bring in bottles that look like ones that are there already"),
    KEEP_QUESTIONS,
    COLUMNS_OPTION,
    description=ABOUT,
)
def take_in(arguments: Arguments) -> Answer:
    """Import a file. With a problem nothing is written unless that is asked for; each is said."""
    read, name = read_document(arguments.file), shown_name(arguments.file)
    if is_everything(read.text):
        return _everything_in(arguments, name)
    if arguments.bottles and arguments.specs:
        raise UnreadableFile(name, "--bottles and --specs cannot both be said")
    specs = not arguments.bottles and (
        arguments.specs or bool(arguments.columns) or holds_specs(read.text, arguments.file)
    )
    if not specs and (arguments.dry_run or arguments.take_theirs or arguments.keep_questions):
        options = "--dry-run, --take-theirs and --keep-questions"
        raise UnreadableFile(name, f"{options} are for specs; it lists bottles")
    with opened_bar(arguments) as bar:
        if specs and not _means_specs(arguments):
            _refuse_what_lists_bottles(read, name, arguments, bar.snapshot)
        if specs and (arguments.good_rows or arguments.rest or arguments.again or arguments.likely):
            said = "--good-rows, --rest, --again and --likely are for lists of bottles"
            raise UnreadableFile(name, f"{said}; it holds specs")
        if specs:
            return _specs(bar, _named(read, arguments), arguments)
        return import_bottles(bar, name, read, arguments)


def _means_specs(arguments: Arguments) -> bool:
    """Whether something is said that is only said of specs."""
    return bool(
        arguments.specs
        or arguments.columns
        or arguments.take_theirs
        or arguments.dry_run
        or arguments.keep_questions
    )


def _refuse_what_lists_bottles(
    read: DecodedText, name: str, arguments: Arguments, snapshot: Snapshot
) -> None:
    """Raises `ReadsLikeBottles` for free lines that name bottles: what is meant is not guessed."""
    found = lists_bottles(read.text, arguments.file, terms_of(snapshot))
    if found is not None:
        raise ReadsLikeBottles(name, found.bottles, found.lines)


def _everything_in(arguments: Arguments, name: str) -> Answer:
    options = (
        "bottles",
        "specs",
        "likely",
        "dry_run",
        "take_theirs",
        "keep_questions",
        "good_rows",
        "rest",
        "again",
        "columns",
    )
    given = [each for each in options if getattr(arguments, each)]
    if given:
        said = f"--{given[0].replace('_', '-')} is for parts of a bar; it holds a whole one"
        raise UnreadableFile(name, said)
    if arguments.file == STDIN:
        raise UnreadableFile(name, "a whole bar is imported from a file; name it")
    with named_bar(arguments) as bar:
        file = Path(arguments.file).expanduser().absolute()
        agreed = arguments.yes or holds_nothing(bar)
        return replaced_by(file, bar, agreed=agreed, verb="imported")


def _named(read: DecodedText, arguments: Arguments) -> NamedText:
    titles = fields_of_header(read.text)
    columns = read_columns(arguments.columns, titles) if arguments.columns else ()
    return NamedText(shown_name(arguments.file), read.text, read.read_as, columns)


def _specs(bar: Bar, named: NamedText, arguments: Arguments) -> Answer:
    found = _looked_at(bar.snapshot, named, keep_questions=arguments.keep_questions)
    decisions = _decisions(found, take_theirs=arguments.take_theirs)
    if arguments.dry_run:
        done = _would_do(found, decisions)
    else:
        done = bar.imports.specs(found, decisions).value
    return Answer(lambda: _answer(found, done), _told(found, done, would=arguments.dry_run))


def _looked_at(snapshot: Snapshot, named: NamedText, *, keep_questions: bool) -> ImportPreview:
    keeps = keep_all if keep_questions else keep_none
    found = preview(snapshot, [named], keeps=keeps)
    for each in found.needs_columns:
        raise _columns_to_say(each.request)
    if found.problems:
        only_questions = all(each.questions for each in found.unreadable)
        raise UnusableFile(
            named.file, found.problems, way_out=HOW_TO_KEEP if only_questions else ""
        )
    return found


def _column_seen(column: SeenColumn) -> str:
    sample = f"(“{column.samples[0]}” …)" if column.samples else "(empty)"
    return " ".join(filter(None, (str(column.place), column.title, sample)))


def _columns_to_say(request: ColumnRequest) -> ColumnsToSay:
    """What to say of a list, with the likely answer where there is one."""
    seen = [_column_seen(each) for each in request.columns]
    likely = columns_text(request.likely)
    if not any(each.meaning in ("ingredient", "line") for each in request.likely):
        likely = f"{likely},ingredient=…" if likely else EXAMPLE
    return ColumnsToSay(
        request.file, request.why, f'--columns "{likely}"', spoken_list(seen, "and")
    )


def _decisions(found: ImportPreview, *, take_theirs: bool) -> dict[int, Decision]:
    taken = Decision("take_theirs")
    return {
        place: taken
        for place, each in enumerate(found.differing)
        if take_theirs and each.replaceable
    }


def _would_do(found: ImportPreview, decisions: dict[int, Decision]) -> ImportedSpecs:
    names = [each.mine.name for each in found.differing]
    return ImportedSpecs(
        tuple(each.spec.name for each in found.new),
        tuple(name for place, name in enumerate(names) if place in decisions),
        tuple(name for place, name in enumerate(names) if place not in decisions),
    )


def _answer(found: ImportPreview, done: ImportedSpecs) -> dict[str, object]:
    everything = (*found.new, *(each.incoming for each in found.differing))
    return {
        "added": list(done.added),
        "replaced": list(done.replaced),
        "kept": list(done.kept),
        "same": [each.spec.name for each in found.same],
        "differing": [_differing(each) for each in found.differing],
        "remarks": [
            *({"spec": None, "remark": each.words} for each in found.remarks),
            *(
                {"spec": each.spec.name, "remark": remark}
                for each in everything
                for remark in each.remarks
            ),
        ],
        "left_aside": [{"spec": each.spec or None, "what": each.what} for each in found.left_aside],
    }


def _differing(each: Differing) -> dict[str, object]:
    return {
        "spec": each.mine.name,
        "where": each.incoming.where,
        "classic": each.mine.classic,
        "lines": [
            {"mine": line.mine, "theirs": line.theirs, "change": line.change}
            for line in each.comparison.lines
        ],
        "fields": [
            {"field": field.name, "mine": field.mine, "theirs": field.theirs}
            for field in each.comparison.fields
        ],
    }


def _told(found: ImportPreview, done: ImportedSpecs, *, would: bool) -> Iterator[str]:
    for each in found.differing:
        yield from (*_compared(each), "")
    for one in (*found.new, *(each.incoming for each in found.differing)):
        for remark in one.remarks:
            yield f"{one.spec.name}: {remark}"
    yield from (each.words for each in found.remarks)
    yield from left_aside_shown([(each.spec, each.what) for each in found.left_aside])
    said = [
        _sentence("would be added" if would else "came in", done.added),
        _sentence("would be replaced" if would else "replaced", done.replaced),
        _sentence("kept as in the bar", done.kept),
        f"{counted(len(found.same), 'spec')} there already" if found.same else "",
    ]
    yield f"{'; '.join(each for each in said if each) or 'Nothing would change'}."


def _compared(each: Differing) -> list[str]:
    rows = [f"{each.mine.name} ({each.incoming.where}) is another in the bar:"]
    for line in each.comparison.lines:
        if line.change != "same":
            rows.append(f"  {line.mine or '(nothing)'}  ->  {line.theirs or '(nothing)'}")
    for field in each.comparison.fields:
        before, after = (" / ".join(text.split("\n")) for text in (field.mine, field.theirs))
        rows.append(f"  {field.name}: {before or '(nothing)'}  ->  {after or '(nothing)'}")
    return rows


def _sentence(verb: str, names: tuple[str, ...]) -> str:
    if not names:
        return ""
    few = len(names) <= MOST_NAMED
    which = f" ({spoken_list(names, 'and')})" if few else ""
    return f"{counted(len(names), 'spec')} {verb}{which}"


BOTTLES_FILE = "bottles.csv"
"""A file of this name is one of bottles, unless specs are named for it."""
_KINDS = ", ".join(f"{each.suffix} {each.title}" for each in EXPORT_FORMATS.values())
ABOUT_EXPORT = f"""\
Write specs to a file. Its suffix says what it will be: {_KINDS}.

With --everything the whole bar is written, as one JSON document: removed things, the
ledger, settings and all, but for what undo remembers. An import of that file, or a
restore, makes an equal bar of it; resources/barkeep-bar.schema.json is its schema.

To a file called {BOTTLES_FILE}, or to any .csv with --bottles, the bottles are written
instead, each with its label, its level, its days and what was weighed of it. An
import of that file brings all of them back.

--json prints file, and specs (names) or bottles (their numbers); with --everything
file, and bottles, products, specs and shoots (how many).
"""


@command(
    argument("file", metavar="FILE", help="the file, in place of an old one, never of a bar"),
    argument("names", metavar="NAME", nargs="*", help="which specs (default: all your own)"),
    flag("--classics", "the classics as well"),
    flag("--bottles", f"the bottles instead of specs, as they are to {BOTTLES_FILE} anyway"),
    flag("--everything", "the whole bar as one JSON document"),
    description=ABOUT_EXPORT,
)
@in_bar
def export(arguments: Arguments, bar: Bar) -> Answer:
    """Write the file, whole or not at all."""
    if arguments.everything:
        return _everything_out(arguments, bar)
    if _means_bottles(arguments):
        return _bottles_out(arguments, bar)
    specs = specs_to_export(bar.snapshot, arguments.names, classics=arguments.classics)
    tree, units = bar.snapshot.knowledge.tree, bar.snapshot.settings.units
    file = bar.write_file(arguments.file, exported(specs, arguments.file, tree, units))
    was = "was" if len(specs) == 1 else "were"
    return Answer(
        lambda: {"file": str(file), "specs": [spec.name for spec in specs]},
        f"{counted(len(specs), 'spec')} {was} written to {file}.",
    )


def _everything_out(arguments: Arguments, bar: Bar) -> Answer:
    if arguments.names or arguments.classics or arguments.bottles:
        raise UnreadableFile(arguments.file, "--everything writes the whole bar and no part of it")
    file = bar.write_file(arguments.file, bar.backups.everything())
    snapshot = bar.snapshot
    counts = {
        word: len(getattr(snapshot, word)) for word in ("bottles", "products", "specs", "shoots")
    }
    return Answer(
        lambda: {"file": str(file), **counts},
        f"The whole bar is written to {file}. What undo remembers is not in it.",
    )


def _means_bottles(arguments: Arguments) -> bool:
    """Whether the bottles are asked for: by their flag, or by the file's name alone."""
    named_so = Path(arguments.file).name.casefold() == BOTTLES_FILE
    return arguments.bottles or (named_so and not arguments.names and not arguments.classics)


def _bottles_out(arguments: Arguments, bar: Bar) -> Answer:
    if arguments.names or arguments.classics:
        raise UnreadableFile(arguments.file, "--bottles writes all bottles and no spec")
    if Path(arguments.file).suffix.casefold() != ".csv":
        raise UnreadableFile(arguments.file, "its name must end in .csv, which bottles go out by")
    bottles = bar.snapshot.bottles
    file = bar.write_file(arguments.file, list_of_bottles(bar.snapshot))
    was = "was" if len(bottles) == 1 else "were"
    return Answer(
        lambda: {"file": str(file), "bottles": [each.id for each in bottles]},
        f"{counted(len(bottles), 'bottle')} {was} written to {file}.",
    )


_DESCRIBED: Mapping[str, Callable[[tuple[CardContent, ...]], str]] = {
    "text": description_text,
    "markdown": description_markdown,
    "html": description_html,
}
_AS_DATA = {"json-ld": "spec.jsonld", "json": "spec.json"}


@command(
    DRINK,
    argument(
        "--as",
        dest="form",
        choices=(*_DESCRIBED, *_AS_DATA),
        default="text",
        help="what it is to be (default: text)",
    ),
    argument(
        "--to", metavar="FILE", help="write it to a file, in place of an old one, never of a bar"
    ),
    description="Describe a drink for others: amounts in ounces and millilitres, method, glass, "
    "ice, garnish, credits, strength, allergens and the usual cautions. The forms json-ld and "
    "json are the spec itself, to be read by programs.",
)
@in_bar
def publish(arguments: Arguments, bar: Bar) -> Answer:
    """One description, printed or written."""
    spec = find_spec(bar.snapshot, arguments.name)
    text = _published(spec, arguments.form, bar.snapshot)
    picture = drink_facts(spec, bar.snapshot).picture
    file = None if arguments.to is None else str(bar.write_file(arguments.to, text))
    return Answer(
        lambda: {
            "spec": spec.name,
            "as": arguments.form,
            "file": file,
            "text": text,
            "picture": None if picture is None else picture.in_words,
        },
        text.removesuffix("\n") if file is None else f"{spec.name} was written to {file}.",
    )


def _published(spec: Spec, form: str, snapshot: Snapshot) -> str:
    if form in _AS_DATA:
        tree, units = snapshot.knowledge.tree, snapshot.settings.units
        return exported([spec], _AS_DATA[form], tree, units)
    return _DESCRIBED[form](cards_of([spec], snapshot))
