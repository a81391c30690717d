"""What may be poured instead of an ingredient, how close it is, and what it changes."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace
from functools import cached_property

from barkeep.domain.amounts import show_amount
from barkeep.domain.answers.assessment import sourcing_for
from barkeep.domain.answers.contents import Pour, pours_for
from barkeep.domain.answers.corrections import correction_of, in_words
from barkeep.domain.answers.sourcing import Sourcing, need
from barkeep.domain.answers.words import path_in_words, plain_amount
from barkeep.domain.derivations import Derivation, Derivations, Make, Want
from barkeep.domain.ingredients import FamilyTree, Ingredient
from barkeep.domain.inventory import Bottle
from barkeep.domain.part_ratios import MEASURES
from barkeep.domain.printing import show_as
from barkeep.domain.snapshot import Settings, Snapshot
from barkeep.domain.specs import Line, Spec
from barkeep.errors import spoken_list

FLOOR = 0.3
"""The least closeness worth naming at all; a choice of barkeep."""


@dataclass(frozen=True, slots=True)
class Offer:
    """One thing that may be poured instead.

    `path` are the steps in words; `corrections` what it changes in the drink;
    `missing` the keys it takes that the bar has not.
    """

    ingredient: str
    bottle: Bottle | None
    closeness: float
    ratio: float
    path: tuple[str, ...]
    why: str
    corrections: tuple[str, ...]
    owned: bool
    missing: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class FalseFriend:
    """What is mistaken for the wanted thing and must not be poured for it."""

    ingredient: str
    why: str


@dataclass(frozen=True, slots=True)
class StandIns:
    """The answer: `none_because` says why nothing stands in, where nothing does."""

    wanted: str
    none_because: str | None
    stand_ins: tuple[Offer, ...]
    confusables: tuple[FalseFriend, ...]


def stand_in(snapshot: Snapshot, ingredient: str, spec: Spec | None = None) -> StandIns:
    """What may replace an ingredient, alone or within a spec: owned first, then closest.

    Within a spec the line's role and the drink's method decide which scopes
    hold; alone, every scope is taken as met and said in the reason.
    """
    sourcing = sourcing_for(snapshot, "loose")
    tree = sourcing.tree
    line = _line_for(ingredient, spec)
    want = _want(ingredient, line, spec, sourcing)
    balance = None if line is None or spec is None else _Balance(spec, line, snapshot)
    offers = [
        _offer(each, line, balance, snapshot, sourcing)
        for each in _worth_naming(ingredient, want, sourcing.derivations)
    ]
    offers.sort(key=lambda each: (not each.owned, -each.closeness, tree.name(each.ingredient)))
    none = snapshot.knowledge.none_because.get(ingredient)
    if none is None and not offers:
        none = "no stand-in for it is known"
    return StandIns(ingredient, none, tuple(offers), _false_friends(ingredient, tree))


def _line_for(ingredient: str, spec: Spec | None) -> Line | None:
    lines = spec.lines if spec else ()
    return next((line for line in lines if line.ingredient == ingredient), None)


def _want(ingredient: str, line: Line | None, spec: Spec | None, sourcing: Sourcing) -> Want:
    if line is None or spec is None:
        return Want(ingredient, None, FLOOR)
    asked = sourcing.want(line, spec)
    return Want(ingredient, asked.scopes, FLOOR, asked.strong)


def _worth_naming(ingredient: str, want: Want, derivations: Derivations) -> tuple[Derivation, ...]:
    """Owned ways, and ways beyond the shelf; the closest for each thing offered and bought.

    The wanted thing itself, and a kind of it that is not owned, are no
    stand-ins and are left out.
    """
    owned = (each for each in derivations.of(want) if each.offered != ingredient or _made(each))
    beyond = (each for each in derivations.buying_one(want) if _made(each) or not each.exact)
    closest: dict[tuple[str, str | None], Derivation] = {}
    for each in (*owned, *beyond):
        closest.setdefault((each.offered, each.buying), each)
    return tuple(closest.values())


def _made(derivation: Derivation) -> bool:
    return any(isinstance(step, Make) for step in derivation.steps)


def _offer(
    derivation: Derivation,
    line: Line | None,
    balance: _Balance | None,
    snapshot: Snapshot,
    sourcing: Sourcing,
) -> Offer:
    tree = sourcing.tree
    path = path_in_words(derivation, tree)
    poured = None if _made(derivation) else sourcing.supply.bottle(derivation.offered)
    missing = (derivation.buying,) if derivation.buying else ()
    return Offer(
        derivation.offered,
        poured,
        derivation.closeness,
        derivation.ratio,
        path,
        "; ".join(path) + ".",
        tuple(
            _changes(
                derivation,
                line,
                None if balance is None else balance.kept(derivation, poured),
                as_labelled(tree[derivation.offered], poured),
                snapshot,
            )
        ),
        derivation.buying is None,
        missing,
    )


@dataclass(frozen=True)
class _Balance:
    """A spec and the line that something else is poured for."""

    spec: Spec
    line: Line
    snapshot: Snapshot

    def kept(self, derivation: Derivation, bottle: Bottle | None) -> str | None:
        """What to pour so that the drink stays what it was, None where that needs no saying."""
        tree = self.snapshot.knowledge.tree
        if tree.is_a(derivation.offered, derivation.wanted):
            return None
        number = self.spec.lines.index(self.line)
        pours = list(self._own)
        pours[number] = Pour(derivation.offered, bottle, derivation.ratio)
        found = correction_of(self.spec, pours, frozenset({number}), self.snapshot)
        return None if found is None else in_words(found, tree)

    @cached_property
    def _own(self) -> tuple[Pour, ...]:
        return pours_for(self.spec, self.snapshot)


def _false_friends(ingredient: str, tree: FamilyTree) -> tuple[FalseFriend, ...]:
    kinds = (ingredient, *sorted(tree.ancestors(ingredient)))
    friends = {
        friend: why
        for kind in reversed(kinds)
        for friend, why in tree.confused_with(kind).items()
        if tree.mistaken(ingredient, friend)
    }
    return tuple(FalseFriend(key, friends[key]) for key in sorted(friends))


def as_labelled(ingredient: Ingredient, bottle: Bottle | None) -> Ingredient:
    """The ingredient with the figures of a bottle's own label, where it gives them."""
    if bottle is None:
        return ingredient
    abv, sugar = bottle.product.abv_percent, bottle.product.sugar_g_per_l
    return replace(
        ingredient,
        abv_percent=ingredient.abv_percent if abv is None else abv,
        sugar_g_per_l=ingredient.sugar_g_per_l if sugar is None else sugar,
    )


def _changes(
    derivation: Derivation,
    line: Line | None,
    balance: str | None,
    offered: Ingredient,
    snapshot: Snapshot,
) -> Iterator[str]:
    """What pouring it changes: the amounts, and strength, sugar, acid and allergens.

    Where the drink needs amounts other than the plain ratio, `balance` says them.
    """
    wanted = snapshot.knowledge.tree[derivation.wanted]
    if balance is not None:
        yield balance
    elif derivation.ratio != 1.0:
        yield _amount_change(derivation, line, snapshot)
    yield from _compared(wanted, offered, derivation.ratio)
    brought = sorted(set(offered.allergens) - set(wanted.allergens))
    if brought:
        yield f"brings in {spoken_list(brought, 'and')} (allergen)"


def _amount_change(derivation: Derivation, line: Line | None, snapshot: Snapshot) -> str:
    if line is None or line.quantity is None:
        return f"take {derivation.ratio:g} times the amount"
    tree, settings = snapshot.knowledge.tree, snapshot.settings
    wanted, offered = tree[line.ingredient], tree[derivation.offered]
    if line.amount and line.unit and wanted.unit == offered.unit:
        before, after = (_shown(line, each, settings) for each in (1.0, derivation.ratio))
    else:
        before = plain_amount(need(line, tree), wanted.unit)
        after = plain_amount(need(line, tree) * derivation.ratio, offered.unit)
    return f"pour {after} of {tree.in_sentence(offered.key)} instead of {before}"


def _shown(line: Line, ratio: float, settings: Settings) -> str:
    """So many times what a line takes, as the bar likes its amounts shown."""
    style, units = settings.shown_in, settings.units
    if line.unit in MEASURES and style in ("oz", "ml", "cl"):
        return show_as((line.quantity or 0.0) * ratio, "ml", style, units)
    return show_amount((line.amount or 0.0) * ratio, line.unit or "each", units)


def _compared(wanted: Ingredient, offered: Ingredient, ratio: float) -> Iterable[str]:
    """Differences per unit of the wanted thing; of a grouping there is no usual figure."""
    if wanted.unit != "ml" or offered.unit != "ml" or wanted.family or offered.family:
        return
    yield from _difference(
        wanted.abv_percent, offered.abv_percent, ratio, 2.0, ("stronger", "weaker"), " % vol"
    )
    yield from _difference(
        wanted.sugar_g_per_l, offered.sugar_g_per_l, ratio, 20.0, ("sweeter", "drier"), " g/l sugar"
    )
    yield from _difference(
        wanted.acid_g_per_l, offered.acid_g_per_l, ratio, 3.0, ("sourer", "less sour"), " g/l acid"
    )


def _difference(
    wanted: float | None,
    offered: float | None,
    ratio: float,
    least: float,
    words: tuple[str, str],
    unit: str,
) -> Iterable[str]:
    if wanted is None and offered is None:
        return
    before, after = wanted or 0.0, (offered or 0.0) * ratio
    if abs(after - before) >= least:
        word = words[0] if after > before else words[1]
        yield f"{word}: {after:.3g} against {before:.3g}{unit}"
