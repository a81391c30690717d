"""A shopping list in words, for a screen, a page or a message to whoever goes shopping."""

from __future__ import annotations

from barkeep.domain.answers.shopping import ShoppingItem, ShoppingList
from barkeep.domain.answers.words import plain_amount
from barkeep.domain.ingredients import FamilyTree


def packages_in_words(item: ShoppingItem) -> str:
    """What to take off the shop's shelf: *2 × 700 ml Lamp Room dry gin*."""
    title = "" if item.product is None else item.product.title
    if item.unit == "each" and item.size == 1.0:
        return f"{item.packages} {title}".strip()
    return f"{item.packages} × {plain_amount(item.size, item.unit)} {title}".strip()


def need_in_words(item: ShoppingItem) -> str:
    """How much of it is needed: *150 ml*."""
    return plain_amount(round(item.need, 1), item.unit)


def name_in_words(item: ShoppingItem, tree: FamilyTree) -> str:
    """What it is, with the strength it must have."""
    name = tree.name(item.ingredient)
    least = item.min_abv_percent
    return name if least is None else f"{name}, {least:g} % vol or more"


def why_in_words(item: ShoppingItem) -> str:
    """All reasons in one line."""
    return "; ".join(item.why)


def money(amount: float | None, currency: str = "") -> str:
    """A price or a cost, empty where it is not known."""
    return "" if amount is None else f"{amount:.2f} {currency}".strip()


def total_in_words(found: ShoppingList) -> str:
    """What it comes to: *110.60 EUR for 4 things; 1 has no known price.*"""
    if not found.items:
        return "There is nothing to buy."
    unpriced, priced = found.unpriced, len(found.items) - found.unpriced
    lacking = f"{unpriced} {'has' if unpriced == 1 else 'have'} no known price"
    if not priced:
        return f"{_things(unpriced)} to buy; no price is known."
    said = f"{money(found.total, found.currency)} for {_things(priced)}"
    return f"{said}; {lacking}." if unpriced else f"{said}."


def list_as_text(found: ShoppingList, tree: FamilyTree) -> str:
    """The whole list as plain text, a line a thing."""
    lines = []
    for each in found.items:
        cost = money(each.cost, found.currency)
        lines.append(
            f"{name_in_words(each, tree)}: {packages_in_words(each)}{f' ({cost})' if cost else ''}"
        )
    return "\n".join((*lines, total_in_words(found)))


def _things(count: int) -> str:
    return f"{count} thing{'s' * (count != 1)}"
