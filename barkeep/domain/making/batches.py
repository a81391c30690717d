"""A single serve made many: scaled to serves, a volume, a vessel or one ingredient.

Everything is scaled alike, so strength, sugar, acid and ratios stay what they
are. The water that the ice would have given goes in by the jug, as
`barkeep.domain.drink.mixture` expects it; what has bubbles is kept for the
end. What is *common practice* says so.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from typing import Literal, TypeAlias

from barkeep.domain.amounts.units import Unit
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.cautions.cautions import Caution
from barkeep.domain.drink.analysis import Analysis, analyse
from barkeep.domain.drink.contents import Content
from barkeep.domain.drink.ice import is_carbonated
from barkeep.domain.drink.mixture import expected_dilution
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.liquids.freezing import (
    FREEZER_C,
    freezing_point_c,
    in_freezer,
    where_ice_begins,
)
from barkeep.domain.pouring.supply import supply_of
from barkeep.domain.pouring.words import no_amount
from barkeep.domain.specs.spec import Spec
from barkeep.errors import CannotBatch

Served = Literal["cold", "over_ice", "hot", "frozen"]


MOST_SERVES = 2000.0

STRONG_FLAVOURS = ("bitters", "absinthe", "spice", "saline-solution")
"""Kinds that are started low in a large batch and brought up by taste (*common practice*)."""

START_STRONG_AT = 0.5
"""The share of a scaled strong flavour to begin with (*common practice*)."""

FRAGILE = ("egg-white", "egg", "cream", "mint", "basil", "mint-leaf", "herb")
"""Kinds that do not keep once mixed: in the last hour, or by the glass (*common practice*)."""


@dataclass(frozen=True, slots=True)
class ForServes:
    """So many serves."""

    serves: float


@dataclass(frozen=True, slots=True)
class ForVolume:
    """So much in all, in ml, water added."""

    volume_ml: float


@dataclass(frozen=True, slots=True)
class ForVessel:
    """As much as a vessel takes, in ml to the brim, with a share left for ice or foam."""

    capacity_ml: float
    room: float = 0.1


@dataclass(frozen=True, slots=True)
class FromIngredient:
    """All there is of one ingredient, by key, in its own unit; the rest follows."""

    ingredient: str
    amount: float


Target: TypeAlias = ForServes | ForVolume | ForVessel | FromIngredient


@dataclass(frozen=True, slots=True)
class BatchLine:
    """One ingredient of the batch. `exact` is the scaled amount, `amount` what to measure.

    Both in `unit`; `held` says why it waits until the end, empty where it does not.
    """

    ingredient: str
    unit: Unit
    exact: float
    amount: float
    held: str = ""
    start_with: float | None = None

    @property
    def error(self) -> float:
        """By how much the rounded amount is off, a share of the exact one."""
        return (self.amount - self.exact) / self.exact if self.exact else 0.0

    @property
    def remark(self) -> str:
        """Why it waits, and by how much rounding is off where that is a hundredth or more."""
        off = f"{100.0 * self.error:+.0f} % rounded" if abs(self.error) >= 0.01 else ""
        return "; ".join(each for each in (self.held, off) if each)


@dataclass(frozen=True, slots=True)
class Shortage:
    """What the bar has too little of, in the ingredient's unit."""

    ingredient: str
    unit: Unit
    need: float
    have: float


@dataclass(frozen=True, slots=True)
class Batch:
    """A batch, its water, and what it comes to before any ice in the glass.

    `worked_ml` is what would be shaken or stirred: all but the water and what has bubbles.
    Strength, ethanol and standard drinks are None where something alcoholic has no amount.
    """

    spec: Spec
    served: Served
    serves: float
    lines: tuple[BatchLine, ...]
    water_ml: float
    worked_ml: float
    total_ml: float
    abv_percent: float | None
    sugar_g_per_l: float
    acid_g_per_l: float
    ethanol_ml: float | None
    standard_drinks_per_serve: float | None
    short: tuple[Shortage, ...]
    cautions: tuple[Caution, ...]
    notes: tuple[str, ...]

    @property
    def serve_ml(self) -> float:
        """What one serve pours."""
        return self.total_ml / self.serves


def batch(spec: Spec, snapshot: Snapshot, target: Target, served: Served = "cold") -> Batch:
    """Scale a spec. Raises `CannotBatch` where that makes no sense.

    >>> ForServes(10.0)
    ForServes(serves=10.0)
    """
    one = analyse(spec, snapshot)
    if one.start_volume_ml <= 0.0:
        raise CannotBatch(spec.name, "none of its lines has a volume")
    water_ml = _water_ml(one, served)
    serve_ml = one.start_volume_ml + water_ml
    serves = _serves(spec, one=one, target=target, serve_ml=serve_ml, tree=snapshot.knowledge.tree)
    if not (math.isfinite(serves) and 0.0 < serves <= MOST_SERVES):
        raise CannotBatch(
            spec.name, f"that would be {serves:.3g} serves; {MOST_SERVES:g} is the most"
        )
    tree = snapshot.knowledge.tree
    lines = tuple(_line(content, serves, tree) for content in _merged(one.contents))
    held_out = one.served_volume_ml / serve_ml  # figures of the served drink, thinned otherwise
    whole = Batch(
        spec=spec,
        served=served,
        serves=serves,
        lines=lines,
        water_ml=measured(water_ml * serves, "ml"),
        worked_ml=_worked_ml(one, tree) * serves,
        total_ml=serve_ml * serves,
        abv_percent=None if one.abv_percent is None else one.abv_percent * held_out,
        sugar_g_per_l=one.sugar_g_per_l * held_out,
        acid_g_per_l=one.acid_g_per_l * held_out,
        ethanol_ml=None if one.unknown_alcohol else _ethanol_ml(one) * serves,
        standard_drinks_per_serve=one.standard_drinks,
        short=tuple(_shortages(lines, snapshot)),
        cautions=(*one.cautions, *one.general_cautions),
        notes=(),
    )
    return replace(whole, notes=tuple(_notes(whole, one, tree)))


def _worked_ml(one: Analysis, tree: FamilyTree) -> float:
    """What one serve puts on the ice: bubbles are never shaken."""
    return sum(
        each.volume_ml for each in one.contents if not is_carbonated(each.pour.ingredient, tree)
    )


def _ethanol_ml(one: Analysis) -> float:
    return sum(content.ethanol_ml for content in one.contents)


def measured(amount: float, unit: Unit) -> float:
    """An amount rounded to what can be measured out for a batch (steps are *common practice*)."""
    if unit == "each":
        return float(max(1, round(amount))) if amount > 0.0 else 0.0
    steps = ((10.0, 0.5), (60.0, 2.5), (250.0, 5.0), (1000.0, 10.0), (5000.0, 25.0))
    step = next((each for below, each in steps if amount < below), 50.0)
    return max(step, round(amount / step) * step) if amount > 0.0 else 0.0


def rounds_of(volume_ml: float, tin_ml: float) -> tuple[float, ...]:
    """How a large volume goes through a small tin: as few rounds as can be, all alike.

    Raises `CannotBatch` for a tin that holds nothing.
    """
    if not tin_ml > 0.0:
        raise CannotBatch("the tin", "it holds nothing")
    count = max(1, math.ceil(volume_ml / tin_ml - 1e-9))
    return (volume_ml / count,) * count


def _water_ml(one: Analysis, served: Served) -> float:
    """The water one serve needs in place of the ice it is not mixed on."""
    melted = one.served_volume_ml - one.start_volume_ml
    if served == "hot":
        return 0.0
    if served == "over_ice" and one.iced_ml:
        # The ice in the glass gives what it gives a built drink; the rest is added.
        in_glass = expected_dilution("built", _counted_abv(one)).share * one.iced_ml
        return max(0.0, melted - in_glass)
    return melted


def _counted_abv(one: Analysis) -> float:
    """The strength as served of all whose amount is known."""
    return 100.0 * _ethanol_ml(one) / one.served_volume_ml


def _serves(spec: Spec, one: Analysis, target: Target, serve_ml: float, tree: FamilyTree) -> float:
    match target:
        case ForServes(serves):
            return _positive(spec, "number of serves", serves)
        case ForVolume(volume_ml):
            return _positive(spec, "volume", volume_ml) / serve_ml
        case ForVessel(capacity_ml, room):
            if not 0.0 <= room < 1.0:
                raise CannotBatch(spec.name, "the room left in the vessel is a share below 1")
            return _in_vessel(spec, _positive(spec, "vessel", capacity_ml) * (1.0 - room), serve_ml)
        case FromIngredient(ingredient, amount):
            return _from(
                spec,
                one=one,
                ingredient=ingredient,
                amount=_positive(spec, "amount", amount),
                tree=tree,
            )


def _in_vessel(spec: Spec, usable_ml: float, serve_ml: float) -> float:
    if usable_ml < serve_ml:
        reason = f"the vessel takes {usable_ml:.0f} ml and one serve is {serve_ml:.0f} ml"
        raise CannotBatch(spec.name, reason)
    return usable_ml / serve_ml


def _from(spec: Spec, one: Analysis, ingredient: str, amount: float, tree: FamilyTree) -> float:
    per_serve = sum(
        content.quantity
        for content in one.contents
        if tree.is_a(content.pour.ingredient, ingredient)
        or any(tree.is_a(ingredient, wanted) for wanted in content.line.wanted)
    )
    if per_serve <= 0.0:
        raise CannotBatch(spec.name, f"there is no {tree.in_sentence(ingredient)} in it")
    return amount / per_serve


def _positive(spec: Spec, what: str, value: float) -> float:
    if not (math.isfinite(value) and value > 0.0):
        raise CannotBatch(spec.name, f"a {what} is more than nothing")
    return value


def _merged(contents: Sequence[Content]) -> tuple[Content, ...]:
    """One content for each ingredient: two lines of one thing are measured out once."""
    merged: dict[str, Content] = {}
    for content in contents:
        if not content.quantity:
            continue
        key = content.pour.ingredient
        known = merged.get(key)
        total = content.quantity + (known.quantity if known else 0.0)
        merged[key] = replace(known or content, quantity=total)
    return tuple(merged.values())


def _line(content: Content, serves: float, tree: FamilyTree) -> BatchLine:
    key = content.pour.ingredient
    unit, exact = tree[key].unit, content.quantity * serves
    strong = serves >= 4.0 and any(tree.is_a(key, kind) for kind in STRONG_FLAVOURS)
    start = measured(exact * START_STRONG_AT, unit) if strong else None
    return BatchLine(
        ingredient=key,
        unit=unit,
        exact=exact,
        amount=measured(exact, unit),
        held=_held(key, tree),
        start_with=start,
    )


def _held(key: str, tree: FamilyTree) -> str:
    if is_carbonated(key, tree):
        return "it has bubbles: add it as it is served"
    if any(tree.is_a(key, kind) for kind in FRAGILE if kind in tree):
        return "it does not keep once mixed: add it in the last hour or by the glass"
    return ""


def _shortages(lines: Sequence[BatchLine], snapshot: Snapshot) -> Iterator[Shortage]:
    supply, tree = supply_of(snapshot), snapshot.knowledge.tree
    for line in lines:
        if line.ingredient in supply.always:
            continue
        have = supply.total_of_kind(line.ingredient, tree)
        if have < line.exact * (1.0 - 1e-9):
            yield Shortage(line.ingredient, line.unit, line.exact, have)


def _notes(whole: Batch, one: Analysis, tree: FamilyTree) -> Iterator[str]:
    for line in whole.lines:
        if line.start_with is not None:
            name = tree.in_sentence(line.ingredient)
            yield (
                f"Begin with {line.start_with:g} {line.unit} of {name} and bring it up by taste: "
                "strong flavours do not always scale (common practice)."
            )
    if whole.abv_percent is None:
        yield f"Strength not known: {no_amount(one.unknown_alcohol, tree)}."
    elif whole.served == "frozen":
        yield _freezer_note(whole.abv_percent, whole.sugar_g_per_l)
    if whole.served == "over_ice":
        yield "The ice in the glass is counted on for part of the water: serve it on fresh ice."
    if whole.served == "hot":
        yield "Warm it gently and never boil it: alcohol burns, and its vapour catches fire."
    if one.dilution.share:
        share = 100.0 * one.dilution.sigma
        yield (
            f"The water is what the ice would give, give or take {share:.0f} % of what is poured: "
            "taste before all of it is in."
        )


def _freezer_note(abv_percent: float, sugar_g_per_l: float) -> str:
    sugar = min(sugar_g_per_l, 600.0)
    point = freezing_point_c(abv_percent, sugar)
    begins = where_ice_begins(point, abv_percent).replace("at ", "near ").replace("−", "-")
    words = {
        "liquid": "stays liquid",
        "borderline": "may hold some ice",
        "slush": "turns to slush",
        "frozen": "freezes",
    }[in_freezer(abv_percent, sugar)]
    return (
        f"At {abv_percent:.0f} % vol ice begins {begins}, "
        f"so in a freezer at {FREEZER_C:.0f} °C it {words}."
    )
