"""What to know before pouring: allergens, cautions, age, use-by dates.

These are the usual cautions, not advice: local food rules and a doctor's word
come first. Allergens and cautions are those of `barkeep.domain.cautions.cautions`; its
mere notes, and what is true of every drink with alcohol, are left to where a
drink is analysed or published. Shelf lives after opening are common practice
unless the ingredient names a source.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from math import floor

from barkeep.domain.amounts.amount import show_number
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.bottle import Bottle
from barkeep.domain.cautions.allergens import allergens_of, brought_in_sentence, contains_sentence
from barkeep.domain.cautions.cautions import cautions_for, occasion_of
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.pouring.assessment import LineAnswer
from barkeep.domain.pouring.sourcing import need
from barkeep.domain.specs.spec import Spec


def warnings_for(
    spec: Spec,
    answers: Sequence[LineAnswer],
    snapshot: Snapshot,
    *,
    serves: int | None = 1,
    after: Sequence[LineAnswer] = (),
) -> tuple[str, ...]:
    """The warnings for a drink as it would be poured tonight, worst first; each is short.

    So many `serves` are said to be there, None for any number, and lines are met
    otherwise `after` them: what of all that is past its best is named.
    """
    tree = snapshot.knowledge.tree
    used = frozenset(key for answer in answers for key in _used(answer))
    cautions = cautions_for(occasion_of(spec, used, tree), tree)
    found = [each.text for each in cautions if each.level == "danger"]
    found += _allergens(used, answers, tree)
    found += [each.text for each in cautions if each.level == "care"]
    found += [each.asks for each in answers if each.asks]
    found += [each for answer in answers for each in unasked(answer, tree)]
    for answer in answers:
        found += _past_its_best(answer, snapshot, serves)
        found += _stale(answer, snapshot)
    found += [said for each in after for said in _past_its_best(each, snapshot, 1)]
    return tuple(dict.fromkeys(found))


def _used(answer: LineAnswer) -> Iterable[str]:
    """What a line pours, or would pour once it is there."""
    if answer.derivation is None:
        return (answer.line.ingredient,)
    return (answer.derivation.offered, *answer.derivation.draws)


def _allergens(
    used: Iterable[str], answers: Iterable[LineAnswer], tree: FamilyTree
) -> Iterator[str]:
    there = allergens_of(used, tree)
    asked = allergens_of((key for answer in answers for key in answer.line.wanted), tree)
    brought = [allergen for allergen in there if allergen not in asked]
    if there:
        yield contains_sentence(there)
    if brought:
        yield brought_in_sentence(brought)


def unasked(answer: LineAnswer, tree: FamilyTree) -> Iterator[str]:
    """That a kind is poured that nobody asked for, and how much of it, in a sentence."""
    way = answer.derivation
    if way is None or way.exact or not tree.is_a(way.offered, way.wanted):
        return
    if not tree.only_when_asked(way.offered, way.wanted):
        return
    offered, wanted = tree.in_sentence(way.offered), tree.in_sentence(way.wanted)
    share = f"pour {show_number(way.ratio, fractions=False)} times as much"
    yield f"No ordinary {wanted} is there: {offered} is poured only when asked for; {share}."


def age_of(bottle: Bottle, snapshot: Snapshot) -> Iterator[str]:
    """That a bottle is past its date, why, and what comes of it, in a sentence."""
    said = snapshot.off_in_words(bottle)
    if said:
        yield said


def _past_its_best(answer: LineAnswer, snapshot: Snapshot, serves: int | None) -> Iterator[str]:
    """What of the bottles that a line is poured from is past its best, of each kind the first."""
    way = answer.derivation
    if way is None:
        return
    amount = need(answer.line, snapshot.knowledge.tree)
    for key, share in way.draws.items():
        sound, each = 0.0, amount * share
        for bottle in snapshot.usable.get(key, ()):
            said = snapshot.off_in_words(bottle)
            if said and (sound < each or bottle == answer.bottle):
                yield said
                break
            if said and (serves is None or sound < each * serves - 1e-9):
                yield f"After {floor(sound / each + 1e-9)}: {said}"
                break
            sound += 0.0 if said else bottle.level.amount


def _stale(answer: LineAnswer, snapshot: Snapshot) -> Iterator[str]:
    yield from map(snapshot.off_in_words, snapshot.past_of(answer.line.wanted))
