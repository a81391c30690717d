"""The reasons of an answer, in one sentence each."""

from __future__ import annotations

from collections.abc import Sequence
from math import floor

from barkeep.domain.amounts.amount import show_number, show_range
from barkeep.domain.amounts.measures import dashes_from
from barkeep.domain.amounts.units import BarUnits, Unit
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.bottle import Bottle
from barkeep.domain.ingredients.derivations import (
    Derivation,
    KindOf,
    Make,
    Replace,
    Step,
)
from barkeep.domain.ingredients.tasks import task_of
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import as_sentence, capitalised, folded
from barkeep.domain.pouring.programme import Ended
from barkeep.domain.pouring.supply import Supply, strength_of
from barkeep.domain.specs.called import called_in_sentence, kinds_named_by
from barkeep.domain.specs.shown_lines import names_in_sentence
from barkeep.domain.specs.spec import Line
from barkeep.errors import spoken_list
from barkeep.translation import tr


def plain_amount(amount: float, unit: Unit) -> str:
    """An amount as a sentence says it.

    >>> plain_amount(22.5, "ml")
    '22.5 ml'
    """
    number = show_number(amount, fractions=False)
    return number if unit == "each" else f"{number} {unit}"


def amount_of(key: str, amount: float, tree: FamilyTree) -> str:
    """So much of a thing, in its unit: *135 ml of lemon juice*, *3 × lemon*."""
    unit, name = tree[key].unit, tree.in_sentence(key)
    return (
        f"{amount:g} × {name}"
        if unit == "each"
        else tr("{amount} of {ingredient}", amount=plain_amount(amount, unit), ingredient=name)
    )


def step_in_words(step: Step, tree: FamilyTree) -> str:
    """One step of a derivation as a clause."""
    match step:
        case KindOf(wanted, kind):
            return tr(
                "{name} is a kind of {wanted}",
                name=tree.name(kind),
                wanted=tree.in_sentence(wanted),
            )
        case Replace(entry):
            wanted, offered = tree.in_sentence(entry.wanted), tree.name(entry.offered)
            return tr(
                "{offered} stands in for {wanted}: {why}",
                offered=offered,
                wanted=wanted,
                why=tr(entry.why),
            )
        case Make(recipe, parts):
            # An input may be there twice, once for itself and once to stand in for another.
            names = list(dict.fromkeys(tree.in_sentence(part.offered) for part in parts))
            return tr(
                "{name} is made here from {names}",
                name=tree.name(recipe.made),
                names=spoken_list(names, "and"),
            )


def path_in_words(derivation: Derivation, tree: FamilyTree) -> tuple[str, ...]:
    """Every step of a derivation, in order, those inside a recipe after it."""
    words: list[str] = []
    for step in derivation.steps:
        words.append(step_in_words(step, tree))
        if isinstance(step, Make):
            for part in step.parts:
                words += path_in_words(part, tree)
    return tuple(words)


def cut_from(line: Line, derivation: Derivation, tree: FamilyTree) -> str:
    """The key of what a garnish is cut from; empty where it is none, or not cut."""
    if not line.garnish or not derivation.exact or not derivation.made:
        return ""
    recipe = derivation.made[-1].recipe
    return recipe.inputs[0].ingredient if task_of(recipe, tree) == "cut" else ""


def why_met(line: Line, derivation: Derivation, bottle: Bottle | None, tree: FamilyTree) -> str:
    """Why this derivation meets a line; its kind is named as the line names it."""
    if fruit := cut_from(line, derivation, tree):
        return tr("To cut from {fruit}.", fruit=tree.in_sentence(fruit))
    if derivation.steps:
        tree = kinds_named_by([line], tree)
        return as_sentence("; ".join(path_in_words(derivation, tree)))
    if bottle is not None:
        left = plain_amount(bottle.level.amount, bottle.product.unit)
        return tr("{title} has {left} left.", title=bottle.product.title, left=left)
    return tr("{name} counts as always there.", name=tree.name(derivation.offered))


def in_dashes_of_bottle(line: Line, bottle: Bottle | None, ratio: float, units: BarUnits) -> str:
    """How many dashes to pour where the bottle's are not the bar's; empty where that is no matter.

    At least one, and whole ones: a dash cannot be cut.
    """
    if bottle is None or bottle.dash_ml is None or line.unit != "dash" or line.amount is None:
        return ""

    def whole(dashes: float) -> float:
        meant = dashes_from(bottle.dash_ml, dashes * ratio, units.dash_ml)
        return max(1.0, floor(meant + 0.5))

    low, high = whole(line.amount), None if line.amount_high is None else whole(line.amount_high)
    poured = show_range(low, None if high == low else high, "dash")
    written = show_range(line.amount, line.amount_high, "dash")
    if poured == written:
        return ""
    return tr(
        "Pour {poured} from this dasher instead of {written}.",
        poured=poured,
        written=written.rpartition(" ")[0],
    )


def asks_in_words(line: Line, bottle: Bottle | None, tree: FamilyTree) -> str:
    """What a line asks of the bottle that its label does not say; empty where that is nothing.

    A label says it where its name or its maker has the same words.
    """
    strong = _strength_asked(line, bottle, tree)
    if bottle is None or strong:
        return strong
    label = f" {folded(bottle.product.title)} "
    unsaid = [each for each in line.stated if f" {folded(each)} " not in label]
    if not unsaid:
        return ""
    return tr(
        "{called}: asks for {unsaid}; check the bottle, {title}.",
        called=capitalised(called_in_sentence(line, tree)),
        unsaid=spoken_list(unsaid, "and"),
        title=bottle.product.title,
    )


def _strength_asked(line: Line, bottle: Bottle | None, tree: FamilyTree) -> str:
    """The strength that a line asks for and no bottle that is poured has."""
    least = line.min_abv_percent
    if least is None or (bottle is not None and strength_of(bottle.product, tree) >= least):
        return ""
    return tr(
        "{called}: asks for {least:g} % vol or more, and no bottle of it here is as strong.",
        called=capitalised(called_in_sentence(line, tree)),
        least=least,
    )


def why_missing(line: Line, need: float, snapshot: Snapshot, supply: Supply) -> str:
    """Why nothing in the bar meets a line that takes `need` of any one of what it wants."""
    tree, none = snapshot.knowledge.tree, snapshot.knowledge.none_because
    wanted, name = line.wanted, names_in_sentence(line, tree)
    kinds = tree.at_or_below(*wanted)
    ordinary = {each for key in wanted for each in tree.poured_as(key)}
    special = [each for each in kinds if each not in ordinary and supply.total(each) >= need]
    there = sum(supply.total(each) for each in (ordinary if special else kinds))
    unit = tree[wanted[0]].unit
    past = [bottle for each in kinds for bottle in snapshot.past.get(each, ())]
    weak = _why_too_weak(line, need, kinds, supply=supply, tree=tree)
    if weak:
        return weak
    if there > 0.0:
        left, needed = plain_amount(there, unit), plain_amount(need, unit)
        return tr(
            "Only {left} of {name} is left and {needed} is needed.",
            left=left,
            name=name,
            needed=needed,
        )
    if special:
        named = spoken_list([tree.in_sentence(each) for each in special], "and")
        return tr(
            "No ordinary {name} is there: {named} is poured only when asked for, "
            "and is not close enough to stand in."
            if len(special) == 1
            else "No ordinary {name} is there: {named} are poured only when asked for, "
            "and are not close enough to stand in.",
            name=name,
            named=named,
        )
    if past:
        return snapshot.off_in_words(past[0])
    alone = [none[key] for key in wanted if key in none]
    if len(alone) == len(wanted):
        return as_sentence(
            tr(
                "no {name}, and nothing stands in for it: {alone}",
                name=name,
                alone="; ".join(map(tr, alone)),
            )
        )
    return tr("No {name} in the bar, and nothing close enough to stand in for it.", name=name)


def _why_too_weak(
    line: Line, need: float, kinds: Sequence[str], *, supply: Supply, tree: FamilyTree
) -> str:
    """That what there is of it is weaker than the line asks; empty where that is not what lacks."""
    least, unit = line.min_abv_percent, tree[line.wanted[0]].unit
    stocks = [stock for kind in kinds for stock in supply.stocks.get(kind, ())]
    if least is None or not stocks:
        return ""
    strong = sum(stock.amount for stock in stocks if stock.abv_percent >= least)
    name = names_in_sentence(line, tree)
    if strong > 0.0:
        left, needed = plain_amount(strong, unit), plain_amount(need, unit)
        return tr(
            "Only {left} of {name} of {least:g} % vol or more is left and {needed} is needed.",
            left=left,
            name=name,
            least=least,
            needed=needed,
        )
    best = max(stocks, key=lambda stock: stock.abv_percent)
    title = best.bottle.product.title if best.bottle else tree.name(best.ingredient)
    return tr(
        "No {name} here has {least:g} % vol or more: the strongest, {title}, has {abv:g} %.",
        name=name,
        least=least,
        title=title,
        abv=best.abv_percent,
    )


def volume_in_words(volume_ml: float) -> str:
    """A drink's volume, in litres from 1000 ml up.

    >>> volume_in_words(172.4), volume_in_words(13300.0)
    ('172 ml', '13.3 l')
    """
    # 999.7 ml would read as 1000 ml.
    return f"{volume_ml / 1000.0:.1f} l" if round(volume_ml) >= 1000 else f"{volume_ml:.0f} ml"


def as_written(volume_ml: float) -> str:
    """That a spec makes more than a serve: *As written this makes about 13.3 l; …*."""
    volume = volume_in_words(volume_ml)
    return tr("As written this makes about {volume}; figures are for the whole", volume=volume)


def no_amount(keys: Sequence[str], tree: FamilyTree) -> str:
    """*London dry gin has no amount*, *gin and rum have no amount*."""
    names = spoken_list([tree.in_sentence(key) for key in keys], "and")
    return tr("{names} has no amount" if len(keys) == 1 else "{names} have no amount", names=names)


def unproved_because(ended: Ended) -> str:
    """Why it is not proved that nothing is better."""
    return tr("Its time was over") if ended == "time" else tr("It was stopped")
