"""Trials of the owner's specs: add, change, remove, and say which version won."""

from __future__ import annotations

from collections.abc import Collection, Sequence
from dataclasses import replace
from datetime import date

from barkeep.application.done import Done
from barkeep.application.session import Session
from barkeep.domain.ingredients import folded
from barkeep.domain.riffs import family
from barkeep.domain.snapshot import Snapshot
from barkeep.domain.specs import Spec
from barkeep.domain.trial_words import ends, show_score
from barkeep.domain.trials import Scale, Score, Trial
from barkeep.errors import InvalidField, UnknownName
from barkeep.store import specs as spec_rows
from barkeep.store import trials as trial_rows
from barkeep.store.unit_of_work import UnitOfWork


class Trials:
    """The use cases of `bar.trials`."""

    def __init__(self, session: Session) -> None:
        self._session = session

    def add(self, trial: Trial) -> Done[Trial]:
        """Write a trial down.

        Raises `UnknownName` where there is no such spec of the owner's or no
        such scale, and `InvalidField` for a date to come, a score off its
        scale or given twice, and a score without a taster.
        """
        checked = self._checked(trial)
        with self._session.writing() as work:
            work.label = f"Add trial of {_spec_there(work, trial.spec_id).name}"
            (trial_id,) = work.insert("trial", [trial_rows.trial_row(checked)])
        return self._session.finished(work, lambda bar: _trial_of(bar, trial_id))

    def replace(self, trial: Trial) -> Done[Trial]:
        """Make the trial of this id what is given. Raises as `add` does.

        A score may stay that was there before, whatever became of its scale.
        """
        with self._session.writing() as work:
            before, trial_id = _trial_there(work, trial.id)
            checked = self._checked(trial, before.scores)
            work.label = f"Change trial of {_spec_there(work, trial.spec_id).name}"
            _put(work, trial_id, checked)
        return self._session.finished(work, lambda bar: _trial_of(bar, trial_id))

    def remove(self, trial_id: int) -> Done[Trial]:
        """Take a trial away. Raises `UnknownName`."""
        with self._session.writing() as work:
            trial, _ = _trial_there(work, trial_id)
            work.label = f"Remove trial of {_spec_there(work, trial.spec_id).name}"
            work.put("trial", (trial_id,), None)
        return self._session.finished(work, lambda _bar: trial)

    def mark_won(self, trial_id: int, won: bool = True) -> Done[Trial]:
        """Say that a trial settled on its version, or that it did not. Raises `UnknownName`.

        What the family settled on in a later trial no longer holds then.
        """
        with self._session.writing() as work:
            trial, _ = _trial_there(work, trial_id)
            spec = _spec_there(work, trial.spec_id)
            work.label = f"Mark {spec.name} as {'won' if won else 'not won'}"
            _put(work, trial_id, replace(trial, won=won))
            for other in self._overruled(trial, spec) if won else ():
                _put(work, other.id, replace(other, won=False))
        return self._session.finished(work, lambda bar: _trial_of(bar, trial_id))

    def _overruled(self, trial: Trial, spec: Spec) -> Sequence[Trial]:
        """The later trials of the family that were marked as won."""
        snapshot = self._session.snapshot
        kin = {each.spec.id for each in family(spec.name, snapshot.all_specs)}
        return [
            each
            for each in snapshot.trials
            if each.won and each.spec_id in kin and _moment(each) > _moment(trial)
        ]

    def _checked(self, trial: Trial, before: Sequence[Score] = ()) -> Trial:
        today = self._session.clock().date()
        if trial.on > today:
            raise InvalidField("on", trial.on.isoformat(), "a trial cannot be in the future")
        scales = self._session.snapshot.settings.scales
        scores = tuple(
            each if each in before else _checked_score(each, scales) for each in trial.scores
        )
        _refuse_twice(scores)
        notes, changed = trial.notes.strip(), " ".join(trial.changed.split())
        return replace(trial, scores=scores, notes=notes, changed=changed)


def _checked_score(score: Score, scales: Collection[Scale]) -> Score:
    taster = " ".join(score.taster.split())
    if not taster:
        raise InvalidField("taster", score.taster, "a score needs the name of who gave it")
    scale = next((each for each in scales if folded(each.name) == folded(score.scale)), None)
    if scale is None:
        raise UnknownName("scale", score.scale, tuple(each.name for each in scales))
    if not scale.holds(score.value):
        expected = f"{scale.name} runs from {ends(scale)}"
        raise InvalidField("score", show_score(score.value), expected)
    return Score(taster, scale.name, float(score.value))


def _refuse_twice(scores: Sequence[Score]) -> None:
    seen: set[tuple[str, str]] = set()
    for each in scores:
        key = folded(each.taster), folded(each.scale)
        if key in seen:
            expected = f"{each.taster} has scored {each.scale} already"
            raise InvalidField("score", show_score(each.value), expected)
        seen.add(key)


def _put(work: UnitOfWork, trial_id: int | None, trial: Trial) -> None:
    work.put("trial", (trial_id,), {"id": trial_id, **trial_rows.trial_row(trial)})


def _moment(trial: Trial) -> tuple[date, int]:
    return (trial.on, trial.id or 0)


def _spec_there(work: UnitOfWork, spec_id: int) -> Spec:
    found = spec_rows.read_spec(work.connection, spec_id)
    if found is None:
        raise UnknownName("spec of yours", f"#{spec_id}")
    return found


def _trial_there(work: UnitOfWork, trial_id: int | None) -> tuple[Trial, int]:
    found = None if trial_id is None else trial_rows.read_trial(work.connection, trial_id)
    if found is None or trial_id is None:
        raise UnknownName("trial", f"#{trial_id}")
    return found, trial_id


def _trial_of(bar: Snapshot, trial_id: int) -> Trial:
    return next(each for each in bar.trials if each.id == trial_id)
