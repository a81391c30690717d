"""Making a thing at home: its inputs are drawn and it comes on the shelf, both or neither."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import replace
from datetime import date

from barkeep.application.counting import tares_again
from barkeep.application.done import Done
from barkeep.application.finding import find_ingredient
from barkeep.application.owner_knowledge import checked_recipe
from barkeep.application.session import UseCases
from barkeep.application.shelving import (
    bottle_there,
    checked_draft,
    product_there,
    shelve,
    taken_from,
)
from barkeep.domain.bottles.bottle import Bottle, BottleFacts, Label, Product, label_of
from barkeep.domain.bottles.level_words import quantity
from barkeep.domain.ingredients.relations import MadeFrom
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.making.house_made import InputPlan, Making, most_made, plan_making, recipes_for
from barkeep.errors import InvalidField, UserError, spoken_list
from barkeep.store import bottles as products
from barkeep.store.unit_of_work import UnitOfWork
from barkeep.translation import tr, tr_noop


class NoRecipe(UserError):
    """Something nobody knows how to make."""

    ingredient: str
    says = "There is no recipe for {ingredient}: say what it is made from."


class InputsShort(UserError):
    """Too little of what a batch takes; each of `missing` is a part of the sentence."""

    made: str
    missing: Sequence[str]

    def __str__(self) -> str:
        missing = spoken_list(self.missing, "and")
        return tr("{made} cannot be made: {missing}.", made=self.made, missing=missing)


class HouseMaking(UseCases):
    """The use cases of `bar.house`."""

    def plan(
        self,
        ingredient: str,
        amount: float,
        *,
        recipe: MadeFrom | None = None,
        made: date | None = None,
        or_less: bool = False,
    ) -> Making:
        """What making so much would draw and give; nothing is written.

        With `or_less`, as much as the inputs give. Raises `UnknownName`,
        `InvalidField` or `NoRecipe`.
        """
        snapshot, tree = self._session.snapshot, self._session.tree
        key = find_ingredient(tree, ingredient)
        if not (math.isfinite(amount) and amount > 0):
            raise InvalidField(tr_noop("amount"), amount, tr("it is more than nothing"))
        if tree[key].unit == "each" and amount != math.floor(amount):
            raise InvalidField("amount", amount, tr("it is a whole number of pieces"))
        chosen = self._recipe(key, recipe)
        if or_less:
            most = most_made(chosen, snapshot)
            if most is not None and 1.0 <= most < amount:
                amount = float(math.floor(most))
        return plan_making(chosen, amount, snapshot, made)

    def make(
        self,
        ingredient: str,
        amount: float,
        *,
        recipe: MadeFrom | None = None,
        made: date | None = None,
        use_by: date | None = None,
        or_less: bool = False,
        keep_recipe: bool = False,
    ) -> Done[Bottle]:
        """Draw the inputs and put what they make on the shelf; one undo takes all of it back.

        `amount` is in the made ingredient's unit; `keep_recipe` keeps `recipe`
        as the owner's. Raises as `plan` does, `InputsShort` and `NotEnoughLeft`.
        """
        with self._session.writing() as work:
            plan = self.plan(ingredient, amount, recipe=recipe, made=made, or_less=or_less)
            said = self._said_of(plan)
            work.label = f"Make {said}"
            _draw(work, plan, f"for {said}")
            if recipe is not None and keep_recipe:
                kept = checked_recipe(recipe, self._session.tree)
                work.put("own_recipe", (kept.made,), kept)
            product = self._product(work, plan)
            bottle_id = shelve(
                self._session,
                work=work,
                product=product,
                facts=BottleFacts(made=plan.made, use_by=use_by or plan.use_by),
            )
        return self._session.finished(work, lambda bar: bar.bottle_by_id[bottle_id])

    def _said_of(self, plan: Making) -> str:
        """How much of what is made. Raises `InputsShort`."""
        tree = self._session.tree
        if plan.short:
            raise InputsShort(tree.name(plan.recipe.made), [_lacking(e, tree) for e in plan.short])
        return f"{quantity(plan.amount, plan.unit)} {tree.in_sentence(plan.recipe.made)}"

    def _recipe(self, key: str, recipe: MadeFrom | None) -> MadeFrom:
        if recipe is not None:
            return checked_recipe(replace(recipe, made=key), self._session.tree)
        known = recipes_for(key, self._session.snapshot.knowledge)
        if not known:
            raise NoRecipe(self._session.tree.in_sentence(key))
        return known[0]

    def _product(self, work: UnitOfWork, plan: Making) -> Product:
        """The house-made product of this size: the one there is, with its figures of now."""
        tree = self._session.tree
        draft = checked_draft(_draft(plan, tree), tree)
        there = products.product_named(work.connection, draft)
        if there is not None and not (there.house_made and there.ingredient == draft.ingredient):
            draft = replace(draft, name=f"{draft.name} (made here)")
            there = products.product_named(work.connection, draft)
        if there is None:
            (product_id,) = work.insert("product", [draft])
            return product_there(work, product_id)
        renewed = replace(
            label_of(there),
            abv_percent=draft.abv_percent,
            sugar_g_per_l=draft.sugar_g_per_l,
            acid_g_per_l=draft.acid_g_per_l,
        )
        if renewed != label_of(there):
            work.put("product", (there.id,), renewed)
            tares_again(self._session, work, product_there(work, there.id))
        return product_there(work, there.id)


def _draw(work: UnitOfWork, plan: Making, note: str) -> None:
    for each in plan.inputs:
        for draw in each.draws:
            bottle = bottle_there(work, draw.bottle.id)
            work.append(bottle.id, "pour", taken_from(bottle, draw.amount), note=note)


def _draft(plan: Making, tree: FamilyTree) -> Label:
    figures = plan.figures
    return Label(
        name=tree.name(plan.recipe.made),
        maker="",
        ingredient=plan.recipe.made,
        size=round(plan.amount, 2),
        unit=plan.unit,
        abv_percent=_rounded(figures.abv_percent),
        sugar_g_per_l=_rounded(figures.sugar_g_per_l),
        house_made=True,
        acid_g_per_l=_rounded(figures.acid_g_per_l),
    )


def _rounded(figure: float | None) -> float | None:
    return None if figure is None else round(figure, 1)


def _lacking(plan: InputPlan, tree: FamilyTree) -> str:
    need, have = quantity(plan.need, plan.unit), quantity(plan.have, plan.unit)
    return tr(
        "{need} of {name} is needed and {have} is there",
        need=need,
        name=tree.in_sentence(plan.ingredient),
        have=have,
    )
