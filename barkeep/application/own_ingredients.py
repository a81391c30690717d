"""What is asked of an owner's own ingredient before it is written, changed or taken away."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from dataclasses import replace
from math import isfinite
from typing import get_args

from barkeep.application.finding import find_ingredient
from barkeep.application.shelving import StillInUse, refuse_beyond, refuse_figures
from barkeep.documents.knowledge import TYPICAL_SIZES
from barkeep.domain.amounts.units import BarUnits, Unit
from barkeep.domain.bar.of_kinds import LONGEST_LIFE_DAYS
from barkeep.domain.bar.shoots import Shoot
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.cautions.allergens import shipped_allergens
from barkeep.domain.ingredients.names import named
from barkeep.domain.ingredients.own import (
    OWN,
    free_key,
    is_written_as_a_name,
)
from barkeep.domain.ingredients.relations import StandIn
from barkeep.domain.ingredients.tree import FamilyTree, Ingredient, with_own
from barkeep.domain.phrases import folded
from barkeep.domain.spec_text.own_names import why_unreadable
from barkeep.errors import (
    CyclicFamily,
    DuplicateName,
    InvalidField,
    KnowledgeError,
    UserError,
    spoken_list,
)
from barkeep.translation import tr, tr_noop

MOST_NAMED = 5
"""Names of one sort said in a sentence; the others are counted."""
STAND_IN_CLOSENESS, STAND_IN_RATIO = 0.8, 1.0
STAND_IN_WHY = "the owner says so"
"""What is taken of an own stand-in that says no more than what stands in."""
HOW_STAND_INS = (
    "a stand-in is written as “honey syrup=0.7,1.5,why”: how close it is, from 0 to 1, how much of "
    "it replaces one part, and the reason; all but the name may be left out"
)
_KEY = re.compile(r"[a-z0-9]+(-[a-z0-9]+)*")


class UnderstoodAlready(UserError):
    """A new name that is understood as something else without being taught."""

    name: str
    as_: str
    says = "“{name}” is understood as {as_} already."


class YoursAlready(UserError):
    """A new ingredient under a name of one that is the owner's already."""

    ingredient: str
    name: str
    says = (
        "There is already an ingredient of yours called “{name}”; "
        "“barkeep ingredient change” changes {ingredient}."
    )


def new_ingredient(
    name: str, kinds: Iterable[str], tree: FamilyTree, unit: Unit | None = None
) -> Ingredient:
    """An own ingredient to begin with, in the unit and the size of its first kind.

    Raises `UnknownName` for a kind, and `InvalidField` without one.
    """
    parents = tuple(dict.fromkeys(find_ingredient(tree, each) for each in kinds))
    if not parents:
        raise InvalidField(tr_noop("kind"), "", tr("say what it is a kind of"))
    kind, plain = tree[parents[0]], " ".join(name.split())
    kept_in = unit or kind.unit
    return Ingredient(
        free_key(plain, tree),
        plain,
        parents,
        proper=is_written_as_a_name(plain),
        unit=kept_in,
        typical_size=_usual_size(kept_in, parents, tree),
        basis=OWN,
    )


def in_unit(ingredient: Ingredient, unit: Unit, tree: FamilyTree) -> Ingredient:
    """The ingredient kept in another unit, and the size it then usually has."""
    if unit == ingredient.unit:
        return ingredient
    return replace(ingredient, unit=unit, typical_size=_usual_size(unit, ingredient.parents, tree))


def read_stand_in(text: str, *, wanted: str = "", offered: str = "") -> StandIn:
    """A stand-in as it is written, for what is wanted or of what is offered; not checked.

    Raises `InvalidField`.

    >>> read_stand_in("honey syrup = 0.7, 0.5", wanted="agave").ratio
    0.5
    """
    other, equals, rest = text.partition("=")
    closeness, ratio, why = (each.strip() for each in f"{rest},,".split(",", 2))
    if not other.strip() or (equals and not rest.strip()):
        raise InvalidField("stand-in", text, HOW_STAND_INS)
    return StandIn(
        wanted=wanted or other.strip(),
        offered=offered or other.strip(),
        closeness=_number(text, closeness, STAND_IN_CLOSENESS),
        ratio=_number(text, ratio, STAND_IN_RATIO),
        why=why.strip(" ,") or STAND_IN_WHY,
    )


def _number(written: str, text: str, usual: float) -> float:
    try:
        return float(text) if text else usual
    except ValueError:
        raise InvalidField("stand-in", written, HOW_STAND_INS) from None


def allergen_words() -> tuple[str, ...]:
    """The words of the allergens that are known by name."""
    return tuple(each.word for each in shipped_allergens().all)


def allergen_word(word: str) -> str:
    """The word the lists have for an allergen. Raises `InvalidField` for one they do not have."""
    known = shipped_allergens()
    found = known.by_word.get(folded(word))
    if found is None:
        expected = tr("it is {choices}", choices=spoken_list(allergen_words()))
        raise InvalidField(tr_noop("allergen"), word, expected)
    return found.word


def checked_ingredient(ingredient: Ingredient, bar: Snapshot) -> Ingredient:
    """The ingredient with its names trimmed and its kinds as keys.

    Raises `InvalidField`, `DuplicateName`, and `UnknownName` for a kind.
    """
    tree = bar.knowledge.tree
    before = tree.ingredients.get(ingredient.key)
    name = " ".join(ingredient.name.split())
    if not name:
        raise InvalidField(tr_noop("name"), ingredient.name, tr("an ingredient needs a name"))
    if not _KEY.fullmatch(ingredient.key):
        expected = tr("it is small letters and digits with hyphens between")
        raise InvalidField(tr_noop("key"), ingredient.key, expected)
    if ingredient.unit not in get_args(Unit):
        raise InvalidField(tr_noop("unit"), ingredient.unit, tr("it is ml, g or each"))
    _refuse_numbers(ingredient)
    others = (" ".join(each.split()) for each in ingredient.aliases)
    aliases = tuple(dict.fromkeys(each for each in others if folded(each) != folded(name)))
    parents = tuple(find_ingredient(tree, parent) for parent in ingredient.parents)
    checked = replace(ingredient, name=name, aliases=aliases, parents=parents)
    _refuse_names(checked, before, tree, bar.settings.units)
    if before is not None and before.unit != checked.unit:
        _refuse_used("unit", checked, bar)
    return checked


def refuse_removal(bar: Snapshot, ingredient: Ingredient) -> None:
    """Raises `StillInUse` where anything in the bar refers to it; says what, and how many."""
    users = tuple(_users(bar, ingredient.key))
    if users:
        one = len(users) == 1 and users[0].startswith("the ")
        raise StillInUse(ingredient.name, spoken_list(users, "and"), several=not one)


def checked_name(name: str, of: Ingredient, bar: Snapshot) -> Ingredient:
    """The ingredient with one more name. Raises `InvalidField` and `DuplicateName`."""
    alias = " ".join(name.split())
    if not alias:
        raise InvalidField(tr_noop("alias"), name, tr("a name has letters"))
    if folded(alias) in map(folded, of.all_names):
        raise DuplicateName("ingredient", alias)
    return checked_ingredient(replace(of, aliases=(*of.aliases, alias)), bar)


def concerns(entry: StandIn, key: str) -> bool:
    """Whether a stand-in is one for an ingredient, or it for another."""
    return key in (entry.wanted, entry.offered)


def _usual_size(unit: Unit, kinds: tuple[str, ...], tree: FamilyTree) -> float:
    """What one purchase holds: as its kind does, where that is kept in the same unit."""
    kind = tree[kinds[0]] if kinds else None
    return kind.typical_size if kind and kind.unit == unit else TYPICAL_SIZES[unit]


def _refuse_numbers(ingredient: Ingredient) -> None:
    refuse_figures(ingredient)
    days = ingredient.shelf_life_days
    expected = tr("it is 0 to {most:,} days", most=LONGEST_LIFE_DAYS)
    refuse_beyond(tr_noop("shelf life"), days, LONGEST_LIFE_DAYS, expected)
    if not (isfinite(ingredient.typical_size) and ingredient.typical_size > 0):
        size, expected = ingredient.typical_size, tr("it is more than nothing")
        raise InvalidField(tr_noop("typical size"), size, expected)


def _refuse_names(
    ingredient: Ingredient, before: Ingredient | None, tree: FamilyTree, units: BarUnits
) -> None:
    """Raises where a new name is another's, or no line could say it."""
    known = set() if before is None else set(map(folded, before.all_names))
    new = [
        (field, each)
        for field, names in (("name", (ingredient.name,)), ("alias", ingredient.aliases))
        for each in names
        if folded(each) not in known
    ]
    for _field, each in new:
        if tree.by_name.get(folded(each), ingredient.key) != ingredient.key:
            raise DuplicateName("ingredient", each)
        other = named(each, tree)
        if other is not None and other.key is not None and other.key != ingredient.key:
            raise UnderstoodAlready(each, tree.in_sentence(other.key))
    try:
        grown = with_own(tree, [ingredient])
    except KnowledgeError as error:
        circular = isinstance(error, CyclicFamily)
        kinds = ", ".join(map(tree.name, ingredient.parents))
        reason = tr("its kinds would run in a circle") if circular else error.reason
        raise InvalidField(tr_noop("parents"), kinds, reason) from error
    for field, each in new:
        why = why_unreadable(each, ingredient, grown, units)
        if why:
            raise InvalidField(field, each, why)


def _refuse_used(field: str, ingredient: Ingredient, bar: Snapshot) -> None:
    users = tuple(_users(bar, ingredient.key))
    if users:
        kept_in = bar.knowledge.tree[ingredient.key].unit
        expected = tr(
            "it is counted in {unit} by {users}", unit=kept_in, users=spoken_list(users, "and")
        )
        raise InvalidField(field, ingredient.unit, expected)


def _users(bar: Snapshot, key: str) -> Iterator[str]:
    """What refers to an ingredient, each sort named and counted."""
    tree = bar.knowledge.tree
    products = (each.title for each in bar.products if each.ingredient == key)
    yield from _counted(
        tr_noop("the product {name}"), tr_noop("{count} products ({names})"), products
    )
    specs = (each.name for each in bar.specs if any(key in line.wanted for line in each.lines))
    yield from _counted(tr_noop("the spec {name}"), tr_noop("{count} specs ({names})"), specs)
    kinds = map(tree.name, tree.children(key))
    yield from _counted(tr_noop("the kind {name}"), tr_noop("{count} kinds ({names})"), kinds)
    recipes = (
        f"{tree.in_sentence(each.made)}"
        for each in bar.knowledge.made_from
        if each.own and key in (each.made, *(part.ingredient for part in each.inputs))
    )
    yield from _counted(
        tr_noop("the recipe for {name}"), tr_noop("{count} recipes for ({names})"), recipes
    )
    shoots = (each.theme for each in bar.shoots if _is_chosen_in(each, key))
    yield from _counted(tr_noop("the shoot {name}"), tr_noop("{count} shoots ({names})"), shoots)
    pars = [each for each in bar.settings.pars if each.ingredient == key]
    if pars:
        yield tr("the par of it")
    if any(each.ingredient == key for each in bar.settings.to_buy):
        yield tr("the shopping list")


def _is_chosen_in(shoot: Shoot, key: str) -> bool:
    return any(chosen.ingredient == key for drink in shoot.drinks for chosen in drink.chosen)


def _counted(one: str, many: str, names: Iterable[str]) -> Iterator[str]:
    found = tuple(dict.fromkeys(names))
    if len(found) == 1:
        yield tr(one, name=found[0])
    elif found:
        more = len(found) - MOST_NAMED
        named_ = [*found[:MOST_NAMED], *([tr("{more} more", more=more)] if more > 0 else [])]
        yield tr(many, count=len(found), names=spoken_list(named_, "and"))
