"""Making a syrup, a juice, a cordial or an infusion: what it draws, what comes out, and its words.

A recipe is scaled to the amount wanted. What it draws comes from the bottles
in the order they are used up; pieces are whole. What comes out is worked out
in `barkeep.domain.making.figures`.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass, replace
from datetime import date, timedelta

from barkeep.domain.amounts.rounding import whole_up
from barkeep.domain.amounts.units import Unit
from barkeep.domain.bar.knowledge import Knowledge
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.bottle import Bottle
from barkeep.domain.bottles.level_words import quantity
from barkeep.domain.bottles.pour_order import pour_order
from barkeep.domain.cautions.allergens import allergens_of, contains_sentence
from barkeep.domain.cautions.cautions import cautions_for, occasion_of
from barkeep.domain.days import day_of_year_short, day_short
from barkeep.domain.ingredients.relations import Input, MadeFrom
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.making.figures import Figures, RecipePart, figures_of
from barkeep.domain.making.made_here import freely_there
from barkeep.domain.pouring.supply import Draw
from barkeep.domain.specs.spec import Spec
from barkeep.translation import tr

LEAST = 1e-9
"""Less than this of anything is arithmetic, not an amount."""


@dataclass(frozen=True, slots=True)
class InputPlan:
    """One input: how much it takes and from which bottles.

    `always_there` draws nothing: sugar and water, unless the owner says otherwise.
    """

    ingredient: str
    unit: Unit
    need: float
    draws: tuple[Draw, ...] = ()
    always_there: bool = False

    @property
    def have(self) -> float:
        """What the bottles give of it, at most what it takes."""
        return self.need if self.always_there else sum(each.amount for each in self.draws)

    @property
    def short(self) -> bool:
        """Whether there is too little of it."""
        return self.have < self.need * (1.0 - LEAST)


@dataclass(frozen=True, slots=True)
class Making:
    """A batch to be made, in the made ingredient's own unit.

    `recipe` is scaled to `amount`. Of `figures` None is what is not known, and
    `unknown` says why. `past` names bottles that hold some of an input and are
    left out for their date.
    """

    recipe: MadeFrom
    amount: float
    unit: Unit
    inputs: tuple[InputPlan, ...]
    figures: Figures
    made: date
    use_by: date | None
    past: tuple[str, ...] = ()
    notes: tuple[str, ...] = ()
    cautions: tuple[str, ...] = ()

    @property
    def short(self) -> tuple[InputPlan, ...]:
        """The inputs there is too little of."""
        return tuple(each for each in self.inputs if each.short)


def recipes_for(made: str, knowledge: Knowledge) -> tuple[MadeFrom, ...]:
    """Every way to make something, the closest first."""
    known = (each for each in knowledge.made_from if each.made == made)
    return tuple(sorted(known, key=lambda each: -each.closeness))


def scaled(recipe: MadeFrom, amount: float) -> MadeFrom:
    """The recipe for another yield, in the made ingredient's unit."""
    share = amount / recipe.yields
    inputs = tuple(Input(each.ingredient, each.amount * share) for each in recipe.inputs)
    return replace(recipe, inputs=inputs, yields=amount)


def plan_making(
    recipe: MadeFrom, amount: float, snapshot: Snapshot, made: date | None = None
) -> Making:
    """What making so much takes from this bar, and what comes out; made on the snapshot's day."""
    tree = snapshot.knowledge.tree
    batch, day = scaled(recipe, amount), made or snapshot.on
    inputs = tuple(_inputs(batch, snapshot))
    figures = figures_of(batch, tuple(_parts(inputs)), snapshot.knowledge)
    life = snapshot.keeps_days(recipe.made)
    use_by = None if life is None else day + timedelta(days=life)
    return Making(
        recipe=batch,
        amount=amount,
        unit=tree[recipe.made].unit,
        inputs=inputs,
        figures=figures,
        made=day,
        use_by=use_by,
        past=tuple(_past(inputs, snapshot)),
        notes=tuple(_notes(batch, inputs, figures, snapshot)),
        cautions=tuple(
            _cautions(batch, inputs=inputs, figures=figures, snapshot=snapshot, use_by=use_by)
        ),
    )


def most_made(recipe: MadeFrom, snapshot: Snapshot) -> float | None:
    """How much the bar's inputs give at most; None where all of them are always there."""
    most = math.inf
    for each in recipe.inputs:
        if not freely_there(each.ingredient, snapshot):
            there = sum(b.level.amount for b in _bottles(each.ingredient, snapshot))
            if snapshot.knowledge.tree[each.ingredient].unit == "each":
                there = math.floor(there + LEAST)
            most = min(most, there / each.amount * recipe.yields)
    return None if math.isinf(most) else most


def batch_sizes(recipe: MadeFrom, snapshot: Snapshot) -> tuple[float, ...]:
    """Amounts worth offering: half a batch, one, two, and all that the inputs give."""
    whole = snapshot.knowledge.tree[recipe.made].unit == "each"
    step = 1.0 if whole else 5.0
    sizes = {max(step, round(share * recipe.yields / step) * step) for share in (0.5, 1.0, 2.0)}
    most = most_made(recipe, snapshot)
    if most is not None and most >= step:
        sizes = {size for size in sizes if size <= most} | {math.floor(most / step) * step}
    return tuple(sorted(sizes))


def _inputs(batch: MadeFrom, snapshot: Snapshot) -> Iterator[InputPlan]:
    tree, taken = snapshot.knowledge.tree, dict[int, float]()
    for each in batch.inputs:
        key, unit = each.ingredient, tree[each.ingredient].unit
        need = whole_up(each.amount) if unit == "each" else each.amount
        if freely_there(key, snapshot):
            yield InputPlan(key, unit, need, always_there=True)
        else:
            yield InputPlan(key, unit, need, tuple(_draws(key, need, snapshot, taken)))


def _draws(key: str, need: float, snapshot: Snapshot, taken: dict[int, float]) -> Iterator[Draw]:
    """From the first bottle on; what another input has taken already is not there twice."""
    for bottle in _bottles(key, snapshot):
        there = bottle.level.amount - taken.get(bottle.id, 0.0)
        amount = min(there, need)
        if amount > LEAST:
            yield Draw(bottle, amount)
            taken[bottle.id] = taken.get(bottle.id, 0.0) + amount
            need -= amount
        if need <= LEAST:
            return


def _bottles(key: str, snapshot: Snapshot) -> Iterator[Bottle]:
    """Usable bottles of an input: its own, then those of the kinds below it, nearest first.

    What is poured only when asked for comes after all that is ordinary.
    """
    tree = snapshot.knowledge.tree
    for asked_for in (False, True):
        for kinds in tree.downwards(key):
            some = (each for each in kinds if bool(tree.only_when_asked(each, key)) == asked_for)
            found = [b for kind in some for b in snapshot.usable.get(kind, ())]
            fit = (b for b in found if b.product.unit == tree[key].unit)
            yield from pour_order(fit, snapshot.turn_of)


def _parts(inputs: tuple[InputPlan, ...]) -> Iterator[RecipePart]:
    """What goes in, bottle by bottle; what is short goes in as it usually is."""
    for each in inputs:
        for draw in each.draws:
            yield RecipePart(draw.bottle.ingredient, draw.amount, draw.bottle)
        drawn = sum(draw.amount for draw in each.draws)
        if each.need - drawn > LEAST:
            yield RecipePart(each.ingredient, each.need - drawn)


def _past(inputs: tuple[InputPlan, ...], snapshot: Snapshot) -> Iterator[str]:
    for each in inputs:
        if not each.always_there:
            for bottle in snapshot.past_of([each.ingredient]):
                yield _past_sentence(bottle, snapshot)


def _past_sentence(bottle: Bottle, snapshot: Snapshot) -> str:
    dated = bottle.made or bottle.received
    end = snapshot.ends.get(bottle.id)
    until = f" ({_day(end.last)})" if end else ""
    if end is not None and end.begun is not None and end.begun != dated:
        day = _day(end.begun)
        begun = (
            tr("opened on {day}", day=day)
            if end.since == "opened"
            else tr("made on {day}", day=day)
        )
        until = f" ({_day(end.last)}, {begun})"
    name = snapshot.knowledge.tree.in_sentence(bottle.ingredient)
    if not dated:
        return tr("The {name} is past its date{until} and is not counted.", name=name, until=until)
    return tr(
        "The {name} of {day} is past its date{until} and is not counted.",
        name=name,
        day=_day(dated),
        until=until,
    )


def _notes(
    batch: MadeFrom, inputs: tuple[InputPlan, ...], figures: Figures, snapshot: Snapshot
) -> Iterator[str]:
    tree = snapshot.knowledge.tree
    for plan, exact in zip(inputs, batch.inputs, strict=True):
        if plan.unit == "each" and plan.need - exact.amount > 0.05:
            name = tree.in_sentence(plan.ingredient)
            yield tr(
                "Pieces are whole: {need:g} × {name} give a little more than is needed.",
                need=plan.need,
                name=name,
            )
    for plan in plans_to_make_first(inputs, snapshot):
        yield tr("{name} can be made here first.", name=tree.name(plan.ingredient))
    yield from figures.notes


def plans_to_make_first(inputs: tuple[InputPlan, ...], snapshot: Snapshot) -> tuple[InputPlan, ...]:
    """The inputs that are short and have a recipe of their own."""
    made = {each.made for each in snapshot.knowledge.made_from}
    return tuple(each for each in inputs if each.short and each.ingredient in made)


def _cautions(
    batch: MadeFrom,
    inputs: tuple[InputPlan, ...],
    figures: Figures,
    snapshot: Snapshot,
    use_by: date | None,
) -> Iterator[str]:
    tree = snapshot.knowledge.tree
    keys = frozenset(each.ingredient for each in batch.inputs) | {batch.made}
    carried = allergens_of(keys, tree, {batch.made})
    if carried:
        yield contains_sentence(carried)
    occasion = occasion_of(
        Spec(batch.made, (), method=batch.how),
        keys,
        tree,
        abv_percent=figures.abv_percent,
        ph_below_6=any(tree[key].acid_g_per_l for key in keys),
    )
    yield from (each.text for each in cautions_for(occasion, tree))
    for bottle in dict.fromkeys(draw.bottle for each in inputs for draw in each.draws):
        if said := snapshot.off_in_words(bottle):
            yield said
        if bottle.use_by is not None and use_by is not None and bottle.use_by < use_by:
            name = tree.in_sentence(bottle.ingredient)
            yield tr(
                "The {name} that goes in is to be used by {first}, "
                "before the {last} of what it makes.",
                name=name,
                first=_day(bottle.use_by),
                last=_day(use_by),
            )


def _day(day: date) -> str:
    return day_of_year_short(day)


def drawn_in_words(plan: InputPlan) -> str:
    """Where an input comes from: *always there*, or each bottle with what it gives."""
    if plan.always_there:
        return tr("always there")
    if not plan.draws:
        return tr("not in the bar")
    draws = plan.draws
    if len(draws) == 1 and not plan.short:
        return draws[0].bottle.product.title
    return ", ".join(
        tr(
            "{amount} of {bottle}",
            amount=quantity(each.amount, plan.unit),
            bottle=_dated(each.bottle),
        )
        for each in draws
    )


def _dated(bottle: Bottle) -> str:
    """A bottle by its title; of several batches the day tells which."""
    title = bottle.product.title
    if not bottle.made:
        return title
    return tr("{bottle} made on {day}", bottle=title, day=day_short(bottle.made))


def short_in_words(plan: InputPlan, tree: FamilyTree) -> str:
    """What there is too little of: how much is needed, and how much is there."""
    need, have = quantity(plan.need, plan.unit), quantity(plan.have, plan.unit)
    name = tree.in_sentence(plan.ingredient)
    return tr("Short of {name}: {need} needed, {have} there.", name=name, need=need, have=have)


def figures_in_words(figures: Figures) -> str:
    """Strength, sugar and acid as far as they are known; empty where none is."""
    known = []
    if figures.abv_percent is not None:
        known.append(f"{figures.abv_percent:.1f} % vol")
    if figures.sugar_g_per_l is not None:
        known.append(tr("{amount:.0f} g/l of sugar", amount=figures.sugar_g_per_l))
    if figures.acid_g_per_l is not None:
        known.append(tr("{amount:.1f} g/l of acid", amount=figures.acid_g_per_l))
    return tr("It comes to {figures}.", figures=", ".join(known)) if known else ""
