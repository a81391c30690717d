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
from typing import Literal

from barkeep.domain.amounts.measures import show_quantity
from barkeep.domain.amounts.rounding import down_in_digits, down_to
from barkeep.domain.amounts.units import Unit
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.cautions.cautions import Caution
from barkeep.domain.drink.analysis import Analysis, analyse
from barkeep.domain.drink.contents import amount_poured
from barkeep.domain.drink.ice import is_carbonated, is_poured_hot
from barkeep.domain.drink.mixture import expected_dilution
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.liquids.freezing import (
    FREEZER_C,
    freezing_point_c,
    in_freezer,
    where_ice_begins,
)
from barkeep.domain.making.batch_measures import (
    BatchLine,
    ForServes,
    ForVessel,
    ForVolume,
    FromIngredient,
    MeasuredOut,
    Target,
    called_with_kind,
    is_from,
    measured_out,
    most_ml,
)
from barkeep.domain.making.house_made import freely_there
from barkeep.domain.pouring.assumed import Assumed, assumed_in
from barkeep.domain.pouring.supply import supply_of
from barkeep.domain.pouring.words import asks_in_words, no_amount
from barkeep.domain.specs.called import kinds_named_by
from barkeep.domain.specs.left_out import LeftOut, left_out_of
from barkeep.domain.specs.spec import Spec
from barkeep.errors import CannotBatch

Served = Literal["cold", "over_ice", "hot", "frozen"]


MOST_BATCH_SERVES = 2000.0
"""Of one batch; more is a misprint."""


@dataclass(frozen=True, slots=True)
class Shortage:
    """What the bar has too little of for a line of a batch, in the ingredient's unit."""

    line: BatchLine
    need: float
    have: float

    @property
    def ingredient(self) -> str:
        """The key of what is poured."""
        return self.line.ingredient

    @property
    def unit(self) -> Unit:
        """What it is measured in."""
        return self.line.unit


@dataclass(frozen=True, slots=True)
class Batch:
    """A batch, its water, and what it comes to before any ice in the glass.

    `worked_ml` is what would be shaken or stirred: all but the water and what has bubbles.
    Strength, ethanol and standard drinks are None where something alcoholic has no amount.
    `assumed` is what its lines left open; it is among the `notes` too, in sentences.
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
    left_out: tuple[LeftOut, ...]
    assumed: tuple[Assumed, ...]
    notes: tuple[str, ...]

    @property
    def serve_ml(self) -> float:
        """What one serve pours."""
        return self.total_ml / self.serves

    @property
    def serves_in_words(self) -> str:
        """*11.83 serves*, never more than there are."""
        return f"{down_in_digits(self.serves, 4):g} serves"

    @property
    def total_in_words(self) -> str:
        """*1918 ml in all*, never more than there is."""
        return f"{down_to(self.total_ml, 0):.0f} ml in all"


def usually_served(spec: Spec, tree: FamilyTree) -> Served:
    """How a batch of it is served where nobody says: hot what is a hot drink, else cold."""
    return "hot" if spec.technique == "hot" or is_poured_hot(spec, tree) else "cold"


def batch(spec: Spec, snapshot: Snapshot, target: Target, served: Served | None = None) -> Batch:
    """Scale a spec, served as is usual where nobody says. Raises `CannotBatch` for nonsense.

    >>> ForServes(10.0)
    ForServes(serves=10.0)
    """
    served = served or usually_served(spec, snapshot.knowledge.tree)
    # What is served hot meets no ice, however a single one is made.
    one = analyse(spec, snapshot, "hot" if served == "hot" else None)
    if one.start_volume_ml <= 0.0:
        raise CannotBatch(spec.name, "none of its lines has a volume")
    water_ml = _water_ml(one, served)
    serve_ml = one.start_volume_ml + water_ml
    serves = _serves(spec, one=one, target=target, serve_ml=serve_ml, tree=snapshot.knowledge.tree)
    if not (math.isfinite(serves) and 0.0 < serves <= MOST_BATCH_SERVES):
        raise CannotBatch(
            spec.name, f"that would be {serves:.3g} serves; {MOST_BATCH_SERVES:g} is the most"
        )
    tree = snapshot.knowledge.tree
    out = measured_out(
        one.contents, target=target, serves=serves, water_ml=water_ml * serves, snapshot=snapshot
    )
    held_out = one.served_volume_ml / serve_ml  # figures of the served drink, thinned otherwise
    whole = Batch(
        spec=spec,
        served=served,
        serves=serves,
        lines=out.lines,
        water_ml=out.water_ml,
        worked_ml=_worked_ml(one, tree) * serves,
        total_ml=serve_ml * serves,
        abv_percent=None if one.abv_percent is None else one.abv_percent * held_out,
        sugar_g_per_l=one.sugar_g_per_l * held_out,
        acid_g_per_l=one.acid_g_per_l * held_out,
        ethanol_ml=None if one.unknown_alcohol else _ethanol_ml(one) * serves,
        standard_drinks_per_serve=one.standard_drinks,
        short=tuple(_shortages(out.lines, snapshot)),
        cautions=(*one.minded.all_cautions, *one.general_cautions),
        left_out=tuple(_left_out(spec, one)),
        assumed=tuple(_assumed(spec, one, snapshot)),
        notes=(),
    )
    return replace(whole, notes=(*_rounded_down(out, target, tree), *_notes(whole, one, tree)))


def _left_out(spec: Spec, one: Analysis) -> Iterator[LeftOut]:
    """Every line that puts nothing into the batch; what tops up is poured though it is unsaid."""
    poured = [each.line for each in one.contents if each.quantity]
    for each in left_out_of(spec):
        if not any(each.line is line for line in poured):
            yield each


def _assumed(spec: Spec, one: Analysis, snapshot: Snapshot) -> Iterator[Assumed]:
    """What is taken for what the lines that go into it leave open."""
    tree, units = snapshot.knowledge.tree, snapshot.settings.units
    for each in one.contents:
        if each.quantity:
            yield from assumed_in(
                spec.name,
                each.line,
                tree,
                units,
                amount=lambda line: amount_poured(line, tree),
                poured=each.pour.ingredient,
            )


def _worked_ml(one: Analysis, tree: FamilyTree) -> float:
    """What one serve puts on the ice: bubbles are never shaken."""
    return sum(
        each.volume_ml for each in one.contents if not is_carbonated(each.pour.ingredient, tree)
    )


def _ethanol_ml(one: Analysis) -> float:
    return sum(content.ethanol_ml for content in one.contents)


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
    per_serve = sum(each.quantity for each in one.contents if is_from(each, ingredient, tree))
    if per_serve <= 0.0:
        raise CannotBatch(spec.name, f"there is no {tree.in_sentence(ingredient)} in it")
    return amount / per_serve


def _positive(spec: Spec, what: str, value: float) -> float:
    if not (math.isfinite(value) and value > 0.0):
        article = "an" if what[0] in "aeiou" else "a"
        raise CannotBatch(spec.name, f"{article} {what} is more than nothing")
    return value


def _shortages(lines: Sequence[BatchLine], snapshot: Snapshot) -> Iterator[Shortage]:
    supply, tree = supply_of(snapshot), snapshot.knowledge.tree
    for line in lines:
        if freely_there(line.ingredient, snapshot):
            continue
        have = supply.total_of_kind(line.ingredient, tree)
        if have < line.exact * (1.0 - 1e-9):
            yield Shortage(line, line.exact, have)


def _notes(whole: Batch, one: Analysis, tree: FamilyTree) -> Iterator[str]:
    for each in whole.left_out:
        without = "; volume and strength are without it" * (each.why == "not_understood")
        yield f"Not in the batch: {each.because(tree)}{without}."
    for assumed in whole.assumed:
        yield assumed.sentence
    asked = (asks_in_words(each.line, each.pour.bottle, tree) for each in one.contents)
    yield from filter(None, asked)
    for line in whole.lines:
        if line.start_with is not None:
            name = called_with_kind(line, tree)
            yield (
                f"Begin with {line.start_with:g} {line.unit} of {name} and bring it up by taste: "
                "strong flavours do not always scale (common practice)."
            )
    if whole.abv_percent is None:
        named = kinds_named_by(one.spec.lines, tree)
        yield f"Strength not known: {no_amount(one.unknown_alcohol, named)}."
    elif whole.served == "frozen":
        yield _freezer_note(whole.abv_percent, whole.sugar_g_per_l)
    if whole.served == "over_ice" and one.iced_ml and one.dilution.share:
        yield "The ice in the glass is counted on for part of the water: serve it on fresh ice."
    if whole.served == "hot":
        yield "Warm it gently and never boil it: alcohol burns, and its vapour catches fire."
    if one.dilution.share:
        share = 100.0 * one.dilution.sigma
        yield (
            f"The water is what the ice would give, give or take {share:.0f} % of what is poured: "
            "taste before all of it is in."
        )


def _rounded_down(out: MeasuredOut, target: Target, tree: FamilyTree) -> Iterator[str]:
    for line in out.lines:
        if line.is_limited:
            name = called_with_kind(line, tree)
            yield f"Rounded down, so that no more {name} is measured than there is."
    if out.lowered:
        most = show_quantity(down_to(most_ml(target), 0), "ml")
        yield f"All is rounded down, so that it comes to no more than {most}."


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
