"""What was paid for a product, when and where: the owner's own history of its price."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

from barkeep.domain.days import day_said
from barkeep.domain.phrases import price_in_words
from barkeep.translation import tr


@dataclass(frozen=True, slots=True)
class Payment:
    """What one bottle or pack cost, in the bar's currency; `shop` is empty where none is named."""

    amount: float
    shop: str = ""


@dataclass(frozen=True, slots=True)
class Paid:
    """What was paid for one bottle or pack of a product on a day, in the bar's currency.

    `size` is that of what was bought, in the product's unit, None where nobody knows.
    """

    id: int
    product_id: int
    day: date
    amount: float
    size: float | None = None
    shop: str = ""

    @property
    def worth(self) -> float:
        """What one unit cost, by which sizes are compared; the whole where no size is known."""
        return self.amount / self.size if self.size else self.amount


def newest_first(payments: Sequence[Paid]) -> tuple[Paid, ...]:
    """The payments by their days, of one day what was written last before the rest."""
    return tuple(sorted(payments, key=lambda each: (each.day, each.id), reverse=True))


def cheapest_shop(payments: Sequence[Paid]) -> Paid | None:
    """What was paid where it was cheapest, of two such the newer; None where no shop is named."""
    named = [each for each in newest_first(payments) if each.shop]
    has_sizes = all(each.size for each in named)
    return min(named, key=lambda each: each.worth if has_sizes else each.amount, default=None)


def payment_in_words(each: Paid | Payment, currency: str) -> str:
    """*24.50 EUR at Quay Stores*, or without a shop where none is named."""
    price = price_in_words(each.amount, currency)
    return tr("{price} at {shop}", price=price, shop=each.shop) if each.shop else price


def cheapest_in_words(payments: Sequence[Paid], currency: str) -> str:
    """*It was cheapest at Quay Stores: 24.50 EUR on 2026-03-01*; empty of a single shop."""
    found, shops = cheapest_shop(payments), {each.shop for each in payments if each.shop}
    if found is None or len(shops) < 2:
        return ""
    cost = price_in_words(found.amount, currency)
    return tr(
        "It was cheapest at {shop}: {cost} on {day}.",
        shop=found.shop,
        cost=cost,
        day=day_said(found.day),
    )
