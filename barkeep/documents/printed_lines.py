"""The lines of a spec as they are printed: the amount in both measures, and what it is of."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass

from barkeep.domain.amounts import BarUnits, amount_at_start, show_amount, show_range, spaced
from barkeep.domain.ingredients import FamilyTree
from barkeep.domain.measures import Amount, dimension, to_quantity
from barkeep.domain.printing import Rounded, Style, rounded
from barkeep.domain.shown_lines import names_in_sentence
from barkeep.domain.snapshot import Settings
from barkeep.domain.spec_text import line_text
from barkeep.domain.specs import Line

POURED = frozenset({"ml", "cl", "dl", "l", "oz", "imp_oz", "jigger", "shot", "pony", "wineglass"})
"""Units that are printed in ounces and in millilitres; spoons and dashes stay what they are."""
SPOONED = frozenset({"tsp", "tbsp", "dessertspoon", "barspoon"})
"""Units that stay what they are, with the millilitres beside them."""

_GARNISH = re.compile(r"\s*garnish\s*:\s*", re.IGNORECASE)
_OF = re.compile(r"\s*of\s+", re.IGNORECASE)


@dataclass(frozen=True, slots=True)
class PrintedLine:
    """One line: `amount` as the bar shows it, `first` and `second` in ounces and millilitres.

    `second` is empty where the amount is no volume that is poured, and all
    three are empty where the line gives none. `name` is the rest of the line.
    """

    name: str
    amount: str = ""
    first: str = ""
    second: str = ""

    @property
    def both(self) -> str:
        """Both amounts in one: *2 oz (60 ml)*."""
        return f"{self.first} ({self.second})" if self.second else self.first


def printed_lines(
    lines: Sequence[Line], tree: FamilyTree, settings: Settings
) -> tuple[PrintedLine, ...]:
    """Lines in their order; a garnish without its *Garnish:*."""
    return tuple(_printed(line, tree, settings) for line in lines)


def _printed(line: Line, tree: FamilyTree, settings: Settings) -> PrintedLine:
    name = _name(line, tree, settings.units)
    if line.amount is None or line.unit is None:
        return PrintedLine(name)
    units = settings.units
    written = show_range(line.amount, line.amount_high, line.unit, units)
    if line.unit in SPOONED and dimension(line.unit) == "volume":
        return PrintedLine(name, written, written, _shown(line, "ml", units))
    if line.unit not in POURED or tree[line.ingredient].unit != "ml":
        return PrintedLine(name, written, written)
    ounces, millilitres = _shown(line, "oz", units), _shown(line, "ml", units)
    style = settings.shown_in
    plain = written if style in ("as_written", "parts") else _shown(line, style, units)
    return PrintedLine(name, plain, ounces, millilitres)


def _shown(line: Line, style: Style, units: BarUnits) -> str:
    low = _rounded(line.amount, line.unit, style, units)
    if line.amount_high is None:
        return show_amount(float(low.value), low.unit, units)
    high = _rounded(line.amount_high, line.unit, style, units)
    if high.unit == low.unit and high.value > low.value:
        return show_range(float(low.value), float(high.value), low.unit, units)
    shown = [show_amount(float(each.value), each.unit, units) for each in (low, high)]
    return "–".join(dict.fromkeys(shown))


def _rounded(amount: float | None, unit: str | None, style: Style, units: BarUnits) -> Rounded:
    volume_ml = to_quantity(Amount(amount or 0.0, None, unit or "ml"), "ml", units)
    return rounded(volume_ml, style, units)


def _name(line: Line, tree: FamilyTree, units: BarUnits) -> str:
    """What the author wrote after the amount; where that cannot be told, the ingredient's name."""
    text = _GARNISH.sub("", line_text(line, tree, units), count=1)
    if line.amount is None:
        return " ".join(text.split())
    plain = spaced(text)
    found = amount_at_start(plain, units)
    rest = plain[found.end :].strip() if found else ""
    if found and line.text and (found.value, found.high) == (line.amount, line.amount_high):
        rest = _OF.sub("", rest, count=1) if _OF.match(rest) else rest
        if rest[:1].isalpha():
            return rest
    notes = [line.note] if line.note else []
    return ", ".join([names_in_sentence(line, tree), *notes, *["optional"] * line.optional])
