"""Bring specs in from documents: everything is shown before anything is written."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, replace
from functools import partial
from typing import Literal, TypeAlias

from PySide6.QtCore import QModelIndex, QSignalBlocker, Qt, Signal
from PySide6.QtWidgets import (
    QCheckBox,
    QComboBox,
    QDialog,
    QGridLayout,
    QHBoxLayout,
    QHeaderView,
    QLineEdit,
    QProgressBar,
    QSplitter,
    QTableView,
    QVBoxLayout,
    QWidget,
)

from barkeep.application.done import Done, Step
from barkeep.application.imports import (
    Decision,
    Differing,
    ImportChoice,
    ImportedSpecs,
    ImportPreview,
    Incoming,
    NamedText,
    NeedsColumns,
    Progress,
    Unreadable,
    first_drink,
    preview,
)
from barkeep.desktop.importing.columns import ColumnChoices
from barkeep.desktop.ingredients.own_ingredient import Way
from barkeep.desktop.ingredients.teaching import Teach, teach_buttons, teach_by_keys, teacher
from barkeep.desktop.look.metrics import HALF, PAD, UNIT, TypeSize
from barkeep.desktop.screens.background import Background, LongQuestion
from barkeep.desktop.screens.list_stack import prepare_view, set_widths
from barkeep.desktop.screens.operations import RefusedInBanner
from barkeep.desktop.screens.row_table import Column, RowFilter, RowTable
from barkeep.desktop.screens.screen import ScreenContext
from barkeep.desktop.widgets.buttons import accept_by_keys, button, primary_button
from barkeep.desktop.widgets.chips import FilterChips, FlowLayout
from barkeep.desktop.widgets.details import ScrolledPage
from barkeep.desktop.widgets.labels import PictureLabel, copyable, text_label
from barkeep.desktop.widgets.layouts import SPRING, Card, at_top, column_of, row_of, wide
from barkeep.desktop.widgets.notices import Banner
from barkeep.documents.specs.columns import ColumnUse
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.ingredients.names import bare_name
from barkeep.domain.phrases import capitalised
from barkeep.domain.spec_text.differences import LineChange
from barkeep.domain.spec_text.text import write_spec
from barkeep.domain.specs.spec import Spec
from barkeep.errors import UserError, spoken_list
from barkeep.translation import tr, tr_noop

PlaceKey: TypeAlias = tuple[str, str]
"""A file and the place of a spec in it."""
Group = Literal["columns", "unreadable", "differing", "new", "aside"]
GROUP_WORDS: dict[Group, str] = {
    "columns": tr_noop("Unclear"),
    "unreadable": tr_noop("Cannot be read"),
    "differing": tr_noop("Differs"),
    "new": tr_noop("New"),
    "aside": tr_noop("Left aside"),
}
KEPT_WORDS = tr_noop("Stays as you have it")
IMPORT_ONE, IMPORT_SEVERAL = tr_noop("&Import {specs:,} spec"), tr_noop("&Import {specs:,} specs")
THERE = tr_noop("{specs:,} is in the bar already.")
SEVERAL_THERE = tr_noop("{specs:,} are in the bar already.")
CAME_IN, SEVERAL_CAME_IN = tr_noop("{specs:,} spec came in"), tr_noop("{specs:,} specs came in")
REPLACED = tr_noop("{specs:,} spec replaced")
SEVERAL_REPLACED = tr_noop("{specs:,} specs replaced")
ASIDE = tr_noop("One thing is left aside; the specs and the end of the list say which.")
SEVERAL_ASIDE = tr_noop(
    "{things:,} things are left aside; the specs and the end of the list say which."
)
KEPT = Decision()


@dataclass(frozen=True, slots=True)
class AroundSpecs:
    """What is said of a whole file: how it was read, and what of it belongs to no spec."""

    remarks: tuple[str, ...]
    left_aside: tuple[str, ...]


Thing = Incoming | Differing | Unreadable | NeedsColumns | AroundSpecs


@dataclass(frozen=True, slots=True)
class ImportRow:
    """One spec of a document; `place` is that among the differing, -1 for the others."""

    group: Group
    name: str
    where: str
    thing: Thing
    place: int = -1
    decision: Decision = KEPT

    @property
    def outcome(self) -> str:
        """What importing will do with it."""
        if self.group == "columns":
            return tr("Waits for its columns")
        if self.group in ("unreadable", "aside"):
            return tr("Is left out")
        if self.group == "new":
            return (
                tr("Comes in with {questions}", questions=_questions(self.kept))
                if self.kept
                else tr("Comes in")
            )
        if self.decision.choice == "take_theirs":
            return tr("Takes the place of yours")
        if self.decision.choice == "add":
            return tr("Comes in as {name}", name=self.decision.name or self.free_name)
        return tr(KEPT_WORDS)

    @property
    def key(self) -> PlaceKey:
        """The file and the place it is in; both empty where it is of no spec."""
        there = self.thing.incoming if isinstance(self.thing, Differing) else self.thing
        return (there.file, there.where) if isinstance(there, Incoming | Unreadable) else ("", "")

    @property
    def kept(self) -> int:
        """How many lines it comes in with that are not understood."""
        there = self.thing.incoming if isinstance(self.thing, Differing) else self.thing
        return len(there.spec.unsettled) if isinstance(there, Incoming) else 0

    @property
    def askable(self) -> int:
        """How many lines that are not understood it could be kept with, or is."""
        return self.thing.questions if isinstance(self.thing, Unreadable) else self.kept

    @property
    def free_name(self) -> str:
        """A name under which it could come in beside yours."""
        return self.thing.free_name if isinstance(self.thing, Differing) else ""

    @property
    def comes_in(self) -> bool:
        """Whether importing writes it."""
        return self.group == "new" or self.decision.choice != "keep_mine"


def import_rows(found: ImportPreview, *, one_file: bool) -> tuple[ImportRow, ...]:
    """What needs a look first: the unclear, the unreadable, the differing, then the new."""
    rows = [
        ImportRow("columns", tr("Which column is what"), "" if one_file else each.file, each)
        for each in found.needs_columns
    ]
    rows += [
        ImportRow(
            "unreadable",
            each.name or (tr("The whole file") if not each.where else tr("No name")),
            _place(each.file, each.where, one_file),
            each,
        )
        for each in found.unreadable
    ]
    for place, each in enumerate(found.differing):
        where = _place(each.incoming.file, each.incoming.where, one_file)
        rows.append(
            ImportRow(group="differing", name=each.mine.name, where=where, thing=each, place=place)
        )
    rows += [
        ImportRow("new", each.spec.name, _place(each.file, each.where, one_file), each)
        for each in found.new
    ]
    return (*rows, *_around(found, one_file=one_file))


def _around(found: ImportPreview, *, one_file: bool) -> Iterator[ImportRow]:
    """A row for each file of which something is said that is of none of its specs."""
    files = [each.file for each in found.remarks]
    files += [each.file for each in found.left_aside if not each.spec]
    for file in dict.fromkeys(files):
        around = AroundSpecs(
            tuple(each.words for each in found.remarks if each.file == file),
            tuple(each.what for each in found.left_aside if each.file == file and not each.spec),
        )
        yield ImportRow("aside", tr("Around the specs"), "" if one_file else file, around)


def decided(row: ImportRow, decision: Decision) -> ImportRow:
    """The row after a decision; theirs never takes the place of a classic."""
    if row.group != "differing":
        return row
    possible = isinstance(row.thing, Differing) and row.thing.replaceable
    if decision.choice == "take_theirs" and not possible:
        return row
    return replace(row, decision=decision)


def import_columns() -> tuple[Column[ImportRow], ...]:
    """The columns of the list."""
    return (
        Column(tr("Spec"), lambda row: row.name, tooltip=lambda row: row.name),
        Column(tr("What it is"), lambda row: tr(GROUP_WORDS[row.group])),
        Column(tr("What happens"), lambda row: row.outcome, tooltip=lambda row: row.outcome),
    )


def _questions(count: int) -> str:
    return tr("1 question") if count == 1 else tr("{count} questions", count=count)


def _place(file: str, where: str, one_file: bool) -> str:
    return where if one_file else ", ".join(each for each in (file, where) if each)


NOTHING = "–"
CHANGE_WORDS: dict[LineChange, str] = {
    "same": tr_noop("the same"),
    "wording": tr_noop("worded otherwise"),
    "amount": tr_noop("another amount"),
    "swapped": tr_noop("another ingredient"),
    "added": tr_noop("only in theirs"),
    "left out": tr_noop("only in yours"),
}
_PICTURES: dict[LineChange, tuple[str, str]] = {
    "same": ("check", "ready"),
    "wording": ("info", "info"),
    "amount": ("scale", "warning"),
    "swapped": ("stand-ins", "warning"),
    "added": ("add", "warning"),
    "left out": ("remove", "warning"),
}

_CHOICES: tuple[tuple[ImportChoice, str, str], ...] = (
    ("keep_mine", tr_noop("Keep mine"), tr_noop("Yours stays as it is; theirs does not come in")),
    (
        "take_theirs",
        tr_noop("Take theirs"),
        tr_noop("Theirs takes the place of yours; undo brings yours back"),
    ),
    ("add", tr_noop("Keep both"), tr_noop("Theirs comes in beside yours, under another name")),
)


class ImportDetails(ScrolledPage):
    """`decided` carries the row that is shown and the decision the user took for it.

    `teach_chosen` carries unknown words that are to be taught, and as what; `kept` the
    row, and whether it is to be kept with its questions; `columns_said` a file and which
    of its columns are what.
    """

    decided = Signal(object, object)
    teach_chosen = Signal(str, str)
    kept = Signal(object, bool)
    columns_said = Signal(str, object)

    def __init__(
        self,
        text_of: Callable[[Spec], str],
        try_out: Callable[[str, Sequence[ColumnUse]], str],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(tr("The chosen spec"), 330, parent)
        self.text_of, self._try_out = text_of, try_out
        self.columns: ColumnChoices | None = None
        self.chips: FilterChips | None = None
        self.keep_chips: FilterChips | None = None
        self.name_field: QLineEdit | None = None

    def show_row(self, row: ImportRow | None) -> None:
        """Show one spec, or nothing."""
        self.chips = self.keep_chips = self.name_field = self.columns = None
        page = QWidget()
        column = column_of(on=page, margins=PAD)
        if row is not None:
            column.addWidget(text_label(row.name, TypeSize.SUBTITLE, wrap=True))
            if row.where:
                column.addWidget(text_label(capitalised(row.where), quiet=True, wrap=True))
            if row.askable:
                self._add_keeping(column, row)
            self._add_thing(column, row)
        column.addStretch(1)
        self.show_page(page)

    def _add_keeping(self, column: QVBoxLayout, row: ImportRow) -> None:
        """Lines that are not understood: leave the spec out, or keep it with them."""
        chips = (
            ("leave", tr("Leave out"), tr("It does not come in")),
            (
                "keep",
                tr("Keep with {questions}", questions=_questions(row.askable)),
                tr(
                    "Its lines that are not understood stay as they are written, to be settled "
                    "later"
                ),
            ),
        )
        self.keep_chips = FilterChips(tr("Questions"), chips, "keep" if row.kept else "leave")
        self.keep_chips.chosen.connect(lambda choice: self.kept.emit(row, choice == "keep"))
        column.addWidget(self.keep_chips, 0, Qt.AlignmentFlag.AlignLeft)
        column.addSpacing(HALF)

    def _add_thing(self, column: QVBoxLayout, row: ImportRow) -> None:
        thing = row.thing
        if isinstance(thing, Unreadable):
            self._add_problems(column, thing)
        elif isinstance(thing, NeedsColumns):
            self._add_columns(column, thing)
        elif isinstance(thing, AroundSpecs):
            _add_remarks(column, thing.remarks)
            _add_left_aside(column, thing.left_aside)
        elif isinstance(thing, Differing):
            self._add_choice(column, row, thing)
            column.addLayout(_side_by_side(thing))
            _add_remarks(column, thing.incoming.remarks)
            _add_left_aside(column, thing.incoming.left_aside)
        else:
            self._add_new(column, thing)

    def _add_new(self, column: QVBoxLayout, thing: Incoming) -> None:
        _add_remarks(column, thing.remarks)
        rows = self.text_of(thing.spec).partition("\n")[2]
        column.addWidget(_side(rows.strip("\n")))
        _add_left_aside(column, thing.left_aside)

    def _add_columns(self, column: QVBoxLayout, thing: NeedsColumns) -> None:
        self.columns = ColumnChoices(thing.request, partial(self._try_out, thing.file))
        self.columns.answered.connect(partial(self.columns_said.emit, thing.file))
        column.addWidget(self.columns)

    def _add_problems(self, column: QVBoxLayout, thing: Unreadable) -> None:
        for problem in thing.problems:
            picture = PictureLabel("error", 16, "danger", tr("Cannot be used"))
            row = row_of(at_top(picture), wide(text_label(capitalised(str(problem)), wrap=True)))
            column.addLayout(row)
            if problem.unknown:
                words = bare_name(problem.unknown)
                column.addLayout(FlowLayout(teach_buttons(words, self.teach_chosen.emit), HALF))
        if thing.text:
            column.addSpacing(UNIT)
            column.addWidget(text_label(tr("As it was found"), TypeSize.STRONG))
            column.addWidget(_side(thing.text.strip("\n")))

    def _add_choice(self, column: QVBoxLayout, row: ImportRow, thing: Differing) -> None:
        if not thing.replaceable:
            words = tr("Yours is a classic that barkeep brings along; it stays as it is.")
            column.addWidget(text_label(words, quiet=True, wrap=True))
        chips = [each for each in _CHOICES if thing.replaceable or each[0] != "take_theirs"]
        self.chips = FilterChips(tr("Do"), chips, row.decision.choice)
        self.name_field = QLineEdit(row.decision.name or thing.free_name)
        self.name_field.setAccessibleName(tr("Name under which theirs comes in"))
        self.name_field.setVisible(row.decision.choice == "add")
        self.chips.chosen.connect(lambda _choice: self._decide(row))
        self.name_field.textEdited.connect(lambda _text: self._decide(row))
        column.addWidget(self.chips, 0, Qt.AlignmentFlag.AlignLeft)
        column.addWidget(self.name_field)
        column.addSpacing(HALF)

    def _decide(self, row: ImportRow) -> None:
        assert self.chips is not None
        assert self.name_field is not None
        choice: ImportChoice = next(each[0] for each in _CHOICES if each[0] == self.chips.choice)
        self.name_field.setVisible(choice == "add")
        name = self.name_field.text() if choice == "add" else ""
        self.decided.emit(row, Decision(choice, name))


def _side_by_side(thing: Differing) -> QGridLayout:
    """Yours left, theirs right; a picture before each line says what became of it."""
    grid = QGridLayout()
    grid.setHorizontalSpacing(UNIT + HALF)
    grid.setVerticalSpacing(UNIT)
    grid.setColumnStretch(1, 1)
    grid.setColumnStretch(2, 1)
    for place, words in ((1, tr("Yours")), (2, tr("Theirs"))):
        grid.addWidget(text_label(words, TypeSize.STRONG), 0, place)
    for line in thing.comparison.lines:
        picture, tone = _PICTURES[line.change]
        drawn = PictureLabel(picture, 16, tone, tr(CHANGE_WORDS[line.change]))
        _add_pair(grid, drawn, line.mine, line.theirs)
    for field in thing.comparison.fields:
        heading = text_label(capitalised(tr(field.name)), TypeSize.CAPTION, quiet=True)
        grid.addWidget(heading, grid.rowCount(), 1, 1, 2)
        drawn = PictureLabel("warning", 16, "warning", tr("{field} differs", field=tr(field.name)))
        _add_pair(grid, drawn, field.mine, field.theirs)
    return grid


def _add_pair(grid: QGridLayout, drawn: PictureLabel, mine: str, theirs: str) -> None:
    row, top = grid.rowCount(), Qt.AlignmentFlag.AlignTop
    grid.addWidget(drawn, row, 0, top)
    for place, words in ((1, mine), (2, theirs)):
        grid.addWidget(_side(words or NOTHING), row, place, top)


def _add_remarks(column: QVBoxLayout, remarks: Sequence[str]) -> None:
    for remark in remarks:
        row = row_of(
            at_top(PictureLabel("info", 16, "info", tr("Remark"))),
            wide(text_label(remark, wrap=True)),
        )
        column.addLayout(row)


def _add_left_aside(column: QVBoxLayout, things: Sequence[str]) -> None:
    if things:
        column.addSpacing(UNIT)
        column.addWidget(text_label(tr("Left aside"), TypeSize.STRONG))
        for each in things:
            column.addWidget(_side(capitalised(each)))


def _side(words: str) -> QWidget:
    label = copyable(words)
    label.setMinimumWidth(40)
    return label


Write = Callable[[ImportPreview, dict[int, Decision], Progress], Done[ImportedSpecs]]
"""Brings a preview into the bar; called on another thread than the bar's own."""
COLUMN_WIDTHS = {1: 116, 2: 152}

_FOR_ALL: tuple[tuple[ImportChoice | None, str], ...] = (
    (None, tr_noop("as chosen for each")),
    ("keep_mine", tr_noop("keep mine")),
    ("take_theirs", tr_noop("take theirs")),
    ("add", tr_noop("keep both")),
)


class ImportSpecsDialog(RefusedInBanner, QDialog):
    """Reads, shows, writes; each can be stopped. `imported` is what came in, once it has."""

    def __init__(
        self,
        *,
        texts: Sequence[NamedText],
        snapshot: Snapshot,
        background: Background,
        write: Write,
        teach: Teach | None = None,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        accept_by_keys(self)
        self._teach = teach
        self.setWindowTitle(tr("Import specs"))
        self.resize(960, 600)
        self.imported: ImportedSpecs | None = None
        self.step: Step | None = None
        """What takes it back."""
        self._texts, self._snapshot, self._write = tuple(texts), snapshot, write
        self._found = ImportPreview()
        self._keeping: frozenset[PlaceKey] = frozenset()
        self._coming_back: PlaceKey | None = None
        self.table: RowTable[ImportRow] = RowTable(import_columns(), self)
        self.shown = RowFilter(self.table, self)
        self.view = QTableView()
        self.details = ImportDetails(_writer(snapshot), self._try_out)
        self.banner = Banner(closable=False)
        self.summary = text_label("", quiet=True, wrap=True)
        self.progress = QProgressBar()
        self.progress.setAccessibleName(tr("How much is done"))
        self.chips: FilterChips | None = None
        self.for_all = QComboBox()
        self.keep_all = QCheckBox(tr("Keep with their &questions"))
        self.keep_all.setToolTip(
            tr("Specs come in with the lines that are not understood, to be settled later")
        )
        self.keep_all.hide()
        self.cancel_button = button(tr("Cancel"), self._cancel)
        self.import_button = primary_button(tr("&Import"), self.write)
        self.asking = LongQuestion(background, self)
        self._lay_out()
        self._connect()
        self._read()

    def show_refusal(self, error: UserError) -> None:
        """Say why nothing came in."""
        super().show_refusal(error)
        self._show_working(False)

    def reject(self) -> None:
        """Close; what is under way leaves nothing behind."""
        self.asking.abandon()
        super().reject()

    def choose_for_all(self, choice: ImportChoice | None) -> None:
        """Decide for every spec that differs; theirs never takes the place of a classic."""
        if choice:
            rows = [decided(row, Decision(choice)) for row in self.table.rows]
            current = self.view.currentIndex().row()
            self.table.show_rows(rows)
            self.view.selectRow(max(0, current))
            self._count()

    def write(self) -> None:
        """Bring in what is to come in; all of it, or nothing."""
        self.banner.clear()
        decisions = {row.place: row.decision for row in self.table.rows if row.place >= 0}
        self._show_working(True, tr("Importing…"))
        self.asking.ask(
            partial(self._write, self._found, decisions), self._on_written, self.show_refusal
        )

    def teach(self, words: str, way: Way = "new") -> None:
        """Ask what unknown words are, and read everything again once that is said."""
        if self._teach is not None and not self.asking.is_running:
            self._teach(self, words, way, self._learn)

    # Inside

    def _teach_here(self, way: Way) -> None:
        """As `teach`, for the first unknown words of the chosen spec."""
        current = self.view.currentIndex()
        thing = self.shown.row(current).thing if current.isValid() else None
        problems = thing.problems if isinstance(thing, Unreadable) else ()
        words = next((bare_name(each.unknown) for each in problems if each.unknown), "")
        self.teach(words, way)

    def _learn(self, snapshot: Snapshot) -> None:
        current = self.view.currentIndex()
        self._coming_back = self.shown.row(current).key if current.isValid() else None
        self._snapshot = snapshot
        self.details.text_of = _writer(snapshot)
        self._read()

    def _read(self) -> None:
        self._show_working(True, tr("Reading…"))
        keeping = self._keeping
        question = partial(
            preview, self._snapshot, self._texts, keeps=lambda file, where: (file, where) in keeping
        )
        self.asking.ask(question, self._on_read, self.show_refusal)

    def _keep(self, row: ImportRow, keep: bool) -> None:
        """Keep a spec with its questions, or leave it out; all is looked at once more."""
        self._keeping = self._keeping | {row.key} if keep else self._keeping - {row.key}
        self._coming_back = row.key
        self._read()

    def _keep_all(self, keep: bool) -> None:
        """Keep every spec with its questions that has nothing else wrong, or none."""
        asked = frozenset(row.key for row in self.table.rows if row.askable)
        self._keeping = asked if keep else frozenset()
        self._coming_back = None
        self._read()

    def _named(self, file: str) -> NamedText:
        """The list that is asked about: of several files of one name, the first unanswered."""
        return next(each for each in self._texts if each.file == file and not each.columns)

    def _try_out(self, file: str, columns: Sequence[ColumnUse]) -> str:
        return first_drink(self._named(file), columns, self._snapshot)

    def _on_columns(self, file: str, columns: tuple[ColumnUse, ...]) -> None:
        answered = self._named(file)
        self._texts = tuple(
            replace(each, columns=columns) if each is answered else each for each in self._texts
        )
        self._read()

    def _on_read(self, found: ImportPreview) -> None:
        self._found = found
        self._show_working(False)
        before = {row.key: row.decision for row in self.table.rows}
        rows = tuple(
            decided(row, before.get(row.key, KEPT))
            for row in import_rows(found, one_file=len(self._texts) == 1)
        )
        self._offer_groups(rows)
        self.shown.keep(lambda _row: True)
        self.table.show_rows(rows)
        self._offer_keeping(rows)
        self.for_all.setVisible(bool(found.differing))
        self._for_all_label.setVisible(bool(found.differing))
        self._count()
        self._say_what_is_there(found)
        self._select(self._coming_back)
        chips = self.details.keep_chips
        if self._coming_back is not None and chips is not None:
            chips.chip(chips.choice).setFocus(Qt.FocusReason.OtherFocusReason)
        else:
            self.view.setFocus(Qt.FocusReason.OtherFocusReason)

    def _select(self, key: PlaceKey | None) -> None:
        """Choose a spec by its place, or the first."""
        there = (number for number, row in enumerate(self.table.rows) if row.key == key)
        self.view.selectRow(max(0, self.shown.place_of(next(there, 0))))

    def _offer_keeping(self, rows: Sequence[ImportRow]) -> None:
        """One box for all that could be kept with their questions, where there are any."""
        asked = [row for row in rows if row.askable]
        self.keep_all.setVisible(bool(asked))
        blocker = QSignalBlocker(self.keep_all)
        self.keep_all.setChecked(bool(asked) and all(row.kept for row in asked))
        blocker.unblock()

    def _on_written(self, done: Done[ImportedSpecs]) -> None:
        self.imported, self.step = done.value, done.step
        self.accept()

    def _on_moved(self, done: int, total: int) -> None:
        self.progress.setRange(0, total)
        self.progress.setValue(done)

    def _cancel(self) -> None:
        """Stop what is under way; with nothing under way, or nothing read yet, close."""
        if self.asking.is_running and self.table.rows:
            self.asking.stop()
        else:
            self.reject()

    def _on_decided(self, row: ImportRow, decision: Decision) -> None:
        for number, each in enumerate(self.table.rows):
            if each.place == row.place and each.group == row.group:
                self.table.replace_row(number, decided(each, decision))
        self.for_all.setCurrentIndex(0)
        self._count()

    def _on_current(self, current: QModelIndex) -> None:
        self.details.show_row(self.shown.row(current) if current.isValid() else None)

    def _show_group(self, group: str) -> None:
        self.shown.keep(lambda row: group in ("all", row.group))
        self.view.selectRow(0)

    def _offer_groups(self, rows: Sequence[ImportRow]) -> None:
        counts = {key: sum(row.group == key for row in rows) for key in GROUP_WORDS}
        chips = [
            (
                "all",
                tr("All {specs:,}", specs=len(rows)),
                tr("Every spec that is not there already"),
            )
        ]
        chips += [
            (key, f"{words} {counts[key]:,}", tr("Only those: {group}", group=words.lower()))
            for key, words in ((key, tr(words)) for key, words in GROUP_WORDS.items())
            if counts[key]
        ]
        if self.chips is not None:  # all was looked at once more
            self._top.removeWidget(self.chips)
            self.chips.hide()
            self.chips.deleteLater()
        self.chips = FilterChips(tr("Show"), chips, "all")
        self.chips.chosen.connect(self._show_group)
        self._top.insertWidget(0, self.chips)
        QWidget.setTabOrder(self.chips.chip("all"), self.for_all)

    def _count(self) -> None:
        count = sum(row.comes_in for row in self.table.rows)
        words = IMPORT_ONE if count == 1 else IMPORT_SEVERAL
        self.import_button.setText(tr(words, specs=count))
        self.import_button.setEnabled(bool(count))

    def _say_what_is_there(self, found: ImportPreview) -> None:
        there, bad = len(found.same), len(found.unreadable)
        said = []
        if there:
            said.append(tr(THERE if there == 1 else SEVERAL_THERE, specs=there))
        if bad:
            said.append(tr("{specs:,} cannot be read and will be left out.", specs=bad))
        if found.needs_columns:
            said.append(tr("Say which column is what, and the drinks of that list are read."))
        aside = len(found.left_aside)
        if aside:
            said.append(tr(ASIDE if aside == 1 else SEVERAL_ASIDE, things=aside))
        self.summary.setText(" ".join(said))
        self.summary.setVisible(bool(said))
        if not self.table.rows:
            self.banner.say(tr("There is nothing to import."), "info")

    def _show_working(self, working: bool, words: str = "") -> None:
        self.progress.setVisible(working)
        self.progress.setRange(0, 0)
        self.progress.setFormat(f"{words} %p %")
        self._body.setEnabled(not working)
        self.import_button.setEnabled(not working)
        self.cancel_button.setText(tr("&Stop") if working else tr("Cancel"))
        if working:
            self.cancel_button.setFocus(Qt.FocusReason.OtherFocusReason)
        else:
            self._count()

    def _connect(self) -> None:
        self.asking.moved.connect(self._on_moved)
        self.details.decided.connect(self._on_decided)
        self.details.teach_chosen.connect(self.teach)
        teach_by_keys(self, self._teach_here)
        self.details.kept.connect(self._keep)
        self.keep_all.toggled.connect(self._keep_all)
        self.details.columns_said.connect(self._on_columns)
        self.view.selectionModel().currentRowChanged.connect(self._on_current)
        self.for_all.activated.connect(lambda _: self.choose_for_all(self.for_all.currentData()))

    def _lay_out(self) -> None:
        self.view.setModel(self.shown)
        prepare_view(self.view, tr("Specs of the file"))
        header = self.view.horizontalHeader()
        header.setStretchLastSection(False)
        header.setSectionResizeMode(0, QHeaderView.ResizeMode.Stretch)
        set_widths(self.view, COLUMN_WIDTHS)
        header.setSortIndicator(-1, Qt.SortOrder.AscendingOrder)
        for choice, words in _FOR_ALL:
            self.for_all.addItem(tr(words), choice)
        self._for_all_label = text_label(tr("Those that differ:"))
        self.for_all.setAccessibleName(tr("What becomes of those that differ"))
        self._top = row_of(SPRING, self.keep_all, self._for_all_label, self.for_all)
        splitter = QSplitter(Qt.Orientation.Horizontal)
        splitter.setChildrenCollapsible(False)
        splitter.setHandleWidth(UNIT + HALF)
        splitter.addWidget(Card(self.view))
        splitter.addWidget(Card(self.details))
        splitter.setSizes([480, 440])
        self._body = QWidget()
        column_of(self._top, wide(splitter), on=self._body)
        files = spoken_list([each.file for each in self._texts[:3]], "and")
        more = len(self._texts) - 3
        title = tr("{files} and {more} more", files=files, more=more) if more > 0 else files
        column_of(
            text_label(title, TypeSize.SUBTITLE, wrap=True),
            self.summary,
            wide(self._body),
            self.banner,
            self._buttons(),
            on=self,
            margins=PAD,
        )

    def _buttons(self) -> QHBoxLayout:
        row = row_of(wide(self.progress), SPRING)
        for each in (self.cancel_button, self.import_button):
            each.setAutoDefault(False)
            row.addWidget(each)
        return row


def _writer(snapshot: Snapshot) -> Callable[[Spec], str]:
    """How a spec is written with what a bar knows."""
    tree, units = snapshot.knowledge.tree, snapshot.settings.units
    return lambda spec: write_spec(spec, tree, units)


def preview_specs(context: ScreenContext, texts: Sequence[NamedText], parent: QWidget) -> None:
    """Show what documents would bring to the bar."""
    bar = context.bar
    beside = bar.beside

    def write(
        found: ImportPreview, decisions: dict[int, Decision], progress: Progress
    ) -> Done[ImportedSpecs]:
        with beside() as own:  # a bar belongs to one thread
            return own.imports.specs(found, decisions, progress)

    dialog = ImportSpecsDialog(
        texts=texts,
        snapshot=bar.snapshot,
        background=context.background,
        write=write,
        teach=teacher(bar),
        parent=parent,
    )
    dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    dialog.accepted.connect(lambda: _after(context, dialog))
    dialog.open()


def _after(context: ScreenContext, dialog: ImportSpecsDialog) -> None:
    context.bar.refresh()
    imported = dialog.imported
    if imported is None:
        return
    said = (
        (len(imported.added), CAME_IN, SEVERAL_CAME_IN),
        (len(imported.replaced), REPLACED, SEVERAL_REPLACED),
    )
    words = [tr(one if many == 1 else more, specs=many) for many, one, more in said if many]
    context.toast.say(spoken_list(words, "and"), tr("Undo"), partial(context.undo, dialog.step))
    names = (*imported.added, *imported.replaced)
    if names:
        context.go("specs", names[0])
