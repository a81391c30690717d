"""How the Specs list shows a spec."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from barkeep.desktop.screens.row_table import Column
from barkeep.desktop.widgets.delegates import SUBTITLE_ROLE, VERDICT_ROLE
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.pouring.verdicts import VERDICT_WORDS, VERDICTS, Drink
from barkeep.domain.specs.called import named_by
from barkeep.domain.specs.shown_lines import ingredients_in_brief
from barkeep.domain.specs.spec import Spec, base, base_kind

NOT_ASKED_YET = "…"


@dataclass(frozen=True, slots=True)
class SpecRow:
    """One spec with the words a list needs; `drink` is None until tonight has been asked."""

    spec: Spec
    in_brief: str
    base_name: str
    base_kind: str | None
    drink: Drink | None = None


def spec_rows(snapshot: Snapshot) -> tuple[SpecRow, ...]:
    """Every spec of the bar, own and classic, by name."""
    tree = snapshot.knowledge.tree
    return tuple(_row(spec, tree) for spec in snapshot.all_specs)


def with_drinks(rows: Sequence[SpecRow], drinks: Sequence[Drink]) -> tuple[SpecRow, ...]:
    """The rows with tonight's verdicts; a spec that has changed since gets none."""
    found = {drink.spec.name: drink for drink in drinks}
    return tuple(replace(row, drink=_of(row.spec, found.get(row.spec.name))) for row in rows)


def spec_columns() -> tuple[Column[SpecRow], ...]:
    """Spec, tonight, base, technique, glass, and whose it is."""
    return (
        Column(
            "Spec",
            lambda row: row.spec.name,
            roles={SUBTITLE_ROLE: lambda row: row.in_brief},
            tooltip=lambda row: f"{row.spec.name}\n{row.in_brief}",
        ),
        Column(
            "Tonight",
            lambda row: VERDICT_WORDS[row.drink.verdict].name if row.drink else NOT_ASKED_YET,
            key=_best_first,
            roles={VERDICT_ROLE: lambda row: row.drink.verdict if row.drink else None},
            tooltip=lambda row: VERDICT_WORDS[row.drink.verdict].meaning if row.drink else "",
        ),
        Column("Base", lambda row: row.base_name),
        Column("Technique", lambda row: technique_in_words(row.spec)),
        Column("Glass", lambda row: row.spec.glass),
        Column("Origin", lambda row: origin(row.spec)),
    )


def technique_in_words(spec: Spec) -> str:
    """How it is mixed; empty where the spec does not say."""
    return "" if spec.technique == "unknown" else spec.technique.capitalize()


def origin(spec: Spec) -> str:
    """Whose the spec is, in a word."""
    if spec.classic:
        return "Classic"
    return "Riff" if spec.riff_of else "Own"


def _row(spec: Spec, tree: FamilyTree) -> SpecRow:
    key = base(spec, tree)
    return SpecRow(
        spec,
        ingredients_in_brief(spec, tree),
        named_by(spec.lines, tree).name(key) if key else "",
        base_kind(key, tree) if key else None,
    )


def _of(spec: Spec, drink: Drink | None) -> Drink | None:
    return drink if drink is not None and drink.spec == spec else None


def _best_first(row: SpecRow) -> tuple[int, int, str]:
    if row.drink is None:
        return (len(VERDICTS), 0, row.spec.name.casefold())
    rank = VERDICTS.index(row.drink.verdict)
    return (rank, row.drink.lacking, row.spec.name.casefold())
