"""`barkeep make`: a syrup, juice, cordial or infusion made here."""

from __future__ import annotations

from collections.abc import Iterator

from barkeep.application.bar import Bar
from barkeep.application.finding import find_ingredient
from barkeep.cli.arguments import USE_BY, Arguments, argument, command, day, flag
from barkeep.cli.bar_source import in_bar
from barkeep.cli.output import Answer, iso, rounded, table
from barkeep.domain.amounts.measures import quantity_in
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.bottle import Bottle
from barkeep.domain.bottles.level_words import quantity
from barkeep.domain.ingredients.relations import MadeFrom
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.making.figures import RecipePart, expected_yield_ml
from barkeep.domain.making.house_made import (
    Making,
    drawn_in_words,
    figures_in_words,
    short_in_words,
)
from barkeep.domain.spec_text.recipes import read_inputs
from barkeep.errors import InvalidField


@command(
    argument("name", metavar="INGREDIENT", help="what to make"),
    argument("amount", metavar="AMOUNT", help="how much of it, such as 500 ml"),
    argument(
        "--input",
        dest="inputs",
        action="append",
        metavar="INPUT=V",
        help="what it is made from in your own way, such as “sugar=500 g”; once for each input",
    ),
    argument(
        "--yields", metavar="V", help="how much your inputs give (default: all of them together)"
    ),
    argument("--how", metavar="TEXT", default="", help="how it is made in your own way"),
    flag("--keep-recipe", "keep your own way of making it"),
    flag("--plan", "only show what it would take and give; --keep-recipe keeps the recipe"),
    flag("--or-less", "make less where the inputs do not give as much"),
    argument("--made", type=day, metavar="DAY", help="when it was made (default: today)"),
    USE_BY,
)
@in_bar
def run(arguments: Arguments, bar: Bar) -> Answer:
    """Make a batch, or show what making it would take."""
    snapshot, tree = bar.snapshot, bar.snapshot.knowledge.tree
    key = find_ingredient(tree, arguments.name, owned=snapshot.owned)
    amount = _amount(arguments.amount, key, snapshot)
    recipe = _own_recipe(arguments, key, snapshot)
    plan = bar.house.plan(
        key, amount, recipe=recipe, made=arguments.made, or_less=arguments.or_less
    )
    bottle = None if arguments.plan else _make(arguments, plan, recipe, bar)
    if arguments.plan and arguments.keep_recipe and recipe is not None:
        bar.knowledge.set_recipe(recipe)
    return Answer(lambda: _making_json(plan, bottle, tree), _shown(plan, bottle, tree))


def _make(arguments: Arguments, plan: Making, recipe: MadeFrom | None, bar: Bar) -> Bottle:
    return bar.house.make(
        plan.recipe.made,
        plan.amount,
        recipe=recipe,
        made=arguments.made,
        use_by=arguments.use_by,
        keep_recipe=arguments.keep_recipe,
    ).value


def _amount(text: str, key: str, snapshot: Snapshot) -> float:
    return quantity_in(text, snapshot.knowledge.tree[key].unit, snapshot.settings.units)


def _own_recipe(arguments: Arguments, key: str, snapshot: Snapshot) -> MadeFrom | None:
    if not arguments.inputs:
        if arguments.keep_recipe or arguments.yields:
            given = "--keep-recipe" if arguments.keep_recipe else "--yields"
            raise InvalidField(given, arguments.name, "say what it is made from, with --input")
        return None
    tree = snapshot.knowledge.tree
    inputs = read_inputs("\n".join(arguments.inputs), tree, snapshot.settings.units)
    if arguments.yields is not None:
        yields = _amount(arguments.yields, key, snapshot)
    elif tree[key].unit == "ml":
        parts = [RecipePart(each.ingredient, each.amount) for each in inputs]
        yields = expected_yield_ml(parts, snapshot.knowledge)
    else:
        raise InvalidField("--input", arguments.name, "say how much it gives, with --yields")
    return MadeFrom(key, inputs, yields, arguments.how)


def _making_json(plan: Making, bottle: Bottle | None, tree: FamilyTree) -> dict[str, object]:
    use_by = plan.use_by if bottle is None else bottle.use_by
    return {
        "ingredient": tree.name(plan.recipe.made),
        "unit": plan.unit,
        "amount": rounded(plan.amount, 2),
        "bottle": None if bottle is None else bottle.id,
        "made": iso(plan.made),
        "use_by": iso(use_by),
        "inputs": [
            {
                "ingredient": tree.name(each.ingredient),
                "unit": each.unit,
                "need": rounded(each.need, 2),
                "have": rounded(each.have, 2),
                "always_there": each.always_there,
                "draws": [
                    {
                        "bottle": draw.bottle.id,
                        "title": draw.bottle.product.title,
                        "amount": rounded(draw.amount, 2),
                    }
                    for draw in each.draws
                ],
            }
            for each in plan.inputs
        ],
        "abv_percent": rounded(plan.figures.abv_percent, 2),
        "sugar_g_per_l": rounded(plan.figures.sugar_g_per_l, 1),
        "acid_g_per_l": rounded(plan.figures.acid_g_per_l, 1),
        "unknown": list(plan.figures.unknown),
        "past": list(plan.past),
        "how": plan.recipe.how,
        "notes": list(plan.notes),
        "cautions": list(plan.cautions),
    }


def _shown(plan: Making, bottle: Bottle | None, tree: FamilyTree) -> Iterator[str]:
    yield f"{tree.name(plan.recipe.made)}, {quantity(plan.amount, plan.unit)}"
    yield ""
    rows = [
        (quantity(each.need, each.unit), tree.name(each.ingredient), drawn_in_words(each))
        for each in plan.inputs
    ]
    yield table(("measure", "of", "from"), rows, right="rll")
    yield ""
    if plan.recipe.how:
        yield plan.recipe.how
    yield from (sentence for sentence in (figures_in_words(plan.figures),) if sentence)
    yield from plan.figures.unknown
    yield from (short_in_words(each, tree) for each in plan.short)
    yield from plan.past
    yield from plan.notes
    yield from (f"! {caution}" for caution in plan.cautions)
    use_by = plan.use_by if bottle is None else bottle.use_by
    keeps = f", use by {use_by}" if use_by else ""
    if bottle is not None:
        yield f"It is on the shelf as #{bottle.id}{keeps}."
    else:
        yield f"Made on {plan.made}{keeps}. Nothing was written."
