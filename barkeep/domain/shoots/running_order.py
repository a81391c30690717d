"""The running order of a shoot: which shoot drinks most likely go into, drinks added and moved."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from datetime import date

from barkeep.domain.bar.shoots import Shoot, ShootDrink
from barkeep.domain.phrases import folded
from barkeep.domain.specs.spec import Spec
from barkeep.errors import spoken_list
from barkeep.translation import tr


def open_shoots(shoots: Iterable[Shoot], on: date) -> tuple[Shoot, ...]:
    """The shoots that may still take a drink, the likeliest first.

    What lies ahead goes by its day, then what was to be filmed by now, the last first, and at the
    end what is filmed and not logged.
    """

    def likely(shoot: Shoot) -> tuple[bool, bool, int, int]:
        days = (shoot.on - on).days
        return shoot.state == "filmed", days < 0, abs(days), shoot.id or 0

    return tuple(sorted((each for each in shoots if each.log is None), key=likely))


def next_shoot(shoots: Iterable[Shoot], on: date) -> Shoot | None:
    """The shoot that one most likely chooses drinks for; None where none is to be filmed."""
    return next((each for each in open_shoots(shoots, on) if each.state != "filmed"), None)


@dataclass(frozen=True, slots=True)
class Addition:
    """A shoot with drinks added at its end: which were, and which were there already."""

    shoot: Shoot
    added: tuple[str, ...]
    there: tuple[str, ...]

    @property
    def in_words(self) -> str:
        """What was done, without a stop: *Added Berth to Night Mail; Lamp was there already*."""
        theme, there = self.shoot.theme, spoken_list(self.there, "and")
        if not self.added and len(self.there) == 1:
            return tr("{names} was in {theme} already; nothing is added", names=there, theme=theme)
        if not self.added:
            return tr("{names} were in {theme} already; nothing is added", names=there, theme=theme)
        said = tr("Added {names} to {theme}", names=spoken_list(self.added, "and"), theme=theme)
        if len(self.there) == 1:
            said += tr("; {names} was there already", names=there)
        elif self.there:
            said += tr("; {names} were there already", names=there)
        return said


def with_added(shoot: Shoot, specs: Iterable[Spec]) -> Addition:
    """The shoot with these specs at the end, each once; those that are there keep their place."""
    drinks, added, there = list(shoot.drinks), list[str](), list[str]()
    for spec in specs:
        if any(_means(each, spec) for each in drinks):
            there += [spec.name] if spec.name not in added else []
        else:
            drinks.append(ShootDrink(spec.id, spec.name))
            added.append(spec.name)
    return Addition(replace(shoot, drinks=tuple(drinks)), tuple(added), tuple(there))


def _means(drink: ShootDrink, spec: Spec) -> bool:
    same = drink.spec_id is not None and drink.spec_id == spec.id
    return same or folded(drink.name) == folded(spec.name)


def moved(drinks: Sequence[ShootDrink], number: int, to: int) -> tuple[ShootDrink, ...]:
    """The running order with the drink at `number` at the place `to`, both from 0."""
    order = list(drinks)
    order.insert(to, order.pop(number))
    return tuple(order)
