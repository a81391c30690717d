"""A shown Bottles page over a bar in a file, and what the tests of it ask again and again."""

from __future__ import annotations

from contextlib import contextmanager
from types import SimpleNamespace

from PySide6.QtWidgets import QLabel, QWidget

from barkeep.application.bar import Bar
from barkeep.desktop.background import Background
from barkeep.desktop.bar_signals import BarSignals
from barkeep.desktop.screens.bottles import BottlesScreen
from barkeep.desktop.screens.context import ScreenContext
from barkeep.desktop.widgets.toast import Toast
from barkeep.desktop.window_state import WindowState


@contextmanager
def bottles_page(bar, qtbot, folder, size=(1096, 760)):
    """The page as the window holds it; `page.screen` and what belongs to it."""
    host = QWidget()
    host.resize(*size)
    qtbot.addWidget(host)
    went: list[tuple[str, object]] = []
    toast = Toast(host)
    context = ScreenContext(
        bar,
        WindowState(folder / "window.ini"),
        Background(),
        toast,
        lambda page, thing: went.append((page, thing)),
    )
    screen = BottlesScreen(context, host)
    screen.resize(*size)
    signals = BarSignals(bar)
    signals.changed.connect(screen.notice)
    with qtbot.waitActive(host):
        host.show()
        host.activateWindow()
    yield SimpleNamespace(bar=bar, screen=screen, toast=toast, went=went, host=host)
    context.background.finish()
    signals.stop()


def titles(screen) -> list[str]:
    """The bottles of the list, top to bottom."""
    return [row.bottle.product.title for row in screen.shown.shown_rows()]


def bottle_named(bar, title: str, state: str | None = None):
    """The first bottle of this title, and in this state."""
    return next(
        each
        for each in bar.snapshot.bottles
        if each.product.title == title and state in (None, each.level.state)
    )


def ledger(path, bottle_id: int, clock):
    """A bottle's active entries as another opening of the file reads them."""
    with Bar.open(path, clock=clock) as fresh:
        return [entry for entry, _level in fresh.inventory.history(bottle_id)]


def texts(widget) -> str:
    """Every word a widget shows."""
    return "\n".join(each.text() for each in widget.findChildren(QLabel))
