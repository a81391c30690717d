"""What a screen is given by the window: the bar, and the few things all screens share."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import TYPE_CHECKING

from barkeep.desktop.screens.background import Background
from barkeep.desktop.screens.window_state import WindowState
from barkeep.desktop.widgets.notices import Toast

if TYPE_CHECKING:
    from barkeep.application.bar import Bar


@dataclass(frozen=True, slots=True)
class ScreenContext:
    """One per window. `go(page, thing)` shows another page and, there, one thing."""

    bar: Bar
    state: WindowState
    background: Background
    toast: Toast
    go: Callable[[str, object], None]
