"""A batch to be made, in words."""

from __future__ import annotations

from barkeep.domain.house_figures import Figures
from barkeep.domain.house_making import InputPlan
from barkeep.domain.ingredients import FamilyTree
from barkeep.domain.inventory import Bottle
from barkeep.domain.level_words import quantity


def drawn_in_words(plan: InputPlan) -> str:
    """Where an input comes from: *always there*, or each bottle with what it gives."""
    if plan.always_there:
        return "always there"
    if not plan.draws:
        return "not in the bar"
    draws = plan.draws
    if len(draws) == 1 and not plan.short:
        return draws[0].bottle.product.title
    return ", ".join(
        f"{quantity(each.amount, plan.unit)} of {_dated(each.bottle)}" for each in draws
    )


def _dated(bottle: Bottle) -> str:
    """A bottle by its title; of several batches the day tells which."""
    made = f" made on {bottle.made}" if bottle.made else ""
    return f"{bottle.product.title}{made}"


def short_in_words(plan: InputPlan, tree: FamilyTree) -> str:
    """What there is too little of: how much is needed, and how much is there."""
    need, have = quantity(plan.need, plan.unit), quantity(plan.have, plan.unit)
    return f"Short of {tree.in_sentence(plan.ingredient)}: {need} needed, {have} there."


def figures_in_words(figures: Figures) -> str:
    """Strength, sugar and acid as far as they are known; empty where none is."""
    known = []
    if figures.abv_percent is not None:
        known.append(f"{figures.abv_percent:.1f} % vol")
    if figures.sugar_g_per_l is not None:
        known.append(f"{figures.sugar_g_per_l:.0f} g/l of sugar")
    if figures.acid_g_per_l is not None:
        known.append(f"{figures.acid_g_per_l:.1f} g/l of acid")
    return f"It comes to {', '.join(known)}." if known else ""
