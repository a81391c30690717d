"""Next bottle: what each purchase would turn ready, and why."""

from __future__ import annotations

from collections import Counter
from collections.abc import Hashable, Iterator, Sequence
from functools import partial

from PySide6.QtWidgets import QCheckBox, QWidget

from barkeep.application.shopping import to_buy_of
from barkeep.desktop.buying.listing import ADD, ADD_KEYS, ListingScreen
from barkeep.desktop.screens.list_stack import set_widths
from barkeep.desktop.screens.row_table import Column
from barkeep.desktop.screens.screen import ScreenContext
from barkeep.desktop.screens.table_screen import TableScreen, on_activated, sort_by
from barkeep.desktop.widgets.chips import CLOSENESS, FilterChips
from barkeep.desktop.widgets.delegates import SUBTITLE_ROLE
from barkeep.desktop.widgets.details import DetailRow, DetailSection
from barkeep.desktop.widgets.empty_state import EmptyState
from barkeep.desktop.widgets.labels import Link
from barkeep.desktop.widgets.offered import Offered
from barkeep.domain.bar.changes import Changes
from barkeep.domain.buying.next_bottle import next_bottle, unweighed
from barkeep.domain.buying.packages import purchase_of
from barkeep.domain.buying.purchases import Candidate, Form, make_of
from barkeep.domain.buying.shops import SHOP_COUNTS, SHOP_NAMES, SHOPS
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import price_in_words
from barkeep.domain.pouring.memory import Memory
from barkeep.errors import spoken_list
from barkeep.translation import tr, tr_noop


def candidate_columns(tree: FamilyTree, currency: str) -> tuple[Column[Candidate], ...]:
    """Ingredient, how many drinks it turns ready, brings near, its price, and which drinks."""
    return (
        Column(
            tr("Ingredient"),
            lambda each: tree.name(each.ingredient),
            roles={SUBTITLE_ROLE: lambda each: form_line(each, tree)},
            tooltip=lambda each: family_line(each, tree),
        ),
        Column(
            tr("Turns ready"),
            lambda each: str(len(each.unlocks)),
            key=lambda each: (-SHOPS.index(each.shop), len(each.unlocks), len(each.nearest)),
            right=True,
        ),
        Column(
            tr("Brings near"),
            lambda each: str(len(each.nearest)),
            key=lambda each: len(each.nearest),
            right=True,
        ),
        Column(
            tr("Price"),
            lambda each: price_in_words(each.price, currency, tr(NO_PRICE)),
            key=lambda each: (each.price is None, each.price or 0.0),
            right=True,
        ),
        Column(
            tr("Drinks"),
            lambda each: ", ".join(each.unlocks),
            tooltip=lambda each: each.why,
        ),
    )


def form_line(candidate: Candidate, tree: FamilyTree) -> str:
    """Where it is bought, and what else is the same purchase; of one without forms, its family."""
    others = [tree.in_sentence(each.ingredient) for each in candidate.forms[1:]]
    if not others or candidate.owned:
        return family_line(candidate, tree)
    shop = tr(SHOP_NAMES[candidate.shop])
    return tr("{shop} · or {others}", shop=shop, others=spoken_list(others))


def family_line(candidate: Candidate, tree: FamilyTree) -> str:
    """Where it is bought and the kinds right above it; for what is there but too low, that."""
    shop = tr(SHOP_NAMES[candidate.shop])
    if candidate.owned:
        return tr("{shop} · in the bar, but too little is left", shop=shop)
    return " · ".join(
        [shop, *(tree.in_sentence(parent) for parent in tree[candidate.ingredient].parents)]
    )


NO_PRICE = tr_noop("not known")
IN_BRIEF = 3
"""So many names stand for all where they are folded."""


class NextBottleScreen(ListingScreen, TableScreen[Candidate]):
    """One row a purchase, bottles before what the market sells, most drinks first."""

    key = "next-bottle"
    title = tr_noop("Buying")
    noun = tr_noop("purchases")
    search_hint = tr_noop("Search ingredients and drinks…")

    def __init__(self, context: ScreenContext, parent: QWidget | None = None) -> None:
        snapshot = context.bar.snapshot
        self._tree = snapshot.knowledge.tree
        self._memory = Memory()
        self._currency = snapshot.settings.currency
        empty = EmptyState(
            "picture-empty-shelf",
            tr("Nothing to buy"),
            tr(
                "What one more bottle would open is listed here, and all that is asked for is there"
            ),
            leads=(tr("See "), Link(tr("what you can make"), "tonight"), "."),
        )
        columns = candidate_columns(self._tree, self._currency)
        super().__init__(context, columns, empty, parent)
        self.closeness = FilterChips(tr("Stand-ins"), CLOSENESS, "close")
        self.closeness.chosen.connect(lambda _choice: self.refresh(frozenset()))
        self.useful_only = QCheckBox(tr("Only what turns a drink ready"))
        self.useful_only.setChecked(True)
        self.useful_only.toggled.connect(lambda _on: self.filter_again())
        self.bottles_only = QCheckBox(tr("Only bottles"))
        self.bottles_only.setToolTip(tr("Leave out what the market sells: fruit, dairy, dry goods"))
        self.bottles_only.toggled.connect(lambda _on: self.filter_again())
        for each in (self.closeness, self.useful_only, self.bottles_only):
            self.add_filter(each)
        self.add_parts()
        self.list_actions([(ADD, ADD_KEYS, "price", self.add_current, True)])
        set_widths(self.view, (176, 106, 106, 92))
        sort_by(self.view, 1, descending=True)
        on_activated(self.view, self._ask_for_stand_ins)

    def refresh(self, changes: Changes) -> None:
        snapshot = self.context.bar.snapshot
        if self._tree is not snapshot.knowledge.tree:  # there are others, or other names for them
            self._tree = snapshot.knowledge.tree
            self.table.columns = candidate_columns(self._tree, self._currency)
        within = self.closeness.choice
        question = partial(next_bottle, snapshot, within, self._memory)  # type: ignore[arg-type]
        self.ask(question, self._show_answer, tr("Weighing purchases…"))

    def identity(self, row: Candidate) -> Hashable:
        return row.ingredient

    def words(self, row: Candidate) -> str:
        forms = [each.ingredient for each in row.forms]
        kinds = dict.fromkeys(kind for key in forms for kind in (key, *self._tree.ancestors(key)))
        drinks = dict.fromkeys(drink for each in row.forms for drink in each.unlocks)
        return " ".join((*map(self._tree.name, kinds), *drinks))

    def accepts(self, row: Candidate) -> bool:
        if self.useful_only.isChecked() and not row.unlocks:
            return False
        return not self.bottles_only.isChecked() or row.shop == "bottle_shop"

    def clear_filters(self) -> None:
        self.useful_only.setChecked(False)
        self.bottles_only.setChecked(False)
        super().clear_filters()

    def show_row(self, row: Candidate | None) -> None:
        if row is None:
            self.detail.clear()
            return
        sections = [DetailSection(tr("Why"), (DetailRow(row.why),))]
        if len(row.forms) > 1:
            forms = tuple(map(self._form, row.forms))
            sections.append(DetailSection(tr("One purchase, in any of these forms"), forms))
        if row.unlocks:
            turned = tuple(_turned(row.unlocks, frozenset(row.exactly)))
            sections.append(
                DetailSection(tr("Turns ready ({number})", number=len(row.unlocks)), turned)
            )
        if row.nearest:
            near = tuple(
                DetailRow(names, picture="verdict-one-short", tone="one_short")
                for names in _listed(row.nearest)
            )
            heading = tr("Then one short ({number})", number=len(row.nearest))
            brief = ", ".join(row.nearest[:IN_BRIEF])
            sections.append(DetailSection(heading, near, fold="nearest", brief=brief))
        asked = tuple(
            DetailRow(each, picture="warning", tone="warning")
            for each in unweighed(self.context.bar.snapshot)
        )
        if asked:
            sections.append(DetailSection(tr("Not counted"), asked))
        price = price_in_words(row.price, self._currency, tr(NO_PRICE))
        self.detail.show_details(
            self._tree.name(row.ingredient),
            tr("{family} · price {price}", family=family_line(row, self._tree), price=price),
            sections,
            acts=self.listing_acts(
                Offered(tr("What stands in?"), self._ask_for_stand_ins, writes=False)
            ),
        )

    def add_current(self) -> None:
        """Put the chosen purchase on the shopping list."""
        if self.current is not None:
            snapshot, row = self.context.bar.snapshot, self.current
            bought = purchase_of(row.ingredient, snapshot)
            self.put_on_list([to_buy_of(bought, snapshot)])

    def likely_on_paper(self) -> tuple[str, str]:
        return "" if self.current is None else self._tree.name(self.current.ingredient), ""

    def _form(self, form: Form) -> DetailRow:
        price = price_in_words(form.price, self._currency, tr(NO_PRICE))
        turns = tr("turns {number} ready", number=len(form.unlocks)) if form.unlocks else ""
        said = " · ".join(
            filter(None, (turns, tr("price {price}", price=price), make_of(form, self._tree)))
        )
        return DetailRow(self._tree.name(form.ingredient), note=said)

    def _show_answer(self, candidates: tuple[Candidate, ...]) -> None:
        self.show_rows(candidates)
        found = Counter(each.shop for each in candidates if each.unlocks)
        where = [tr(SHOP_COUNTS[shop], count=found[shop]) for shop in SHOPS if found[shop]]
        said = (
            tr("{purchases} would each turn a drink ready", purchases=spoken_list(where, "and"))
            if where
            else tr("No purchase would each turn a drink ready")
        )
        asked = [spec.name for spec in self.context.bar.snapshot.all_specs if spec.unsettled]
        if asked:
            said += tr("; not counted until understood: {asked}", asked=spoken_list(asked, "and"))
        self.summary.setText(said)

    def _ask_for_stand_ins(self) -> None:
        if self.current is not None:
            self.context.go("stand-ins", self.current.ingredient)


A_ROW_EACH = 40
"""Drinks; of more there are no rows of their own, which would take long to lay out."""


def _listed(names: Sequence[str]) -> Sequence[str]:
    """Names one by one, or all of them in one sentence where they are many."""
    return names if len(names) <= A_ROW_EACH else [", ".join(names)]


def _turned(names: Sequence[str], exactly: frozenset[str]) -> Iterator[DetailRow]:
    """The drinks that a purchase turns ready; of many, those without a stand-in first."""
    if len(names) <= A_ROW_EACH:
        groups = [[name] for name in names]
    else:
        groups = [[each for each in names if (each in exactly) is way] for way in (True, False)]
    for group in filter(None, groups):
        if group[0] in exactly:
            yield DetailRow(", ".join(group), picture="verdict-ready", tone="ready")
        else:
            yield DetailRow(
                ", ".join(group),
                note=tr("with a stand-in"),
                picture="verdict-stand-in",
                tone="stand_in",
            )
