"""Which allergens a drink carries and on whose list each is, from `resources/allergens.toml`.

An ingredient says what it commonly carries; the label of the bottle poured
comes first, and nothing here replaces asking the guest.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from functools import cache
from typing import Literal, cast, get_args

from barkeep import resource_files
from barkeep.domain.ingredients.toml_fields import Fields, parse, refuse_other_tables, tables
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import folded
from barkeep.errors import KnowledgeError, spoken_list

FILE = "allergens.toml"


List = Literal["US", "EU"]

LISTS: tuple[List, ...] = get_args(List)


@dataclass(frozen=True, slots=True)
class Allergen:
    """One allergen: its word, the lists it is on (none where the word is an owner's), a note."""

    word: str
    lists: tuple[List, ...]
    note: str


@dataclass(frozen=True, slots=True)
class KnownAllergens:
    """The allergens by every word for them, folded, and the law behind each list."""

    by_word: Mapping[str, Allergen]
    authority: Mapping[List, str]
    contains: str
    brought_in: str

    @property
    def all(self) -> tuple[Allergen, ...]:
        """Each allergen once, in the file's order."""
        return tuple(dict.fromkeys(self.by_word.values()))

    def called(self, word: str) -> Allergen:
        """The allergen a word means; a word nobody knows is kept as it stands."""
        return self.by_word.get(folded(word)) or Allergen(word, (), "")


@cache
def shipped_allergens() -> KnownAllergens:
    """The lists barkeep brings along. Raises `KnowledgeError` for a broken resource."""
    return read_allergens(resource_files.read_text(FILE))


def allergens_of(keys: Iterable[str], tree: FamilyTree) -> tuple[Allergen, ...]:
    """What these ingredients commonly carry, themselves or by descent, by word.

    What a family carries, everything below it does: an owner's own wine is a wine.
    """
    known = shipped_allergens()
    kin = {kind for key in keys for kind in (key, *tree.ancestors(key))}
    found = {known.called(word) for key in kin for word in tree[key].allergens}
    return tuple(sorted(found, key=lambda allergen: allergen.word))


def contains_sentence(allergens: Iterable[Allergen]) -> str:
    """The sentence that says a drink carries these; empty for none."""
    return _sentence(shipped_allergens().contains, allergens)


def brought_in_sentence(allergens: Iterable[Allergen]) -> str:
    """The sentence that says these were not in the spec as written; empty for none."""
    return _sentence(shipped_allergens().brought_in, allergens)


def read_allergens(text: str, file: str = FILE) -> KnownAllergens:
    """The allergens out of a TOML text. Raises `KnowledgeError`."""
    document = parse(text, file)
    refuse_other_tables(document, ("allergen", "authority", "sentence"), file)
    by_word: dict[str, Allergen] = {}
    for table in tables(document, "allergen", file):
        fields = Fields(table, file, f"allergen {table.get('word', '?')}")
        allergen, others = _allergen(fields)
        for word in (allergen.word, *others):
            if folded(word) in by_word:
                fields.refuse(f"“{word}” is there twice")
            by_word[folded(word)] = allergen
    authority = _part(document, "authority", file)
    sentence = _part(document, "sentence", file)
    known = KnownAllergens(
        by_word,
        {each: authority.text(each) for each in LISTS},
        _with_gap(sentence, "contains"),
        _with_gap(sentence, "brought_in"),
    )
    authority.finish()
    sentence.finish()
    return known


def _allergen(fields: Fields) -> tuple[Allergen, tuple[str, ...]]:
    lists = fields.words("lists")
    for each in lists:
        if each not in LISTS:
            fields.refuse(f"“lists” has “{each}”; it must be one of {', '.join(LISTS)}")
    if not lists:
        fields.refuse("it is on no list")
    allergen = Allergen(fields.text("word"), cast(tuple[List, ...], lists), fields.text("note", ""))
    others = fields.words("other_words")
    fields.finish()
    return allergen, others


def _part(document: Mapping[str, object], name: str, file: str) -> Fields:
    table = document.get(name)
    if not isinstance(table, dict):
        raise KnowledgeError(file, name, f"write it as a table, [{name}]")
    return Fields(table, file, name)


def _with_gap(fields: Fields, name: str) -> str:
    text = fields.text(name)
    if text.count("{allergens}") != 1:
        fields.refuse(f"“{name}” must have {{allergens}} once, where they are named")
    return text


def _sentence(text: str, allergens: Iterable[Allergen]) -> str:
    words = [allergen.word for allergen in allergens]
    return text.replace("{allergens}", spoken_list(words, "and")) if words else ""
