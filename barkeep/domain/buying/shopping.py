"""What to buy for the shoots that are planned, all together, and to keep up the pars.

The menu says what all shoots lack once every bottle is shared out among them.
What is squeezed or made here is bought as what it is made from, with the same
margin as the mise en place has, and so are garnishes that are cut here. Then
come the pars: the least the owner wants to have after the shoots. Special
kinds are bought before general ones: what is left of a bottle of London dry
gin serves a line that asks for any gin.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field

from barkeep.domain.amounts.rounding import NOISE_PLACES, whole_up, whole_with_spare
from barkeep.domain.amounts.units import Unit
from barkeep.domain.bar.pars import Par
from barkeep.domain.bar.shoots import Shoot
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bar.to_buy import ToBuy
from barkeep.domain.bottles.bottle import Product
from barkeep.domain.buying.either import Kind, Least, Wanted, least_list
from barkeep.domain.buying.packages import NEARLY, Package, package_for, packages_for
from barkeep.domain.ingredients.fruit import WHOLE, Used, parts_taken
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.making.available import available_in
from barkeep.domain.making.made_here import inputs_of, is_made_here, is_one_to_buy
from barkeep.domain.phrases import counted, price_in_words
from barkeep.domain.pouring.assumed import Assumed
from barkeep.domain.pouring.sourcing import Within, need
from barkeep.domain.pouring.words import plain_amount
from barkeep.domain.shoots.drinks import orders_of
from barkeep.domain.shoots.garnish_needs import GarnishSource, garnish_needs, source_of
from barkeep.domain.shoots.making_ahead import MARGIN
from barkeep.domain.shoots.menu import Menu, MenuLine, Order, menu
from barkeep.domain.shoots.plan import assumed, faded_among, not_counted
from barkeep.domain.specs.called import called_in_sentence, kinds_named_by, other_kind
from barkeep.domain.specs.shown_lines import names_in_sentence
from barkeep.domain.specs.spec import Line
from barkeep.errors import spoken_list
from barkeep.translation import tr, tr_about, tr_noop

ON_THE_LIST = tr_noop("you put it on the list")


@dataclass(frozen=True, slots=True)
class ShoppingItem:
    """One thing to buy: `need` in its own `unit`, in `packages` of `size` each.

    `product` is None where the bar knows none of the kind; `size` is then what
    one purchase usually holds. `price` is that of one package, None where it
    is not known. `min_abv_percent` is the least strength that will do.
    """

    ingredient: str
    need: float
    unit: Unit
    product: Product | None
    size: float
    packages: int
    price: float | None
    why: tuple[str, ...]
    min_abv_percent: float | None = None
    called: tuple[str, ...] = ()

    @property
    def cost(self) -> float | None:
        """What all packages cost, None where no price is known."""
        return None if self.price is None else self.price * self.packages


@dataclass(frozen=True, slots=True)
class ShoppingList:
    """The answer, by name; `currency` is what prices are in.

    `not_counted` names in sentences each line of the drinks that nothing is bought
    for, or whose amount is guessed; see `barkeep.domain.shoots.plan.not_counted`.
    `assumed` has each guess with its line. `faded` says what of the bar is counted
    on that is past its best by then.
    """

    items: tuple[ShoppingItem, ...]
    currency: str
    not_counted: tuple[str, ...] = ()
    assumed: tuple[Assumed, ...] = ()
    faded: tuple[str, ...] = ()

    @property
    def total(self) -> float:
        """What everything with a known price costs."""
        return sum(each.cost for each in self.items if each.cost is not None)

    @property
    def unpriced(self) -> int:
        """How many things have no known price."""
        return sum(each.cost is None for each in self.items)


def still_to_film(snapshot: Snapshot) -> tuple[Shoot, ...]:
    """The shoots that are ideas or planned, soonest first."""
    found = (each for each in snapshot.shoots if each.state in ("idea", "planned"))
    return tuple(sorted(found, key=lambda each: (each.on, each.theme.casefold())))


def shopping_for(shoots: Sequence[Shoot], snapshot: Snapshot, *, pars: bool = True) -> ShoppingList:
    """What to buy for these shoots and the pars.

    The bar is taken as it will be by the last of them, so that nothing is
    counted on that is past its date by then.
    """
    then = snapshot.changed(on=max((snapshot.on, *(each.on for each in shoots))))
    orders = [orders_of(each, then) for each in shoots]
    return shopping(orders, then, pars=pars, themes=[each.theme for each in shoots])


def shopping(
    order_lists: Sequence[Sequence[Order]],
    snapshot: Snapshot,
    *,
    pars: bool = True,
    within: Within = "exact",
    themes: Sequence[str] = (),
) -> ShoppingList:
    """What to buy so that all orders, a list a shoot, can be poured from the same bottles.

    `themes` names the shoots for the reasons, where they have names. Nothing
    that is always there is ever bought, nor a stand-in.
    """
    wanted = [
        (order, f"{themes[number]}’s {order.spec.name}" if themes else order.spec.name)
        for number, orders in enumerate(order_lists)
        for order in orders
        if order.serves > 0
    ]
    shop = _Shop(snapshot)
    found = menu([order for order, _drink in wanted], snapshot, within)
    shop.take(wanted, found)
    for par in snapshot.settings.pars if pars else ():
        shop.keep_up(par)
    for each in snapshot.settings.to_buy if pars else ():
        shop.list_by_hand(each)
    tree = snapshot.knowledge.tree
    items = sorted(shop.items(), key=lambda each: tree.name(each.ingredient).casefold())
    ordered = [order for order, _drink in wanted]
    return ShoppingList(
        tuple(items),
        snapshot.settings.currency,
        tuple(not_counted(ordered, snapshot)),
        tuple(dict.fromkeys(assumed(ordered, snapshot))),
        faded=faded_among(found.draws, snapshot),
    )


@dataclass(frozen=True, slots=True)
class _Either:
    """A line that is short of so much, and whose drink lets one choose what to buy for it."""

    line: Line
    kinds: tuple[Kind, ...]
    amount: float
    drink: str


@dataclass(slots=True)
class _Need:
    """How much of one kind is poured, by the reason, in the kind's unit.

    `spare` is the margin on what is made of whole pieces.
    """

    poured: float = 0.0
    spare: float = 0.0
    why: dict[str, float] = field(default_factory=dict)
    called: dict[str, None] = field(default_factory=dict)

    def pieces(self) -> float:
        """Of what is counted: whole ones, and no other only for the margin."""
        return whole_with_spare(self.poured, self.spare)

    def add(self, amount: float, why: str) -> None:
        """So much more for a reason; `{}` in it is filled with all that is for it."""
        self.poured += amount
        self.why[why] = self.why.get(why, 0.0) + amount


@dataclass(slots=True)
class _Bought:
    """A purchase while the list grows: what of it is poured, and what is kept for a par."""

    kind: Kind
    package: Package
    packages: int
    poured: float
    kept: float
    why: list[str]
    called: tuple[str, ...] = ()

    @property
    def free(self) -> float:
        """What nobody has spoken for."""
        return self.packages * self.package.size - self.poured - self.kept


class _Shop:
    """Gathers needs, first of the shoots and then of the pars, and meets them together."""

    def __init__(self, snapshot: Snapshot) -> None:
        self._snapshot = snapshot
        self._tree = snapshot.knowledge.tree
        self._stock = available_in(snapshot)
        self._supply = self._stock.supply
        self._needs: dict[Kind, _Need] = {}
        self._spares: list[tuple[str, float, str]] = []
        self._spared: dict[str, float] = {}
        self._pars: dict[str, float] = {}
        self._either: list[_Either] = []
        self._listed: dict[Kind, int] = {}

    def take(self, wanted: Sequence[tuple[Order, str]], found: Menu) -> None:
        """Take what the menu draws from the bar, and note what it lacks for each drink."""
        for draw in found.draws:
            self._stock.hand_out(draw.bottle.ingredient, draw.amount)
        drinks = [drink for order, drink in wanted for _line in order.spec.required_lines]
        for drink, met in zip(drinks, found.lines, strict=True):
            self._spare(met, drink)
            if met.short > 0.0:
                self._short(met.line, met.short, drink)
        for made, amount, why in self._spares:
            self._need_to_make(made, amount, why, spare=True)
        self._garnishes(wanted)

    def keep_up(self, par: Par) -> None:
        """Note a par; what is made here is noted as what it is made from."""
        key = par.ingredient
        if key not in self._tree or key in self._snapshot.always_there:
            return
        if not self._is_made(key):
            self._pars[key] = par.amount
            return
        lacking = par.amount - self._stock.there(key)
        if lacking > 0.0:
            why = tr(
                "par is {amount} of {name}",
                amount=self._shown(key, par.amount),
                name=self._tree.in_sentence(key),
            )
            self._need_to_make(key, lacking, why)

    def list_by_hand(self, each: ToBuy) -> None:
        """Note what was put on the list by hand."""
        if each.ingredient in self._tree and each.ingredient not in self._snapshot.always_there:
            self._listed[Kind(each.ingredient)] = each.packages

    def items(self) -> Iterator[ShoppingItem]:
        """What to buy."""
        least = self._least()
        chosen = [each.kinds[0] for each in self._either] if least is None else least.chosen
        for either, kind in zip(self._either, chosen, strict=False):  # then come other needs
            self._note(either, kind)
        bought: list[_Bought] = []
        if least is None:
            kinds = {*self._needs, *map(Kind, self._pars), *self._listed}
            for kind in sorted(kinds, key=self._turn):
                self._buy(kind, bought)
        else:
            bought = [
                self._as_planned(kind, least)
                for kind in sorted(least.packages, key=self._turn)
                if least.packages[kind]
            ]
        for each in bought:
            yield self._item(each)

    # What is needed

    def _short(self, line: Line, amount: float, drink: str) -> None:
        key = self._first_choice(line)
        if self._is_made(key) and line.min_abv_percent is None:
            name = names_in_sentence(line, self._tree)
            why = tr(
                "{amount} of {name} short for {drink}",
                amount=self._shown(key, amount),
                name=name,
                drink=drink,
            )
            self._need_to_make(key, amount, why)
            self._spares.append((key, amount * MARGIN, why))
        elif key not in self._snapshot.always_there:
            bought = (each for each in line.wanted if self._may_do(each, key, line))
            others = (each for each in bought if each != key)
            kinds = tuple(Kind(each, line.min_abv_percent) for each in (key, *others))
            self._either.append(_Either(line, kinds, amount, drink))

    def _may_do(self, key: str, first: str, line: Line) -> bool:
        """Whether a thing is bought, and counted as the first choice is."""
        alike = self._tree[key].unit == self._tree[first].unit
        return alike and (line.min_abv_percent is not None or not self._is_made(key))

    def _least(self) -> Least | None:
        """The least list of all that is needed; None where nothing does for anything else."""
        wanted = [Wanted(each.kinds, each.amount) for each in self._either]
        wanted += [Wanted((kind,), self._poured(kind)) for kind in self._needs]
        kept = {Kind(key): self._lacking(key) for key in self._pars}
        needed = (kind for each in wanted for kind in each.kinds)
        kinds = dict.fromkeys((*needed, *kept, *self._listed))
        packages = {
            kind: package_for(kind.ingredient, kind.least_abv, self._snapshot) for kind in kinds
        }
        shared = any(
            one != other and self._fits(packages[one], other) for one in kinds for other in kinds
        )
        if not shared and all(len(each.kinds) == 1 for each in wanted):
            return None

        def special(kind: Kind) -> float:
            """How deep in the tree it is; what is sold as another kind only has its place."""
            sold_as = packages[kind].ingredient
            other = 0.0 if sold_as == kind.ingredient else 0.5
            return len(self._tree.ancestors(sold_as)) + other

        return least_list(
            wanted, kept, packages, self._fits, special=special, at_least=self._listed
        )

    def _poured(self, kind: Kind) -> float:
        entry = self._needs.get(kind, _Need())
        return entry.pieces() if self._tree[kind.ingredient].unit == "each" else entry.poured

    def _lacking(self, key: str) -> float:
        """How much more than is left a par takes."""
        return max(0.0, self._pars.get(key, 0.0) - self._stock.there(key))

    def _note(self, either: _Either, kind: Kind) -> None:
        line = either.line
        needed = self._needs.setdefault(kind, _Need())
        drink = either.drink
        if line.stated:
            drink = tr(
                "{drink}, which asks for {stated}",
                drink=drink,
                stated=spoken_list(line.stated, "and"),
            )
        needed.add(either.amount, tr("{{}} short for {drink}", drink=drink))
        if kind.ingredient == line.ingredient:
            needed.called[called_in_sentence(line, self._tree)] = None

    def _first_choice(self, line: Line) -> str:
        """Of what a line lets one choose from, the first that the bar knows a product of."""
        known = (
            key
            for key in line.wanted
            if package_for(key, line.min_abv_percent, self._snapshot).product
        )
        return next(known, line.ingredient)

    def _spare(self, met: MenuLine, drink: str) -> None:
        """What is made from what is there is made with a margin too."""
        for poured in met.poured:
            amount = need(met.line, self._tree) * poured.serves * poured.derivation.ratio
            for step in poured.derivation.made:
                if self._is_made(step.recipe.made):
                    name = self._tree.in_sentence(step.recipe.made)
                    why = tr(
                        "{name} for {drink} is made with {margin:.0%} to spare",
                        name=name,
                        drink=drink,
                        margin=MARGIN,
                    )
                    self._spares.append((step.recipe.made, amount * MARGIN, why))

    def _need_to_make(
        self,
        made: str,
        amount: float,
        why: str,
        *,
        spare: bool = False,
        within: frozenset[str] = frozenset(),
    ) -> None:
        """Note what it takes to make so much, less what is left of it here.

        `spare` says that it is a margin, for which no other piece is bought.
        `within` holds what is being made already, so that no recipe goes in circles.
        """
        for key, each in inputs_of(made, amount, self._snapshot).items():
            rest = each - self._stock.draw(key, each)
            if spare:
                self._spared[key] = self._spared.get(key, 0.0) + each - rest
            if rest <= 0.0:
                continue
            if self._is_made(key) and key not in within | {made}:
                self._need_to_make(key, rest, why, spare=spare, within=within | {made})
            elif spare and self._tree[key].unit == "each":
                self._needs.setdefault(Kind(key), _Need()).spare += rest
            else:
                self._needs.setdefault(Kind(key), _Need()).add(rest, why)

    def _garnishes(self, wanted: Sequence[tuple[Order, str]]) -> None:
        """Note what the garnishes take that is not there, what is cut from fruit as the fruit."""
        orders = [order for order, _drink in wanted]
        named = kinds_named_by((each for order in orders for each in order.spec.lines), self._tree)
        fruit: dict[str, Used] = {}
        why: dict[str, list[str]] = {}
        for each in garnish_needs(orders, named):
            source = source_of(each, self._snapshot, self._supply)
            if source is None or each.is_required:
                continue
            drinks = spoken_list([wanted[number][1] for number in each.drinks], "and")
            if source.fruit is None:
                self._garnish(source, drinks)
                continue
            key, much = source.fruit.ingredient, source.fruit.amount
            parts = parts_taken(source.recipe, self._tree) if source.recipe else WHOLE
            fruit.setdefault(key, Used()).add(key, much, parts)
            why.setdefault(key, []).append(
                tr("{count} × {name} for {drinks}", count=each.count, name=each.name, drinks=drinks)
            )
        for key, used in fruit.items():
            self._fruit(key, used, why[key])

    def _garnish(self, source: GarnishSource, drinks: str) -> None:
        key = source.ingredient
        if math.isinf(source.have):
            return
        lacking = source.amount - self._stock.draw(key, source.amount)
        if lacking > 0.0:
            needed = self._needs.setdefault(Kind(key), _Need())
            needed.add(lacking, tr("{{}} short to garnish {drinks}", drinks=drinks))

    def _fruit(self, key: str, used: Used, why: Sequence[str]) -> None:
        """Whole fruit to cut, what is peeled being squeezed as well."""
        have = self._supply.total_of_kind(key, self._tree)
        needed = self._needs.setdefault(Kind(key), _Need())
        spare = self._spared.get(key, 0.0)
        taken = have - self._stock.there(key) - spare + needed.poured
        squeezed = max(whole_with_spare(taken, spare + needed.spare), 0.0)
        whole = whole_up(used.of(key, ("flesh",)))
        peeled = whole_up(used.of(key, ("peel",)) - used.of(key, ("flesh",)))
        lacking = whole + max(squeezed, peeled) - max(have, squeezed)
        self._stock.draw(key, whole)
        if lacking > 0.0:
            needed.add(
                lacking,
                tr("{{}} short to cut {garnishes}", garnishes=spoken_list(list(why), "and")),
            )

    # Meeting it

    def _turn(self, kind: Kind) -> tuple[int, float, str]:
        """Special kinds and strong ones first."""
        return (
            -len(self._tree.ancestors(kind.ingredient)),
            -(kind.least_abv or 0.0),
            kind.ingredient,
        )

    def _buy(self, kind: Kind, bought: list[_Bought]) -> None:
        entry = self._needs.get(kind, _Need())
        fitting = [each for each in bought if self._fits(each.package, kind)]
        package = package_for(kind.ingredient, kind.least_abv, self._snapshot)
        why = list(self._reasons(kind, entry))
        poured = _pour_from(fitting, self._poured(kind), why)
        kept, why_kept = self._kept(kind, package, fitting)
        amount, listed = round(poured + kept, NOISE_PLACES), self._listed.get(kind, 0)
        if amount > 0.0 or listed:
            count = max(packages_for(amount, package.size), listed)
            reasons = [*(why if poured else []), *why_kept, *([tr(ON_THE_LIST)] if listed else [])]
            bought.append(
                _Bought(
                    kind=kind,
                    package=package,
                    packages=count,
                    poured=poured,
                    kept=kept,
                    why=reasons,
                    called=tuple(entry.called),
                )
            )

    def _as_planned(self, kind: Kind, least: Least) -> _Bought:
        """The packages of a kind on the least list, with all that they are bought for."""
        entry = self._needs.get(kind, _Need())
        package = package_for(kind.ingredient, kind.least_abv, self._snapshot)
        whom = sorted((each for each, of in least.poured if of == kind), key=self._turn)
        why = [said for each in whom for said in self._reasons(each, self._needs[each])]
        kept = least.kept[kind]
        for key in self._pars if kept > NEARLY else ():
            if self._lacking(key) > 0.0 and self._fits(package, Kind(key)):
                said = self._par_in_words(key, package)
                own = key == kind.ingredient
                why.append(said if own else f"{self._tree.in_sentence(key)}: {said}")
        if any(self._fits(package, each) for each in self._listed):
            why.append(tr(ON_THE_LIST))
        return _Bought(
            kind=kind,
            package=package,
            packages=least.packages[kind],
            poured=sum(least.poured[each, kind] for each in whom),
            kept=kept,
            why=why,
            called=tuple(entry.called),
        )

    def _par_in_words(self, key: str, package: Package) -> str:
        unit, left = self._tree[key].unit, self._stock.there(key)
        par = _in_packages(self._pars[key], package, unit)
        shown = self._shown(key, math.floor(left) if unit == "each" else left)
        return tr("par is {par}, and {left} will be left", par=par, left=shown)

    def _kept(
        self, kind: Kind, package: Package, fitting: Sequence[_Bought]
    ) -> tuple[float, list[str]]:
        """What a par takes beyond all that is left, or bought already, of the kind."""
        par = 0.0 if kind.least_abv is not None else self._pars.get(kind.ingredient, 0.0)
        left = self._stock.there(kind.ingredient)
        lacking = par - left - sum(each.kept for each in fitting)
        if lacking <= 0.0:
            return 0.0, []
        why = self._par_in_words(kind.ingredient, package)
        for each in fitting:
            if (taken := min(lacking, each.free)) > 0.0:
                each.kept += taken
                each.why.append(f"{self._tree.in_sentence(kind.ingredient)}: {why}")
                lacking -= taken
        return lacking, [why]

    def _fits(self, package: Package, kind: Kind) -> bool:
        strong = package.abv_percent >= (kind.least_abv or 0.0)
        return strong and is_one_to_buy(
            package.ingredient,
            kind.ingredient,
            package.product,
            least_abv=kind.least_abv,
            snapshot=self._snapshot,
        )

    def _reasons(self, kind: Kind, entry: _Need) -> Iterator[str]:
        for words, amount in entry.why.items():
            yield words.replace("{}", self._shown(kind.ingredient, amount))
        if kind.least_abv is not None:
            yield tr("it must have {abv:g} % vol or more", abv=kind.least_abv)

    def _item(self, bought: _Bought) -> ShoppingItem:
        key, package = bought.kind.ingredient, bought.package
        unit = self._tree[key].unit
        amount = round(bought.poured + bought.kept, NOISE_PLACES)
        return ShoppingItem(
            ingredient=key,
            need=whole_up(amount) if unit == "each" else amount,
            unit=unit,
            product=package.product,
            size=package.size,
            packages=bought.packages,
            price=package.price,
            why=tuple(dict.fromkeys(bought.why)),
            min_abv_percent=bought.kind.least_abv,
            called=bought.called,
        )

    def _is_made(self, key: str) -> bool:
        return is_made_here(key, self._snapshot)

    def _shown(self, key: str, amount: float) -> str:
        return plain_amount(round(amount, 1), self._tree[key].unit)


def _pour_from(fitting: Sequence[_Bought], amount: float, why: Sequence[str]) -> float:
    """Meet what can be met from what is bought anyway; what is left of the amount."""
    for each in fitting:
        if (taken := min(amount, each.free)) > 0.0:
            each.poured += taken
            each.why += why
            amount -= taken
    return amount


def _in_packages(par: float, package: Package, unit: Unit) -> str:
    """A par as it was most likely meant: *2 bottles*, else the amount."""
    count = par / package.size
    if unit == "ml" and count >= 1.0 and count == int(count):
        return counted(int(count), "bottle")
    return plain_amount(round(par, 1), unit)


def packages_in_words(item: ShoppingItem) -> str:
    """What to take off the shop's shelf: *2 × 700 ml Lamp Room dry gin*."""
    title = "" if item.product is None else item.product.title
    if item.unit == "each" and item.size == 1.0:
        return f"{item.packages} {title}".strip()
    return f"{item.packages} × {plain_amount(item.size, item.unit)} {title}".strip()


def need_in_words(item: ShoppingItem) -> str:
    """How much of it is needed: *150 ml*; *as listed* where only the owner says so."""
    if not item.need:
        return tr("as listed")
    return plain_amount(round(item.need, 1), item.unit)


def name_in_words(item: ShoppingItem, tree: FamilyTree) -> str:
    """What it is in the words of the drinks, with its kind and the strength it must have."""
    kind = tree.in_sentence(item.ingredient)
    words = spoken_list(item.called, "and") if item.called else kind
    name = tree.name(item.ingredient) if words == kind else words
    if other_kind(words, kind):
        name += f" ({kind})"
    least = item.min_abv_percent
    return name if least is None else tr("{name}, {abv:g} % vol or more", name=name, abv=least)


def why_in_words(item: ShoppingItem) -> str:
    """All reasons in one line."""
    return "; ".join(item.why)


def things_in_words(count: int) -> str:
    """*4 things*, on the list."""
    if count == 1:
        return tr_about("on the shopping list", "{count} thing", count=count)
    return tr_about("on the shopping list", "{count} things", count=count)


def total_in_words(found: ShoppingList) -> str:
    """What it comes to: *110.60 EUR for 4 things; 1 has no known price.*"""
    if not found.items:
        return tr("There is nothing to buy.")
    unpriced, priced = found.unpriced, len(found.items) - found.unpriced
    if not priced:
        return tr("{things} to buy; no price is known.", things=things_in_words(unpriced))
    price, things = price_in_words(found.total, found.currency), things_in_words(priced)
    if not unpriced:
        return tr("{price} for {things}.", price=price, things=things)
    said = tr("{price} for {things}", price=price, things=things)
    if unpriced == 1:
        return tr("{said}; {unpriced} has no known price.", said=said, unpriced=unpriced)
    return tr("{said}; {unpriced} have no known price.", said=said, unpriced=unpriced)


def list_as_text(found: ShoppingList, tree: FamilyTree) -> str:
    """The whole list as plain text, a line a thing, and each line of a drink not counted."""
    lines = []
    for each in found.items:
        cost = price_in_words(each.cost, found.currency)
        lines.append(
            f"{name_in_words(each, tree)}: {packages_in_words(each)}{f' ({cost})' if cost else ''}"
        )
    return "\n".join((*lines, total_in_words(found), *found.not_counted))
