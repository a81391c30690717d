"""`barkeep ingredient`: the kinds of things there are, and the owner's own among them."""

from __future__ import annotations

import argparse
from dataclasses import replace

from barkeep.application.bar import Bar
from barkeep.application.finding import find_ingredient
from barkeep.cli.arguments import Arguments, common_options, whole_number
from barkeep.cli.bar_source import opened_bar
from barkeep.cli.output import print_json, table
from barkeep.documents.knowledge import TYPICAL_SIZES
from barkeep.domain.ingredients.tree import FamilyTree, Ingredient
from barkeep.domain.liquids.ethanol import read_strength
from barkeep.domain.phrases import folded
from barkeep.errors import DuplicateName, InvalidField

OWN = "the owner's own"


def configure(parser: argparse.ArgumentParser) -> None:
    """Its arguments."""
    actions = parser.add_subparsers(metavar="ACTION", required=True, title="actions")
    _configure_add(
        actions.add_parser(
            "add", help="add a kind that barkeep does not know", parents=[common_options()]
        )
    )
    shown = actions.add_parser(
        "show", help="show one with its names and figures", parents=[common_options()]
    )
    shown.add_argument("name", metavar="NAME")
    shown.set_defaults(run=_show)
    listed = actions.add_parser(
        "list", help="list all of them, or those below one kind", parents=[common_options()]
    )
    listed.add_argument("kind", metavar="KIND", nargs="?")
    listed.add_argument("--own", action="store_true", help="only the owner's own")
    listed.set_defaults(run=_list)
    alias = actions.add_parser(
        "alias", help="give one another name it answers to", parents=[common_options()]
    )
    alias.add_argument("name", metavar="NAME")
    alias.add_argument("alias", metavar="ALIAS")
    alias.set_defaults(run=_alias)
    removed = actions.add_parser(
        "remove", help="take one of the owner's own away", parents=[common_options()]
    )
    removed.add_argument("name", metavar="NAME")
    removed.set_defaults(run=_remove)


def _configure_add(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("name", metavar="NAME", help="what it is called")
    parser.add_argument(
        "--kind", action="append", required=True, metavar="KIND", help="what it is a kind of"
    )
    parser.add_argument("--alias", action="append", default=[], help="another name it answers to")
    parser.add_argument("--abv", metavar="V", help="its usual strength: 43 %% or 86 proof")
    parser.add_argument("--sugar", type=float, metavar="G", help="grams of sugar in a litre")
    parser.add_argument("--acid", type=float, metavar="G", help="grams of acid in a litre")
    parser.add_argument("--unit", choices=("ml", "g", "each"), help="what it is kept in")
    parser.add_argument("--keeps", type=whole_number, metavar="DAYS", help="how long it keeps")
    parser.set_defaults(run=_add)


def _add(arguments: Arguments) -> int:
    with opened_bar(arguments) as bar:
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
        return _say(arguments, bar, added, f"Added {_described(added, bar)}.")


def _show(arguments: Arguments) -> int:
    with opened_bar(arguments) as bar:
        tree = bar.snapshot.knowledge.tree
        found = tree[find_ingredient(tree, arguments.name)]
        return _say(arguments, bar, found, "\n".join(_facts(found, bar)))


def _list(arguments: Arguments) -> int:
    with opened_bar(arguments) as bar:
        tree, own = bar.snapshot.knowledge.tree, bar.knowledge.own_ingredients
        keys = set(tree)
        if arguments.kind is not None:
            kind = find_ingredient(tree, arguments.kind)
            keys = {kind, *tree.descendants(kind)}
        shown = sorted((tree[key] for key in keys), key=lambda each: folded(each.name))
        shown = [each for each in shown if each.key in own or not arguments.own]
    if arguments.json:
        print_json({"ingredients": [_json(each, own, tree) for each in shown]})
    else:
        rows = (
            (each.name, ", ".join(map(tree.in_sentence, each.parents)), "yes" * (each.key in own))
            for each in shown
        )
        print(table(("ingredient", "a kind of", "own"), rows))
    return 0


def _alias(arguments: Arguments) -> int:
    with opened_bar(arguments) as bar:
        tree = bar.snapshot.knowledge.tree
        known = tree[find_ingredient(tree, arguments.name)]
        alias = " ".join(arguments.alias.split())
        if not alias:
            raise InvalidField("alias", arguments.alias, "a name has letters")
        if folded(alias) in map(folded, known.all_names):
            raise DuplicateName("ingredient", alias)
        named = replace(known, aliases=(*known.aliases, alias))
        changed = bar.knowledge.add_ingredient(named).value
        return _say(arguments, bar, changed, f"{changed.name} answers to {alias} now.")


def _remove(arguments: Arguments) -> int:
    with opened_bar(arguments) as bar:
        key = find_ingredient(bar.snapshot.knowledge.tree, arguments.name)
        removed = bar.knowledge.remove_ingredient(key).value
        still = key in bar.snapshot.knowledge.tree
        said = f"Took {removed.name} away"
        if still:
            said = f"What barkeep itself knows of {removed.name} counts again"
        if arguments.json:
            print_json({"removed": removed.key, "known_still": still})
        else:
            print(f"{said}.")
    return 0


def _say(arguments: Arguments, bar: Bar, ingredient: Ingredient, words: str) -> int:
    if arguments.json:
        own, tree = bar.knowledge.own_ingredients, bar.snapshot.knowledge.tree
        print_json({"ingredients": [_json(ingredient, own, tree)]})
    else:
        print(words)
    return 0


def _json(ingredient: Ingredient, own: frozenset[str], tree: FamilyTree) -> dict[str, object]:
    return {
        "key": ingredient.key,
        "name": ingredient.name,
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
    return f"{ingredient.name}, a kind of {kinds}" if kinds else ingredient.name


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
