"""How many serves there are and what they are poured from, in words."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import counted
from barkeep.domain.specs.called import named_by
from barkeep.errors import spoken_list
from barkeep.translation import tr, tr_noop

if TYPE_CHECKING:
    from barkeep.domain.ingredients.derivations import Derivation
    from barkeep.domain.pouring.verdicts import Drink, Following


def serves_in_words(drink: Drink, tree: FamilyTree) -> str:
    """*5 serves, then navy-strength gin for 10 more (stand-in)*, or what they end with."""
    if drink.serves is None:
        return tr("as many as you like")
    said, named = serves_of(drink.serves), named_by(drink.spec.lines, tree)
    if drink.then:
        return ", ".join(
            (said, *(tr("then {each}", each=each) for each in following_in_words(drink, named)))
        )
    return (
        tr(
            "{serves}, then out of {ingredient}",
            serves=said,
            ingredient=named.in_sentence(drink.runs_out),
        )
        if drink.runs_out
        else said
    )


def serves_of(serves: int | None) -> str:
    """*1 serve*, *5 serves*, *any number of serves*."""
    return tr("any number of serves") if serves is None else counted(serves, "serve")


def following_in_words(drink: Drink, named: FamilyTree) -> Iterator[str]:
    """What is poured after the bottles shown: *navy-strength gin for 10 more (stand-in)*."""
    for each in drink.then:
        marked = tr(" (stand-in)") if each.is_stand_in else ""
        said = (
            tr_noop("{poured} for as many more as you like")
            if each.serves is None
            else tr_noop("{poured} for {serves} more")
        )
        yield f"{tr(said, poured=_poured(each, named), serves=each.serves)}{marked}"


def _poured(following: Following, named: FamilyTree) -> str:
    if not following.poured:
        return tr("the rests of several bottles together")
    ways = (each.derivation for each in following.poured)
    return spoken_list([_way(way, named) for way in ways if way is not None], "and")


def _way(way: Derivation, named: FamilyTree) -> str:
    """What goes in; what is made here is told from a bottle of it."""
    offered = named.in_sentence(way.offered)
    if not way.made:
        return offered
    inputs = list(dict.fromkeys(named.in_sentence(part.offered) for part in way.made[-1].parts))
    return tr("{offered} made from {inputs}", offered=offered, inputs=spoken_list(inputs, "and"))
