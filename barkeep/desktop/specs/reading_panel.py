"""Beside the text: how each line is understood, what is wrong, and what the drink comes to."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import partial

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QGridLayout, QPushButton, QSizePolicy, QVBoxLayout, QWidget

from barkeep.desktop.drink.analysis_panel import AnalysisPanel
from barkeep.desktop.drink.analysis_view import AnalysisView, before_you_pour
from barkeep.desktop.ingredients.teaching import TEACH, teach_buttons
from barkeep.desktop.look.metrics import HALF, PAD, UNIT, TypeSize
from barkeep.desktop.specs.reading import Fault, Fix, Seen, SeenLine, SeenSpec
from barkeep.desktop.widgets.chips import FlowLayout
from barkeep.desktop.widgets.details import ScrolledPage
from barkeep.desktop.widgets.drink_picture import DrinkPictureView
from barkeep.desktop.widgets.labels import Link, LinkLabel, PictureLabel, text_label
from barkeep.desktop.widgets.layouts import SPRING, at_left, column_of
from barkeep.desktop.widgets.tips import plain_tip
from barkeep.domain.amounts.amount import show_range
from barkeep.domain.amounts.units import US_UNITS, BarUnits
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import capitalised, folded
from barkeep.domain.spec_text.lines import ReadLine
from barkeep.domain.spec_text.text import ReadSpec
from barkeep.domain.specs.spec import Line
from barkeep.translation import tr, tr_noop

HOW_TO = (
    tr_noop("The name comes first, then one ingredient a line."),
    tr_noop(
        "Lines such as Glass: coupe, Garnish: lemon peel, Riff of: and Notes: say what they hold."
    ),
    tr_noop("After a blank line comes the method."),
    tr_noop("A line of --- or two blank lines begin another spec; several can be pasted at once."),
)
SURE = 0.9
"""A name matched with less confidence than this is pointed out."""
MOST_SPECS = 40


class ReadingPanel(ScrolledPage):
    """`fix_chosen` carries a `Fix`; `line_chosen` a line number to go to.

    `teach_chosen` carries the words that are to be taught, and as what.
    """

    fix_chosen = Signal(object)
    line_chosen = Signal(int)
    teach_chosen = Signal(str, str)

    def __init__(
        self,
        tree: FamilyTree,
        view_of: Callable[[ReadSpec], AnalysisView | None],
        units: BarUnits = US_UNITS,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(tr("How the text is understood"), parent=parent)
        self._tree, self._view_of, self._units = tree, view_of, units
        self.fix_buttons: list[QPushButton] = []
        self.teach_buttons: list[QPushButton] = []
        self._page = QWidget()
        self._analysis = _AnalysisBlock()
        holder = QWidget()
        self._column = column_of(self._page, self._analysis, SPRING, on=holder, gap=0)
        self.show_page(holder)

    def know(self, tree: FamilyTree, view_of: Callable[[ReadSpec], AnalysisView | None]) -> None:
        """Name ingredients as this tree does, and analyse drinks so, from now on."""
        self._tree, self._view_of = tree, view_of

    def show_seen(self, seen: Seen, line: int) -> None:
        """Show the spec in which `line` stands in full, the others in a line each."""
        self.fix_buttons, self.teach_buttons = [], []
        page = QWidget()
        column = column_of(on=page, margins=PAD)
        current = seen.at(line)
        if current is None:
            self._add_how_to(column)
        else:
            self._add_spec(column, current, line)
            self._add_others(column, [each for each in seen.specs if each is not current])
        self._swap(page)
        self._analysis.show_view(None if current is None else self._view_of(current.read))

    def _swap(self, page: QWidget) -> None:
        """A button of the old page may be telling of its click just now: it goes later."""
        kept, old = self.verticalScrollBar().value(), self._page
        self._column.replaceWidget(old, page)
        old.hide()
        old.deleteLater()
        self._page = page
        page.show()
        self.verticalScrollBar().setValue(kept)

    def _add_how_to(self, column: QVBoxLayout) -> None:
        column.addWidget(text_label(tr("How to write a spec"), TypeSize.STRONG))
        for words in map(tr, HOW_TO):
            column.addWidget(text_label(words, quiet=True, wrap=True))

    def _add_spec(self, column: QVBoxLayout, spec: SeenSpec, line: int) -> None:
        column.addWidget(text_label(spec.name, TypeSize.SUBTITLE, wrap=True))
        grid = QGridLayout()
        grid.setHorizontalSpacing(UNIT + HALF)
        grid.setVerticalSpacing(UNIT)
        grid.setColumnStretch(1, 1)
        by_line: dict[int, list[Fault]] = {}
        for fault in spec.faults:
            by_line.setdefault(fault.line, []).append(fault)
        for seen in spec.lines:
            if seen.number not in by_line:
                self._add_line(grid, seen)
            else:
                for fault in by_line.pop(seen.number):
                    self._add_fault(grid, fault)
        for fault in (each for faults in by_line.values() for each in faults):
            self._add_fault(grid, fault)
        column.addLayout(grid)
        for words in _facts(spec):
            column.addWidget(text_label(words, quiet=True, wrap=True))

    def _add_line(self, grid: QGridLayout, seen: SeenLine) -> None:
        picture, tone, meaning = _mark(seen.read)
        name = text_label(_understood(seen.read.line, self._tree, self._units), wrap=True)
        note = _note(seen.read, self._tree)
        self._add_row(grid, PictureLabel(picture, 16, tone, meaning), name, note)

    def _add_fault(self, grid: QGridLayout, fault: Fault) -> None:
        where = Link(tr("Line {line}", line=fault.line), str(fault.line))
        label = LinkLabel([where, ": ", fault.message])
        label.followed.connect(lambda line: self.line_chosen.emit(int(line)))
        self._add_row(grid, PictureLabel("error", 16, "danger", tr("Cannot be used")), label, "")
        chips = [*map(self._fix_button, fault.fixes)]
        if fault.unknown:
            self.teach_buttons += teach_buttons(fault.unknown, self.teach_chosen.emit)
            chips += self.teach_buttons[-len(TEACH) :]
        if chips:
            grid.addLayout(FlowLayout(chips, HALF), grid.rowCount(), 1)

    def _fix_button(self, fix: Fix) -> QPushButton:
        made = QPushButton(fix.text.replace("&", "&&"))
        made.setProperty("chip", True)
        made.setAccessibleName(tr("Write {text} instead", text=fix.text))
        made.setToolTip(plain_tip(tr("Write “{text}” instead", text=fix.text)))
        made.setSizePolicy(QSizePolicy.Policy.Maximum, QSizePolicy.Policy.Fixed)
        made.clicked.connect(partial(self._choose, fix))
        self.fix_buttons.append(made)
        return made

    def _choose(self, fix: Fix, _checked: bool = False) -> None:
        self.fix_chosen.emit(fix)

    def _add_row(self, grid: QGridLayout, picture: PictureLabel, words: QWidget, note: str) -> None:
        row = grid.rowCount()
        grid.addWidget(picture, row, 0, Qt.AlignmentFlag.AlignTop)
        holder = column_of(words, gap=1)
        if note:
            holder.addWidget(text_label(note, TypeSize.CAPTION, quiet=True, wrap=True))
        grid.addLayout(holder, row, 1)

    def _add_others(self, column: QVBoxLayout, others: Sequence[SeenSpec]) -> None:
        if not others:
            return
        column.addSpacing(UNIT)
        column.addWidget(text_label(tr("Also in this text"), TypeSize.STRONG))
        wrong_first = sorted(others, key=lambda each: not each.faults)
        for spec in wrong_first[:MOST_SPECS]:
            line = spec.faults[0].line if spec.faults else spec.first
            label = LinkLabel([Link(spec.name, str(line)), f": {_summary(spec)}"])
            label.followed.connect(lambda target: self.line_chosen.emit(int(target)))
            column.addWidget(label)
        left = len(others) - MOST_SPECS
        if left > 0:
            column.addWidget(text_label(tr("and {left} more", left=left), quiet=True))


class _AnalysisBlock(QWidget):
    """What the drink comes to, under its own heading; nothing while nothing can be poured."""

    def __init__(self) -> None:
        super().__init__()
        self._brief = text_label("", quiet=True, wrap=True)
        self._panel, self._glass = AnalysisPanel(), DrinkPictureView()
        self._warned = text_label(tr("Before you pour"), TypeSize.STRONG)
        self._cautions = text_label("", wrap=True)
        self._cautions.setContentsMargins(0, 0, 0, UNIT)
        column_of(
            self._warned,
            self._cautions,
            text_label(tr("What it comes to"), TypeSize.STRONG),
            self._brief,
            at_left(self._glass),
            self._panel,
            on=self,
            margins=(PAD, 0, PAD, PAD),
            gap=HALF,
        )
        self.hide()

    def show_view(self, view: AnalysisView | None) -> None:
        """Show another drink, or none."""
        self.setVisible(view is not None)
        if view is None:
            return
        rows = before_you_pour(view.minded)
        self._cautions.setText("\n".join(f"{each.text} {each.source}".rstrip() for each in rows))
        for each in (self._warned, self._cautions):
            each.setVisible(bool(rows))
        self._brief.setText(view.brief)
        self._glass.show_picture(view.picture)
        self._panel.show_view(view)


def _mark(read: ReadLine) -> tuple[str, str, str]:
    if read.confidence < SURE:
        return ("warning", "warning", tr("Understood, but look again"))
    return ("check", "ready", tr("Understood"))


def _understood(line: Line, tree: FamilyTree, units: BarUnits) -> str:
    if not line.ingredient:
        return line.text
    name = tree.in_sentence(line.ingredient)
    if line.amount is None:
        return capitalised(name)
    return f"{show_range(line.amount, line.amount_high, line.unit or 'each', units)} {name}"


def _note(read: ReadLine, tree: FamilyTree) -> str:
    """What else was read: another name for it, what it asks, and whether it may be left out."""
    said, line = [], read.line
    if line.ingredient and read.matched:
        if read.confidence < SURE:
            said.append(
                tr("read as {matched}; the words before that, as its maker", matched=read.matched)
            )
        elif folded(read.matched) != folded(tree.name(line.ingredient)):
            said.append(tr("written as {matched}", matched=read.matched))
    said += [tr("asks for {words}", words=each) for each in line.stated]
    said += [tr("garnish")] if line.garnish else []
    said += [tr("optional")] if line.optional else []
    if line.min_abv_percent is not None:
        said.append(tr("at least {strength:g} % vol", strength=line.min_abv_percent))
    said += [line.note] if line.note else []
    return ", ".join(said)


def _facts(spec: SeenSpec) -> list[str]:
    read = spec.read.spec
    glass = tr("Glass: {glass}", glass=spec.read.glass) if spec.read.glass else ""
    riff = (
        tr("Riff of: {riff_of}", riff_of=read.riff_of) if read is not None and read.riff_of else ""
    )
    method = tr("Method: {method}", method=spec.read.method) if spec.read.method else ""
    return [each for each in (riff, glass, method) if each]


def _summary(spec: SeenSpec) -> str:
    if not spec.faults:
        count = len(spec.lines)
        return (
            tr("1 line understood") if count == 1 else tr("{count} lines understood", count=count)
        )
    return (
        tr("1 problem")
        if len(spec.faults) == 1
        else tr("{number} problems", number=len(spec.faults))
    )
