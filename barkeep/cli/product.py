"""`barkeep product`: the labels the bar knows, with and without a bottle, and a bottle's dates."""

from __future__ import annotations

from datetime import date

from barkeep.application.bar import Bar
from barkeep.application.finding import find_bottle, find_ingredient, find_product
from barkeep.cli.arguments import BOTTLE, PRODUCT, Arguments, argument, command, day
from barkeep.cli.bar_source import in_bar
from barkeep.cli.output import Answer, iso, table
from barkeep.domain.amounts.measures import show_quantity
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.bottle import Label, Product
from barkeep.domain.bottles.package_sizes import PackageSize, package_size
from barkeep.domain.liquids.ethanol import read_strength
from barkeep.errors import InvalidField

FOR_GOOD = "none"


@command()
@in_bar
def listed(_arguments: Arguments, bar: Bar) -> Answer:
    """Every product with the number of its bottles."""
    snapshot = bar.snapshot
    products = sorted(snapshot.products, key=lambda each: each.title.casefold())
    rows = (
        (
            each.title,
            snapshot.knowledge.tree.name(each.ingredient),
            show_quantity(each.size, each.unit),
            str(bottles_of(each, snapshot)),
        )
        for each in products
    )
    return Answer(
        lambda: {"products": [product_json(each, snapshot) for each in products]},
        table(("product", "ingredient", "size", "bottles"), rows),
    )


@command(
    argument("name", metavar="NAME", help="what its label says it is"),
    argument("--maker", metavar="MAKER", default=""),
    argument("--ingredient", required=True, metavar="NAME", help="what kind it is"),
    argument(
        "--size",
        metavar="V",
        help="such as 700 ml, or 340 g of what is sold by weight (default: as usually bought)",
    ),
    argument("--abv", metavar="V", help="its strength: 43 %% or 86 proof"),
    argument("--sugar", type=float, metavar="G", help="grams of sugar in a litre"),
    argument("--price", type=float, metavar="PRICE"),
    argument("--barcode", default=""),
)
@in_bar
def add(arguments: Arguments, bar: Bar) -> Answer:
    """Take in a product."""
    tree = bar.snapshot.knowledge.tree
    kind = tree[find_ingredient(tree, arguments.ingredient, owned=bar.snapshot.owned)]
    size = PackageSize(kind.typical_size)
    if arguments.size is not None:
        size = package_size(arguments.size, kind.key, tree, bar.snapshot.settings.units)
    draft = Label(
        name=arguments.name,
        maker=arguments.maker,
        ingredient=kind.key,
        size=size.amount,
        unit=kind.unit,
        abv_percent=None if arguments.abv is None else read_strength(arguments.abv, "--abv"),
        sugar_g_per_l=arguments.sugar,
        price=arguments.price,
        barcode=arguments.barcode,
    )
    product = bar.inventory.add_product(draft).value
    snapshot = bar.snapshot
    strength = product.abv_percent
    strong = "" if strength is None else f" Its strength is {strength:g} % vol."
    heavy = f" {size.said}" if size.said else ""
    return Answer(
        lambda: {"products": [product_json(product, snapshot)]},
        f"{product.title} is known.{strong}{heavy} "
        "“barkeep receive” puts a bottle of it on the shelf.",
    )


@command(PRODUCT)
@in_bar
def remove(arguments: Arguments, bar: Bar) -> Answer:
    """Take a product away."""
    product = find_product(bar.snapshot, arguments.product)
    title = bar.inventory.remove_product(product.id).value.title
    return Answer(lambda: {"removed": title}, f"Took {title} away.")


EITHER = f"a day such as 2026-03-31, or {FOR_GOOD} (left out: as it was)"


def _day(text: str) -> date | str:
    return FOR_GOOD if text == FOR_GOOD else day(text)


@command(
    BOTTLE,
    argument("--made", type=_day, metavar="DAY", help=EITHER),
    argument("--use-by", type=_day, metavar="DAY", help=EITHER),
)
@in_bar
def redate(arguments: Arguments, bar: Bar) -> Answer:
    """Correct the days of one bottle."""
    bottle = find_bottle(bar.snapshot, arguments.bottle, rather_open=True)
    if arguments.made is None and arguments.use_by is None:
        raise InvalidField("redate", bottle.product.title, "say --made, --use-by or both")
    made = bottle.made if arguments.made is None else _given(arguments.made)
    use_by = bottle.use_by if arguments.use_by is None else _given(arguments.use_by)
    bottle = bar.inventory.redate(bottle.id, made, use_by, bottle).value
    title, dates = bottle.product.title, {"made": iso(bottle.made), "use_by": iso(bottle.use_by)}
    keeps = f"is used by {bottle.use_by}" if bottle.use_by else "has no use-by day"
    begun = f", made {bottle.made}" if bottle.made else ""
    return Answer(
        lambda: {"bottle": title, "id": bottle.id, **dates},
        f"{title} #{bottle.id}{begun}, {keeps}.",
    )


def _given(written: date | str) -> date | None:
    return written if isinstance(written, date) else None


def bottles_of(product: Product, snapshot: Snapshot) -> int:
    return sum(each.product.id == product.id for each in snapshot.bottles)


def product_json(product: Product, snapshot: Snapshot) -> dict[str, object]:
    return {
        "product": product.title,
        "ingredient": snapshot.knowledge.tree.name(product.ingredient),
        "abv_percent": product.abv_percent,
        "size": product.size,
        "unit": product.unit,
        "price": product.price,
        "bottles": bottles_of(product, snapshot),
    }
