"""Pouring one drink with what was chosen for its lines."""

from __future__ import annotations

from collections.abc import Sequence

from barkeep.application.done import Done
from barkeep.application.finding import find_bottle, find_ingredient
from barkeep.application.session import UseCases
from barkeep.application.shelving import bottle_there, take_one
from barkeep.domain.bar.shoots import ChosenPour
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.bottle import Bottle
from barkeep.domain.shoots.one_drink import PouredOut, poured_out
from barkeep.domain.specs.spec import Spec
from barkeep.domain.stand_ins.offers import stand_in
from barkeep.errors import AmbiguousName, InvalidField, UnknownName, UserError
from barkeep.translation import tr


class CannotPour(UserError):
    """A drink that there is not enough for; `lacking` are sentences, one a line."""

    drink: str
    lacking: tuple[str, ...]

    def __str__(self) -> str:
        return tr(
            "{drink} cannot be poured so. {lacking}",
            drink=self.drink,
            lacking=" ".join(self.lacking),
        )


class Pouring(UseCases):
    """The use cases of `bar.pouring`."""

    def pour(
        self, spec: Spec, chosen: Sequence[ChosenPour] = (), serves: int = 1
    ) -> Done[PouredOut]:
        """Take what a drink needs out of its bottles, of all of them or of none.

        Raises `CannotPour` where there is not enough, and what a pour of a bottle raises.
        """
        with self._session.writing() as work:
            found = refuse_lacking(poured_out(spec, self._session.snapshot, chosen, serves))
            several = "" if serves == 1 else f"{serves} "
            work.label = f"Pour {several}{spec.name}"
            for each in found.draws:
                bottle = bottle_there(work, each.bottle.id)
                take_one(work, bottle=bottle, kind="pour", amount=each.amount, note=spec.name)
        return self._session.finished(work, lambda _bar: found)


def refuse_lacking(found: PouredOut) -> PouredOut:
    """What can be poured. Raises `CannotPour`."""
    if found.lacking:
        raise CannotPour(found.of.name, found.lacking)
    return found


def poured_instead(
    spec: Spec, wanted: str, instead: str, option: str, *, snapshot: Snapshot
) -> ChosenPour:
    """What is poured for the line that is named: an ingredient, or one bottle.

    How much replaces how much comes from the stand-in graph. Raises `InvalidField`, of the
    `option` it was written for, where the two do not fit, `UnknownName` and `AmbiguousName`.
    """
    place = line_named(spec, wanted, option, snapshot)
    key, bottle = _thing(instead.strip(), snapshot)
    return ChosenPour(
        line=place,
        ingredient=key,
        ratio=_ratio(spec, place, key, option=option, snapshot=snapshot),
        bottle_id=bottle.id if bottle else None,
        wanted=spec.lines[place].ingredient,
    )


def line_named(spec: Spec, wanted: str, option: str, snapshot: Snapshot) -> int:
    """The place of the line that asks for this ingredient, else for the only kind of it."""
    tree = snapshot.knowledge.tree
    key = find_ingredient(tree, wanted.strip(), owned=snapshot.owned)
    lines = [(place, line) for place, line in enumerate(spec.lines) if not line.garnish]
    found = [place for place, line in lines if key in line.wanted]
    found = found[:1] or [place for place, line in lines if tree.is_a(line.ingredient, key)]
    if len(found) > 1:
        names = tuple(tree.in_sentence(spec.lines[place].ingredient) for place in found)
        raise AmbiguousName(tr("line of {name}", name=spec.name), wanted.strip(), names)
    if not found:
        raise InvalidField(option, wanted.strip(), tr("{name} has no such line", name=spec.name))
    return found[0]


def _thing(text: str, snapshot: Snapshot) -> tuple[str, Bottle | None]:
    """What is named: an ingredient, else one bottle with its ingredient."""
    tree = snapshot.knowledge.tree
    try:
        return find_ingredient(tree, text, owned=snapshot.owned), None
    except UnknownName as no_ingredient:
        try:
            bottle = find_bottle(snapshot, text, rather_open=True)
        except UnknownName:
            raise no_ingredient from None
        return bottle.ingredient, bottle


def _ratio(spec: Spec, place: int, key: str, *, option: str, snapshot: Snapshot) -> float:
    """How much of it replaces one unit of what the line asks for."""
    tree, line = snapshot.knowledge.tree, spec.lines[place]
    if any(tree.is_a(key, each) for each in line.wanted):
        return 1.0
    answer = stand_in(snapshot, line.ingredient, spec)
    offer = next((each for each in answer.stand_ins if each.ingredient == key), None)
    if offer is not None:
        return offer.ratio
    asked = tree.in_sentence(line.ingredient)
    friend = next((each.why for each in answer.confusables if each.ingredient == key), "")
    why = f"; {tr(friend).rstrip('.')}" if friend else ""
    raise InvalidField(
        option,
        tree.name(key),
        tr("it is not known to stand in for {asked}{why}", asked=asked, why=why),
    )
