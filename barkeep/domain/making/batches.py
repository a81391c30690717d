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
from itertools import islice
from typing import Literal

from barkeep.domain.amounts.measures import show_quantity
from barkeep.domain.amounts.rounding import down_in_digits, down_to, whole_up
from barkeep.domain.amounts.units import Unit
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.cautions.cautions import Caution
from barkeep.domain.drink.analysis import Analysis, analyse
from barkeep.domain.drink.contents import Pour, amount_poured, pours_for
from barkeep.domain.drink.ice import is_carbonated, is_poured_hot, meets_ice
from barkeep.domain.drink.mixture import expected_dilution
from barkeep.domain.ingredients.derivations import Derivation
from barkeep.domain.ingredients.relations import Technique
from barkeep.domain.ingredients.tasks import TASK_WORDS, task_of
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.liquids.freezing import (
    FREEZER_C,
    freezing_point_c,
    in_freezer,
    where_ice_begins,
)
from barkeep.domain.making.available import LEAST, Taken
from barkeep.domain.making.batch_measures import (
    BOILING,
    BatchLine,
    BatchWater,
    ForServes,
    ForVessel,
    ForVolume,
    FromIngredient,
    MeasuredOut,
    Target,
    Waits,
    called_with_kind,
    held_cold,
    held_hot,
    held_in_rounds,
    is_from,
    measured_out,
    most_ml,
)
from barkeep.domain.making.by_rounds import (
    Rounds,
    Worked,
    is_shaken_in,
    rounds_for,
    worked_by_rounds,
)
from barkeep.domain.pouring.assumed import Assumed, assumed_in
from barkeep.domain.pouring.made_first import hours_in_words
from barkeep.domain.pouring.sourcing import sourcing_for
from barkeep.domain.pouring.supply import supply_of
from barkeep.domain.pouring.words import amount_of, asks_in_words, no_amount
from barkeep.domain.specs.called import kinds_named_by
from barkeep.domain.specs.glasses import Glass
from barkeep.domain.specs.left_out import LeftOut, left_out_of
from barkeep.domain.specs.spec import Spec
from barkeep.errors import CannotBatch, spoken_list
from barkeep.translation import tr, tr_about

Served = Literal["cold", "over_ice", "hot", "frozen"]


MOST_BATCH_SERVES = 2000.0
"""Of one batch; more is a misprint."""
LEAST_WATER_ML = 1.0
"""Less than this of water a serve is not worth measuring (a choice)."""
MOST_SUGAR = 600.0
"""What is known of freezing ends here, g/l."""


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

    @property
    def counts_made(self) -> bool:
        """Whether what there is counts what has to be made first."""
        return self.line.taken is not None and self.line.taken.made > 0.0


@dataclass(frozen=True, slots=True)
class Batch:
    """A batch, its water, and what it comes to before any ice in the glass.

    `worked_ml` is what would be shaken or stirred: all but the water and what has bubbles.
    Strength, ethanol and standard drinks are None where something alcoholic has no amount.
    `assumed` is what its lines left open; it is among the `notes` too, in sentences.
    `rounds` is how it is worked on ice as it is served, None where it stands mixed; no water
    is in it then.
    """

    spec: Spec
    served: Served
    target: Target
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
    rounds: Rounds | None = None

    @property
    def serve_ml(self) -> float:
        """What one serve pours."""
        return self.total_ml / self.serves

    @property
    def serves_in_words(self) -> str:
        """*12 serves* as asked for; else *about 11 serves*, never more than there are."""
        return serves_said(self.serves, self.target)

    @property
    def made_first(self) -> tuple[Taken, ...]:
        """What of its lines is squeezed, separated or made before it is mixed."""
        found = (each.taken for each in self.lines)
        return tuple(each for each in found if each is not None and each.recipe is not None)

    @property
    def total_in_words(self) -> str:
        """*1918 ml in all*, never more than there is."""
        return tr("{total_ml:.0f} ml in all", total_ml=down_to(self.total_ml, 0))


NEARLY = 0.9
"""From this share on a serve is as good as there; *nearly* still says that it is not."""


def serves_said(serves: float, target: Target) -> str:
    """How many serves, as a person says it: *about 5 serves* where they come out of a volume.

    >>> [serves_said(each, ForVolume(1000.0)) for each in (8.876, 8.95, 9.0, 1.2, 0.7)]
    ['about 8 serves', 'nearly 9 serves', '9 serves', 'about 1 serve', 'about 0.7 serves']
    """
    whole = down_to(serves, 0)
    if isinstance(target, ForServes) or whole == float(f"{serves:.9g}"):
        number = down_in_digits(serves, 4)
        if number == 1.0:
            return tr("{serves:g} serve", serves=number)
        return tr("{serves:g} serves", serves=number)
    if serves < 1.0:
        return tr("about {serves:g} serves", serves=down_in_digits(serves, 1))
    if serves - whole >= NEARLY:
        return tr("nearly {serves:g} serves", serves=whole + 1.0)
    if whole == 1.0:
        return tr("about {serves:g} serve", serves=whole)
    return tr("about {serves:g} serves", serves=whole)


def usually_served(spec: Spec, tree: FamilyTree) -> Served:
    """How a batch of it is served where nobody says.

    Hot what is a hot drink, over ice what is built on it, else cold.
    """
    if spec.technique == "hot" or is_poured_hot(spec, tree):
        return "hot"
    return "over_ice" if spec.technique == "built" and meets_ice(spec, "built") else "cold"


def batch(
    spec: Spec,
    snapshot: Snapshot,
    target: Target,
    served: Served | None = None,
    *,
    tin: Glass | None = None,
) -> Batch:
    """Scale a spec, served as is usual where nobody says. Raises `CannotBatch` for nonsense.

    `tin` is what its rounds are shaken in, where it has to be shaken in rounds.

    >>> ForServes(10.0)
    ForServes(serves=10.0)
    """
    tree = snapshot.knowledge.tree
    served = served or usually_served(spec, tree)
    # What is served hot meets no ice, however a single one is made.
    made: Technique | None = "hot" if served == "hot" else None
    one = analyse(spec, snapshot, made)
    if one.start_volume_ml <= 0.0:
        raise CannotBatch(spec.name, tr("none of its lines has a volume"))
    worked = None if served == "hot" else worked_by_rounds(one.technique, one.contents, tree)
    water_ml = 0.0 if worked else _water_ml(one, served, tree)
    water_ml = water_ml if water_ml >= LEAST_WATER_ML else 0.0
    serve_ml = one.start_volume_ml + water_ml
    asked = _in_the_drink(target, one, snapshot)
    serves = _serves(spec, one=one, target=asked, serve_ml=serve_ml, tree=tree)
    if not (math.isfinite(serves) and 0.0 < serves <= MOST_BATCH_SERVES):
        raise CannotBatch(
            spec.name,
            tr(
                "that would be {serves:.3g} serves; {most:g} is the most",
                serves=serves,
                most=MOST_BATCH_SERVES,
            ),
        )
    pours = _pours_for_all(one, spec, serves, snapshot)
    if pours is not None:
        one = analyse(spec, snapshot, made, pours)
        worked = worked_by_rounds(one.technique, one.contents, tree) if worked else None
    out = measured_out(
        one.contents,
        target=asked,
        serves=serves,
        water=BatchWater(water_ml * serves, at_most=served == "frozen"),
        snapshot=snapshot,
        waits=_waits(served, worked),
    )
    held_out = one.served_volume_ml / serve_ml  # figures of the served drink, thinned otherwise
    whole = Batch(
        spec=spec,
        served=served,
        target=target,
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
        short=tuple(_shortages(out.lines)),
        cautions=(*one.minded.all_cautions, *one.general_cautions),
        left_out=tuple(_left_out(spec, one)),
        assumed=tuple(_assumed(spec, one, snapshot)),
        notes=(),
        rounds=_rounds(worked, one, serves=serves, tin=tin, tree=tree) if worked else None,
    )
    notes = (
        *_given_by(target, asked, tree),
        *_to_go_on_with(whole, snapshot),
        *_made_first(whole, tree),
        *_rounded_down(out, asked, tree),
        *_notes(whole, one, tree),
    )
    return replace(whole, notes=notes)


def _pours_for_all(
    one: Analysis, spec: Spec, serves: float, snapshot: Snapshot
) -> tuple[Pour, ...] | None:
    """The pours of a spec, without what is safer where not all serves get it; else None.

    Some of the eggs are then raw, so that all of it is said as of raw ones.
    """
    tree, supply = snapshot.knowledge.tree, supply_of(snapshot)
    few = {
        each.line
        for each in one.contents
        if not tree.is_a(each.pour.ingredient, each.line.ingredient)
        and supply.total_of_kind(each.pour.ingredient, tree) < each.quantity * serves
        and tree.ordinary.rather.get(each.line.ingredient)
    }
    if not few:
        return None
    pours = pours_for(spec, snapshot)
    return tuple(
        Pour(line.ingredient) if line in few else pour
        for line, pour in zip(spec.lines, pours, strict=True)
    )


def _rounds(
    worked: Worked, one: Analysis, *, serves: float, tin: Glass | None, tree: FamilyTree
) -> Rounds:
    return rounds_for(
        worked,
        one.contents,
        serves=serves,
        ice_ml=one.served_volume_ml - one.start_volume_ml,
        tree=tree,
        tin=tin,
    )


def _waits(served: Served, worked: Worked | None) -> Waits:
    if served == "hot":
        return held_hot
    return held_in_rounds if worked else held_cold


def _in_the_drink(target: Target, one: Analysis, snapshot: Snapshot) -> Target:
    """The target in what the drink pours: so many lemons are so much lemon juice."""
    tree = snapshot.knowledge.tree
    if not isinstance(target, FromIngredient) or any(
        is_from(each, target.ingredient, tree) for each in one.contents
    ):
        return target
    for each in one.contents:
        recipe = snapshot.knowledge.own_way.get(each.pour.ingredient)
        if recipe is None or len(recipe.inputs) != 1 or not each.quantity:
            continue
        (first,) = recipe.inputs
        if tree.is_a(target.ingredient, first.ingredient):
            gives = target.amount / first.amount * recipe.yields
            return FromIngredient(each.pour.ingredient, gives)
    return target


def _given_by(target: Target, asked: Target, tree: FamilyTree) -> Iterator[str]:
    """What the thing asked from gives of what the drink pours, where that is another."""
    if not isinstance(target, FromIngredient) or not isinstance(asked, FromIngredient):
        return
    if target.ingredient != asked.ingredient:
        much = amount_of(target.ingredient, target.amount, tree)
        gives = amount_of(asked.ingredient, down_to(asked.amount, 0), tree)
        if target.amount <= 1.0:
            yield tr("{much} gives about {gives}.", much=much, gives=gives)
        else:
            yield tr("{much} give about {gives}.", much=much, gives=gives)


def _to_go_on_with(whole: Batch, snapshot: Snapshot) -> Iterator[str]:
    """What stands there for the rest of a thing that is short, another kind or a stand-in."""
    tree, sourcing = snapshot.knowledge.tree, sourcing_for(snapshot, "close")
    for short in whole.short:
        for line in short.line.lines[:1]:
            ways = sourcing.ways_to(line, whole.spec)
            others = (each for each in ways if _is_another(each, short.ingredient))
            for way in islice(others, 1):
                have = sourcing.supply.total(way.offered)
                there = amount_of(way.offered, down_to(have, 0), tree)
                ratio = (
                    tr(", {ratio:.2g} times as much", ratio=way.ratio) if way.ratio != 1.0 else ""
                )
                stand_in = "" if way.exact else tr(", as a stand-in")
                yield tr(
                    "To go on with there is {there}{stand_in}{ratio}.",
                    there=there,
                    stand_in=stand_in,
                    ratio=ratio,
                )


def _is_another(way: Derivation, key: str) -> bool:
    """Whether a way pours another bottle than one of this kind."""
    return way.offered != key and way.offered in way.draws


def _made_first(whole: Batch, tree: FamilyTree) -> Iterator[str]:
    """What is squeezed, separated or made before the batch is mixed, and from how much."""
    for taken in whole.made_first:
        if taken.recipe is None:
            continue
        safer = tree.ordinary.rather.get(taken.ingredient)
        if safer and taken.there > LEAST:
            yield tr(
                "First take the {amount} there is.",
                amount=amount_of(safer, down_to(taken.there, 0), tree),
            )
        made = amount_of(taken.ingredient, whole_up(taken.made), tree)
        inputs = [amount_of(key, whole_up(much), tree) for key, much in taken.inputs.items()]
        first = tr(
            "{task} {made} from {inputs} first.",
            task=tr(TASK_WORDS[task_of(taken.recipe, tree)]),
            made=made,
            inputs=spoken_list(inputs, "and"),
        )
        rests = taken.recipe.rest_hours
        rest = tr(" It rests {hours}.", hours=hours_in_words(rests)) if rests else ""
        yield f"{first}{rest}"


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
        raise CannotBatch(tr("the tin"), tr("it holds nothing"))
    count = max(1, math.ceil(volume_ml / tin_ml - 1e-9))
    return (volume_ml / count,) * count


def _water_ml(one: Analysis, served: Served, tree: FamilyTree) -> float:
    """The water one serve needs in place of the ice it is not mixed on."""
    melted = one.served_volume_ml - one.start_volume_ml
    if served == "hot":
        return 0.0
    if served == "over_ice" and one.iced_ml:
        # The ice in the glass gives what it gives a built drink; the rest is added.
        in_glass = expected_dilution("built", _counted_abv(one)).share * one.iced_ml
        return max(0.0, melted - in_glass)
    return min(melted, _pourable_ml(one, tree)) if served == "frozen" else melted


def _pourable_ml(one: Analysis, tree: FamilyTree) -> float:
    """The most water one serve takes and still pours at `FREEZER_C`; bubbles never go in there."""
    if one.unknown_alcohol:
        return 0.0
    still = [each for each in one.contents if not is_carbonated(each.pour.ingredient, tree)]
    bottled_ml = sum(each.volume_ml for each in still)
    ethanol_ml = sum(each.ethanol_ml for each in still)
    sugar_g = sum(each.sugar_g for each in still)

    def is_liquid(water_ml: float) -> bool:
        whole_ml = bottled_ml + water_ml
        sugar = min(MOST_SUGAR, 1000.0 * sugar_g / whole_ml)
        return in_freezer(100.0 * ethanol_ml / whole_ml, sugar) == "liquid"

    if not bottled_ml or not is_liquid(0.0):
        return 0.0
    low, high = 0.0, 10.0 * bottled_ml
    for _step in range(40):  # to a millionth of a millilitre
        middle = (low + high) / 2.0
        low, high = (middle, high) if is_liquid(middle) else (low, middle)
    return low


def _counted_abv(one: Analysis) -> float:
    """The strength as served of all whose amount is known."""
    return 100.0 * _ethanol_ml(one) / one.served_volume_ml


def _serves(spec: Spec, one: Analysis, target: Target, serve_ml: float, tree: FamilyTree) -> float:
    match target:
        case ForServes(serves):
            return _positive(spec, tr("a number of serves is more than nothing"), serves)
        case ForVolume(volume_ml):
            return _positive(spec, tr("a volume is more than nothing"), volume_ml) / serve_ml
        case ForVessel(capacity_ml, room):
            if not 0.0 <= room < 1.0:
                raise CannotBatch(spec.name, tr("the room left in the vessel is a share below 1"))
            least = tr("a vessel is more than nothing")
            return _in_vessel(spec, _positive(spec, least, capacity_ml) * (1.0 - room), serve_ml)
        case FromIngredient(ingredient, amount):
            return _from(
                spec,
                one=one,
                ingredient=ingredient,
                amount=_positive(spec, tr("an amount is more than nothing"), amount),
                tree=tree,
            )


def _in_vessel(spec: Spec, usable_ml: float, serve_ml: float) -> float:
    if usable_ml < serve_ml:
        reason = tr(
            "the vessel takes {usable_ml:.0f} ml and one serve is {serve_ml:.0f} ml",
            usable_ml=usable_ml,
            serve_ml=serve_ml,
        )
        raise CannotBatch(spec.name, reason)
    return usable_ml / serve_ml


def _from(spec: Spec, one: Analysis, ingredient: str, amount: float, tree: FamilyTree) -> float:
    per_serve = sum(each.quantity for each in one.contents if is_from(each, ingredient, tree))
    if per_serve <= 0.0:
        named = tree.in_sentence(ingredient)
        raise CannotBatch(spec.name, tr("there is no {ingredient} in it", ingredient=named))
    return amount / per_serve


def _positive(spec: Spec, expected: str, value: float) -> float:
    if not (math.isfinite(value) and value > 0.0):
        raise CannotBatch(spec.name, expected)
    return value


def _shortages(lines: Sequence[BatchLine]) -> Iterator[Shortage]:
    for line in lines:
        if line.taken is not None and line.taken.amount < line.exact * (1.0 - LEAST):
            yield Shortage(line, line.exact, line.taken.amount)


def _notes(whole: Batch, one: Analysis, tree: FamilyTree) -> Iterator[str]:
    for each in whole.left_out:
        because = each.because(tree)
        if each.why == "not_understood":
            because = tr("{because}; volume and strength are without it", because=because)
        yield tr("Not in the batch: {because}.", because=because)
    for assumed in whole.assumed:
        yield assumed.sentence
    asked = (asks_in_words(each.line, each.pour.bottle, tree) for each in one.contents)
    yield from filter(None, asked)
    for line in whole.lines:
        if line.start_with is not None:
            name = called_with_kind(line, tree)
            yield tr(
                "Begin with {amount:g} {unit} of {name} and bring it up by taste: "
                "strong flavours do not always scale (common practice).",
                amount=line.start_with,
                unit=line.unit,
                name=name,
            )
    if whole.abv_percent is None:
        named = kinds_named_by(one.spec.lines, tree)
        yield tr("Strength not known: {why}.", why=no_amount(one.unknown_alcohol, named))
    elif whole.served == "frozen":
        yield from _freezer_notes(whole, one, tree)
    if whole.rounds is not None:
        yield from _round_notes(whole, whole.rounds, one)
    if whole.served == "over_ice" and one.iced_ml and one.dilution.share and not whole.rounds:
        yield (
            tr("The ice in the glass is counted on for part of the water: serve it on fresh ice.")
            if whole.water_ml
            else tr("The ice in the glass is counted on for the water: serve it on fresh ice.")
        )
    if whole.served == "hot":
        yield (
            tr(
                "Warm it gently and never boil it, or leave it to the boiling water: "
                "alcohol burns, and its vapour catches fire."
            )
            if _is_poured_on(whole, tree)
            else tr("Warm it gently and never boil it: alcohol burns, and its vapour catches fire.")
        )
    if whole.water_ml and one.dilution.share and whole.served != "frozen":
        share = 100.0 * one.dilution.sigma
        yield tr(
            "The water is what the ice would give, give or take {share:.0f} % of what is poured: "
            "taste before all of it is in.",
            share=share,
        )
    if one.spec.method and (whole.served != "hot" or whole.spec.technique == "hot"):
        serves, method = whole.spec.serves, one.spec.method
        if serves == 1.0:
            yield tr("For one serve the spec says: {method}", method=method)
        else:
            yield tr("For {serves:g} serves the spec says: {method}", serves=serves, method=method)


def _is_poured_on(whole: Batch, tree: FamilyTree) -> bool:
    """Whether the heat comes with boiling water, so that nothing is warmed before."""
    return any(tree.is_a(each.ingredient, BOILING) for each in whole.lines)


def _round_notes(whole: Batch, rounds: Rounds, one: Analysis) -> Iterator[str]:
    """How it is worked, and that its figures are before the ice."""
    yield rounds.sentence
    if one.abv_percent is not None and one.dilution.share:
        yield tr(
            "No water goes in ahead: the ice gives it, and brings each serve to about "
            "{served_ml:.0f} ml at {abv_percent:.0f} % vol.",
            served_ml=one.served_volume_ml,
            abv_percent=one.abv_percent,
        )


def _rounded_down(out: MeasuredOut, target: Target, tree: FamilyTree) -> Iterator[str]:
    for line in out.lines:
        if line.is_limited:
            name = called_with_kind(line, tree)
            yield tr("Rounded down, so that no more {name} is measured than there is.", name=name)
    if out.lowered:
        most = show_quantity(down_to(most_ml(target), 0), "ml")
        yield tr("All is rounded down, so that it comes to no more than {most}.", most=most)


def _freezer_notes(whole: Batch, one: Analysis, tree: FamilyTree) -> Iterator[str]:
    """How it comes out of a freezer, and how much less water it therefore takes."""
    still = [each for each in one.contents if not is_carbonated(each.pour.ingredient, tree)]
    if whole.rounds is not None:
        still = [each for each in still if not is_shaken_in(each.pour.ingredient, tree)]
    serves = whole.serves
    bottled_ml = sum(each.volume_ml for each in still) * serves + whole.water_ml
    if not bottled_ml:
        return
    abv_percent = 100.0 * sum(each.ethanol_ml for each in still) * serves / bottled_ml
    sugar = min(MOST_SUGAR, 1000.0 * sum(each.sugar_g for each in still) * serves / bottled_ml)
    yield _freezer_note(abv_percent, sugar)
    melted_ml = (one.served_volume_ml - one.start_volume_ml) * serves
    less_ml = melted_ml - whole.water_ml
    if whole.rounds is not None or round(less_ml) < 1:
        return
    less, each_ml = show_quantity(float(round(less_ml)), "ml"), less_ml / serves
    if in_freezer(abv_percent, sugar) == "liquid":
        yield tr(
            "It takes {less} less than ice would give ({each_ml:.0f} ml a serve), so that it still "
            "pours at {freezer_c:.0f} °C: stir each serve on ice for the rest, or pour it smaller.",
            less=less,
            each_ml=each_ml,
            freezer_c=FREEZER_C,
        )
    else:
        yield tr(
            "It has no water, {less} less than ice would give ({each_ml:.0f} ml a serve), and "
            "would not pour even so: keep it in the fridge instead, as it is served cold.",
            less=less,
            each_ml=each_ml,
        )


def _freezer_note(abv_percent: float, sugar: float) -> str:
    point = freezing_point_c(abv_percent, sugar)
    begins = where_ice_begins(point, abv_percent).replace("at ", "near ").replace("−", "-")
    words = {
        "liquid": tr_about("in a freezer it …", "stays liquid"),
        "borderline": tr_about("in a freezer it …", "may hold some ice"),
        "slush": tr_about("in a freezer it …", "turns to slush"),
        "frozen": tr_about("in a freezer it …", "freezes"),
    }[in_freezer(abv_percent, sugar)]
    return tr(
        "At {abv_percent:.0f} % vol ice begins {begins}, so in a freezer at {freezer_c:.0f} °C it "
        "{freezes}.",
        abv_percent=abv_percent,
        begins=begins,
        freezer_c=FREEZER_C,
        freezes=words,
    )
