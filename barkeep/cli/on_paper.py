"""Questions that may be asked of a bar changed on paper: `--with` and `--without`."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from functools import wraps
from typing import TYPE_CHECKING

from barkeep.cli.arguments import Arguments, argument
from barkeep.cli.bar_source import opened_bar
from barkeep.cli.output import Answer, wrapped
from barkeep.domain.bar.snapshot import Snapshot

if TYPE_CHECKING:
    from barkeep.domain.buying.on_paper import OnPaper


def _several(option: str, dest: str, metavar: str, told: str) -> Callable[..., object]:
    told = f"{told}; may be given again; nothing is written"
    return argument(option, dest=dest, action="append", default=[], metavar=metavar, help=told)


ON_PAPER = (
    _several("--with", "added", "KIND", "as if there were also a bottle of this kind or product"),
    _several("--without", "taken", "BOTTLE", "as if this bottle, or all of a kind, were not there"),
)
"""The arguments of a question that may be asked of a bar changed on paper."""


def of_snapshot(run: Callable[[Arguments, Snapshot], Answer]) -> Callable[[Arguments], Answer]:
    """A command that asks something of a bar, as it is or as it would be on paper.

    That it is on paper is said first, and is the first key of the object.
    """

    @wraps(run)
    def asked(arguments: Arguments) -> Answer:
        with opened_bar(arguments) as bar:
            return answered(run, arguments, bar.snapshot)

    return asked


def answered(
    run: Callable[[Arguments, Snapshot], Answer], arguments: Arguments, snapshot: Snapshot
) -> Answer:
    """The answer of a question, asked of a bar as it is or as it would be on paper."""
    if not (arguments.added or arguments.taken):
        return run(arguments, snapshot)
    from barkeep.application.on_paper import read_on_paper  # few questions are asked on paper

    paper = read_on_paper(snapshot, arguments.added, arguments.taken)
    answer = run(arguments, paper.snapshot)
    return _on_paper(answer, paper) if paper.is_changed else answer


def _on_paper(answer: Answer, paper: OnPaper) -> Answer:
    shown = (answer.shown,) if isinstance(answer.shown, str) else answer.shown
    return Answer(lambda: _json(paper, answer.as_json), _shown(paper, shown))


def _shown(paper: OnPaper, shown: Iterable[str]) -> Iterable[str]:
    yield from wrapped(paper.in_words, "")
    yield ""
    yield from shown


def _json(paper: OnPaper, as_json: Callable[[], Mapping[str, object]]) -> Mapping[str, object]:
    said = {
        "with": list(paper.with_words),
        "without": list(paper.without_words),
        "words": paper.in_words,
    }
    return {"on_paper": said, **as_json()}
