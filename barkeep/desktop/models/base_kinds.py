"""The kinds that drinks are built on, as a filter offers them: *gin* for London dry gin."""

from __future__ import annotations

from collections.abc import Iterable

from barkeep.domain.ingredients import FamilyTree


def base_kind(key: str, tree: FamilyTree) -> str:
    """The widest kind above an ingredient that a shop sells as such; else the ingredient."""
    above = [each for each in tree.ancestors(key) if not tree[each].family]
    return max(above, key=lambda each: (len(tree.descendants(each)), each), default=key)


def kinds_by_name(keys: Iterable[str], tree: FamilyTree) -> tuple[tuple[str, str], ...]:
    """Name and key of each kind that occurs, by name."""
    return tuple(sorted(((tree.name(key), key) for key in set(keys)), key=_by_name))


def _by_name(named: tuple[str, str]) -> str:
    return named[0].casefold()
