"""The inside of a bottle: volumes of solids whose formulas everybody knows."""

from __future__ import annotations

from math import pi

import pytest

from barkeep.domain.bottles.shapes import Profile, Punt, Station


@pytest.mark.parametrize(
    ("profile", "volume"),
    [
        # A cylinder, a cone's frustum, a cube and an elliptic cylinder, by their school formulas.
        (Profile("round", (Station(1, 2, 2), Station(4, 2, 2))), pi * 3),
        (Profile("round", (Station(1, 4, 4), Station(4, 2, 2))), pi * (4 + 2 + 1)),
        (Profile("square", (Station(1, 3, 3), Station(4, 3, 3))), 27),
        (Profile("square", (Station(1, 2, 2, 1), Station(4, 2, 2, 1))), pi * 3),
        (Profile("oval", (Station(1, 4, 2), Station(4, 4, 2))), pi * 2 * 3),
        # A paraboloid is half its cylinder.
        (Profile("round", (Station(1, 4, 4), Station(4, 4, 4)), Punt(2, 2)), pi * (12 - 1)),
    ],
)
def test_simple_solids_hold_what_geometry_says(profile, volume):
    assert profile.brimful_ml == pytest.approx(volume, rel=1e-12)


def test_liquid_beside_a_punt_is_less_than_without():
    stations = (Station(1, 4, 4), Station(4, 4, 4))
    plain, with_punt = Profile("round", stations), Profile("round", stations, Punt(2, 2))
    assert with_punt.volume_to(1.5) < plain.volume_to(1.5)
    assert with_punt.height_of(1.0) > plain.height_of(1.0)
    assert plain.brimful_ml - with_punt.brimful_ml == pytest.approx(
        plain.volume_to(3.0) - with_punt.volume_to(3.0)
    )


def test_beyond_its_ends_a_profile_holds_nothing_more():
    profile = Profile("round", (Station(1, 4, 4), Station(4, 2, 2)))
    assert profile.volume_to(0.5) == 0.0
    assert profile.volume_to(9.0) == profile.brimful_ml
    assert profile.height_of(profile.brimful_ml + 1.0) == 4
    assert profile.area_at(0.5) == profile.area_at(1.0) == pytest.approx(4 * pi)
    assert profile.area_at(9.0) == pytest.approx(pi)


def test_a_solid_that_narrows_to_almost_nothing_is_still_turned_round():
    profile = Profile("round", (Station(1, 4, 4), Station(4, 1e-6, 1e-6)))
    for share in (1e-9, 0.3, 0.999, 1 - 1e-9):
        volume = share * profile.brimful_ml
        assert profile.volume_to(profile.height_of(volume)) == pytest.approx(volume, rel=1e-9)
