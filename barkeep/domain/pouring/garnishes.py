"""How the garnishes of a drink stand: there, to cut from what is there, or missing."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from typing import TYPE_CHECKING, Literal

from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import capitalised
from barkeep.domain.pouring.words import cut_from
from barkeep.domain.specs.garnish_notes import garnishes_in_words
from barkeep.domain.specs.shown_lines import names_in_sentence, without_garnish
from barkeep.domain.specs.spec import Line, Spec
from barkeep.errors import spoken_list
from barkeep.translation import tr

if TYPE_CHECKING:
    from barkeep.domain.pouring.assessment import LineAnswer
    from barkeep.domain.pouring.verdicts import Drink

Standing = Literal["there", "cut", "made", "stand_in", "missing", "unknown"]


@dataclass(frozen=True, slots=True)
class Garnish:
    """One garnish, as the spec calls it, and how it stands tonight.

    `made_of` are the keys of what it is cut or made from. `line` is None of a
    garnish kept in words, which is *unknown*. `telling` says why the drink is
    another without it, empty where it is not.
    """

    name: str
    standing: Standing
    line: Line | None = None
    made_of: tuple[str, ...] = ()
    instead: str = ""
    telling: str = ""

    @property
    def is_there(self) -> bool:
        """Whether it stands there, or can be cut or made."""
        return self.standing in ("there", "cut", "made")

    def words(self, tree: FamilyTree) -> str:
        """*there*, *to cut from orange*, *missing*."""
        match self.standing:
            case "cut" | "made":
                named = spoken_list([tree.in_sentence(each) for each in self.made_of], "and")
                if self.standing == "cut":
                    return tr("to cut from {named}", named=named)
                return tr("to make from {named}", named=named)
            case "stand_in":
                return tr(
                    "missing; {instead} is there instead",
                    instead=tree.in_sentence(self.instead),
                )
            case "unknown":
                return tr("not known here, so see to it yourself")
            case "there":
                return tr("there")
            case _:
                return tr("missing")


def garnish_name(line: Line, tree: FamilyTree) -> str:
    """A garnish as its spec writes it: *lemon twist*, *salt rim*."""
    return without_garnish(line.text).strip() or names_in_sentence(line, tree)


def garnishes_of(drink: Drink, tree: FamilyTree) -> tuple[Garnish, ...]:
    """The garnishes of a drink with how each stands, those kept in words last."""
    told_by = drink.spec.told_by
    known = (
        garnish_of(each, tree, telling=each.line is told_by)
        for each in drink.lines
        if each.line.garnish
    )
    unknown = (Garnish(each, "unknown") for each in garnishes_in_words(drink.spec.notes))
    return (*known, *unknown)


def garnish_of(answer: LineAnswer, tree: FamilyTree, *, telling: bool = False) -> Garnish:
    """How a garnish stands, by what its line was answered; `telling` where the drink is it."""
    line, derivation = answer.line, answer.derivation
    said = line.telling if telling else None
    why = "" if said is None else said.why
    name = garnish_name(line, tree)
    if derivation is None:
        return Garnish(name, "missing", line, telling=why)
    if not derivation.exact:
        return Garnish(name, "stand_in", line, instead=derivation.offered, telling=why)
    if fruit := cut_from(line, derivation, tree):
        return Garnish(name, "cut", line, (fruit,), telling=why)
    if not derivation.made:
        return Garnish(name, "there", line, telling=why)
    made_of = tuple(each.ingredient for each in derivation.made[-1].recipe.inputs)
    return Garnish(name, "made", line, made_of, telling=why)


def garnishes_told(drink: Drink, specs: Iterable[Spec], tree: FamilyTree) -> Iterator[str]:
    """What must be said of a drink's garnishes, in sentences: what is missing, what tells it."""
    for each in garnishes_of(drink, tree):
        words = each.words(tree)
        if each.telling:
            yield tr(
                "The drink is its garnish, {name} ({words}): {telling}.",
                name=each.name,
                words=words,
                telling=tr(each.telling),
            )
            yield from _otherwise(each, drink.spec, specs)
        elif each.standing not in ("there", "cut"):
            yield tr("{name} (garnish): {words}.", name=capitalised(each.name), words=words)


def what_it_is_then(drink: Drink, specs: Iterable[Spec], tree: FamilyTree) -> Iterator[str]:
    """What a drink is without the garnish that tells it, where that is not there."""
    for each in garnishes_of(drink, tree):
        if each.telling:
            yield from _otherwise(each, drink.spec, specs)


def _otherwise(garnish: Garnish, spec: Spec, specs: Iterable[Spec]) -> Iterator[str]:
    other = "" if garnish.is_there else without(spec, specs)
    if other:
        yield tr("Without its {name} it is a {other}.", name=garnish.name, other=other)


def garnishes_missing(drink: Drink, tree: FamilyTree) -> str:
    """*no green olive*, for a line about the drink; empty where all are there or not known."""
    missing = (
        tr("no {name}", name=each.name)
        for each in garnishes_of(drink, tree)
        if not each.is_there and each.standing != "unknown"
    )
    return ", ".join(missing)


def without(spec: Spec, specs: Iterable[Spec]) -> str:
    """What a drink is without its garnish: its parent, where that pours the same; else empty."""
    parent = next((each for each in specs if each.name == spec.riff_of), None)
    if parent is None or _poured(parent) != _poured(spec):
        return ""
    return parent.name


def _poured(spec: Spec) -> tuple[float, ...]:
    """How much each line pours, the largest first."""
    amounts = (line.quantity or 0.0 for line in spec.lines if line.required)
    return tuple(sorted(amounts, reverse=True))
