"""What must be known of a bottle before its level can be read off a scale or a ruler.

The weight of the empty bottle, the density of what is in it, and its shape.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field
from functools import cached_property
from math import hypot

from barkeep.domain.amounts.units import Unit
from barkeep.domain.bottles.bottle import Bottle, Label, Product, Tare, fill_sigma
from barkeep.domain.bottles.shapes import Shape, shipped_shapes, usual_shape
from barkeep.domain.ingredients.figures import Liquid, liquid_of
from barkeep.domain.ingredients.tree import FamilyTree, Ingredient
from barkeep.domain.liquids.sweetened import SpiritDensity, spirit_density
from barkeep.errors import OutsideRange
from barkeep.translation import tr, tr_noop

GLASS_TO_GLASS_SIGMA_G = 8.0
"""How much two empty bottles of one product differ, one sigma (*common practice*)."""


_FATTY_KINDS = ("dairy-containing", "egg-product", "coconut-product", "plant-milk")
_FATTY_ALLERGENS = frozenset({"milk", "egg"})
FATTY = tr_noop("it holds cream, milk, egg or coconut, and strength and sugar say nothing of those")
NO_STRENGTH = tr_noop("its strength is not known")
OUT_OF_RANGE = tr_noop("its strength and sugar are beyond what the tables reach")
NOT_POURED = tr_noop("it is not poured")


@dataclass(frozen=True)
class Contents:
    """What is in a bottle, as far as its density goes.

    `learned` was weighed; `liquid` is what strength, sugar and acid tell it
    from, None where they do not, and `because` says then why, as part of a
    sentence.
    """

    liquid: Liquid | None = None
    learned: SpiritDensity | None = None
    because: str = NOT_POURED

    @cached_property
    def modelled(self) -> SpiritDensity | None:
        """The density by strength and sugar; worked out only when it is asked for."""
        if self.liquid is None:
            return None
        try:
            return _density_of(self.liquid)
        except OutsideRange:
            return None

    @property
    def density(self) -> SpiritDensity | None:
        """The density as it was learned, else worked out; None where neither can be."""
        return self.learned or self.modelled

    @property
    def no_density_because(self) -> str:
        """Why there is none, as part of a sentence."""
        return tr(self.because or OUT_OF_RANGE)


@dataclass(frozen=True)
class Container:
    """A bottle as a scale and a ruler see it. `size` is in `unit`.

    `poured` is its label with the tree of its kind, None for what is not poured.
    Its shape and what is in it are worked out only where a scale or a ruler asks for them.
    """

    title: str
    size: float
    unit: Unit
    tare: Tare | None = None
    poured: tuple[Label, FamilyTree] | None = field(default=None, repr=False)

    @cached_property
    def shape(self) -> Shape | None:
        """The shape of what is poured from."""
        return None if self.poured is None else shape_of(*self.poured)

    @cached_property
    def contents(self) -> Contents:
        """What is in it."""
        return Contents() if self.poured is None else contents_of(*self.poured)

    @property
    def full_sigma(self) -> float:
        """One-sigma doubt of what a full one holds, in `unit`."""
        return fill_sigma(self.size)


def container_of(bottle: Bottle, tree: FamilyTree, bottles: Iterable[Bottle] = ()) -> Container:
    """A bottle of the bar. Without a tare of its own, it has that of a like one of `bottles`."""
    tare = bottle.tare or like_tare(bottle.product, bottles)
    return container_for(bottle.product, tree, tare)


def container_for(label: Label, tree: FamilyTree, tare: Tare | None = None) -> Container:
    """A bottle of a product that is not on the shelf yet."""
    if label.unit != "ml":
        return Container(label.title, label.size, label.unit)
    return Container(label.title, label.size, label.unit, tare, poured=(label, tree))


def shape_of(label: Label, tree: FamilyTree) -> Shape:
    """The bottle's shape: the product's own, else the usual one of its kind and size."""
    kinds = (label.ingredient, *sorted(tree.ancestors(label.ingredient)))
    own = shipped_shapes().get(label.shape or "")
    return own or shipped_shapes()[usual_shape(label.size, kinds)]


def contents_of(label: Label, tree: FamilyTree) -> Contents:
    """What a label names, with the ingredient's usual figures where it says nothing.

    Fat and egg weigh what they weigh whatever strength and sugar say.
    """
    learned = None
    if label.density_g_per_ml is not None:
        # Learned from one full bottle, it is as sure as that bottle's fill.
        learned = SpiritDensity(label.density_g_per_ml, fill_sigma(label.size) / label.size)
    if _is_fatty(tree[label.ingredient], tree):
        return Contents(None, learned, FATTY)
    liquid = liquid_of(label.ingredient, tree, label)
    return Contents(liquid, learned, "") if liquid.known else Contents(None, learned, NO_STRENGTH)


def like_tare(product: Product, bottles: Iterable[Bottle]) -> Tare | None:
    """The tare of one of `bottles` that holds this product, with the doubt from glass to glass.

    What is made here is filled into whatever is at hand, so it has none.
    """
    if product.house_made:
        return None
    known = [each.tare for each in bottles if each.product.id == product.id and each.tare]
    if not known:
        return None
    best = min(known, key=lambda tare: tare.sigma_g)
    return Tare(best.weight_g, hypot(best.sigma_g, GLASS_TO_GLASS_SIGMA_G))


def _is_fatty(usual: Ingredient, tree: FamilyTree) -> bool:
    of_kind = any(tree.is_a(usual.key, kind) for kind in _FATTY_KINDS)
    return of_kind or not _FATTY_ALLERGENS.isdisjoint(usual.allergens)


def _density_of(liquid: Liquid) -> SpiritDensity:
    """The density, in doubt by the model and by how far one sigma of each figure moves it.

    Acid is taken as so much more sugar: in water a gram of either takes up
    nearly the same room (*from memory*).
    """
    abv, solids = liquid.abv.value, liquid.sugar.value + liquid.acid.value
    fewer = max(0.0, solids - hypot(liquid.sugar.sigma, liquid.acid.sigma))
    moved = [spirit_density(abv, fewer).g_per_ml]
    if liquid.abv.source != "label":  # a label's tolerance is in the model's own doubt
        moved.append(spirit_density(max(0.0, abv - liquid.abv.sigma), solids).g_per_ml)
    there = spirit_density(abv, solids)
    shares = (each / there.g_per_ml - 1.0 for each in moved)
    return SpiritDensity(there.g_per_ml, hypot(there.sigma_share, *shares))
