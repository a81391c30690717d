"""Sizes that spirits and wines may be sold in: `fills.csv`.

* US distilled spirits: 27 CFR 5.203 after T.D. TTB-200 (2025); the sizes of
  before 2020 *from memory*.
* US wine: 27 CFR 4.72.
* EU and UK: Directive 2007/45/EC, Annex.
"""

from __future__ import annotations

import pytest

from tests.outside.tables import rows

FILLS = rows("fills")

SPIRITS = ("US distilled spirits", "EU/UK spirit drinks", "EU shochu")

WINES = (
    "US wine",
    "EU/UK still wine",
    "EU/UK sparkling wine",
    "EU/UK liqueur/fortified wine",
    "EU/UK aromatised wine",
)

LISTS = {
    "spirit": SPIRITS,
    "liqueur": SPIRITS,
    "bitters": SPIRITS,
    "wine": WINES,
    "sake": WINES,
    "mead": WINES,
}
"""What is bought -> the lists that hold for it; US law takes sake and mead for wines."""

OF_THE_OTHER_LIST = {"soju": WINES}
"""The bottle of its country, 360 ml, is on the US list for wine and not on that for spirits."""


def sizes(lists: tuple[str, ...]) -> set[float]:
    """Every size in ml of the lists whose names begin so."""
    return {float(row["volume_mL"]) for row in FILLS if row["category"].startswith(lists)}


def bought(tree, kind: str) -> list[str]:
    """Everything that is sold by volume as that kind."""
    below = [key for key in tree if key == kind or kind in tree.ancestors(key)]
    return [key for key in below if tree[key].unit == "ml" and not tree[key].family]


@pytest.mark.parametrize("kind", LISTS, ids="27 CFR 4.72, 5.203 or Directive 2007/45/EC: {}".format)
def test_what_is_bought_comes_in_a_legal_size(tree, kind):
    keys = bought(tree, kind)
    assert keys
    unlawful = {
        key: tree[key].typical_size
        for key in keys
        if tree[key].typical_size not in sizes(OF_THE_OTHER_LIST.get(key, LISTS[kind]))
    }
    assert unlawful == {}


def test_an_exception_is_one(tree):
    for key in OF_THE_OTHER_LIST:
        assert tree[key].typical_size not in sizes(SPIRITS)


@pytest.mark.parametrize(
    "category",
    [
        "US wine 27 CFR 4.72",
        # The sizes of before 2020 are from memory.
        pytest.param("US distilled spirits 27 CFR 5.203", marks=pytest.mark.computed),
    ],
)
def test_each_us_list_has_25_sizes(category):
    assert sum(row["category"] == category for row in FILLS) == 25


def test_the_commonest_sizes_are_not_lawful_everywhere():
    """700 ml is Europe's for spirits and 750 America's; both are on the US list since 2020."""
    assert {700.0, 750.0} <= sizes(("US distilled spirits",))
    assert 750.0 not in sizes(("EU/UK spirit drinks",))
