"""One spec in full: its lines with what meets each tonight, method, notes, riffs."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QGridLayout, QWidget

from barkeep.desktop.drink.analysis_panel import AnalysisPanel
from barkeep.desktop.drink.analysis_view import AnalysisView, CautionRow, before_you_pour
from barkeep.desktop.drink.words import (
    NOT_UNDERSTOOD,
    duty,
    kind_in_words,
    line_state,
    reason,
    written,
)
from barkeep.desktop.look.metrics import HALF, PAD, UNIT, TypeSize
from barkeep.desktop.specs.rows import origin, technique_in_words
from barkeep.desktop.widgets.buttons import button
from barkeep.desktop.widgets.details import add_heading, add_noted, grid_of_rows, in_pairs
from barkeep.desktop.widgets.labels import Link, LinkLabel, PictureLabel, caption, copyable
from barkeep.desktop.widgets.layouts import column_of
from barkeep.desktop.widgets.tips import plain_tip
from barkeep.desktop.widgets.verdict_badge import VerdictBadge
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

BROUGHT_ALONG = "A classic that barkeep brings along. To change it, write a riff of it."


@dataclass(frozen=True, slots=True)
class SpecActs:
    """What can be done with the spec on the page; None where it cannot."""

    show_tonight: Callable[[], object]
    edit: Callable[[], object] | None
    riff: Callable[[], object]
    remove: Callable[[], object] | None
    settle: Callable[[], object] | None = None


class SpecPage(QWidget):
    """`ingredient_followed` carries a key, `spec_followed` a name.

    `analysis` is taken over from the page before, where there is a view to show;
    `kin` are further parts of the page, such as its versions; `amounts_note` stands
    below the lines and says what their amounts leave open; `questions` are those of
    its lines that are not understood.
    """

    ingredient_followed = Signal(str)
    spec_followed = Signal(str)

    def __init__(
        self,
        *,
        spec: Spec,
        drink: Drink | None,
        lines: Sequence[ShownLine],
        known: frozenset[str],
        tree: FamilyTree,
        acts: SpecActs,
        view: AnalysisView | None,
        analysis: AnalysisPanel,
        kin: Sequence[QWidget | None] = (),
        amounts_note: str = "",
        questions: Sequence[OpenQuestion] = (),
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._tree, self._questions = tree, questions
        self.correction = copyable("")
        self.correction.hide()
        self._column = column_of(on=self, margins=PAD, gap=HALF)
        self._add_head(spec, known)
        self._add_verdict(drink)
        if view is not None:
            self._column.addWidget(copyable(view.brief, quiet=True))
        self._add_lines(spec, lines, drink)
        if amounts_note:
            self._column.addWidget(caption(amounts_note))
        self._column.addWidget(self.correction)
        self._add_cautions(_before_you_pour(drink, view))
        for heading, words in _words_of(spec):
            add_heading(self._column, heading)
            self._column.addWidget(copyable(words))
        if view is not None:
            add_heading(self._column, "What it comes to")
            self._column.addWidget(analysis)
            analysis.show_view(view)
            analysis.show()
        for part in kin:
            if part is not None:
                self._column.addWidget(part)
        self._add_source(spec)
        self._add_buttons(acts)
        self._column.addStretch(1)

    def show_correction(self, words: str) -> None:
        """Say below the lines what to pour so that stand-ins leave the drink what it was."""
        self.correction.setText(words)
        self.correction.setVisible(bool(words))

    def _add_head(self, spec: Spec, known: frozenset[str]) -> None:
        self._column.addWidget(copyable(spec.name, TypeSize.TITLE))
        facts = (technique_in_words(spec), spec.glass, _ice(spec))
        said = " · ".join(each for each in facts if each)
        if said:
            self._column.addWidget(copyable(said, quiet=True))
        if spec.tags:
            self._column.addWidget(copyable(f"Tags: {', '.join(spec.tags)}", quiet=True))
        if spec.riff_of:
            there = spec.riff_of in known
            original = Link(spec.riff_of, spec.riff_of) if there else spec.riff_of
            self._column.addWidget(self._linked(["Riff of ", original], self.spec_followed.emit))

    def _add_verdict(self, drink: Drink | None) -> None:
        if drink is None:
            return
        self._column.addSpacing(UNIT)
        self._column.addWidget(VerdictBadge(drink.verdict), 0, Qt.AlignmentFlag.AlignLeft)
        said = _serves(drink, self._tree)
        if said:
            self._column.addWidget(copyable(said, quiet=True))

    def _add_lines(self, spec: Spec, shown: Sequence[ShownLine], drink: Drink | None) -> None:
        add_heading(self._column, "What goes in")
        grid = grid_of_rows()
        answers: Sequence[LineAnswer | None] = drink.lines if drink else [None] * len(spec.lines)
        rows = list(zip(spec.lines, shown, answers, strict=True))
        asked = {each.line: each for each in self._questions}
        for number, row in enumerate(with_unsettled(spec, rows, lambda each: each)):
            if isinstance(row, UnsettledLine):
                self._add_question(grid, number, row, asked.get(row))
            else:
                line, as_shown, answer = row
                self._add_line(grid, number=number, line=line, shown=as_shown, answer=answer)
        self._column.addLayout(grid)

    def _add_question(
        self, grid: QGridLayout, number: int, line: UnsettledLine, asked: OpenQuestion | None
    ) -> None:
        state = NOT_UNDERSTOOD
        picture = PictureLabel(state.picture, 16, state.tone, state.word)
        said = line.question if asked is None else asked.sentence
        add_noted(grid, number, copyable(line.text), said, beside=picture)

    def _add_line(
        self,
        grid: QGridLayout,
        number: int,
        line: Line,
        shown: ShownLine,
        answer: LineAnswer | None,
    ) -> None:
        parts = line_parts(line, self._tree[line.ingredient], shown.text)
        label = self._linked(parts, self.ingredient_followed.emit)
        asked = f"What stands in for {names_in_sentence(line, self._tree)}?"
        label.setToolTip(plain_tip(f"{written(shown)}\n{asked}" if shown.written else asked))
        label.setAccessibleDescription(written(shown))
        if answer is None:
            add_noted(grid, number, label, kind_in_words(line, self._tree))
            return
        state = line_state(answer, self._tree)
        picture = PictureLabel(state.picture, 16, state.tone, state.word)
        add_noted(grid, number, label, reason(answer, self._tree), beside=picture)

    def _add_source(self, spec: Spec) -> None:
        add_heading(self._column, "Origin")
        for words in _source(spec):
            self._column.addWidget(copyable(words))

    def _add_cautions(self, cautions: Sequence[CautionRow]) -> None:
        if not cautions:
            return
        add_heading(self._column, "Before you pour")
        grid = grid_of_rows()
        for number, caution in enumerate(cautions):
            picture = PictureLabel("warning", 16, caution.tone, caution.meaning)
            add_noted(grid, number, copyable(caution.text), caution.source, beside=picture)
        self._column.addLayout(grid)

    def _add_buttons(self, acts: SpecActs) -> None:
        self._column.addSpacing(PAD)
        wanted = (
            ("Show in Tonight", acts.show_tonight),
            ("Settle", acts.settle),
            ("Edit…", acts.edit),
            ("Riff…", acts.riff),
            ("Remove", acts.remove),
        )
        offered = [button(words, act) for words, act in wanted if act is not None]
        grid = in_pairs(offered)
        grid.setColumnStretch(2, 1)
        self._column.addLayout(grid)

    def _linked(self, parts: Sequence[str | Link], follow: Callable[[str], object]) -> LinkLabel:
        label = LinkLabel(parts)
        label.followed.connect(follow)
        return label


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
        yield f"{kind}, added on {spec.added:%d %B %Y}" if spec.added else kind
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
