"""What to pour when something stands in, so that the drink stays what it was.

The amounts of the stand-ins and of the spec's own sweet and sour lines are
worked out anew so that ethanol, sugar, acid and volume stay nearest to the
original (`barkeep.domain.answers.rebalancing`). Spirits, wines and liqueurs of
the spec keep their amounts, and a dry spirit that stands in for a dry spirit is
poured by its own ratio, which minds strength and taste already. How something
tastes is not in these figures: the last word is a sip.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from barkeep.domain.amounts import Amount, BarUnits
from barkeep.domain.answers.balance import SOUR_G_PER_L
from barkeep.domain.answers.contents import Pour, amount_poured, pours_of
from barkeep.domain.answers.figures import Liquid, liquid_of
from barkeep.domain.answers.makeable import Drink
from barkeep.domain.answers.rebalancing import Holds, Part, Problem, measurable, solve
from barkeep.domain.ingredients import FamilyTree
from barkeep.domain.liquids.content import ethanol_g
from barkeep.domain.measures import show_amount, to_quantity
from barkeep.domain.printing import Style, rounded, show_as
from barkeep.domain.snapshot import Snapshot
from barkeep.domain.specs import Line, Spec
from barkeep.errors import spoken_list

SWEET_G_PER_L = 200.0
"""A line is sweet from this much sugar: syrups, cordials, honey."""
WEAKEST_ABV = 5.0
"""What is this strong is more than a sweetener, and keeps its amount."""
SOME_SUGAR_G_PER_L, SOME_ACID_G_PER_L = 20.0, 3.0
"""With less of both, what is poured is dry: it does not bear on the balance."""
STAND_IN_BOUNDS = (0.25, 3.0)
OWN_BOUNDS = (0.5, 2.0)
"""How far an amount may go, as a share of where it begins."""
WORTH_SAYING = 0.5
"""A correction that gains less, in squared weights, is not worth the trouble (a choice)."""
_LOOSE_UNITS = ("dash", "drop", "splash", "float", "rinse", "pinch")
_OFF = (
    (0.5, "g", "more alcohol", "less alcohol"),
    (0.5, "g", "more sugar", "less sugar"),
    (0.1, "g", "more acid", "less acid"),
    (4.0, "ml", "more", "less"),
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
    original holds; distances are weighted as `rebalancing` says.
    """

    changes: tuple[Change, ...]
    off: Holds
    distance: float
    uncorrected_distance: float


def correction_for(drink: Drink, snapshot: Snapshot) -> Correction | None:
    """The correction a drink needs as it would be poured tonight; None where it needs none."""
    tree = snapshot.knowledge.tree
    pours = pours_of(drink)
    replaced = frozenset(
        number
        for number, (answer, pour) in enumerate(zip(drink.lines, pours, strict=True))
        if answer.required and answer.met and not tree.is_a(pour.ingredient, answer.line.ingredient)
    )
    return correction_of(drink.spec, pours, replaced, snapshot)


def correction_of(
    spec: Spec, pours: Sequence[Pour], replaced: frozenset[int], snapshot: Snapshot
) -> Correction | None:
    """What to pour where the lines numbered in `replaced` pour something else than they ask for.

    None where nothing helps or too little is known: a stand-in that is not
    poured by volume, a grouping without figures of its own, a line without an amount.
    """
    tree = snapshot.knowledge.tree
    stand_ins = [
        each for each in sorted(replaced) if _can_be_figured(spec.lines[each], pours[each], tree)
    ]
    if not stand_ins:
        return None
    own = [
        number
        for number, line in enumerate(spec.lines)
        if number not in replaced and _is_adjustable(line, pours[number], tree)
    ]
    numbers = sorted((*stand_ins, *own))
    problem = _problem(spec, pours, numbers, frozenset(stand_ins), tree)
    style, units = _style_of(spec, snapshot), snapshot.settings.units
    found = measurable(problem, solve(problem), lambda ml: _marks(ml, style, units))
    if problem.weight(problem.start) - problem.weight(found) < WORTH_SAYING:
        return None
    changes = tuple(
        _change(
            spec.lines[number], pours[number], before, after, number in replaced, style, units, tree
        )
        for number, before, after in zip(numbers, problem.start, found, strict=True)
    )
    return Correction(
        changes, problem.off(found), problem.distance(found), problem.distance(problem.start)
    )


def in_words(correction: Correction, tree: FamilyTree) -> str:
    """The correction as a clause: *pour 20 ml of triple sec instead of 22.5 ml, and …*."""
    said = [
        f"{change.shown} of {tree.in_sentence(change.ingredient)} instead of {change.was}"
        if change.shown != change.was
        else f"{change.shown} of {tree.in_sentence(change.ingredient)}"
        for change in sorted(correction.changes, key=lambda each: not each.stands_in)
        if change.stands_in or change.changed
    ]
    remains = list(_remains(correction.off))
    still = f" (still off: {spoken_list(remains, 'and')})" if remains else ""
    return f"pour {spoken_list(said, 'and')} to keep the balance{still}"


def _remains(off: Holds) -> Iterator[str]:
    for amount, (least, unit, more, less) in zip(off, _OFF, strict=True):
        if abs(amount) >= least:
            places = 0 if unit == "ml" else 1
            yield f"{abs(amount):.{places}f} {unit} {more if amount > 0 else less}"


def _problem(
    spec: Spec,
    pours: Sequence[Pour],
    numbers: Sequence[int],
    stand_ins: frozenset[int],
    tree: FamilyTree,
) -> Problem:
    parts, target = [], (0.0, 0.0, 0.0, 0.0)
    for number in numbers:
        line, pour = spec.lines[number], pours[number]
        wanted_ml = amount_poured(line, tree)
        poured = _held(_liquid(pour, tree))
        wanted = _held(liquid_of(line.ingredient, tree)) if number in stand_ins else poured
        start = wanted_ml * pour.ratio
        low, high = STAND_IN_BOUNDS if number in stand_ins else OWN_BOUNDS
        parts.append(Part(poured, start, low * start, high * start))
        target = _plus(target, wanted, wanted_ml)
    return Problem(tuple(parts), target)


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
    if not line.required or not line.quantity or line.unit in _LOOSE_UNITS or pour.ratio <= 0.0:
        return False
    if tree[line.ingredient].unit != "ml" or tree[pour.ingredient].unit != "ml":
        return False
    wanted, offered = liquid_of(line.ingredient, tree), _liquid(pour, tree)
    known = wanted.abv.source == "usual" and offered.abv.source in ("label", "usual")
    return known and not (_is_dry(wanted) and _is_dry(offered))


def _is_dry(liquid: Liquid) -> bool:
    return liquid.sugar.value < SOME_SUGAR_G_PER_L and liquid.acid.value < SOME_ACID_G_PER_L


def _is_adjustable(line: Line, pour: Pour, tree: FamilyTree) -> bool:
    if not line.required or not line.quantity or line.unit in _LOOSE_UNITS:
        return False
    if tree[line.ingredient].unit != "ml" or tree[pour.ingredient].unit != "ml":
        return False
    liquid = _liquid(pour, tree)
    sweet, sour = liquid.sugar.value >= SWEET_G_PER_L, liquid.acid.value >= SOUR_G_PER_L
    return liquid.abv.value < WEAKEST_ABV and (sweet or sour)


def _style_of(spec: Spec, snapshot: Snapshot) -> Style:
    """How amounts are measured: as the bar wishes, else as the spec is written."""
    wished = snapshot.settings.shown_in
    if wished in ("oz", "ml", "cl"):
        return wished
    units = {line.unit for line in spec.lines}
    if units & {"oz", "imp_oz", "jigger"}:
        return "oz"
    return "cl" if "cl" in units and "ml" not in units else "ml"


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
    line: Line,
    pour: Pour,
    before_ml: float,
    amount_ml: float,
    stands_in: bool,
    style: Style,
    units: BarUnits,
    tree: FamilyTree,
) -> Change:
    was_ml = amount_poured(line, tree)
    was = show_as(was_ml, "ml", style, units)
    if style == "ml" and line.unit == "ml" and line.amount and line.amount == was_ml:
        was = show_amount(line.amount, line.unit, units)
    shown = was if amount_ml == was_ml else show_as(amount_ml, "ml", style, units)
    return Change(line, pour.ingredient, before_ml, amount_ml, shown, was, stands_in)
