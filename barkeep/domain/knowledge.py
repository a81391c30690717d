"""What barkeep knows before any bar is opened, and what an owner adds to it.

The family tree, the stand-ins (and where nothing stands in), what is made
from what, and the classic specs. All of it is data; the owner's entries win.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from functools import cached_property
from typing import TYPE_CHECKING, Literal, get_args

from barkeep.domain.ingredients import FamilyTree, Ingredient, with_own
from barkeep.domain.specs import Spec

if TYPE_CHECKING:
    from barkeep.domain.substitution import SubstitutionGraph

STAND_IN_STEPS = 2
"""How many stand-in steps one derivation may take."""

Scope = Literal["shaken", "stirred", "accent", "never_base"]
SCOPES: tuple[Scope, ...] = get_args(Scope)


@dataclass(frozen=True, slots=True)
class StandIn:
    """`offered` may replace `wanted`, `ratio` ml of it for each ml wanted.

    Closeness runs from 0 to 1; 1 tastes the same. Every condition in `scope`
    must hold for the line: only in a *shaken* or *stirred* drink, only as an
    *accent*, *never_base*.
    """

    wanted: str
    offered: str
    closeness: float
    ratio: float
    why: str
    scope: tuple[Scope, ...] = ()
    own: bool = False


@dataclass(frozen=True, slots=True)
class NoStandIn:
    """Nothing replaces `wanted`, and why."""

    wanted: str
    why: str


@dataclass(frozen=True, slots=True)
class Input:
    """One thing a recipe takes, in that ingredient's own unit."""

    ingredient: str
    amount: float


@dataclass(frozen=True, slots=True)
class MadeFrom:
    """`made` comes from all of `inputs` together and yields `yields` in its own unit.

    `own` is the owner's own way of making it. It rests `rest_hours` before it
    can be used.
    """

    made: str
    inputs: tuple[Input, ...]
    yields: float
    how: str
    closeness: float = 1.0
    basis: str = ""
    own: bool = False
    rest_hours: float = 0.0


@dataclass(frozen=True)
class Knowledge:
    """Everything the answers know apart from what is in the bar."""

    tree: FamilyTree
    stand_ins: tuple[StandIn, ...] = ()
    none: tuple[NoStandIn, ...] = ()
    made_from: tuple[MadeFrom, ...] = ()
    classics: tuple[Spec, ...] = ()

    @cached_property
    def graph(self) -> SubstitutionGraph:
        """The substitution graph, built when it is first asked for."""
        from barkeep.domain.substitution import substitution_graph  # networkx is slow to import

        return substitution_graph(self)

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
    decided = {(entry.wanted, entry.offered) for entry in stand_ins}
    kept = tuple(e for e in knowledge.stand_ins if (e.wanted, e.offered) not in decided)
    lifted = {entry.wanted for entry in stand_ins}
    remade = {recipe.made for recipe in recipes}
    shipped = tuple(each for each in knowledge.made_from if each.made not in remade)
    return replace(
        knowledge,
        tree=with_own(knowledge.tree, ingredients),
        stand_ins=kept + tuple(replace(entry, own=True) for entry in stand_ins),
        none=tuple(entry for entry in knowledge.none if entry.wanted not in lifted),
        made_from=tuple(replace(each, own=True) for each in recipes) + shipped,
    )
