"""What a serve costs, from the prices of what is poured."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from functools import cached_property

from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.bottle import Product
from barkeep.domain.drink.contents import Content
from barkeep.domain.ingredients.relations import MadeFrom
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import price_in_words
from barkeep.domain.pouring.supply import Draw
from barkeep.errors import spoken_list
from barkeep.translation import tr


@dataclass(frozen=True, slots=True)
class Cost:
    """`amount` in the bar's currency, None where something has no known price.

    `priced` is what the rest comes to; `unpriced` the keys without a price.
    """

    amount: float | None
    currency: str
    priced: float
    unpriced: tuple[str, ...] = ()


def cost_of(contents: Iterable[Content], snapshot: Snapshot) -> Cost:
    """What these lines cost together; what is always there costs nothing.

    The price is that of the bottle poured, else the lowest known of its kind,
    else what it takes to make it here.
    """
    prices = Prices(snapshot)
    total, unpriced = 0.0, []
    for content in contents:
        price = _price(content, prices)
        if price is None:
            unpriced.append(content.pour.ingredient)
        else:
            total += price
    missing = tuple(dict.fromkeys(unpriced))
    return Cost(None if missing else total, snapshot.settings.currency, total, missing)


def cost_of_draws(draws: Iterable[Draw], snapshot: Snapshot) -> Cost:
    """What is taken out of bottles costs together; `Cost.unpriced` names what nobody knows."""
    return cost_of_amounts(((each.bottle.product, each.amount) for each in draws), snapshot)


def cost_of_amounts(amounts: Iterable[tuple[Product, float]], snapshot: Snapshot) -> Cost:
    """What so much of each product costs together, an amount in the product's unit."""
    prices = Prices(snapshot)
    total, unpriced = 0.0, []
    for product, amount in amounts:
        each = unit_price(product)
        price = prices.of(product.ingredient) if each is None else each
        if price is None:
            unpriced.append(product.ingredient)
        else:
            total += price * amount
    missing = tuple(dict.fromkeys(unpriced))
    return Cost(None if missing else total, snapshot.settings.currency, total, missing)


def cost_in_words(cost: Cost, tree: FamilyTree) -> str:
    """*It costs 12.30 EUR*, with what it does not hold; a missing price is never nothing."""
    if not cost.unpriced:
        return tr(
            "What is poured costs {price}.",
            price=price_in_words(cost.amount, cost.currency),
        )
    names = spoken_list([tree.in_sentence(each) for each in cost.unpriced], "and")
    priced = price_in_words(cost.priced, cost.currency)
    return tr(
        "What is poured costs {priced}, and nobody knows what {names} costs.",
        priced=priced,
        names=names,
    )


@dataclass(frozen=True)
class Prices:
    """The lowest known prices of one bar, per unit of each ingredient."""

    snapshot: Snapshot

    @cached_property
    def lowest(self) -> Mapping[str, float]:
        """Ingredient key -> the lowest price of one unit of a product of just that kind."""
        found: dict[str, float] = {}
        for product in self.snapshot.products:
            price = unit_price(product)
            if price is not None:
                found[product.ingredient] = min(found.get(product.ingredient, price), price)
        return found

    def of(self, key: str, within: frozenset[str] = frozenset()) -> float | None:
        """The price of one unit of an ingredient, None where none is known.

        `within` holds what is being made already, so that no recipe goes in circles.
        """
        if key in self.snapshot.always_there:
            return 0.0
        tree = self.snapshot.knowledge.tree
        known = [self.lowest[each] for each in tree.at_or_below(key) if each in self.lowest]
        if known:
            return min(known)
        made = [
            cost / recipe.yields
            for recipe in self.snapshot.knowledge.made_from
            if recipe.made == key
            and key not in within
            and (cost := self._together(recipe, within | {key})) is not None
        ]
        return min(made, default=None)

    def _together(self, recipe: MadeFrom, within: frozenset[str]) -> float | None:
        total = 0.0
        for taken in recipe.inputs:
            price = self.of(taken.ingredient, within)
            if price is None:
                return None
            total += price * taken.amount
        return total


def unit_price(product: Product) -> float | None:
    """What a millilitre, gram or piece of a product costs."""
    if product.price is None or not product.size:
        return None
    return product.price / product.size


def _price(content: Content, prices: Prices) -> float | None:
    pour, quantity = content.pour, content.quantity
    if pour.bottle is not None and (each := unit_price(pour.bottle.product)) is not None:
        return each * quantity
    if not pour.draws or pour.ingredient in pour.draws:
        each = prices.of(pour.ingredient)
        return None if each is None else each * quantity
    total = 0.0
    for key, amount in pour.draws.items():  # made here from these
        each = prices.of(key)
        if each is None:
            return None
        total += each * amount * quantity / pour.ratio
    return total
