"""What each bottle carries: what could not be made any more if it ran out, and what it costs.

A drink can miss a bottle only where it is poured from it: for the ways it is poured now stay
there without any other bottle. So each drink that can be made is laid out once, and looked at
again without each bottle it draws on; where its levels are tight, without each that any way to
it draws on. What the usual pour of a kind is may change with a bottle, so without one that is,
the whole book is asked.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, field, replace
from functools import cached_property
from statistics import median

from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.bottle import Bottle
from barkeep.domain.drink.costs import unit_price
from barkeep.domain.ingredients.derivations import Derivation
from barkeep.domain.pouring.assessment import Assessment, assess
from barkeep.domain.pouring.memory import Memory
from barkeep.domain.pouring.serves import SLACK
from barkeep.domain.pouring.sourcing import Sourcing, Within, need, sourcing_for, thresholds
from barkeep.domain.pouring.supply import Pool, Supply
from barkeep.domain.pouring.verdict import VERDICTS, Verdict
from barkeep.domain.pouring.verdicts import verdicts
from barkeep.domain.specs.spec import Spec


@dataclass(frozen=True, slots=True)
class Carried:
    """What one bottle carries. Names are those of specs, in the order of the book.

    `poured_for` are the drinks that can be made and draw on its kind; `lost` those that could not
    be made without the bottle, `worse` those that then took a stand-in. `pour` is what a serve
    of them mostly takes, in the bottle's unit, `cost` what that costs; None where it is poured
    for none, or where no price is known. `serves_left` is how many such pours it holds.
    """

    bottle: Bottle
    poured_for: tuple[str, ...]
    lost: tuple[str, ...]
    worse: tuple[str, ...]
    pour: float | None
    cost: float | None
    serves_left: int | None

    @property
    def carries_nothing(self) -> bool:
        """Whether no drink that can be made would be any worse without it."""
        return not (self.lost or self.worse or self.poured_for)


@dataclass(frozen=True, slots=True)
class Reliance:
    """The answer, what carries most first; `currency` is what costs are in.

    `makeable` is how many drinks can be made as it is.
    """

    carried: tuple[Carried, ...]
    makeable: int
    currency: str

    @property
    def nothing(self) -> tuple[Carried, ...]:
        """The bottles that carry nothing."""
        return tuple(each for each in self.carried if each.carries_nothing)

    @property
    def low(self) -> tuple[Carried, ...]:
        """The bottles that are low and would be missed, those that matter most first."""
        return tuple(
            each for each in self.carried if each.bottle.is_low and (each.lost or each.worse)
        )


def reliance(
    snapshot: Snapshot, within: Within = "close", memory: Memory | None = None
) -> Reliance:
    """What each bottle that can be poured from carries."""
    memory = memory or Memory()
    found = verdicts(snapshot, within, memory=memory)
    sourcing = sourcing_for(snapshot, within, memory)
    made = [
        _Made(assess(spec, sourcing), verdict, sourcing)
        for spec, verdict in zip(snapshot.all_specs, found.of, strict=True)
        if verdict in ("ready", "stand_in")
    ]
    of_kind: dict[str, list[_Made]] = {}
    for each in made:
        for key in each.could_miss:
            of_kind.setdefault(key, []).append(each)
    house = {each.product for each in snapshot.settings.house}
    carried = []
    for bottle in (each for some in snapshot.usable.values() for each in some):
        if bottle.ingredient in snapshot.always_there:
            continue
        if bottle.product.id in house:
            without = _by_the_whole_book(bottle, snapshot, within)
        else:
            without = _without(bottle, of_kind.get(bottle.ingredient, ()), sourcing)
        carried.append(_carried(bottle, made, without))
    return Reliance(tuple(sorted(carried, key=_most_first)), len(made), snapshot.settings.currency)


def _most_first(each: Carried) -> tuple[object, ...]:
    """What would be missed most, then what is poured for most."""
    many = (-len(each.lost), -len(each.worse), -len(each.poured_for))
    return *many, each.bottle.product.title.casefold(), each.bottle.id


@dataclass(frozen=True)
class _Made:
    """A drink that can be made, laid out, with the ways it is poured."""

    laid_out: Assessment
    verdict: Verdict
    sourcing: Sourcing
    _known: dict[int, Verdict] = field(default_factory=dict)

    @property
    def spec(self) -> Spec:
        return self.laid_out.spec

    @cached_property
    def _ways(self) -> tuple[Derivation, ...]:
        return self.laid_out.chosen(self.laid_out.numbers, exact=self.verdict == "ready")

    @cached_property
    def draws(self) -> Mapping[str, float]:
        """What a serve draws of each kind, in the kind's unit."""
        found: dict[str, float] = {}
        for line, way in zip(self.laid_out.lines, self._ways, strict=True):
            amount = need(line, self.sourcing.tree)
            for key, rate in way.draws.items():
                if key not in self.sourcing.supply.always:
                    found[key] = found.get(key, 0.0) + amount * rate
        return found

    @property
    def could_miss(self) -> Iterable[str]:
        """The kinds without a bottle of which it might not be made as it is."""
        supply = self.sourcing.supply
        plenty = all(supply.total(key) >= amount for key, amount in self.draws.items())
        if plenty and not thresholds(self.spec):
            return self.draws
        ways = (each.derivation for some in self.laid_out.choices for each in some)
        return {key for way in ways for key in way.draws} - supply.always

    def without(self, pools: Mapping[Pool, float]) -> Verdict:
        """How it stands with so much in the bar."""
        then = replace(self.laid_out, supply=pools)
        if then.enough(exact=True):
            return "ready"
        return "stand_in" if then.enough() else "short"


def _without(bottle: Bottle, drinks: Iterable[_Made], sourcing: Sourcing) -> Mapping[str, Verdict]:
    """How each of some drinks stands without a bottle, by its name."""
    stocks = dict(sourcing.supply.stocks)
    rest = tuple(each for each in stocks[bottle.ingredient] if each.bottle is not bottle)
    left = Supply({**stocks, bottle.ingredient: rest}, sourcing.supply.always)
    return {each.spec.name: each.without(left.pools(thresholds(each.spec))) for each in drinks}


def _by_the_whole_book(bottle: Bottle, snapshot: Snapshot, within: Within) -> Mapping[str, Verdict]:
    rest = snapshot.changed(bottles=tuple(each for each in snapshot.bottles if each is not bottle))
    found = verdicts(rest, within)
    return {spec.name: each for spec, each in zip(rest.all_specs, found.of, strict=True)}


def _carried(bottle: Bottle, made: Iterable[_Made], without: Mapping[str, Verdict]) -> Carried:
    poured = {
        each.spec.name: each.draws[bottle.ingredient]
        for each in made
        if each.draws.get(bottle.ingredient, 0.0) > 0.0
    }
    pour = median(poured.values()) if poured else None
    price = unit_price(bottle.product)
    return Carried(
        bottle,
        poured_for=tuple(poured),
        lost=tuple(_fallen(made, without, to=("one_short", "short"))),
        worse=tuple(_fallen(made, without, to=("stand_in",))),
        pour=pour,
        cost=None if pour is None or price is None else pour * price,
        serves_left=None if pour is None else int((bottle.level.amount + SLACK) / pour),
    )


def _fallen(
    made: Iterable[_Made], without: Mapping[str, Verdict], to: tuple[Verdict, ...]
) -> Iterator[str]:
    for each in made:
        then = without.get(each.spec.name, each.verdict)
        if then in to and VERDICTS.index(then) > VERDICTS.index(each.verdict):
            yield each.spec.name
