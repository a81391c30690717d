"""How long large bars take to read and to show, as ratios to what SQLite or a frame takes.

Nothing here asserts a time: the figures are printed for people to read
(`python -m pytest tests/benchmarks -m benchmark -s`).
"""

from __future__ import annotations

import sqlite3
from contextlib import closing

import pytest

from barkeep.application.bar import Bar
from barkeep.domain.specs.spec import Line, Spec
from barkeep.store.specs import read_specs
from barkeep.store.store import Store
from tests.benchmarks.test_answers import clocked
from tests.desktop.bottles.bottle_page import bottles_page, titles
from tests.desktop.bottles.test_page import act, imported

pytestmark = pytest.mark.benchmark

SPECS, BOTTLES = 10_000, 500


def every_row(path, *tables):
    """What SQLite alone takes to give every row, in ms."""
    with closing(sqlite3.connect(path)) as file:
        return clocked(
            lambda: [file.execute(f"SELECT * FROM {name}").fetchall() for name in tables]
        )


def told(capsys, baseline, ms, **took):
    """Print each time beside the baseline's."""
    with capsys.disabled():
        print(f"\n{baseline}: {ms:.1f} ms (the baseline)")
        for name, each in took.items():
            print(f"{name.replace('_', ' ')}: {each:.1f} ms, {each / ms:.2f} of that")


def test_ten_thousand_specs_are_read(tmp_path, capsys):
    lines = tuple(Line(f"{part} oz gin", "gin", part, None, "oz", 30.0) for part in range(1, 6))
    path = tmp_path / "specs.bar"
    store = Store.open(path)
    with store.unit_of_work("Many") as work:
        work.insert("spec", [Spec(f"Spec {number}", lines) for number in range(SPECS)])
    with store.reading() as connection:
        took = clocked(lambda: read_specs(connection))
        assert len(read_specs(connection)) == SPECS
    store.close()
    told(capsys, f"every row of {SPECS:,} specs", every_row(path, "spec", "spec_line"), read=took)


def test_five_hundred_bottles(qtbot, tmp_path, clock, capsys):
    path = tmp_path / "big.bar"
    with Bar.open(path, clock=clock) as bar:
        bar.imports.bottles([imported(number) for number in range(BOTTLES)])
    opened = clocked(lambda: Bar.open(path, clock=clock).close())
    with Bar.open(path, clock=clock) as bar:
        poured = clocked(lambda: bar.inventory.pour(BOTTLES // 2, 30.0))
        rows = every_row(path, "product", "bottle", "ledger")
        told(capsys, f"every row of {BOTTLES} bottles", rows, open=opened, pour=poured)
        with bottles_page(bar, qtbot, tmp_path) as page:
            assert len(titles(page.screen)) == BOTTLES
            frame = clocked(page.host.grab)
            words = ("b", "bo", "bou", "bour", "bourb", "")
            typed = clocked(lambda: [page.screen.search.set_text(each) for each in words])
            changed = clocked(lambda: act(page.screen, "open"))
    told(capsys, "painting the Bottles page once", frame, six_searches=typed, open_one=changed)
