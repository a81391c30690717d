"""A shoot's drinks against the book: the spec each means, as it will be poured, as orders."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from barkeep.domain.bar.shoots import ChosenPour, Shoot, ShootDrink, line_chosen_for
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import folded
from barkeep.domain.shoots.menu import Order
from barkeep.domain.specs.shown_lines import names_in_sentence
from barkeep.domain.specs.spec import Line, Spec


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
    tree = snapshot.knowledge.tree
    lines = list(spec.lines)
    for chosen in drink.chosen:
        place = line_chosen_for(chosen, spec)
        if place is None or chosen.ingredient not in tree:
            continue
        lines[place] = _poured_line(lines[place], chosen, spec.serves, tree)
    return replace(spec, lines=tuple(lines))


def _poured_line(line: Line, chosen: ChosenPour, serves: float, tree: FamilyTree) -> Line:
    """A line in what is poured for it, saying what it replaces unless it is just a kind of it.

    Its unit stays the line's own where both are measured alike, and is the
    ingredient's own where they are not. Its text goes, since it names the other.
    """
    key, ratio = chosen.ingredient, chosen.ratio
    if key == line.ingredient and ratio == 1.0:
        return line
    quantity = None if line.quantity is None else line.quantity * ratio
    amount, high, unit = line.amount, line.amount_high, line.unit
    if tree[key].unit != tree[line.ingredient].unit and quantity is not None:
        amount, high, unit = quantity * serves, None, tree[key].unit
    elif amount is not None:
        amount, high = amount * ratio, None if high is None else high * ratio
    instead = not any(tree.is_a(key, each) for each in line.wanted)
    replaced = f"in place of {names_in_sentence(line, tree)}" if instead else ""
    return replace(
        line,
        text="",
        ingredient=key,
        amount=amount,
        amount_high=high,
        unit=unit,
        quantity=quantity,
        note="; ".join(each for each in (line.note, replaced) if each),
        alternatives=(),
        called="",
        stated=() if instead else line.stated,
    )


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
