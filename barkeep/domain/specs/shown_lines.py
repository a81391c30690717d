"""The lines of a spec as the bar likes to see them, each beside how it is written."""

from __future__ import annotations

import re
from dataclasses import dataclass

from barkeep.domain.amounts.amount import amount_at_start, show_number, show_range, spaced
from barkeep.domain.amounts.rounding import Style, rounded, show_as
from barkeep.domain.amounts.units import OUNCES, US_UNITS, BarUnits
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import capitalised
from barkeep.domain.specs.called import asked_beside, called_in_sentence, kind_beside
from barkeep.domain.specs.ratios import MEASURES, as_parts, parts_in_words
from barkeep.domain.specs.spec import Line, Spec
from barkeep.errors import UserError, spoken_list

_SPOONS = frozenset({"tsp", "barspoon"})
"""Small enough to stand among ounces as they are."""


@dataclass(frozen=True, slots=True)
class ShownLine:
    """A line as it is shown, and its amount alone, empty where it has none.

    `written` is the line's own text where that says something else, else empty.
    """

    text: str
    amount: str
    written: str = ""


def shown_lines(
    spec: Spec, tree: FamilyTree, style: Style, units: BarUnits = US_UNITS
) -> tuple[ShownLine, ...]:
    """Every line of a spec in a style; dashes, drops and pieces stay what they are.

    A line in ounces that are not the bar's says which ounces they are, in
    every style.
    """
    amounts = _amounts(spec, tree, style, units)
    return tuple(
        _shown(line, amount, tree, units) for line, amount in zip(spec.lines, amounts, strict=True)
    )


def style_note(spec: Spec, tree: FamilyTree, style: Style, units: BarUnits = US_UNITS) -> str:
    """What the amounts of a spec leave to be said in a style: how large its parts are, or empty."""
    return parts_in_words(spec, tree, units) if style == "parts" else ""


def names_of(line: Line, tree: FamilyTree) -> str:
    """What a line calls its ingredient, with what would do as well and what it asks beyond that.

    The writer's own words as they are, such as *apple cider*; a kind's own
    name begins with its capital: *Rye whiskey or bourbon*, *Aged rum (8 year)*.
    """
    name = names_in_sentence(line, tree)
    own = spoken_list([tree.in_sentence(key) for key in line.wanted])
    if line.called or not name.startswith(own):
        return name
    return tree.name(line.ingredient) + name[len(tree.in_sentence(line.ingredient)) :]


def names_in_sentence(line: Line, tree: FamilyTree) -> str:
    """The same as it stands inside a sentence: *rye whiskey or bourbon*."""
    asked = ", ".join(asked_beside(line))
    name = called_in_sentence(line, tree)
    return f"{name} ({asked})" if asked else name


def named_with_kind(line: Line, tree: FamilyTree) -> str:
    """The name inside a sentence with the kind it means, where that is another.

    *apple cider (cloudy apple juice)*: for where a bottle is to be found.
    """
    name, kind = names_in_sentence(line, tree), kind_beside(line, tree)
    return f"{name} ({kind})" if kind else name


def names_and_kind(line: Line, tree: FamilyTree) -> str:
    """The name of a line with the kind it means, where that is another: *apple cider (…)*."""
    name, kind = names_of(line, tree), kind_beside(line, tree)
    return f"{name} ({kind})" if kind else name


def ingredients_in_brief(spec: Spec, tree: FamilyTree) -> str:
    """What must go in, in its spec's order and words; what is not understood as written."""
    names = (capitalised(names_of(line, tree)) for line in spec.required_lines)
    return ", ".join(dict.fromkeys((*names, *(each.text for each in spec.unsettled))))


def worded(line: Line, name: str, amount: str) -> str:
    """A line's text made from its fields, with its ingredient's name and its amount as given."""
    words = [amount, name]
    text = " ".join(word for word in words if word)
    note = _beside(line.note, line.called if line.called and line.called in name else "")
    if note:
        # Commas also part one garnish from the next.
        bare = not line.garnish and not re.search(r"[,()]", note)
        text += f", {note}" if bare else f" ({note})"
    if line.min_abv_percent is not None:
        text += f" (at least {line.min_abv_percent:g} %)"
    if line.optional:
        text += " (optional)"
    return f"Garnish: {text}" if line.garnish else text


def _beside(note: str, called: str) -> str:
    """A note without the maker that begins or ends what its line calls the ingredient."""
    if not called:
        return note
    return ", ".join(each for each in note.split(", ") if not _is_its_maker(each, called))


def _is_its_maker(words: str, called: str) -> bool:
    stands = called.startswith(f"{words} ") or called.endswith(f" {words}")
    return stands and words[:1].isupper()


_GARNISH = re.compile(r"\s*garnish\s*:\s*", re.IGNORECASE)


def without_garnish(text: str) -> str:
    """A line's text without the *Garnish:* it may begin with.

    >>> without_garnish("Garnish: mint"), without_garnish("1 orange: its peel")
    ('mint', '1 orange: its peel')
    """
    said = _GARNISH.match(text)
    return text[said.end() :] if said else text


def _shown(line: Line, amount: str | None, tree: FamilyTree, units: BarUnits) -> ShownLine:
    own = ""
    if line.amount is not None and line.unit is not None:
        own = show_range(line.amount, line.amount_high, line.unit, units)
    foreign = line.unit in OUNCES and line.unit != units.ounce
    if amount is None and not foreign and line.text:
        return ShownLine(_typeset(line, units), own)
    shown = amount or own
    text = worded(line, names_in_sentence(line, tree), shown)
    return ShownLine(text, shown, _written(line, text, units) if foreign else line.text)


_FRACTION = re.compile(r"[/⁄¼½¾⅐⅑⅒⅓⅔⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]")


def _typeset(line: Line, units: BarUnits) -> str:
    """A line as it is written, a fraction that its amount is written in as on every page.

    *1 1/2 oz gin* and *1½ oz gin* are *1 ½ oz gin*. What has no such sign stays.
    """
    said = _GARNISH.match(line.text)
    front = line.text[: said.end()] if said else ""
    text = spaced(line.text[len(front) :])
    try:
        read = amount_at_start(text, units)
    except UserError:
        return line.text
    if read is None or (read.value, read.high) != (line.amount, line.amount_high):
        return line.text
    ends = (read.value,) if read.high is None else (read.value, read.high)
    shown = [show_number(each, fractions=True) for each in ends]
    whole = all(each.isdigit() or _FRACTION.search(each) for each in shown)
    if not whole or not _FRACTION.search(text[: read.unit_at]):
        return line.text
    rest = line.text[len(front) + read.unit_at :]
    return f"{front}{'–'.join(shown)}{' ' * rest[:1].isalpha()}{rest}"


def _written(line: Line, shown: str, units: BarUnits) -> str:
    """A line as it is written, with the kind of its ounces where this bar means others by it."""
    try:
        read = amount_at_start(line.text, units)
    except UserError:
        read = None
    if read is None or line.unit is None or read.unit is None:
        return line.text if OUNCES.get(line.unit or "", "") in line.text else shown
    if read.unit == line.unit:
        return line.text
    return f"{line.text[: read.unit_at]} {OUNCES[line.unit]}{line.text[read.end :]}"


def _amounts(spec: Spec, tree: FamilyTree, style: Style, units: BarUnits) -> tuple[str | None, ...]:
    """The amount of each line in a style, None where it stays as it is written."""
    lines = spec.lines
    if style == "as_written":
        return (None,) * len(lines)
    if style == "parts":
        return as_parts(lines, tree)
    wanted = units.ounce if style == "oz" else style
    kinds = MEASURES | {"part"} if style == "oz" else MEASURES | {"part"} | _SPOONS
    return tuple(
        _poured(line, spec.serves, style, units)
        if (line.unit in kinds - {wanted} or units.measure(str(line.unit)))
        and tree[line.ingredient].unit == "ml"
        else None
        for line in lines
    )


def _poured(line: Line, serves: float, style: Style, units: BarUnits) -> str | None:
    if not line.quantity or not line.amount:
        return None
    low_ml = line.quantity * serves
    low = show_as(low_ml, "ml", style, units)
    if line.amount_high is None:
        return low
    high_ml = low_ml * line.amount_high / line.amount
    first, last = rounded(low_ml, style, units), rounded(high_ml, style, units)
    high = show_as(high_ml, "ml", style, units)
    if first.value == last.value and first.unit == last.unit:
        return low
    if first.unit == last.unit:
        return show_range(float(first.value), float(last.value), last.unit, units)
    return f"{low} to {high}"
