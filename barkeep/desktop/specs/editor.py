"""Write a spec as text, with what is understood of it beside; save it, or say why not."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import partial
from pathlib import Path
from typing import TypeAlias

from PySide6.QtCore import Qt, QTimer
from PySide6.QtGui import QGuiApplication, QKeySequence, QShortcut
from PySide6.QtWidgets import (
    QDialog,
    QHBoxLayout,
    QMessageBox,
    QPushButton,
    QSplitter,
    QStackedWidget,
    QWidget,
)

from barkeep.application.stale import ChangedSince, RemovedSince
from barkeep.desktop.drink.analysis_view import view_of_read
from barkeep.desktop.ingredients.own_ingredient import Way
from barkeep.desktop.ingredients.teaching import Teach, teach_by_keys, teacher
from barkeep.desktop.look.metrics import HALF, UNIT, TypeSize, dialog_width, scaled
from barkeep.desktop.screens.both_versions import BothVersions
from barkeep.desktop.screens.operations import RefusedInBanner
from barkeep.desktop.screens.screen import Screen
from barkeep.desktop.specs.drafts import DraftKeeper, KeptDraft, KeptDrafts, SpecDraft
from barkeep.desktop.specs.line_names import IngredientNames
from barkeep.desktop.specs.lines import LineRow, LinesView, texts_of, with_lines, with_name
from barkeep.desktop.specs.reading import Fix, Seen, see
from barkeep.desktop.specs.reading_panel import ReadingPanel
from barkeep.desktop.specs.text_edit import Pasted, SpecTextEdit, pasted
from barkeep.desktop.widgets.buttons import ACCEPT_KEYS, button, primary_button, quiet_button
from barkeep.desktop.widgets.chips import FilterChips
from barkeep.desktop.widgets.labels import text_label
from barkeep.desktop.widgets.layouts import DIALOG, SPRING, Card, column_of, row_of, wide
from barkeep.desktop.widgets.notices import Banner, question_before_losing
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.days import day_of_year
from barkeep.domain.phrases import counted, folded
from barkeep.domain.spec_text.fields import LineFields
from barkeep.domain.spec_text.text import write_spec
from barkeep.domain.specs.spec import Spec
from barkeep.errors import UserError
from barkeep.translation import tr, tr_noop

READ_AFTER_MS = 120
_VIEWS = (
    ("text", tr_noop("Text"), tr_noop("The spec as plain text")),
    (
        "lines",
        tr_noop("Lines"),
        tr_noop("Each line of the spec with its amount, unit and ingredient"),
    ),
)
NOTHING_WRITTEN = tr_noop(
    "There is nothing to save yet: write a name, and below it one ingredient a line."
)
ONE_ONLY = tr_noop(
    "Only one spec can be changed at a time; take the others out, or write them as new specs."
)
OR_AS_NEW = tr_noop("What you typed is still here, and can be saved as a new one.")


def keep_words(specs: Sequence[Spec]) -> str:
    """What keeping specs with their questions is called: *Keep with 2 questions*."""
    count = sum(len(spec.unsettled) for spec in specs)
    return (
        tr("Keep with 1 question") if count == 1 else tr("Keep with {count} questions", count=count)
    )


Save: TypeAlias = Callable[["SpecEditor", Sequence[Spec]], bool]
"""Puts specs into the bar; whether that was done. A refusal is shown in the editor."""


class SpecEditor(RefusedInBanner, QDialog):
    """Saves all the specs of its text or none; asks before unsaved words are lost."""

    def __init__(
        self,
        draft: SpecDraft,
        snapshot: Snapshot,
        save: Save,
        parent: QWidget | None = None,
        keeper: DraftKeeper | None = None,
        *,
        teach: Teach | None = None,
    ) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(draft.title)
        self._draft, self._save_specs, self._keeper = draft, save, keeper
        self._teach = teach
        self._tree, self._units = snapshot.knowledge.tree, snapshot.settings.units
        self.changes = draft.changes
        """The spec it changes, as it was seen last; None for new ones."""
        self.is_stale = draft.is_stale
        """Whether that spec was changed by somebody else, and nobody asked yet whose holds."""
        self.whose: BothVersions | None = None
        """The question whose version holds, once it was asked."""
        self._taken = _taken_names(snapshot, draft.changes)
        self.seen = Seen()
        """What is understood of the text."""
        self.question: QMessageBox | None = None
        self.text = SpecTextEdit(IngredientNames(self._tree, snapshot.owned))
        self.lines = LinesView(snapshot)
        self.views = FilterChips(tr("Write as"), _VIEWS, "text")
        self.undo_button = quiet_button("undo", tr("Undo"), self.text.undo)
        self.redo_button = quiet_button("redo", tr("Redo"), self.text.redo)
        self._left = QStackedWidget()
        self.panel = ReadingPanel(
            self._tree, lambda read: view_of_read(read, snapshot), self._units
        )
        self.banner = Banner()
        self.save_button: QPushButton = primary_button(tr("Save"), self.save)
        self.keep_button: QPushButton = button(keep_words(()), self.keep)
        self._timer = QTimer(self, singleShot=True, interval=READ_AFTER_MS)
        self._lay_out()
        self._connect()
        self._begin()

    @property
    def is_unsaved(self) -> bool:
        """Whether closing would lose words."""
        return self.text.toPlainText().strip() != self._draft.text.strip()

    def read(self) -> Seen:
        """Read the text now, and show what is understood."""
        self._timer.stop()
        self.seen = see(self.text.toPlainText(), self._tree, self._taken, self._units)
        self.text.show_faults(self.seen.faults)
        self._show_seen()
        if self._keeper is not None:
            self._keeper.keep(self.text.toPlainText())
        count = len(self.seen.specs)
        self.save_button.setText(tr("Save {count} specs", count=count) if count > 1 else tr("Save"))
        keep = keep_words(self.seen.with_questions)
        self.keep_button.setText(f"&{keep}")
        self.keep_button.setAccessibleName(keep)
        self.keep_button.setVisible(bool(self.seen.with_questions))
        return self.seen

    def save(self) -> None:
        """Put everything into the bar and close; or say in place why that cannot be."""
        self.lines.commit()
        seen = self.read()
        if not seen.specs:
            self.banner.say(tr(NOTHING_WRITTEN), "error")
            self._focus_left()
        elif self.changes is not None and len(seen.specs) > 1:
            self.banner.say(tr(ONE_ONLY), "error")
            self._go_to(seen.specs[1].first)
        elif seen.faults:
            self._explain(seen)
        elif seen.usable:
            self._put(seen.usable)

    def keep(self) -> None:
        """Put everything into the bar with the lines that are not understood, and close."""
        self.lines.commit()
        kept = self.read().with_questions
        if kept and (self.changes is None or len(kept) == 1):
            self._put(kept)
        else:
            self.save()

    def _put(self, specs: Sequence[Spec]) -> None:
        if self._save_specs(self, specs):
            if self._keeper is not None:
                self._keeper.drop()
            self.accept()

    def teach(self, words: str, way: Way = "new") -> None:
        """Ask what unknown words are, and read the text again once that is said."""
        self.lines.commit()
        if self._teach is not None:
            self._teach(self, words, way, self._learn)

    def show_refusal(self, error: UserError) -> None:
        """Say why not; of two versions, ask whose holds."""
        if isinstance(error, ChangedSince) and isinstance(error.theirs, Spec):
            self.changes, self.is_stale = error.theirs, False
            self.whose = BothVersions(error, self._take_theirs, self._save_again, self)
            self.whose.open()
        elif isinstance(error, RemovedSince):
            self.changes = None
            self.banner.say(f"{error} {tr(OR_AS_NEW)}", "error", tr("Save as a new one"), self.save)
        else:
            super().show_refusal(error)

    def _take_theirs(self) -> None:
        """Their text in place of mine, which the text's own undo brings back."""
        if self.changes is not None:
            self._rewrite(write_spec(self.changes, self._tree, self._units))
            self._focus_left()

    def _save_again(self) -> None:
        """As it was saved before, with its questions or without."""
        self._put(self.read().usable or self.seen.with_questions)

    def _teach_here(self, way: Way) -> None:
        """As `teach`, for the line the cursor is in, or else for the first unknown words."""
        unknown = [each for each in self.read().faults if each.unknown]
        here = [each for each in unknown if each.line == self.text.line]
        self.teach(next((each.unknown for each in (*here, *unknown)), ""), way)

    def _learn(self, snapshot: Snapshot) -> None:
        self._tree = snapshot.knowledge.tree
        self.text.know(IngredientNames(self._tree))
        self.lines.know(snapshot)
        self.panel.know(self._tree, lambda read: view_of_read(read, snapshot))
        self.read()
        self._focus_left()

    def reject(self) -> None:
        """Close, after asking where words would be lost."""
        self.lines.commit()
        if not self.is_unsaved:
            self._leave(keep=False)
            return
        self.question = question_before_losing(
            self,
            title=tr("Unsaved text"),
            text=tr("Close without saving what you wrote?"),
            keep=tr("&Keep writing"),
            later=tr("Keep for &later") if self._keeper is not None else "",
        )
        self.question.finished.connect(self._on_answered)
        self.question.open()

    def _on_answered(self) -> None:
        question, self.question = self.question, None
        if question is None:
            return
        role = question.buttonRole(question.clickedButton())
        if role == QMessageBox.ButtonRole.DestructiveRole:
            self._leave(keep=False)
        elif role == QMessageBox.ButtonRole.AcceptRole:
            self._leave(keep=True)
        else:
            self._focus_left()

    def _leave(self, *, keep: bool) -> None:
        if self._keeper is not None and keep:
            self._keeper.keep(self.text.toPlainText())
        elif self._keeper is not None:
            self._keeper.drop()
        super().reject()

    def _explain(self, seen: Seen) -> None:
        first, more = seen.faults[0], len(seen.faults) - 1
        told = tr("Line {line}: {message}", line=first.line, message=first.message)
        if more:
            told = tr("{told} {more} more below.", told=told, more=more)
        self.banner.say(told, "error")
        self._go_to(first.line, first.column)

    def _go_to(self, line: int, column: int = 1) -> None:
        """Show a place of the text, in the text."""
        self.views.choose("text")
        self.text.go_to(line, column)

    def _focus_left(self) -> None:
        """Back to where the user writes."""
        lines = self.views.choice == "lines"
        (self.lines.view if lines else self.text).setFocus(Qt.FocusReason.OtherFocusReason)

    def _show_view(self, view: str) -> None:
        self.lines.commit()
        self._left.setCurrentWidget(self.lines if view == "lines" else self.text)
        self.read()

    def _on_lines(self, rows: Sequence[LineRow]) -> None:
        text = self.text.toPlainText()
        lines = texts_of(rows, text.split("\n"))
        self._rewrite(with_lines(text, self.seen.at(self.text.line), lines))

    def _on_renamed(self, name: str) -> None:
        spec = self.seen.at(self.text.line)
        self._rewrite(with_name(self.text.toPlainText(), spec, name))

    def _rewrite(self, text: str) -> None:
        self.text.rewrite(text)
        self.read()

    def _on_pasted(self, found: Pasted) -> None:
        self.read()
        many = counted(found.specs, "spec")
        self.banner.say(
            tr("Read as {kind}: {many}.", kind=found.kind, many=many),
            "info",
            tr("Undo"),
            self.text.undo,
        )

    def _paste_lines(self, below: int) -> None:
        """Paste into the lines: a document as specs, other text as one line a row."""
        found = QGuiApplication.clipboard().mimeData()
        rows = [row.strip() for row in found.text().splitlines() if row.strip()]
        if pasted(found.text(), found.html() if found.hasHtml() else ""):
            self.text.insertFromMimeData(found)
        elif rows:
            new = [LineRow(LineFields(ingredient=row), LineFields()) for row in rows]
            there = self.lines.table.rows
            self._on_lines((*there[: below + 1], *new, *there[below + 1 :]))

    def _on_changed(self) -> None:
        self.banner.clear()
        self._timer.start()

    def _on_line(self, _line: int) -> None:
        if not self._timer.isActive():
            self._show_seen()

    def _show_seen(self) -> None:
        self.panel.show_seen(self.seen, self.text.line)
        self.lines.show_spec(self.seen.at(self.text.line))

    def _apply(self, fix: Fix) -> None:
        self.text.apply_fix(fix)
        self.read()

    def _connect(self) -> None:
        self.text.textChanged.connect(self._on_changed)
        self.text.line_entered.connect(self._on_line)
        self._timer.timeout.connect(self.read)
        self.panel.fix_chosen.connect(self._apply)
        self.panel.line_chosen.connect(self._go_to)
        self.panel.teach_chosen.connect(self.teach)
        self.views.chosen.connect(self._show_view)
        self.lines.changed.connect(self._on_lines)
        self.lines.renamed.connect(self._on_renamed)
        self.lines.paste_wanted.connect(self._paste_lines)
        self.lines.undo_wanted.connect(self.text.undo)
        self.lines.redo_wanted.connect(self.text.redo)
        self.text.was_pasted.connect(self._on_pasted)
        for able, each in (
            (self.text.undoAvailable, self.undo_button),
            (self.text.redoAvailable, self.redo_button),
        ):
            each.setEnabled(False)
            able.connect(each.setEnabled)
        if self._keeper is not None:
            self.finished.connect(self._keeper.leave)
        for keys in ("Ctrl+S", *ACCEPT_KEYS):
            QShortcut(QKeySequence(keys), self).activated.connect(self.save)
        teach_by_keys(self, self._teach_here)

    def _begin(self) -> None:
        draft = self._draft
        self.text.setPlainText(draft.text if draft.written is None else draft.written)
        self.text.document().setModified(False)
        if self._draft.renames:
            self.text.select_line(1)
        self.read()
        self.text.setFocus(Qt.FocusReason.OtherFocusReason)

    def _lay_out(self) -> None:
        self.resize(dialog_width(940), 600)
        splitter = QSplitter(Qt.Orientation.Horizontal)
        splitter.setChildrenCollapsible(False)
        splitter.setHandleWidth(UNIT + HALF)
        self._left.addWidget(self.text)
        self._left.addWidget(self.lines)
        splitter.addWidget(self._left)
        splitter.addWidget(Card(self.panel))
        splitter.setSizes([600, 320])
        self._left.setMinimumWidth(scaled(240))
        self.panel.setMinimumWidth(scaled(220))
        column_of(
            text_label(self._draft.title, TypeSize.SUBTITLE, wrap=True),
            row_of(self.views, SPRING, self.undo_button, self.redo_button, gap=HALF),
            wide(splitter),
            self.banner,
            self._buttons(),
            on=self,
            margins=DIALOG,
            gap=UNIT + HALF,
        )

    def _buttons(self) -> QHBoxLayout:
        row = row_of(SPRING)
        cancel = button(tr("Cancel"), self.reject)
        for each in (cancel, self.keep_button, self.save_button):
            each.setAutoDefault(False)
            row.addWidget(each)
        return row


def _taken_names(snapshot: Snapshot, apart_from: Spec | None) -> frozenset[str]:
    names = {folded(spec.name) for spec in snapshot.all_specs}
    return frozenset(names - ({folded(apart_from.name)} if apart_from else set()))


class SpecWriting:
    """The editor over one page; `add` and `replace` put specs into the bar."""

    def __init__(self, page: Screen, add: Save, replace: Save) -> None:
        self._page, self._add, self._replace = page, add, replace
        self.editor: SpecEditor | None = None
        context = page.context
        self.drafts = KeptDrafts(context.state.folder, context.bar.kept_beside)
        self._offered: set[Path] = set()

    def write(self, draft: SpecDraft) -> SpecEditor:
        """Open the editor on a draft."""
        return self._open(draft, self.drafts.begin(draft))

    def offer(self) -> None:
        """Offer the newest draft that was not finished above the page's list, once."""
        for kept in self.drafts.offered():
            if kept.file not in self._offered and not self._page.banner.text:
                self._offered.add(kept.file)
                words = tr(
                    "“{name}” was begun on {day}, {time} and not saved.",
                    name=kept.name,
                    day=day_of_year(kept.at.date()),
                    time=f"{kept.at:%H:%M}",
                )
                act = tr("Go on with the draft of {name}", name=_short(kept.name))
                self._page.banner.say(words, "info", act, partial(self._go_on, kept))

    def _go_on(self, kept: KeptDraft) -> None:
        self._page.banner.clear()
        bar = self._page.context.bar.snapshot
        spec = bar.spec_by_id.get(kept.spec_id or 0)
        draft = kept.resumed(spec, bar.knowledge.tree, bar.settings.units)
        self._open(draft, self.drafts.go_on(kept, draft))

    def _open(self, draft: SpecDraft, keeper: DraftKeeper) -> SpecEditor:
        changes = draft.changes
        save = self._add if changes is None else self._replace
        snapshot = self._page.context.bar.snapshot
        editor = SpecEditor(
            draft=draft,
            snapshot=snapshot,
            save=save,
            parent=self._page,
            keeper=keeper,
            teach=teacher(self._page.context.bar),
        )
        editor.finished.connect(lambda _result: self._offer_again(keeper))
        self.editor = editor
        editor.open()
        return editor

    def _offer_again(self, keeper: DraftKeeper) -> None:
        """What was kept for later is there to be gone on with at once."""
        self._offered.discard(keeper.file)
        self.offer()


def _short(name: str) -> str:
    return name if len(name) <= 32 else f"{name[:31].rstrip()}…"
