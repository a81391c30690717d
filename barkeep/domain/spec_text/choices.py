"""Several ingredients in one line: *rye or bourbon*, and *2 oz each of gin and vermouth*."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import pairwise

from barkeep.domain.ingredients.names import ADJUSTED, Match, match_name, named, without_notes
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.spec_text.found import names_in

_OR = re.compile(r"[ ]or[ ]|[ ]?/[ ]?")
_BETWEEN_CHOICES = re.compile(r"[ ]?,[ ]?(?:or[ ])?|[ ]or[ ]|[ ]?/[ ]?")
BETWEEN_THINGS = re.compile(r"[ ]?,[ ]?(?:and[ ]|&[ ])?|[ ]and[ ]|[ ]?[&+;][ ]?")
_OR_ELSE = re.compile(r"or[ ](?P<name>.+?)(?:,?[ ]if[ ].*)?", re.IGNORECASE)


@dataclass(frozen=True, slots=True)
class Choice:
    """What a line names: its first choice and what would do as well, in the same unit.

    `makers` are the words before them that name nothing, `notes` what is said
    beside them, in order.
    """

    match: Match
    alternatives: tuple[str, ...]
    notes: tuple[str, ...]
    makers: tuple[str, ...] = ()


def choice_in(text: str, tree: FamilyTree) -> Choice | None:
    """The choice a text gives, None where it gives none or one of its names is not known.

    *Lemon or lime juice* is lemon juice or lime juice; what is poured and what
    is counted out are no alternatives, and the second becomes a note.
    """
    if not _OR.search(text.casefold()):
        return None
    for name, notes in without_notes(" ".join(text.split())):
        if not _OR.search(name.casefold()) or named(name, tree):
            continue
        parts = _BETWEEN_CHOICES.split(name)
        found = _all_named(parts, tree)
        if found and "/" in name and not all(_akin(found[0], each, tree) for each in found):
            return None  # reposado / grapefruit / lime: a whole drink in short
        if found:
            return _chosen(parts, found, notes, tree)
    return None


def with_notes(match: Match, notes: Sequence[str], tree: FamilyTree) -> Choice:
    """A name with its notes, where *or vodka* among them is another choice."""
    kept: list[str] = []
    others: list[str] = []
    for note in notes:
        otherwise = _OR_ELSE.fullmatch(note)
        found = match_name(otherwise["name"], tree) if otherwise else None
        if found and found.confidence >= ADJUSTED and _alike(match, found, tree):
            others.append(str(found.key))
        else:
            kept.append(note)
    makers = (match.maker,) if match.maker else ()
    return Choice(match, _distinct(str(match.key), others), tuple(kept), makers)


def things_in(text: str, tree: FamilyTree) -> tuple[tuple[str, int], ...]:
    """The things that a text lists, each with the place where it begins.

    *Orange and aromatic bitters* are orange bitters and aromatic bitters.
    """
    found: list[tuple[str, int]] = []
    at = 0
    whole = [(each.start, each.end) for each in names_in(text, tree)]
    gaps = (
        gap
        for gap in BETWEEN_THINGS.finditer(text)
        if not any(start < gap.end() and gap.start() < end for start, end in whole)
    )
    for gap in (*gaps, None):
        part = text[at : gap.start() if gap else len(text)]
        if part.strip():
            found.append((part.strip(), at + len(part) - len(part.lstrip())))
        at = gap.end() if gap else at
    last = found[-1][0] if found else ""
    whole_parts = ((_completed(part, last, tree), place) for part, place in found)
    return tuple(each for part, at in whole_parts for each in _one_by_one(part, at, tree))


def _one_by_one(part: str, at: int, tree: FamilyTree) -> Iterator[tuple[str, int]]:
    """Things that were said without a stop between: *mezcal sweet vermouth* is two."""
    names = list(names_in(part, tree)) if match_name(part, tree) is None else []
    between = [part[one.end : other.start] for one, other in pairwise(names)]
    whole = names and names[0].start == 0 and names[-1].end == len(part.rstrip(" ."))
    if len(names) < 2 or not whole or any(gap.strip() for gap in between):
        yield part, at
        return
    yield from ((part[each.start : each.end], at + each.start) for each in names)


def _completed(part: str, last: str, tree: FamilyTree) -> str:
    """A part that is no name by itself with the last words of what the text ends in."""
    if part == last or match_name(part, tree) is not None:
        return part
    words = last.split()
    longer = (f"{part} {' '.join(words[start:])}" for start in range(1, len(words)))
    return next((each for each in longer if named(each, tree)), part)


def _all_named(parts: Sequence[str], tree: FamilyTree) -> list[Match] | None:
    if not all(part.strip() for part in parts):
        return None
    last = match_name(parts[-1], tree) or _named_as_the_first(parts, tree)
    if last is None:
        return None
    found = [_named_beside(part, parts[-1], last, tree) for part in parts[:-1]]
    known = [each for each in found if each is not None]
    return [*known, last] if len(known) == len(found) else None


def _named_as_the_first(parts: Sequence[str], tree: FamilyTree) -> Match | None:
    """*Ruby port or tawny*: the last with the last words of the first."""
    first = match_name(parts[0], tree)
    words = parts[0].split()
    longer = (named(f"{parts[-1]} {' '.join(words[at:])}", tree) for at in range(1, len(words)))
    found = next((each for each in longer if each), None)
    return found if found and first and found.key != first.key else None


def _named_beside(part: str, last: str, other: Match, tree: FamilyTree) -> Match | None:
    """What a part names, with the last words of the other choice where it is none without."""
    alone = match_name(part, tree)
    if alone and _alike(alone, other, tree):
        return alone
    words = last.split()
    for start in range(1, len(words)):
        longer = named(f"{part} {' '.join(words[start:])}", tree)
        twice = longer is not None and longer.key == other.key and alone is not None
        if longer and not twice and _alike(longer, other, tree):
            return longer
    return alone


def _chosen(
    parts: Sequence[str], found: Sequence[Match], notes: tuple[str, ...], tree: FamilyTree
) -> Choice:
    first = found[0]
    others = [each for each in found[1:] if _alike(first, each, tree)]
    makers = tuple(each.maker for each in found if each.maker)
    besides = [
        f"or {part.strip()}"
        for part, each in zip(parts[1:], found[1:], strict=True)
        if each not in others
    ]
    sure = min(each.confidence for each in (first, *others))
    match = Match(first.key, first.matched, sure)
    plain = with_notes(match, notes, tree)
    keys = [*(str(each.key) for each in others), *plain.alternatives]
    notes = (*besides, *plain.notes)
    return Choice(match, _distinct(str(first.key), keys), notes, makers)


def _alike(one: Match, other: Match, tree: FamilyTree) -> bool:
    """Whether both are measured in the same unit."""
    if one.key is None or other.key is None:
        return False
    return tree[one.key].unit == tree[other.key].unit


def _akin(one: Match, other: Match, tree: FamilyTree) -> bool:
    """Whether both are of one family, or nobody knows of any."""
    if one.key is None or other.key is None or not _alike(one, other, tree):
        return False
    mine = {one.key, *tree.ancestors(one.key)}
    return bool(mine & {other.key, *tree.ancestors(other.key)})


def _distinct(first: str, others: Sequence[str]) -> tuple[str, ...]:
    return tuple(key for key in dict.fromkeys(others) if key != first)
