"""How the Specs list shows a spec."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from barkeep.desktop.drink.bases import Base, bases_in
from barkeep.desktop.drink.tonight_rows import NOT_YET
from barkeep.desktop.screens.row_table import Column
from barkeep.desktop.widgets.delegates import SUBTITLE_ROLE, VERDICT_ROLE
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.ingredients.relations import Technique
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.pouring.evening import Evening, Placed
from barkeep.domain.pouring.memory import Memory
from barkeep.domain.pouring.verdict import VERDICT_WORDS
from barkeep.domain.pouring.verdicts import Drink
from barkeep.domain.specs.glasses import glass_in_words
from barkeep.domain.specs.shown_lines import ingredients_in_brief
from barkeep.domain.specs.spec import Spec
from barkeep.translation import tr, tr_about, tr_noop


@dataclass(frozen=True, slots=True, eq=False)
class SpecRow:
    """One spec with what a list needs; `placed` is None until tonight has been asked.

    `in_brief` says what goes in; it is worded when it is asked for.
    """

    spec: Spec
    base: Base
    tree: FamilyTree
    placed: Placed | None = None
    evening: Evening | None = None

    @property
    def in_brief(self) -> str:
        """What must go in, in a line."""
        return ingredients_in_brief(self.spec, self.tree)

    def drink(self) -> Drink | None:
        """What is poured for it tonight; None until tonight has been asked."""
        return None if self.evening is None else self.evening.drink(self.spec)


def spec_rows(
    snapshot: Snapshot, memory: Memory, evening: Evening | None = None
) -> tuple[SpecRow, ...]:
    """Every spec of the bar, own and classic, by name, with its verdict of an evening.

    A spec that has changed since that evening gets none.
    """
    tree, bases = snapshot.knowledge.tree, bases_in(snapshot.knowledge.tree, memory)
    placed = {} if evening is None else evening.by_name
    rows = []
    for spec in snapshot.all_specs:
        found = placed.get(spec.name)
        if found is None or (found.spec is not spec and found.spec != spec):
            rows.append(SpecRow(spec, bases.of(spec), tree))
        else:
            rows.append(SpecRow(spec, bases.of(spec), tree, placed=found, evening=evening))
    return tuple(rows)


def spec_columns() -> tuple[Column[SpecRow], ...]:
    """Spec, tonight, base, technique, glass, and whose it is."""
    return (
        Column(
            tr("Spec"),
            lambda row: row.spec.name,
            roles={SUBTITLE_ROLE: lambda row: row.in_brief},
            tooltip=lambda row: f"{row.spec.name}\n{row.in_brief}",
        ),
        Column(
            tr("Tonight"),
            lambda row: tr(VERDICT_WORDS[row.placed.verdict].name) if row.placed else NOT_YET,
            key=_best_first,
            roles={VERDICT_ROLE: lambda row: row.placed.verdict if row.placed else None},
            tooltip=lambda row: tr(VERDICT_WORDS[row.placed.verdict].meaning) if row.placed else "",
        ),
        Column(tr("Base"), lambda row: row.base.name),
        Column(tr("Technique"), lambda row: technique_in_words(row.spec)),
        Column(tr("Glass"), lambda row: glass_in_words(row.spec.glass)),
        Column(tr("Origin"), lambda row: origin(row.spec)),
    )


TECHNIQUES: Mapping[Technique, str] = {
    "shaken": tr_noop("Shaken"),
    "stirred": tr_noop("Stirred"),
    "built": tr_noop("Built"),
    "blended": tr_noop("Blended"),
    "swizzled": tr_noop("Swizzled"),
    "thrown": tr_noop("Thrown"),
    "hot": tr_noop("Hot"),
}


def technique_in_words(spec: Spec) -> str:
    """How it is mixed; empty where the spec does not say."""
    words = TECHNIQUES.get(spec.technique)
    return "" if words is None else tr(words)


def origin(spec: Spec) -> str:
    """Whose the spec is, in a word."""
    if spec.classic:
        return tr("Classic")
    return tr("Riff") if spec.riff_of else tr_about("whose a spec is", "Own")


def _best_first(row: SpecRow) -> tuple[int, str]:
    """As tonight's drinks are ordered; what has no verdict yet comes last, by name."""
    if row.placed is None:
        return (NO_PLACE, row.spec.name.casefold())
    return (row.placed.place, "")


NO_PLACE = 10**9
