"""Whether a whole menu can be poured: every spec and serve of a shoot against the levels.

All lines of all specs draw on the same bottles. How many serves of each line
are poured in which way is a linear programme: what cannot be met is made as
small as can be, and among what is left the closest ways are taken. Which
serves to drop is the same with whole serves, as a mixed-integer programme.
"""

from __future__ import annotations

from collections.abc import Collection, Iterable, Mapping, Sequence
from dataclasses import dataclass
from functools import cached_property

from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.ingredients.derivations import Derivation
from barkeep.domain.pouring.serves import Way
from barkeep.domain.pouring.sourcing import (
    DerivationWays,
    Sourcing,
    Within,
    choices,
    need,
    sourcing_for,
    thresholds,
)
from barkeep.domain.pouring.supply import Draw, Pool, Stock
from barkeep.domain.specs.spec import Line, Spec

UNMET_COST = 1000.0
"""Of a serve of a line that is not met, against at most 1 for the loosest stand-in."""
MAKING_COST, TURN_COST = 1e-3, 1e-6
"""Of a serve: far less than any difference in closeness, so they only break ties."""
SLACK = 1e-6


@dataclass(frozen=True, slots=True)
class Order:
    """A spec and how many serves of it."""

    spec: Spec
    serves: int


@dataclass(frozen=True, slots=True)
class Poured:
    """How a line is met: so many of its serves by one derivation."""

    derivation: Derivation
    serves: float


@dataclass(frozen=True, slots=True)
class MenuLine:
    """A line of an order. `unmet` serves of it have nothing; `short` is what is missing for them.

    `short` is in the wanted ingredient's unit.
    """

    order: Order
    line: Line
    poured: tuple[Poured, ...]
    unmet: float
    short: float


@dataclass(frozen=True, slots=True)
class Menu:
    """The answer. `drop` says how many serves of each order to leave out, in running order.

    `saved_by` are the lines as looser stand-ins would meet them, where that
    would save the whole menu; empty otherwise.
    """

    orders: tuple[Order, ...]
    lines: tuple[MenuLine, ...]
    draws: tuple[Draw, ...]
    drop: tuple[int, ...]
    saved_by: tuple[MenuLine, ...]

    @property
    def possible(self) -> bool:
        """Whether every serve of every spec can be poured."""
        return not any(line.unmet for line in self.lines)

    @property
    def lacking(self) -> tuple[MenuLine, ...]:
        """The lines that run out."""
        return tuple(line for line in self.lines if line.unmet)


def wanted_by(orders: Iterable[Order]) -> frozenset[str]:
    """The keys of all that the orders' required lines would take."""
    lines = (line for order in orders for line in order.spec.required_lines)
    return frozenset(key for line in lines for key in line.wanted)


def menu(
    orders: Sequence[Order],
    snapshot: Snapshot,
    within: Within = "close",
    first: Collection[int] = (),
) -> Menu:
    """Ask whether the bar can pour all orders, and what to do where it cannot.

    Bottles of the ids in `first` are drawn from before others of their kind.
    """
    wanted = tuple(order for order in orders if order.serves > 0)
    plan = _plan(wanted, snapshot, within)
    lines, drawn = plan.poured()
    answer = Menu(
        orders=tuple(orders),
        lines=lines,
        draws=plan.draws(drawn, first),
        drop=(0,) * len(orders),
        saved_by=(),
    )
    if answer.possible:
        return answer
    kept = iter(plan.most_whole_serves())
    drop = tuple(order.serves - next(kept) if order.serves > 0 else 0 for order in orders)
    return Menu(
        orders=answer.orders,
        lines=lines,
        draws=answer.draws,
        drop=drop,
        saved_by=_saved_by(wanted, snapshot, within),
    )


def _saved_by(orders: Sequence[Order], snapshot: Snapshot, within: Within) -> tuple[MenuLine, ...]:
    """The lines that only looser stand-ins meet, where those save everything."""
    if within == "loose":
        return ()
    lines, _drawn = _plan(orders, snapshot, "loose").poured()
    if any(line.unmet for line in lines):
        return ()
    strict = sourcing_for(snapshot, within).floor
    return tuple(
        line for line in lines if any(each.derivation.closeness < strict for each in line.poured)
    )


@dataclass(frozen=True)
class _Plan:
    """The programme's pieces: every line of every order with its choices, and the pools."""

    orders: tuple[Order, ...]
    lines: tuple[tuple[int, Line, tuple[DerivationWays, ...]], ...]
    pools: Mapping[Pool, float]
    limits: tuple[float, ...]
    sourcing: Sourcing

    @cached_property
    def columns(self) -> tuple[tuple[int, int, int], ...]:
        """Each way of each choice of each line: their numbers."""
        return tuple(
            (number, choice, way)
            for number, (_order, _line, some) in enumerate(self.lines)
            for choice, each in enumerate(some)
            for way in range(len(each.ways))
        )

    @cached_property
    def names(self) -> tuple[Pool, ...]:
        """Every pool that some way draws on."""
        drawn = (self._way(column).draws for column in self.columns)
        return tuple(sorted({pool for draws in drawn for pool in draws}))

    def poured(self) -> tuple[tuple[MenuLine, ...], Mapping[Pool, float]]:
        """Every line as it is met, and what is drawn from each pool."""
        if not self.lines:
            return (), {}
        from scipy.optimize import linprog  # heavy, and not every start needs it

        ways, lines = len(self.columns), len(self.lines)
        cost = [self._cost(each) for each in self.columns]
        met, drawn = self._matrices()
        unmet = [[1.0 if row == column else 0.0 for column in range(lines)] for row in range(lines)]
        serves = [self.orders[order].serves for order, _line, _some in self.lines]
        solved = linprog(
            [*cost, *[UNMET_COST] * lines],
            [[*row, *[0.0] * lines] for row in drawn] or None,
            [self.pools.get(pool, 0.0) for pool in self.names] or None,
            [[*row, *unmet[number]] for number, row in enumerate(met)] or None,
            serves or None,
            method="highs",
        )
        if not solved.success or solved.x is None:
            raise ArithmeticError(f"the menu could not be solved: {solved.message}")
        amounts = [float(each) for each in solved.x]
        found = tuple(
            self._menu_line(number, amounts[:ways], amounts[ways + number])
            for number in range(lines)
        )
        return found, {
            pool: sum(need * amounts[column] for column, need in enumerate(row) if need)
            for pool, row in zip(self.names, drawn, strict=True)
        }

    def _cost(self, column: tuple[int, int, int]) -> float:
        """Of a serve poured in this way: what it lacks in closeness, and what breaks ties.

        What stands there goes before what would have to be made; a line's choices
        are in the order they are poured.
        """
        derivation = self._choice(column).derivation
        made = len(derivation.made)
        return 1.0 - derivation.closeness + MAKING_COST * made + TURN_COST * column[1]

    def most_whole_serves(self) -> tuple[int, ...]:
        """For each order the serves to keep so that most are kept in all, earlier ones first."""
        import numpy as np
        from scipy.optimize import Bounds, LinearConstraint, milp

        ways, count = len(self.columns), len(self.orders)
        met, drawn = self._matrices()
        rows = np.zeros((len(self.lines), ways + count))
        for number, (order, _line, _some) in enumerate(self.lines):
            rows[number, :ways] = met[number]
            rows[number, ways + order] = -1.0
        limits = [LinearConstraint(rows, 0.0, 0.0)] if len(rows) else []
        if self.names:
            there = [self.pools.get(pool, 0.0) for pool in self.names]
            pools = np.hstack([np.array(drawn), np.zeros((len(drawn), count))])
            limits.append(LinearConstraint(pools, -np.inf, there))
        # Earlier orders are worth a little more: they break ties, and nothing else.
        worth = [1.0 + 1e-4 * (count - number) / count for number in range(count)]
        most = [order.serves for order in self.orders]
        solved = milp(
            np.array([*[0.0] * ways, *(-each for each in worth)]),
            integrality=np.array([*[0] * ways, *[1] * count]),
            bounds=Bounds(0.0, np.array([*[np.inf] * ways, *most])),
            constraints=limits,
        )
        if solved.x is None:
            raise ArithmeticError(f"the menu could not be solved: {solved.message}")
        return tuple(round(float(each)) for each in solved.x[ways:])

    def draws(self, drawn: Mapping[Pool, float], first: Collection[int]) -> tuple[Draw, ...]:
        """Pools shared out to bottles in the order they are used up: open and ageing ones first.

        Bottles that were chosen go before that.
        """

        def later(stock: Stock) -> bool:
            return stock.bottle is None or stock.bottle.id not in first

        supply = self.sourcing.supply
        found: list[Draw] = []
        for pool, amount in drawn.items():
            left = amount
            for stock in sorted(supply.stocks_in(pool, self.limits), key=later):
                taken = min(left, stock.amount)
                if taken > SLACK and stock.bottle is not None:
                    found.append(Draw(stock.bottle, taken))
                left -= taken
        return tuple(sorted(found, key=lambda draw: (draw.bottle.position, draw.bottle.id)))

    def _matrices(self) -> tuple[list[list[float]], list[list[float]]]:
        """Lines by ways: which way meets which line; pools by ways: what a serve draws."""
        met = [
            [1.0 if column[0] == number else 0.0 for column in self.columns]
            for number in range(len(self.lines))
        ]
        drawn = [
            [self._way(column).draws.get(pool, 0.0) for column in self.columns]
            for pool in self.names
        ]
        return met, drawn

    def _menu_line(self, number: int, amounts: Sequence[float], unmet: float) -> MenuLine:
        order, line, _some = self.lines[number]
        by_choice: dict[int, float] = {}
        for column, amount in zip(self.columns, amounts, strict=True):
            if column[0] == number and amount > SLACK:
                by_choice[column[1]] = by_choice.get(column[1], 0.0) + amount
        poured = tuple(
            Poured(self.lines[number][2][choice].derivation, serves)
            for choice, serves in sorted(by_choice.items())
        )
        left = unmet if unmet > SLACK else 0.0
        short = left * need(line, self.sourcing.tree)
        return MenuLine(order=self.orders[order], line=line, poured=poured, unmet=left, short=short)

    def _choice(self, column: tuple[int, int, int]) -> DerivationWays:
        return self.lines[column[0]][2][column[1]]

    def _way(self, column: tuple[int, int, int]) -> Way:
        return self._choice(column).ways[column[2]]


def _plan(orders: Sequence[Order], snapshot: Snapshot, within: Within) -> _Plan:
    sourcing = sourcing_for(snapshot, within)
    limits = tuple(sorted({each for order in orders for each in thresholds(order.spec)}))
    lines = tuple(
        (number, line, _choices(line, order.spec, limits, sourcing))
        for number, order in enumerate(orders)
        for line in order.spec.required_lines
    )
    return _Plan(
        orders=tuple(orders),
        lines=lines,
        pools=sourcing.supply.pools(limits),
        limits=limits,
        sourcing=sourcing,
    )


def _choices(
    line: Line, spec: Spec, limits: tuple[float, ...], sourcing: Sourcing
) -> tuple[DerivationWays, ...]:
    ways = sourcing.ways_to(line, spec)
    return choices(
        line, derivations=ways, limits=limits, supply=sourcing.supply, tree=sourcing.tree
    )
