"""A spec among its kin as its page shows it: beside its parent, its versions, their trials."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

from barkeep.domain.answers.comparison import Comparison, FigureRow, compare, figure_rows
from barkeep.domain.ingredients import folded
from barkeep.domain.riffs import Change, Version, family
from barkeep.domain.shown_lines import shown_lines
from barkeep.domain.snapshot import Snapshot
from barkeep.domain.specs import Line, Spec
from barkeep.domain.trial_words import show_scores
from barkeep.domain.trials import Trial, mean_scores, winner
from barkeep.errors import spoken_list

NO_CHANGE = "no change"
_MARKS: Mapping[Change, str] = {
    "same": "=",
    "amount": "≠",
    "swapped": "⇄",
    "added": "+",
    "left out": "−",
}
_WORDS: Mapping[Change, str] = {
    "same": "",
    "amount": "Changed",
    "swapped": "Swapped",
    "added": "Added",
    "left out": "Left out",
}


@dataclass(frozen=True, slots=True)
class PairRow:
    """Two lines side by side; `mark` is a shape and `word` what it means, empty for *the same*."""

    before: str
    after: str
    mark: str
    word: str

    @property
    def in_words(self) -> str:
        """The whole row, for those who do not see it."""
        if not self.word:
            return f"The same: {self.after}"
        return f"{self.word}: {' → '.join(each for each in (self.before, self.after) if each)}"


@dataclass(frozen=True, slots=True)
class BesideParent:
    """A riff and its parent; no rows where the parent is no longer in the book."""

    parent: str
    pairs: tuple[PairRow, ...] = ()
    figures: tuple[FigureRow, ...] = ()


@dataclass(frozen=True, slots=True)
class VersionRow:
    """One spec of the family, its place in the tree, and how its trials went.

    `goes_on` says of each level down to this one whether more hangs on it below.
    """

    name: str
    goes_on: tuple[bool, ...]
    is_this: bool
    has_won: bool
    trials: str


@dataclass(frozen=True, slots=True)
class TrialRow:
    """One tasting in words; what is empty was not written down."""

    trial: Trial
    on: str
    scores: str
    tasters: str
    changed: str
    notes: str


def beside_parent(spec: Spec, snapshot: Snapshot) -> BesideParent | None:
    """A riff beside its parent, None for what is no riff."""
    if spec.riff_of is None:
        return None
    wanted = folded(spec.riff_of)
    parent = next((each for each in snapshot.all_specs if folded(each.name) == wanted), None)
    if parent is None:
        return BesideParent(spec.riff_of)
    found = compare(parent, spec, snapshot)
    return BesideParent(parent.name, tuple(_pairs(found, snapshot)), figure_rows(found))


def version_rows(spec: Spec, snapshot: Snapshot) -> tuple[VersionRow, ...]:
    """The whole family of a spec, parents before their riffs; none for a spec without kin."""
    versions = family(spec.name, snapshot.all_specs)
    if len(versions) < 2:
        return ()
    ids = [each.spec.id for each in versions if each.spec.id is not None]
    won = winner(snapshot.trials, ids)
    depths = [version.depth for version in versions]
    return tuple(
        VersionRow(
            version.spec.name,
            _goes_on(depths, number),
            version.spec.name == spec.name,
            won is not None and version.spec.id == won,
            _trials_in_brief(version, snapshot),
        )
        for number, version in enumerate(versions)
    )


def trial_rows(spec: Spec, snapshot: Snapshot) -> tuple[TrialRow, ...]:
    """The trials of a spec, newest first."""
    own = trials_of(spec, snapshot)
    return tuple(_trial_row(each) for each in reversed(own))


def trials_of(spec: Spec, snapshot: Snapshot) -> tuple[Trial, ...]:
    """The trials of a spec, oldest first."""
    if spec.id is None:
        return ()
    return tuple(each for each in snapshot.trials if each.spec_id == spec.id)


def in_brief(trials: Sequence[Trial]) -> str:
    """How many trials there are and their mean scores."""
    if not trials:
        return ""
    many = "1 trial" if len(trials) == 1 else f"{len(trials)} trials"
    scores = show_scores(mean_scores(trials))
    return f"{many}: {scores}" if scores else many


def _pairs(found: Comparison, snapshot: Snapshot) -> Iterator[PairRow]:
    before, after = _shown(found.parent, snapshot), _shown(found.riff, snapshot)
    for pair in found.pairs:
        was = "" if pair.before is None else before[id(pair.before)]
        now = "" if pair.after is None else after[id(pair.after)]
        yield PairRow(was, now, _MARKS[pair.change], _WORDS[pair.change])


def _shown(spec: Spec, snapshot: Snapshot) -> Mapping[int, str]:
    """Each line object as it is shown; two lines of a spec may well be equal."""
    settings, lines = snapshot.settings, spec.lines
    shown = shown_lines(spec, snapshot.knowledge.tree, settings.shown_in, settings.units)
    return {id(line): _with_duty(line, each.text) for line, each in zip(lines, shown, strict=True)}


def _with_duty(line: Line, text: str) -> str:
    said = "optional" if line.optional else "garnish" if line.garnish else ""
    return text if not said or said in text.casefold() else f"{text} ({said})"


def _goes_on(depths: Sequence[int], number: int) -> tuple[bool, ...]:
    """For each level from 1 to that of a version: whether another version follows on it."""
    found = []
    for level in range(1, depths[number] + 1):
        later = (each for each in depths[number + 1 :] if each <= level)
        found.append(next(later, 0) == level)
    return tuple(found)


def _trials_in_brief(version: Version, snapshot: Snapshot) -> str:
    return in_brief(trials_of(version.spec, snapshot))


def _trial_row(trial: Trial) -> TrialRow:
    tasters = spoken_list(trial.tasters, "and")
    return TrialRow(
        trial,
        f"{trial.on:%d %B %Y}".lstrip("0"),
        show_scores(mean_scores([trial])),
        f"Scored by {tasters}" if tasters else "",
        f"Changed: {trial.changed}" if trial.changed else "",
        trial.notes,
    )
