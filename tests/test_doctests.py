"""Every example in a docstring gives what it says."""

from __future__ import annotations

import doctest
import importlib
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parent.parent
WITH_EXAMPLES = sorted(
    ".".join(path.relative_to(ROOT).with_suffix("").parts)
    for path in (ROOT / "barkeep").rglob("*.py")
    if ">>> " in path.read_text("utf-8")
)


@pytest.mark.parametrize("name", WITH_EXAMPLES)
def test_examples(name):
    runner = doctest.DocTestRunner()
    for each in doctest.DocTestFinder().find(
        importlib.import_module(name.removesuffix(".__init__"))
    ):
        if each.examples:  # to run any looks at every file that was ever read
            runner.run(each)
    done = runner.summarize()
    assert done.attempted > 0
    assert done.failed == 0


def test_there_are_examples():
    assert len(WITH_EXAMPLES) >= 10
