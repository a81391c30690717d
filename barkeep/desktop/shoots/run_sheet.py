"""The run sheet of a shoot: seen, printed, saved, and the episode's text copied."""

from __future__ import annotations

from collections.abc import Sequence
from functools import partial

from PySide6.QtWidgets import QPushButton, QWidget

from barkeep.application.publishing import PublishText, publish_text_of, run_sheet_of
from barkeep.desktop.look.metrics import UNIT
from barkeep.desktop.publishing import output
from barkeep.desktop.publishing.pages_dialog import PagesDialog
from barkeep.desktop.publishing.print_options import PrintOptions
from barkeep.desktop.screens.screen import ScreenContext
from barkeep.desktop.widgets.buttons import button
from barkeep.desktop.widgets.layouts import DIALOG, column_of, wide
from barkeep.documents.printed.jobs import FlowJob, run_sheet_job
from barkeep.documents.printed.paper import Size
from barkeep.documents.printed.templates import Template
from barkeep.domain.bar.shoots import Shoot
from barkeep.translation import tr

QUESTION = "run sheet"
SIZE = (860, 600)


class RunSheetDialog(PagesDialog):
    """One shoot's, as of the bar when it is opened."""

    def __init__(self, context: ScreenContext, shoot: Shoot, parent: QWidget | None = None) -> None:
        super().__init__(context.bar, context.background, QUESTION, parent)
        self.setWindowTitle(tr("Run sheet of {theme}", theme=shoot.theme))
        self.resize(*SIZE)
        self._shoot, self._snapshot = shoot, context.bar.snapshot
        self.options = PrintOptions(context.state)
        self.copy_button = button(tr("&Copy publish text"), self.copy_text)
        self.markdown_button = button(tr("Copy as &Markdown"), self.copy_markdown)
        self._lay_out()
        self.options.changed.connect(self._renew)
        self.options.show_kind("run_sheet", "")

    @property
    def outputs(self) -> Sequence[QPushButton]:
        """The buttons that need finished pages."""
        return (*super().outputs, self.copy_button, self.markdown_button)

    @property
    def choosers(self) -> Sequence[QWidget]:
        """The widgets in which something else could be chosen."""
        return (self.options,)

    def copy_text(self) -> None:
        """Put the text for all drinks of the episode on the clipboard."""
        output.copy(self._published().text)
        self._say(tr("The publish text was copied"))

    def copy_markdown(self) -> None:
        """The same as Markdown."""
        output.copy(self._published().markdown)
        self._say(tr("The publish text was copied as Markdown"))

    def _published(self) -> PublishText:
        return publish_text_of(self._shoot, self._snapshot)

    def _renew(self) -> None:
        paper = self.options.chosen_paper
        if paper is not None:  # a run sheet has no size of its own
            template = self.options.chosen_template
            self._show_job(partial(self._drawn_up, template, paper))

    def _drawn_up(self, template: Template, paper: Size) -> FlowJob:
        sheet = run_sheet_of(self._shoot, self._snapshot)
        return run_sheet_job(sheet, template, paper)

    def _lay_out(self) -> None:
        column_of(
            self.banner,
            self.options,
            wide(self.preview),
            UNIT,
            self.closing_row(self.copy_button, self.markdown_button),
            on=self,
            margins=DIALOG,
        )
