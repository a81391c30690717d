"""Whether a bar is sound: the file, its references, and what its ledgers say."""

from __future__ import annotations

from barkeep.application.knowledge import NOT_KNOWN
from barkeep.application.session import Session
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.bottle import Bottle
from barkeep.store.bottles import read_bottles

_ROUNDING = 1e-6


def findings(session: Session) -> tuple[str, ...]:
    """What is wrong, a sentence each; nothing in a sound bar."""
    faults = [f"The file is damaged: {fault}." for fault in session.store.faults()]
    with session.store.reading() as connection:
        written = read_bottles(connection)
    faults += [sentence for bottle in written for sentence in _overfull(bottle)]
    if written != session.snapshot.bottles:
        faults.append("The bottles on the screen are not those in the file; open the bar again.")
    return (*faults, *_strangers(session.snapshot))


def _overfull(bottle: Bottle) -> list[str]:
    product = bottle.product
    if bottle.level.amount <= product.size + _ROUNDING:
        return []
    held = f"{bottle.level.amount:g} of {product.size:g} {product.unit}"
    return [f"The ledger of {product.title} (#{bottle.id}) says it holds {held}."]


def _strangers(bar: Snapshot) -> list[str]:
    tree = bar.knowledge.tree
    unknown = [key for key in tree if tree[key].basis == NOT_KNOWN]
    return [f"The ingredient “{key}” is {NOT_KNOWN}." for key in unknown]
