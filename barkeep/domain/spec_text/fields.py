"""A line of a spec in its fields, as a form shows them; and its text again from these."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass, replace

from barkeep.domain.amounts.amount import show_number, spaced
from barkeep.domain.amounts.spoken import any_amount_at_start
from barkeep.domain.amounts.units import US_UNITS, BarUnits, unit_words
from barkeep.domain.ingredients.names import bare_name
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.spec_text.headers import header_in
from barkeep.domain.spec_text.lines import ReadLine, read_lines
from barkeep.domain.specs.shown_lines import names_in_sentence, worded
from barkeep.domain.specs.spec import Line
from barkeep.errors import AmountError, NegativeAmount

_BULLET = re.compile(r"[ ]*(?:[-*+•·–][ ]+|[•·])?")
_OF = re.compile(r"[ ]*(?:of[ ]+)?(?:the[ ]+)?", re.IGNORECASE)
_UNIT_AT_THE_END = re.compile(r"(?P<amount>.*?)[ ]*(?P<unit>[^\W\d_¼-¾⅐-⅞][\w. ]*)")


NOTHING_ELSE = Line("", "")


@dataclass(frozen=True, slots=True)
class LineFields:
    """What one may write of a line. `amount` and `unit` are words as they are written.

    `ingredient` is what is called for in the words of its line; of a line that
    cannot be read it is all that follows the amount. `rest` is a line that
    says what else there is: its note, whether it is a garnish and the like.
    """

    amount: str = ""
    unit: str = ""
    ingredient: str = ""
    rest: Line = NOTHING_ELSE

    @property
    def empty(self) -> bool:
        """Whether nothing is written yet."""
        return not (self.amount or self.unit or self.ingredient or self.rest.note)


def text_of(fields: LineFields) -> str:
    """The line that these fields make."""
    line = replace(fields.rest, note=" ".join(fields.rest.note.split()))
    amount = " ".join(f"{fields.amount} {fields.unit}".split())
    return worded(line, " ".join(fields.ingredient.split()), amount)


def fields_of(read: ReadLine, tree: FamilyTree, units: BarUnits = US_UNITS) -> LineFields:
    """A line in its fields, in its own words as far as these read back to the same line."""
    line = read.line
    body = _body(line.text)
    amounts = list(_amounts(line, body, units))
    if not line.ingredient:
        return _unread(amounts, body)
    end = _end_of_amount(body, units)
    literal = bare_name(body[_OF.match(body, end).end() :])  # type: ignore[union-attr]
    names = (literal, names_in_sentence(line, tree), read.matched or "")
    for amount, unit in amounts:
        for name in names:
            fields = LineFields(amount, unit, name, _rest(line))
            if _reads_back(fields, line, tree, units):
                return fields
    garnish = line.garnish and body != line.text
    return LineFields(ingredient=body, rest=Line("", "", garnish=garnish))


def _rest(line: Line) -> Line:
    """A line without what has words of its own in a form."""
    return replace(
        line,
        text="",
        ingredient="",
        amount=None,
        amount_high=None,
        unit=None,
        quantity=None,
        alternatives=(),
        called="",
        stated=(),
    )


def _body(text: str) -> str:
    """A line's text without its bullet and without *Garnish:*."""
    header = header_in(text)
    plain = spaced(header.value if header and header.name == "garnish" else text)
    bullet = _BULLET.match(plain)
    return plain[bullet.end() if bullet else 0 :].strip()


def _end_of_amount(body: str, units: BarUnits) -> int:
    try:
        found = any_amount_at_start(body, units)
    except (AmountError, NegativeAmount):
        return 0
    return found.end if found else 0


def _amounts(line: Line, body: str, units: BarUnits) -> Iterator[tuple[str, str]]:
    """Amount and unit as they are written, then as they are said plainly."""
    written = body[: _end_of_amount(body, units)].strip()
    parted = _UNIT_AT_THE_END.fullmatch(written)
    if parted and parted["amount"]:
        yield parted["amount"], parted["unit"]
    elif written:
        yield written, ""
    if line.amount is None:
        yield "", ""
        return
    shown = show_number(line.amount, fractions=True, mark=".")
    if line.amount_high is not None:
        shown += f"-{show_number(line.amount_high, fractions=True, mark='.')}"
    unit = "" if line.unit in (None, "each") else unit_words(str(line.unit), units)
    yield shown, unit


def _unread(amounts: list[tuple[str, str]], body: str) -> LineFields:
    """A line whose ingredient is not known: its amount, and all the rest."""
    amount, unit = amounts[0]
    front = " ".join(f"{amount} {unit}".split())
    plain = " ".join(body.split())
    if not plain.startswith(front):
        return LineFields(ingredient=plain)
    return LineFields(amount, unit, plain[len(front) :].strip())


def _reads_back(fields: LineFields, line: Line, tree: FamilyTree, units: BarUnits) -> bool:
    text = text_of(replace(fields, rest=replace(fields.rest, garnish=False)))
    read = read_lines(text, tree, units, garnish=line.garnish)
    if len(read) != 1 or read[0].complaints:
        return False
    return replace(read[0].line, text="") == replace(line, text="")
