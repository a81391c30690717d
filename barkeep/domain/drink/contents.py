"""What one line of a spec puts into the glass: its volume, ethanol, sugar, acid, protein, fat."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field, replace

from barkeep.domain.bar.knowledge import Knowledge
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.bottle import Bottle
from barkeep.domain.drink.pressing import is_pressed, pressed_from
from barkeep.domain.ingredients.composition import PLAIN, composition_of
from barkeep.domain.ingredients.figures import NOTHING, Figure, Liquid, liquid_of
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.pouring.sourcing import TOP_UP_ML
from barkeep.domain.pouring.supply import Supply, supply_of
from barkeep.domain.pouring.usual import UsualPours, usual_pours
from barkeep.domain.pouring.verdicts import Drink
from barkeep.domain.specs.spec import Line, Spec

POURED_SHARE = 0.03
"""One-sigma doubt of a measured pour, a share (*common practice*)."""
DASHED_SHARE = 0.3
"""The same of what is dashed, dropped, splashed or pinched (*common practice*)."""
TOP_UP_SIGMA_ML = 30.0
"""The same of a line that only says to top with it (*common practice*)."""
RINSE_KEPT = 0.2
"""Of a rinse so much stays in the glass; the rest is tipped out (*common practice*)."""
LOOSE_UNITS = ("dash", "drop", "splash", "float", "rinse", "pinch")
WITHOUT_WEIGHT = (
    *("herb", "spice", "seasoning", "ice", "mint-leaf"),
    *("lemon-peel", "lime-peel", "orange-peel", "grapefruit-peel"),
)
"""Kinds that bring nothing worth counting, whole or by the pinch."""


@dataclass(frozen=True, slots=True)
class Pour:
    """What is poured for a line: the ingredient, its bottle, how much for one of the line's.

    `draws` maps each key taken to how much of it one unit of the line takes.
    """

    ingredient: str
    bottle: Bottle | None = None
    ratio: float = 1.0
    draws: Mapping[str, float] = field(default_factory=dict)


NOTHING_IN_IT = Liquid(NOTHING, NOTHING, NOTHING)


@dataclass(frozen=True, slots=True)
class Content:
    """One line in the glass. `quantity` is in the poured ingredient's own unit.

    `counted` is False where it holds something but how much is not known.
    """

    line: Line
    pour: Pour
    quantity: float
    volume_ml: float = 0.0
    sigma_ml: float = 0.0
    liquid: Liquid = NOTHING_IN_IT
    protein_g: float = 0.0
    fat_g: float = 0.0
    counted: bool = True

    @property
    def ethanol_ml(self) -> float:
        """Pure ethanol, as volumes are stated at 20 °C."""
        return self.volume_ml * self.liquid.abv.value / 100.0

    @property
    def sugar_g(self) -> float:
        """Grams of sugar."""
        return self.volume_ml * self.liquid.sugar.value / 1000.0

    @property
    def acid_g(self) -> float:
        """Grams of acid, as citric acid."""
        return self.volume_ml * self.liquid.acid.value / 1000.0


def pours_for(spec: Spec, snapshot: Snapshot) -> tuple[Pour, ...]:
    """For each line what is poured of just what it asks for: from the shelf where it is there.

    Stand-ins are not looked at; a line that nothing meets pours what it names.
    """
    usual, supply = usual_pours(snapshot), supply_of(snapshot)
    return tuple(_pour_for(line, spec, usual, supply) for line in spec.lines)


def pours_of(drink: Drink) -> tuple[Pour, ...]:
    """For each line of a drink what is poured tonight, stand-ins with their ratio."""
    return tuple(
        Pour(answer.line.ingredient)
        if answer.derivation is None
        else Pour(
            answer.derivation.offered, answer.bottle, answer.ratio, dict(answer.derivation.draws)
        )
        for answer in drink.lines
    )


def content_of(line: Line, pour: Pour, spec: Spec, knowledge: Knowledge) -> Content:
    """What a line of a spec brings when it is met by this pour."""
    tree = knowledge.tree
    quantity = amount_poured(line, tree) * pour.ratio
    if tree[pour.ingredient].unit == "ml":
        return _liquid_content(line, pour, quantity, tree)
    return _solid_content(line, pour=pour, quantity=quantity, spec=spec, knowledge=knowledge)


def amount_poured(line: Line, tree: FamilyTree) -> float:
    """How much goes in: the middle of a range; a top-up where it only tops; nothing unsaid."""
    if line.quantity is None:
        return TOP_UP_ML if tops_up(line, tree) else 0.0
    amount = line.quantity
    if line.amount and line.amount_high:
        amount *= (1.0 + line.amount_high / line.amount) / 2.0
    return amount * RINSE_KEPT if line.unit == "rinse" else amount


def tops_up(line: Line, tree: FamilyTree) -> bool:
    """Whether a line without an amount fills the glass up."""
    says_so = "to top" in line.note or "to fill" in line.note
    long_kind = any(tree.is_a(line.ingredient, kind) for kind in ("mixer", "sparkling-wine"))
    return line.amount is None and tree[line.ingredient].unit == "ml" and (says_so or long_kind)


def _liquid_content(line: Line, pour: Pour, quantity: float, tree: FamilyTree) -> Content:
    product = None if pour.bottle is None else pour.bottle.product
    liquid = liquid_of(pour.ingredient, tree, product)
    made_of = composition_of(pour.ingredient, tree) or PLAIN
    litres = quantity / 1000.0
    return Content(
        line=line,
        pour=pour,
        quantity=quantity,
        volume_ml=quantity,
        sigma_ml=_sigma_ml(line, quantity),
        liquid=liquid,
        protein_g=made_of.protein_g * litres,
        fat_g=made_of.fat_g * litres,
        counted=quantity > 0.0,
    )


def _solid_content(
    line: Line, *, pour: Pour, quantity: float, spec: Spec, knowledge: Knowledge
) -> Content:
    tree = knowledge.tree
    made_of = composition_of(pour.ingredient, tree)
    if made_of is None or (made_of.blended and spec.technique != "blended"):
        if is_pressed(line, spec, knowledge):
            return _pressed(line, pour, quantity, knowledge)
        return _uncounted(line, pour, quantity, tree)
    volume = made_of.volume_ml * quantity
    liquid = Liquid(
        NOTHING,
        _per_l(made_of.sugar_g, made_of.volume_ml),
        _per_l(made_of.acid_g, made_of.volume_ml),
    )
    return Content(
        line=line,
        pour=pour,
        quantity=quantity,
        volume_ml=volume,
        sigma_ml=_sigma_ml(line, volume),
        liquid=liquid,
        protein_g=made_of.protein_g * quantity,
        fat_g=made_of.fat_g * quantity,
        counted=quantity > 0.0,
    )


def _pressed(line: Line, pour: Pour, quantity: float, knowledge: Knowledge) -> Content:
    """Fruit that is pressed gives its juice."""
    found = pressed_from(pour.ingredient, knowledge)
    if found is None:
        return _uncounted(line, pour, quantity, knowledge.tree)
    volume = quantity * found.ml
    sigma, juice = DASHED_SHARE / 2.0 * volume, liquid_of(found.juice, knowledge.tree)
    whole = Content(line, pour, quantity)
    return replace(whole, volume_ml=volume, sigma_ml=sigma, liquid=juice)


def _uncounted(line: Line, pour: Pour, quantity: float, tree: FamilyTree) -> Content:
    """Of what is neither pressed nor liquid nothing is counted."""
    weightless = any(tree.is_a(pour.ingredient, kind) for kind in WITHOUT_WEIGHT)
    return Content(line, pour, quantity, counted=weightless)


def _per_l(grams: float, volume_ml: float) -> Figure:
    value = 1000.0 * grams / volume_ml if volume_ml else 0.0
    return Figure(value, 0.0, "usual")


def _sigma_ml(line: Line, quantity: float) -> float:
    """How far the poured volume may be off, one sigma; of a range its own width counts too."""
    if line.quantity is None:
        return TOP_UP_SIGMA_ML if quantity else 0.0
    share = DASHED_SHARE if line.unit in LOOSE_UNITS else POURED_SHARE
    sigma = share * quantity
    if line.amount and line.amount_high:
        half = (line.amount_high - line.amount) / (line.amount_high + line.amount) * quantity
        sigma = (sigma**2 + half**2 / 3.0) ** 0.5  # anywhere within it is as likely
    return sigma


def _pour_for(line: Line, spec: Spec, usual: UsualPours, supply: Supply) -> Pour:
    """What of just what the line asks for is poured first, from the shelf where it is there."""
    for key in usual.kinds_in_order(line, spec):
        bottle = supply.bottle(key, line.min_abv_percent)
        if bottle is not None:
            return Pour(key, bottle)
    return Pour(line.ingredient)
