"""An analysis as it is read: one fact a row, each with how surely it is known."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

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
from barkeep.translation import tr, tr_about, tr_noop

INFORMATION = tr_noop(
    "Figures are information, not advice: health authorities and local rules come first."
)
LABEL_FIRST = tr_noop("What is usual; the label comes first")
NO_STRENGTH = tr_noop("Its strength is not known, so it is not set among drinks of its kind.")
NO_STYLE = tr_noop("No usual range is known for a drink of this kind.")
_PLACES: dict[Quality, dict[Place, str]] = {
    "strength": {
        "below": tr_noop("weaker"),
        "within": tr_noop("as strong"),
        "above": tr_noop("stronger"),
    },
    "sugar": {
        "below": tr_noop("drier"),
        "within": tr_noop("as sweet"),
        "above": tr_noop("sweeter"),
    },
    "acid": {
        "below": tr_noop("less sour"),
        "within": tr_noop("as sour"),
        "above": tr_noop("sourer"),
    },
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
        return tr(
            "{volume}, strength not known: {why}",
            volume=volume,
            why=no_amount(analysis.unknown_alcohol, tree),
        )
    if analysis.abv_percent is None or not analysis.ethanol_g:
        return f"{volume}, {_without(analysis, tree) or tr('without alcohol')}"
    said = (
        tr_noop("{volume}, {abv:.0f} % vol, {drinks}")
        if analysis.is_batch
        else tr_noop("{volume} at {abv:.0f} % vol, {drinks}")
    )
    return tr(said, volume=volume, abv=analysis.abv_percent, drinks=_drinks(analysis))


def place_in_words(analysis: Analysis) -> str:
    """Where the drink lies among its family: weaker, sweeter, as sour as usual."""
    style = analysis.style
    if style is None:
        return tr(NO_STRENGTH if analysis.unknown_alcohol else NO_STYLE)
    places = [(each, style.range_of(each).place_of(value)) for each, value in measured(analysis)]
    same = [place_word(each, place) for each, place in places if place == "within"]
    off = [place_word(each, place) for each, place in places if place != "within"]
    if same and off:
        said = tr_noop("Among {family} it is {off} than usual, but {same}.")
    else:
        said = (
            tr_noop("Among {family} it is {off} than usual.")
            if off
            else tr_noop("Among {family} it is {same} as usual.")
        )
    return tr(
        said,
        family=tr(style.name),
        off=spoken_list(off, "and"),
        same=spoken_list(same, "and"),
    )


def place_word(quality: Quality, place: Place) -> str:
    """Where one quality lies: *weaker*, *as sweet*, *sourer*."""
    return tr(_PLACES[quality][place])


def about_ranges(style: DrinkStyle) -> str:
    """Whose the usual ranges of a family are, their middle, and how far to trust them."""
    trimmed = style.classics >= LEFT_OUT
    most = tr(", the outermost tenth left out at either end") if trimmed else ""
    strength, sugar, acid = style.middle
    return tr(
        "Usual is where the {classics} classics of this kind in barkeep’s book lie by "
        "barkeep’s own figures{most}; their middle is {strength:g} % vol, {sugar:g} g/l sugar "
        "and {acid:g} g/l acid. A habit, no rule.",
        classics=style.classics,
        most=most,
        strength=strength,
        sugar=sugar,
        acid=acid,
    )


def measured(analysis: Analysis) -> tuple[tuple[Quality, float], ...]:
    """The three qualities a drink is set among its family by, as far as they are known."""
    figures: tuple[tuple[Quality, float | None], ...] = (
        ("strength", analysis.abv_percent),
        ("sugar", analysis.sugar_g_per_l),
        ("acid", analysis.acid_g_per_l),
    )
    return tuple((quality, value) for quality, value in figures if value is not None)


def _facts(analysis: Analysis, tree: FamilyTree) -> Iterator[Fact]:
    sigma = analysis.sigma
    yield Fact(
        tr("In all") if analysis.is_batch else tr("In the glass"),
        _volume(analysis),
        _note(analysis),
    )
    yield from _alcohol(analysis, tree)
    yield Fact(tr("Sugar"), _with_doubt(analysis.sugar_g_per_l, sigma.sugar_g_per_l, 0, "g/l"))
    yield Fact(tr("Acid"), _with_doubt(analysis.acid_g_per_l, sigma.acid_g_per_l, 1, "g/l"))
    if analysis.sugar_to_acid is not None:
        yield Fact(
            tr("Sugar to acid"),
            tr("{sugar:.1f} to 1", sugar=analysis.sugar_to_acid),
        )
    if analysis.kcal is not None and analysis.kj is not None:
        energy = f"{analysis.kcal:.0f} kcal ({analysis.kj:.0f} kJ)"
        yield Fact(tr("Energy"), energy, tr("By the factors of Regulation (EU) 1169/2011"))
    yield Fact(tr("Cost"), _cost(analysis, tree))
    if analysis.fit is not None:
        yield Fact(tr("Glass"), analysis.fit.why or tr("It fits, up to the wash line"))
    if analysis.frozen is not None:
        yield Fact(tr("In a freezer"), *_freezer(analysis.frozen))
    if tags := tags_in_words(analysis.minded):
        yield Fact(tr("Allergens"), tags, tr(LABEL_FIRST))


def tags_in_words(minded: Minded) -> str:
    """*Egg · tree nuts · sulphites*; empty where nothing is to be told."""
    return capitalised(" · ".join(map(tr, minded.allergen_tags)))


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
        yield Fact(
            tr("Strength"),
            tr("Not known: {why}", why=no_amount(analysis.unknown_alcohol, tree)),
        )
    elif analysis.abv_percent is None or not analysis.ethanol_g:
        yield Fact(tr("Strength"), tr("No alcohol {without}", without=without).rstrip())
    else:
        strength = _with_doubt(analysis.abv_percent, analysis.sigma.abv_percent, 1, "% vol")
        yield Fact(tr("Strength"), strength, capitalised(without))
        yield Fact(
            tr("Alcohol"), f"{analysis.ethanol_g:.0f} g, {_drinks(analysis)}", _one(analysis)
        )


def _without(analysis: Analysis, tree: FamilyTree) -> str:
    """*without the optional gin*, empty where nothing alcoholic is optional."""
    names = [tree.in_sentence(key) for key in analysis.optional_alcohol]
    return tr("without the optional {names}", names=spoken_list(names, "and")) if names else ""


def _with_doubt(value: float, sigma: float, digits: int, unit: str) -> str:
    """*85 ± 6 g/l*; *None* of what is not in it; no doubt where it is too small to show."""
    least = 10.0**-digits
    if not value:
        return tr_about("of what is not in a drink", "None")
    if value < least / 2.0:
        return tr("Less than {least:g} {unit}", least=least, unit=unit)
    doubt = f" ± {sigma:.{digits}f}" if sigma >= least / 2.0 else ""
    return f"{value:.{digits}f}{doubt} {unit}"


def _dilution(analysis: Analysis) -> str:
    start = tr("{volume} poured", volume=volume_in_words(analysis.start_volume_ml))
    if not analysis.dilution.share:
        return tr("{start}, no ice melted in", start=start)
    share, sigma = 100.0 * analysis.dilution.share, 100.0 * analysis.dilution.sigma
    return tr(
        "{start}; ice adds {share:.0f} ± {sigma:.0f} %", start=start, share=share, sigma=sigma
    )


def _drinks(analysis: Analysis) -> str:
    called = standard_drink(analysis.country).called
    return f"{analysis.standard_drinks or 0.0:.1f} {tr(f'{called}s')}"


def _one(analysis: Analysis) -> str:
    one = standard_drink(analysis.country)
    return tr(
        "{country}: {grams:g} g of alcohol each", country=tr(analysis.country), grams=one.grams
    )


def _cost(analysis: Analysis, tree: FamilyTree) -> str:
    cost = analysis.cost
    if cost.amount is not None:
        return price_in_words(cost.amount, cost.currency)
    names = spoken_list([tree.in_sentence(key) for key in cost.unpriced], "and")
    if not cost.priced:
        return capitalised(tr("{names} without a known price", names=names))
    priced = price_in_words(cost.priced, cost.currency)
    return tr("{priced} and {names} without a known price", priced=priced, names=names)


def _how_it_comes_out(of_freezer: InFreezer) -> str:
    return {
        "liquid": tr_about("a drink in a freezer", "stays liquid"),
        "borderline": tr_about("a drink in a freezer", "stays liquid only just"),
        "slush": tr_about("a drink in a freezer", "turns to slush"),
        "frozen": tr_about("a drink in a freezer", "freezes"),
    }[of_freezer]


def _freezer(frozen: Frozen) -> tuple[str, str]:
    said = _how_it_comes_out(frozen.in_freezer)
    note = tr(
        "Ice forms {begins}; a freezer has {freezer:.0f} °C",
        begins=frozen.begins,
        freezer=FREEZER_C,
    )
    return capitalised(said), note.replace("-", "−")
