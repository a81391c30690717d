"""The neighbours of an ingredient: its family, what stands in, what it is made of, and why."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Iterator, Mapping
from dataclasses import dataclass
from typing import Literal, get_args

from barkeep.domain.bar.knowledge import Knowledge
from barkeep.domain.ingredients.relations import MadeFrom, StandIn
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import as_sentence, counted
from barkeep.domain.pouring.words import amount_of
from barkeep.domain.stand_ins.words import closeness_in_words, scope_in_words
from barkeep.errors import spoken_list
from barkeep.translation import tr, tr_noop

Relation = Literal["above", "stands_for", "stands_in", "made_from", "makes", "below"]
RELATIONS: tuple[Relation, ...] = get_args(Relation)
HEADINGS: Mapping[Relation, str] = {
    "above": tr_noop("Its family"),
    "stands_for": tr_noop("Stands in for"),
    "stands_in": tr_noop("Pour instead"),
    "made_from": tr_noop("Made from"),
    "makes": tr_noop("Made of it"),
    "below": tr_noop("Kinds of it"),
}


@dataclass(frozen=True, slots=True)
class Neighbour:
    """One ingredient beside another, and `why` in a sentence.

    `closeness` is only of what stands in, either way; `there` is whether the bar has it or
    a kind of it today, `own` whether the owner said that it is a neighbour.
    """

    key: str
    name: str
    relation: Relation
    why: str
    there: bool
    closeness: float | None = None
    own: bool = False

    @property
    def in_words(self) -> str:
        """Its name, why it is here, and whether it is in the bar."""
        there = tr("In the bar.") if self.there else tr("Not in the bar.")
        return f"{self.name}: {self.why} {there}"


@dataclass(frozen=True, slots=True)
class Neighbourhood:
    """All neighbours of one ingredient; what stands in comes closest first, the rest by name.

    `none_because` says why nothing stands in, where that is said.
    """

    of: str
    name: str
    there: bool
    neighbours: tuple[Neighbour, ...]
    none_because: str = ""

    def by(self, relation: Relation) -> tuple[Neighbour, ...]:
        """The neighbours of one relation."""
        return tuple(each for each in self.neighbours if each.relation == relation)

    @property
    def in_words(self) -> str:
        """All of it for whoever does not see it."""
        return " ".join(_told(self))


def neighbourhood(knowledge: Knowledge, owned: Collection[str], key: str) -> Neighbourhood:
    """What lies around an ingredient in the substitution graph. Raises `KeyError` for a stranger.

    `owned` are the keys of what can be used today.
    """
    tree, there = knowledge.tree, _There(knowledge.tree, frozenset(owned))
    found = [
        *_family(key, tree, there),
        *_standing(knowledge, key, there),
        *_made(knowledge, key, there),
    ]
    return Neighbourhood(
        of=key,
        name=tree.name(key),
        there=there(key),
        neighbours=tuple(found),
        none_because=knowledge.none_because.get(key, ""),
    )


@dataclass(frozen=True, slots=True)
class _There:
    """Whether the bar has a kind, or one below it; with that, its neighbours."""

    tree: FamilyTree
    owned: frozenset[str]

    def __call__(self, key: str) -> bool:
        return not self.owned.isdisjoint(self.tree.at_or_below(key))

    def near(
        self,
        key: str,
        relation: Relation,
        why: str,
        *,
        closeness: float | None = None,
        own: bool = False,
    ) -> Neighbour:
        return Neighbour(
            key=key,
            name=self.tree.name(key),
            relation=relation,
            why=why,
            there=self(key),
            closeness=closeness,
            own=own,
        )


def _family(key: str, tree: FamilyTree, there: _There) -> Iterator[Neighbour]:
    for above in tree.upwards(key):
        why = tr(
            "{name} is a kind of {wanted}.",
            name=tree.name(key),
            wanted=tree.in_sentence(above),
        )
        yield there.near(above, "above", why)
    for below in _by_name(tree.children(key), tree):
        asked = tree.only_when_asked(below, key)
        why = tr(
            "{name} is a kind of {wanted}, poured for it only when asked."
            if asked
            else "{name} is a kind of {wanted}, poured for it exactly.",
            name=tree.name(below),
            wanted=tree.in_sentence(key),
        )
        yield there.near(below, "below", why)


def _standing(knowledge: Knowledge, key: str, there: _There) -> Iterator[Neighbour]:
    stands_in = knowledge.graph.stand_ins
    tree = knowledge.tree
    for entry in stands_in.get(key, ()):
        yield _stand_in(entry, "stands_in", tree, there)
    entries = (each for some in stands_in.values() for each in some if each.offered == key)
    for entry in sorted(entries, key=lambda each: (-each.closeness, tree.name(each.wanted))):
        yield _stand_in(entry, "stands_for", tree, there)


def _stand_in(entry: StandIn, relation: Relation, tree: FamilyTree, there: _There) -> Neighbour:
    key = entry.offered if relation == "stands_in" else entry.wanted
    close = closeness_in_words(entry.closeness)
    ratio = "" if entry.ratio == 1.0 else tr(", {ratio:g} times as much", ratio=entry.ratio)
    whose = tr(", by your own entry") if entry.own else ""
    pair = tr(
        "{offered} for {wanted}",
        offered=tree.in_sentence(entry.offered),
        wanted=tree.in_sentence(entry.wanted),
    )
    why = (
        f"{as_sentence(f'{close}{ratio}{whose}, {pair}: {tr(entry.why)}')} {scope_in_words(entry)}"
    )
    return there.near(key, relation, why.strip(), closeness=entry.closeness, own=entry.own)


def _made(knowledge: Knowledge, key: str, there: _There) -> Iterator[Neighbour]:
    tree = knowledge.tree
    inputs = dict[str, MadeFrom]()
    makes = dict[str, MadeFrom]()
    for recipe in sorted(knowledge.made_from, key=lambda each: not each.own):
        for each in recipe.inputs:
            if recipe.made == key:
                inputs.setdefault(each.ingredient, recipe)
            elif each.ingredient == key:
                makes.setdefault(recipe.made, recipe)
    for given, recipe in inputs.items():
        yield there.near(given, "made_from", _recipe(recipe, tree), own=recipe.own)
    for made in _by_name(makes, tree):
        recipe = makes[made]
        yield there.near(made, "makes", _recipe(recipe, tree), own=recipe.own)


def _recipe(recipe: MadeFrom, tree: FamilyTree) -> str:
    """What a recipe takes and gives, in a sentence."""
    taken = [amount_of(each.ingredient, each.amount, tree) for each in recipe.inputs]
    gives = amount_of(recipe.made, recipe.yields, tree)
    return tr(
        "{taken} gives {gives}." if len(taken) == 1 else "{taken} give {gives}.",
        taken=spoken_list(taken, "and"),
        gives=gives,
    )


def _by_name(keys: Iterable[str], tree: FamilyTree) -> list[str]:
    return sorted(keys, key=lambda key: (tree.name(key).casefold(), key))


def _told(around: Neighbourhood) -> Iterator[str]:
    there = tr("in the bar") if around.there else tr("not in the bar")
    yield tr(
        "{name}, {there}, has {neighbours}.",
        name=around.name,
        there=there,
        neighbours=counted(len(around.neighbours), "neighbour"),
    )
    for relation in RELATIONS:
        if near := around.by(relation):
            yield f"{tr(HEADINGS[relation])}: {', '.join(map(_named, near))}."
    if around.none_because:
        yield tr("Nothing stands in for it: {because}.", because=tr(around.none_because))


def _named(near: Neighbour) -> str:
    parts = [] if near.closeness is None else [f"{near.closeness:.2f}"]
    parts += [tr("in the bar")] * near.there
    return f"{near.name} ({', '.join(parts)})" if parts else near.name
