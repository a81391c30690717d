"""Whether a thing is made here, bought or always there, on which every room agrees."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.bottle import Product
from barkeep.domain.drink.ice import is_carbonated
from barkeep.domain.pouring.supply import strength_of


def products_to_buy(key: str, least_abv: float | None, snapshot: Snapshot) -> Iterator[Product]:
    """The products the bar knows of a kind or a kind below it, as strong as is asked for.

    What is poured only when asked for is none, but where a strength asks for it or the owner.
    """
    tree = snapshot.knowledge.tree
    for each in snapshot.products:
        fits = each.unit == tree[key].unit and is_one_to_buy(
            each.ingredient, key, each, least_abv=least_abv, snapshot=snapshot
        )
        for_sale = not each.house_made and each.size > 0.0
        if fits and for_sale and strength_of(each, tree) >= (least_abv or 0.0):
            yield each


def is_one_to_buy(
    key: str,
    wanted: str,
    product: Product | None,
    *,
    least_abv: float | None,
    snapshot: Snapshot,
) -> bool:
    """Whether a bottle of a kind, or of this product of it, is one to buy for what is wanted."""
    tree = snapshot.knowledge.tree
    house = {each.product for each in snapshot.settings.house if each.kind == wanted}
    asked = least_abv is not None or (product is not None and product.id in house)
    return tree.is_a(key, wanted) and (asked or not tree.only_when_asked(key, wanted))


def kept_as(key: str, snapshot: Snapshot) -> tuple[str, ...]:
    """The kinds that keep a par of one: those poured for it without asking, and the house pour."""
    house = {each.product for each in snapshot.settings.house if each.kind == key}
    asked = (each.ingredient for each in snapshot.products if each.id in house)
    return tuple(dict.fromkeys((*snapshot.knowledge.tree.poured_as(key), *asked)))


def is_made_here(key: str, snapshot: Snapshot) -> bool:
    """Whether there is a recipe that gives the thing itself, and no product of it to buy.

    What sparkles is bought: a shoot is no place to carbonate.
    """
    knowledge = snapshot.knowledge
    if key not in knowledge.own_way or is_carbonated(key, knowledge.tree):
        return False
    return next(products_to_buy(key, None, snapshot), None) is None


def inputs_of(key: str, amount: float, snapshot: Snapshot) -> Mapping[str, float]:
    """What it takes to make so much, each in its own unit; what is always there left out."""
    recipe, always = snapshot.knowledge.own_way[key], snapshot.always_there
    return {
        each.ingredient: each.amount * amount / recipe.yields
        for each in recipe.inputs
        if each.ingredient not in always
    }


def freely_there(key: str, snapshot: Snapshot) -> bool:
    """Always there itself or as a kind of it, or nothing but another form of what is: hot water."""
    always, knowledge = snapshot.always_there, snapshot.knowledge
    if not always.isdisjoint(knowledge.tree.at_or_below(key)):
        return True
    return any(
        len(each.inputs) == 1 and each.inputs[0].ingredient in always
        for each in knowledge.made_from
        if each.made == key
    )


def comes_freely(key: str, snapshot: Snapshot) -> bool:
    """Freely there, or made of such things alone, as syrup is of sugar and water."""
    if freely_there(key, snapshot):
        return True
    recipe = snapshot.knowledge.own_way.get(key)
    if recipe is None:
        return False
    return all(freely_there(each.ingredient, snapshot) for each in recipe.inputs)
