"""How a typed text fits the names there are: the one way in which names are looked for.

A text fits a name exactly, as its beginning, by its whole words in any order, by the
beginnings of its words, or by likeness of spelling, and in that order. Whoever types
*vermouth dry* means dry vermouth, *ver* may become vermouth, and *vermuth* is like it; a
text that is like nothing fits nothing, since a far-fetched guess is worse than none.

Plural and singular are one, and so are whisky and whiskey; accents, capitals and hyphens do
not count. Likeness is the optimal string alignment distance of rapidfuzz, in which two
letters that changed places count once; its floors were chosen here by trying.
"""

from __future__ import annotations

import re
from bisect import bisect_left
from collections.abc import Collection, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from enum import IntEnum
from typing import Generic, TypeVar

from barkeep.domain.phrases import folded

T = TypeVar("T")

LONGEST = 120
"""Letters; more of a text than this is not looked at."""
MOST_WORDS = 12


class Fit(IntEnum):
    """How a text fits a name, the worst first; *kind* is a kind of what it names exactly."""

    PARTLY = 0
    LIKE = 1
    BEGINNINGS = 2
    WORDS = 3
    BEGINS = 4
    KIND = 5
    EXACT = 6


_LEAST = {
    Fit.PARTLY: 0.45,
    Fit.LIKE: 0.66,
    Fit.BEGINNINGS: 0.73,
    Fit.WORDS: 0.80,
    Fit.BEGINS: 0.87,
    Fit.EXACT: 0.955,
}
"""The least score of each fit, chosen here; only the order has a meaning."""
_SPAN = 0.045
"""Between the least and the best score of one fit."""


@dataclass(frozen=True, slots=True)
class Named(Generic[T]):
    """A thing with the names it may be called by, its own first.

    `understood` are words that find it and are never shown: somebody's trade name for it,
    or its name in another language.
    """

    value: T
    names: tuple[str, ...]
    understood: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Hit(Generic[T]):
    """A thing that a text fits, by which of its names, and how closely (0 to 1) within the fit.

    `name` is empty where it was found by a word that is only understood.
    """

    value: T
    name: str
    fit: Fit
    closeness: float

    @property
    def score(self) -> float:
        """From 0 to 1, one being the very name."""
        return _LEAST[self.fit] + _SPAN * self.closeness


ENOUGH = 3
"""With so many found as they are spelt, nothing is looked for by likeness."""
_ALIAS, _UNDERSTOOD = 0.12, 0.3
"""What a name that is not a thing's own takes from the closeness."""
_LEAST_UNDERSTOOD = 3
"""Letters; fewer are no beginning of a word that is only understood."""
_ALIKE = 0.74
"""Of 1: one letter wrong in four, two in eight; *candle* is not *candied*."""
_BEGINS_ALIKE = 0.8
_LEAST_LIKENESS = 0.5
"""Of the closeness of what is only alike: *chicken* is no chickpea water."""
_LEAST_ALIKE, _LEAST_BEGUN_ALIKE = 3, 5
_ALL_ALIKE, _LEAST_ALL_ALIKE = 0.8, 6
_HALF = 0.5
_LINKING_LIST = "of de du di da del la le the a an and en y e et with"
_LINKING = frozenset(_LINKING_LIST.split())
_WORD = re.compile(r"\w+(?:[:.]\w+)*")


@dataclass(frozen=True, slots=True)
class _Name:
    """One name of thing number `of`; `shown` is empty for one that is only understood."""

    of: int
    shown: str
    written: str
    words: tuple[str, ...]
    less: float

    @property
    def letters(self) -> int:
        return sum(map(len, self.words)) or 1


@dataclass(frozen=True, slots=True)
class _Typed:
    """One typed word, and how well (0 to 1) the words that it may be fit it."""

    letters: int
    whole: str
    begun: Mapping[str, float]
    alike: Mapping[str, float]

    def fits(self, word: str) -> float:
        if word == self.whole:
            return 1.0
        return max(self.begun.get(word, 0.0), self.alike.get(word, 0.0))


class NameIndex(Generic[T]):
    """Names made ready to be looked for; made once, it answers while somebody types."""

    def __init__(self, named: Iterable[Named[T]]) -> None:
        self._things = tuple(named)
        self._names = tuple(self._all_names())
        order = sorted(range(len(self._names)), key=lambda at: self._names[at].written)
        self._by_writing = order
        self._writings = [self._names[at].written for at in order]
        self._holding: dict[str, list[int]] = {}
        forms: dict[str, str] = {}
        for at, name in enumerate(self._names):
            for word in name.words:
                self._holding.setdefault(word, []).append(at)
            forms |= {form: stem(form) for form in name.written.split()}
        forms |= {word: word for word in self._holding}
        self._stems = {form: word for form, word in forms.items() if word in self._holding}
        self._forms = sorted(self._stems)
        self._cuts: dict[int, Sequence[str]] = {}
        self._by_squeezed: dict[str, list[int]] = {}
        self._squeezed = [name.written.replace(" ", "") for name in self._names]
        for at, squeezed in enumerate(self._squeezed):
            self._by_squeezed.setdefault(squeezed, []).append(at)

    def hits(self, text: str, *, guess: bool = True) -> tuple[Hit[T], ...]:
        """The things that a text fits, best first and each once; none below the floor.

        Without `guess` only those that hold all of it as it is spelt.
        """
        written = _plain(text)
        words = _meant_words(written)
        if not words:
            return ()
        best: dict[int, Hit[T]] = {}
        self._keep(best, self._beginning(written))
        if len(written) > 1:  # of one letter only names that begin with it
            self._keep(best, self._with_all([self._typed(word) for word in words]))
        if guess and not _is_enough(best.values()):
            self._guess(best, words, written)
        order = sorted(best.items(), key=lambda item: (-item[1].score, item[0]))
        return tuple(hit for _at, hit in order)

    def _guess(self, best: dict[int, Hit[T]], words: Sequence[str], written: str) -> None:
        """Add what is alike, then what shares a part, to the little found as it is spelt."""
        typed = [self._typed(word, self._words_like(word)) for word in words]
        self._keep(best, self._like(typed, written))
        if len(words) == 1 or any(hit.fit > Fit.LIKE for hit in best.values()):
            return
        if len(best) < ENOUGH:
            self._keep(best, self._partly([_whole_only(each) for each in typed]))
        if not best:
            self._keep(best, self._partly(typed))

    def _all_names(self) -> Iterator[_Name]:
        for at, thing in enumerate(self._things):
            for place, shown in enumerate(thing.names):
                yield _named(at, shown, shown, _ALIAS if place else 0.0)
            for hidden in thing.understood:
                yield _named(at, "", hidden, _UNDERSTOOD)

    def _keep(self, best: dict[int, Hit[T]], found: Iterable[tuple[int, Fit, float]]) -> None:
        """Keep the best hit of each thing out of names with their fit and closeness."""
        for at, fit, closeness in found:
            name = self._names[at]
            close = max(0.0, min(1.0, closeness) - name.less)
            if fit is Fit.LIKE and close < _LEAST_LIKENESS:
                continue
            kept = best.get(name.of)
            if kept is None or (fit, close) > (kept.fit, kept.closeness):
                best[name.of] = Hit(self._things[name.of].value, name.shown, fit, close)

    def _beginning(self, written: str) -> Iterator[tuple[int, Fit, float]]:
        """Names that are the text, or begin with it, the space between words not counting."""
        start = bisect_left(self._writings, written)
        for place in range(start, len(self._writings)):
            if not self._writings[place].startswith(written):
                break
            at = self._by_writing[place]
            name = self._names[at]
            if name.written == written:
                yield at, Fit.EXACT, 1.0
            else:
                yield from self._begun(at, written)
        squeezed = written.replace(" ", "")
        if len(squeezed) > 2:
            yield from ((at, Fit.EXACT, 0.6) for at in self._by_squeezed.get(squeezed, ()))

    def _begun(self, at: int, written: str) -> Iterator[tuple[int, Fit, float]]:
        name = self._names[at]
        more = name.written.count(" ") - written.count(" ")
        parted = name.written[len(written)] == " "  # *lime juice* goes before *limeade*
        closeness = 0.7 * len(written) / len(name.written) / (1 + more) + 0.3 * parted
        if name.shown:
            yield at, Fit.BEGINS, closeness
        elif len(written) >= _LEAST_UNDERSTOOD:
            yield at, Fit.BEGINNINGS, closeness

    def _with_all(self, typed: Sequence[_Typed]) -> Iterator[tuple[int, Fit, float]]:
        """Names that hold every typed word, whole or begun, in any order."""
        for at in self._holding_all(typed):
            name = self._names[at]
            fits = _placed(typed, name.words)
            if 0.0 in fits:
                continue
            whole = all(each == 1.0 for each in fits)
            covered = sum(each.letters for each in typed) / name.letters
            if whole and len(fits) == len(name.words):
                yield at, Fit.EXACT, 0.5
            elif whole:
                yield at, Fit.WORDS, covered
            elif name.shown:
                yield at, Fit.BEGINNINGS, (sum(fits) / len(fits) + covered) / 2

    def _holding_all(self, typed: Sequence[_Typed]) -> Iterable[int]:
        found: set[int] | None = None
        for each in typed:
            words = {each.whole, *each.begun, *each.alike}
            holding = {at for word in words for at in self._holding.get(word, ())}
            found = holding if found is None else found & holding
        return sorted(found or ())

    def _typed(self, word: str, alike: Mapping[str, float] | None = None) -> _Typed:
        begun: dict[str, float] = {}
        for place in range(bisect_left(self._forms, word), len(self._forms)):
            form = self._forms[place]
            if not form.startswith(word):
                break
            known = self._stems[form]
            begun[known] = max(begun.get(known, 0.0), 0.99 * len(word) / len(form))
        return _Typed(len(word), stem(word), begun, alike or {})

    # By likeness

    def _like(self, typed: Sequence[_Typed], written: str) -> Iterator[tuple[int, Fit, float]]:
        """Names to which every typed word is like, or the whole text is."""
        for at in self._holding_all(typed):
            name = self._names[at]
            fits = _placed(typed, name.words)
            if 0.0 not in fits:
                yield at, Fit.LIKE, _likeness(typed, fits, name)
        yield from self._all_alike(written.replace(" ", ""))

    def _partly(self, typed: Sequence[_Typed]) -> Iterator[tuple[int, Fit, float]]:
        """Names that share the last of the words with the text, or as much as half of it."""
        letters = sum(each.letters for each in typed)
        for at in self._holding_any(typed):
            name = self._names[at]
            fits = _placed(typed, name.words)
            shared = sum(each.letters * fit for each, fit in zip(typed, fits, strict=True))
            shared /= letters
            last = fits[-1] > 0.0 and (fits[-1] == 1.0 or typed[-1].letters > _LEAST_BEGUN_ALIKE)
            if name.shown and (shared >= _HALF or last):
                covered = sum(1 for fit in fits if fit) / len(name.words)
                ends_so = fits[-1] > 0.0 and typed[-1].fits(name.words[-1]) > 0.0
                yield at, Fit.PARTLY, shared * (0.4 + 0.3 * covered + 0.3 * ends_so)

    def _holding_any(self, typed: Sequence[_Typed]) -> Iterable[int]:
        words = {word for each in typed for word in (each.whole, *each.alike)}
        return sorted({at for word in words for at in self._holding.get(word, ())})

    def _words_like(self, word: str) -> Mapping[str, float]:
        """The words of all names that are spelt much like one, and how much."""
        from rapidfuzz import process  # only a mistaken name pays for the import
        from rapidfuzz.distance import OSA

        if len(word) < _LEAST_ALIKE or word.isdigit():
            return {}
        like: dict[str, float] = {}
        scorer = OSA.normalized_similarity
        floor = _ALIKE if len(word) > _LEAST_ALIKE else 0.6
        for form, sure, _at in process.extract(
            word, self._forms, scorer=scorer, score_cutoff=floor, limit=None
        ):
            if _may_be_meant(word, form, sure):
                like[self._stems[form]] = max(like.get(self._stems[form], 0.0), sure)
        for length in (len(word) - 1, len(word)) if len(word) >= _LEAST_BEGUN_ALIKE else ():
            for form, sure, at in process.extract(
                word, self._cut(length), scorer=scorer, score_cutoff=_BEGINS_ALIKE, limit=None
            ):
                known = self._stems[self._forms[at]]
                if form[0] == word[0]:
                    like[known] = max(like.get(known, 0.0), sure * _ALIKE)
        return like

    def _cut(self, length: int) -> Sequence[str]:
        """All forms cut to this many letters, for a word that is half typed and misspelt."""
        if length not in self._cuts:
            self._cuts[length] = [form[:length] for form in self._forms]
        return self._cuts[length]

    def _all_alike(self, squeezed: str) -> Iterator[tuple[int, Fit, float]]:
        from rapidfuzz import process
        from rapidfuzz.distance import OSA

        if len(squeezed) < _LEAST_ALL_ALIKE:
            return
        scorer = OSA.normalized_similarity
        for _name, sure, at in process.extract(
            squeezed, self._squeezed, scorer=scorer, score_cutoff=_ALL_ALIKE, limit=None
        ):
            yield at, Fit.LIKE, 0.9 * _above(sure, _ALL_ALIKE)


def stem(word: str) -> str:
    """A word of a name as it is compared: singular, and whisky in its one spelling.

    Bitters stay: *bitter orange* is no orange bitters.

    >>> [stem(each) for each in ("limes", "cherries", "leaves", "peaches", "cassis", "whiskeys")]
    ['lime', 'cherry', 'leaf', 'peach', 'cassis', 'whisky']
    """
    word = _singular(word)
    return "whisky" if word == "whiskey" else word


def _singular(word: str) -> str:
    if len(word) < 4 or not word.endswith("s") or word.endswith(("ss", "us", "is", "bitters")):
        return word
    if word.endswith("ies") and len(word) > 4:
        return f"{word[:-3]}y"
    if word.endswith(("eaves", "alves")):
        return f"{word[:-3]}f"
    if word.endswith(("ches", "shes", "sses", "xes", "toes")):
        return word[:-2]
    return word[:-1]


def _plain(text: str) -> str:
    """A text folded, its marks gone: `Crème de cassis (dark)` is `creme de cassis dark`."""
    return " ".join(_WORD.findall(folded(text[:LONGEST]).replace("'", "")))


def _meant_words(written: str) -> list[str]:
    """The words that tell; a last *a* or *d* may be the beginning of one."""
    words = written.split()[:MOST_WORDS]
    return [word for word in words[:-1] if word not in _LINKING] + words[-1:]


def _is_enough(found: Collection[Hit[T]]) -> bool:
    """Whether so much is found as it is spelt that nothing is looked for by likeness."""
    shown = [hit for hit in found if hit.name]
    return len(shown) >= ENOUGH or any(hit.fit is Fit.EXACT for hit in found)


def _whole_only(typed: _Typed) -> _Typed:
    return _Typed(typed.letters, typed.whole, {}, {})


def _named(of: int, shown: str, name: str, less: float) -> _Name:
    written = _plain(name)
    words = tuple(stem(word) for word in written.split() if word not in _LINKING)
    return _Name(of=of, shown=shown, written=written, words=words, less=less)


def _placed(typed: Sequence[_Typed], words: Collection[str]) -> tuple[float, ...]:
    """How well each typed word fits a word of a name, each word taken once, the surest first."""
    left = list(words)
    fits = [0.0] * len(typed)
    pairs = [
        (each.fits(word), place, word) for place, each in enumerate(typed) for word in set(left)
    ]
    for fit, place, word in sorted(pairs, key=lambda pair: -pair[0]):
        if fit > 0.0 and fits[place] == 0.0 and word in left:
            fits[place] = fit
            left.remove(word)
    return tuple(fits)


def _likeness(typed: Sequence[_Typed], fits: Sequence[float], name: _Name) -> float:
    letters = sum(each.letters for each in typed)
    mean = sum(each.letters * fit for each, fit in zip(typed, fits, strict=True)) / letters
    covered = min(1.0, letters / name.letters)
    return 0.5 * _above(mean, 0.5) + 0.5 * covered


def _above(value: float, floor: float) -> float:
    return max(0.0, (value - floor) / (1.0 - floor))


def _may_be_meant(word: str, form: str, sure: float) -> bool:
    """Whether a slip of the fingers may have made the one of the other.

    The first letter is seldom wrong, and a word of three letters has no letter to lose:
    in that only two letters may have changed places.
    """
    if len(word) <= _LEAST_ALIKE and len(form) <= len(word):
        return sorted(word) == sorted(form)
    return word[0] == form[0] or sure >= _BEGINS_ALIKE or word[:2] == form[1::-1]
