"""What the lines of a book ask for, as numbers in arrays.

A line's ask is what decides its wants (`Terms`): lines that ask the same share
one number. For most lines that is their ingredient and what they do in the
drink, which arrays say of all lines together; a line that says more (a choice,
a least strength, a garnish that is the drink, a kind poured only when asked
for) is read by itself. A spec that is the same object is not read again.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from functools import cached_property
from itertools import chain, compress
from typing import TypeAlias, get_args

import numpy as np
from numpy.typing import NDArray

from barkeep.domain.ingredients.derivations import Want, scopes_of
from barkeep.domain.ingredients.relations import Role, Scope, Technique
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.pouring.sourcing import PIECES_POURED, TOP_UP_ML, Sourcing, Terms
from barkeep.domain.specs.spec import ACCENT_ML, ACCENT_UNITS, Line, Spec

Numbers: TypeAlias = NDArray[np.int64]
Amounts: TypeAlias = NDArray[np.float64]
Flags: TypeAlias = NDArray[np.bool_]
Ask: TypeAlias = tuple[Want, ...]
"""What a line asks for: any one of these will do."""

_ROLES: tuple[Role, ...] = get_args(Role)
_BASE, _MODIFIER, _ACCENT = map(_ROLES.index, ("base", "modifier", "accent"))
_TECHNIQUES: tuple[Technique, ...] = get_args(Technique)


@dataclass(frozen=True, eq=False)
class Rows:
    """The required lines of some specs, one row each, a spec's rows together and in order.

    Of each line `ask` and `ingredient` are numbers, `amount` is what a serve takes. Of each spec
    `counts` says how many lines it has, `is_strong` whether one asks for a least strength,
    `unsettled` how many more nobody understands.
    """

    ask: Numbers
    amount: Amounts
    ingredient: Numbers
    counts: Numbers
    is_strong: Flags
    unsettled: Numbers

    @classmethod
    def none(cls) -> Rows:
        """Those of no spec."""
        none = np.zeros(0, np.int64)
        return cls(
            ask=none,
            amount=none.astype(np.float64),
            ingredient=none,
            counts=none,
            is_strong=none.astype(np.bool_),
            unsettled=none,
        )

    @cached_property
    def spec(self) -> Numbers:
        """Of each line the place of its spec."""
        return np.repeat(np.arange(len(self.counts)), self.counts)

    def and_of(self, others: Rows) -> Rows:
        """These and those of other specs behind them."""
        names = (*_OF_LINES, *_OF_SPECS)
        both = {name: (getattr(self, name), getattr(others, name)) for name in names}
        return Rows(**{name: np.concatenate(some) for name, some in both.items()})

    def of_specs(self, places: Numbers) -> Rows:
        """The rows of the specs at these places, in that order."""
        _row, line = spread(places, self.counts)
        of_lines = {name: getattr(self, name)[line] for name in _OF_LINES}
        return Rows(**of_lines, **{name: getattr(self, name)[places] for name in _OF_SPECS})


_OF_LINES = ("ask", "amount", "ingredient")
_OF_SPECS = ("counts", "is_strong", "unsettled")


@dataclass(frozen=True, eq=False)
class BookLines:
    """The required lines of all specs as `rows`, with what the numbers of asks mean."""

    specs: tuple[Spec, ...]
    asks: tuple[Ask, ...]
    rows: Rows

    def of_specs(self, places: Numbers) -> BookLines:
        """The lines of the specs at these places alone, in that order."""
        specs = tuple(self.specs[place] for place in places.tolist())
        return BookLines(specs, self.asks, self.rows.of_specs(places))


@dataclass
class Numbering:
    """The asks by number, and the lines of the specs that were read last.

    It grows as specs come and is kept while neither the knowledge nor the
    owner's usual pours change.
    """

    asks: dict[Terms, int] = field(default_factory=dict)
    _specs: tuple[Spec, ...] = ()
    _rows: Rows = field(default_factory=Rows.none)
    _kinds: _Kinds | None = None

    def book_lines(self, specs: tuple[Spec, ...], sourcing: Sourcing) -> BookLines:
        """All specs as arrays; those that were read the last time are not read again."""
        places = {id(spec): place for place, spec in enumerate(self._specs)}
        known = np.array([places.get(id(spec), -1) for spec in specs], np.int64)
        is_new = known < 0
        new = list(compress(specs, is_new.tolist()))
        if new:
            known[is_new] = len(self._specs) + np.arange(len(new))
        rows = self._rows.and_of(self._read(new, sourcing)) if new else self._rows
        self._specs, self._rows = specs, rows.of_specs(known)
        return BookLines(specs, tuple(map(sourcing.wants_of, self.asks)), self._rows)

    def _read(self, specs: Sequence[Spec], sourcing: Sourcing) -> Rows:
        if self._kinds is None:
            self._kinds = _Kinds.of(sourcing)
        read = _Read.of(specs, self._kinds, sourcing.tree)
        return Rows(
            ask=self._asked(read, self._kinds, sourcing),
            amount=read.amount,
            ingredient=read.kind,
            counts=np.bincount(read.spec, minlength=len(specs)),
            is_strong=np.array([_asks_strength(spec) for spec in specs], np.bool_),
            unsettled=np.array([len(spec.unsettled) for spec in specs], np.int64),
        )

    def _asked(self, read: _Read, kinds: _Kinds, sourcing: Sourcing) -> Numbers:
        """Of each line the number of what it asks for."""
        plain = kinds.plain[read.kind] & ~read.says_more
        scope = kinds.scope[read.technique, read.role]
        code = read.kind * len(kinds.scopes) + scope
        unseen = np.unique(code[plain & (kinds.ask[code] < 0)])
        for each in unseen.tolist():
            kind, scopes = divmod(each, len(kinds.scopes))
            terms = sourcing.plain_terms(kinds.keys[kind], kinds.scopes[scopes])
            kinds.ask[each] = self._number(terms)
        ask: Numbers = kinds.ask[code]
        for place in np.flatnonzero(~plain).tolist():
            line, spec = read.lines[place], read.specs[int(read.spec[place])]
            ask[place] = self._number(sourcing.terms(line, spec, _ROLES[read.role[place]]))
        return ask

    def _number(self, terms: Terms) -> int:
        return self.asks.setdefault(terms, len(self.asks))


@dataclass(frozen=True, eq=False)
class _Kinds:
    """What is to be known of each kind, by its number, and of what a line does in its drink.

    `plain` are the kinds of which neither a line's words nor the owner's usual pour decide what
    is asked for. `scope` is the place in `scopes` by technique and role; `ask` the number of what
    a plain line asks for, by kind and scopes in one number, -1 where none has asked yet.
    """

    keys: tuple[str, ...]
    number: dict[str, int]
    in_ml: Flags
    alcoholic: Flags
    plain: Flags
    scopes: tuple[frozenset[Scope], ...]
    scope: Numbers
    ask: Numbers

    @classmethod
    def of(cls, sourcing: Sourcing) -> _Kinds:
        tree, keys = sourcing.tree, tuple(sourcing.tree)
        held = [[scopes_of(technique, role) for role in _ROLES] for technique in _TECHNIQUES]
        scopes = tuple(dict.fromkeys(chain.from_iterable(held)))
        return cls(
            keys,
            number={key: number for number, key in enumerate(keys)},
            in_ml=_flags(tree[key].unit == "ml" for key in keys),
            alcoholic=_flags(key in tree.alcoholic for key in keys),
            plain=_flags(not sourcing.usual.may_ask(key) for key in keys),
            scopes=scopes,
            scope=np.array([[scopes.index(each) for each in some] for some in held], np.int64),
            ask=np.full(len(keys) * len(scopes), -1, np.int64),
        )


@dataclass(frozen=True, eq=False)
class _Read:
    """The required lines of specs, with what each says; `spec` is the place of its spec.

    `says_more` are the lines whose ask is not decided by ingredient, technique and role.
    """

    specs: Sequence[Spec]
    lines: Sequence[Line]
    spec: Numbers
    kind: Numbers
    technique: Numbers
    role: Numbers
    amount: Amounts
    says_more: Flags

    @classmethod
    def of(cls, specs: Sequence[Spec], kinds: _Kinds, tree: FamilyTree) -> _Read:
        lines, spec = _required(specs)
        numbers, techniques = kinds.number, {each: place for place, each in enumerate(_TECHNIQUES)}
        kind = np.array([numbers.get(line.ingredient, -1) for line in lines], np.int64)
        for place in np.flatnonzero(kind < 0).tolist():
            _ = tree[lines[place].ingredient]  # says what is not known
        technique = np.array([techniques[each.technique] for each in specs], np.int64)
        quantity = np.array([line.quantity for line in lines], np.float64)
        in_ml = kinds.in_ml[kind]
        role = _roles(lines, spec, quantity, in_ml=in_ml, alcoholic=kinds.alcoholic[kind])
        return cls(
            specs,
            lines,
            spec=spec,
            kind=kind,
            technique=technique[spec],
            role=role,
            amount=np.where(
                np.isnan(quantity), np.where(in_ml, TOP_UP_ML, PIECES_POURED), quantity
            ),
            says_more=_flags(
                line.alternatives or line.garnish or line.min_abv_percent is not None
                for line in lines
            ),
        )


def _required(specs: Sequence[Spec]) -> tuple[list[Line], Numbers]:
    """The lines that each spec requires, and of each the place of its spec."""
    lines = [line for spec in specs for line in spec.lines]
    of = np.repeat(np.arange(len(specs)), [len(spec.lines) for spec in specs])
    garnish = _flags(line.garnish for line in lines)
    required = ~garnish & ~_flags(line.optional for line in lines)
    for place in np.flatnonzero(garnish).tolist():
        required[place] = specs[of[place]].requires(lines[place])
    return list(compress(lines, required.tolist())), of[required]


def _roles(
    lines: Sequence[Line], spec: Numbers, quantity: Amounts, *, in_ml: Flags, alcoholic: Flags
) -> Numbers:
    """What each line does in its drink, as `role_beside` says of one."""
    poured = np.where(in_ml, np.nan_to_num(quantity), 0.0)
    largest = _largest(np.where(alcoholic, poured, 0.0), spec)
    of_all = _largest(poured, spec)
    least = np.where(largest > 0.0, largest, of_all)
    role = np.where(quantity >= least[spec], _BASE, _MODIFIER)
    role[quantity <= ACCENT_ML] = _ACCENT
    role[~in_ml] = _MODIFIER
    role[np.isnan(quantity) | _flags(line.unit in ACCENT_UNITS for line in lines)] = _ACCENT
    return role


def _largest(amounts: Amounts, spec: Numbers) -> Amounts:
    """The largest amount of each spec, 0 where it has none."""
    found = np.zeros(int(spec.max(initial=-1)) + 1)
    np.maximum.at(found, spec, amounts)
    return found


def _flags(some: Iterable[object]) -> Flags:
    return np.array([bool(each) for each in some], np.bool_)


def _asks_strength(spec: Spec) -> bool:
    return any(line.min_abv_percent is not None for line in spec.lines)


def spread(numbers: Numbers, counts: Numbers) -> tuple[Numbers, Numbers]:
    """Rows of a table that stands for ragged lists, for each of some of the lists in turn.

    `numbers` name lists, `counts` are the lengths of all lists that stand one
    behind the other. Gives for each row the place in `numbers` and the place
    in the table.

    >>> spread(np.array([1, 0, 1]), np.array([1, 2]))
    (array([0, 0, 1, 2, 2]), array([1, 2, 0, 1, 2]))
    """
    lengths = counts[numbers]
    starts = (np.cumsum(counts) - counts)[numbers]
    row = np.repeat(np.arange(len(numbers)), lengths)
    within = np.arange(len(row)) - np.repeat(np.cumsum(lengths) - lengths, lengths)
    return row, starts[row] + within
