"""What a bar keeps of a shoot: a theme, its drinks in running order, what is ticked off, the log.

A drink of a shoot names its spec by id and by name: a classic has no id, and
the name still says what was meant after the spec was removed.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass, field, replace
from datetime import date, datetime, time
from typing import Literal, get_args

from barkeep.domain.amounts.units import Unit
from barkeep.domain.phrases import folded
from barkeep.domain.specs.spec import Spec

ShootState = Literal["idea", "planned", "filmed", "logged"]
STATES: tuple[ShootState, ...] = get_args(ShootState)


MOST_SHOOT_SERVES = 200
"""Of one kind in one shoot; more is a misprint."""


@dataclass(frozen=True, slots=True)
class ServeCounts:
    """How many serves of a drink go into tests, in front of the camera, and to be tasted."""

    tests: int = 0
    camera: int = 1
    tasting: int = 0

    @property
    def total(self) -> int:
        """All of them."""
        return self.tests + self.camera + self.tasting


@dataclass(frozen=True, slots=True)
class ChosenPour:
    """What a line will be poured with: the line's place in the spec, what, and how much of it.

    `ratio` is how much replaces one unit of the line's own; `bottle_id` names
    one bottle to pour from first, None for whichever is used up first.
    `wanted` is what the line asked for when it was chosen: lines move when a
    spec is changed, and the choice is for the ingredient and not the place.
    """

    line: int
    ingredient: str
    ratio: float = 1.0
    bottle_id: int | None = None
    wanted: str = ""


@dataclass(frozen=True, slots=True)
class ShootDrink:
    """One drink in the running order."""

    spec_id: int | None
    name: str
    serves: ServeCounts = ServeCounts()
    chosen: tuple[ChosenPour, ...] = ()


@dataclass(frozen=True, slots=True)
class LoggedBottle:
    """What a shoot did to one bottle, in its unit.

    `poured` and `spilled` went into the ledger; `expected` is the level after
    them, `counted` what was found, None where the expected level was accepted.
    `sigma` is the one-sigma doubt of expected and counted together.
    """

    bottle_id: int
    title: str
    unit: Unit
    poured: float
    spilled: float
    expected: float
    counted: float | None = None
    sigma: float = 0.0

    @property
    def variance(self) -> float | None:
        """Expected less counted; None where it was not counted."""
        return None if self.counted is None else self.expected - self.counted


@dataclass(frozen=True, slots=True)
class ShootLog:
    """When a shoot was logged, the serves really made of each drink, and its bottles."""

    at: datetime
    made: tuple[int, ...]
    bottles: tuple[LoggedBottle, ...]


@dataclass(frozen=True, slots=True)
class Shoot:
    """One filming session. `ticked` holds the keys of what is done of the mise en place."""

    id: int | None
    theme: str
    on: date
    drinks: tuple[ShootDrink, ...] = ()
    state: ShootState = "idea"
    starts: time | None = None
    notes: str = ""
    ticked: frozenset[str] = field(default_factory=frozenset)
    log: ShootLog | None = None

    @property
    def names(self) -> tuple[str, ...]:
        """The drinks' names in running order."""
        return tuple(each.name for each in self.drinks)


def line_chosen_for(chosen: ChosenPour, spec: Spec) -> int | None:
    """The place of the line a choice is for; None where the spec has no such line any more."""
    lines, wanted = spec.lines, chosen.wanted
    if chosen.line < len(lines) and wanted in ("", lines[chosen.line].ingredient):
        return chosen.line
    moved = [place for place, line in enumerate(lines) if wanted == line.ingredient]
    return moved[0] if len(moved) == 1 else None


def still_chosen(drink: ShootDrink, spec: Spec) -> ShootDrink:
    """The drink with its choices at the places of their lines now; those of no line go."""
    found = ((each, line_chosen_for(each, spec)) for each in drink.chosen)
    chosen = tuple(
        replace(each, line=place, wanted=spec.lines[place].ingredient)
        for each, place in found
        if place is not None
    )
    return replace(drink, chosen=chosen)


def chosen_bottles(shoot: Shoot) -> tuple[int, ...]:
    """The bottles that are to be poured from first."""
    found = (each.bottle_id for drink in shoot.drinks for each in drink.chosen)
    return tuple(each for each in found if each is not None)


def choose(drink: ShootDrink, chosen: ChosenPour) -> ShootDrink:
    """The drink with one line poured otherwise; an earlier choice for that line goes."""
    others = tuple(each for each in drink.chosen if each.line != chosen.line)
    return replace(drink, chosen=(*others, chosen))


def as_written(drink: ShootDrink, line: int) -> ShootDrink:
    """The drink with one line poured as its spec says again."""
    return replace(drink, chosen=tuple(each for each in drink.chosen if each.line != line))


def repeated(shoot: Shoot, on: date) -> Shoot:
    """The same shoot to be done once more: nothing ticked, nothing logged, no bottle chosen."""
    drinks = tuple(
        replace(each, chosen=tuple(replace(one, bottle_id=None) for one in each.chosen))
        for each in shoot.drinks
    )
    return replace(shoot, id=None, on=on, drinks=drinks, state="idea", ticked=frozenset(), log=None)


def find_shoots(
    shoots: Iterable[Shoot],
    words: str,
    titles: Mapping[int, str] | None = None,
    shown: Callable[[Shoot], str] = lambda _shoot: "",
) -> tuple[Shoot, ...]:
    """The shoots of which every word stands in the theme, a drink, the notes or a bottle's title.

    `titles` names bottles by id, for those chosen; logged bottles carry their own.
    `shown` is what else is seen of a shoot where it is looked for.
    """
    wanted = folded(words).split()
    known = titles or {}

    def is_found(shoot: Shoot) -> bool:
        stands = f"{_searchable(shoot, known)} {folded(shown(shoot))}"
        return all(word in stands for word in wanted)

    return tuple(filter(is_found, shoots))


def _searchable(shoot: Shoot, titles: Mapping[int, str]) -> str:
    chosen = (titles.get(each, "") for each in chosen_bottles(shoot))
    logged = (each.title for each in shoot.log.bottles) if shoot.log else ()
    state = (shoot.state, shoot.on.isoformat())
    return folded(" ".join((shoot.theme, *shoot.names, shoot.notes, *chosen, *logged, *state)))
