"""What a form or a file says of a product before the bar has taken it in."""

from __future__ import annotations

from dataclasses import dataclass

from barkeep.domain.ingredients import Unit
from barkeep.domain.inventory import Product


@dataclass(frozen=True, slots=True)
class ProductDraft:
    """A product without an identity. Size in `unit`; strength in % vol; sugar, acid in g per litre.

    `ingredient` is a key or any name the family tree answers to; `shape` the
    key of a bottle shape, None for the usual one.
    """

    name: str
    maker: str
    ingredient: str
    size: float
    unit: Unit = "ml"
    abv_percent: float | None = None
    sugar_g_per_l: float | None = None
    price: float | None = None
    barcode: str = ""
    house_made: bool = False
    shape: str | None = None
    density_g_per_ml: float | None = None
    acid_g_per_l: float | None = None

    @property
    def title(self) -> str:
        """Maker and name as one would say them."""
        return f"{self.maker} {self.name}".strip()


def draft_of(product: Product) -> ProductDraft:
    """The draft a form starts from when a product is changed."""
    return ProductDraft(
        product.name,
        product.maker,
        product.ingredient,
        product.size,
        product.unit,
        product.abv_percent,
        product.sugar_g_per_l,
        product.price,
        product.barcode,
        product.house_made,
        product.shape,
        product.density_g_per_ml,
        product.acid_g_per_l,
    )
