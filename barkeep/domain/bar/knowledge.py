"""What barkeep knows before any bar is opened, and what an owner adds to it.

The family tree, the stand-ins (and where nothing stands in), what is made
from what, and the classic specs. All of it is data; the owner's entries win.
"""

from __future__ import annotations

from collections.abc import Mapping
from copy import copy
from dataclasses import dataclass, replace
from functools import cached_property
from typing import TYPE_CHECKING

from barkeep.domain.bar.book import listed
from barkeep.domain.ingredients.relations import MadeFrom, NoStandIn, StandIn
from barkeep.domain.ingredients.tree import FamilyTree, Ingredient, with_own
from barkeep.domain.specs.spec import Spec

if TYPE_CHECKING:
    from barkeep.domain.ingredients.graph import SubstitutionGraph


@dataclass(frozen=True)
class Knowledge:
    """Everything the answers know apart from what is in the bar."""

    tree: FamilyTree
    stand_ins: tuple[StandIn, ...] = ()
    none: tuple[NoStandIn, ...] = ()
    made_from: tuple[MadeFrom, ...] = ()
    classics: tuple[Spec, ...] = ()

    def showing(self, names: Mapping[str, str]) -> Knowledge:
        """The same knowledge whose tree shows these names; what is worked out of it is shared."""
        if not names:
            return self
        other = copy(self)
        object.__setattr__(other, "tree", self.tree.showing(names))
        return other

    @cached_property
    def classics_by_name(self) -> Mapping[str, Spec]:
        """The classics by their names as a book is ordered by."""
        return {listed(each): each for each in self.classics}

    @cached_property
    def graph(self) -> SubstitutionGraph:
        """The substitution graph, built when it is first asked for."""
        from barkeep.domain.ingredients.graph import substitution_graph  # networkx loads slowly

        return substitution_graph(
            self.tree, stand_ins=self.stand_ins, none=self.none, made_from=self.made_from
        )

    @cached_property
    def own_way(self) -> Mapping[str, MadeFrom]:
        """Key -> how the thing itself is made here: the owner's way, else the first known."""
        found: dict[str, MadeFrom] = {}
        for recipe in sorted(self.made_from, key=lambda each: not each.own):
            if recipe.closeness == 1.0:
                found.setdefault(recipe.made, recipe)
        return found

    @cached_property
    def pressing(self) -> Mapping[str, MadeFrom]:
        """Key of a fruit -> how it is pressed: the first recipe for a juice of nothing else."""
        found: dict[str, MadeFrom] = {}
        for recipe in self.made_from:
            if len(recipe.inputs) == 1 and self.tree.is_a(recipe.made, "juice"):
                found.setdefault(recipe.inputs[0].ingredient, recipe)
        return found

    @cached_property
    def none_because(self) -> Mapping[str, str]:
        """Key of what nothing replaces -> why."""
        return {entry.wanted: entry.why for entry in self.none}


def with_owner(
    knowledge: Knowledge,
    ingredients: tuple[Ingredient, ...] = (),
    stand_ins: tuple[StandIn, ...] = (),
    recipes: tuple[MadeFrom, ...] = (),
) -> Knowledge:
    """The knowledge with the owner's entries added. An own stand-in or recipe replaces a known one.

    It also lifts a *nothing stands in* for the same wanted ingredient: the
    owner has decided otherwise.
    """
    if not (ingredients or stand_ins or recipes):
        return knowledge
    # Reads names, and a bar without kinds of its own reads none.
    from barkeep.domain.ingredients.own import as_their_kinds

    decided = {(entry.wanted, entry.offered) for entry in stand_ins}
    kept = tuple(e for e in knowledge.stand_ins if (e.wanted, e.offered) not in decided)
    lifted = {entry.wanted for entry in stand_ins}
    remade = {recipe.made for recipe in recipes}
    shipped = tuple(each for each in knowledge.made_from if each.made not in remade)
    tree = with_own(knowledge.tree, ingredients)
    new = [each.key for each in ingredients if each.key not in knowledge.tree]
    return replace(
        knowledge,
        tree=as_their_kinds(tree, new) if new else tree,
        stand_ins=kept + tuple(replace(entry, own=True) for entry in stand_ins),
        none=tuple(entry for entry in knowledge.none if entry.wanted not in lifted),
        made_from=tuple(replace(each, own=True) for each in recipes) + shipped,
    )
