"""What a card or a description says of one drink, its lines in both measures among it."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, field, replace

from barkeep.domain.amounts.amount import Amount, amount_at_start, show_amount, show_range, spaced
from barkeep.domain.amounts.measures import dimension, to_quantity
from barkeep.domain.amounts.rounding import Rounded, Style, rounded
from barkeep.domain.amounts.units import BarUnits
from barkeep.domain.bar.snapshot import Settings
from barkeep.domain.drink.picture import DrinkPicture
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.spec_text.text import line_text
from barkeep.domain.specs.garnish_notes import garnishes_in_words
from barkeep.domain.specs.glasses import glass_in_words, ice_in_words
from barkeep.domain.specs.shown_lines import names_in_sentence, without_garnish
from barkeep.domain.specs.spec import Line, Spec, UnsettledLine
from barkeep.errors import spoken_list
from barkeep.translation import tr, tr_noop

POURED = frozenset({"ml", "cl", "dl", "l", "oz", "imp_oz", "jigger", "shot", "pony", "wineglass"})
"""Units that are printed in ounces and in millilitres; spoons and dashes stay what they are."""
SPOONED = frozenset({"tsp", "tbsp", "dessertspoon", "barspoon"})
"""Units that stay what they are, with the millilitres beside them."""


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
    lines: Sequence[Line | UnsettledLine], tree: FamilyTree, settings: Settings
) -> tuple[PrintedLine, ...]:
    """Lines in their order; a garnish without its *Garnish:*.

    One that is not understood is printed as it was written, and says so.
    """
    return tuple(
        PrintedLine(tr("{text} (not understood)", text=line.text))
        if isinstance(line, UnsettledLine)
        else _printed(line, tree, settings)
        for line in lines
    )


def poured_lines(spec: Spec) -> list[Line | UnsettledLine]:
    """All lines of a spec but its garnishes, as they were written one below the other."""
    return [each for each in spec.in_order if isinstance(each, UnsettledLine) or not each.garnish]


def _printed(line: Line, tree: FamilyTree, settings: Settings) -> PrintedLine:
    name = _name(line, tree, settings.units)
    if line.amount is None or line.unit is None:
        return PrintedLine(name)
    units = settings.units
    written = show_range(line.amount, line.amount_high, line.unit, units)
    own = units.measure(line.unit) is not None and tree[line.ingredient].unit == "ml"
    if own or (line.unit in SPOONED and dimension(line.unit) == "volume"):
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
    text = without_garnish(line_text(line, tree, units))
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
    return ", ".join([names_in_sentence(line, tree), *notes, *[tr("optional")] * line.optional])


FIRST_OF_ALL = tr_noop(
    "These are the usual cautions. Local rules come first, "
    "and so does whoever is qualified to advise you."
)
"""What stands before the cautions wherever they are printed."""


@dataclass(frozen=True, slots=True)
class DrinkFacts:
    """What was worked out of a drink. Strength in % vol as served, None where it is not known.

    `standard_drinks` are those of `country`; `allergens` words, `cautions` sentences. Where
    `in_general`, the last of them says in one what is true of alcohol in general.
    """

    abv_percent: float | None = None
    standard_drinks: float | None = None
    country: str = ""
    allergens: tuple[str, ...] = ()
    cautions: tuple[str, ...] = ()
    in_general: bool = False
    picture: DrinkPicture | None = field(default=None, repr=False)

    @property
    def without_general(self) -> DrinkFacts:
        """The same without what is true of alcohol in general."""
        own = self.cautions[:-1] if self.in_general else self.cautions
        return replace(self, cautions=own, in_general=False)


@dataclass(frozen=True, slots=True)
class CardContent:
    """One drink in texts. `method` is its paragraphs; what there is nothing of is empty.

    `own_cautions` are those of the drink alone.
    """

    name: str
    lines: tuple[PrintedLine, ...]
    garnish: str = ""
    method: tuple[str, ...] = ()
    glass: str = ""
    ice: str = ""
    serves: str = ""
    riff: str = ""
    credit: str = ""
    strength: str = ""
    standard_drinks: str = ""
    allergens: str = ""
    own_cautions: tuple[str, ...] = ()
    picture: DrinkPicture | None = field(default=None, repr=False)

    @property
    def cautions(self) -> tuple[str, ...]:
        """Its cautions as they are printed, after what stands before them all."""
        return (tr(FIRST_OF_ALL), *self.own_cautions) if self.own_cautions else ()

    @property
    def service(self) -> tuple[tuple[str, str], ...]:
        """Glass, ice and garnish, each with its word."""
        named = ((tr("Glass"), self.glass), (tr("Ice"), self.ice), (tr("Garnish"), self.garnish))
        return tuple((word, text) for word, text in named if text)


def card_content(
    spec: Spec, tree: FamilyTree, settings: Settings, facts: DrinkFacts | None = None
) -> CardContent:
    """What is printed of a spec; without `facts` nothing is said of strength and safety."""
    known = facts or DrinkFacts()
    garnishes = printed_lines([line for line in spec.lines if line.garnish], tree, settings)
    return CardContent(
        name=spec.name,
        lines=printed_lines(poured_lines(spec), tree, settings),
        garnish=", ".join(
            (
                *(f"{each.amount} {each.name}".strip() for each in garnishes),
                *garnishes_in_words(spec.notes),
            )
        ),
        method=_paragraphs(spec.method),
        glass=glass_in_words(spec.glass),
        ice=ice_in_words(spec.ice),
        serves="" if spec.serves == 1.0 else tr("Makes {serves:g}", serves=spec.serves),
        riff=tr("After {riff_of}", riff_of=spec.riff_of) if spec.riff_of else "",
        credit=", ".join(each for each in (spec.credit, spec.source) if each),
        strength=_strength(known),
        standard_drinks=_standard_drinks(known, each=spec.serves != 1.0),
        allergens=contains(known.allergens),
        own_cautions=known.cautions,
        picture=known.picture,
    )


def contains(allergens: Sequence[str]) -> str:
    """The allergens in a sentence, empty where there is none."""
    if not allergens:
        return ""
    return tr("Contains {allergens}", allergens=spoken_list(list(map(tr, allergens)), "and"))


def _paragraphs(method: str) -> tuple[str, ...]:
    """The paragraphs of a method; each of its lines is one."""
    rows = (" ".join(row.split()) for row in method.splitlines())
    return tuple(row for row in rows if row)


def _strength(facts: DrinkFacts) -> str:
    if facts.abv_percent is None:
        return ""
    if facts.abv_percent < 0.5:
        return tr("no alcohol")
    return tr("about {strength:.0f} % vol", strength=facts.abv_percent)


_OF_ALL = (
    tr_noop("about {number} standard drink"),
    tr_noop("about {number} standard drinks"),
)
_OF_EACH = (
    tr_noop("about {number} standard drink each"),
    tr_noop("about {number} standard drinks each"),
)


def _standard_drinks(facts: DrinkFacts, *, each: bool) -> str:
    if facts.standard_drinks is None or facts.standard_drinks < 0.05:
        return ""
    number = f"{facts.standard_drinks:.1f}"
    forms = _OF_EACH if each else _OF_ALL
    said = tr(forms[number != "1.0"], number=number)
    return f"{said} ({tr(facts.country)})" if facts.country else said
