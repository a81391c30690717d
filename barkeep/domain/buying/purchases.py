"""What is one purchase: its forms under one row, the one to buy first.

A fruit and its juice, a herb and its leaves, grenadine and the pomegranate it
is made from are one thing to buy: what a form can be made from is its source,
and forms of one source stand together. So do things that turn the same drinks
by the same lines, since nobody buys both.
"""

from __future__ import annotations

from collections.abc import Callable, Hashable, Iterable, Iterator, Sequence
from dataclasses import dataclass, field
from functools import cached_property
from typing import TypeAlias, TypeVar

from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.buying.shops import SHOPS, Shop, shop_of
from barkeep.domain.ingredients.relations import MadeFrom
from barkeep.domain.ingredients.tasks import task_of
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.making.made_here import comes_freely
from barkeep.domain.phrases import as_sentence, capitalised
from barkeep.domain.pouring.made_first import first_in_words
from barkeep.errors import spoken_list
from barkeep.translation import tr, tr_noop

Thing = TypeVar("Thing")
Reason: TypeAlias = tuple[tuple[str, tuple[int, ...]], ...]
"""Each drink with the numbers of its lines that a purchase bears on."""
MOST_NAMED = 4
"""Drinks of a further form that are said by name."""
EVENING_HOURS = 4.0
"""What has to stand so long is rather bought ready (*common practice*)."""


@dataclass(frozen=True, slots=True)
class Form:
    """One ingredient as it may be bought, weighed by itself; see `Candidate` for its fields.

    `reason` says by which lines it turns what it turns, or brings near what it
    brings near; `makes` each drink that needs something made of it first.
    """

    ingredient: str
    unlocks: tuple[str, ...] = ()
    exactly: tuple[str, ...] = ()
    nearest: tuple[str, ...] = ()
    price: float | None = None
    owned: bool = False
    reason: Reason = ()
    makes: tuple[tuple[str, tuple[MadeFrom, ...]], ...] = ()


@dataclass(frozen=True, slots=True)
class Candidate:
    """One purchase. `unlocks` are the drinks it adds to what can be made.

    `exactly` are those of them that then need no stand-in; `nearest` the
    drinks that would be one short after it; `price` the lowest known, None
    where no product of it is known. Names are spec names. All of it is of the
    form to buy first, which is `ingredient` and the first of `forms`; those
    hold whatever else is the same purchase and turns any of it.
    """

    ingredient: str
    unlocks: tuple[str, ...]
    exactly: tuple[str, ...]
    nearest: tuple[str, ...]
    price: float | None
    owned: bool
    why: str
    forms: tuple[Form, ...]
    shop: Shop


@dataclass(frozen=True)
class Purchases:
    """Which things are one purchase in one bar."""

    snapshot: Snapshot
    _sources: dict[str, str] = field(default_factory=dict, repr=False)

    @property
    def tree(self) -> FamilyTree:
        return self.snapshot.knowledge.tree

    def source(self, key: str) -> str:
        """What one buys for a thing: the one thing that is not there of what it is made from.

        Where all of it is there, or nothing is made, the one thing it is made
        from; the thing itself where that would be several.
        """
        if key not in self._sources:
            self._sources[key] = key  # a recipe may go in circles
            self._sources[key] = self._source(key)
        return self._sources[key]

    def rows(self, forms: Iterable[Form]) -> tuple[Candidate, ...]:
        """One row a purchase, bottles first, then those that turn most.

        Ties go to what brings most drinks to one short, then to the lower known
        price, then to the name.
        """
        by_source = _grouped(forms, lambda each: self.source(each.ingredient))
        ordered = [self._ordered(some) for some in by_source]
        alike = _grouped(ordered, lambda some: _same_reason(some[0]))
        merged = [self._ordered(each for some in groups for each in some) for groups in alike]
        found = map(self._row, _without_the_lesser(merged, self.tree))
        return tuple(sorted(found, key=self._most_first))

    def _source(self, key: str) -> str:
        recipe = self.snapshot.knowledge.own_way.get(key)
        if recipe is None:
            return key
        there = self._is_there
        inputs = (each.ingredient for each in recipe.inputs)
        taken = [each for each in inputs if not comes_freely(each, self.snapshot)]
        sources = dict.fromkeys(map(self.source, taken))
        lacking = dict.fromkeys(
            self.source(each) for each in taken if not there(each) and not there(self.source(each))
        )
        found = tuple(lacking or sources)
        return found[0] if len(found) == 1 else key

    def _is_there(self, key: str) -> bool:
        return not self.snapshot.owned.isdisjoint(self.tree.at_or_below(key))

    def is_cut(self, key: str) -> bool:
        """Whether it is a piece of something, which no shop sells by itself."""
        recipe = self.snapshot.knowledge.own_way.get(key)
        return recipe is not None and task_of(recipe, self.tree) == "cut"

    def _ordered(self, forms: Iterable[Form]) -> list[Form]:
        some = list(forms)
        return sorted(some, key=self._to_buy_first) if len(some) > 1 else some

    def _to_buy_first(self, form: Form) -> tuple[object, ...]:
        """What turns most, then most exactly, then ready tonight, then cheapest, then usual."""
        key = form.ingredient
        return (
            self.is_cut(key),
            -len(form.unlocks),
            -len(form.exactly),
            _stands_long(form),
            form.price is None,
            form.price or 0.0,
            key not in self._known,
            self.source(key) != key,
            len(self.tree.ancestors(key)),
            self.tree.name(key).casefold(),
        )

    @cached_property
    def _known(self) -> frozenset[str]:
        return frozenset(each.ingredient for each in self.snapshot.products)

    def _row(self, forms: Sequence[Form]) -> Candidate:
        lead, *others = forms
        kept = (lead, *(each for each in others if _adds(each, lead)))
        tree, source = self.tree, self.source(lead.ingredient)
        owned = lead.owned or any(each.owned for each in forms if each.ingredient == source)
        named = [each for each in kept if not self.is_cut(each.ingredient) or each is lead]
        first = make_of(lead, tree)
        said = (
            _why(lead, owned),
            *_other_forms(named, tree),
            as_sentence(first) if first else "",
            self._past(kept),
        )
        return Candidate(
            ingredient=lead.ingredient,
            unlocks=lead.unlocks,
            exactly=lead.exactly,
            nearest=lead.nearest,
            price=lead.price,
            owned=owned,
            why=" ".join(filter(None, said)),
            forms=kept,
            shop=shop_of(lead.ingredient, tree),
        )

    def _past(self, forms: Iterable[Form]) -> str:
        """What is there of a purchase and not counted, since its date is over."""
        past = self.snapshot.past_of({each.ingredient for each in forms})
        titles = tuple(dict.fromkeys(each.product.title for each in past))
        if not titles:
            return ""
        bottles = spoken_list(titles, "and")
        if len(titles) == 1:
            return tr("{bottle} is there, but past its date.", bottle=bottles)
        return tr("{bottles} are there, but past their dates.", bottles=bottles)

    def _most_first(self, candidate: Candidate) -> tuple[object, ...]:
        return (
            not candidate.unlocks,
            SHOPS.index(candidate.shop),
            -len(candidate.unlocks),
            -len(candidate.nearest),
            candidate.price is None,
            candidate.price or 0.0,
            self.tree.name(candidate.ingredient).casefold(),
        )


def make_of(form: Form, tree: FamilyTree) -> str:
    """What to make of a purchase first: *make grenadine first (10 min)*; empty for nothing.

    The drinks are named where it is not for all that it turns.
    """
    drinks: dict[tuple[MadeFrom, ...], list[str]] = {}
    for drink, recipes in form.makes:
        drinks.setdefault(recipes, []).append(drink)
    clauses = []
    for recipes, names in drinks.items():
        made = first_in_words(recipes, tree)
        if len(names) < len(form.unlocks):
            made = tr("{made} for {drinks}", made=made, drinks=spoken_list(names, "and"))
        clauses.append(made)
    return "; ".join(clauses)


def _stands_long(form: Form) -> bool:
    """Whether what is made of it is not there before the evening is over."""
    made = (recipe for _drink, recipes in form.makes for recipe in recipes)
    return any(recipe.rest_hours >= EVENING_HOURS for recipe in made)


def _grouped(things: Iterable[Thing], by: Callable[[Thing], Hashable]) -> list[list[Thing]]:
    """Things in groups of what they have in common, in the order they come."""
    found: dict[Hashable, list[Thing]] = {}
    for each in things:
        found.setdefault(by(each), []).append(each)
    return list(found.values())


def _same_reason(lead: Form) -> Hashable:
    """What two purchases share that are bought for the same drinks and the same lines of them."""
    if lead.unlocks:
        return lead.unlocks, lead.reason
    return (lead.nearest, lead.reason) if lead.nearest else lead.ingredient


def _without_the_lesser(
    purchases: Sequence[Sequence[Form]], tree: FamilyTree
) -> list[Sequence[Form]]:
    """Purchases with each that is only a stand-in for another added to that one's forms.

    So is a label that says less: *Scotch whisky* beside a blended one that turns all it does.
    """
    most_first = sorted(purchases, key=lambda some: -len(some[0].unlocks))
    kept: list[Sequence[Form]] = []
    bought_for: dict[tuple[str, tuple[int, ...]], list[int]] = {}
    for forms in most_first:
        lead = forms[0]
        likely = bought_for.get(lead.reason[0], ()) if lead.unlocks else ()
        place = next((each for each in likely if _is_lesser(lead, kept[each][0], tree)), None)
        if place is None:
            for reason in lead.reason:
                bought_for.setdefault(reason, []).append(len(kept))
            kept.append(forms)
        else:
            kept[place] = (*kept[place], *forms)
    return kept


def _is_lesser(lead: Form, other: Form, tree: FamilyTree) -> bool:
    """Whether it turns, as a stand-in alone or as a more general kind, only what another does."""
    stands_in = not lead.exactly and bool(other.exactly)
    says_less = tree.is_a(other.ingredient, lead.ingredient)
    if not lead.unlocks or not (stands_in or says_less):
        return False
    return set(lead.reason) <= set(other.reason)


def _adds(form: Form, lead: Form) -> bool:
    """Whether a form does any of what its row is bought for."""
    if lead.unlocks:
        return bool(form.unlocks)
    return bool(form.nearest) or not lead.nearest


def _why(lead: Form, owned: bool) -> str:
    why = _turns_ready(lead)
    if owned and lead.unlocks:
        why += tr("; what is left is too little")
    if not lead.nearest:
        return f"{why}."
    return tr("{why}; brings {drinks} to one short.", why=why, drinks=_all_of(lead.nearest))


def _turns_ready(lead: Form) -> str:
    if not lead.unlocks:
        return tr("Turns nothing by itself")
    beside = [name for name in lead.unlocks if name not in lead.exactly]
    drinks = _all_of(lead.unlocks)
    if not beside:
        return tr("Turns {drinks} ready", drinks=drinks)
    if not lead.exactly:
        return tr("Turns {drinks} ready with a stand-in", drinks=drinks)
    return tr(
        "Turns {drinks} ready, of which {beside} with a stand-in",
        drinks=drinks,
        beside=_all_of(beside),
    )


def _all_of(names: Sequence[str]) -> str:
    return spoken_list(names, "and")


def _other_forms(forms: Sequence[Form], tree: FamilyTree) -> Iterator[str]:
    """What else would be this purchase, and how far it goes."""
    lead, *others = forms
    if not lead.unlocks:
        return
    alike = [each for each in others if each.unlocks == lead.unlocks]
    same = [each for each in alike if each.exactly == lead.exactly]
    for some, does in (
        (same, tr_noop("{forms} does the same{making}.")),
        (_without(alike, same), tr_noop("{forms} does it as a stand-in{making}.")),
    ):
        for making, forms_alike in _by_making(some, lead, tree):
            names = spoken_list([tree.in_sentence(each.ingredient) for each in forms_alike])
            yield tr(does, forms=capitalised(names), making=making)
    for each in _without(others, alike):
        yield tr(
            "{form} turns {drinks}.", form=tree.name(each.ingredient), drinks=_turned(each, lead)
        )


def _turned(form: Form, lead: Form) -> str:
    """What a form turns beside its lead: named where it is little, else counted."""
    less = set(form.unlocks) < set(lead.unlocks)
    if len(form.unlocks) > MOST_NAMED:
        count = len(form.unlocks)
        drinks = tr("{count} of them", count=count) if less else tr("{count} drinks", count=count)
    else:
        drinks = _all_of(form.unlocks)
        drinks = tr("only {drinks}", drinks=drinks) if less else drinks
    if form.exactly or not lead.exactly:
        return drinks
    return tr("{drinks} as a stand-in", drinks=drinks)


def _by_making(
    forms: Iterable[Form], lead: Form, tree: FamilyTree
) -> Iterator[tuple[str, list[Form]]]:
    """Forms by what is said of making something of them first, where the lead's is another."""
    of_lead = make_of(lead, tree)

    def said(form: Form) -> str:
        making = make_of(form, tree)
        if making == of_lead:
            return ""
        return f": {making}" if making else tr(" and needs no making")

    for some in _grouped(forms, said):
        yield said(some[0]), some


def _without(forms: Sequence[Form], these: Sequence[Form]) -> list[Form]:
    return [each for each in forms if each not in these]
