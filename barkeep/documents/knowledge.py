"""The knowledge barkeep brings along, out of its TOML texts. Pure; each fault is located."""

from __future__ import annotations

import re
from collections.abc import Iterable
from typing import cast, get_args

from barkeep.domain.amounts.units import Unit
from barkeep.domain.ingredients.relations import Input, MadeFrom, NoStandIn, StandIn
from barkeep.domain.ingredients.toml_fields import Fields, Table, parse, refuse_other_tables, tables
from barkeep.domain.ingredients.tree import Confusable, FamilyTree, Ingredient
from barkeep.domain.ingredients.uses import SCOPES, Scope
from barkeep.errors import KnowledgeError

_KEY = re.compile(r"[a-z0-9]+(-[a-z0-9]+)*")


TYPICAL_SIZES = {"ml": 700.0, "g": 1000.0, "each": 1.0}
"""What one purchase holds where nothing is said (*common practice*)."""


MOST_REST_HOURS = 14 * 24.0
"""What rests longer is not made for a shoot."""


def read_tree(
    ingredients: str,
    confusables: str,
    ingredients_file: str = "ingredients.toml",
    confusables_file: str = "confusables.toml",
) -> FamilyTree:
    """The family tree with its confusables. Raises `KnowledgeError` or `CyclicFamily`."""
    known = read_ingredients(ingredients, ingredients_file)
    alone = FamilyTree({each.key: each for each in known}, (), ingredients_file)
    pairs = read_confusables(confusables, alone, confusables_file)
    return FamilyTree(alone.ingredients, pairs, ingredients_file)


def read_ingredients(text: str, file: str = "ingredients.toml") -> tuple[Ingredient, ...]:
    """One ingredient a table, its key the table's name."""
    found = []
    for key, table in parse(text, file).items():
        if not isinstance(table, dict):
            raise KnowledgeError(file, key, "write each ingredient as a table, [its-key]")
        if not _KEY.fullmatch(key):
            expected = "a key is small letters and digits with hyphens between"
            raise KnowledgeError(file, key, expected)
        found.append(_ingredient(key, table, file))
    return tuple(found)


def read_confusables(
    text: str, tree: FamilyTree, file: str = "confusables.toml"
) -> tuple[Confusable, ...]:
    """Pairs that are mistaken for each other, each pair once."""
    document = parse(text, file)
    refuse_other_tables(document, ("confusable",), file)
    found = []
    seen: set[frozenset[str]] = set()
    for number, table in enumerate(tables(document, "confusable", file), 1):
        fields = Fields(table, file, f"confusable {number}")
        pair = tuple(fields.known(key, tree) for key in fields.words("pair"))
        if len(pair) != 2:
            fields.refuse("“pair” names two ingredients")
        fields.key = f"confusable {pair[0]}, {pair[1]}"
        if frozenset(pair) in seen:
            fields.refuse("the pair is there twice")
        if tree.is_a(*pair) or tree.is_a(pair[1], pair[0]):
            fields.refuse("one of them is the other by descent")
        seen.add(frozenset(pair))
        found.append(Confusable(pair[0], pair[1], fields.text("why")))
        fields.finish()
    return tuple(found)


def read_stand_ins(
    text: str, tree: FamilyTree, file: str = "stand_ins.toml"
) -> tuple[tuple[StandIn, ...], tuple[NoStandIn, ...]]:
    """What stands in for what, and what nothing stands in for."""
    document = parse(text, file)
    refuse_other_tables(document, ("stand_in", "nothing"), file)
    offers = [_stand_in(each, tree, file) for each in tables(document, "stand_in", file)]
    nothing = [_nothing(each, tree, file) for each in tables(document, "nothing", file)]
    pairs = (f"stand-in {each.offered} for {each.wanted}" for each in offers)
    _refuse_twice(pairs, file)
    _refuse_twice((f"nothing for {each.wanted}" for each in nothing), file)
    wanted = {each.wanted for each in offers}
    for each in nothing:
        if each.wanted in wanted:
            reason = "nothing stands in for it, yet a stand-in is given too"
            raise KnowledgeError(file, each.wanted, reason)
    return tuple(offers), tuple(nothing)


def read_made_from(
    text: str, tree: FamilyTree, file: str = "made_from.toml"
) -> tuple[MadeFrom, ...]:
    """What is made from what, with its yield."""
    document = parse(text, file)
    refuse_other_tables(document, ("made",), file)
    found = [_made(each, tree, file) for each in tables(document, "made", file)]
    ways = (
        f"made {each.made} from {', '.join(sorted(one.ingredient for one in each.inputs))}"
        for each in found
    )
    _refuse_twice(ways, file)
    return tuple(found)


def _ingredient(key: str, table: Table, file: str) -> Ingredient:
    fields = Fields(table, file, key)
    unit = cast(Unit, fields.choice("unit", get_args(Unit), "ml"))
    size = fields.number_or_none("typical_size", above=0)
    ingredient = Ingredient(
        key=key,
        name=fields.text("name"),
        parents=fields.words("parents"),
        aliases=fields.words("aliases"),
        regional=_regional(fields),
        printed=fields.words("printed"),
        family=fields.flag("family"),
        proper=fields.flag("proper"),
        unit=unit,
        abv_percent=fields.number_or_none("abv_percent", most=100.0),
        sugar_g_per_l=fields.number_or_none("sugar_g_per_l"),
        acid_g_per_l=fields.number_or_none("acid_g_per_l"),
        shelf_life_days=fields.days_or_none("shelf_life_days"),
        allergens=fields.words("allergens"),
        always_there=fields.flag("always_there"),
        typical_size=TYPICAL_SIZES[unit] if size is None else size,
        basis=fields.text("basis", ""),
    )
    fields.finish()
    return ingredient


def _regional(fields: Fields) -> dict[str, tuple[str, ...]]:
    regions = Fields(fields.table("regional"), fields.file, f"{fields.key}.regional")
    return {region: regions.words(region) for region in regions.names()}


def _stand_in(table: Table, tree: FamilyTree, file: str) -> StandIn:
    fields = Fields(table, file, _named("stand-in", table, "offered", "wanted"))
    entry = StandIn(
        wanted=fields.ingredient("wanted", tree),
        offered=fields.ingredient("offered", tree),
        closeness=fields.number("closeness", above=0, most=1.0),
        ratio=fields.number("ratio", above=0),
        why=fields.text("why"),
        scope=_scope(fields),
    )
    fields.finish()
    if entry.wanted == entry.offered:
        fields.refuse("nothing stands in for itself")
    why_not = tree.mistaken(entry.wanted, entry.offered)
    if why_not is not None:
        fields.refuse(f"the two are confusable: {why_not}")
    return entry


def _scope(fields: Fields) -> tuple[Scope, ...]:
    words = fields.words("scope")
    for word in words:
        if word not in SCOPES:
            fields.refuse(f"“scope” has “{word}”; it must be one of {', '.join(SCOPES)}")
    return cast(tuple[Scope, ...], words)


def _nothing(table: Table, tree: FamilyTree, file: str) -> NoStandIn:
    fields = Fields(table, file, _named("nothing", table, "wanted"))
    entry = NoStandIn(fields.ingredient("wanted", tree), fields.text("why"))
    fields.finish()
    return entry


def _made(table: Table, tree: FamilyTree, file: str) -> MadeFrom:
    fields = Fields(table, file, _named("made", table, "made"))
    inputs = Fields(fields.table("inputs"), file, f"{fields.key}, inputs")
    closeness = fields.number_or_none("closeness", above=0, most=1.0)
    entry = MadeFrom(
        made=fields.ingredient("made", tree),
        inputs=tuple(
            Input(inputs.known(key, tree), inputs.number(key, above=0)) for key in inputs.names()
        ),
        yields=fields.number("yields", above=0),
        how=fields.text("how"),
        closeness=1.0 if closeness is None else closeness,
        basis=fields.text("basis", ""),
        rest_hours=fields.number_or_none("rest_hours", most=MOST_REST_HOURS) or 0.0,
    )
    fields.finish()
    if not entry.inputs:
        fields.refuse("it is made from nothing; “inputs” names what it takes")
    if entry.made in (each.ingredient for each in entry.inputs):
        fields.refuse("it is made from itself")
    return entry


def _named(kind: str, table: Table, *names: str) -> str:
    return " ".join([kind, " for ".join(str(table.get(name, "?")) for name in names)])


def _refuse_twice(keys: Iterable[str], file: str) -> None:
    seen: set[str] = set()
    for key in keys:
        if key in seen:
            raise KnowledgeError(file, key, "it is there twice")
        seen.add(key)
