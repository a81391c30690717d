"""A bar's questions as plain numbers: what each spec asks for, and which of it is met.

This is what the plainer ways of `peers` start from. Levels are left out: a
bottle with a drop in it counts as there.
"""

from __future__ import annotations

from dataclasses import dataclass

from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.ingredients.derivations import Want
from barkeep.domain.pouring.sourcing import Within, sourcing_for


@dataclass(frozen=True, slots=True)
class PlainBook:
    """The asks of all specs by number, each ask once however many lines share it.

    `of_spec` holds the sorted numbers of each spec's asks; `names` the keys
    any one of which an ask takes; `met` whether what is owned meets it;
    `helped` the keys of which one purchase meets it.
    """

    of_spec: tuple[tuple[int, ...], ...]
    names: tuple[tuple[str, ...], ...]
    met: tuple[bool, ...]
    helped: tuple[frozenset[str], ...]


def plain_book(snapshot: Snapshot, within: Within) -> PlainBook:
    """The asks of a snapshot's required lines, searched as barkeep searches them."""
    sourcing = sourcing_for(snapshot, within)
    numbers: dict[tuple[Want, ...], int] = {}
    of_spec = tuple(
        tuple(
            sorted(
                {
                    numbers.setdefault(sourcing.wants(line, spec), len(numbers))
                    for line in spec.required_lines
                }
            )
        )
        for spec in snapshot.all_specs
    )
    tree, always = sourcing.tree, sourcing.supply.always
    helped = (
        frozenset(
            way.buying
            for want in ask
            for way in sourcing.derivations.buying_one(want)
            if way.buying and not tree[way.buying].family and way.buying not in always
        )
        for ask in numbers
    )
    return PlainBook(
        of_spec,
        names=tuple(tuple(want.ingredient for want in ask) for ask in numbers),
        met=tuple(bool(sourcing.ways_for_any(ask)) for ask in numbers),
        helped=tuple(helped),
    )
