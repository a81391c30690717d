"""A riff beside its parent: its lines paired, and what that changes in the glass."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.drink.analysis import Analysis, analyse
from barkeep.domain.specs.riffs import LinePair, line_pairs
from barkeep.domain.specs.spec import Spec

NOT_KNOWN = "not known"


@dataclass(frozen=True, slots=True)
class DrinkFigures:
    """What a drink comes to, or by how much that changes; None where it cannot be said."""

    abv_percent: float | None
    sugar_g_per_l: float | None
    acid_g_per_l: float | None
    served_volume_ml: float | None
    cost: float | None


@dataclass(frozen=True, slots=True)
class RiffComparison:
    """Two specs side by side; `change` is the riff's figures less the parent's."""

    parent: Spec
    riff: Spec
    pairs: tuple[LinePair, ...]
    before: DrinkFigures
    after: DrinkFigures
    change: DrinkFigures
    currency: str


@dataclass(frozen=True, slots=True)
class FigureRow:
    """One figure of both in words; `change` is empty where it is the same as printed."""

    label: str
    before: str
    after: str
    change: str


def compare(parent: Spec, riff: Spec, snapshot: Snapshot) -> RiffComparison:
    """Set a riff beside its parent, both poured from tonight's bottles."""
    before, after = _figures(parent, snapshot), _figures(riff, snapshot)
    change = DrinkFigures(
        abv_percent=_less(after.abv_percent, before.abv_percent),
        sugar_g_per_l=_less(after.sugar_g_per_l, before.sugar_g_per_l),
        acid_g_per_l=_less(after.acid_g_per_l, before.acid_g_per_l),
        served_volume_ml=_less(after.served_volume_ml, before.served_volume_ml),
        cost=_less(after.cost, before.cost),
    )
    pairs = line_pairs(parent, riff, snapshot.knowledge.tree)
    currency = snapshot.settings.currency
    return RiffComparison(
        parent=parent,
        riff=riff,
        pairs=pairs,
        before=before,
        after=after,
        change=change,
        currency=currency,
    )


def figure_rows(comparison: RiffComparison) -> tuple[FigureRow, ...]:
    """Strength, sugar, acid, volume and cost of both, and by how much each changes."""
    return tuple(_rows(comparison))


def _rows(comparison: RiffComparison) -> Iterator[FigureRow]:
    before, after = comparison.before, comparison.after
    yield _row(
        "Strength", before=before.abv_percent, after=after.abv_percent, unit="% vol", digits=1
    )
    yield _row(
        "Sugar", before=before.sugar_g_per_l, after=after.sugar_g_per_l, unit="g/l", digits=0
    )
    yield _row("Acid", before=before.acid_g_per_l, after=after.acid_g_per_l, unit="g/l", digits=1)
    yield _row(
        "In the glass",
        before=before.served_volume_ml,
        after=after.served_volume_ml,
        unit="ml",
        digits=0,
    )
    yield _row("Cost", before=before.cost, after=after.cost, unit=comparison.currency, digits=2)


def _row(
    label: str, before: float | None, after: float | None, unit: str, digits: int
) -> FigureRow:
    was, now = _shown(before, unit, digits), _shown(after, unit, digits)
    if before is None or after is None or was == now:
        return FigureRow(label, was, now, "")
    # Of the figures as they are printed, so that the reader's own sum comes out.
    change = round(after, digits) - round(before, digits)
    sign = "+" if change > 0.0 else "−"
    return FigureRow(label, was, now, f"{sign}{_shown(abs(change), unit, digits)}")


def _shown(value: float | None, unit: str, digits: int) -> str:
    return NOT_KNOWN if value is None else f"{value:.{digits}f} {unit}"


def _figures(spec: Spec, snapshot: Snapshot) -> DrinkFigures:
    analysis = analyse(spec, snapshot)
    if not analysis.served_volume_ml:
        return DrinkFigures(
            abv_percent=None,
            sugar_g_per_l=None,
            acid_g_per_l=None,
            served_volume_ml=None,
            cost=analysis.cost.amount,
        )
    return _of(analysis)


def _of(analysis: Analysis) -> DrinkFigures:
    return DrinkFigures(
        abv_percent=analysis.abv_percent,
        sugar_g_per_l=analysis.sugar_g_per_l,
        acid_g_per_l=analysis.acid_g_per_l,
        served_volume_ml=analysis.served_volume_ml,
        cost=analysis.cost.amount,
    )


def _less(after: float | None, before: float | None) -> float | None:
    return None if after is None or before is None else after - before
