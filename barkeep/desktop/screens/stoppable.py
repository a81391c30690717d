"""A page whose answer may take long: others need not wait for it, and it can be stopped."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING, ClassVar, TypeVar

from barkeep.desktop.screens.background import LongQuestion
from barkeep.desktop.screens.screen import Screen
from barkeep.desktop.widgets.buttons import button, offer
from barkeep.errors import UserError
from barkeep.translation import tr, tr_noop

if TYPE_CHECKING:
    from barkeep.application.imports import Progress

T = TypeVar("T")


class StoppableScreen(Screen):
    """Whoever stops its question is content with the best that was found so far."""

    stop_words: ClassVar[str]
    """What the action of the Bar menu is called that stops it."""

    def prepare_to_stop(self) -> None:
        """Have the question, and the button that stops it."""
        self.stop_button = button(tr_noop("&Stop"), self.stop)
        self.asking = LongQuestion(self.context.background.aside(self.key), self)

    def stop(self) -> None:
        """Be content with the best that was found so far."""
        self.asking.stop()

    def ask_long(
        self, question: Callable[[Progress], T], on_answer: Callable[[T], object], words: str
    ) -> None:
        """As `ask`, in place of what was asked before; `question` hears whether to go on."""

        def answered(answer: T) -> None:
            self._end()
            on_answer(answer)

        def refused(error: UserError) -> None:
            self._end()
            self.show_refusal(error)

        self.clear_refusal()
        self.asking.abandon()
        self.waiting.begin(self.key, tr(words))
        self.asking.ask(question, answered, refused)
        self._offer_stop()

    def _end(self) -> None:
        self.waiting.end(self.key)
        self._offer_stop()

    def _offer_stop(self) -> None:
        unless = "" if self.asking.is_running else tr_noop("Nothing is being worked out")
        offer(self.stop_button, unless)
        for action in self.bar_actions:
            if action.text() == tr(self.stop_words):
                offer(action, unless)
