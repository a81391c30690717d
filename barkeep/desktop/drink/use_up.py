"""Use up: what goes off soon, and the drinks that use most of it in time."""

from __future__ import annotations

from collections.abc import Hashable, Iterator
from datetime import timedelta
from functools import partial

from PySide6.QtWidgets import QWidget

from barkeep.desktop.drink.parts import TONIGHT
from barkeep.desktop.screens.list_stack import set_widths
from barkeep.desktop.screens.parts import OfParts
from barkeep.desktop.screens.row_table import Column
from barkeep.desktop.screens.screen import ScreenContext
from barkeep.desktop.screens.stoppable import StoppableScreen
from barkeep.desktop.screens.table_screen import TableScreen, on_activated, sort_by
from barkeep.desktop.widgets.buttons import number_field
from barkeep.desktop.widgets.charts import DaysChart, Mark, Tick
from barkeep.desktop.widgets.chips import CLOSENESS, FilterChips
from barkeep.desktop.widgets.delegates import VERDICT_ROLE, VerdictDelegate
from barkeep.desktop.widgets.detail_bar import NO_ACTS, DetailActs
from barkeep.desktop.widgets.details import DetailRow, DetailSection
from barkeep.desktop.widgets.empty_state import EmptyState
from barkeep.desktop.widgets.fields import labelled
from barkeep.desktop.widgets.labels import Link, text_label
from barkeep.desktop.widgets.offered import Offered
from barkeep.domain.bar.changes import Changes
from barkeep.domain.days import day_of_year_short
from barkeep.domain.phrases import as_sentence, counted
from barkeep.domain.pouring.memory import Memory
from barkeep.domain.pouring.sourcing import Within
from barkeep.domain.pouring.use_up import (
    DAYS,
    MOST_DAYS,
    MOST_SERVES,
    Ageing,
    UsedIn,
    UseUp,
    use_up,
)
from barkeep.domain.pouring.use_up_words import (
    ageing_in_words,
    drink_in_words,
    use_up_in_words,
    uses_in_words,
)
from barkeep.domain.pouring.verdict import VERDICT_WORDS, VERDICTS
from barkeep.translation import tr, tr_about, tr_noop

A_TICK_EACH = (1, 2, 7, 14, 30, 61, 122)
"""In days: so far apart days may be written on the line."""
MOST_TICKS = 8
OVER = -2.0
"""Where on the line stands what is over, however long: in days from today."""
STOP = tr_noop("&Stop looking")
AN_EVENING = 6
"""So many serves are asked for until it is said otherwise."""


def _columns() -> tuple[Column[UsedIn], ...]:
    return (
        Column(tr("Drink"), lambda row: row.spec.name),
        Column(
            tr("Verdict"),
            lambda row: VERDICT_WORDS[row.verdict].name,
            key=lambda row: (VERDICTS.index(row.verdict), -sum(each.amount for each in row.uses)),
            roles={VERDICT_ROLE: lambda row: row.verdict},
        ),
        Column(
            tr_about("column", "Serves"),
            lambda row: str(row.serves),
            key=lambda row: row.serves,
            right=True,
        ),
        Column(tr("Uses"), lambda row: uses_in_words(row), tooltip=lambda row: uses_in_words(row)),
    )


class UseUpScreen(StoppableScreen, OfParts, TableScreen[UsedIn]):
    """One row a drink to make; the picture has the days by which things should be used."""

    key = "use-up"
    title = tr_noop("Tonight")
    noun = tr_noop("drinks")
    parts = TONIGHT
    only_looks = frozenset({STOP})
    stop_words = STOP
    search_hint = tr_noop("Search drinks and bottles…")

    def __init__(self, context: ScreenContext, parent: QWidget | None = None) -> None:
        self._memory = Memory()
        self._found: UseUp | None = None
        empty = EmptyState(
            "picture-empty-glass",
            tr("Nothing to use up"),
            tr("What goes off soon is listed here with the drinks that use it, and nothing does"),
            leads=(
                tr("Until when each is good stands with "),
                Link(tr("your bottles"), "bottles"),
                ".",
            ),
        )
        super().__init__(context, _columns(), empty, parent)
        self.serves = number_field(tr("Serves at most"), 0, MOST_SERVES)
        self.days = number_field(tr("Days ahead"), 0, MOST_DAYS)
        self.closeness = FilterChips(tr("Stand-ins"), CLOSENESS, "close")
        self.prepare_to_stop()
        self.said = text_label("", quiet=True, wrap=True)
        self.chart = DaysChart(tr("Days by which things should be used"))
        self._acts = DetailActs(
            (Offered(tr("Open the spec"), self._open_spec, writes=False),),
            (Offered(tr("Show it in Tonight"), self._show_tonight, writes=False),),
        )
        self._prepare_page()

    def refresh(self, changes: Changes) -> None:
        within: Within = self.closeness.choice  # type: ignore[assignment]
        question = partial(
            use_up,
            self.context.bar.snapshot,
            self.serves.value() or None,
            within=within,
            days=self.days.value(),
            memory=self._memory,
        )
        self.ask_long(
            lambda tell: question(go_on=lambda: tell(0, 0)),
            self._show_answer,
            tr("Looking for the drinks that use most…"),
        )

    def identity(self, row: UsedIn) -> Hashable:
        return row.spec.name

    def words(self, row: UsedIn) -> str:
        return f"{row.spec.name} {uses_in_words(row)}"

    def chosen_specs(self) -> tuple[str, ...]:
        return () if self.current is None else (self.current.spec.name,)

    def show_row(self, row: UsedIn | None) -> None:
        sections = []
        if row is not None:
            sections.append(
                DetailSection(tr("Uses"), (DetailRow(as_sentence(drink_in_words(row))),))
            )
        found = self._found
        if found is not None and found.ageing:
            bottles = tuple(_bottle(each, found) for each in found.ageing)
            sections.append(
                DetailSection(tr("Goes off within {days} days", days=found.days), bottles)
            )
        if not sections:
            self.detail.clear()
            return
        title = tr("What goes off") if row is None else row.spec.name
        self.detail.show_details(title, "", sections, acts=NO_ACTS if row is None else self._acts)

    def _show_answer(self, found: UseUp) -> None:
        self._found = found
        self.show_rows(found.drinks)
        first, *others = use_up_in_words(found)
        if found.idle and found.drinks:
            many = counted(len(found.idle), "bottle")
            others = [*others[:-1], tr("No drink uses any of {many}, which are marked.", many=many)]
        self.summary.setText(first)
        self.said.setText(" ".join(others))
        self.said.setVisible(bool(others))
        self._show_days(found)
        self.show_row(self.current)

    def _show_days(self, found: UseUp) -> None:
        marks = [
            Mark(
                _day(each, found),
                f"{each.bottle.product.title}, {ageing_in_words(each, found)}",
                each.bottle.product.title,
                tone=_tone(each, found),
            )
            for each in found.ageing
        ]
        said = "; ".join(each.words for each in marks)
        none = tr("Nothing goes off within {days} days", days=found.days)
        self.chart.show_days(marks, tuple(_ticks(found)), as_sentence(said or none))

    def _open_spec(self) -> None:
        if self.current is not None:
            self.context.go("specs", self.current.spec.name)

    def _show_tonight(self) -> None:
        if self.current is not None:
            self.context.go("tonight", self.current.spec.name)

    def _prepare_page(self) -> None:
        self.serves.setSpecialValueText(tr("no limit"))
        self.serves.setValue(AN_EVENING)
        self.days.setValue(DAYS)
        for field in (self.serves, self.days):
            field.valueChanged.connect(lambda _value: self.refresh(frozenset()))
        self.closeness.chosen.connect(lambda _choice: self.refresh(frozenset()))
        self.add_filter(self.closeness)
        self.add_filter(labelled(tr("Ser&ves"), self.serves))
        self.add_filter(labelled(tr("&Days ahead"), self.days))
        self.add_filter(self.stop_button)
        self.add_filter_row(self.said)
        self.add_parts()
        self.put_below(self.chart)
        self.view.setItemDelegateForColumn(1, VerdictDelegate(self.view))
        set_widths(self.view, (170, 110, 66))
        sort_by(self.view, 1)
        on_activated(self.view, self._open_spec)
        self.list_actions([(STOP, "Ctrl+.", "clear", self.stop, False)])


def _tone(each: Ageing, found: UseUp) -> str:
    if each.last < found.on:
        return "danger"
    return "warning" if each in found.idle else "ready"


def _bottle(each: Ageing, found: UseUp) -> DetailRow:
    idle = each in found.idle
    return DetailRow(
        each.bottle.product.title,
        label=tr("no drink uses it") if idle else tr("used"),
        note=" ".join(
            (
                as_sentence(ageing_in_words(each, found)),
                *([tr("No drink uses it.")] if idle else []),
            )
        ),
        picture="warning" if idle or each.last < found.on else "check",
        tone=_tone(each, found),
    )


def _ticks(found: UseUp) -> Iterator[Tick]:
    """What is over, today, and days some way apart."""
    apart = next((each for each in A_TICK_EACH if found.days / each <= MOST_TICKS), 365)
    if any(each.last < found.on for each in found.ageing):
        yield Tick(OVER, tr("over"))
    yield Tick(0.0, tr("today"))
    for day in range(apart, found.days + 1, apart):
        on = found.on + timedelta(days=day)
        yield Tick(day, day_of_year_short(on))


def _day(each: Ageing, found: UseUp) -> float:
    """Where its last day stands on the line; what is over stands at one place."""
    days = (each.last - found.on).days
    return days if days >= 0 else OVER
