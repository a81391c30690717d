"""A page that puts bottles on the shelf and says what comes of it."""

from __future__ import annotations

from collections.abc import Sequence
from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QStackedWidget, QVBoxLayout, QWidget

from barkeep.application.bottle_imports import guessed_levels
from barkeep.desktop.first_hour.ending import Ending
from barkeep.desktop.screens.screen import Screen, ScreenContext
from barkeep.domain.buying.reach import Reach, reach

if TYPE_CHECKING:
    from barkeep.documents.bottles_csv import ListedBottle

REACH = "first-hour-reach"
"""Under which it is asked what can be made of a shelf."""


class TakingIn(Screen):
    """The form of a page, which gives way to what came of it; `begin_again` is for the form."""

    more = ""
    """What another round is called."""

    def __init__(self, context: ScreenContext, parent: QWidget | None = None) -> None:
        super().__init__(context, parent)
        self.form = QWidget()
        self.ending = Ending(self.more)
        self.pages = QStackedWidget()
        for each in (self.form, self.ending):
            self.pages.addWidget(each)
        self.of_the_form: tuple[QWidget, ...] = ()
        """What stands beside the title while there is something to fill in."""
        self.search.hide()
        self.splitter.hide()
        column = self.layout()
        assert isinstance(column, QVBoxLayout)
        column.addWidget(self.pages, 1)
        self.ending.wanted.connect(lambda page: context.go(page, None))
        self.ending.more.connect(self.begin_again)
        self.ending.undone.connect(self._undo)

    @property
    def is_done(self) -> bool:
        """Whether the page says what came of it."""
        return self.pages.currentWidget() is self.ending

    def put_on_shelf(self, bottles: Sequence[ListedBottle]) -> None:
        """Put bottles on the shelf, all of them in one step of undo."""
        self.clear_refusal()
        count = sum(each.count for each in bottles)
        guessed = guessed_levels(bottles)
        put = partial(self.context.bar.imports.bottles, bottles)
        if self.do(put):
            self.ending.show_came(count, guessed, self.context.bar.last_step)
            self._show_page(self.ending)
            self.ending.take_focus()
            self.forget()
            question = partial(reach, self.context.bar.snapshot)
            self.context.background.ask(REACH, question, self._say)

    def forget(self) -> None:
        """Forget what was typed or ticked: it is on the shelf."""

    def begin_again(self) -> None:
        """Show the form."""
        self._show_page(self.form)
        self.focus_list()

    def show_thing(self, thing: object) -> None:
        """Begin: with what was typed before, if that is not on the shelf."""
        self.begin_again()

    def focus_search(self) -> None:
        """There is nothing to search but what is begun with."""
        self.focus_list()

    def _show_page(self, page: QWidget) -> None:
        """Show the form or what came of it; the buttons of the form are no use to the other."""
        self.pages.setCurrentWidget(page)
        for each in self.of_the_form:
            each.setVisible(page is self.form)
        self.summary.setVisible(page is self.form)

    def _say(self, found: Reach) -> None:
        self.ending.show_reach(found)

    def _undo(self) -> None:
        self.context.undo(self.ending.step)
        self.begin_again()
