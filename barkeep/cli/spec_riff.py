"""`barkeep spec riff` and `barkeep spec compare`: a new version of a drink, and what it changed."""

from __future__ import annotations

import argparse
from collections.abc import Sequence
from typing import Any

from barkeep.application.finding import find_spec
from barkeep.cli.arguments import Arguments
from barkeep.cli.bar_source import opened_bar
from barkeep.cli.output import print_json, rounded
from barkeep.cli.spec_json import spec_json
from barkeep.cli.table import table
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.drink.comparison import RiffComparison, compare, figure_rows
from barkeep.domain.spec_text.text import write_spec
from barkeep.domain.specs.riffs import riff_on
from barkeep.domain.specs.spec import Line, Spec
from barkeep.errors import InvalidField


def configure(
    what: argparse._SubParsersAction[Any], common: Sequence[argparse.ArgumentParser]
) -> None:
    """Both commands and their arguments."""
    riffing = what.add_parser(
        "riff", parents=common, help="copy a spec under a new name, as text to be changed"
    )
    riffing.add_argument("name", metavar="NAME", help="the drink it comes from")
    riffing.add_argument("new_name", metavar="NEWNAME", help="what the riff is called")
    riffing.add_argument(
        "--add", action="store_true", help="add it to the bar as it is, instead of printing it"
    )
    riffing.set_defaults(run=run_riff)
    comparing = what.add_parser(
        "compare", parents=common, help="set a riff beside its parent, or beside another spec"
    )
    comparing.add_argument("name", metavar="NAME", help="the riff")
    comparing.add_argument(
        "other", metavar="OTHER", nargs="?", help="the spec before it (default: its parent)"
    )
    comparing.set_defaults(run=run_compare)


def run_riff(arguments: Arguments) -> int:
    """Print a copy of a spec as a riff on it, or add it."""
    with opened_bar(arguments) as bar:
        spec = find_spec(bar.snapshot, arguments.name)
        tree, units = bar.snapshot.knowledge.tree, bar.snapshot.settings.units
        riff = riff_on(spec, " ".join(arguments.new_name.split()))
        if arguments.add:
            (riff,) = bar.specs.add([riff]).value
    text = write_spec(riff, tree, units)
    if arguments.json:
        print_json({"specs": [spec_json(riff, tree)], "text": text, "is_added": arguments.add})
    elif arguments.add:
        print(f"Added {riff.name}, a riff of {spec.name}.")
    else:
        print(text, end="")
    return 0


def run_compare(arguments: Arguments) -> int:
    """Print two specs side by side with what changes in the glass."""
    with opened_bar(arguments) as bar:
        snapshot = bar.snapshot
    riff = find_spec(snapshot, arguments.name)
    found = compare(_parent(riff, arguments.other, snapshot), riff, snapshot)
    if arguments.json:
        print_json(_json(found))
        return 0
    sides = (found.parent.name, found.riff.name, "")
    lines = [(_text(each.before), _text(each.after), each.change) for each in found.pairs]
    print(table(sides, lines))
    print()
    rows = [(each.label, each.before, each.after, each.change) for each in figure_rows(found)]
    print(table(("", found.parent.name, found.riff.name, "change"), rows, right="lrrr"))
    return 0


def _parent(riff: Spec, other: str | None, snapshot: Snapshot) -> Spec:
    if other is not None:
        return find_spec(snapshot, other)
    if riff.riff_of is None:
        expected = "it is no riff; name the spec to set beside it as well"
        raise InvalidField("what to compare", riff.name, expected)
    return find_spec(snapshot, riff.riff_of)


def _json(found: RiffComparison) -> dict[str, object]:
    change = found.change
    return {
        "parent": found.parent.name,
        "riff": found.riff.name,
        "lines": [
            {
                "before": each.before and each.before.text,
                "after": each.after and each.after.text,
                "change": each.change,
            }
            for each in found.pairs
        ],
        "changes": {
            "abv_percent": rounded(change.abv_percent, 2),
            "sugar_g_per_l": rounded(change.sugar_g_per_l, 2),
            "acid_g_per_l": rounded(change.acid_g_per_l, 2),
            "served_volume_ml": rounded(change.served_volume_ml, 2),
            "cost": rounded(change.cost, 2),
        },
    }


def _text(line: Line | None) -> str:
    return "" if line is None else line.text
