"""Specs for `barkeep import`: look at a document of specs, then take all of it in or nothing."""

from __future__ import annotations

from barkeep.application.spec_imports import (
    Decision,
    Differing,
    ImportedSpecs,
    ImportPreview,
    NamedText,
    preview,
)
from barkeep.cli.arguments import Arguments
from barkeep.cli.bar_source import opened_bar, shown_name
from barkeep.cli.output import counted, print_json
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.errors import UnusableFile, spoken_list

MOST_NAMED = 10
"""Names said in a sentence; a hundred of them say nothing."""


def run(arguments: Arguments, text: str) -> int:
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
