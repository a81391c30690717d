"""An analysis as it is read: one fact a row, each with how surely it is known."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from barkeep.domain.cautions.cautions import IN_GENERAL, Caution
from barkeep.domain.drink.analysis import Analysis, Frozen
from barkeep.domain.drink.balance import LEFT_OUT, DrinkStyle, Place, Quality
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.liquids.content import standard_drink
from barkeep.domain.liquids.freezing import FREEZER_C, InFreezer
from barkeep.domain.phrases import capitalised, price_in_words
from barkeep.domain.pouring.minded import Minded
from barkeep.domain.pouring.words import as_written, no_amount, volume_in_words
from barkeep.domain.specs.called import kinds_named_by
from barkeep.errors import spoken_list

INFORMATION = "Figures are information, not advice: health authorities and local rules come first."
LABEL_FIRST = "What is usual; the label comes first"
NO_STRENGTH = "Its strength is not known, so it is not set among drinks of its kind."
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
    """The figures of a drink, the most wanted first; its ingredients as its spec names them."""
    return tuple(_facts(analysis, kinds_named_by(analysis.spec.lines, tree)))


def in_brief(analysis: Analysis, tree: FamilyTree) -> str:
    """Volume, strength and standard drinks in a line; of a batch, that they are for the whole."""
    tree = kinds_named_by(analysis.spec.lines, tree)
    volume = volume_in_words(analysis.served_volume_ml)
    if analysis.is_batch:
        volume = as_written(analysis.served_volume_ml)
    if analysis.unknown_alcohol:
        return f"{volume}, strength not known: {no_amount(analysis.unknown_alcohol, tree)}"
    if analysis.abv_percent is None or not analysis.ethanol_g:
        return f"{volume}, {_without(analysis, tree) or 'without alcohol'}"
    joined = "," if analysis.is_batch else " at"
    return f"{volume}{joined} {analysis.abv_percent:.0f} % vol, {_drinks(analysis)}"


def place_in_words(analysis: Analysis) -> str:
    """Where the drink lies among its family: weaker, sweeter, as sour as usual."""
    style = analysis.style
    if style is None:
        return NO_STRENGTH if analysis.unknown_alcohol else NO_STYLE
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


def about_ranges(style: DrinkStyle) -> str:
    """Whose the usual ranges of a family are, their middle, and how far to trust them."""
    trimmed = style.classics >= LEFT_OUT
    most = ", the outermost tenth left out at either end" if trimmed else ""
    strength, sugar, acid = style.middle
    return (
        f"Usual is where the {style.classics} classics of this kind in barkeep’s book lie by "
        f"barkeep’s own figures{most}; their middle is {strength:g} % vol, {sugar:g} g/l sugar "
        f"and {acid:g} g/l acid. A habit, no rule."
    )


def measured(analysis: Analysis) -> tuple[tuple[Quality, float], ...]:
    """The three qualities a drink is set among its family by, as far as they are known."""
    figures: tuple[tuple[Quality, float | None], ...] = (
        ("strength", analysis.abv_percent),
        ("sugar", analysis.sugar_g_per_l),
        ("acid", analysis.acid_g_per_l),
    )
    return tuple((quality, value) for quality, value in figures if value is not None)


def cautions_json(cautions: Iterable[Caution]) -> list[dict[str, str]]:
    """Each caution with its tier: *now*, *allergen* or *general*."""
    return [
        {"key": each.key, "tier": each.tier, "text": each.text, "source": each.source}
        for each in cautions
    ]


def cautions_in_brief(cautions: Iterable[Caution]) -> tuple[str, ...]:
    """Those of a drink itself with their source, then all the general ones in one sentence."""
    cautions = tuple(cautions)
    own = (caution_in_words(each) for each in cautions if each.tier != "general")
    return (*own, *([IN_GENERAL] if any(each.general for each in cautions) else []))


def caution_in_words(caution: Caution) -> str:
    """A caution with the source behind it, where there is one."""
    return f"{caution.text} {caution.source}".rstrip()


def _facts(analysis: Analysis, tree: FamilyTree) -> Iterator[Fact]:
    sigma = analysis.sigma
    yield Fact(
        "In all" if analysis.is_batch else "In the glass", _volume(analysis), _note(analysis)
    )
    yield from _alcohol(analysis, tree)
    yield Fact("Sugar", _with_doubt(analysis.sugar_g_per_l, sigma.sugar_g_per_l, 0, "g/l"))
    yield Fact("Acid", _with_doubt(analysis.acid_g_per_l, sigma.acid_g_per_l, 1, "g/l"))
    if analysis.sugar_to_acid is not None:
        yield Fact("Sugar to acid", f"{analysis.sugar_to_acid:.1f} to 1")
    if analysis.kcal is not None and analysis.kj is not None:
        energy = f"{analysis.kcal:.0f} kcal ({analysis.kj:.0f} kJ)"
        yield Fact("Energy", energy, "By the factors of Regulation (EU) 1169/2011")
    yield Fact("Cost", _cost(analysis, tree))
    if analysis.fit is not None:
        yield Fact("Glass", analysis.fit.why or "It fits, up to the wash line")
    if analysis.frozen is not None:
        yield Fact("In a freezer", *_freezer(analysis.frozen))
    if tags := tags_in_words(analysis.minded):
        yield Fact("Allergens", tags, LABEL_FIRST)


def tags_in_words(minded: Minded) -> str:
    """*Egg · tree nuts · sulphites*; empty where nothing is to be told."""
    return capitalised(" · ".join(minded.allergen_tags))


def _volume(analysis: Analysis) -> str:
    volume_ml, sigma_ml = analysis.served_volume_ml, analysis.sigma.served_volume_ml
    if volume_ml >= 1000.0:
        return _with_doubt(volume_ml / 1000.0, sigma_ml / 1000.0, 1, "l")
    return _with_doubt(volume_ml, sigma_ml, 0, "ml")


def _note(analysis: Analysis) -> str:
    if not analysis.is_batch:
        return _dilution(analysis)
    return f"{as_written(analysis.served_volume_ml)}; {_dilution(analysis)}"


def _alcohol(analysis: Analysis, tree: FamilyTree) -> Iterator[Fact]:
    without = _without(analysis, tree)
    if analysis.unknown_alcohol:
        yield Fact("Strength", f"Not known: {no_amount(analysis.unknown_alcohol, tree)}")
    elif analysis.abv_percent is None or not analysis.ethanol_g:
        yield Fact("Strength", f"No alcohol {without}".rstrip())
    else:
        strength = _with_doubt(analysis.abv_percent, analysis.sigma.abv_percent, 1, "% vol")
        yield Fact("Strength", strength, capitalised(without))
        yield Fact("Alcohol", f"{analysis.ethanol_g:.0f} g, {_drinks(analysis)}", _one(analysis))


def _without(analysis: Analysis, tree: FamilyTree) -> str:
    """*without the optional gin*, empty where nothing alcoholic is optional."""
    names = [tree.in_sentence(key) for key in analysis.optional_alcohol]
    return f"without the optional {spoken_list(names, 'and')}" if names else ""


def _with_doubt(value: float, sigma: float, digits: int, unit: str) -> str:
    """*85 ± 6 g/l*; *None* of what is not in it; no doubt where it is too small to show."""
    least = 10.0**-digits
    if not value:
        return "None"
    if value < least / 2.0:
        return f"Less than {least:g} {unit}"
    doubt = f" ± {sigma:.{digits}f}" if sigma >= least / 2.0 else ""
    return f"{value:.{digits}f}{doubt} {unit}"


def _dilution(analysis: Analysis) -> str:
    start = f"{volume_in_words(analysis.start_volume_ml)} poured"
    if not analysis.dilution.share:
        return f"{start}, no ice melted in"
    share, sigma = 100.0 * analysis.dilution.share, 100.0 * analysis.dilution.sigma
    return f"{start}; ice adds {share:.0f} ± {sigma:.0f} %"


def _drinks(analysis: Analysis) -> str:
    called = standard_drink(analysis.country).called
    return f"{analysis.standard_drinks or 0.0:.1f} {called}s"


def _one(analysis: Analysis) -> str:
    one = standard_drink(analysis.country)
    return f"{analysis.country}: {one.grams:g} g of alcohol each"


def _cost(analysis: Analysis, tree: FamilyTree) -> str:
    cost = analysis.cost
    if cost.amount is not None:
        return price_in_words(cost.amount, cost.currency)
    known = f"{price_in_words(cost.priced, cost.currency)} and " if cost.priced else ""
    names = spoken_list([tree.in_sentence(key) for key in cost.unpriced], "and")
    said = f"{known}{names} without a known price"
    return capitalised(said)


def _freezer(frozen: Frozen) -> tuple[str, str]:
    said = _IN_FREEZER[frozen.in_freezer]
    note = f"Ice forms {frozen.begins}; a freezer has {FREEZER_C:.0f} °C"
    return capitalised(said), note.replace("-", "−")
