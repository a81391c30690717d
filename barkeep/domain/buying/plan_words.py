"""A buying plan in words, for both faces."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from barkeep.domain.buying.packages import Purchase
from barkeep.domain.buying.plan import Plan, Step
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import counted, price_in_words
from barkeep.domain.pouring.words import plain_amount, unproved_because
from barkeep.errors import spoken_list
from barkeep.translation import tr

MOST_LEFT_OUT = 8
"""Kinds without a price that are named; of more it is said how many."""


def plan_in_words(plan: Plan, tree: FamilyTree) -> Iterator[str]:
    """What it comes to, how good that is, and what was not looked at; a sentence each."""
    yield _summed_up(plan)
    yield _how_good(plan)
    if plan.unpriced:
        yield tr("Nobody knows what {names} costs.", names=_names(plan.unpriced, tree))
    if plan.left_out:
        yield tr(
            "Not looked at, since no price is known: {names}. Say what one costs, and it counts.",
            names=_names(plan.left_out, tree),
        )
    yield from plan.not_counted


def _summed_up(plan: Plan) -> str:
    if not plan.steps:
        within = _within(plan)
        if plan.weighed:
            return tr(
                "Nothing that can be bought {within} turns another drink that counts ready.",
                within=within,
            )
        return tr("Nothing that can be bought {within} turns another drink ready.", within=within)
    return tr(
        "{purchases}: {drinks} can be made, {in_all} in all.",
        purchases=_purchases_and_cost(plan),
        drinks=counted(len(plan.unlocks), "more drink"),
        in_all=plan.steps[-1].makeable,
    )


def _purchases_and_cost(plan: Plan) -> str:
    purchases = counted(len(plan.steps), "purchase")
    if not plan.cost:
        return purchases
    cost = price_in_words(plan.cost, plan.currency)
    if not plan.unpriced:
        return tr("{purchases} for {cost}", purchases=purchases, cost=cost)
    return tr(
        "{purchases} for {cost} and the price of {others}",
        purchases=purchases,
        cost=cost,
        others=counted(len(plan.unpriced), "other"),
    )


def _within(plan: Plan) -> str:
    limits = plan.limits
    bottles = counted(limits.bottles or 0, "bottle")
    budget = price_in_words(limits.budget, plan.currency)
    if limits.budget is None:
        return tr("within {bottles}", bottles=bottles)
    if limits.bottles is None:
        return tr("for {budget}", budget=budget)
    return tr("within {bottles} and for {budget}", bottles=bottles, budget=budget)


def _how_good(plan: Plan) -> str:
    if plan.proved_best:
        proved = tr("Nothing {within} does better; that is proved.", within=_within(plan))
        if not plan.weighed:
            return proved
        return proved + tr(" It is worth {worth:g} as you weigh drinks.", worth=plan.worth)
    why, worth, most = unproved_because(plan.ended), plan.worth, plan.upper_bound
    if plan.weighed:
        reached = tr(
            "it is worth {worth:g}, and nothing more than {most:g}", worth=worth, most=most
        )
    else:
        reached = tr("it opens {worth:g}, and nothing more than {most:g}", worth=worth, most=most)
    return tr(
        "{why} before it was known whether anything does better: {reached}.",
        why=why,
        reached=reached,
    )


def _names(keys: Sequence[str], tree: FamilyTree) -> str:
    names = [tree.in_sentence(each) for each in keys[:MOST_LEFT_OUT]]
    if more := len(keys) - len(names):
        names.append(tr("{more} more", more=more))
    return spoken_list(names, "and")


def step_in_words(step: Step) -> str:
    """What one purchase opens: *opens A, B and C; 47 drinks then*."""
    drinks = tr("{drinks} then", drinks=counted(step.makeable, "drink"))
    if not step.unlocks:
        return tr("opens nothing before what follows; {drinks}", drinks=drinks)
    beside = [name for name in step.unlocks if name not in step.exactly]
    unlocks = spoken_list(step.unlocks, "and")
    if beside and step.exactly:
        opens = tr(
            "opens {drinks}, of which {beside} with a stand-in",
            drinks=unlocks,
            beside=spoken_list(beside, "and"),
        )
    elif beside:
        opens = tr("opens {drinks} with a stand-in", drinks=unlocks)
    else:
        opens = tr("opens {drinks}", drinks=unlocks)
    little = tr("; what is left of it is too little") if step.owned else ""
    return f"{opens}{little}; {drinks}"


def purchase_in_words(bought: Purchase, currency: str, tree: FamilyTree) -> str:
    """What to take off the shelf: *700 ml Grey Ferry Clear Signal vodka, 18.90 EUR*."""
    price = price_in_words(bought.price, currency, unknown=tr("price unknown"))
    return f"{package_in_words(bought, tree)}, {price}"


def package_in_words(bought: Purchase, tree: FamilyTree) -> str:
    """The same without its price."""
    unit = tree[bought.ingredient].unit
    size = bought.stock.amount / bought.packages
    many = f"{bought.packages} × " if bought.packages > 1 else ""
    title = "" if bought.product is None else f" {bought.product.title}"
    return f"{many}{plain_amount(size, unit)}{title}"
