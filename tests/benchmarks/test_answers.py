"""How long the answers take on the sample bar, as ratios to painting one frame of the window.

Nothing here asserts a time: the figures are printed for people to read
(`python -m pytest tests/benchmarks -m benchmark -s`).
"""

from __future__ import annotations

from time import perf_counter

import pytest

from barkeep.application.bar import Bar
from barkeep.domain.answers.makeable import tonight
from barkeep.domain.answers.stand_ins import stand_in
from barkeep.domain.answers.unlocks import next_bottle
from barkeep.domain.measures import parse_level

pytestmark = pytest.mark.benchmark
FRAME_MS = 1000 / 60


def best_of(times: int, ask) -> float:
    """The quickest of several runs, in ms: what the work takes when nothing else runs."""
    found = []
    for _ in range(times):
        start = perf_counter()
        ask()
        found.append((perf_counter() - start) * 1000)
    return min(found)


@pytest.fixture
def bar(sample_bar, clock):
    with Bar.open(sample_bar, clock=clock) as opened:
        yield opened


def one_frame(bar, qtbot, tmp_path) -> float:
    """Painting the Tonight page once, with its rows, in ms."""
    from barkeep.desktop.screens.tonight import TonightScreen
    from tests.desktop.pages import shown_page

    with shown_page(TonightScreen, bar, qtbot, tmp_path, size=(1280, 800)) as page:
        return best_of(10, page.screen.grab)


def test_every_answer_after_a_change(bar, qtbot, tmp_path, capsys):
    frame = one_frame(bar, qtbot, tmp_path)
    counted = bar.snapshot.bottles[0]

    def change() -> None:
        product = counted.product
        bar.inventory.count({counted.id: parse_level("0.5", product.size, "ml", product.title)})

    answers = {
        "a count, written and read back": change,
        "tonight": lambda: tonight(bar.snapshot),
        "tonight, loose": lambda: tonight(bar.snapshot, "loose"),
        "next bottle": lambda: next_bottle(bar.snapshot),
        "stand-ins of dry curaçao": lambda: stand_in(bar.snapshot, "dry-curacao"),
    }
    lines = [f"painting the Tonight page once: {frame:.1f} ms (the baseline)"]
    for name, ask in answers.items():
        took = best_of(10, ask)
        lines.append(
            f"{name}: {took:.1f} ms, {took / frame:.2f} of that, {took / FRAME_MS:.1f} frames at 60 Hz"
        )
    with capsys.disabled():
        print("\n" + "\n".join(lines))
    assert len(tonight(bar.snapshot)) >= 100
