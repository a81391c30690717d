"""What goes into the drinks by the piece: limes to be muddled, whole eggs, lumps of sugar."""

from __future__ import annotations

from collections.abc import Collection, Sequence
from dataclasses import dataclass, replace

from barkeep.domain.amounts.rounding import whole_up
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.pouring.sourcing import need
from barkeep.domain.shoots.menu import Order
from barkeep.errors import spoken_list
from barkeep.translation import tr


@dataclass(frozen=True, slots=True)
class WholePieces:
    """How many pieces of one kind all drinks take that name it; `amount` is not yet whole."""

    ingredient: str
    amount: float
    drinks: tuple[str, ...]

    @property
    def count(self) -> int:
        """Whole pieces: half a lime is cut from one."""
        return int(whole_up(self.amount))

    def said(self, tree: FamilyTree) -> str:
        """What to have ready, in one sentence."""
        name = tree.in_sentence(self.ingredient)
        return tr(
            "Have {count} × {name} ready, for {drinks}.",
            count=self.count,
            name=name,
            drinks=spoken_list(self.drinks, "and"),
        )


def whole_pieces(
    orders: Sequence[Order], made: Collection[str], tree: FamilyTree
) -> tuple[WholePieces, ...]:
    """The pieces of each kind, apart from garnishes and from what is `made` for the drinks."""
    found: dict[str, WholePieces] = {}
    for order in orders:
        for line in order.spec.required_lines:
            key = line.ingredient
            if tree[key].unit != "each" or key in made:
                continue
            before = found.get(key, WholePieces(key, 0.0, ()))
            amount = before.amount + need(line, tree) * order.serves
            drinks = tuple(dict.fromkeys((*before.drinks, order.spec.name)))
            found[key] = replace(before, amount=amount, drinks=drinks)
    return tuple(each for each in found.values() if each.count)
