"""The knowledge barkeep brings along, out of its TOML texts. Pure; each fault is located."""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import replace
from typing import get_args

from barkeep.domain.ingredients.ordinary import OnlyWhenAsked, Ordinary, Roles, WithAge
from barkeep.domain.ingredients.relations import Input, MadeFrom, NoStandIn, StandIn
from barkeep.domain.ingredients.tree import Confusable, FamilyTree, Ingredient
from barkeep.domain.phrases import folded
from barkeep.errors import KnowledgeError
from barkeep.shipped_data import (
    Table,
    Text,
    Texts,
    amounts,
    by_key,
    parse,
    read,
    read_field,
    refuse_twice,
    table_in,
    tables,
    without,
)

_KEY = re.compile(r"[a-z0-9]+(-[a-z0-9]+)*")


TYPICAL_SIZES = {"ml": 700.0, "g": 1000.0, "each": 1.0}
"""What one purchase holds where nothing is said (*common practice*)."""


def read_tree(
    ingredients: str,
    confusables: str,
    ingredients_file: str = "ingredients.toml",
    confusables_file: str = "confusables.toml",
    *,
    ordinary: str = "",
) -> FamilyTree:
    """The family tree with its confusables and ordinary pours.

    Raises `KnowledgeError` or `CyclicFamily`.
    """
    known = {each.key: each for each in read_ingredients(ingredients, ingredients_file)}
    pairs = _pairs(confusables, confusables_file)
    tree = FamilyTree(known, pairs, ingredients_file)
    _refuse_pairs(pairs, tree, confusables_file)
    return tree.taking(read_ordinary(ordinary, tree)) if ordinary else tree


def read_ingredients(text: str, file: str = "ingredients.toml") -> tuple[Ingredient, ...]:
    """One ingredient a table, its key the table's name."""
    return tuple(_ingredient(key, table, file) for key, table in parse(text, file).items())


def read_ordinary(text: str, tree: FamilyTree, file: str = "ordinary_pours.toml") -> Ordinary:
    """What a general want is poured from, and what becomes of a kind with age."""
    document = parse(text, file, "only_when_asked", "roles", "with_age", "rather")
    special, roles, ages, rather = (
        table_in(document, name, file)
        for name in ("only_when_asked", "roles", "with_age", "rather")
    )
    found = Ordinary(
        only_when_asked=by_key(special, OnlyWhenAsked, file, "only_when_asked"),
        roles=by_key(roles, Roles, file, "roles"),
        with_age=_ages(ages, file),
        rather={
            key: read_field(rather, name=key, kind=Text, file=file, place="rather")
            for key in rather
        },
    )
    for each in found.only_when_asked.values():
        if any(folded(word) != word for word in each.words):
            reason = "its words are in small letters, without hyphens or accents"
            raise KnowledgeError(file, f"only_when_asked.{each.key}", reason)
    _refuse_unknown((*found.only_when_asked, *found.roles, *found.with_age), tree, file, "a key")
    _refuse_unknown((*found.rather, *found.rather.values()), tree, file, "rather")
    for role in found.roles.values():
        kinds = [kind for tier in (*role.light, *role.dark) for kind in tier]
        _refuse_unknown(kinds, tree, file, f"roles.{role.key}")
        for kind in kinds:
            if not tree.is_a(kind, role.key):
                reason = f"“{kind}” is no kind of it"
                raise KnowledgeError(file, f"roles.{role.key}", reason)
    return found


def _ages(table: Table, file: str) -> dict[str, WithAge]:
    found: dict[str, WithAge] = {}
    for age in get_args(WithAge):
        written: Table = {age: (), **table}
        keys = read_field(written, name=age, kind=Texts, file=file, place="with_age")
        refuse_twice((*found, *keys), file)
        found |= dict.fromkeys(keys, age)
    for name in table:
        if name not in get_args(WithAge):
            raise KnowledgeError(file, "with_age", f"there is no field “{name}”")
    return found


def read_stand_ins(
    text: str, tree: FamilyTree, file: str = "stand_ins.toml"
) -> tuple[tuple[StandIn, ...], tuple[NoStandIn, ...]]:
    """What stands in for what, and what nothing stands in for."""
    document = parse(text, file, "stand_in", "nothing")
    offers = tuple(_stand_in(each, tree, file) for each in tables(document, "stand_in", file))
    nothing = tuple(_nothing(each, tree, file) for each in tables(document, "nothing", file))
    refuse_twice((f"stand-in {each.offered} for {each.wanted}" for each in offers), file)
    refuse_twice((f"nothing for {each.wanted}" for each in nothing), file)
    wanted = {each.wanted for each in offers}
    for each in nothing:
        if each.wanted in wanted:
            reason = "nothing stands in for it, yet a stand-in is given too"
            raise KnowledgeError(file, each.wanted, reason)
    return offers, nothing


def read_made_from(
    text: str, tree: FamilyTree, file: str = "made_from.toml"
) -> tuple[MadeFrom, ...]:
    """What is made from what, with its yield."""
    document = parse(text, file, "made")
    found = tuple(_made(each, tree, file) for each in tables(document, "made", file))
    ways = (
        f"made {each.made} from {', '.join(sorted(one.ingredient for one in each.inputs))}"
        for each in found
    )
    refuse_twice(ways, file)
    return found


def _pairs(text: str, file: str) -> tuple[Confusable, ...]:
    found = []
    document = parse(text, file, "confusable")
    for number, table in enumerate(tables(document, "confusable", file), 1):
        pair = read_field(table, name="pair", kind=Texts, file=file, place=f"confusable {number}")
        if len(pair) != 2:
            raise KnowledgeError(file, f"confusable {number}", "“pair” names two ingredients")
        first, second = pair
        place = f"confusable {first}, {second}"
        rest = without(table, "pair")
        found.append(read(rest, Confusable, file, place, first=first, second=second))
    return tuple(found)


def _refuse_pairs(pairs: Iterable[Confusable], tree: FamilyTree, file: str) -> None:
    """Raise for a pair of no ingredients, one that is there twice, or of a kind and its own."""
    seen: set[frozenset[str]] = set()
    for number, each in enumerate(pairs, 1):
        pair = each.first, each.second
        _refuse_unknown(pair, tree, file, f"confusable {number}")
        place = f"confusable {each.first}, {each.second}"
        if frozenset(pair) in seen:
            raise KnowledgeError(file, place, "the pair is there twice")
        if tree.is_a(*pair) or tree.is_a(each.second, each.first):
            raise KnowledgeError(file, place, "one of them is the other by descent")
        seen.add(frozenset(pair))


def _ingredient(key: str, table: Table, file: str) -> Ingredient:
    ingredient = read(table, Ingredient, file, key, key=key)
    if not _KEY.fullmatch(key):
        expected = "a key is small letters and digits with hyphens between"
        raise KnowledgeError(file, key, expected)
    if "typical_size" in table:
        return ingredient
    return replace(ingredient, typical_size=TYPICAL_SIZES[ingredient.unit])


def _stand_in(table: Table, tree: FamilyTree, file: str) -> StandIn:
    key = f"stand-in {table.get('offered', '?')} for {table.get('wanted', '?')}"
    entry = read(table, StandIn, file, key, own=False)
    _refuse_unknown((entry.wanted, entry.offered), tree, file, key)
    if entry.wanted == entry.offered:
        raise KnowledgeError(file, key, "nothing stands in for itself")
    why_not = tree.mistaken(entry.wanted, entry.offered)
    if why_not is not None:
        raise KnowledgeError(file, key, f"the two are confusable: {why_not}")
    return entry


def _nothing(table: Table, tree: FamilyTree, file: str) -> NoStandIn:
    key = f"nothing {table.get('wanted', '?')}"
    entry = read(table, NoStandIn, file, key)
    _refuse_unknown((entry.wanted,), tree, file, key)
    return entry


def _made(table: Table, tree: FamilyTree, file: str) -> MadeFrom:
    key = f"made {table.get('made', '?')}"
    takes = amounts(table.get("inputs", {}), file, f"{key}, inputs")
    _refuse_unknown(takes, tree, file, f"{key}, inputs")
    inputs = tuple(Input(each, amount) for each, amount in takes.items())
    entry = read(without(table, "inputs"), MadeFrom, file, key, inputs=inputs, own=False)
    _refuse_unknown((entry.made,), tree, file, key)
    if not inputs:
        raise KnowledgeError(file, key, "it is made from nothing; “inputs” names what it takes")
    if entry.made in takes:
        raise KnowledgeError(file, key, "it is made from itself")
    return entry


def _refuse_unknown(keys: Iterable[str], tree: FamilyTree, file: str, place: str) -> None:
    for key in keys:
        if key not in tree:
            raise KnowledgeError(file, place, f"“{key}” is not an ingredient")
