"""What the batch dialog shows: a batch as rows and sentences."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from barkeep.domain.answers.analysis_words import caution_in_words
from barkeep.domain.batch_portions import (
    NoRounds,
    in_bottles,
    past_inputs,
    tin_rounds,
    whole_bottles,
)
from barkeep.domain.batching import Batch
from barkeep.domain.glasses import Glass
from barkeep.domain.level_words import quantity
from barkeep.domain.measures import show_quantity
from barkeep.domain.snapshot import Snapshot

COLUMNS = ("Ingredient", "Exact", "Measure", "Whole bottles", "To know")
HOW = {"cold": "cold", "over_ice": "over ice", "hot": "hot", "frozen": "from the freezer"}


@dataclass(frozen=True, slots=True)
class BatchView:
    """A batch in words: a headline, a row a line, and sentences below."""

    headline: str
    rows: tuple[tuple[str, ...], ...]
    sentences: tuple[str, ...]
    cautions: tuple[str, ...]

    @property
    def as_text(self) -> str:
        """All of it as plain text, to be pasted."""
        rows = (
            "\t".join((row[2], row[0], *(each for each in row[3:] if each))) for row in self.rows
        )
        cautions = (f"! {each}" for each in self.cautions)
        return "\n".join((self.headline, "", *rows, "", *self.sentences, *cautions)) + "\n"


def batch_view(made: Batch, snapshot: Snapshot, tin: Glass | None) -> BatchView:
    """A batch as the dialog shows it; with a tin, the rounds through it as well."""
    how = HOW[made.served]
    headline = f"{made.spec.name}: {made.serves:.4g} serves of {made.serve_ml:.0f} ml, {how}"
    return BatchView(
        headline,
        tuple(_rows(made, snapshot)),
        tuple(_sentences(made, snapshot, tin)),
        tuple(caution_in_words(each) for each in made.cautions),
    )


def _rows(made: Batch, snapshot: Snapshot) -> Iterator[tuple[str, ...]]:
    tree, bottles = snapshot.knowledge.tree, whole_bottles(made, snapshot)
    short = {each.ingredient: each for each in made.short}
    for line in made.lines:
        whole = bottles.get(line.ingredient)
        lacking = short.get(line.ingredient)
        there = f"only {quantity(lacking.have, lacking.unit)} there" if lacking else ""
        yield (
            tree.name(line.ingredient),
            quantity(line.exact, line.unit),
            show_quantity(line.amount, line.unit),
            in_bottles(whole, snapshot) if whole else "",
            "; ".join(each for each in (there, line.remark) if each),
        )
    if made.water_ml:
        measure = show_quantity(made.water_ml, "ml")
        yield ("Water", measure, measure, "", "in place of what ice would give")


def _sentences(made: Batch, snapshot: Snapshot, tin: Glass | None) -> Iterator[str]:
    strength = "" if made.abv_percent is None else f", {made.abv_percent:.1f} % vol"
    drinks = made.standard_drinks_per_serve
    each = "" if drinks is None else f", {drinks:.1f} standard drinks a serve"
    yield f"{made.total_ml:.0f} ml in all{strength}{each}."
    yield from past_inputs(made, snapshot)
    yield from made.notes
    if tin is not None:
        yield _rounds_in_words(made, tin)


def _rounds_in_words(made: Batch, tin: Glass) -> str:
    """The rounds, or why there are none; the batch itself stands either way."""
    try:
        return tin_rounds(made, tin).sentence
    except NoRounds as error:
        return str(error)
