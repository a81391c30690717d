"""Python's collector of cyclic garbage, which looks through all that is there as more is made.

What is made of thousands of rows is no garbage, and looking through it takes a quarter of
the time of making it.
"""

from __future__ import annotations

import gc
from collections.abc import Iterator
from contextlib import contextmanager


@contextmanager
def collector_paused() -> Iterator[None]:
    """No looking for cyclic garbage while much is made that stays."""
    was_on = gc.isenabled()
    gc.disable()
    try:
        yield
    finally:
        if was_on:
            gc.enable()
