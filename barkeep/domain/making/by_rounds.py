"""A batch whose base is mixed ahead and worked on ice in rounds: blended, or shaken with egg.

What a blender makes thick melts in a jug, and egg and cream neither keep in a
bottle nor foam unless they are shaken. So the rest is mixed ahead without
water, and the ice gives it round by round. All of it is *common practice*.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Literal

from barkeep.domain.amounts.measures import show_quantity
from barkeep.domain.drink.contents import Content
from barkeep.domain.drink.ice import is_carbonated
from barkeep.domain.ingredients.composition import shipped_portions
from barkeep.domain.ingredients.relations import Technique
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import counted
from barkeep.domain.specs.glasses import Glass, shipped_glassware
from barkeep.domain.specs.shown_lines import names_in_sentence
from barkeep.errors import CannotBatch, spoken_list
from barkeep.translation import tr, tr_noop

Worked = Literal["shaken", "blended"]

EGG_AND_CREAM = ("egg-product", "cream", "aquafaba")
"""What is shaken in round by round, with everything below it."""
SHAKEN_IN = ("shaken", "thrown")
"""Techniques that shake egg and cream in."""
BLENDER_ML = 1000.0
"""What a jar of one and a half litres blends well at once, ice and all (*common practice*)."""
TIN = "large-tin"
"""What a round is shaken in where nobody names a tin."""


@dataclass(frozen=True, slots=True)
class Rounds:
    """Rounds of a batch: how each is worked, of how many serves, and what goes into a full one.

    `base_ml` is what of the base goes into a full round, `apart` what joins it
    there, in words, and `ice_g` the ice that is blended in, 0 where it is shaken.
    """

    worked: Worked
    count: int
    serves_each: float
    base_ml: float
    apart: tuple[str, ...]
    ice_g: float

    @property
    def sentence(self) -> str:
        """What to do, in one sentence."""
        base = show_quantity(float(round(self.base_ml)), "ml")
        ice_g = 5 * round(self.ice_g / 5)
        ice = tr("{ice_g} g of crushed ice", ice_g=ice_g) if self.ice_g else tr("fresh ice")
        what = spoken_list([tr("{amount} of the base", amount=base), *self.apart, ice], "and")
        do = (
            tr_noop("Shake it as it is served, in {rounds}: {what} a round (common practice).")
            if self.worked == "shaken"
            else tr_noop("Blend it as it is served, in {rounds}: {what} a round (common practice).")
        )
        return tr(do, rounds=self._rounds_in_words, what=what)

    @property
    def _rounds_in_words(self) -> str:
        rounds, serves = counted(self.count, "round"), self.serves_each
        if self.count == 1:
            return rounds
        if serves == 1.0:
            return tr("{rounds} of {serves:g} serve", rounds=rounds, serves=serves)
        return tr("{rounds} of {serves:g} serves", rounds=rounds, serves=serves)


def is_shaken_in(key: str, tree: FamilyTree) -> bool:
    """Whether something is shaken in round by round: egg and cream."""
    return any(tree.is_a(key, kind) for kind in EGG_AND_CREAM if kind in tree)


def worked_by_rounds(
    technique: Technique, contents: Sequence[Content], tree: FamilyTree
) -> Worked | None:
    """Whether a drink is finished in rounds, and how; None where it may stand mixed."""
    if technique == "blended":
        return "blended"
    fragile = any(each.quantity and is_shaken_in(each.pour.ingredient, tree) for each in contents)
    return "shaken" if technique in SHAKEN_IN and fragile else None


def rounds_for(
    worked: Worked,
    contents: Sequence[Content],
    *,
    serves: float,
    ice_ml: float,
    tree: FamilyTree,
    tin: Glass | None = None,
) -> Rounds:
    """The rounds of so many serves; `ice_ml` is the water one serve takes from its ice.

    They are shaken in a large tin where no other is named. Raises `CannotBatch`
    for a tin that holds nothing.
    """
    worked_on = [each for each in contents if not is_carbonated(each.pour.ingredient, tree)]
    one_ml = sum(each.volume_ml for each in worked_on)
    if worked == "blended":
        at_once_ml, one_ml_in = BLENDER_ML, one_ml + ice_ml
    else:
        held_in = tin or shipped_glassware().glasses[TIN]
        if held_in.wash_line_ml <= 0.0:
            raise CannotBatch(tr("the tin"), tr("it holds nothing"))
        at_once_ml, one_ml_in = held_in.wash_line_ml, one_ml
    each_serves = float(max(1, math.floor(at_once_ml / one_ml_in + 1e-9)))
    count = max(1, math.ceil(serves / each_serves - 1e-9))
    # Rounds alike are easier than a small one at the end.
    each_serves = float(math.ceil(serves / count - 1e-9)) if count > 1 else serves
    apart = [each for each in worked_on if is_shaken_in(each.pour.ingredient, tree)]
    base_ml = one_ml - sum(each.volume_ml for each in apart)
    return Rounds(
        worked=worked,
        count=max(1, math.ceil(serves / each_serves - 1e-9)),
        serves_each=each_serves,
        base_ml=base_ml * each_serves,
        apart=tuple(_in_words(each, each_serves, tree) for each in apart if each.quantity),
        ice_g=ice_ml * each_serves if worked == "blended" else 0.0,
    )


def _in_words(content: Content, serves: float, tree: FamilyTree) -> str:
    """*2 × egg white*, *45 ml of double cream*: eggs are counted."""
    key, name = content.pour.ingredient, names_in_sentence(content.line, tree)
    unit, amount = tree[key].unit, content.quantity * serves
    piece_ml = shipped_portions().piece_ml.get(key)
    if unit == "each" or piece_ml:
        pieces = amount / (piece_ml or 1.0)
        return f"{round(pieces * 4) / 4:g} × {name}"
    return tr("{amount} of {name}", amount=show_quantity(float(round(amount)), unit), name=name)
