"""What a scale and a spoon tell of a bottle: its tare, its contents' density, its dasher."""

from __future__ import annotations

from dataclasses import dataclass, replace

from barkeep.application.bottle_checks import bottle_there
from barkeep.application.done import Done
from barkeep.application.session import Session
from barkeep.domain.inventory import LEAST_DASH_ML, MOST_DASH_ML, Bottle, Product, Tare
from barkeep.domain.level_words import doubt_of, quantity
from barkeep.domain.snapshot import Snapshot
from barkeep.domain.taring import odd_glass, tare_again, weighed_empty, weighed_full
from barkeep.errors import InvalidField
from barkeep.store import bottles as bottle_rows
from barkeep.store.unit_of_work import UnitOfWork


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
        size = f"{self.bottle.product.size:g} ml"
        return f"that is {odd} for a bottle of {size}, so look at the scale again" if odd else ""

    @property
    def sentence(self) -> str:
        """What is known now."""
        product, tare = self.bottle.product, self.bottle.tare
        if self.waits_for_empty:
            return (
                f"{product.title} weighs {self.weight_g:g} g full. Weigh it again once it is "
                "empty: then the density of what is in it is known, and bottles of it can be "
                "counted on a scale."
            )
        parts = [f"{product.title} weighs {tare_in_words(tare)} empty"] if tare else []
        parts += [self.warning] if self.warning else []
        if self.density_g_per_ml is not None:
            parts.append(f"what is in {product.title} weighs {self.density_g_per_ml:.3f} g per ml")
        elif self.holds_ml is not None:
            full_g = self.bottle.full_g or 0.0
            parts.append(
                f"with {full_g:g} g full that would be {self.holds_ml:.0f} ml in it, not "
                f"{product.size:g}, so look at both weights again"
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
        learned.bottle,
        weight_g,
        learned.density_g_per_ml,
        learned.waits_for_empty,
        learned.odd_contents_ml,
    )


def learn_tare(session: Session, bottle_id: int, weight_g: float, full: bool) -> Done[Weighed]:
    """Take down what a bottle weighs empty, or full, without its cap.

    Raises `UnknownName`, `InvalidField` or `UnlikelyTare`.
    """
    with session.writing() as work:
        bottle = bottle_there(work, bottle_id)
        work.label = f"Weigh {bottle.product.title} {'full' if full else 'empty'}"
        found = weighed(bottle, weight_g, full, session.snapshot)
        _put_measured(work, found.bottle)
        if found.density_g_per_ml is not None:
            density = found.density_g_per_ml
            work.change("product", (bottle.product.id,), density_g_per_ml=density)
    return session.finished(work, lambda bar: replace(found, bottle=_bottle_of(bar, bottle_id)))


def tares_again(session: Session, work: UnitOfWork, product: Product) -> None:
    """Work out anew what bottles of a product weigh empty, whose label has been corrected.

    Raises `UnlikelyTare` where the full weight of one does not go with the new label.
    """
    for bottle in bottle_rows.read_bottles(work.connection):
        if bottle.product.id == product.id:
            _put_measured(work, tare_again(replace(bottle, product=product), session.tree))


def set_dasher(session: Session, bottle_id: int, dash_ml: float | None) -> Done[Bottle]:
    """Say what one dash from this bottle comes to; None for what the bar means by a dash.

    Raises `UnknownName` or `InvalidField`.
    """
    if dash_ml is not None and not LEAST_DASH_ML <= dash_ml <= MOST_DASH_ML:
        expected = f"a dash is {LEAST_DASH_ML:g} to {MOST_DASH_ML:g} ml"
        raise InvalidField("dash", f"{dash_ml:g} ml", expected)
    with session.writing() as work:
        bottle = bottle_there(work, bottle_id)
        title = bottle.product.title
        if bottle.product.unit != "ml":
            raise InvalidField("dash", title, "only what is poured has a dasher")
        work.label = f"Set the dasher of {title}"
        _put_measured(work, replace(bottle, dash_ml=dash_ml))
    return session.finished(work, lambda bar: _bottle_of(bar, bottle_id))


def _put_measured(work: UnitOfWork, bottle: Bottle) -> None:
    row = bottle_rows.measured_row(bottle.tare, bottle.full_g, bottle.dash_ml)
    work.change("bottle", (bottle.id,), **row)


def _bottle_of(bar: Snapshot, bottle_id: int) -> Bottle:
    return next(each for each in bar.bottles if each.id == bottle_id)
