"""Cautions, the conditions that raise them, and what is to be minded about one drink.

These are the usual cautions, not advice: local rules, and the word of a
doctor, a pharmacist or whoever else is qualified, come first.
"""

from __future__ import annotations

from collections.abc import Collection, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace
from functools import cache
from string import Formatter
from types import MappingProxyType
from typing import Annotated, Literal, get_args

from barkeep.domain.cautions.allergens import Allergen, as_listed, law_behind
from barkeep.domain.ingredients.relations import Technique
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import Phrases, folded, is_findable
from barkeep.domain.specs.spec import Spec
from barkeep.errors import KnowledgeError
from barkeep.shipped_data import (
    Limits,
    Table,
    Text,
    Texts,
    parse,
    parted,
    read,
    read_field,
    table_of,
    without,
)
from barkeep.translation import tr, tr_noop

FILE = "cautions.toml"


Strength = Annotated[float, Limits(gt=0.0, le=100.0)]

Level = Literal["note", "care", "danger"]
LEVELS: tuple[Level, ...] = get_args(Level)
Tier = Literal["now", "allergen", "general"]
"""How much a caution weighs behind the bar: what can hurt now with this drink, what an allergic
guest must know, and the general words, which are said once."""
TIERS: tuple[Tier, ...] = get_args(Tier)


BASES = (
    "read in a copy of the source",
    "read in a secondary copy",
    "common practice",
    "from memory",
)
"""How sure a caution is; its `basis` says at least one of these."""
NO_AUTHORITY = "no authority found"
"""What `authority` says where there is none."""


@dataclass(frozen=True, slots=True)
class Caution:
    """One caution: a short text, the authority behind it and how sure it is.

    `general` marks one that is true of every drink with alcohol. `tag` is what it is
    called where there is room for a word or two. `written` is the text as its file has it, with
    the names of `figures`.
    """

    key: str
    written: Text = field(metadata={"called": "text"})
    authority: Text
    level: Level
    basis: Text
    general: bool = False
    tier: Tier = "now"
    tag: str = ""
    figures: tuple[tuple[str, str], ...] = ()

    @property
    def text(self) -> str:
        """What is read, with the drink's own figures."""
        return tr(self.written, **dict(self.figures))

    @property
    def in_brief(self) -> str:
        """The caution in a word or two: *raw egg*; not translated yet."""
        return self.tag or self.key.replace("-", " ")

    @property
    def authorities(self) -> tuple[str, ...]:
        """The authority's parts; none where there is none."""
        return () if self.authority == NO_AUTHORITY else tuple(self.authority.split("; "))

    @property
    def source(self) -> str:
        """The authority as a reader is told it; empty where nothing but common practice is known.

        How sure the caution is, its `basis`, is for those who keep the data.
        """
        named = "; ".join(map(tr, self.authorities))
        return tr("Source: {authority}.", authority=named) if named else ""


@dataclass(frozen=True, slots=True)
class Occasion:
    """What the conditions may ask about a drink.

    `ingredients` are the keys of what goes in, `words` everything written about
    it, `abv_percent` its strength as served and `strongest_percent` that of the
    strongest bottle poured, both in % vol. What is not known is None.
    """

    ingredients: frozenset[str]
    words: str
    technique: str
    abv_percent: float | None = None
    strongest_percent: float | None = None
    ph_below_6: bool | None = None
    standard_drinks: float | None = None
    alcoholic: bool = True

    @property
    def figures(self) -> Mapping[str, str]:
        """The figures a text may show, as far as they are known."""
        known = {}
        if self.abv_percent is not None:
            known["abv_percent"] = f"{self.abv_percent:.0f}"
        if self.standard_drinks is not None:
            known["standard_drinks"] = f"{self.standard_drinks:.1f}"
        return known


FIGURES = ("abv_percent", "standard_drinks")
"""What may stand in braces in a text."""


@dataclass(frozen=True, slots=True)
class Conditions:
    """What raises a caution: any of these, or with `every` all of them.

    An acid drink is one not known to be at pH 6 or above, since almost every
    drink is below it.
    """

    kinds: frozenset[Text] = frozenset()
    phrases: Phrases | None = None
    strength_at_least: Strength | None = None
    served_strength_at_least: Strength | None = None
    techniques: frozenset[Technique] = field(default=frozenset(), metadata={"called": "technique"})
    ph_below_6: bool = False
    alcoholic: bool = False
    every: bool = field(default=False, metadata={"called": "all"})

    def hold(self, occasion: Occasion, kin: frozenset[str], words: str) -> bool:
        """Whether they hold; `kin` are the ingredients and their kinds, `words` are folded."""
        signs = self._signs(occasion, kin, words)
        return all(signs) if self.every else any(signs)

    def _signs(self, occasion: Occasion, kin: frozenset[str], words: str) -> Iterator[bool]:
        """One answer for each condition that is set, the quick ones first."""
        if self.kinds:
            yield not self.kinds.isdisjoint(kin)
        if self.techniques:
            yield occasion.technique in self.techniques
        if self.strength_at_least is not None:
            yield (occasion.strongest_percent or 0.0) >= self.strength_at_least
        if self.served_strength_at_least is not None:
            yield (occasion.abv_percent or 0.0) >= self.served_strength_at_least
        if self.alcoholic:
            yield occasion.alcoholic
        if self.ph_below_6:
            yield occasion.ph_below_6 is not False
        if self.phrases is not None:
            yield self.phrases.found_in(words)


@dataclass(frozen=True, slots=True)
class CautionRule:
    """A caution and when it is raised.

    `shows` names the figures its text shows; where one is not known, the
    caution has nothing to say. Beside one of those in `now_with`, it can hurt now.
    """

    caution: Caution
    when: Conditions
    shows: frozenset[str] = frozenset()
    now_with: frozenset[str] = frozenset()

    @property
    def general(self) -> bool:
        """Whether it is true of every drink with alcohol."""
        return self.caution.general

    def raised(self, occasion: Occasion, kin: frozenset[str], words: str) -> Caution | None:
        """The caution with its figures filled in, or None."""
        if not self.when.hold(occasion, kin, words):
            return None
        if not self.shows:
            return self.caution
        figures = occasion.figures
        return _filled(self.caution, figures) if self.shows <= figures.keys() else None


def raised_cautions(
    occasion: Occasion, tree: FamilyTree, rules: tuple[CautionRule, ...]
) -> tuple[Caution, ...]:
    """The cautions an occasion raises: danger first, within a level in the order of the rules."""
    known = [key for key in occasion.ingredients if key in tree]
    kin = occasion.ingredients.union(*map(tree.ancestors, known))
    words = folded(occasion.words)
    found = [(rule, rule.raised(occasion, kin, words)) for rule in rules]
    raised = {caution.key for _rule, caution in found if caution is not None}
    weighed = (
        replace(caution, tier="now") if rule.now_with & raised else caution
        for rule, caution in found
        if caution is not None
    )
    return tuple(sorted(weighed, key=lambda caution: -LEVELS.index(caution.level)))


def of_allergens(allergens: Iterable[Allergen]) -> tuple[Caution, ...]:
    """The cautions about those that can kill within minutes, each with the laws that list it."""
    return tuple(
        Caution(
            key=each.word.replace(" ", "-"),
            written=each.now,
            authority=law_behind(each) or NO_AUTHORITY,
            level="care",
            basis="read in a copy of the source; what to do from memory",
        )
        for each in allergens
        if each.now
    )


def cautions_of_any_drink() -> tuple[Caution, ...]:
    """What is true of every drink with alcohol, and needs no figures."""
    return tuple(each.caution for each in shipped_cautions() if each.general and not each.shows)


def of_tier(cautions: Iterable[Caution], tier: Tier) -> tuple[Caution, ...]:
    """Those of one weight, in their order."""
    return tuple(each for each in cautions if each.tier == tier)


def now_tags(cautions: Iterable[Caution]) -> tuple[str, ...]:
    """What can hurt now with a drink, each in a word or two: *raw egg*, *flame*."""
    return tuple(dict.fromkeys(each.in_brief for each in of_tier(cautions, "now")))


def allergen_tags(cautions: Iterable[Caution], allergens: Iterable[Allergen]) -> tuple[str, ...]:
    """What an allergic guest must know, in the order of the lists: *egg*, *tree nuts*."""
    beside = (each.in_brief for each in of_tier(cautions, "allergen"))
    return tuple(dict.fromkeys((*(each.word for each in as_listed(allergens)), *beside)))


IN_GENERAL = tr_noop(
    "Alcohol harms: never before you drive, when pregnant, below the legal drinking age or with "
    "medicines; local rules first."
)
"""All the general cautions in one sentence, where one further step shows each."""


@cache
def shipped_cautions() -> tuple[CautionRule, ...]:
    """The rules barkeep brings along. Raises `KnowledgeError` for a broken resource."""
    return table_of(FILE, read_cautions, tuple[CautionRule, ...])


def read_cautions(text: str, file: str = FILE) -> tuple[CautionRule, ...]:
    """The rules out of a TOML text, one a table, its key the table's name."""
    return tuple(_rule(key, table, file) for key, table in parse(text, file).items())


def _filled(caution: Caution, figures: Mapping[str, str]) -> Caution:
    return replace(caution, figures=tuple(figures.items()))


def _rule(key: str, raw: object, file: str) -> CautionRule:
    own, rest = parted(raw, Caution, file, key)
    caution = read(own, Caution, file, key, key=key)
    if not any(each in caution.basis for each in BASES):
        raise KnowledgeError(file, key, f"“basis” must say one of these: {', '.join(BASES)}")
    now_with = _now_with(rest, file, key)
    when = read(
        without(rest, "words", "not", "now_with"),
        Conditions,
        file,
        key,
        phrases=_phrases(rest, file, key),
    )
    if when in (Conditions(), Conditions(every=True)):
        reason = "nothing raises it; say in which case it is to be raised"
        raise KnowledgeError(file, key, reason)
    return CautionRule(caution, when, _figures(caution.written, file, key), now_with)


def _now_with(table: Table, file: str, key: str) -> frozenset[str]:
    if "now_with" not in table:
        return frozenset()
    return frozenset(read_field(table, name="now_with", kind=Texts, file=file, place=key))


def _phrases(table: Table, file: str, key: str) -> Phrases | None:
    said, unless = (
        read_field(table, name=each, kind=Texts, file=file, place=key) if each in table else ()
        for each in ("words", "not")
    )
    for phrase in (*said, *unless):
        if not is_findable(phrase):
            raise KnowledgeError(file, key, f"“{phrase}” says too little to be looked for")
    if unless and not said:
        raise KnowledgeError(file, key, "“not” needs “words” to take something away from")
    return Phrases(said, unless) if said else None


def _figures(text: str, file: str, key: str) -> frozenset[str]:
    try:
        names = {name for _, name, _, _ in Formatter().parse(text) if name is not None}
    except ValueError:
        raise KnowledgeError(file, key, "“text” has a brace without its fellow") from None
    for name in names:
        if name not in FIGURES:
            reason = f"“text” shows {{{name}}}; it may show {', '.join(FIGURES)}"
            raise KnowledgeError(file, key, reason)
    return frozenset(names)


_AS_USUAL: Mapping[str, float] = MappingProxyType({})
_BETWEEN = ". "
"""Keeps a phrase from running from one line of a spec into the next."""


def cautions_for(
    occasion: Occasion,
    tree: FamilyTree,
    rules: Sequence[CautionRule] | None = None,
    *,
    general: bool = False,
) -> tuple[Caution, ...]:
    """The cautions a drink raises: danger first, then care, then notes.

    `rules` are those barkeep brings along unless given. With `general`, those
    true of every drink with alcohol are among them (driving, pregnancy, age,
    medicines, standard drinks). Allergens are not: ask `allergens_of`.
    """
    known = shipped_cautions() if rules is None else rules
    wanted = tuple(rule for rule in known if general or not rule.general)
    return raised_cautions(occasion, tree, wanted)


def occasion_of(
    spec: Spec,
    used_keys: Collection[str],
    tree: FamilyTree,
    *,
    abv_percent: float | None = None,
    standard_drinks: float | None = None,
    strengths: Mapping[str, float] = _AS_USUAL,
    ph_below_6: bool | None = None,
) -> Occasion:
    """The occasion of a spec made with these ingredients.

    `strengths` are those on the labels poured, in % vol by ingredient; where
    none is given, the ingredient's usual one counts. A drink with anything that
    holds acid is taken to be below pH 6 unless `ph_below_6` says otherwise.
    """
    usual = {key: tree[key].abv_percent or 0.0 for key in used_keys}
    acid = any(tree[key].acid_g_per_l for key in used_keys) or None
    return Occasion(
        ingredients=frozenset(used_keys),
        words=words_of(spec),
        technique=spec.technique,
        abv_percent=abv_percent,
        strongest_percent=max({**usual, **strengths}.values(), default=None),
        ph_below_6=acid if ph_below_6 is None else ph_below_6,
        standard_drinks=standard_drinks,
        alcoholic=any(key in tree.alcoholic for key in used_keys),
    )


def words_of(spec: Spec) -> str:
    """Everything a spec says apart from its name, which may promise what it does not do."""
    lines = (part for line in spec.lines for part in (line.text, line.note))
    return _BETWEEN.join((spec.method, spec.glass, spec.ice, spec.notes, *lines))
