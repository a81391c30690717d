"""A shoot's drinks, serves and choices as they are written in words."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping
from dataclasses import replace

from barkeep.application.finding import find_bottle, find_drink, find_ingredient, find_spec
from barkeep.domain.amounts import parse_amount
from barkeep.domain.answers.stand_ins import stand_in
from barkeep.domain.containers import container_of
from barkeep.domain.inventory import Bottle
from barkeep.domain.levels import MeasuredLevel, parse_level
from barkeep.domain.measures import to_quantity
from barkeep.domain.shoots import (
    ChosenPour,
    ServeCounts,
    Shoot,
    ShootDrink,
    as_written,
    choose,
    spec_of,
)
from barkeep.domain.snapshot import Snapshot
from barkeep.domain.specs import Spec
from barkeep.errors import AmbiguousName, InvalidField, UnknownName

HOW_SERVES = "write tests + camera + tasting, such as 1+1+2"
HOW_USED = "write the drink, a colon, what its line asks for, = and what to pour instead"
HOW_ONE = "write a name, = and how much or how many"

_SERVES = re.compile(r"\s*(\d{1,4})\s*\+\s*(\d{1,4})\s*\+\s*(\d{1,4})\s*", re.ASCII)


def with_drink(shoot: Shoot, text: str, snapshot: Snapshot) -> Shoot:
    """The shoot with a drink and its serves, written *NAME* or *NAME=1+1+2*.

    A drink that is there keeps its place and its choices; another comes last.
    Raises `InvalidField`, and for the name what `find_spec` raises.
    """
    name, equals, written = text.rpartition("=")
    spec = find_spec(snapshot, name.strip() if equals else text)
    serves = _serves(text, written) if equals else None
    drinks = list(shoot.drinks)
    for place, each in enumerate(drinks):
        if spec_of(each, snapshot) is spec:
            drinks[place] = replace(each, serves=serves or each.serves)
            return replace(shoot, drinks=tuple(drinks))
    added = ShootDrink(spec.id, spec.name, serves or ServeCounts())
    return replace(shoot, drinks=(*drinks, added))


def without_drink(shoot: Shoot, name: str) -> Shoot:
    """The shoot less one drink. Raises what `find_drink` raises."""
    dropped = find_drink(shoot, name)
    return replace(shoot, drinks=tuple(each for each in shoot.drinks if each is not dropped))


def with_choice(shoot: Shoot, text: str, snapshot: Snapshot) -> Shoot:
    """The shoot with something else poured for a line: *DRINK: WANTED=STAND-IN or BOTTLE*.

    How much replaces how much comes from the stand-in graph. Raises
    `InvalidField` where the words or the two ingredients do not fit,
    `UnknownName` and `AmbiguousName`.
    """
    drink_name, colon, rest = text.partition(":")
    wanted, equals, instead = rest.partition("=")
    if not (colon and equals and instead.strip()):
        raise InvalidField("--use", text, HOW_USED)
    drink, spec = _drink_and_spec(shoot, drink_name, snapshot)
    place = _line(spec, wanted, "--use", snapshot)
    key, bottle = _thing(instead.strip(), snapshot)
    asked = spec.lines[place].ingredient
    ratio = _ratio(spec, place, key, snapshot)
    chosen = ChosenPour(place, key, ratio, bottle.id if bottle else None, asked)
    return _with(shoot, drink, choose(drink, chosen))


def with_line_as_written(shoot: Shoot, text: str, snapshot: Snapshot) -> Shoot:
    """The shoot with a line poured as its spec says again: *DRINK: WANTED*."""
    drink_name, colon, wanted = text.partition(":")
    if not colon:
        raise InvalidField("--as-written", text, "write the drink, a colon and the ingredient")
    drink, spec = _drink_and_spec(shoot, drink_name, snapshot)
    place = _line(spec, wanted, "--as-written", snapshot)
    return _with(shoot, drink, as_written(drink, place))


def serves_made(shoot: Shoot, written: Iterable[str]) -> tuple[int, ...]:
    """The serves really made of each drink, those planned where none are written (*NAME=3*)."""
    made = {each.name: each.serves.total for each in shoot.drinks}
    for text in written:
        name, count = _parted(text, "--made")
        if not re.fullmatch(r"[0-9]{1,6}", count):
            raise InvalidField("--made", text, "a whole number of serves, 0 or more")
        made[find_drink(shoot, name).name] = int(count)
    return tuple(made[each.name] for each in shoot.drinks)


def spills(written: Iterable[str], snapshot: Snapshot) -> Mapping[int, float]:
    """What was spilled of each bottle, in its unit (*BOTTLE=30 ml*)."""
    units, found = snapshot.settings.units, dict[int, float]()
    for text in written:
        name, amount = _parted(text, "--spill")
        bottle = find_bottle(snapshot, name, rather_open=True)
        spilled = to_quantity(parse_amount(amount, units), bottle.product.unit, units)
        found[bottle.id] = found.get(bottle.id, 0.0) + spilled
    return found


def counts(written: Iterable[str], snapshot: Snapshot) -> Mapping[int, MeasuredLevel]:
    """The level each bottle was found with (*BOTTLE=LEVEL*). Raises what `parse_level` raises."""
    found: dict[int, MeasuredLevel] = {}
    for text in written:
        name, level = _parted(text, "--count")
        bottle = find_bottle(snapshot, name, rather_open=True)
        if bottle.id in found:
            raise InvalidField("--count", bottle.product.title, "each bottle is counted once")
        container = container_of(bottle, snapshot.knowledge.tree, snapshot.bottles)
        found[bottle.id] = parse_level(level, container, snapshot.settings.units)
    return found


def _parted(text: str, option: str) -> tuple[str, str]:
    name, equals, rest = text.rpartition("=")
    if not equals or not name.strip() or not rest.strip():
        raise InvalidField(option, text, HOW_ONE)
    return name.strip(), rest.strip()


def _serves(text: str, written: str) -> ServeCounts:
    found = _SERVES.fullmatch(written)
    if found is None:
        raise InvalidField("--drink", text, HOW_SERVES)
    tests, camera, tasting = map(int, found.groups())
    return ServeCounts(tests, camera, tasting)


def _drink_and_spec(shoot: Shoot, name: str, snapshot: Snapshot) -> tuple[ShootDrink, Spec]:
    drink = find_drink(shoot, name.strip())
    spec = spec_of(drink, snapshot)
    if spec is None:
        raise UnknownName("spec", drink.name)
    return drink, spec


def _line(spec: Spec, wanted: str, option: str, snapshot: Snapshot) -> int:
    """The place of the line that asks for this ingredient, else for the only kind of it."""
    tree = snapshot.knowledge.tree
    key = find_ingredient(tree, wanted.strip())
    lines = [(place, line) for place, line in enumerate(spec.lines) if not line.garnish]
    found = [place for place, line in lines if key in line.wanted]
    found = found[:1] or [place for place, line in lines if tree.is_a(line.ingredient, key)]
    if len(found) > 1:
        names = tuple(tree.in_sentence(spec.lines[place].ingredient) for place in found)
        raise AmbiguousName(f"line of {spec.name}", wanted.strip(), names)
    if not found:
        raise InvalidField(option, wanted.strip(), f"{spec.name} has no such line")
    return found[0]


def _thing(text: str, snapshot: Snapshot) -> tuple[str, Bottle | None]:
    """What is named: an ingredient, else one bottle with its ingredient."""
    tree = snapshot.knowledge.tree
    try:
        return find_ingredient(tree, text), None
    except UnknownName as no_ingredient:
        try:
            bottle = find_bottle(snapshot, text, rather_open=True)
        except UnknownName:
            raise no_ingredient from None
        return bottle.ingredient, bottle


def _ratio(spec: Spec, place: int, key: str, snapshot: Snapshot) -> float:
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
    why = f"; {friend.rstrip('.')}" if friend else ""
    raise InvalidField("--use", tree.name(key), f"it is not known to stand in for {asked}{why}")


def _with(shoot: Shoot, before: ShootDrink, after: ShootDrink) -> Shoot:
    drinks = tuple(after if each is before else each for each in shoot.drinks)
    return replace(shoot, drinks=drinks)
