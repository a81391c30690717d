"""`barkeep next-bottle` and `buy`: what turns most drinks, one bottle or a plan; and shopping."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace
from itertools import chain

from barkeep.application.bar import Bar
from barkeep.application.finding import find_shoot
from barkeep.cli.arguments import (
    SHOP,
    WITHIN,
    Arguments,
    argument,
    command,
    day,
    flag,
    many,
    one_of,
    whole_number,
)
from barkeep.cli.bar_source import in_bar, opened_bar
from barkeep.cli.on_paper import ON_PAPER, answered
from barkeep.cli.output import Answer, assumed_json, iso, rounded, table, wrapped
from barkeep.domain.bar.shoots import Shoot
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bar.to_buy import ToBuy
from barkeep.domain.bottles.bottle import Bottle
from barkeep.domain.buying.limits import SECONDS, checked_limits
from barkeep.domain.buying.next_bottle import next_bottle, unweighed
from barkeep.domain.buying.plan import Plan, Step
from barkeep.domain.buying.plan_words import plan_in_words, purchase_in_words, step_in_words
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
from barkeep.domain.buying.worths import worths_of
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.making.made_here import kept_as
from barkeep.domain.phrases import as_sentence, counted, price_in_words
from barkeep.domain.pouring.supply import supply_of
from barkeep.domain.pouring.words import plain_amount
from barkeep.errors import InvalidField, spoken_list

SHOWN: Mapping[Shop, int] = {"bottle_shop": 10, "market": 6}
"""Candidates of each shop that a person is shown; JSON gives them all."""


_PLANNED = (
    argument("--bottles", type=int, metavar="K", help="the best set of so many purchases"),
    argument("--budget", metavar="AMOUNT", help="the best set for so much money"),
    many("--weigh", "QUERY=TIMES", "count the drinks that a query finds so many times, 0 for none"),
    flag("--by-score", "count a drink by how it scored, up to twice"),
    argument("--for", dest="shoot", metavar="THEME", help="count the drinks of this shoot alone"),
    many("--price", "KIND=AMOUNT", "what a purchase of it costs, where the bar does not know"),
    argument(
        "--seconds",
        type=whole_number,
        metavar="N",
        help="how long to look for something better (default: 10)",
    ),
    flag("--add", "put the plan on the shopping list"),
)
"""What a plan is asked with."""


@command(WITHIN, *_PLANNED, *ON_PAPER)
@in_bar
def next_bottles(arguments: Arguments, bar: Bar) -> Answer:
    """The candidates, bottles first, most unlocked first; or the best set of so many.

    With --bottles or --budget it is a plan: the purchases that together turn most drinks ready.
    Without them the other options are not understood.
    """
    if arguments.bottles is not None or arguments.budget is not None:
        return _planned(arguments, bar)
    _refuse_without_plan(arguments)
    return answered(_next, arguments, bar.snapshot)


def _next(arguments: Arguments, snapshot: Snapshot) -> Answer:
    candidates = next_bottle(snapshot, arguments.within)
    tree = snapshot.knowledge.tree
    return Answer(
        lambda: {
            "candidates": [_candidate_json(each, tree) for each in candidates],
            "not_counted": list(unweighed(snapshot)),
        },
        _candidates_shown(candidates, snapshot),
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


# A plan


def _refuse_without_plan(arguments: Arguments) -> None:
    """Raise `InvalidField` for what only a plan takes."""
    given = {
        "--weigh": arguments.weigh,
        "--by-score": arguments.by_score,
        "--for": arguments.shoot,
        "--price": arguments.price,
        "--seconds": arguments.seconds,
        "--add": arguments.add,
    }
    for option, value in given.items():
        if value:
            raise InvalidField("option", option, "it goes with --bottles or --budget")


def _planned(arguments: Arguments, bar: Bar) -> Answer:
    """A plan, which goes on the shopping list where that is asked for."""
    if not arguments.add:
        return answered(_plan, arguments, bar.snapshot)
    if arguments.added or arguments.taken:
        raise InvalidField("option", "--add", "what is on paper only goes on no list")
    from barkeep.application.shopping import listed_of  # loads the store, as writing does

    plan, tree = _found_plan(arguments, bar.snapshot), bar.snapshot.knowledge.tree
    wanted = listed_of(plan, bar.snapshot)
    listed = bar.shopping.add(wanted).value if wanted else bar.snapshot.settings.to_buy
    return Answer(
        lambda: {**_plan_json(plan, tree), "to_buy": _to_buy_json(listed, tree)},
        chain(_plan_shown(plan, tree), ["Put on the shopping list."] if wanted else []),
    )


def _plan(arguments: Arguments, snapshot: Snapshot) -> Answer:
    found, tree = _found_plan(arguments, snapshot), snapshot.knowledge.tree
    return Answer(lambda: _plan_json(found, tree), _plan_shown(found, tree))


def _found_plan(arguments: Arguments, snapshot: Snapshot) -> Plan:
    # They load the store, which the next bottle alone does not need, and numpy.
    from barkeep.application.shopping import read_kind_price, read_money, read_weighing
    from barkeep.domain.buying.planning import buying_plan

    currency = snapshot.settings.currency
    budget = None if arguments.budget is None else read_money(arguments.budget, "budget", currency)
    shoot = None if arguments.shoot is None else find_shoot(snapshot, arguments.shoot)
    worths = worths_of(
        snapshot,
        times=[read_weighing(each) for each in arguments.weigh],
        by_score=arguments.by_score,
        shoot=shoot,
    )
    return buying_plan(
        snapshot,
        checked_limits(arguments.bottles, budget),
        arguments.within,
        worths=worths,
        prices=dict(read_kind_price(each, snapshot) for each in arguments.price),
        seconds=float(arguments.seconds or SECONDS),
    )


def _to_buy_json(listed: Sequence[ToBuy], tree: FamilyTree) -> list[dict[str, object]]:
    return [
        {"ingredient": tree.name(each.ingredient), "packages": each.packages} for each in listed
    ]


def _plan_json(plan: Plan, tree: FamilyTree) -> dict[str, object]:
    return {
        "bottles": [_step_json(each, tree) for each in plan.steps],
        "unlocks": list(plan.unlocks),
        "cost": rounded(plan.cost, 2),
        "unpriced": [tree.name(each) for each in plan.unpriced],
        "proved_best": plan.proved_best,
        "ended": plan.ended,
        "upper_bound": rounded(plan.upper_bound, 6),
        "worth": rounded(plan.worth, 6),
        "before": plan.before,
        "left_out": [tree.name(each) for each in plan.left_out],
        "not_counted": list(plan.not_counted),
    }


def _step_json(step: Step, tree: FamilyTree) -> dict[str, object]:
    bought = step.bought
    return {
        "ingredient": tree.name(bought.ingredient),
        "product": None if bought.product is None else bought.product.title,
        "packages": bought.packages,
        "size": rounded(bought.stock.amount / bought.packages, 2),
        "unit": tree[bought.ingredient].unit,
        "price": rounded(bought.price, 2),
        "shop": step.shop,
        "owned": step.owned,
        "unlocks": list(step.unlocks),
        "exactly": list(step.exactly),
        "makeable": step.makeable,
    }


def _plan_shown(plan: Plan, tree: FamilyTree) -> Iterator[str]:
    for number, step in enumerate(plan.steps, 1):
        bought = step.bought
        what = purchase_in_words(bought, plan.currency, tree)
        yield f"{number}. {tree.name(bought.ingredient)}: {what}"
        yield from wrapped(as_sentence(step_in_words(step)), "      ")
    if plan.steps:
        yield ""
    for said in plan_in_words(plan, tree):
        yield from wrapped(said, "")


_BUY = (
    argument(
        "--shoot",
        metavar="THEME",
        action="append",
        help="buy for this shoot; may be given again (default: all that are still to be filmed)",
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
    many("--list", "KIND[*N]", "put so many packages on the list by hand; *0 takes it off"),
)
"""What `buy` is asked for or told, one of these at a time."""


@command(
    one_of(*_BUY),
    flag("--no-pars", "buy for the shoots only"),
    argument("--on", type=day, metavar="DAY", help="when it was received (default: today)"),
    SHOP,
)
def buy(arguments: Arguments) -> Answer:
    """What to buy, what was bought and is taken in, or the pars, set or listed."""
    if arguments.on is not None and not arguments.received:
        raise InvalidField("on", arguments.on, "it says when --received things came")
    if arguments.shop is not None and not arguments.received:
        raise InvalidField("shop", arguments.shop, "it says where --received things were bought")
    with opened_bar(arguments) as bar:
        if arguments.received:
            return _receive(bar, arguments)
        if arguments.list:
            return _list_by_hand(bar, arguments)
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


def _list_by_hand(bar: Bar, arguments: Arguments) -> Answer:
    from barkeep.application.shopping import read_to_buy  # loads the store, as writing does

    wanted = [read_to_buy(each, bar.snapshot) for each in arguments.list]
    listed, tree = bar.shopping.add(wanted).value, bar.snapshot.knowledge.tree
    names = [f"{each.packages} × {tree.in_sentence(each.ingredient)}" for each in listed]
    said = "Nothing is on the list by hand."
    if names:
        said = f"By hand on the list: {spoken_list(names, 'and')}."
    return Answer(lambda: {"to_buy": _to_buy_json(listed, tree)}, said)


# What was bought


def _receive(bar: Bar, arguments: Arguments) -> Answer:
    from barkeep.application.shopping import read_bought  # loads the store, as writing does

    bought = [
        replace(read_bought(each, bar.snapshot, arguments.on), shop=arguments.shop or "")
        for each in arguments.received
    ]
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
    from barkeep.application.shopping import read_par_line  # loads the store, as writing does

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
