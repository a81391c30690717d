"""What a screen is given by the window: the bar, and the few things all screens share."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from barkeep.application.bar import Bar
from barkeep.desktop.screens.background import Background
from barkeep.desktop.screens.window_state import WindowState
from barkeep.desktop.widgets.notices import Toast
from barkeep.errors import UserError


@dataclass(frozen=True, slots=True)
class ScreenContext:
    """One per window. `go(page, thing)` shows another page and, there, one thing.

    `undo` takes the newest change back and says which; `refuse` says on the
    page that is shown why something cannot be done.
    """

    bar: Bar
    state: WindowState
    background: Background
    toast: Toast
    go: Callable[[str, object], None]
    undo: Callable[[], object]
    refuse: Callable[[UserError], object]
