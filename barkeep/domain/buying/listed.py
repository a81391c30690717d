"""The whole shopping list: what the owner put on it, and what shoots and pars need besides.

What is on the list is taken as bought when it is worked out what else is needed, so that one
bottle serves both.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import replace

from barkeep.domain.bar.shoots import Shoot
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bar.to_buy import ToBuy
from barkeep.domain.buying.on_paper import with_bought
from barkeep.domain.buying.packages import Package, Purchase, package_for, packages_for
from barkeep.domain.buying.plan import Step
from barkeep.domain.buying.shopping import ShoppingItem, ShoppingList, shopping_for
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.pouring.supply import Stock, strength_of
from barkeep.errors import spoken_list

ON_THE_LIST = "put on the list"
"""Why something is bought that no shoot and no par needs."""


def whole_list(shoots: Sequence[Shoot], snapshot: Snapshot, *, pars: bool = True) -> ShoppingList:
    """What to buy for these shoots and the pars, and what the owner put on the list."""
    listed = [each for each in snapshot.settings.to_buy if each.ingredient in _tree(snapshot)]
    if not listed:
        return shopping_for(shoots, snapshot, pars=pars)
    bought = [_purchase(each, snapshot) for each in listed]
    found = shopping_for(shoots, with_bought(snapshot, bought), pars=pars)
    tree = _tree(snapshot)
    own = [_item(each, purchase, tree) for each, purchase in zip(listed, bought, strict=True)]
    items = _together(own, map(_as_the_bar_knows_it, found.items))
    named = sorted(items, key=lambda each: tree.name(each.ingredient).casefold())
    return replace(found, items=tuple(named))


def listed_as(item: ShoppingItem, snapshot: Snapshot) -> ToBuy | None:
    """What the owner put on the list, where a thing to buy is that."""
    number = None if item.product is None else item.product.id
    same = [each for each in snapshot.settings.to_buy if each.ingredient == item.ingredient]
    exactly = [each for each in same if each.product == number]
    return next(iter((*exactly, *(each for each in same if each.product is None))), None)


def to_buy_of(bought: Purchase, why: str, tree: FamilyTree) -> ToBuy:
    """A purchase as it is put on the list."""
    if bought.product is not None:
        return ToBuy(bought.ingredient, bought.packages, bought.product.id, why)
    size = tree[bought.ingredient].typical_size
    return ToBuy(bought.ingredient, packages_for(bought.stock.amount, size), None, why)


def step_to_buy(step: Step, tree: FamilyTree) -> ToBuy:
    """One step of a plan as it is put on the list."""
    return to_buy_of(step.bought, opens_in_words(step.unlocks), tree)


def opens_in_words(unlocks: Sequence[str]) -> str:
    """What a purchase is for: *for A, B and 3 more*; empty where it opens nothing by itself."""
    named = list(unlocks[:MOST_NAMED])
    if more := len(unlocks) - len(named):
        named.append(f"{more} more")
    return f"for {spoken_list(named, 'and')}" if named else ""


MOST_NAMED = 3
"""Drinks that stand with a thing on the list; of more it is said how many."""


def _tree(snapshot: Snapshot) -> FamilyTree:
    return snapshot.knowledge.tree


def _purchase(each: ToBuy, snapshot: Snapshot) -> Purchase:
    """All packages of it, of a product that the bar knows or as one that it does not."""
    product = None if each.product is None else snapshot.product_by_id.get(each.product)
    if product is None:
        package = package_for(each.ingredient, None, snapshot)
    else:
        strength = strength_of(product, _tree(snapshot))
        package = Package(product.ingredient, product.size, strength, product)
    stock = Stock(package.ingredient, package.size * each.packages, package.abv_percent)
    if package.product is None:
        return Purchase(package.ingredient, stock, 1)
    price = None if package.price is None else package.price * each.packages
    return Purchase(package.ingredient, stock, each.packages, package.product, price)


def _item(each: ToBuy, bought: Purchase, tree: FamilyTree) -> ShoppingItem:
    product = bought.product
    return ShoppingItem(
        ingredient=each.ingredient,
        need=bought.stock.amount,
        unit=tree[each.ingredient].unit,
        product=product,
        size=bought.stock.amount / each.packages,
        packages=each.packages,
        price=None if product is None else product.price,
        why=(f"{ON_THE_LIST} {each.why}".strip(),),
    )


def _as_the_bar_knows_it(item: ShoppingItem) -> ShoppingItem:
    """Without the product that stood for one on paper."""
    if item.product is not None and item.product.id < 0:
        return replace(item, product=None, price=None)
    return item


def _together(
    own: Iterable[ShoppingItem], needed: Iterable[ShoppingItem]
) -> Iterator[ShoppingItem]:
    """One row for what is the same package, be it on the list and needed besides."""
    rows: dict[object, ShoppingItem] = {}
    for each in (*own, *needed):
        number = None if each.product is None else each.product.id
        same = (each.ingredient, number, each.size, each.min_abv_percent)
        before = rows.get(same)
        if before is not None:
            each = replace(
                each,
                need=before.need + each.need,
                packages=before.packages + each.packages,
                why=tuple(dict.fromkeys((*before.why, *each.why))),
                called=tuple(dict.fromkeys((*before.called, *each.called))),
            )
        rows[same] = each
    yield from rows.values()
