"""A plan of what to buy: so many bottles, or for so much money, and what each step opens."""

from __future__ import annotations

import math
from collections.abc import Hashable, Iterator, Mapping
from dataclasses import dataclass

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QComboBox, QLineEdit, QWidget

from barkeep.application.imports import Progress
from barkeep.application.shopping import listed_of, read_kind_price, read_money, to_buy_of
from barkeep.desktop.buying.listing import ADD, ADD_KEYS, ListingScreen
from barkeep.desktop.screens.list_stack import set_widths
from barkeep.desktop.screens.row_table import Column
from barkeep.desktop.screens.screen import ScreenContext
from barkeep.desktop.screens.stoppable import StoppableScreen
from barkeep.desktop.screens.table_screen import TableScreen, on_activated, sort_by
from barkeep.desktop.widgets.buttons import (
    button,
    number_field,
    offer,
    offer_choices,
    primary_button,
)
from barkeep.desktop.widgets.charts import Mark, StepsChart
from barkeep.desktop.widgets.chips import CLOSENESS, FilterChips, FlowLayout
from barkeep.desktop.widgets.delegates import SUBTITLE_ROLE
from barkeep.desktop.widgets.details import DetailRow, DetailSection
from barkeep.desktop.widgets.empty_state import EmptyState
from barkeep.desktop.widgets.fields import labelled
from barkeep.desktop.widgets.labels import Link, text_label
from barkeep.domain.bar.changes import EVERYTHING, Changes
from barkeep.domain.bar.shoots import Shoot
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.buying.limits import MOST_BOTTLES, SECONDS, Limits, checked_limits
from barkeep.domain.buying.plan import Plan, Step
from barkeep.domain.buying.plan_words import package_in_words, plan_in_words, purchase_in_words
from barkeep.domain.buying.shopping import still_to_film
from barkeep.domain.buying.shops import SHOP_NAMES
from barkeep.domain.buying.worths import worths_of
from barkeep.domain.days import day_of_year_short
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import counted, price_in_words
from barkeep.domain.pouring.memory import Memory
from barkeep.domain.pouring.sourcing import Within
from barkeep.errors import InvalidField, UserError, spoken_list
from barkeep.translation import tr, tr_noop

NO_PRICE = tr_noop("not known")
WORK_OUT, STOP = tr_noop("Work out the &plan"), tr_noop("Stop, and keep the best so &far")
FIRST_BOTTLES = 3
"""What is asked for until something else is."""


@dataclass(frozen=True, slots=True)
class Weighing:
    """Which drinks count, and how often; see `worths_of`."""

    times: tuple[tuple[str, float], ...] = ()
    by_score: bool = False
    shoot: int | None = None


@dataclass(frozen=True, slots=True)
class Asked:
    """What a plan is asked with."""

    limits: Limits
    within: Within
    weighing: Weighing
    prices: Mapping[str, float]


def found_plan(asked: Asked, snapshot: Snapshot, memory: Memory, tell: Progress) -> Plan:
    """The plan; `tell` hears what it opens so far and what nothing exceeds, and may stop it."""
    from barkeep.domain.buying.planning import buying_plan  # numpy loads slowly

    shoot = None if asked.weighing.shoot is None else snapshot.shoot_by_id.get(asked.weighing.shoot)
    worths = worths_of(
        snapshot, times=asked.weighing.times, by_score=asked.weighing.by_score, shoot=shoot
    )
    return buying_plan(
        snapshot,
        asked.limits,
        asked.within,
        worths=worths,
        prices=asked.prices,
        memory=memory,
        seconds=SECONDS,
        go_on=lambda worth, bound: tell(math.floor(worth), math.ceil(bound)),
    )


@dataclass(frozen=True, slots=True)
class PlanRow:
    """One step with its number."""

    number: int
    step: Step


def plan_columns(tree: FamilyTree, currency: str) -> tuple[Column[PlanRow], ...]:
    """The step, what is bought in which size, what it opens, what can be made then, its price."""
    return (
        Column(tr("Step"), lambda row: str(row.number), key=lambda row: row.number, right=True),
        Column(
            tr("To buy"),
            lambda row: tree.name(row.step.bought.ingredient),
            roles={SUBTITLE_ROLE: lambda row: size_line(row, tree)},
            tooltip=lambda row: size_line(row, tree),
        ),
        Column(
            tr("Opens"),
            lambda row: str(len(row.step.unlocks)),
            key=lambda row: len(row.step.unlocks),
            right=True,
        ),
        Column(
            tr("Makeable"),
            lambda row: str(row.step.makeable),
            key=lambda row: row.step.makeable,
            right=True,
        ),
        Column(
            tr("Price"),
            lambda row: price_in_words(row.step.bought.price, currency, tr(NO_PRICE)),
            key=lambda row: (row.step.bought.price is None, row.step.bought.price or 0.0),
            right=True,
        ),
    )


def size_line(row: PlanRow, tree: FamilyTree) -> str:
    """The package to take home, without its price."""
    return package_in_words(row.step.bought, tree)


class PlanScreen(StoppableScreen, ListingScreen, TableScreen[PlanRow]):
    """One row a step; the picture says where buying stops paying."""

    key = "buying-plan"
    title = tr_noop("Buying")
    noun = tr_noop("steps")
    only_looks = frozenset({WORK_OUT, STOP})
    stop_words = STOP
    search_hint = tr_noop("Search steps and drinks…")
    cares_about = EVERYTHING

    def __init__(self, context: ScreenContext, parent: QWidget | None = None) -> None:
        snapshot = context.bar.snapshot
        self._tree, self._currency = snapshot.knowledge.tree, snapshot.settings.currency
        self._memory = Memory()
        self._plan: Plan | None = None
        self._is_asked_for = False
        empty = EmptyState(
            "picture-empty-shelf",
            tr("Nothing to buy"),
            tr("Nothing within these limits opens a drink: allow more bottles, or more money"),
            leads=(tr("Or look at "), Link(tr("one bottle at a time"), "next-bottle"), "."),
        )
        super().__init__(context, plan_columns(self._tree, self._currency), empty, parent)
        self.prepare_to_stop()
        self.bottles = number_field(tr("Bottles at most"), 0, MOST_BOTTLES)
        self.budget, self.prices = QLineEdit(), QLineEdit()
        self.counted = QComboBox()
        self.closeness = FilterChips(tr("Stand-ins"), CLOSENESS, "close")
        self.go_button = primary_button(tr("&Work it out"), self.work_out_again)
        self.all_button = button(tr("Add the whole plan"), self.add_all, "price")
        self.said = text_label("", quiet=True, wrap=True)
        self.chart = StepsChart(
            tr("Bottles bought against drinks that can be made"),
            tr("bottles bought"),
            tr("drinks makeable"),
        )
        self._prepare_fields()
        self._prepare_page()

    # What the user does

    def refresh(self, changes: Changes) -> None:
        snapshot = self.context.bar.snapshot
        if self._tree is not snapshot.knowledge.tree:  # there are others, or other names for them
            self._tree = snapshot.knowledge.tree
            self.table.columns = plan_columns(self._tree, self._currency)
        offer_choices(self.counted, weighings(snapshot))
        self.work_out()

    def work_out(self) -> None:
        """Look for the best plan within what the fields say, in the background."""
        try:
            asked = self._asked()
        except UserError as error:
            self.show_refusal(error)
            return
        snapshot, memory = self.context.bar.snapshot, self._memory
        self.ask_long(
            lambda tell: found_plan(asked, snapshot, memory, tell),
            self._show_plan,
            tr("Looking for the best plan…"),
        )

    def work_out_again(self) -> None:
        """As the user asks for it, who is told where nothing comes of it."""
        self._is_asked_for = True
        self.work_out()

    def add_current(self) -> None:
        """Put what the chosen step buys on the shopping list."""
        if self.current is not None:
            self.put_on_list([to_buy_of(self.current.step.bought, self.context.bar.snapshot)])

    def add_all(self) -> None:
        """Put the whole plan on the shopping list."""
        if self._plan is not None:
            self.put_on_list(listed_of(self._plan, self.context.bar.snapshot))

    def focus_search(self) -> None:
        """There is little to search: go to what is asked with."""
        self.bottles.setFocus(Qt.FocusReason.ShortcutFocusReason)
        self.bottles.selectAll()

    # What it shows

    def identity(self, row: PlanRow) -> Hashable:
        return row.step.bought.ingredient

    def words(self, row: PlanRow) -> str:
        return " ".join((self._tree.name(row.step.bought.ingredient), *row.step.unlocks))

    def show_row(self, row: PlanRow | None) -> None:
        self.chart.choose(None if row is None else row.number)
        if row is None:
            self.detail.clear()
            return
        step = row.step
        bought = purchase_in_words(step.bought, self._currency, self._tree)
        opens = tuple(_opened(step)) or (
            DetailRow(tr("Nothing before the steps after it: they need it.")),
        )
        sections = [DetailSection(tr("Opens ({number})", number=len(step.unlocks)), opens)]
        if step.owned:
            sections.insert(0, DetailSection(tr("There already"), (DetailRow(tr(TOO_LITTLE)),)))
        self.detail.show_details(
            self._tree.name(step.bought.ingredient),
            f"{tr(SHOP_NAMES[step.shop])} · {bought}",
            sections,
            acts=self.listing_acts(),
        )

    def _show_plan(self, plan: Plan) -> None:
        if self._is_asked_for and plan == self._plan:
            self.context.toast.say(tr("It is the same plan as before"))
        self._plan, self._is_asked_for = plan, False
        self.show_rows([PlanRow(number, each) for number, each in enumerate(plan.steps, 1)])
        first, *others = plan_in_words(plan, self._tree)
        self.summary.setText(first)
        self.said.setText(" ".join(others))
        self._show_chart(plan)
        offer(self.all_button, "" if plan.steps else tr("There is nothing in the plan"))

    def _show_chart(self, plan: Plan) -> None:
        marks = [
            Mark(plan.before, tr("Now: {drinks} can be made", drinks=counted(plan.before, "drink")))
        ]
        for number, step in enumerate(plan.steps, 1):
            what = self._tree.in_sentence(step.bought.ingredient)
            opened = f": {spoken_list(step.unlocks, 'and')}" if step.unlocks else ""
            words = tr(
                "{number}. {what}: {more} more{opened}; {makeable} can be made",
                number=number,
                what=what,
                more=len(step.unlocks),
                opened=opened,
                makeable=step.makeable,
            )
            marks.append(Mark(step.makeable, words, f"+{len(step.unlocks)}"))
        self.chart.show_marks(marks, ". ".join(each.words for each in marks) + ".")
        self.chart.choose(None if self.current is None else self.current.number)

    def _on_moved(self, opens: int, bound: int) -> None:
        if bound:
            said = tr(
                "Looking for the best plan… so far it is worth {opens}, and none exceeds {bound}",
                opens=opens,
                bound=bound,
            )
            self.waiting.begin(self.key, said)

    def likely_on_paper(self) -> tuple[str, str]:
        steps = () if self._plan is None else self._plan.steps
        return "; ".join(self._tree.name(each.bought.ingredient) for each in steps), ""

    # What it is asked with

    def _asked(self) -> Asked:
        """What the fields say. Raises a `UserError`."""
        snapshot, text = self.context.bar.snapshot, self.budget.text().strip()
        budget = read_money(text, "budget", self._currency) if text else None
        prices = (each for each in self.prices.text().split(";") if each.strip())
        weighing = self.counted.currentData()
        return Asked(
            checked_limits(self.bottles.value() or None, budget),
            self.closeness.choice,  # type: ignore[arg-type]
            weighing if isinstance(weighing, Weighing) else Weighing(),
            dict(read_kind_price(each, snapshot) for each in prices),
        )

    def show_refusal(self, error: UserError) -> None:
        super().show_refusal(error)
        fields = {"bottles": self.bottles, "budget": self.budget, "price": self.prices}
        if isinstance(error, InvalidField) and error.field in fields:
            fields[error.field].setFocus()

    # How it is put together

    def _prepare_fields(self) -> None:
        self.bottles.setSpecialValueText(tr("any number"))
        self.bottles.setValue(FIRST_BOTTLES)
        self.budget.setPlaceholderText(tr("no limit, or 80 {currency}", currency=self._currency))
        self.prices.setPlaceholderText(tr("calvados = 30; absinthe = 45"))
        self.prices.setToolTip(tr("What a purchase costs, where the bar does not know or is wrong"))
        for field, name in ((self.budget, tr("Budget")), (self.prices, tr("Prices"))):
            field.setAccessibleName(name)
        for field in (self.budget, self.prices, self.bottles.lineEdit()):
            field.returnPressed.connect(self.work_out_again)
        self.counted.setAccessibleName(tr("Which drinks count"))
        self.counted.activated.connect(lambda _at: self.work_out())
        self.closeness.chosen.connect(lambda _choice: self.work_out())
        self.asking.moved.connect(self._on_moved)

    def _prepare_page(self) -> None:
        self.search.hide()
        asked = QWidget()
        flow = FlowLayout(gap=12)
        asked.setLayout(flow)
        for words, field in (
            (tr("&Bottles"), self.bottles),
            (tr("B&udget"), self.budget),
            (tr("Cou&nt"), self.counted),
            (tr("P&rices"), self.prices),
        ):
            flow.addWidget(labelled(words, field))
        flow.addWidget(self.closeness)
        for each in (self.go_button, self.stop_button, self.all_button):
            flow.addWidget(each)
        self.add_filter_row(asked)
        self.add_filter_row(self.said)
        self.add_parts()
        set_widths(self.view, (56, 204, 72, 96))
        sort_by(self.view, 0)
        self.put_below(self.chart)
        on_activated(self.view, self.add_current)
        self.list_actions(
            [
                (WORK_OUT, "Ctrl+Return", "check", self.work_out_again, False),
                (STOP, "Ctrl+.", "clear", self.stop, False),
                (ADD, ADD_KEYS, "price", self.add_current, True),
                (tr("Add the &whole plan to it"), "Ctrl+Shift+A", "price", self.add_all, False),
            ]
        )


TOO_LITTLE = tr_noop("Some of it is in the bar, but too little")


def weighings(snapshot: Snapshot) -> Iterator[tuple[str, Weighing]]:
    """In how many ways drinks may count, each in words."""
    yield tr("every drink alike"), Weighing()
    yield tr("own drinks alone"), Weighing(times=(("-own", 0.0),))
    yield tr("own drinks three times"), Weighing(times=(("own", 3.0),))
    yield tr("drinks by how they scored"), Weighing(by_score=True)
    for shoot in still_to_film(snapshot):
        yield tr("for the shoot {named} alone", named=_named(shoot)), Weighing(shoot=shoot.id)
    tags = {tag for spec in snapshot.specs for tag in spec.tags}
    for tag in sorted(tags, key=str.casefold):
        yield (
            tr("tagged {tag} three times", tag=tag),
            Weighing(times=((f'tag:"{tag}"', 3.0),)),
        )


def _named(shoot: Shoot) -> str:
    return f"{shoot.theme}, {day_of_year_short(shoot.on)}"


def _opened(step: Step) -> Iterator[DetailRow]:
    exactly = frozenset(step.exactly)
    for name in step.unlocks:
        if name in exactly:
            yield DetailRow(name, picture="verdict-ready", tone="ready")
        else:
            note = tr("with a stand-in")
            yield DetailRow(name, note=note, picture="verdict-stand-in", tone="stand_in")
