"""What is uncertain about an analysis, and by how much; each a sentence."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass
from functools import cached_property

from barkeep.domain.amounts.amount import show_range
from barkeep.domain.drink.contents import TOP_UP_SIGMA_ML, Content, amount_poured, tops_up
from barkeep.domain.drink.costs import Cost
from barkeep.domain.drink.ice import is_without_ice, meets_ice
from barkeep.domain.drink.mixture import Mixture
from barkeep.domain.ingredients.composition import shipped_portions
from barkeep.domain.ingredients.figures import (
    DISPUTED_ACID,
    DISPUTED_ACID_SHARE,
    USUAL_SHARE,
    USUAL_STRENGTH_SHARE,
    Liquid,
    liquid_of,
)
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import as_sentence, price_in_words
from barkeep.domain.pouring.supply import Stock, Supply
from barkeep.domain.pouring.words import as_written, no_amount, plain_amount
from barkeep.domain.specs.called import kinds_named_by
from barkeep.domain.specs.glasses import ice_named
from barkeep.domain.specs.spec import Spec
from barkeep.errors import spoken_list
from barkeep.translation import tr, tr_noop

CONTRACTION_ABV = 0.2
"""How far strength may be off because volumes are simply added up, % vol (OIML R 22, computed)."""


NOTABLE_ABV, NOTABLE_SUGAR_G_PER_L, NOTABLE_ACID_G_PER_L = 1.0, 10.0, 1.0
"""Bottles that differ by less than this would make the same drink (a choice)."""


@dataclass(frozen=True)
class _Told:
    """What the sentences are about."""

    spec: Spec
    mixture: Mixture
    cost: Cost
    supply: Supply
    batch: bool

    @cached_property
    def tree(self) -> FamilyTree:
        """The tree with the names that the spec has for its ingredients."""
        return kinds_named_by(self.spec.lines, self.mixture.tree)

    @property
    def contents(self) -> Sequence[Content]:
        return self.mixture.contents

    @property
    def has_alcohol(self) -> bool:
        return any(each.ethanol_ml for each in self.contents)


def doubts(
    spec: Spec, mixture: Mixture, cost: Cost, supply: Supply, *, batch: bool = False
) -> tuple[str, ...]:
    """Every doubt, the largest kinds first; `supply` is what else might be poured."""
    told = _Told(spec=spec, mixture=mixture, cost=cost, supply=supply, batch=batch)
    makers: tuple[Callable[[_Told], Iterable[str]], ...] = (
        _not_understood,
        _whole,
        _unknown_strength,
        _dilution,
        _heat,
        _amounts,
        _unknown,
        _families,
        _others,
        _usual,
        _citrus,
        _pressed,
        _texture,
        _not_counted,
        _price,
        _contraction,
    )
    return tuple(dict.fromkeys(said for make in makers for said in make(told)))


def _not_understood(told: _Told) -> Iterator[str]:
    for each in told.spec.unsettled:
        yield tr(
            "Not counted, for it is not understood: {named}. {question}",
            named=each.named,
            question=each.question,
        )


def _whole(told: _Told) -> Iterator[str]:
    if told.batch:
        yield f"{as_written(told.mixture.served_ml)}."


def _unknown_strength(told: _Told) -> Iterator[str]:
    keys = told.mixture.unknown_alcohol
    if keys:
        yield tr("Strength not known: {why}.", why=no_amount(keys, told.tree))


def _without_dilution(told: _Told) -> Iterator[str]:
    """Why no ice melts into it, where that is not plain: nothing is on it, or all comes after."""
    technique = told.mixture.technique
    if technique == "hot" or not told.mixture.start_ml:
        return
    if meets_ice(told.spec, technique):
        yield tr("All of it is added over the ice; what that melts is not counted.")
    elif is_without_ice(told.spec.method):
        yield tr("It is made without ice, so no dilution is counted.")
    else:
        yield tr("No ice is named, so no dilution is counted.")


def _dilution(told: _Told) -> Iterator[str]:
    if not told.mixture.iced_ml:
        yield from _without_dilution(told)
        return
    share, sigma = 100.0 * told.mixture.iced.share, 100.0 * told.mixture.iced.sigma
    yield (
        tr(
            "Ice adds {share:.0f} % ± {sigma:.0f} % to what is mixed on it ({basis}); "
            "your ice and hands are others.",
            share=share,
            sigma=sigma,
            basis=tr(told.mixture.iced.basis),
        )
    )
    if told.mixture.iced.note:
        yield as_sentence(told.mixture.iced.note)
    hot = told.mixture.hot_on_ice
    if hot:
        names = spoken_list([told.tree.in_sentence(key) for key in hot], "and")
        yield as_sentence(
            tr("hot {names} melts more ice than the formula knows of; twice the doubt", names=names)
        )
    ice = ice_named(told.spec.ice)
    if ice is not None and ice.share and told.mixture.technique != "blended":
        yield tr("Over ice it goes on thinning; the figures are for the first sip.")


def _heat(told: _Told) -> Iterator[str]:
    if told.mixture.alcohol_kept < 1.0 and told.has_alcohol:
        yield (
            tr(
                "Heat drives off some alcohol: about {share:.0f} % stays in "
                "(USDA retention factors, 2007). The figures count all of it.",
                share=100 * told.mixture.alcohol_kept,
            )
        )


def _amounts(told: _Told) -> Iterator[str]:
    for content in told.contents:
        line, tree = content.line, told.tree
        name = tree.name(line.ingredient)
        if line.quantity is None and tops_up(line, tree):
            amount = plain_amount(amount_poured(line, tree), "ml")
            yield tr(
                "{name} has no amount: taken as {amount} ± {sigma_ml:.0f} ml.",
                name=name,
                amount=amount,
                sigma_ml=TOP_UP_SIGMA_ML,
            )
        elif line.quantity is not None and line.amount and line.amount_high and line.unit:
            said = show_range(line.amount, line.amount_high, line.unit)
            yield tr("{name}: {said} is counted as its middle.", name=name, said=said)
        if line.unit == "rinse":
            yield tr(
                "Of the rinse of {ingredient} about 1 ml stays, ± 1 ml.",
                ingredient=tree.in_sentence(line.ingredient),
            )


def _unknown(told: _Told) -> Iterator[str]:
    for content in told.contents:
        if content.volume_ml and not content.liquid.known:
            name = told.tree.name(content.pour.ingredient)
            yield tr(
                "{name}: neither strength nor sugar is known; it is counted as water.", name=name
            )


def _families(told: _Told) -> Iterator[str]:
    for content in told.contents:
        abv, sugar = content.liquid.abv, content.liquid.sugar
        if content.volume_ml and abv.source == "kinds":
            name = told.tree.name(content.pour.ingredient)
            yield (
                tr(
                    "{name} may be many things: taken as {abv} % vol and {sugar} g/l sugar, "
                    "the middle of its kinds ({abv_low} to {abv_high} % vol, "
                    "{sugar_low} to {sugar_high} g/l).",
                    name=name,
                    abv=_number(abv.value),
                    sugar=_number(sugar.value),
                    abv_low=_number(abv.low),
                    abv_high=_number(abv.high),
                    sugar_low=_number(sugar.low),
                    sugar_high=_number(sugar.high),
                )
            )


def _others(told: _Told) -> Iterator[str]:
    """What is poured of a wider kind, where another bottle of it would come out otherwise."""
    for content in told.contents:
        pour, line, tree = content.pour, content.line, told.tree
        if not content.volume_ml or pour.bottle is None or pour.ingredient == line.ingredient:
            continue
        if any(_differs(content.liquid, stock, tree) for stock in _fitting(content, told)):
            abv = content.liquid.abv.value
            strength = f" ({_number(abv)} % vol)" if abv else ""
            yield (
                tr(
                    "{name} is poured from {title}{strength}; another would differ.",
                    name=tree.name(line.ingredient),
                    title=pour.bottle.product.title,
                    strength=strength,
                )
            )


def _fitting(content: Content, told: _Told) -> Iterator[Stock]:
    """All other bottles of just what a line asks for; none where a stand-in is poured."""
    line, tree = content.line, told.tree
    kinds = {
        key
        for each in line.wanted
        for key in tree.at_or_below(each)
        if not tree.only_when_asked(key, each)
    }
    if content.pour.ingredient not in kinds:
        return
    for key in sorted(kinds):
        for stock in told.supply.stocks.get(key, ()):
            strong = stock.abv_percent >= (line.min_abv_percent or 0.0)
            if strong and stock.bottle is not None and stock.bottle != content.pour.bottle:
                yield stock


def _differs(poured: Liquid, stock: Stock, tree: FamilyTree) -> bool:
    product = None if stock.bottle is None else stock.bottle.product
    other = liquid_of(stock.ingredient, tree, product)
    return (
        abs(other.abv.value - poured.abv.value) >= NOTABLE_ABV
        or abs(other.sugar.value - poured.sugar.value) >= NOTABLE_SUGAR_G_PER_L
        or abs(other.acid.value - poured.acid.value) >= NOTABLE_ACID_G_PER_L
    )


def _usual(told: _Told) -> Iterator[str]:
    """One sentence for all that no label vouches for."""
    said = []
    for content in told.contents:
        figures = (
            (content.liquid.abv, "% vol"),
            (content.liquid.sugar, tr("g/l sugar")),
            (content.liquid.acid, tr("g/l acid")),
        )
        usual = [
            f"{_number(figure.value)} {unit}"
            for figure, unit in figures
            if figure.source == "usual" and figure.sigma
        ]
        if content.volume_ml and usual:
            name = told.tree.in_sentence(content.pour.ingredient)
            said.append(f"{name} {spoken_list(usual, 'and')}")
    if said:
        yield (
            tr(
                "Usual figures, not a label's: {figures}. Each strength is good to "
                "± {strength:.0f} % of itself, sugar and acid to ± {others:.0f} %.",
                figures="; ".join(dict.fromkeys(said)),
                strength=100 * USUAL_STRENGTH_SHARE,
                others=100 * USUAL_SHARE,
            )
        )


def _citrus(told: _Told) -> Iterator[str]:
    tree = told.tree
    for content in told.contents:
        key = content.pour.ingredient
        if content.volume_ml and any(tree.is_a(key, each) for each in DISPUTED_ACID):
            yield (
                tr(
                    "Sources disagree on the acid of {ingredient}: ± {share:.0f} %.",
                    ingredient=tree.in_sentence(key),
                    share=100 * DISPUTED_ACID_SHARE,
                )
            )


def _pressed(told: _Told) -> Iterator[str]:
    """What a piece of cut fruit is taken to give."""
    tree, known = told.tree, shipped_portions().pressed_ml
    for content in told.contents:
        key = content.pour.ingredient
        if content.volume_ml and key in known:
            yield (
                tr(
                    "One {fruit} is taken to give {juice_ml:g} ml of juice; "
                    "how hard it is pressed tells (common practice).",
                    fruit=tree.in_sentence(key),
                    juice_ml=known[key],
                )
            )


def _texture(told: _Told) -> Iterator[str]:
    tree = told.tree
    keys = [each.pour.ingredient for each in told.contents if each.volume_ml]
    if any(tree.is_a(key, "egg-product") or key == "aquafaba" for key in keys):
        yield tr("Foam of egg takes room that is not counted in the volume, up to a third more.")
    if any(tree.is_a(key, "dairy-containing") for key in keys):
        yield tr(
            "Fat and protein of cream and milk are usual figures: energy is good to about 10 %."
        )
    if any(tree.is_a(key, "honey") or tree.is_a(key, "honey-syrup") for key in keys):
        yield tr(
            "Honey holds more or less water: its sugar differs by about 5 % (common practice)."
        )


def _not_counted(told: _Told) -> Iterator[str]:
    tree = told.tree
    left = [each for each in told.contents if not each.counted and each.line.quantity is not None]
    if left:
        yield tr(
            "Not counted, for how much it gives is not known: {names}.", names=_names(left, tree)
        )
    unsaid = [
        each
        for each in told.contents
        if not each.counted and each.line.quantity is None and not tops_up(each.line, tree)
    ]
    if unsaid:
        yield tr("Not counted, for the line gives no amount: {names}.", names=_names(unsaid, tree))
    optional = [
        tree.in_sentence(line.ingredient)
        for line in told.spec.lines
        if line.optional and not line.garnish and tree[line.ingredient].unit == "ml"
    ]
    if optional:
        yield tr(
            "Not counted, for it is optional: {optional}.", optional=spoken_list(optional, "and")
        )


def _price(told: _Told) -> Iterator[str]:
    cost = told.cost
    if cost.unpriced:
        names = [told.tree.in_sentence(key) for key in cost.unpriced]
        known = price_in_words(cost.priced, cost.currency)
        said = (
            tr_noop("No price is known for {names}, so the cost is not; the rest costs {known}.")
            if cost.priced
            else tr_noop("No price is known for {names}, so the cost is not.")
        )
        yield tr(said, names=spoken_list(names, "and"), known=known)


def _contraction(told: _Told) -> Iterator[str]:
    if told.has_alcohol:
        yield (
            tr(
                "Volumes are added up as they are: contraction would change strength by "
                "less than {share} % vol (OIML R 22).",
                share=CONTRACTION_ABV,
            )
        )


def _number(value: float) -> str:
    return f"{value:.0f}" if value >= 100.0 else f"{value:.3g}"


def _names(contents: Iterable[Content], tree: FamilyTree) -> str:
    names = dict.fromkeys(tree.in_sentence(each.pour.ingredient) for each in contents)
    return spoken_list(list(names), "and")
