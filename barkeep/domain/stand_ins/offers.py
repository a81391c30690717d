"""What may be poured instead of an ingredient, how close it is, and what it changes."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace
from functools import cached_property

from barkeep.domain.amounts.amount import show_number
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.bottle import Bottle
from barkeep.domain.drink.contents import LOOSE_UNITS, Pour, amount_poured, pours_for
from barkeep.domain.ingredients.derivations import Derivation, Derivations, Want
from barkeep.domain.ingredients.tree import FamilyTree, Ingredient
from barkeep.domain.pouring.sourcing import Sourcing, sourcing_for
from barkeep.domain.pouring.words import path_in_words
from barkeep.domain.specs.spec import Line, Spec
from barkeep.domain.stand_ins.corrections import (
    OFF_STRENGTH,
    Correction,
    correction_of,
    in_words,
    minds_taste,
    strength_share,
)
from barkeep.domain.stand_ins.measured import as_asked, loosely, measured, measured_style
from barkeep.errors import spoken_list
from barkeep.translation import tr, tr_noop

FLOOR = 0.3
"""The least closeness worth naming at all; a choice of barkeep."""


UNKNOWN = tr_noop("no stand-in for it is known")
"""Why nothing stands in, where nobody said why."""
MOST_NAMED = 4
"""How many of the things that would do are named before they are only counted."""


@dataclass(frozen=True, slots=True)
class Offer:
    """One thing that may be poured instead.

    `path` are the steps of its derivation in words; `corrections` what it
    changes in the drink. `or_buy` are keys that would do in place of `missing`,
    each with the closeness it leads to, the closest first.
    """

    derivation: Derivation
    bottle: Bottle | None
    path: tuple[str, ...]
    corrections: tuple[str, ...]
    or_buy: tuple[tuple[str, float], ...] = ()

    @property
    def ingredient(self) -> str:
        """What goes into the drink."""
        return self.derivation.offered

    @property
    def closeness(self) -> float:
        """From 0 to 1, which is the wanted thing itself."""
        return self.derivation.closeness

    @property
    def ratio(self) -> float:
        """How much of it replaces one unit of the wanted thing."""
        return self.derivation.ratio

    @property
    def why(self) -> str:
        """Its path as a sentence."""
        return "; ".join(self.path) + "."

    @property
    def owned(self) -> bool:
        """Whether nothing has to be bought for it."""
        return self.derivation.buying is None

    @property
    def missing(self) -> tuple[str, ...]:
        """The keys it takes that the bar has not."""
        return () if self.derivation.buying is None else (self.derivation.buying,)


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
    """What may replace an ingredient, alone or within a spec: owned, closest, safest first.

    Within a spec the line's role and the drink's method decide which scopes
    hold; alone, every scope is taken as met and said in the reason.
    """
    sourcing = sourcing_for(snapshot, "loose")
    tree = sourcing.tree
    line = _line_for(ingredient, spec)
    want = _want(ingredient, line, spec, sourcing)
    balance = None if line is None or spec is None else _Balance(spec, line, snapshot)
    ways = _worth_naming(ingredient, want, sourcing.derivations)
    offers = [_offer(each, balance, snapshot, sourcing) for each in ways]
    safer = tree.ordinary.rather.get(ingredient)
    offers.sort(key=lambda each: (not each.owned, -each.closeness, each.ingredient != safer))
    none = snapshot.knowledge.none_because.get(ingredient)
    if none is None and not offers:
        none = UNKNOWN
    return StandIns(ingredient, none, tuple(offers), _false_friends(ingredient, tree))


def _line_for(ingredient: str, spec: Spec | None) -> Line | None:
    lines = spec.lines if spec else ()
    return next((line for line in lines if ingredient in line.wanted), None)


def _want(ingredient: str, line: Line | None, spec: Spec | None, sourcing: Sourcing) -> Want:
    if line is None or spec is None:
        return Want(ingredient, None, FLOOR)
    asked = sourcing.wants(line, spec)[0]
    return replace(asked, ingredient=ingredient, floor=FLOOR)


def _worth_naming(
    ingredient: str, want: Want, derivations: Derivations
) -> tuple[tuple[Derivation, ...], ...]:
    """For each thing offered the owned way, and the ways that take one thing to be bought.

    Both closest first, and of the latter one for each thing bought. The wanted
    thing itself, and a kind of it that is not owned, are no stand-ins and are
    left out, and so is buying what gets no closer than what is there.
    """
    owned: dict[str, Derivation] = {}
    for each in _closest_of_the_same(derivations.of(want)):
        if each.offered != ingredient or each.made:
            owned.setdefault(each.offered, each)
    beyond: dict[str, dict[str | None, Derivation]] = {}
    for each in _closest_of_the_same(derivations.buying_one(want)):
        there = owned.get(each.offered)
        closer = there is None or each.closeness > there.closeness + 1e-9
        if closer and (each.made or not each.exact):
            beyond.setdefault(each.offered, {}).setdefault(each.buying, each)
    return (
        *((each,) for each in owned.values()),
        *(tuple(each.values()) for each in beyond.values()),
    )


def _closest_of_the_same(ways: Iterable[Derivation]) -> Iterator[Derivation]:
    """The first of the ways that take the same things: less of them makes no other stand-in."""
    seen: set[frozenset[str]] = set()
    for each in ways:
        if each.leaves not in seen:
            seen.add(each.leaves)
            yield each


def _offer(
    ways: tuple[Derivation, ...],
    balance: _Balance | None,
    snapshot: Snapshot,
    sourcing: Sourcing,
) -> Offer:
    derivation, *others = ways
    poured = None if derivation.made else sourcing.supply.bottle(derivation.offered)
    return Offer(
        derivation=derivation,
        bottle=poured,
        path=path_in_words(derivation, sourcing.tree),
        corrections=tuple(_changes(derivation, balance, poured, snapshot)),
        or_buy=tuple((each.buying, each.closeness) for each in others if each.buying),
    )


@dataclass(frozen=True)
class _Balance:
    """A spec and the line that something else is poured for."""

    spec: Spec
    line: Line
    snapshot: Snapshot

    def kept(self, derivation: Derivation, bottle: Bottle | None) -> Correction | None:
        """What to pour so that the drink stays what it was, None where that needs no saying."""
        tree = self.snapshot.knowledge.tree
        if derivation.exact and tree.is_a(derivation.offered, derivation.wanted):
            return None
        number = self.spec.lines.index(self.line)
        pours = list(self._own)
        pours[number] = _poured(derivation, bottle)
        replaced = frozenset({number})
        by_taste = replaced if minds_taste(derivation, tree) else frozenset[int]()
        return correction_of(
            self.spec, pours=pours, replaced=replaced, snapshot=self.snapshot, by_taste=by_taste
        )

    def by_ratio(self, derivation: Derivation) -> Iterator[str]:
        """What to pour by the plain ratio; nothing where that can be measured no otherwise."""
        tree, settings = self.snapshot.knowledge.tree, self.snapshot.settings
        line, offered = self.line, derivation.offered
        same_unit = tree[line.ingredient].unit == tree[offered].unit
        if same_unit and line.unit in LOOSE_UNITS and line.amount:
            amount = line.amount / self.spec.serves
            asked = before = loosely(amount, line.unit, settings.units)
            after = loosely(amount * derivation.ratio, line.unit, settings.units)
        else:
            style, amount = measured_style(self.spec, settings), amount_poured(line, tree)
            before = measured(
                amount, key=line.ingredient, style=style, settings=settings, tree=tree
            )
            after = measured(
                amount * derivation.ratio, key=offered, style=style, settings=settings, tree=tree
            )
            asked = as_asked(line, self.spec, settings, tree)
        if same_unit and before == after:
            return
        said = {
            "ml": tr_noop("pour {amount} of {ingredient} instead of {asked}"),
            "g": tr_noop("take {amount} of {ingredient} instead of {asked}"),
            "each": tr_noop("take {amount} instead of {asked}"),
        }[tree[offered].unit]
        yield tr(said, amount=after, ingredient=tree.in_sentence(offered), asked=asked)

    def of_taste(self, derivation: Derivation, bottle: Bottle | None) -> Iterator[str]:
        """That a ratio minds taste rather than strength, where it leaves the strength off."""
        tree = self.snapshot.knowledge.tree
        share = strength_share(self.line, _poured(derivation, bottle), tree)
        off = 0.0 if share is None else share - 1.0
        if abs(off) > OFF_STRENGTH and minds_taste(derivation, tree):
            yield tr(
                "measured by taste, not by strength: {share:.0f} % more alcohol"
                if off > 0.0
                else "measured by taste, not by strength: {share:.0f} % less alcohol",
                share=100 * abs(off),
            )

    @cached_property
    def _own(self) -> tuple[Pour, ...]:
        return pours_for(self.spec, self.snapshot)


def or_buy_in_words(offer: Offer, tree: FamilyTree) -> str:
    """What might be bought instead of `missing`, the closest few: *rum, gold rum or dark rum*."""
    names = [tree.in_sentence(key) for key, _closeness in offer.or_buy]
    if len(names) > MOST_NAMED:
        names = [*names[:MOST_NAMED], tr("one of {many} more", many=len(names) - MOST_NAMED)]
    return spoken_list(names)


def _poured(derivation: Derivation, bottle: Bottle | None) -> Pour:
    return Pour(derivation.offered, bottle, derivation.ratio)


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
    balance: _Balance | None,
    bottle: Bottle | None,
    snapshot: Snapshot,
) -> Iterator[str]:
    """What pouring it changes: the amounts, and strength, sugar, acid and allergens.

    Where the drink needs amounts other than the plain ratio, those are said,
    and then the sugar and acid of the bottle no longer matter.
    """
    tree = snapshot.knowledge.tree
    wanted, offered = tree[derivation.wanted], as_labelled(tree[derivation.offered], bottle)
    kept = None if balance is None else balance.kept(derivation, bottle)
    if kept is not None:
        yield in_words(kept, tree)
    elif balance is not None:
        if derivation.ratio != 1.0 and balance.line.quantity is not None:
            yield from balance.by_ratio(derivation)
        yield from balance.of_taste(derivation, bottle)
    elif derivation.ratio != 1.0:
        yield tr(
            "take {times} times the amount",
            times=show_number(derivation.ratio, fractions=False),
        )
    yield from _compared(wanted, offered, balanced=kept is not None and not kept.of_strength)
    brought = sorted(set(offered.allergens) - set(wanted.allergens))
    if brought:
        yield tr(
            "brings in {brought} (allergen)", brought=spoken_list(list(map(tr, brought)), "and")
        )


def _compared(wanted: Ingredient, offered: Ingredient, *, balanced: bool) -> Iterable[str]:
    """What is in the bottle against the wanted thing; of a grouping there is no usual figure."""
    if wanted.unit != "ml" or offered.unit != "ml" or wanted.family or offered.family:
        return
    befores, afters = (
        (each.abv_percent or 0.0, each.sugar_g_per_l or 0.0, each.acid_g_per_l or 0.0)
        for each in (wanted, offered)
    )
    told = list(zip(_TOLD_FROM, befores, afters, strict=True))
    for (least, more, less, unit), before, after in told[:1] if balanced else told:
        if abs(after - before) >= least:
            yield tr(
                "{how}: {after} against {before} {unit}",
                how=tr(more if after > before else less),
                after=show_number(after, fractions=False),
                before=show_number(before, fractions=False),
                unit=tr(unit),
            )


_TOLD_FROM = (
    (1.0, tr_noop("stronger"), tr_noop("weaker"), tr_noop("% vol")),
    (20.0, tr_noop("sweeter"), tr_noop("drier"), tr_noop("g/l sugar")),
    (3.0, tr_noop("sourer"), tr_noop("less sour"), tr_noop("g/l acid")),
)
"""From which difference on strength, sugar and acid are compared, in which words and unit."""
