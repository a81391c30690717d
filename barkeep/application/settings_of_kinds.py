"""What the owner chose for kinds of things: the house pour of each, and how long it keeps."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import replace

from barkeep.application.finding import find_ingredient, find_product
from barkeep.domain.bar.of_kinds import LONGEST_LIFE_DAYS, HousePour, ShelfLife, said_of, unsaid_of
from barkeep.domain.bar.snapshot import Settings, Snapshot
from barkeep.domain.bottles.bottle import Product
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.errors import InvalidField
from barkeep.translation import tr, tr_noop

HOUSE, KEEPS = tr_noop("house"), tr_noop("keeps")

HOUSE_HINT = tr_noop(
    "What you pour where a spec says no more than rum: rum = the label of a bottle. Semicolons "
    "part several."
)
KEEPS_HINT = tr_noop(
    "How many days a thing keeps once open or made, where you know better: sweet vermouth = 60. "
    "Semicolons part several."
)

_DAYS = re.compile(r"([0-9]{1,6}) ?(?:d|days?)?", re.IGNORECASE)


def checked_house_pour(kind: str, product: Product, tree: FamilyTree) -> HousePour:
    """The product as the usual pour of a kind, given by its key or any name.

    Raises `UnknownName`, or `InvalidField` for a product that is no such kind.
    """
    key = find_ingredient(tree, kind)
    if not tree.is_a(product.ingredient, key):
        holds, wanted = tree.in_sentence(product.ingredient), tree.in_sentence(key)
        expected = tr("it is {holds}, which is no kind of {wanted}", holds=holds, wanted=wanted)
        raise InvalidField(HOUSE, product.title, expected)
    return HousePour(key, product.id)


def read_house_pours(snapshot: Snapshot, text: str) -> Settings:
    """The settings with the usual pours of a text: *rum = label; gin =*, which takes gin's away.

    Raises `InvalidField`, `UnknownName` or `AmbiguousName`.
    """
    settings, tree = snapshot.settings, snapshot.knowledge.tree
    pours = settings.house
    for kind, said in _pairs(HOUSE, text):
        key = find_ingredient(tree, kind)
        if said:
            product = find_product(snapshot, said)
            pours = said_of(pours, checked_house_pour(key, product, tree))
        else:
            _refuse_absent(HOUSE, kind, key in {each.kind for each in pours})
            pours = unsaid_of(pours, key)
    return replace(settings, house=pours)


def show_house_pours(snapshot: Snapshot) -> str:
    """The usual pours as `read_house_pours` reads them."""
    tree, products = snapshot.knowledge.tree, snapshot.product_by_id
    return "; ".join(
        f"{tree.in_sentence(each.kind)} = {products[each.product].title}"
        for each in snapshot.settings.house
        if each.kind in tree and each.product in products
    )


def read_shelf_lives(snapshot: Snapshot, text: str) -> Settings:
    """The settings with the shelf lives of a text: *sweet vermouth = 60; fino sherry =*.

    Raises `InvalidField` or `UnknownName`.
    """
    settings, lives = snapshot.settings, snapshot.settings.keeps
    for kind, said in _pairs(KEEPS, text):
        key = find_ingredient(snapshot.knowledge.tree, kind)
        if said:
            found = _DAYS.fullmatch(said)
            if found is None or not 1 <= int(found[1]) <= LONGEST_LIFE_DAYS:
                expected = tr("it is a whole number of days, 1 to {most:,}", most=LONGEST_LIFE_DAYS)
                raise InvalidField(KEEPS, f"{kind} = {said}", expected)
            lives = said_of(lives, ShelfLife(key, int(found[1])))
        else:
            _refuse_absent(KEEPS, kind, key in {each.kind for each in lives})
            lives = unsaid_of(lives, key)
    return replace(settings, keeps=lives)


def show_shelf_lives(snapshot: Snapshot) -> str:
    """The owner's shelf lives as `read_shelf_lives` reads them."""
    tree = snapshot.knowledge.tree
    return "; ".join(
        f"{tree.in_sentence(each.kind)} = {each.days}"
        for each in snapshot.settings.keeps
        if each.kind in tree
    )


def _pairs(field: str, text: str) -> Iterator[tuple[str, str]]:
    said: set[str] = set()
    for part in filter(None, map(str.strip, text.split(";"))):
        kind, equals, value = (each.strip() for each in part.partition("="))
        if not equals or not kind:
            likely = "rum = the label of a bottle" if field == HOUSE else "sweet vermouth = 60"
            raise InvalidField(field, part, tr("write it as {likely}", likely=likely))
        if kind.casefold() in said:
            raise InvalidField(field, kind, tr("it is there twice"))
        said.add(kind.casefold())
        yield kind, value


def _refuse_absent(field: str, kind: str, there: bool) -> None:
    if not there:
        raise InvalidField(field, f"{kind} =", tr("there is none of it to take away"))
