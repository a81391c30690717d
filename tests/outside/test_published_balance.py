"""Published ranges of balance beside barkeep's own: `published_balance.csv`.

D. Arnold, *Liquid Intelligence*, 2014, pp. 125-126, *from memory*, so these are
no outside checks in the strict sense. Lemon and lime are 6 % acid there
(pp. 136-137); barkeep takes what was measured (Penniston 2008). So the published
acid of sours is put on barkeep's scale before the two are set side by side.
What is published of drinks carbonated whole says nothing of a long drink with
soda and is not compared.
"""

from __future__ import annotations

import pytest

from barkeep.domain.drink.balance import Range, styles
from tests.domain.drink.ranges import families
from tests.domain.drink.test_analysis import BARE, TREE
from tests.outside.tables import rows

pytestmark = pytest.mark.computed
PUBLISHED = {row["family"]: row for row in rows("published_balance")}
ASSUMED_ACID_G_PER_L = 60.0
OURS = {
    "built": ("built",),
    "stirred": ("stirred",),
    "shaken": ("shaken", "shaken_liqueur"),
    "shaken_egg_white": ("shaken_egg_white",),
    "blended": ("blended",),
}
"""Published family -> those of barkeep it covers. Its stirred drinks all hold vermouth."""


def on_our_scale(family: str) -> dict[str, Range]:
    """A published row in % vol and g per litre, its acid as barkeep counts that of citrus."""
    row = PUBLISHED[family]
    juices = [TREE[key].acid_g_per_l for key in ("lemon-juice", "lime-juice")]
    citrus = sum(juices) / len(juices) / ASSUMED_ACID_G_PER_L
    share = citrus if family in ("shaken", "shaken_egg_white", "blended") else 1.0
    sugar, acid = "sugar_{}_g_per_100_ml", "acid_{}_g_per_100_ml"
    return {
        "strength": Range(float(row["abv_low"]), float(row["abv_high"])),
        "sugar": Range(*(10.0 * float(row[sugar.format(end)]) for end in ("low", "high"))),
        "acid": Range(*(10.0 * share * float(row[acid.format(end)]) for end in ("low", "high"))),
    }


@pytest.mark.parametrize(
    ("published", "ours"), [(one, each) for one, them in OURS.items() for each in them]
)
def test_the_published_range_and_ours_meet(published, ours):
    for quality, theirs in on_our_scale(published).items():
        usual = styles()[ours].range_of(quality)
        print(f"{ours:16} {quality:8} ours {tuple(usual)}, published {tuple(theirs)}")
        assert usual.low <= theirs.high
        assert theirs.low <= usual.high, (ours, quality)


def test_on_one_scale_fewer_than_half_as_many_sours_read_less_sour_than_published():
    values = [each.acid_g_per_l for key in OURS["shaken"] for each in families(BARE)[key]]
    row = PUBLISHED["shaken"]
    printed = Range(*(10.0 * float(row[f"acid_{end}_g_per_100_ml"]) for end in ("low", "high")))
    less, less_as_printed = (
        sum(usual.place_of(each) == "below" for each in values)
        for usual in (on_our_scale("shaken")["acid"], printed)
    )
    print(f"of {len(values)} sours {less} below on one scale, {less_as_printed} as printed")
    assert less * 2 < less_as_printed
