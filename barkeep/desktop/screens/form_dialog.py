"""A dialog with fields: amounts read as typed, each mistake said below its field, nothing lost."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any, ClassVar, TypeVar

from PySide6.QtCore import Qt
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import (
    QComboBox,
    QDialog,
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from barkeep.application.stale import ChangedSince
from barkeep.desktop.look.metrics import HALF, UNIT, WIDE, TypeSize, set_style
from barkeep.desktop.screens.both_versions import BothVersions
from barkeep.desktop.widgets.buttons import accept_by_keys, button, primary_button
from barkeep.desktop.widgets.details import ScrolledPage
from barkeep.desktop.widgets.labels import in_danger, text_label
from barkeep.desktop.widgets.layouts import DIALOG, SPRING, Slot, column_of, row_of, wide
from barkeep.desktop.widgets.notices import Banner, announce
from barkeep.desktop.widgets.terms import TermLabel, explain
from barkeep.desktop.widgets.tips import plain_tip
from barkeep.desktop.widgets.type_ahead import type_to_choices
from barkeep.domain.phrases import capitalised
from barkeep.errors import InvalidField, UserError
from barkeep.translation import tr


def read_number(field: str, text: str, example: str) -> float | None:
    """A decimal with a point or a comma; None for an empty text. Raises `InvalidField`."""
    plain = text.strip().removesuffix("%").strip().replace(",", ".")
    if not plain:
        return None
    try:
        return float(plain)
    except ValueError:
        raise InvalidField(
            field, text.strip(), tr("it is a number such as {example}", example=example)
        ) from None


T = TypeVar("T")
FRAME = 40
"""What a window manager puts around a dialog, in device-independent pixels."""


@dataclass(frozen=True, slots=True)
class FormField:
    """One field with the label before it and the sentence below it."""

    label: TermLabel
    widget: QWidget
    problem: QLabel


class FormDialog(QDialog):
    """Overrides build the fields and `submit`; a refusal goes below the field it is about."""

    scrolls: ClassVar[bool] = False
    """Whether the fields may be more than a screen is high, and then scroll."""

    def __init__(self, title: str, verb: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        accept_by_keys(self)
        self.setWindowTitle(tr(title))
        self.heading = text_label(tr(title), TypeSize.SUBTITLE, wrap=True)
        self.intro = text_label("", quiet=True, wrap=True)
        self.intro.hide()
        self.banner = Banner(closable=False)
        self.fields: dict[str, FormField] = {}
        self.accept_button = primary_button(verb, self.submit)
        self.accept_button.setDefault(True)
        self.cancel_button: QPushButton = button(tr("Cancel"), self.reject)
        self.cancel_button.setAutoDefault(False)
        self.form = QGridLayout()
        self.whose: BothVersions | None = None
        """The question whose version holds, once it was asked."""
        self._scrolled: ScrolledPage | None = None
        self._lay_out()

    # What a dialog overrides

    def submit(self) -> None:
        """Read the fields, call the use case, and `accept` once it is done."""
        raise NotImplementedError

    def field_of(self, error: UserError) -> str | None:
        """The field a refusal is about; None shows it above the buttons."""
        name = error.field if isinstance(error, InvalidField) else None
        return name if name in self.fields else None

    def see(self, theirs: Any) -> None:
        """Begin from what somebody else has written; what is typed stays as it is."""

    def show_theirs(self) -> None:
        """Put what was seen last in place of what is typed; without fields for it, leave."""
        self.reject()

    # What a dialog calls

    def say_intro(self, text: str) -> None:
        """One quiet sentence below the heading."""
        self.intro.setText(tr(text))
        self.intro.setVisible(bool(text))

    def add_field(
        self,
        name: str,
        label: str,
        widget: QWidget,
        after: str = "",
        hint: str = "",
        *,
        tall: bool = False,
    ) -> None:
        """Add a field; `after` stands behind it, such as its unit, and `hint` below it.

        The label of a `tall` one stands beside its first line, and no higher than that.
        """
        label = tr(label)
        words = TermLabel(label)
        words.setBuddy(widget)
        plain = label.replace("&", "")
        words.setTextFormat(Qt.TextFormat.AutoText)  # a buddy's mnemonic is drawn, not printed
        widget.setAccessibleName(f"{plain}, {after}" if after else plain)
        problem = text_label("", TypeSize.CAPTION, wrap=True)
        problem.setObjectName(f"problem-{name}")
        problem.hide()
        row = 3 * len(self.fields)
        top = Qt.AlignmentFlag.AlignTop
        words.setMinimumHeight((QLineEdit() if tall else widget).sizeHint().height())
        self.form.addWidget(words, row, 0, top)
        self.form.addWidget(widget, row, 1)
        if after:
            unit = text_label(after, quiet=True)
            unit.setObjectName(f"unit-{name}")
            self.form.addWidget(unit, row, 2)
        self.form.addWidget(problem, row + 1, 1, 1, 2 if after else 1)
        if hint:
            below = text_label(tr(hint), TypeSize.CAPTION, quiet=True, wrap=True)
            below.setContentsMargins(0, 0, 0, HALF)
            self.form.addWidget(below, row + 2, 1)
        self.fields[name] = FormField(words, widget, problem)
        if isinstance(widget, QComboBox):
            type_to_choices(widget)
        if isinstance(widget, QLineEdit):
            if not widget.toolTip():  # a narrow field cuts off what it asks for
                widget.setToolTip(plain_tip(widget.placeholderText()))
            widget.textEdited.connect(lambda _text: self.forgive(name))

    def explain(self, name: str, word: str) -> None:
        """Explain one of barkeep's words where a field asks for what it means."""
        field = self.fields[name]
        explain(field.widget, word)
        field.label.mark()

    def add_action(self, name: str, act: QWidget) -> None:
        """Put a button behind a field, for what may be done about it."""
        field = self.fields[name]
        row, *_ = self._place_of(field.widget)
        self.form.addWidget(act, row, 2)
        QWidget.setTabOrder(field.widget, act)

    def _place_of(self, widget: QWidget) -> tuple[int, ...]:
        place = self.form.getItemPosition(self.form.indexOf(widget))
        assert isinstance(place, tuple)
        return place

    def begin_column(self) -> None:
        """Put the fields that are added from now on beside those that are there."""
        self.form = QGridLayout()
        self._add_column()

    def begin_part(self) -> QWidget:
        """Put the fields that are added from now on below, in a part that can be hidden."""
        part = QWidget()
        self.body = row_of(on=part, gap=WIDE)
        self.form = QGridLayout()
        self._add_column()
        self._parts.addWidget(part)
        return part

    def unit_label(self, name: str) -> QLabel:
        """What stands behind a field."""
        found = self.findChild(QLabel, f"unit-{name}")
        assert isinstance(found, QLabel)
        return found

    def refuse(self, name: str, sentence: str) -> None:
        """Say below a field why it cannot be used."""
        field = self.fields[name]
        sentence = capitalised(sentence)
        in_danger(field.problem).setText(sentence)
        field.problem.show()
        field.widget.setAccessibleDescription(sentence)
        _mark(field.widget, invalid=True)
        self._fit()
        announce(field.widget, sentence)

    def forgive(self, name: str) -> None:
        """Take back what was said below a field."""
        field = self.fields[name]
        field.problem.hide()
        field.problem.clear()
        field.widget.setAccessibleDescription(field.widget.whatsThis())
        _mark(field.widget, invalid=False)

    def problem(self, name: str) -> str:
        """What stands below a field."""
        return self.fields[name].problem.text()

    def read(self, name: str, reader: Callable[[], T]) -> T | None:
        """Read one field; where it cannot be used, say so below it and give None."""
        try:
            value = reader()
        except UserError as error:
            self.refuse(name, str(error))
            return None
        self.forgive(name)
        return value

    def has_problems(self) -> bool:
        """Whether some field is refused; the first such takes the focus."""
        wrong = [each for each in self.fields.values() if each.problem.text()]
        if wrong:
            wrong[0].widget.setFocus(Qt.FocusReason.OtherFocusReason)
        return bool(wrong)

    def showEvent(self, event: QShowEvent) -> None:
        """Be as high as the wrapped sentences need, which Qt does not promise by itself."""
        super().showEvent(event)
        self._fit()

    # Where refusals of use cases arrive

    def show_refusal(self, error: UserError) -> None:
        """Say why not, below the field it is about; of two versions, ask whose holds."""
        if isinstance(error, ChangedSince):
            self.see(error.theirs)
            self.whose = BothVersions(error, self.show_theirs, self.submit, self)
            self.whose.open()
            return
        name = self.field_of(error)
        if name is None:
            self.banner.say(str(error), "error")
            return
        self.refuse(name, str(error))
        self.fields[name].widget.setFocus(Qt.FocusReason.OtherFocusReason)

    def clear_refusal(self) -> None:
        """Take every sentence away."""
        self.banner.clear()
        for name in self.fields:
            self.forgive(name)

    def _fit(self) -> None:
        """Grow for a sentence that has appeared, so that nothing is squeezed."""
        layout = self.layout()
        assert layout is not None
        layout.activate()
        needed = layout.totalHeightForWidth(self.width())
        if self._scrolled is not None:
            needed = self._height_unscrolled(self._scrolled)
        width = max(self.width(), layout.totalMinimumSize().width())
        if needed > self.height() or width > self.width():
            self.resize(width, max(needed, self.height()))

    def _height_unscrolled(self, scrolled: ScrolledPage) -> int:
        """The height at which nothing scrolls, or as much of it as the screen has."""
        page = scrolled.widget()
        assert page is not None
        bar = scrolled.verticalScrollBar().sizeHint().width()
        scrolled.setMinimumWidth(page.minimumSizeHint().width() + bar)
        fields = page.heightForWidth(scrolled.viewport().width())
        around = self.height() - scrolled.viewport().height()
        least = page.minimumSizeHint().height()
        return min(around + max(fields, least), self.screen().availableGeometry().height() - FRAME)

    def _add_column(self) -> None:
        self.form.setHorizontalSpacing(UNIT + HALF)
        self.form.setVerticalSpacing(HALF)
        self.form.setColumnStretch(1, 1)
        beside = column_of(self.form, SPRING)
        self.body.addLayout(beside, 1)

    def _lay_out(self) -> None:
        self.body = QHBoxLayout()
        self.body.setSpacing(WIDE)
        self._add_column()
        self._parts = column_of(gap=UNIT)
        column_of(
            self.heading,
            self.intro,
            HALF,
            self._fields(column_of(self.body, self._parts, SPRING)),
            self.banner,
            *(() if self.scrolls else (SPRING,)),
            UNIT,
            row_of(SPRING, self.cancel_button, self.accept_button),
            on=self,
            margins=DIALOG,
        )

    def _fields(self, column: QVBoxLayout) -> QVBoxLayout | Slot:
        if not self.scrolls:
            return column
        page = QWidget()
        page.setLayout(column)
        self._scrolled = ScrolledPage(tr("Fields"))
        self._scrolled.show_page(page)
        self._scrolled.setFocusPolicy(Qt.FocusPolicy.NoFocus)  # its fields take it, and scroll it
        return wide(self._scrolled)


def _mark(widget: QWidget, *, invalid: bool) -> None:
    """Frame a field as refused; the sentence says it in words."""
    if bool(widget.property("invalid")) != invalid:
        set_style(widget, "invalid", invalid)
