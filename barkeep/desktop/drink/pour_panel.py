"""Pouring one drink: what may go into each of its lines, and what that makes of it at once."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QPoint, QSignalBlocker, Qt, Signal
from PySide6.QtGui import QKeySequence, QResizeEvent, QShortcut
from PySide6.QtWidgets import QComboBox, QLabel, QLineEdit, QSizePolicy, QWidget

from barkeep.desktop.drink.analysis_panel import BalancePicture
from barkeep.desktop.drink.analysis_view import CautionRow
from barkeep.desktop.drink.pour_view import (
    LineChoices,
    PourAsked,
    PourSeen,
    brief_of,
    figure_in_words,
    told_of,
)
from barkeep.desktop.drink.words import POUR_KEYS
from barkeep.desktop.look.metrics import HALF, PAD, UNIT, TypeSize, scaled
from barkeep.desktop.widgets.buttons import button, offer, primary_button
from barkeep.desktop.widgets.chips import FlowLayout
from barkeep.desktop.widgets.details import (
    DetailRow,
    DetailSection,
    DetailSections,
    ScrolledPage,
    rule,
    say,
)
from barkeep.desktop.widgets.drink_picture import DrinkPictureView
from barkeep.desktop.widgets.labels import PictureLabel, caption, copyable, text_label
from barkeep.desktop.widgets.layouts import SPRING, at_top, column_of, laid_out_once, row_of, wide
from barkeep.domain.bar.shoots import ChosenPour
from barkeep.translation import tr, tr_noop

RIFF_KEYS = "Ctrl+R"
LEAST_LINES = 3
"""So many lines of what goes in are seen at least before the title has room."""
NOT_KNOWN_YET = tr_noop("Nothing in it can be counted yet.")


class _LineRow(QWidget):
    """One line: how it stands, its words, and a box of what may go into it."""

    changed = Signal()

    def __init__(self) -> None:
        super().__init__()
        self._picture = PictureLabel("info", 16)
        self._text, self._note, self._rest = copyable(""), caption(), caption()
        self.box = QComboBox()
        self.box.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.box.setSizeAdjustPolicy(
            QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon
        )
        self.box.setMinimumContentsLength(12)
        self.box.currentIndexChanged.connect(self._on_choice)
        words = column_of(self._text, self.box, self._note, self._rest, gap=HALF)
        row_of(at_top(self._picture), wide(words), on=self, margins=(0, HALF, 0, HALF))
        self._of: LineChoices | None = None

    @property
    def chosen(self) -> ChosenPour | None:
        """What is poured instead of what the line asks for."""
        choices = () if self._of is None else self._of.choices
        return choices[self.box.currentIndex()].chosen if choices else None

    def fill(self, of: LineChoices, kept: ChosenPour | None, *, is_kept: bool) -> None:
        """Show a line, with what was chosen for it before where that still stands."""
        self._of = of
        self._picture.show_picture(of.state.picture, of.state.tone)
        self._picture.setAccessibleName(of.state.word)
        self._text.setText(of.text)
        with QSignalBlocker(self.box):
            self.box.clear()
            self.box.addItems([each.words for each in of.choices])
            self.box.setCurrentIndex(self._first(of, kept, is_kept=is_kept))
        self.box.setVisible(bool(of.choices))
        self.box.setAccessibleName(tr("{line}: what is poured", line=of.text))
        say(self._rest, of.rest)
        self._explain()

    def _first(self, of: LineChoices, kept: ChosenPour | None, *, is_kept: bool) -> int:
        if not is_kept:
            return of.begins
        key = kept.ingredient if kept else None
        keys = [each.chosen.ingredient if each.chosen else None for each in of.choices]
        return keys.index(key) if key in keys else of.begins

    def _on_choice(self, _index: int) -> None:
        self._explain()
        self.changed.emit()

    def _explain(self) -> None:
        choices = () if self._of is None else self._of.choices
        note = choices[self.box.currentIndex()].note if choices else ""
        say(self._note, note)
        self.box.setAccessibleDescription(note)


class _Figures(QWidget):
    """Each figure with where it was before."""

    def __init__(self) -> None:
        super().__init__()
        self._rows = DetailSections()
        self.picture = BalancePicture()
        column_of(self._rows, self.picture, on=self, gap=UNIT)

    def show_seen(self, seen: PourSeen) -> None:
        """Show another drink."""
        rows = tuple(DetailRow(figure_in_words(each), label=each.label) for each in seen.figures)
        heading = tr("As written → as poured") if seen.is_changed else tr("What it comes to")
        self._rows.fill([DetailSection(heading, rows)])
        self._rows.setAccessibleDescription(told_of(seen))
        self.picture.show_bars(seen.bars)
        self.picture.setVisible(bool(seen.bars))


class PourPanel(QWidget):
    """Asks of one drink what goes into it; it stands where the drink's details stand.

    `changed` comes with each choice; `pour_wanted`, `riff_wanted` with a name, and `left`.
    The keys that pour are its page's, which asks with the same ones.
    """

    changed = Signal()
    pour_wanted = Signal()
    riff_wanted = Signal(str)
    left = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.asked: PourAsked | None = None
        """The drink that is shown."""
        self._title, self.brief = copyable("", TypeSize.TITLE), copyable("", quiet=True)
        self._picture = DrinkPictureView(96)
        self._rows: list[_LineRow] = []
        self._lines = column_of(gap=0)
        self._lacking = copyable("")
        self._lacking_picture = PictureLabel(
            "verdict-short", 16, "short", tr("Cannot be poured so")
        )
        self._lack = QWidget()
        row_of(at_top(self._lacking_picture), wide(self._lacking), on=self._lack)
        self.figures = _Figures()
        self._cautions = DetailSections()
        self.riff_name = QLineEdit()
        self.riff_name.setAccessibleName(tr("What the riff is called"))
        self.riff_name.returnPressed.connect(self._ask_for_riff)
        self.pour_button = primary_button(tr("Pour it so"), self.pour_wanted.emit, "pour")
        self.pour_button.setToolTip(tr("Take it out of the bottles ({keys})", keys=POUR_KEYS))
        self.riff_button = button(tr("Save as a riff"), self._ask_for_riff)
        self.riff_button.setToolTip(tr("Keep it as a spec of your own ({keys})", keys=RIFF_KEYS))
        self.back_button = button(tr("Back"), self.left.emit)
        self.back_button.setToolTip(tr("Back to the drink (Esc)"))
        self._lay_out()
        for keys, act in (
            (RIFF_KEYS, self._ask_for_riff),
            ("Esc", self.left.emit),
            ("Alt+Left", self.left.emit),
        ):
            shortcut = QShortcut(QKeySequence(keys), self)
            shortcut.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
            shortcut.activated.connect(act)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Without room for all, the buttons and the lines go before the title."""
        super().resizeEvent(event)
        lines = LEAST_LINES * self.fontMetrics().lineSpacing()
        others = lines + self._foot.heightForWidth(self.width())
        self._head.setVisible(self.height() >= others + self._head.sizeHint().height())

    @property
    def chosen(self) -> tuple[ChosenPour, ...]:
        """What is poured for the lines that pour something else."""
        return tuple(each.chosen for each in self._shown if each.chosen is not None)

    @property
    def boxes(self) -> tuple[QComboBox, ...]:
        """The box of each line that something else can be poured for."""
        return tuple(each.box for each in self._shown if each.box.count())

    def ask(self, asked: PourAsked, serves: int) -> None:
        """Ask of a drink; what was chosen stays, where it is the same one."""
        is_kept = self.asked is not None and self.asked.drink.spec.name == asked.drink.spec.name
        kept = {each.line: each for each in self.chosen} if is_kept else {}
        self.asked = asked
        several = "" if serves == 1 else f"{serves} × "
        with laid_out_once(self._page):
            self._title.setText(
                tr("Pour {several}{name}", several=several, name=asked.drink.spec.name)
            )
            for number, each in enumerate(asked.lines):
                self._row(number).fill(each, kept.get(each.place), is_kept=is_kept)
                self._rows[number].show()
            for row in self._rows[len(asked.lines) :]:
                row.hide()
        if not is_kept:
            self.scrolled.verticalScrollBar().setValue(0)

    def take_focus(self) -> None:
        """Go to the line that most asks for a choice."""
        first = -1 if self.asked is None else self.asked.first_open
        if first < 0:
            self.back_button.setFocus(Qt.FocusReason.TabFocusReason)
            return
        row = self._rows[first]
        row.box.setFocus(Qt.FocusReason.TabFocusReason)
        self._begin_with(row)

    def _begin_with(self, row: QWidget) -> None:
        """Scroll so far that a line begins at the top, with what is said of it below."""
        for layout in (self.layout(), self._page.layout()):
            if layout is not None:
                layout.activate()  # or it would still be where it was before
        self.scrolled.verticalScrollBar().setValue(row.mapTo(self._page, QPoint(0, 0)).y() - UNIT)

    def show_seen(self, seen: PourSeen) -> None:
        """Show what the choices make of the drink."""
        with laid_out_once(self, self._page):
            self._picture.show_picture(seen.picture)
            self.brief.setText(brief_of(seen))
            self.figures.show_seen(seen)
            sections = [DetailSection(tr("Before you pour"), tuple(_minded(seen)))]
            self._cautions.fill(sections if sections[0].rows else [])
            self._lacking.setText("\n".join(seen.lacking))
            self._lack.setVisible(bool(seen.lacking))
        self.riff_name.setText(seen.likely_name)
        self._riff.setVisible(seen.is_changed)
        offer(self.pour_button, " ".join(seen.lacking))
        offer(self.riff_button, "" if seen.is_changed else tr("Nothing in it is poured otherwise"))

    @property
    def _shown(self) -> Sequence[_LineRow]:
        count = 0 if self.asked is None else len(self.asked.lines)
        return self._rows[:count]

    def _row(self, number: int) -> _LineRow:
        if number == len(self._rows):
            made = _LineRow()
            made.changed.connect(self.changed)
            self._rows.append(made)
            self._lines.addWidget(made)
        return self._rows[number]

    def _ask_for_riff(self) -> None:
        if self.riff_button.isEnabled():
            self.riff_wanted.emit(self.riff_name.text())

    def _lay_out(self) -> None:
        words = column_of(self._title, self.brief, SPRING, gap=HALF)
        self._head = QWidget()
        head_margins = (PAD, PAD, PAD, HALF)
        row_of(wide(words), at_top(self._picture), on=self._head, margins=head_margins)
        name = text_label(tr("Riff’s name"), quiet=True)
        name.setBuddy(self.riff_name)
        self._riff = QWidget()
        column_of(name, self.riff_name, on=self._riff, margins=(0, PAD, 0, 0), gap=HALF)
        self._page = QWidget()
        heading: QLabel = text_label(tr("What goes in"), TypeSize.STRONG)
        column = column_of(
            heading,
            rule(),
            self._lines,
            self._lack,
            self.figures,
            self._cautions,
            self._riff,
            on=self._page,
            margins=PAD,
            gap=HALF,
        )
        column.addStretch(1)
        self.scrolled = ScrolledPage(tr("Pour"), scaled(264))
        self.scrolled.setMinimumHeight(self.fontMetrics().lineSpacing())
        self.scrolled.show_page(self._page)
        self._foot = QWidget()
        self._foot.setLayout(FlowLayout((self.pour_button, self.riff_button, self.back_button)))
        self._foot.setContentsMargins(PAD, UNIT, PAD, UNIT)
        column_of(self._head, rule(), wide(self.scrolled), rule(), self._foot, on=self, gap=0)


def minded_row(row: CautionRow) -> DetailRow:
    """A caution as a fact of the details."""
    return DetailRow(row.text, label=row.meaning, note=row.source, picture="warning", tone=row.tone)


def _minded(seen: PourSeen) -> Sequence[DetailRow]:
    rows = list(map(minded_row, seen.cautions))
    if seen.brought:
        new = DetailRow(seen.brought, label=tr("Allergens"), picture="allergen", tone="warning")
        rows.insert(0, new)
    return rows
