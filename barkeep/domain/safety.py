"""What is to be minded about a drink: cautions, and the allergens it carries.

All texts and conditions are data, in `resources/cautions.toml` and
`resources/allergens.toml`, each with the authority behind it. They are the
usual cautions, not advice: local rules and professionals come first.
"""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence
from types import MappingProxyType

from barkeep.domain.allergens import Allergen, allergens_of
from barkeep.domain.cautions import (
    Caution,
    CautionRule,
    Level,
    Occasion,
    raised_cautions,
    shipped_cautions,
)
from barkeep.domain.ingredients import FamilyTree
from barkeep.domain.specs import Spec

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
