"""Pairs of purchases that turn much together and little apart."""

from __future__ import annotations

from collections.abc import Hashable, Iterator, Sequence
from functools import partial

from PySide6.QtWidgets import QWidget

from barkeep.application.shopping import to_buy_of
from barkeep.desktop.buying.listing import ADD, ADD_KEYS, ListingScreen
from barkeep.desktop.screens.list_stack import set_widths
from barkeep.desktop.screens.row_table import Column
from barkeep.desktop.screens.screen import ScreenContext
from barkeep.desktop.screens.table_screen import TableScreen, on_activated, sort_by
from barkeep.desktop.widgets.chips import CLOSENESS, FilterChips
from barkeep.desktop.widgets.details import DetailRow, DetailSection
from barkeep.desktop.widgets.empty_state import EmptyState
from barkeep.desktop.widgets.labels import Link
from barkeep.domain.bar.changes import Changes
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.buying.pairs import Pair
from barkeep.domain.buying.plan_words import purchase_in_words
from barkeep.domain.buying.reliance_words import pair_in_words
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import as_sentence, capitalised, price_in_words
from barkeep.domain.pouring.memory import Memory
from barkeep.domain.pouring.sourcing import Within
from barkeep.errors import spoken_list
from barkeep.translation import tr, tr_noop


def found_pairs(snapshot: Snapshot, within: Within, memory: Memory) -> tuple[Pair, ...]:
    """Every pair, most gain first."""
    from barkeep.domain.buying.pairs import pairs  # numpy loads slowly

    return pairs(snapshot, within, memory)


def pair_columns(tree: FamilyTree, currency: str) -> tuple[Column[Pair], ...]:
    """Both purchases, what they turn together alone, what each turns apart, and their price."""
    return (
        Column(tr("Bought together"), lambda row: names_of(row, tree)),
        Column(
            tr("Only together"),
            lambda row: str(len(row.together)),
            key=lambda row: (row.gain, len(row.together)),
            right=True,
        ),
        Column(
            tr("Apart"),
            lambda row: spoken_list([str(len(each)) for each in row.apart], "and"),
            key=lambda row: sum(map(len, row.apart)),
            right=True,
        ),
        Column(
            tr("Price"),
            lambda row: price_of(row, currency),
            key=lambda row: (None in _prices(row), sum(each or 0.0 for each in _prices(row))),
            right=True,
        ),
        Column(tr("Drinks"), lambda row: ", ".join(row.together)),
    )


def names_of(pair: Pair, tree: FamilyTree) -> str:
    """*Milk and vanilla extract*."""
    names = [tree.in_sentence(each.ingredient) for each in pair.bought]
    return capitalised(spoken_list(names, "and"))


def price_of(pair: Pair, currency: str) -> str:
    """What both cost; not known where one of them is not."""
    prices = _prices(pair)
    known = [each for each in prices if each is not None]
    whole = sum(known) if len(known) == len(prices) else None
    return price_in_words(whole, currency, tr("not known"))


def _prices(pair: Pair) -> Sequence[float | None]:
    return [each.price for each in pair.bought]


class PairsScreen(ListingScreen, TableScreen[Pair]):
    """One row a pair, most gained by buying both first."""

    key = "pairs"
    title = tr_noop("Buying")
    noun = tr_noop("pairs")
    search_hint = tr_noop("Search purchases and drinks…")

    def __init__(self, context: ScreenContext, parent: QWidget | None = None) -> None:
        snapshot = context.bar.snapshot
        self._tree, self._currency = snapshot.knowledge.tree, snapshot.settings.currency
        self._memory = Memory()
        empty = EmptyState(
            "picture-empty-shelf",
            tr("No pairs"),
            tr("Two purchases that open a drink only together are listed here, and there are none"),
            leads=(tr("Look at "), Link(tr("one bottle at a time"), "next-bottle"), "."),
        )
        super().__init__(context, pair_columns(self._tree, self._currency), empty, parent)
        self.closeness = FilterChips(tr("Stand-ins"), CLOSENESS, "close")
        self.closeness.chosen.connect(lambda _choice: self.refresh(frozenset()))
        self.add_filter(self.closeness)
        self.add_parts()
        set_widths(self.view, (170, 116, 70, 84))
        sort_by(self.view, 1, descending=True)
        on_activated(self.view, self.add_current)
        self.list_actions([(ADD, ADD_KEYS, "price", self.add_current, True)])

    def refresh(self, changes: Changes) -> None:
        snapshot = self.context.bar.snapshot
        if self._tree is not snapshot.knowledge.tree:  # there are others, or other names for them
            self._tree = snapshot.knowledge.tree
            self.table.columns = pair_columns(self._tree, self._currency)
        within: Within = self.closeness.choice  # type: ignore[assignment]
        question = partial(found_pairs, snapshot, within, self._memory)
        self.ask(question, self._show_answer, tr("Putting purchases together…"))

    def add_current(self) -> None:
        """Put both purchases of the chosen pair on the shopping list."""
        if self.current is not None:
            snapshot = self.context.bar.snapshot
            self.put_on_list([to_buy_of(each, snapshot) for each in self.current.bought])

    def identity(self, row: Pair) -> Hashable:
        return tuple(each.ingredient for each in row.bought)

    def words(self, row: Pair) -> str:
        return " ".join((names_of(row, self._tree), *row.together))

    def show_row(self, row: Pair | None) -> None:
        if row is None:
            self.detail.clear()
            return
        sections = [
            DetailSection(tr("Why"), (DetailRow(as_sentence(pair_in_words(row, self._tree))),)),
            DetailSection(tr("To buy"), tuple(self._packages(row))),
            DetailSection(
                tr("Only together ({number})", number=len(row.together)),
                tuple(_turned(row.together)),
            ),
        ]
        for bought, alone in zip(row.bought, row.apart, strict=True):
            if alone:
                heading = tr(
                    "{name} alone ({number})",
                    name=self._tree.name(bought.ingredient),
                    number=len(alone),
                )
                sections.append(DetailSection(heading, tuple(_turned(alone))))
        price = price_of(row, self._currency)
        self.detail.show_details(
            names_of(row, self._tree),
            tr("price {price}", price=price),
            sections,
            acts=self.listing_acts(),
        )

    def likely_on_paper(self) -> tuple[str, str]:
        bought = () if self.current is None else self.current.bought
        return "; ".join(self._tree.name(each.ingredient) for each in bought), ""

    def _packages(self, row: Pair) -> Iterator[DetailRow]:
        for each in row.bought:
            said = purchase_in_words(each, self._currency, self._tree)
            yield DetailRow(self._tree.name(each.ingredient), note=said)

    def _show_answer(self, found: tuple[Pair, ...]) -> None:
        self.show_rows(found)
        if found:
            count = len(found)
            self.summary.setText(
                tr("{count} pair turns a drink that neither purchase turns alone", count=count)
                if count == 1
                else tr("{count} pairs turn drinks that neither purchase turns alone", count=count)
            )
        else:
            self.summary.setText("")


def _turned(names: Sequence[str]) -> Iterator[DetailRow]:
    for name in names:
        yield DetailRow(name, picture="verdict-ready", tone="ready")
