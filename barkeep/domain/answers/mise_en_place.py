"""What to have ready before a shoot: squeeze, make, chill, cut, set out, and in what order.

Worked from the specs and their serves, less what stands in the bar and keeps
until then. Margins, ice by the serve and the order of work are *common
practice*; yields are the recipes' own.
"""

from __future__ import annotations

import math
import re
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace

from barkeep.domain.answers.after_ice import is_carbonated
from barkeep.domain.answers.menu import Order
from barkeep.domain.answers.sourcing import need
from barkeep.domain.answers.supply import supply_of
from barkeep.domain.glasses import glass_named, ice_named
from barkeep.domain.ingredients import FamilyTree, Unit, folded
from barkeep.domain.knowledge import MadeFrom
from barkeep.domain.snapshot import Snapshot
from barkeep.domain.specs import Line, Technique

MARGIN = 0.15
"""What is squeezed and made beyond the need, a share (*common practice*)."""
WORKING_ICE_G = 120.0
"""Ice in the tin or the mixing glass for one serve (*from memory*: Arnold, 2014, p. 123)."""
ICE_G_PER_ML = 0.6
"""Served ice with the air between its pieces (*common practice*)."""

_TOOLS: Mapping[Technique, tuple[str, ...]] = {
    "shaken": ("shaker tins", "strainer", "jigger"),
    "stirred": ("mixing glass", "bar spoon", "strainer", "jigger"),
    "built": ("bar spoon", "jigger"),
    "blended": ("blender", "jigger"),
    "thrown": ("two tins", "strainer", "jigger"),
    "swizzled": ("swizzle stick", "jigger"),
    "hot": ("kettle or pan", "heatproof jug", "jigger"),
}
_NAMED_TOOLS: tuple[tuple[str, re.Pattern[str]], ...] = (
    ("fine strainer", re.compile(r"\b(?:double|fine)[ -]?strain", re.IGNORECASE)),
    ("muddler", re.compile(r"\bmuddl", re.IGNORECASE)),
    ("grater", re.compile(r"\bgrat(?:e|ed|ing)\b", re.IGNORECASE)),
    ("peeler", re.compile(r"\b(?:peel|twist|zest)\b", re.IGNORECASE)),
    ("whisk or frother", re.compile(r"\b(?:whisk(?:ed|ing)?|froth)\b", re.IGNORECASE)),
)
_WORKED_ON_ICE = ("shaken", "stirred", "thrown", "swizzled", "blended")


@dataclass(frozen=True, slots=True)
class ToMake:
    """Something to squeeze or make: how much, from what, and how.

    `inputs` are in each ingredient's own unit; pieces of fruit are whole.
    """

    ingredient: str
    amount: float
    unit: Unit
    inputs: tuple[tuple[str, float, Unit], ...]
    how: str
    squeezed: bool


@dataclass(frozen=True, slots=True)
class Counted:
    """A thing to set out, and how many."""

    name: str
    count: int


@dataclass(frozen=True, slots=True)
class IceNeed:
    """Ice of one kind by weight, in grams."""

    kind: str
    grams: float


@dataclass(frozen=True, slots=True)
class Step:
    """One thing to do; `when` says how long before the start."""

    when: str
    text: str


@dataclass(frozen=True, slots=True)
class MiseEnPlace:
    """Everything to have ready, and the steps in an order that ends ready."""

    make: tuple[ToMake, ...]
    squeeze: tuple[ToMake, ...]
    ice: tuple[IceNeed, ...]
    glassware: tuple[Counted, ...]
    tools: tuple[str, ...]
    garnishes: tuple[Counted, ...]
    chill: tuple[str, ...]
    steps: tuple[Step, ...]


def mise_en_place(
    orders: Sequence[Order], snapshot: Snapshot, margin: float = MARGIN
) -> MiseEnPlace:
    """What to have ready for these orders, from the day of the snapshot's own bottles."""
    tree = snapshot.knowledge.tree
    made = tuple(_to_make(orders, snapshot, margin))
    parts = MiseEnPlace(
        tuple(each for each in made if not each.squeezed),
        tuple(each for each in made if each.squeezed),
        tuple(_ice(orders)),
        tuple(_glassware(orders)),
        tuple(_tools(orders)),
        tuple(_garnishes(orders, tree)),
        tuple(_chill(orders, tree)),
        (),
    )
    return replace(parts, steps=tuple(_steps(parts, tree)))


def _to_make(orders: Sequence[Order], snapshot: Snapshot, margin: float) -> Iterator[ToMake]:
    tree = snapshot.knowledge.tree
    supply = supply_of(snapshot)
    recipes: dict[str, MadeFrom] = {}
    for recipe in snapshot.knowledge.made_from:
        if recipe.closeness == 1.0:
            recipes.setdefault(recipe.made, recipe)
    for key, wanted in _needs(orders, tree).items():
        known = recipes.get(key)
        if known is None:
            continue
        there = supply.total_of_kind(key, tree)
        if there >= wanted:
            continue
        yield _made(known, (wanted - there) * (1.0 + margin), tree)


def _needs(orders: Sequence[Order], tree: FamilyTree) -> Mapping[str, float]:
    """Key -> how much of it all lines take, garnishes and optional lines apart."""
    total: dict[str, float] = {}
    for order in orders:
        for line in order.spec.required_lines:
            amount = need(line, tree) * order.serves
            total[line.ingredient] = total.get(line.ingredient, 0.0) + amount
    return {key: amount for key, amount in total.items() if amount > 0.0}


def _made(recipe: MadeFrom, amount: float, tree: FamilyTree) -> ToMake:
    batches = amount / recipe.yields
    inputs = tuple(
        (each.ingredient, _whole(each.amount * batches, tree[each.ingredient].unit), unit)
        for each in recipe.inputs
        for unit in (tree[each.ingredient].unit,)
    )
    squeezed = tree.is_a(recipe.made, "juice") if "juice" in tree else False
    return ToMake(recipe.made, amount, tree[recipe.made].unit, inputs, recipe.how, squeezed)


def _whole(amount: float, unit: Unit) -> float:
    return float(math.ceil(amount - 1e-9)) if unit == "each" else amount


def _ice(orders: Sequence[Order]) -> Iterator[IceNeed]:
    grams: dict[str, float] = {}
    for order in orders:
        if order.spec.technique in _WORKED_ON_ICE:
            working = "cubes to shake and stir with"
            grams[working] = grams.get(working, 0.0) + WORKING_ICE_G * order.serves
        glass, ice = glass_named(order.spec.glass), ice_named(order.spec.ice)
        if glass is not None and ice is not None and ice.share > 0.0:
            served = ice.volume_ml(glass) * ICE_G_PER_ML * order.serves
            grams[ice.name] = grams.get(ice.name, 0.0) + served
    yield from (IceNeed(kind, amount) for kind, amount in grams.items())


def _glassware(orders: Sequence[Order]) -> Iterator[Counted]:
    counts: dict[str, int] = {}
    for order in orders:
        glass = glass_named(order.spec.glass)
        name = glass.name if glass else order.spec.glass
        if name and order.serves:
            counts[name] = counts.get(name, 0) + order.serves
    yield from (Counted(name, count) for name, count in counts.items())


def _tools(orders: Sequence[Order]) -> Iterator[str]:
    wanted: dict[str, None] = {}
    for order in orders:
        if not order.serves:
            continue
        wanted.update(dict.fromkeys(_TOOLS.get(order.spec.technique, ("jigger",))))
        words = f"{order.spec.method} {' '.join(line.text for line in order.spec.lines)}"
        wanted.update({tool: None for tool, sign in _NAMED_TOOLS if sign.search(words)})
    yield from wanted


def _garnishes(orders: Sequence[Order], tree: FamilyTree) -> Iterator[Counted]:
    counts: dict[str, int] = {}
    for order in orders:
        for line in order.spec.lines:
            if line.garnish and order.serves:
                name = _garnish_name(line, tree)
                pieces = math.ceil((line.amount or 1.0) * order.serves)
                counts[name] = counts.get(name, 0) + pieces
    yield from (Counted(name, count) for name, count in counts.items())


def _garnish_name(line: Line, tree: FamilyTree) -> str:
    written = line.text.partition(":")[2].strip() or line.text.strip()
    return written or tree.in_sentence(line.ingredient)


def _chill(orders: Sequence[Order], tree: FamilyTree) -> Iterator[str]:
    wanted: dict[str, None] = {}
    for order in orders:
        if not order.serves:
            continue
        glass = glass_named(order.spec.glass)
        says_so = "chill" in folded(f"{order.spec.glass} {order.spec.method}")
        if glass is not None and says_so:
            wanted[f"the {glass.name}s"] = None
        for line in order.spec.required_lines:
            if is_carbonated(line.ingredient, tree):
                wanted[tree.in_sentence(line.ingredient)] = None
    yield from wanted


def _steps(parts: MiseEnPlace, tree: FamilyTree) -> Iterator[Step]:
    for each in parts.make:
        yield Step("the day before", f"Make {_said(each, tree)}. {each.how}")
    if parts.ice:
        kinds = ", ".join(f"{each.grams / 1000.0:.1f} kg of {each.kind}" for each in parts.ice)
        yield Step("the day before", f"Freeze or buy ice: {kinds}.")
    for name in parts.chill:
        yield Step("two hours before", f"Chill {name}.")
    for each in parts.squeeze:
        yield Step("an hour before", f"Squeeze {_said(each, tree)}.")
    for garnish in parts.garnishes:
        yield Step("half an hour before", f"Cut {garnish.count} × {garnish.name}.")
    for glass in parts.glassware:
        yield Step("half an hour before", f"Set out {glass.count} × {glass.name}.")
    if parts.tools:
        yield Step("half an hour before", f"Set out {', '.join(parts.tools)}.")


def _said(made: ToMake, tree: FamilyTree) -> str:
    inputs = ", ".join(
        f"{amount:.0f} × {tree.in_sentence(key)}"
        if unit == "each"
        else f"{amount:.0f} {unit} of {tree.in_sentence(key)}"
        for key, amount, unit in made.inputs
    )
    return f"{made.amount:.0f} {made.unit} of {tree.in_sentence(made.ingredient)} from {inputs}"
