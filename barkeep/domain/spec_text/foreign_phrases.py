"""Which phrases of a language stand in a line, and how clearly it is that language."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace
from itertools import pairwise

from barkeep.domain.amounts.units import unit_named
from barkeep.domain.ingredients.languages import Phrase, Role, Vocabulary
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import folded
from barkeep.domain.spec_text.english import Word, english_name, is_a_unit, is_english, is_lent

_WITHIN = re.compile(r"[ .’'-]{0,3}")
"""What may stand between the words of a phrase."""

_WITHIN_OR_COMMA = re.compile(r"[ ,.’'-]{0,3}")

_SURE_LETTERS = 4
"""A shorter word is no sign of a language by itself."""


@dataclass(frozen=True, slots=True)
class Item:
    """A phrase of the line with what it is in English, or one word that is no phrase.

    `english` is None where it stays as it is, and empty where another says it too.
    `foreign` tells that it was found in the language; `new` that it is no English name.
    """

    start: int
    end: int
    role: Role | None = None
    english: str | None = None
    keys: tuple[str, ...] = ()
    foreign: bool = False
    weak: bool = False
    of_mixers: str = ""
    settled: Mapping[str, str] = field(default_factory=dict)


def items_in(
    text: str, words: Sequence[Word], vocabulary: Vocabulary, tree: FamilyTree
) -> list[Item]:
    """The line in its phrases; none where not one is of the language."""
    if not any(_may_begin(each, vocabulary) for each in words):
        return []
    found: list[Item] = []
    closing: dict[int, int] = {}
    at = 0
    while at < len(words):
        if at in closing:
            last = at + closing[at]
            found.append(Item(words[at].start, words[last - 1].end, "top", "", foreign=True))
            at = last
            continue
        taken, item, behind = _longest(text, words[at:], vocabulary, tree)
        found.append(item)
        if behind:
            closing[_closes_at(text, words) - behind] = behind
        at += taken
    return found if any(each.foreign for each in found) else []


def _closes_at(text: str, words: Sequence[Word]) -> int:
    """How many words a line has before what it says in brackets or behind a comma."""
    gaps = (text[one.end : other.start] for one, other in pairwise(words))
    return next((at for at, gap in enumerate(gaps, 1) if "(" in gap or "," in gap), len(words))


def _may_begin(word: Word, vocabulary: Vocabulary) -> bool:
    if word.plain in vocabulary.phrases:
        return True
    parted = word.plain in vocabulary.fronts or _compound(word.plain, vocabulary) is not None
    return vocabulary.compounds and parted


def _longest(
    text: str, words: Sequence[Word], vocabulary: Vocabulary, tree: FamilyTree
) -> tuple[int, Item, int]:
    """What a line begins with, how many words that takes, and how many at its end."""
    english, count = english_name(text, words, tree)
    for taken, item, behind in _found(text, words, vocabulary, tree):
        if taken < count:
            break
        if taken == count and english in item.keys and item.role != "unsure":
            break  # the same in both
        twice = taken == count and item.role != "unsure"
        weak = twice or _is_weak(words[:taken], vocabulary, tree)
        return taken, replace(item, weak=weak), behind
    if count:
        item = Item(words[0].start, words[count - 1].end, "name", keys=(str(english),))
        return count, item, 0
    first = words[0]
    if not first.plain[0].isalpha():
        return 1, Item(first.start, first.end, "number"), 0
    role: Role | None = "unit" if is_a_unit(first.plain) else None
    return 1, Item(first.start, first.end, role), 0


def _found(
    text: str, words: Sequence[Word], vocabulary: Vocabulary, tree: FamilyTree
) -> Iterator[tuple[int, Item, int]]:
    """The phrases a line may begin with, the longest first."""
    made = _made_of(text, words, vocabulary, tree)
    for phrase in vocabulary.phrases.get(words[0].plain, ()):
        count = len(phrase.words)
        if not _stands(text, words, phrase):
            continue
        behind = len(phrase.behind)
        if behind and not _closed(text, words, phrase):
            continue
        if made and made[0] > count:
            yield made
            made = None
        item = _item_of(text, words, phrase, tree)
        if item is not None:
            yield count, item, behind
    if made:
        yield made


def _closed(text: str, words: Sequence[Word], phrase: Phrase) -> bool:
    """Whether the line ends in the words that close a phrase."""
    last = _closes_at(text, words)
    closing = words[max(len(phrase.words), last - len(phrase.behind)) : last]
    return tuple(each.plain for each in closing) == phrase.behind


def _stands(text: str, words: Sequence[Word], phrase: Phrase) -> bool:
    """Whether the words of a phrase stand at the start, with little between them."""
    count = len(phrase.words)
    if tuple(each.plain for each in words[:count]) != phrase.words:
        return False
    within = _WITHIN if phrase.role != "unsure" else _WITHIN_OR_COMMA  # *Rum, braun*
    return all(
        within.fullmatch(text[one.end : other.start]) for one, other in pairwise(words[:count])
    )


def _item_of(text: str, words: Sequence[Word], phrase: Phrase, tree: FamilyTree) -> Item | None:
    """The item that a phrase is; None for an ingredient that the tree has not."""
    if phrase.role == "head":
        return None
    end = words[len(phrase.words) - 1].end
    short = len(phrase.words[-1]) == 1 or phrase.role in ("unit", "hedge", "adjective")
    if short and text[end : end + 2] in (".", ". ", ".)"):
        end += 1  # the stop of an abbreviation
    item = Item(words[0].start, end, phrase.role, phrase.english or None, foreign=True)
    if phrase.role == "unsure":
        return replace(item, keys=phrase.keys, settled=phrase.settled)
    if phrase.role != "name":
        return replace(item, of_mixers=phrase.of_mixers)
    said = phrase.keys[0]
    key = tree.key_of(said)
    if key is None:
        return None
    return replace(item, english=tree.in_sentence(key) if key == said else said, keys=(key,))


def _made_of(
    text: str, words: Sequence[Word], vocabulary: Vocabulary, tree: FamilyTree
) -> tuple[int, Item, int] | None:
    """A thing by what it is made of: *Limettenscheibe*, *sirop de cannelle*."""
    if vocabulary.compounds:
        return _compounded(text, words, vocabulary, tree)
    head = vocabulary.heads.get(words[0].plain)
    if head is None:
        return None
    for link in vocabulary.links:
        past = 1 + len(link)
        if tuple(each.plain for each in words[1:past]) != link or len(words) == past:
            continue
        for count, said in _things(text, words[past:], vocabulary, tree):
            for name in said:
                key = tree.by_name.get(folded(f"{name} {head}"))
                if key is not None:
                    end = words[past + count - 1].end
                    item = Item(
                        words[0].start, end, "name", f"{name} {head}", keys=(key,), foreign=True
                    )
                    return past + count, item, 0
    return None


def _things(
    text: str, words: Sequence[Word], vocabulary: Vocabulary, tree: FamilyTree
) -> Iterator[tuple[int, tuple[str, ...]]]:
    """The names of a thing at the start in English, and how many words they take."""
    for phrase in vocabulary.phrases.get(words[0].plain, ()):
        if (
            phrase.role in ("name", "unsure")
            and len(phrase.keys) == 1
            and _stands(text, words, phrase)
        ):
            key = tree.key_of(phrase.keys[0])
            yield len(phrase.words), tree[key].all_names if key else phrase.keys
    said = text[words[0].start : words[0].end]
    yield 1, (vocabulary.fronts.get(words[0].plain, said),)


def _compounded(
    text: str, words: Sequence[Word], vocabulary: Vocabulary, tree: FamilyTree
) -> tuple[int, Item, int] | None:
    """*Limettenscheibe*, also as *Limetten-Scheibe*, where that is known in English."""
    joined, count = words[0].plain, 1
    parts = _compound(joined, vocabulary)
    if parts is None and len(words) > 1 and text[words[0].end : words[1].start] in ("-", " "):
        back = vocabulary.heads.get(words[1].plain)
        front = vocabulary.fronts.get(words[0].plain)
        parts, count = (front, back) if front and back else None, 2
    if parts is None:
        return None
    front, back = parts
    english = f"{front} {back}"
    key = tree.by_name.get(folded(english))
    if key is None:
        return None
    return (
        count,
        Item(words[0].start, words[count - 1].end, "name", english, keys=(key,), foreign=True),
        0,
    )


def _compound(word: str, vocabulary: Vocabulary) -> tuple[str, str] | None:
    """The two parts of a compound in English; a front that is none may be a maker's own word."""
    for at in range(len(word) - 3, 2, -1):
        head = vocabulary.heads.get(word[at:])
        if head is not None:
            return vocabulary.fronts.get(word[:at], word[:at]), head
    return None


def _is_weak(words: Sequence[Word], vocabulary: Vocabulary, tree: FamilyTree) -> bool:
    """Whether the words of a phrase are no sign of the language: short, or English too."""
    said = " ".join(each.plain for each in words)
    if said in vocabulary.weak:
        return True
    short = len(said.strip("'’")) < _SURE_LETTERS
    first = words[0].plain
    return len(words) == 1 and (short or (is_english(first, tree) and not is_lent(first)))


def clearness(items: Sequence[Item], text: str) -> int:
    """How many letters are of the language; 0 where none is a clear sign of it."""
    clear = any(_is_clear(place, items, text) for place in range(len(items)))
    return sum(each.end - each.start for each in items if each.foreign) if clear else 0


def _is_clear(place: int, items: Sequence[Item], text: str) -> bool:
    """Whether an item can be nothing but the language's."""
    item = items[place]
    if not item.foreign:
        return False
    before = items[place - 1] if place else None
    after = items[place + 1] if place + 1 < len(items) else None
    counted = before is not None and before.role in ("number", "hedge")
    if before is not None and before.role in ("of", "adjective") and place > 1:
        counted = items[place - 2].role == "number"  # a quarter of a spoon, a good pinch
    small = text[item.start].islower()
    if item.role == "unit":
        if unit_named(text[item.start : item.end]) is not None:
            return False  # *fl oz* is so everywhere
        if item.weak and after is not None and text[after.start : after.end] == "of":
            return False
        return counted or (before is None and not item.weak and after is not None)
    if item.role == "of":
        share = before is not None and before.role == "number" and small
        if share and after is not None and after.role == "name" and after.foreign:
            return True  # *1/4 d'ananas*
        if place > 1 and items[place - 2].role == "number" and items[place - 2].foreign:
            return small and after is not None  # *un goccio di soda*
        unit = before is not None and before.role == "unit" and place > 1
        return unit and items[place - 2].role == "number" and small and after is not None
    if item.role == "number":
        measures = after is not None and after.role in ("unit", "name", "unsure", "adjective")
        article = after is not None and after.role == "number"  # *une ½ orange*
        return article or (not item.weak and measures)
    if item.role == "adjective":
        named = after is not None and after.role in ("name", "unsure", "unit")
        qualified = before is not None and before.role == "name"
        return not item.weak and small and (named or qualified)
    if item.role == "or":
        named = before is not None and after is not None and before.role == after.role == "name"
        return named and not item.weak and small
    return not item.weak and item.role not in ("the", "and", "to", "each")


def has_small_nouns(items: Sequence[Item], vocabulary: Vocabulary, text: str) -> bool:
    """Whether nouns stand in small letters, where the language gives them capitals."""
    nouns = [each for each in items if each.foreign and each.role in ("name", "unit", "unsure")]
    return vocabulary.capitals and not any(text[each.start].isupper() for each in nouns)
