"""What all screens are made of: a title, a search, filters, a list and the details beside it."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from functools import partial
from itertools import pairwise
from typing import ClassVar, TypeVar, cast

from PySide6.QtCore import QPoint, QSize, Qt, QTimer
from PySide6.QtGui import (
    QAction,
    QHideEvent,
    QKeySequence,
    QPixmap,
    QRegion,
    QResizeEvent,
    QShowEvent,
)
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractItemView,
    QBoxLayout,
    QDialog,
    QHBoxLayout,
    QLayout,
    QScrollArea,
    QSplitter,
    QVBoxLayout,
    QWidget,
)

from barkeep.application.bar import Bar
from barkeep.application.done import Done, Step
from barkeep.desktop.look.icons import wear
from barkeep.desktop.look.metrics import PAD, UNIT, WIDE, TypeSize
from barkeep.desktop.screens.background import Background
from barkeep.desktop.screens.list_stack import (
    ListStack,
    ListView,
    fitted_of,
    header_of,
    prepare_view,
)
from barkeep.desktop.screens.operations import RefusedInBanner, run_operation
from barkeep.desktop.screens.window_state import WindowState
from barkeep.desktop.widgets.buttons import hold
from barkeep.desktop.widgets.chips import FlowLayout
from barkeep.desktop.widgets.detail_bar import MORE_KEYS
from barkeep.desktop.widgets.details import DetailPanel
from barkeep.desktop.widgets.empty_state import EmptyState
from barkeep.desktop.widgets.folds import Folds
from barkeep.desktop.widgets.labels import quiet_line, text_label
from barkeep.desktop.widgets.layouts import DIALOG, SPRING, Card, column_of, row_of, wide
from barkeep.desktop.widgets.list_keys import ListKeys, keys_of
from barkeep.desktop.widgets.notices import Banner, Toast
from barkeep.desktop.widgets.offered import Offered
from barkeep.desktop.widgets.search_field import SearchField
from barkeep.desktop.widgets.waiting import Waiting
from barkeep.domain.bar.changes import EVERYTHING, Changes, Part
from barkeep.errors import UserError
from barkeep.translation import tr, tr_noop


@dataclass(frozen=True, slots=True)
class ScreenContext:
    """One per window. `go(page, thing)` shows another page and, there, one thing.

    `undo` takes one change back and says which; `refuse` says on the page that
    is shown why something cannot be done.
    """

    bar: Bar
    state: WindowState
    background: Background
    toast: Toast
    go: Callable[[str, object], None]
    undo: Callable[[Step | None], object]
    refuse: Callable[[UserError], object]


def order_tabs(page: QWidget) -> None:
    """Put everything on a page that takes the Tab key in the order of its layouts."""
    for before, after in pairwise(tab_stops(page)):
        QWidget.setTabOrder(before, after)


def tab_stops(widget: QWidget | None) -> Iterator[QWidget]:
    """What takes the Tab key, hidden or not, in the order of the layouts."""
    if widget is None:
        return
    takes_tab = bool(widget.focusPolicy() & Qt.FocusPolicy.TabFocus) or _may_take_tab(widget)
    if takes_tab:
        yield widget
    if isinstance(widget, QScrollArea):
        yield from tab_stops(widget.widget())
    elif takes_tab:
        return
    elif isinstance(widget, QSplitter):
        for place in range(widget.count()):
            yield from tab_stops(widget.widget(place))
    elif (layout := widget.layout()) is not None:
        yield from _stops_in(layout)


def _may_take_tab(widget: QWidget) -> bool:
    """Whether it is one of several buttons of which only the chosen one takes the Tab key."""
    group = widget.group() if isinstance(widget, QAbstractButton) else None
    return group is not None and group.exclusive()


def _stops_in(layout: QLayout) -> Iterator[QWidget]:
    for place in range(layout.count()):
        item = layout.itemAt(place)
        if item is None:
            continue
        if (inner := item.layout()) is not None:
            yield from _stops_in(inner)
        else:
            yield from tab_stops(item.widget())


T = TypeVar("T")
Shortcut = QKeySequence | QKeySequence.StandardKey | str
NOT_WRITTEN = tr_noop("Nothing is written.")
"""What is said where the bar is shown as it is not."""
MORE_OF = tr_noop("More of the details")
FITTED = "fitted"
"""Kept of columns that nobody has set by hand."""
SEARCH_WIDTH = 320
"""The least room for search and count beside filters, in device-independent pixels."""

WITHOUT_SHOOTS: Changes = EVERYTHING - {Part.SHOOTS}
"""What most pages show: a tick on a shoot need not make them ask again."""


class Screen(RefusedInBanner, QWidget):
    """One page of the window. A screen sets the class attributes, calls `set_list` and
    overrides `refresh`; the rest is here.
    """

    key: ClassVar[str]
    """Under which the page is found and remembered."""
    title: ClassVar[str]
    search_hint: ClassVar[str] = tr_noop("Search…")
    search_help: ClassVar[str] = ""
    """What can be searched for, where that is more than words."""
    only_looks: ClassVar[frozenset[str]] = frozenset()
    """The words of those of its actions that write nothing."""
    noun: ClassVar[str] = tr_noop("rows")
    """What the list holds, in the plural: “12 of 60 bottles”."""
    cares_about: ClassVar[Changes] = WITHOUT_SHOOTS
    """Changes that make it ask again."""

    def __init__(self, context: ScreenContext, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.context = context
        self.setObjectName(f"screen-{self.key}")
        self.heading = text_label(tr(self.title), TypeSize.TITLE)
        self.summary = quiet_line()
        self.search = SearchField(self.search_hint, help_text=self.search_help)
        self.waiting = Waiting()
        """Says what is being worked on, beside the summary."""
        self.banner = Banner()
        self.detail = DetailPanel(tr("{page}: details", page=tr(self.title)))
        self.detail.followed.connect(self.follow)
        self.more_action = self.new_action(MORE_OF, self.open_more, MORE_KEYS)
        """Opens what else can be done with what the details show."""
        self._keep_folds()
        self.held = ""
        """Why nothing can be written just now; empty where it can."""
        self.splitter = QSplitter(Qt.Orientation.Horizontal)
        self.list_stack: ListStack | None = None
        self.list_keys: ListKeys | None = None
        self.bar_actions: list[QAction] = []
        """What the window's Bar menu offers while this page is shown."""
        self.dialog: QWidget | None = None
        """What was opened last over this page."""
        self._header_row = QHBoxLayout()
        self._filter_row = QBoxLayout(QBoxLayout.Direction.LeftToRight)
        self._filters = QWidget()
        self._further = QVBoxLayout()
        self.details_wait = False
        """Whether the details are shown a turn after the list."""
        self._stale: Changes = EVERYTHING
        self.was_shown = False
        """Whether anybody has been here."""
        self._default_columns = b""
        self._lay_out()

    # What a screen adds

    def set_list(self, view: ListView, empty: EmptyState) -> None:
        """Give the screen its list, its model already set, and what stands there without rows."""
        prepare_view(view, tr(self.title))
        view.setSelectionMode(QAbstractItemView.SelectionMode.ExtendedSelection)
        self.list_keys = keys_of(view)
        no_match = EmptyState.no_match(self.noun)
        no_match.acted.connect(self.clear_filters)
        empty.followed.connect(lambda page: self.context.go(page, None))
        self.list_stack = ListStack(view, empty, no_match)
        self.waiting.dim(view)
        self.splitter.insertWidget(0, Card(self.list_stack))
        self.splitter.setStretchFactor(0, 3)
        self.splitter.setStretchFactor(1, 2)
        self.splitter.setSizes([560, 340])
        self.search.left.connect(self.focus_list)

    def add_filter(self, widget: QWidget) -> None:
        """Put a filter beside the search, or below it where the window is narrow."""
        cast(FlowLayout, self._filters.layout()).addWidget(widget)
        self._filters.show()

    def add_filter_row(self, widget: QWidget) -> None:
        """Put a row of further filters below search and filters."""
        self._further.addWidget(widget)

    def add_header_button(self, widget: QWidget) -> None:
        """Put a button at the right of the title; the primary one last."""
        self._header_row.addWidget(widget)

    def add_bar_action(self, action: QAction) -> None:
        """Offer an action in the Bar menu, and by its shortcut, while this page is shown."""
        action.setShortcutContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
        self.addAction(action)
        self.bar_actions.append(action)

    def new_action(
        self,
        words: str,
        act: Callable[[], object],
        *keys: Shortcut,
        picture: str = "",
    ) -> QAction:
        """An action of this page; `add_bar_action` offers it."""
        action = QAction(tr(words), self)
        action.setShortcuts([QKeySequence(each) for each in keys])
        if picture:
            wear(action, picture)
        action.triggered.connect(lambda: act())
        return action

    def offered(self, action: QAction, text: str = "") -> Offered:
        """An action of this page as the details offer it; `text` where that is to be shorter."""
        return Offered(
            tr(text) or action.text().replace("&", ""),
            action.trigger,
            name=action.text().replace("&", ""),
            keys=action.shortcut().toString(QKeySequence.SequenceFormat.NativeText),
            unless=str(action.property("unless") or ""),
            writes=self._writes(action),
        )

    def hold(self, reason: str) -> None:
        """Offer nothing that writes, for a reason; all of it again once that is empty."""
        self.held = reason
        self.detail.bar.hold(reason)
        for action in self.bar_actions:
            if self._writes(action):
                hold(action, reason)
        for place in range(self._header_row.count()):
            item = self._header_row.itemAt(place)
            widget = None if item is None else item.widget()
            if isinstance(widget, QAbstractButton):
                hold(widget, reason)

    def _writes(self, action: QAction) -> bool:
        return action.text() not in map(tr, self.only_looks)

    # What a screen overrides

    def refresh(self, changes: Changes) -> None:
        """Ask the snapshot again; called before the first show and after changes it cares about."""
        raise NotImplementedError

    def make_ready(self, size: QSize) -> None:
        """Do beforehand what the first showing in this size would do, but for asking."""
        self.detail.make_ready()
        self.resize(size)
        self.render(QPixmap(1, 1), QPoint(), QRegion(0, 0, 1, 1))  # which lays everything out
        for each in self.findChildren(QWidget):  # what is hidden yet as well
            each.ensurePolished()

    def clear_filters(self) -> None:
        """Show every row; a screen with filters of its own clears those as well."""
        self.search.clear()

    def follow(self, to: str) -> None:
        """Go where a link in the details leads."""

    def unsaved(self) -> str:
        """One sentence on what is not in the bar as the window closes, empty for nothing."""
        return ""

    def forget_unsaved(self) -> None:
        """Throw away what `unsaved` says."""

    def go_on_with(self, name: str) -> None:
        """Go on with what was left under a name the last time."""

    def offer_import(self, import_bottles: Callable[[], object] | None) -> None:
        """Offer to bring in a list of bottles where the page has a place for that; None for not."""

    def offer_bars(
        self, look_around: Callable[[], object] | None, open_bar: Callable[[], object] | None
    ) -> None:
        """Offer the sample bar and another bar where the page has a place for that."""

    def likely_on_paper(self) -> tuple[str, str]:
        """What one likely asks of here: as if there were also this, or were not that."""
        return "", ""

    def chosen_specs(self) -> tuple[str, ...]:
        """The names of the specs that are chosen; none where the page lists other things."""
        return ()

    def show_thing(self, thing: object) -> None:
        """Bring one row into view: what `context.go(page, thing)` ends in."""
        self.search.set_text(str(thing))

    # What the window and the screen call

    def ask(self, question: Callable[[], T], on_answer: Callable[[T], object], words: str) -> None:
        """Ask in the background; `words` say that it is being worked on, where that takes long."""

        def answered(answer: T) -> None:
            self.waiting.end(self.key)
            with self.list_first():
                on_answer(answer)

        self.waiting.begin(self.key, tr(words))
        self.context.background.ask(self.key, question, answered)

    @contextmanager
    def list_first(self) -> Iterator[None]:
        """Show what comes by itself turn by turn: the list, and then the details of its row."""
        self.details_wait = True
        try:
            yield
        finally:
            self.details_wait = False

    def ask_no_more(self) -> None:
        """Want no answer any more to what was asked last."""
        self.context.background.forget(self.key)
        self.waiting.end(self.key)

    def notice(self, changes: Changes) -> None:
        """Something changed: ask again now, or when the page is shown next."""
        wanted = changes & self.cares_about
        if not wanted:
            return
        if self.isVisible():
            self.refresh(wanted)
        else:
            self._stale |= wanted

    def show_counts(self, shown: int, total: int) -> None:
        """Say how many rows there are, and show the page that fits."""
        self.search.show_count(shown, total, self.noun)
        if self.list_stack is not None:
            self.list_stack.show_counts(shown, total)

    def do(
        self,
        operation: Callable[[], Done[T]],
        on_done: Callable[[T], object] | None = None,
        say: str = "",
    ) -> bool:
        """Call a use case; whether it was done. With `say`, a toast says that and offers undo."""

        def done(result: Done[T]) -> None:
            if on_done is not None:
                on_done(result.value)
            if say:
                self.say_done(say)

        return run_operation(self, operation, done)

    def say_done(self, said: str) -> None:
        """Say what was done last, and offer to undo just that."""
        context = self.context
        context.toast.say(said, tr_noop("Undo"), partial(context.undo, context.bar.last_step))

    def open_dialog(self, dialog: QDialog, come_back: Callable[[], object] | None = None) -> None:
        """Open a dialog over this page; once it is closed, go to the list or `come_back`."""

        def closed(_result: int) -> None:
            self.dialog = None
            (come_back or self.focus_list)()

        if self.context.bar.on_paper is not None:
            dialog.setWindowTitle(tr("{title} – on paper", title=dialog.windowTitle()))
        self.dialog = dialog
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        dialog.finished.connect(closed)
        dialog.open()

    def clear_refusal(self) -> None:
        """Take the reason away."""
        if self.banner.kind == "error":
            self.banner.clear()

    def show_in_details(self, part: QWidget) -> None:
        """Scroll the details so far that a part of them begins at the top, if it can."""
        page = self.detail.widget()
        if page is None:
            return
        if (layout := page.layout()) is not None:
            layout.activate()  # or it would still be where it was before the page grew
        self.detail.verticalScrollBar().setValue(part.mapTo(page, QPoint(0, 0)).y())

    def search_for(self, text: str) -> None:
        """Show what a text finds, with the cursor in the search."""
        self.clear_filters()
        self.search.set_text(text)
        self.focus_search()

    def find_next(self, by: int) -> bool:
        """Go to the next row that was typed to or is found, or with -1 to the one before.

        Whether there is one.
        """
        self.focus_list()
        stack, keys = self.list_stack, self.list_keys
        if stack is None or keys is None or not stack.listing.isVisibleTo(self):
            return False
        return keys.find_next(by)

    def open_more(self) -> None:
        """Offer what else can be done with what the details show."""
        self.detail.bar.open_more()

    def focus_search(self) -> None:
        """Put the cursor into the search."""
        self.search.take_focus()

    def focus_list(self) -> None:
        """Go to the list, on its first row where none is chosen."""
        if self.list_stack is None:
            return
        view = self.list_stack.listing
        if (buttons := self.list_stack.offered) and not view.isVisibleTo(self.list_stack):
            buttons[0].setFocus(Qt.FocusReason.ShortcutFocusReason)
            return
        view.setFocus(Qt.FocusReason.ShortcutFocusReason)
        model = view.model()
        if not view.currentIndex().isValid() and model is not None and model.rowCount():
            view.setCurrentIndex(model.index(0, 0))

    def reset_columns(self) -> None:
        """Lay the columns out as they were at first."""
        if self.list_stack is not None and self._default_columns:
            header_of(self.list_stack.view).restoreState(self._default_columns)
            self._fit_columns()

    def save_layout(self) -> None:
        """Remember splitter and columns."""
        if not self.was_shown:
            return
        state = self.context.state
        state.keep_data(f"{self.key}/splitter", self.splitter.saveState())
        if self.list_stack is not None:
            header = header_of(self.list_stack.view)
            state.keep_data(f"{self.key}/columns", header.saveState())
            fitted = fitted_of(self.list_stack.view)
            is_fitted = fitted is not None and not fitted.by_hand
            state.keep_text(f"{self.key}/fitted", FITTED if is_fitted else "")

    def minimumSizeHint(self) -> QSize:
        """As small as it can be with the filters below the search."""
        across = (self._filters, self.search, self.splitter)
        width = max(each.minimumSizeHint().width() for each in across)
        height = super().minimumSizeHint().height() + self._filters.sizeHint().height()
        return QSize(width + 2 * WIDE, height)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        beside = SEARCH_WIDTH + PAD + self._filters.sizeHint().width()
        directions = QBoxLayout.Direction
        fits = beside <= self.width() - 2 * WIDE
        self._filter_row.setDirection(directions.LeftToRight if fits else directions.TopToBottom)
        self._filter_row.setSpacing(PAD if fits else UNIT)

    def showEvent(self, event: QShowEvent) -> None:
        stale, self._stale = self._stale, frozenset()
        if stale:
            with self.list_first():
                self.refresh(stale)
        self._restore_layout()
        super().showEvent(event)

    def hideEvent(self, event: QHideEvent) -> None:
        super().hideEvent(event)
        self.save_layout()

    def _keep_folds(self) -> None:
        """Which parts of the details are open is remembered for this kind of page."""
        folds: Folds = self.detail.folds
        name = f"{self.key}/folds"
        folds.take(self.context.state.text(name))
        folds.turned.connect(lambda: self.context.state.keep_text(name, folds.words))
        in_order = QTimer(self, interval=0, singleShot=True)
        in_order.timeout.connect(lambda: order_tabs(self))
        folds.grown.connect(in_order.start)
        self.more_action.setShortcutContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
        self.addAction(self.more_action)

    def _restore_layout(self) -> None:
        if self.was_shown:
            return
        self.was_shown = True
        order_tabs(self)
        state = self.context.state
        if not (kept := state.data(f"{self.key}/splitter")).isEmpty():
            self.splitter.restoreState(kept)
        if self.list_stack is None:
            return
        header = header_of(self.list_stack.view)
        self._default_columns = bytes(header.saveState().data())
        if not (kept := state.data(f"{self.key}/columns")).isEmpty():
            header.restoreState(kept)
        fitted = fitted_of(self.list_stack.view)
        if kept.isEmpty() or state.text(f"{self.key}/fitted") == FITTED:
            self._fit_columns()
        elif fitted is not None:
            fitted.by_hand = True

    def _fit_columns(self) -> None:
        """Keep the columns within the list, as nobody has set any."""
        if self.list_stack is not None and (fitted := fitted_of(self.list_stack.view)):
            fitted.fit()

    def _lay_out(self) -> None:
        self._below_title = row_of(self.summary, self.waiting, SPRING, gap=PAD)
        self._title_words = column_of(self.heading, self._below_title, gap=2)
        self._header_row.setSpacing(UNIT)
        self._header_row.addLayout(self._title_words, 1)
        self._filters.setLayout(FlowLayout(gap=PAD, asks_for_one_row=True))
        self._filters.hide()
        self._filter_row.addWidget(self.search, 1)
        self._filter_row.addWidget(self._filters, 0, Qt.AlignmentFlag.AlignTop)
        self.splitter.setHandleWidth(UNIT + UNIT // 2)
        self.splitter.setChildrenCollapsible(False)
        self.splitter.addWidget(Card(self.detail))
        column_of(
            self._header_row,
            self._filter_row,
            self._further,
            self.banner,
            wide(self.splitter),
            on=self,
            margins=DIALOG,
            gap=UNIT + UNIT // 2,
        )
