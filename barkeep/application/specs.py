"""The owner's specs and their trials: added, replaced, removed, found, and which version won."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Sequence
from dataclasses import replace
from datetime import date

from barkeep.application.done import Done
from barkeep.application.finding import find_ingredient, find_spec, nearest_names
from barkeep.application.session import Session, UseCases
from barkeep.application.stale import (
    RemovedSince,
    refuse_stale,
    spec_in_words,
    trial_in_words,
)
from barkeep.domain.ingredients.tree import FamilyTree
from barkeep.domain.phrases import folded
from barkeep.domain.spec_text.headers import MOST_SPEC_SERVES
from barkeep.domain.spec_text.settling import settled
from barkeep.domain.specs.riffs import family
from barkeep.domain.specs.spec import Line, Spec
from barkeep.domain.specs.trials import Scale, Score, Trial, ends, show_score
from barkeep.errors import DuplicateName, InvalidField, UnknownName
from barkeep.store import specs as spec_rows
from barkeep.store.unit_of_work import UnitOfWork
from barkeep.translation import tr, tr_noop


class Specs(UseCases):
    """The use cases of `bar.specs`."""

    def get(self, name: str) -> Spec:
        """The owner's spec or the classic of this name. Raises `UnknownName`, `AmbiguousName`."""
        return find_spec(self._session.snapshot, name)

    def add(self, specs: Sequence[Spec]) -> Done[tuple[Spec, ...]]:
        """Add specs, all of them or none.

        Raises `DuplicateName` for a name that is taken, among the classics
        too, `InvalidField`, and `UnknownName` for an ingredient or for a
        spec that one is said to be a riff of. That may be one of `specs`.
        """
        with self._session.writing() as work:
            checked = [self._checked(spec) for spec in specs]
            work.label = _label("Add", checked)
            self._refuse_unknown_riffs(checked)
            refuse_taken_names(self._session, work, checked)
            ids = work.insert("spec", checked, added=work.at.date())
        return self._session.finished(work, lambda bar: tuple(map(bar.spec_by_id.__getitem__, ids)))

    def replace(self, spec: Spec, seen: Spec | None = None) -> Done[Spec]:
        """Make the owner's spec of this id what is given. Raises as `add` does.

        A spec may stay a riff of one that has been removed since. Raises `ChangedSince`
        or `RemovedSince` where the spec is not as it was `seen`.
        """
        with self._session.writing() as work:
            checked = self._checked(spec)
            work.label = f"Change spec {checked.name}"
            _refuse_removed(seen, spec_rows.read_spec(work.connection, spec.id or 0))
            old, spec_id = _spec_there(work, spec.id)
            refuse_stale(
                tr("the spec {name}", name=old.name),
                seen=seen,
                now=old,
                mine=checked,
                words=spec_in_words,
            )
            refuse_taken_names(self._session, work, [checked], [spec_id])
            if checked.riff_of != old.riff_of:
                self._refuse_unknown_riffs([checked])
            work.put("spec", (spec_id,), replace(checked, added=old.added))
        return self._session.finished(work, lambda bar: bar.spec_by_id[spec_id])

    def settle(self, spec_id: int) -> Done[Spec]:
        """Read again the lines of the owner's spec that were not understood when it was kept.

        What is still not understood stays so. Raises `UnknownName`.
        """
        with self._session.writing() as work:
            snapshot = self._session.snapshot
            tree, units = snapshot.knowledge.tree, snapshot.settings.units
            old, _ = _spec_there(work, spec_id)
            work.label = f"Settle questions of {old.name}"
            work.put("spec", (spec_id,), settled(old, tree, units))
        return self._session.finished(work, lambda bar: bar.spec_by_id[spec_id])

    def remove(self, spec_id: int, *others: int) -> Done[Spec]:
        """Take a spec, or several in one step, out of the book. Raises `UnknownName`.

        Gives the first of them.
        """
        with self._session.writing() as work:
            specs = {each: _spec_there(work, each)[0] for each in (spec_id, *others)}
            name = specs[spec_id].name
            work.label = f"Remove {len(specs)} specs" if others else f"Remove spec {name}"
            for each in specs:
                work.put("spec", (each,), None)
        return self._session.finished(work, lambda _bar: specs[spec_id])

    def _checked(self, spec: Spec) -> Spec:
        name = " ".join(spec.name.split())
        if not name:
            raise InvalidField("name", spec.name, tr_noop("a spec needs a name"))
        if not (spec.lines or spec.unsettled):
            raise InvalidField(tr_noop("lines"), "", tr("{name} needs at least one", name=name))
        if not 0.0 < spec.serves <= MOST_SPEC_SERVES:
            raise InvalidField(
                "serves",
                spec.serves,
                tr("it is more than 0 and at most {most:.0f}", most=MOST_SPEC_SERVES),
            )
        lines = of_known_kinds(spec, self._session.tree)
        if name == spec.name and lines is spec.lines and not spec.classic:
            return spec
        return replace(spec, name=name, lines=lines, classic=False)

    def _refuse_unknown_riffs(self, specs: Sequence[Spec]) -> None:
        riffs = [(each, each.riff_of) for each in specs if each.riff_of is not None]
        if not riffs:
            return
        names = [each.name for each in (*self._session.snapshot.all_specs, *specs)]
        known = {folded(name) for name in names}
        for spec, parent in riffs:
            if folded(parent) == folded(spec.name):
                raise InvalidField("riff of", parent, tr_noop("no spec is a riff of itself"))
            if folded(parent) not in known:
                raise UnknownName(tr_noop("spec"), parent, nearest_names(parent, names))


def of_known_kinds(spec: Spec, tree: FamilyTree) -> tuple[Line, ...]:
    """The lines of a spec with the keys of what they name. Raises `UnknownName`."""
    if spec.wanted <= tree.ingredients.keys():
        return spec.lines
    return tuple(_of_known_kinds(line, tree) for line in spec.lines)


def _of_known_kinds(line: Line, tree: FamilyTree) -> Line:
    if all(each in tree for each in line.wanted):
        return line
    wanted, *others = (find_ingredient(tree, each) for each in line.wanted)
    return replace(line, ingredient=wanted, alternatives=tuple(others))


def refuse_taken_names(
    session: Session, work: UnitOfWork, specs: Iterable[Spec], apart_from: Collection[int] = ()
) -> None:
    """Raises `DuplicateName` for a name that another spec or a classic has, or two of these."""
    wanted = list(specs)
    names = {folded(spec.name) for spec in wanted}
    taken = set(spec_rows.taken_names(work.connection, names, apart_from))
    taken |= {folded(each.name) for each in session.shipped.classics}
    for spec in wanted:
        if folded(spec.name) in taken:
            raise DuplicateName(tr_noop("spec"), spec.name)
        taken.add(folded(spec.name))


def _spec_there(work: UnitOfWork, spec_id: int | None) -> tuple[Spec, int]:
    if spec_id is None:
        raise UnknownName(tr_noop("spec of yours"), tr_noop("a classic"))
    found = spec_rows.read_spec(work.connection, spec_id)
    if found is None:
        raise UnknownName(tr_noop("spec of yours"), f"#{spec_id}")
    return found, spec_id


def _refuse_removed(seen: Spec | None, now: Spec | None) -> None:
    """Raise `RemovedSince` for a spec that was seen and is no longer there."""
    if seen is not None and now is None:
        raise RemovedSince(tr("the spec {name}", name=seen.name))


def _label(verb: str, specs: Sequence[Spec]) -> str:
    if len(specs) == 1:
        return f"{verb} spec {specs[0].name}"
    return f"{verb} {len(specs)} specs"


class Trials(UseCases):
    """The use cases of `bar.trials`."""

    def add(self, trial: Trial) -> Done[Trial]:
        """Write a trial down.

        Raises `UnknownName` where there is no such spec of the owner's or no
        such scale, and `InvalidField` for a date to come, a score off its
        scale or given twice, and a score without a taster beside one with.
        """
        with self._session.writing() as work:
            checked = self._checked(trial)
            work.label = f"Add trial of {_spec_there(work, trial.spec_id)[0].name}"
            (trial_id,) = work.insert("trial", [checked])
        return self._session.finished(work, lambda bar: bar.trial_by_id[trial_id])

    def replace(self, trial: Trial, seen: Trial | None = None) -> Done[Trial]:
        """Make the trial of this id what is given. Raises as `add` does.

        A score may stay that was there before, whatever became of its scale. Raises
        `ChangedSince` where the trial is not as it was `seen`.
        """
        with self._session.writing() as work:
            before, trial_id = _trial_there(work, trial.id)
            checked = self._checked(trial, before.scores)
            name = _spec_there(work, trial.spec_id)[0].name
            work.label = f"Change trial of {name}"
            what = tr("the trial of {name}", name=name)
            refuse_stale(what, seen=seen, now=before, mine=checked, words=trial_in_words)
            work.put("trial", (trial_id,), checked)
        return self._session.finished(work, lambda bar: bar.trial_by_id[trial_id])

    def remove(self, trial_id: int) -> Done[Trial]:
        """Take a trial away. Raises `UnknownName`."""
        with self._session.writing() as work:
            trial, _ = _trial_there(work, trial_id)
            work.label = f"Remove trial of {_spec_there(work, trial.spec_id)[0].name}"
            work.put("trial", (trial_id,), None)
        return self._session.finished(work, lambda _bar: trial)

    def mark_won(self, trial_id: int, won: bool = True) -> Done[Trial]:
        """Say that a trial settled on its version, or that it did not. Raises `UnknownName`.

        What the family settled on in a later trial no longer holds then.
        """
        with self._session.writing() as work:
            trial, _ = _trial_there(work, trial_id)
            spec = _spec_there(work, trial.spec_id)[0]
            work.label = f"Mark {spec.name} as {'won' if won else 'not won'}"
            work.put("trial", (trial_id,), replace(trial, won=won))
            for other in self._overruled(trial, spec) if won else ():
                work.put("trial", (other.id,), replace(other, won=False))
        return self._session.finished(work, lambda bar: bar.trial_by_id[trial_id])

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
            raise InvalidField(
                "on", trial.on.isoformat(), tr_noop("a trial cannot be in the future")
            )
        scales = self._session.snapshot.settings.scales
        scores = tuple(
            each if each in before else _checked_score(each, scales) for each in trial.scores
        )
        _refuse_unnamed(scores)
        _refuse_twice(scores)
        notes, changed = trial.notes.strip(), " ".join(trial.changed.split())
        return replace(trial, scores=scores, notes=notes, changed=changed)


def _checked_score(score: Score, scales: Collection[Scale]) -> Score:
    taster = " ".join(score.taster.split())
    scale = next((each for each in scales if folded(each.name) == folded(score.scale)), None)
    if scale is None:
        raise UnknownName(tr_noop("scale"), score.scale, tuple(each.name for each in scales))
    if not scale.holds(score.value):
        expected = tr("{scale} runs from {ends}", scale=scale.name, ends=ends(scale))
        raise InvalidField("score", show_score(score.value), expected)
    return Score(taster, scale.name, float(score.value))


def _refuse_unnamed(scores: Sequence[Score]) -> None:
    """Who tastes alone need not be named; where somebody is, whose is the other score?"""
    if any(each.taster for each in scores) and not all(each.taster for each in scores):
        raise InvalidField(
            "taster", "", tr_noop("where one is named, each score needs who gave it")
        )


def _refuse_twice(scores: Sequence[Score]) -> None:
    seen: set[tuple[str, str]] = set()
    for each in scores:
        key = folded(each.taster), folded(each.scale)
        if key in seen:
            expected = tr("{scale} is scored already; name who gave each", scale=each.scale)
            if each.taster:
                expected = tr(
                    "{taster} has scored {scale} already", taster=each.taster, scale=each.scale
                )
            raise InvalidField("score", show_score(each.value), expected)
        seen.add(key)


def _moment(trial: Trial) -> tuple[date, int]:
    return (trial.on, trial.id or 0)


def _trial_there(work: UnitOfWork, trial_id: int | None) -> tuple[Trial, int]:
    found = None if trial_id is None else spec_rows.read_trial(work.connection, trial_id)
    if found is None or trial_id is None:
        raise UnknownName(tr_noop("trial"), f"#{trial_id}")
    return found, trial_id
