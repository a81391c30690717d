"""A dialog that shows pages before they leave: laid out off to the side, printed, saved, copied."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Sequence
from functools import partial

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QDialog, QHBoxLayout, QPushButton, QWidget

from barkeep.application.bar import Bar
from barkeep.desktop.printing.layout import Step, steps_of
from barkeep.desktop.printing.preview import Preview
from barkeep.desktop.publishing import output
from barkeep.desktop.screens.background import Background, Steps
from barkeep.desktop.screens.operations import RefusedInBanner
from barkeep.desktop.widgets.buttons import accept_by_keys, button, primary_button
from barkeep.desktop.widgets.layouts import SPRING, row_of
from barkeep.desktop.widgets.notices import Banner
from barkeep.documents.printed.jobs import Job
from barkeep.domain.phrases import counted
from barkeep.errors import UserError
from barkeep.translation import tr


class PagesDialog(RefusedInBanner, QDialog):
    """`question` is what its pages are asked for under; nothing here changes the bar."""

    def __init__(
        self, bar: Bar, background: Background, question: str, parent: QWidget | None
    ) -> None:
        super().__init__(parent)
        accept_by_keys(self)
        self._bar = bar
        self._background, self._question = background, question
        self._job: Job | None = None
        self._laying_out: Steps[Step] = Steps(self)
        self._putting_out: Steps[int] = Steps(self)
        self.preview = Preview()
        self.banner = Banner()
        self.print_button = primary_button(tr("P&rint…"), self.print_pages)
        self.pdf_button = button(tr("Save P&DF…"), self.save_pdf)
        self.close_button = button(tr("C&lose"), self.reject)

    @property
    def ready(self) -> bool:
        """Whether the pages in the preview are all of what is chosen."""
        return self._job is not None and not self._laying_out.running

    @property
    def outputs(self) -> Sequence[QPushButton]:
        """The buttons that need finished pages."""
        return (self.print_button, self.pdf_button)

    @property
    def choosers(self) -> Sequence[QWidget]:
        """The widgets in which something else could be chosen."""
        return ()

    def closing_row(self, *others: QPushButton) -> QHBoxLayout:
        """The buttons below: the dialog's others, then those every dialog of pages has."""
        own = (self.close_button, self.pdf_button, self.print_button)
        for each in (*others, self.close_button, self.pdf_button):
            each.setAutoDefault(False)
        return row_of(*others, SPRING, *own)

    # What the user does

    def print_pages(self) -> None:
        """Ask for a printer and print."""
        if self._job is None:
            return
        job, sheet = self._job, self._job.sheet
        printer = output.ask_for_printer(self, sheet, job.title)
        if printer is not None:
            pages = self.preview.pages
            said = tr("{pages} went to the printer", pages=counted(len(pages), "page"))
            self._put_out(output.printing(pages, printer, sheet), said)

    def save_pdf(self) -> None:
        """Ask for a file and write a PDF."""
        if self._job is None:
            return
        job, pages = self._job, self.preview.pages
        name, _filter = output.ask_for_file(
            self, tr("Save PDF"), f"{file_name(job.title)}.pdf", tr(output.PDF)
        )
        if name:
            file = output.with_suffix(name, ".pdf")
            write = partial(self._bar.write_file, file)
            steps = output.writing_pdf(pages, job.sheet, job.title, write)
            self._put_out(
                steps, tr("Saved {pages} as {file}", pages=counted(len(pages), "page"), file=file)
            )

    # Showing

    def _show_nothing(self, why: str) -> None:
        """No page, and why."""
        self._forget_pages()
        self._background.forget(self._question)
        self.preview.clear(why)

    def _show_job(
        self, job_of: Callable[[], Job], begun: Callable[[], object] = lambda: None
    ) -> None:
        """Lay out new pages; drawing up what they say is not done on the GUI thread."""
        self._forget_pages()
        self._background.ask(self._question, job_of, partial(self._begin, begun), self.show_refusal)

    def _forget_pages(self) -> None:
        self._laying_out.stop()
        self._job = None
        self._offer_output()

    def _begin(self, begun: Callable[[], object], job: Job) -> None:
        begun()
        self.preview.begin()
        self._laying_out.start(steps_of(job), self._add, partial(self._laid_out, job))

    def _add(self, step: Step) -> None:
        if step is not None:
            self.preview.add(step)

    def _laid_out(self, job: Job) -> None:
        self._job = job
        self.preview.finish()
        self._offer_output()

    def _offer_output(self) -> None:
        able = self.ready and not self._putting_out.running
        for each in self.outputs:
            each.setEnabled(able)

    def _put_out(self, steps: Iterator[int], said: str) -> None:
        refused: list[UserError] = []
        total, focused = len(self.preview.pages), self.focusWidget()

        def done() -> None:
            self._set_choosing(True)
            if focused is not None:
                focused.setFocus(Qt.FocusReason.OtherFocusReason)
            if refused:
                self.show_refusal(refused[0])
            else:
                self._say(said)

        self._set_choosing(False)
        guarded = output.guarded(steps, refused.append)
        self._putting_out.start(
            guarded,
            lambda number: self.banner.say(
                tr("Page {number} of {total}…", number=number, total=total), "info"
            ),
            done,
        )
        self._offer_output()

    def _set_choosing(self, able: bool) -> None:
        """While pages go out nothing is chosen anew."""
        for each in self.choosers:
            each.setEnabled(able)
        self._offer_output()

    def _say(self, words: str) -> None:
        self.banner.say(words, "done")

    def done(self, result: int) -> None:
        """Nothing goes on behind a dialog that is closed."""
        self._laying_out.stop()
        self._putting_out.stop()
        self._background.forget(self._question)
        super().done(result)


def file_name(title: str) -> str:
    """A title that any file may be called."""
    return re.sub(r"""[\\/:*?"<>|\x00-\x1f]+""", "-", title).strip(" .") or "barkeep"
