"""The log after a shoot: serves really made, spills and counts of just its bottles, in one step."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping
from contextlib import contextmanager
from dataclasses import asdict, dataclass, replace
from functools import partial
from typing import Any

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import (
    QAbstractItemDelegate,
    QAbstractItemView,
    QDialog,
    QHeaderView,
    QLineEdit,
    QMessageBox,
    QSpinBox,
    QStyleOptionViewItem,
    QTableWidget,
    QTableWidgetItem,
    QWidget,
)

from barkeep.application.bar import Bar
from barkeep.desktop.counting.keys import (
    FULL,
    LEGEND,
    AsExpected,
    Exactly,
    GoBack,
    InHand,
    Meaning,
    Tenths,
    gone_back,
    gone_on,
    meaning_of,
    no_key,
)
from barkeep.desktop.look.metrics import PAD, UNIT, TypeSize
from barkeep.desktop.screens.kept import LOG, START_AFRESH, KeptTyping, when_left
from barkeep.desktop.screens.list_stack import look_like_a_list
from barkeep.desktop.screens.operations import RefusedInBanner, run_operation
from barkeep.desktop.widgets.buttons import accept_by_keys, button, number_field, primary_button
from barkeep.desktop.widgets.chips import FlowLayout
from barkeep.desktop.widgets.delegates import RowDelegate
from barkeep.desktop.widgets.keys import HELD, KeyLegend, typed_key
from barkeep.desktop.widgets.labels import text_label
from barkeep.desktop.widgets.layouts import SPRING, Card, column_of, row_of, wide
from barkeep.desktop.widgets.notices import Banner, announce, question_before_losing
from barkeep.desktop.widgets.tips import plain_tip
from barkeep.domain.amounts.amount import parse_amount
from barkeep.domain.amounts.measures import to_quantity
from barkeep.domain.bar.shoots import MOST_SHOOT_SERVES, Shoot
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.bottles.bottle import Bottle
from barkeep.domain.bottles.containers import container_of
from barkeep.domain.bottles.counting import found_at, tenths
from barkeep.domain.bottles.level_words import Comparison, difference, quantity, with_doubt
from barkeep.domain.bottles.levels import MeasuredLevel, parse_level
from barkeep.domain.phrases import counted
from barkeep.domain.shoots.drinks import without_spec
from barkeep.domain.shoots.log import (
    ExpectedBottle,
    LogSheet,
    PouredBeyond,
    as_planned,
    expected_after,
    not_taken,
    refuse_spills_beyond,
)
from barkeep.errors import AmountError, UserError, spoken_list
from barkeep.translation import tr, tr_noop

CELL_WIDTH = 76

COLUMNS = (
    tr_noop("Bottle"),
    tr_noop("Before"),
    tr_noop("Poured"),
    tr_noop("Spilled"),
    tr_noop("Expected"),
    tr_noop("Counted"),
    tr_noop("Difference"),
)
SPILLED, COUNTED = 3, 5

RIGHT = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter

EndEdit = QAbstractItemDelegate.EndEditHint


class _CellDelegate(RowDelegate):
    """Remembers the field of the cell that is being typed in; an older one may still be going."""

    editor: QLineEdit | None = None

    def createEditor(
        self,
        parent: QWidget,
        option: QStyleOptionViewItem,
        index: QModelIndex | QPersistentModelIndex,
    ) -> QWidget:
        made = super().createEditor(parent, option, index)
        self.editor = made if isinstance(made, QLineEdit) else None
        return made


class LogTable(QTableWidget):
    """Says what was typed; what it means is the dialog's affair."""

    typed = Signal(str)
    """A key, as `typed_key` names it."""
    entered = Signal(int)
    """Enter has ended the typing in a cell of this column."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(0, len(COLUMNS), parent)
        self._given_up: QWidget | None = None
        self._cells = _CellDelegate(self)
        self.setItemDelegate(self._cells)
        self.setHorizontalHeaderLabels([tr(each) for each in COLUMNS])
        self.setAccessibleName(tr("Bottles of the shoot"))
        look_like_a_list(self, low=True)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setEditTriggers(QAbstractItemView.EditTrigger.DoubleClicked)
        self._prepare_header()

    def edit_cell(self, row: int, column: int, begins: str = "") -> None:
        """Type in a cell, over what it says, or on from what was begun."""
        item = self.item(row, column)
        if item is None:
            return
        self.setCurrentCell(row, column)
        self.editItem(item)
        if begins and self._cells.editor is not None:
            self._cells.editor.setText(begins)

    def end_typing(self) -> None:
        """Take what is being typed in a cell."""
        if self.state() == QAbstractItemView.State.EditingState:
            self.setCurrentCell(self.currentRow(), 0)

    @contextmanager
    def measured_once(self) -> Iterator[None]:
        """While many cells are put in: for each of them all columns would be measured anew."""
        self.horizontalHeader().setSectionResizeMode(QHeaderView.ResizeMode.Fixed)
        try:
            yield
        finally:
            self._fit_columns()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if self.state() == QAbstractItemView.State.EditingState:
            event.ignore()  # the Enter that ends the typing passes through here as well
            return
        typed = "" if event.modifiers() & HELD else typed_key(event)
        ends = {"Home": 0, "End": self.rowCount() - 1}
        if typed in ends:
            self.setCurrentCell(ends[typed], max(0, self.currentColumn()))
        elif not typed:
            super().keyPressEvent(event)
        elif not event.isAutoRepeat():  # a key held down counts one bottle
            self.typed.emit(typed)

    def commitData(self, editor: QWidget) -> None:
        if editor is not self._given_up:  # as it goes it may lose the focus, and ask once more
            super().commitData(editor)

    def closeEditor(self, editor: QWidget, hint: EndEdit) -> None:
        self._given_up = editor if hint == EndEdit.RevertModelCache else None
        column = self.currentColumn()
        super().closeEditor(editor, hint)
        if hint == EndEdit.SubmitModelCache:
            self.entered.emit(column)

    def _prepare_header(self) -> None:
        header = self.horizontalHeader()
        header.setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        for place in range(1, len(COLUMNS)):
            above = self.horizontalHeaderItem(place)
            assert above is not None  # all of them have just been set
            above.setTextAlignment(RIGHT)
        header.setMinimumSectionSize(CELL_WIDTH)  # room to type in
        self._fit_columns()

    def _fit_columns(self) -> None:
        header = self.horizontalHeader()
        header.setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        header.setSectionResizeMode(0, QHeaderView.ResizeMode.Stretch)


@dataclass(frozen=True)
class LogRow:
    """One bottle of the log."""

    expected: ExpectedBottle
    counted: MeasuredLevel | None

    @property
    def bottle(self) -> Bottle:
        """The bottle itself."""
        return self.expected.bottle

    @property
    def compared(self) -> Comparison | None:
        """Counted beside expected; None where it was not counted."""
        if self.counted is None:
            return None
        each = self.expected
        return Comparison(
            each.expected, each.expected_sigma, self.counted.amount, self.counted.sigma
        )

    @property
    def texts(self) -> tuple[str, ...]:
        """Bottle, before, poured, spilled, expected, counted, difference."""
        unit, each = self.bottle.product.unit, self.expected
        compared = self.compared
        return (
            self.bottle.product.title,
            quantity(self.bottle.level.amount, unit),
            quantity(each.poured, unit) if each.poured else "",
            quantity(each.spilled, unit) if each.spilled else "",
            with_doubt(each.expected, each.expected_sigma, unit),
            quantity(self.counted.amount, unit) if self.counted else "",
            difference(compared, unit) if compared else "",
        )


class LogDraft:
    """What the user has said so far; nothing of it is written yet."""

    def __init__(self, shoot: Shoot, snapshot: Snapshot) -> None:
        self._shoot = replace(shoot, state="filmed")
        self._snapshot = snapshot
        self._others: set[int] = set()
        self.sheet: LogSheet = as_planned(shoot)
        self._leave_out_removed()
        self._planned = self.sheet.made

    def rows(self) -> tuple[LogRow, ...]:
        """Every bottle the shoot bears on, and those taken in besides, in shelf order."""
        found = expected_after(self._shoot, self._snapshot, self.sheet)
        shown = {each.bottle.id for each in found}
        others = tuple(
            ExpectedBottle(each, 0.0, 0.0)
            for each in self._snapshot.bottles
            if each.id in self._others - shown
        )
        return tuple(
            LogRow(each, self.sheet.counted.get(each.bottle.id)) for each in (*found, *others)
        )

    def make(self, number: int, count: int) -> None:
        """Say how many serves of a drink were really made."""
        made = list(self.sheet.made)
        made[number] = count
        self.sheet = replace(self.sheet, made=tuple(made))

    def take_in(self, bottle_id: int) -> None:
        """Show a bottle that no spec names."""
        self._others.add(bottle_id)

    def spill(self, bottle_id: int, text: str) -> None:
        """Say what was spilled of a bottle; nothing, for an empty text.

        Raises `AmountError`, and `SpilledBeyond` for more than can have been.
        """
        spilled = {key: each for key, each in self.sheet.spilled.items() if key != bottle_id}
        if text.strip():
            bottle = self._snapshot.bottle_by_id[bottle_id]
            written = text if text.strip()[-1].isalpha() else f"{text} {bottle.product.unit}"
            units = self._snapshot.settings.units
            read = parse_amount(written, units)
            if read.high is not None:
                raise AmountError(text, tr("write one amount, such as 20 ml"))
            amount = to_quantity(read, bottle.product.unit, units)
            if amount:
                spilled[bottle_id] = amount
                spoken = replace(self.sheet, spilled={bottle_id: amount})
                refuse_spills_beyond(expected_after(self._shoot, self._snapshot, spoken))
        self.sheet = replace(self.sheet, spilled=spilled)

    def count(self, bottle_id: int, text: str) -> None:
        """Count a bottle by any of the four means; not at all, for an empty text.

        Raises `LevelError` or another `UserError`.
        """
        measured = None
        if text.strip():
            snapshot, bottle = self._snapshot, self._snapshot.bottle_by_id[bottle_id]
            container = container_of(bottle, snapshot.knowledge.tree, snapshot.bottles)
            measured = parse_level(text, container, snapshot.settings.units)
        self.take(bottle_id, measured)

    def take(self, bottle_id: int, measured: MeasuredLevel | None) -> None:
        """Count a bottle at a level, or take its count back. It stays in view either way."""
        counted = {key: each for key, each in self.sheet.counted.items() if key != bottle_id}
        if measured is not None:
            counted[bottle_id] = measured
        self.sheet = replace(self.sheet, counted=counted)

    def in_words(self) -> str:
        """What would be written, in one sentence."""
        rows = self.rows()
        counts = len(self.sheet.counted)
        flagged = [row for row in rows if row.compared and row.compared.told_apart]
        said = tr(
            "{bottles}: {counts} counted, {rest} as expected.",
            bottles=counted(len(rows), "bottle"),
            counts=counts,
            rest=len(rows) - counts,
        )
        if flagged:
            said += tr(" {bottles} beyond the doubt.", bottles=counted(len(flagged), "bottle"))
        unpoured = not_taken(self._shoot, self._snapshot, self.sheet.made)
        said = " ".join((said, *unpoured))
        gone = without_spec(self._shoot, self._snapshot)
        if gone:
            names = tr(" and ").join(gone)
            said += tr(" The spec of {names} was removed: its pours are not known.", names=names)
        return said

    def typed_in_words(self, unread: int = 0) -> str:
        """What would be lost: *12 counts, 1 spill and the serves made*; empty for nothing.

        `unread` is how many cells hold words that could not be read.
        """
        counts, spills = len(self.sheet.counted), len(self.sheet.spilled)
        many = (
            (counts, counted(counts, "count")),
            (spills, counted(spills, "spill")),
            (
                unread,
                counted(unread, "amount that could not be read", "amounts that could not be read"),
            ),
        )
        parts = [words for count, words in many if count]
        if self.sheet.made != self._planned:
            parts.append(tr("the serves made"))
        return spoken_list(parts, "and")

    def as_values(self, besides: Iterable[int] = ()) -> dict[str, Any]:
        """All of it in plain values, drinks by name and bottles by id, with those `besides`."""
        touched = {*self.sheet.counted, *self.sheet.spilled, *self._others, *besides}
        titles = self._snapshot.title_by_id
        serves = zip(self._shoot.names, self.sheet.made, self._planned, strict=True)
        return {
            MADE: {name: made for name, made, planned in serves if made != planned},
            COUNTS: {str(key): asdict(each) for key, each in self.sheet.counted.items()},
            SPILLS: {str(key): each for key, each in self.sheet.spilled.items()},
            OTHERS: sorted(self._others),
            TITLES: {str(key): titles.get(key, "") for key in touched},
        }

    def go_on_with(self, values: Mapping[str, Any]) -> Iterator[str]:
        """Take up what was left; what fits nothing any more is given by name."""
        for name, count in values[MADE].items():
            if name in self._shoot.names:
                self.make(self._shoot.names.index(name), count)
            else:
                yield name
        self._leave_out_removed()
        gone = {key: title for key, title in values[TITLES].items() if not self._is_here(int(key))}
        yield from gone.values()
        counted = {int(key): each for key, each in values[COUNTS].items() if key not in gone}
        for key, each in counted.items():
            self.take_in(key)
            self.take(key, MeasuredLevel(**each))
        self._others |= {each for each in values[OTHERS] if self._is_here(each)}

    def spilled_in(self, values: Mapping[str, Any]) -> Iterator[tuple[int, str]]:
        """The spills that were left, each as it is typed: what was spilled may be more by now."""
        for key, amount in values[SPILLS].items():
            if self._is_here(int(key)):
                yield int(key), f"{amount!r} {self._snapshot.bottle_by_id[int(key)].product.unit}"

    def _is_here(self, bottle_id: int) -> bool:
        return bottle_id in self._snapshot.bottle_by_id

    def _leave_out_removed(self) -> None:
        gone = without_spec(self._shoot, self._snapshot)
        for number, drink in enumerate(self._shoot.drinks):
            if drink.name in gone:
                self.make(number, 0)


MADE, COUNTS, SPILLS, OTHERS, TITLES = "made", "counts", "spills", "others", "titles"
UNREAD = "unread"
LATER = tr_noop("Leave it for &later")

Role = QMessageBox.ButtonRole

SIZE = (940, 600)

KEYS = (
    *LEGEND,
    (("S",), tr_noop("a spill")),
    (("+", "-"), tr_noop("a round of every drink more, less")),
    (("Esc",), tr_noop("leave")),
)


class LogDialog(RefusedInBanner, QDialog):
    """`logged` carries what was done once it is written.

    What is left for later is `kept` and stands there again the next time; `left`
    says that it was.
    """

    logged = Signal(object)
    left = Signal()

    def __init__(
        self, bar: Bar, shoot: Shoot, kept: KeptTyping, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        accept_by_keys(self)
        self._bar, self._shoot, self._kept = bar, shoot, kept
        self.draft = LogDraft(shoot, bar.snapshot)
        self.setWindowTitle(tr("Log {theme}", theme=shoot.theme))
        self.banner = Banner(closable=False)
        self.made: list[QSpinBox] = []
        self.table = LogTable()
        self._in_hand = InHand(0)
        self.question: QMessageBox | None = None
        self.legend = KeyLegend(KEYS)
        self.summary = text_label("", quiet=True, wrap=True)
        self.another = button(tr("Another &bottle…"), self.add_bottle)
        self.write_button = primary_button(tr("&Write the log"), lambda: self.write(), "check")
        self.cancel_button = button(tr("Cancel"), self.reject)
        self._filling = False
        self._unread: dict[tuple[int, int], tuple[str, UserError]] = {}
        self._lay_out()
        self.resize(*SIZE)
        self._fill()
        if self.table.rowCount():
            self.table.setCurrentCell(0, COUNTED)
        self.table.setFocus()
        self._take_up()

    # What the user does

    def add_round(self, by: int = 1) -> None:
        """One serve more, or less, of every drink."""
        for field in self.made:
            field.setValue(field.value() + by)

    def spill(self) -> None:
        """Begin to write what was spilled of the bottle in hand."""
        self.table.edit_cell(self.table.currentRow(), SPILLED)

    def count_exactly(self, begins: str = "") -> None:
        """Begin to write an exact amount of the bottle in hand."""
        self.table.edit_cell(self.table.currentRow(), COUNTED, begins)

    def go_back(self) -> None:
        """Take back the count of the bottle before."""
        number = gone_back(self._in_hand, self.table.currentRow())
        if number is None:
            return
        self._take(number, None)
        self._go_to(InHand(number))

    def add_bottle(self) -> None:
        """Count a bottle that the specs do not name as well."""
        from barkeep.desktop.bottles.choose import ChooseBottle

        shown = {each.bottle.id for each in self.draft.rows()}
        others = [each for each in self._bar.snapshot.bottles if each.id not in shown]
        dialog = ChooseBottle(others, self)
        dialog.chosen.connect(self._on_another)
        dialog.open()

    def write(self, *, what_there_is: bool = False) -> None:
        """Write everything in one transaction; `what_there_is` as the log takes it."""
        self.table.end_typing()
        if self._unread:  # also where the click on the button has ended the typing
            self._say_unread()
            return
        self.banner.clear()
        identity = self._shoot.id
        if identity is None:
            return
        log = partial(
            self._bar.shoots.log,
            identity,
            self.draft.sheet,
            what_there_is=what_there_is,
            seen=self._shoot,
        )
        run_operation(self, log, self._finish, self.show_refusal)

    def reject(self) -> None:
        """Leave, after asking what becomes of what was typed."""
        self.table.end_typing()
        typed = self._typed_in_words()
        if not typed:
            self._drop()
            super().reject()
        elif self.question is None:
            self.question = question_before_losing(
                self,
                title=tr("Log not written"),
                text=tr("Leave {typed} unwritten?", typed=typed),
                keep=tr("&Keep counting"),
                later=LATER,
            )
            self.question.finished.connect(self._on_answered)
            self.question.open()

    def show_refusal(self, error: UserError) -> None:
        """Say why not, above the bottles, to be seen and heard."""
        super().show_refusal(error)
        if isinstance(error, PouredBeyond):
            pour = partial(self.write, what_there_is=True)
            self.banner.say(str(error), "error", tr("Pour what there is"), pour)
        announce(self.table, str(error))

    def start_afresh(self) -> None:
        """Throw away what was left, and begin with what was planned."""
        self._drop()
        self._unread.clear()
        self.draft = LogDraft(self._shoot, self._bar.snapshot)
        self._show_made()
        self._fill()
        self.banner.clear()
        self.table.setFocus(Qt.FocusReason.OtherFocusReason)

    # The rest

    def _take_up(self) -> None:
        """Put in what was left the last time, and say so."""
        left = self._kept.left(self._name)
        if left is None:
            return
        try:
            gone = list(self.draft.go_on_with(left))
            for bottle_id, text in self.draft.spilled_in(left):
                self.draft.take_in(bottle_id)
                self._read(bottle_id, SPILLED, text)
            for bottle_id, column, text in left[UNREAD]:
                if bottle_id in self._bar.snapshot.bottle_by_id:
                    self.draft.take_in(bottle_id)
                    self._read(bottle_id, column, text)
            said = tr(
                "As you left it on {moment}: {typed}. ",
                moment=when_left(left),
                typed=self._typed_in_words() or tr("nothing"),
            )
        except (KeyError, TypeError, ValueError):  # a file that somebody else has written
            self.start_afresh()
            return
        said += tr("Nothing of it is written yet.")
        if gone:
            said += tr(" Not there any more, so left out: {gone}.", gone=spoken_list(gone, "and"))
        said += "".join(f" {error}" for _text, error in list(self._unread.values())[-1:])
        self._show_made()
        self._fill()
        self.banner.say(said, "info", START_AFRESH, self.start_afresh)

    def _show_made(self) -> None:
        for field, count in zip(self.made, self.draft.sheet.made, strict=True):
            field.blockSignals(True)
            field.setValue(count)
            field.blockSignals(False)

    def _keep(self) -> None:
        """Keep what is said so far, so that no end of the program can lose it."""
        if not self._typed_in_words():
            self._drop()
            return
        unread = [[*place, text] for place, (text, _error) in self._unread.items()]
        values = self.draft.as_values(bottle_id for bottle_id, _column in self._unread)
        self._kept.keep(self._name, {**values, UNREAD: unread})

    def _drop(self) -> None:
        self._kept.drop(self._name)

    @property
    def _name(self) -> str:
        """What it is kept under."""
        return f"{LOG}{self._shoot.id}"

    def _finish(self, done: object) -> None:
        self._drop()
        self.logged.emit(done)
        self.accept()

    def _on_another(self, bottle_id: int) -> None:
        self.draft.take_in(bottle_id)
        self._fill()
        self.table.setCurrentCell(self._row_of(bottle_id), COUNTED)

    def _row_of(self, bottle_id: int) -> int:
        rows = self.draft.rows()
        return next((at for at, row in enumerate(rows) if row.bottle.id == bottle_id), 0)

    def _on_made(self, number: int, count: int) -> None:
        self.draft.make(number, count)
        self._fill()
        self._keep()
        self._say_unread()  # a bottle that goes takes its typing along

    def _on_changed(self, item: QTableWidgetItem) -> None:
        if self._filling or item.column() not in (SPILLED, COUNTED):
            return
        row = self.draft.rows()[item.row()]
        self._read(row.bottle.id, item.column(), item.text())
        self._say_unread()
        self._fill()
        self._keep()

    def _read(self, bottle_id: int, column: int, text: str) -> None:
        """Take what was typed in a cell; what cannot be read stays as it is typed."""
        take: Callable[[int, str], object] = (
            self.draft.spill if column == SPILLED else self.draft.count
        )
        place = (bottle_id, column)
        self._unread.pop(place, None)
        try:
            take(bottle_id, text)
        except UserError as error:
            take(bottle_id, "")
            self._unread[place] = (text, error)

    def _say_unread(self) -> None:
        """Say why what was typed last could not be read; it stays to be mended or emptied."""
        if self._unread:
            self.show_refusal(list(self._unread.values())[-1][1])
        else:
            self.banner.clear()

    def _on_typed(self, typed: str) -> None:
        row = self.table.currentRow()
        own: dict[str, Callable[[], object]] = {
            "s": self.spill,
            "+": self.add_round,
            "-": partial(self.add_round, -1),
        }
        if row < 0:
            return
        if typed in own:
            own[typed]()
        elif (meaning := meaning_of(typed)) is not None:
            self._act(row, meaning)
        elif not self._unread:  # what could not be read is said until it is mended
            self.banner.say(no_key(typed), "info")

    def _act(self, number: int, meaning: Meaning) -> None:
        row = self.draft.rows()[number]
        match meaning:
            case Tenths(many) if row.bottle.product.unit == "each" and 0 < many < FULL:
                self.count_exactly(str(many))  # pieces are counted, not judged
            case Tenths(many):
                self._take(number, tenths(row.bottle, many).measured)
                self._go_on(number)
            case AsExpected():
                self._take(number, found_at(row.bottle, row.expected.expected))
                self._go_on(number)
            case GoBack():
                self.go_back()
            case Exactly(begins):
                self.count_exactly(begins)

    def _take(self, number: int, measured: MeasuredLevel | None) -> None:
        """Count a bottle, or take its count back, in place of whatever its cell says."""
        bottle_id = self.draft.rows()[number].bottle.id
        self._unread.pop((bottle_id, COUNTED), None)
        self.draft.take(bottle_id, measured)
        self._fill()
        self._keep()
        self._say_unread()
        announce(self.table, " ".join(self.draft.rows()[number].texts))

    def _go_on(self, number: int) -> None:
        self._go_to(gone_on(number, self.table.rowCount() - 1))

    def _go_to(self, held: InHand) -> None:
        self._in_hand = held
        self.table.setCurrentCell(held.row, COUNTED)

    def _on_entered(self, column: int) -> None:
        """Enter took what was typed: on to the next bottle, unless it could not be read."""
        number = self.table.currentRow()
        if number < 0 or (self.draft.rows()[number].bottle.id, column) in self._unread:
            return
        if column == COUNTED:
            self._go_on(number)
        else:
            self.table.setCurrentCell(number, COUNTED)

    def _typed_in_words(self) -> str:
        return self.draft.typed_in_words(len(self._unread))

    def _on_answered(self) -> None:
        question, self.question = self.question, None
        if question is None:
            return
        role = question.buttonRole(question.clickedButton())
        if role == Role.DestructiveRole:
            self._drop()
            super().reject()
        elif role == Role.AcceptRole:
            self._keep()
            self.left.emit()
            super().reject()
        else:
            self.table.setFocus(Qt.FocusReason.OtherFocusReason)

    def _fill(self) -> None:
        kept = self.table.currentRow(), self.table.currentColumn()
        self._filling = True
        rows = self.draft.rows()
        shown = {row.bottle.id for row in rows}
        self._unread = {key: each for key, each in self._unread.items() if key[0] in shown}
        with self.table.measured_once():
            self.table.setRowCount(len(rows))
            for number, row in enumerate(rows):
                self._fill_row(number, row)
        self._filling = False
        self.table.setCurrentCell(*kept)
        self.summary.setText(self.draft.in_words())
        self.write_button.setEnabled(bool(rows))

    def _fill_row(self, number: int, row: LogRow) -> None:
        for column, read in enumerate(row.texts):
            text = (
                self._unread[place][0]
                if (place := (row.bottle.id, column)) in self._unread
                else read
            )
            item = QTableWidgetItem(text)
            flags = Qt.ItemFlag.ItemIsEnabled | Qt.ItemFlag.ItemIsSelectable
            if column in (SPILLED, COUNTED):
                flags |= Qt.ItemFlag.ItemIsEditable
            item.setFlags(flags)
            item.setToolTip(plain_tip(text))
            if column:
                item.setTextAlignment(RIGHT)
            self.table.setItem(number, column, item)

    def _lay_out(self) -> None:
        self.table.itemChanged.connect(self._on_changed)
        self.table.typed.connect(self._on_typed)
        self.table.entered.connect(self._on_entered)
        for each in (self.another, self.cancel_button, self.write_button):
            each.setAutoDefault(False)
        column_of(
            text_label(tr("Log {theme}", theme=self._shoot.theme), TypeSize.SUBTITLE, wrap=True),
            text_label(tr("Serves really made"), TypeSize.STRONG),
            self._serves(),
            self.banner,
            wide(Card(self.table)),
            self.legend,
            self.summary,
            row_of(self.another, SPRING, self.cancel_button, self.write_button),
            on=self,
            margins=PAD,
        )

    def _serves(self) -> FlowLayout:
        flow = FlowLayout()
        for number, drink in enumerate(self._shoot.drinks):
            field = number_field(tr("Serves of {name}", name=drink.name), 0, 3 * MOST_SHOOT_SERVES)
            field.setValue(drink.serves.total)
            field.valueChanged.connect(partial(self._on_made, number))
            self.made.append(field)
            part = QWidget()
            row_of(text_label(drink.name), field, on=part, margins=(0, 0, UNIT, 0), gap=None)
            flow.addWidget(part)
        return flow
