"""What `bottles` and `pantry` share: part of the shelf, as a table or as one JSON object."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from barkeep.cli.arguments import Arguments
from barkeep.cli.bar_source import opened_bar
from barkeep.cli.output import print_json
from barkeep.cli.table import table
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.bottle import Bottle
from barkeep.domain.ingredients.tree import FamilyTree


@dataclass(frozen=True, slots=True)
class Listing:
    """One way to list bottles. `right` is as for `table`, `foot` a line under it or nothing."""

    key: str
    holds: Callable[[Bottle], bool]
    as_json: Callable[[Bottle, FamilyTree], dict[str, object]]
    head: Sequence[str]
    as_row: Callable[[Bottle, FamilyTree], Sequence[str]]
    right: str
    foot: Callable[[int, Snapshot], str] | None = None


def print_listing(arguments: Arguments, listing: Listing) -> int:
    """Print the bottles of the bar that a listing holds, along the shelf."""
    with opened_bar(arguments) as bar:
        snapshot = bar.snapshot
    tree = snapshot.knowledge.tree
    bottles = [each for each in snapshot.bottles if listing.holds(each)]
    if arguments.json:
        print_json({listing.key: [listing.as_json(each, tree) for each in bottles]})
        return 0
    rows = [listing.as_row(each, tree) for each in bottles]
    print(table(listing.head, rows, right=listing.right))
    if listing.foot:
        print(f"\n{listing.foot(len(bottles), snapshot)}")
    return 0
