"""Searching the book: what was typed -> terms, each of which a spec must meet.

What may be typed is in `LANGUAGE`.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Collection, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from types import MappingProxyType
from typing import Any, Literal, TypeAlias, get_args

from barkeep.domain.ingredients.relations import Technique
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.liquids.ethanol import STRENGTH_UNIT, degrees_per_abv
from barkeep.domain.phrases import folded
from barkeep.domain.specs.spec import Spec, base
from barkeep.errors import BadQuery, spoken_list
from barkeep.translation import tr, tr_noop

DUE_DAYS = 7
"""How soon something is due that *due* finds, where no number of days is given."""
NEAR_STRENGTH = 1.0
"""How far a strength may be off the single one that was asked for, in % vol."""


STRENGTHS: Mapping[str, tuple[float, float]] = {
    "free": (0.0, 0.5),
    "light": (0.5, 12.0),
    "medium": (12.0, 20.0),
    "strong": (20.0, 100.0),
}
"""What a strength in words means, in % vol as served: from the first on and below the second.

Under 0.5 is *alcohol-free* by the usual words of labels (*common practice*); the others are
barkeep's own: a glass of wine, and what is stirred and mostly spirit, divide them.
"""

LANGUAGE = (
    ("gin sour", tr_noop("has both words in its name, ingredients, glass or tags")),
    ('"night train"', tr_noop("has these words in a row")),
    ("-egg", tr_noop("has not, and carries none where that is an allergen")),
    ("own, classic", tr_noop("is one of the owner's, came with barkeep")),
    ("shoot", tr_noop("is filmed in the next shoot")),
    ("with:rum", tr_noop("has a line of rum, or of anything that is a rum")),
    ("no:egg, no:nuts, without:rum", tr_noop("has no such line and carries no such allergen")),
    ("base:gin", tr_noop("is built on gin, or on anything that is a gin")),
    ("tag:house, season:winter", tr_noop("carries the tag")),
    ("glass:coupe, made:shaken", tr_noop("says so")),
    (
        "strength:>25, <12, 18..24, 20",
        tr_noop("is that strong when served, in % vol (or proof); 20 is 19 to 21"),
    ),
    (
        "strength:free, light, medium, strong",
        tr_noop("is under 0.5, from there to 12, from 12 to 20, from 20 % vol on"),
    ),
    ("due, due:14", tr_noop("uses something of the bar that is due in 7, in 14 days")),
)
"""What may be typed, and which specs that finds."""
NO_FIELD = tr_noop(
    "A word with a colon that is none of these is looked for as it stands, and so is what stands "
    "in quotation marks. A line that is not understood is no proof that a drink is without "
    "anything."
)


_WORD = re.compile(
    r'(?P<minus>-?)(?:(?P<field>[^\W\d_]+):)?(?:"(?P<phrase>[^"]*)"?|(?P<bare>[^\s"]+))'
)
_RANGE = re.compile(
    r"(?P<low>[0-9]+(?:[.,][0-9]+)?)?\s*(?:\.\.|-|–)\s*(?P<high>[0-9]+(?:[.,][0-9]+)?)?"
    rf"{STRENGTH_UNIT}?",
    re.IGNORECASE,
)

_BOUND = re.compile(
    rf"(?P<sign>[<>]=?)?(?P<number>[0-9]+(?:[.,][0-9]+)?){STRENGTH_UNIT}?", re.IGNORECASE
)


MADE: tuple[Technique, ...] = tuple(each for each in get_args(Technique) if each != "unknown")
"""How a drink may be made, as *made* asks for it."""
_DONE: Mapping[str, Technique] = {"build": "built", "throw": "thrown"}
"""What is done, where the word for it does not begin the word for what was done."""

_SAID_BEFORE = ("no", "without", "with")
_FREE = "-free"

AllergenWords: TypeAlias = Mapping[str, frozenset[str]]
"""A folded word -> the allergens it means."""
NO_ALLERGENS: AllergenWords = MappingProxyType({})


@dataclass(frozen=True, slots=True)
class SpecFacts:
    """What a query may ask of a spec.

    `own_words` is its own text, folded, with a blank around it; `asked` the keys that its
    lines would take;
    `abv_percent` its strength as served, None where that is not known;
    `due_in` the days until the first bottle it uses is due, None for none;
    `allergens` what it carries, in the words of the lists; `filmed_next`
    whether the next shoot has it.
    """

    spec: Spec
    own_words: str
    asked: frozenset[str]
    abv_percent: float | None = None
    due_in: int | None = None
    allergens: frozenset[str] = frozenset()
    filmed_next: bool = False


Term: TypeAlias = Callable[[SpecFacts], bool]


Fact = Literal["", "shoot", "due", "allergens", "strength"]
"""What a term needs beside the spec itself, which is nothing; the cheapest to find out first."""
FACTS: tuple[Fact, ...] = get_args(Fact)


@dataclass(frozen=True, slots=True)
class Query:
    """The terms of what was typed; all must hold. `asks` names the facts it needs."""

    terms: tuple[Term, ...]
    asks: frozenset[Fact] = frozenset()
    parts: tuple[Query, ...] = ()
    """The same terms, those together that need one fact, and what costs least first."""

    def finds(self, facts: SpecFacts) -> bool:
        """Whether a spec meets every term."""
        return all(term(facts) for term in self.terms)

    def found(self, facts: Iterable[SpecFacts]) -> list[SpecFacts]:
        """Those that meet every term."""
        some = list(facts)
        for term in self.terms:
            some = list(filter(term, some))
        return some


@dataclass(frozen=True, slots=True)
class _Known:
    """What the words of a query may mean."""

    tree: FamilyTree
    allergens: AllergenWords

    def kind(self, name: str) -> str | None:
        """The kind called so, by key or by name."""
        return name if name in self.tree else self.tree.called(name)

    def means(self, name: str) -> bool:
        """Whether anything is called so."""
        return self.kind(name) is not None or folded(name) in self.allergens


@dataclass(frozen=True, slots=True)
class Typed:
    """One term as it was typed; `field` is empty for mere words."""

    minus: bool
    field: str
    value: str
    quoted: bool

    @property
    def is_begun(self) -> bool:
        """Whether nothing stands behind its field yet."""
        name = self.value.removesuffix(":").casefold()
        return not self.quoted and self.value.endswith(":") and name in _FIELDS

    @property
    def is_bare(self) -> bool:
        """Whether it is a word by itself."""
        return not (self.minus or self.field or self.quoted)


def typed_terms(text: str) -> tuple[Typed, ...]:
    """The terms of a text in their order, whatever they mean.

    >>> [each.value for each in typed_terms('with:rum -egg "night train"')]
    ['rum', 'egg', 'night train']
    """
    return tuple(
        Typed(
            minus=bool(found["minus"]),
            field=(found["field"] or "").casefold(),
            value=found["phrase"] or found["bare"] or "",
            quoted=found["phrase"] is not None,
        )
        for found in _WORD.finditer(text)
    )


def parse_query(text: str, tree: FamilyTree, allergens: AllergenWords = NO_ALLERGENS) -> Query:
    """The query of what was typed. Raises `BadQuery` for a term that means nothing."""
    known = _Known(tree, allergens)
    by_fact: dict[Fact, list[Term]] = {}
    for each in _as_meant(typed_terms(text), known):
        if not each.is_begun:
            term, needs = _term(each, known)
            by_fact.setdefault(needs, []).append(term)
    parts = tuple(
        Query(tuple(by_fact[fact]), frozenset({fact} - {""})) for fact in FACTS if fact in by_fact
    )
    terms = tuple(term for part in parts for term in part.terms)
    return Query(terms, frozenset[Fact]().union(*(part.asks for part in parts)), parts)


def _as_meant(typed: Sequence[Typed], known: _Known) -> Iterator[Typed]:
    """The terms, with what was said in plain words as a term: *no egg*, *nut-free*.

    Left as words they would find just what is not wanted.
    """
    left = list(typed)
    while left:
        first = left.pop(0)
        name = first.value.casefold()
        if first.is_bare and name in _SAID_BEFORE and left and _is_known(left[0], known):
            yield replace(left.pop(0), field=name)
        elif first.is_bare and name.endswith(_FREE) and known.means(name.removesuffix(_FREE)):
            yield replace(first, field="no", value=name.removesuffix(_FREE))
        else:
            yield first


def _is_known(typed: Typed, known: _Known) -> bool:
    return not (typed.minus or typed.field) and known.means(typed.value)


def _term(typed: Typed, known: _Known) -> tuple[Term, Fact]:
    """What a term asks, and the fact that takes."""
    field, value = typed.field, typed.value
    needs: Fact = ""
    if field in _FIELDS and value:
        term, needs = _FIELDS[field](value, known), _NEEDS.get(field, "")
    elif not field and not typed.quoted and value.casefold() in _ALONE:
        term, needs = _ALONE[value.casefold()](known), _NEEDS.get(value.casefold(), "")
    elif typed.minus and not field and folded(value) in known.allergens:
        return _not_even_carried(value, known), "allergens"
    else:
        term = _words(f"{field}:{value}" if field else value, known)
    return _not(term) if typed.minus else term, needs


def facts_of(spec: Spec, **known: Any) -> SpecFacts:
    """The facts of one spec that need nothing but its text, with those that are given."""
    unsettled = (each.text for each in spec.unsettled)
    called = (line.called for line in spec.lines)
    named = (spec.name, spec.riff_of or "", spec.glass, spec.technique, *spec.tags)
    own = folded(" ".join((*named, *called, *unsettled)))
    return SpecFacts(spec, f" {own} ", spec.wanted, **known)


def _words(value: str, known: _Known) -> Term:
    return _says(folded(value), known.tree)


def _says(wanted: str, tree: FamilyTree) -> Term:
    """Whether a spec's own words hold this, or the names of what it asks for and of all above that.

    They are one text, in which several words may stand in a row from one name into the next.
    """
    named = [key for key, names in tree.folded_names.items() if wanted in f" {names} "]
    kinds = frozenset(named).union(*map(tree.descendants, named))

    def says(facts: SpecFacts) -> bool:
        return wanted in facts.own_words or not kinds.isdisjoint(facts.asked)

    if " " not in wanted.strip():
        return says
    words = [_says(each, tree) for each in wanted.split()]

    def says_in_a_row(facts: SpecFacts) -> bool:
        return says(facts) or (
            all(word(facts) for word in words) and wanted in _all_words(facts, tree)
        )

    return says_in_a_row


def _all_words(facts: SpecFacts, tree: FamilyTree) -> str:
    kinds = facts.asked.union(*map(tree.ancestors, facts.asked))
    names = " ".join(tree.folded_names[kind] for kind in sorted(kinds))
    return f"{facts.own_words}{names} "


def _with(value: str, known: _Known) -> Term:
    key = known.kind(value)
    if key is None:
        raise BadQuery(f"with:{value}", tr_noop("no ingredient is called that"))
    return _any_of(key, known.tree)


def _any_of(key: str | None, tree: FamilyTree) -> Term:
    """A line of it or of anything that is one."""
    kinds = frozenset() if key is None else frozenset(tree.at_or_below(key))
    return lambda facts: not kinds.isdisjoint(facts.asked)


def _without(value: str, known: _Known) -> Term:
    """No line of it, and none of the allergen."""
    key, allergens = known.kind(value), known.allergens.get(folded(value), frozenset())
    if key is None and not allergens:
        raise BadQuery(f"without:{value}", tr_noop("no ingredient and no allergen is called that"))
    free, has_one = _free_of(value, allergens), _any_of(key, known.tree)
    return lambda facts: not has_one(facts) and free(facts)


def _not_even_carried(value: str, known: _Known) -> Term:
    """Of a word that is an allergen: neither the word itself, nor what carries it."""
    free = _free_of(value, known.allergens[folded(value)])
    says = _says(f" {folded(value)} ", known.tree)
    return lambda facts: not says(facts) and free(facts)


def _free_of(value: str, allergens: frozenset[str]) -> Term:
    """None of these allergens.

    A line that is not understood but says the word is no proof that the drink is without it, and
    of an allergen no such line is, whatever it says.
    """
    wanted = folded(value)

    def says_it(facts: SpecFacts) -> bool:
        return any(allergens or wanted in folded(each.text) for each in facts.spec.unsettled)

    return lambda facts: not (facts.allergens & allergens or says_it(facts))


def _base(value: str, known: _Known) -> Term:
    key, tree = known.kind(value), known.tree
    if key is None:
        raise BadQuery(f"base:{value}", tr_noop("no ingredient is called that"))

    has_one = _any_of(key, tree)

    def is_built_on(facts: SpecFacts) -> bool:
        built_on = base(facts.spec, tree) if has_one(facts) else None
        return built_on is not None and tree.is_a(built_on, key)

    return is_built_on


def _tag(value: str, _known: _Known) -> Term:
    wanted = folded(value)
    return lambda facts: wanted in {folded(tag) for tag in facts.spec.tags}


def _glass(value: str, _known: _Known) -> Term:
    wanted = folded(value)
    return lambda facts: wanted in folded(facts.spec.glass)


def _made(value: str, _known: _Known) -> Term:
    """How it is made, as far as the word is typed."""
    said = folded(value)
    wanted = {_DONE.get(said, said)} | {each for each in MADE if each.startswith(said)}
    if wanted.isdisjoint(get_args(Technique)):
        raise BadQuery(f"made:{value}", tr("write one of {words}", words=spoken_list(MADE)))
    return lambda facts: facts.spec.technique in wanted


def _strength(value: str, _known: _Known) -> Term:
    if value.casefold() in STRENGTHS:
        least, below = STRENGTHS[value.casefold()]
        return lambda facts: facts.abv_percent is not None and least <= facts.abv_percent < below
    low, high = _bounds(value)
    return lambda facts: facts.abv_percent is not None and low <= facts.abv_percent <= high


def _bounds(value: str) -> tuple[float, float]:
    between, bound = _RANGE.fullmatch(value), _BOUND.fullmatch(value)
    found = between or bound
    if found and found["degree"] and not found["kind"]:
        raise BadQuery(f"strength:{value}", tr_noop("say whether it is US proof or UK proof"))
    if between and (between["low"] or between["high"]):
        low, high = _strength_of(between, "low", 0.0), _strength_of(between, "high", 100.0)
    elif bound is None:
        expected = tr_noop("write a strength such as >25, <12 or 18..24, in % vol, or light")
        raise BadQuery(f"strength:{value}", expected)
    elif bound["sign"]:
        number = _strength_of(bound, "number", 0.0)
        low, high = (number, 100.0) if bound["sign"][0] == ">" else (0.0, number)
    else:
        number = _strength_of(bound, "number", 0.0)
        low, high = number - NEAR_STRENGTH, number + NEAR_STRENGTH
    if low > high:
        raise BadQuery(f"strength:{value}", tr_noop("the lower strength comes first"))
    return low, high


def _due(value: str, _known: _Known) -> Term:
    if not (value.isdecimal() and len(value) < 5):
        raise BadQuery(f"due:{value}", tr_noop("write a number of days, such as due:14"))
    days = int(value)
    return lambda facts: facts.due_in is not None and facts.due_in <= days


def _not(term: Term) -> Term:
    return lambda facts: not term(facts)


def _strength_of(found: re.Match[str], group: str, otherwise: float) -> float:
    """A number of a match in % vol, whatever strength is written in."""
    text = found[group]
    return otherwise if text is None else float(text.replace(",", ".")) / degrees_per_abv(found)


_FIELDS: Mapping[str, Callable[[str, _Known], Term]] = {
    "with": _with,
    "without": _without,
    "no": _without,
    "base": _base,
    "tag": _tag,
    "season": _tag,
    "glass": _glass,
    "made": _made,
    "strength": _strength,
    "due": _due,
}
_ALONE: Mapping[str, Callable[[_Known], Term]] = {
    "due": lambda known: _due(str(DUE_DAYS), known),
    "own": lambda _known: lambda facts: not facts.spec.classic,
    "classic": lambda _known: lambda facts: facts.spec.classic,
    "shoot": lambda _known: lambda facts: facts.filmed_next,
}
"""Words that stand for a question of their own."""
_NEEDS: Mapping[str, Fact] = {
    "strength": "strength",
    "due": "due",
    "shoot": "shoot",
    "no": "allergens",
    "without": "allergens",
}
"""The fact each of them needs beside the spec itself."""
FIELDS: Collection[str] = tuple(_FIELDS)
ALONE: Collection[str] = tuple(_ALONE)
