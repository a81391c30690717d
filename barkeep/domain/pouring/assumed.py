"""What is taken for what a line leaves open when it is counted, each named with its line."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from math import isclose

from barkeep.domain.amounts.amount import show_range
from barkeep.domain.amounts.measures import show_quantity
from barkeep.domain.amounts.units import BarUnits
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.specs.quantities import PART_ML
from barkeep.domain.specs.shown_lines import names_in_sentence
from barkeep.domain.specs.spec import Line
from barkeep.translation import tr, tr_noop

_VAGUE = re.compile(r"\b(?:few|several|some|little)\b", re.IGNORECASE)
EITHER = tr_noop("whichever of them is there")


@dataclass(frozen=True, slots=True)
class Assumed:
    """A line of a drink and what is taken for it, as the line itself does not say it."""

    drink: str
    line: str
    taken: str

    @property
    def sentence(self) -> str:
        """The same in one sentence."""
        return tr(
            "Counted in {drink}: “{line}” as {taken}.",
            drink=self.drink,
            line=self.line,
            taken=self.taken,
        )


def assumed_in(
    drink: str,
    line: Line,
    tree: FamilyTree,
    units: BarUnits,
    *,
    amount: Callable[[Line], float],
    poured: str = "",
) -> Iterator[Assumed]:
    """Everything that counting one line takes for granted.

    `amount` is how much a serve is counted as, in the ingredient's own unit;
    `poured` the key of what a choice is counted as, empty where that is
    whatever is there.
    """
    written = line.text or names_in_sentence(line, tree)
    counted = amount(line)
    for taken in _taken(line, counted, tree, units):
        yield Assumed(drink, written, taken)
    if line.alternatives:
        yield Assumed(drink, written, tree.in_sentence(poured) if poured else tr(EITHER))


def _taken(line: Line, counted: float, tree: FamilyTree, units: BarUnits) -> Iterator[str]:
    each = tr("{amount} a serve", amount=show_quantity(counted, tree[line.ingredient].unit))
    if line.quantity is None:
        if counted:
            yield tr("{each}, for it gives no amount", each=each)
        return
    if line.unit == "part":
        yield tr("{each}, a part being {part_ml:g} ml", each=each, part_ml=PART_ML)
    if line.amount_high is not None:
        low = isclose(counted, line.quantity)
        yield (
            tr("{each}, the lower end of what it says", each=each)
            if low
            else tr("{each}, the middle of what it says", each=each)
        )
    elif line.amount is not None and line.unit is not None and _VAGUE.search(line.text):
        yield show_range(line.amount, None, line.unit, units)
