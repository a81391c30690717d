"""One spec in full: its lines with what meets each tonight, method, notes, riffs."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from functools import partial
from typing import TypeVar

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QWidget

from barkeep.desktop.drink.analysis_panel import AnalysisPanel, BalancePicture
from barkeep.desktop.drink.analysis_view import AnalysisView, BalanceBar
from barkeep.desktop.drink.cautions_in_brief import minded_section
from barkeep.desktop.drink.words import (
    NOT_UNDERSTOOD,
    duty,
    kind_in_words,
    line_state,
    reason,
    written,
)
from barkeep.desktop.look.metrics import HALF, PAD, UNIT
from barkeep.desktop.specs.rows import technique_in_words
from barkeep.desktop.widgets.details import (
    DetailRow,
    DetailSection,
    DetailSections,
    remove,
    say,
)
from barkeep.desktop.widgets.drink_picture import DrinkPictureView
from barkeep.desktop.widgets.folds import FoldedPart, Folds
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
from barkeep.domain.specs.glasses import glass_in_words, ice_in_words
from barkeep.domain.specs.shown_lines import ShownLine, names_in_sentence
from barkeep.domain.specs.spec import Line, Spec, UnsettledLine, with_unsettled
from barkeep.errors import spoken_list
from barkeep.translation import tr, tr_noop

Part = TypeVar("Part", bound=QWidget)
BROUGHT_ALONG = tr_noop("A classic that barkeep brings along. To change it, write a riff of it.")


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


@dataclass(frozen=True)
class SpecPart:
    """A further part of a spec's page, such as its trials: that in brief, and what makes it.

    It is made once its fold is open.
    """

    fold: str
    heading: str
    brief: str
    make: Callable[[], QWidget]


class SpecPage(QWidget):
    """`ingredient_followed` carries a key, `spec_followed` a name.

    `balance_seen` comes once the figures of another spec are painted.

    Made once, and filled with each spec that is looked at; what is folded, once it is opened.
    """

    ingredient_followed = Signal(str)
    spec_followed = Signal(str)
    balance_seen = Signal()

    def __init__(self, folds: Folds, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._folds = folds
        self._facts, self._tags, self._serves, self._brief = (
            copyable("", quiet=True) for _ in range(4)
        )
        self._parent = DetailSections()
        self._badge, self._glass = VerdictBadge("short"), DrinkPictureView()
        self._sections, self._origin = DetailSections(folds), DetailSections(folds)
        self._analysis = AnalysisPanel()
        self._figures = FoldedPart(folds, "figures", self._analysis)
        self._kin = column_of(gap=0)
        self._further: dict[str, tuple[FoldedPart, Holder]] = {}
        self._shown: SpecShown | None = None
        self._parent.followed.connect(self.spec_followed)
        balance: BalancePicture = self._analysis.picture
        balance.seen.connect(self.balance_seen)
        self._sections.followed.connect(self.ingredient_followed)
        head = column_of(
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
            SPRING,
            on=self,
            margins=(PAD, HALF, PAD, PAD),
            gap=HALF,
        )

    def fill(self, shown: SpecShown, further: Sequence[SpecPart]) -> None:
        """Show another spec, and further parts of its page, such as its versions."""
        self._shown = shown
        with laid_out_once(self):
            self._fill_head(shown)
            self._fill_sections("")
            self._fill_figures(shown.view)
            self._fill_further(further)
            source = tuple(map(DetailRow, _source(shown.spec)))
            brief = source[0].text
            self._origin.fill([DetailSection(tr("Origin"), source, fold="origin", brief=brief)])

    def make_ready(self) -> None:
        """Make what the first spec will be filled in."""
        self._sections.make_ready()

    def shown_part(self, kind: type[Part]) -> Part | None:
        """The further part of this kind, where the spec has one."""
        held = (holder.held for _part, holder in self._further.values())
        return next((each for each in held if isinstance(each, kind)), None)

    def show_correction(self, words: str) -> None:
        """Say below the lines what to pour so that stand-ins leave the drink what it was."""
        self._fill_sections(words)

    def show_bars(self, bars: Sequence[BalanceBar]) -> None:
        """Draw what it comes to beside the others of its family."""
        self._analysis.show_bars(bars)

    def _fill_head(self, shown: SpecShown) -> None:
        spec, drink = shown.spec, shown.drink
        facts = (technique_in_words(spec), glass_in_words(spec.glass), _ice(spec))
        say(self._facts, " · ".join(each for each in facts if each))
        say(self._tags, tr("Tags: {tags}", tags=", ".join(spec.tags)) if spec.tags else "")
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
                DetailRow(correction, label=tr("Balance"), picture="stand-ins", tone="stand_in")
            )
        sections = [
            *_before_you_pour(shown.drink, shown.view),
            DetailSection(tr("What goes in"), tuple(lines)),
        ]
        for fold, heading, words in _words_of(shown.spec):
            opens = fold != "notes"
            row = (DetailRow(words),)
            sections.append(DetailSection(heading, row, fold=fold, brief=words[:80], opens=opens))
        self._sections.fill(sections)

    def _fill_figures(self, view: AnalysisView | None) -> None:
        self._figures.setVisible(view is not None)
        if view is not None:
            brief = " · ".join(f"{each.label} {each.value}" for each in view.bars)
            fill = partial(self._analysis.show_view, view)
            self._figures.show_part(tr("What it comes to"), brief, fill)

    def _fill_further(self, further: Sequence[SpecPart]) -> None:
        wanted = {each.fold for each in further}
        for fold, (part, holder) in self._further.items():
            if fold not in wanted:
                part.hide()
                holder.empty()
        for each in further:
            part, holder = self._part(each.fold)
            holder.empty()
            part.show_part(each.heading, each.brief, partial(holder.hold, each.make))
            part.show()

    def _part(self, fold: str) -> tuple[FoldedPart, Holder]:
        if fold not in self._further:
            holder = Holder(self._folds)
            self._further[fold] = FoldedPart(self._folds, fold, holder), holder
            self._kin.addWidget(self._further[fold][0])
            self._folds.grow()
        return self._further[fold]


class Holder(QWidget):
    """Holds one widget at a time, made anew for each spec."""

    def __init__(self, folds: Folds) -> None:
        super().__init__()
        self._column = column_of(on=self, gap=0)
        self._folds = folds
        self.held: QWidget | None = None
        """What it holds."""

    def hold(self, make: Callable[[], QWidget]) -> None:
        """Make it and show it in place of what was there."""
        self.empty()
        self.held = made = make()
        self._column.addWidget(made)
        made.show()
        self._folds.grow()

    def empty(self) -> None:
        """Hold nothing."""
        if self.held is not None:
            self._column.removeWidget(self.held)
        remove(self.held)
        self.held = None


def _riff_of(shown: SpecShown) -> Iterator[DetailRow]:
    parent = shown.spec.riff_of
    if parent:
        known = Link(parent, parent) if shown.known else parent
        told = meaning("riff")
        yield DetailRow("", parts=(tr("Riff of "), known), tip=broken(told), said=told)


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
    asked = tr("What stands in for {name}?", name=names_in_sentence(line, tree))
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


def line_parts(line: Line, ingredient: Ingredient, text: str = "") -> tuple[str | Link, ...]:
    """A line, its ingredient to be followed; all of it where that is not named.

    `text` is how it is shown; left out, how it is written.
    """
    text, after = text or line.text, duty(line)
    tail = f" ({after})" if after and after not in text.casefold() else ""
    plain = text.casefold()
    said = (name for name in ingredient.all_names if name.casefold() in plain)
    for name in sorted(said, key=len, reverse=True):  # most are not said: patterns take long
        found = re.search(rf"\b{re.escape(name)}\b", text, re.IGNORECASE)
        if found:
            link = Link(found.group(), ingredient.key)
            return (text[: found.start()], link, text[found.end() :] + tail)
    return (Link(text, ingredient.key), tail)


def _serves(drink: Drink, tree: FamilyTree) -> str:
    if not drink.makeable:
        names = [names_in_sentence(line, tree) for line in drink.missing_lines]
        missing = [tr("missing {names}", names=spoken_list(names, "and"))] if names else []
        return capitalised(spoken_list([*missing, *drink.questions], "and"))
    if drink.serves is None:
        return tr("Nothing limits the serves")
    return serves_in_words(drink, tree)


def _ice(spec: Spec) -> str:
    if not spec.ice or "ice" in spec.ice.casefold():
        return spec.ice
    return tr("{ice} ice", ice=ice_in_words(spec.ice))


def _words_of(spec: Spec) -> Iterator[tuple[str, str, str]]:
    """What is said of a spec in free words, each with its fold and its heading."""
    said = (
        ("garnish", tr("Garnish"), "\n".join(garnishes_in_words(spec.notes))),
        ("method", tr("Method"), spec.method),
        ("notes", tr("Notes"), "\n".join(other_notes(spec.notes))),
    )
    yield from (each for each in said if each[2])


def _source(spec: Spec) -> Iterator[str]:
    kind = tr("Your own riff") if spec.riff_of else tr("Your own")
    if spec.classic:
        yield tr(BROUGHT_ALONG)
    else:
        yield (
            tr("{kind}, added on {day}", kind=kind, day=day_said(spec.added))
            if spec.added
            else kind
        )
    if spec.credit:
        yield tr("Credit: {credit}", credit=spec.credit)
    if spec.source:
        yield tr("Source: {source}", source=spec.source)


def _before_you_pour(drink: Drink | None, view: AnalysisView | None) -> tuple[DetailSection, ...]:
    """As it would be poured tonight, and what else its figures and its words raise."""
    written = Minded() if view is None else view.minded
    if drink is None:
        return minded_section(written)
    return minded_section(drink.minded.with_more(written.cautions), drink.notices)
