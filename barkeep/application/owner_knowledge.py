"""What the owner knows better: own stand-ins and own ingredients."""

from __future__ import annotations

import re
from dataclasses import replace
from math import isfinite
from typing import get_args

from barkeep.application.done import Done
from barkeep.application.finding import find_ingredient
from barkeep.application.session import UseCases
from barkeep.application.shelving import NeverOffered, StillInUse, refuse_beyond, refuse_figures
from barkeep.domain.amounts.units import Unit
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.ingredients.relations import SCOPES, Input, MadeFrom, StandIn
from barkeep.domain.ingredients.tree import FamilyTree, Ingredient, with_own
from barkeep.domain.phrases import folded
from barkeep.errors import DuplicateName, InvalidField, KnowledgeError, UnknownName, spoken_list
from barkeep.store import knowledge as rows

_MORE = "it is more than nothing"
_KEY = re.compile(r"[a-z0-9]+(-[a-z0-9]+)*")


class OwnerKnowledge(UseCases):
    """The use cases of `bar.knowledge`."""

    @property
    def own_ingredients(self) -> frozenset[str]:
        """The keys of the owner's ingredients."""
        with self._session.store.reading() as connection:
            return frozenset(each.key for each in rows.read_own_ingredients(connection))

    def add_stand_in(self, stand_in: StandIn) -> Done[StandIn]:
        """Add an own stand-in, or change the one there is for the same two ingredients.

        Raises `UnknownName`, `InvalidField`, and `NeverOffered` for a pair
        that is mistaken for each other.
        """
        tree = self._session.tree
        checked = _checked_stand_in(stand_in, tree)
        offered, wanted = tree.name(checked.offered), tree.name(checked.wanted)
        with self._session.writing(f"Let {offered} stand in for {wanted}") as work:
            key = (checked.wanted, checked.offered)
            work.put("own_stand_in", key, checked)
        return self._session.finished(work, lambda _bar: checked)

    def remove_stand_in(self, wanted: str, offered: str) -> Done[StandIn]:
        """Take an own stand-in back; what barkeep knows itself then counts again."""
        tree = self._session.tree
        pair = find_ingredient(tree, wanted), find_ingredient(tree, offered)
        names = tree.name(pair[0]), tree.name(pair[1])
        with self._session.writing(f"Forget {names[1]} for {names[0]}") as work:
            own = rows.read_own_stand_ins(work.connection)
            found = [each for each in own if (each.wanted, each.offered) == pair]
            if not found:
                raise UnknownName("stand-in of yours", f"{names[1]} for {names[0]}")
            work.put("own_stand_in", pair, None)
        return self._session.finished(work, lambda _bar: found[0])

    def set_recipe(self, recipe: MadeFrom) -> Done[MadeFrom]:
        """Keep an own way of making something; it takes the place of every other way.

        Raises `UnknownName` and `InvalidField`.
        """
        tree = self._session.tree
        checked = checked_recipe(recipe, tree)
        with self._session.writing(f"Keep a recipe for {tree.in_sentence(checked.made)}") as work:
            work.put("own_recipe", (checked.made,), checked)
        return self._session.finished(work, lambda _bar: checked)

    def remove_recipe(self, made: str) -> Done[MadeFrom]:
        """Take an own recipe back; what barkeep knows itself then counts again."""
        tree = self._session.tree
        key = find_ingredient(tree, made)
        with self._session.writing(f"Forget the recipe for {tree.in_sentence(key)}") as work:
            own = {each.made: each for each in rows.read_own_recipes(work.connection)}
            if key not in own:
                raise UnknownName("recipe of yours", tree.name(key))
            work.put("own_recipe", (key,), None)
        return self._session.finished(work, lambda _bar: own[key])

    def add_ingredient(self, ingredient: Ingredient) -> Done[Ingredient]:
        """Add an own ingredient; one with a key that is known replaces what is known.

        Raises `InvalidField`, `DuplicateName`, and `UnknownName` for a parent.
        """
        tree = self._session.tree
        checked = _checked_ingredient(ingredient, tree)
        verb = "Change" if checked.key in tree else "Add"
        with self._session.writing(f"{verb} ingredient {checked.name}") as work:
            work.put("own_ingredient", (checked.key,), checked)
        return self._session.finished(work, lambda bar: bar.knowledge.tree[checked.key])

    def remove_ingredient(self, key: str) -> Done[Ingredient]:
        """Take an own ingredient back. Raises `StillInUse` while something refers to it."""
        with self._session.writing() as work:
            own = {each.key: each for each in rows.read_own_ingredients(work.connection)}
            if key not in own:
                raise UnknownName("ingredient of yours", key)
            work.label = f"Remove ingredient {own[key].name}"
            if key not in self._session.shipped.tree:
                _refuse_used(self._session.snapshot, own[key])
            work.put("own_ingredient", (key,), None)
        return self._session.finished(work, lambda _bar: own[key])


def _checked_stand_in(stand_in: StandIn, tree: FamilyTree) -> StandIn:
    wanted = find_ingredient(tree, stand_in.wanted)
    offered = find_ingredient(tree, stand_in.offered)
    if wanted == offered:
        raise InvalidField("offered", tree.name(offered), "nothing stands in for itself")
    why_not = tree.mistaken(wanted, offered)
    if why_not is not None:
        raise NeverOffered(tree.name(wanted), tree.name(offered), why_not)
    if not 0 < stand_in.closeness <= 1:
        raise InvalidField("closeness", stand_in.closeness, "it is more than 0 and at most 1")
    if not (isfinite(stand_in.ratio) and stand_in.ratio > 0):
        raise InvalidField("ratio", stand_in.ratio, "it is more than 0")
    for word in stand_in.scope:
        if word not in SCOPES:
            raise InvalidField("scope", word, f"it is {spoken_list(SCOPES)}")
    why = " ".join(stand_in.why.split())
    if not why:
        raise InvalidField("why", stand_in.why, "a stand-in needs a reason")
    return replace(stand_in, wanted=wanted, offered=offered, why=why, own=True)


def checked_recipe(recipe: MadeFrom, tree: FamilyTree) -> MadeFrom:
    """The recipe with its ingredients as keys, each named once.

    Raises `UnknownName`, and `InvalidField` for no or bad amounts, or a thing made from itself.
    """
    made = find_ingredient(tree, recipe.made)
    amounts: dict[str, float] = {}
    for each in recipe.inputs:
        key = find_ingredient(tree, each.ingredient)
        if key == made:
            raise InvalidField("input", tree.name(key), "nothing is made from itself")
        if not (isfinite(each.amount) and each.amount > 0):
            raise InvalidField(f"amount of {tree.in_sentence(key)}", each.amount, _MORE)
        amounts[key] = amounts.get(key, 0.0) + each.amount
    if not amounts:
        raise InvalidField("inputs", "", "a recipe takes at least one thing")
    if not (isfinite(recipe.yields) and recipe.yields > 0):
        raise InvalidField("yield", recipe.yields, _MORE)
    inputs = tuple(Input(key, amount) for key, amount in amounts.items())
    how = " ".join(recipe.how.split())
    return replace(recipe, made=made, inputs=inputs, how=how, closeness=1.0, own=True)


def _checked_ingredient(ingredient: Ingredient, tree: FamilyTree) -> Ingredient:
    name = " ".join(ingredient.name.split())
    if not name:
        raise InvalidField("name", ingredient.name, "an ingredient needs a name")
    if not _KEY.fullmatch(ingredient.key):
        expected = "it is small letters and digits with hyphens between"
        raise InvalidField("key", ingredient.key, expected)
    if ingredient.unit not in get_args(Unit):
        raise InvalidField("unit", ingredient.unit, "it is ml, g or each")
    _refuse_numbers(ingredient)
    for each in (name, *ingredient.aliases):
        if tree.by_name.get(folded(each), ingredient.key) != ingredient.key:
            raise DuplicateName("ingredient", each)
    parents = tuple(find_ingredient(tree, parent) for parent in ingredient.parents)
    checked = replace(ingredient, name=name, parents=parents)
    try:
        with_own(tree, [checked])
    except KnowledgeError as error:
        raise InvalidField("parents", ", ".join(parents), error.reason) from error
    return checked


def _refuse_numbers(ingredient: Ingredient) -> None:
    refuse_figures(ingredient)
    days = ingredient.shelf_life_days
    refuse_beyond("shelf life", days, None, "it is 0 days or more")
    if not (isfinite(ingredient.typical_size) and ingredient.typical_size > 0):
        raise InvalidField("typical size", ingredient.typical_size, "it is more than nothing")


def _refuse_used(bar: Snapshot, ingredient: Ingredient) -> None:
    tree, key = bar.knowledge.tree, ingredient.key
    users = [product.title for product in bar.products if product.ingredient == key]
    users += [spec.name for spec in bar.specs if any(key in line.wanted for line in spec.lines)]
    users += [tree.name(child) for child in tree.children(key)]
    users += [
        f"the recipe for {tree.in_sentence(each.made)}"
        for each in bar.knowledge.made_from
        if each.own and key in (each.made, *(part.ingredient for part in each.inputs))
    ]
    if users:
        raise StillInUse(ingredient.name, spoken_list(users, "and"))
