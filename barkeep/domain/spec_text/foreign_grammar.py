"""What the phrases of a foreign line are in English: each by what stands beside it."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass, replace
from itertools import pairwise

from barkeep.domain.amounts.spoken import HOW_FULL
from barkeep.domain.ingredients.languages import WORD, Role, Vocabulary, plain
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import folded
from barkeep.domain.spec_text.english import is_english
from barkeep.domain.spec_text.foreign_phrases import Item

_FRACTION = re.compile(r"[0-9]/[0-9]|[¼-¾⅐-⅞]")
_KNOWN: frozenset[Role] = frozenset({"name", "unsure", "unit", "number", "adjective", "part"})
_JOINTS: frozenset[Role] = frozenset({"of", "the", "and", "or", "to", "each"})
_PARTS_OF_AN_EGG = {"white": "egg-white", "yellow": "egg-yolk", "red": "egg-yolk"}

_DONE_TO_IT_LIST = """
    halved torn pitted toasted diced mashed muddled strained flamed frozen runny pasteurised crushed
    dried unwhipped unwaxed coarse
"""
_DONE_TO_IT = frozenset(_DONE_TO_IT_LIST.split()) | {
    *("lightly whipped", "cut into wedges", "cut into slices", "cut into quarters", "freshly made"),
}
"""What is told of a thing behind its name, unless the two are a name of their own."""

_LEADING: frozenset[Role] = frozenset({"part", "top", "and", "or", "hedge", "each", "of"})


@dataclass(frozen=True, slots=True)
class Unsure:
    """Words of a line that name one thing or another, and where they stand in it, from 0."""

    words: str
    at: int
    may_be: tuple[str, ...]


def settled(item: Item, text: str, tree: FamilyTree) -> Item:
    """What may be one thing or another, settled by a word beside it where one does."""
    if item.role != "unsure":
        return item
    beside = {plain(each.group()) for each in WORD.finditer(text)}
    key = next((key for word, key in item.settled.items() if plain(word) in beside), None)
    if key is None or key not in tree:
        return item
    return replace(item, role="name", english=tree.in_sentence(key), keys=(key,))


class Sentence:
    """The items of a line while each finds its English; an item is dropped by saying ""."""

    def __init__(
        self, text: str, items: list[Item], tree: FamilyTree, vocabulary: Vocabulary
    ) -> None:
        self.text = text
        self.items = items
        self.tree = tree
        self.adjectives_after = bool(vocabulary.links)
        self.told = vocabulary.told

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
        return is_plain(gap) or all(
            is_plain(self.text[a.end : b.start]) for a, b in pairwise(self.items[one : other + 1])
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
        for aside in re.finditer(r"(?<=[(,])[^(),]*(?=,[^()]*\)|\))", self.text):
            within = [
                at
                for at, each in enumerate(self.items)
                if aside.start() <= each.start and each.end <= aside.end()
            ]
            roles = {self.items[at].role for at in within}
            told = None in roles or (roles and roles <= _JOINTS | {"unit"})
            if told and not roles & {"name", "unsure", "number"}:
                for at in within:
                    self.items[at] = replace(self.items[at], role=None, english=None)

    def leave_shares(self) -> None:
        """Leave what is told of a share of it: *eine davon als Deko* makes no garnish of it all.

        So does *(più una per decorare)*: a number and no name behind a comma or in brackets.
        """
        for share in list(self.items):
            starts = max(self.text.rfind(mark, 0, share.start) for mark in ",(")
            told = [at for at, each in enumerate(self.items) if each.start > starts >= 0]
            roles = {self.items[at].role for at in told if self.items[at].start < share.start}
            counted = "number" in roles and not roles & {"name", "unsure"}
            if share.role == "of them" or (counted and share.english == "for garnish"):
                for at in told:
                    self.items[at] = replace(self.items[at], role=None, english=None)

    def say_eggs(self) -> None:
        """*L'albume di un uovo* is 1 egg white."""
        for at in range(len(self.items) - 3):
            part, of, number, egg = self.items[at : at + 4]
            of_one = of.role == "of" and number.role == "number" and egg.keys == ("egg",)
            part = self._part_of_an_egg(part) if of_one else part
            if part.keys in (("egg-white",), ("egg-yolk",)) and of_one:
                dropped = (replace(of, english=""), replace(egg, english=""))
                self.items[at : at + 4] = [number, part, *dropped]
                return

    def _part_of_an_egg(self, part: Item) -> Item:
        """*Le blanc d'un œuf*: its colour names the part."""
        key = _PARTS_OF_AN_EGG.get(part.english or "")
        if part.role != "adjective" or key is None:
            return part
        return replace(part, role="name", english=self.tree.in_sentence(key), keys=(key,))

    def say_loose(self) -> None:
        """*Feuilles de menthe* without a number are mint leaves, and not one leaf of it."""
        at = next((at for at, each in enumerate(self.items) if each.english != ""), 0)
        unit, after = self.items[at], self.after(at)
        if unit.role != "unit" or not unit.foreign or after is None:
            return
        named = after if self.role(after) == "name" else self.after(after)
        if named is None or self.role(named) != "name" or self.role(after) not in ("of", "name"):
            return
        english = f"{self.written(named)} {unit.english}"
        key = self.tree.by_name.get(folded(english))
        if key is not None:
            whole = replace(unit, end=self.items[named].end, role="name", english=english)
            self.items[at : named + 1] = [replace(whole, keys=(key,))]

    def say_numbers(self) -> None:
        """*Ein halber* is 1/2, *due e mezzo* 2 1/2, *una onza y media* 1 1/2 oz."""
        for at, item in enumerate(self.items):
            if item.role != "number":
                continue
            after = self.after(at)
            if item.english == "a few" and self.role(after) == "number":
                self.say(at, "about")
            if _FRACTION.fullmatch(self.written(at)):
                self._say_half_of_one(at)
                self._say_fraction(at)

    def _say_half_of_one(self, at: int) -> None:
        """*La moitié d'un citron* is 1/2 lemon."""
        of = self.after(at)
        one = of if of is None or self.role(of) != "of" else self.after(of)
        if of is None or one is None or self.role(one) != "number":
            return
        if self.written(one) == "1" and self.items[one].foreign:
            self.say(of, "")
            self.say(one, "")

    def _say_fraction(self, at: int) -> None:
        before = self.before(at)
        if before is not None and self.role(before) == "number" and self.joined(before, at):
            article = self.items[before].foreign or self.items[at].foreign  # *un 1/2 citron*
            if self.written(before) == "1" and article:
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
        after = self.after(at)
        ends = after is None or not self.joined(at, after)  # un limone e mezzo
        measures = self.role(counted) == "unit" or (ends and self.role(counted) == "name")
        if counted is None or not measures or not self._is_whole(number):
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
                leading = leading or not self.joined(before, at)
                known = self.role(after) in _KNOWN
                self.say(at, "" if leading and known else None)
            elif item.role in ("and", "or"):
                known = self.role(before) in _KNOWN or self.role(self._beyond(at)) in _KNOWN
                self.say(at, item.role if known else None)
            elif item.role == "to":
                ranged = self.role(before) == self.role(after) == "number"
                self.say(at, "to" if ranged else "" if self._is_strength(after) else None)
            elif item.role == "such as":
                self._say_such_as(at, before, after)
            elif item.role == "with":
                self.say(at, "" if self._is_strength(after) else None)
            elif item.role == "each":
                self._say_each(at, before)

    def _say_such_as(self, at: int, before: int | None, after: int | None) -> None:
        """*Gin tipo London Dry* is gin, London Dry."""
        if after is None or self.role(before) != "name" or not self.joined(at, after):
            self.say(at, None)
            return
        self.say(at, "")
        self.say(after, f", {self.written(after)}")

    def _beyond(self, place: int) -> int | None:
        """The place of the nearest item behind that is more than *of* and *the*."""
        after = self.after(place)
        while self.role(after) in ("of", "the"):
            after = self.after(int(after or 0))
        return after

    def _is_strength(self, place: int | None) -> bool:
        """*50 %*, *55°*."""
        if place is None or self.role(place) != "number":
            return False
        return self.text[self.items[place].end :].lstrip().startswith(("%", "°"))

    def _say_of(self, at: int, before: int | None, after: int | None) -> None:
        role = self.role(before)
        if role == "unit" or (role == "adjective" and before is not None and before > 1):
            self.say(at, "of")
        elif role == "number":
            self.say(at, "" if self.role(after) == "unit" else "of")
        elif before is None or role in _LEADING:
            known = self.role(after) in _KNOWN or self.role(after) == "the"
            self.say(at, "" if known or role in ("part", "top") else None)
        elif self.role(after) == "number" and self.role(self.after(int(after or 0))) == "years":
            self.say(at, "")  # *rum di 8 anni*
        elif role == "name" and self._is_a_maker(at):
            self.say(at, ", from")
        else:
            self.say(at, None)

    def _is_a_maker(self, of: int) -> bool:
        """Whether all behind is unknown and has capitals: *bourbon di Pellow & Rudge*.

        Where every noun has one, an *&* between them tells.
        """
        behind = self.items[of + 1 :]
        signed = self.adjectives_after or "&" in self.text[self.items[of].end :]
        plainly = all(each.role is None and not self._is_small(each) for each in behind)
        return bool(behind) and signed and plainly

    def _say_each(self, at: int, before: int | None) -> None:
        """*Je 2 cl Gin und Wermut* is 2 cl each of gin and vermouth."""
        names = sum(each.role == "name" for each in self.items)
        after = self.after(at)
        if after is not None and self.role(after) is None:
            self.say(at, None)  # *je nach Süße*
        elif before is not None:
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
        if str(item.english).startswith(", "):
            return 0
        if self._is_told_behind(at, after):
            told = replace(item, english=f", {item.english}")
            self.items[at : int(after or 0) + 1] = [*self.items[at + 1 : int(after or 0) + 1], told]
            return 0
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

    def _is_told_behind(self, at: int, after: int | None) -> bool:
        """Whether *halbierte Erdbeeren* are better read as strawberries, halved."""
        english = self.items[at].english
        if after is None or english not in _DONE_TO_IT or self.role(after) != "name":
            return False
        name = folded(f"{english} {self.written(after)}")
        return self.joined(at, after) and name not in self.tree.by_name

    def _is_small(self, item: Item) -> bool:
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
                ends = after is None and self.joined(before, at)  # 6 cl de cognac environ
                self.say(at, item.english if known else f", {item.english}" if ends else None)
            elif item.role == "garnish" and before is None and self.joined(at, after):
                self.say(at, f"{item.english}:")
            elif item.role == "rim" and self.role(before) == "name" and self.joined(before, at):
                self.say(at, "rim")
            elif item.role in ("after", "note", "rim"):
                strange = self.role(before) is None and self.role(after) is None
                if strange and before is not None and self.joined(at, after):
                    self.say(at, None)  # *evtl. etwas mehr*
                elif self.joined(before, at):
                    self.say(at, f", {item.english}")
        first = self.items[0]
        told = {"after", "rim", "note"}
        others = [at for at, each in enumerate(self.items) if each.role not in told]
        if first.role == "after" and others and self.joined(0, self.after(0)):
            last = others[-1]
            moved = replace(first, english=f", {first.english}")
            self.items = [*self.items[1 : last + 1], moved, *self.items[last + 1 :]]

    def _say_part(self, at: int, after: int | None) -> None:
        english = self.written(at)
        if after is None or not self.joined(at, after):
            self.say(at, english.removesuffix(" of"))
        elif self.role(after) is None:
            self.say(at, None)

    def unsure(self) -> Iterator[Unsure]:
        """What may be one thing or another."""
        for item in self.items:
            bare = item.role == "part" and item.english == "juice" and self._is_all_named()
            if item.role == "unsure" or bare:
                yield Unsure(self.text[item.start : item.end], item.start, item.keys)

    def _is_all_named(self) -> bool:
        """Whether nothing else in the line is a thing: *jugo, 2 oz* does not say of what."""
        return not any(each.role in (None, "name", "unsure") for each in self.items)

    def strangers(self) -> Iterator[Unsure]:
        """Small words that are neither English nor the language's, and would be lost as a maker's.

        In brackets and behind a comma they are a note, and nothing is lost.
        """
        named = [each for each in self.items if each.role == "name"]
        for item in self.items:
            word = self.text[item.start : item.end]
            joint = item.foreign and item.role in _JOINTS and item.english is None
            strange = item.role is None and not is_english(plain(word), self.tree)
            strange = strange and plain(word) not in self.told
            if not (joint or strange) or not self._is_small(item):
                continue
            told = self.text[: item.start]
            last = max((each.end for each in named if each.end <= item.start), default=len(told))
            stopped = re.search(r"[,;:]|[ ][-–—]+[ ]", told[last:])
            if not stopped and told.count("(") == told.count(")"):
                yield Unsure(word, item.start, ())


def is_plain(gap: str) -> bool:
    """Whether a gap only parts words: a dash with space around it says more."""
    return not gap.strip(" ") or gap in ("-", "'", "’")
