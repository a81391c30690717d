"""A line of German, French, Italian or Spanish, put into the English that lines are read by.

The words come from `resources/languages`; what is none of them stays as it
stands, so nothing is lost, and no switch says which language it is. A line is
put into English only where something in it cannot be English:

| written                     | read as                    |
|-----------------------------|----------------------------|
| 2 cl Limettensaft           | 2 cl lime juice            |
| le jus d'un demi-citron     | juice of 1/2 lemon         |
| un cucchiaio e mezzo di … | 1 1/2 tbsp of …            |
| mit Sodawasser auffüllen    | top with soda water        |
| tequila blanca, vin sec     | white tequila, wine, dry   |
| 2 oz de jugo de limón       | as it is: lime or lemon?   |
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace
from functools import lru_cache
from itertools import pairwise

from barkeep.domain.amounts.spoken import HOW_FULL, NUMBER_WORDS
from barkeep.domain.amounts.units import unit_named
from barkeep.domain.ingredients.languages import (
    WORD,
    Phrase,
    Role,
    Vocabulary,
    may_be_foreign,
    plain,
    vocabularies,
)
from barkeep.domain.ingredients.names import ADJECTIVES
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import folded

_ENGLISH_LIST = """
    with top up off fill float rinse garnish juice zest peel twist to taste serve about over under
    into in on at and or plus then for the from optional optionally cut chilled chopped halved
    muddled expressed flamed crushed grated long each strong weak if you like needed as well such
    between two shaken stirred built blended half quarter whole rim glass circa approx
    approximately roughly nearly almost maybe perhaps dozen no number
"""
_ENGLISH = frozenset(_ENGLISH_LIST.split()) | ADJECTIVES | NUMBER_WORDS | frozenset(HOW_FULL)
"""Words of lines that are plainly English, so that nothing need be looked up for them."""

_LENT_LIST = """
    de di d' du del la le al blanc blanche blanca rouge rosso rosa rosato rose bianco bianca sec
    rhum ron citron menthe framboise poire peche mure cassis fraise banane vieux brun sirop canne
    anejo verde noir verte
"""
_LENT = frozenset(_LENT_LIST.split())
"""Words that English has only within names: *crème de cassis*, *vermouth rosso*."""

_WITHIN = re.compile(r"[ .’'-]{0,3}")
"""What may stand between the words of a phrase."""

_LONGEST_NAME = 5
_SURE_LETTERS = 4
"""A shorter word is no sign of a language by itself."""

_FRACTION = re.compile(r"[0-9]/[0-9]")


@dataclass(frozen=True, slots=True)
class Unsure:
    """Words of a line that name one thing or another, and where they stand in it, from 0."""

    words: str
    at: int
    may_be: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class _Piece:
    """A stretch of the English text and the stretch of the line that it was."""

    start: int
    end: int
    from_start: int
    from_end: int
    same: bool


@dataclass(frozen=True, slots=True)
class Said:
    """A line in English. `language` is None where it was so already, and `text` as it was."""

    text: str
    language: str | None = None
    original: str = ""
    pieces: tuple[_Piece, ...] = ()
    unsure: tuple[Unsure, ...] = ()

    def place(self, at: int) -> int:
        """The place in the line as it was written of a place in the English text, from 0."""
        if self.language is None:
            return at
        for each in self.pieces:
            if each.start <= at < each.end:
                return each.from_start + (at - each.start if each.same else 0)
        return min(
            (each.from_end for each in self.pieces if each.start > at), default=len(self.original)
        )

    def as_written(self, english: str) -> str:
        """The words as they were written that part of the English text stands for.

        A text that is not found in it is put together of two that are, else left.
        """
        if self.language is None:
            return english
        whole = self._written(english)
        if whole is not None:
            return whole
        gaps = [found.start() for found in re.finditer(" ", english)]
        for gap in reversed(gaps):
            front, back = self._written(english[:gap]), self._written(english[gap + 1 :])
            if front is not None and back is not None:
                return f"{front} {back}"
        return english

    def _written(self, english: str) -> str | None:
        at = self.text.find(english)
        if at < 0 or not english:
            return None
        last = at + len(english)
        touched = [each for each in self.pieces if each.start < last and each.end > at]
        if not touched:
            return None
        start = min(self.place(max(at, each.start)) for each in touched)
        end = max(
            each.from_start + (min(last, each.end) - each.start) if each.same else each.from_end
            for each in touched
        )
        return self.original[start:end].strip()


@dataclass(frozen=True, slots=True)
class _Word:
    """A word of the line, compared as `plain`."""

    start: int
    end: int
    plain: str


@dataclass(frozen=True, slots=True)
class _Item:
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


def in_english(text: str, tree: FamilyTree) -> Said:
    """The line in English, where its words are plainly another language's; else as it is."""
    words = [_Word(each.start(), each.end(), plain(each.group())) for each in WORD.finditer(text)]
    if _is_all_english(text, words, tree):
        return Said(text)
    readings = [
        (_score(items, text), vocabulary, items)
        for vocabulary in vocabularies()
        if (items := _items(text, words, vocabulary, tree))
    ]
    best = max((score for score, _, _ in readings), default=0)
    if best == 0:
        return Said(text)
    likely = [each for each in readings if each[0] == best]
    if len(likely) > 1:
        likely = [each for each in likely if not _small_nouns(each[2], each[1], text)] or likely
    said = [_said(text, vocabulary, items, tree) for _, vocabulary, items in likely]
    asking = [each for each in said if each.unsure]
    alike = len({each.text for each in said}) == 1
    return (asking or said)[0] if asking or alike else Said(text)


def _is_all_english(text: str, words: Sequence[_Word], tree: FamilyTree) -> bool:
    """Whether every word is English, or lent to it and in the name that it was lent for."""
    strange = [each.plain for each in words if not _is_english(each.plain, tree)]
    if strange and any(map(may_be_foreign, strange)):
        return False
    at = 0
    while at < len(words):
        lent = any(each.plain in _LENT for each in words[at : at + _LONGEST_NAME])
        count = _english_name(text, words[at:], tree)[1] if lent else 0
        if not count and words[at].plain in _LENT:
            return False
        at += count or 1
    return True


def _is_english(word: str, tree: FamilyTree) -> bool:
    return (
        not word[0].isalpha()
        or word in tree.words
        or word in _ENGLISH
        or (len(word) > 1 and word.rstrip("s") in tree.words)
        or _is_a_unit(word)
    )


@lru_cache(maxsize=4096)  # the same few words stand in every line
def _is_a_unit(word: str) -> bool:
    return unit_named(word) is not None


# --- which phrases stand in a line ---------------------------------------------------------------


def _items(
    text: str, words: Sequence[_Word], vocabulary: Vocabulary, tree: FamilyTree
) -> list[_Item]:
    """The line in its phrases; none where not one is of the language."""
    if not any(_may_begin(each, vocabulary) for each in words):
        return []
    found: list[_Item] = []
    closing: list[_Item] = []
    at, ends = 0, len(words)
    while at < ends:
        taken, item, behind = _longest(text, words[at:ends], vocabulary, tree)
        found.append(item)
        if behind:
            ends -= behind
            end = _Item(words[ends].start, words[ends + behind - 1].end, "top", "", foreign=True)
            closing.append(end)
        at += taken
    return [*found, *closing] if any(each.foreign for each in found) else []


def _may_begin(word: _Word, vocabulary: Vocabulary) -> bool:
    if word.plain in vocabulary.phrases:
        return True
    parted = word.plain in vocabulary.fronts or _compound(word.plain, vocabulary) is not None
    return vocabulary.compounds and parted


def _longest(
    text: str, words: Sequence[_Word], vocabulary: Vocabulary, tree: FamilyTree
) -> tuple[int, _Item, int]:
    """What a line begins with, how many words that takes, and how many at its end."""
    english, count = _english_name(text, words, tree)
    for taken, item, behind in _found(text, words, vocabulary, tree):
        if taken < count:
            break
        if taken == count and english in item.keys:
            break  # the same in both
        return taken, _weakened(item, words[:taken], taken == count, vocabulary, tree), behind
    if count:
        item = _Item(words[0].start, words[count - 1].end, "name", keys=(str(english),))
        return count, item, 0
    first = words[0]
    if not first.plain[0].isalpha():
        return 1, _Item(first.start, first.end, "number"), 0
    role: Role | None = "unit" if _is_a_unit(first.plain) else None
    return 1, _Item(first.start, first.end, role), 0


def _english_name(text: str, words: Sequence[_Word], tree: FamilyTree) -> tuple[str | None, int]:
    """The key of the longest English name a line begins with, and its number of words."""
    for count in range(min(_LONGEST_NAME, len(words)), 0, -1):
        said = folded(text[words[0].start : words[count - 1].end])
        key = tree.by_name.get(said) or tree.by_name.get(said.removesuffix("s"))
        if key is not None:
            return key, count
    return None, 0


def _found(
    text: str, words: Sequence[_Word], vocabulary: Vocabulary, tree: FamilyTree
) -> Iterator[tuple[int, _Item, int]]:
    """The phrases a line may begin with, the longest first."""
    made = _made_of(text, words, vocabulary, tree)
    for phrase in vocabulary.phrases.get(words[0].plain, ()):
        count = len(phrase.words)
        if not _stands(text, words, phrase):
            continue
        behind = len(phrase.behind)
        if behind and tuple(each.plain for each in words[count:][-behind:]) != phrase.behind:
            continue
        if made and made[0] > count:
            yield made
            made = None
        item = _item_of(text, words, phrase, tree)
        if item is not None:
            yield count, item, behind
    if made:
        yield made


def _stands(text: str, words: Sequence[_Word], phrase: Phrase) -> bool:
    """Whether the words of a phrase stand at the start, with little between them."""
    count = len(phrase.words)
    if tuple(each.plain for each in words[:count]) != phrase.words:
        return False
    return all(
        _WITHIN.fullmatch(text[one.end : other.start]) for one, other in pairwise(words[:count])
    )


def _item_of(text: str, words: Sequence[_Word], phrase: Phrase, tree: FamilyTree) -> _Item | None:
    """The item that a phrase is; None for an ingredient that the tree has not."""
    if phrase.role == "head":
        return None
    end = words[len(phrase.words) - 1].end
    if len(phrase.words[-1]) == 1 and text[end : end + 1] == ".":
        end += 1  # the stop of an abbreviation
    item = _Item(words[0].start, end, phrase.role, phrase.english or None, foreign=True)
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
    text: str, words: Sequence[_Word], vocabulary: Vocabulary, tree: FamilyTree
) -> tuple[int, _Item, int] | None:
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
                    item = _Item(
                        words[0].start, end, "name", f"{name} {head}", keys=(key,), foreign=True
                    )
                    return past + count, item, 0
    return None


def _things(
    text: str, words: Sequence[_Word], vocabulary: Vocabulary, tree: FamilyTree
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
    text: str, words: Sequence[_Word], vocabulary: Vocabulary, tree: FamilyTree
) -> tuple[int, _Item, int] | None:
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
        _Item(words[0].start, words[count - 1].end, "name", english, keys=(key,), foreign=True),
        0,
    )


def _compound(word: str, vocabulary: Vocabulary) -> tuple[str, str] | None:
    """The two parts of a compound in English; a front that is none may be a maker's own word."""
    for at in range(len(word) - 3, 2, -1):
        head = vocabulary.heads.get(word[at:])
        if head is not None:
            return vocabulary.fronts.get(word[:at], word[:at]), head
    return None


def _weakened(
    item: _Item,
    words: Sequence[_Word],
    also_english: bool,
    vocabulary: Vocabulary,
    tree: FamilyTree,
) -> _Item:
    """The item, marked where it is no sign of the language."""
    said = " ".join(each.plain for each in words)
    short = len(words) == 1 and len(said.strip("'’")) < _SURE_LETTERS
    known = len(words) == 1 and _is_english(words[0].plain, tree)
    weak = also_english or short or known or said in vocabulary.weak
    return replace(item, weak=weak) if weak else item


# --- which language it is ------------------------------------------------------------------------


def _score(items: Sequence[_Item], text: str) -> int:
    """How many letters are of the language; 0 where none is a clear sign of it."""
    clear = any(_is_clear(place, items, text) for place in range(len(items)))
    return sum(each.end - each.start for each in items if each.foreign) if clear else 0


def _is_clear(place: int, items: Sequence[_Item], text: str) -> bool:
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
        return counted or (before is None and not item.weak and after is not None)
    if item.role == "of":
        unit = before is not None and before.role == "unit" and place > 1
        return unit and items[place - 2].role == "number" and small and after is not None
    if item.role == "number":
        measures = after is not None and after.role in ("unit", "name", "unsure", "adjective")
        return not item.weak and measures
    if item.role == "adjective":
        named = after is not None and after.role in ("name", "unsure", "unit")
        qualified = before is not None and before.role == "name"
        return not item.weak and small and (named or qualified)
    return not item.weak and item.role not in ("the", "and", "or", "to", "each")


def _small_nouns(items: Sequence[_Item], vocabulary: Vocabulary, text: str) -> bool:
    """Whether nouns stand in small letters, where the language gives them capitals."""
    nouns = [each for each in items if each.foreign and each.role in ("name", "unit", "unsure")]
    return vocabulary.capitals and not any(text[each.start].isupper() for each in nouns)


# --- what it is in English -----------------------------------------------------------------------

_KNOWN: frozenset[Role] = frozenset({"name", "unsure", "unit", "number", "adjective", "part"})
_LEADING: frozenset[Role] = frozenset({"part", "top", "and", "or", "hedge", "each", "of"})


def _said(text: str, vocabulary: Vocabulary, items: Sequence[_Item], tree: FamilyTree) -> Said:
    settled = [_settled(each, text, tree) for each in items]
    line = _Line(text, settled, tree, adjectives_after=bool(vocabulary.links))
    line.leave_asides()
    line.say_numbers()
    line.say_joints()
    line.say_units()
    line.say_adjectives()
    line.say_notes()
    english, pieces = _composed(text, line.items)
    unsure = (*line.unsure(), *line.strangers())
    return Said(english, vocabulary.key, text, pieces, unsure)


def _settled(item: _Item, text: str, tree: FamilyTree) -> _Item:
    """What may be one thing or another, settled by a word beside it where one does."""
    if item.role != "unsure":
        return item
    beside = {plain(each.group()) for each in WORD.finditer(text)}
    key = next((key for word, key in item.settled.items() if plain(word) in beside), None)
    if key is None or key not in tree:
        return item
    return replace(item, role="name", english=tree.in_sentence(key), keys=(key,))


class _Line:
    """The items of a line while each finds its English; an item is dropped by saying ""."""

    def __init__(
        self, text: str, items: list[_Item], tree: FamilyTree, *, adjectives_after: bool
    ) -> None:
        self.text = text
        self.items = items
        self.tree = tree
        self.adjectives_after = adjectives_after

    def before(self, place: int) -> int | None:
        """The place of the nearest item before that is said."""
        return next((at for at in range(place - 1, -1, -1) if self.items[at].english != ""), None)

    def after(self, place: int) -> int | None:
        """The place of the nearest item behind that is said."""
        behind = range(place + 1, len(self.items))
        return next((at for at in behind if self.items[at].english != ""), None)

    def role(self, place: int | None) -> Role | None:
        """What an item does; None where there is none, or one that is not known."""
        return None if place is None else self.items[place].role

    def joined(self, one: int | None, other: int | None) -> bool:
        """Whether nothing but space parts two items."""
        if one is None or other is None:
            return False
        gap = self.text[self.items[one].end : self.items[other].start]
        return not gap.strip(" -'’") or all(
            not self.text[a.end : b.start].strip(" -'’")
            for a, b in zip(self.items[one:other], self.items[one + 1 : other + 1], strict=True)
        )

    def say(self, place: int, english: str | None) -> None:
        """Give an item its English."""
        self.items[place] = replace(self.items[place], english=english)

    def written(self, place: int) -> str:
        """What an item says, in English where that is known."""
        item = self.items[place]
        return self.text[item.start : item.end] if item.english is None else item.english

    def leave_asides(self) -> None:
        """Leave words in brackets as they are that only tell something: *(aus dem Eisfach)*."""
        for aside in re.finditer(r"\([^()]*\)", self.text):
            within = [
                at
                for at, each in enumerate(self.items)
                if aside.start() <= each.start and each.end <= aside.end()
            ]
            roles = {self.items[at].role for at in within}
            if None in roles and not roles & {"name", "unsure", "unit", "number"}:
                for at in within:
                    self.items[at] = replace(self.items[at], role=None, english=None)

    def say_numbers(self) -> None:
        """*Ein halber* is 1/2, *due e mezzo* 2 1/2, *una onza y media* 1 1/2 oz."""
        for at, item in enumerate(self.items):
            if item.role != "number":
                continue
            after = self.after(at)
            if item.english == "a few" and self.role(after) == "number":
                self.say(at, "about")
            if _FRACTION.fullmatch(self.written(at)):
                self._say_fraction(at)

    def _say_fraction(self, at: int) -> None:
        before = self.before(at)
        if before is not None and self.role(before) == "number" and self.joined(before, at):
            if self.written(before) == "1" and self.items[at].foreign:
                self.say(before, "")
            elif self.items[at].foreign:
                self.items[at] = replace(self.items[at], role=None, english=None)
            return
        if before is None or self.role(before) != "and" or not self.items[before].foreign:
            return
        counted = self.before(before)
        if self._is_whole(counted):
            self.say(before, "")
            return
        number = None if counted is None else self.before(counted)
        if counted is None or self.role(counted) != "unit" or not self._is_whole(number):
            return
        share = replace(self.items[at], english=self.written(at))
        self.say(before, "")
        self.items.insert(counted, share)
        del self.items[at + 1]

    def _is_whole(self, place: int | None) -> bool:
        return self.role(place) == "number" and self.written(int(place or 0)).isdecimal()

    def say_joints(self) -> None:
        """The small words between: *of*, *the*, *and*, *or*, *to*, *each*."""
        for at, item in enumerate(self.items):
            if not item.foreign or item.english == "":
                continue
            before, after = self.before(at), self.after(at)
            if item.role == "of":
                self._say_of(at, before, after)
            elif item.role == "the":
                leading = before is None or self.role(before) in _LEADING | {"unit", "number"}
                known = self.role(after) in _KNOWN
                self.say(at, "" if leading and known else None)
            elif item.role in ("and", "or"):
                known = self.role(before) in _KNOWN or self.role(after) in _KNOWN
                self.say(at, item.role if known else None)
            elif item.role == "to":
                ranged = self.role(before) == self.role(after) == "number"
                self.say(at, "to" if ranged else None)
            elif item.role == "each":
                self._say_each(at, before)

    def _say_of(self, at: int, before: int | None, after: int | None) -> None:
        role = self.role(before)
        if role == "unit" or (role == "adjective" and before is not None and before > 1):
            self.say(at, "of")
        elif role == "number":
            self.say(at, "" if self.role(after) == "unit" else "of")
        elif before is None or role in _LEADING:
            known = self.role(after) in _KNOWN or self.role(after) == "the"
            self.say(at, "" if known or role in ("part", "top") else None)
        else:
            self.say(at, None)

    def _say_each(self, at: int, before: int | None) -> None:
        """*Je 2 cl Gin und Wermut* is 2 cl each of gin and vermouth."""
        names = sum(each.role == "name" for each in self.items)
        if before is not None:
            self.say(at, "each")
        elif names < 2 or [self.role(at + 1), self.role(at + 2)] != ["number", "unit"]:
            self.say(at, None)
        else:
            self.say(at, "")
            self.say(at + 2, f"{self.written(at + 2)} each of")
            if self.role(at + 3) == "of" if at + 3 < len(self.items) else False:
                self.say(at + 3, "")

    def say_units(self) -> None:
        """A dash of what comes out of a large bottle is a splash, where the word means both."""
        for at, item in enumerate(self.items):
            if item.role == "unit" and item.of_mixers:
                named = next((each for each in self.items[at:] if each.role == "name"), None)
                kinds = ("mixer", "sparkling-wine")
                if named and any(self.tree.is_a(named.keys[0], kind) for kind in kinds):
                    self.say(at, item.of_mixers)

    def say_adjectives(self) -> None:
        """*Rum weiß*, *tequila blanca*: before the name where that is a name, else a note."""
        at = 0
        while at < len(self.items):
            item = self.items[at]
            if item.role == "adjective" and item.foreign:
                at -= self._say_adjective(at)
            at += 1

    def _say_adjective(self, at: int) -> int:
        """Place one adjective; how many items it took up."""
        item, before, after = self.items[at], self.before(at), self.after(at)
        ahead = self.role(before)
        if self.joined(at, after) and self.role(after) in ("name", "unsure", "unit", "adjective"):
            in_front = ahead in {None, "number", "unit", "adjective"} | _LEADING
            if not self.adjectives_after or (ahead != "name" and in_front):
                return 0
        if before is None or not self.joined(before, at):
            return 0
        if ahead == "unit" and item.english in HOW_FULL:
            self.items[before], self.items[at] = item, self.items[before]
            return 0
        if ahead == "name" and self._is_small(item):
            english = f"{item.english} {self.written(before)}"
            key = self.tree.by_name.get(folded(english))
            if key is None:
                self.say(at, f", {item.english}")
                return 0
            name = self.items[before]
            self.items[before] = replace(
                name, end=item.end, english=english, keys=(key,), foreign=True
            )
            del self.items[at]
            return 1
        if ahead == "adjective":
            self.say(at, f", {item.english}")
        elif ahead is None or ahead == "name":
            self.say(at, None)
        return 0

    def _is_small(self, item: _Item) -> bool:
        return self.text[item.start].islower()

    def say_notes(self) -> None:
        """What is done with it, and what is said beside it."""
        for at, item in enumerate(self.items):
            before, after = self.before(at), self.after(at)
            if not item.foreign or not item.english:
                continue
            if item.role == "part":
                self._say_part(at, after)
            elif item.role == "hedge":
                known = self.role(after) in ("number", "unit", "hedge")
                self.say(at, item.english if known else None)
            elif item.role == "garnish" and before is None and self.joined(at, after):
                self.say(at, f"{item.english}:")
            elif item.role in ("after", "note") and self.joined(before, at):
                self.say(at, f", {item.english}")
        first = self.items[0]
        if first.role == "after" and self.joined(0, self.after(0)):
            self.items = [*self.items[1:], replace(first, english=f", {first.english}")]

    def _say_part(self, at: int, after: int | None) -> None:
        english = self.written(at)
        if after is None or not self.joined(at, after):
            self.say(at, english.removesuffix(" of"))
        elif self.role(after) is None:
            self.say(at, None)

    def unsure(self) -> Iterator[Unsure]:
        """What may be one thing or another."""
        for item in self.items:
            if item.role == "unsure":
                yield Unsure(self.text[item.start : item.end], item.start, item.keys)

    def strangers(self) -> Iterator[Unsure]:
        """Words beside a name that would be taken for a maker's, but have no capital."""
        for at, item in enumerate(self.items):
            if item.role is not None or not self.text[item.start].islower():
                continue
            before, after = self.before(at), self.after(at)
            named = self.role(after) == "name" and self.joined(at, after)
            named = named or (self.role(before) == "name" and self.joined(before, at))
            if named:
                yield Unsure(self.text[item.start : item.end], item.start, ())


def _composed(text: str, items: Sequence[_Item]) -> tuple[str, tuple[_Piece, ...]]:
    """The English text, and where each stretch of it comes from."""
    order = sorted(items, key=lambda each: each.start)
    following = dict(zip(map(id, order), order[1:], strict=False))
    english, pieces = "", list[_Piece]()

    def add(said: str, start: int, end: int) -> None:
        nonlocal english
        same = said == text[start:end]
        pieces.append(_Piece(len(english), len(english) + len(said), start, end, same))
        english += said

    add(text[: order[0].start], 0, order[0].start)
    last: _Item | None = None
    gap = ""
    for item in items:
        said = text[item.start : item.end] if item.english is None else item.english
        if last is not None:
            follows = following.get(id(last)) is item
            gap += text[last.end : item.start] if follows else " "
        if said and last is not None and english.strip():
            changed = item.english is not None or not pieces[-1].same
            add(_gap(gap, said, changed=changed), item.start, item.start)
        if said.startswith(", "):
            said = said[2:]
        add(said, item.start, item.end)
        gap = "" if said else gap
        last = item
    add(text[order[-1].end :], order[-1].end, len(text))
    return english, tuple(pieces)


def _gap(gap: str, said: str, *, changed: bool) -> str:
    """What stands between two items: a comma before a note, else as it was, once."""
    plain_gap = not gap.strip(" -'’")
    if said.startswith(", "):
        return ", " if plain_gap else re.sub(" {2,}", " ", gap)
    if plain_gap and (changed or not gap):
        return " "
    return re.sub(" {2,}", " ", gap)
