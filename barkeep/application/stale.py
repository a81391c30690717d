"""Edits that began from what is no longer so: refused, with both versions side by side in words.

Each kind of record says itself in words, field by field. Whoever edits one gives back the value
it began from; where the bar says something else by now, nothing is written.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass, fields
from typing import TypeVar

from barkeep.domain.bar.shoots import Shoot, ShootDrink
from barkeep.domain.bar.snapshot import Settings
from barkeep.domain.bottles.bottle import BottleFacts, Label, Tare
from barkeep.domain.ingredients.relations import StandIn
from barkeep.domain.ingredients.tree import FamilyTree, Ingredient
from barkeep.domain.phrases import capitalised
from barkeep.domain.specs.spec import Spec
from barkeep.domain.specs.trials import Trial, show_score
from barkeep.errors import UserError

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
            f"{each.field}: yours “{_on_one_line(each.mine)}”, theirs “{_on_one_line(each.theirs)}”"
            for each in self.differences
        )
        return (
            f"Another window or a command has changed {self.what} since you began, so nothing "
            f"was written. {capitalised(told)}."
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
    return ChangedSince(f"the spec {theirs.name}", theirs, differences)


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
        "name": spec.name,
        "lines": "\n".join(each.text for each in spec.in_order),
        "method": spec.method,
        "technique": spec.technique,
        "glass": spec.glass,
        "ice": spec.ice,
        "serves": f"{spec.serves!r}",
        "notes": spec.notes,
        "riff of": spec.riff_of or "",
        "tags": ", ".join(spec.tags),
        "credit": spec.credit,
        "source": spec.source,
    }


def shoot_in_words(shoot: Shoot, tree: FamilyTree) -> Words:
    """Everything that is written of a shoot."""
    return {
        "theme": shoot.theme,
        "day": shoot.on.isoformat(),
        "starts": f"{shoot.starts:%H:%M}" if shoot.starts else "",
        "state": shoot.state,
        **drinks_in_words(shoot, tree),
        "notes": shoot.notes,
        "ticked": ", ".join(sorted(shoot.ticked)),
        "log": f"written on {shoot.log.at:%Y-%m-%d at %H:%M}" if shoot.log else "",
    }


def drinks_in_words(shoot: Shoot, tree: FamilyTree) -> Words:
    """The drinks of a shoot in running order, with what is poured for their lines."""
    return {"drinks": "\n".join(_drink_in_words(each, tree) for each in shoot.drinks)}


def label_in_words(label: Label, tree: FamilyTree) -> Words:
    """Everything that a label says."""
    said = {each.name: _in_words(getattr(label, each.name)) for each in fields(Label)}
    said["ingredient"] = _name(label.ingredient, tree)
    return {_LABEL_FIELDS.get(name, name): words for name, words in said.items()}


_LABEL_FIELDS = {
    "abv_percent": "strength in % vol",
    "sugar_g_per_l": "sugar in g per litre",
    "house_made": "made here",
    "density_g_per_ml": "density in g per ml",
    "acid_g_per_l": "acid in g per litre",
}


def dates_in_words(facts: BottleFacts) -> Words:
    """When a bottle was made, and until when it is good."""
    return {"made": _in_words(facts.made), "use by": _in_words(facts.use_by)}


def weights_in_words(facts: BottleFacts) -> Words:
    """What a bottle weighs without and with its contents."""
    return {"empty": _tare_in_words(facts.tare), "full": _in_words(facts.full_g)}


def dasher_in_words(facts: BottleFacts) -> Words:
    """What one dash from a bottle comes to, in ml."""
    return {"a dash": _in_words(facts.dash_ml)}


def trial_in_words(trial: Trial) -> Words:
    """Everything that is written of a trial."""
    scores = (f"{each.taster} {each.scale} {show_score(each.value)}" for each in trial.scores)
    return {
        "day": trial.on.isoformat(),
        "scores": ", ".join(each.strip() for each in scores),
        "changed": trial.changed,
        "notes": trial.notes,
        "settled on": "yes" if trial.won else "no",
    }


def par_in_words(settings: Settings, key: str, tree: FamilyTree) -> Words:
    """The least to have of one ingredient."""
    pars = (each.amount for each in settings.pars if each.ingredient == key)
    return {"par": "".join(f"{each:g} {tree[key].unit}" for each in pars)}


def house_pour_in_words(settings: Settings, kind: str, titles: Mapping[int, str]) -> Words:
    """What is poured for one kind."""
    pours = (each.product for each in settings.house if each.kind == kind)
    return {"house pour": "".join(titles.get(each, f"product {each}") for each in pours)}


def stand_ins_in_words(entries: Iterable[StandIn], tree: FamilyTree) -> Words:
    """Everything that is said of own stand-ins, a field each."""
    return {
        f"{_name(each.offered, tree)} for {_name(each.wanted, tree)}": ", ".join(
            (f"{each.closeness:g}", f"{each.ratio:g} times as much", each.why, *each.scope)
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
    words = {_INGREDIENT_FIELDS.get(name, name): _in_words(each) for name, each in said.items()}
    return {**words, **stand_ins_in_words(stand_ins, tree)}


_INGREDIENT_FIELDS = {
    **_LABEL_FIELDS,
    "parents": "a kind of",
    "aliases": "other names",
    "unit": "kept in",
    "shelf_life_days": "keeps for, in days",
    "typical_size": "usual size",
}


def _drink_in_words(drink: ShootDrink, tree: FamilyTree) -> str:
    serves = drink.serves
    counts = f"{serves.tests}+{serves.camera}+{serves.tasting}"
    chosen = (
        f"line {each.line + 1} by {_name(each.ingredient, tree)}"
        + (f" #{each.bottle_id}" if each.bottle_id else "")
        for each in drink.chosen
    )
    return ", ".join((f"{drink.name} {counts}", *chosen))


def _name(key: str, tree: FamilyTree) -> str:
    return tree.name(key) if key in tree else key


def _in_words(value: object) -> str:
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, list | tuple):
        return ", ".join(map(str, value))
    return "" if value is None else f"{value}"


def _tare_in_words(tare: Tare | None) -> str:
    return "" if tare is None else f"{tare.weight_g:g} g ± {2 * tare.sigma_g:g}"


def _on_one_line(words: str) -> str:
    return "; ".join(words.splitlines())
