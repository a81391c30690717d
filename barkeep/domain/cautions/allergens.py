"""Which allergens a drink carries and on whose list each is, from `resources/allergens.toml`.

An ingredient says what it commonly carries; the label of the bottle poured
comes first, and nothing here replaces asking the guest.
"""

from __future__ import annotations

from collections.abc import Collection, Iterable, Iterator, Mapping
from dataclasses import asdict, dataclass
from functools import cache
from typing import Literal

from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import folded
from barkeep.errors import KnowledgeError, spoken_list
from barkeep.shipped_data import (
    Text,
    Texts,
    parse,
    read,
    read_field,
    table_of,
    tables,
    without,
)
from barkeep.translation import tr

FILE = "allergens.toml"


List = Literal["US", "EU"]

_GAP = "{allergens}"


@dataclass(frozen=True, slots=True)
class Allergen:
    """One allergen: its word, the lists it is on (none where the word is an owner's), a note.

    `also_meant_by` are words of a guest that mean this one beside another. Of the kinds in
    `only_bought`, what is made at home does not carry it. `now` is what is said of one that can
    kill within minutes, empty of the others.
    """

    word: Text
    lists: tuple[List, ...] = ()
    note: str = ""
    also_meant_by: Texts = ()
    only_bought: Texts = ()
    now: str = ""


@dataclass(frozen=True, slots=True)
class _Authority:
    """The law behind each list."""

    US: Text
    EU: Text


@dataclass(frozen=True, slots=True)
class _Sentences:
    """What is said of a drink: `{allergens}` is where they are named."""

    contains: Text
    brought_in: Text


@dataclass(frozen=True, slots=True)
class KnownAllergens:
    """The allergens by every word for them, folded, and the law behind each list."""

    by_word: Mapping[str, Allergen]
    authority: Mapping[List, str]
    sentences: _Sentences

    @property
    def all(self) -> tuple[Allergen, ...]:
        """Each allergen once, in the file's order."""
        return tuple(dict.fromkeys(self.by_word.values()))

    def called(self, word: str) -> Allergen:
        """The allergen a word means; a word nobody knows is kept as it stands."""
        return self.by_word.get(folded(word)) or Allergen(word)


@cache
def shipped_allergens() -> KnownAllergens:
    """The lists barkeep brings along. Raises `KnowledgeError` for a broken resource."""
    return table_of(FILE, read_allergens, KnownAllergens)


def allergens_of(
    keys: Iterable[str], tree: FamilyTree, home_made: Collection[str] = ()
) -> tuple[Allergen, ...]:
    """What these ingredients commonly carry, themselves or by descent, by word.

    What a family carries, everything below it does: an owner's own wine is a wine. Of what is
    `home_made`, what only a maker adds to keep it is left out.
    """
    kinds = dict.fromkeys(keys)
    found = {each for key in kinds for each in _carried(key, tree, at_home=key in home_made)}
    return tuple(sorted(found, key=lambda allergen: allergen.word))


def allergen_words(tree: FamilyTree) -> Mapping[str, frozenset[str]]:
    """Every word for an allergen, folded, and the allergens it means; owners' words are there."""
    known = shipped_allergens()
    found = {word: {each.word} for word, each in known.by_word.items()}
    for each in known.all:
        for word in each.also_meant_by:
            found.setdefault(folded(word), set()).add(each.word)
    for own in (word for key in tree for word in tree[key].allergens):
        found.setdefault(folded(own), {own})
    return {word: frozenset(means) for word, means in found.items()}


def as_listed(allergens: Iterable[Allergen]) -> tuple[Allergen, ...]:
    """Allergens in the order of the lists, an owner's own words after them."""
    listed = {each.word: number for number, each in enumerate(shipped_allergens().all)}
    return tuple(sorted(allergens, key=lambda each: listed.get(each.word, len(listed))))


def law_behind(allergen: Allergen) -> str:
    """The laws whose lists it is on; empty where it is an owner's word."""
    return "; ".join(shipped_allergens().authority[each] for each in allergen.lists)


def _carried(key: str, tree: FamilyTree, *, at_home: bool) -> Iterator[Allergen]:
    known, kin = shipped_allergens(), (key, *tree.ancestors(key))
    for allergen in (known.called(word) for kind in kin for word in tree[kind].allergens):
        if not (at_home and any(kind in allergen.only_bought for kind in kin)):
            yield allergen


def contains_sentence(allergens: Iterable[Allergen]) -> str:
    """The sentence that says a drink carries these; empty for none."""
    return _sentence(shipped_allergens().sentences.contains, allergens)


def brought_in_sentence(allergens: Iterable[Allergen]) -> str:
    """The sentence that says these were not in the spec as written; empty for none."""
    return _sentence(shipped_allergens().sentences.brought_in, allergens)


def read_allergens(text: str, file: str = FILE) -> KnownAllergens:
    """The allergens out of a TOML text. Raises `KnowledgeError`."""
    document = parse(text, file, "allergen", "authority", "sentence")
    by_word: dict[str, Allergen] = {}
    for each in tables(document, "allergen", file):
        key = f"allergen {each.get('word', '?')}"
        others = read_field(
            {"other_words": (), **each}, name="other_words", kind=Texts, file=file, place=key
        )
        allergen = read(without(each, "other_words"), Allergen, file, key)
        if not allergen.lists:
            raise KnowledgeError(file, key, "it is on no list")
        for word in (allergen.word, *others):
            if folded(word) in by_word:
                raise KnowledgeError(file, key, f"“{word}” is there twice")
            by_word[folded(word)] = allergen
    authority = read(document.get("authority"), _Authority, file, "authority")
    sentences = read(document.get("sentence"), _Sentences, file, "sentence")
    for name, sentence in asdict(sentences).items():
        if sentence.count(_GAP) != 1:
            reason = f"“{name}” must have {_GAP} once, where they are named"
            raise KnowledgeError(file, "sentence", reason)
    laws: dict[List, str] = {"US": authority.US, "EU": authority.EU}
    return KnownAllergens(by_word, laws, sentences)


def _sentence(text: str, allergens: Iterable[Allergen]) -> str:
    words = [tr(allergen.word) for allergen in allergens]
    return tr(text).replace(_GAP, spoken_list(words, "and")) if words else ""
