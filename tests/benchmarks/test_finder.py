"""What a key costs in a field that completes names, beside a plain look through every name.

The figures are printed for people to read (`python -m pytest tests/benchmarks -m benchmark -s`);
nothing here asserts a time.
"""

from __future__ import annotations

from time import perf_counter

import pytest

from barkeep.application.knowledge import shipped
from barkeep.domain.ingredients.finder import ranked
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import folded

pytestmark = pytest.mark.benchmark

TYPED = ("london dry gin", "lime juice", "sweet vermuth", "crème de cacoa", "Grey Ferry dry gin")
KEYS = [typed[:end] for typed in TYPED for end in range(1, len(typed) + 1)]


def test_a_key_beside_a_look_through_every_name(capsys):
    tree = shipped().tree
    there = frozenset(key for key in tree if not tree[key].family)
    ranked("vermuth", tree)  # the index, and the library that measures likeness, are there once
    names = [name for key in tree for name in tree[key].all_names]
    plain = least_ms(lambda text: [each for each in names if folded(text) in folded(each)])
    found = least_ms(lambda text: ranked(text, tree, there=there))
    made = least_ms(lambda _text: FamilyTree(tree.ingredients).name_index, keys=KEYS[:1])
    with capsys.disabled():
        print(f"\nlook through {len(names)} names: {max(plain):.2f} ms a key (the baseline)")
        mean = sum(found) / len(found)
        print(f"ranked: {mean:.2f} ms a key, at most {max(found):.2f}")
        print(f"that is {mean * len(plain) / sum(plain):.2f} of the baseline")
        print(f"the tree and its index made: {max(made):.1f} ms, once")


def least_ms(ask, keys=KEYS) -> list[float]:
    """For each key the quickest of three runs, in ms."""

    def clocked(text: str) -> float:
        start = perf_counter()
        ask(text)
        return (perf_counter() - start) * 1000

    return [min(clocked(text) for _ in range(3)) for text in keys]
