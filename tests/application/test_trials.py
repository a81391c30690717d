"""Trials: written down, changed, taken away, and which version won."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

import pytest

from barkeep.domain.specs.trials import Scale, Score, Trial, winner
from barkeep.errors import InvalidField, UnknownName
from tests.application.conftest import plough

EARLY, LATE = date(2026, 11, 2), date(2026, 11, 9)
SCORES = (Score("Ada", "Balance", 4.0), Score("Ben", "On theme", 2.5))


@pytest.fixture
def spec(bar):
    return bar.specs.add([plough()]).value[0]


@pytest.fixture
def riff(bar, spec):
    return bar.specs.add([plough("Snow Blower", riff_of=spec.name)]).value[0]


def trial(spec, on=EARLY, **more):
    return Trial(None, spec.id, on, **more)


def test_a_trial_is_written_down_kept_undone_and_redone(bar, spec, reopen):
    done = bar.trials.add(trial(spec, scores=SCORES, notes=" Long. ", changed=" less  lime "))
    assert done.value == Trial(done.value.id, spec.id, EARLY, SCORES, "Long.", "less lime")
    assert done.changes == {"trials"} and done.label == "Add trial of Snow Plough"
    assert bar.snapshot.trials == (done.value,) == reopen().snapshot.trials
    bar.undo()
    assert bar.snapshot.trials == ()
    bar.redo()
    assert bar.snapshot.trials == (done.value,)


def test_a_trial_is_changed_and_taken_away(bar, spec):
    first = bar.trials.add(trial(spec, scores=SCORES)).value
    changed = replace(first, on=LATE, scores=SCORES[:1], notes="Shorter.")
    assert bar.trials.replace(changed).value == changed
    assert bar.undo_label == "Change trial of Snow Plough"
    assert bar.trials.remove(first.id).value == changed
    assert bar.undo_label == "Remove trial of Snow Plough"
    assert bar.snapshot.trials == ()
    bar.undo()
    assert bar.snapshot.trials == (changed,)
    bar.undo()
    assert bar.snapshot.trials == (first,)


def test_a_trial_goes_and_comes_back_with_its_spec(bar, spec):
    added = bar.trials.add(trial(spec)).value
    bar.specs.remove(spec.id)
    assert bar.snapshot.trials == ()
    with pytest.raises(UnknownName, match="no trial called"):
        bar.trials.remove(added.id)
    bar.undo()
    assert bar.snapshot.trials == (added,)


@pytest.mark.parametrize(
    ("changes", "error", "said"),
    [
        ({"spec_id": 99}, UnknownName, "no spec of yours called “#99”"),
        ({"on": date(2026, 11, 22)}, InvalidField, "on cannot be “2026-11-22”: a trial cannot be"),
        (
            {"scores": (Score(" ", "Balance", 4), Score("Ada", "Balance", 3))},
            InvalidField,
            "where one is named, each score needs who gave it",
        ),
        ({"scores": (Score("Ada", "Nose", 4),)}, UnknownName, "no scale called “Nose”"),
        ({"scores": (Score("Ada", "Balance", 5.5),)}, InvalidField, "Balance runs from 1 to 5"),
        ({"scores": (Score("A", "Balance", float("nan")),)}, InvalidField, "runs from 1 to 5"),
        (
            {"scores": (Score("Ada", "Balance", 4), Score("ada ", "balance", 2))},
            InvalidField,
            "ada has scored Balance already",
        ),
    ],
)
def test_what_cannot_be_is_refused_and_nothing_is_written(bar, spec, changes, error, said):
    there = bar.trials.add(trial(spec)).value
    with pytest.raises(error, match=said):
        bar.trials.add(replace(trial(spec), **changes))
    with pytest.raises(error, match=said):
        bar.trials.replace(replace(there, **changes))
    assert bar.snapshot.trials == (there,)
    assert bar.undo_label == "Add trial of Snow Plough"


def test_who_tastes_alone_need_not_be_named(bar, spec, reopen):
    alone = Score(" ", "Balance", 4)
    written = bar.trials.add(trial(spec, scores=(alone,))).value
    assert written.scores == (Score("", "Balance", 4.0),) and written.tasters == ()
    assert reopen().snapshot.trials == (written,)


def test_a_trial_that_there_is_not_is_refused(bar, spec):
    for act in (bar.trials.remove, bar.trials.mark_won):
        with pytest.raises(UnknownName, match="There is no trial called “#7”"):
            act(7)
    with pytest.raises(UnknownName):
        bar.trials.replace(trial(spec))


def test_a_score_stays_whatever_becomes_of_its_scale(bar, spec):
    there = bar.trials.add(trial(spec, scores=SCORES)).value
    bar.settings.change(replace(bar.snapshot.settings, scales=(Scale("Nose", 0, 10),)))
    more = replace(there, scores=(*SCORES, Score("Ada", "nose", 9)))
    kept = bar.trials.replace(more).value
    assert kept.scores == (*SCORES, Score("Ada", "Nose", 9.0))
    with pytest.raises(UnknownName, match="no scale called “Balance”"):
        bar.trials.replace(replace(kept, scores=(Score("Ada", "Balance", 3.0),)))


def test_the_version_marked_last_is_the_one_that_won(bar, spec, riff):
    old = bar.trials.add(trial(spec)).value
    new = bar.trials.add(trial(riff, LATE, won=True)).value
    family = (spec.id, riff.id)
    assert winner(bar.snapshot.trials, family) == riff.id
    assert bar.trials.mark_won(old.id).value == replace(old, won=True)
    assert winner(bar.snapshot.trials, family) == spec.id
    assert bar.undo_label == "Mark Snow Plough as won"
    bar.undo()
    assert bar.snapshot.trials == (old, new)
    bar.trials.mark_won(new.id, won=False)
    assert bar.undo_label == "Mark Snow Blower as not won"
    assert winner(bar.snapshot.trials, family) is None


def test_what_was_settled_on_before_stays_history(bar, spec, riff):
    bar.trials.add(trial(spec, won=True))
    new = bar.trials.add(trial(riff, LATE)).value
    other = bar.specs.add([plough("Lamp Room")]).value[0]
    bar.trials.add(trial(other, date(2026, 11, 20), won=True))
    bar.trials.mark_won(new.id)
    assert [each.won for each in bar.snapshot.trials] == [True, True, True]
    assert winner(bar.snapshot.trials, (spec.id, riff.id)) == riff.id
