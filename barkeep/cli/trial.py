"""`barkeep trial`: how versions of a drink tasted, and which one won."""

from __future__ import annotations

import argparse
from collections.abc import Iterable, Mapping

from barkeep.application.finding import find_spec
from barkeep.cli.arguments import Arguments, common_options
from barkeep.cli.bar_source import opened_bar
from barkeep.cli.output import day, iso, print_json, rounded, table
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


def configure(parser: argparse.ArgumentParser) -> None:
    """Its arguments."""
    what = parser.add_subparsers(dest="what", metavar="WHAT", required=True)
    common = [common_options()]
    adding = what.add_parser("add", parents=common, help="write a trial of one of your specs down")
    adding.add_argument("spec", metavar="SPEC", help="the drink's name")
    adding.add_argument("--on", type=day, metavar="DAY", help="when it was tasted (default: today)")
    adding.add_argument(
        "--score",
        action="append",
        default=[],
        dest="scores",
        metavar='"TASTER SCALE VALUE"',
        help=f"{HOW_SCORES}; may be given again. The scales are those of: barkeep setting scales",
    )
    adding.add_argument("--changed", default="", metavar="TEXT", help="what was changed for it")
    adding.add_argument("--notes", default="", metavar="TEXT", help="what was said of it")
    adding.add_argument("--won", action="store_true", help="this version is settled on")
    adding.set_defaults(run=run_add)
    listing = what.add_parser("list", parents=common, help="list the trials, newest first")
    listing.add_argument("spec", metavar="SPEC", nargs="?", help="only those of this drink")
    listing.set_defaults(run=run_list)
    winning = what.add_parser("won", parents=common, help="say which trial settled on its version")
    winning.add_argument("id", metavar="ID", type=_trial_id, help="as listed")
    winning.set_defaults(run=run_won)
    removing = what.add_parser("remove", parents=common, help="take a trial away")
    removing.add_argument("id", metavar="ID", type=_trial_id, help="as listed")
    removing.set_defaults(run=run_remove)


def run_add(arguments: Arguments) -> int:
    """Write one trial down."""
    with opened_bar(arguments) as bar:
        spec = _own_spec(bar.snapshot, arguments.spec)
        scales = bar.snapshot.settings.scales
        scores = tuple(read_score(each, scales) for each in arguments.scores)
        on = arguments.on or bar.snapshot.on
        trial = Trial(
            id=None,
            spec_id=spec.id or 0,
            on=on,
            scores=scores,
            notes=arguments.notes,
            changed=arguments.changed,
            won=arguments.won,
        )
        added = bar.trials.add(trial).value
    _say(arguments, added, spec.name, f"Trial #{added.id} of {spec.name} is written down.")
    return 0


def run_list(arguments: Arguments) -> int:
    """List the trials of one spec or of all, newest first."""
    with opened_bar(arguments) as bar:
        snapshot = bar.snapshot
    spec = None if arguments.spec is None else find_spec(snapshot, arguments.spec)
    shown = [each for each in snapshot.trials if spec is None or each.spec_id == spec.id][::-1]
    won = None if spec is None else _winner(spec, snapshot)
    if arguments.json:
        trials = [_json(each, _name(snapshot, each)) for each in shown]
        print_json({"trials": trials, "won": won, "mean_scores": _means(shown)})
    elif not shown:
        print("No trial is written down." if spec is None else f"{spec.name} has no trial yet.")
    else:
        head = ("id", "on", "spec", "scores", "changed", "")
        print(table(head, [_row(each, _name(snapshot, each)) for each in shown], right="r"))
        if won is not None:
            print(f"\n{won} is the version that won.")
    return 0


def run_won(arguments: Arguments) -> int:
    """Mark one trial as the one that settled it."""
    with opened_bar(arguments) as bar:
        trial = bar.trials.mark_won(arguments.id).value
        name = _name(bar.snapshot, trial)
    _say(arguments, trial, name, f"{name} is the version that won.")
    return 0


def run_remove(arguments: Arguments) -> int:
    """Take one trial away."""
    with opened_bar(arguments) as bar:
        trial = bar.trials.remove(arguments.id).value
        name = _name(bar.snapshot, trial)
    _say(arguments, trial, name, f"Trial #{trial.id} of {name} is removed.")
    return 0


def _say(arguments: Arguments, trial: Trial, spec: str, sentence: str) -> None:
    if arguments.json:
        print_json({"trial": _json(trial, spec)})
    else:
        print(sentence)


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


def _trial_id(text: str) -> int:
    plain = text.strip().removeprefix("#")
    if not (plain.isascii() and plain.isdecimal() and len(plain) < 16):
        raise argparse.ArgumentTypeError(f"“{text}” is not the number of a trial, such as #3")
    return int(plain)
