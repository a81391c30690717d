"""Cautions, the conditions that raise them, and what is to be minded about one drink.

These are the usual cautions, not advice: local rules, and the word of a
doctor, a pharmacist or whoever else is qualified, come first.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from functools import cache
from string import Formatter
from types import MappingProxyType
from typing import Literal, cast, get_args

from barkeep import resource_files
from barkeep.domain.cautions.allergens import Allergen, allergens_of
from barkeep.domain.ingredients.toml_fields import Fields, parse
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.ingredients.uses import Technique
from barkeep.domain.phrases import Phrases, folded, is_findable
from barkeep.domain.specs.spec import Spec
from barkeep.errors import KnowledgeError

FILE = "cautions.toml"


Level = Literal["note", "care", "danger"]

LEVELS: tuple[Level, ...] = get_args(Level)


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

    `general` marks one that is true of every drink with alcohol.
    """

    key: str
    text: str
    authority: str
    level: Level
    basis: str
    general: bool = False

    @property
    def source(self) -> str:
        """The authority as a reader is told it; empty where nothing but common practice is known.

        How sure the caution is, its `basis`, is for those who keep the data.
        """
        return "" if self.authority == NO_AUTHORITY else f"Source: {self.authority}."


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

    kinds: frozenset[str] = frozenset()
    phrases: Phrases | None = None
    strength_at_least: float | None = None
    served_strength_at_least: float | None = None
    techniques: frozenset[str] = frozenset()
    ph_below_6: bool = False
    alcoholic: bool = False
    every: bool = False

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
    caution has nothing to say.
    """

    caution: Caution
    when: Conditions
    shows: frozenset[str] = frozenset()

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
    found = [rule.raised(occasion, kin, words) for rule in rules]
    return tuple(
        sorted(
            (caution for caution in found if caution is not None),
            key=lambda caution: -LEVELS.index(caution.level),
        )
    )


@cache
def shipped_cautions() -> tuple[CautionRule, ...]:
    """The rules barkeep brings along. Raises `KnowledgeError` for a broken resource."""
    return read_cautions(resource_files.read_text(FILE))


def read_cautions(text: str, file: str = FILE) -> tuple[CautionRule, ...]:
    """The rules out of a TOML text, one a table, its key the table's name."""
    return tuple(_rule(key, table, file) for key, table in parse(text, file).items())


def _filled(caution: Caution, figures: Mapping[str, str]) -> Caution:
    return replace(caution, text=caution.text.format(**figures))


def _rule(key: str, table: object, file: str) -> CautionRule:
    if not isinstance(table, dict):
        raise KnowledgeError(file, key, "write each caution as a table, [its-key]")
    fields = Fields(table, file, key)
    text, basis = fields.text("text"), fields.text("basis")
    level = cast(Level, fields.choice("level", LEVELS, ""))
    authority, general = fields.text("authority"), fields.flag("general")
    if not any(each in basis for each in BASES):
        fields.refuse(f"“basis” must say one of these: {', '.join(BASES)}")
    when = _conditions(fields)
    fields.finish()
    caution = Caution(
        key=key, text=text, authority=authority, level=level, basis=basis, general=general
    )
    return CautionRule(caution, when, _figures(text, fields))


def _conditions(fields: Fields) -> Conditions:
    conditions = Conditions(
        kinds=frozenset(fields.words("kinds")),
        phrases=_phrases(fields),
        strength_at_least=fields.number_or_none("strength_at_least", above=0, most=100),
        served_strength_at_least=fields.number_or_none(
            "served_strength_at_least", above=0, most=100
        ),
        techniques=_techniques(fields),
        ph_below_6=fields.flag("ph_below_6"),
        alcoholic=fields.flag("alcoholic"),
        every=fields.flag("all"),
    )
    if conditions in (Conditions(), Conditions(every=True)):
        fields.refuse("nothing raises it; say in which case it is to be raised")
    return conditions


def _phrases(fields: Fields) -> Phrases | None:
    said, unless = fields.words("words"), fields.words("not")
    for phrase in (*said, *unless):
        if not is_findable(phrase):
            fields.refuse(f"“{phrase}” says too little to be looked for")
    if unless and not said:
        fields.refuse("“not” needs “words” to take something away from")
    return Phrases(said, unless) if said else None


def _techniques(fields: Fields) -> frozenset[str]:
    techniques = fields.words("technique")
    for each in techniques:
        if each not in get_args(Technique):
            fields.refuse(f"“technique” has “{each}”; there is no such technique")
    return frozenset(techniques)


def _figures(text: str, fields: Fields) -> frozenset[str]:
    try:
        names = {name for _, name, _, _ in Formatter().parse(text) if name is not None}
    except ValueError:
        fields.refuse("“text” has a brace without its fellow")
    for name in names:
        if name not in FIGURES:
            fields.refuse(f"“text” shows {{{name}}}; it may show {', '.join(FIGURES)}")
    return frozenset(names)


__all__ = [
    "Allergen",
    "Caution",
    "CautionRule",
    "Level",
    "Occasion",
    "allergens_of",
    "cautions_for",
    "occasion_of",
]


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
