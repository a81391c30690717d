"""Everything about one bottle: its level drawn large, its facts, and its ledger."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import datetime, time

from PySide6.QtWidgets import QGridLayout, QHBoxLayout, QVBoxLayout, QWidget

from barkeep.desktop.metrics import HALF, PAD, UNIT, TypeSize
from barkeep.desktop.models.bottle_rows import BottleRow, reading_of, use_by_in_words
from barkeep.desktop.models.bottle_words import (
    certainty,
    entry_in_words,
    level_in_words,
    number,
    percent,
    price_in_words,
    quantity,
    short_date,
    state_in_words,
)
from barkeep.desktop.screens.level_history import WIDTH, LevelHistory, Steps
from barkeep.desktop.widgets.detail_panel import DetailRow, DetailSection
from barkeep.desktop.widgets.labels import text_label
from barkeep.desktop.widgets.level_gauge import LevelGauge
from barkeep.domain.ingredients import Ingredient
from barkeep.domain.inventory import Entry

GAUGE_WIDTH = 84
NEWEST = 25
"""So many ledger entries are shown at first."""


class BottleOverview(QWidget):
    """The drawn bottle, the level in words beside it, its history and what can be done."""

    def __init__(self, row: BottleRow, steps: Steps, acts: Sequence[QWidget] = ()) -> None:
        super().__init__()
        self.setFixedWidth(WIDTH)
        self.gauge = LevelGauge()
        self.gauge.setFixedWidth(GAUGE_WIDTH)
        self.gauge.show_reading(reading_of(row.bottle), level_in_words(row.bottle))
        self.line = LevelHistory(self)  # shown without a parent it would be a window
        self.line.show_steps(row.bottle, steps, datetime.combine(row.on, time(23, 59)))
        words = QVBoxLayout()
        words.setSpacing(HALF)
        words.addStretch(1)
        for label in self._words(row):
            words.addWidget(label)
        words.addStretch(1)
        top = QHBoxLayout()
        top.setSpacing(PAD)
        top.addWidget(self.gauge)
        top.addLayout(words, 1)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(UNIT)
        column.addLayout(top)
        column.addWidget(self.line)
        column.addLayout(_in_pairs(acts))

    def _words(self, row: BottleRow) -> Iterator[QWidget]:
        bottle, unit = row.bottle, row.bottle.product.unit
        yield text_label(quantity(bottle.level.amount, unit), TypeSize.DISPLAY, wrap=True)
        size = quantity(bottle.product.size, unit)
        yield text_label(f"of {size}, {percent(bottle.share)}", quiet=True, wrap=True)
        yield text_label(state_in_words(bottle.level, row.on), TypeSize.STRONG, wrap=True)
        if row.low:
            yield text_label("Low", TypeSize.STRONG)


def _in_pairs(acts: Sequence[QWidget]) -> QGridLayout:
    grid = QGridLayout()
    grid.setSpacing(UNIT)
    for place, act in enumerate(acts):
        grid.addWidget(act, place // 2, place % 2)
    return grid


def sections_of(
    row: BottleRow, ingredient: Ingredient, currency: str, steps: Steps, *, all_entries: bool
) -> tuple[DetailSection, ...]:
    """Facts, cautions and ledger of one bottle."""
    found = [DetailSection("Label", tuple(_facts(row, ingredient, currency)))]
    notes = tuple(_cautions(row, ingredient))
    if notes:
        found.insert(0, DetailSection("Look out", notes))
    found.append(DetailSection("Dates", tuple(_dates(row, ingredient))))
    heading = "Ledger" if len(steps) < 2 else f"Ledger, {len(steps)} entries"
    found.append(DetailSection(heading, ledger_rows(row, steps, all_entries=all_entries)))
    return tuple(found)


def ledger_rows(row: BottleRow, steps: Steps, *, all_entries: bool) -> tuple[DetailRow, ...]:
    """The entries, newest first, each with the level after it."""
    newest = list(reversed(steps))
    shown = newest if all_entries else newest[:NEWEST]
    return tuple(_entry(row, entry, level) for entry, level in shown)


def _entry(row: BottleRow, entry: Entry, level: float) -> DetailRow:
    unit = row.bottle.product.unit
    parts = []
    if entry.kind not in ("receive", "count", "empty"):
        parts.append(f"leaves {quantity(level, unit)}")
    parts += [certainty(entry.method, entry.sigma, unit), entry.note]
    note = "; ".join(part for part in parts if part)
    day = short_date(entry.at.date(), row.on)
    return DetailRow(entry_in_words(entry, unit), label=day, note=note)


def _facts(row: BottleRow, ingredient: Ingredient, currency: str) -> Iterator[DetailRow]:
    product = row.bottle.product
    yield DetailRow(row.ingredient, "Ingredient")
    if product.maker:
        yield DetailRow(product.maker, "Maker")
    strength = product.abv_percent
    if strength is not None:
        yield DetailRow(f"{strength:g} % vol", "Strength")
    elif ingredient.abv_percent is not None:
        yield DetailRow(f"usually {ingredient.abv_percent:g} % vol", "Strength", "not on the label")
    if product.sugar_g_per_l is not None:
        yield DetailRow(f"{product.sugar_g_per_l:g} g per litre", "Sugar")
    yield DetailRow(_size(row), "Size")
    if product.price is not None:
        yield DetailRow(price_in_words(product.price, currency), "Price")
    if product.barcode:
        yield DetailRow(product.barcode, "Barcode")


def _size(row: BottleRow) -> str:
    product = row.bottle.product
    if product.unit == "each":
        return f"{number(product.size, product.unit)} pieces"
    return quantity(product.size, product.unit)


def _dates(row: BottleRow, ingredient: Ingredient) -> Iterator[DetailRow]:
    bottle, on = row.bottle, row.on
    yield DetailRow(f"{row.place} along the shelf", "Place")
    for label, day in (
        ("Received", bottle.received),
        ("Made here", bottle.made),
        ("Opened", bottle.level.opened),
    ):
        if day is not None:
            yield DetailRow(short_date(day, on), label)
    if bottle.level.counted is not None:
        how = certainty(bottle.level.method, bottle.level.sigma, bottle.product.unit)
        yield DetailRow(short_date(bottle.level.counted.date(), on), "Counted", how)
    if bottle.use_by is not None and not row.past:
        yield DetailRow(use_by_in_words(row), "Use by")
    if ingredient.shelf_life_days is not None:
        yield DetailRow(_keeps(ingredient.shelf_life_days), "Keeps")


def _keeps(days: int) -> str:
    """How long such a thing keeps, in the unit one would say it in."""
    for length, word in ((365, "year"), (30, "month"), (7, "week")):
        if days >= 2 * length or (days >= length and days % length == 0):
            many = round(days / length)
            return f"about {many} {word}{'s' * (many != 1)}"
    return f"{days} day{'s' * (days != 1)}"


def _cautions(row: BottleRow, ingredient: Ingredient) -> Iterator[DetailRow]:
    if row.past:
        yield DetailRow(use_by_in_words(row), "Past use by", picture="warning", tone="danger")
    elif row.due:
        yield DetailRow(f"Use by {use_by_in_words(row)}", "Due", picture="calendar", tone="warning")
    if ingredient.allergens:
        words = ", ".join(ingredient.allergens)
        note = "Read the label as well: makers differ."
        yield DetailRow(f"Usually contains {words}", "Allergens", note, "allergen", "warning")
