"""Stand-ins: what may be poured instead, how close it is, and what never may."""

from __future__ import annotations

from collections.abc import Hashable, Iterable
from functools import partial

from PySide6.QtWidgets import QCheckBox, QComboBox, QWidget

from barkeep.desktop.models.ingredient_rows import (
    IngredientRow,
    ingredient_columns,
    ingredient_rows,
)
from barkeep.desktop.screens.context import ScreenContext
from barkeep.desktop.screens.table_screen import TableScreen, sort_by
from barkeep.desktop.widgets.detail_panel import DetailRow, DetailSection
from barkeep.desktop.widgets.empty_state import EmptyState
from barkeep.domain.answers.stand_ins import FalseFriend, Offer, StandIns, stand_in
from barkeep.domain.specs import Spec

LIST, DETAIL = 2, 3
"""How list and details share the width: the answer needs more room than the names."""


class StandInsScreen(TableScreen[IngredientRow]):
    """Choose an ingredient, and the drink it is for; the details are the answer."""

    key = "stand-ins"
    title = "Stand-ins"
    noun = "ingredients"
    search_hint = "Search ingredients and other names for them…"

    def __init__(self, context: ScreenContext, parent: QWidget | None = None) -> None:
        self._tree = context.bar.snapshot.knowledge.tree
        empty = EmptyState("picture-empty-shelf", "No ingredients", "Nothing is known yet")
        super().__init__(context, ingredient_columns(), empty, parent)
        self.missing_only = QCheckBox("Only what is not in the bar")
        self.missing_only.toggled.connect(lambda _on: self.filter_again())
        self.drinks = QComboBox()
        self.drinks.setAccessibleName("For which drink")
        self.drinks.setMinimumContentsLength(18)
        self.drinks.setSizeAdjustPolicy(
            QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon
        )
        self.drinks.currentIndexChanged.connect(lambda _index: self._ask())
        self.add_filter(self.missing_only)
        self.add_filter(self.drinks)
        self.splitter.setStretchFactor(0, LIST)
        self.splitter.setStretchFactor(1, DETAIL)
        self.splitter.setSizes([420, 560])
        self.view.setColumnWidth(0, 260)
        sort_by(self.view, 0)

    def refresh(self, changes: frozenset[str]) -> None:
        snapshot = self.context.bar.snapshot
        self._tree = snapshot.knowledge.tree
        self.show_rows(ingredient_rows(snapshot))
        there = sum(row.amount != 0.0 for row in self.table.rows)
        self.summary.setText(f"{there} of {len(self.table.rows)} known ingredients are in the bar")

    def identity(self, row: IngredientRow) -> Hashable:
        return row.key

    def words(self, row: IngredientRow) -> str:
        return row.search

    def accepts(self, row: IngredientRow) -> bool:
        return not self.missing_only.isChecked() or row.amount == 0.0

    def clear_filters(self) -> None:
        self.missing_only.setChecked(False)
        super().clear_filters()

    def show_row(self, row: IngredientRow | None) -> None:
        if row is None:
            self.context.background.forget(self.key)
            self.detail.clear()
            return
        self._offer_drinks(row.key)
        self._ask()

    def _offer_drinks(self, key: str) -> None:
        """The drinks with a line that asks for it; the choice stays where it still stands."""
        kept = self.drinks.currentText()
        self.drinks.blockSignals(True)
        self.drinks.clear()
        self.drinks.addItem("For any drink", None)
        for spec in self.context.bar.snapshot.all_specs:
            if any(line.ingredient == key for line in spec.lines):
                self.drinks.addItem(f"For {spec.name}", spec.name)
        self.drinks.setCurrentIndex(max(0, self.drinks.findText(kept)))
        self.drinks.setEnabled(self.drinks.count() > 1)
        unused = self.drinks.count() == 1
        self.drinks.setToolTip("No spec has a line that asks for it" if unused else "")
        self.drinks.blockSignals(False)

    def _chosen_spec(self) -> Spec | None:
        name = self.drinks.currentData()
        specs = self.context.bar.snapshot.all_specs
        return next((spec for spec in specs if spec.name == name), None)

    def _ask(self) -> None:
        row = self.current
        if row is None:
            return
        snapshot = self.context.bar.snapshot
        question = partial(stand_in, snapshot, row.key, self._chosen_spec())
        self.context.background.ask(self.key, question, self._show_answer)

    def _show_answer(self, answer: StandIns) -> None:
        row = self.current
        if row is None or row.key != answer.wanted:
            return
        owned = [each for each in answer.stand_ins if each.owned]
        others = [each for each in answer.stand_ins if not each.owned]
        sections = list(self._sections(answer, owned, others))
        there = row.there if row.amount != 0.0 else "not in the bar"
        self.detail.show_details(row.name, f"{row.family} · {there}".strip(" ·"), sections)

    def _sections(
        self, answer: StandIns, owned: list[Offer], others: list[Offer]
    ) -> Iterable[DetailSection]:
        if answer.none_because:
            said = f"Nothing stands in for it: {answer.none_because}."
            yield DetailSection(
                "Nothing stands in", (DetailRow(said, picture="verdict-short", tone="short"),)
            )
        if owned:
            yield DetailSection("Pour instead, from the bar", tuple(map(self._offer, owned)))
        if others:
            yield DetailSection("Would stand in, once bought", tuple(map(self._offer, others)))
        if answer.confusables:
            rows = tuple(map(self._false_friend, answer.confusables))
            yield DetailSection("Not the same, never pour it instead", rows)

    def _offer(self, offer: Offer) -> DetailRow:
        name = self._tree.name(offer.ingredient)
        if offer.bottle is not None:
            name = f"{name}: {offer.bottle.product.title}"
        lacking = ", ".join(
            self._tree.name(key) for key in offer.missing if key != offer.ingredient
        )
        notes = [offer.why]
        if offer.corrections:
            notes.append("; ".join(offer.corrections).capitalize() + ".")
        if lacking:
            notes.append(f"To be bought: {lacking}.")
        exact = offer.closeness >= 1.0 - 1e-9
        return DetailRow(
            name,
            label=_closeness_in_words(offer.closeness),
            note=f"{_closeness_in_words(offer.closeness)}. {' '.join(notes)}",
            picture="verdict-ready" if exact else "verdict-stand-in",
            tone="ready" if exact else "stand_in",
        )

    def _false_friend(self, friend: FalseFriend) -> DetailRow:
        why = friend.why[:1].upper() + friend.why[1:]
        return DetailRow(
            self._tree.name(friend.ingredient), note=why, picture="warning", tone="warning"
        )


def _closeness_in_words(closeness: float) -> str:
    """Its word and figure: exact, close from 0.8, loose from 0.6, far below that."""
    if closeness >= 1.0 - 1e-9:
        return "Exact"
    word = "Close" if closeness >= 0.8 else "Loose" if closeness >= 0.6 else "Far"
    return f"{word}, {closeness:.2f}"
