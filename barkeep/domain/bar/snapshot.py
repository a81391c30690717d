"""A frozen picture of the whole bar: the only input of every answer."""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace
from datetime import date
from functools import cached_property
from operator import is_
from typing import TYPE_CHECKING, Any, TypeVar, cast

from barkeep.domain.amounts.rounding import Style
from barkeep.domain.amounts.units import DASH_ML, BarUnits, Ounce, OwnMeasure
from barkeep.domain.bar.book import BookOf
from barkeep.domain.bar.knowledge import Knowledge
from barkeep.domain.bar.of_kinds import HousePour, ShelfLife
from barkeep.domain.bar.pars import Par
from barkeep.domain.bar.to_buy import ToBuy
from barkeep.domain.bottles.bottle import Bottle, Product
from barkeep.domain.bottles.going_off import End, end_of, last_day_in_words, off_in_words
from barkeep.domain.bottles.pour_order import Turn, is_overproof, pour_order
from barkeep.domain.specs.by_spec import BySpec
from barkeep.domain.specs.spec import Spec
from barkeep.domain.specs.trials import DEFAULT_SCALES, Scale, Trial

if TYPE_CHECKING:
    from barkeep.domain.bar.shoots import Shoot

Made = TypeVar("Made")


@dataclass(frozen=True, slots=True)
class Settings:
    """What the owner chose for this bar.

    `not_there` holds the keys of always-there ingredients (ice, water, sugar,
    salt) the owner says are not there after all. `ounce` is what *oz* means,
    `dash_ml` what a dash comes to; amounts of specs are `shown_in` a style of
    printing; `country` is the one whose standard drink is counted in; trials
    are scored on the `scales`; `pars` are the least to have of things, by ingredient;
    `measures` are the owner's own, by name. `region` decides what things are
    called where nobody wrote a name: a key of `regions.toml`, *none* for the
    kinds' own names, empty for the system's. `house` are the owner's usual pours,
    `keeps` how long things keep where the owner knows better. `backups` is the folder
    where the bar's backups go; empty for the one beside it. `to_buy` was put on the shopping
    list by hand.
    """

    name: str = "My bar"
    currency: str = "EUR"
    not_there: frozenset[str] = frozenset()
    ounce: Ounce = "oz"
    dash_ml: float = DASH_ML
    shown_in: Style = "as_written"
    country: str = "United States"
    scales: tuple[Scale, ...] = DEFAULT_SCALES
    classics: bool = True
    pars: tuple[Par, ...] = ()
    measures: tuple[OwnMeasure, ...] = ()
    region: str = ""
    house: tuple[HousePour, ...] = ()
    keeps: tuple[ShelfLife, ...] = ()
    backups: str = ""
    to_buy: tuple[ToBuy, ...] = ()

    @property
    def units(self) -> BarUnits:
        """What the bar means by the measures that bars do not agree on."""
        return BarUnits(self.ounce, self.dash_ml, self.measures)


@dataclass(frozen=True, slots=True)
class _OfKind:
    """The bottles of one kind: when they end, which are counted, and in which order they go.

    `counted` are the ids of what is `usable`, `past` what holds something and is not; `made` is
    what was made of what is usable.
    """

    bottles: tuple[Bottle, ...]
    ends: Mapping[int, End]
    counted: frozenset[int]
    usable: tuple[Bottle, ...]
    past: tuple[Bottle, ...]
    made: dict[Any, Any] = field(default_factory=dict, repr=False, compare=False)


@dataclass(frozen=True)
class Snapshot:
    """Everything the answers may ask about, as of the day `on`."""

    knowledge: Knowledge
    on: date
    products: tuple[Product, ...] = ()
    bottles: tuple[Bottle, ...] = ()
    specs: tuple[Spec, ...] = ()
    settings: Settings = field(default_factory=Settings)
    trials: tuple[Trial, ...] = ()
    shoots: tuple[Shoot, ...] = ()

    @cached_property
    def all_specs(self) -> tuple[Spec, ...]:
        """The owner's specs and the classics, by name; an own spec hides a classic's name.

        A dash in them comes to what the bar says it does, whatever it was
        when a spec was written; a line in an own measure keeps what it came to.
        """
        return self._book_of.whole(self.specs)

    def changed(self, **values: Any) -> Snapshot:
        """The picture with some values of it changed.

        What is worked out of the book and of single specs is taken along where
        it still holds.
        """
        other = replace(self, **values)
        if self.knowledge is other.knowledge:
            other.__dict__["_of_specs"] = self._of_specs
        if "all_specs" in self.__dict__ and _same_around_the_book(self, other):
            other.__dict__["all_specs"] = (
                self.all_specs
                if self.specs is other.specs
                else other._book_of.changed(self.all_specs, self.specs, other.specs)
            )
        if "_kinds" in self.__dict__ and _same_around_the_bottles(self, other):
            other.__dict__["_kinds_before"] = self._kinds
            other.__dict__["always_there"] = self.always_there
        return other

    @property
    def _book_of(self) -> BookOf:
        classics = self.knowledge.classics_by_name if self.settings.classics else {}
        return BookOf(classics, self.settings.units, self.knowledge.tree)

    def by_spec(self, question: str) -> BySpec[Any]:
        """What is worked out of specs by themselves, for as long as the knowledge is the same."""
        return self._of_specs.setdefault(question, BySpec({}))

    @cached_property
    def _of_specs(self) -> dict[str, BySpec[Any]]:
        return {}

    def by_kind(self, make: Callable[[Snapshot, tuple[Bottle, ...]], Made]) -> Mapping[str, Made]:
        """Ingredient key -> what is made of its `usable` bottles, and of what is the same for all.

        Made anew only where the bottles are others than in the picture this was changed from.
        """
        kinds = self._kinds
        for key in self.usable:
            if make not in kinds[key].made:
                kinds[key].made[make] = make(self, kinds[key].usable)
        return {key: cast(Made, kinds[key].made[make]) for key in self.usable}

    def on_day(self, day: date) -> Snapshot:
        """The bar as of a day, the very same picture whenever it is asked for."""
        if day == self.on:
            return self
        if day not in self._on_days:
            self._on_days[day] = self.changed(on=day)
        return self._on_days[day]

    @cached_property
    def _on_days(self) -> dict[date, Snapshot]:
        return {}

    def once(self, make: Callable[[Snapshot], Made]) -> Made:
        """What is made of this very picture, made when it is first asked for."""
        if make not in self._made:
            self._made[make] = make(self)
        return cast(Made, self._made[make])

    @cached_property
    def _made(self) -> dict[Any, Any]:
        return {}

    @cached_property
    def bottle_by_id(self) -> Mapping[int, Bottle]:
        """Every bottle by its id."""
        return {each.id: each for each in self.bottles}

    @cached_property
    def product_by_id(self) -> Mapping[int, Product]:
        """Every product by its id."""
        return {each.id: each for each in self.products}

    @cached_property
    def spec_by_id(self) -> Mapping[int, Spec]:
        """The owner's specs by their ids, as they were written."""
        return {each.id: each for each in self.specs if each.id is not None}

    @cached_property
    def trial_by_id(self) -> Mapping[int, Trial]:
        """Every trial by its id."""
        return {each.id: each for each in self.trials if each.id is not None}

    @cached_property
    def shoot_by_id(self) -> Mapping[int, Shoot]:
        """Every shoot by its id."""
        return {each.id: each for each in self.shoots if each.id is not None}

    @cached_property
    def title_by_id(self) -> Mapping[int, str]:
        """What stands on every bottle, by the bottle's id."""
        return {each.id: each.product.title for each in self.bottles}

    @cached_property
    def ends(self) -> Mapping[int, End]:
        """The id of each bottle that goes off -> when it does, and why."""
        return {key: end for kind in self._kinds.values() for key, end in kind.ends.items()}

    @cached_property
    def _kinds(self) -> Mapping[str, _OfKind]:
        """Ingredient key -> what is known of its bottles, none of which bears on another kind's."""
        found: dict[str, list[Bottle]] = {}
        for bottle in self.bottles:
            found.setdefault(bottle.ingredient, []).append(bottle)
        return {key: self._of_kind(key, bottles) for key, bottles in found.items()}

    @cached_property
    def _kinds_before(self) -> Mapping[str, _OfKind]:
        """The same of the picture this one was changed from: it holds for the very same bottles."""
        return {}

    def _of_kind(self, key: str, bottles: Sequence[Bottle]) -> _OfKind:
        before = self._kinds_before.get(key)
        if before is not None and _are_the_same(before.bottles, bottles):
            return before
        found = ((each.id, self._end_of(each)) for each in bottles)
        ends = {bottle: end for bottle, end in found if end is not None}
        there = [each for each in bottles if each.level.amount > 0.0]
        counted = [each for each in there if self._is_counted(ends.get(each.id))]
        return _OfKind(
            bottles=tuple(bottles),
            ends=ends,
            counted=frozenset(each.id for each in counted),
            usable=pour_order(counted, lambda each: self._turn(each, ends.get(each.id))),
            past=tuple(each for each in there if each not in counted),
        )

    def _end_of(self, bottle: Bottle) -> End | None:
        keeps, own = self.keeps_days(bottle.ingredient), self._own_days(bottle.ingredient)
        return end_of(bottle, self.knowledge.tree, keeps=keeps, own=own is not None)

    def keeps_days(self, key: str) -> int | None:
        """How long a kind keeps once open or made, as the owner says or as shipped."""
        own = self._own_days(key)
        return self.knowledge.tree[key].shelf_life_days if own is None else own

    def _own_days(self, key: str) -> int | None:
        """How long a kind keeps as the owner says, of it or of the nearest kind above it."""
        own = self._own_lives
        if not own:
            return None
        kinds = (key, *self.knowledge.tree.upwards(key))
        return next((own[kind] for kind in kinds if kind in own), None)

    @cached_property
    def _own_lives(self) -> Mapping[str, int]:
        return {each.kind: each.days for each in self.settings.keeps}

    @cached_property
    def usable(self) -> Mapping[str, tuple[Bottle, ...]]:
        """Ingredient key -> bottles that can be poured today, in the order they are used up.

        Left out: empty bottles and whatever is past its date and would not be
        served. What is only past its best comes last.
        """
        kinds = self._kinds
        there = (each for each in self.bottles if each.id in kinds[each.ingredient].counted)
        return {each.ingredient: kinds[each.ingredient].usable for each in there}

    @cached_property
    def past(self) -> Mapping[str, tuple[Bottle, ...]]:
        """Ingredient key -> bottles that hold something but are past their date and not counted."""
        return {key: kind.past for key, kind in self._kinds.items() if kind.past}

    def is_off(self, bottle: Bottle) -> bool:
        """Whether it is past its date today, counted or not."""
        end = self.ends.get(bottle.id)
        return end is not None and end.is_over(self.on)

    def off_in_words(self, bottle: Bottle) -> str:
        """That a bottle is past its date, why, and what comes of it; empty where it is not."""
        end = self.ends.get(bottle.id)
        if end is None or not end.is_over(self.on):
            return ""
        return off_in_words(bottle.product.title, end, self.on)

    def last_day_in_words(self, bottle: Bottle) -> str:
        """The last day a bottle is good, with why it is that day; empty where it always keeps."""
        end = self.ends.get(bottle.id)
        return "" if end is None else last_day_in_words(end)

    def turn_of(self, bottle: Bottle) -> Turn:
        """What decides a bottle's turn."""
        return self._turn(bottle, self.ends.get(bottle.id))

    def _turn(self, bottle: Bottle, end: End | None) -> Turn:
        usual = self.knowledge.tree[bottle.ingredient].abv_percent
        return Turn(
            off=end is not None and end.is_over(self.on),
            house=bottle.product.id in self._house_products,
            strong=is_overproof(bottle.product.abv_percent, usual),
            last=None if end is None else end.last,
        )

    @cached_property
    def _house_products(self) -> frozenset[int]:
        return frozenset(each.product for each in self.settings.house)

    def _is_counted(self, end: End | None) -> bool:
        return end is None or end.is_counted(self.on)

    def faded_in_words(self, wanted: str, amount: float) -> Iterator[str]:
        """What is past its best of what `amount` of a kind is poured from, in sentences."""
        tree = self.knowledge.tree
        there = [bottle for key in tree.at_or_below(wanted) for bottle in self.usable.get(key, ())]
        sound = sum(each.level.amount for each in there if not self.is_off(each))
        if sound < amount:
            yield from filter(None, map(self.off_in_words, there))

    def past_of(self, wanted: Collection[str]) -> tuple[Bottle, ...]:
        """The bottles not counted for their date that hold any of these or a kind of it."""
        tree = self.knowledge.tree
        return tuple(
            bottle
            for key, bottles in self.past.items()
            if any(tree.is_a(key, each) for each in wanted)
            for bottle in bottles
        )

    @cached_property
    def always_there(self) -> frozenset[str]:
        """Keys that count as there without a bottle: ice, water, sugar, salt."""
        tree = self.knowledge.tree
        there = {key for key in tree if tree[key].always_there}
        return frozenset(there - self.settings.not_there)

    @cached_property
    def owned(self) -> frozenset[str]:
        """Keys of everything that can be used today."""
        return self.always_there | self.usable.keys()

    @cached_property
    def price_of(self) -> Mapping[str, float]:
        """Ingredient key -> the lowest price of a product known to the bar."""
        lowest: dict[str, float] = {}
        for product in self.products:
            if product.price is not None:
                known = lowest.get(product.ingredient, product.price)
                lowest[product.ingredient] = min(known, product.price)
        return lowest


def _same_around_the_book(before: Snapshot, now: Snapshot) -> bool:
    """Whether the books of both are the same but for the owner's specs."""
    return (
        before.knowledge is now.knowledge
        and before.settings.units == now.settings.units
        and before.settings.classics == now.settings.classics
    )


def _same_around_the_bottles(before: Snapshot, now: Snapshot) -> bool:
    """Whether all is the same that says when a bottle ends and which goes first."""
    return (
        before.knowledge is now.knowledge
        and before.on == now.on
        and before.settings is now.settings
    )


def _are_the_same(some: Sequence[object], others: Sequence[object]) -> bool:
    return len(some) == len(others) and all(map(is_, some, others))
