"""A spec's kin on its page: what it changed of its parent, and all versions of the drink."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QGridLayout, QHBoxLayout, QLabel, QVBoxLayout, QWidget

from barkeep.desktop.metrics import HALF, UNIT, TypeSize
from barkeep.desktop.models.family_view import NO_CHANGE, BesideParent, PairRow, VersionRow
from barkeep.desktop.widgets.family_branch import FamilyBranch
from barkeep.desktop.widgets.labels import PictureLabel, text_label
from barkeep.desktop.widgets.link_label import Link, LinkLabel
from barkeep.desktop.widgets.sections import add_heading, selectable
from barkeep.domain.answers.comparison import FigureRow

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
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(HALF)
        if beside is not None:
            add_heading(column, "Beside its parent")
            _add_beside(column, name, beside, self.followed.emit)
        if versions:
            add_heading(column, "Versions")
            rows = QVBoxLayout()
            rows.setSpacing(0)  # or the branches would have gaps
            for row in versions:
                rows.addLayout(_version(row, self.followed.emit))
            column.addLayout(rows)


def _add_beside(
    column: QVBoxLayout, name: str, beside: BesideParent, follow: Callable[[str], object]
) -> None:
    if not beside.pairs:
        words = f"{beside.parent} is no longer in the book: there is nothing to set it beside."
        column.addWidget(selectable(text_label(words, quiet=True, wrap=True)))
        return
    lines = _columns(2)
    parent = LinkLabel([Link(beside.parent, beside.parent)])
    parent.followed.connect(follow)
    lines.addWidget(parent, 0, 1, TOP)
    lines.addWidget(text_label(name, TypeSize.STRONG, wrap=True), 0, 2, TOP)
    for number, row in enumerate(beside.pairs, 1):
        _add_pair(lines, number, row)
    column.addLayout(lines)
    figures = _columns(3)
    for number, figure in enumerate(beside.figures):
        _add_figure(figures, number, figure)
    column.addSpacing(UNIT)
    column.addLayout(figures)


def _add_pair(grid: QGridLayout, number: int, row: PairRow) -> None:
    mark = text_label(row.mark, TypeSize.STRONG, quiet=not row.word)
    mark.setToolTip(row.word or "The same")
    mark.setAccessibleName(row.in_words)
    grid.addWidget(mark, number, 0, TOP | Qt.AlignmentFlag.AlignHCenter)
    grid.addWidget(_side(row.before), number, 1, TOP)
    after = QVBoxLayout()
    after.setSpacing(0)
    after.addWidget(_side(row.after, strong=bool(row.word)))
    if row.word:
        after.addWidget(text_label(row.word, TypeSize.CAPTION, quiet=True, wrap=True))
    after.addStretch(1)
    grid.addLayout(after, number, 2)


def _side(words: str, *, strong: bool = False) -> QLabel:
    if not words:
        nothing = text_label(NOTHING, quiet=True)
        nothing.setAccessibleName("Nothing")
        return nothing
    return selectable(text_label(words, TypeSize.STRONG if strong else TypeSize.BODY, wrap=True))


def _add_figure(grid: QGridLayout, number: int, row: FigureRow) -> None:
    grid.addWidget(text_label(row.label, quiet=True, wrap=True), number, 0, TOP)
    for place, words in enumerate((row.before, row.after), 1):
        grid.addWidget(selectable(text_label(words, wrap=True)), number, place, TOP)
    same = NO_CHANGE if row.before == row.after else ""
    change = text_label(row.change or same, TypeSize.BODY, quiet=not row.change, wrap=True)
    if row.change:
        change = text_label(row.change, TypeSize.STRONG, wrap=True)
    grid.addWidget(selectable(change), number, 3, TOP)


def _version(row: VersionRow, follow: Callable[[str], object]) -> QHBoxLayout:
    name: QLabel
    if row.is_this:
        name = selectable(text_label(row.name, TypeSize.STRONG, wrap=True))
    else:
        name = LinkLabel([Link(row.name, row.name)])
        name.followed.connect(follow)
    words = QVBoxLayout()
    words.setSpacing(0)
    words.setContentsMargins(0, HALF, 0, HALF)
    head = QHBoxLayout()
    head.setSpacing(UNIT)
    head.addWidget(name, 1)
    if row.has_won:
        head.addWidget(PictureLabel("check", 16, "ready", "Won"), 0, TOP)
        head.addWidget(text_label("Won", TypeSize.STRONG), 0, TOP)
    words.addLayout(head)
    said = "; ".join(each for each in ("This one" * row.is_this, row.trials) if each)
    if said:
        words.addWidget(selectable(text_label(said, TypeSize.CAPTION, quiet=True, wrap=True)))
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
