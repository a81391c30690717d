"""Strength, sugar and acid of what is made at home, summed over what goes in.

What is left in a strainer takes its share of everything along, so the mixture
counts before it is strained; only what is boiled down grows stronger. Volumes
are added; dissolved sugar takes the room it takes in water (ICUMSA, see
`barkeep.domain.liquids.sucrose`).
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from barkeep.domain.bar.knowledge import Knowledge
from barkeep.domain.bottles.bottle import Bottle
from barkeep.domain.drink.contents import WITHOUT_WEIGHT, Content, Pour, content_of
from barkeep.domain.ingredients.figures import liquid_of
from barkeep.domain.ingredients.relations import MadeFrom
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.liquids import sucrose
from barkeep.domain.phrases import Phrases, folded
from barkeep.domain.specs.spec import Line, Spec
from barkeep.errors import spoken_list
from barkeep.translation import tr

STEEPED = ("fresh-chilli", "coffee-beans", "tea-leaves", "gum-arabic")
"""What steeps and is strained out, or gives body: no sugar or acid worth counting (*common
practice*)."""
FATTY_G_PER_L = 20.0
"""From so much fat on a thing separates as it stands (*common practice*)."""


_NOT_BOILED = ("boiling water", "off the boil")
_HEATED = Phrases(("simmer*", "boil*", "reduc*", "cook*"), _NOT_BOILED)
_BOILED_DOWN = Phrases(("boil* down", "boil* away", "reduc*", "by half", "to half"), _NOT_BOILED)


@dataclass(frozen=True, slots=True)
class RecipePart:
    """So much of an ingredient that goes in, in its own unit, and the bottle it comes from."""

    ingredient: str
    amount: float
    bottle: Bottle | None = None


@dataclass(frozen=True, slots=True)
class Figures:
    """Strength in % vol, sugar and acid (as citric) in g per litre; None where not known.

    `unknown` says why one is not known, `notes` what is to be said of them.
    """

    abv_percent: float | None = None
    sugar_g_per_l: float | None = None
    acid_g_per_l: float | None = None
    unknown: tuple[str, ...] = ()
    notes: tuple[str, ...] = ()


def figures_of(batch: MadeFrom, parts: Sequence[RecipePart], knowledge: Knowledge) -> Figures:
    """What these parts come to once they are made into `batch`.

    Of what is not poured nothing is said. Fruit and beans by themselves give
    what is usual for the thing made.
    """
    tree = knowledge.tree
    if tree[batch.made].unit != "ml":
        return Figures()
    if len(batch.inputs) == 1 and tree[batch.inputs[0].ingredient].unit != "ml":
        return _usual(batch.made, tree)
    contents = [_content(part, knowledge) for part in parts]
    volume_ml = mixture_ml(contents, tree)
    if _BOILED_DOWN.found_in(folded(batch.how)) or volume_ml < batch.yields:
        volume_ml = batch.yields
    heated = _HEATED.found_in(folded(batch.how))
    return _summed(batch, contents=contents, volume_ml=volume_ml, heated=heated, tree=tree)


def expected_yield_ml(parts: Sequence[RecipePart], knowledge: Knowledge) -> float:
    """The volume that these parts come to when nothing is strained out or boiled away.

    >>> from barkeep.domain.ingredients.tree import FamilyTree, Ingredient
    >>> tree = FamilyTree({"water": Ingredient("water", "Water"),
    ...     "sweetener": Ingredient("sweetener", "Sugar", unit="g")})
    >>> parts = (RecipePart("sweetener", 1000.0), RecipePart("water", 1000.0))
    >>> round(expected_yield_ml(parts, Knowledge(tree)), 1)
    1626.5
    """
    return mixture_ml([_content(part, knowledge) for part in parts], knowledge.tree)


def mixture_ml(contents: Sequence[Content], tree: FamilyTree) -> float:
    """The volume of all contents together, sugar dissolved; water is a gram a millilitre."""
    sugar_g = sum(each.sugar_g for each in contents if _dissolves(each, tree))
    rest_ml = sum(_volume_ml(each, tree) for each in contents if not _dissolves(each, tree))
    if not sugar_g or not rest_ml:
        return rest_ml + sum(each.volume_ml for each in contents if _dissolves(each, tree))
    volume_ml, most = rest_ml, sucrose.g_per_l(sucrose.HIGHEST_BRIX)
    before_ml = 0.0
    while abs(volume_ml - before_ml) > 1e-9 * volume_ml:  # each round is ten times nearer
        before_ml = volume_ml
        strength = min(most, 1000.0 * sugar_g / volume_ml)
        volume_ml = rest_ml + sugar_g * sucrose.volume_taken_ml_per_g(strength)
    return volume_ml


def _summed(
    batch: MadeFrom,
    *,
    contents: Sequence[Content],
    volume_ml: float,
    heated: bool,
    tree: FamilyTree,
) -> Figures:
    ethanol_ml = sum(each.ethanol_ml for each in contents)
    strange = [each.pour.ingredient for each in contents if not _known(each, tree)]
    strange_liquid = [key for key in strange if tree[key].unit == "ml"]
    boiled_off = heated and ethanol_ml > 0.0
    abv = None if strange_liquid or boiled_off else 100.0 * ethanol_ml / volume_ml
    sugar = acid = None
    if not strange:
        sugar = 1000.0 * sum(each.sugar_g for each in contents) / volume_ml
        acid = 1000.0 * sum(each.acid_g for each in contents) / volume_ml
    return Figures(
        abv_percent=abv,
        sugar_g_per_l=sugar,
        acid_g_per_l=acid,
        unknown=tuple(
            _why_unknown(
                batch.made,
                strange=strange,
                liquids=strange_liquid,
                boiled_off=boiled_off,
                tree=tree,
            )
        ),
        notes=tuple(_notes(contents, volume_ml, sugar, heated)),
    )


def _why_unknown(
    made: str, *, strange: list[str], liquids: list[str], boiled_off: bool, tree: FamilyTree
) -> Iterator[str]:
    if strange:
        names = spoken_list([tree.in_sentence(key) for key in dict.fromkeys(strange)], "and")
        yield (
            tr(
                "How much of the strength, sugar and acid comes from {names} is not known: "
                "those usual for {made} count.",
                names=names,
                made=tree.in_sentence(made),
            )
            if liquids
            else tr(
                "How much of the sugar and acid comes from {names} is not known: "
                "those usual for {made} count.",
                names=names,
                made=tree.in_sentence(made),
            )
        )
    if boiled_off:
        yield tr("It is heated: how much of the alcohol stays is not known.")


def _notes(
    contents: Sequence[Content], volume_ml: float, sugar: float | None, heated: bool
) -> Iterator[str]:
    if 1000.0 * sum(each.fat_g for each in contents) / volume_ml >= FATTY_G_PER_L:
        yield tr("It holds fat and parts as it stands: shake it before use (common practice).")
    if heated:
        yield tr("Make up with water what boils away beyond the yield (common practice).")
    if sugar is not None and sugar >= sucrose.g_per_l(sucrose.SATURATED_BRIX) - 1.0:
        yield tr("It holds as much sugar as it can at 20 °C: crystals may settle in the cold.")


def _usual(made: str, tree: FamilyTree) -> Figures:
    usual = liquid_of(made, tree)
    if not usual.known:
        name = tree.in_sentence(made)
        nothing = tr("Nothing is known of the strength and sugar of {name}.", name=name)
        return Figures(unknown=(nothing,))
    return Figures(usual.abv.value, usual.sugar.value, usual.acid.value)


def _content(part: RecipePart, knowledge: Knowledge) -> Content:
    line = Line("", part.ingredient, quantity=part.amount)
    pour = Pour(part.ingredient, part.bottle)
    crushed = Spec(part.ingredient, (line,), technique="blended")  # it gives what is in it
    return content_of(line, pour, crushed, knowledge)


def _known(content: Content, tree: FamilyTree) -> bool:
    key = content.pour.ingredient
    if any(tree.is_a(key, kind) for kind in (*WITHOUT_WEIGHT, *STEEPED)):
        return True
    return content.counted and content.liquid.known


def _dissolves(content: Content, tree: FamilyTree) -> bool:
    key = content.pour.ingredient
    return tree[key].unit != "ml" and tree.is_a(key, "sweetener")


def _volume_ml(content: Content, tree: FamilyTree) -> float:
    if tree.is_a(content.pour.ingredient, "water"):
        return content.quantity * 1000.0 / sucrose.water_density_kg_m3(20.0)
    return content.volume_ml
