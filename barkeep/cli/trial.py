"""`barkeep trial`: how versions of a drink tasted, and which one won."""

from __future__ import annotations

import argparse
from collections.abc import Iterable, Mapping

from barkeep.application.bar import Bar
from barkeep.application.finding import find_spec
from barkeep.cli.arguments import Arguments, argument, command, day, flag
from barkeep.cli.bar_source import in_bar
from barkeep.cli.output import Answer, iso, rounded, table
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.domain.specs.riffs import family
from barkeep.domain.specs.spec import Spec
from barkeep.domain.specs.trials import (
    HOW_SCORES,
    Trial,
    mean_scores,
    read_score,
    show_scores,
    winner,
)
from barkeep.errors import UnknownName


def _trial_id(text: str) -> int:
    plain = text.strip().removeprefix("#")
    if not (plain.isascii() and plain.isdecimal() and len(plain) < 16):
        raise argparse.ArgumentTypeError(f"“{text}” is not the number of a trial, such as #3")
    return int(plain)


ID = argument("id", metavar="ID", type=_trial_id, help="as listed")


@command(
    argument("spec", metavar="SPEC", help="the drink's name"),
    argument("--on", type=day, metavar="DAY", help="when it was tasted (default: today)"),
    argument(
        "--score",
        action="append",
        default=[],
        dest="scores",
        metavar='"TASTER SCALE VALUE"',
        help=f"{HOW_SCORES}; may be given again. The scales are those of: barkeep setting scales",
    ),
    argument("--changed", default="", metavar="TEXT", help="what was changed for it"),
    argument("--notes", default="", metavar="TEXT", help="what was said of it"),
    flag("--won", "this version is settled on"),
)
@in_bar
def add(arguments: Arguments, bar: Bar) -> Answer:
    """Write one trial down."""
    spec = _own_spec(bar.snapshot, arguments.spec)
    scales = bar.snapshot.settings.scales
    trial = Trial(
        id=None,
        spec_id=spec.id or 0,
        on=arguments.on or bar.snapshot.on,
        scores=tuple(read_score(each, scales) for each in arguments.scores),
        notes=arguments.notes,
        changed=arguments.changed,
        won=arguments.won,
    )
    added = bar.trials.add(trial).value
    return _answer(added, spec.name, f"Trial #{added.id} of {spec.name} is written down.")


@command(argument("spec", metavar="SPEC", nargs="?", help="only those of this drink"))
@in_bar
def listed(arguments: Arguments, bar: Bar) -> Answer:
    """The trials of one spec or of all, newest first."""
    snapshot = bar.snapshot
    spec = None if arguments.spec is None else find_spec(snapshot, arguments.spec)
    trials = [each for each in snapshot.trials if spec is None or each.spec_id == spec.id][::-1]
    best = None if spec is None else _winner(spec, snapshot)
    named = [(each, _name(snapshot, each)) for each in trials]
    shown = "No trial is written down." if spec is None else f"{spec.name} has no trial yet."
    if trials:
        head = ("id", "on", "spec", "scores", "changed", "")
        shown = table(head, [_row(*each) for each in named], right="r")
        shown += "" if best is None else f"\n\n{best} is the version that won."
    return Answer(
        lambda: {
            "trials": [_json(*each) for each in named],
            "won": best,
            "mean_scores": _means(trials),
        },
        shown,
    )


@command(ID)
@in_bar
def won(arguments: Arguments, bar: Bar) -> Answer:
    """Mark one trial as the one that settled it."""
    trial = bar.trials.mark_won(arguments.id).value
    name = _name(bar.snapshot, trial)
    return _answer(trial, name, f"{name} is the version that won.")


@command(ID)
@in_bar
def remove(arguments: Arguments, bar: Bar) -> Answer:
    """Take one trial away."""
    trial = bar.trials.remove(arguments.id).value
    name = _name(bar.snapshot, trial)
    return _answer(trial, name, f"Trial #{trial.id} of {name} is removed.")


def _answer(trial: Trial, spec: str, sentence: str) -> Answer:
    return Answer(lambda: {"trial": _json(trial, spec)}, sentence)


def _own_spec(snapshot: Snapshot, name: str) -> Spec:
    spec = find_spec(snapshot, name)
    if spec.id is None:
        raise UnknownName("spec of yours", spec.name)
    return spec


def _name(snapshot: Snapshot, trial: Trial) -> str:
    return snapshot.spec_by_id[trial.spec_id].name


def _winner(spec: Spec, snapshot: Snapshot) -> str | None:
    kin = {each.spec.id: each.spec.name for each in family(spec.name, snapshot.all_specs)}
    won = winner(snapshot.trials, [each for each in kin if each is not None])
    return None if won is None else kin[won]


def _row(trial: Trial, spec: str) -> tuple[str, ...]:
    scores = show_scores(mean_scores([trial]))
    return (f"#{trial.id}", str(trial.on), spec, scores, trial.changed, "won" * trial.won)


def _json(trial: Trial, spec: str) -> dict[str, object]:
    return {
        "id": trial.id,
        "spec": spec,
        "on": iso(trial.on),
        "scores": [
            {"taster": each.taster, "scale": each.scale, "value": each.value}
            for each in trial.scores
        ],
        "mean_scores": _means([trial]),
        "changed": trial.changed,
        "notes": trial.notes,
        "won": trial.won,
    }


def _means(trials: Iterable[Trial]) -> Mapping[str, float | None]:
    return {scale: rounded(value, 2) for scale, value in mean_scores(trials).items()}
