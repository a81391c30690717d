"""Stand-ins within one drink: what each line offers, and the drink with some of them poured.

A drink poured otherwise is a spec like any other, with the lines of what is poured: whatever is
asked of a spec is asked of it in the same way.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from math import floor

from barkeep.domain.amounts.amount import Amount
from barkeep.domain.amounts.measures import to_quantity
from barkeep.domain.amounts.rounding import Style, rounded
from barkeep.domain.bar.shoots import ChosenPour, line_chosen_for
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.drink.contents import LOOSE_UNITS, amount_poured
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.pouring.assessment import LineAnswer
from barkeep.domain.pouring.sourcing import WITHIN
from barkeep.domain.pouring.verdicts import Drink
from barkeep.domain.specs.riffs import riff_on
from barkeep.domain.specs.shown_lines import names_in_sentence
from barkeep.domain.specs.spec import Line, Spec
from barkeep.domain.stand_ins.offers import Offer, StandIns, stand_in
from barkeep.errors import InvalidField, spoken_list
from barkeep.translation import tr


@dataclass(frozen=True, slots=True)
class LineOffers:
    """One line of a drink, how it is met tonight, and what may be poured instead.

    `place` is its number in the spec. What is farther off than any degree by which drinks are
    poured is in `far` alone.
    """

    place: int
    answer: LineAnswer
    stand_ins: StandIns

    @property
    def line(self) -> Line:
        """The line as its spec has it."""
        return self.answer.line

    @property
    def owned(self) -> tuple[Offer, ...]:
        """What can be poured instead of it now, the closest first."""
        return tuple(each for each in self._others if each.owned and not _is_far(each))

    @property
    def beyond(self) -> tuple[Offer, ...]:
        """What could be poured instead once something is bought, the closest first."""
        return tuple(each for each in self._others if not (each.owned or _is_far(each)))

    @property
    def far(self) -> tuple[Offer, ...]:
        """What is there and so far off that it is not offered."""
        return tuple(each for each in self._others if each.owned and _is_far(each))

    @property
    def _others(self) -> tuple[Offer, ...]:
        asked = self.line.wanted
        return tuple(each for each in self.stand_ins.stand_ins if each.ingredient not in asked)

    @property
    def likely(self) -> Offer | None:
        """What is poured instead unless it is said otherwise.

        What tonight pours for it, or for a line that nothing meets the closest.
        """
        if self.answer.met:
            return next((each for each in self.owned if _is_poured(self.answer, each)), None)
        return next(iter(self.owned), None)


def _is_far(offer: Offer) -> bool:
    return offer.closeness < WITHIN["loose"]


def _is_poured(answer: LineAnswer, offer: Offer) -> bool:
    return answer.ingredient == offer.ingredient and answer.closeness < WITHIN["exact"]


def line_offers(drink: Drink, snapshot: Snapshot) -> tuple[LineOffers, ...]:
    """What each line offers that the drink cannot be made without, in the spec's order."""
    return tuple(
        LineOffers(place, answer, stand_in(snapshot, answer.line.ingredient, drink.spec))
        for place, answer in enumerate(drink.lines)
        if answer.required and not answer.line.garnish
    )


def chosen_offer(spec: Spec, place: int, offer: Offer, snapshot: Snapshot) -> ChosenPour:
    """An offer as the choice for its line, so much of it as can be measured."""
    chosen = ChosenPour(
        line=place,
        ingredient=offer.ingredient,
        ratio=offer.ratio,
        wanted=spec.lines[place].ingredient,
    )
    return measurable(spec, chosen, snapshot)


def measurable(spec: Spec, chosen: ChosenPour, snapshot: Snapshot) -> ChosenPour:
    """The choice with the nearest ratio whose amount can be measured as the line is."""
    line, tree, units = spec.lines[chosen.line], snapshot.knowledge.tree, snapshot.settings.units
    if line.unit in LOOSE_UNITS and line.amount:
        asked = line.amount / spec.serves
        return replace(chosen, ratio=max(1.0, floor(asked * chosen.ratio + 0.5)) / asked)
    volume = amount_poured(line, tree)
    if tree[chosen.ingredient].unit != "ml" or tree[line.ingredient].unit != "ml" or not volume:
        return chosen
    found = rounded(volume * chosen.ratio, _style_of(line), units)
    can_be = to_quantity(Amount(float(found.value), None, found.unit), "ml", units)
    return replace(chosen, ratio=can_be / volume) if can_be else chosen


def _style_of(line: Line) -> Style:
    if line.unit in ("oz", "imp_oz", "jigger"):
        return "oz"
    return "cl" if line.unit == "cl" else "ml"


def with_pours(spec: Spec, chosen: Iterable[ChosenPour], tree: FamilyTree) -> Spec:
    """The spec with the chosen pours in place of its lines.

    A choice that fits no line any more, since the spec was changed, is passed over.
    """
    lines = list(spec.lines)
    for each in chosen:
        place = line_chosen_for(each, spec)
        if place is not None and each.ingredient in tree:
            lines[place] = _poured_line(lines[place], each, spec.serves, tree)
    return replace(spec, lines=tuple(lines))


def _poured_line(line: Line, chosen: ChosenPour, serves: float, tree: FamilyTree) -> Line:
    """A line in what is poured for it, saying what it replaces unless it is just a kind of it.

    Its unit stays the line's own where both are measured alike, and is the
    ingredient's own where they are not. Its text goes, since it names the other.
    """
    key, ratio = chosen.ingredient, chosen.ratio
    if key == line.ingredient and ratio == 1.0:
        return line
    quantity = None if line.quantity is None else line.quantity * ratio
    amount, high, unit = line.amount, line.amount_high, line.unit
    if tree[key].unit != tree[line.ingredient].unit and quantity is not None:
        amount, high, unit = quantity * serves, None, tree[key].unit
    elif amount is not None:
        amount, high = amount * ratio, None if high is None else high * ratio
    instead = not any(tree.is_a(key, each) for each in line.wanted)
    replaced = f"in place of {names_in_sentence(line, tree)}" if instead else ""
    return replace(
        line,
        text="",
        ingredient=key,
        amount=amount,
        amount_high=high,
        unit=unit,
        quantity=quantity,
        note="; ".join(each for each in (line.note, replaced) if each),
        alternatives=(),
        called="",
        stated=() if instead else line.stated,
    )


def riff_name(spec: Spec, chosen: Sequence[ChosenPour], tree: FamilyTree) -> str:
    """What a drink poured otherwise is likely called: *Airmail with white rum*."""
    poured = dict.fromkeys(tree.in_sentence(each.ingredient) for each in chosen)
    return f"{spec.name} with {spoken_list(list(poured), 'and')}" if poured else spec.name


def riff_with(spec: Spec, chosen: Sequence[ChosenPour], name: str, snapshot: Snapshot) -> Spec:
    """A riff in which the chosen pours are what its lines ask for; each says what it replaced.

    Raises `InvalidField` where nothing is poured otherwise.
    """
    poured = with_pours(spec, chosen, snapshot.knowledge.tree)
    if poured.lines == spec.lines:
        raise InvalidField("riff", name, tr("nothing in it is poured otherwise"))
    return replace(riff_on(spec, name), lines=poured.lines)
