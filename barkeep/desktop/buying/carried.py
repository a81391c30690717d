"""What each bottle carries: the drinks that would be lost without it, and what it costs a pour."""

from __future__ import annotations

from collections.abc import Hashable, Iterator, Sequence
from functools import partial

from PySide6.QtWidgets import QCheckBox, QWidget

from barkeep.desktop.buying.listing import ADD, ADD_KEYS, ListingScreen
from barkeep.desktop.screens.list_stack import set_widths
from barkeep.desktop.screens.row_table import Column
from barkeep.desktop.screens.screen import ScreenContext
from barkeep.desktop.screens.table_screen import TableScreen, on_activated, sort_by
from barkeep.desktop.widgets.charts import BarsChart, Mark
from barkeep.desktop.widgets.chips import CLOSENESS, FilterChips
from barkeep.desktop.widgets.delegates import SUBTITLE_ROLE
from barkeep.desktop.widgets.details import DetailRow, DetailSection
from barkeep.desktop.widgets.empty_state import TO_BOTTLES, EmptyState
from barkeep.desktop.widgets.labels import text_label
from barkeep.desktop.widgets.offered import Offered
from barkeep.domain.bar.changes import Changes
from barkeep.domain.bar.to_buy import ToBuy
from barkeep.domain.buying.reliance import Carried, Reliance, reliance
from barkeep.domain.buying.reliance_words import carried_in_words, reliance_in_words
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import counted, price_in_words
from barkeep.domain.pouring.memory import Memory
from barkeep.domain.pouring.sourcing import Within
from barkeep.domain.pouring.words import plain_amount
from barkeep.translation import tr, tr_about, tr_noop

NO_PRICE, NOT_POURED = tr_noop("not known"), "–"


def carried_columns(tree: FamilyTree, currency: str) -> tuple[Column[Carried], ...]:
    """The bottle, how many drinks are lost, worse and poured from it, a pour, and serves left."""
    return (
        Column(
            tr("Bottle"),
            lambda row: row.bottle.product.title,
            roles={SUBTITLE_ROLE: lambda row: kind_line(row, tree)},
            tooltip=lambda row: kind_line(row, tree),
        ),
        Column(
            tr("Lost"),
            lambda row: str(len(row.lost)),
            key=lambda row: (len(row.lost), len(row.worse), len(row.poured_for)),
            right=True,
        ),
        Column(
            tr("Worse"), lambda row: str(len(row.worse)), key=lambda row: len(row.worse), right=True
        ),
        Column(
            tr_about("for so many drinks", "Poured"),
            lambda row: str(len(row.poured_for)),
            key=lambda row: len(row.poured_for),
            right=True,
        ),
        Column(
            tr("A pour"),
            lambda row: cost_of_pour(row, currency),
            key=lambda row: (row.cost is None, row.cost or 0.0),
            right=True,
        ),
        Column(
            tr("Serves"),
            lambda row: NOT_POURED if row.serves_left is None else str(row.serves_left),
            key=lambda row: (row.serves_left is None, row.serves_left or 0),
            right=True,
        ),
    )


def kind_line(row: Carried, tree: FamilyTree) -> str:
    """The kind of a bottle, that it is low, and that it carries nothing."""
    said = [tree.in_sentence(row.bottle.ingredient)]
    said += [tr("low")] if row.bottle.is_low else []
    said += [tr("carries nothing")] if row.carries_nothing else []
    return " · ".join(said)


def cost_of_pour(row: Carried, currency: str) -> str:
    """What a usual pour of it costs; unknown is never nothing."""
    if row.pour is None:
        return NOT_POURED
    return price_in_words(row.cost, currency, tr(NO_PRICE))


class CarriedScreen(ListingScreen, TableScreen[Carried]):
    """One row a bottle, what carries most first; the picture shows all of them at once."""

    key = "carried"
    title = tr_noop("Buying")
    noun = tr_noop("bottles")
    search_hint = tr_noop("Search bottles and drinks…")

    def __init__(self, context: ScreenContext, parent: QWidget | None = None) -> None:
        snapshot = context.bar.snapshot
        self._tree, self._currency = snapshot.knowledge.tree, snapshot.settings.currency
        self._memory = Memory()
        self._found: Reliance | None = None
        empty = EmptyState(
            "picture-empty-shelf",
            tr("No bottles yet"),
            tr("What would be lost without each is shown here"),
            leads=TO_BOTTLES,
        )
        super().__init__(context, carried_columns(self._tree, self._currency), empty, parent)
        self.closeness = FilterChips(tr("Stand-ins"), CLOSENESS, "close")
        self.low_only = QCheckBox(tr("Only low ones"))
        self.idle_only = QCheckBox(tr("Only what carries nothing"))
        self.said = text_label("", quiet=True, wrap=True)
        self.chart = BarsChart(
            tr("What each bottle carries"),
            tr("bottles, what carries most first"),
            tr("drinks lost without it, hollow: made worse; ▼ low"),
        )
        self._prepare_page()

    # What the user does

    def refresh(self, changes: Changes) -> None:
        snapshot = self.context.bar.snapshot
        if self._tree is not snapshot.knowledge.tree:  # there are others, or other names for them
            self._tree = snapshot.knowledge.tree
            self.table.columns = carried_columns(self._tree, self._currency)
        within: Within = self.closeness.choice  # type: ignore[assignment]
        question = partial(reliance, snapshot, within, self._memory)
        self.ask(question, self._show_answer, tr("Emptying each bottle on paper…"))

    def add_current(self) -> None:
        """Put another bottle like the chosen one on the shopping list."""
        row = self.current
        if row is not None:
            self.put_on_list([ToBuy(row.bottle.ingredient, 1)])

    # What it shows

    def identity(self, row: Carried) -> Hashable:
        return row.bottle.id

    def words(self, row: Carried) -> str:
        bottle = row.bottle
        kinds = (bottle.ingredient, *self._tree.ancestors(bottle.ingredient))
        return " ".join((bottle.product.title, *map(self._tree.name, kinds), *row.poured_for))

    def accepts(self, row: Carried) -> bool:
        if self.low_only.isChecked() and not row.bottle.is_low:
            return False
        return not self.idle_only.isChecked() or row.carries_nothing

    def clear_filters(self) -> None:
        self.low_only.setChecked(False)
        self.idle_only.setChecked(False)
        super().clear_filters()

    def show_row(self, row: Carried | None) -> None:
        carried = () if self._found is None else self._found.carried
        self.chart.choose(carried.index(row) if row in carried else None)
        if row is None:
            self.detail.clear()
            return
        bottle = row.bottle
        sections = [DetailSection(tr("What it carries"), tuple(self._facts(row)))]
        for heading, names, picture, tone in (
            (tr("Lost without it"), row.lost, "verdict-short", "short"),
            (tr("Then with a stand-in"), row.worse, "verdict-stand-in", "stand_in"),
            (tr("Poured for"), row.poured_for, "verdict-ready", "ready"),
        ):
            if names:
                listed = tuple(_listed(names, picture, tone))
                sections.append(DetailSection(f"{heading} ({len(names)})", listed))
        self.detail.show_details(
            bottle.product.title,
            kind_line(row, self._tree),
            sections,
            acts=self.listing_acts(Offered(tr("Show the bottle"), self._show_bottle, writes=False)),
        )

    def likely_on_paper(self) -> tuple[str, str]:
        return "", "" if self.current is None else f"#{self.current.bottle.id}"

    def _facts(self, row: Carried) -> Iterator[DetailRow]:
        unit = row.bottle.product.unit
        yield DetailRow(plain_amount(row.bottle.level.amount, unit), label=tr("Left"))
        if row.pour is None:
            yield DetailRow(tr("no drink that can be made"), label=tr("Poured for"))
            return
        yield DetailRow(plain_amount(round(row.pour, 1), unit), label=tr("A usual pour"))
        yield DetailRow(cost_of_pour(row, self._currency), label=tr("It costs"))
        yield DetailRow(str(row.serves_left), label=tr("Serves left"))

    def _show_answer(self, found: Reliance) -> None:
        self._found = found
        self.show_rows(found.carried)
        self.summary.setText(tr("{drinks} can be made", drinks=counted(found.makeable, "drink")))
        self.said.setText(summed_up(found))
        self._show_chart(found.carried)
        self.show_row(self.current)

    def _show_chart(self, carried: Sequence[Carried]) -> None:
        marks = [
            Mark(
                len(each.lost),
                in_words(each, self._currency),
                more=len(each.worse),
                tone="danger" if each.bottle.is_low else "accent",
                marked=each.bottle.is_low,
            )
            for each in carried
        ]
        self.chart.show_marks(marks, " ".join(each.words for each in marks))
        self.chart.choose(None if self.current is None else carried.index(self.current))

    def _show_bottle(self) -> None:
        if self.current is not None:
            self.context.go("bottles", self.current.bottle.id)

    def _prepare_page(self) -> None:
        self.closeness.chosen.connect(lambda _choice: self.refresh(frozenset()))
        self.add_filter(self.closeness)
        for each in (self.low_only, self.idle_only):
            each.toggled.connect(lambda _on: self.filter_again())
            self.add_filter(each)
        self.add_filter_row(self.said)
        self.add_parts()
        set_widths(self.view, (150, 56, 66, 72, 84))
        sort_by(self.view, 1, descending=True)
        self.put_below(self.chart)
        on_activated(self.view, self._show_bottle)
        self.list_actions([(ADD, ADD_KEYS, "price", self.add_current, True)])


def in_words(row: Carried, currency: str) -> str:
    """All of one bar: what is lost without a bottle, and what a pour of it is and costs."""
    low = tr("; it is low") if row.bottle.is_low else ""
    return f"{row.bottle.product.title}: {carried_in_words(row, currency)}{low}."


def summed_up(found: Reliance) -> str:
    """What is low and matters most, and how many carry nothing."""
    said = [each for each in reliance_in_words(found) if found.low or not found.carried][:1]
    if found.nothing:
        count = len(found.nothing)
        said.append(
            tr("{count} bottle carries nothing that can be made.", count=count)
            if count == 1
            else tr("{count} bottles carry nothing that can be made.", count=count)
        )
    return " ".join(said)


A_ROW_EACH = 40


def _listed(names: Sequence[str], picture: str, tone: str) -> Iterator[DetailRow]:
    shown = names if len(names) <= A_ROW_EACH else [", ".join(names)]
    for each in shown:
        yield DetailRow(each, picture=picture, tone=tone)
