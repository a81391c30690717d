"""`barkeep import`, `export` and `sample`: bottles, specs and the sample bar, in and out."""

from __future__ import annotations

import argparse
from pathlib import Path

from barkeep.application.publishing import specs_to_export
from barkeep.application.sample import build
from barkeep.application.spec_imports import (
    Decision,
    Differing,
    ImportedSpecs,
    ImportPreview,
    NamedText,
    preview,
)
from barkeep.cli.arguments import Arguments
from barkeep.cli.bar_source import opened_bar, read_file, shown_name
from barkeep.cli.endings import complain
from barkeep.cli.output import counted, print_json
from barkeep.documents.bottles_csv import COLUMNS, read_bottles_csv
from barkeep.documents.specs.csv import COLUMNS as SPEC_COLUMNS
from barkeep.documents.specs.files import EXPORT_FORMATS, SUFFIXES, exported, holds_specs
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.errors import UnreadableFile, UnusableFile, spoken_list

MOST_NAMED = 10
"""Names said in a sentence; a hundred of them say nothing."""


def import_specs(arguments: Arguments, text: str) -> int:
    """Import the specs of a document. With one problem nothing is written, and each is said."""
    name = shown_name(arguments.file)
    with opened_bar(arguments) as bar:
        found = _looked_at(bar.snapshot, name, text)
        decisions = _decisions(found, take_theirs=arguments.take_theirs)
        if arguments.dry_run:
            done = _would_do(found, decisions)
        else:
            done = bar.specs.import_previewed(found, decisions).value
    if arguments.json:
        print_json(_answer(found, done))
    else:
        _tell(found, done, would=arguments.dry_run)
    return 0


def _looked_at(snapshot: Snapshot, name: str, text: str) -> ImportPreview:
    found = preview(snapshot, [NamedText(name, text)])
    if found.problems:
        raise UnusableFile(name, found.problems)
    return found


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
            {"spec": each.spec.name, "remark": remark}
            for each in everything
            for remark in each.remarks
        ],
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


def _tell(found: ImportPreview, done: ImportedSpecs, *, would: bool) -> None:
    for each in found.differing:
        print("\n".join(_compared(each)) + "\n")
    for one in (*found.new, *(each.incoming for each in found.differing)):
        for remark in one.remarks:
            print(f"{one.spec.name}: {remark}")
    said = [
        _sentence("would be added" if would else "came in", done.added),
        _sentence("would be replaced" if would else "replaced", done.replaced),
        _sentence("kept as in the bar", done.kept),
        f"{counted(len(found.same), 'spec')} there already" if found.same else "",
    ]
    print("; ".join(each for each in said if each) or "Nothing would change", end=".\n")


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


def configure_import(parser: argparse.ArgumentParser) -> None:
    """Its arguments."""
    parser.description = ABOUT
    parser.formatter_class = argparse.RawDescriptionHelpFormatter
    parser.add_argument("file", metavar="FILE", help="a file, or - for standard input")
    parser.add_argument(
        "--dry-run",
        action="store_true",
        help="say what specs would come in, and write nothing",
    )
    parser.add_argument(
        "--take-theirs",
        action="store_true",
        help="let a spec of the file take the place of another of its name",
    )
    parser.set_defaults(run=run_import)


def run_import(arguments: Arguments) -> int:
    """Import a file. With one problem nothing is written, and each is said."""
    text = read_file(arguments.file)
    if holds_specs(text, arguments.file):
        return import_specs(arguments, text)
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


def configure_export(parser: argparse.ArgumentParser) -> None:
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
    parser.set_defaults(run=run_export)


def run_export(arguments: Arguments) -> int:
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


def configure_sample(parser: argparse.ArgumentParser) -> None:
    """Its arguments."""
    parser.add_argument("file", metavar="FILE", help="a new file; none is ever written over")
    parser.set_defaults(run=run_sample)


def run_sample(arguments: Arguments) -> int:
    """Build the sample bar."""
    path = Path(arguments.file).expanduser().absolute()
    build(path)
    if arguments.json:
        print_json({"file": str(path)})
    else:
        print(f"The sample bar is in {path}. Everything in it is invented.")
    return 0
