"""What to know before pouring: allergens, cautions, age, use-by dates.

These are the usual cautions, not advice: local food rules and a doctor's word
come first. Allergens and cautions are those of `barkeep.domain.cautions.cautions`; its
mere notes, and what is true of every drink with alcohol, are left to where a
drink is analysed or published. Shelf lives after opening are common practice
unless the ingredient names a source.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from math import floor

from barkeep.domain.amounts.amount import show_number
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.cautions.allergens import brought_in_sentence, contains_sentence
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.pouring.assessment import LineAnswer
from barkeep.domain.pouring.minded import Minded
from barkeep.domain.pouring.sourcing import need
from barkeep.translation import tr


def warnings_for(minded: Minded, notices: Sequence[str]) -> tuple[str, ...]:
    """The warnings for a drink as it would be poured tonight, worst first; each is short."""
    found = [each.text for each in minded.cautions if each.level == "danger"]
    found += allergens_in_words(minded)
    found += [each.text for each in minded.cautions if each.level == "care"]
    found += notices
    return tuple(dict.fromkeys(found))


def notices_of(
    answers: Sequence[LineAnswer],
    snapshot: Snapshot,
    *,
    serves: int | None = 1,
    after: Sequence[LineAnswer] = (),
) -> tuple[str, ...]:
    """What is to be known of the bottles: what a line asks of them, and how old they are.

    So many `serves` are said to be there, None for any number, and lines are met
    otherwise `after` them: what of all that is past its best is named.
    """
    tree = snapshot.knowledge.tree
    found = [each.asks for each in answers if each.asks]
    found += [each for answer in answers for each in unasked(answer, tree)]
    for answer in answers:
        found += _past_its_best(answer, snapshot, serves)
        found += _stale(answer, snapshot)
    found += [said for each in after for said in _past_its_best(each, snapshot, 1)]
    return tuple(dict.fromkeys(found))


def allergens_in_words(minded: Minded) -> Iterator[str]:
    """What a drink carries, and what of it its spec does not, each a sentence."""
    if minded.allergens:
        yield contains_sentence(minded.allergens)
    if minded.brought_in:
        yield brought_in_sentence(minded.brought_in)


def unasked(answer: LineAnswer, tree: FamilyTree) -> Iterator[str]:
    """That a kind is poured that nobody asked for, and how much of it, in a sentence."""
    way = answer.derivation
    if way is None or way.exact or not tree.is_a(way.offered, way.wanted):
        return
    if not tree.only_when_asked(way.offered, way.wanted):
        return
    offered, wanted = tree.in_sentence(way.offered), tree.in_sentence(way.wanted)
    yield tr(
        "No ordinary {wanted} is there: {offered} is poured only when asked for; "
        "pour {times} times as much.",
        wanted=wanted,
        offered=offered,
        times=show_number(way.ratio, fractions=False),
    )


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
                yield tr("After {serves}: {said}", serves=floor(sound / each + 1e-9), said=said)
                break
            sound += 0.0 if said else bottle.level.amount


def _stale(answer: LineAnswer, snapshot: Snapshot) -> Iterator[str]:
    yield from map(snapshot.off_in_words, snapshot.past_of(answer.line.wanted))
