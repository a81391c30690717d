"""What to measure out for a batch: how much is asked for, and of each ingredient how much.

An amount is rounded to what can be measured, but never above what there is:
what a batch is made from, what stands in the bar, what a vessel takes. What is
*common practice* says so.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from typing import TypeAlias

from barkeep.domain.amounts.rounding import rounded_down
from barkeep.domain.amounts.units import Unit
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.drink.contents import Content
from barkeep.domain.drink.ice import is_carbonated
from barkeep.domain.ingredients.composition import shipped_portions
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.making.available import LEAST, Available, Taken, available_in
from barkeep.domain.making.by_rounds import is_shaken_in
from barkeep.domain.making.made_here import freely_there
from barkeep.domain.specs.called import other_kind
from barkeep.domain.specs.shown_lines import names_in_sentence, names_of
from barkeep.domain.specs.spec import Line
from barkeep.errors import spoken_list
from barkeep.translation import tr, tr_noop

STRONG_FLAVOURS = ("bitters", "absinthe", "spice", "saline-solution")
"""Kinds that are started low in a large batch and brought up by taste (*common practice*)."""

MOST_OF_IT = 0.95
"""Rounding down by coarse steps leaves at least this share (a choice)."""

START_STRONG_AT = 0.5
"""The share of a scaled strong flavour to begin with (*common practice*)."""
FRAGILE = ("mint", "basil", "mint-leaf", "herb")
"""Kinds that do not keep once mixed: in the last hour, or by the glass (*common practice*)."""
BOILING = "boiling-water"
BY_ROUND = tr_noop("kept apart: it goes in round by round")
BY_GLASS = tr_noop("add it by the glass")
BUBBLES = tr_noop("it has bubbles: add it as it is served")
HOT_WATER = tr_noop("pour it on as it is served")
LAST_HOUR = tr_noop("it does not keep once mixed: add it in the last hour or by the glass")


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
    `most` is what there is of it, where that is all the batch is made from, or
    where the nearest measure would be more; `amount` is then rounded down.
    `lines` are the spec's lines that it is measured out for, `taken` what of it
    the bar gives, None where it is always there. `pieces` is how many it comes
    to where the spec counts what is measured, such as egg whites.
    """

    ingredient: str
    unit: Unit
    exact: float
    amount: float
    held: str = ""
    start_with: float | None = None
    most: float | None = None
    lines: tuple[Line, ...] = ()
    taken: Taken | None = None
    pieces: float | None = None
    is_pivot: bool = False

    @property
    def as_written(self) -> str:
        """The spec's own lines, each once."""
        return "; ".join(dict.fromkeys(each.text for each in self.lines if each.text))

    @property
    def error(self) -> float:
        """By how much the rounded amount is off, a share of the exact one."""
        return (self.amount - self.exact) / self.exact if self.exact else 0.0

    @property
    def is_limited(self) -> bool:
        """Whether it is rounded down to what there is of it."""
        return self.most is not None and self.amount < self.most

    @property
    def remark(self) -> str:
        """What its lines note, why it waits, and by how much rounding is off.

        A hundredth and less is not said.
        """
        error, pieces = 100.0 * self.error, self.pieces
        off = tr("{error:+.0f} % rounded", error=error) if abs(self.error) >= 0.01 else ""
        if self.is_limited:
            off = tr("rounded down to what there is")
        counted = "" if pieces is None else tr("{pieces:g} in all", pieces=round(pieces, 1))
        held = tr(self.held) if self.held else ""
        notes = dict.fromkeys(each.note for each in self.lines)
        return "; ".join(each for each in (*notes, counted, held, off) if each)


Waits: TypeAlias = Callable[[str, FamilyTree], str]


@dataclass(frozen=True, slots=True)
class BatchWater:
    """The water of a batch, in ml; `at_most` says that more of it would do harm."""

    ml: float
    at_most: bool = False


@dataclass(frozen=True, slots=True)
class MeasuredOut:
    """What to measure of each ingredient, and of the water in ml.

    `lowered` says that all of it is rounded down, to be no more than was asked for.
    """

    lines: tuple[BatchLine, ...]
    water_ml: float
    lowered: bool


def measured_out(
    contents: Sequence[Content],
    target: Target,
    serves: float,
    water: BatchWater,
    snapshot: Snapshot,
    waits: Waits,
) -> MeasuredOut:
    """So many serves of one serve's contents, and the water, as they are measured.

    `waits` says of an ingredient why it waits until the end, or nothing.
    """
    tree, merged = snapshot.knowledge.tree, _merged(contents)
    stock = available_in(snapshot)
    lines = []
    for each in merged:
        named = tuple(one.line for one in contents if one.quantity and _same(one, each))
        line = replace(
            _line(each, serves, tree), lines=named, held=waits(each.pour.ingredient, tree)
        )
        lines.append(_within(line, each, target, stock))
    water_ml = measured_down(water.ml, "ml") if water.at_most else measured(water.ml, "ml")
    poured_ml = sum(
        each.volume_ml * serves * (1.0 + line.error)
        for each, line in zip(merged, lines, strict=True)
    )
    lowered = poured_ml + water_ml > most_ml(target) * (1.0 + 1e-9)
    if lowered:
        lines, water_ml = list(map(_lower, lines)), measured_down(water.ml, "ml")
    return MeasuredOut(tuple(lines), water_ml, lowered)


def most_ml(target: Target) -> float:
    """What the whole may come to, in ml; endless where only one ingredient bounds it."""
    match target:
        case ForVolume(volume_ml):
            return volume_ml
        case ForVessel(capacity_ml, room):
            return capacity_ml * (1.0 - room)
    return math.inf


def _within(line: BatchLine, content: Content, target: Target, stock: Available) -> BatchLine:
    """A line that takes no more than there is of it, or can be made of it here."""
    tree = stock.snapshot.knowledge.tree
    if isinstance(target, FromIngredient) and is_from(content, target.ingredient, tree):
        # All of one line is the amount itself, without the noise of scaling it.
        near = math.isclose(line.exact, target.amount, rel_tol=1e-9)
        most = target.amount if near else line.exact
        line = _no_more_than(replace(line, exact=most, is_pivot=True), most)
    if freely_there(line.ingredient, stock.snapshot):
        return line
    there = stock.there(line.ingredient)
    taken = stock.take(line.ingredient, line.exact)
    line = replace(line, taken=taken)
    if line.is_pivot or taken.amount < line.exact * (1.0 - LEAST) or line.amount <= line.exact:
        return line
    # Nothing is made only to round up.
    more = line.amount - taken.amount
    most = taken.amount + stock.most(line.ingredient, more).amount if taken.made else there
    return _no_more_than(line, most) if most < line.amount else line


def _no_more_than(line: BatchLine, most: float) -> BatchLine:
    amount = rounded_down(line.exact, line.unit)
    begin = None if line.start_with is None else min(line.start_with, amount)
    return replace(line, amount=amount, start_with=begin, most=most)


def _lower(line: BatchLine) -> BatchLine:
    amount = measured_down(line.exact, line.unit) if line.most is None else line.amount
    return replace(line, amount=amount)


def measured(amount: float, unit: Unit) -> float:
    """An amount rounded to what can be measured out for a batch (steps are *common practice*)."""
    if unit == "each":
        return float(max(1, round(amount))) if amount > 0.0 else 0.0
    step = _step(amount)
    return max(step, round(amount / step) * step) if amount > 0.0 else 0.0


def measured_down(amount: float, unit: Unit) -> float:
    """As `measured`, but never more than the amount; finer where that would take much away."""
    if unit == "each":
        return rounded_down(amount, unit)
    step = _step(amount)
    down = math.floor(amount / step + 1e-9) * step
    return down if down >= MOST_OF_IT * amount > 0.0 else rounded_down(amount, unit)


def _step(amount: float) -> float:
    """How finely an amount in ml or g is measured."""
    steps = ((10.0, 0.5), (60.0, 2.5), (250.0, 5.0), (1000.0, 10.0), (5000.0, 25.0))
    return next((each for below, each in steps if amount < below), 50.0)


def is_from(content: Content, ingredient: str, tree: FamilyTree) -> bool:
    """Whether a line takes from what there is of an ingredient."""
    return tree.is_a(content.pour.ingredient, ingredient) or any(
        tree.is_a(ingredient, wanted) for wanted in content.line.wanted
    )


def _merged(contents: Sequence[Content]) -> tuple[Content, ...]:
    """One content for each ingredient: two lines of one thing are measured out once."""
    merged: dict[str, Content] = {}
    for content in contents:
        if not content.quantity:
            continue
        key = content.pour.ingredient
        known = merged.get(key)
        if known:
            content = replace(
                known,
                quantity=known.quantity + content.quantity,
                volume_ml=known.volume_ml + content.volume_ml,
            )
        merged[key] = content
    return tuple(merged.values())


def _same(one: Content, other: Content) -> bool:
    return one.pour.ingredient == other.pour.ingredient


def called(line: BatchLine, tree: FamilyTree) -> str:
    """What the spec calls it, as it begins a row: *apple cider*."""
    names = dict.fromkeys(names_of(each, tree) for each in line.lines)
    return spoken_list(list(names), "and") if names else tree.name(line.ingredient)


def called_with_kind(line: BatchLine, tree: FamilyTree) -> str:
    """The same inside a sentence, with the kind to pour where the words say another."""
    names = dict.fromkeys(names_in_sentence(each, tree) for each in line.lines)
    kind = tree.in_sentence(line.ingredient)
    words = spoken_list(list(names), "and") or kind
    return f"{words} ({kind})" if other_kind(words, kind) else words


def kind_poured(line: BatchLine, tree: FamilyTree) -> str:
    """The kind to pour, where what the spec calls it says another; else empty."""
    return other_kind(called(line, tree), tree.in_sentence(line.ingredient))


def _line(content: Content, serves: float, tree: FamilyTree) -> BatchLine:
    key = content.pour.ingredient
    unit, exact = tree[key].unit, content.quantity * serves
    strong = serves >= 4.0 and any(tree.is_a(key, kind) for kind in STRONG_FLAVOURS)
    start = measured(exact * START_STRONG_AT, unit) if strong else None
    piece_ml = shipped_portions().piece_ml.get(key) if content.line.unit == "each" else None
    return BatchLine(
        ingredient=key,
        unit=unit,
        exact=exact,
        amount=float(math.ceil(exact - LEAST)) if piece_ml else measured(exact, unit),
        start_with=start,
        pieces=exact / piece_ml if piece_ml else None,
    )


def held_cold(key: str, tree: FamilyTree) -> str:
    """Why something waits in a batch that stands mixed, empty where it does not."""
    if is_carbonated(key, tree):
        return BUBBLES
    if is_shaken_in(key, tree):
        return BY_GLASS
    if any(tree.is_a(key, kind) for kind in FRAGILE if kind in tree):
        return LAST_HOUR
    return ""


def held_in_rounds(key: str, tree: FamilyTree) -> str:
    """The same where the batch is worked in rounds: egg and cream go in there."""
    return BY_ROUND if is_shaken_in(key, tree) else held_cold(key, tree)


def held_hot(key: str, tree: FamilyTree) -> str:
    """The same of what is served hot, where bubbles are gone anyway."""
    if tree.is_a(key, BOILING):
        return HOT_WATER
    return "" if is_carbonated(key, tree) else held_cold(key, tree)
