"""What to know before pouring: allergens, raw egg, age, use-by dates.

These are the usual cautions, not advice: local food rules and a doctor's word
come first. Shelf lives after opening are common practice unless the
ingredient names a source.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import TYPE_CHECKING

from barkeep.domain.inventory import Bottle
from barkeep.domain.snapshot import Snapshot
from barkeep.domain.specs import Spec
from barkeep.errors import spoken_list

if TYPE_CHECKING:
    from barkeep.domain.answers.makeable import LineAnswer

RAW_EGG = frozenset({"egg", "egg-white", "egg-yolk"})
RAW_EGG_NOTE = (
    "Raw egg: use pasteurised egg for anyone at risk (pregnant, very young, old or unwell) "
    "and follow your local food rules."
)


def warnings_for(spec: Spec, answers: Sequence[LineAnswer], snapshot: Snapshot) -> tuple[str, ...]:
    """The cautions for a drink as it would be poured tonight; each a sentence."""
    used = sorted({key for answer in answers for key in _used(answer)})
    found = [*_allergens(used, answers, snapshot)]
    if RAW_EGG.intersection(used):
        found.append(RAW_EGG_NOTE)
    for answer in answers:
        if answer.bottle is not None:
            found += _age(answer.bottle, snapshot)
        found += _stale(answer, snapshot)
    return tuple(dict.fromkeys(found))


def _used(answer: LineAnswer) -> Iterable[str]:
    """What a line pours, or would pour once it is there."""
    if answer.derivation is None:
        return (answer.line.ingredient,)
    return (answer.derivation.offered, *answer.derivation.draws)


def _allergens(
    used: Iterable[str], answers: Iterable[LineAnswer], snapshot: Snapshot
) -> Iterable[str]:
    tree = snapshot.knowledge.tree
    there = {word for key in used for word in tree[key].allergens}
    if not there:
        return
    asked = {word for answer in answers for word in tree[answer.line.ingredient].allergens}
    yield f"Contains {spoken_list(sorted(there), 'and')}, which can cause allergic reactions."
    brought = sorted(there - asked)
    if brought:
        yield f"A stand-in or choice of bottle brings in {spoken_list(brought, 'and')}."


def _age(bottle: Bottle, snapshot: Snapshot) -> Iterable[str]:
    shelf_life = snapshot.knowledge.tree[bottle.ingredient].shelf_life_days
    opened = bottle.level.opened
    if shelf_life is None or opened is None:
        return
    days = (snapshot.on - opened).days
    if days > shelf_life:
        yield (
            f"{bottle.product.title} was opened {days} days ago; "
            f"it is usually at its best for {shelf_life}."
        )


def _stale(answer: LineAnswer, snapshot: Snapshot) -> Iterable[str]:
    for bottle in snapshot.past.get(answer.line.ingredient, ()):
        yield f"{bottle.product.title} is past its use-by date of {bottle.use_by}: not counted."
