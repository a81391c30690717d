"""An analysis as it is read: one fact a row, each with how surely it is known."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from barkeep.domain.answers.analysis import Analysis, Frozen
from barkeep.domain.answers.balance import Place, Quality, Style
from barkeep.domain.cautions import Caution
from barkeep.domain.ingredients import FamilyTree
from barkeep.domain.liquids.drinks import standard_drink
from barkeep.domain.liquids.freezing import FREEZER_C, InFreezer
from barkeep.errors import spoken_list

FROM_MEMORY = "Usual ranges are from memory, the habit of one book and no rule."
NO_STYLE = "No usual range is known for a drink of this kind."
_PLACES: dict[Quality, dict[Place, str]] = {
    "strength": {"below": "weaker", "within": "as strong", "above": "stronger"},
    "sugar": {"below": "drier", "within": "as sweet", "above": "sweeter"},
    "acid": {"below": "less sour", "within": "as sour", "above": "sourer"},
}
_IN_FREEZER: dict[InFreezer, str] = {
    "liquid": "stays liquid",
    "borderline": "stays liquid only just",
    "slush": "turns to slush",
    "frozen": "freezes",
}


@dataclass(frozen=True, slots=True)
class Fact:
    """A label, what it is, and a quieter note, which may be empty."""

    label: str
    value: str
    note: str = ""


def facts(analysis: Analysis, tree: FamilyTree) -> tuple[Fact, ...]:
    """The figures of a drink, the most wanted first."""
    return tuple(_facts(analysis, tree))


def in_brief(analysis: Analysis) -> str:
    """Volume, strength and standard drinks in a line."""
    volume = f"{analysis.served_volume_ml:.0f} ml"
    if not analysis.ethanol_g:
        return f"{volume}, without alcohol"
    return f"{volume} at {analysis.abv_percent:.0f} % vol, {_drinks(analysis)}"


def place_in_words(analysis: Analysis) -> str:
    """Where the drink lies among its family: weaker, sweeter, as sour as usual."""
    style = analysis.style
    if style is None:
        return NO_STYLE
    places = [(each, style.range_of(each).place_of(value)) for each, value in measured(analysis)]
    same = [_PLACES[each][place] for each, place in places if place == "within"]
    off = [_PLACES[each][place] for each, place in places if place != "within"]
    said = f"{spoken_list(off, 'and')} than usual" if off else ""
    if same:
        said += f", but {spoken_list(same, 'and')}" if said else spoken_list(same, "and")
        said += "" if off else " as usual"
    return f"Among {style.name} it is {said}."


def place_word(quality: Quality, place: Place) -> str:
    """Where one quality lies: *weaker*, *as sweet*, *sourer*."""
    return _PLACES[quality][place]


def about_ranges(style: Style) -> str:
    """How far the usual ranges of a family are to be trusted."""
    note = f"{style.note[:1].upper()}{style.note[1:]}." if style.note else ""
    return f"{FROM_MEMORY} {note}".rstrip()


def measured(analysis: Analysis) -> tuple[tuple[Quality, float], ...]:
    """The three qualities a drink is set among its family by."""
    return (
        ("strength", analysis.abv_percent),
        ("sugar", analysis.sugar_g_per_l),
        ("acid", analysis.acid_g_per_l),
    )


def caution_in_words(caution: Caution) -> str:
    """A caution with the authority behind it."""
    return f"{caution.text} ({caution.authority}; {caution.basis})"


def _facts(analysis: Analysis, tree: FamilyTree) -> Iterator[Fact]:
    sigma = analysis.sigma
    volume = f"{analysis.served_volume_ml:.0f} ± {sigma.served_volume_ml:.0f} ml"
    yield Fact("In the glass", volume, _dilution(analysis))
    if analysis.ethanol_g:
        yield Fact("Strength", f"{analysis.abv_percent:.1f} ± {sigma.abv_percent:.1f} % vol")
        yield Fact("Alcohol", f"{analysis.ethanol_g:.0f} g, {_drinks(analysis)}", _one(analysis))
    else:
        yield Fact("Strength", "No alcohol")
    yield Fact("Sugar", f"{analysis.sugar_g_per_l:.0f} ± {sigma.sugar_g_per_l:.0f} g/l")
    yield Fact("Acid", f"{analysis.acid_g_per_l:.1f} ± {sigma.acid_g_per_l:.1f} g/l")
    if analysis.sugar_to_acid is not None:
        yield Fact("Sugar to acid", f"{analysis.sugar_to_acid:.1f} to 1")
    yield Fact("Energy", f"{analysis.kcal:.0f} kcal", "By the factors of Regulation (EU) 1169/2011")
    yield Fact("Cost", _cost(analysis, tree))
    if analysis.fit is not None:
        yield Fact("Glass", analysis.fit.why or "It fits, up to the wash line")
    if analysis.frozen is not None:
        yield Fact("In a freezer", *_freezer(analysis.frozen))
    if analysis.allergens:
        words = spoken_list([each.word for each in analysis.allergens], "and")
        yield Fact(
            "Allergens", f"{words[:1].upper()}{words[1:]}", "What is usual; the label comes first"
        )


def _dilution(analysis: Analysis) -> str:
    start = f"{analysis.start_volume_ml:.0f} ml poured"
    if not analysis.dilution.share:
        return f"{start}, no ice melted in"
    share, sigma = 100.0 * analysis.dilution.share, 100.0 * analysis.dilution.sigma
    return f"{start}; ice adds {share:.0f} ± {sigma:.0f} %"


def _drinks(analysis: Analysis) -> str:
    called = standard_drink(analysis.country).called
    return f"{analysis.standard_drinks:.1f} {called}s"


def _one(analysis: Analysis) -> str:
    one = standard_drink(analysis.country)
    return f"{analysis.country}: {one.grams:g} g of alcohol each"


def _cost(analysis: Analysis, tree: FamilyTree) -> str:
    cost = analysis.cost
    if cost.amount is not None:
        return f"{cost.amount:.2f} {cost.currency}"
    known = f"{cost.priced:.2f} {cost.currency} and " if cost.priced else ""
    names = spoken_list([tree.in_sentence(key) for key in cost.unpriced], "and")
    said = f"{known}{names} without a known price"
    return said[:1].upper() + said[1:]


def _freezer(frozen: Frozen) -> tuple[str, str]:
    said = _IN_FREEZER[frozen.in_freezer]
    note = f"Ice forms at {frozen.point_c:.0f} °C; a freezer has {FREEZER_C:.0f} °C"
    return f"{said[:1].upper()}{said[1:]}", note.replace("-", "−")
