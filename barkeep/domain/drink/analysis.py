"""What a drink comes to in the glass: volume, strength, sugar, acid, energy, cost, and how surely.

Volumes are added up as they are: at the strengths of drinks contraction moves
strength by less than 0.2 % vol (OIML R 22, computed). Ice thins only what is
mixed on it; what is topped, floated or carbonated is added after.

Standard drinks and energy are information, not advice.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace

from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.cautions.allergens import Allergen, allergens_of
from barkeep.domain.cautions.cautions import Caution, cautions_for, occasion_of
from barkeep.domain.drink.balance import DrinkStyle, style_of
from barkeep.domain.drink.contents import Content, Pour, content_of, pours_for
from barkeep.domain.drink.costs import Cost, cost_of
from barkeep.domain.drink.doubts import doubts
from barkeep.domain.drink.ice import added_after_ice, is_carbonated, is_poured_hot
from barkeep.domain.drink.mixture import Dilution, Mixture
from barkeep.domain.ingredients.relations import Technique
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.liquids.content import (
    Nutrient,
    energy_kcal,
    energy_kj,
    ethanol_ml_g,
    standard_drinks,
)
from barkeep.domain.liquids.freezing import (
    STRONGEST_KNOWN_ABV,
    InFreezer,
    freezing_point_c,
    in_freezer,
    where_ice_begins,
)
from barkeep.domain.pouring.minded import Minded
from barkeep.domain.pouring.supply import supply_of
from barkeep.domain.specs.glasses import Fit, fits, glass_as_written, ice_named
from barkeep.domain.specs.spec import Line, Spec

MOST_SUGAR_G_PER_L = 600.0
"""The freezing point of a sweeter drink is not known."""
MOST_SERVED_ML, MOST_ETHANOL_G = 700.0, 70.0
"""More is no one serve but a batch: a bottle, or five drinks of 14 g (a choice)."""


@dataclass(frozen=True, slots=True)
class Sigmas:
    """One-sigma doubts of the figures of the same name."""

    served_volume_ml: float
    abv_percent: float
    sugar_g_per_l: float
    acid_g_per_l: float


@dataclass(frozen=True, slots=True)
class Frozen:
    """Where ice begins to form in the drink as served, and how a freezer leaves it.

    Of a very strong drink `point_c` is but a bound (`is_bound`): not above this.
    `begins` says either in words.
    """

    point_c: float
    is_bound: bool
    begins: str
    in_freezer: InFreezer


@dataclass(frozen=True, slots=True)
class Analysis:
    """A drink in the glass, ice melted in.

    `dilution` is the water added as a share of `start_volume_ml`; `iced_ml` of
    that is what the ice thins. `ethanol_g` is what was poured, heat or not.
    `general_cautions` are those of any drink with alcohol.
    `optional_alcohol` are the keys of alcoholic lines left out as optional.
    None stands for what cannot be said: strength, ethanol, standard drinks,
    energy, `frozen` and `style` where something alcoholic has no amount
    (`unknown_alcohol`, keys); `sugar_to_acid` without acid, `frozen` of a hot,
    carbonated or very sweet drink, `fit` without a glass that is known, or of a
    batch and its glass; `style` where no usual range of its family is.
    """

    spec: Spec
    technique: Technique
    contents: tuple[Content, ...]
    start_volume_ml: float
    iced_ml: float
    dilution: Dilution
    served_volume_ml: float
    abv_percent: float | None
    sugar_g_per_l: float
    acid_g_per_l: float
    sugar_to_acid: float | None
    sigma: Sigmas
    ethanol_g: float | None
    standard_drinks: float | None
    country: str
    kcal: float | None
    kj: float | None
    cost: Cost
    allergens: tuple[Allergen, ...]
    cautions: tuple[Caution, ...]
    general_cautions: tuple[Caution, ...]
    frozen: Frozen | None
    fit: Fit | None
    style: DrinkStyle | None
    uncertain: tuple[str, ...]
    unknown_alcohol: tuple[str, ...] = ()
    optional_alcohol: tuple[str, ...] = ()

    @property
    def minded(self) -> Minded:
        """Its cautions and allergens by weight."""
        return Minded(self.cautions, self.allergens)

    @property
    def is_batch(self) -> bool:
        """Whether this is more than anyone is served: the figures are for the whole."""
        return is_batch(self.served_volume_ml, self.ethanol_g)


def is_batch(served_ml: float, ethanol_g: float | None) -> bool:
    """Whether so much is no one serve."""
    return served_ml > MOST_SERVED_ML or (ethanol_g or 0.0) > MOST_ETHANOL_G


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
    tree, country = snapshot.knowledge.tree, snapshot.settings.country
    made = _made(spec, tree, technique)
    poured = pours_for(spec, snapshot) if pours is None else tuple(pours)
    mixture = _mixture(made, poured, snapshot)
    cost = cost_of(mixture.contents, snapshot)
    known = not mixture.unknown_alcohol
    counted_abv, abv = mixture.counted_abv_percent, mixture.abv_percent
    sugar, acid = mixture.per_l(lambda each: each.sugar_g), mixture.per_l(lambda each: each.acid_g)
    ethanol_g = ethanol_ml_g(mixture.total(lambda each: each.ethanol_ml)) if known else None
    drinks = None if ethanol_g is None else standard_drinks(ethanol_g, country)
    batch = is_batch(mixture.served_ml, ethanol_g)
    used = _used(made.lines, poured)
    # Of a batch, and of what holds alcohol only by choice, nothing is said per serve.
    cautions, general = _cautions(
        made, poured=poured, used=used, abv=abv, drinks=None if batch else drinks or None, tree=tree
    )
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
        sigma=_sigmas(mixture, counted_abv),
        ethanol_g=ethanol_g,
        standard_drinks=drinks,
        country=country,
        kcal=None if ethanol_g is None else energy_kcal(_nutrients(mixture, ethanol_g)),
        kj=None if ethanol_g is None else energy_kj(_nutrients(mixture, ethanol_g)),
        cost=cost,
        allergens=allergens_of(used, tree, _made_at_home(poured)),
        cautions=cautions,
        general_cautions=general,
        frozen=None if abv is None else _frozen(mixture, abv, sugar),
        fit=_fit(made, mixture, batch=batch),
        style=style_of(made, made.technique, mixture.contents, tree) if known else None,
        uncertain=doubts(made, mixture, cost, supply_of(snapshot), batch=batch),
        unknown_alcohol=mixture.unknown_alcohol,
        optional_alcohol=_optional_alcohol(made, poured, tree),
    )


def strength_of(spec: Spec, snapshot: Snapshot) -> float | None:
    """The strength of a drink as served, in % vol, as `analyse` says it and nothing beside.

    None also where nothing in it can be poured, or a line is not understood.
    """
    if spec.unsettled:
        return None
    made = _made(spec, snapshot.knowledge.tree)
    mixture = _mixture(made, pours_for(spec, snapshot), snapshot)
    return mixture.abv_percent if mixture.served_ml else None


def _made(spec: Spec, tree: FamilyTree, technique: Technique | None = None) -> Spec:
    """The spec with how it is made."""
    made = technique or _technique(spec, tree)
    return spec if made == spec.technique else replace(spec, technique=made)


def _technique(spec: Spec, tree: FamilyTree) -> Technique:
    """How it is made, as its lines say where its method does not: boiling water makes it hot."""
    return "hot" if is_poured_hot(spec, tree) else spec.technique


def _optional_alcohol(spec: Spec, poured: Sequence[Pour], tree: FamilyTree) -> tuple[str, ...]:
    optional = [
        pour.ingredient
        for line, pour in zip(spec.lines, poured, strict=True)
        if line.optional and not line.garnish and pour.ingredient in tree.alcoholic
    ]
    return tuple(dict.fromkeys(optional))


def _mixture(spec: Spec, poured: Sequence[Pour], snapshot: Snapshot) -> Mixture:
    knowledge = snapshot.knowledge
    after = added_after_ice(spec, spec.technique, knowledge.tree)
    numbers = [number for number, line in enumerate(spec.lines) if line.required]
    contents = tuple(
        content_of(spec.lines[each], poured[each], spec, knowledge) for each in numbers
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


def _nutrients(mixture: Mixture, ethanol_g: float) -> Mapping[Nutrient, float]:
    """Grams of all that gives energy."""
    return {
        "ethanol": ethanol_g,
        "sugar": mixture.total(lambda each: each.sugar_g),
        "acid": mixture.total(lambda each: each.acid_g),
        "protein": mixture.total(lambda each: each.protein_g),
        "fat": mixture.total(lambda each: each.fat_g),
    }


def _used(lines: Sequence[Line], poured: Sequence[Pour]) -> frozenset[str]:
    """Keys of everything that goes in, and of what is made here for it.

    A garnish that is not there is left out.
    """
    return frozenset(
        key
        for line, pour in zip(lines, poured, strict=True)
        if not line.garnish or pour.bottle or pour.draws
        for key in (pour.ingredient, *pour.draws)
    )


def _made_at_home(poured: Sequence[Pour]) -> frozenset[str]:
    """Keys of what comes out of the owner's own kitchen."""
    return frozenset(pour.ingredient for pour in poured if _is_made_at_home(pour))


def _is_made_at_home(pour: Pour) -> bool:
    """Whether it is a bottle of the owner's making, or made for this."""
    if pour.bottle is not None:
        return pour.bottle.product.house_made
    return bool(pour.draws) and pour.ingredient not in pour.draws


def _cautions(
    spec: Spec,
    poured: Sequence[Pour],
    used: frozenset[str],
    abv: float | None,
    drinks: float | None,
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
    every = cautions_for(occasion, tree, general=True)
    own = tuple(each for each in every if not each.general)
    return own, tuple(each for each in every if each.general)


def _frozen(mixture: Mixture, abv: float, sugar_g_per_l: float) -> Frozen | None:
    bubbles = any(is_carbonated(each.pour.ingredient, mixture.tree) for each in mixture.contents)
    sweet = sugar_g_per_l > MOST_SUGAR_G_PER_L
    if not mixture.served_ml or bubbles or sweet or mixture.technique == "hot":
        return None
    point_c = freezing_point_c(abv, sugar_g_per_l)
    return Frozen(
        point_c,
        abv > STRONGEST_KNOWN_ABV,
        where_ice_begins(point_c, abv),
        in_freezer(abv, sugar_g_per_l),
    )


def _fit(spec: Spec, mixture: Mixture, *, batch: bool) -> Fit | None:
    glass = glass_as_written(spec.glass)
    if glass is None or not mixture.served_ml or (batch and glass.kind == "glass"):
        return None
    # What is blended has its ice in it already.
    ice = None if spec.technique == "blended" else ice_named(spec.ice)
    ice_ml = 0.0 if ice is None else ice.volume_ml(glass)
    return fits(mixture.served_ml, glass, ice_ml, mixture.served_sigma_ml)
