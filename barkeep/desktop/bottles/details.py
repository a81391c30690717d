"""Everything about one bottle: its level drawn large and over time, its facts, and its ledger."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from datetime import date, datetime, time

from PySide6.QtWidgets import QSizePolicy, QWidget

from barkeep.application.counting import tare_in_words
from barkeep.desktop.bottles.level_history import WIDTH, LevelHistory
from barkeep.desktop.bottles.rows import (
    BottleRow,
    entry_in_words,
    level_in_words,
    reading_of,
    short_date,
    state_in_words,
    use_by_in_words,
)
from barkeep.desktop.look.metrics import HALF, PAD, TypeSize, scaled
from barkeep.desktop.widgets.details import DetailRow, DetailSection, say
from barkeep.desktop.widgets.labels import Link, text_label
from barkeep.desktop.widgets.layouts import SPRING, column_of, laid_out_once, row_of, wide
from barkeep.desktop.widgets.levels import LevelGauge
from barkeep.domain.bottles.bottle import Bottle, Entry
from barkeep.domain.bottles.containers import Container
from barkeep.domain.bottles.level_steps import level_steps
from barkeep.domain.bottles.level_words import (
    certainty,
    doubt_of,
    in_doubt,
    number,
    percent,
    quantity,
)
from barkeep.domain.bottles.paid import Paid, cheapest_in_words, payment_in_words
from barkeep.domain.ingredients.tree import Ingredient
from barkeep.domain.phrases import begun_small, capitalised, counted, price_in_words
from barkeep.translation import tr, tr_about, tr_noop

LedgerSteps = Sequence[tuple[Entry, float]]


GAUGE_WIDTH = 84
EVERY_ENTRY = "every entry"
"""Where the link below the newest entries leads."""
NEWEST = 25
"""So many ledger entries are shown at first."""


class BottleOverview(QWidget):
    """The drawn bottle, the level in words beside it, and its history.

    Made once, and filled with each bottle that is looked at.
    """

    def __init__(self) -> None:
        super().__init__()
        self.setMinimumWidth(scaled(WIDTH))
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Preferred)
        self.gauge, self.line = LevelGauge(), LevelHistory()
        self.gauge.setFixedWidth(GAUGE_WIDTH)
        self._amount = text_label("", TypeSize.DISPLAY, wrap=True)
        self._share, self._doubt = text_label("", quiet=True, wrap=True), text_label("", quiet=True)
        self._state = text_label("", TypeSize.STRONG, wrap=True)
        self._low = text_label("", TypeSize.STRONG)
        words = (self._amount, self._share, self._doubt, self._state, self._low)
        beside = column_of(SPRING, *words, SPRING, gap=HALF)
        column_of(row_of(self.gauge, wide(beside), gap=PAD), self.line, on=self)

    def fill(self, row: BottleRow, steps: LedgerSteps) -> None:
        """Show a bottle and what its ledger tells."""
        bottle, unit = row.bottle, row.bottle.product.unit
        size, sigma = bottle.product.size, bottle.level.expected_sigma
        reading = replace(reading_of(bottle), doubt=doubt_of(sigma) / size)
        with laid_out_once(self):
            self.gauge.show_reading(reading, level_in_words(bottle))
            say(self._amount, quantity(bottle.level.amount, unit))
            say(
                self._share,
                tr(
                    "of {size}, {share} full",
                    size=quantity(size, unit),
                    share=percent(bottle.share),
                ),
            )
            say(self._doubt, in_doubt(sigma, unit))
            say(self._state, state_in_words(bottle.level, row.on))
            say(self._low, tr("Low") if row.low else "")
            found = level_steps([entry for entry, _level in steps], unit)
            self.line.show_steps(bottle, found, datetime.combine(row.on, time(23, 59)))


def sections_of(
    row: BottleRow,
    ingredient: Ingredient,
    container: Container,
    currency: str,
    steps: LedgerSteps,
    *,
    all_entries: bool,
    payments: Sequence[Paid] = (),
) -> tuple[DetailSection, ...]:
    """Facts, cautions, what was paid, how it can be measured, and the ledger of one bottle."""
    found = [DetailSection(tr("Label"), tuple(_facts(row, ingredient, currency)))]
    notes = tuple(_cautions(row, ingredient))
    if notes:
        found.insert(0, _look_out(notes, row, ingredient))
    if payments:
        paid = tuple(_paid(payments, currency, row.on))
        found.append(DetailSection(tr("Paid"), paid, fold="paid", brief=paid[0].text))
    dates = tuple(_dates(row, ingredient))
    brief = " · ".join(f"{each.label} {each.text}" for each in dates[1:4])
    found.append(DetailSection(tr("Dates"), dates, fold="dates", brief=brief))
    if container.shape is not None:
        measuring = tuple(_measuring(row.bottle, container))
        brief = tr("Empty: {weight}", weight=measuring[0].text)
        found.append(DetailSection(tr("Measuring"), measuring, fold="measuring", brief=brief))
    heading = tr("Ledger") if len(steps) < 2 else tr("Ledger, {n} entries", n=len(steps))
    entries = ledger_rows(row, steps, all_entries=all_entries)
    last = entries[0] if entries else None
    brief = tr("Last: {what}, {day}", what=last.text, day=last.label) if last else ""
    found.append(DetailSection(heading, entries, fold="ledger", brief=brief))
    return tuple(found)


def _look_out(
    notes: tuple[DetailRow, ...], row: BottleRow, ingredient: Ingredient
) -> DetailSection:
    """The cautions of a bottle in a line of tags, which opens to all of it."""
    tags = [each.label for each in notes if each.picture != "allergen"]
    tags += map(tr, ingredient.allergens)
    brief = capitalised(" · ".join(map(begun_small, tags)))
    tone = "danger" if row.past else "warning"
    return DetailSection(tr("Look out"), notes, fold="cautions", brief=brief, tone=tone)


def ledger_rows(row: BottleRow, steps: LedgerSteps, *, all_entries: bool) -> tuple[DetailRow, ...]:
    """The entries, newest first, each with the level after it; of many a link to the rest."""
    newest = list(reversed(steps))
    shown = newest if all_entries else newest[:NEWEST]
    rows = tuple(_entry(row, entry, level) for entry, level in shown)
    if len(shown) == len(newest):
        return rows
    every = Link(tr("Show all {n} entries", n=len(newest)), EVERY_ENTRY)
    return (*rows, DetailRow("", parts=(every,)))


def _entry(row: BottleRow, entry: Entry, level: float) -> DetailRow:
    unit, size = row.bottle.product.unit, row.bottle.product.size
    parts = []
    if entry.kind not in ("receive", "count", "empty"):
        parts.append(tr("leaves {amount}", amount=quantity(level, unit)))
    parts += [certainty(entry.method, entry.sigma, unit, size), entry.note]
    note = "; ".join(part for part in parts if part)
    day = short_date(entry.at.date(), row.on)
    return DetailRow(entry_in_words(entry, unit), label=day, note=note)


def _facts(row: BottleRow, ingredient: Ingredient, currency: str) -> Iterator[DetailRow]:
    product = row.bottle.product
    yield DetailRow(row.ingredient, tr("Ingredient"))
    if product.maker:
        yield DetailRow(product.maker, tr("Maker"))
    strength = product.abv_percent
    if strength is not None:
        yield DetailRow(f"{strength:g} % vol", tr("Strength"))
    elif ingredient.abv_percent is not None:
        yield DetailRow(
            tr("usually {abv:g} % vol", abv=ingredient.abv_percent),
            tr("Strength"),
            tr("not on the label"),
        )
    if product.sugar_g_per_l is not None:
        sugar = tr("{grams:g} g per litre", grams=product.sugar_g_per_l)
        yield DetailRow(sugar, tr("Sugar"))
    if product.acid_g_per_l is not None:
        yield DetailRow(tr("{grams:g} g per litre", grams=product.acid_g_per_l), tr("Acid"))
    yield DetailRow(_size(row), tr("Size"))
    if product.price is not None:
        yield DetailRow(price_in_words(product.price, currency), tr("Price"))
    if product.barcode:
        yield DetailRow(product.barcode, tr("Barcode"))


def _paid(payments: Sequence[Paid], currency: str, on: date) -> Iterator[DetailRow]:
    """What was paid, newest first, and below it the shop that was cheapest."""
    for each in payments:
        yield DetailRow(payment_in_words(each, currency), short_date(each.day, on))
    cheapest = cheapest_in_words(payments, currency)
    if cheapest:
        yield DetailRow(cheapest, tr("Cheapest"))


def _size(row: BottleRow) -> str:
    product = row.bottle.product
    if product.unit == "each":
        return tr("{n} pieces", n=number(product.size, product.unit))
    return quantity(product.size, product.unit)


def _measuring(bottle: Bottle, container: Container) -> Iterator[DetailRow]:
    """What a scale and a ruler need to know of it."""
    tare = container.tare
    if tare is None:
        advice = tr("Weigh it empty or full to count it on a scale.")
        yield DetailRow(tr("not known"), tr_about("a weight of a bottle", "Empty"), advice)
    else:
        empty = tr_about("a weight of a bottle", "Empty")
        yield DetailRow(tare_in_words(tare), empty, _whence(bottle))
    contents = container.contents
    if contents.learned is not None:
        shown = tr("{density:.3f} g per ml", density=contents.learned.g_per_ml)
        yield DetailRow(shown, tr("Density"), tr("learned by weighing"))
    elif contents.liquid is None:
        because = f"{capitalised(contents.no_density_because)}."
        yield DetailRow(tr("not known"), tr("Density"), because)
    else:
        yield DetailRow(tr("from strength and sugar"), tr("Density"))
    assert container.shape is not None
    chosen = "" if bottle.product.shape else tr("The usual one; its label may say another.")
    yield DetailRow(capitalised(container.shape.name_said), tr("Shape"), chosen)
    if bottle.dash_ml is not None:
        yield DetailRow(f"{bottle.dash_ml:g} ml", tr("One dash"))


def _whence(bottle: Bottle) -> str:
    """How the weight of the empty bottle is known."""
    if bottle.tare is None:
        return tr("as another bottle of it")
    if bottle.tare.was_weighed:
        return tr("weighed empty")
    if bottle.full_g:
        return tr("worked out from {full_g:g} g full", full_g=bottle.full_g)
    return tr("worked out")


def _dates(row: BottleRow, ingredient: Ingredient) -> Iterator[DetailRow]:
    bottle, on = row.bottle, row.on
    yield DetailRow(tr("{place} along the shelf", place=row.place), tr("Place"))
    for label, day in (
        (tr("Received"), bottle.received),
        (tr("Made here"), bottle.made),
        (tr("Opened"), bottle.level.opened),
    ):
        if day is not None:
            yield DetailRow(short_date(day, on), label)
    if bottle.level.counted is not None:
        level, product = bottle.level, bottle.product
        how = certainty(level.method, level.sigma, product.unit, product.size)
        yield DetailRow(short_date(bottle.level.counted.date(), on), tr("Counted"), how)
    if row.last is not None and not row.past:
        yield DetailRow(use_by_in_words(row), tr("Use by"))
    if ingredient.shelf_life_days is not None:
        yield DetailRow(_keeps(ingredient.shelf_life_days), tr("Keeps"))


_LENGTHS = (
    (365, tr_noop("year"), tr_noop("years")),
    (30, tr_noop("month"), tr_noop("months")),
    (7, tr_noop("week"), tr_noop("weeks")),
)
"""Days, and what so many are called, of one and of several."""


def _keeps(days: int) -> str:
    """How long such a thing keeps, in the unit one would say it in."""
    for length, one, several in _LENGTHS:
        if days >= 2 * length or (days >= length and days % length == 0):
            many = round(days / length)
            return tr("about {time}", time=counted(many, one, several))
    return counted(days, "day")


def _cautions(row: BottleRow, ingredient: Ingredient) -> Iterator[DetailRow]:
    if row.past:
        yield DetailRow(use_by_in_words(row), tr("Past its date"), picture="warning", tone="danger")
    elif row.due:
        yield DetailRow(
            tr("Use by {day}", day=use_by_in_words(row)),
            tr("Due"),
            picture="calendar",
            tone="warning",
        )
    if ingredient.allergens:
        words = ", ".join(map(tr, ingredient.allergens))
        note = tr("Read the label as well: makers differ.")
        yield DetailRow(
            text=tr("Usually contains {words}", words=words),
            label=tr("Allergens"),
            note=note,
            picture="allergen",
            tone="warning",
        )
