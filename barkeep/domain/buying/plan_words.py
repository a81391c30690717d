"""A buying plan in words, for both faces."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from barkeep.domain.buying.packages import Purchase
from barkeep.domain.buying.plan import Plan, Step
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import counted, price_in_words
from barkeep.domain.pouring.words import plain_amount, unproved_because
from barkeep.errors import spoken_list

MOST_LEFT_OUT = 8
"""Kinds without a price that are named; of more it is said how many."""


def plan_in_words(plan: Plan, tree: FamilyTree) -> Iterator[str]:
    """What it comes to, how good that is, and what was not looked at; a sentence each."""
    yield _summed_up(plan)
    yield _how_good(plan)
    if plan.unpriced:
        yield f"Nobody knows what {_names(plan.unpriced, tree)} costs."
    if plan.left_out:
        yield (
            f"Not looked at, since no price is known: {_names(plan.left_out, tree)}. "
            "Say what one costs, and it counts."
        )
    yield from plan.not_counted


def _summed_up(plan: Plan) -> str:
    if not plan.steps:
        counts = " that counts" if plan.weighed else ""
        return f"Nothing that can be bought {_within(plan)} turns another drink{counts} ready."
    drinks = counted(len(plan.unlocks), "more drink")
    cost = price_in_words(plan.cost, plan.currency) if plan.cost else ""
    price = f" for {cost}" if cost else ""
    if price and plan.unpriced:
        price += f" and the price of {counted(len(plan.unpriced), 'other')}"
    in_all = plan.steps[-1].makeable
    return f"{counted(len(plan.steps), 'purchase')}{price}: {drinks} can be made, {in_all} in all."


def _within(plan: Plan) -> str:
    limits, said = plan.limits, []
    if limits.bottles is not None:
        said.append(f"within {counted(limits.bottles, 'bottle')}")
    if limits.budget is not None:
        said.append(f"for {price_in_words(limits.budget, plan.currency)}")
    return " and ".join(said)


def _how_good(plan: Plan) -> str:
    if plan.proved_best:
        worth = f" It is worth {plan.worth:g} as you weigh drinks." if plan.weighed else ""
        return f"Nothing {_within(plan)} does better; that is proved.{worth}"
    why = unproved_because(plan.ended)
    if plan.weighed:
        reached = f"it is worth {plan.worth:g}, and nothing more than {plan.upper_bound:g}"
    else:
        reached = f"it opens {plan.worth:g}, and nothing more than {plan.upper_bound:g}"
    return f"{why} before it was known whether anything does better: {reached}."


def _names(keys: Sequence[str], tree: FamilyTree) -> str:
    names = [tree.in_sentence(each) for each in keys[:MOST_LEFT_OUT]]
    if more := len(keys) - len(names):
        names.append(f"{more} more")
    return spoken_list(names, "and")


def step_in_words(step: Step) -> str:
    """What one purchase opens: *opens A, B and C; 47 drinks then*."""
    drinks = f"{counted(step.makeable, 'drink')} then"
    if not step.unlocks:
        return f"opens nothing before what follows; {drinks}"
    beside = [name for name in step.unlocks if name not in step.exactly]
    opens = f"opens {spoken_list(step.unlocks, 'and')}"
    if beside and step.exactly:
        opens += f", of which {spoken_list(beside, 'and')} with a stand-in"
    elif beside:
        opens += " with a stand-in"
    little = "; what is left of it is too little" if step.owned else ""
    return f"{opens}{little}; {drinks}"


def purchase_in_words(bought: Purchase, currency: str, tree: FamilyTree) -> str:
    """What to take off the shelf: *700 ml Grey Ferry Clear Signal vodka, 18.90 EUR*."""
    unit = tree[bought.ingredient].unit
    size = bought.stock.amount / bought.packages
    many = f"{bought.packages} × " if bought.packages > 1 else ""
    title = "" if bought.product is None else f" {bought.product.title}"
    price = price_in_words(bought.price, currency, unknown="price unknown")
    return f"{many}{plain_amount(size, unit)}{title}, {price}"
