"""The inputs of a recipe as lines of text: *500 g sugar*, and back."""

from __future__ import annotations

from collections.abc import Iterator

from barkeep.domain.amounts.units import US_UNITS, BarUnits, Unit
from barkeep.domain.ingredients.relations import Input, MadeFrom
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.spec_text.lines import read_line
from barkeep.errors import UserError
from barkeep.translation import tr, tr_noop

_IN_WORDS = {
    "ml": tr_noop("a volume"),
    "g": tr_noop("a weight"),
    "each": tr_noop("a number of pieces"),
}


class UnusableInput(UserError):
    """A line of a recipe that cannot be used: which, from 1, as written, and why in a sentence."""

    line: int
    text: str
    reason: str

    def __str__(self) -> str:
        return tr(
            "Line {line}, “{text}”: {reason}.",
            line=self.line,
            text=self.text,
            reason=self.reason.rstrip("."),
        )


def read_inputs(text: str, tree: FamilyTree, units: BarUnits = US_UNITS) -> tuple[Input, ...]:
    """What a recipe takes, a line each: *500 g sugar* or *sugar = 500 g*.

    Empty lines do not count. Raises `UnusableInput`.
    """
    return tuple(_inputs(text, tree, units))


def write_inputs(recipe: MadeFrom, tree: FamilyTree) -> str:
    """The inputs as lines that read back."""
    lines = (
        f"{exactly(each.amount, tree[each.ingredient].unit)} {tree.in_sentence(each.ingredient)}"
        for each in recipe.inputs
    )
    return "\n".join(lines)


def exactly(amount: float, unit: Unit) -> str:
    """An amount to be changed by hand: nothing of it is rounded away.

    >>> exactly(1626.5, "ml"), exactly(0.5, "each")
    ('1626.5 ml', '0.5')
    """
    return f"{amount:.10g}" if unit == "each" else f"{amount:.10g} {unit}"


def _inputs(text: str, tree: FamilyTree, units: BarUnits) -> Iterator[Input]:
    for number, written in enumerate(text.splitlines(), 1):
        if written.strip():
            yield _input(number, written.strip(), tree, units)


def _input(number: int, written: str, tree: FamilyTree, units: BarUnits) -> Input:
    name, equals, amount = written.partition("=")
    reading = read_line(f"{amount.strip()} {name.strip()}" if equals else written, tree, units)
    if reading.complaints:
        raise UnusableInput(number, written, reading.complaints[0].say())
    line = reading.line
    if line.quantity is None:
        wanted = tr(_IN_WORDS[tree[line.ingredient].unit])
        raise UnusableInput(number, written, tr("say how much of it, as {wanted}", wanted=wanted))
    return Input(line.ingredient, line.quantity)
