"""What is to be minded of a drink as it would be poured: cautions by weight, and allergens."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace

from barkeep.domain.cautions.allergens import Allergen, allergens_of, contains_sentence
from barkeep.domain.cautions.cautions import (
    Caution,
    allergen_tags,
    cautions_for,
    now_tags,
    occasion_of,
    of_allergens,
)
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.pouring.assessment import LineAnswer
from barkeep.domain.specs.spec import Spec
from barkeep.translation import tr


@dataclass(frozen=True, slots=True)
class Minded:
    """The drink's own cautions, the allergens it carries, and those that its spec does not.

    An optional line that nothing meets brings nothing; a missing one that is needed does, since
    the drink is not made without it.
    """

    cautions: tuple[Caution, ...] = ()
    allergens: tuple[Allergen, ...] = ()
    brought_in: tuple[Allergen, ...] = ()

    @property
    def all_cautions(self) -> tuple[Caution, ...]:
        """The cautions with those about allergens that can kill within minutes."""
        return (*self.cautions, *of_allergens(self.allergens))

    @property
    def now_tags(self) -> tuple[str, ...]:
        """What can hurt now, in a word or two each: *raw egg*, *tree nuts*."""
        return now_tags(self.all_cautions)

    @property
    def allergen_tags(self) -> tuple[str, ...]:
        """What an allergic guest must know: *egg*, *tree nuts*, *sulphites*."""
        return allergen_tags(self.cautions, self.allergens)

    @property
    def in_brief(self) -> str:
        """Both in one line, each word once: *! raw egg, tree nuts · egg · sulphites*."""
        now = f"! {', '.join(map(tr, self.now_tags))}" if self.now_tags else ""
        others = (tr(each) for each in self.allergen_tags if each not in self.now_tags)
        return " · ".join(filter(None, (now, *others)))

    def with_more(self, cautions: Iterable[Caution]) -> Minded:
        """The same with further cautions, those that are there already but once."""
        known = {each.key for each in self.cautions}
        return replace(
            self, cautions=(*self.cautions, *(each for each in cautions if each.key not in known))
        )


def minded_after(
    before: Minded, spec: Spec, answers: Sequence[LineAnswer], tree: FamilyTree
) -> tuple[str, ...]:
    """What these ways to meet the lines bring that was not to be minded before, in sentences."""
    after = minded_of(spec, answers, tree)
    known, carried = {each.key for each in before.cautions}, set(before.allergens)
    found = [each.text for each in after.cautions if each.tier == "now" and each.key not in known]
    more = [each for each in after.allergens if each not in carried]
    return (*found, *([contains_sentence(more)] if more else []))


def minded_of(spec: Spec, answers: Sequence[LineAnswer], tree: FamilyTree) -> Minded:
    """What is to be minded of a drink whose lines are met so."""
    used = frozenset(key for answer in answers for key in _used(answer))
    home_made = frozenset(key for answer in answers for key in _made_at_home(answer))
    carried = allergens_of(used, tree, home_made)
    asked = allergens_of((key for answer in answers for key in answer.line.wanted), tree)
    return Minded(
        cautions_for(occasion_of(spec, used, tree), tree),
        carried,
        tuple(each for each in carried if each not in asked),
    )


def _used(answer: LineAnswer) -> Iterable[str]:
    """What a line pours, or would pour once it is there; nothing where it is left out."""
    if answer.derivation is None:
        return (answer.line.ingredient,) if answer.required else ()
    return (answer.derivation.offered, *answer.derivation.draws)


def _made_at_home(answer: LineAnswer) -> Iterable[str]:
    """What a line pours that comes out of the owner's own kitchen."""
    if answer.bottle is not None:
        return (answer.bottle.ingredient,) if answer.bottle.product.house_made else ()
    ways = answer.derivation
    return (ways.offered,) if ways is not None and ways.offered not in ways.draws else ()
