"""One drink poured out now, with no shoot around it: what it takes of the bottles and lacks."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from barkeep.domain.bar.shoots import ChosenPour
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.pouring.supply import Draw
from barkeep.domain.shoots.menu import Menu, MenuLine, Order, menu
from barkeep.domain.shoots.plan import in_whole_pieces, shortfall
from barkeep.domain.specs.spec import Spec
from barkeep.domain.stand_ins.in_a_drink import with_pours
from barkeep.domain.stand_ins.offers import Offer, stand_in
from barkeep.translation import tr


@dataclass(frozen=True, slots=True)
class PouredOut:
    """So many serves of a drink; `spec` has the lines of what is poured, `of` those written.

    `lacking` says what there is not enough of, a sentence each with what stands in: where it says
    anything, nothing can be poured.
    """

    of: Spec
    spec: Spec
    serves: int
    draws: tuple[Draw, ...]
    lacking: tuple[str, ...]


def poured_out(
    spec: Spec, snapshot: Snapshot, chosen: Sequence[ChosenPour] = (), serves: int = 1
) -> PouredOut:
    """What serves of a drink take now, just of what its lines ask for or what was chosen for them.

    Optional lines and garnishes take nothing, as in the log of a shoot.
    """
    poured = with_pours(spec, chosen, snapshot.knowledge.tree)
    first = [each.bottle_id for each in chosen if each.bottle_id is not None]
    found = menu([Order(poured, serves)], snapshot, "exact", first=first)
    return PouredOut(
        of=spec,
        spec=poured,
        serves=serves,
        draws=tuple(map(in_whole_pieces, found.draws)),
        lacking=tuple(_lacking(found, poured, snapshot)),
    )


def _lacking(found: Menu, poured: Spec, snapshot: Snapshot) -> Iterator[str]:
    for each in found.lacking:
        yield _said(each, poured, snapshot)
    for unsettled in poured.unsettled:
        yield tr("{named} is not understood.", named=unsettled.named)


def _said(short: MenuLine, poured: Spec, snapshot: Snapshot) -> str:
    tree = snapshot.knowledge.tree
    lacks = shortfall(short, snapshot)
    answer = stand_in(snapshot, short.line.ingredient, poured)
    likely = next((each for each in answer.stand_ins if _may_do(each, short)), None)
    if likely is not None:
        name = tree.in_sentence(likely.ingredient)
        return tr(
            "{lacks} What stands in for it is {name} ({closeness:.2f}).",
            lacks=lacks,
            name=name,
            closeness=likely.closeness,
        )
    if answer.none_because:
        return tr(
            "{lacks} Nothing stands in for it: {because}.",
            lacks=lacks,
            because=tr(answer.none_because).rstrip("."),
        )
    return tr("{lacks} What stands in for it is not here either.", lacks=lacks)


def _may_do(offer: Offer, short: MenuLine) -> bool:
    return offer.owned and offer.ingredient not in short.line.wanted
