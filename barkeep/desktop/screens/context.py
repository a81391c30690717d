"""What a screen is given by the window: the bar, and the few things all screens share."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import TYPE_CHECKING

from barkeep.desktop.background import Background
from barkeep.desktop.widgets.toast import Toast
from barkeep.desktop.window_state import WindowState

if TYPE_CHECKING:  # the bar brings the store along, which the first paint need not wait for
    from barkeep.application.bar import Bar


@dataclass(frozen=True, slots=True)
class ScreenContext:
    """One per window. `go(page, thing)` shows another page and, there, one thing."""

    bar: Bar
    state: WindowState
    background: Background
    toast: Toast
    go: Callable[[str, object], None]
