"""What the owner knows better: own stand-ins and own ingredients."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace
from math import isfinite
from typing import Literal

from barkeep.application.done import Done
from barkeep.application.finding import find_ingredient
from barkeep.application.own_ingredients import (
    checked_ingredient,
    checked_name,
    concerns,
    refuse_removal,
)
from barkeep.application.session import UseCases
from barkeep.application.shelving import NeverOffered
from barkeep.application.stale import (
    RemovedSince,
    ingredient_in_words,
    refuse_stale,
    stand_ins_in_words,
)
from barkeep.domain.ingredients.relations import SCOPES, Input, MadeFrom, StandIn
from barkeep.domain.ingredients.tree import FamilyTree, Ingredient, with_own
from barkeep.errors import InvalidField, UnknownName, spoken_list
from barkeep.store import knowledge as rows
from barkeep.store.unit_of_work import UnitOfWork
from barkeep.translation import tr, tr_noop

_MORE = tr_noop("it is more than nothing")
Standing = Literal["known", "changed", "own"]
"""What barkeep brings along, what it brings along but the owner changed, or what is the owner's."""


@dataclass(frozen=True, slots=True)
class SaidOf:
    """What the owner says of an ingredient, None for nothing, and of what stands in for it."""

    ingredient: Ingredient | None
    stand_ins: tuple[StandIn, ...]


class OwnerKnowledge(UseCases):
    """The use cases of `bar.knowledge`."""

    @property
    def own_ingredients(self) -> frozenset[str]:
        """The keys of the owner's ingredients."""
        return frozenset(self.said)

    def add_stand_in(
        self, stand_in: StandIn, seen: tuple[StandIn, ...] | None = None
    ) -> Done[StandIn]:
        """Add an own stand-in, or change the one there is for the same two ingredients.

        Raises `UnknownName`, `InvalidField`, `NeverOffered` for a pair that is mistaken
        for each other, and `ChangedSince` where what is said of the two is not as it was
        `seen` among the own stand-ins.
        """
        with self._session.writing() as work:
            tree = self._session.tree
            checked = _checked_stand_in(stand_in, tree)
            offered, wanted = tree.name(checked.offered), tree.name(checked.wanted)
            work.label = f"Let {offered} stand in for {wanted}"
            key = (checked.wanted, checked.offered)
            refuse_stale(
                tr("what you say of {offered} for {wanted}", offered=offered, wanted=wanted),
                seen=seen,
                now=rows.read_own_stand_ins(work.connection),
                mine=(checked,),
                words=lambda entries: stand_ins_in_words(
                    (each for each in entries if (each.wanted, each.offered) == key), tree
                ),
            )
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
                raise UnknownName(
                    tr_noop("stand-in of yours"),
                    tr("{offered} for {wanted}", offered=names[1], wanted=names[0]),
                )
            work.put("own_stand_in", pair, None)
        return self._session.finished(work, lambda _bar: found[0])

    def set_recipe(self, recipe: MadeFrom) -> Done[MadeFrom]:
        """Keep an own way of making something; it takes the place of every other way.

        Raises `UnknownName` and `InvalidField`.
        """
        with self._session.writing() as work:
            tree = self._session.tree
            checked = checked_recipe(recipe, tree)
            work.label = f"Keep a recipe for {tree.in_sentence(checked.made)}"
            work.put("own_recipe", (checked.made,), checked)
        return self._session.finished(work, lambda _bar: checked)

    def remove_recipe(self, made: str) -> Done[MadeFrom]:
        """Take an own recipe back; what barkeep knows itself then counts again."""
        tree = self._session.tree
        key = find_ingredient(tree, made)
        with self._session.writing(f"Forget the recipe for {tree.in_sentence(key)}") as work:
            own = {each.made: each for each in rows.read_own_recipes(work.connection)}
            if key not in own:
                raise UnknownName(tr_noop("recipe of yours"), tree.name(key))
            work.put("own_recipe", (key,), None)
        return self._session.finished(work, lambda _bar: own[key])

    def add_ingredient(
        self,
        ingredient: Ingredient,
        stand_ins: Iterable[StandIn] | None = None,
        seen: SaidOf | None = None,
    ) -> Done[Ingredient]:
        """Add an own ingredient; one with a key that is known replaces what is known.

        With `stand_ins` these are all that the owner says of what stands in for it and
        what it stands in for; without, what is said of that stays.
        Raises `InvalidField`, `DuplicateName`, `UnderstoodAlready`, `NeverOffered`,
        `UnknownName` for a parent, and `ChangedSince` or `RemovedSince` where what the
        owner says of it is not as it was `seen`.
        """
        with self._session.writing() as work:
            bar = self._session.snapshot
            tree = bar.knowledge.tree
            checked = checked_ingredient(ingredient, bar)
            grown = with_own(tree, [checked])
            said = tuple(_checked_stand_in(each, grown) for each in stand_ins or ())
            work.label = f"{'Change' if checked.key in tree else 'Add'} ingredient {checked.name}"
            now = _said_now(work, checked.key)
            mine = SaidOf(checked, now.stand_ins if stand_ins is None else said)
            _refuse_stale(mine, now=now, seen=seen, tree=grown)
            work.put("own_ingredient", (checked.key,), checked)
            if stand_ins is not None:
                _put_stand_ins(work, checked.key, said)
        return self._session.finished(work, lambda _bar: checked)

    def add_name(self, key: str, name: str) -> Done[Ingredient]:
        """Give an ingredient one more name. Raises `InvalidField` and `DuplicateName`."""
        seen = self.said_of(key)
        known = seen.ingredient or self._session.tree[key]
        with self._session.writing() as work:
            checked = checked_name(name, known, self._session.snapshot)
            work.label = f"Let {known.name} be called {checked.aliases[-1]}"
            now = _said_now(work, key)
            _refuse_stale(
                SaidOf(checked, now.stand_ins), now=now, seen=seen, tree=self._session.tree
            )
            work.put("own_ingredient", (key,), checked)
        return self._session.finished(work, lambda _bar: checked)

    def remove_ingredient(self, key: str) -> Done[Ingredient]:
        """Take an own ingredient back, with what the owner said of its stand-ins.

        What barkeep knows itself of such a kind then counts again, and its stand-ins stay.
        Raises `StillInUse` while something refers to it.
        """
        with self._session.writing() as work:
            own = {each.key: each for each in rows.read_own_ingredients(work.connection)}
            if key not in own:
                name = self._session.tree[key].name if key in self._session.tree else key
                raise UnknownName(tr_noop("ingredient of yours"), name)
            work.label = f"Remove ingredient {own[key].name}"
            if key not in self._session.shipped.tree:
                refuse_removal(self._session.snapshot, own[key])
                _put_stand_ins(work, key, ())
            work.put("own_ingredient", (key,), None)
        return self._session.finished(work, lambda _bar: own[key])

    @property
    def standings(self) -> Mapping[str, Standing]:
        """Whose each ingredient is that the owner added or changed."""
        shipped = self._session.shipped.tree
        return {key: "changed" if key in shipped else "own" for key in self.own_ingredients}

    def standing(self, key: str) -> Standing:
        """Whose an ingredient is."""
        return self.standings.get(key, "known")

    @property
    def said(self) -> Mapping[str, Ingredient]:
        """The owner's ingredients with what the owner says of them alone.

        In the tree they have the figures of their kinds where the owner says none.
        """
        with self._session.store.reading() as connection:
            return {each.key: each for each in rows.read_own_ingredients(connection)}

    def as_said(self, key: str) -> Ingredient:
        """An ingredient as it is in `said`, or else in the tree. Raises `UnknownName`."""
        return self.said.get(key) or self._session.tree[key]

    def said_of(self, key: str) -> SaidOf:
        """All that the owner says of an ingredient, for who is going to change it."""
        return _among(self.said.values(), self.own_stand_ins, key)

    @property
    def own_stand_ins(self) -> tuple[StandIn, ...]:
        """All stand-ins of the owner's, as they are written."""
        with self._session.store.reading() as connection:
            return rows.read_own_stand_ins(connection)

    def own_stand_ins_of(self, key: str) -> tuple[StandIn, ...]:
        """What the owner says stands in for an ingredient, and what it stands in for."""
        entries = self._session.snapshot.knowledge.stand_ins
        return tuple(each for each in entries if each.own and concerns(each, key))


def _among(ingredients: Iterable[Ingredient], stand_ins: Iterable[StandIn], key: str) -> SaidOf:
    """What concerns an ingredient among all that the owner says."""
    own = {each.key: each for each in ingredients}
    return SaidOf(own.get(key), tuple(each for each in stand_ins if concerns(each, key)))


def _said_now(work: UnitOfWork, key: str) -> SaidOf:
    own = rows.read_own_ingredients(work.connection)
    return _among(own, rows.read_own_stand_ins(work.connection), key)


def _refuse_stale(mine: SaidOf, *, now: SaidOf, seen: SaidOf | None, tree: FamilyTree) -> None:
    assert mine.ingredient is not None
    what = tr("the ingredient {name}", name=mine.ingredient.name)
    if seen is not None and seen.ingredient is not None and now.ingredient is None:
        raise RemovedSince(what)
    refuse_stale(
        what,
        seen=seen,
        now=now,
        mine=mine,
        words=lambda said: ingredient_in_words(said.ingredient, said.stand_ins, tree),
    )


def _put_stand_ins(work: UnitOfWork, key: str, stand_ins: Iterable[StandIn]) -> None:
    """Make these all the own stand-ins that concern an ingredient."""
    wanted = {(each.wanted, each.offered): each for each in stand_ins}
    for each in rows.read_own_stand_ins(work.connection):
        pair = (each.wanted, each.offered)
        if concerns(each, key) and pair not in wanted:
            work.put("own_stand_in", pair, None)
    for pair, entry in wanted.items():
        work.put("own_stand_in", pair, entry)


def _checked_stand_in(stand_in: StandIn, tree: FamilyTree) -> StandIn:
    wanted = find_ingredient(tree, stand_in.wanted)
    offered = find_ingredient(tree, stand_in.offered)
    if wanted == offered:
        raise InvalidField("offered", tree.name(offered), tr("nothing stands in for itself"))
    why_not = tree.mistaken(wanted, offered)
    if why_not is not None:
        raise NeverOffered(tree.name(wanted), tree.name(offered), why_not)
    if not 0 < stand_in.closeness <= 1:
        raise InvalidField("closeness", stand_in.closeness, tr("it is more than 0 and at most 1"))
    if not (isfinite(stand_in.ratio) and stand_in.ratio > 0):
        raise InvalidField("ratio", stand_in.ratio, tr("it is more than 0"))
    for word in stand_in.scope:
        if word not in SCOPES:
            raise InvalidField("scope", word, tr("it is {words}", words=spoken_list(SCOPES)))
    why = " ".join(stand_in.why.split())
    if not why:
        raise InvalidField("why", stand_in.why, tr("a stand-in needs a reason"))
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
            raise InvalidField("input", tree.name(key), tr("nothing is made from itself"))
        if not (isfinite(each.amount) and each.amount > 0):
            field = tr("amount of {ingredient}", ingredient=tree.in_sentence(key))
            raise InvalidField(field, each.amount, tr(_MORE))
        amounts[key] = amounts.get(key, 0.0) + each.amount
    if not amounts:
        raise InvalidField("inputs", "", tr("a recipe takes at least one thing"))
    if not (isfinite(recipe.yields) and recipe.yields > 0):
        raise InvalidField("yield", recipe.yields, tr(_MORE))
    inputs = tuple(Input(key, amount) for key, amount in amounts.items())
    how = " ".join(recipe.how.split())
    return replace(recipe, made=made, inputs=inputs, how=how, closeness=1.0, own=True)
