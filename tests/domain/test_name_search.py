"""How a text fits names that are not ingredients: drinks, bottles, themes."""

from __future__ import annotations

import pytest

from barkeep.domain.name_search import Fit, Named, NameIndex
from tests.walked import walked

DRINKS = ("Signal Lamp", "Night Sleeper", "Branch Line", "Lamp Room Sour", "Line's End")
INDEX = NameIndex(Named(name, (name,)) for name in DRINKS)


@walked(
    ("typed", "first", "fit"),
    [
        ("signal lamp", "Signal Lamp", Fit.EXACT),
        ("signallamp", "Signal Lamp", Fit.EXACT),
        ("lamp, signal", "Signal Lamp", Fit.EXACT),
        ("signal lamps", "Signal Lamp", Fit.EXACT),
        ("lamp", "Lamp Room Sour", Fit.BEGINS),
        ("sleeper", "Night Sleeper", Fit.WORDS),
        ("sour room", "Lamp Room Sour", Fit.WORDS),
        ("slee ni", "Night Sleeper", Fit.BEGINNINGS),
        ("signel lamp", "Signal Lamp", Fit.LIKE),
        ("sinal lapm", "Signal Lamp", Fit.LIKE),
        ("the old branch line", "Branch Line", Fit.PARTLY),
    ],
)
def test_a_text_fits_its_name_so(typed, first, fit):
    found = INDEX.hits(typed)
    assert (found[0].value, found[0].fit) == (first, fit)


def test_a_better_fit_goes_before():
    fits = [hit.fit for hit in INDEX.hits("line")]
    assert fits == sorted(fits, reverse=True) and len(fits) == 2
    scores = [hit.score for hit in INDEX.hits("l")]
    assert scores == sorted(scores, reverse=True)


@pytest.mark.parametrize("typed", ["", " ", "-", "harbour", "zz", "q"])
def test_what_is_like_nothing_fits_nothing(typed):
    assert INDEX.hits(typed) == ()


def test_things_of_one_name_are_all_found():
    twins = NameIndex((Named(1, ("Lamp",)), Named(2, ("Lamp",)), Named(3, ("Rail", "Lamp"))))
    assert [hit.value for hit in twins.hits("lamp")] == [1, 2, 3]
    assert [hit.name for hit in twins.hits("lamp")] == ["Lamp", "Lamp", "Lamp"]
