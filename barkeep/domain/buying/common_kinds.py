"""Which kinds a bar commonly has: those that the specs of its book ask for most often.

What is a piece of a fruit or a herb, such as a peel or a leaf, is bought as the whole;
a juice is bought either way, so both are named.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.making.made_here import comes_freely

OFTEN = 2
"""From so many specs on a kind is common."""
FEWEST = 3
"""A group of fewer is no group: its kinds stand together with those of others."""
MOST = 96
"""So many are looked through at a glance, by what they are of."""


@dataclass(frozen=True, slots=True)
class CommonKind:
    """A kind by its key, how many specs of the book ask for it, and the key of its group.

    The group is empty where too few others are of it.
    """

    key: str
    specs: int
    group: str


def common_kinds(snapshot: Snapshot, often: int = OFTEN) -> tuple[CommonKind, ...]:
    """The kinds that at least so many specs ask for, by group, the most wanted first.

    What has alcohol goes first, then the group whose first kind is wanted most. What is
    simply there, such as water, and what only groups kinds is left out. Only the bar's own
    book decides.
    """
    tree, parts = snapshot.knowledge.tree, _wholes(snapshot)
    asked: Counter[str] = Counter()
    for spec in snapshot.all_specs:
        asked.update(
            {key for line in spec.lines for key in _bought_as(line.ingredient, parts, tree)}
        )
    wanted = [key for key in asked if asked[key] >= often and _is_bought(key, snapshot)]
    most = sorted(wanted, key=lambda key: (-asked[key], tree.name(key)))[:MOST]
    sizes = Counter(_broadest(key, tree) for key in most)
    groups = {key: _broadest(key, tree) for key in most}
    found = [
        CommonKind(key, asked[key], groups[key] if sizes[groups[key]] >= FEWEST else "")
        for key in most
    ]
    order = {each.group: place for place, each in reversed(list(enumerate(found)))}
    strong = Counter(each.group for each in found if (tree[each.key].abv_percent or 0.0) >= 1.0)

    def place(kind: CommonKind) -> tuple[bool, bool, int]:
        mostly_strong = 2 * strong[kind.group] > sizes[kind.group]
        return kind.group == "", not mostly_strong, order[kind.group]

    return tuple(sorted(found, key=place))


def _is_bought(key: str, snapshot: Snapshot) -> bool:
    return not comes_freely(key, snapshot) and not snapshot.knowledge.tree[key].family


def _broadest(key: str, tree: FamilyTree) -> str:
    """The key of the broadest kind that a kind is of, its own where it is of none."""
    above = tuple(tree.upwards(key))
    return above[-1] if above else key


def _wholes(snapshot: Snapshot) -> Mapping[str, str]:
    """What is made of one whole thing that is counted, by its key: lemon peel of a lemon."""
    tree = snapshot.knowledge.tree
    return {
        each.made: each.inputs[0].ingredient
        for each in snapshot.knowledge.made_from
        if len(each.inputs) == 1 and tree[each.inputs[0].ingredient].unit == "each"
    }


def _bought_as(key: str, wholes: Mapping[str, str], tree: FamilyTree) -> Iterable[str]:
    whole = wholes.get(key)
    if whole is None:
        return (key,)
    return (whole,) if tree[key].unit == "each" else (whole, key)
