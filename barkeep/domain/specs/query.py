"""Searching the book: what was typed -> terms, each of which a spec must meet.

What may be typed is in `LANGUAGE`.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Collection, Mapping
from dataclasses import dataclass
from typing import TypeAlias

from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.liquids.ethanol import STRENGTH_UNIT, degrees_per_abv
from barkeep.domain.phrases import folded
from barkeep.domain.specs.spec import Spec
from barkeep.errors import BadQuery

DUE_DAYS = 7
"""How soon something is due that *due* finds, where no number of days is given."""
NEAR_STRENGTH = 1.0
"""How far a strength may be off the single one that was asked for, in % vol."""


LANGUAGE = (
    ("gin sour", "has both words in its name, ingredients, glass or tags"),
    ('"night train"', "has these words in a row"),
    ("-egg", "has not"),
    ("with:rum", "has a line of rum, or of anything that is a rum"),
    ("without:rum", "has no such line"),
    ("tag:house, season:winter", "carries the tag"),
    ("glass:coupe, made:shaken", "says so"),
    (
        "strength:>25, <12, 18..24, 20",
        "is that strong when served, in % vol (or proof); 20 is 19 to 21",
    ),
    ("due, due:14", "uses something of the bar that is due in 7, in 14 days"),
)
"""What may be typed, and which specs that finds."""
NO_FIELD = "A word with a colon that is none of these is looked for as it stands."


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


@dataclass(frozen=True, slots=True)
class SpecFacts:
    """What a query may ask of a spec.

    `words` is folded text; `kinds` the keys of its lines and all above them;
    `abv_percent` its strength as served, None where that is not known;
    `due_in` the days until the first bottle it uses is due, None for none.
    """

    spec: Spec
    words: str
    kinds: frozenset[str]
    abv_percent: float | None = None
    due_in: int | None = None


Term: TypeAlias = Callable[[SpecFacts], bool]


@dataclass(frozen=True, slots=True)
class Query:
    """The terms of what was typed; all must hold. `asks` names the facts it needs."""

    terms: tuple[Term, ...]
    asks: frozenset[str] = frozenset()

    def finds(self, facts: SpecFacts) -> bool:
        """Whether a spec meets every term."""
        return all(term(facts) for term in self.terms)


def parse_query(text: str, tree: FamilyTree) -> Query:
    """The query of what was typed. Raises `BadQuery` for a term that means nothing."""
    terms: list[Term] = []
    asks: set[str] = set()
    for found in _WORD.finditer(text):
        field, value = (found["field"] or "").casefold(), found["phrase"] or found["bare"] or ""
        if field in _FIELDS and value:
            term = _FIELDS[field](value, tree)
            asks.add(field)
        elif not field and value.casefold() == "due" and found["bare"]:
            term = _due(str(DUE_DAYS), tree)
            asks.add("due")
        elif not field and value.casefold().removesuffix(":") in _FIELDS and value.endswith(":"):
            continue  # nothing stands behind it yet
        else:
            whole = f"{found['field']}:{value}" if field else value
            term = _words(whole, tree)
        terms.append(_not(term) if found["minus"] else term)
    return Query(tuple(terms), frozenset(asks))


def facts_of(
    spec: Spec, tree: FamilyTree, abv_percent: float | None = None, due_in: int | None = None
) -> SpecFacts:
    """The facts of one spec that need nothing but the tree, with those that are given."""
    kinds = frozenset(
        kind for line in spec.lines for key in line.wanted for kind in (key, *tree.ancestors(key))
    )
    names = (tree.folded_names[kind] for kind in sorted(kinds))
    unsettled = (each.text for each in spec.unsettled)
    said = (spec.name, spec.riff_of or "", spec.glass, spec.technique, *spec.tags, *unsettled)
    own = folded(" ".join(said))
    return SpecFacts(
        spec=spec,
        words=" ".join((own, *names)),
        kinds=kinds,
        abv_percent=abv_percent,
        due_in=due_in,
    )


def _words(value: str, _tree: FamilyTree) -> Term:
    wanted = folded(value)
    return lambda facts: wanted in facts.words


def _with(value: str, tree: FamilyTree) -> Term:
    key = value if value in tree else tree.called(value)
    if key is None:
        raise BadQuery(f"with:{value}", "no ingredient is called that")
    return lambda facts: key in facts.kinds


def _without(value: str, tree: FamilyTree) -> Term:
    """A line that is not understood but says it is no proof that the drink is without it."""
    has, wanted = _with(value, tree), folded(value)
    return lambda facts: (
        not (has(facts) or any(wanted in folded(each.text) for each in facts.spec.unsettled))
    )


def _tag(value: str, _tree: FamilyTree) -> Term:
    wanted = folded(value)
    return lambda facts: wanted in {folded(tag) for tag in facts.spec.tags}


def _glass(value: str, _tree: FamilyTree) -> Term:
    wanted = folded(value)
    return lambda facts: wanted in folded(facts.spec.glass)


def _made(value: str, _tree: FamilyTree) -> Term:
    wanted = folded(value)
    return lambda facts: facts.spec.technique == wanted


def _strength(value: str, _tree: FamilyTree) -> Term:
    low, high = _bounds(value)
    return lambda facts: facts.abv_percent is not None and low <= facts.abv_percent <= high


def _bounds(value: str) -> tuple[float, float]:
    between, bound = _RANGE.fullmatch(value), _BOUND.fullmatch(value)
    found = between or bound
    if found and found["degree"] and not found["kind"]:
        raise BadQuery(f"strength:{value}", "say whether it is US proof or UK proof")
    if between and (between["low"] or between["high"]):
        low, high = _strength_of(between, "low", 0.0), _strength_of(between, "high", 100.0)
    elif bound is None:
        expected = "write a strength such as >25, <12 or 18..24, in % vol"
        raise BadQuery(f"strength:{value}", expected)
    elif bound["sign"]:
        number = _strength_of(bound, "number", 0.0)
        low, high = (number, 100.0) if bound["sign"][0] == ">" else (0.0, number)
    else:
        number = _strength_of(bound, "number", 0.0)
        low, high = number - NEAR_STRENGTH, number + NEAR_STRENGTH
    if low > high:
        raise BadQuery(f"strength:{value}", "the lower strength comes first")
    return low, high


def _due(value: str, _tree: FamilyTree) -> Term:
    if not (value.isdecimal() and len(value) < 5):
        raise BadQuery(f"due:{value}", "write a number of days, such as due:14")
    days = int(value)
    return lambda facts: facts.due_in is not None and facts.due_in <= days


def _not(term: Term) -> Term:
    return lambda facts: not term(facts)


def _strength_of(found: re.Match[str], group: str, otherwise: float) -> float:
    """A number of a match in % vol, whatever strength is written in."""
    text = found[group]
    return otherwise if text is None else float(text.replace(",", ".")) / degrees_per_abv(found)


_FIELDS: Mapping[str, Callable[[str, FamilyTree], Term]] = {
    "with": _with,
    "without": _without,
    "tag": _tag,
    "season": _tag,
    "glass": _glass,
    "made": _made,
    "strength": _strength,
    "due": _due,
}
FIELDS: Collection[str] = tuple(_FIELDS)
