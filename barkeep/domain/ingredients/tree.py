"""The family tree of ingredients, their names, and what must not be confused.

An ingredient is a generic kind: *London dry gin* is a *gin* is a *spirit*. A
node may have several parents. The tree knows names and who descends from
whom; what may replace what is in `barkeep.domain.ingredients.graph`.

Who is whose kin is asked by every start and every analysis, which must not wait
for networkx: importing it takes as long as a short command, and a walk per
question is some forty times slower than a look into a table
(`tests/benchmarks/test_family_tree.py`). So the standard library's topological
order finds the circles and fills a table each of what is above and what is
below; tests hold them to networkx's own walks.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping
from copy import copy
from dataclasses import dataclass, field
from functools import cached_property
from graphlib import CycleError, TopologicalSorter
from typing import TYPE_CHECKING, Any, TypeVar, cast

from barkeep.domain.amounts.units import Unit
from barkeep.domain.ingredients.ordinary import NOTHING_SAID, Ordinary, WithAge
from barkeep.domain.ingredients.slips import slips_of
from barkeep.domain.phrases import capitalised, folded, with_small_letter
from barkeep.errors import CyclicFamily, KnowledgeError, UnknownName
from barkeep.shipped_data import Days, NotNegative, Percent, Positive, Text, Texts

if TYPE_CHECKING:
    from barkeep.domain.name_search import NameIndex

Made = TypeVar("Made")

KEEPS_ABV_PERCENT = 15.0
"""From this strength on nothing that harms grows in it (*common practice*)."""


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
    def offered_names(self) -> tuple[str, ...]:
        """Every name that may be shown or offered, its own first: none that only a list prints."""
        regional = (name for names in self.regional.values() for name in names)
        return (self.name, *self.aliases, *regional)

    @property
    def understood_names(self) -> tuple[str, ...]:
        """The names that only a search knows: none of them is ever shown."""
        shown = self.offered_names
        return tuple(name for name in self.printed if name not in shown)

    @property
    def all_names(self) -> tuple[str, ...]:
        """Every name it answers to, its own first: to be searched in."""
        return (*self.offered_names, *self.printed)


@dataclass(frozen=True, slots=True)
class Confusable:
    """Two ingredients mistaken for each other; neither is ever offered for the other."""

    first: str
    second: str
    why: Text


@dataclass(frozen=True, slots=True)
class CheckedTree:
    """A tree as it is kept, with what was worked out as it was checked."""

    ingredients: Mapping[str, Ingredient]
    confusables: tuple[Confusable, ...]
    file: str
    ordinary: Ordinary
    by_name: Mapping[str, str]
    ancestors: Mapping[str, frozenset[str]]

    @classmethod
    def of(cls, tree: FamilyTree) -> CheckedTree:
        """What there is to keep of one."""
        return cls(
            ingredients=tree.ingredients,
            confusables=tree.confusables,
            file=tree.file,
            ordinary=tree.ordinary,
            by_name=tree.by_name,
            ancestors=tree._ancestors,
        )

    @property
    def tree(self) -> FamilyTree:
        """The tree, which is not checked once more: that takes longer than to read it."""
        tree = FamilyTree({}, self.confusables, self.file, ordinary=self.ordinary)
        vars(tree).update(
            ingredients=self.ingredients, by_name=self.by_name, _ancestors=self.ancestors
        )
        return tree


@dataclass(frozen=True)
class FamilyTree:
    """All ingredients by key, with lookups by name and by descent.

    Raises `KnowledgeError` for an unknown parent or a name used twice and
    `CyclicFamily` where the parents run in a circle. `shown` are names shown
    in place of the kinds' own, by key and as they stand inside a sentence; what
    may be read stays the same. `ordinary` says what a general want takes, and what ages how.
    """

    ingredients: Mapping[str, Ingredient]
    confusables: tuple[Confusable, ...] = ()
    file: str = "ingredients"
    shown: Mapping[str, str] = field(default_factory=dict)
    ordinary: Ordinary = NOTHING_SAID

    def __post_init__(self) -> None:
        self._refuse_unknown_parents()
        _ = self._ancestors  # reading it refuses circles
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
        shown = self.shown.get(key)
        return self[key].name if shown is None else capitalised(shown)

    def in_sentence(self, key: str) -> str:
        """The name as it stands inside a sentence: *lime juice*, but *London dry gin*."""
        shown = self.shown.get(key)
        return inside_sentence(self[key], self[key].name) if shown is None else shown

    def showing(self, names: Mapping[str, str]) -> FamilyTree:
        """The same tree with these names shown too, which win over those shown before.

        All that is known of the family is shared: it costs no more than a look.
        """
        if not names:
            return self
        _ = (self._made, self._descendants, self._children, self._confused, self.alcoholic)
        other = copy(self)
        other.__dict__.pop("read_lately", None)  # what is said of a line is in the names shown
        object.__setattr__(other, "shown", {**self.shown, **names})
        return other

    def taking(self, ordinary: Ordinary) -> FamilyTree:
        """The same tree, of which this is said; what is known of the family is shared."""
        other = copy(self)
        for worked_out in ("_special", "special_below"):
            other.__dict__.pop(worked_out, None)
        object.__setattr__(other, "ordinary", ordinary)
        return other

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
    def read_lately(self) -> dict[object, object]:
        """What a reader keeps of lines that it read with this tree, for as long as that lives."""
        return {}

    @cached_property
    def by_words(self) -> Mapping[frozenset[str], str]:
        """The words of a name, in no order -> its key; none where two names have the same words."""
        found: dict[frozenset[str], str | None] = {}
        for name, key in self.by_name.items():
            words = words_of_a_name(name)
            if found.setdefault(words, key) != key:
                found[words] = None
        return {words: key for words, key in found.items() if key is not None}

    @cached_property
    def name_index(self) -> NameIndex[str]:
        """All names of all kinds, ready to be looked for."""
        from barkeep.domain.name_search import Named, NameIndex  # most answers look for no name

        return NameIndex(
            Named(each.key, each.offered_names, each.understood_names)
            for each in self.ingredients.values()
        )

    def spoken_names(self, key: str) -> tuple[tuple[str, str], ...]:
        """Each name that means it and nothing else: folded, and as a sentence says it.

        The longest come first. Left out is what only a search may know.
        """
        return self.once(_spoken, key)

    @cached_property
    def folded_names(self) -> Mapping[str, str]:
        """Key -> all its names in one line, folded, to be searched in."""
        return {
            key: folded(" ".join(ingredient.all_names))
            for key, ingredient in self.ingredients.items()
        }

    @cached_property
    def words(self) -> frozenset[str]:
        """Every word of an English name, as words of a line are compared."""
        from barkeep.domain.ingredients.languages import words_of  # only lines need them

        return frozenset(word for names in self.folded_names.values() for word in words_of(names))

    @cached_property
    def slips(self) -> Mapping[str, tuple[str, ...]]:
        """The words of English names by what is left of them when a letter is mistyped."""
        return slips_of(self.words)

    def called(self, name: str) -> str | None:
        """The key of what is called so in English, else in another language; None for neither.

        A foreign name that may be one thing or another is nobody's.
        """
        key = self.by_name.get(folded(name))
        if key is not None:
            return key
        meant = self.may_be(name)
        return meant[0] if len(meant) == 1 else None

    def may_be(self, name: str) -> tuple[str, ...]:
        """The keys of all that other languages call so, in the order of their names."""
        from barkeep.domain.ingredients.languages import meanings, words_of  # as above

        known = map(self.key_of, meanings().get(" ".join(words_of(name)), ()))
        return tuple(sorted({key for key in known if key}, key=self.name))

    def key_of(self, key_or_name: str) -> str | None:
        """A key as it is, or the key of an English name; None where it is neither."""
        known = key_or_name in self.ingredients
        return key_or_name if known else self.by_name.get(folded(key_or_name))

    def children(self, key: str) -> tuple[str, ...]:
        """The keys directly below one, in the order of the tree; none below a stranger."""
        return self._children.get(key, ())

    def downwards(self, key: str) -> Iterator[tuple[str, ...]]:
        """The key itself, then the keys directly below it, then those below these; each once."""
        nearest: tuple[str, ...] = (key,)
        seen = {key}
        while nearest:
            yield nearest
            below = (child for kind in nearest for child in self.children(kind))
            nearest = tuple(child for child in dict.fromkeys(below) if child not in seen)
            seen.update(nearest)

    def once(self, make: Callable[[FamilyTree, str], Made], key: str) -> Made:
        """What is made of a kind by its family alone, made when it is first asked for.

        Names that are shown and what is ordinary must not bear on it.
        """
        known = self._made.setdefault(make, {})
        if key not in known:
            known[key] = make(self, key)
        return cast(Made, known[key])

    @cached_property
    def _made(self) -> dict[Any, dict[str, Any]]:
        return {}

    def upwards(self, key: str) -> tuple[str, ...]:
        """Every key above, the nearest first, itself not included."""
        return self.once(FamilyTree._upwards, key)

    def _upwards(self, key: str) -> tuple[str, ...]:
        above: dict[str, None] = {}
        nearest = self[key].parents
        while nearest:
            above |= dict.fromkeys(nearest)
            nearest = tuple(parent for each in nearest for parent in self[each].parents)
        return tuple(above)

    @cached_property
    def _children(self) -> Mapping[str, tuple[str, ...]]:
        below: dict[str, list[str]] = {}
        for ingredient in self.ingredients.values():
            for parent in ingredient.parents:
                below.setdefault(parent, []).append(ingredient.key)
        return {key: tuple(keys) for key, keys in below.items()}

    @cached_property
    def _ancestors(self) -> Mapping[str, frozenset[str]]:
        above: dict[str, frozenset[str]] = {}
        for key in self._parents_first():
            parents = self.ingredients[key].parents
            above[key] = frozenset(parents).union(*(above[parent] for parent in parents))
        return above

    def _parents_first(self) -> Iterable[str]:
        order = TopologicalSorter({key: self.ingredients[key].parents for key in self})
        try:
            return tuple(order.static_order())
        except CycleError as error:
            circle = tuple(reversed(error.args[1]))  # from child to parent, as it is told
            raise CyclicFamily(self.file, circle[0], "runs in a circle", circle) from None

    @cached_property
    def alcoholic(self) -> frozenset[str]:
        """Keys of what is usually 1 % vol or stronger, or has kin above or below that is."""
        strong = {key for key in self if (self[key].abv_percent or 0.0) >= 1.0}
        below = {key for key in self if self.ancestors(key) & strong}
        return frozenset(strong | below).union(*map(self.ancestors, strong))

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
        """Every key below, itself not included; none below a stranger."""
        return self._descendants.get(key, frozenset())

    def at_or_below(self, *keys: str) -> tuple[str, ...]:
        """Each key with every key below it, in one order, each once."""
        found = (kind for key in keys for kind in (key, *sorted(self.descendants(key))))
        return tuple(dict.fromkeys(found))

    @cached_property
    def _descendants(self) -> Mapping[str, frozenset[str]]:
        below: dict[str, set[str]] = {}
        for key, kinds in self._ancestors.items():
            for kind in kinds:
                below.setdefault(kind, set()).add(key)
        return {key: frozenset(keys) for key, keys in below.items()}

    def poured_as(self, wanted: str) -> tuple[str, ...]:
        """The kinds that are poured for a want without asking: what is safer, itself, those below.

        What is poured only when asked for is not among them.
        """
        safer = self.ordinary.rather.get(wanted)
        kinds = [] if safer is None else [safer, *sorted(self.descendants(safer))]
        below = sorted(self.descendants(wanted))
        ordinary = (each for each in below if not self.only_when_asked(each, wanted))
        return (*kinds, wanted, *ordinary)

    def only_when_asked(self, key: str, wanted: str) -> frozenset[str]:
        """The kinds that `key` is one of and a want of `wanted` does not ask for.

        A want for a kind asks for all that is below it; none for what is ordinary.
        """
        special = self._special.get(key)
        return special - self._special.get(wanted, frozenset()) if special else frozenset()

    @cached_property
    def _special(self) -> Mapping[str, frozenset[str]]:
        marked = self.ordinary.only_when_asked.keys()
        found = {key: frozenset(marked & {key, *self.ancestors(key)}) for key in self}
        return {key: special for key, special in found.items() if special}

    @cached_property
    def special_below(self) -> Mapping[str, frozenset[str]]:
        """Key -> the kinds below it that are poured only when asked for."""
        found: dict[str, frozenset[str]] = {}
        for key in self._special.keys() & self.ordinary.only_when_asked.keys():
            for above in self.ancestors(key):
                found[above] = found.get(above, frozenset()) | {key}
        return found

    def with_age(self, key: str) -> WithAge:
        """What it is once it is past its date; the nearest kind that says so decides.

        Of what nothing is said, alcohol from `KEEPS_ABV_PERCENT` up is past its best.
        """
        said = self.ordinary.with_age
        for kind in (key, *self.upwards(key)):
            if kind in said:
                return said[kind]
        strong = (self[key].abv_percent or 0.0) >= KEEPS_ABV_PERCENT
        return "past_its_best" if strong else "not_safe"

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


WITHOUT_MEANING = frozenset(
    {"of", "the", "a", "an", "de", "del", "and", "&", "di", "du", "in", "from", "for"}
)
"""Words of a name that only join the others."""

_ENDS_IN_S = frozenset({"bitters", "molasses", "cassis", "swiss", "hibiscus", "islas", "citrus"})


def words_of_a_name(name: str) -> frozenset[str]:
    """The words of a folded name, of one number and one spelling, without those that only join."""
    return frozenset(
        singular(word) for word in name.split() if word and word not in WITHOUT_MEANING
    )


def singular(word: str) -> str:
    """A folded word of a name as one of it is called: *leaves* is *leaf*, *bitters* stays."""
    if word == "whiskey":
        return "whisky"
    if len(word) <= 3 or word in _ENDS_IN_S or word.endswith("ss"):
        return word
    for ending, other in (("ies", "y"), ("aves", "eaf"), ("ches", "ch"), ("s", "")):
        if word.endswith(ending):
            return word[: -len(ending)] + other
    return word


def _spoken(tree: FamilyTree, key: str) -> tuple[tuple[str, str], ...]:
    ingredient = tree[key]
    names = [each for each in ingredient.all_names if each not in ingredient.printed]
    return tuple(
        (folded(name), inside_sentence(ingredient, name))
        for name in sorted(names, key=len, reverse=True)
        if tree.by_name[folded(name)] == key
    )


def inside_sentence(ingredient: Ingredient, name: str) -> str:
    """One of an ingredient's names as it stands inside a sentence."""
    return name if ingredient.proper else with_small_letter(name)


def with_own(tree: FamilyTree, own: Iterable[Ingredient]) -> FamilyTree:
    """The tree with the owner's ingredients added; the owner's win."""
    merged = {**tree.ingredients, **{each.key: each for each in own}}
    return FamilyTree(merged, tree.confusables, tree.file, ordinary=tree.ordinary)
