"""A shoot's drinks against the book: the spec each means, as it will be poured, as orders."""

from __future__ import annotations

from collections.abc import Sequence

from barkeep.domain.bar.shoots import Shoot, ShootDrink
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.phrases import folded
from barkeep.domain.shoots.menu import Order
from barkeep.domain.specs.spec import Spec
from barkeep.domain.stand_ins.in_a_drink import with_pours


def spec_of(drink: ShootDrink, snapshot: Snapshot) -> Spec | None:
    """The spec a drink means, by id and else by name; None where it was removed."""
    if drink.spec_id is not None:
        return next((each for each in snapshot.all_specs if each.id == drink.spec_id), None)
    name = folded(drink.name)
    return next((each for each in snapshot.all_specs if folded(each.name) == name), None)


def as_poured(drink: ShootDrink, snapshot: Snapshot) -> Spec | None:
    """The spec with the chosen pours in place of its lines; None where it was removed.

    A choice that fits no line any more, since the spec was changed, is passed over.
    """
    spec = spec_of(drink, snapshot)
    if spec is None:
        return None
    return with_pours(spec, drink.chosen, snapshot.knowledge.tree)


def orders_of(
    shoot: Shoot, snapshot: Snapshot, made: Sequence[int] | None = None
) -> tuple[Order, ...]:
    """The shoot's drinks as orders, in running order; those without a spec are left out.

    `made` gives the serves of each drink where they are not those planned.
    """
    serves = [each.serves.total for each in shoot.drinks] if made is None else list(made)
    found = []
    for drink, count in zip(shoot.drinks, serves, strict=True):
        spec = as_poured(drink, snapshot)
        if spec is not None:
            found.append(Order(spec, count))
    return tuple(found)


def without_spec(shoot: Shoot, snapshot: Snapshot) -> tuple[str, ...]:
    """The names of the drinks whose spec was removed."""
    return tuple(each.name for each in shoot.drinks if spec_of(each, snapshot) is None)
