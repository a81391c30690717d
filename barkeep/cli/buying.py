"""`barkeep next-bottle` and `buy`: the one purchase that turns most drinks ready, and shopping."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

from barkeep.application.bar import Bar
from barkeep.application.finding import find_shoot
from barkeep.application.shopping import read_bought, read_par_line
from barkeep.cli.arguments import WITHIN, Arguments, argument, command, day, flag, many, one_of
from barkeep.cli.bar_source import in_bar, opened_bar
from barkeep.cli.output import Answer, assumed_json, iso, rounded, table
from barkeep.domain.bar.shoots import Shoot
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.bottle import Bottle
from barkeep.domain.buying.next_bottle import next_bottle, unweighed
from barkeep.domain.buying.purchases import Candidate, make_of
from barkeep.domain.buying.shopping import (
    ShoppingItem,
    ShoppingList,
    name_in_words,
    need_in_words,
    packages_in_words,
    shopping_for,
    still_to_film,
    total_in_words,
    why_in_words,
)
from barkeep.domain.buying.shops import SHOP_WORDS, Shop
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.making.made_here import kept_as
from barkeep.domain.phrases import counted, price_in_words
from barkeep.domain.pouring.supply import supply_of
from barkeep.domain.pouring.words import plain_amount
from barkeep.errors import InvalidField

SHOWN: Mapping[Shop, int] = {"bottle_shop": 10, "market": 6}
"""Candidates of each shop that a person is shown; JSON gives them all."""


@command(WITHIN)
@in_bar
def next_bottles(arguments: Arguments, bar: Bar) -> Answer:
    """The candidates, bottles first, most unlocked first."""
    candidates = next_bottle(bar.snapshot, arguments.within)
    tree = bar.snapshot.knowledge.tree
    return Answer(
        lambda: {
            "candidates": [_candidate_json(each, tree) for each in candidates],
            "not_counted": list(unweighed(bar.snapshot)),
        },
        _candidates_shown(candidates, bar.snapshot),
    )


def _candidates_shown(candidates: Sequence[Candidate], snapshot: Snapshot) -> Iterator[str]:
    useful = [each for each in candidates if each.unlocks]
    hidden = 0
    for shop, most in SHOWN.items():
        some = [each for each in useful if each.shop == shop]
        hidden += len(some[most:])
        if some:
            yield SHOP_WORDS[shop]
            yield from (_candidate_shown(each, snapshot) for each in some[:most])
    if not useful:
        yield "No single bottle turns another drink to ready."
    elif hidden:
        yield f"{hidden} more turn a drink; --json lists them all."
    yield from unweighed(snapshot)


def _candidate_shown(candidate: Candidate, snapshot: Snapshot) -> str:
    drinks = counted(len(candidate.unlocks), "more drink")
    price = price_in_words(candidate.price, snapshot.settings.currency)
    told = f"{drinks}, {price}" if price else drinks
    return f"  {snapshot.knowledge.tree.name(candidate.ingredient)}: {told}\n      {candidate.why}"


def _candidate_json(candidate: Candidate, tree: FamilyTree) -> dict[str, object]:
    return {
        "ingredient": tree.name(candidate.ingredient),
        "forms": [tree.name(each.ingredient) for each in candidate.forms],
        "unlocks": list(candidate.unlocks),
        "price": rounded(candidate.price, 2),
        "why": candidate.why,
        "shop": candidate.shop,
        "make_first": make_of(candidate.forms[0], tree),
        "by_form": [
            {
                "ingredient": tree.name(each.ingredient),
                "unlocks": list(each.unlocks),
                "exactly": list(each.exactly),
                "price": rounded(each.price, 2),
                "make_first": make_of(each, tree),
            }
            for each in candidate.forms
        ],
    }


@command(
    one_of(
        argument(
            "--shoot",
            metavar="THEME",
            action="append",
            help="buy for this shoot; may be given again "
            "(default: all that are still to be filmed)",
        ),
        many(
            "--received",
            "PRODUCT[*N][=PRICE]",
            "take in what was bought: how many, and the price of each",
        ),
        argument(
            "--par",
            metavar="INGREDIENT=AMOUNT",
            help="the least to have of something, such as “gin=2 bottles” (0: no par any more)",
        ),
        flag("--pars", "list the pars"),
    ),
    flag("--no-pars", "buy for the shoots only"),
    argument("--on", type=day, metavar="DAY", help="when it was received (default: today)"),
)
def buy(arguments: Arguments) -> Answer:
    """What to buy, what was bought and is taken in, or the pars, set or listed."""
    if arguments.on is not None and not arguments.received:
        raise InvalidField("on", arguments.on, "it says when --received things came")
    with opened_bar(arguments) as bar:
        if arguments.received:
            return _receive(bar, arguments)
        if arguments.par is not None:
            return _set_par(bar, arguments)
        return _list_pars(bar.snapshot) if arguments.pars else _list(bar.snapshot, arguments)


# The list


def _list(snapshot: Snapshot, arguments: Arguments) -> Answer:
    shoots = _shoots(snapshot, arguments.shoot)
    found = shopping_for(shoots, snapshot, pars=not arguments.no_pars)
    tree = snapshot.knowledge.tree
    return Answer(lambda: _json(found, tree), _shown(found, tree))


def _shoots(snapshot: Snapshot, themes: Sequence[str] | None) -> tuple[Shoot, ...]:
    """Those that are named, of all that are still to be filmed."""
    ahead = still_to_film(snapshot)
    if themes is None:
        return ahead
    among = snapshot.changed(shoots=ahead)
    found = {shoot.id: shoot for shoot in (find_shoot(among, theme) for theme in themes)}
    return tuple(found.values())


def _json(found: ShoppingList, tree: FamilyTree) -> dict[str, object]:
    return {
        "items": [_item_json(each, tree) for each in found.items],
        "total": rounded(found.total, 2),
        "unpriced": found.unpriced,
        "not_counted": list(found.not_counted),
        "faded": list(found.faded),
        "assumed": assumed_json(found.assumed),
    }


def _item_json(item: ShoppingItem, tree: FamilyTree) -> dict[str, object]:
    return {
        "ingredient": tree.name(item.ingredient),
        "called": list(item.called),
        "need": rounded(item.need, 2),
        "unit": item.unit,
        "product": None if item.product is None else item.product.title,
        "packages": item.packages,
        "size": rounded(item.size, 2),
        "price": rounded(item.price, 2),
        "cost": rounded(item.cost, 2),
        "why": list(item.why),
    }


def _shown(found: ShoppingList, tree: FamilyTree) -> Iterator[str]:
    if found.items:
        rows = [
            (
                name_in_words(each, tree),
                need_in_words(each),
                packages_in_words(each),
                price_in_words(each.cost, found.currency),
            )
            for each in found.items
        ]
        yield table(("what", "need", "buy", "cost"), rows, right="lrlr")
        yield ""
        yield from (f"{name_in_words(each, tree)}: {why_in_words(each)}." for each in found.items)
        yield ""
    yield total_in_words(found)
    yield from found.not_counted
    yield from found.faded


# What was bought


def _receive(bar: Bar, arguments: Arguments) -> Answer:
    bought = [read_bought(each, bar.snapshot, arguments.on) for each in arguments.received]
    bottles = bar.shopping.receive(bought).value
    return Answer(
        lambda: {"received": [_bottle_json(each) for each in bottles]},
        _received(bottles, bar.snapshot.settings.currency),
    )


def _received(bottles: Sequence[Bottle], currency: str) -> Iterator[str]:
    yield f"{counted(len(bottles), 'package')} on the shelf:"
    for each in bottles:
        level = plain_amount(each.level.amount, each.product.unit)
        price = price_in_words(each.product.price, currency)
        yield f"  #{each.id} {each.product.title}, {level}{', ' if price else ''}{price}"


def _bottle_json(bottle: Bottle) -> dict[str, object]:
    return {
        "id": bottle.id,
        "product": bottle.product.title,
        "level": rounded(bottle.level.amount, 2),
        "unit": bottle.product.unit,
        "price": rounded(bottle.product.price, 2),
        "received": iso(bottle.received),
    }


# Pars


def _set_par(bar: Bar, arguments: Arguments) -> Answer:
    par = read_par_line(arguments.par, bar.snapshot)
    bar.settings.set_par(par.ingredient, par.amount, bar.snapshot.settings)
    snapshot, tree = bar.snapshot, bar.snapshot.knowledge.tree
    said = f"There is no par of {tree.in_sentence(par.ingredient)}."
    if par.amount:
        amount = plain_amount(par.amount, tree[par.ingredient].unit)
        said = f"The par of {tree.in_sentence(par.ingredient)} is {amount}."
    return Answer(lambda: _pars_json(snapshot), said)


def _list_pars(snapshot: Snapshot) -> Answer:
    shown = "No par is set; begin with buy --par “gin=2 bottles”."
    if snapshot.settings.pars:
        shown = table(("what", "par", "there"), _par_rows(snapshot), right="lrr")
    return Answer(lambda: _pars_json(snapshot), shown)


def _par_rows(snapshot: Snapshot) -> Iterator[tuple[str, str, str]]:
    tree = snapshot.knowledge.tree
    for par in snapshot.settings.pars:
        unit = tree[par.ingredient].unit
        there = round(_there(par.ingredient, snapshot), 1)
        yield tree.name(par.ingredient), plain_amount(par.amount, unit), plain_amount(there, unit)


def _there(key: str, snapshot: Snapshot) -> float:
    supply = supply_of(snapshot)
    return sum(supply.total(each) for each in kept_as(key, snapshot))


def _pars_json(snapshot: Snapshot) -> dict[str, object]:
    tree = snapshot.knowledge.tree
    return {
        "pars": [
            {
                "ingredient": tree.name(par.ingredient),
                "par": rounded(par.amount, 2),
                "there": rounded(_there(par.ingredient, snapshot), 2),
                "unit": tree[par.ingredient].unit,
            }
            for par in snapshot.settings.pars
        ]
    }
