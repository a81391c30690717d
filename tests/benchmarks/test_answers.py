"""How long the answers take on the sample bar, as ratios to painting one frame of the window.

Nothing here asserts a time: the figures are printed for people to read
(`python -m pytest tests/benchmarks -m benchmark -s`).
"""

from __future__ import annotations

from collections.abc import Callable
from itertools import cycle
from time import perf_counter

import pytest

from barkeep.application.bar import Bar
from barkeep.desktop.drink.tonight import TonightScreen
from barkeep.domain.bottles.levels import MeasuredLevel
from barkeep.domain.buying.next_bottle import next_bottle
from barkeep.domain.pouring.memory import Memory
from barkeep.domain.pouring.verdicts import tonight
from barkeep.domain.stand_ins.offers import stand_in
from tests.desktop.pages import shown_page

pytestmark = pytest.mark.benchmark
FRAME_MS = 1000 / 60


@pytest.fixture
def bar(sample_bar, clock):
    with Bar.open(sample_bar, clock=clock) as opened:
        yield opened


def clocked(ask: Callable[[], object]) -> float:
    """How long one run takes, in ms."""
    start = perf_counter()
    ask()
    return (perf_counter() - start) * 1000


def median_of(times: list[float]) -> float:
    return sorted(times)[len(times) // 2]


def test_every_answer_after_a_change(bar, qtbot, tmp_path, capsys):
    with shown_page(TonightScreen, bar, qtbot, tmp_path, size=(1280, 800)) as page:
        frame = median_of([clocked(page.screen.grab) for _ in range(15)])
    memory = Memory()
    questions = {
        "tonight": lambda: tonight(bar.snapshot, memory=memory),
        "next bottle": lambda: next_bottle(bar.snapshot, memory=memory),
        "stand-ins of dry curaçao": lambda: stand_in(bar.snapshot, "dry-curacao"),
    }
    afresh = {name: clocked(ask) for name, ask in questions.items()}
    times: dict[str, list[float]] = {"a count, written and read back": []}
    open_bottles = [
        bottle
        for bottle in bar.snapshot.bottles
        if bottle.level.state == "open" and bottle.product.unit == "ml"
    ]
    for bottle, share in zip(open_bottles, cycle((0.5, 0.6))):
        level = MeasuredLevel(share * bottle.product.size, "tenths", 35.0)
        took = clocked(lambda one=bottle, level=level: bar.counting.count({one.id: level}))
        times["a count, written and read back"].append(took)
        for name, ask in questions.items():
            times.setdefault(name, []).append(clocked(ask))
    with capsys.disabled():
        print(f"\npainting the Tonight page once: {frame:.1f} ms (the baseline)")
        print(f"{len(bar.snapshot.all_specs)} specs; after each of {len(open_bottles)} counts:")
        for name, took in times.items():
            middle, worst = median_of(took), max(took)
            print(
                f"{name}: {middle:.1f} ms, {middle / frame:.2f} of that "
                f"({middle / FRAME_MS:.1f} frames at 60 Hz; worst {worst:.1f} ms)"
            )
        for name, took in afresh.items():
            print(f"{name}, the first time: {took:.1f} ms, {took / frame:.2f} of that")
    assert len(tonight(bar.snapshot)) >= 100
