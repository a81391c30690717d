"""What networkx costs the family tree, as ratios: why tables of kin stand beside it.

The figures are printed for people to read (`python -m pytest tests/benchmarks -m benchmark -s`);
nothing here asserts a time.
"""

from __future__ import annotations

import os
import subprocess
import sys
from collections.abc import Callable
from dataclasses import replace
from pathlib import Path
from resource import RUSAGE_CHILDREN, getrusage
from time import perf_counter

import networkx as nx
import pytest

from barkeep.application.knowledge import shipped
from barkeep.domain.ingredients.tree import FamilyTree

pytestmark = pytest.mark.benchmark
ROOT = Path(__file__).resolve().parents[2]


def least_us(ask: Callable[[], object], runs: int = 5) -> float:
    """The quickest of some runs, in microseconds."""

    def clocked() -> float:
        start = perf_counter()
        ask()
        return (perf_counter() - start) * 1e6

    return min(clocked() for _ in range(runs))


def least_work_ms(*command: str) -> float:
    """The least processor time that one of seven runs of Python took, in ms."""

    def worked() -> float:
        before = getrusage(RUSAGE_CHILDREN)
        env = {**os.environ, "PYTHONPATH": str(ROOT)}
        subprocess.run(
            [sys.executable, *command], cwd=ROOT, env=env, capture_output=True, check=True
        )
        after = getrusage(RUSAGE_CHILDREN)
        return (after.ru_utime + after.ru_stime - before.ru_utime - before.ru_stime) * 1000

    return min(worked() for _ in range(7))


def test_importing_networkx_beside_a_short_command(sample_bar, capsys):
    bare = least_work_ms("-c", "pass")
    imported = least_work_ms("-c", "import networkx") - bare
    command = least_work_ms("-m", "barkeep", "--bar", str(sample_bar), "bottles") - bare
    with capsys.disabled():
        print(f"\nbarkeep bottles: {command:.0f} ms (the baseline)")
        print(f"import networkx: {imported:.0f} ms, {imported / command:.2f} of that")
    assert imported > 0.0


def test_asking_who_descends_from_whom(capsys):
    tree = shipped().tree
    pairs = [(key, kind) for key in tree for kind in list(tree)[::7]]
    family = nx.DiGraph((above, key) for above in tree for key in tree.children(above))
    family.add_nodes_from(tree)

    def by_table() -> list[bool]:
        return [tree.is_a(key, kind) for key, kind in pairs]

    def by_path() -> list[bool]:
        return [nx.has_path(family, kind, key) for key, kind in pairs]

    def by_ancestors() -> list[bool]:
        return [key == kind or kind in nx.ancestors(family, key) for key, kind in pairs]

    def below_by_table() -> list[set[str]]:
        return [set(tree.descendants(key)) for key in tree]

    def below_by_walk() -> list[set[str]]:
        return [nx.descendants(family, key) for key in tree]

    def built() -> FamilyTree:
        return replace(tree)

    table = least_us(by_table)
    with capsys.disabled():
        print(f"\n{len(pairs)} times is_a: {table:.0f} µs by the table (the baseline)")
        for name, ask in (("has_path", by_path), ("ancestors", by_ancestors)):
            print(f"by networkx's {name}: {least_us(ask, 1) / table:.0f} times that")
        below = least_us(below_by_table)
        print(f"descendants of all: {below:.0f} µs by the table")
        print(f"by networkx: {least_us(below_by_walk) / below:.0f} times that")
        print(f"building the tree, its table and names: {least_us(built) / table:.1f} times that")
    assert by_table() == by_path() == by_ancestors()
    assert below_by_table() == below_by_walk()
