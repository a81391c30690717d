"""Edits that began from what is no longer so: refused, with both versions side by side in words.

Each kind of record says itself in words, field by field. Whoever edits one gives back the value
it began from; where the bar says something else by now, nothing is written.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass, fields
from datetime import date
from typing import TypeVar

from barkeep.domain.bar.shoots import Shoot, ShootDrink
from barkeep.domain.bar.snapshot import Settings
from barkeep.domain.bottles.bottle import BottleFacts, Label, Tare
from barkeep.domain.days import day_said, moment_said
from barkeep.domain.ingredients.relations import StandIn
from barkeep.domain.ingredients.tree import FamilyTree, Ingredient
from barkeep.domain.phrases import capitalised
from barkeep.domain.specs.spec import Spec
from barkeep.domain.specs.trials import Trial, show_score
from barkeep.errors import UserError
from barkeep.translation import tr, tr_about, tr_noop

T = TypeVar("T")
Words = Mapping[str, str]
"""A record in words, by the names of its fields; an empty text says nothing of it."""


@dataclass(frozen=True, slots=True)
class Difference:
    """A field in which two versions of a record differ, each in words."""

    field: str
    mine: str
    theirs: str


class ChangedSince(UserError):
    """A change of `what`, which somebody else has changed to `theirs` since it was begun."""

    what: str
    theirs: object
    differences: tuple[Difference, ...]

    def __str__(self) -> str:
        told = "; ".join(
            tr(
                "{field}: yours “{mine}”, theirs “{theirs}”",
                field=each.field,
                mine=_on_one_line(each.mine),
                theirs=_on_one_line(each.theirs),
            )
            for each in self.differences
        )
        return tr(
            "Another window or a command has changed {what} since you began, so nothing was "
            "written. {told}.",
            what=self.what,
            told=capitalised(told),
        )


class RemovedSince(UserError):
    """A change of `what`, which somebody else has taken away since it was begun."""

    what: str
    says = (
        "Another window or a command has removed {what} since you began, so nothing was written. "
        "Undo may bring it back."
    )


def refuse_stale(
    what: str, *, seen: T | None, now: T, mine: T, words: Callable[[T], Words]
) -> None:
    """Raise `ChangedSince` where a record does not say `now` what it did when it was `seen`.

    Nothing is refused where it says just what is to be written, nor where nothing was seen.
    """
    if seen is None or words(seen) == words(now):
        return
    differences = differences_of(words(mine), words(now))
    if differences:
        raise ChangedSince(what, now, differences)


def spec_changed_since(mine: Spec, theirs: Spec) -> ChangedSince:
    """What is said of a spec that was begun from an older version than theirs."""
    differences = differences_of(spec_in_words(mine), spec_in_words(theirs))
    return ChangedSince(tr("the spec {name}", name=theirs.name), theirs, differences)


def differences_of(mine: Words, theirs: Words) -> tuple[Difference, ...]:
    """The fields in which two versions differ, in the order of `mine`."""
    names = dict.fromkeys((*mine, *theirs))
    return tuple(
        Difference(name, mine.get(name, ""), theirs.get(name, ""))
        for name in names
        if mine.get(name, "") != theirs.get(name, "")
    )


def spec_in_words(spec: Spec) -> Words:
    """Everything that is written of a spec."""
    return {
        tr("name"): spec.name,
        tr("lines"): "\n".join(each.text for each in spec.in_order),
        tr("method"): spec.method,
        tr("technique"): tr(spec.technique),
        tr("glass"): spec.glass,
        tr("ice"): spec.ice,
        tr("serves"): f"{spec.serves!r}",
        tr("notes"): spec.notes,
        tr("riff of"): spec.riff_of or "",
        tr("tags"): ", ".join(spec.tags),
        tr("credit"): spec.credit,
        tr("source"): spec.source,
    }


def shoot_in_words(shoot: Shoot, tree: FamilyTree) -> Words:
    """Everything that is written of a shoot."""
    return {
        tr("theme"): shoot.theme,
        tr("day"): day_said(shoot.on),
        tr_about("a shoot, at what time", "starts"): f"{shoot.starts:%H:%M}"
        if shoot.starts
        else "",
        tr("state"): tr(shoot.state),
        **drinks_in_words(shoot, tree),
        tr("notes"): shoot.notes,
        tr("ticked"): ", ".join(sorted(shoot.ticked)),
        tr_about("of a shoot", "log"): _log_in_words(shoot),
    }


def _log_in_words(shoot: Shoot) -> str:
    return tr("written on {moment}", moment=moment_said(shoot.log.at)) if shoot.log else ""


def drinks_in_words(shoot: Shoot, tree: FamilyTree) -> Words:
    """The drinks of a shoot in running order, with what is poured for their lines."""
    return {tr("drinks"): "\n".join(_drink_in_words(each, tree) for each in shoot.drinks)}


def label_in_words(label: Label, tree: FamilyTree) -> Words:
    """Everything that a label says."""
    said = {each.name: _in_words(getattr(label, each.name)) for each in fields(Label)}
    said["ingredient"] = _name(label.ingredient, tree)
    return {tr(_LABEL_FIELDS[name]): words for name, words in said.items()}


_LABEL_FIELDS = {
    "name": tr_noop("name"),
    "maker": tr_noop("maker"),
    "ingredient": tr_noop("ingredient"),
    "size": tr_noop("size"),
    "unit": tr_noop("unit"),
    "price": tr_noop("price"),
    "barcode": tr_noop("barcode"),
    "shape": tr_noop("shape"),
    "abv_percent": tr_noop("strength in % vol"),
    "sugar_g_per_l": tr_noop("sugar in g per litre"),
    "house_made": tr_noop("made here"),
    "density_g_per_ml": tr_noop("density in g per ml"),
    "acid_g_per_l": tr_noop("acid in g per litre"),
}


def dates_in_words(facts: BottleFacts) -> Words:
    """When a bottle was made, and until when it is good."""
    return {
        tr_about("a date of a bottle", "made"): _in_words(facts.made),
        tr_about("a date of a bottle", "use by"): _in_words(facts.use_by),
    }


def weights_in_words(facts: BottleFacts) -> Words:
    """What a bottle weighs without and with its contents."""
    return {
        tr_about("a weight of a bottle", "empty"): _tare_in_words(facts.tare),
        tr_about("a weight of a bottle", "full"): _in_words(facts.full_g),
    }


def dasher_in_words(facts: BottleFacts) -> Words:
    """What one dash from a bottle comes to, in ml."""
    return {tr("a dash"): _in_words(facts.dash_ml)}


def trial_in_words(trial: Trial) -> Words:
    """Everything that is written of a trial."""
    scores = (f"{each.taster} {each.scale} {show_score(each.value)}" for each in trial.scores)
    return {
        tr("day"): day_said(trial.on),
        tr("scores"): ", ".join(each.strip() for each in scores),
        tr("changed"): trial.changed,
        tr("notes"): trial.notes,
        tr("settled on"): _in_words(trial.won),
    }


def par_in_words(settings: Settings, key: str, tree: FamilyTree) -> Words:
    """The least to have of one ingredient."""
    pars = (each.amount for each in settings.pars if each.ingredient == key)
    return {tr("par"): "".join(f"{each:g} {tr(tree[key].unit)}" for each in pars)}


def house_pour_in_words(settings: Settings, kind: str, titles: Mapping[int, str]) -> Words:
    """What is poured for one kind."""
    pours = (each.product for each in settings.house if each.kind == kind)
    return {
        tr("house pour"): "".join(
            titles.get(each, tr("product {number}", number=each)) for each in pours
        )
    }


def stand_ins_in_words(entries: Iterable[StandIn], tree: FamilyTree) -> Words:
    """Everything that is said of own stand-ins, a field each."""
    return {
        tr(
            "{offered} for {wanted}",
            offered=_name(each.offered, tree),
            wanted=_name(each.wanted, tree),
        ): ", ".join(
            (
                f"{each.closeness:g}",
                tr("{ratio:g} times as much", ratio=each.ratio),
                each.why,
                *each.scope,
            )
        )
        for each in entries
    }


def ingredient_in_words(
    ingredient: Ingredient | None, stand_ins: Iterable[StandIn], tree: FamilyTree
) -> Words:
    """Everything that is said of an own ingredient, and of what stands in for it."""
    said = {}
    if ingredient is not None:
        said = {each.name: getattr(ingredient, each.name) for each in fields(Ingredient)}
        said["parents"] = [_name(each, tree) for each in ingredient.parents]
        said["regional"] = [
            f"{region}: {name}" for region, names in ingredient.regional.items() for name in names
        ]
    words = {tr(_INGREDIENT_FIELDS[name]): _in_words(each) for name, each in said.items()}
    return {**words, **stand_ins_in_words(stand_ins, tree)}


_INGREDIENT_FIELDS = {
    **_LABEL_FIELDS,
    "key": tr_noop("key"),
    "parents": tr_noop("a kind of"),
    "aliases": tr_noop("other names"),
    "regional": tr_noop("regional"),
    "printed": tr_noop("printed"),
    "family": tr_noop("family"),
    "proper": tr_noop("proper"),
    "unit": tr_noop("kept in"),
    "shelf_life_days": tr_noop("keeps for, in days"),
    "allergens": tr_noop("allergens"),
    "always_there": tr_noop("always_there"),
    "typical_size": tr_noop("usual size"),
    "basis": tr_noop("basis"),
}


def _drink_in_words(drink: ShootDrink, tree: FamilyTree) -> str:
    serves = drink.serves
    counts = f"{serves.tests}+{serves.camera}+{serves.tasting}"
    chosen = (
        tr("line {line} by {name}", line=each.line + 1, name=_name(each.ingredient, tree))
        + (f" #{each.bottle_id}" if each.bottle_id else "")
        for each in drink.chosen
    )
    return ", ".join((f"{drink.name} {counts}", *chosen))


def _name(key: str, tree: FamilyTree) -> str:
    return tree.name(key) if key in tree else key


def _in_words(value: object) -> str:
    if isinstance(value, bool):
        return tr("yes") if value else tr("no")
    if isinstance(value, date):
        return day_said(value)
    if isinstance(value, list | tuple):
        return ", ".join(map(str, value))
    return "" if value is None else f"{value}"


def _tare_in_words(tare: Tare | None) -> str:
    return "" if tare is None else f"{tare.weight_g:g} g ± {2 * tare.sigma_g:g}"


def _on_one_line(words: str) -> str:
    return "; ".join(words.splitlines())
