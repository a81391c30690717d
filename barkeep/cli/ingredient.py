"""`barkeep ingredient`: the kinds of things there are, and the owner's own among them."""

from __future__ import annotations

import re
from collections.abc import Callable, Collection, Iterator, Mapping, Sequence
from dataclasses import replace
from typing import get_args

from barkeep.application.bar import Bar
from barkeep.application.finding import find_ingredient
from barkeep.application.own_ingredients import (
    HOW_STAND_INS,
    YoursAlready,
    allergen_word,
    allergen_words,
    in_unit,
    new_ingredient,
    read_stand_in,
)
from barkeep.application.owner_knowledge import SaidOf
from barkeep.cli.arguments import Arguments, argument, command, flag, many
from barkeep.cli.bar_source import in_bar
from barkeep.cli.output import Answer, table
from barkeep.domain.amounts.units import Unit
from barkeep.domain.cautions.allergens import allergens_of
from barkeep.domain.ingredients.own import figures_in_words
from barkeep.domain.ingredients.relations import StandIn
from barkeep.domain.ingredients.tree import FamilyTree, Ingredient
from barkeep.domain.liquids.ethanol import read_strength
from barkeep.domain.phrases import as_sentence, folded
from barkeep.domain.stand_ins.neighbourhood import (
    HEADINGS,
    RELATIONS,
    Neighbour,
    Neighbourhood,
    neighbourhood,
)
from barkeep.errors import InvalidField, UnknownName, spoken_list

NAME = argument("name", metavar="NAME")
_WHOSE = {"own": "yes", "changed": "changed"}
NONE = "none"
"""Takes back what was said."""
_FIGURES = (
    argument("--abv", metavar="V", help="its usual strength: 43 %% or 86 proof"),
    argument("--sugar", metavar="G", help="grams of sugar in a litre"),
    argument("--acid", metavar="G", help="grams of acid in a litre"),
    argument("--unit", choices=get_args(Unit), help="what it is kept in"),
    argument("--keeps", metavar="DAYS", help="how long it keeps"),
)
_ALLERGENS = many("--allergen", "WORD", f"what it carries: {spoken_list(allergen_words())}")
_STAND_INS = (
    many("--stand-in", "KIND[=CLOSENESS[,RATIO[,WHY]]]", "what may be poured instead of it"),
    many("--stands-in-for", "KIND[=CLOSENESS[,RATIO[,WHY]]]", "what it may be poured instead of"),
)


@command(
    argument("name", metavar="NAME", help="what it is called"),
    argument("--kind", action="append", required=True, metavar="KIND", help="what it is a kind of"),
    many("--alias", "NAME", "another name it answers to"),
    *_FIGURES,
    _ALLERGENS,
    *_STAND_INS,
    description="Add an ingredient of your own. Where only some of strength, sugar and acid are "
    f"given, the others are as its kind usually has. {as_sentence(HOW_STAND_INS)}",
)
@in_bar
def add(arguments: Arguments, bar: Bar) -> Answer:
    """Add one of the owner's own."""
    tree = bar.snapshot.knowledge.tree
    there = tree.by_name.get(folded(arguments.name))
    if there is not None and bar.knowledge.standing(there) == "own":
        raise YoursAlready(tree.name(there), arguments.name)
    new = new_ingredient(arguments.name, arguments.kind, tree, arguments.unit)
    seen = SaidOf(None, ())  # a new one is to take the place of none
    written = _as_written(replace(new, aliases=tuple(arguments.alias)), arguments)
    added = bar.knowledge.add_ingredient(written, _stand_ins(arguments, new.key), seen).value
    return _answer(added, bar, f"Added {_told(added, bar)}.")


@command(
    NAME,
    argument("--name", dest="renamed", metavar="NAME", help="what it is called from now on"),
    many("--kind", "KIND", "what it is a kind of"),
    many("--alias", "NAME", "another name it answers to"),
    *_FIGURES,
    _ALLERGENS,
    *_STAND_INS,
    description="Change an ingredient of your own. What is given takes the place of what was "
    f"said of that before; “{NONE}” takes it back; the rest stays. {as_sentence(HOW_STAND_INS)}",
)
@in_bar
def change(arguments: Arguments, bar: Bar) -> Answer:
    """Change one of the owner's own."""
    tree = bar.snapshot.knowledge.tree
    before = _own(arguments.name, bar)
    seen = bar.knowledge.said_of(before.key)
    changed = before
    if arguments.renamed is not None:
        changed = replace(changed, name=arguments.renamed)
    if arguments.kind:
        parents = tuple(find_ingredient(tree, each) for each in arguments.kind)
        changed = replace(changed, parents=parents)
    if arguments.alias:
        changed = replace(changed, aliases=_all_but_none(arguments.alias))
    if arguments.unit is not None:
        changed = in_unit(changed, arguments.unit, tree)
    changed = _as_written(changed, arguments)
    said = _changed_stand_ins(arguments, bar, before.key)
    done = bar.knowledge.add_ingredient(changed, said, seen)
    verb = "Changed" if done.changes else "Nothing to change in"
    return _answer(done.value, bar, f"{verb} {_told(done.value, bar)}.")


@command(NAME, flag("--neighbours", "with its family, what stands in, and what it is made of"))
@in_bar
def show(arguments: Arguments, bar: Bar) -> Answer:
    """One ingredient."""
    tree = bar.snapshot.knowledge.tree
    found = bar.knowledge.as_said(find_ingredient(tree, arguments.name))
    if not arguments.neighbours:
        return _answer(found, bar, "\n".join(_facts(found, bar)))
    snapshot, own = bar.snapshot, bar.knowledge.standings
    around = neighbourhood(snapshot.knowledge, snapshot.owned, found.key)
    return Answer(
        lambda: {
            "ingredients": [_json(found, bar, own)],
            "neighbours": [_neighbour_json(each) for each in around.neighbours],
            "none_because": around.none_because or None,
        },
        [*_facts(found, bar), "", *_around(around)],
    )


def _neighbour_json(near: Neighbour) -> dict[str, object]:
    return {
        "ingredient": near.name,
        "relation": near.relation,
        "closeness": near.closeness,
        "why": near.why,
        "there": near.there,
        "own": near.own,
    }


def _around(around: Neighbourhood) -> Iterator[str]:
    for relation in RELATIONS:
        if near := around.by(relation):
            yield HEADINGS[relation]
            yield from (f"  {each.in_words}" for each in near)
    if around.none_because:
        yield f"Nothing stands in for it: {around.none_because}."


@command(argument("kind", metavar="KIND", nargs="?"), flag("--own", "only the owner's own"))
@in_bar
def listed(arguments: Arguments, bar: Bar) -> Answer:
    """Ingredients by name."""
    tree, own = bar.snapshot.knowledge.tree, bar.knowledge.standings
    keys = set(tree)
    if arguments.kind is not None:
        kind = find_ingredient(tree, arguments.kind)
        keys = set(tree.at_or_below(kind))
    said = bar.knowledge.said
    found = (said.get(key) or tree[key] for key in keys)
    shown = sorted(found, key=lambda each: folded(tree.name(each.key)))
    shown = [each for each in shown if each.key in own or not arguments.own]
    rows = (
        (
            tree.name(each.key),
            ", ".join(map(tree.in_sentence, each.parents)),
            _WHOSE.get(own.get(each.key, ""), ""),
        )
        for each in shown
    )
    return Answer(
        lambda: {"ingredients": [_json(each, bar, own) for each in shown]},
        table(("ingredient", "a kind of", "own"), rows),
    )


@command(NAME, argument("alias", metavar="ALIAS"))
@in_bar
def name_too(arguments: Arguments, bar: Bar) -> Answer:
    """Give one another name."""
    tree = bar.snapshot.knowledge.tree
    key = find_ingredient(tree, arguments.name)
    changed = bar.knowledge.add_name(key, arguments.alias).value
    return _answer(changed, bar, f"{changed.name} answers to {changed.aliases[-1]} now.")


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


def _own(name: str, bar: Bar) -> Ingredient:
    """The owner's ingredient of this name. Raises `UnknownName`."""
    key = find_ingredient(bar.snapshot.knowledge.tree, name)
    if bar.knowledge.standing(key) == "known":
        raise UnknownName("ingredient of yours", bar.snapshot.knowledge.tree.name(key))
    return bar.knowledge.as_said(key)


def _as_written(ingredient: Ingredient, arguments: Arguments) -> Ingredient:
    """The ingredient with the figures and allergens that are written. Raises `InvalidField`."""
    read: Mapping[str, tuple[str, str | None, Callable[[str], float]]] = {
        "abv_percent": ("--abv", arguments.abv, lambda text: read_strength(text, "--abv")),
        "sugar_g_per_l": ("--sugar", arguments.sugar, lambda text: _grams("--sugar", text)),
        "acid_g_per_l": ("--acid", arguments.acid, lambda text: _grams("--acid", text)),
        "shelf_life_days": ("--keeps", arguments.keeps, _days),
    }
    said: dict[str, object] = {
        field: None if text == NONE else reader(text)
        for field, (_option, text, reader) in read.items()
        if text is not None
    }
    if arguments.allergen:
        said["allergens"] = tuple(map(allergen_word, _all_but_none(arguments.allergen)))
    return replace(ingredient, **said)  # type: ignore[arg-type]


def _all_but_none(written: Sequence[str]) -> tuple[str, ...]:
    return tuple(each for each in written if each != NONE)


def _grams(option: str, text: str) -> float:
    plain = re.sub(r"\s*g\s*(?:/\s*l)?$", "", text.strip()).replace(",", ".")
    try:
        return float(plain)
    except ValueError:
        raise InvalidField(option, text, "it is grams in a litre, such as 240") from None


def _days(text: str) -> int:
    found = re.fullmatch(r"\s*([0-9]{1,6})\s*(?:d|days?)?\s*", text)
    if found is None:
        raise InvalidField("--keeps", text, "it is a whole number of days, such as 30")
    return int(found[1])


def _stand_ins(arguments: Arguments, key: str) -> tuple[StandIn, ...]:
    """What is written of stand-ins for an ingredient, and of what it stands in for."""
    instead = (read_stand_in(each, wanted=key) for each in _all_but_none(arguments.stand_in))
    for_others = (
        read_stand_in(each, offered=key) for each in _all_but_none(arguments.stands_in_for)
    )
    return (*instead, *for_others)


def _changed_stand_ins(arguments: Arguments, bar: Bar, key: str) -> tuple[StandIn, ...] | None:
    """What is said of stand-ins after a change; each direction stays where nothing is written."""
    if not (arguments.stand_in or arguments.stands_in_for):
        return None
    kept = [
        each
        for each in bar.knowledge.own_stand_ins_of(key)
        if not (arguments.stand_in if each.wanted == key else arguments.stands_in_for)
    ]
    return (*kept, *_stand_ins(arguments, key))


def _answer(ingredient: Ingredient, bar: Bar, words: str) -> Answer:
    own = bar.knowledge.standings
    return Answer(lambda: {"ingredients": [_json(ingredient, bar, own)]}, words)


def _json(ingredient: Ingredient, bar: Bar, own: Collection[str]) -> dict[str, object]:
    tree = bar.snapshot.knowledge.tree
    said = bar.knowledge.own_stand_ins_of(ingredient.key)
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
        "allergens": [each.word for each in allergens_of([ingredient.key], tree)],
        "stand_ins": [
            _stand_in_json(each, each.offered, tree)
            for each in said
            if each.wanted == ingredient.key
        ],
        "stands_in_for": [
            _stand_in_json(each, each.wanted, tree)
            for each in said
            if each.offered == ingredient.key
        ],
    }


def _stand_in_json(entry: StandIn, other: str, tree: FamilyTree) -> dict[str, object]:
    return {
        "ingredient": tree.name(other),
        "closeness": entry.closeness,
        "ratio": entry.ratio,
        "why": entry.why,
        "scope": list(entry.scope),
    }


def _described(ingredient: Ingredient, bar: Bar) -> str:
    tree = bar.snapshot.knowledge.tree
    kinds = " and ".join(map(tree.in_sentence, ingredient.parents))
    name = tree.name(ingredient.key)
    return f"{name}, a kind of {kinds}" if kinds else name


def _told(ingredient: Ingredient, bar: Bar) -> str:
    """What it is, with the figures as they were understood and those it has as its kind."""
    return "; ".join((_described(ingredient, bar), *_figures(ingredient, bar)))


def _figures(ingredient: Ingredient, bar: Bar) -> Iterator[str]:
    said = figures_in_words(ingredient)
    if said:
        yield spoken_list(said, "and")
    taken = figures_in_words(bar.snapshot.knowledge.tree[ingredient.key], ingredient)
    if taken:
        yield f"as its kind {spoken_list(taken, 'and')}"


def _facts(ingredient: Ingredient, bar: Bar) -> Iterator[str]:
    tree = bar.snapshot.knowledge.tree
    yield _described(ingredient, bar)
    if len(ingredient.offered_names) > 1:
        yield f"also called {', '.join(ingredient.offered_names[1:])}"
    yield from _figures(ingredient, bar)
    if ingredient.shelf_life_days is not None:
        yield f"{ingredient.shelf_life_days} days it keeps"
    yield f"kept in {'pieces' if ingredient.unit == 'each' else ingredient.unit}"
    carried = [each.word for each in allergens_of([ingredient.key], tree)]
    if carried:
        yield f"carries {spoken_list(carried, 'and')} (allergen)"
    yield from _told_stand_ins(ingredient.key, bar)
    yield from {"own": ("your own",), "changed": ("changed by you",)}.get(
        bar.knowledge.standing(ingredient.key), ()
    )


def _told_stand_ins(key: str, bar: Bar) -> Iterator[str]:
    tree = bar.snapshot.knowledge.tree
    for each in bar.knowledge.own_stand_ins_of(key):
        ratio = "" if each.ratio == 1.0 else f", {each.ratio:g} times as much"
        how = f"closeness {each.closeness:g}{ratio}: {each.why}"
        if each.wanted == key:
            yield f"instead of it {tree.in_sentence(each.offered)}, {how}"
        else:
            yield f"stands in for {tree.in_sentence(each.wanted)}, {how}"
