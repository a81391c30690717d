"""How long a book of 10,000 specs takes to come in, as ratios to parsing the same file's JSON.

Nothing here asserts a time: the figures are printed for people to read
(`python -m pytest tests/benchmarks -m benchmark -s`).
"""

from __future__ import annotations

import json
from time import perf_counter

import pytest

from barkeep.application.bar import Bar
from barkeep.application.imports import NamedText, preview
from barkeep.documents.specs.files import exported
from barkeep.domain.spec_text.text import read_specs

pytestmark = pytest.mark.benchmark
SPECS = 10_000


def specs_of(tree):
    """Ten thousand drinks, each with five lines and a method."""
    text = "---\n".join(
        f"Fog Lamp {number}\n{30 + number % 40} ml London dry gin\n1/2 oz lemon juice\n"
        "10-15 ml simple syrup (2:1)\n2 dashes orange bitters\nGarnish: lemon peel\n"
        f"Glass: coupe\nTags: fog, {number % 9}\n\nShake with ice and strain.\n"
        for number in range(SPECS)
    )
    return [each.spec for each in read_specs(text, tree)]


@pytest.mark.parametrize("suffix", [".json", ".jsonld", ".csv", ".md", ".txt"])
def test_ten_thousand_specs(tmp_path, tree, clock, capsys, suffix):
    specs = specs_of(tree)
    as_json = exported(specs, "specs.json", tree)
    text = exported(specs, f"specs{suffix}", tree)
    started = perf_counter()
    json.loads(as_json)
    baseline = perf_counter() - started
    with Bar.open(tmp_path / "new.bar", clock=clock) as bar:
        started = perf_counter()
        found = preview(bar.snapshot, [NamedText(f"specs{suffix}", text)])
        read = perf_counter() - started
        started = perf_counter()
        bar.imports.specs(found)
        written = perf_counter() - started
        started = perf_counter()
        again = preview(bar.snapshot, [NamedText(f"specs{suffix}", text)])
        compared = perf_counter() - started
        started = perf_counter()
        bar.undo()
        undone = perf_counter() - started
        assert (len(found.new), len(again.same)) == (SPECS, SPECS)
        assert bar.snapshot.specs == ()
    with capsys.disabled():
        print(f"\n{SPECS:,} specs as {suffix} ({len(text) / 1e6:.1f} MB); json.loads of the same")
        print(f"as JSON: {baseline * 1000:.0f} ms (the baseline)")
        for name, took in (
            ("looked at", read),
            ("written in one step", written),
            ("looked at again, all the same", compared),
            ("undone", undone),
        ):
            print(f"{name}: {took:.2f} s, {took / baseline:.0f} times that")
