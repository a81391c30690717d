"""A drink among its family: the same families and figures as the usual ranges are drawn from."""

from __future__ import annotations

import pytest

from barkeep.domain.drink.analysis import analyse
from barkeep.domain.drink.balance import LEFT_OUT, QUALITIES, Range
from barkeep.domain.drink.kin import FEWEST, Kin, figures_of, kin_of, usual_water
from tests.domain.drink.test_analysis import BARE


def named(name: str):
    return analyse(next(each for each in BARE.all_specs if each.name == name), BARE)


@pytest.mark.parametrize("name", ["Daiquiri", "Negroni", "Gin Fizz"])
def test_the_family_is_the_one_its_ranges_are_drawn_from(name):
    """A drink with its kin are as many as the ranges say, and as few of them lie outside."""
    made = named(name)
    kin = kin_of(made, BARE)
    assert len(kin) + 1 == made.style.classics
    assert name not in {each.name for each in kin}
    assert [each.name for each in kin] == sorted((e.name for e in kin), key=str.casefold)
    for quality in QUALITIES:
        usual = made.style.range_of(quality)
        places = [usual.place_of(each.figures[quality]) for each in kin]
        most = made.style.classics // LEFT_OUT
        assert max(places.count("below"), places.count("above")) <= most


def test_what_has_no_family_has_no_kin():
    assert kin_of(named("Hot Toddy"), BARE) == ()


def test_water_is_a_share_of_what_was_poured():
    made = named("Daiquiri")
    assert figures_of(made)["water"] == pytest.approx(100.0 * made.dilution.share)
    assert set(figures_of(named("Lemonade"))) >= {"sugar", "acid"}


def test_the_usual_water_leaves_the_farthest_out():
    def kin(*waters: float) -> list[Kin]:
        return [Kin(f"{n}", False, {"water": each}) for n, each in enumerate(waters)]

    assert usual_water(kin(*[20.0] * (FEWEST - 1))) is None
    assert usual_water(kin(20.2, 24, 25, 26, 29.1)) == Range(20.0, 30.0)
    assert usual_water(kin(1, 20, 21, 22, 23, 24, 25, 26, 27, 90)) == Range(20.0, 27.0)
