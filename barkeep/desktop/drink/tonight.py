"""Tonight: what can be made, with what, how often, and why not."""

from __future__ import annotations

import importlib
import sys
from collections.abc import Callable, Hashable, Sequence
from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeySequence
from PySide6.QtWidgets import QApplication, QCheckBox, QStackedWidget, QVBoxLayout, QWidget

from barkeep.desktop.drink.finding import Finding, language_as_help
from barkeep.desktop.drink.parts import TONIGHT
from barkeep.desktop.drink.tonight_filters import CLEAR_KEYS, TonightFilters
from barkeep.desktop.drink.tonight_rows import Answered, TonightRow, answered, tonight_columns
from barkeep.desktop.drink.wall import DrinkWall, keep_together
from barkeep.desktop.drink.words import POUR_KEYS
from barkeep.desktop.screens.list_stack import set_widths
from barkeep.desktop.screens.parts import OfParts
from barkeep.desktop.screens.screen import ScreenContext
from barkeep.desktop.screens.table_screen import TableScreen, on_activated, sort_by
from barkeep.desktop.screens.worked_out import WorkedOut
from barkeep.desktop.widgets.buttons import number_field, offer
from barkeep.desktop.widgets.chips import CLOSENESS, FilterChips
from barkeep.desktop.widgets.delegates import VerdictDelegate
from barkeep.desktop.widgets.detail_bar import DetailActs
from barkeep.desktop.widgets.drink_picture import DrinkPictureView
from barkeep.desktop.widgets.empty_state import WIDER, EmptyState
from barkeep.desktop.widgets.fields import labelled
from barkeep.desktop.widgets.labels import Link
from barkeep.desktop.widgets.layouts import Card
from barkeep.desktop.widgets.offered import Offered
from barkeep.desktop.widgets.verdict_badge import VerdictBadge
from barkeep.domain.bar.changes import EVERYTHING, Changes
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.drink.at_the_bar import CARRIED, facts_tonight
from barkeep.domain.drink.search import facts_for
from barkeep.domain.pouring.memory import Memory
from barkeep.domain.pouring.verdict import how_many
from barkeep.domain.specs.query import SpecFacts
from barkeep.domain.specs.spec import Spec
from barkeep.translation import tr, tr_about, tr_noop

if TYPE_CHECKING:
    from barkeep.desktop.drink.pour_panel import PourPanel
    from barkeep.desktop.drink.pour_view import PourAsked
    from barkeep.desktop.first_hour.greeting import Greeting
    from barkeep.domain.pouring.verdicts import Drink

Act = Callable[[], object]

CORRECTION = "tonight-correction"
"""Under which the question is asked what a drink with stand-ins needs."""
NO_BOTTLES = tr_noop("No bottles yet: every drink is short until the bar knows what is there.")
BEGIN = tr_noop("Say what is there")


TICK_SHORT = tr_noop("Some do that cannot be made: tick “Also what cannot be made” to see them")
AS = (
    ("list", tr_noop("List"), tr_noop("A line for each drink, which can be sorted (Ctrl+G)")),
    ("wall", tr_noop("Wall"), tr_noop("Each drink in its glass on a shelf (Ctrl+G)")),
)
"""The ways in which the drinks are shown."""
SHOWN_AS = "tonight/shown-as"
CLEAR_ALL, OTHERWISE = tr_noop("Clear all &filters"), tr_noop("&As a wall, or a list")
POUR = tr_noop("Pour…")
"""What asks what goes into each line of the drink, and what stands in for what is missing."""
QUESTION = "tonight-search"
"""Under which slow facts are asked for in the background."""


_DETAILS, _PANEL = range(2)
"""What stands beside the list: the drink's details, or what asks how it is poured."""
READY_FOR_MORE = "tonight-verdicts"
"""Under which the bar's verdicts are worked out that were kept at first."""
POURED = "tonight-poured"
"""Under which it is worked out what a drink is with what is chosen for its lines."""
DETAILS, LOADED = "barkeep.desktop.drink.tonight_details", "tonight-details"
"""What tells of one drink, and under which it is loaded in the background for the first."""
DRINKS = "tonight-drinks"
"""Under which it is worked out what is poured, drink by drink."""


def _facts_of(answer: Answered, asks: frozenset[str], memory: Memory) -> Sequence[SpecFacts]:
    """What carries an allergen is known of what would be poured; the rest of the specs."""
    if CARRIED not in asks:
        return facts_for([each.spec for each in answer.rows], answer.snapshot, asks, memory)
    drinks = [each.worked_out() for each in answer.rows]
    return facts_tonight(drinks, answer.snapshot, asks, memory)


class TonightScreen(OfParts, TableScreen[TonightRow]):
    """One row a spec; the details say what goes in, line by line, and why.

    Verdicts are there at once; what is poured is worked out for the rows that are looked at,
    and for all where sorting or filtering needs it.
    """

    key = "tonight"
    title = tr_noop("Tonight")
    parts = TONIGHT
    noun = tr_noop("drinks")
    search_hint = tr_noop("Search drinks and ingredients…")
    cares_about = EVERYTHING
    only_looks = frozenset({CLEAR_ALL, OTHERWISE})

    @property
    def search_help(self) -> str:  # type: ignore[override]
        """What can be searched for, in the language that is spoken as the page is made."""
        return language_as_help()

    def __init__(self, context: ScreenContext, parent: QWidget | None = None) -> None:
        self._tree = context.bar.snapshot.knowledge.tree
        self._memory = Memory()
        self._is_empty = False
        self._answer: Answered | None = None
        self._coming: Answered | None = None
        """What is shown once it can be sorted as it is asked."""
        self._query_waits = False
        self._any_made, self._stays = False, ""
        empty = EmptyState(
            "picture-empty-glass",
            tr("No specs yet"),
            tr("What you can make of each stands here"),
            leads=(tr("Write one on the page "), Link(tr("Specs"), "specs"), "."),
        )
        super().__init__(context, tonight_columns(self._tree), empty, parent)
        self._finding: Finding[Answered] = Finding(
            context.background, QUESTION, _facts_of, self.filter_again, waiting=self.waiting
        )
        self._drinks: WorkedOut[TonightRow] = WorkedOut(context.background, DRINKS, self.table)
        self.table.look_at = self._drinks.look_at
        self.shown.is_ready = self._can_be_sorted
        self.closeness = FilterChips(tr("Stand-ins"), CLOSENESS, "close")
        self.serves = number_field(tr("Serves"), 1, 99)
        self.also_short = QCheckBox(tr("Also what cannot be made"))
        self.filters = TonightFilters()
        self._greeting: Greeting | None = None
        self._bars_offered: tuple[Act | None, Act | None] = (None, None)
        self._badge, self._picture = VerdictBadge("short"), DrinkPictureView()
        self._prepare_filters()
        self._mind_empty_bar()
        self._prepare_pouring()
        self._prepare_wall()
        self.view.setItemDelegateForColumn(1, VerdictDelegate(self.view))
        set_widths(self.view, (222, 98, 70, 92, 60))
        sort_by(self.view, 4)
        on_activated(self.view, self._open_spec)

    def refresh(self, changes: Changes) -> None:
        snapshot = self.context.bar.snapshot
        within, serves = self.closeness.choice, self.serves.value()
        kept = None if self._answer else self.context.bar.kept_verdicts()
        if kept is not None:
            once = Qt.ConnectionType.SingleShotConnection
            self.context.background.idle.connect(partial(self._compile, snapshot), once)
        question = partial(answered, snapshot, within, serves, self._memory, kept=kept)  # type: ignore[arg-type]
        self.ask(question, self._show_answer, tr("Working out tonight…"))

    def _compile(self, snapshot: Snapshot) -> None:
        """Make ready for the next question what a first answer that was kept did without."""
        from barkeep.domain.pouring.verdicts import verdicts

        within, serves = self.closeness.choice, self.serves.value()
        question = partial(verdicts, snapshot, within, serves, self._memory)  # type: ignore[arg-type]
        self.context.background.ask(READY_FOR_MORE, question, lambda _found: None)

    def identity(self, row: TonightRow) -> Hashable:
        return row.spec.name

    def matcher(self, rows: Sequence[TonightRow]) -> Callable[[TonightRow], bool]:
        if self._answer is None:
            return lambda _row: True
        snapshot = self._answer.snapshot
        typed = self.search.text
        is_filtered = bool(typed.strip() or self.filters.count)
        offer(self._clear_action, "" if is_filtered else tr("Nothing is filtered"))
        self.search.show_problem(self._finding.read(typed, snapshot))
        if not self.search.problem:
            # What is typed comes last: a quotation mark that is still open would take the rest.
            self._finding.read(f"{self.filters.query} {typed}", snapshot)
        finds = self._finder(self._answer)
        found = {each.place for each in rows if finds(each.spec)}
        self._sum_up([each for each in rows if each.place in found])
        return lambda row: row.place in found and self.accepts(row)

    def accepts(self, row: TonightRow) -> bool:
        """Whether it can be made; what was asked for by name or is being read stays.

        Where nothing at all can be made, every drink is shown with what it lacks.
        """
        shown_anyway = self.also_short.isChecked() or not self._any_made
        return row.makeable or shown_anyway or row.spec.name == self._stays

    def show_thing(self, thing: object) -> None:
        if thing is None:
            super().show_thing(None)
            return
        self.clear_filters()
        self._stays = str(thing)
        self.filter_again()
        super().show_thing(thing)

    def chosen_specs(self) -> tuple[str, ...]:
        return () if self.current is None else (self.current.spec.name,)

    def clear_filters(self) -> None:
        self.filters.clear()
        super().clear_filters()

    def show_row(self, row: TonightRow | None) -> None:
        self.context.background.forget(CORRECTION)
        if row is not None and DETAILS not in sys.modules:
            load = partial(importlib.import_module, DETAILS)
            self.context.background.ask(LOADED, load, lambda _: self.show_row(self.current))
            return
        self._go_on_pouring(row)
        if row is None:
            self.detail.clear()
            return
        is_news, drink = row.hindrance is None, row.worked_out()
        if is_news:
            self._tell((row,))
        self._show_drink(drink)
        if row.verdict == "stand_in":
            from barkeep.desktop.drink.tonight_details import correction_of  # as below

            question = partial(correction_of, drink, row.evening.snapshot)
            self.context.background.ask(CORRECTION, question, partial(self._correct, drink))

    def _correct(self, row: Drink, correction: str) -> None:
        """Say what to pour so that stand-ins leave the drink what it was, where they do not."""
        if correction:
            self._show_drink(row, correction)

    def _show_drink(self, row: Drink, correction: str = "") -> None:
        # What is told of one drink loads as much as all that its list needs, which shows before.
        from barkeep.desktop.drink.tonight_details import sections_of, subtitle_of
        from barkeep.domain.drink.picture import poured_picture

        snapshot = self.context.bar.snapshot
        self._badge.show_verdict(row.verdict)
        self.detail.show_details(
            row.spec.name,
            subtitle_of(row, self._tree),
            sections_of(row, snapshot, self._tree, correction=correction),
            top=self._badge,
            beside=self._picture,
            acts=self._acts_on(row),
        )
        self._picture.show_picture(poured_picture(row, snapshot))

    def _acts_on(self, row: Drink) -> DetailActs:
        """What is done with a drink; where something is missing, that first."""
        from barkeep.desktop.drink.all_cautions import ALL_CAUTIONS  # as above

        return_keys = QKeySequence(Qt.Key.Key_Return)
        spec = Offered(
            tr_about("on a button", "Open the spec"),
            self._open_spec,
            keys=_native(return_keys),
            writes=False,
        )
        pour = Offered(POUR, self.pour_current, keys=_native(QKeySequence(POUR_KEYS)))
        cautions = Offered(ALL_CAUTIONS, self.show_all_cautions, writes=False)
        return DetailActs((pour, spec) if row.missing else (spec, pour), (cautions,))

    def show_all_cautions(self) -> None:
        """Show every caution of the chosen drink, with its authority."""
        from barkeep.desktop.drink.all_cautions import AllCautionsDialog  # as above
        from barkeep.domain.drink.analysis import analyse

        if self.current is not None:
            drink = self.current.worked_out()
            general = analyse(drink.spec, self.context.bar.snapshot).general_cautions
            self.open_dialog(AllCautionsDialog(drink.spec.name, drink.minded, general, self))

    def _prepare_filters(self) -> None:
        self.closeness.chosen.connect(self._ask_again)
        self.serves.valueChanged.connect(self._ask_again)
        self.also_short.toggled.connect(lambda _on: self._filter_anew())
        self.filters.changed.connect(self._filter_anew)
        self.filters.clear_wanted.connect(self._show_all)
        self.add_filter(self.closeness)
        self.add_filter(labelled(tr("Serves"), self.serves))
        self.add_filter(self.also_short)
        self.add_filter_row(self.filters)
        self.add_parts()

    def _show_all(self) -> None:
        """Clear the words and every filter; the button that asked for it may be gone then."""
        self.clear_filters()
        self.focus_list()

    def _prepare_pouring(self) -> None:
        self._pouring: PourPanel | None = None
        self._beside_list = QStackedWidget()
        details = self.splitter.widget(1)
        assert details is not None
        self.splitter.replaceWidget(1, self._beside_list)
        self._beside_list.addWidget(details)
        self.splitter.setStretchFactor(1, 2)
        self.list_actions(
            [
                (CLEAR_ALL, CLEAR_KEYS, "clear", self._show_all, False),
                (OTHERWISE, "Ctrl+G", "tonight", self.show_otherwise, False),
                (tr_noop("&Pour…"), POUR_KEYS, "pour", self.pour_current, True),
            ]
        )
        self._clear_action, _otherwise, pour = self.bar_actions
        pour.setAutoRepeat(False)  # held down, the keys would ask and pour

    @property
    def pouring(self) -> PourPanel:
        """What asks how a drink is poured; made for the first that is."""
        if self._pouring is None:
            from barkeep.desktop.drink.pour_panel import PourPanel  # few drinks are poured

            self._pouring = panel = PourPanel()
            self._beside_list.addWidget(Card(panel))
            panel.changed.connect(self._look_at_pour)
            panel.pour_wanted.connect(self._pour)
            panel.riff_wanted.connect(self._save_riff)
            panel.left.connect(self.stop_pouring)
        return self._pouring

    def _filter_anew(self) -> None:
        """Filter as it is asked now; nothing stays that is only there from before."""
        self._stays = ""
        self.filter_again()

    def _ask_again(self, _choice: object) -> None:
        self._stays = ""
        self.refresh(frozenset())

    def _show_answer(self, answer: Answered) -> None:
        self._coming = answer
        self._drinks.begin(self._work_out, self._tell)
        self._go_on()

    def _work_out(self, row: TonightRow) -> None:
        """In the background: what is poured, and on the wall its picture as well."""
        if self.is_wall:
            row.drawn()
        else:
            row.worked_out()

    def _go_on(self) -> None:
        """Show the answer that came last, once that is known by which the list is sorted."""
        answer = self._coming
        if answer is None:
            self.waiting.end(DRINKS)
            self.filter_again()
            return
        lacking = self.shown.lacking(filter(self.accepts, answer.rows))
        if lacking:
            self._need(lacking)
            return
        self._coming = None
        self.waiting.end(DRINKS)
        self._show(answer)

    def _show(self, answer: Answered) -> None:
        self._answer = answer
        self._any_made = any(each.makeable for each in answer.rows)
        self._finding.prepare(answer)
        if self._tree is not answer.snapshot.knowledge.tree:  # there are others, or other names
            self._tree = answer.snapshot.knowledge.tree
            self.table.columns = tonight_columns(self._tree)
        self.filters.offer(answer.rows, self._tree)
        self._mind_empty_bar()
        if self.current is not None and self.current.makeable and not self._stays:
            self._stays = self.current.spec.name
        self.show_rows(answer.rows)

    def _finder(self, answer: Answered) -> Callable[[Spec], bool]:
        """Whether a spec is found; by the query before it until all that it asks is known."""
        if self._coming is not None:
            return self._finding.last_finder()
        carried = CARRIED in self._finding.asks
        unknown = [each for each in answer.rows if carried and each.drink is None]
        self._query_waits = bool(unknown)
        if unknown:
            self._need(unknown)
            return self._finding.last_finder()
        return self._finding.finder(answer)

    def _can_be_sorted(self) -> bool:
        """Whether that is known by which the list is sorted; else it is worked out."""
        if self._coming is not None:
            self._go_on()
            return False
        lacking = self.shown.lacking(self.shown.kept())
        if lacking:
            self._need(lacking)
        elif not self._query_waits:
            self._drinks.need_nothing()
            self.waiting.end(DRINKS)
        return not lacking

    def _need(self, rows: Sequence[TonightRow]) -> None:
        self.waiting.begin(DRINKS, tr("Working out what is poured…"))
        self._drinks.need(rows, self._go_on)

    def _tell(self, rows: Sequence[TonightRow]) -> None:
        """Show what has been worked out, of the rows that are still listed."""
        listed = self.table.rows
        self.table.tell(
            [each.place for each in rows if listed[each.place : each.place + 1] == (each,)]
        )

    def _sum_up(self, found: Sequence[TonightRow]) -> None:
        """What is found, and what of it is not shown, for no drink is left out unsaid."""
        ready, stand_in, short = how_many(each.verdict for each in found)
        said = [
            tr("{ready} ready", ready=ready),
            tr("{stand_in} with a stand-in", stand_in=stand_in),
        ]
        is_hidden = bool(short) and self._any_made and not self.also_short.isChecked()
        if short:
            said.append(
                tr("{short} that cannot be made (not shown)", short=short)
                if is_hidden
                else tr("{short} that cannot be made", short=short)
            )
        self.summary.setText(", ".join(said))
        if self.list_stack is not None:
            self.list_stack.no_match.line.setText(tr(TICK_SHORT if is_hidden else WIDER))

    def _mind_empty_bar(self) -> None:
        """Greet where there is no bottle; who wants the drinks all the same is told why."""
        is_empty = not self.context.bar.snapshot.bottles
        if is_empty == self._is_empty:
            return
        self._is_empty = is_empty
        self._greet(is_empty)
        if not is_empty and self.banner.text == tr(NO_BOTTLES):
            self.banner.clear()

    def offer_bars(
        self, look_around: Callable[[], object] | None, open_bar: Callable[[], object] | None
    ) -> None:
        self._bars_offered = look_around, open_bar
        if self._greeting is not None:
            self._greeting.offer_bars(look_around, open_bar)

    def focus_list(self) -> None:
        if self._greeting is None or self._greeting.isHidden():
            super().focus_list()
        else:
            self._greeting.take_focus()

    @property
    def greeting(self) -> Greeting:
        """In the place of the list while there is no bottle; made for the first bar without."""
        if self._greeting is None:
            from barkeep.desktop.first_hour.greeting import Greeting  # most bars have bottles

            column = self.layout()
            assert isinstance(column, QVBoxLayout)
            self._greeting = greeting = Greeting()
            greeting.hide()
            column.addWidget(greeting, 1)
            greeting.wanted.connect(lambda page: self.context.go(page, None))
            greeting.shown_anyway.connect(self._show_all_the_same)
            greeting.offer_bars(*self._bars_offered)
        return self._greeting

    def _greet(self, greets: bool) -> None:
        had_focus = self.isAncestorOf(self.focusWidget()) if self.focusWidget() else False
        of_the_list = (self.summary, self.search, self._filters, self.filters, self.parts_row)
        for each in (*of_the_list, self.splitter):
            each.setVisible(not greets)
        if greets:
            self.greeting.say_drinks(len(self.context.bar.snapshot.all_specs))
        if self._greeting is not None:
            self._greeting.setVisible(greets)
        if had_focus and self.isVisible():
            self.focus_list()

    def _show_all_the_same(self) -> None:
        """Show every drink with what it lacks, and why that is."""
        self._greet(False)
        self.banner.say(tr(NO_BOTTLES), "info", BEGIN, self._greet_again)
        self.focus_list()

    def _greet_again(self) -> None:
        self.banner.clear()
        self._greet(True)
        self.focus_list()

    def _open_spec(self) -> None:
        if self.current is not None:
            self.context.go("specs", self.current.spec.name)

    # As a wall or a list

    def _prepare_wall(self) -> None:
        self.wall = DrinkWall(self.shown, self._drinks.look_at)
        keep_together(self.view, self.wall)
        on_activated(self.wall, self._open_spec)
        self.wall.setContextMenuPolicy(Qt.ContextMenuPolicy.ActionsContextMenu)
        self.wall.addActions(self.bar_actions)
        kept = self.context.state.text(SHOWN_AS, "list")
        self.shown_as = FilterChips(tr("As"), AS, "wall" if kept == "wall" else "list")
        self.shown_as.chosen.connect(self._show_as)
        self._header_row.insertWidget(self._header_row.count() - 1, self.shown_as)
        if self.is_wall:
            self._show_as(self.shown_as.choice)

    @property
    def is_wall(self) -> bool:
        """Whether the drinks are shown as a wall."""
        return self.shown_as.choice == "wall"

    def show_otherwise(self) -> None:
        """Show the wall as a list, or the list as a wall."""
        self.shown_as.choose("list" if self.is_wall else "wall")
        self.focus_list()

    def _show_as(self, choice: str) -> None:
        self.context.state.keep_text(SHOWN_AS, choice)
        if self.list_stack is not None:
            self.list_stack.show_as(self.wall if choice == "wall" else self.view)

    # Pouring one drink

    def pour_current(self) -> None:
        """Ask what goes into the chosen drink, line by line; asked already, pour it so."""
        if self.current is None:
            return
        focused = QApplication.focusWidget()
        if self.is_pouring and focused is not None and self.pouring.isAncestorOf(focused):
            self.pouring.pour_button.click()
            return
        self.clear_refusal()
        self._ask_what_goes_in(self.current, focus=True)

    @property
    def is_pouring(self) -> bool:
        """Whether that is asked now."""
        return self._beside_list.currentIndex() == _PANEL

    def stop_pouring(self) -> None:
        """Show the drink's details again, with the list where it was."""
        self._forget_pouring()
        self.focus_list()

    def _forget_pouring(self) -> None:
        self.context.background.forget(POURED)
        if self._pouring is not None:
            self._pouring.asked = None
        self._beside_list.setCurrentIndex(_DETAILS)

    def _ask_what_goes_in(self, row: TonightRow, *, focus: bool) -> None:
        from barkeep.desktop.drink.pour_view import pour_asked  # loads more than a list of drinks

        question = partial(pour_asked, row.worked_out(), row.evening.snapshot)

        def answered(asked: PourAsked) -> None:
            self.pouring.ask(asked, self.serves.value())
            self._beside_list.setCurrentIndex(_PANEL)
            if focus:
                self.pouring.take_focus()
            self._look_at_pour()

        self.context.background.ask(POURED, question, answered)

    def _go_on_pouring(self, row: TonightRow | None) -> None:
        """Ask again of the same drink, whose bottles may be others; of another one no more."""
        asked = None if self._pouring is None else self._pouring.asked
        if asked is None:
            return
        if row is None or row.spec.name != asked.drink.spec.name:
            self._forget_pouring()
        else:
            self._ask_what_goes_in(row, focus=False)

    def _look_at_pour(self) -> None:
        """Work out what the choices make of the drink."""
        from barkeep.desktop.drink.pour_view import pour_seen  # as above

        asked = self.pouring.asked
        if asked is not None:
            spec, chosen = asked.drink.spec, self.pouring.chosen
            snapshot, serves = self.context.bar.snapshot, self.serves.value()
            question = partial(pour_seen, spec, chosen, snapshot, serves)
            self.context.background.ask(POURED, question, self.pouring.show_seen)

    def _pour(self) -> None:
        asked, serves = self.pouring.asked, self.serves.value()
        if asked is None:
            return
        spec, chosen = asked.drink.spec, self.pouring.chosen
        several = "" if serves == 1 else f"{serves} "
        if self.do(
            lambda: self.context.bar.pouring.pour(spec, chosen, serves),
            say=tr("Poured {several}{name}", several=several, name=spec.name),
        ):
            self.stop_pouring()

    def _save_riff(self, name: str) -> None:
        from barkeep.domain.stand_ins.in_a_drink import riff_with  # as above

        asked, bar = self.pouring.asked, self.context.bar
        if asked is not None:
            spec, chosen = asked.drink.spec, self.pouring.chosen
            self.do(
                lambda: bar.specs.add([riff_with(spec, chosen, name, bar.snapshot)]),
                say=tr("{name} is in your book, a riff of {parent}", name=name, parent=spec.name),
            )


def _native(keys: QKeySequence) -> str:
    return keys.toString(QKeySequence.SequenceFormat.NativeText)
