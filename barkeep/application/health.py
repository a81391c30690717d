"""Whether a bar is sound: the file, its references, and what its ledgers say."""

from __future__ import annotations

from barkeep.application.knowledge import NOT_KNOWN
from barkeep.application.session import Session
from barkeep.domain.bottles.bottle import Bottle
from barkeep.store.bottles import read_bottles
from barkeep.store.knowledge import read_own_ingredients

_ROUNDING = 1e-6


def findings(session: Session) -> tuple[str, ...]:
    """What is wrong, a sentence each; nothing in a sound bar."""
    faults = [f"The file is damaged: {fault}." for fault in session.store.faults()]
    with session.store.reading() as connection:
        written = read_bottles(connection)
        own = read_own_ingredients(connection)
    faults += [sentence for bottle in written for sentence in _overfull(bottle)]
    if written != session.snapshot.bottles:
        faults.append("The bottles on the screen are not those in the file; open the bar again.")
    known = session.shipped.tree.ingredients.keys() | {each.key for each in own}
    strangers = session.snapshot.knowledge.tree.ingredients.keys() - known
    faults += [f"The ingredient “{key}” is {NOT_KNOWN}." for key in sorted(strangers)]
    return tuple(faults)


def _overfull(bottle: Bottle) -> list[str]:
    product = bottle.product
    if bottle.level.amount <= product.size + _ROUNDING:
        return []
    held = f"{bottle.level.amount:g} of {product.size:g} {product.unit}"
    return [f"The ledger of {product.title} (#{bottle.id}) says it holds {held}."]
