"""One real page over a real bar, as the window would show it."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from typing import Generic, TypeVar

from PySide6.QtCore import QEvent, Qt
from PySide6.QtWidgets import QApplication, QLabel, QPushButton, QWidget

from barkeep.application.bar import Bar
from barkeep.desktop.screens.background import Background
from barkeep.desktop.screens.screen import Screen, ScreenContext
from barkeep.desktop.screens.window_state import WindowState
from barkeep.desktop.shell.main_window import BarSignals
from barkeep.desktop.shell.navigation import PAGES, PARTS
from barkeep.desktop.widgets.notices import Toast
from barkeep.errors import UserError

Page_ = TypeVar("Page_", bound=Screen)


@dataclass
class Page(Generic[Page_]):
    """A shown page; `went` is whatever it asked of the window."""

    bar: Bar
    screen: Page_
    background: Background
    toast: Toast
    host: QWidget
    went: list[tuple[str, object]] = field(default_factory=list)

    def settle(self, qtbot) -> None:
        """Wait for the answers that are still to come, and for what is worked out of rows seen."""
        settled(self.background, qtbot)

    def detail_texts(self) -> list[str]:
        """Everything the details say, top to bottom."""
        return said_in(self.screen.detail)


def said_in(part: QWidget) -> list[str]:
    """What labels and the lines of folds say, as they were made; what says nothing left out."""
    told = [each for each in part.findChildren(QWidget) if each.isVisibleTo(part)]
    says = [each for each in told if isinstance(each, QLabel) or each.property("fold")]
    return [each.text() for each in says if each.text()]


EVERY_PART_OPEN = "*=open"
"""What is remembered of the details by who keeps every part of them open."""


def keep_every_part_open(state: WindowState) -> WindowState:
    """As after *Open every part* on each page: a test reads what stands in any part."""
    for page in (*PAGES, *PARTS):
        state.keep_text(f"{page.key}/folds", EVERY_PART_OPEN)
    return state


def offered_in_details(screen: Screen) -> list[str]:
    """All that the details offer, those under More without their keys."""
    bar = screen.detail.bar
    more = [each for each in bar.more.menu().actions() if not each.isSeparator()]
    return [
        *(each.text() for each in bar.offers.shown),
        *(each.text().partition("\t")[0] for each in more),
    ]


def do_in_details(screen: Screen, words: str, qtbot) -> None:
    """Click what says these words in the details, else choose it under More."""
    buttons = (each for each in screen.detail.findChildren(QPushButton) if each.text() == words)
    found = next((each for each in buttons if each.isVisible()), None)
    if found is not None:
        qtbot.mouseClick(found, Qt.MouseButton.LeftButton)
        return
    entries = screen.detail.bar.more.menu().actions()
    entry = next(each for each in entries if each.text().partition("\t")[0] == words)
    assert entry.isEnabled()
    entry.trigger()


def settle(window, qtbot) -> None:
    """Wait for the answers that are still to come, and for the layout of what they show."""
    settled(window.background, qtbot)


def settled(background: Background, qtbot) -> None:
    """Wait until nothing is asked any more, not even by what has just been painted."""
    while True:
        qtbot.waitUntil(lambda: not background.is_busy)
        QApplication.processEvents()
        QApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)  # as the event loop does
        if not background.is_busy:
            return


def tabbed(page: QWidget, start: QWidget, qtbot) -> list[QWidget]:
    """Where the Tab key goes on a page, from one widget until it leaves or comes around."""
    start.setFocus(Qt.FocusReason.TabFocusReason)
    stops: list[QWidget] = []
    focused: QWidget | None = start
    while focused is not None and focused not in stops and page.isAncestorOf(focused):
        stops.append(focused)
        qtbot.keyClick(focused, Qt.Key.Key_Tab)
        focused = QApplication.focusWidget()
    return stops


def context_over(bar, state, background, toast, *, go=lambda _page, _thing: None) -> ScreenContext:
    """What the window gives its pages, without a window; nothing is refused unnoticed."""
    return ScreenContext(
        bar=bar,
        state=state,
        background=background,
        toast=toast,
        go=go,
        undo=bar.undo,
        refuse=refused,
    )


def refused(error: UserError) -> None:
    """No page is there to say it."""
    raise error


@contextmanager
def shown_page(screen_class, bar, qtbot, folder, size=(1024, 640)) -> Iterator[Page]:
    """Show a page of the given class and wait for its first answer."""
    host = QWidget()
    host.resize(*size)
    qtbot.addWidget(host)
    background = Background()
    went: list[tuple[str, object]] = []
    context = context_over(
        bar,
        keep_every_part_open(WindowState(folder / "window.ini")),
        background,
        Toast(host),
        go=lambda page, thing: went.append((page, thing)),
    )
    screen = screen_class(context, host)
    screen.resize(*size)
    signals = BarSignals(bar)
    signals.changed.connect(screen.notice)
    with qtbot.waitActive(host):
        host.show()
        host.activateWindow()
    page = Page(bar, screen, background, context.toast, host, went)
    page.settle(qtbot)
    yield page
    background.finish()
    signals.stop()
