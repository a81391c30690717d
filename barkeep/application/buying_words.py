"""What was bought and which par is wanted, as they are written on one line."""

from __future__ import annotations

import re
from datetime import date

from barkeep.application.finding import find_ingredient, find_product
from barkeep.application.shopping import Bought
from barkeep.domain.pars import Par, read_par
from barkeep.domain.snapshot import Snapshot
from barkeep.errors import InvalidField

HOW_BOUGHT = "write the product, *how many and =the price of each, such as “Lamp Room gin*2=24.50”"
HOW_PAR = "write the ingredient, = and the least to have, such as “gin=1.4 l” or “gin=2 bottles”"

_BOUGHT = re.compile(
    r"(?P<product>[^*=]+?)\s*(?:\*\s*(?P<count>[0-9]{1,4}))?\s*(?:=\s*(?P<price>[0-9]+(?:[.,][0-9]+)?))?"
)


def read_bought(text: str, snapshot: Snapshot, received: date | None = None) -> Bought:
    """*PRODUCT*N=PRICE*, both numbers may be left out.

    Raises `InvalidField`, `UnknownName` or `AmbiguousName`.
    """
    found = _BOUGHT.fullmatch(text.strip())
    if found is None:
        raise InvalidField("received", text.strip(), HOW_BOUGHT)
    product = find_product(snapshot, found["product"])
    price = None if found["price"] is None else float(found["price"].replace(",", "."))
    return Bought(product.id, int(found["count"] or 1), price, received)


def read_par_line(text: str, snapshot: Snapshot) -> Par:
    """*INGREDIENT=AMOUNT*. Raises `InvalidField`, `UnknownName`, or as an amount does."""
    name, equals, amount = text.rpartition("=")
    if not equals or not name.strip():
        raise InvalidField("par", text.strip(), HOW_PAR)
    tree = snapshot.knowledge.tree
    key = find_ingredient(tree, name.strip())
    return Par(key, read_par(amount, tree[key], snapshot.settings.units))
