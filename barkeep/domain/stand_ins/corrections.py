"""What to pour when something stands in, so that the drink stays what it was.

The amounts of the stand-ins and of the spec's own sweet and sour lines are
worked out anew so that ethanol, sugar, acid and volume stay nearest to the
original (`barkeep.domain.stand_ins.rebalancing`). Spirits, wines and liqueurs of
the spec keep their amounts. A dry spirit that stands in for a dry spirit is
poured by its own ratio, which minds the usual strength, unless the bottle at
hand is of another strength (`OFF_STRENGTH`); a ratio that minds taste rather
than strength stands. How something tastes is not in these figures: the last
word is a sip.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from barkeep.domain.amounts.amount import Amount
from barkeep.domain.amounts.measures import to_quantity
from barkeep.domain.amounts.rounding import Style, rounded, show_as
from barkeep.domain.amounts.units import BarUnits
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.drink.balance import SOUR_G_PER_L
from barkeep.domain.drink.contents import LOOSE_UNITS, Pour, amount_poured, pours_of
from barkeep.domain.ingredients.derivations import Derivation, Replace
from barkeep.domain.ingredients.figures import Liquid, liquid_of
from barkeep.domain.ingredients.relations import StandIn
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.liquids.content import ethanol_g
from barkeep.domain.pouring.assessment import LineAnswer
from barkeep.domain.pouring.verdicts import Drink
from barkeep.domain.specs.spec import Line, Spec
from barkeep.domain.stand_ins.measured import as_asked, measured_style
from barkeep.domain.stand_ins.rebalancing import ChangingLine, Holds, Rebalancing, measurable, solve
from barkeep.errors import spoken_list
from barkeep.translation import tr, tr_noop

SWEET_G_PER_L = 200.0
"""A line is sweet from this much sugar: syrups, cordials, honey."""
WEAKEST_ABV = 5.0
"""What is this strong is more than a sweetener, and keeps its amount."""
SOME_SUGAR_G_PER_L, SOME_ACID_G_PER_L = 20.0, 3.0
"""With less of both, what is poured is dry: it does not bear on the balance."""
STAND_IN_BOUNDS = (0.25, 3.0)
OWN_BOUNDS = (0.5, 2.0)
"""How far an amount may go, as a share of where it begins."""
WORTH_SAYING = 1.0
"""A correction that gains less, in squared weights, is not worth the trouble (a choice)."""
WORTH_MOVING = 0.08
"""Nor is one that changes no amount by such a share: nobody tastes it (a choice)."""
OFF_STRENGTH = 0.08
"""From such a share of alcohol on, a dry spirit is poured by strength, not by ratio (a choice)."""
_OFF = (
    (1.0, "g", tr_noop("more alcohol"), tr_noop("less alcohol")),
    (1.0, "g", tr_noop("more sugar"), tr_noop("less sugar")),
    (0.15, "g", tr_noop("more acid"), tr_noop("less acid")),
    (10.0, "ml", tr_noop("more"), tr_noop("less")),
)
"""From how much on what remains off is said, and in which words."""


@dataclass(frozen=True, slots=True)
class Change:
    """One line with its new amount. `before_ml` is what the stand-in's ratio, or the spec, says.

    `shown` and `was` are the new amount and the spec's own as they are said.
    """

    line: Line
    ingredient: str
    before_ml: float
    amount_ml: float
    shown: str
    was: str
    stands_in: bool

    @property
    def changed(self) -> bool:
        """Whether it is not what the ratio or the spec says."""
        return self.amount_ml != self.before_ml


@dataclass(frozen=True, slots=True)
class Correction:
    """What to pour of the stand-ins and, where it helps, of the spec's own lines.

    `off` is what remains: g of ethanol, sugar and acid, and ml, more than the
    original holds; distances are weighted as `rebalancing` says. `of_strength`
    is True where only dry spirits are poured by their strength, and sugar and
    acid are as they were.
    """

    changes: tuple[Change, ...]
    off: Holds
    distance: float
    uncorrected_distance: float
    of_strength: bool = False


def correction_for(drink: Drink, snapshot: Snapshot) -> Correction | None:
    """The correction a drink needs as it would be poured tonight; None where it needs none."""
    tree = snapshot.knowledge.tree
    pours = pours_of(drink)
    replaced = frozenset(
        number
        for number, (answer, pour) in enumerate(zip(drink.lines, pours, strict=True))
        if answer.required and answer.met and not _is_wanted(pour.ingredient, answer, tree)
    )
    by_taste = frozenset(each for each in replaced if _is_by_taste(drink.lines[each], tree))
    return correction_of(
        drink.spec, pours=pours, replaced=replaced, snapshot=snapshot, by_taste=by_taste
    )


def correction_of(
    spec: Spec,
    pours: Sequence[Pour],
    replaced: frozenset[int],
    snapshot: Snapshot,
    by_taste: frozenset[int] = frozenset(),
) -> Correction | None:
    """What to pour where the lines numbered in `replaced` pour something else than they ask for.

    The ratio of a dry spirit in a line of `by_taste` stands whatever its strength.

    None where nothing helps or too little is known: a stand-in that is not
    poured by volume, a grouping without figures of its own, a line without an amount.
    """
    tree = snapshot.knowledge.tree
    figured = [
        each for each in sorted(replaced) if _can_be_figured(spec.lines[each], pours[each], tree)
    ]
    dry = [each for each in figured if _is_dry_for_dry(spec.lines[each], pours[each], tree)]
    off = [each for each in dry if _is_off_strength(spec.lines[each], pours[each], tree)]
    stand_ins = [each for each in figured if each not in dry or each in {*off} - by_taste]
    if not stand_ins:
        return None
    of_strength = all(each in dry for each in stand_ins)
    own = [
        number
        for number, line in enumerate(spec.lines)
        if not of_strength and number not in replaced and _is_adjustable(line, pours[number], tree)
    ]
    numbers = sorted((*stand_ins, *own))
    problem = _problem(
        spec, pours=pours, numbers=numbers, stand_ins=frozenset(stand_ins), tree=tree
    )
    style, units = measured_style(spec, snapshot.settings), snapshot.settings.units
    found = measurable(problem, solve(problem), lambda ml: _marks(ml, style, units))
    if not _is_worth_saying(problem, found):
        return None
    changes = tuple(
        _change(
            number,
            pour=pours[number],
            before_ml=before,
            amount_ml=after,
            stands_in=number in replaced,
            spec=spec,
            snapshot=snapshot,
        )
        for number, before, after in zip(numbers, problem.start, found, strict=True)
    )
    distances = (problem.distance(found), problem.distance(problem.start))
    return Correction(changes, problem.off(found), *distances, of_strength)


def _is_worth_saying(problem: Rebalancing, found: Sequence[float]) -> bool:
    gain = problem.weight(problem.start) - problem.weight(found)
    moves = (abs(after / before - 1.0) for before, after in zip(problem.start, found, strict=True))
    return gain >= WORTH_SAYING and max(moves) >= WORTH_MOVING


def minds_taste(derivation: Derivation, tree: FamilyTree) -> bool:
    """Whether a ratio on the way was set by taste: dry for dry, yet not what the strengths say."""
    entries = (step.entry for step in derivation.steps if isinstance(step, Replace))
    return any(_is_set_by_taste(entry, tree) for entry in entries)


def strength_share(line: Line, pour: Pour, tree: FamilyTree) -> float | None:
    """The alcohol of a dry stand-in as a share of the original's; None for anything else."""
    if not _can_be_figured(line, pour, tree) or not _is_dry_for_dry(line, pour, tree):
        return None
    wanted, offered = liquid_of(line.ingredient, tree), _liquid(pour, tree)
    return pour.ratio * offered.abv.value / wanted.abv.value if wanted.abv.value else None


def _is_by_taste(answer: LineAnswer, tree: FamilyTree) -> bool:
    return answer.derivation is not None and minds_taste(answer.derivation, tree)


def _is_set_by_taste(entry: StandIn, tree: FamilyTree) -> bool:
    if tree[entry.wanted].unit != "ml" or tree[entry.offered].unit != "ml":
        return False
    wanted, offered = liquid_of(entry.wanted, tree), liquid_of(entry.offered, tree)
    if not (_is_dry(wanted) and _is_dry(offered) and wanted.abv.value):
        return False
    share = entry.ratio * offered.abv.value / wanted.abv.value
    return abs(share - 1.0) > OFF_STRENGTH


def _is_wanted(key: str, answer: LineAnswer, tree: FamilyTree) -> bool:
    """Whether it is just what the line asks for; a kind poured only when asked for is not."""
    way = answer.derivation
    if way is not None and not way.exact and tree.only_when_asked(key, way.wanted):
        return False
    return any(tree.is_a(key, wanted) for wanted in answer.line.wanted)


def in_words(correction: Correction, tree: FamilyTree) -> str:
    """The correction as a clause: *pour 20 ml of triple sec instead of 22.5 ml, and …*."""
    said = [
        tr(
            "{amount} of {ingredient} instead of {was}",
            amount=change.shown,
            ingredient=tree.in_sentence(change.ingredient),
            was=change.was,
        )
        if change.shown != change.was
        else tr(
            "{amount} of {ingredient}",
            amount=change.shown,
            ingredient=tree.in_sentence(change.ingredient),
        )
        for change in sorted(correction.changes, key=lambda each: not each.stands_in)
        if change.stands_in or change.changed
    ]
    # Less of a stronger spirit is less in the glass: that is meant, and needs no saying.
    off = (*correction.off[:3], 0.0) if correction.of_strength else correction.off
    remains = list(_remains(off))
    still = tr(" (still off: {remains})", remains=spoken_list(remains, "and")) if remains else ""
    return tr(
        "pour {amounts} to keep the strength{still}"
        if correction.of_strength
        else "pour {amounts} to keep the balance{still}",
        amounts=spoken_list(said, "and"),
        still=still,
    )


def _remains(off: Holds) -> Iterator[str]:
    for amount, (least, unit, more, less) in zip(off, _OFF, strict=True):
        if abs(amount) >= least:
            places = 0 if unit == "ml" else 1
            yield f"{abs(amount):.{places}f} {unit} {tr(more if amount > 0 else less)}"


def _problem(
    spec: Spec,
    pours: Sequence[Pour],
    numbers: Sequence[int],
    stand_ins: frozenset[int],
    tree: FamilyTree,
) -> Rebalancing:
    parts, target = [], (0.0, 0.0, 0.0, 0.0)
    for number in numbers:
        line, pour = spec.lines[number], pours[number]
        wanted_ml = amount_poured(line, tree)
        poured = _held(_liquid(pour, tree))
        wanted = _held(liquid_of(line.ingredient, tree)) if number in stand_ins else poured
        start = wanted_ml * pour.ratio
        low, high = STAND_IN_BOUNDS if number in stand_ins else OWN_BOUNDS
        parts.append(ChangingLine(poured, start, low * start, high * start))
        target = _plus(target, wanted, wanted_ml)
    return Rebalancing(tuple(parts), target)


def _held(liquid: Liquid) -> Holds:
    """What a millilitre holds."""
    ethanol = ethanol_g(1.0, min(100.0, liquid.abv.value))
    return (ethanol, liquid.sugar.value / 1000.0, liquid.acid.value / 1000.0, 1.0)


def _plus(total: Holds, per_ml: Holds, ml: float) -> Holds:
    ethanol, sugar, acid, volume = (
        so_far + each * ml for so_far, each in zip(total, per_ml, strict=True)
    )
    return (ethanol, sugar, acid, volume)


def _liquid(pour: Pour, tree: FamilyTree) -> Liquid:
    return liquid_of(pour.ingredient, tree, None if pour.bottle is None else pour.bottle.product)


def _can_be_figured(line: Line, pour: Pour, tree: FamilyTree) -> bool:
    """Whether the amount of a stand-in can be worked out and bears on the balance."""
    if not line.required or not line.quantity or line.unit in LOOSE_UNITS or pour.ratio <= 0.0:
        return False
    if tree[line.ingredient].unit != "ml" or tree[pour.ingredient].unit != "ml":
        return False
    wanted, offered = liquid_of(line.ingredient, tree), _liquid(pour, tree)
    return wanted.abv.source == "usual" and offered.abv.source in ("label", "usual")


def _is_dry_for_dry(line: Line, pour: Pour, tree: FamilyTree) -> bool:
    return _is_dry(liquid_of(line.ingredient, tree)) and _is_dry(_liquid(pour, tree))


def _is_off_strength(line: Line, pour: Pour, tree: FamilyTree) -> bool:
    share = strength_share(line, pour, tree)
    return share is not None and share > 0.0 and abs(share - 1.0) > OFF_STRENGTH


def _is_dry(liquid: Liquid) -> bool:
    return liquid.sugar.value < SOME_SUGAR_G_PER_L and liquid.acid.value < SOME_ACID_G_PER_L


def _is_adjustable(line: Line, pour: Pour, tree: FamilyTree) -> bool:
    if not line.required or not line.quantity or line.unit in LOOSE_UNITS:
        return False
    if tree[line.ingredient].unit != "ml" or tree[pour.ingredient].unit != "ml":
        return False
    liquid = _liquid(pour, tree)
    sweet, sour = liquid.sugar.value >= SWEET_G_PER_L, liquid.acid.value >= SOUR_G_PER_L
    return liquid.abv.value < WEAKEST_ABV and (sweet or sour)


def _marks(ml: float, style: Style, units: BarUnits) -> tuple[float, ...]:
    """The amounts near this one that can be measured."""
    nearest = rounded(ml, style, units)
    step = to_quantity(Amount(float(nearest.step), None, nearest.unit), "ml", units)
    found = (rounded(max(0.0, ml + by), style, units) for by in (-step, 0.0, step))
    return tuple(
        to_quantity(Amount(float(each.value), None, each.unit), "ml", units)
        for each in found
        if each.value
    )


def _change(
    number: int,
    pour: Pour,
    before_ml: float,
    amount_ml: float,
    stands_in: bool,
    spec: Spec,
    snapshot: Snapshot,
) -> Change:
    line, tree, settings = spec.lines[number], snapshot.knowledge.tree, snapshot.settings
    was = as_asked(line, spec, settings, tree)
    style = measured_style(spec, settings)
    unmoved = amount_ml == amount_poured(line, tree)
    shown = was if unmoved else show_as(amount_ml, "ml", style, settings.units)
    return Change(
        line=line,
        ingredient=pour.ingredient,
        before_ml=before_ml,
        amount_ml=amount_ml,
        shown=shown,
        was=was,
        stands_in=stands_in,
    )
