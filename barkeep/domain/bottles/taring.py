"""What an empty bottle weighs, learned from the scale; and with it what its contents weigh.

Weighed empty, the tare is as sure as the scale. Weighed full, it is what the
nominal contents leave, as sure as the maker's fill. Both weighings of one
bottle give the density of contents that strength and sugar say nothing of.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from math import hypot, isfinite
from typing import Literal

from barkeep.domain.bottles.bottle import SCALE_SIGMA_G, Bottle, Product, Tare, fill_sigma
from barkeep.domain.bottles.containers import contents_of, like_tare, shape_of
from barkeep.domain.bottles.shapes import brimful_ml
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.liquids.sweetened import SpiritDensity, in_air, out_of_air
from barkeep.errors import InvalidField, UnlikelyTare
from barkeep.translation import tr

LIGHTEST_G_PER_ML, HEAVIEST_G_PER_ML = 0.75, 1.5
"""Nothing that is poured at a bar is lighter or heavier: pure ethanol is 0.79, honey 1.43."""
ODD_SIGMAS = 3.0
"""Two weights so far from what a full bottle holds are rather a slip than a generous maker."""
HEAVIEST_BOTTLE_G = 20_000.0
"""No bottle is heavier, full or empty; more is a slip."""
USUAL_GLASS_G_PER_ML = (0.25, 1.6)
"""What the glass of a bottle weighs for each ml it holds; outside, a scale was misread or the
bottle is a rare one (*common practice*: 700 ml in 350 to 900 g of glass)."""
LIKELY_GLASS_G_PER_ML = (0.015, 4.0)
"""Outside this it is no bottle of that size: a slip of a digit or of a unit. Both are choices;
a litre in plastic or carton weighs 30 to 40 g empty (*from memory*)."""


@dataclass(frozen=True, slots=True)
class Learned:
    """What one weighing has taught: the bottle with its tare, and a density where one was new.

    `waits_for_empty` says that the full weight is kept, and means something
    once the bottle has been weighed empty too. `odd_contents_ml` is what an
    empty and a full weight together would mean, where that is not what a full
    bottle holds.
    """

    bottle: Bottle
    density_g_per_ml: float | None = None
    waits_for_empty: bool = False
    odd_contents_ml: float | None = None


def odd_glass(bottle: Bottle) -> Literal["light", "heavy", ""]:
    """Whether an empty bottle weighs less or more than one of its size usually does."""
    if bottle.tare is None:
        return ""
    per_ml = bottle.tare.weight_g / bottle.product.size
    least, most = USUAL_GLASS_G_PER_ML
    return "light" if per_ml < least else "heavy" if per_ml > most else ""


def weighed_empty(bottle: Bottle, weight_g: float, tree: FamilyTree) -> Learned:
    """What an empty bottle on the scale teaches. Raises `InvalidField` or `UnlikelyTare`."""
    _refuse_impossible(bottle, weight_g)
    if not _is_likely(weight_g, bottle.product):
        raise UnlikelyTare(bottle.product.title, bottle.product.size, weight_g, None)
    tared = replace(bottle, tare=Tare(weight_g, SCALE_SIGMA_G))
    if bottle.full_g is None:
        return Learned(tared)
    return _from_both(tared, weight_g, bottle.full_g, tree)


def weighed_full(
    bottle: Bottle, weight_g: float, tree: FamilyTree, bottles: tuple[Bottle, ...] = ()
) -> Learned:
    """What a full bottle on the scale teaches; `bottles` may lend the tare of a like one.

    Raises `InvalidField` or `UnlikelyTare`.
    """
    _refuse_impossible(bottle, weight_g)
    filled = replace(bottle, full_g=weight_g)
    known = bottle.tare if bottle.tare and bottle.tare.was_weighed else None
    if known is not None:
        return _from_both(filled, known.weight_g, weight_g, tree)
    density = contents_of(bottle.product, tree).density
    if density is not None:
        return Learned(replace(filled, tare=_tare_below(weight_g, bottle.product, density)))
    like = like_tare(bottle.product, bottles)
    if like is None:
        _refuse_unlikely_full(weight_g, bottle.product)
        return Learned(filled, waits_for_empty=True)
    return Learned(filled, _density_between(bottle, like.weight_g, weight_g))


def tare_again(bottle: Bottle, tree: FamilyTree) -> Bottle:
    """The bottle with its tare worked out anew, where that came from its full weight.

    For when the label was corrected: another strength is another density.
    """
    worked_out = bottle.tare is not None and not bottle.tare.was_weighed
    if bottle.full_g is None or not worked_out:
        return bottle
    density = contents_of(bottle.product, tree).density
    tare = None if density is None else _tare_below(bottle.full_g, bottle.product, density)
    return replace(bottle, tare=tare)


def _tare_below(full_g: float, product: Product, density: SpiritDensity) -> Tare:
    """What a full weight leaves for the glass, in doubt by the fill and by the density."""
    per_ml = in_air(density.g_per_ml)
    contents_g = product.size * per_ml
    if not _is_likely(full_g - contents_g, product):
        raise UnlikelyTare(product.title, product.size, None, full_g)
    by_fill, by_density = per_ml * fill_sigma(product.size), contents_g * density.sigma_share
    return Tare(full_g - contents_g, hypot(SCALE_SIGMA_G, by_fill, by_density))


def _is_likely(glass_g: float, product: Product) -> bool:
    """Whether an empty bottle may weigh so much.

    What is made here stands in whatever is at hand, however large and heavy.
    """
    least, most = LIKELY_GLASS_G_PER_ML
    per_ml = glass_g / product.size
    return per_ml >= least and (product.house_made or per_ml <= most)


def _refuse_unlikely_full(full_g: float, product: Product) -> None:
    """For contents of unknown density: neither the lightest nor the heaviest fits the weight."""
    for density in (LIGHTEST_G_PER_ML, HEAVIEST_G_PER_ML):
        if _is_likely(full_g - density * product.size, product):
            return
    raise UnlikelyTare(product.title, product.size, None, full_g)


def _density_between(bottle: Bottle, empty_g: float, full_g: float) -> float:
    product = bottle.product
    density = out_of_air((full_g - empty_g) / product.size)
    if not LIGHTEST_G_PER_ML <= density <= HEAVIEST_G_PER_ML:
        raise UnlikelyTare(product.title, product.size, empty_g, full_g)
    return density


def _from_both(bottle: Bottle, empty_g: float, full_g: float, tree: FamilyTree) -> Learned:
    """What both weights teach: where strength and sugar tell the density, they are only compared.

    A maker's fill is less sure than such a density, so nothing is learned from it.
    """
    density = _density_between(bottle, empty_g, full_g)
    known = contents_of(bottle.product, tree).modelled
    if known is None:
        return Learned(bottle, density)
    size = bottle.product.size
    contents_ml = (full_g - empty_g) / in_air(known.g_per_ml)
    doubt_ml = hypot(fill_sigma(size), size * known.sigma_share)
    # What is made here may stand in a larger bottle; no other has room above its brim.
    room_ml = brimful_ml(shape_of(bottle.product, tree), size)
    brim_doubt_ml = ODD_SIGMAS * size * known.sigma_share
    if not bottle.product.house_made and contents_ml > room_ml + brim_doubt_ml:
        raise UnlikelyTare(bottle.product.title, size, empty_g, full_g)
    is_odd = abs(contents_ml - size) > ODD_SIGMAS * doubt_ml
    return Learned(bottle, odd_contents_ml=contents_ml if is_odd else None)


def _refuse_impossible(bottle: Bottle, weight_g: float) -> None:
    product = bottle.product
    if product.unit != "ml":
        expected = tr("{title} is not poured, so its bottle needs no weighing", title=product.title)
        raise InvalidField("weight", f"{weight_g:g} g", expected)
    if not isfinite(weight_g) or not 0.0 < weight_g <= HEAVIEST_BOTTLE_G:
        expected = tr(
            "it is more than nothing and at most {most:g} kg", most=HEAVIEST_BOTTLE_G / 1000
        )
        raise InvalidField("weight", f"{weight_g:g} g", expected)
