"""Small made-up bars for tests: random families, stand-ins, recipes, bottles and specs."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from datetime import date
from random import Random

from barkeep.domain.bar.knowledge import Knowledge
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.bottle import Bottle, Level, Product
from barkeep.domain.ingredients.relations import Input, MadeFrom, NoStandIn, StandIn
from barkeep.domain.ingredients.tree import Confusable, FamilyTree, Ingredient
from barkeep.domain.pouring.memory import Memory
from barkeep.domain.pouring.sourcing import Within
from barkeep.domain.pouring.supply import purchase
from barkeep.domain.pouring.verdicts import verdicts
from barkeep.domain.specs.spec import Line, Spec

TODAY = date(2026, 11, 21)


def bottle(number: int, ingredient: str, amount: float, size: float | None = None) -> Bottle:
    """One open bottle holding `amount`."""
    product = Product(f"{ingredient} {number}", "Hollow Lamp", ingredient, size or 700.0, id=number)
    return Bottle(number, product, Level(amount, "open"), number)


def snapshot(
    knowledge: Knowledge, bottles: Iterable[Bottle] = (), specs: Iterable[Spec] = ()
) -> Snapshot:
    """A picture of a made-up bar."""
    bottles = tuple(bottles)
    products = tuple(each.product for each in bottles)
    return Snapshot(knowledge, TODAY, products, bottles, tuple(specs))


def having(bar: Snapshot, ingredient: str) -> Snapshot:
    """The bar after really buying one ordinary bottle."""
    stock = purchase(ingredient, bar.knowledge.tree)
    number = 1 + max((each.id for each in bar.bottles), default=0)
    bought = bottle(number, ingredient, stock.amount, stock.amount)
    return replace(bar, products=(*bar.products, bought.product), bottles=(*bar.bottles, bought))


def makeable(bar: Snapshot, within: Within = "close", memory: Memory | None = None) -> set[str]:
    """The names of the drinks that can be made tonight, with nothing else worked out of them."""
    found = verdicts(bar, within, memory=memory)
    each = zip(bar.all_specs, found.of, strict=True)
    return {spec.name for spec, verdict in each if verdict in ("ready", "stand_in")}


def random_knowledge(chance: Random, size: int = 12) -> Knowledge:
    """A family tree with shared parents, stand-ins in circles, recipes and false friends."""
    keys = [f"k{number}" for number in range(size)]
    ingredients = {
        key: Ingredient(
            key,
            key.upper(),
            parents=tuple(
                chance.sample(keys[:number], min(number, chance.choice([0, 0, 1, 1, 2])))
            ),
            abv_percent=chance.choice([None, 0.0, 20.0, 40.0, 60.0]),
            always_there=chance.random() < 0.05,
            family=chance.random() < 0.1,
            typical_size=chance.choice([100.0, 700.0]),
        )
        for number, key in enumerate(keys)
    }
    tree = FamilyTree(ingredients, _false_friends(chance, ingredients, keys))
    pairs = {(chance.choice(keys), chance.choice(keys)) for _ in range(size)}
    none = {chance.choice(keys)}
    stand_ins = tuple(
        StandIn(
            wanted,
            offered,
            chance.choice([0.95, 0.9, 0.8, 0.7]),
            chance.choice([0.5, 1.0, 1.5]),
            "it is near",
            chance.choice([(), (), (), ("shaken",), ("accent",), ("never_base",)]),
        )
        for wanted, offered in sorted(pairs)
        if wanted != offered and wanted not in none
    )
    recipes = tuple(
        MadeFrom(
            made,
            tuple(Input(key, chance.choice([10.0, 100.0])) for key in chance.sample(keys, 2)),
            100.0,
            "Mix.",
            chance.choice([1.0, 0.9]),
        )
        for made in chance.sample(keys, 3)
    )
    return Knowledge(tree, stand_ins, tuple(NoStandIn(key, "it is alone") for key in none), recipes)


def _false_friends(
    chance: Random, ingredients: dict[str, Ingredient], keys: list[str]
) -> tuple[Confusable, ...]:
    tree = FamilyTree(ingredients)
    first, second = chance.sample(keys, 2)
    related = tree.is_a(first, second) or tree.is_a(second, first)
    return () if related else (Confusable(first, second, "they only look alike"),)


def random_spec(chance: Random, knowledge: Knowledge, name: str) -> Spec:
    """One to four lines, some optional, some asking for a least strength, some repeated."""
    keys = list(knowledge.tree)
    lines = tuple(
        Line(
            "as written",
            chance.choice(keys),
            quantity=chance.choice([None, 5.0, 30.0, 60.0]),
            optional=chance.random() < 0.1,
            garnish=chance.random() < 0.1,
            min_abv_percent=chance.choice([None] * 9 + [30.0, 50.0]),
        )
        for _ in range(chance.randint(1, 4))
    )
    return Spec(name, lines, technique=chance.choice(["shaken", "stirred", "built"]))


def random_bar(chance: Random, specs: int = 8) -> Snapshot:
    """A whole small bar, its bottles often nearly empty so that lines compete for them."""
    knowledge = random_knowledge(chance)
    owned = chance.sample(list(knowledge.tree), chance.randint(1, 6))
    levels = [20.0, 40.0, 65.0, 100.0, 700.0]
    bottles = [bottle(number, key, chance.choice(levels)) for number, key in enumerate(owned, 1)]
    drinks = [random_spec(chance, knowledge, f"Drink {number}") for number in range(specs)]
    return snapshot(knowledge, bottles, drinks)


def without_id(spec: Spec) -> Spec:
    """The spec as text carries it: no identity, no date."""
    return replace(spec, id=None, added=None)
