"""Acid of juices: `citrus_acid.csv`.

* Penniston et al., *J. Endourol.* 22(3):567 (2008): citric acid by ion
  chromatography, g/l.
* CIQUAL (ANSES): organic acids, g in 100 g.

They disagree by nearly half on grapefruit and orange; `ingredients.toml` says
which it takes. Working values and floors *from memory* are not used.
"""

from __future__ import annotations

import re

import pytest

from tests.outside.tables import rows

TABLE = rows("citrus_acid")
PENNISTON = {
    "lemon-juice": "Lemon juice, fresh",
    "lime-juice": "Lime juice, fresh",
    "grapefruit-juice": "Grapefruit juice, ready-to-drink",
    "white-grapefruit-juice": "Grapefruit juice, ready-to-drink",
    "pink-grapefruit-juice": "Grapefruit juice, ready-to-drink",
    "orange-juice": "Orange juice, fresh",
    "bottled-lemon-juice": "Lemon juice concentrate, retail",
    "bottled-lime-juice": "Lime juice concentrate, retail",
}
G_PER_ML = {
    "2073": 1.057,
    "2074": 1.048,
    "2016": 1.069,
    "2053": 1.027,
    "5021": 1.0,
    "2025": 1.044,
    "2013": 1.048,
}
"""By USDA household measures (`usda_liquids.csv`); of cider, as of water."""


def row_of(item: str, source: str) -> dict[str, str]:
    (row,) = (each for each in TABLE if each["item"] == item and source in each["source"])
    return row


def ciqual(number: str) -> float:
    """g per litre."""
    (row,) = (each for each in TABLE if each["source"] == f"CIQUAL {number}")
    return float(row["value"]) * 10.0 * G_PER_ML[number]


@pytest.mark.parametrize("key", PENNISTON, ids="Penniston et al. 2008: {}".format)
def test_citric_acid(tree, key):
    row = row_of(PENNISTON[key], "Penniston")
    assert tree[key].acid_g_per_l == pytest.approx(float(row["value"]), abs=0.05)
    assert "acid Penniston 2008" in tree[key].basis


def test_whoever_names_penniston_is_checked(tree):
    assert {key for key in tree if "Penniston" in tree[key].basis} == PENNISTON.keys()


def test_ciqual_whoever_names_it_has_its_acid(tree):
    named = {
        key: found[1] for key in tree if (found := re.search(r"CIQUAL (\d+)", tree[key].basis))
    }
    assert len(named) >= 6
    for key, number in named.items():
        assert tree[key].acid_g_per_l == pytest.approx(ciqual(number), rel=0.02), key


@pytest.mark.parametrize(
    ("key", "number", "apart"), [("grapefruit-juice", "2025", 2.0), ("orange-juice", "2013", 2.0)]
)
def test_ciqual_the_other_source_is_no_further_than_is_said(tree, key, number, apart):
    ratio = tree[key].acid_g_per_l / ciqual(number)
    assert 1.0 / apart < ratio < apart


def test_ciqual_lemon_and_lime_agree_with_penniston(tree):
    """4.8 and 4.9 g in 100 g, of juices of 1.03 and 1.02 g/ml."""
    assert tree["lemon-juice"].acid_g_per_l == pytest.approx(48.0 * 1.031, rel=0.1)
    assert tree["lime-juice"].acid_g_per_l == pytest.approx(49.0 * 1.023, rel=0.1)
