"""Riffs: what a spec changed of its parent, line by line, and the family they form."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Literal

from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import folded
from barkeep.domain.specs.spec import Line, Spec

Change = Literal["same", "amount", "swapped", "added", "left out"]


@dataclass(frozen=True, slots=True)
class LinePair:
    """A line of the parent beside the riff's line that took its place; either may be missing."""

    before: Line | None
    after: Line | None
    change: Change


@dataclass(frozen=True, slots=True)
class Version:
    """A spec in its family; `depth` counts from the oldest known, which is 0."""

    spec: Spec
    depth: int
    parent: str | None


def line_pairs(parent: Spec, riff: Spec, tree: FamilyTree) -> tuple[LinePair, ...]:
    """Both specs' lines side by side: the parent's order, then what the riff added.

    A line is paired with the riff's line of the same ingredient, else with one
    of the nearest kin, else with none.
    """
    left = list(riff.lines)
    partner: dict[int, Line] = {}
    for alike in (_same, _kin):
        for number, line in enumerate(parent.lines):
            if number in partner:
                continue
            found = next((each for each in left if alike(line, each, tree)), None)
            if found is not None:
                partner[number] = found
                left.remove(found)
    pairs = [_pair(line, partner.get(number)) for number, line in enumerate(parent.lines)]
    return (*pairs, *(LinePair(None, line, "added") for line in left))


def riff_on(spec: Spec, name: str) -> Spec:
    """A copy of a spec under a new name, to be changed, that says what it is a riff of.

    Where the parent's proportions come from is for the parent to say.
    """
    return replace(
        spec, name=name, riff_of=spec.name, id=None, classic=False, added=None, source=""
    )


def family(name: str, specs: Sequence[Spec]) -> tuple[Version, ...]:
    """The whole family a spec belongs to, parents before their riffs, each with its depth.

    A parent that is no longer in the book ends the climb; a circle of riffs
    is cut where it closes. None where the name is not in the book.
    """
    key, below = folded(name), _riffs(specs)
    named = next((spec for spec in specs if spec.name == name), None)
    if named is not None and not named.riff_of and key not in below:
        return (Version(named, 0, None),)  # as most are: no need to look at the names of all
    by_name = {folded(spec.name): spec for spec in specs}
    start = by_name.get(key)
    if start is None:
        return ()
    oldest = _oldest(start, by_name)
    return tuple(_descend(oldest, 0, below, set()))


def _riffs(specs: Sequence[Spec]) -> Mapping[str, Sequence[Spec]]:
    """The riffs on each spec by its name, folded."""
    below: dict[str, list[Spec]] = {}
    riffs = [spec for spec in specs if spec.riff_of]
    for spec in sorted(riffs, key=lambda each: each.name.casefold()):
        below.setdefault(folded(spec.riff_of or ""), []).append(spec)
    return below


def _oldest(spec: Spec, by_name: Mapping[str, Spec]) -> Spec:
    seen = {folded(spec.name)}
    while spec.riff_of:
        parent = by_name.get(folded(spec.riff_of))
        if parent is None or folded(parent.name) in seen:
            break
        seen.add(folded(parent.name))
        spec = parent
    return spec


def _descend(
    spec: Spec, depth: int, below: Mapping[str, Sequence[Spec]], seen: set[str]
) -> Iterator[Version]:
    key = folded(spec.name)
    if key in seen:
        return
    seen.add(key)
    yield Version(spec, depth, spec.riff_of if depth else None)
    for riff in below.get(key, ()):
        yield from _descend(riff, depth + 1, below, seen)


def _pair(before: Line, after: Line | None) -> LinePair:
    if after is None:
        return LinePair(before, None, "left out")
    if before.ingredient != after.ingredient or before.stated != after.stated:
        return LinePair(before, after, "swapped")
    alike = _made_of(before) == _made_of(after)
    return LinePair(before, after, "same" if alike else "amount")


def _made_of(line: Line) -> Line:
    """What a line puts into the drink, however it is worded, measured or remarked on."""
    plain = replace(line, text="", note="", called="")
    return plain if line.quantity is None else replace(plain, amount=None, unit=None)


def _same(one: Line, other: Line, _tree: FamilyTree) -> bool:
    return one.ingredient == other.ingredient and one.garnish == other.garnish


def _kin(one: Line, other: Line, tree: FamilyTree) -> bool:
    """Whether both are the same sort of thing: one a kind of the other, or siblings."""
    if one.garnish != other.garnish:
        return False
    first, second = one.ingredient, other.ingredient
    if tree.is_a(first, second) or tree.is_a(second, first):
        return True
    return bool(set(tree[first].parents) & set(tree[second].parents))
