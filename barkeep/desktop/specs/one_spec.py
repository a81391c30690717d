"""One spec in full: its lines with what meets each tonight, method, notes, riffs."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from typing import TypeVar

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QWidget

from barkeep.desktop.drink.analysis_panel import AnalysisPanel, BalancePicture
from barkeep.desktop.drink.analysis_view import (
    AnalysisView,
    BalanceBar,
    CautionRow,
    before_you_pour,
)
from barkeep.desktop.drink.words import (
    NOT_UNDERSTOOD,
    duty,
    kind_in_words,
    line_state,
    reason,
    written,
)
from barkeep.desktop.look.metrics import HALF, PAD, UNIT, TypeSize
from barkeep.desktop.screens.screen import order_tabs
from barkeep.desktop.specs.rows import origin, technique_in_words
from barkeep.desktop.widgets.details import (
    DetailRow,
    DetailSection,
    DetailSections,
    add_heading,
    remove,
    say,
)
from barkeep.desktop.widgets.drink_picture import DrinkPictureView
from barkeep.desktop.widgets.labels import Link, copyable
from barkeep.desktop.widgets.layouts import (
    SPRING,
    at_left,
    at_top,
    column_of,
    laid_out_once,
    row_of,
    wide,
)
from barkeep.desktop.widgets.refilled import Offered, OfferedRow
from barkeep.desktop.widgets.terms import meaning
from barkeep.desktop.widgets.tips import broken
from barkeep.desktop.widgets.verdict_badge import VerdictBadge
from barkeep.domain.days import day_said
from barkeep.domain.ingredients.tree import FamilyTree, Ingredient
from barkeep.domain.phrases import capitalised
from barkeep.domain.pouring.assessment import LineAnswer
from barkeep.domain.pouring.minded import Minded
from barkeep.domain.pouring.serves_in_words import serves_in_words
from barkeep.domain.pouring.verdicts import Drink
from barkeep.domain.spec_text.settling import OpenQuestion
from barkeep.domain.specs.garnish_notes import garnishes_in_words, other_notes
from barkeep.domain.specs.shown_lines import ShownLine, names_in_sentence
from barkeep.domain.specs.spec import Line, Spec, UnsettledLine, with_unsettled
from barkeep.errors import spoken_list

Part = TypeVar("Part", bound=QWidget)
BROUGHT_ALONG = "A classic that barkeep brings along. To change it, write a riff of it."


@dataclass(frozen=True, slots=True)
class SpecActs:
    """What can be done with the spec on the page; None where it cannot."""

    show_tonight: Callable[[], object]
    edit: Callable[[], object] | None
    riff: Callable[[], object]
    remove: Callable[[], object] | None
    settle: Callable[[], object] | None = None


@dataclass(frozen=True, slots=True)
class SpecShown:
    """All that the page of one spec says.

    `known` says whether the spec it is a riff of is in the book; `amounts_note` is what its
    amounts leave open; `questions` are those of its lines that are not understood.
    """

    spec: Spec
    drink: Drink | None
    lines: Sequence[ShownLine]
    tree: FamilyTree
    view: AnalysisView | None
    known: bool
    amounts_note: str = ""
    questions: Sequence[OpenQuestion] = ()


class SpecPage(QWidget):
    """`ingredient_followed` carries a key, `spec_followed` a name.

    `balance_seen` comes once the figures of another spec are painted.

    Made once, and filled with each spec that is looked at.
    """

    ingredient_followed = Signal(str)
    spec_followed = Signal(str)
    balance_seen = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._title = copyable("", TypeSize.TITLE)
        self._facts, self._tags, self._serves, self._brief = (
            copyable("", quiet=True) for _ in range(4)
        )
        self._parent = DetailSections()
        self._badge, self._glass = VerdictBadge("short"), DrinkPictureView()
        self._sections, self._origin = DetailSections(), DetailSections()
        self._figures, self._analysis = QWidget(), AnalysisPanel()
        add_heading(column := column_of(on=self._figures, gap=HALF), "What it comes to")
        column.addWidget(self._analysis)
        self._kin = column_of(gap=HALF)
        self._kindred: tuple[QWidget, ...] = ()
        self._shown: SpecShown | None = None
        self._offers = OfferedRow()
        self._parent.followed.connect(self.spec_followed)
        balance: BalancePicture = self._analysis.picture
        balance.seen.connect(self.balance_seen)
        self._sections.followed.connect(self.ingredient_followed)
        head = column_of(
            self._title,
            self._facts,
            self._tags,
            self._parent,
            column_of(at_left(self._badge), margins=(0, UNIT, 0, 0)),
            self._serves,
            self._brief,
            SPRING,
            gap=HALF,
        )
        column_of(
            row_of(wide(head), at_top(self._glass)),
            self._sections,
            self._figures,
            self._kin,
            self._origin,
            UNIT,
            self._offers,
            SPRING,
            on=self,
            margins=PAD,
            gap=HALF,
        )

    def fill(self, shown: SpecShown, acts: SpecActs, kin: Sequence[QWidget]) -> None:
        """Show another spec; `kin` are further parts of its page, such as its versions."""
        self._shown = shown
        with laid_out_once(self, self._figures):
            self._fill_head(shown)
            self._fill_sections("")
            self._fill_figures(shown.view)
            self._put_kin(kin)
            source = tuple(map(DetailRow, _source(shown.spec)))
            self._origin.fill([DetailSection("Origin", source)])
            self._offers.fill(list(_offers(acts)))

    def shown_part(self, kind: type[Part]) -> Part | None:
        """The further part of this kind, where the spec has one."""
        return next((each for each in self._kindred if isinstance(each, kind)), None)

    def show_correction(self, words: str) -> None:
        """Say below the lines what to pour so that stand-ins leave the drink what it was."""
        self._fill_sections(words)

    def show_bars(self, bars: Sequence[BalanceBar]) -> None:
        """Draw what it comes to beside the others of its family."""
        self._analysis.show_bars(bars)

    def _fill_head(self, shown: SpecShown) -> None:
        spec, drink = shown.spec, shown.drink
        facts = (technique_in_words(spec), spec.glass, _ice(spec))
        say(self._title, spec.name)
        say(self._facts, " · ".join(each for each in facts if each))
        say(self._tags, f"Tags: {', '.join(spec.tags)}" if spec.tags else "")
        self._parent.setVisible(bool(spec.riff_of))
        self._parent.fill([DetailSection("", tuple(_riff_of(shown)))])
        self._badge.setVisible(drink is not None)
        if drink is not None:
            self._badge.show_verdict(drink.verdict)
        say(self._serves, "" if drink is None else _serves(drink, shown.tree))
        say(self._brief, "" if shown.view is None else shown.view.brief)
        self._glass.show_picture(None if shown.view is None else shown.view.picture)

    def _fill_sections(self, correction: str) -> None:
        shown = self._shown
        if shown is None:
            return
        lines = list(_lines(shown))
        if shown.amounts_note:
            lines.append(DetailRow("", note=shown.amounts_note))
        if correction:
            lines.append(
                DetailRow(correction, label="Balance", picture="stand-ins", tone="stand_in")
            )
        sections = [DetailSection("What goes in", tuple(lines))]
        if minded := tuple(map(_mind, _before_you_pour(shown.drink, shown.view))):
            sections.append(DetailSection("Before you pour", minded))
        for heading, words in _words_of(shown.spec):
            sections.append(DetailSection(heading, (DetailRow(words),)))
        self._sections.fill(sections)

    def _fill_figures(self, view: AnalysisView | None) -> None:
        self._figures.setVisible(view is not None)
        if view is not None:
            self._analysis.show_view(view)

    def _put_kin(self, kin: Sequence[QWidget]) -> None:
        for old in self._kindred:
            if old not in kin:
                self._kin.removeWidget(old)
                remove(old)
        self._kindred = tuple(kin)
        for each in kin:
            self._kin.addWidget(each)
            each.show()
        if kin:
            order_tabs(self)


def _offers(acts: SpecActs) -> Iterator[Offered]:
    """Only what can be done."""
    wanted = (
        ("Show in Tonight", acts.show_tonight),
        ("Settle", acts.settle),
        ("Edit…", acts.edit),
        ("Riff…", acts.riff),
        ("Remove", acts.remove),
    )
    for words, act in wanted:
        if act is not None:
            yield Offered(words, act)


def _riff_of(shown: SpecShown) -> Iterator[DetailRow]:
    parent = shown.spec.riff_of
    if parent:
        known = Link(parent, parent) if shown.known else parent
        told = meaning("riff")
        yield DetailRow("", parts=("Riff of ", known), tip=broken(told), said=told)


def _lines(shown: SpecShown) -> Iterator[DetailRow]:
    """Each line as it is written, with what meets it tonight; what is not understood as well."""
    spec, tree = shown.spec, shown.tree
    answers: Sequence[LineAnswer | None]
    answers = shown.drink.lines if shown.drink else [None] * len(spec.lines)
    rows = list(zip(spec.lines, shown.lines, answers, strict=True))
    asked = {each.line: each for each in shown.questions}
    for row in with_unsettled(spec, rows, lambda each: each):
        if isinstance(row, UnsettledLine):
            yield _question(row, asked.get(row))
        else:
            line, as_shown, answer = row
            yield _line(line, as_shown, answer, tree)


def _question(line: UnsettledLine, asked: OpenQuestion | None) -> DetailRow:
    state = NOT_UNDERSTOOD
    said = line.question if asked is None else asked.sentence
    return DetailRow(line.text, label=state.word, note=said, picture=state.picture, tone=state.tone)


def _line(line: Line, shown: ShownLine, answer: LineAnswer | None, tree: FamilyTree) -> DetailRow:
    parts = line_parts(line, tree[line.ingredient], shown.text)
    asked = f"What stands in for {names_in_sentence(line, tree)}?"
    tip = f"{written(shown)}\n{asked}" if shown.written else asked
    if answer is None:
        return DetailRow(
            "", note=kind_in_words(line, tree), tip=tip, said=written(shown), parts=parts
        )
    state = line_state(answer, tree)
    return DetailRow(
        "",
        label=state.word,
        note=reason(answer, tree),
        picture=state.picture,
        tone=state.tone,
        tip=tip,
        said=written(shown),
        parts=parts,
    )


def _mind(row: CautionRow) -> DetailRow:
    return DetailRow(row.text, label=row.meaning, note=row.source, picture="warning", tone=row.tone)


def line_parts(line: Line, ingredient: Ingredient, text: str = "") -> tuple[str | Link, ...]:
    """A line, its ingredient to be followed; all of it where that is not named.

    `text` is how it is shown; left out, how it is written.
    """
    text, after = text or line.text, duty(line)
    tail = f" ({after})" if after and after not in text.casefold() else ""
    for name in sorted(ingredient.all_names, key=len, reverse=True):
        found = re.search(rf"\b{re.escape(name)}\b", text, re.IGNORECASE)
        if found:
            link = Link(found.group(), ingredient.key)
            return (text[: found.start()], link, text[found.end() :] + tail)
    return (Link(text, ingredient.key), tail)


def _serves(drink: Drink, tree: FamilyTree) -> str:
    if not drink.makeable:
        names = [names_in_sentence(line, tree) for line in drink.missing_lines]
        missing = [f"missing {spoken_list(names, 'and')}"] if names else []
        return capitalised(spoken_list([*missing, *drink.questions], "and"))
    if drink.serves is None:
        return "Nothing limits the serves"
    return serves_in_words(drink, tree)


def _ice(spec: Spec) -> str:
    if not spec.ice or "ice" in spec.ice.casefold():
        return spec.ice
    return f"{spec.ice} ice"


def _words_of(spec: Spec) -> Iterator[tuple[str, str]]:
    """What is said of a spec in free words, under its headings."""
    said = (
        ("Garnish", "\n".join(garnishes_in_words(spec.notes))),
        ("Method", spec.method),
        ("Notes", "\n".join(other_notes(spec.notes))),
    )
    yield from (each for each in said if each[1])


def _source(spec: Spec) -> Iterator[str]:
    kind = "Your own riff" if origin(spec) == "Riff" else "Your own"
    if spec.classic:
        yield BROUGHT_ALONG
    else:
        yield f"{kind}, added on {day_said(spec.added)}" if spec.added else kind
    if spec.credit:
        yield f"Credit: {spec.credit}"
    if spec.source:
        yield f"Source: {spec.source}"


def _before_you_pour(drink: Drink | None, view: AnalysisView | None) -> tuple[CautionRow, ...]:
    """As it would be poured tonight, and what else its figures and its words raise."""
    written = Minded() if view is None else view.minded
    if drink is None:
        return before_you_pour(written)
    return before_you_pour(drink.minded.with_more(written.cautions), drink.notices)
