"""Plan a shoot: theme, day and hour, drinks in running order with their serves, notes."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import asdict, replace
from datetime import date, datetime, time
from functools import partial
from typing import Any

from PySide6.QtCore import QDate, QEvent, QObject, Qt, QTimer, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import (
    QHeaderView,
    QLineEdit,
    QPlainTextEdit,
    QTableWidget,
    QTableWidgetItem,
    QWidget,
)

from barkeep.application.bar import Bar
from barkeep.application.finding import find_spec
from barkeep.desktop.look.metrics import TypeSize, dialog_width
from barkeep.desktop.screens.form_dialog import FormDialog
from barkeep.desktop.screens.kept import START_AFRESH, KeptTyping, when_left
from barkeep.desktop.screens.list_stack import look_like_a_list
from barkeep.desktop.screens.name_completion import NameCompleter, Suggestion
from barkeep.desktop.screens.operations import run_operation
from barkeep.desktop.shoots.dragging import OrderTable
from barkeep.desktop.widgets.buttons import button, day_field, day_in, number_field, quiet_button
from barkeep.desktop.widgets.delegates import RowDelegate
from barkeep.desktop.widgets.labels import text_label
from barkeep.desktop.widgets.layouts import Card, column_of, row_of, wide
from barkeep.desktop.widgets.tips import plain_tip
from barkeep.domain.bar.shoots import (
    MOST_SHOOT_SERVES,
    ChosenPour,
    ServeCounts,
    Shoot,
    ShootDrink,
)
from barkeep.domain.shoots.running_order import moved
from barkeep.errors import InvalidField, UnknownName, UserError
from barkeep.translation import tr, tr_about, tr_noop

WIDTH, ROWS_HEIGHT, NOTES_HEIGHT = 680, 152, 64
THEME, ON, STARTS, DRINKS, NOTES = "theme", "on", "starts", "drinks", "notes"
COLUMNS = (tr_noop("Drink"), tr_noop("Tests"), tr_noop("Camera"), tr_noop("Tasting"))
DRINK, BASE = "drink", "base"
ORDER_HINT = tr_noop(
    "Drag a drink to its place, or move it with Alt+Up and Alt+Down. "
    "Delete takes it out, Ctrl+Z takes that back."
)


class ShootEditor(FormDialog):
    """`written` carries the shoot once it is written down.

    What is typed is `kept` as it is typed, and stands there again the next time
    where it was not saved; `left` says that it was left so.
    """

    written = Signal(object)
    left = Signal()
    order_changed = Signal()

    def __init__(
        self, bar: Bar, shoot: Shoot, kept: KeptTyping, parent: QWidget | None = None
    ) -> None:
        new = shoot.id is None
        super().__init__(
            tr("New shoot") if new else tr("Change {theme}", theme=shoot.theme), tr("Save"), parent
        )
        self._bar, self._shoot, self._kept = bar, shoot, kept
        self._drinks: list[ShootDrink] = []
        self._undoes: list[Callable[[Sequence[ShootDrink]], Sequence[ShootDrink]]] = []
        """What takes each change of the running order back, the last at the end."""
        self.theme = QLineEdit(shoot.theme)
        self.on = day_field(shoot.on, shown="yyyy-MM-dd")
        self.starts = QLineEdit(f"{shoot.starts:%H:%M}" if shoot.starts else "")
        self.starts.setPlaceholderText(tr("such as 15:00"))
        self.drink = QLineEdit()
        self.add_button = button(tr("Add"), self.add_typed)
        self.add_button.setAutoDefault(False)
        self.table = OrderTable(len(COLUMNS))
        self.notes = QPlainTextEdit(shoot.notes)
        self._add_fields()
        self._show_drinks(shoot.drinks)
        self._base = self._typed()
        self._keeping = QTimer(self, singleShot=True, interval=0)
        """Keeps all that one key or button has changed at once."""
        self._keeping.timeout.connect(self._keep)
        self._go_on()
        self._watch()
        self.setMinimumWidth(dialog_width(WIDTH))
        self.theme.setFocus()

    def add_typed(self) -> bool:
        """Put the drink whose name is typed last in the running order; whether there is one."""
        text = self.drink.text().strip()
        spec = self.read(DRINKS, lambda: find_spec(self._bar.snapshot, text)) if text else None
        if spec is None:
            return not text
        if any(each.name == spec.name for each in self._drinks):
            self.refuse(DRINKS, tr("{name} is in the running order already", name=spec.name))
            return False
        self._drinks.append(ShootDrink(spec.id, spec.name))
        self._undoes.append(lambda now: [each for each in now if each.name != spec.name])
        self._add_row(self._drinks[-1])
        self.drink.clear()
        return True

    def move_current(self, by: int) -> None:
        """Move the chosen drink up or down."""
        at = self.table.currentRow()
        if 0 <= at < len(self._drinks) and 0 <= at + by < len(self._drinks):
            self._place(at, at + by)

    def take_back(self) -> None:
        """Take back what was moved, added or taken out last; the serves stay as they are."""
        if self._undoes:
            self._show_drinks(self._undoes.pop()(self._read_drinks()))
            self.table.setCurrentCell(0, 0)

    def _place(self, number: int, to: int) -> None:
        self._undoes.append(partial(moved, number=to, to=number))
        self._show_drinks(moved(self._read_drinks(), number, to))
        self.table.setCurrentCell(to, 0)

    def drop_current(self) -> None:
        """Take the chosen drink out."""
        at = self.table.currentRow()
        if 0 <= at < len(self._drinks):
            drinks = self._read_drinks()
            dropped = drinks[at]
            self._undoes.append(lambda now: [*now[:at], dropped, *now[at:]])
            self._show_drinks([*drinks[:at], *drinks[at + 1 :]])

    def submit(self) -> None:
        self.clear_refusal()
        self.add_typed()
        starts = self.read(STARTS, self._read_start)
        if self.has_problems():
            return
        shoot = self._wanted(starts)
        before, shoots = self._shoot, self._bar.shoots
        act = partial(shoots.add, shoot)
        if shoot.id is not None:
            act = partial(shoots.replace, shoot, before)
        run_operation(self, act, self._finish)

    def see(self, theirs: Shoot) -> None:
        self._bar.refresh()
        self._shoot, self._base = theirs, _values_in(theirs)

    def show_theirs(self) -> None:
        self._fill(self._base)

    def reject(self) -> None:
        """Leave; what is not saved is kept as it stands."""
        if self._keep():
            self.left.emit()
        super().reject()

    def start_afresh(self) -> None:
        """Throw away what was left, and begin with the shoot as it is."""
        self.clear_refusal()
        self._fill(self._base)
        self._keep()

    def field_of(self, error: UserError) -> str | None:
        if isinstance(error, UnknownName):
            return DRINKS
        return super().field_of(error)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if isinstance(event, QKeyEvent) and event.type() == QEvent.Type.KeyPress:
            if watched is self.table:
                return self._take_key(event)
            enter = event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter)
            if watched is self.drink and enter and self.drink.text().strip():
                self.add_typed()
                return True
        return super().eventFilter(watched, event)

    def _take_key(self, event: QKeyEvent) -> bool:
        alt = event.modifiers() == Qt.KeyboardModifier.AltModifier
        match event.key():
            case Qt.Key.Key_Up if alt:
                self.move_current(-1)
            case Qt.Key.Key_Down if alt:
                self.move_current(1)
            case Qt.Key.Key_Delete:
                self.drop_current()
            case Qt.Key.Key_Z if event.modifiers() == Qt.KeyboardModifier.ControlModifier:
                self.take_back()
            case _:
                return False
        return True

    def _read_start(self) -> time | None:
        text = self.starts.text().strip()
        try:
            return datetime.strptime(text, "%H:%M").time() if text else None
        except ValueError:
            raise InvalidField(
                STARTS, text, tr("write an hour and minutes, such as 15:00")
            ) from None

    def _wanted(self, starts: time | None) -> Shoot:
        return replace(
            self._shoot,
            theme=self.theme.text(),
            on=day_in(self.on),
            starts=starts,
            drinks=self._read_drinks(),
            notes=self.notes.toPlainText(),
        )

    def _read_drinks(self) -> tuple[ShootDrink, ...]:
        return tuple(
            replace(each, serves=ServeCounts(*(self._count(row, column) for column in (1, 2, 3))))
            for row, each in enumerate(self._drinks)
        )

    def _count(self, row: int, column: int) -> int:
        field = self.table.cellWidget(row, column)
        return int(field.value())  # type: ignore[attr-defined]

    @property
    def _name(self) -> str:
        """What it is kept under."""
        return f"shoot-{self._shoot.id or 'new'}"

    def _typed(self) -> dict[str, Any]:
        """Every field as it stands, in plain values."""
        return {
            THEME: self.theme.text(),
            ON: day_in(self.on).isoformat(),
            STARTS: self.starts.text(),
            DRINK: self.drink.text(),
            DRINKS: [_values_of(each) for each in self._read_drinks()],
            NOTES: self.notes.toPlainText(),
        }

    def _keep(self) -> bool:
        """Keep what stands there where it is to be saved still; whether it is."""
        self._keeping.stop()
        typed = self._typed()
        if typed == self._base:
            self._kept.drop(self._name)
            return False
        self._kept.keep(self._name, {**typed, BASE: self._base})
        return True

    def _watch(self) -> None:
        """Keep whatever is changed from now on."""
        changes = (
            self.theme.textChanged,
            self.on.dateChanged,
            self.starts.textChanged,
            self.drink.textChanged,
            self.notes.textChanged,
        )
        for each in changes:
            each.connect(self._keeping.start)
        self.order_changed.connect(self._keeping.start)

    def _go_on(self) -> None:
        """Put in what was left the last time, and say so."""
        left = self._kept.left(self._name)
        if left is None:
            return
        try:
            self._fill(left)
            said = tr(
                "As you left it on {moment}; nothing of it is saved yet.",
                moment=when_left(left),
            )
        except (KeyError, TypeError, ValueError):  # a file that somebody else has written
            self._fill(self._base)
            return
        if self._shoot.id is not None and left.get(BASE) != self._base:
            said += tr(" The shoot was changed since then: saving puts this in its place.")
        self.banner.say(said, "info", START_AFRESH, self.start_afresh)

    def _fill(self, typed: Mapping[str, Any]) -> None:
        drinks = [_drink_in(each) for each in typed[DRINKS]]
        on = date.fromisoformat(typed[ON])
        self.theme.setText(typed[THEME])
        self.on.setDate(QDate(on.year, on.month, on.day))
        self.starts.setText(typed[STARTS])
        self.drink.setText(typed[DRINK])
        self.notes.setPlainText(typed[NOTES])
        self._undoes.clear()
        self._show_drinks(drinks)

    def _finish(self, done: object) -> None:
        self._keeping.stop()
        self._kept.drop(self._name)
        self.written.emit(done)
        self.accept()

    def _add_fields(self) -> None:
        self.add_field(THEME, tr_about("of a shoot", "&Theme"), self.theme)
        self.add_field(ON, tr("&Day"), self.on)
        self.add_field(STARTS, tr("&Starts at"), self.starts)
        self.add_field(DRINKS, tr("D&rinks"), self._drinks_part(), tall=True)
        self.add_field(NOTES, tr("&Notes"), self.notes, tall=True)
        self.form.setRowStretch(3 * list(self.fields).index(DRINKS), 1)
        self.notes.setFixedHeight(NOTES_HEIGHT)
        self.notes.setTabChangesFocus(True)
        self.fields[DRINKS].label.setBuddy(self.drink)

    def _drinks_part(self) -> QWidget:
        part = QWidget()
        part.setFocusProxy(self.drink)
        names = [each.name for each in self._bar.snapshot.all_specs]
        self.drink.setPlaceholderText(tr("A drink of the book…"))
        self.drink.setAccessibleName(tr("Drink to add"))
        completer = NameCompleter([Suggestion(name, name, name) for name in names], self.drink)
        completer.picked.connect(self.add_typed)
        self.drink.setCompleter(completer)
        self.drink.installEventFilter(self)
        self.drink.textEdited.connect(lambda _text: self.forgive(DRINKS))
        self.table.setHorizontalHeaderLabels([tr(each) for each in COLUMNS])
        self.table.setAccessibleName(tr("Running order"))
        look_like_a_list(self.table)
        self.table.setItemDelegateForColumn(0, RowDelegate(self.table))
        self.table.setEditTriggers(QTableWidget.EditTrigger.NoEditTriggers)
        self.table.setSelectionBehavior(QTableWidget.SelectionBehavior.SelectRows)
        self.table.setSelectionMode(QTableWidget.SelectionMode.SingleSelection)
        header = self.table.horizontalHeader()
        header.setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        header.setSectionResizeMode(0, QHeaderView.ResizeMode.Stretch)
        self.table.setMinimumHeight(ROWS_HEIGHT)
        self.table.installEventFilter(self)
        self.table.dragged.connect(self._place)
        top = row_of(wide(self.drink), self.add_button)
        for picture, name, act in (
            ("chevron-up", tr("Move the drink up"), lambda: self.move_current(-1)),
            ("chevron-down", tr("Move the drink down"), lambda: self.move_current(1)),
            ("remove", tr("Take the drink out"), self.drop_current),
        ):
            top.addWidget(quiet_button(picture, name, act))
        column_of(
            top,
            wide(Card(self.table)),
            text_label(tr(ORDER_HINT), TypeSize.CAPTION, quiet=True, wrap=True),
            on=part,
        )
        return part

    def _show_drinks(self, drinks: Sequence[ShootDrink]) -> None:
        self._drinks = []
        self.table.setRowCount(0)
        self.order_changed.emit()
        for each in drinks:
            self._drinks.append(each)
            self._add_row(each)

    def _add_row(self, drink: ShootDrink) -> None:
        row = self.table.rowCount()
        self.table.insertRow(row)
        item = QTableWidgetItem(drink.name)
        item.setToolTip(plain_tip(drink.name))
        self.table.setItem(row, 0, item)
        counts = (drink.serves.tests, drink.serves.camera, drink.serves.tasting)
        for column, (word, count) in enumerate(zip(COLUMNS[1:], counts, strict=True), 1):
            field = number_field(f"{drink.name}: {tr(word)}", 0, MOST_SHOOT_SERVES)
            field.setValue(count)
            field.valueChanged.connect(self.order_changed)
            self.table.setCellWidget(row, column, field)
        self.table.resizeRowToContents(row)
        self.table.setCurrentCell(row, 0)
        self.order_changed.emit()


def _values_in(shoot: Shoot) -> dict[str, Any]:
    """What the fields say of a shoot that is there."""
    return {
        THEME: shoot.theme,
        ON: shoot.on.isoformat(),
        STARTS: f"{shoot.starts:%H:%M}" if shoot.starts else "",
        DRINK: "",
        DRINKS: [_values_of(each) for each in shoot.drinks],
        NOTES: shoot.notes,
    }


def _values_of(drink: ShootDrink) -> dict[str, Any]:
    """A drink in plain values, as they come back from a file."""
    return {**asdict(drink), "chosen": [asdict(each) for each in drink.chosen]}


def _drink_in(values: Mapping[str, Any]) -> ShootDrink:
    """A drink of what was kept."""
    chosen = tuple(ChosenPour(**each) for each in values["chosen"])
    serves = ServeCounts(**values["serves"])
    return ShootDrink(values["spec_id"], values["name"], serves, chosen)
