"""A batch in whole bottles, in a vessel of some kind, and in rounds through a small tin."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from functools import cache
from typing import Annotated

from barkeep import resource_files
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.bottle import Bottle
from barkeep.domain.bottles.level_words import quantity
from barkeep.domain.making.batch_measures import BatchLine, ForVessel
from barkeep.domain.making.batches import Batch, rounds_of
from barkeep.domain.making.made_here import freely_there, is_made_here
from barkeep.domain.phrases import counted
from barkeep.domain.specs.glasses import Glass
from barkeep.errors import UserError
from barkeep.shipped_data import Limits, Positive, Text, by_key, parse, table_in
from barkeep.translation import tr

FILE = "batch_vessels.toml"
WHOLE_BOTTLE_ERROR = 0.05
"""A whole number of bottles is near enough within this share (*common practice*)."""


WORKED_ON_ICE = ("shaken", "stirred", "thrown")
"""Techniques that go through a tin or a mixing glass in rounds."""


class NoRounds(UserError):
    """A batch that has no business in a tin full of ice."""

    spec: str
    reason: str
    says = "{spec} takes no rounds through a tin: {reason}."


@dataclass(frozen=True, slots=True)
class VesselKind:
    """A kind of vessel: its usual size in ml to the brim, the share left free, and why."""

    key: str
    name: Text
    size_ml: Positive
    room: Annotated[float, Limits(ge=0.0, le=0.9)]
    why: Text

    def target(self, capacity_ml: float) -> ForVessel:
        """A batch that fills one of these, less what is left free."""
        return ForVessel(capacity_ml, self.room)


@dataclass(frozen=True, slots=True)
class WholeBottles:
    """So many bottles of one size take the place of a measured amount; `error` is a share."""

    ingredient: str
    count: int
    size: float
    error: float


@dataclass(frozen=True, slots=True)
class TinRounds:
    """A batch shaken or stirred in rounds, all alike, before its water and what is held back.

    `has_water` says that the rounds take the place of water that would go in by the jug.
    """

    tin: Glass
    count: int
    each_ml: float
    has_water: bool = True

    @property
    def sentence(self) -> str:
        """The rounds in one sentence."""
        rounds = counted(self.count, "round")
        how = tr(
            "{rounds} of {each_ml:.0f} ml through a {tin}, "
            "which works {at_once_ml:.0f} ml at once beside its ice",
            rounds=rounds,
            each_ml=self.each_ml,
            tin=tr(self.tin.name),
            at_once_ml=self.tin.wash_line_ml,
        )
        if self.has_water:
            return tr("On ice instead of with the water: {how}.", how=how)
        return tr("On ice: {how}.", how=how)


@cache
def shipped_vessel_kinds() -> Mapping[str, VesselKind]:
    """The kinds barkeep brings along, by key. Raises `KnowledgeError` for a broken resource."""
    return read_vessel_kinds(resource_files.read_text(FILE))


def read_vessel_kinds(text: str, file: str = FILE) -> Mapping[str, VesselKind]:
    """Kinds out of a TOML text. Raises `KnowledgeError`."""
    document = parse(text, file, "basis", "vessel")
    return by_key(table_in(document, "vessel", file), VesselKind, file, "vessel")


def whole_bottles(batch: Batch, snapshot: Snapshot) -> Mapping[str, WholeBottles]:
    """Ingredient key -> the whole bottles that are near enough to its amount.

    Only where whole bottles are there or have to be bought. The sizes are those
    of the bought products the bar knows, else the kind's usual one; what is
    squeezed or made here comes in no bottle of its own.
    """
    return {each.ingredient: each for each in _whole(batch, snapshot)}


def _whole(batch: Batch, snapshot: Snapshot) -> Iterator[WholeBottles]:
    short = {each.ingredient for each in batch.short}
    for line in batch.lines:
        if line.unit == "each" or not line.exact or freely_there(line.ingredient, snapshot):
            continue
        offers = [_offer(line, size) for size in sorted(_sizes(line, snapshot))]
        near = [
            each
            for each in offers
            if each.count
            and abs(each.error) <= WHOLE_BOTTLE_ERROR
            and (line.is_pivot or line.ingredient in short or _stand_there(each, line, snapshot))
        ]
        if near:
            yield min(near, key=lambda each: (abs(each.error), each.count))


def _sizes(line: BatchLine, snapshot: Snapshot) -> set[float]:
    """The sizes it is bought in, none of what is made here and never bought."""
    known = [each for each in snapshot.products if each.ingredient == line.ingredient]
    if known:
        return {each.size for each in known if not each.house_made}
    usual = snapshot.knowledge.tree[line.ingredient].typical_size
    return {usual} if usual and not is_made_here(line.ingredient, snapshot) else set()


def _stand_there(whole: WholeBottles, line: BatchLine, snapshot: Snapshot) -> bool:
    """Whether so many sealed bottles of that size stand in the bar."""
    bottles = snapshot.usable.get(line.ingredient, ())
    sealed = [each for each in bottles if each.level.state == "sealed"]
    return sum(each.product.size == whole.size for each in sealed) >= whole.count


def _offer(line: BatchLine, size: float) -> WholeBottles:
    count = round(line.exact / size)
    if line.most is not None and count * size > line.most:
        count -= 1
    return WholeBottles(line.ingredient, count, size, (count * size - line.exact) / line.exact)


def in_bottles(whole: WholeBottles, snapshot: Snapshot) -> str:
    """*2 × 700 ml, 1 % more*."""
    unit = snapshot.knowledge.tree[whole.ingredient].unit
    said = f"{whole.count} × {quantity(whole.size, unit)}"
    off = round(100.0 * whole.error)
    return said if not off else f"{said}, {abs(off)} % {'more' if off > 0 else 'less'}"


def tin_rounds(batch: Batch, tin: Glass) -> TinRounds:
    """The rounds a batch takes through a tin on ice, in place of the water by the jug.

    Raises `NoRounds` for a drink that is not worked on ice, or served hot, and
    `CannotBatch` for a tin that holds nothing.
    """
    spec = batch.spec
    if batch.served == "hot" or spec.technique == "hot":
        raise NoRounds(spec.name, tr("it is served hot"))
    if spec.technique not in WORKED_ON_ICE:
        raise NoRounds(spec.name, tr("its method does not shake, stir or throw it"))
    if batch.worked_ml <= 0.0:
        raise NoRounds(spec.name, tr("all of it has bubbles, which are never shaken"))
    if batch.rounds is not None:  # whole serves, since egg is counted
        count = max(batch.rounds.count, len(rounds_of(batch.worked_ml, tin.wash_line_ml)))
        return TinRounds(tin, count, batch.worked_ml / count, has_water=False)
    rounds = rounds_of(batch.worked_ml, tin.wash_line_ml)
    return TinRounds(tin, len(rounds), rounds[0])


def past_inputs(batch: Batch, snapshot: Snapshot) -> tuple[str, ...]:
    """What the batch would take that is past its date, in sentences.

    What is not safe is not counted; what is only past its best is, and comes last.
    """
    past = snapshot.past_of({line.ingredient for line in batch.lines})
    faded = (
        said
        for line in batch.lines
        for said in snapshot.faded_in_words(line.ingredient, line.amount)
    )
    return (*(_past_in_words(each, snapshot) for each in past), *dict.fromkeys(faded))


def _past_in_words(bottle: Bottle, snapshot: Snapshot) -> str:
    title, last_day = bottle.product.title, snapshot.last_day_in_words(bottle)
    if bottle.product.house_made:
        return tr(
            "{bottle} is past its date of {last_day} and is not counted: make it anew.",
            bottle=title,
            last_day=last_day,
        )
    return tr(
        "{bottle} is past its date of {last_day} and is not counted: look at it before you use it.",
        bottle=title,
        last_day=last_day,
    )
