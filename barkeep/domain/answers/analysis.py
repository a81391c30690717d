"""What a drink comes to in the glass: volume, strength, sugar, acid, energy, cost, and how surely.

Volumes are added up as they are: at the strengths of drinks contraction moves
strength by less than 0.2 % vol (OIML R 22, computed). Ice thins only what is
mixed on it; what is topped, floated or carbonated is added after.

Standard drinks and energy are information, not advice.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from barkeep.domain.answers.after_ice import added_after_ice, is_carbonated
from barkeep.domain.answers.balance import Style, style_of
from barkeep.domain.answers.contents import Content, Pour, content_of, pours_for
from barkeep.domain.answers.doubts import doubts
from barkeep.domain.answers.mixture import Mixture
from barkeep.domain.answers.prices import Cost, cost_of
from barkeep.domain.glasses import Fit, fits, glass_named, ice_named
from barkeep.domain.ingredients import FamilyTree
from barkeep.domain.liquids.content import energy_kcal, ethanol_ml_g
from barkeep.domain.liquids.dilution import Dilution
from barkeep.domain.liquids.drinks import standard_drinks
from barkeep.domain.liquids.freezing import InFreezer, freezing_point_c, in_freezer
from barkeep.domain.safety import Allergen, Caution, allergens_of, cautions_for, occasion_of
from barkeep.domain.snapshot import Snapshot
from barkeep.domain.specs import Spec, Technique

MOST_SUGAR_G_PER_L = 600.0
"""The freezing point of a sweeter drink is not known."""


@dataclass(frozen=True, slots=True)
class Sigmas:
    """One-sigma doubts of the figures of the same name."""

    served_volume_ml: float
    abv_percent: float
    sugar_g_per_l: float
    acid_g_per_l: float


@dataclass(frozen=True, slots=True)
class Frozen:
    """Where ice begins to form in the drink as served, and how a freezer leaves it."""

    point_c: float
    in_freezer: InFreezer


@dataclass(frozen=True, slots=True)
class Analysis:
    """A drink in the glass, ice melted in.

    `dilution` is the water added as a share of `start_volume_ml`; `iced_ml` of
    that is what the ice thins. `ethanol_g` is what was poured, heat or not.
    `general_cautions` are those of any drink with alcohol.
    None stands for what cannot be said: `sugar_to_acid` without acid, `frozen`
    of a hot, carbonated or very sweet drink, `fit` without a glass that is
    known, `style` where no usual range of its family is.
    """

    spec: Spec
    technique: Technique
    contents: tuple[Content, ...]
    start_volume_ml: float
    iced_ml: float
    dilution: Dilution
    served_volume_ml: float
    abv_percent: float
    sugar_g_per_l: float
    acid_g_per_l: float
    sugar_to_acid: float | None
    sigma: Sigmas
    ethanol_g: float
    standard_drinks: float
    country: str
    kcal: float
    cost: Cost
    allergens: tuple[Allergen, ...]
    cautions: tuple[Caution, ...]
    general_cautions: tuple[Caution, ...]
    frozen: Frozen | None
    fit: Fit | None
    style: Style | None
    uncertain: tuple[str, ...]


def analyse(
    spec: Spec,
    snapshot: Snapshot,
    technique: Technique | None = None,
    pours: Sequence[Pour] | None = None,
) -> Analysis:
    """Work a drink out, its figures from the bottles that would be poured tonight.

    `technique` is how it is made instead of how its method says; `pours` gives
    one for each line of the spec, where other things are poured than just what
    it asks for. Optional lines and garnishes count only for allergens and cautions.
    """
    made = replace(spec, technique=technique or spec.technique)
    poured = pours_for(spec, snapshot) if pours is None else tuple(pours)
    mixture = _mixture(made, poured, snapshot)
    cost = cost_of(mixture.contents, snapshot)
    tree, country = snapshot.knowledge.tree, snapshot.settings.country
    abv = mixture.per_l(lambda each: each.ethanol_ml) / 10.0
    sugar, acid = mixture.per_l(lambda each: each.sugar_g), mixture.per_l(lambda each: each.acid_g)
    ethanol_g = ethanol_ml_g(mixture.total(lambda each: each.ethanol_ml))
    drinks = standard_drinks(ethanol_g, country)
    used = _used(poured)
    cautions, general = _cautions(made, poured, used, abv, drinks, tree)
    return Analysis(
        spec=made,
        technique=made.technique,
        contents=mixture.contents,
        start_volume_ml=mixture.start_ml,
        iced_ml=mixture.iced_ml,
        dilution=mixture.whole,
        served_volume_ml=mixture.served_ml,
        abv_percent=abv,
        sugar_g_per_l=sugar,
        acid_g_per_l=acid,
        sugar_to_acid=sugar / acid if acid else None,
        sigma=_sigmas(mixture, abv),
        ethanol_g=ethanol_g,
        standard_drinks=drinks,
        country=country,
        kcal=_energy(mixture, ethanol_g),
        cost=cost,
        allergens=allergens_of(used, tree),
        cautions=cautions,
        general_cautions=general,
        frozen=_frozen(mixture, abv, sugar),
        fit=_fit(made, mixture.served_ml),
        style=style_of(made, made.technique, mixture.contents, tree),
        uncertain=doubts(made, mixture, cost),
    )


def _mixture(spec: Spec, poured: Sequence[Pour], snapshot: Snapshot) -> Mixture:
    knowledge = snapshot.knowledge
    after = added_after_ice(spec, spec.technique, knowledge.tree)
    numbers = [number for number, line in enumerate(spec.lines) if line.required]
    contents = tuple(
        content_of(spec.lines[each], poured[each], spec.technique, knowledge) for each in numbers
    )
    on_ice = tuple(each not in after for each in numbers)
    return Mixture(contents, on_ice, spec.technique, knowledge.tree)


def _sigmas(mixture: Mixture, abv: float) -> Sigmas:
    lost = abv * (1.0 - mixture.alcohol_kept) / 2.0
    return Sigmas(
        mixture.served_sigma_ml,
        mixture.sigma(lambda c: c.liquid.abv.value, lambda c: c.liquid.abv.sigma, lost),
        mixture.sigma(lambda c: c.liquid.sugar.value, lambda c: c.liquid.sugar.sigma),
        mixture.sigma(lambda c: c.liquid.acid.value, lambda c: c.liquid.acid.sigma),
    )


def _energy(mixture: Mixture, ethanol_g: float) -> float:
    return energy_kcal(
        {
            "ethanol": ethanol_g,
            "sugar": mixture.total(lambda each: each.sugar_g),
            "acid": mixture.total(lambda each: each.acid_g),
            "protein": mixture.total(lambda each: each.protein_g),
            "fat": mixture.total(lambda each: each.fat_g),
        }
    )


def _used(poured: Sequence[Pour]) -> frozenset[str]:
    """Keys of everything that goes in, and of what is made here for it."""
    return frozenset(key for pour in poured for key in (pour.ingredient, *pour.draws))


def _cautions(
    spec: Spec,
    poured: Sequence[Pour],
    used: frozenset[str],
    abv: float,
    drinks: float,
    tree: FamilyTree,
) -> tuple[tuple[Caution, ...], tuple[Caution, ...]]:
    """What this drink raises, and what any drink of its strength does."""
    labels = {
        pour.ingredient: pour.bottle.product.abv_percent
        for pour in poured
        if pour.bottle is not None and pour.bottle.product.abv_percent is not None
    }
    occasion = occasion_of(
        spec,
        used,
        tree,
        abv_percent=abv,
        standard_drinks=drinks,
        strengths=labels,
    )
    own = cautions_for(occasion, tree)
    every = cautions_for(occasion, tree, general=True)
    return own, tuple(each for each in every if each not in own)


def _frozen(mixture: Mixture, abv: float, sugar_g_per_l: float) -> Frozen | None:
    bubbles = any(is_carbonated(each.pour.ingredient, mixture.tree) for each in mixture.contents)
    sweet = sugar_g_per_l > MOST_SUGAR_G_PER_L
    if not mixture.served_ml or bubbles or sweet or mixture.technique == "hot":
        return None
    return Frozen(freezing_point_c(abv, sugar_g_per_l), in_freezer(abv, sugar_g_per_l))


def _fit(spec: Spec, served_ml: float) -> Fit | None:
    glass = glass_named(spec.glass)
    if glass is None or not served_ml:
        return None
    ice = ice_named(spec.ice)
    return fits(served_ml, glass, 0.0 if ice is None else ice.volume_ml(glass))
