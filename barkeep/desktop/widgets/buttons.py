"""Buttons of the three kinds there are, fields for a number and a day, a box of choices."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from datetime import date

from PySide6.QtCore import QDate, QLocale, QSize, Qt
from PySide6.QtGui import QAction, QKeySequence, QShortcut
from PySide6.QtWidgets import (
    QAbstractButton,
    QComboBox,
    QDateEdit,
    QDialog,
    QLineEdit,
    QPushButton,
    QSpinBox,
    QStyleOptionButton,
    QToolButton,
    QWidget,
)

from barkeep.desktop.look.icons import wear
from barkeep.desktop.look.metrics import HALF, ICON, scaled
from barkeep.desktop.look.sides import as_written
from barkeep.desktop.widgets.tips import plain_tip
from barkeep.desktop.widgets.type_ahead import type_to_choices
from barkeep.translation import tr, tr_about


class WordedButton(QPushButton):
    """A button whose words are read as they are written, whichever way the window runs."""

    def initStyleOption(self, option: QStyleOptionButton) -> None:
        super().initStyleOption(option)
        option.text = as_written(option.text)

    def setText(self, text: str) -> None:
        """Say this; who hears the button hears it too, where it has no other name."""
        named_so = self.accessibleName() in ("", self.text().replace("&", ""))
        super().setText(text)
        if named_so:
            self.setAccessibleName(text.replace("&", ""))


def button(
    text: str, on_click: Callable[[], object] | None = None, picture: str | None = None
) -> QPushButton:
    """An ordinary button; like the others it says its words in the language that is spoken."""
    said = tr(text)
    made = WordedButton(said)
    made.setAccessibleName(said.replace("&", ""))
    if picture is not None:
        _dress(made, picture)
    if on_click is not None:
        made.clicked.connect(lambda: on_click())
    return made


def primary_button(
    text: str, on_click: Callable[[], object] | None = None, picture: str | None = None
) -> QPushButton:
    """The one button of a page or dialog that does its main thing."""
    made = button(text, on_click)
    made.setProperty("primary", True)
    if picture is not None:
        _dress(made, picture, "on_accent")
    return made


def quiet_button(
    picture: str, name: str, on_click: Callable[[], object] | None = None
) -> QToolButton:
    """A small button with a picture only; `name` is its tooltip and accessible name."""
    made = QToolButton()
    made.setProperty("quiet", True)
    made.setAccessibleName(tr(name))
    made.setToolTip(plain_tip(tr(name)))
    made.setToolButtonStyle(Qt.ToolButtonStyle.ToolButtonIconOnly)
    _dress(made, picture)
    if on_click is not None:
        made.clicked.connect(lambda: on_click())
    return made


def _dress(made: QAbstractButton, picture: str, tone: str = "") -> None:
    made.setIconSize(QSize(scaled(ICON), scaled(ICON)))
    wear(made, picture, tone)


ACCEPT_KEYS = ("Ctrl+Return", "Ctrl+Enter")
"""The second is the one of the number pad."""


def accept_by_keys(dialog: QDialog) -> None:
    """Let Ctrl+Enter press the button that does what the dialog is for, wherever the cursor is."""

    def press() -> None:
        main = main_button(dialog)
        if main is None:  # it only shows something, and was read
            dialog.accept()
        else:
            main.click()

    for keys in ACCEPT_KEYS:
        QShortcut(QKeySequence(keys), dialog, press)


def main_button(dialog: QDialog) -> QPushButton | None:
    """The button that does what a dialog is for; of a question, the one that Enter presses."""
    shown = [each for each in dialog.findChildren(QPushButton) if each.isVisibleTo(dialog)]
    main = [each for each in shown if each.property("primary")]
    return next(reversed(main), None) or next((each for each in shown if each.isDefault()), None)


def number_field(name: str, least: int, most: int, parent: QWidget | None = None) -> QSpinBox:
    """A spin box from `least` to `most`; `name` is its accessible name."""
    made = QSpinBox(parent)
    made.setRange(least, most)
    made.setAccessibleName(tr(name))
    inner = made.findChild(QLineEdit)
    if inner is not None:  # a style sheet's left padding does not reach it
        inner.setTextMargins(HALF + 2, 0, 0, 0)
    return made


ENGLISH = "en"


def day_field(day: date, latest: date | None = None, shown: str = "") -> QDateEdit:
    """A field for a day, up to `latest`; `shown` is how it is written there, if not in words."""
    made = QDateEdit(QDate(day.year, day.month, day.day))
    made.setCalendarPopup(True)
    language = tr_about("the language in which months are named", "en")
    if language != ENGLISH:
        made.setLocale(QLocale(language))
    made.setDisplayFormat(shown or tr_about("how a field writes a day", "d MMMM yyyy"))
    if latest is not None:
        made.setMaximumDate(QDate(latest.year, latest.month, latest.day))
    return made


def day_in(field: QDateEdit) -> date:
    """The day that a field shows."""
    day = field.date()
    return date(day.year(), day.month(), day.day())


def offer_choices(box: QComboBox, choices: Iterable[tuple[str, object]]) -> None:
    """Offer these words, each with its value; the choice stays where it still stands."""
    type_to_choices(box)
    kept = box.currentData()
    box.blockSignals(True)
    box.clear()
    for words, value in choices:
        box.addItem(words, value)
    box.setCurrentIndex(max(0, box.findData(kept)))
    box.blockSignals(False)


def offer(thing: QAction | QAbstractButton, unless: str = "") -> None:
    """Offer an action or a button; `unless` is why it cannot be done just now.

    Its own tooltip comes back with the reason gone. What is held stays off.
    """
    kept = thing.property("own_tooltip")
    if kept is None:
        kept = thing.toolTip()
        thing.setProperty("own_tooltip", kept)
    thing.setProperty("unless", tr(unless))
    reason = held_for(thing) or tr(unless)
    thing.setEnabled(not reason)
    thing.setToolTip(plain_tip(reason) or str(kept))


def hold(thing: QAction | QAbstractButton, reason: str) -> None:
    """Offer it no more, whoever does, for a reason; it is as it was once that is empty."""
    if reason != held_for(thing):
        unless = thing.property("unless")
        if unless is None and not thing.isEnabled():
            return  # somebody else keeps it off, and would not put it back
        thing.setProperty("held", reason)
        offer(thing, str(unless or ""))


def held_for(thing: QAction | QAbstractButton) -> str:
    """The reason for which it is held; empty where it is not."""
    return str(thing.property("held") or "")
