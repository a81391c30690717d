"""The bar over the details: what they are of, what is done with it most, and the rest under More.

It stays where it is while the details below it are scrolled. What is done most stands in one row:
the last ones that have no room there are the first under More.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import partial
from itertools import accumulate

from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QAction, QResizeEvent
from PySide6.QtWidgets import QMenu, QPushButton, QWidget

from barkeep.desktop.look.metrics import HALF, PAD, UNIT, TypeSize
from barkeep.desktop.widgets.buttons import button
from barkeep.desktop.widgets.folds import ALL, CLOSE_ALL, OPEN_ALL, Folds
from barkeep.desktop.widgets.labels import caption, copyable
from barkeep.desktop.widgets.layouts import column_of, laid_out_once
from barkeep.desktop.widgets.offered import Offered, OfferedRow
from barkeep.desktop.widgets.tips import plain_tip
from barkeep.translation import tr, tr_noop

MORE = tr_noop("More")
MORE_KEYS = "Ctrl+D"
"""Opens the menu from anywhere on a page."""


@dataclass(frozen=True)
class DetailActs:
    """What can be done with what the details show: the two or three that are done most, the rest.

    The order is that in which they are offered.
    """

    often: tuple[Offered, ...] = ()
    more: tuple[Offered, ...] = ()

    def __bool__(self) -> bool:
        return bool(self.often or self.more)


NO_ACTS = DetailActs()


class DetailBar(QWidget):
    """Made once and filled with each thing; the keyboard comes here before the details."""

    def __init__(self, folds: Folds) -> None:
        super().__init__()
        self._folds = folds
        self._acts, self._held = NO_ACTS, ""
        self.title = copyable("", TypeSize.SUBTITLE)
        self.offers = OfferedRow()
        self.more = _more_button()
        self.why_not = caption()
        """Why something that is offered cannot be done now, in words."""
        self._menu = QMenu(self.more)
        self._menu.setToolTipsVisible(True)
        self._menu.setAccessibleName(tr("More that can be done"))
        self._shown: list[tuple[str, str]] = []
        self._doings: list[QAction] = []
        self._under_more: Sequence[Offered] = ()
        self._widths: dict[tuple[str, str, bool], int] = {}
        """How wide a button of each look is, in pixels."""
        self._beside = 0
        """How many of them are shown."""
        self._is_filling = False
        """A button that is put in may give the bar another width before all of them are there."""
        self.more.setMenu(self._menu)
        self.offers.end_with(self.more)
        column_of(
            self.title, self.offers, self.why_not, on=self, margins=(PAD, UNIT, PAD, UNIT), gap=HALF
        )
        self.hide()

    def fill(self, title: str, acts: DetailActs) -> None:
        """Show what the details are of, and offer what can be done with it."""
        self._acts = acts
        with laid_out_once(self):
            self.title.setText(title)
            self.title.setVisible(bool(title))
            self._offer()
        self.setVisible(bool(title))
        self._fit()

    def hold(self, reason: str) -> None:
        """Offer nothing that writes, for a reason; all of it again once that is empty."""
        if reason != self._held:
            self._held = reason
            with laid_out_once(self):
                self._offer()

    def open_more(self) -> None:
        """Open the menu below its button, as the key for it does."""
        if self.isVisible() and self.more.isVisible():
            self.more.setFocus(Qt.FocusReason.ShortcutFocusReason)
            self.pop_up(self.more.mapToGlobal(self.more.rect().bottomLeft()))

    def pop_up(self, where: QPoint) -> None:
        """Open the menu anywhere, its first entry chosen."""
        self._menu.popup(where)
        first = next((each for each in self._menu.actions() if each.isEnabled()), None)
        if first is not None:
            self._menu.setActiveAction(first)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    def _fit(self) -> None:
        """Offer as many beside each other as the bar is wide by now."""
        if not self._is_filling and self._beside != self._fitting():
            with laid_out_once(self):
                self._offer()

    def _fitting(self) -> int:
        """How many of what is done most stand beside More in one row; the first in any case."""
        room = self.width() - 2 * PAD - self.more.sizeHint().width()
        widths = (self._widths[_look(each)] for each in self._acts.often)
        wanted = accumulate(width + UNIT for width in widths)
        return max(1, sum(each <= room for each in wanted))

    def _measure(self, often: Sequence[Offered]) -> None:
        """Know how wide the button of each is: it is asked of one that was put in the row."""
        if all(_look(each) in self._widths for each in often):
            return
        self.offers.fill(often, self._held)
        for each, shown in zip(often, self.offers.shown, strict=True):
            shown.ensurePolished()
            self._widths[_look(each)] = shown.sizeHint().width()

    def _offer(self) -> None:
        self._is_filling = True
        try:
            self._fill_row()
        finally:
            self._is_filling = False

    def _fill_row(self) -> None:
        acts, focused = self._acts, self._focused_words()
        before = self.offers.shown
        self._measure(acts.often)
        self._beside = self._fitting()
        self.offers.fill(acts.often[: self._beside], self._held)
        more = (*acts.often[self._beside :], *acts.more)
        if before != self.offers.shown:
            self._folds.grow()  # a button that is new would be the last for the Tab key
        self.offers.setVisible(bool(acts))
        self._fill_menu(more)
        reasons = [each.why_not(self._held) for each in acts.often]
        reasons += [self._held for each in acts.more if each.writes]
        said = " ".join(filter(None, dict.fromkeys(reasons)))
        self.why_not.setText(said)
        self.why_not.setVisible(bool(said))
        if focused and focused != self._focused_words():
            self.more.setFocus(Qt.FocusReason.OtherFocusReason)  # Enter again would do another

    def _focused_words(self) -> str:
        shown = (each for each in self.offers.shown if each.hasFocus())
        return next((each.accessibleName() for each in shown), "")

    def _fill_menu(self, more: Sequence[Offered]) -> None:
        """The entries stay where they say the same: a row further in a list few change."""
        self._under_more = more
        shown = [(each.text, each.keys) for each in more]
        if shown != self._shown or not self._menu.actions():
            self._shown = shown
            self._menu.clear()
            self._doings = [self._entry(number) for number in range(len(more))]
            self._menu.addSeparator()
            for words, is_open in ((OPEN_ALL, True), (CLOSE_ALL, False)):
                self._menu.addAction(tr(words), partial(self._folds.turn, ALL, is_open))
        for entry, each in zip(self._doings, more, strict=True):
            why_not = each.why_not(self._held)
            entry.setEnabled(not why_not)
            entry.setToolTip(plain_tip(why_not))

    def _entry(self, number: int) -> QAction:
        """An entry with its keys beside it; they are the page's, and do nothing here."""
        each = self._under_more[number]
        made = self._menu.addAction(f"{tr(each.text)}\t{each.keys}" if each.keys else tr(each.text))
        made.triggered.connect(lambda: self._under_more[number].act())
        return made


def _look(offered: Offered) -> tuple[str, str, bool]:
    return tr(offered.text), offered.picture, offered.primary


def _more_button() -> QPushButton:
    made = button(MORE)
    made.setAccessibleName(tr("More that can be done"))
    made.setToolTip(tr("More that can be done ({keys})", keys=MORE_KEYS))
    return made
