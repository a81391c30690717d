"""`barkeep product`: the labels the bar knows, with and without a bottle, and a bottle's dates."""

from __future__ import annotations

import argparse
from datetime import date

from barkeep.application.finding import find_bottle, find_ingredient, find_product
from barkeep.cli.arguments import Arguments, common_options
from barkeep.cli.bar_source import opened_bar
from barkeep.cli.output import day, iso, print_json, table
from barkeep.domain.amounts.amount import parse_amount
from barkeep.domain.amounts.measures import show_quantity, to_quantity
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.bottle import Label, Product
from barkeep.domain.liquids.ethanol import read_strength
from barkeep.errors import InvalidField

FOR_GOOD = "none"


def configure(parser: argparse.ArgumentParser) -> None:
    """Its arguments."""
    actions = parser.add_subparsers(metavar="ACTION", required=True, title="actions")
    listed = actions.add_parser(
        "list", help="list the products and how many bottles each has", parents=[common_options()]
    )
    listed.set_defaults(run=_list)
    _configure_add(
        actions.add_parser(
            "add", help="take in a product without a bottle of it", parents=[common_options()]
        )
    )
    removed = actions.add_parser(
        "remove", help="take a product away that has no bottles", parents=[common_options()]
    )
    removed.add_argument("product", metavar="PRODUCT", help="its maker and name")
    removed.set_defaults(run=_remove)
    dated = actions.add_parser(
        "redate",
        help="correct when a bottle was made, and its use-by day",
        parents=[common_options()],
    )
    dated.add_argument("bottle", metavar="BOTTLE", help="its id, or its maker and name")
    either = f"a day such as 2026-03-31, or {FOR_GOOD} (left out: as it was)"
    dated.add_argument("--made", type=_day, metavar="DAY", help=either)
    dated.add_argument("--use-by", type=_day, metavar="DAY", help=either)
    dated.set_defaults(run=_redate)


def _configure_add(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("name", metavar="NAME", help="what its label says it is")
    parser.add_argument("--maker", metavar="MAKER", default="")
    parser.add_argument("--ingredient", required=True, metavar="NAME", help="what kind it is")
    parser.add_argument("--size", metavar="V", help="such as 700 ml (default: as usually bought)")
    parser.add_argument("--abv", metavar="V", help="its strength: 43 %% or 86 proof")
    parser.add_argument("--sugar", type=float, metavar="G", help="grams of sugar in a litre")
    parser.add_argument("--price", type=float, metavar="PRICE")
    parser.add_argument("--barcode", default="")
    parser.set_defaults(run=_add)


def _day(text: str) -> date | str:
    return FOR_GOOD if text == FOR_GOOD else day(text)


def _list(arguments: Arguments) -> int:
    with opened_bar(arguments) as bar:
        snapshot = bar.snapshot
    products = sorted(snapshot.products, key=lambda each: each.title.casefold())
    if arguments.json:
        print_json({"products": [_json(each, snapshot) for each in products]})
    else:
        names = snapshot.knowledge.tree.name
        rows = (
            (
                each.title,
                names(each.ingredient),
                show_quantity(each.size, each.unit),
                str(_bottles_of(each, snapshot)),
            )
            for each in products
        )
        print(table(("product", "ingredient", "size", "bottles"), rows))
    return 0


def _add(arguments: Arguments) -> int:
    with opened_bar(arguments) as bar:
        tree = bar.snapshot.knowledge.tree
        kind = tree[find_ingredient(tree, arguments.ingredient)]
        size = kind.typical_size
        if arguments.size is not None:
            units = bar.snapshot.settings.units
            size = to_quantity(parse_amount(arguments.size, units), kind.unit, units)
        draft = Label(
            name=arguments.name,
            maker=arguments.maker,
            ingredient=kind.key,
            size=size,
            unit=kind.unit,
            abv_percent=None if arguments.abv is None else read_strength(arguments.abv, "--abv"),
            sugar_g_per_l=arguments.sugar,
            price=arguments.price,
            barcode=arguments.barcode,
        )
        product = bar.inventory.add_product(draft).value
        if arguments.json:
            print_json({"products": [_json(product, bar.snapshot)]})
        else:
            print(f"{product.title} is known. “barkeep receive” puts a bottle of it on the shelf.")
    return 0


def _remove(arguments: Arguments) -> int:
    with opened_bar(arguments) as bar:
        product = find_product(bar.snapshot, arguments.product)
        removed = bar.inventory.remove_product(product.id).value
    if arguments.json:
        print_json({"removed": removed.title})
    else:
        print(f"Took {removed.title} away.")
    return 0


def _redate(arguments: Arguments) -> int:
    with opened_bar(arguments) as bar:
        bottle = find_bottle(bar.snapshot, arguments.bottle, rather_open=True)
        if arguments.made is None and arguments.use_by is None:
            raise InvalidField("redate", bottle.product.title, "say --made, --use-by or both")
        made = bottle.made if arguments.made is None else _given(arguments.made)
        use_by = bottle.use_by if arguments.use_by is None else _given(arguments.use_by)
        bottle = bar.inventory.redate(bottle.id, made, use_by).value
    if arguments.json:
        dates = {"made": iso(bottle.made), "use_by": iso(bottle.use_by)}
        print_json({"bottle": bottle.product.title, "id": bottle.id, **dates})
    else:
        keeps = f"is used by {bottle.use_by}" if bottle.use_by else "has no use-by day"
        begun = f", made {bottle.made}" if bottle.made else ""
        print(f"{bottle.product.title} #{bottle.id}{begun}, {keeps}.")
    return 0


def _given(written: date | str) -> date | None:
    return written if isinstance(written, date) else None


def _bottles_of(product: Product, snapshot: Snapshot) -> int:
    return sum(each.product.id == product.id for each in snapshot.bottles)


def _json(product: Product, snapshot: Snapshot) -> dict[str, object]:
    return {
        "product": product.title,
        "ingredient": snapshot.knowledge.tree.name(product.ingredient),
        "abv_percent": product.abv_percent,
        "size": product.size,
        "unit": product.unit,
        "price": product.price,
        "bottles": _bottles_of(product, snapshot),
    }
