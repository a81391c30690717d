"""What to know before pouring: allergens, cautions, age, use-by dates.

These are the usual cautions, not advice: local food rules and a doctor's word
come first. Allergens and cautions are those of `barkeep.domain.cautions.cautions`; its
mere notes, and what is true of every drink with alcohol, are left to where a
drink is analysed or published. Shelf lives after opening are common practice
unless the ingredient names a source.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.bottle import Bottle
from barkeep.domain.cautions.allergens import brought_in_sentence, contains_sentence
from barkeep.domain.pouring.assessment import LineAnswer
from barkeep.domain.pouring.minded import Minded


def warnings_for(minded: Minded, notices: Sequence[str]) -> tuple[str, ...]:
    """The warnings for a drink as it would be poured tonight, worst first; each is short."""
    found = [each.text for each in minded.cautions if each.level == "danger"]
    found += allergens_in_words(minded)
    found += [each.text for each in minded.cautions if each.level == "care"]
    found += notices
    return tuple(dict.fromkeys(found))


def notices_of(answers: Sequence[LineAnswer], snapshot: Snapshot) -> tuple[str, ...]:
    """What is to be known of the bottles: what a line asks of them, and how old they are."""
    found = [each.asks for each in answers if each.asks]
    for answer in answers:
        if answer.bottle is not None:
            found += age_of(answer.bottle, snapshot)
        found += _stale(answer, snapshot)
    return tuple(dict.fromkeys(found))


def allergens_in_words(minded: Minded) -> Iterator[str]:
    """What a drink carries, and what of it its spec does not, each a sentence."""
    if minded.allergens:
        yield contains_sentence(minded.allergens)
    if minded.brought_in:
        yield brought_in_sentence(minded.brought_in)


def age_of(bottle: Bottle, snapshot: Snapshot) -> Iterator[str]:
    """Whether a bottle has been open longer than its kind usually keeps, in a sentence."""
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


def _stale(answer: LineAnswer, snapshot: Snapshot) -> Iterator[str]:
    for bottle in snapshot.past_of(answer.line.wanted):
        yield f"{bottle.product.title} is past its use-by date of {bottle.use_by}: not counted."
