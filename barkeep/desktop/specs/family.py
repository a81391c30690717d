"""A spec's kin on its page: what it changed of its parent, and all versions of the drink."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass

from PySide6.QtCore import QPointF, QSize, Qt, Signal
from PySide6.QtGui import QPainter, QPaintEvent, QPalette, QPen
from PySide6.QtWidgets import QGridLayout, QHBoxLayout, QLabel, QSizePolicy, QVBoxLayout, QWidget

from barkeep.desktop.look.metrics import HALF, UNIT, TypeSize
from barkeep.desktop.widgets.details import add_heading
from barkeep.desktop.widgets.labels import (
    Link,
    LinkLabel,
    PictureLabel,
    caption,
    copyable,
    text_label,
)
from barkeep.desktop.widgets.layouts import column_of, row_of, wide
from barkeep.desktop.widgets.tips import plain_tip
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.days import day_said
from barkeep.domain.drink.comparison import FigureRow, RiffComparison, compare, figure_rows
from barkeep.domain.phrases import counted, folded
from barkeep.domain.specs.riffs import Change, family
from barkeep.domain.specs.shown_lines import shown_lines
from barkeep.domain.specs.spec import Line, Spec
from barkeep.domain.specs.trials import Trial, mean_scores, show_scores, winner
from barkeep.errors import spoken_list
from barkeep.translation import tr, tr_noop

STEP = 18
"""What one level moves a version to the right, in device-independent pixels."""
MOST_STEPS = 6
"""Deeper versions stay where they are, or their names would have no room."""


class FamilyBranch(QWidget):
    """`goes_on` says of each level whether more hangs on it below; of none, nothing is drawn.

    `elbow` is how far below the top the branch turns to its version.
    """

    def __init__(self, goes_on: Sequence[bool], elbow: int, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._goes_on = tuple(goes_on)[-MOST_STEPS:]
        self._elbow = elbow
        self.setFixedWidth(STEP * len(self._goes_on))
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Expanding)

    def sizeHint(self) -> QSize:
        return QSize(self.width(), self._elbow)

    def paintEvent(self, _event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setPen(QPen(self.palette().color(QPalette.ColorRole.PlaceholderText), 1.0))
        last = len(self._goes_on) - 1
        for level, goes_on in enumerate(self._goes_on):
            across = STEP * level + STEP / 2 - 0.5
            if goes_on or level == last:
                below = self.height() if goes_on else self._elbow + 0.5
                painter.drawLine(QPointF(across, 0.0), QPointF(across, below))
            if level == last:
                turn = self._elbow + 0.5
                painter.drawLine(QPointF(across, turn), QPointF(STEP * (level + 1) - 3.0, turn))


NO_CHANGE = tr_noop("no change")
_MARKS: Mapping[Change, str] = {
    "same": "=",
    "amount": "≠",
    "swapped": "⇄",
    "added": "+",
    "left out": "−",
}
_WORDS: Mapping[Change, str] = {
    "same": "",
    "amount": tr_noop("Changed"),
    "swapped": tr_noop("Swapped"),
    "added": tr_noop("Added"),
    "left out": tr_noop("Left out"),
}


@dataclass(frozen=True, slots=True)
class PairRow:
    """Two lines side by side; `mark` is a shape and `word` what it means, empty for *the same*."""

    before: str
    after: str
    mark: str
    word: str

    @property
    def in_words(self) -> str:
        """The whole row, for those who do not see it."""
        if not self.word:
            return tr("The same: {after}", after=self.after)
        return f"{self.word}: {' → '.join(each for each in (self.before, self.after) if each)}"


@dataclass(frozen=True, slots=True)
class BesideParent:
    """A riff and its parent; no rows where the parent is no longer in the book."""

    parent: str
    pairs: tuple[PairRow, ...] = ()
    figures: tuple[FigureRow, ...] = ()
    not_compared: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class VersionRow:
    """One spec of the family, its place in the tree, and how its trials went.

    `goes_on` says of each level down to this one whether more hangs on it below.
    """

    name: str
    goes_on: tuple[bool, ...]
    is_this: bool
    has_won: bool
    trials: str


@dataclass(frozen=True, slots=True)
class TrialRow:
    """One tasting in words; what is empty was not written down."""

    trial: Trial
    on: str
    scores: str
    tasters: str
    changed: str
    notes: str


def beside_parent(spec: Spec, snapshot: Snapshot) -> BesideParent | None:
    """A riff beside its parent, None for what is no riff."""
    if spec.riff_of is None:
        return None
    wanted = folded(spec.riff_of)
    parent = next((each for each in snapshot.all_specs if folded(each.name) == wanted), None)
    if parent is None:
        return BesideParent(spec.riff_of)
    found = compare(parent, spec, snapshot)
    return BesideParent(
        parent.name, tuple(_pairs(found, snapshot)), figure_rows(found), found.not_compared
    )


def version_rows(spec: Spec, snapshot: Snapshot) -> tuple[VersionRow, ...]:
    """The whole family of a spec, parents before their riffs; none for a spec without kin."""
    versions = family(spec.name, snapshot.all_specs)
    if len(versions) < 2:
        return ()
    ids = [each.spec.id for each in versions if each.spec.id is not None]
    won = winner(snapshot.trials, ids)
    depths = [version.depth for version in versions]
    return tuple(
        VersionRow(
            name=version.spec.name,
            goes_on=_goes_on(depths, number),
            is_this=version.spec.name == spec.name,
            has_won=won is not None and version.spec.id == won,
            trials=in_brief(trials_of(version.spec, snapshot)),
        )
        for number, version in enumerate(versions)
    )


def kin_in_brief(spec: Spec, snapshot: Snapshot) -> str:
    """*Riff of Wet Rails · 3 versions*; empty for a spec without kin."""
    many = len(family(spec.name, snapshot.all_specs))
    riff = tr("Riff of {riff_of}", riff_of=spec.riff_of) if spec.riff_of else ""
    return " · ".join(filter(None, (riff, counted(many, "version") if many > 1 else "")))


def trial_rows(spec: Spec, snapshot: Snapshot) -> tuple[TrialRow, ...]:
    """The trials of a spec, newest first."""
    own = trials_of(spec, snapshot)
    return tuple(_trial_row(each) for each in reversed(own))


def trials_of(spec: Spec, snapshot: Snapshot) -> tuple[Trial, ...]:
    """The trials of a spec, oldest first."""
    if spec.id is None:
        return ()
    return tuple(each for each in snapshot.trials if each.spec_id == spec.id)


def in_brief(trials: Sequence[Trial]) -> str:
    """How many trials there are and their mean scores."""
    if not trials:
        return ""
    many = counted(len(trials), "trial")
    scores = show_scores(mean_scores(trials))
    return f"{many}: {scores}" if scores else many


def _pairs(found: RiffComparison, snapshot: Snapshot) -> Iterator[PairRow]:
    before, after = _shown(found.parent, snapshot), _shown(found.riff, snapshot)
    for pair in found.pairs:
        was = "" if pair.before is None else before[id(pair.before)]
        now = "" if pair.after is None else after[id(pair.after)]
        yield PairRow(
            was, now, _MARKS[pair.change], tr(_WORDS[pair.change]) if _WORDS[pair.change] else ""
        )


def _shown(spec: Spec, snapshot: Snapshot) -> Mapping[int, str]:
    """Each line object as it is shown; two lines of a spec may well be equal."""
    settings, lines = snapshot.settings, spec.lines
    shown = shown_lines(spec, snapshot.knowledge.tree, settings.shown_in, settings.units)
    return {id(line): _with_duty(line, each.text) for line, each in zip(lines, shown, strict=True)}


def _with_duty(line: Line, text: str) -> str:
    said = tr_noop("optional") if line.optional else tr_noop("garnish") if line.garnish else ""
    return text if not said or said in text.casefold() else f"{text} ({tr(said)})"


def _goes_on(depths: Sequence[int], number: int) -> tuple[bool, ...]:
    """For each level from 1 to that of a version: whether another version follows on it."""
    found = []
    for level in range(1, depths[number] + 1):
        later = (each for each in depths[number + 1 :] if each <= level)
        found.append(next(later, 0) == level)
    return tuple(found)


def _trial_row(trial: Trial) -> TrialRow:
    tasters = spoken_list(trial.tasters, "and")
    return TrialRow(
        trial=trial,
        on=day_said(trial.on),
        scores=show_scores(mean_scores([trial])),
        tasters=tr("Scored by {tasters}", tasters=tasters) if tasters else "",
        changed=tr("Changed: {changed}", changed=trial.changed) if trial.changed else "",
        notes=trial.notes,
    )


TOP = Qt.AlignmentFlag.AlignTop
NOTHING = "—"


class FamilySection(QWidget):
    """`followed` carries the name of the version the user wants to see."""

    followed = Signal(str)

    def __init__(
        self,
        name: str,
        beside: BesideParent | None,
        versions: Sequence[VersionRow],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        column = column_of(on=self, gap=HALF)
        if beside is not None:
            add_heading(column, tr("Beside its parent"))
            _add_beside(column, name, beside, self.followed.emit)
        if versions:
            add_heading(column, tr("Versions"))
            rows = QVBoxLayout()
            rows.setSpacing(0)  # or the branches would have gaps
            for row in versions:
                rows.addLayout(_version(row, self.followed.emit))
            column.addLayout(rows)


def _add_beside(
    column: QVBoxLayout, name: str, beside: BesideParent, follow: Callable[[str], object]
) -> None:
    if not beside.pairs:
        words = tr(
            "{parent} is no longer in the book: there is nothing to set it beside.",
            parent=beside.parent,
        )
        column.addWidget(copyable(words, quiet=True))
        return
    lines = _columns(2)
    parent = LinkLabel([Link(beside.parent, beside.parent)])
    parent.followed.connect(follow)
    lines.addWidget(parent, 0, 1, TOP)
    lines.addWidget(text_label(name, TypeSize.STRONG, wrap=True), 0, 2, TOP)
    for number, row in enumerate(beside.pairs, 1):
        _add_pair(lines, number, row)
    column.addLayout(lines)
    for sentence in beside.not_compared:
        column.addWidget(copyable(sentence, quiet=True))
    figures = _columns(3)
    for number, figure in enumerate(beside.figures):
        _add_figure(figures, number, figure)
    column.addSpacing(UNIT)
    column.addLayout(figures)


def _add_pair(grid: QGridLayout, number: int, row: PairRow) -> None:
    mark = text_label(row.mark, TypeSize.STRONG, quiet=not row.word)
    mark.setToolTip(plain_tip(row.word or tr("The same")))
    mark.setAccessibleName(row.in_words)
    grid.addWidget(mark, number, 0, TOP | Qt.AlignmentFlag.AlignHCenter)
    grid.addWidget(_side(row.before), number, 1, TOP)
    after = column_of(_side(row.after, strong=bool(row.word)), gap=0)
    if row.word:
        after.addWidget(text_label(row.word, TypeSize.CAPTION, quiet=True, wrap=True))
    after.addStretch(1)
    grid.addLayout(after, number, 2)


def _side(words: str, *, strong: bool = False) -> QLabel:
    if not words:
        nothing = text_label(NOTHING, quiet=True)
        nothing.setAccessibleName(tr("Nothing"))
        return nothing
    return copyable(words, TypeSize.STRONG if strong else TypeSize.BODY)


def _add_figure(grid: QGridLayout, number: int, row: FigureRow) -> None:
    grid.addWidget(text_label(row.label, quiet=True, wrap=True), number, 0, TOP)
    for place, words in enumerate((row.before, row.after), 1):
        grid.addWidget(copyable(words), number, place, TOP)
    same = tr(NO_CHANGE) if row.before == row.after else ""
    size = TypeSize.STRONG if row.change else TypeSize.BODY
    grid.addWidget(copyable(row.change or same, size, quiet=not row.change), number, 3, TOP)


def _version(row: VersionRow, follow: Callable[[str], object]) -> QHBoxLayout:
    name: QLabel
    if row.is_this:
        name = copyable(row.name, TypeSize.STRONG)
    else:
        name = LinkLabel([Link(row.name, row.name)])
        name.followed.connect(follow)
    head = row_of(wide(name))
    if row.has_won:
        head.addWidget(PictureLabel("check", 16, "ready", tr("Won")), 0, TOP)
        head.addWidget(text_label(tr("Won"), TypeSize.STRONG), 0, TOP)
    words = column_of(head, margins=(0, HALF, 0, HALF), gap=0)
    said = "; ".join(each for each in (tr("This one") * row.is_this, row.trials) if each)
    if said:
        words.addWidget(caption(said))
    across = QHBoxLayout()
    across.setSpacing(0)
    if row.goes_on:
        across.addWidget(FamilyBranch(row.goes_on, HALF + name.fontMetrics().height() // 2))
    across.addLayout(words, 1)
    return across


def _columns(wide: int) -> QGridLayout:
    """A narrow column and so many that share the room alike."""
    grid = QGridLayout()
    grid.setContentsMargins(0, HALF, 0, 0)
    grid.setHorizontalSpacing(UNIT)
    grid.setVerticalSpacing(HALF)
    for place in range(1, wide + 1):
        grid.setColumnStretch(place, 1)
        grid.setColumnMinimumWidth(place, 56)
    return grid
