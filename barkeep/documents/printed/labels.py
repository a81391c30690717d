"""What the labels and the prep list of house-made things say."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

from barkeep.documents.printed.cards import contains
from barkeep.documents.printed.dates import day_on_paper
from barkeep.domain.amounts.measures import show_quantity
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.bottle import Bottle
from barkeep.domain.bottles.going_off import End
from barkeep.domain.ingredients.relations import MadeFrom
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import counted
from barkeep.errors import spoken_list
from barkeep.translation import tr, tr_noop

KEEP_CLEAN = tr_noop(
    "Work clean, chill at once and write the date on it. When in doubt, throw it out."
)


@dataclass(frozen=True, slots=True)
class LabelContent:
    """One label; what is not known is empty, and left to be written by hand."""

    name: str
    made: str = ""
    use_by: str = ""
    volume: str = ""
    strength: str = ""
    allergens: str = ""


@dataclass(frozen=True, slots=True)
class PrepRow:
    """One house-made thing: what is left, when it was made and must be used, what is to be done.

    `recipe` is how it is made, empty where barkeep knows no recipe.
    """

    name: str
    left: str
    made: str
    use_by: str
    to_do: str
    recipe: str = ""


@dataclass(frozen=True, slots=True)
class PrepContent:
    """A prep list as of a day."""

    title: str
    rows: tuple[PrepRow, ...]
    small_print: tuple[str, ...] = ()


def label_content(bottle: Bottle, allergens: Sequence[str]) -> LabelContent:
    """The label of one bottle; `volume` is what is in it."""
    product = bottle.product
    strength = product.abv_percent
    return LabelContent(
        name=product.name,
        made=_day(bottle.made),
        use_by=_day(bottle.use_by),
        volume=show_quantity(bottle.level.amount or product.size, product.unit),
        strength=f"{strength:.3g} % vol" if strength else "",
        allergens=contains(allergens),
    )


def prep_content(title: str, bottles: Sequence[Bottle], snapshot: Snapshot) -> PrepContent:
    """What is to be done about these bottles on the day of a snapshot, those due first."""

    def due(bottle: Bottle) -> tuple[date, str]:
        end = snapshot.ends.get(bottle.id)
        return end.last if end else date.max, bottle.product.name.casefold()

    rows = tuple(_row(each, snapshot) for each in sorted(bottles, key=due))
    return PrepContent(title, rows, (tr(KEEP_CLEAN),) if rows else ())


def _row(bottle: Bottle, snapshot: Snapshot) -> PrepRow:
    product, knowledge = bottle.product, snapshot.knowledge
    end = snapshot.ends.get(bottle.id)
    recipe = next((each for each in knowledge.made_from if each.made == product.ingredient), None)
    return PrepRow(
        name=product.name,
        left=show_quantity(bottle.level.amount, product.unit),
        made=_day(bottle.made),
        use_by=_day(bottle.use_by),
        to_do=_to_do(bottle, end, snapshot.on),
        recipe=_recipe(recipe, knowledge.tree) if recipe else "",
    )


def _to_do(bottle: Bottle, end: End | None, on: date) -> str:
    """By the last day that every answer goes by; what has no date of its own is looked at."""
    if end is not None and not end.is_counted(on):
        return tr("Past its use-by: discard, make anew")
    if bottle.level.amount <= 0.0:
        return tr("Empty: make anew")
    if end is not None and end.is_over(on):
        return tr("Past its best: taste it first")
    if bottle.use_by is None or end is None:
        return tr("No use-by date: check it")
    days = (end.last - on).days
    if end.is_due(on):
        return tr("Use today") if days == 0 else tr("Use within {days}", days=counted(days, "day"))
    return tr("Good")


def _recipe(recipe: MadeFrom, tree: FamilyTree) -> str:
    inputs = [
        f"{show_quantity(each.amount, tree[each.ingredient].unit)} "
        f"{tree.in_sentence(each.ingredient)}"
        for each in recipe.inputs
    ]
    yields = show_quantity(recipe.yields, tree[recipe.made].unit)
    return tr(
        "About {much} from {inputs}. {how}",
        much=yields,
        inputs=spoken_list(inputs, "and"),
        how=recipe.how,
    )


def _day(day: date | None) -> str:
    return "" if day is None else day_on_paper(day)
