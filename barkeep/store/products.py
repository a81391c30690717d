"""Products: between rows and the domain's values."""

from __future__ import annotations

from sqlalchemy import Connection, select

from barkeep.domain.drafts import ProductDraft
from barkeep.domain.ingredients import folded
from barkeep.domain.inventory import Product
from barkeep.store.records import Row
from barkeep.store.schema import product

COLUMNS = (
    product.c.id,
    product.c.name,
    product.c.maker,
    product.c.ingredient,
    product.c.size,
    product.c.unit,
    product.c.abv_percent,
    product.c.sugar_g_per_l,
    product.c.price,
    product.c.barcode,
    product.c.house_made,
    product.c.shape,
    product.c.density_g_per_ml,
    product.c.acid_g_per_l,
)


def read_products(connection: Connection) -> tuple[Product, ...]:
    """Every product that is not hidden, by title."""
    shown = select(*COLUMNS).where(~product.c.hidden)
    ordered = shown.order_by(product.c.folded_title, product.c.size, product.c.id)
    return tuple(Product(*row) for row in connection.execute(ordered))


def read_product(connection: Connection, product_id: int) -> Product | None:
    """One product, None where there is none or it is hidden."""
    statement = select(*COLUMNS).where(product.c.id == product_id, ~product.c.hidden)
    row = connection.execute(statement).first()
    return None if row is None else Product(*row)


def product_named(connection: Connection, draft: ProductDraft) -> Product | None:
    """The product that has the draft's title and size already."""
    statement = select(*COLUMNS).where(
        product.c.folded_title == folded(draft.title),
        product.c.size == draft.size,
        product.c.unit == draft.unit,
        ~product.c.hidden,
    )
    row = connection.execute(statement).first()
    return None if row is None else Product(*row)


def product_row(draft: ProductDraft) -> Row:
    """The row of a draft, without its id."""
    return {
        "name": draft.name,
        "maker": draft.maker,
        "folded_title": folded(draft.title),
        "ingredient": draft.ingredient,
        "size": draft.size,
        "unit": draft.unit,
        "abv_percent": draft.abv_percent,
        "sugar_g_per_l": draft.sugar_g_per_l,
        "price": draft.price,
        "barcode": draft.barcode,
        "house_made": draft.house_made,
        "hidden": False,
        "shape": draft.shape,
        "density_g_per_ml": draft.density_g_per_ml,
        "acid_g_per_l": draft.acid_g_per_l,
    }
