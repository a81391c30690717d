"""A riff beside its parent: its lines paired, and what that changes in the glass."""

from __future__ import annotations

from dataclasses import astuple, dataclass

from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.drink.analysis import analyse
from barkeep.domain.specs.riffs import LinePair, line_pairs
from barkeep.domain.specs.spec import Spec
from barkeep.translation import tr, tr_noop

NOT_KNOWN = tr_noop("not known")


@dataclass(frozen=True, slots=True)
class DrinkFigures:
    """What a drink comes to, or by how much that changes; None where it cannot be said."""

    abv_percent: float | None = None
    sugar_g_per_l: float | None = None
    acid_g_per_l: float | None = None
    served_volume_ml: float | None = None
    cost: float | None = None


@dataclass(frozen=True, slots=True)
class RiffComparison:
    """Two specs side by side."""

    parent: Spec
    riff: Spec
    pairs: tuple[LinePair, ...]
    before: DrinkFigures
    after: DrinkFigures
    currency: str

    @property
    def not_compared(self) -> tuple[str, ...]:
        """The lines of either that are not understood, a sentence each."""
        return tuple(
            tr(
                "Not compared, for it is not understood: {named} of {name}.",
                named=each.named,
                name=spec.name,
            )
            for spec in (self.parent, self.riff)
            for each in spec.unsettled
        )

    @property
    def change(self) -> DrinkFigures:
        """The riff's figures less the parent's."""
        return DrinkFigures(*map(_less, astuple(self.after), astuple(self.before)))


@dataclass(frozen=True, slots=True)
class FigureRow:
    """One figure of both in words; `change` is empty where it is the same as printed."""

    label: str
    before: str
    after: str
    change: str


def compare(parent: Spec, riff: Spec, snapshot: Snapshot) -> RiffComparison:
    """Set a riff beside its parent, both poured from tonight's bottles."""
    return RiffComparison(
        parent=parent,
        riff=riff,
        pairs=line_pairs(parent, riff, snapshot.knowledge.tree),
        before=_figures(parent, snapshot),
        after=_figures(riff, snapshot),
        currency=snapshot.settings.currency,
    )


def figure_rows(comparison: RiffComparison) -> tuple[FigureRow, ...]:
    """Strength, sugar, acid, volume and cost of both, and by how much each changes."""
    figures = zip(_PRINTED, astuple(comparison.before), astuple(comparison.after), strict=True)
    return tuple(
        _row(printed, before, after, comparison.currency) for printed, before, after in figures
    )


_PRINTED = (
    (tr_noop("Strength"), "% vol", 1),
    (tr_noop("Sugar"), "g/l", 0),
    (tr_noop("Acid"), "g/l", 1),
    (tr_noop("In the glass"), "ml", 0),
    (tr_noop("Cost"), "", 2),
)
"""How each of `DrinkFigures` is printed: its label, its unit, and its digits."""


def _row(
    printed: tuple[str, str, int], before: float | None, after: float | None, currency: str
) -> FigureRow:
    label, unit, digits = tr(printed[0]), *printed[1:]
    unit = unit or currency
    was, now = _shown(before, unit, digits), _shown(after, unit, digits)
    if before is None or after is None or was == now:
        return FigureRow(label, was, now, "")
    # Of the figures as they are printed, so that the reader's own sum comes out.
    change = round(after, digits) - round(before, digits)
    sign = "+" if change > 0.0 else "−"
    return FigureRow(label, was, now, f"{sign}{_shown(abs(change), unit, digits)}")


def _shown(value: float | None, unit: str, digits: int) -> str:
    return tr(NOT_KNOWN) if value is None else f"{value:.{digits}f} {unit}"


def _figures(spec: Spec, snapshot: Snapshot) -> DrinkFigures:
    analysis = analyse(spec, snapshot)
    if not analysis.served_volume_ml:
        return DrinkFigures(cost=analysis.cost.amount)
    return DrinkFigures(
        abv_percent=analysis.abv_percent,
        sugar_g_per_l=analysis.sugar_g_per_l,
        acid_g_per_l=analysis.acid_g_per_l,
        served_volume_ml=analysis.served_volume_ml,
        cost=analysis.cost.amount,
    )


def _less(after: float | None, before: float | None) -> float | None:
    return None if after is None or before is None else after - before
