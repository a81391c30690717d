"""Call a use case from a screen: a refusal is shown where it was made, a fault is reported."""

from __future__ import annotations

import sys
from collections.abc import Callable
from typing import Protocol, TypeVar, runtime_checkable

from PySide6.QtWidgets import QWidget

from barkeep.desktop.widgets.notices import Banner
from barkeep.errors import UserError

T = TypeVar("T")


@runtime_checkable
class ShowsRefusals(Protocol):
    """A screen or dialog with a place for a sentence that says why not."""

    def show_refusal(self, error: UserError) -> None:
        """Show the sentence."""

    def clear_refusal(self) -> None:
        """Take it away again."""


class RefusedInBanner:
    """A page or dialog that says why not in its banner; for `ShowsRefusals`."""

    banner: Banner

    def show_refusal(self, error: UserError) -> None:
        """Say why not."""
        self.banner.say(str(error), "error")

    def clear_refusal(self) -> None:
        """Take it away again."""
        self.banner.clear()


def run_operation(
    parent: QWidget,
    operation: Callable[[], T],
    on_done: Callable[[T], object] | None = None,
    on_refused: Callable[[UserError], object] | None = None,
) -> bool:
    """Call a use case; whether it was done.

    A `UserError` goes to `on_refused`, or else to the nearest widget from
    `parent` up that `ShowsRefusals`. Anything else goes to `sys.excepthook`,
    which writes it down and shows the crash dialog; the program goes on.
    """
    place = _place_for_refusals(parent)
    try:
        done = operation()
    except UserError as error:
        if on_refused is not None:
            on_refused(error)
        elif place is not None:
            place.show_refusal(error)
        else:
            sys.excepthook(type(error), error, error.__traceback__)
        return False
    except Exception as error:
        sys.excepthook(type(error), error, error.__traceback__)
        return False
    if place is not None and on_refused is None:
        place.clear_refusal()
    if on_done is not None:
        on_done(done)
    return True


def _place_for_refusals(widget: QWidget | None) -> ShowsRefusals | None:
    while widget is not None and not isinstance(widget, ShowsRefusals):
        widget = widget.parentWidget()
    return widget
