"""How the list of a count shows its bottles, and what is said of each."""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from PySide6.QtCore import Qt

from barkeep.desktop.screens.row_table import Column
from barkeep.desktop.widgets.delegates import ICONS_ROLE, LEVEL_ROLE, SUBTITLE_ROLE
from barkeep.desktop.widgets.levels import LevelReading
from barkeep.domain.bottles.bottle import STATE_WORDS, Bottle, CountMethod
from barkeep.domain.bottles.counting import CountRow, Typed
from barkeep.domain.bottles.level_words import (
    METHODS,
    difference,
    doubt_of,
    in_doubt,
    percent,
    quantity,
    reason,
    with_doubt,
)
from barkeep.domain.phrases import counted
from barkeep.translation import tr, tr_noop

BOTTLE, LEVEL, EXPECTED, COUNTED, DIFFERENCE = range(5)
"""The columns, left to right."""


_BRIEFLY: Mapping[CountMethod, str] = {
    "tenths": tr_noop("by eye"),
    "volume": tr_noop("measured"),
    "weight": tr_noop("weighed"),
    "height": tr_noop("by height"),
}


def reading_of(row: CountRow) -> LevelReading:
    """What the gauge draws: the count once there is one, the expected level marked."""
    bottle = row.bottle
    sealed = bottle.level.state == "sealed"
    if row.typed is None:
        return LevelReading(bottle.share, bottle.share, sealed=sealed)
    measured, size = row.typed.measured, bottle.product.size
    share, doubt = measured.amount / size, doubt_of(measured.sigma) / size
    return LevelReading(share, bottle.share, doubt, sealed=sealed)


def reading_in_words(typed: Typed, bottle: Bottle) -> str:
    """How a text was read: *812 g: 372 ml ± 6*."""
    measured = typed.measured
    return f"{typed.said}: {with_doubt(measured.amount, measured.sigma, bottle.product.unit)}"


def exact_in_words(typed: Typed, bottle: Bottle) -> str:
    """What is read while it is being typed: *372 ml ± 6, weighed*."""
    measured = typed.measured
    read = with_doubt(measured.amount, measured.sigma, bottle.product.unit)
    return f"{read}, {tr(_BRIEFLY[measured.method])}"


def count_columns() -> tuple[Column[CountRow], ...]:
    """Bottle, gauge, expected, counted, and the difference in words."""
    return (
        Column(
            tr("Bottle"),
            lambda row: row.bottle.product.name,
            tooltip=lambda row: row.bottle.product.title,
            roles={SUBTITLE_ROLE: below_name},
        ),
        Column(
            tr("Level"),
            lambda row: "",
            roles={
                LEVEL_ROLE: reading_of,
                Qt.ItemDataRole.AccessibleTextRole: row_in_words,
            },
        ),
        Column(
            tr("Expected"),
            lambda row: quantity(row.expected, row.bottle.product.unit),
            roles={SUBTITLE_ROLE: expected_in_doubt},
        ),
        Column(tr("Counted"), counted_in_words, roles={SUBTITLE_ROLE: typed_in_words}),
        Column(
            tr("Difference"),
            difference_in_words,
            tooltip=difference_explained,
            roles={
                SUBTITLE_ROLE: difference_explained,
                ICONS_ROLE: lambda row: ("warning",) if row.flagged else (),
            },
        ),
    )


def below_name(row: CountRow) -> str:
    """The maker, and the state of a bottle that is not open."""
    bottle = row.bottle
    state = "" if bottle.level.state == "open" else tr(STATE_WORDS[bottle.level.state])
    return ", ".join(part for part in (bottle.product.maker or row.ingredient, state) if part)


def expected_in_doubt(row: CountRow) -> str:
    """How far the expected level may be off; for pieces, their share."""
    level, unit = row.bottle.level, row.bottle.product.unit
    return in_doubt(level.expected_sigma, unit) or percent(row.bottle.share)


def counted_in_words(row: CountRow) -> str:
    """What was counted, in the bottle's unit."""
    if row.typed is None:
        return tr("not counted")
    return quantity(row.typed.measured.amount, row.bottle.product.unit)


def typed_in_words(row: CountRow) -> str:
    """The count as it was typed, with its doubt."""
    if row.typed is None:
        return ""
    doubt = in_doubt(row.typed.measured.sigma, row.bottle.product.unit)
    return f"{row.typed.said}, {doubt}" if doubt else row.typed.said


def difference_in_words(row: CountRow) -> str:
    """*45 ml less than expected*, or *as expected* within the doubt of both levels."""
    return difference(row.compared, row.bottle.product.unit) if row.compared else ""


def difference_explained(row: CountRow) -> str:
    """How the difference compares with the doubt of both levels."""
    return reason(row.compared, row.bottle.product.unit) if row.compared else ""


def row_in_words(row: CountRow) -> str:
    """The whole row as one sentence, for those who do not see it."""
    unit = row.bottle.product.unit
    title, expected = row.bottle.product.title, quantity(row.expected, unit)
    if row.typed is None:
        return tr("{title}, expected {expected}, not counted", title=title, expected=expected)
    measured = row.typed.measured
    return tr(
        "{title}, expected {expected}, counted {counted}, {method}: {difference}",
        title=title,
        expected=expected,
        counted=with_doubt(measured.amount, measured.sigma, unit),
        method=tr(METHODS[measured.method]),
        difference=difference_in_words(row),
    )


def totals_in_words(rows: Iterable[CountRow]) -> str:
    """How many bottles, how much liquid is gone in all, and how many differ beyond doubt."""
    with_count = [row for row in rows if row.typed]
    liquids = [row for row in with_count if row.bottle.product.unit == "ml"]
    flagged = sum(row.flagged for row in with_count)
    parts = [bottles_in_words(len(with_count))]
    if liquids:
        parts.append(_in_all(sum(row.difference for row in liquids)))
    parts.append(tr("{n} beyond doubt", n=flagged) if flagged else tr("none beyond doubt"))
    return " · ".join(parts)


def bottles_in_words(many: int) -> str:
    """*1 bottle*, *14 bottles*."""
    return counted(many, "bottle")


def _in_all(gone_ml: float) -> str:
    amount = quantity(abs(gone_ml), "ml")
    if round(gone_ml) == 0:
        return tr("in all as expected")
    if gone_ml > 0:
        return tr("in all {amount} less than expected", amount=amount)
    return tr("in all {amount} more than expected", amount=amount)
