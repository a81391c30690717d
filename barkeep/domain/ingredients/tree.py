"""The family tree of ingredients, their names, and what must not be confused.

An ingredient is a generic kind: *London dry gin* is a *gin* is a *spirit*. A
node may have several parents. The tree knows names and who descends from
whom; what may replace what is in `barkeep.domain.ingredients.graph`.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, field
from functools import cached_property

from barkeep.domain.amounts.units import Unit
from barkeep.domain.phrases import folded
from barkeep.errors import CyclicFamily, KnowledgeError, UnknownName
from barkeep.shipped_data import Days, NotNegative, Percent, Positive, Text, Texts


@dataclass(frozen=True, slots=True)
class Ingredient:
    """A generic kind. Strength in % vol, sugar and acid in g per litre.

    `family` marks a grouping no shop sells as such (*spirit*, *juice*);
    `proper` a name whose first word keeps its capital inside a sentence;
    `typical_size` is what one purchase holds, in `unit`.
    """

    key: str
    name: Text
    parents: Texts = ()
    aliases: Texts = ()
    regional: Mapping[str, Texts] = field(default_factory=dict)
    printed: Texts = ()
    family: bool = False
    proper: bool = False
    unit: Unit = "ml"
    abv_percent: Percent | None = None
    sugar_g_per_l: NotNegative | None = None
    acid_g_per_l: NotNegative | None = None
    shelf_life_days: Days | None = None
    allergens: Texts = ()
    always_there: bool = False
    typical_size: Positive = 700.0
    basis: str = ""

    @property
    def all_names(self) -> tuple[str, ...]:
        """Every name it answers to, its own first."""
        regional = (name for names in self.regional.values() for name in names)
        return (self.name, *self.aliases, *regional, *self.printed)


@dataclass(frozen=True, slots=True)
class Confusable:
    """Two ingredients mistaken for each other; neither is ever offered for the other."""

    first: str
    second: str
    why: Text


@dataclass(frozen=True)
class FamilyTree:
    """All ingredients by key, with lookups by name and by descent.

    Raises `KnowledgeError` for an unknown parent or a name used twice and
    `CyclicFamily` where the parents run in a circle.
    """

    ingredients: Mapping[str, Ingredient]
    confusables: tuple[Confusable, ...] = ()
    file: str = "ingredients"

    def __post_init__(self) -> None:
        self._refuse_unknown_parents()
        self._refuse_circles()
        _ = self.by_name  # reading it refuses names used twice

    def __getitem__(self, key: str) -> Ingredient:
        try:
            return self.ingredients[key]
        except KeyError:
            raise UnknownName("ingredient", key) from None

    def __contains__(self, key: object) -> bool:
        return key in self.ingredients

    def __iter__(self) -> Iterator[str]:
        return iter(self.ingredients)

    def __len__(self) -> int:
        return len(self.ingredients)

    def name(self, key: str) -> str:
        """The name to show for a key."""
        return self[key].name

    def in_sentence(self, key: str) -> str:
        """The name as it stands inside a sentence: *lime juice*, but *London dry gin*."""
        ingredient = self[key]
        name = ingredient.name
        return name if ingredient.proper else name[:1].lower() + name[1:]

    @cached_property
    def by_name(self) -> Mapping[str, str]:
        """Folded name -> key. An own name wins over a regional or printed one."""
        found: dict[str, str] = {}
        for ingredient in self.ingredients.values():
            for name in (ingredient.name, *ingredient.aliases):
                other = found.setdefault(folded(name), ingredient.key)
                if other != ingredient.key:
                    reason = f"the name “{name}” belongs to {other} already"
                    raise KnowledgeError(self.file, ingredient.key, reason)
        for ingredient in self.ingredients.values():
            for name in ingredient.all_names:
                found.setdefault(folded(name), ingredient.key)
        return found

    @cached_property
    def folded_names(self) -> Mapping[str, str]:
        """Key -> all its names in one line, folded, to be searched in."""
        return {
            key: folded(" ".join(ingredient.all_names))
            for key, ingredient in self.ingredients.items()
        }

    @cached_property
    def children(self) -> Mapping[str, tuple[str, ...]]:
        """Key -> the keys directly below it."""
        below: dict[str, list[str]] = {key: [] for key in self.ingredients}
        for ingredient in self.ingredients.values():
            for parent in ingredient.parents:
                below[parent].append(ingredient.key)
        return {key: tuple(keys) for key, keys in below.items()}

    @cached_property
    def _ancestors(self) -> Mapping[str, frozenset[str]]:
        above: dict[str, frozenset[str]] = {}

        def climb(key: str) -> frozenset[str]:
            if key not in above:
                parents = self.ingredients[key].parents
                above[key] = frozenset(parents).union(*(climb(parent) for parent in parents))
            return above[key]

        for key in self.ingredients:
            climb(key)
        return above

    @cached_property
    def alcoholic(self) -> frozenset[str]:
        """Keys of what is usually 1 % vol or stronger, or has kin above or below that is."""
        strong = {key for key in self if (self[key].abv_percent or 0.0) >= 1.0}
        return frozenset(
            key
            for key in self
            if key in strong or self.ancestors(key) & strong or self.descendants(key) & strong
        )

    @cached_property
    def _confused(self) -> Mapping[str, Mapping[str, str]]:
        known: dict[str, dict[str, str]] = {}
        for pair in self.confusables:
            known.setdefault(pair.first, {})[pair.second] = pair.why
            known.setdefault(pair.second, {})[pair.first] = pair.why
        return known

    def ancestors(self, key: str) -> frozenset[str]:
        """Every key above, itself not included."""
        return self._ancestors[key]

    def is_a(self, key: str, kind: str) -> bool:
        """Whether `key` is `kind` or descends from it."""
        return key == kind or kind in self._ancestors.get(key, ())

    def descendants(self, key: str) -> frozenset[str]:
        """Every key below, itself not included."""
        found: set[str] = set()
        pending = list(self.children.get(key, ()))
        while pending:
            below = pending.pop()
            if below not in found:
                found.add(below)
                pending.extend(self.children[below])
        return frozenset(found)

    def confused_with(self, key: str) -> Mapping[str, str]:
        """Key of each false friend -> why it must not be offered."""
        return self._confused.get(key, {})

    def mistaken(self, wanted: str, offered: str) -> str | None:
        """Why `offered` must never be given for `wanted`, or None where it may.

        Descent counts on both sides: what is confused with a kind is confused
        with everything below that kind.
        """
        for kind in (wanted, *self._ancestors.get(wanted, ())):
            if self.is_a(offered, kind):
                continue
            for friend, why in self.confused_with(kind).items():
                if self.is_a(offered, friend):
                    return why
        return None

    def _refuse_unknown_parents(self) -> None:
        for ingredient in self.ingredients.values():
            for parent in ingredient.parents:
                if parent not in self.ingredients:
                    reason = f"its parent “{parent}” is not an ingredient"
                    raise KnowledgeError(self.file, ingredient.key, reason)

    def _refuse_circles(self) -> None:
        finished: set[str] = set()

        def descend(key: str, path: tuple[str, ...]) -> None:
            if key in path:
                circle = (*path[path.index(key) :], key)
                raise CyclicFamily(self.file, key, "runs in a circle", circle)
            if key not in finished:
                for parent in self.ingredients[key].parents:
                    descend(parent, (*path, key))
                finished.add(key)

        for key in self.ingredients:
            descend(key, ())


def with_own(tree: FamilyTree, own: Iterable[Ingredient]) -> FamilyTree:
    """The tree with the owner's ingredients added; the owner's win."""
    merged = {**tree.ingredients, **{each.key: each for each in own}}
    return FamilyTree(merged, tree.confusables, tree.file)
