"""Find as you type: the words, a way to clear them, and how much they leave."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QEvent, QSize, Qt, Signal
from PySide6.QtGui import QAction, QKeyEvent
from PySide6.QtWidgets import QLineEdit, QToolButton, QWhatsThis, QWidget

from barkeep.desktop.look.icons import wear
from barkeep.desktop.look.metrics import UNIT, TypeSize, set_style
from barkeep.desktop.widgets.buttons import quiet_button
from barkeep.desktop.widgets.labels import in_danger, text_label
from barkeep.desktop.widgets.layouts import column_of, row_of, wide
from barkeep.desktop.widgets.notices import announce
from barkeep.desktop.widgets.tips import plain_tip
from barkeep.translation import tr, tr_noop


class _Words(QLineEdit):
    """Esc clears; with nothing to clear it goes on to whoever else wants it."""

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape and self.text():
            self.clear()
            return
        super().keyPressEvent(event)


class SearchField(QWidget):
    """`searched` carries the words, bare of outer blanks, with each key stroke.

    `left` asks for the list below to take the focus (the down arrow or Enter).
    """

    searched = Signal(str)
    left = Signal()

    def __init__(
        self, placeholder: str, parent: QWidget | None = None, help_text: str = ""
    ) -> None:
        super().__init__(parent)
        self._words = _Words()
        placeholder = tr(placeholder)
        self._words.setPlaceholderText(placeholder)
        self._words.setToolTip(plain_tip(placeholder))  # a narrow field cuts it off
        self._words.setAccessibleName(placeholder.rstrip("…"))
        self.count_label = text_label("", TypeSize.CAPTION, quiet=True)
        self._clear = QAction(tr("Clear search"), self)
        self._add_actions()
        self._problem = text_label("", TypeSize.CAPTION, wrap=True)
        self._problem.hide()
        row = row_of(wide(self._words), gap=UNIT + UNIT // 2)
        if help_text:
            self.help_button = _help_button(tr(help_text))
            row.addWidget(self.help_button)
        row.addWidget(self.count_label)
        column_of(row, self._problem, on=self, gap=2)
        self.setFocusProxy(self._words)
        self._words.textChanged.connect(self._tell)
        self._words.returnPressed.connect(self._entered)
        self.take_entered: Callable[[str], bool] = lambda _text: False
        """Asked on Enter whether the words are more than a search, and taken as that."""

    @property
    def text(self) -> str:
        """The words, bare of outer blanks."""
        return self._words.text().strip()

    def set_text(self, text: str) -> None:
        """Search for `text`."""
        self._words.setText(text)

    def clear(self) -> None:
        """Search for nothing."""
        self._words.clear()

    def show_count(self, shown: int, total: int, noun: str) -> None:
        """Say how many of how many: “12 of 60 bottles”; `noun` in the plural."""
        noun = tr(noun)
        words = f"{total} {noun}"
        if shown != total:
            words = tr("{shown} of {total} {noun}", shown=shown, total=total, noun=noun)
        self.count_label.setText(words)
        # A label that changes before it is first shown asks its row for no more room by itself.
        row = self.layout()
        if row is not None:
            row.invalidate()
            row.activate()
        self._words.setAccessibleDescription(self.problem or words)

    @property
    def problem(self) -> str:
        """What is said to be wrong with the words."""
        return self._problem.text()

    def show_problem(self, sentence: str) -> None:
        """Say below the words why they find nothing; empty takes that back."""
        if sentence == self.problem:
            return
        in_danger(self._problem)
        self._problem.setText(sentence)
        self._problem.setVisible(bool(sentence))
        set_style(self._words, "invalid", bool(sentence))
        if sentence:
            self._words.setAccessibleDescription(sentence)
            announce(self._words, sentence)

    def take_focus(self) -> None:
        """Put the cursor in, with what is there selected."""
        self._words.setFocus(Qt.FocusReason.ShortcutFocusReason)
        self._words.selectAll()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Down:
            self.left.emit()
            return
        super().keyPressEvent(event)

    def sizeHint(self) -> QSize:
        return QSize(360, super().sizeHint().height())

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.PaletteChange and self.problem:
            sentence = self.problem
            self._problem.clear()
            self.show_problem(sentence)

    def _add_actions(self) -> None:
        look = QAction(tr("Search"), self)
        wear(look, "search")
        look.triggered.connect(self.take_focus)
        wear(self._clear, "clear")
        self._clear.triggered.connect(self._words.clear)
        self._words.addAction(look, QLineEdit.ActionPosition.LeadingPosition)
        self._words.addAction(self._clear, QLineEdit.ActionPosition.TrailingPosition)
        self._clear.setVisible(False)  # a line edit forgets this on being given the action

    def _entered(self) -> None:
        if not self.take_entered(self.text):
            self.left.emit()

    def _tell(self, text: str) -> None:
        self._clear.setVisible(bool(text))
        self.searched.emit(text.strip())


def _help_button(words: str) -> QToolButton:
    made = quiet_button("info", tr_noop("What can be searched for"))
    made.setWhatsThis(words)
    made.setToolTip(words)
    made.clicked.connect(lambda: _show_help(made))
    return made


def _show_help(made: QToolButton) -> None:
    QWhatsThis.showText(made.mapToGlobal(made.rect().bottomLeft()), made.whatsThis(), made)
