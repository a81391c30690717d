"""Where a thing is bought: at the bottle shop or at the market, from `resources/shops.toml`."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from typing import Literal, get_args

from barkeep import resource_files
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.errors import KnowledgeError
from barkeep.shipped_data import Texts, parse, read, table_in
from barkeep.translation import tr_noop

FILE = "shops.toml"

Shop = Literal["bottle_shop", "market"]
SHOPS: tuple[Shop, ...] = get_args(Shop)
"""In the order they are named: bottles lead."""
SHOP_NAMES: Mapping[Shop, str] = {
    "bottle_shop": tr_noop("Bottle shop"),
    "market": tr_noop("Market"),
}
SHOP_COUNTS: Mapping[Shop, str] = {
    "bottle_shop": tr_noop("{count} at the bottle shop"),
    "market": tr_noop("{count} at the market"),
}
SHOP_WORDS: Mapping[Shop, str] = {
    "bottle_shop": "At the bottle shop",
    "market": "At the market",
}


@dataclass(frozen=True, slots=True)
class _Shelves:
    bottle_shop: Texts
    market: Texts


@cache
def shipped_shops() -> Mapping[str, Shop]:
    """Key of a kind -> where it and what is below it are sold. Raises `KnowledgeError`."""
    return read_shops(resource_files.read_text(FILE))


def read_shops(text: str, file: str = FILE) -> Mapping[str, Shop]:
    """Key of a kind -> its shop. Raises `KnowledgeError`, also for a kind that is there twice."""
    document = parse(text, file, "at")
    shelves = read(table_in(document, "at", file), _Shelves, file, "at")
    found: dict[str, Shop] = {}
    for shop in SHOPS:
        for key in getattr(shelves, shop):
            if key in found:
                raise KnowledgeError(file, key, "it is there twice")
            found[key] = shop
    return found


def shop_of(key: str, tree: FamilyTree) -> Shop:
    """Where a kind is sold: by its own word, else by that of the nearest kind above it."""
    shops = shipped_shops()
    kinds: tuple[str, ...] = (key,)
    while kinds:
        said = [shops[each] for each in kinds if each in shops]
        if said:
            return said[0]
        kinds = tuple(dict.fromkeys(up for each in kinds for up in tree[each].parents))
    return "bottle_shop" if tree[key].unit == "ml" else "market"
