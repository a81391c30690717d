"""What the owner adds to the knowledge, and the settings: between rows and values."""

from __future__ import annotations

from dataclasses import asdict, fields
from typing import Any

from sqlalchemy import Connection, select

from barkeep.domain.amounts.units import OwnMeasure
from barkeep.domain.bar.pars import Par
from barkeep.domain.bar.snapshot import Settings
from barkeep.domain.ingredients.relations import Input, MadeFrom, StandIn
from barkeep.domain.ingredients.tree import Ingredient
from barkeep.domain.specs.trials import Scale
from barkeep.store.records import Row
from barkeep.store.schema import own_ingredient, own_recipe, own_stand_in, setting

_WORD_LISTS = ("parents", "aliases", "printed", "allergens")


def read_own_ingredients(connection: Connection) -> tuple[Ingredient, ...]:
    """The owner's ingredients, by key."""
    statement = select(own_ingredient.c.details).order_by(own_ingredient.c.key)
    return tuple(_ingredient(row[0]) for row in connection.execute(statement))


def read_own_stand_ins(connection: Connection) -> tuple[StandIn, ...]:
    """The owner's stand-ins, by what is wanted."""
    rows = connection.execute(select(own_stand_in).order_by(*own_stand_in.primary_key.columns))
    return tuple(
        StandIn(
            row.wanted, row.offered, row.closeness, row.ratio, row.why, tuple(row.scope), own=True
        )
        for row in rows
    )


def read_own_recipes(connection: Connection) -> tuple[MadeFrom, ...]:
    """The owner's recipes, by what is made."""
    rows = connection.execute(select(own_recipe).order_by(own_recipe.c.made))
    return tuple(
        MadeFrom(
            row.made,
            tuple(Input(key, float(amount)) for key, amount in row.inputs),
            row.yields,
            row.how,
            own=True,
        )
        for row in rows
    )


def read_settings(connection: Connection) -> Settings:
    """The settings; what was never chosen is as barkeep comes."""
    rows: dict[str, Any] = {row.key: row.value for row in connection.execute(select(setting))}
    known = {each.name for each in fields(Settings)}
    chosen = {key: value for key, value in rows.items() if key in known}
    if "not_there" in chosen:
        chosen["not_there"] = frozenset(chosen["not_there"])
    if "scales" in chosen:
        chosen["scales"] = tuple(Scale(**each) for each in chosen["scales"])
    if "pars" in chosen:
        chosen["pars"] = tuple(Par(**each) for each in chosen["pars"])
    if "measures" in chosen:
        chosen["measures"] = tuple(OwnMeasure(**each) for each in chosen["measures"])
    return Settings(**chosen)


def ingredient_row(ingredient: Ingredient) -> Row:
    """The row of an own ingredient."""
    details = asdict(ingredient)
    for word_list in _WORD_LISTS:
        details[word_list] = list(details[word_list])
    details["regional"] = {region: list(names) for region, names in ingredient.regional.items()}
    return {"key": ingredient.key, "name": ingredient.name, "details": details}


def stand_in_row(entry: StandIn) -> Row:
    """The row of an own stand-in."""
    return {
        "wanted": entry.wanted,
        "offered": entry.offered,
        "closeness": entry.closeness,
        "ratio": entry.ratio,
        "why": entry.why,
        "scope": list(entry.scope),
    }


def recipe_row(recipe: MadeFrom) -> Row:
    """The row of an own recipe."""
    return {
        "made": recipe.made,
        "inputs": [[each.ingredient, each.amount] for each in recipe.inputs],
        "yields": recipe.yields,
        "how": recipe.how,
    }


def setting_rows(settings: Settings) -> tuple[Row, ...]:
    """One row a setting."""
    values = asdict(settings)
    values["not_there"] = sorted(settings.not_there)
    values["scales"] = list(values["scales"])
    values["pars"] = list(values["pars"])
    values["measures"] = list(values["measures"])
    return tuple({"key": key, "value": value} for key, value in values.items())


def _ingredient(details: Row) -> Ingredient:
    values = dict(details)
    for word_list in _WORD_LISTS:
        values[word_list] = tuple(values[word_list])
    values["regional"] = {region: tuple(names) for region, names in values["regional"].items()}
    return Ingredient(**values)
