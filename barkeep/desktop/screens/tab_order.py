"""The Tab key goes through a page as the eye does: layout by layout, not as things were made."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QAbstractButton, QLayout, QScrollArea, QSplitter, QWidget


def order_tabs(page: QWidget) -> None:
    """Put everything on a page that takes the Tab key in the order of its layouts."""
    for before, after in pairwise(tab_stops(page)):
        QWidget.setTabOrder(before, after)


def tab_stops(widget: QWidget | None) -> Iterator[QWidget]:
    """What takes the Tab key, hidden or not, in the order of the layouts."""
    if widget is None:
        return
    if widget.focusPolicy() & Qt.FocusPolicy.TabFocus or _may_take_tab(widget):
        yield widget
        if isinstance(widget, QScrollArea):
            yield from tab_stops(widget.widget())
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
