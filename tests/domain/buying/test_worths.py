"""What drinks are worth to a plan."""

from __future__ import annotations

from dataclasses import replace

import pytest

from barkeep.domain.buying.worths import worths_of
from barkeep.domain.specs.trials import Scale, Score, Trial
from barkeep.errors import BadQuery
from tests.domain.pouring.test_verdicts import KNOWLEDGE, line, spec
from tests.worlds import TODAY, snapshot

SPECS = [
    replace(spec(line("gin"), name="Tried"), id=1, tags=("summer",)),
    replace(spec(line("gin"), name="Low"), id=2),
    replace(spec(line("kummel"), name="Never tried"), id=3),
]


def tried(spec_id: int, *values: float) -> Trial:
    scores = tuple(Score("", "Balance", each) for each in values)
    return Trial(spec_id, spec_id, TODAY, scores)


BAR = replace(
    snapshot(KNOWLEDGE, [], SPECS), trials=(tried(1, 5.0), tried(2, 1.0, 2.0), tried(9, 3.0))
)


def test_nothing_said_weighs_nothing():
    assert worths_of(BAR) == {}


def test_a_score_counts_from_nothing_to_twice_and_what_was_never_tried_once():
    assert worths_of(BAR, by_score=True) == {"Tried": 2.0, "Low": 0.25, "Never tried": 1.0}
    lower_is_better = replace(BAR.settings, scales=(Scale("Balance", 5.0, 1.0),))
    turned = worths_of(replace(BAR, settings=lower_is_better), by_score=True)
    assert turned == {"Tried": 0.0, "Low": 1.75, "Never tried": 1.0}


def test_queries_multiply_one_after_another():
    found = worths_of(BAR, times=[("with:gin", 3.0), ("tag:summer", 0.0)])
    assert found == {"Tried": 0.0, "Low": 3.0, "Never tried": 1.0}
    with pytest.raises(BadQuery):
        worths_of(BAR, times=[("strength:stark", 2.0)])
