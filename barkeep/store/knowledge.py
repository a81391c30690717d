"""What the owner adds to the knowledge, and the settings: between rows and values."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import fields

from sqlalchemy import Connection, select

from barkeep.domain.amounts.units import OwnMeasure
from barkeep.domain.bar.of_kinds import HousePour, ShelfLife
from barkeep.domain.bar.pars import Par
from barkeep.domain.bar.snapshot import Settings
from barkeep.domain.bar.to_buy import ToBuy
from barkeep.domain.ingredients.relations import Input, MadeFrom, StandIn
from barkeep.domain.ingredients.tree import Ingredient
from barkeep.domain.specs.trials import Scale
from barkeep.store.rows import (
    WORDS,
    Kept,
    Mapper,
    Row,
    Unsound,
    kept_records,
    put_fields,
    take_fields,
)
from barkeep.store.schema import own_ingredient, own_recipe, own_stand_in, setting

_INGREDIENT: Mapping[str, Kept] = {
    **dict.fromkeys(("parents", "aliases", "printed", "allergens"), WORDS),
    "regional": Kept(
        lambda named: {region: list(names) for region, names in named.items()},
        lambda found: {region: tuple(names) for region, names in found.items()},
        dict[str, list[str]],
    ),
}
"""How an ingredient lies in its details, where it lies otherwise."""

STAND_IN = Mapper(StandIn, own_stand_in, kept={"scope": WORDS}, apart=("own",))

RECIPE = Mapper(
    MadeFrom,
    own_recipe,
    kept={
        "inputs": Kept(
            lambda inputs: [[each.ingredient, each.amount] for each in inputs],
            lambda found: tuple(Input(key, float(amount)) for key, amount in found),
            list[tuple[str, float]],
        )
    },
    apart=("closeness", "basis", "own", "rest_hours", "minutes"),
)

_SETTINGS: Mapping[str, Kept] = {
    "not_there": Kept(sorted, frozenset, list[str]),
    "scales": kept_records(Scale),
    "pars": kept_records(Par),
    "measures": kept_records(OwnMeasure),
    "house": kept_records(HousePour),
    "keeps": kept_records(ShelfLife),
    "to_buy": kept_records(ToBuy),
}
"""How a setting lies in its row, where it lies otherwise."""


def read_own_ingredients(connection: Connection) -> tuple[Ingredient, ...]:
    """The owner's ingredients, by key."""
    statement = select(own_ingredient.c.details).order_by(own_ingredient.c.key)
    return tuple(map(taken_ingredient, connection.execute(statement).scalars().all()))


def taken_ingredient(details: Row) -> Ingredient:
    """An own ingredient out of its details. Raises `Unsound`."""
    if not {"key", "name"} <= details.keys():
        raise Unsound
    return Ingredient(**take_fields(details, _INGREDIENT, Ingredient))


def read_own_stand_ins(connection: Connection) -> tuple[StandIn, ...]:
    """The owner's stand-ins, by what is wanted."""
    ordered = select(*STAND_IN.columns).order_by(*own_stand_in.primary_key.columns)
    return tuple(STAND_IN.value(row, own=True) for row in connection.execute(ordered).all())


def read_own_recipes(connection: Connection) -> tuple[MadeFrom, ...]:
    """The owner's recipes, by what is made."""
    ordered = select(*RECIPE.columns).order_by(own_recipe.c.made)
    return tuple(RECIPE.value(row, own=True) for row in connection.execute(ordered).all())


def read_settings(connection: Connection) -> Settings:
    """The settings; what was never chosen is as barkeep comes."""
    rows: Row = {row.key: row.value for row in connection.execute(select(setting)).all()}
    return Settings(**taken_settings(rows))


def taken_settings(rows: Row) -> Row:
    """What rows say of the settings, by name; what this barkeep does not know is left out.

    Raises `Unsound`.
    """
    known = {each.name for each in fields(Settings)}
    return take_fields({key: rows[key] for key in rows.keys() & known}, _SETTINGS, Settings)


def ingredient_row(ingredient: Ingredient) -> Row:
    """The row of an own ingredient."""
    details = put_fields(ingredient, _INGREDIENT)
    return {"key": ingredient.key, "name": ingredient.name, "details": details}


def setting_rows(settings: Settings) -> tuple[Row, ...]:
    """One row a setting."""
    return tuple(
        {"key": key, "value": value} for key, value in put_fields(settings, _SETTINGS).items()
    )
