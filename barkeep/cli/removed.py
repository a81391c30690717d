"""`barkeep removed`: what was removed from the bar, and bringing it back."""

from __future__ import annotations

from barkeep.application.bar import Bar
from barkeep.application.removed import find_removed
from barkeep.cli.arguments import Arguments, argument, command
from barkeep.cli.bar_source import in_bar
from barkeep.cli.output import Answer, rounded, table
from barkeep.domain.amounts.measures import show_quantity
from barkeep.store.removed import KINDS, Removed


@command(
    description="List what was removed, the latest first; nothing that you made is ever deleted. "
    "--json prints removed: each kind, id, name, at, left and unit.",
)
@in_bar
def listed(_arguments: Arguments, bar: Bar) -> Answer:
    """Everything that was removed."""
    things = bar.removed.listed()
    shown = "Nothing was removed."
    if things:
        shown = table(("what", "id", "name", "left", "changed last"), map(_row, things), "lrlr")
    return Answer(lambda: {"removed": [_json(each) for each in things]}, shown)


def _row(thing: Removed) -> tuple[str, ...]:
    left = "" if thing.left is None else show_quantity(thing.left, thing.unit)
    at = "" if thing.at is None else f"{thing.at:%Y-%m-%d %H:%M}"
    return (thing.kind, str(thing.id), thing.name, left, at)


def _json(thing: Removed) -> dict[str, object]:
    return {
        "kind": thing.kind,
        "id": thing.id,
        "name": thing.name,
        "at": None if thing.at is None else thing.at.isoformat(timespec="seconds"),
        "left": rounded(thing.left, 2),
        "unit": None if thing.left is None else thing.unit,
    }


@command(
    argument("kind", metavar="KIND", choices=KINDS, help=", ".join(KINDS)),
    argument("which", metavar="WHICH", help="its id, or its name"),
    description="Bring one thing back as it was. A bottle brings its product along.",
)
@in_bar
def bring_back(arguments: Arguments, bar: Bar) -> Answer:
    """Show one thing again."""
    found = find_removed(bar.removed.listed(), arguments.kind, arguments.which)
    thing = bar.removed.bring_back(found.kind, found.id).value
    return Answer(
        lambda: {"brought_back": _json(thing)},
        f"The {thing.kind} {thing.name} (#{thing.id}) is back.",
    )
