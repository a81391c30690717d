"""What a scale, an eye and a spoon tell of bottles: levels counted, tares and dashers learned."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from barkeep.application.done import Done
from barkeep.application.session import Session, UseCases
from barkeep.application.shelving import bottle_there, count_one, on_bottle, refuse_repeats
from barkeep.application.stale import dasher_in_words, refuse_stale, weights_in_words
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.bottle import (
    LEAST_DASH_ML,
    MOST_DASH_ML,
    Bottle,
    BottleFacts,
    Product,
    Tare,
)
from barkeep.domain.bottles.level_words import Comparison, difference, doubt_of, quantity, sentence
from barkeep.domain.bottles.taring import odd_glass, tare_again, weighed_empty, weighed_full
from barkeep.errors import InvalidField
from barkeep.store import bottles as bottle_rows
from barkeep.store.unit_of_work import UnitOfWork
from barkeep.translation import tr

if TYPE_CHECKING:
    from barkeep.domain.bottles.levels import MeasuredLevel


@dataclass(frozen=True, slots=True)
class Counted:
    """One bottle of a count, as it is now, and the count beside what was expected before it."""

    bottle: Bottle
    compared: Comparison

    @property
    def expected(self) -> float:
        """What the ledger said, in the bottle's unit."""
        return self.compared.expected

    @property
    def counted(self) -> float:
        """What was found, in the bottle's unit."""
        return self.compared.counted

    @property
    def variance(self) -> float:
        """What is gone without a pour, in the bottle's unit; below nothing, what is too much."""
        return self.compared.variance

    @property
    def told_apart(self) -> bool:
        """Whether the variance is more than the doubt of both levels explains."""
        return self.compared.told_apart

    @property
    def verdict(self) -> str:
        """*45 ml less than expected*, or *as expected* within the doubt."""
        return difference(self.compared, self.bottle.product.unit)

    @property
    def sentence(self) -> str:
        """What was found, what was expected, and whether the two can be told apart."""
        return sentence(self.compared, self.bottle.product.unit)


def _counted(
    bar: Snapshot, before: Mapping[int, Bottle], levels: Mapping[int, MeasuredLevel]
) -> tuple[Counted, ...]:
    now = bar.bottle_by_id
    return tuple(
        Counted(
            now[bottle_id],
            Comparison(
                bottle.level.amount,
                bottle.level.expected_sigma,
                now[bottle_id].level.amount,
                levels[bottle_id].sigma,
            ),
        )
        for bottle_id, bottle in before.items()
    )


@dataclass(frozen=True, slots=True)
class Weighed:
    """A bottle after it was on the scale, and what that has taught.

    `density_g_per_ml` is None where the weighing said nothing new of it;
    `waits_for_empty` says that only an empty bottle will make sense of the
    weight, `holds_ml` what two weights that do not go together would mean.
    """

    bottle: Bottle
    weight_g: float
    density_g_per_ml: float | None = None
    waits_for_empty: bool = False
    holds_ml: float | None = None

    @property
    def warning(self) -> str:
        """What is odd about the weight of the empty bottle, as part of a sentence; else empty."""
        odd = odd_glass(self.bottle)
        if not odd:
            return ""
        size = f"{self.bottle.product.size:g} ml"
        if odd == "light":
            return tr("that is light for a bottle of {size}, so look at the scale again", size=size)
        return tr("that is heavy for a bottle of {size}, so look at the scale again", size=size)

    @property
    def sentence(self) -> str:
        """What is known now."""
        product, tare = self.bottle.product, self.bottle.tare
        if self.waits_for_empty:
            return tr(
                "{title} weighs {weight_g:g} g full. Weigh it again once it is empty: then the "
                "density of what is in it is known, and bottles of it can be counted on a scale.",
                title=product.title,
                weight_g=self.weight_g,
            )
        parts = []
        if tare:
            said = tare_in_words(tare)
            parts.append(tr("{title} weighs {tare} empty", title=product.title, tare=said))
        parts += [self.warning] if self.warning else []
        if self.density_g_per_ml is not None:
            parts.append(
                tr(
                    "what is in {title} weighs {density_g_per_ml:.3f} g per ml",
                    title=product.title,
                    density_g_per_ml=self.density_g_per_ml,
                )
            )
        elif self.holds_ml is not None:
            full_g = self.bottle.full_g or 0.0
            parts.append(
                tr(
                    "with {full_g:g} g full that would be {holds_ml:.0f} ml in it, not {size:g}, "
                    "so look at both weights again",
                    full_g=full_g,
                    holds_ml=self.holds_ml,
                    size=product.size,
                )
            )
        return f"{'; '.join(parts)}."


def tare_in_words(tare: Tare) -> str:
    """*520 g ± 2*: what an empty bottle weighs, and how sure that is."""
    return f"{quantity(tare.weight_g, 'g')} ± {doubt_of(tare.sigma_g):.0f}"


def weighed(bottle: Bottle, weight_g: float, full: bool, bar: Snapshot) -> Weighed:
    """What a weighing teaches, not written down yet. Raises `InvalidField` or `UnlikelyTare`."""
    tree = bar.knowledge.tree
    if full:
        others = tuple(each for each in bar.bottles if each.id != bottle.id)
        learned = weighed_full(bottle, weight_g, tree, others)
    else:
        learned = weighed_empty(bottle, weight_g, tree)
    return Weighed(
        bottle=learned.bottle,
        weight_g=weight_g,
        density_g_per_ml=learned.density_g_per_ml,
        waits_for_empty=learned.waits_for_empty,
        holds_ml=learned.odd_contents_ml,
    )


class Counting(UseCases):
    """The use cases of `bar.counting`."""

    def count(
        self, levels: Mapping[int, MeasuredLevel] | Iterable[tuple[int, MeasuredLevel]]
    ) -> Done[tuple[Counted, ...]]:
        """Write down measured levels by bottle id, all of them or none.

        The bottles may be sealed or empty. Raises `LevelAboveSize`,
        `NegativeAmount`, `UnknownName`, and `InvalidField` for a bottle counted
        twice or no bottle at all.
        """
        pairs = tuple(levels.items() if isinstance(levels, Mapping) else levels)
        refuse_repeats([bottle_id for bottle_id, _level in pairs])
        before: dict[int, Bottle] = {}
        with self._session.writing() as work:
            for bottle_id, measured in pairs:
                bottle = before[bottle_id] = bottle_there(work, bottle_id)
                work.label = f"Count {bottle.product.title}"
                count_one(work, bottle, measured)
            if len(pairs) > 1:
                work.label = f"Count {len(pairs)} bottles"
        return self._session.finished(work, lambda bar: _counted(bar, before, dict(pairs)))

    def learn_tare(
        self,
        bottle_id: int,
        weight_g: float,
        full: bool = False,
        seen: BottleFacts | None = None,
    ) -> Done[Weighed]:
        """Take down what a bottle weighs empty, or full with its contents; without its cap.

        Weighed full, what the nominal contents leave is the bottle's weight. What
        strength and sugar say nothing of, such as cream, gets its density from
        both weighings. Raises `UnknownName`, `InvalidField` or `UnlikelyTare`, and
        `ChangedSince` where its weights are not as they were `seen`.
        """
        with self._session.writing() as work:
            bottle = bottle_there(work, bottle_id)
            work.label = f"Weigh {bottle.product.title} {'full' if full else 'empty'}"
            found = weighed(bottle, weight_g, full, self._session.snapshot)
            what = tr("the weight of {title}", title=bottle.product.title)
            refuse_stale(what, seen=seen, now=bottle, mine=found.bottle, words=weights_in_words)
            put_measured(work, found.bottle)
            if found.density_g_per_ml is not None:
                density = found.density_g_per_ml
                work.change("product", (bottle.product.id,), density_g_per_ml=density)
        return self._session.finished(
            work, lambda bar: replace(found, bottle=bar.bottle_by_id[bottle_id])
        )

    def set_dasher(
        self, bottle_id: int, dash_ml: float | None, seen: BottleFacts | None = None
    ) -> Done[Bottle]:
        """Say what one dash from this bottle comes to; None for the bar's usual dash.

        Raises `UnknownName`, `InvalidField`, and `ChangedSince` where it is not as it was `seen`.
        """
        if dash_ml is not None and not LEAST_DASH_ML <= dash_ml <= MOST_DASH_ML:
            least, most = LEAST_DASH_ML, MOST_DASH_ML
            expected = tr("a dash is {least:g} to {most:g} ml", least=least, most=most)
            raise InvalidField("dash", f"{dash_ml:g} ml", expected)

        def put(work: UnitOfWork, bottle: Bottle) -> None:
            if bottle.product.unit != "ml":
                title = bottle.product.title
                raise InvalidField("dash", title, tr("only what is poured has a dasher"))
            what = tr("the dasher of {title}", title=bottle.product.title)
            wanted = replace(bottle, dash_ml=dash_ml)
            refuse_stale(what, seen=seen, now=bottle, mine=wanted, words=dasher_in_words)
            put_measured(work, wanted)

        return on_bottle(self._session, bottle_id, "Set the dasher of", put)


def tares_again(session: Session, work: UnitOfWork, product: Product) -> None:
    """Work out anew what bottles of a product weigh empty, whose label has been corrected.

    Raises `UnlikelyTare` where the full weight of one does not go with the new label.
    """
    for bottle in bottle_rows.read_bottles(work.connection):
        if bottle.product.id == product.id:
            put_measured(work, tare_again(replace(bottle, product=product), session.tree))


def put_measured(work: UnitOfWork, bottle: Bottle) -> None:
    """Write what a scale and a spoon have told of a bottle."""
    work.put("bottle", (bottle.id,), bottle)
