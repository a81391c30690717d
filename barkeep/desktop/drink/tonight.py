"""Tonight: what can be made, with what, how often, and why not."""

from __future__ import annotations

from collections.abc import Callable, Hashable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import partial

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QCheckBox, QWidget

from barkeep.desktop.drink.all_cautions import ALL_CAUTIONS, AllCautionsDialog
from barkeep.desktop.drink.analysis_view import CautionRow, before_you_pour, correction_words
from barkeep.desktop.drink.finding import Finding, language_as_help
from barkeep.desktop.drink.tonight_filters import TonightFilters
from barkeep.desktop.drink.words import (
    NOT_UNDERSTOOD,
    line_state,
    reason,
    with_duty,
    written,
)
from barkeep.desktop.screens.list_stack import set_widths
from barkeep.desktop.screens.row_table import Column
from barkeep.desktop.screens.screen import ScreenContext
from barkeep.desktop.screens.table_screen import TableScreen, on_activated, sort_by
from barkeep.desktop.widgets.buttons import button, number_field
from barkeep.desktop.widgets.chips import CLOSENESS, FilterChips
from barkeep.desktop.widgets.delegates import (
    ICONS_ROLE,
    SUBTITLE_ROLE,
    VERDICT_ROLE,
    VerdictDelegate,
)
from barkeep.desktop.widgets.details import DetailRow, DetailSection
from barkeep.desktop.widgets.empty_state import WIDER, EmptyState
from barkeep.desktop.widgets.labels import text_label
from barkeep.desktop.widgets.layouts import row_of
from barkeep.desktop.widgets.verdict_badge import VerdictBadge
from barkeep.domain.bar.changes import EVERYTHING, Changes
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.cautions.cautions import IN_GENERAL
from barkeep.domain.drink.analysis import analyse
from barkeep.domain.drink.at_the_bar import Whose, as_wanted, facts_tonight, whose
from barkeep.domain.drink.search import filmed_next
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import as_sentence, capitalised
from barkeep.domain.pouring.assessment import LineAnswer
from barkeep.domain.pouring.garnishes import garnishes_told
from barkeep.domain.pouring.made_first import make_first
from barkeep.domain.pouring.memory import Memory
from barkeep.domain.pouring.serves_in_words import (
    following_in_words,
    serves_in_words,
    serves_of,
)
from barkeep.domain.pouring.sourcing import Within
from barkeep.domain.pouring.verdicts import VERDICT_WORDS, VERDICTS, Drink, how_many, tonight
from barkeep.domain.specs.called import named_by
from barkeep.domain.specs.query import SpecFacts
from barkeep.domain.specs.shown_lines import ShownLine, ingredients_in_brief, names_of, shown_lines
from barkeep.domain.specs.spec import UnsettledLine, base, with_unsettled
from barkeep.domain.stand_ins.corrections import Correction, correction_for
from barkeep.errors import spoken_list

MANY = 10**6
"""Sorts what nothing limits after every number."""


def drink_columns(
    tree: FamilyTree, filmed: frozenset[str] = frozenset()
) -> tuple[Column[Drink], ...]:
    """Drink with its tags, verdict, serves, what is missing or runs out first; whose, base.

    `filmed` are the names of the drinks of the next shoot.
    """
    return (
        Column(
            "Drink",
            lambda drink: drink.spec.name,
            roles={
                SUBTITLE_ROLE: lambda drink: drink.minded.in_brief,
                Qt.ItemDataRole.AccessibleDescriptionRole: lambda drink: drink.minded.in_brief,
                ICONS_ROLE: lambda drink: ("warning",) if drink.notices else (),
            },
            tooltip=lambda drink: _tip(drink, tree),
        ),
        Column(
            "Tonight",
            lambda drink: VERDICT_WORDS[drink.verdict].name,
            key=lambda drink: (VERDICTS.index(drink.verdict), drink.spec.name.casefold()),
            roles={VERDICT_ROLE: lambda drink: drink.verdict},
        ),
        Column(
            "Serves",
            serves_in_brief,
            key=lambda drink: MANY if drink.serves is None else drink.serves,
            right=True,
            tooltip=lambda drink: serves_in_words(drink, tree) if drink.makeable else "",
        ),
        Column("Limited by", lambda drink: hindrance(drink, tree)),
        Column(
            "Whose",
            lambda drink: WHOSE_BRIEFLY[whose(drink.spec, filmed)],
            key=lambda drink: as_wanted(drink, filmed),
        ),
        Column("Base", lambda drink: base_name(drink, tree)),
    )


WHOSE_BRIEFLY: Mapping[Whose, str] = {"shoot": "Shoot", "own": "Own", "classic": "Classic"}


def _tip(drink: Drink, tree: FamilyTree) -> str:
    """What is in it, what to mind, and what to know of its bottles."""
    said = (ingredients_in_brief(drink.spec, tree), drink.minded.in_brief, *drink.notices)
    return "\n".join(each for each in said if each)


def base_name(drink: Drink, tree: FamilyTree) -> str:
    """What the drink is built on; empty for a spec without volumes."""
    key = base(drink.spec, tree)
    return named_by(drink.spec.lines, tree).name(key) if key else ""


def serves_in_brief(drink: Drink) -> str:
    """How many serves of the bottles shown, and after the plus of others; an em dash for none."""
    if not drink.makeable:
        return "—"
    if drink.serves is None:
        return "no limit"
    more = [each.serves for each in drink.then]
    if not more:
        return str(drink.serves)
    return f"{drink.serves} + {'any' if None in more else sum(each or 0 for each in more)}"


def hindrance(drink: Drink, tree: FamilyTree) -> str:
    """What is missing or not understood, or else what ends the serves."""
    if drink.lacking:
        names = [capitalised(names_of(line, tree)) for line in drink.missing_lines]
        return spoken_list([*names, *drink.questions], "and")
    return named_by(drink.spec.lines, tree).name(drink.runs_out) if drink.runs_out else ""


CORRECTION = "tonight-correction"
"""Under which the question is asked what a drink with stand-ins needs."""
NO_BOTTLES = "No bottles yet: every drink is short until the bar knows what is there."


TICK_SHORT = "Some do that cannot be made: tick “Also what cannot be made” to see them"
QUESTION = "tonight-search"
"""Under which slow facts are asked for in the background."""


@dataclass(frozen=True)
class Answered:
    """The drinks of tonight, and the bar they were asked of."""

    snapshot: Snapshot
    drinks: tuple[Drink, ...]


def _ask(snapshot: Snapshot, within: Within, serves: int, memory: Memory) -> Answered:
    return Answered(snapshot, tonight(snapshot, within, serves, memory))


def _facts_of(answer: Answered, asks: frozenset[str], memory: Memory) -> Sequence[SpecFacts]:
    return facts_tonight(answer.drinks, answer.snapshot, asks, memory)


class TonightScreen(TableScreen[Drink]):
    """One row a spec; the details say what goes in, line by line, and why."""

    key = "tonight"
    title = "Tonight"
    noun = "drinks"
    search_hint = "Search drinks and ingredients…"
    search_help = language_as_help()
    cares_about = EVERYTHING

    def __init__(self, context: ScreenContext, parent: QWidget | None = None) -> None:
        self._tree = context.bar.snapshot.knowledge.tree
        self._memory = Memory()
        self._is_empty = False
        self._answer = Answered(context.bar.snapshot, ())
        self._any_made, self._stays = False, ""
        empty = EmptyState("picture-empty-glass", "No specs yet", "Write one on the Specs page")
        super().__init__(context, drink_columns(self._tree), empty, parent)
        self._finding = Finding(context.background, QUESTION, _facts_of, self.filter_again)
        self.closeness = FilterChips("Stand-ins", CLOSENESS, "close")
        self.serves = number_field("Serves", 1, 99)
        self.also_short = QCheckBox("Also what cannot be made")
        self.filters = TonightFilters()
        self._prepare_filters()
        self.view.setItemDelegateForColumn(1, VerdictDelegate(self.view))
        set_widths(self.view, (222, 98, 70, 92, 60))
        sort_by(self.view, 4)
        on_activated(self.view, self._open_spec)

    def refresh(self, changes: Changes) -> None:
        snapshot = self.context.bar.snapshot
        if self._tree is not snapshot.knowledge.tree:  # there are others, or other names for them
            self._tree = snapshot.knowledge.tree
            self.table.columns = drink_columns(self._tree)
        within, serves = self.closeness.choice, self.serves.value()
        question = partial(_ask, snapshot, within, serves, self._memory)  # type: ignore[arg-type]
        self.context.background.ask(self.key, question, self._show_answer)

    def identity(self, row: Drink) -> Hashable:
        return row.spec.name

    def matcher(self, rows: Sequence[Drink]) -> Callable[[Drink], bool]:
        snapshot = self._answer.snapshot
        typed = self.search.text
        self.search.show_problem(self._finding.read(typed, snapshot))
        if not self.search.problem:
            # What is typed comes last: a quotation mark that is still open would take the rest.
            self._finding.read(f"{self.filters.query} {typed}", snapshot)
        found = self._finding.finder(self._answer)
        self._sum_up([each for each in rows if found(each.spec)])
        return lambda row: self.accepts(row) and found(row.spec)

    def accepts(self, row: Drink) -> bool:
        """Whether it can be made; what was asked for by name or is being read stays.

        Where nothing at all can be made, every drink is shown with what it lacks.
        """
        shown_anyway = self.also_short.isChecked() or not self._any_made
        return row.makeable or shown_anyway or row.spec.name == self._stays

    def show_thing(self, thing: object) -> None:
        self.clear_filters()
        self._stays = str(thing)
        self.filter_again()
        super().show_thing(thing)

    def chosen_specs(self) -> tuple[str, ...]:
        return () if self.current is None else (self.current.spec.name,)

    def clear_filters(self) -> None:
        self.filters.clear()
        super().clear_filters()

    def show_row(self, row: Drink | None) -> None:
        self.context.background.forget(CORRECTION)
        if row is None:
            self.detail.clear()
            return
        self._show_drink(row)
        if row.verdict == "stand_in":
            question = partial(correction_for, row, self.context.bar.snapshot)
            self.context.background.ask(CORRECTION, question, partial(self._correct, row))

    def _correct(self, row: Drink, found: Correction | None) -> None:
        """Say what to pour so that stand-ins leave the drink what it was, where they do not."""
        if found is not None:
            self._show_drink(row, correction_words(found, named_by(row.spec.lines, self._tree)))

    def _show_drink(self, row: Drink, correction: str = "") -> None:
        settings = self.context.bar.snapshot.settings
        shown = shown_lines(row.spec, self._tree, settings.shown_in, settings.units)
        known = tuple(map(partial(_line, tree=self._tree), row.lines, shown))
        lines = with_unsettled(row.spec, known, _question)
        if correction:
            balance = DetailRow(correction, label="Balance", picture="stand-ins", tone="stand_in")
            lines = (*lines, balance)
        sections = [DetailSection("What goes in", lines)]
        first = make_first(row.lines, self._tree) if row.makeable else ""
        if first:
            sections.insert(0, DetailSection("First", (_first(first),)))
        specs = self.context.bar.snapshot.all_specs
        if told := tuple(map(DetailRow, garnishes_told(row, specs, self._tree))):
            sections.append(DetailSection("Garnish", told))
        if row.then:
            after = f"After {serves_of(row.serves)}"
            sections.append(DetailSection(after, tuple(_followings(row, self._tree))))
        if minded := tuple(map(_mind, before_you_pour(row.minded, row.notices))):
            sections.append(DetailSection("Before you pour", minded))
        if row.spec.method:
            sections.append(DetailSection("Method", (DetailRow(row.spec.method),)))
        sections.append(DetailSection("Care", (DetailRow(IN_GENERAL),)))
        buttons = [
            button("Open the spec", self._open_spec),
            button(ALL_CAUTIONS, self.show_all_cautions),
        ]
        if row.missing:
            buttons.append(button("What stands in?", self._ask_for_stand_ins))
        self.detail.show_details(
            row.spec.name,
            _subtitle(row, self._tree),
            sections,
            top=VerdictBadge(row.verdict),
            buttons=buttons,
        )

    def show_all_cautions(self) -> None:
        """Show every caution of the chosen drink, with its authority."""
        if self.current is not None:
            row = self.current
            general = analyse(row.spec, self.context.bar.snapshot).general_cautions
            self.open_dialog(AllCautionsDialog(row.spec.name, row.minded, general, self))

    def _prepare_filters(self) -> None:
        self.closeness.chosen.connect(self._ask_again)
        self.serves.valueChanged.connect(self._ask_again)
        self.also_short.toggled.connect(lambda _on: self._filter_anew())
        self.filters.changed.connect(self._filter_anew)
        self.add_filter(self.closeness)
        self.add_filter(_labelled("Serves", self.serves))
        self.add_filter(self.also_short)
        self.add_filter_row(self.filters)

    def _filter_anew(self) -> None:
        """Filter as it is asked now; nothing stays that is only there from before."""
        self._stays = ""
        self.filter_again()

    def _ask_again(self, _choice: object) -> None:
        self._stays = ""
        self.refresh(frozenset())

    def _show_answer(self, answer: Answered) -> None:
        self._answer = answer
        self._any_made = any(each.makeable for each in answer.drinks)
        filmed = filmed_next(answer.snapshot)
        self.table.columns = drink_columns(self._tree, filmed)
        self.filters.offer_from([each.spec for each in answer.drinks], self._tree)
        self._mind_empty_bar()
        if self.current is not None and self.current.makeable and not self._stays:
            self._stays = self.current.spec.name
        self.show_rows(answer.drinks)

    def _sum_up(self, found: Sequence[Drink]) -> None:
        """What is found, and what of it is not shown, for no drink is left out unsaid."""
        ready, stand_in, short = how_many(found)
        said = [f"{ready} ready", f"{stand_in} with a stand-in"]
        is_hidden = bool(short) and self._any_made and not self.also_short.isChecked()
        if short:
            said.append(f"{short} that cannot be made{' (not shown)' if is_hidden else ''}")
        self.summary.setText(", ".join(said))
        if self.list_stack is not None:
            self.list_stack.no_match.line.setText(TICK_SHORT if is_hidden else WIDER)

    def _mind_empty_bar(self) -> None:
        """Say once why every drink is short; who dismisses it is not told again."""
        is_empty = not self.context.bar.snapshot.bottles
        if is_empty == self._is_empty:
            return
        self._is_empty = is_empty
        if is_empty:
            self.banner.say(NO_BOTTLES, "info", "Go to Bottles", self._go_to_bottles)
        elif self.banner.text == NO_BOTTLES:
            self.banner.clear()

    def _go_to_bottles(self) -> None:
        self.context.go("bottles", None)

    def _open_spec(self) -> None:
        if self.current is not None:
            self.context.go("specs", self.current.spec.name)

    def _ask_for_stand_ins(self) -> None:
        if self.current is not None and self.current.missing:
            self.context.go("stand-ins", self.current.missing[0])


def _first(words: str) -> DetailRow:
    return DetailRow(as_sentence(words), picture="house-made", tone="muted")


def _mind(row: CautionRow) -> DetailRow:
    return DetailRow(row.text, label=row.meaning, note=row.source, picture="warning", tone=row.tone)


def _question(line: UnsettledLine) -> DetailRow:
    state = NOT_UNDERSTOOD
    return DetailRow(
        line.text, label=state.word, note=line.question, picture=state.picture, tone=state.tone
    )


def _line(answer: LineAnswer, shown: ShownLine, tree: FamilyTree) -> DetailRow:
    state = line_state(answer, tree)
    return DetailRow(
        with_duty(answer.line, shown.text),
        label=state.word,
        note=reason(answer, tree),
        picture=state.picture,
        tone=state.tone,
        tip=written(shown),
    )


def _followings(drink: Drink, tree: FamilyTree) -> Iterator[DetailRow]:
    """What is poured once the bottles shown are used up, each with why it may be."""
    named = named_by(drink.spec.lines, tree)
    for each, said in zip(drink.then, following_in_words(drink, named), strict=True):
        why = " ".join(answer.why for answer in each.poured) if each.is_stand_in else ""
        tone = "stand_in" if each.is_stand_in else "plain"
        yield DetailRow(capitalised(said), label="Then", note=why, tone=tone)


def _subtitle(drink: Drink, tree: FamilyTree) -> str:
    parts = [base_name(drink, tree), drink.spec.glass, *drink.questions]
    if drink.makeable:
        parts.append(serves_in_words(drink, tree))
    return " · ".join(part for part in parts if part)


def _labelled(text: str, field: QWidget) -> QWidget:
    holder = QWidget()
    label = text_label(text, quiet=True)
    label.setBuddy(field)
    row_of(label, field, on=holder)
    return holder
