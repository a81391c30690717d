"""How long the window is held: the longest slice of the GUI thread for each thing a user does.

Each thing is done several times in the real window, over the sample bar and over a bar of
10,000 specs and 500 bottles. A slice is one key press, or one turn of the event loop; nothing
else can happen within it. Of each time the longest slice counts, in milliseconds of CPU time
on the GUI thread; the worst and the median of those are printed
(`python -m pytest tests/benchmarks/test_stalls.py -m benchmark -s`).

Nothing here asserts a time.
"""

from __future__ import annotations

import gc
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field, replace
from itertools import cycle, islice
from statistics import median
from time import perf_counter, sleep, thread_time

import pytest
from PySide6.QtCore import QEvent, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from barkeep.application.bar import Bar
from barkeep.application.benchmarks.invented_bars import invented_bar
from barkeep.desktop.look.theme import Theme
from barkeep.desktop.screens.window_state import WindowState
from barkeep.desktop.shell.main import import_heavy
from barkeep.desktop.shell.main_window import MainWindow, WindowHooks
from barkeep.desktop.shell.opening import GarbageOnThisThread
from barkeep.domain.bottles.levels import MeasuredLevel
from barkeep.store.store import Store

pytestmark = pytest.mark.benchmark

SPECS, BOTTLES, SEED = 10_000, 500, 7
QUIET_TURNS = 4
"""So many turns of the event loop without an answer to wait for, and all is said."""


@dataclass
class Meter:
    """Does things in a window, and keeps the longest slice of each time."""

    window: MainWindow
    longest: dict[str, list[float]] = field(default_factory=dict)
    held: dict[str, float] = field(default_factory=dict)

    def does(self, what: str, act: Callable[[], object]) -> None:
        """Do something once, and wait until nothing of it is left to do."""
        slices = [_slice(act)]
        quiet = 0
        while quiet < QUIET_TURNS:
            slices.append(_slice(QApplication.processEvents))
            busy = self.window.background.is_busy
            quiet = 0 if busy else quiet + 1
            sleep(0.001)
        self.longest.setdefault(what, []).append(max(cpu for cpu, _wall in slices))
        self.held[what] = max(self.held.get(what, 0.0), *(wall for _cpu, wall in slices))

    def keys(self, what: str, *keys: Qt.Key | str) -> None:
        """Press keys one after another, wherever the focus is."""
        for key in keys:
            widget = QApplication.focusWidget() or self.window
            self.does(what, lambda widget=widget, key=key: QTest.keyClick(widget, key))

    def table(self) -> Iterator[str]:
        yield f"{'':42}{'worst':>9}{'median':>9}{'times':>7}{'held':>9}"
        for what, times in self.longest.items():
            worst, middle = max(times), median(times)
            yield f"{what:42}{worst:9.1f}{middle:9.1f}{len(times):7}{self.held[what]:9.0f}"


def _slice(act: Callable[[], object]) -> tuple[float, float]:
    """What a slice takes: CPU time of this thread, and by the clock, in ms."""
    cpu, wall = thread_time(), perf_counter()
    act()
    return (thread_time() - cpu) * 1000, (perf_counter() - wall) * 1000


def large_bar(path, knowledge, clock) -> Bar:
    """A bar in a file, of invented specs and bottles beside the classics."""
    made = invented_bar(knowledge, SPECS, BOTTLES, seed=SEED, on=clock().date())
    Bar.open(path, knowledge, clock).close()
    store = Store.open(path, clock)
    with store.unit_of_work("Many") as work:
        work.insert("spec", (replace(each, id=None) for each in made.specs))
        work.insert("product", (replace(each, id=None) for each in made.products))
    store.close()
    bar = Bar.open(path, knowledge, clock)
    products = {each.name: each for each in bar.snapshot.products}
    for each in made.bottles:
        done = bar.inventory.receive(products[each.product.name].id, each.level.amount)
        bar.inventory.open(done.value.id)
    return bar


@contextmanager
def metered(bar: Bar, app, folder, theme) -> Iterator[Meter]:
    """The real window over a bar, collecting garbage as the program does."""
    garbage = GarbageOnThisThread()
    window = MainWindow(bar, WindowState(folder / "window.ini"), theme, WindowHooks())
    window.resize(1280, 800)
    meter = Meter(window)
    meter.does("the window opens, Tonight is answered", lambda: _shown(window))
    import_heavy()  # as the program does by then, on a thread of its own
    meter.does("the other pages are built", window.prepare_pages)  # as the program does then
    try:
        yield meter
    finally:
        window.close_unasked()
        window.deleteLater()
        app.sendPostedEvents(None, QEvent.Type.DeferredDelete)
        garbage.stop()


def _shown(window) -> None:
    window.show()
    window.activateWindow()


def everything(meter: Meter) -> None:
    window, context = meter.window, meter.window.context
    key = Qt.Key
    tonight = window.current
    meter.keys("Tonight: move in the list", *[key.Key_Down] * 8, key.Key_PageDown, key.Key_End)
    meter.keys("Tonight: move in the list", *[key.Key_Up] * 4, key.Key_Home)
    _searches(meter, tonight, "Tonight", "lemon")
    _sorts(meter, tonight, "Tonight")
    meter.does("Tonight: also what cannot be made", tonight.also_short.click)
    meter.does("Tonight: also what cannot be made", tonight.also_short.click)
    meter.does("Tonight: also what cannot be made", tonight.also_short.click)
    _searches(meter, tonight, "Tonight, all drinks", "lemon")
    _sorts(meter, tonight, "Tonight, all drinks")
    _wall(meter, tonight)
    for filter_ in (tonight.filters.no_egg, tonight.filters.due):
        for _ in range(2):
            meter.does("Tonight: a tick", filter_.click)
    for box in (tonight.filters.whose, tonight.filters.bases, tonight.filters.how):
        for place in (1, 0):
            meter.does("Tonight: a filter", lambda box=box, n=place: box.setCurrentIndex(n))
    for place in (2, 0):
        meter.does(
            "Tonight: a strength", lambda n=place: tonight.filters.strengths.setCurrentIndex(n)
        )
    for serves in (2, 3, 1):
        meter.does("Tonight: serves", lambda n=serves: tonight.serves.setValue(n))
    for choice in ("exact", "loose", "close"):
        meter.does("Tonight: stand-ins", lambda c=choice: tonight.closeness.choose(c))
    _counts(meter, context.bar, "a count, Tonight shown")
    _page(meter, "specs", "Specs")
    specs = window.current
    meter.keys(
        "Specs: move in the list", *[key.Key_Down] * 8, key.Key_End, key.Key_Up, key.Key_Home
    )
    _searches(meter, specs, "Specs", "lemon")
    _sorts(meter, specs, "Specs")
    for choice in ("own", "classics", "all"):
        meter.does("Specs: a filter", lambda c=choice: specs.origins.choose(c))
    _counts(meter, context.bar, "a count, Specs shown")
    _page(meter, "next-bottle", "Next bottle")
    meter.keys("Next bottle: move in the list", *[key.Key_Down] * 8, key.Key_End)
    _searches(meter, window.current, "Next bottle", "lemon")
    _sorts(meter, window.current, "Next bottle")
    _counts(meter, context.bar, "a count, Next bottle shown")
    _page(meter, "stand-ins", "Stand-ins")
    meter.keys("Stand-ins: move in the list", *[key.Key_Down] * 8, key.Key_End)
    _searches(meter, window.current, "Stand-ins", "lemon")
    _sorts(meter, window.current, "Stand-ins")
    _page(meter, "bottles", "Bottles")
    bottles = window.current
    meter.keys("Bottles: move in the list", *[key.Key_Down] * 8, key.Key_End)
    _searches(meter, bottles, "Bottles", "lemon")
    _sorts(meter, bottles, "Bottles")
    _counts(meter, context.bar, "a count, Bottles shown")
    meter.does("Bottles: count the shelf", bottles.count_shelf)
    meter.keys("Counting: a key", "5", "3", "7", key.Key_Down, "2", key.Key_Up, "9", "4")
    bottles.counting.count = type(bottles.count)()
    meter.does("Counting: leave", bottles.leave_count)
    _page(meter, "shoots", "Shoots")
    meter.keys("Shoots: move in the list", *[key.Key_Down] * 3)
    for _ in range(3):
        for name in ("tonight", "specs", "next-bottle", "bottles"):
            meter.does("back to a page", lambda n=name: _go(window, n))
    for choice in ("dark", "light"):
        meter.does("another theme", lambda c=choice: window.choose_theme(c))


def _go(window, name) -> None:
    window.show_page(name)
    window.current.focus_list()


def _page(meter, name, title) -> None:
    meter.does(f"{title}: the first time", lambda: _go(meter.window, name))


def _wall(meter: Meter, tonight) -> None:
    """All drinks as a wall: moved over, looked through, found by their letters."""
    key = Qt.Key
    for choice in ("wall", "list", "wall"):
        meter.does(f"Tonight: as a {choice}", lambda c=choice: tonight.shown_as.choose(c))
    tonight.focus_list()
    meter.keys("The wall: move", *[key.Key_Right] * 4, *[key.Key_Down] * 6, key.Key_Up)
    meter.keys("The wall: far", *[key.Key_PageDown] * 3, key.Key_End, key.Key_Home)
    meter.keys("The wall: by its letters", *"wh")
    _searches(meter, tonight, "The wall", "lemon")
    meter.does("The wall: narrower", lambda: meter.window.resize(1040, 700))
    meter.does("The wall: wider", lambda: meter.window.resize(1280, 800))
    meter.does("Tonight: as a list", lambda: tonight.shown_as.choose("list"))


def _searches(meter, screen, title, words) -> None:
    meter.does(f"{title}: a key in the search", screen.focus_search)
    meter.longest.pop(f"{title}: a key in the search", None)
    meter.keys(f"{title}: a key in the search", *words, *[Qt.Key.Key_Backspace] * 2)
    meter.does(f"{title}: clear the search", screen.search.clear)
    screen.focus_list()


def _sorts(meter, screen, title) -> None:
    """Each column both ways, and last as it was."""
    view = screen.view
    header = view.horizontalHeader()
    column, order = header.sortIndicatorSection(), header.sortIndicatorOrder()
    for each in range(view.model().columnCount()):
        for way in (Qt.SortOrder.DescendingOrder, Qt.SortOrder.AscendingOrder):
            meter.does(f"{title}: sort", lambda e=each, w=way: view.sortByColumn(e, w))
    meter.does(f"{title}: sort", lambda: view.sortByColumn(column, order))


def _counts(meter, bar, what) -> None:
    bottles = [each for each in bar.snapshot.bottles if each.product.unit == "ml"]
    some = [each for each in bottles if each.level.state == "open"][:3]
    for bottle, share in zip(islice(cycle(some), 6), cycle((0.1, 0.7)), strict=False):
        level = MeasuredLevel(bottle.product.size * share, "volume", 15.0)
        meter.does(what, lambda b=bottle, level=level: bar.counting.count({b.id: level}))


def told(capsys, title: str, meter: Meter) -> None:
    with capsys.disabled():
        print(f"\n{title}: the longest slice on the GUI thread, ms of CPU; held: ms by the clock")
        print("\n".join(meter.table()))


@pytest.fixture
def look(qapp):
    made = Theme(qapp, "light")
    gc.collect()
    yield made
    made.remove_pictures()
    made.deleteLater()


def test_stalls_with_the_sample(qapp, sample_bar, clock, look, tmp_path, capsys):
    with Bar.open(sample_bar, clock=clock) as bar, metered(bar, qapp, tmp_path, look) as meter:
        everything(meter)
        told(capsys, "The sample", meter)
    assert meter.longest


def test_stalls_with_a_large_bar(qapp, knowledge, clock, look, tmp_path, capsys):
    with large_bar(tmp_path / "large.bar", knowledge, clock) as bar:
        assert len(bar.snapshot.all_specs) > SPECS and len(bar.snapshot.bottles) == BOTTLES
        with metered(bar, qapp, tmp_path, look) as meter:
            everything(meter)
            told(capsys, f"{SPECS:,} specs and {BOTTLES} bottles", meter)
    assert meter.longest
