"""The book as purchases see it: the drinks that fail now, and what any set of purchases turns.

A drink that fails has lines without a way; each is a need, met by whichever purchases give it a
way, alone or together. Levels and least strengths are looked at for real before anything is
claimed: the drink is laid out once more with the whole set in the bar.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace
from functools import cached_property

import numpy as np

from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.buying.coverage import Chosen, Market, Need, Target
from barkeep.domain.buying.limits import Limits
from barkeep.domain.buying.next_bottle import may_buy
from barkeep.domain.buying.packages import Purchase, purchase_of
from barkeep.domain.buying.purchases import Purchases
from barkeep.domain.ingredients.derivations import Derivation, Want
from barkeep.domain.pouring.assessment import Assessment, assess
from barkeep.domain.pouring.book_lines import Ask
from barkeep.domain.pouring.memory import Memory
from barkeep.domain.pouring.sourcing import DerivationWays, Within, any_of, choices, thresholds
from barkeep.domain.pouring.whole_book import ONE_SHORT, READY, STAND_IN, decide
from barkeep.domain.specs.spec import Spec


@dataclass(frozen=True, slots=True)
class Failing:
    """A drink that cannot be made now: its place in the book, and what purchases have to do."""

    place: int
    spec: Spec
    worth: float
    needs: tuple[Need, ...]


class PurchaseBook:
    """The book with what each purchase does for it.

    Purchases go by number, those that are rather taken first.
    """

    def __init__(
        self,
        snapshot: Snapshot,
        limits: Limits,
        within: Within,
        *,
        memory: Memory,
        worths: Mapping[str, float] | None = None,
        prices: Mapping[str, float] | None = None,
    ) -> None:
        self.snapshot, self.limits = snapshot, limits
        self._worths = worths or {}
        self._decided, self.sourcing = decide(snapshot, within, 1, memory)
        sold = [key for key in self.sourcing.tree if may_buy(key, self.sourcing)]
        self._all = [purchase_of(key, snapshot, prices) for key in sold]
        usable = [each for each in self._all if limits.budget is None or each.price is not None]
        self.purchases = sorted(usable, key=self._rather)
        self.number = {each.ingredient: place for place, each in enumerate(self.purchases)}
        self.most = self._most()
        self._needs: dict[Ask, Need] = {}
        self._ways: dict[Ask, tuple[Derivation, ...]] = {}
        self._looks: dict[int, Look] = {}

    def _rather(self, each: Purchase) -> tuple[object, ...]:
        """What is a thing by itself, has a known price and costs little is rather taken."""
        tree, key = self.sourcing.tree, each.ingredient
        return (
            self._rows.is_cut(key),
            each.price is None,
            each.price or 0.0,
            each.product is None,
            self._rows.source(key) != key,
            len(tree.ancestors(key)),
            tree.name(key).casefold(),
            key,
        )

    @cached_property
    def _rows(self) -> Purchases:
        return Purchases(self.snapshot)

    def _most(self) -> int:
        """How many purchases there can be at all."""
        many = len(self.purchases) if self.limits.bottles is None else self.limits.bottles
        if self.limits.budget is None:
            return many
        left, count = self.limits.budget, 0
        for price in sorted(each.price or 0.0 for each in self.purchases):
            left -= price
            if left < 0.0:
                break
            count += 1
        return min(many, count)

    # The question

    @cached_property
    def market(self) -> Market:
        """The question as `coverage` takes it: only drinks that are worth anything."""
        costs = tuple(each.price or 0.0 for each in self.purchases)
        targets = tuple(Target(each.worth, each.needs) for each in self._counted)
        return Market(costs, targets, self.limits)

    @cached_property
    def _counted(self) -> tuple[Failing, ...]:
        return tuple(each for each in self.failing if each.worth > 0.0)

    @cached_property
    def failing(self) -> tuple[Failing, ...]:
        """The drinks that purchases might turn, in the order of the book."""
        found = (*self._failing_at_once(), *self._failing_one_by_one())
        return tuple(
            sorted((each for each in found if all(each.needs)), key=lambda each: each.place)
        )

    def _failing_at_once(self) -> Iterator[Failing]:
        """What the arrays have decided: lines without a way are what is needed."""
        drawn, codes = self._decided.drawn, self._decided.codes
        lines = drawn.lines
        asks: dict[int, dict[int, None]] = {}
        short = ~drawn.has_way & (codes[lines.rows.spec] >= ONE_SHORT)
        for place, ask in zip(
            lines.rows.spec[short].tolist(), lines.rows.ask[short].tolist(), strict=True
        ):
            asks.setdefault(place, {})[ask] = None
        for place, some in asks.items():
            spec = lines.specs[place]
            if not spec.unsettled:
                yield self._fails(place, spec, [lines.asks[each] for each in some])

    def _failing_one_by_one(self) -> Iterator[Failing]:
        for place, spec in self._undecided:
            look = self.look(place)
            if look.makes(frozenset()) or not look.makes(look.bearing):
                continue
            laid_out = look.laid_out
            without = [each for each in laid_out.numbers if not laid_out.choices[each]]
            yield self._fails(place, spec, [look.asks[each] for each in without])

    @cached_property
    def _undecided(self) -> list[tuple[int, Spec]]:
        return [(place, spec) for place, spec in self._decided.undecided if not spec.unsettled]

    def _fails(self, place: int, spec: Spec, asks: Iterable[Ask]) -> Failing:
        needs = tuple(dict.fromkeys(map(self._need, asks)))
        return Failing(place, spec, self._worths.get(spec.name, 1.0), needs)

    @cached_property
    def makeable_now(self) -> int:
        """How many drinks can be made as it is."""
        codes = self._decided.codes
        at_once = int(np.isin(codes, (READY, STAND_IN)).sum())
        looked_at = (self.look(place).makes(frozenset()) for place, _ in self._undecided)
        return at_once + sum(looked_at)

    def _need(self, ask: Ask) -> Need:
        """What gives a line that asks for this a way, none where nothing does."""
        if ask not in self._needs:
            options = {self._option(way) for way in self.ways(ask)}
            self._needs[ask] = frozenset(
                each for each in options if not any(other < each for other in options)
            )
        return self._needs[ask]

    def _option(self, way: Derivation) -> frozenset[int]:
        return frozenset(self.number[key] for key in way.to_buy)

    def ways(self, ask: Ask) -> tuple[Derivation, ...]:
        """The ways to meet a line that asks for any of these that take purchases."""
        if ask not in self._ways:
            found = any_of(tuple(self._ways_of(want)) for want in ask)
            self._ways[ask] = tuple(each for each in found if self.number.keys() >= each.to_buy)
        return self._ways[ask]

    def _ways_of(self, want: Want) -> Iterator[Derivation]:
        """The ways to meet a want that take purchases.

        One that asks for a strength also takes what is sold that strong here: even where it is
        there already, but weaker.
        """
        search = self.sourcing.derivations
        if want.strong is None:
            yield from search.buying_some(want, self.most)
            return
        sold = replace(want, strong=want.strong | self.number.keys())
        yield from search.buying_some(sold, self.most)
        for way in search.of(sold):
            if want.strong.isdisjoint(way.draws):
                yield replace(way, to_buy=way.leaves)

    # What is really so

    def refuted(self, chosen: Chosen, claimed: Sequence[int]) -> Mapping[int, Need]:
        """Of the drinks that a set seems to turn those it does not, with what they need yet."""
        found = ((each, self.look(self._counted[each].place)) for each in claimed)
        return {each: look.lacking(chosen) for each, look in found if not look.makes(chosen)}

    def look(self, place: int) -> Look:
        """The drink at a place of the book, looked at for real."""
        if place not in self._looks:
            self._looks[place] = Look.of(self._decided.specs[place], self)
        return self._looks[place]

    @property
    def left_out(self) -> tuple[str, ...]:
        """The kinds without a price that would help a drink by themselves, where prices matter."""
        if self.limits.budget is None:
            return ()
        unknown = {each.ingredient for each in self._all if each.price is None}
        short = self._decided.drawn.lines.rows.ask[~self._decided.drawn.has_way]
        asks = (self._decided.drawn.lines.asks[each] for each in np.unique(short).tolist())
        wanted = {want.ingredient for ask in asks for want in ask}
        tree = self.sourcing.tree
        return tuple(sorted(wanted & unknown, key=lambda key: tree.name(key).casefold()))

    def turns(self, failing: Failing, chosen: Chosen) -> bool:
        """Whether a set really turns a drink."""
        met = all(any(option <= chosen for option in need) for need in failing.needs)
        return met and self.look(failing.place).makes(chosen)

    def lacking(self, failing: Failing, chosen: Chosen) -> Need:
        """A need of a drink that a set, which does not turn it, does not meet."""
        unmet = (need for need in failing.needs if not any(option <= chosen for option in need))
        fewest = min(unmet, key=len, default=None)
        return self.look(failing.place).lacking(chosen) if fewest is None else fewest

    def turned_by_one(self, failing: Failing) -> Iterator[int]:
        """The purchases that turn a drink alone."""
        for option in self.lacking(failing, frozenset()):
            if len(option) == 1 and self.turns(failing, option):
                yield from option


@dataclass(frozen=True, slots=True)
class Look:
    """One drink looked at for real, with whatever is bought in the bar.

    `asks` are what its lines ask for; `bearing` the purchases that bear on any of them.
    """

    laid_out: Assessment
    asks: tuple[Ask, ...]
    bearing: Chosen
    book: PurchaseBook
    _known: dict[tuple[Chosen, bool], bool] = field(default_factory=dict)

    @classmethod
    def of(cls, spec: Spec, book: PurchaseBook) -> Look:
        laid_out = assess(spec, book.sourcing)
        ways = [book.ways(ask) for ask in laid_out.wants]
        owned = (each.derivation for some in laid_out.choices for each in some)
        drawn = {
            key for way in (*owned, *(each for some in ways for each in some)) for key in way.draws
        }
        bearing = frozenset(book.number[key] for key in drawn if key in book.number)
        return cls(laid_out, laid_out.wants, bearing, book)

    def makes(self, chosen: Chosen, *, exact: bool = False) -> bool:
        """Whether the drink can be made with these bought."""
        bears = chosen & self.bearing
        if (bears, exact) not in self._known:
            self._known[bears, exact] = self._with(bears).enough(exact=exact)
        return self._known[bears, exact]

    def lacking(self, chosen: Chosen) -> Need:
        """What any set holds one of that makes the drink, where this one does not.

        So much more is taken as still does not make it; the rest is what is lacking.
        """
        more = self._as_much_as_fails(chosen & self.bearing, sorted(self.bearing - chosen))
        return frozenset(frozenset({each}) for each in self.bearing - more)

    def _as_much_as_fails(self, chosen: Chosen, more: Sequence[int]) -> Chosen:
        if not more or not self.makes(chosen | {*more}):
            return chosen | {*more}
        if len(more) == 1:
            return chosen
        half = len(more) // 2
        return self._as_much_as_fails(self._as_much_as_fails(chosen, more[:half]), more[half:])

    def _with(self, chosen: Chosen) -> Assessment:
        """The drink laid out once more with these in the bar."""
        before, sourcing = self.laid_out, self.book.sourcing
        bought = [self.book.purchases[each] for each in sorted(chosen)]
        keys = frozenset(each.ingredient for each in bought)
        limits = thresholds(before.spec)
        some = tuple(
            before.widened(each, self._more(each, keys, limits)) for each in before.numbers
        )
        supply = sourcing.supply.pools_with((each.stock for each in bought), limits)
        return replace(before, choices=some, supply=supply)

    def _more(
        self, number: int, keys: frozenset[str], limits: tuple[float, ...]
    ) -> tuple[DerivationWays, ...]:
        ways = (way for way in self.book.ways(self.asks[number]) if way.to_buy <= keys)
        sourcing = self.book.sourcing
        return choices(
            self.laid_out.lines[number],
            derivations=ways,
            limits=limits,
            supply=sourcing.supply,
            tree=sourcing.tree,
        )
