"""A shown Bottles page over a bar in a file, and what the tests of it ask again and again."""

from __future__ import annotations

from barkeep.application.bar import Bar
from barkeep.desktop.bottles.page import BottlesScreen
from tests.desktop.pages import said_in, shown_page


def bottles_page(bar, qtbot, folder, size=(1096, 760)):
    """The page as the window holds it."""
    return shown_page(BottlesScreen, bar, qtbot, folder, size)


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
    return "\n".join(said_in(widget))
