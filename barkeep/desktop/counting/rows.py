"""How the list of a count shows its bottles, and what is said of each."""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from PySide6.QtCore import Qt

from barkeep.desktop.screens.row_table import Column
from barkeep.desktop.widgets.delegates import ICONS_ROLE, LEVEL_ROLE, SUBTITLE_ROLE
from barkeep.desktop.widgets.levels import LevelReading
from barkeep.domain.bottles.bottle import Bottle, CountMethod
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

BOTTLE, LEVEL, EXPECTED, COUNTED, DIFFERENCE = range(5)
"""The columns, left to right."""


_BRIEFLY: Mapping[CountMethod, str] = {
    "tenths": "by eye",
    "volume": "measured",
    "weight": "weighed",
    "height": "by height",
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
    return f"{typed.words}: {with_doubt(measured.amount, measured.sigma, bottle.product.unit)}"


def exact_in_words(typed: Typed, bottle: Bottle) -> str:
    """What is read while it is being typed: *372 ml ± 6, weighed*."""
    measured = typed.measured
    read = with_doubt(measured.amount, measured.sigma, bottle.product.unit)
    return f"{read}, {_BRIEFLY[measured.method]}"


def count_columns() -> tuple[Column[CountRow], ...]:
    """Bottle, gauge, expected, counted, and the difference in words."""
    return (
        Column(
            "Bottle",
            lambda row: row.bottle.product.name,
            tooltip=lambda row: row.bottle.product.title,
            roles={SUBTITLE_ROLE: below_name},
        ),
        Column(
            "Level",
            lambda row: "",
            roles={
                LEVEL_ROLE: reading_of,
                Qt.ItemDataRole.AccessibleTextRole: row_in_words,
            },
        ),
        Column(
            "Expected",
            lambda row: quantity(row.expected, row.bottle.product.unit),
            roles={SUBTITLE_ROLE: expected_in_doubt},
        ),
        Column("Counted", counted_in_words, roles={SUBTITLE_ROLE: typed_in_words}),
        Column(
            "Difference",
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
    state = "" if bottle.level.state == "open" else bottle.level.state
    return ", ".join(part for part in (bottle.product.maker or row.ingredient, state) if part)


def expected_in_doubt(row: CountRow) -> str:
    """How far the expected level may be off; for pieces, their share."""
    level, unit = row.bottle.level, row.bottle.product.unit
    return in_doubt(level.expected_sigma, unit) or percent(row.bottle.share)


def counted_in_words(row: CountRow) -> str:
    """What was counted, in the bottle's unit."""
    if row.typed is None:
        return "not counted"
    return quantity(row.typed.measured.amount, row.bottle.product.unit)


def typed_in_words(row: CountRow) -> str:
    """The count as it was typed, with its doubt."""
    if row.typed is None:
        return ""
    doubt = in_doubt(row.typed.measured.sigma, row.bottle.product.unit)
    return f"{row.typed.words}, {doubt}" if doubt else row.typed.words


def difference_in_words(row: CountRow) -> str:
    """*45 ml less than expected*, or *as expected* within the doubt of both levels."""
    return difference(row.compared, row.bottle.product.unit) if row.compared else ""


def difference_explained(row: CountRow) -> str:
    """How the difference compares with the doubt of both levels."""
    return reason(row.compared, row.bottle.product.unit) if row.compared else ""


def row_in_words(row: CountRow) -> str:
    """The whole row as one sentence, for those who do not see it."""
    unit = row.bottle.product.unit
    start = f"{row.bottle.product.title}, expected {quantity(row.expected, unit)}"
    if row.typed is None:
        return f"{start}, not counted"
    measured = row.typed.measured
    counted = with_doubt(measured.amount, measured.sigma, unit)
    return f"{start}, counted {counted}, {METHODS[measured.method]}: {difference_in_words(row)}"


def totals_in_words(rows: Iterable[CountRow]) -> str:
    """How many bottles, how much liquid is gone in all, and how many differ beyond doubt."""
    counted = [row for row in rows if row.typed]
    liquids = [row for row in counted if row.bottle.product.unit == "ml"]
    flagged = sum(row.flagged for row in counted)
    parts = [bottles_in_words(len(counted))]
    if liquids:
        parts.append(_in_all(sum(row.difference for row in liquids)))
    parts.append(f"{flagged} beyond doubt" if flagged else "none beyond doubt")
    return " · ".join(parts)


def bottles_in_words(many: int) -> str:
    """*1 bottle*, *14 bottles*."""
    return "1 bottle" if many == 1 else f"{many} bottles"


def _in_all(gone_ml: float) -> str:
    amount = quantity(abs(gone_ml), "ml")
    if round(gone_ml) == 0:
        return "in all as expected"
    return f"in all {amount} {'less' if gone_ml > 0 else 'more'} than expected"
