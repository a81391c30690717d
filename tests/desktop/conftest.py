"""Fixtures for tests of the desktop."""

from __future__ import annotations

import gc

import pytest

from barkeep.application.bar import Bar


@pytest.fixture(autouse=True)
def garbage_on_the_gui_thread():
    """As in the program: a widget in a cycle must not be destroyed by an answer's thread."""
    gc.disable()
    yield
    gc.collect(1)
    gc.enable()


@pytest.fixture
def bar(sample_bar, clock):
    """The sample bar, open."""
    with Bar.open(sample_bar, clock=clock) as opened:
        yield opened


@pytest.fixture
def empty_bar(tmp_path, clock):
    """A bar with nothing in it."""
    with Bar.open(tmp_path / "empty.bar", clock=clock) as opened:
        yield opened
