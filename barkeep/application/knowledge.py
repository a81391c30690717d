"""The knowledge of one bar: what barkeep brings along, and what the owner added."""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterable, Iterator
from dataclasses import dataclass, replace
from functools import cache
from typing import Any

from barkeep import resource_files
from barkeep.application.paths import cache_folder
from barkeep.application.quick_form import kept
from barkeep.domain.bar.knowledge import Knowledge, with_owner
from barkeep.domain.ingredients.relations import MadeFrom, NoStandIn, StandIn
from barkeep.domain.ingredients.tree import CheckedTree, FamilyTree, Ingredient
from barkeep.domain.phrases import folded
from barkeep.domain.specs.spec import Spec
from barkeep.errors import KnowledgeError
from barkeep.shipped_data import keep_tables

CLASSICS = "classics"
COMMON_PRACTICE = "common practice"
"""Where the proportions of a classic come from that names no source of its own."""


@cache
def shipped() -> Knowledge:
    """The shipped knowledge, read once. Raises `KnowledgeError` for a broken resource.

    From then on what is read of other tables is kept as well.
    """
    keep_tables(_kept_table)
    form = kept(KnowledgeForm, cache_folder() / "knowledge", lambda: _form_of(read_shipped()))
    return form.knowledge


@dataclass(frozen=True, slots=True)
class KnowledgeForm:
    """The shipped knowledge as it is kept."""

    tree: CheckedTree
    stand_ins: tuple[StandIn, ...]
    none: tuple[NoStandIn, ...]
    made_from: tuple[MadeFrom, ...]
    classics: tuple[Spec, ...]

    @property
    def knowledge(self) -> Knowledge:
        """What it is a form of."""
        return Knowledge(
            self.tree.tree,
            self.stand_ins,
            self.none,
            self.made_from,
            classics=self.classics,
        )


def _form_of(knowledge: Knowledge) -> KnowledgeForm:
    return KnowledgeForm(
        CheckedTree.of(knowledge.tree),
        knowledge.stand_ins,
        knowledge.none,
        knowledge.made_from,
        classics=knowledge.classics,
    )


def _kept_table(kind: Any, name: str, read: Callable[[], Any]) -> Any:
    return kept(kind, cache_folder() / "tables" / name, read)


def read_shipped() -> Knowledge:
    """The shipped knowledge out of its readable files. Raises `KnowledgeError` for a broken one."""
    from barkeep.documents.knowledge import read_made_from, read_stand_ins, read_tree

    read = resource_files.read_text
    kinds, pairs = read("ingredients.toml"), read("confusables.toml")
    tree = read_tree(kinds, pairs, ordinary=read("ordinary_pours.toml"))
    stand_ins, nothing = read_stand_ins(read("stand_ins.toml"), tree)
    made_from = read_made_from(read("made_from.toml"), tree)
    texts = {name: read(CLASSICS, name) for name in resource_files.names(CLASSICS, suffix=".txt")}
    return Knowledge(
        tree=tree,
        stand_ins=stand_ins,
        none=nothing,
        made_from=made_from,
        classics=read_classics(texts, tree),
    )


def read_classics(texts: dict[str, str], tree: FamilyTree) -> tuple[Spec, ...]:
    """The classic specs out of plain texts by file name. Raises `KnowledgeError`."""
    found: dict[str, Spec] = {}
    for file, text in texts.items():
        for spec in sound_specs(text, tree, file):
            name = folded(spec.name)
            if name in found:
                raise KnowledgeError(file, spec.name, "there are two classics of this name")
            source = spec.source or COMMON_PRACTICE
            found[name] = replace(spec, id=None, classic=True, source=source)
    return tuple(found.values())


def sound_specs(text: str, tree: FamilyTree, file: str) -> Iterator[Spec]:
    """The specs of a text that is shipped. Raises `KnowledgeError` for the first fault."""
    from barkeep.domain.spec_text.text import (
        read_specs,  # its matcher is heavy where nothing is read
    )

    for each in read_specs(text, tree):
        if each.problems or each.spec is None:
            reason = str(each.problems[0]) if each.problems else "it is not a spec"
            raise KnowledgeError(file, each.name, reason)
        yield each.spec


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
