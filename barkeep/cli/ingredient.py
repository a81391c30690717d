"""`barkeep ingredient`: the kinds of things there are, and the owner's own among them."""

from __future__ import annotations

from dataclasses import replace

from barkeep.application.bar import Bar
from barkeep.application.finding import find_ingredient
from barkeep.cli.arguments import Arguments, argument, command, flag, whole_number
from barkeep.cli.bar_source import in_bar
from barkeep.cli.output import Answer, table
from barkeep.documents.knowledge import TYPICAL_SIZES
from barkeep.domain.ingredients.tree import FamilyTree, Ingredient
from barkeep.domain.liquids.ethanol import read_strength
from barkeep.domain.phrases import folded
from barkeep.errors import DuplicateName, InvalidField

OWN = "the owner's own"


NAME = argument("name", metavar="NAME")


@command(
    argument("name", metavar="NAME", help="what it is called"),
    argument("--kind", action="append", required=True, metavar="KIND", help="what it is a kind of"),
    argument("--alias", action="append", default=[], help="another name it answers to"),
    argument("--abv", metavar="V", help="its usual strength: 43 %% or 86 proof"),
    argument("--sugar", type=float, metavar="G", help="grams of sugar in a litre"),
    argument("--acid", type=float, metavar="G", help="grams of acid in a litre"),
    argument("--unit", choices=("ml", "g", "each"), help="what it is kept in"),
    argument("--keeps", type=whole_number, metavar="DAYS", help="how long it keeps"),
)
@in_bar
def add(arguments: Arguments, bar: Bar) -> Answer:
    """Add one of the owner's own."""
    tree = bar.snapshot.knowledge.tree
    name = " ".join(arguments.name.split())
    key = "-".join(folded(name).split())
    if key in tree or folded(name) in tree.by_name:
        raise DuplicateName("ingredient", name)
    kinds = tuple(find_ingredient(tree, each) for each in arguments.kind)
    unit = arguments.unit or tree[kinds[0]].unit
    strength = None if arguments.abv is None else read_strength(arguments.abv, "--abv")
    added = bar.knowledge.add_ingredient(
        Ingredient(
            key,
            name,
            kinds,
            tuple(arguments.alias),
            unit=unit,
            abv_percent=strength,
            sugar_g_per_l=arguments.sugar,
            acid_g_per_l=arguments.acid,
            shelf_life_days=arguments.keeps,
            typical_size=TYPICAL_SIZES[unit],
            basis=OWN,
        )
    ).value
    return _answer(added, bar, f"Added {_described(added, bar)}.")


@command(NAME)
@in_bar
def show(arguments: Arguments, bar: Bar) -> Answer:
    """One ingredient."""
    tree = bar.snapshot.knowledge.tree
    found = tree[find_ingredient(tree, arguments.name)]
    return _answer(found, bar, "\n".join(_facts(found, bar)))


@command(argument("kind", metavar="KIND", nargs="?"), flag("--own", "only the owner's own"))
@in_bar
def listed(arguments: Arguments, bar: Bar) -> Answer:
    """Ingredients by name."""
    tree, own = bar.snapshot.knowledge.tree, bar.knowledge.own_ingredients
    keys = set(tree)
    if arguments.kind is not None:
        kind = find_ingredient(tree, arguments.kind)
        keys = {kind, *tree.descendants(kind)}
    shown = sorted((tree[key] for key in keys), key=lambda each: folded(tree.name(each.key)))
    shown = [each for each in shown if each.key in own or not arguments.own]
    rows = (
        (
            tree.name(each.key),
            ", ".join(map(tree.in_sentence, each.parents)),
            "yes" * (each.key in own),
        )
        for each in shown
    )
    return Answer(
        lambda: {"ingredients": [_json(each, own, tree) for each in shown]},
        table(("ingredient", "a kind of", "own"), rows),
    )


@command(NAME, argument("alias", metavar="ALIAS"))
@in_bar
def name_too(arguments: Arguments, bar: Bar) -> Answer:
    """Give one another name."""
    tree = bar.snapshot.knowledge.tree
    known = tree[find_ingredient(tree, arguments.name)]
    alias = " ".join(arguments.alias.split())
    if not alias:
        raise InvalidField("alias", arguments.alias, "a name has letters")
    if folded(alias) in map(folded, known.all_names):
        raise DuplicateName("ingredient", alias)
    named = replace(known, aliases=(*known.aliases, alias))
    changed = bar.knowledge.add_ingredient(named).value
    return _answer(changed, bar, f"{changed.name} answers to {alias} now.")


@command(NAME)
@in_bar
def remove(arguments: Arguments, bar: Bar) -> Answer:
    """Take one of the owner's own back."""
    key = find_ingredient(bar.snapshot.knowledge.tree, arguments.name)
    removed = bar.knowledge.remove_ingredient(key).value
    still = key in bar.snapshot.knowledge.tree
    said = f"Took {removed.name} away."
    if still:
        said = f"What barkeep itself knows of {removed.name} counts again."
    return Answer(lambda: {"removed": removed.key, "known_still": still}, said)


def _answer(ingredient: Ingredient, bar: Bar, words: str) -> Answer:
    own, tree = bar.knowledge.own_ingredients, bar.snapshot.knowledge.tree
    return Answer(lambda: {"ingredients": [_json(ingredient, own, tree)]}, words)


def _json(ingredient: Ingredient, own: frozenset[str], tree: FamilyTree) -> dict[str, object]:
    return {
        "key": ingredient.key,
        "name": tree.name(ingredient.key),
        "kinds": [tree.name(parent) for parent in ingredient.parents],
        "own": ingredient.key in own,
        "aliases": list(ingredient.aliases),
        "unit": ingredient.unit,
        "abv_percent": ingredient.abv_percent,
        "sugar_g_per_l": ingredient.sugar_g_per_l,
        "acid_g_per_l": ingredient.acid_g_per_l,
        "keeps_days": ingredient.shelf_life_days,
    }


def _described(ingredient: Ingredient, bar: Bar) -> str:
    tree = bar.snapshot.knowledge.tree
    kinds = " and ".join(map(tree.in_sentence, ingredient.parents))
    name = tree.name(ingredient.key)
    return f"{name}, a kind of {kinds}" if kinds else name


def _facts(ingredient: Ingredient, bar: Bar) -> list[str]:
    facts = [_described(ingredient, bar)]
    if len(ingredient.all_names) > 1:
        facts.append(f"also called {', '.join(ingredient.all_names[1:])}")
    figures = (
        (ingredient.abv_percent, "% vol"),
        (ingredient.sugar_g_per_l, "g/l of sugar"),
        (ingredient.acid_g_per_l, "g/l of acid"),
        (ingredient.shelf_life_days, "days it keeps"),
    )
    facts += [f"{value:g} {what}" for value, what in figures if value is not None]
    facts.append(f"kept in {'pieces' if ingredient.unit == 'each' else ingredient.unit}")
    if ingredient.key in bar.knowledge.own_ingredients:
        facts.append("your own")
    return facts
