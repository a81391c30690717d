"""Write a spec as text, with what is understood of it beside; save it, or say why not."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import TypeAlias

from PySide6.QtCore import Qt, QTimer
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import (
    QDialog,
    QHBoxLayout,
    QMessageBox,
    QPushButton,
    QSplitter,
    QVBoxLayout,
    QWidget,
)

from barkeep.desktop.dialogs.ingredient_completion import IngredientNames
from barkeep.desktop.dialogs.reading_panel import ReadingPanel
from barkeep.desktop.dialogs.spec_draft import SpecDraft
from barkeep.desktop.dialogs.spec_reading import Fix, Seen, see
from barkeep.desktop.dialogs.spec_text_edit import SpecTextEdit
from barkeep.desktop.icons import pixmap
from barkeep.desktop.metrics import HALF, PAD, UNIT, WIDE, TypeSize
from barkeep.desktop.models.analysis_view import view_of_read
from barkeep.desktop.tones import current_tones
from barkeep.desktop.widgets.banner import Banner
from barkeep.desktop.widgets.buttons import button, primary_button
from barkeep.desktop.widgets.card import Card
from barkeep.desktop.widgets.labels import text_label
from barkeep.domain.ingredients import folded
from barkeep.domain.snapshot import Snapshot
from barkeep.domain.specs import Spec
from barkeep.errors import UserError

READ_AFTER_MS = 120
NOTHING_WRITTEN = "There is nothing to save yet: write a name, and below it one ingredient a line."
ONE_ONLY = (
    "Only one spec can be changed at a time; take the others out, or write them as new specs."
)

Save: TypeAlias = Callable[["SpecEditor", Sequence[Spec]], bool]
"""Puts specs into the bar; whether that was done. A refusal is shown in the editor."""


class SpecEditor(QDialog):
    """Saves all the specs of its text or none; asks before unsaved words are lost."""

    def __init__(
        self, draft: SpecDraft, snapshot: Snapshot, save: Save, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(draft.title)
        self._draft, self._save_specs = draft, save
        self._tree, self._units = snapshot.knowledge.tree, snapshot.settings.units
        self._taken = _taken_names(snapshot, draft.changes)
        self._seen = Seen()
        self.question: QMessageBox | None = None
        self.text = SpecTextEdit(IngredientNames(self._tree))
        self.panel = ReadingPanel(
            self._tree, lambda read: view_of_read(read, snapshot), self._units
        )
        self.banner = Banner()
        self.save_button: QPushButton = primary_button("Save", self.save)
        self._timer = QTimer(self)
        self._timer.setSingleShot(True)
        self._timer.setInterval(READ_AFTER_MS)
        self._lay_out()
        self._connect()
        self._begin()

    @property
    def seen(self) -> Seen:
        """What is understood of the text."""
        return self._seen

    @property
    def is_unsaved(self) -> bool:
        """Whether closing would lose words."""
        return self.text.toPlainText().strip() != self._draft.text.strip()

    def read(self) -> Seen:
        """Read the text now, and show what is understood."""
        self._timer.stop()
        self._seen = see(self.text.toPlainText(), self._tree, self._taken, self._units)
        self.text.show_faults(self._seen.faults)
        self._show_seen()
        count = len(self._seen.specs)
        self.save_button.setText(f"Save {count} specs" if count > 1 else "Save")
        return self._seen

    def save(self) -> None:
        """Put everything into the bar and close; or say in place why that cannot be."""
        seen = self.read()
        if not seen.specs:
            self.banner.say(NOTHING_WRITTEN, "error")
            self.text.setFocus(Qt.FocusReason.OtherFocusReason)
        elif self._draft.changes is not None and len(seen.specs) > 1:
            self.banner.say(ONE_ONLY, "error")
            self.text.go_to(seen.specs[1].first)
        elif seen.faults:
            self._explain(seen)
        elif seen.usable and self._save_specs(self, seen.usable):
            self.accept()

    def show_refusal(self, error: UserError) -> None:
        """Say why the bar does not take it."""
        self.banner.say(str(error), "error")

    def clear_refusal(self) -> None:
        """Take that back."""
        self.banner.clear()

    def reject(self) -> None:
        """Close, after asking where words would be lost."""
        if not self.is_unsaved:
            super().reject()
            return
        self.question = _question(self)
        self.question.finished.connect(self._on_answered)
        self.question.open()

    def _on_answered(self) -> None:
        question, self.question = self.question, None
        if question is None:
            return
        discards = question.buttonRole(question.clickedButton())
        if discards == QMessageBox.ButtonRole.DestructiveRole:
            super().reject()
        else:
            self.text.setFocus(Qt.FocusReason.OtherFocusReason)

    def _explain(self, seen: Seen) -> None:
        first, more = seen.faults[0], len(seen.faults) - 1
        others = f" {more} more below." if more else ""
        self.banner.say(f"Line {first.line}: {first.message}{others}", "error")
        self.text.go_to(first.line, first.column)

    def _on_changed(self) -> None:
        self.banner.clear()
        self._timer.start()

    def _on_line(self, _line: int) -> None:
        if not self._timer.isActive():
            self._show_seen()

    def _show_seen(self) -> None:
        self.panel.show_seen(self._seen, self.text.line)

    def _apply(self, fix: Fix) -> None:
        self.text.apply_fix(fix)
        self.read()

    def _connect(self) -> None:
        self.text.textChanged.connect(self._on_changed)
        self.text.line_entered.connect(self._on_line)
        self._timer.timeout.connect(self.read)
        self.panel.fix_chosen.connect(self._apply)
        self.panel.line_chosen.connect(self.text.go_to)
        for keys in ("Ctrl+S", "Ctrl+Return"):
            QShortcut(QKeySequence(keys), self).activated.connect(self.save)

    def _begin(self) -> None:
        self.text.setPlainText(self._draft.text)
        self.text.document().setModified(False)
        if self._draft.renames:
            self.text.select_line(1)
        self.read()
        self.text.setFocus(Qt.FocusReason.OtherFocusReason)

    def _lay_out(self) -> None:
        self.resize(860, 560)
        splitter = QSplitter(Qt.Orientation.Horizontal)
        splitter.setChildrenCollapsible(False)
        splitter.setHandleWidth(UNIT + HALF)
        splitter.addWidget(self.text)
        splitter.addWidget(Card(self.panel))
        splitter.setSizes([460, 360])
        self.text.setMinimumWidth(240)
        self.panel.setMinimumWidth(220)
        column = QVBoxLayout(self)
        column.setContentsMargins(WIDE, PAD, WIDE, PAD)
        column.setSpacing(UNIT + HALF)
        column.addWidget(text_label(self._draft.title, TypeSize.SUBTITLE, wrap=True))
        column.addWidget(splitter, 1)
        column.addWidget(self.banner)
        column.addLayout(self._buttons())

    def _buttons(self) -> QHBoxLayout:
        row = QHBoxLayout()
        row.setSpacing(UNIT)
        row.addStretch(1)
        cancel = button("Cancel", self.reject)
        for each in (cancel, self.save_button):
            each.setAutoDefault(False)
            row.addWidget(each)
        return row


def _taken_names(snapshot: Snapshot, apart_from: Spec | None) -> frozenset[str]:
    names = {folded(spec.name) for spec in snapshot.all_specs}
    return frozenset(names - ({folded(apart_from.name)} if apart_from else set()))


def _question(parent: QWidget) -> QMessageBox:
    question = QMessageBox(parent)
    question.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    question.setWindowTitle("Unsaved text")
    question.setText("Close without saving what you wrote?")
    tones = current_tones()
    ratio = parent.devicePixelRatioF()
    question.setIconPixmap(pixmap("warning", tones.warning, 32, ratio, tones.window))
    question.addButton("&Discard", QMessageBox.ButtonRole.DestructiveRole)
    keep = question.addButton("&Keep writing", QMessageBox.ButtonRole.RejectRole)
    question.setDefaultButton(keep)
    question.setEscapeButton(keep)
    return question
