"""Tonight: what can be made, with what, how often, and why not."""

from __future__ import annotations

from collections.abc import Hashable, Iterator
from functools import partial

from PySide6.QtWidgets import QCheckBox, QComboBox, QWidget

from barkeep.desktop.drink.analysis_view import correction_words
from barkeep.desktop.drink.words import (
    ANY_BASE,
    NOT_UNDERSTOOD,
    kinds_by_name,
    line_state,
    reason,
    with_duty,
    written,
)
from barkeep.desktop.screens.list_stack import set_widths
from barkeep.desktop.screens.row_table import Column
from barkeep.desktop.screens.screen import ScreenContext
from barkeep.desktop.screens.table_screen import TableScreen, on_activated, sort_by
from barkeep.desktop.widgets.buttons import button, number_field, offer_choices
from barkeep.desktop.widgets.chips import CLOSENESS, FilterChips
from barkeep.desktop.widgets.delegates import (
    ICONS_ROLE,
    SUBTITLE_ROLE,
    VERDICT_ROLE,
    VerdictDelegate,
)
from barkeep.desktop.widgets.details import DetailRow, DetailSection
from barkeep.desktop.widgets.empty_state import EmptyState
from barkeep.desktop.widgets.labels import text_label
from barkeep.desktop.widgets.layouts import row_of
from barkeep.desktop.widgets.verdict_badge import VerdictBadge
from barkeep.domain.bar.changes import Changes
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import capitalised
from barkeep.domain.pouring.assessment import LineAnswer
from barkeep.domain.pouring.memory import Memory
from barkeep.domain.pouring.serves_in_words import (
    following_in_words,
    serves_in_words,
    serves_of,
)
from barkeep.domain.pouring.verdicts import VERDICT_WORDS, VERDICTS, Drink, tonight
from barkeep.domain.specs.called import named_by
from barkeep.domain.specs.shown_lines import ShownLine, ingredients_in_brief, names_of, shown_lines
from barkeep.domain.specs.spec import UnsettledLine, base, base_kind, with_unsettled
from barkeep.domain.stand_ins.corrections import Correction, correction_for
from barkeep.errors import spoken_list

MANY = 10**6
"""Sorts what nothing limits after every number."""


def drink_columns(tree: FamilyTree) -> tuple[Column[Drink], ...]:
    """Drink, verdict, base, serves, and what is missing or runs out first."""
    return (
        Column(
            "Drink",
            lambda drink: drink.spec.name,
            roles={
                SUBTITLE_ROLE: lambda drink: ingredients_in_brief(drink.spec, tree),
                ICONS_ROLE: lambda drink: ("warning",) if drink.warnings else (),
            },
            tooltip=lambda drink: "\n".join(drink.warnings),
        ),
        Column(
            "Tonight",
            lambda drink: VERDICT_WORDS[drink.verdict].name,
            key=lambda drink: (VERDICTS.index(drink.verdict), drink.spec.name.casefold()),
            roles={VERDICT_ROLE: lambda drink: drink.verdict},
        ),
        Column("Base", lambda drink: base_name(drink, tree)),
        Column(
            "Serves",
            serves_in_brief,
            key=lambda drink: MANY if drink.serves is None else drink.serves,
            right=True,
            tooltip=lambda drink: serves_in_words(drink, tree) if drink.makeable else "",
        ),
        Column("Limited by", lambda drink: hindrance(drink, tree)),
    )


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
CAUTION = (
    "Drink with care: never before driving, in pregnancy or under age. Local rules come first."
)
NO_BOTTLES = "No bottles yet: every drink is short until the bar knows what is there."


class TonightScreen(TableScreen[Drink]):
    """One row a spec; the details say what goes in, line by line, and why."""

    key = "tonight"
    title = "Tonight"
    noun = "drinks"
    search_hint = "Search drinks and ingredients…"

    def __init__(self, context: ScreenContext, parent: QWidget | None = None) -> None:
        self._tree = context.bar.snapshot.knowledge.tree
        self._memory = Memory()
        self._is_empty = False
        empty = EmptyState("picture-empty-glass", "No specs yet", "Write one on the Specs page")
        super().__init__(context, drink_columns(self._tree), empty, parent)
        self.closeness = FilterChips("Stand-ins", CLOSENESS, "close")
        self.serves = number_field("Serves", 1, 99)
        self.bases = QComboBox()
        self.ready_only = QCheckBox("Ready only")
        self._prepare_filters()
        self.view.setItemDelegateForColumn(1, VerdictDelegate(self.view))
        set_widths(self.view, (196, 100, 96, 68))
        sort_by(self.view, 1)
        on_activated(self.view, self._open_spec)

    def refresh(self, changes: Changes) -> None:
        snapshot = self.context.bar.snapshot
        if self._tree is not snapshot.knowledge.tree:  # there are others, or other names for them
            self._tree = snapshot.knowledge.tree
            self.table.columns = drink_columns(self._tree)
        within, serves = self.closeness.choice, self.serves.value()
        question = partial(tonight, snapshot, within, serves, self._memory)  # type: ignore[arg-type]
        self.context.background.ask(self.key, question, self._show_answer)

    def identity(self, row: Drink) -> Hashable:
        return row.spec.name

    def words(self, row: Drink) -> str:
        named = (self._names_around(line.ingredient) for line in row.spec.lines)
        called = (names_of(line, self._tree) for line in row.spec.lines)
        asked = (each.text for each in row.spec.unsettled)
        return " ".join((row.spec.name, row.spec.glass, *named, *called, *asked))

    def accepts(self, row: Drink) -> bool:
        if self.ready_only.isChecked() and not row.makeable:
            return False
        wanted = self.bases.currentData()
        key = base(row.spec, self._tree)
        return wanted is None or (key is not None and self._tree.is_a(key, wanted))

    def chosen_specs(self) -> tuple[str, ...]:
        return () if self.current is None else (self.current.spec.name,)

    def clear_filters(self) -> None:
        self.ready_only.setChecked(False)
        self.bases.setCurrentIndex(0)
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
        if row.then:
            after = f"After {serves_of(row.serves)}"
            sections.append(DetailSection(after, tuple(_followings(row, self._tree))))
        if row.warnings:
            sections.append(DetailSection("Before you pour", tuple(map(_warning, row.warnings))))
        if row.spec.method:
            sections.append(DetailSection("Method", (DetailRow(row.spec.method),)))
        sections.append(DetailSection("Care", (DetailRow(CAUTION),)))
        buttons = [button("Open the spec", self._open_spec)]
        if row.missing:
            buttons.append(button("What stands in?", self._ask_for_stand_ins))
        self.detail.show_details(
            row.spec.name,
            _subtitle(row, self._tree),
            sections,
            top=VerdictBadge(row.verdict),
            buttons=buttons,
        )

    def _prepare_filters(self) -> None:
        self.closeness.chosen.connect(self._ask_again)
        self.serves.valueChanged.connect(self._ask_again)
        self.bases.setAccessibleName("Base")
        offer_choices(self.bases, [ANY_BASE])
        self.bases.currentIndexChanged.connect(lambda _index: self.filter_again())
        self.ready_only.toggled.connect(lambda _on: self.filter_again())
        self.add_filter(self.closeness)
        self.add_filter(_labelled("Serves", self.serves))
        self.add_filter(self.bases)
        self.add_filter(self.ready_only)

    def _ask_again(self, _choice: object) -> None:
        self.refresh(frozenset())

    def _show_answer(self, drinks: tuple[Drink, ...]) -> None:
        self._offer_bases(drinks)
        self._mind_empty_bar()
        self.show_rows(drinks)
        ready = sum(each.verdict == "ready" for each in drinks)
        stand_in = sum(each.verdict == "stand_in" for each in drinks)
        near = sum(each.verdict == "one_short" for each in drinks)
        self.summary.setText(f"{ready} ready, {stand_in} with a stand-in, {near} one short")

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

    def _offer_bases(self, drinks: tuple[Drink, ...]) -> None:
        """Every kind something is built on, by name; the choice stays where it still stands."""
        keys = {key for key in (base(each.spec, self._tree) for each in drinks) if key}
        kinds = {base_kind(key, self._tree) for key in keys}
        offer_choices(self.bases, [ANY_BASE, *kinds_by_name(kinds, self._tree)])

    def _names_around(self, key: str) -> str:
        kinds = (key, *self._tree.ancestors(key))
        return " ".join(self._tree.name(each) for each in kinds)

    def _open_spec(self) -> None:
        if self.current is not None:
            self.context.go("specs", self.current.spec.name)

    def _ask_for_stand_ins(self) -> None:
        if self.current is not None and self.current.missing:
            self.context.go("stand-ins", self.current.missing[0])


def _warning(text: str) -> DetailRow:
    return DetailRow(text, picture="warning", tone="warning")


def _question(line: UnsettledLine) -> DetailRow:
    state = NOT_UNDERSTOOD
    return DetailRow(
        line.text, label=state.word, note=line.question, picture=state.picture, tone=state.tone
    )


def _line(answer: LineAnswer, shown: ShownLine, tree: FamilyTree) -> DetailRow:
    state = line_state(answer)
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
