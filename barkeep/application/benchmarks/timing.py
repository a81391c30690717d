"""CPU time: the least of some runs, so that what else the machine does counts for little."""

from __future__ import annotations

from collections.abc import Callable
from time import process_time

_ENOUGH_S = 0.5
_MOST_RUNS = 7


def best_ms(ask: Callable[[], object]) -> float:
    """The least CPU time of some runs, in ms: as many as half a second takes, seven at most."""
    took = [one_ms(ask)]
    while len(took) < _MOST_RUNS and sum(took) < _ENOUGH_S * 1000:
        took.append(one_ms(ask))
    return min(took)


def one_ms(ask: Callable[[], object]) -> float:
    """The CPU time of one run, in ms, and never nothing."""
    start = process_time()
    ask()
    return max((process_time() - start) * 1000, 1e-6)
