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
from collections.abc import Sequence
from dataclasses import dataclass

from barkeep.domain.ingredients.languages import Vocabulary, vocabularies
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.spec_text.english import is_all_english, words_in
from barkeep.domain.spec_text.foreign_grammar import Sentence, Unsure, is_plain, settled
from barkeep.domain.spec_text.foreign_phrases import Item, clearness, has_small_nouns, items_in


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
    """A line in English. `language` is None where it was so already, and `text` as it was.

    `told` are the language's words that name nothing.
    """

    text: str
    language: str | None = None
    original: str = ""
    pieces: tuple[_Piece, ...] = ()
    unsure: tuple[Unsure, ...] = ()
    told: frozenset[str] = frozenset()

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


def in_english(text: str, tree: FamilyTree) -> Said:
    """The line in English, where its words are plainly another language's; else as it is."""
    if is_all_english(text, tree):
        return Said(text)
    words = words_in(text)
    readings = [
        (clearness(items, text), vocabulary, items)
        for vocabulary in vocabularies()
        if (items := items_in(text, words, vocabulary, tree))
    ]
    best = max((score for score, _, _ in readings), default=0)
    if best == 0:
        return Said(text)
    likely = [each for each in readings if each[0] == best]
    if len(likely) > 1:
        likely = [each for each in likely if not has_small_nouns(each[2], each[1], text)] or likely
    said = [_said(text, vocabulary, items, tree) for _, vocabulary, items in likely]
    asking = [each for each in said if each.unsure]
    alike = len({each.text for each in said}) == 1
    return (asking or said)[0] if asking or alike else Said(text)


def _said(text: str, vocabulary: Vocabulary, items: Sequence[Item], tree: FamilyTree) -> Said:
    sure = [settled(each, text, tree) for each in items]
    line = Sentence(text, sure, tree, vocabulary)
    line.leave_asides()
    line.leave_shares()
    line.say_eggs()
    line.say_loose()
    line.say_numbers()
    line.say_joints()
    line.say_units()
    line.say_adjectives()
    line.say_notes()
    english, pieces = _composed(text, line.items)
    unsure = (*line.unsure(), *line.strangers())
    return Said(english, vocabulary.key, text, pieces=pieces, unsure=unsure, told=vocabulary.told)


def _composed(text: str, items: Sequence[Item]) -> tuple[str, tuple[_Piece, ...]]:
    """The English text, and where each stretch of it comes from."""
    order = sorted(items, key=lambda each: each.start)
    following = dict(zip(map(id, order), order[1:], strict=False))
    english, pieces = "", list[_Piece]()

    def add(said: str, start: int, end: int) -> None:
        nonlocal english
        same = said == text[start:end]
        begins = len(english)
        pieces.append(_Piece(begins, begins + len(said), start, end, same=same))
        english += said

    add(text[: order[0].start], 0, order[0].start)
    last: Item | None = None
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
    plain_gap = is_plain(gap)
    if said.startswith(", "):
        return ", " if plain_gap else re.sub(" +(?=[ ,;)])", "", gap)
    if plain_gap and (changed or not gap):
        return " "
    return re.sub(" +(?=[ ,;)])", "", gap)
