"""The knowledge of one bar: what barkeep brings along and what the owner added.

A bar outlives the knowledge it was written with. An ingredient that barkeep
has since renamed, or a name it has since taken for itself, must not keep the
bar from opening, so what no longer fits is mended here, and only in memory.
"""

from __future__ import annotations

from collections.abc import Collection, Iterable
from dataclasses import replace

from barkeep.domain.ingredients import FamilyTree, Ingredient, folded
from barkeep.domain.knowledge import Knowledge, MadeFrom, StandIn, with_owner
from barkeep.errors import KnowledgeError

NOT_KNOWN = "used in this bar, but not known to this barkeep"


def complete_knowledge(
    shipped: Knowledge,
    ingredients: tuple[Ingredient, ...],
    stand_ins: tuple[StandIn, ...],
    used: Collection[str],
    recipes: tuple[MadeFrom, ...] = (),
) -> Knowledge:
    """The knowledge with the owner's entries, in which every key of `used` is an ingredient."""
    own = _with_strangers(shipped.tree, ingredients, used)
    kept = _known_only(shipped.tree, own, stand_ins), _makeable(shipped.tree, own, recipes)
    try:
        return with_owner(shipped, own, *kept)
    except KnowledgeError:
        return with_owner(shipped, _mended(shipped.tree, own), *kept)


def _with_strangers(
    tree: FamilyTree, own: tuple[Ingredient, ...], used: Iterable[str]
) -> tuple[Ingredient, ...]:
    known = {each.key for each in own}
    strangers = sorted(key for key in used if key not in tree and key not in known)
    return own + tuple(_stranger(key) for key in strangers)


def _stranger(key: str) -> Ingredient:
    return Ingredient(key, f"{key.replace('-', ' ')} (not known)", basis=NOT_KNOWN)


def _known_only(
    tree: FamilyTree, own: tuple[Ingredient, ...], stand_ins: tuple[StandIn, ...]
) -> tuple[StandIn, ...]:
    keys = tree.ingredients.keys() | {each.key for each in own}
    return tuple(each for each in stand_ins if each.wanted in keys and each.offered in keys)


def _makeable(
    tree: FamilyTree, own: tuple[Ingredient, ...], recipes: tuple[MadeFrom, ...]
) -> tuple[MadeFrom, ...]:
    keys = tree.ingredients.keys() | {each.key for each in own}
    return tuple(
        each for each in recipes if {each.made, *(part.ingredient for part in each.inputs)} <= keys
    )


def _mended(tree: FamilyTree, own: tuple[Ingredient, ...]) -> tuple[Ingredient, ...]:
    """The owner's ingredients without the names and parents that no longer fit."""
    replaced = {each.key for each in own}
    taken = {name for name, key in tree.by_name.items() if key not in replaced}
    allowed = set(tree.ingredients) | replaced
    mended = []
    for each in own:
        name = f"{each.name} (own)" if folded(each.name) in taken else each.name
        aliases = tuple(alias for alias in each.aliases if folded(alias) not in taken)
        parents = tuple(parent for parent in each.parents if parent in allowed)
        mended.append(replace(each, name=name, aliases=aliases, parents=parents))
        taken |= {folded(each_name) for each_name in (name, *aliases)}
    return tuple(mended)
